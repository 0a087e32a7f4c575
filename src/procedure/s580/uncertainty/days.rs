//! Whether days differ, and by how much.

use crate::procedure::uncertainty::Point;
use crate::stats::groups::{
    FTest, Fit, Sums, compare_nested, one_line, parallel_lines, sums_by_group,
};
use crate::stats::line::Line;
use crate::stats::serial::{DurbinWatson, durbin_watson};

/// Level of a test whose result is called shown.
pub const SHOWN_P: f64 = 0.05;

/// Intervals a day below which the line's slope leaves nothing to tell days by.
const LEAST_A_DAY: f64 = 1e-6;

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
    /// Shows what the days of a line do.
    ///
    /// The lines of all days are parallel; that of day j stands d_j higher. Mean squares of
    /// days and of intervals give s_d² = (MS_days − MS_intervals)/n0, with
    /// n0 = (n − Σn_j²/n − Σn_j²(x̄_j − x̄)²/Sxx)/(k − 1).
    ///
    /// # Source
    /// Analysis of variance, one way, random effects, with a covariate: NIST/SEMATECH
    /// e-Handbook, 3.2.3.1, whose n0 is the first two terms.
    pub fn of(line: &Line, points: &[Point]) -> DayEffect {
        let x: Vec<f64> = points.iter().map(Point::difference_k).collect();
        let y: Vec<f64> = points.iter().map(|point| point.of_water).collect();
        let day: Vec<usize> = points.iter().map(|point| point.day).collect();
        let days = sums_by_group(&x, &y, &day);
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

    /// How the intervals of a run follow each other, as far as that is shown.
    pub fn order(&self) -> Order {
        match self.neighbours {
            Some(found) if found.two_sided_p() >= SHOWN_P => Order::NotShown,
            Some(found) if found.p < SHOWN_P => Order::Alike,
            Some(_) => Order::Alternating,
            None => Order::NotShown,
        }
    }
}

/// How intervals that follow each other lie about the line.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Order {
    /// On the same side, as where aim or wind drift.
    Alike,
    /// On one side and the other by turns, as where neighbours share a reading.
    Alternating,
    NotShown,
}

/// Durbin–Watson about the days' parallel lines, so that what days do is not in it.
fn neighbours(days: &[Sums], points: &[Point]) -> Option<DurbinWatson> {
    let (xy, xx) = days
        .iter()
        .fold((0.0, 0.0), |(xy, xx), day| (xy + day.xy, xx + day.xx));
    if xx <= 0.0 {
        return None;
    }
    let about = |value: fn(&Point) -> f64, mean: fn(&Sums) -> f64| -> Vec<f64> {
        let points = points.iter();
        points
            .map(|point| value(point) - mean(&days[point.day]))
            .collect()
    };
    let x = about(Point::difference_k, |day| day.x_mean);
    let y = about(|point| point.of_water, |day| day.y_mean);
    let follows: Vec<bool> = points.iter().map(|point| point.follows).collect();
    let residuals: Vec<f64> = x.iter().zip(&y).map(|(x, y)| y - xy / xx * x).collect();
    durbin_watson(&x, &residuals, &follows, days.len() + 1)
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
