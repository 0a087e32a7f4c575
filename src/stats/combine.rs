//! Combining standard uncertainties.

use simmerline_math::squared;

/// Combined standard uncertainty of contributions c_i·u_i, each with its sign:
/// u² = Σ_i Σ_j c_i u_i c_j u_j r_ij, with the correlation r of two inputs (1 of an input
/// with itself).
///
/// ```
/// use simmerline::stats::combine::combined;
/// let alike = |_, _| 1.0;
/// assert_eq!(combined(&[3.0, -3.0], alike), 0.0);
/// ```
///
/// # Source
/// JCGM 100:2008, equation 16.
pub fn combined(contributions: &[f64], correlation: impl Fn(usize, usize) -> f64) -> f64 {
    let mut variance = 0.0;
    for (i, one) in contributions.iter().enumerate() {
        for (j, two) in contributions.iter().enumerate() {
            let r = if i == j { 1.0 } else { correlation(i, j) };
            variance += one * two * r;
        }
    }
    variance.max(0.0).sqrt()
}

/// Effective degrees of freedom of a combined standard uncertainty:
/// ν = u⁴/Σ(u_i⁴/ν_i), over the contributions that have finite degrees of freedom, given
/// as u_i and ν_i. Infinite if there is none that counts.
///
/// # Source
/// Welch–Satterthwaite: JCGM 100:2008, equation G.2b.
pub fn effective_freedom(combined: f64, finite: &[(f64, f64)]) -> f64 {
    let rest: f64 = finite
        .iter()
        .map(|(u, freedom)| squared(squared(*u)) / freedom)
        .sum();
    if rest > 0.0 {
        squared(squared(combined)) / rest
    } else {
        f64::INFINITY
    }
}
