//! How sure the rating of a campaign is.

use jiff::tz::TimeZone;

use super::budget::{Budget, LineUncertainty, ReadingNoise};
use super::days::{DayEffect, Points};
use super::outlook::Outlook;
use super::step::step_seen_k;
use super::trials::{MonteCarlo, draw};
use crate::campaign::classes::Class;
use crate::campaign::model::Target;
use crate::procedure::s580::intervals::Interval;
use crate::procedure::s580::limits::RATING_DIFFERENCE_K;
use crate::procedure::sources::{Basis, Source, common_errors};
use crate::procedure::tested::Tested;
use crate::stats::influence::influences;
use crate::stats::line::Line;
use crate::units::zoned;

/// Cook's distance, times the number of intervals, from which an interval stands out.
///
/// # Source
/// Bollen and Jackman 1990, from memory.
const STANDS_OUT: f64 = 4.0;

/// How sure Ps(50) is.
#[derive(Debug, Clone, PartialEq)]
pub struct RatingUncertainty {
    /// Anywhere along the line.
    pub of_line: LineUncertainty,
    /// At 50 K.
    pub budget: Budget,
    /// `None` where nothing is uncertain, or the draws fail.
    pub monte_carlo: Option<MonteCarlo>,
    /// Intervals that stand out, most influential first.
    pub influential: Vec<Influential>,
    /// The expanded uncertainty aimed at, W, and what it takes.
    pub target: Option<(f64, Outlook)>,
}

/// An interval that moves the rating more than others do.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Influential {
    /// Its place among all intervals of the campaign.
    pub interval: usize,
    pub cooks_distance: f64,
    /// Ps(50) without it, W.
    pub ps50_without_w: f64,
}

impl RatingUncertainty {
    /// Sources whose standard uncertainty the campaign file does not state.
    pub fn not_stated(&self) -> Vec<Source> {
        let errors = self.of_line.common.iter();
        errors
            .filter(|error| matches!(error.basis, Basis::Class(_) | Basis::Assumed(_)))
            .map(|error| error.source)
            .collect()
    }

    /// Sources for which neither uncertainty nor class is given, and the class taken.
    pub fn assumed(&self) -> Vec<(Source, &'static Class)> {
        let errors = self.of_line.common.iter();
        errors
            .filter_map(|error| match error.basis {
                Basis::Assumed(class) => Some((error.source, class)),
                _ => None,
            })
            .collect()
    }
}

/// Evaluates the uncertainty of a campaign's line.
pub fn evaluate(tested: &Tested, intervals: &[Interval], line: &Line) -> RatingUncertainty {
    let campaign = &tested.campaign;
    let on_line: Vec<(usize, &Interval)> = intervals
        .iter()
        .enumerate()
        .filter(|(_, interval)| interval.is_on_line())
        .collect();
    let weighed: Vec<(&Interval, f64)> = on_line
        .iter()
        .map(|(_, interval)| (*interval, tested.runs[interval.run].plan.water_kg))
        .collect();
    let points = points_of(&weighed, &campaign.site.time_zone);
    let step_seen_k = step_seen_k(&tested.runs);
    let of_line = LineUncertainty {
        line: *line,
        days: DayEffect::weigh(line, &points),
        common: common_errors(&campaign.instruments, &campaign.file.to_string_lossy()),
        reading: ReadingNoise::of(&weighed, &campaign.instruments, step_seen_k),
    };
    let budget = of_line.at(RATING_DIFFERENCE_K);
    let target = campaign.target.map(|target| {
        let target_w = match target {
            Target::Watts(watts) => watts,
            Target::Fraction(fraction) => fraction * budget.power_w.abs(),
        };
        (target_w, of_line.outlook(target_w, RATING_DIFFERENCE_K))
    });
    RatingUncertainty {
        monte_carlo: draw(&of_line, &budget, &weighed, &points.day),
        influential: influential(line, &points, &on_line, budget.power_w),
        budget,
        target,
        of_line,
    }
}

/// The points of some intervals, in their order, with their local dates as days.
pub fn points_of(intervals: &[(&Interval, f64)], zone: &TimeZone) -> Points {
    let mut points = Points::default();
    let mut dates = Vec::new();
    let mut before: Option<&Interval> = None;
    for (interval, _) in intervals {
        let Some((difference_k, power_w)) = interval.point() else {
            continue;
        };
        let date = zoned(interval.measured.span.from_us, zone).date();
        let day = dates.iter().position(|known| *known == date);
        points.day.push(day.unwrap_or_else(|| {
            dates.push(date);
            dates.len() - 1
        }));
        points.difference_k.push(difference_k);
        points.power_w.push(power_w);
        let follows = before.is_some_and(|before| {
            let (before_us, now_us) = (before.measured.span.to_us, interval.measured.span.from_us);
            before.run == interval.run && before_us == now_us
        });
        points.follows.push(follows);
        before = Some(*interval);
    }
    points
}

fn influential(
    line: &Line,
    points: &Points,
    on_line: &[(usize, &Interval)],
    ps50_w: f64,
) -> Vec<Influential> {
    let all = influences(
        line,
        &points.difference_k,
        &points.power_w,
        RATING_DIFFERENCE_K,
    );
    let mut standing_out: Vec<Influential> = all
        .into_iter()
        .zip(on_line)
        .filter(|(influence, _)| influence.distance * line.points as f64 > STANDS_OUT)
        .map(|(influence, (interval, _))| Influential {
            interval: *interval,
            cooks_distance: influence.distance,
            ps50_without_w: ps50_w - influence.shift,
        })
        .collect();
    standing_out.sort_by(|one, two| two.cooks_distance.total_cmp(&one.cooks_distance));
    standing_out
}
