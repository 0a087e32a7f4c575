//! How days, neighbours and single intervals scatter, in words.

use crate::language::{Message, Phrase, date, fixed, joined, p_value};
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::s580::uncertainty::RatingUncertainty;
use crate::procedure::s580::uncertainty::days::Order;
use crate::report::s580::shown_runs::NAMED_INTERVALS;
use crate::units::{decimals_for, local_clock, zoned};
use simmerline_math::squared;

/// Days below which the interval is known to be too narrow where days differ.
const FEW_DAYS: usize = 3;

/// Days, neighbours and single intervals in words.
pub fn scatter(assessment: &Assessment, uncertainty: &RatingUncertainty) -> Vec<Phrase> {
    let mut lines = vec![days(uncertainty)];
    lines.extend(neighbours(uncertainty).map(Phrase::from));
    lines.extend(influence(assessment, uncertainty).map(Phrase::from));
    lines
}

fn days(uncertainty: &RatingUncertainty) -> Phrase {
    let days = &uncertainty.of_line.days;
    let Some(test) = days.test else {
        return match (days.days.len(), days.within_sd_w) {
            (1, _) => message!("days-one"),
            (_, None) => message!("days-too-few-intervals"),
            _ => message!("days-no-scatter"),
        }
        .into();
    };
    let numbers = message!(
        "days-test",
        between = test.numerator_freedom.to_string(),
        within = test.denominator_freedom.to_string(),
        statistic = fixed(test.statistic, 2),
        p = p_value(test.p)
    );
    let what = if uncertainty.days_differ() {
        message!("days-differ")
    } else {
        message!("days-not-shown")
    };
    let what = what.with("numbers", numbers);
    let count = days.days.len();
    if uncertainty.is_of_one_day() {
        return joined([what, message!("days-cannot-be-left-out")], " ");
    }
    if !uncertainty.counts_days() {
        let agree = message!("days-agree", days = count);
        return joined([what, agree], " ");
    }
    let independent = if count < FEW_DAYS {
        message!("days-count-two")
    } else {
        message!("days-count")
    };
    let independent = independent
        .with("days", count)
        .with("intervals", uncertainty.of_line.line.points)
        .with("freedom", count - 1);
    joined([what, independent], " ")
}

fn neighbours(uncertainty: &RatingUncertainty) -> Option<Message> {
    let neighbours = uncertainty.of_line.days.neighbours?;
    let said = match uncertainty.of_line.days.order() {
        Order::Alike => message!("neighbours-drift"),
        Order::Alternating if shares_readings(uncertainty) => message!("neighbours-share"),
        Order::Alternating => message!("neighbours-by-turns"),
        Order::NotShown => message!("neighbours-not-shown"),
    };
    Some(
        said.with("statistic", fixed(neighbours.statistic, 2))
            .with("p", p_value(neighbours.two_sided_p())),
    )
}

/// Whether the readings that neighbours share explain how they alternate: what is read too high
/// at the end of one interval is too high at the beginning of the next, so that errors of
/// readings alone correlate by −1/2 and d is 3. With a share f of the variance of the scatter
/// they give d = 2 + f; they explain it if that is most of what d is above 2.
pub fn shares_readings(uncertainty: &RatingUncertainty) -> bool {
    let of_line = &uncertainty.of_line;
    let scatter_w = of_line.line.residual_sd;
    let Some(neighbours) = of_line.days.neighbours.filter(|_| scatter_w > 0.0) else {
        return false;
    };
    let share = squared(of_line.reading.of_interval_w() / scatter_w);
    share.min(1.0) > (neighbours.statistic - 2.0) / 2.0
}

fn influence(assessment: &Assessment, uncertainty: &RatingUncertainty) -> Option<Message> {
    let zone = &assessment.tested.campaign.site.time_zone;
    let all = &uncertainty.influential;
    // One decimal more than the rating has: an interval moves it by less than its ±.
    let decimals = decimals_for(uncertainty.half_width_w()) + 1;
    let named = all.iter().take(NAMED_INTERVALS).map(|influential| {
        let start_us = assessment.s580.intervals[influential.interval]
            .measured
            .span
            .from_us;
        message!(
            "influential-one",
            date = date(zoned(start_us, zone).date()),
            time = local_clock(start_us, zone),
            distance = fixed(influential.cooks_distance, 2),
            power = fixed(influential.ps50_without_w, decimals)
        )
    });
    let said = match all.len().saturating_sub(NAMED_INTERVALS) {
        0 => message!("influential"),
        more => message!("influential-more", more = more),
    };
    (!all.is_empty()).then(|| said.with("intervals", joined(named, "; ")))
}
