//! Ordinary least squares of a straight line, with the bands that go with it.

use serde::{Deserialize, Serialize};
use simmerline_math::squared;

use super::student::two_sided_t;

/// Coverage of every interval in the rating.
pub const COVERAGE: f64 = 0.95;

/// Spread of x, relative to its size, below which no line can be fitted.
const NO_SPREAD: f64 = 1e-9;

/// A fitted line y = intercept + slope·x. Units are those of the data.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Line {
    pub intercept: f64,
    pub slope: f64,
    pub intercept_standard_error: f64,
    pub slope_standard_error: f64,
    /// Covariance of intercept and slope.
    pub covariance: f64,
    /// Share of the spread of y that the line explains; `None` if y has no spread.
    pub r_squared: Option<f64>,
    /// Residual standard deviation, n − 2 degrees of freedom.
    pub residual_sd: f64,
    /// Number of points.
    pub points: usize,
    /// Smallest and largest x.
    pub x_range: (f64, f64),
    x_mean: f64,
    x_squares: f64,
}

/// An interval about a value.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Bounds {
    pub lower: f64,
    pub upper: f64,
}

impl Bounds {
    /// How far it reaches from a value inside; the farther of both sides.
    pub fn reach_from(self, value: f64) -> f64 {
        (self.upper - value).max(value - self.lower)
    }

    /// Half the width.
    pub fn half_width(self) -> f64 {
        (self.upper - self.lower) / 2.0
    }
}

/// Fits a line to points of equal weight.
///
/// b = Σ(x − x̄)(y − ȳ)/Sxx, a = ȳ − b x̄, s² = Σe²/(n − 2), u(b) = s/√Sxx,
/// u(a) = s √(1/n + x̄²/Sxx), cov(a, b) = −x̄ s²/Sxx, Sxx = Σ(x − x̄)².
///
/// `None` with fewer than three points, slices of different lengths, values that
/// are not finite, or no spread in x.
///
/// ```
/// use simmerline::stats::line::fit_line;
/// let line = fit_line(&[0.0, 1.0, 2.0], &[1.0, 3.0, 5.0]).unwrap();
/// assert!((line.intercept - 1.0).abs() < 1e-12 && (line.slope - 2.0).abs() < 1e-12);
/// ```
///
/// # Source
/// JCGM 100:2008, H.3; NIST/SEMATECH e-Handbook, 4.1.4.1.
pub fn fit_line(x: &[f64], y: &[f64]) -> Option<Line> {
    let n = x.len();
    if n < 3 || y.len() != n || x.iter().chain(y).any(|value| !value.is_finite()) {
        return None;
    }
    let count = n as f64;
    let x_mean = x.iter().sum::<f64>() / count;
    let y_mean = y.iter().sum::<f64>() / count;
    let x_squares: f64 = x.iter().map(|x| squared(x - x_mean)).sum();
    let largest = x.iter().fold(0.0_f64, |largest, x| largest.max(x.abs()));
    if (x_squares / count).sqrt() <= NO_SPREAD * largest.max(f64::MIN_POSITIVE) {
        return None;
    }
    let products: f64 = x
        .iter()
        .zip(y)
        .map(|(x, y)| (x - x_mean) * (y - y_mean))
        .sum();
    let y_squares: f64 = y.iter().map(|y| squared(y - y_mean)).sum();
    let slope = products / x_squares;
    let intercept = y_mean - slope * x_mean;
    // Residuals about the means: no large intercept to cancel.
    let residual = |x: &f64, y: &f64| (y - y_mean) - slope * (x - x_mean);
    let residual_squares: f64 = x.iter().zip(y).map(|(x, y)| squared(residual(x, y))).sum();
    let variance = residual_squares / (count - 2.0);
    Some(Line {
        intercept,
        slope,
        intercept_standard_error: (variance * (1.0 / count + x_mean * x_mean / x_squares)).sqrt(),
        slope_standard_error: (variance / x_squares).sqrt(),
        covariance: -x_mean * variance / x_squares,
        r_squared: (y_squares > 0.0).then(|| 1.0 - residual_squares / y_squares),
        residual_sd: variance.sqrt(),
        points: n,
        x_range: x
            .iter()
            .fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), &x| {
                (low.min(x), high.max(x))
            }),
        x_mean,
        x_squares,
    })
}

impl Line {
    /// The line read at `x`.
    pub fn predict(&self, x: f64) -> f64 {
        self.intercept + self.slope * x
    }

    /// Standard error of the line at `x`: s √(1/n + (x − x̄)²/Sxx).
    pub fn standard_error(&self, x: f64) -> f64 {
        self.residual_sd * self.leverage(x).sqrt()
    }

    /// The interval that covers the true line at `x` with 95 % probability.
    pub fn confidence(&self, x: f64) -> Bounds {
        self.interval(x, self.standard_error(x))
    }

    /// The interval that covers a single new point at `x` with 95 % probability:
    /// standard error s √(1 + 1/n + (x − x̄)²/Sxx).
    pub fn prediction(&self, x: f64) -> Bounds {
        self.interval(x, self.residual_sd * (1.0 + self.leverage(x)).sqrt())
    }

    /// Whether `x` lies within the x that were observed.
    pub fn spans(&self, x: f64) -> bool {
        (self.x_range.0..=self.x_range.1).contains(&x)
    }

    /// Two-sided 95 % critical value of Student's t for this line.
    pub fn t(&self) -> f64 {
        two_sided_t(COVERAGE, self.points - 2)
    }

    /// Variance of the line at `x`, in units of the residual variance:
    /// 1/n + (x − x̄)²/Sxx.
    pub fn leverage(&self, x: f64) -> f64 {
        self.weight(x, x)
    }

    /// Weight of a point at `x` in the line read at `at`: 1/n + (x − x̄)(at − x̄)/Sxx.
    /// The weights of all points add up to one.
    pub fn weight(&self, x: f64, at: f64) -> f64 {
        1.0 / self.points as f64 + (x - self.x_mean) * (at - self.x_mean) / self.x_squares
    }

    /// Mean of x.
    pub fn x_mean(&self) -> f64 {
        self.x_mean
    }

    /// Σ(x − x̄)².
    pub fn x_squares(&self) -> f64 {
        self.x_squares
    }

    fn interval(&self, x: f64, standard_error: f64) -> Bounds {
        let half_width = self.t() * standard_error;
        Bounds {
            lower: self.predict(x) - half_width,
            upper: self.predict(x) + half_width,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn two_points_or_no_spread_give_no_line() {
        assert_eq!(fit_line(&[1.0, 2.0], &[1.0, 2.0]), None);
        assert_eq!(fit_line(&[5.0; 4], &[1.0, 2.0, 3.0, 4.0]), None);
        assert_eq!(fit_line(&[0.0; 3], &[1.0, 2.0, 3.0]), None);
        assert_eq!(fit_line(&[1.0, 2.0, f64::NAN], &[1.0, 2.0, 3.0]), None);
    }

    #[test]
    fn level_points_have_no_r_squared() {
        let line = fit_line(&[1.0, 2.0, 3.0], &[4.0; 3]).unwrap();
        assert_eq!(line.r_squared, None);
        assert_eq!(line.slope, 0.0);
    }
}
