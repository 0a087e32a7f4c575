//! How days, neighbours and single intervals scatter, in words.

use crate::language::{Message, Phrase, date, fixed, joined, probability};
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::s580::uncertainty::RatingUncertainty;
use crate::procedure::s580::uncertainty::days::{DayEffect, Order, SHOWN_P};
use crate::units::{local_clock, zoned};

/// Days below which the interval is known to be too narrow where days differ.
const FEW_DAYS: usize = 3;
/// Influential intervals that are named; the rest are counted.
const NAMED_INTERVALS: usize = 4;

/// Days, neighbours and single intervals in words.
pub fn scatter(assessment: &Assessment, uncertainty: &RatingUncertainty) -> Vec<Phrase> {
    let mut lines = vec![days(uncertainty)];
    lines.extend(neighbours(&uncertainty.of_line.days).map(Phrase::from));
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
        "days-numbers",
        between = test.numerator_freedom.to_string(),
        within = test.denominator_freedom.to_string(),
        statistic = fixed(test.statistic, 2),
        p = probability(test.p)
    );
    let what = if test.p < SHOWN_P {
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
        message!("days-left-out-two")
    } else {
        message!("days-left-out")
    };
    let independent = independent.with("days", count).with("freedom", count - 1);
    joined([what, independent], " ")
}

fn neighbours(days: &DayEffect) -> Option<Message> {
    let neighbours = days.neighbours?;
    let said = match days.order() {
        Order::Alike => message!("neighbours-alike"),
        Order::Alternating => message!("neighbours-alternate"),
        Order::NotShown => message!("neighbours-independent"),
    };
    Some(
        said.with("statistic", fixed(neighbours.statistic, 2))
            .with("p", probability(neighbours.two_sided_p())),
    )
}

fn influence(assessment: &Assessment, uncertainty: &RatingUncertainty) -> Option<Message> {
    let zone = &assessment.tested.campaign.site.time_zone;
    let all = &uncertainty.influential;
    let named = all.iter().take(NAMED_INTERVALS).map(|influential| {
        let start_us = assessment.s580.intervals[influential.interval]
            .measured
            .span
            .from_us;
        message!(
            "influence-one",
            date = date(zoned(start_us, zone).date()),
            time = local_clock(start_us, zone),
            distance = fixed(influential.cooks_distance, 2),
            power = fixed(influential.ps50_without_w, 1)
        )
    });
    let said = match all.len().saturating_sub(NAMED_INTERVALS) {
        0 => message!("influence"),
        more => message!("influence-more", more = more),
    };
    (!all.is_empty()).then(|| said.with("intervals", joined(named, ", ")))
}
