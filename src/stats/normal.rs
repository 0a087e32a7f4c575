//! The normal distribution.

use statrs::distribution::{ContinuousCDF, Normal};

/// Where the points of an ordered sample of a normal distribution of mean 0 and standard
/// deviation 1 are to be expected: Φ⁻¹((i − 3/8)/(n + 1/4)), i from 1 to n.
///
/// # Source
/// Blom 1958, as common in normal probability plots; NIST/SEMATECH e-Handbook, 1.3.3.21.
pub fn normal_order_scores(count: usize) -> Vec<f64> {
    let normal = Normal::standard();
    let probability = |place: usize| (place as f64 + 1.0 - 0.375) / (count as f64 + 0.25);
    (0..count)
        .map(|place| normal.inverse_cdf(probability(place)))
        .collect()
}

/// The value below which a share of a normal distribution of mean 0 and standard deviation 1
/// lies: Φ⁻¹(p), p between 0 and 1.
///
/// ```
/// use simmerline::stats::normal::quantile;
/// assert!((quantile(0.975) - 1.959964).abs() < 1e-6);
/// assert_eq!(quantile(0.5), 0.0);
/// ```
///
/// # Source
/// The digits of the example: NIST/SEMATECH e-Handbook, 1.3.6.7.1, to which the table of
/// the normal distribution leads.
pub fn quantile(p: f64) -> f64 {
    Normal::standard().inverse_cdf(p)
}
