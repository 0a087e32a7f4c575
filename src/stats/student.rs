//! Student's t distribution.

use statrs::distribution::{ContinuousCDF, StudentsT};

/// Two-sided critical value of Student's t: the half-width, in standard errors,
/// of an interval that covers the given probability (0 to 1, exclusive) with
/// `degrees_of_freedom` ≥ 1.
///
/// ```
/// let t = simmerline::stats::student::two_sided_t(0.95, 10);
/// assert!((t - 2.228138852).abs() < 1e-8);
/// ```
///
/// # Source
/// NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.2; by the statrs crate.
pub fn two_sided_t(coverage: f64, degrees_of_freedom: usize) -> f64 {
    distribution(degrees_of_freedom as f64).inverse_cdf((1.0 + coverage) / 2.0)
}

/// Value that Student's t stays below with a probability (0 to 1, exclusive);
/// `degrees_of_freedom` ≥ 1 may be a fraction.
pub fn quantile_t(probability: f64, degrees_of_freedom: f64) -> f64 {
    distribution(degrees_of_freedom).inverse_cdf(probability)
}

/// Probability that Student's t lies at least as far from zero, on either side, as `t`;
/// `degrees_of_freedom` ≥ 1 may be a fraction.
///
/// ```
/// let p = simmerline::stats::student::two_sided_p(2.228138852, 10.0);
/// assert!((p - 0.05).abs() < 1e-9);
/// ```
pub fn two_sided_p(t: f64, degrees_of_freedom: f64) -> f64 {
    2.0 * distribution(degrees_of_freedom).sf(t.abs())
}

fn distribution(degrees_of_freedom: f64) -> StudentsT {
    StudentsT::new(0.0, 1.0, degrees_of_freedom)
        .expect("whoever asks has at least one degree of freedom")
}
