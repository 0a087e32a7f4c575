//! Whether days differ, and by how much.

use crate::stats::groups::{
    FTest, Fit, Sums, compare_nested, one_line, parallel_lines, sums_by_group,
};
use crate::stats::line::Line;
use crate::stats::serial::{DurbinWatson, durbin_watson};

/// Days are taken as alike only if so large a difference between them, or a larger one,
/// would come by chance at least so often. A test at 5 % would overlook too many real
/// differences with few days, and the uncertainty stated would then be too small.
/// Common practice for a preliminary test, from memory (Bancroft 1944); the coverage it
/// gives is in the contributor's guide.
pub const DAYS_ALIKE_P: f64 = 0.25;
/// Level of a test whose result is called shown.
pub const SHOWN_P: f64 = 0.05;

/// Intervals a day below which the line's slope leaves nothing to tell days by.
const LEAST_A_DAY: f64 = 1e-6;

/// Points of the line with what belongs together.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Points {
    /// Td, K.
    pub difference_k: Vec<f64>,
    /// Ps, W.
    pub power_w: Vec<f64>,
    /// Day of each, counted from 0 without gaps.
    pub day: Vec<usize>,
    /// Whether each begins where the one before it ends.
    pub follows: Vec<bool>,
}

/// How the intervals of one day hang together.
#[derive(Debug, Clone, PartialEq)]
pub struct DayEffect {
    /// Sums of each day.
    pub days: Vec<Sums>,
    /// Lack of fit of one line, by day; `None` where it cannot be tested.
    pub test: Option<FTest>,
    /// Whether neighbours within a run are alike; `None` where it cannot be tested.
    pub neighbours: Option<DurbinWatson>,
    /// Standard deviation of intervals about their day's line, W; `None` where it cannot be told.
    pub within_sd_w: Option<f64>,
    /// Standard deviation of the days' lines, W; `None` where it cannot be told.
    pub between_sd_w: Option<f64>,
}

impl DayEffect {
    /// Weighs the days of a line.
    ///
    /// The lines of all days are parallel; that of day j stands d_j higher. Mean squares of
    /// days and of intervals give s_d² = (MS_days − MS_intervals)/n0, with
    /// n0 = (n − Σn_j²/n − Σn_j²(x̄_j − x̄)²/Sxx)/(k − 1).
    ///
    /// # Source
    /// Analysis of variance, one way, random effects, with a covariate: NIST/SEMATECH
    /// e-Handbook, 3.2.3.1, whose n0 is the first two terms.
    pub fn weigh(line: &Line, points: &Points) -> DayEffect {
        let (x, y) = (&points.difference_k, &points.power_w);
        let days = sums_by_group(x, y, &points.day);
        let fits = one_line(&days).zip(parallel_lines(&days));
        let fits = fits.filter(|_| days.len() > 1);
        let between_square = |(one, parallel): (Fit, Fit)| {
            let freedom = (days.len() - 1) as f64;
            let of_days = (one.residual_squares - parallel.residual_squares).max(0.0) / freedom;
            (of_days - parallel.mean_square()) / points_a_day(line, &days)
        };
        DayEffect {
            test: fits.and_then(|(one, parallel)| compare_nested(one, parallel)),
            neighbours: neighbours(&days, points),
            within_sd_w: fits.map(|(_, parallel)| parallel.mean_square().sqrt()),
            between_sd_w: fits
                .filter(|_| points_a_day(line, &days) > LEAST_A_DAY)
                .map(|fits| between_square(fits).max(0.0).sqrt()),
            days,
        }
    }

    /// Whether the days, and not the intervals, are what is independent.
    pub fn is_honoured(&self) -> bool {
        let days_differ = self.test.is_some_and(|test| test.p < DAYS_ALIKE_P);
        days_differ || (self.test.is_some() && self.neighbours_are_alike())
    }

    /// Whether neighbours within a run are alike.
    pub fn neighbours_are_alike(&self) -> bool {
        self.neighbours
            .is_some_and(|neighbours| neighbours.p < SHOWN_P)
    }

    /// What the squared weights of whole days add up to in the line read at `at_k`.
    pub fn weight_of_days(&self, line: &Line, at_k: f64) -> f64 {
        let weight = |day: &Sums| day.points as f64 * line.weight(day.x_mean, at_k);
        self.days.iter().map(|day| weight(day).powi(2)).sum()
    }
}

/// Durbin–Watson about the days' parallel lines, so that what days do is not in it.
fn neighbours(days: &[Sums], points: &Points) -> Option<DurbinWatson> {
    let (xy, xx) = days
        .iter()
        .fold((0.0, 0.0), |(xy, xx), day| (xy + day.xy, xx + day.xx));
    if xx <= 0.0 {
        return None;
    }
    let about = |values: &[f64], mean: fn(&Sums) -> f64| -> Vec<f64> {
        let values = values.iter().zip(&points.day);
        values
            .map(|(value, &day)| value - mean(&days[day]))
            .collect()
    };
    let x = about(&points.difference_k, |day| day.x_mean);
    let y = about(&points.power_w, |day| day.y_mean);
    let residuals: Vec<f64> = x.iter().zip(&y).map(|(x, y)| y - xy / xx * x).collect();
    durbin_watson(&x, &residuals, &points.follows, days.len() + 1)
}

/// n0: how many intervals a day has, for the variance between days.
fn points_a_day(line: &Line, days: &[Sums]) -> f64 {
    let points = line.points as f64;
    let lost = |day: &Sums| {
        let count = day.points as f64;
        let off = day.x_mean - line.x_mean();
        count * count * (1.0 / points + off * off / line.x_squares())
    };
    let lost: f64 = days.iter().map(lost).sum();
    (points - lost) / (days.len() - 1) as f64
}
