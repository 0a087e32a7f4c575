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
    StudentsT::new(0.0, 1.0, degrees_of_freedom as f64)
        .expect("a line has at least one degree of freedom")
        .inverse_cdf((1.0 + coverage) / 2.0)
}
