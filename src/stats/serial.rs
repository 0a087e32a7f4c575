//! Whether residuals that follow each other are alike.

use simmerline_math::squared;
use statrs::distribution::{ContinuousCDF, Normal};

/// The Durbin–Watson statistic.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DurbinWatson {
    /// Near 2 for independent residuals, towards 0 where neighbours are alike.
    pub statistic: f64,
    /// Probability of so low a value if the residuals are independent.
    pub p: f64,
}

impl DurbinWatson {
    /// Probability of a value so far to either side if the residuals are independent.
    pub fn two_sided_p(&self) -> f64 {
        (2.0 * self.p.min(1.0 - self.p)).clamp(0.0, 1.0)
    }
}

/// Tests whether the residuals e of a straight line on x are alike from neighbour to
/// neighbour. `follows[i]` says that point i follows directly on point i − 1; the first
/// entry does not count. The line has two `parameters`; where groups of points have an
/// intercept each it has one more than groups, and x is that about the group's mean.
///
/// d = ((n − 1)/m) Σ(e_i − e_{i−1})²/Σe² over the m pairs of neighbours, which is the
/// usual statistic where all points follow each other. Its mean and variance under
/// independence are those of a ratio of quadratic forms, exactly; p takes it as normal.
/// `None` with fewer than five points or three pairs, or without residuals.
///
/// # Source
/// Durbin and Watson, Biometrika 37 (1950) 409–428, for mean and variance.
/// DIFFERENCE: pairs across a gap or from run to run are left out.
pub fn durbin_watson(
    x: &[f64],
    residuals: &[f64],
    follows: &[bool],
    parameters: usize,
) -> Option<DurbinWatson> {
    let n = x.len();
    let is_pair = |i: usize| i > 0 && follows[i];
    let pairs = (0..n).filter(|&i| is_pair(i)).count();
    let squares: f64 = residuals.iter().map(|e| e * e).sum();
    let count = n as f64;
    let x_mean = x.iter().sum::<f64>() / count;
    let xx: f64 = x.iter().map(|x| squared(x - x_mean)).sum();
    if n < parameters + 3 || pairs < 3 || squares <= 0.0 || xx <= 0.0 {
        return None;
    }
    // A sums the squared differences of neighbours: Σ(e_i − e_{i−1})² = e'Ae.
    let steps = |v: &[f64]| -> f64 {
        let step = |i: usize| squared(v[i] - v[i - 1]);
        (0..n).filter(|&i| is_pair(i)).map(step).sum()
    };
    let neighbours = |i: usize| -> f64 {
        f64::from(u8::from(is_pair(i))) + f64::from(u8::from(i + 1 < n && is_pair(i + 1)))
    };
    let times_a = |i: usize| -> f64 {
        let before = if is_pair(i) { x[i] - x[i - 1] } else { 0.0 };
        let after = if i + 1 < n && is_pair(i + 1) {
            x[i] - x[i + 1]
        } else {
            0.0
        };
        before + after
    };
    // Traces of MA and (MA)² with M = I − 11'/n − zz'/Sxx, z = x − x̄; A1 = 0.
    let in_x = steps(x) / xx;
    let in_x_twice: f64 = (0..n).map(|i| squared(times_a(i))).sum::<f64>() / xx;
    let trace = 2.0 * pairs as f64 - in_x;
    let trace_of_square = (0..n).map(|i| squared(neighbours(i))).sum::<f64>() + 2.0 * pairs as f64
        - 2.0 * in_x_twice
        + in_x * in_x;
    let freedom = count - parameters as f64;
    let mean = trace / freedom;
    let variance =
        2.0 * (freedom * trace_of_square - trace * trace) / (freedom * freedom * (freedom + 2.0));
    let ratio = steps(residuals) / squares;
    let standardised = (ratio - mean) / variance.max(f64::MIN_POSITIVE).sqrt();
    Some(DurbinWatson {
        statistic: ratio * (count - 1.0) / pairs as f64,
        p: Normal::standard().cdf(standardised),
    })
}
