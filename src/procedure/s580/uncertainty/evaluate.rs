//! How sure the rating of a campaign is.

use super::of_line::{LineUncertainty, point};
use super::outlook::Outlook;
use crate::campaign::classes::Class;
use crate::campaign::model::Target;
use crate::procedure::s580::intervals::Interval;
use crate::procedure::s580::limits::RATING_DIFFERENCE_K;
use crate::procedure::sources::{Basis, CommonError, Source, common_errors};
use crate::procedure::tested::Tested;
use crate::procedure::uncertainty::apart::{Apart, apart};
use crate::procedure::uncertainty::budget::Origin;
use crate::procedure::uncertainty::points::places;
use crate::procedure::uncertainty::step::reading_spread;
use crate::procedure::uncertainty::trials::{MonteCarlo, draw, printed};
use crate::procedure::uncertainty::{Budget, Point};
use crate::stats::influence::influences;
use crate::stats::line::{Bounds, Line};

/// Cook's distance, times the number of intervals, from which an interval stands out.
///
/// # Source
/// Bollen and Jackman 1990, from memory.
const STANDS_OUT: f64 = 4.0;

/// How sure Ps(50) is.
#[derive(Debug, Clone)]
pub struct RatingUncertainty {
    /// Anywhere along the line.
    pub of_line: LineUncertainty,
    /// At 50 K, W.
    pub budget: Budget,
    /// The 95 % interval that is printed, W: the budget's, and where the draws say otherwise
    /// the wider end of both.
    pub interval_w: Bounds,
    /// `None` where nothing is uncertain, or the draws fail.
    pub monte_carlo: Option<MonteCarlo>,
    /// What sets the draws apart from the budget; `None` where they agree.
    pub apart: Option<Apart>,
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
    /// Half of the printed interval, W: what stands behind ±. Where it is not even on both
    /// sides, the larger.
    pub fn half_width_w(&self) -> f64 {
        self.interval_w.reach_from(self.budget.value)
    }

    /// Whether days, and not intervals or readings, are what scatters in Ps(50).
    pub fn counts_days(&self) -> bool {
        let mut parts = self.budget.contributions.iter();
        parts.any(|part| part.origin == Origin::Days)
    }

    /// Whether all of it was measured on one day: what another day would do is not in it.
    pub fn is_of_one_day(&self) -> bool {
        self.of_line.fitted.days().is_none()
    }

    /// The ± aimed at, W, and what it takes to print it.
    fn outlook(&self, target: Target) -> (f64, Outlook) {
        let target_w = match target {
            Target::Watts(watts) => watts,
            Target::Fraction(fraction) => fraction * self.budget.value.abs(),
        };
        // Where the draws reach further, so they do with more data.
        let further = self.half_width_w() / self.budget.expanded.max(f64::MIN_POSITIVE);
        let budgeted_w = target_w / further.max(1.0);
        let outlook = self.of_line.outlook(budgeted_w, RATING_DIFFERENCE_K);
        (target_w, outlook)
    }

    /// What Ps(50) changes by for each unit (a fraction, or K) of a common error's readings too
    /// high, W; `None` for an error that is none of this line's.
    pub fn sensitivity_w(&self, error: &CommonError) -> Option<f64> {
        let mut effects = self.of_line.fitted.effects.iter();
        let effect = effects.find(|effect| effect.error == *error)?;
        Some(effect.sensitivity[0] + effect.sensitivity[1] * RATING_DIFFERENCE_K)
    }

    /// Whether single readings explain most of scatter and days.
    pub fn readings_are_most(&self) -> bool {
        let fitted = &self.of_line.fitted;
        let weights = [1.0, RATING_DIFFERENCE_K];
        fitted.of_readings.of(weights) > fitted.statistical(weights).covariance.of(weights) / 2.0
    }

    /// Sources whose standard uncertainty the campaign file does not state.
    pub fn not_stated(&self) -> Vec<Source> {
        let errors = self.of_line.fitted.common();
        errors
            .filter(|error| matches!(error.basis, Basis::Class(_) | Basis::Assumed(_)))
            .filter(|error| !error.source.is_scale())
            .map(|error| error.source)
            .collect()
    }

    /// Sources for which neither uncertainty nor class is given, and the class taken.
    pub fn assumed(&self) -> Vec<(Source, &'static Class)> {
        let errors = self.of_line.fitted.common();
        errors
            .filter(|error| !error.source.is_scale())
            .filter_map(|error| match error.basis {
                Basis::Assumed(class) => Some((error.source, class)),
                _ => None,
            })
            .collect()
    }
}

/// Evaluates the uncertainty of a campaign's line; `None` where its temperature differences
/// are too much alike.
pub fn evaluate(tested: &Tested, intervals: &[Interval], line: &Line) -> Option<RatingUncertainty> {
    let campaign = &tested.campaign;
    let on_line: Vec<(usize, &Interval)> = intervals
        .iter()
        .enumerate()
        .filter(|(_, interval)| interval.is_on_line())
        .collect();
    let zone = &campaign.site.time_zone;
    let used: Vec<&Interval> = on_line.iter().map(|(_, interval)| *interval).collect();
    let points: Vec<Point> = used
        .iter()
        .zip(places(&used, zone).of)
        .filter_map(|(interval, (day, follows))| {
            let water_kg = tested.runs[interval.run].plan.water_kg;
            point(interval, water_kg, day, follows)
        })
        .collect();
    let common = common_errors(&campaign.instruments, &campaign.file.to_string_lossy());
    let of_line = LineUncertainty::of(line, &points, reading_spread(tested), common)?;
    let budget = of_line.at(RATING_DIFFERENCE_K);
    let weights = [1.0, RATING_DIFFERENCE_K];
    let [monte_carlo] = draw(
        &of_line.fitted,
        weights,
        std::array::from_ref(&budget),
        |[a, b]| [a + b * RATING_DIFFERENCE_K],
    );
    let interval_w = printed(&budget, monte_carlo.as_ref());
    let drawn = monte_carlo.as_ref();
    let mut uncertainty = RatingUncertainty {
        interval_w,
        apart: drawn.and_then(|drawn| apart(&of_line.fitted, weights, &budget, drawn)),
        monte_carlo,
        influential: influential(line, &points, &on_line, budget.value),
        budget,
        target: None,
        of_line,
    };
    uncertainty.target = campaign.target.map(|target| uncertainty.outlook(target));
    Some(uncertainty)
}

fn influential(
    line: &Line,
    points: &[Point],
    on_line: &[(usize, &Interval)],
    ps50_w: f64,
) -> Vec<Influential> {
    let difference_k: Vec<f64> = points.iter().map(Point::difference_k).collect();
    let power_w: Vec<f64> = points.iter().map(|point| point.of_water).collect();
    let all = influences(line, &difference_k, &power_w, RATING_DIFFERENCE_K);
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
