//! How many intervals would show a difference.

use crate::procedure::s580::limits::RATING_DIFFERENCE_K;
use crate::procedure::s580::uncertainty::LineUncertainty;
use crate::procedure::s580::uncertainty::outlook::MOST_INTERVALS;
use crate::stats::combine::effective_freedom;
use crate::stats::line::COVERAGE;
use crate::stats::student::quantile_t;

/// The difference that is sought, as a share of the larger Ps(50).
const SOUGHT_SHARE: f64 = 0.1;
/// Chance with which a true difference of that size is to be shown.
pub const POWER: f64 = 0.8;
/// Most degrees of freedom that are told apart.
const MOST_FREEDOM: f64 = 1e4;

/// What it takes to show a difference of `sought_w`, if the spread stays as it was seen.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Needed {
    /// W.
    pub sought_w: f64,
    /// More used intervals of each campaign; `None`: no number of them will do.
    pub intervals_each: Option<usize>,
}

/// What it takes to show a difference of a tenth of the larger Ps(50), at 95 % for all
/// `pairs` together (Bonferroni) and with a chance of 80 %: (t_(1 − 0.025/pairs) + t_0.80)·u
/// ≤ difference, with u of scatter and days after so many more intervals, and of the
/// instruments that do not cancel.
pub fn needed(one: &LineUncertainty, two: &LineUncertainty, common_w: f64, pairs: usize) -> Needed {
    let at_k = RATING_DIFFERENCE_K;
    let larger_w = one
        .line
        .predict(at_k)
        .abs()
        .max(two.line.predict(at_k).abs());
    let sought_w = round_to_two_digits(SOUGHT_SHARE * larger_w);
    let confidence = 1.0 - (1.0 - COVERAGE) / 2.0 / pairs.max(1) as f64;
    let shows = |more: &usize| {
        let finite = [one, two].map(|line| line.statistical_with(line.extent_with(*more), at_k));
        let statistical_w = finite[0].0.hypot(finite[1].0);
        let combined_w = statistical_w.hypot(common_w);
        let effective = effective_freedom(combined_w, &finite);
        let freedom = effective.clamp(1.0, MOST_FREEDOM);
        let t = quantile_t(confidence, freedom) + quantile_t(POWER, freedom);
        t * combined_w <= sought_w
    };
    Needed {
        sought_w,
        intervals_each: (0..=MOST_INTERVALS).find(shows),
    }
}

fn round_to_two_digits(value: f64) -> f64 {
    if value <= 0.0 {
        return value;
    }
    let unit = 10_f64.powf(value.log10().floor() - 1.0).min(1.0);
    (value / unit).round() * unit
}
