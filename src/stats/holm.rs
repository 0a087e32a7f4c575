//! Several tests at once.

/// Holm's step-down correction: p values that may be held against one level however many
/// tests were made, in the order given.
///
/// ```
/// let adjusted = simmerline::stats::holm::holm(&[0.01, 0.04, 0.03]);
/// assert_eq!(adjusted, [0.03, 0.06, 0.06]);
/// ```
///
/// # Source
/// Holm, Scandinavian Journal of Statistics 6 (1979) 65–70.
pub fn holm(p: &[f64]) -> Vec<f64> {
    let mut order: Vec<usize> = (0..p.len()).collect();
    order.sort_by(|&one, &two| p[one].total_cmp(&p[two]));
    let mut adjusted = vec![0.0; p.len()];
    let mut highest = 0.0_f64;
    for (rank, &index) in order.iter().enumerate() {
        let times = (p.len() - rank) as f64;
        highest = highest.max((times * p[index]).min(1.0));
        adjusted[index] = highest;
    }
    adjusted
}
