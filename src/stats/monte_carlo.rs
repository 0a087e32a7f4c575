//! Propagation of distributions by drawing.

use rand_distr::{Distribution, StandardNormal};
use rand_xoshiro::Xoshiro256PlusPlus;
use rand_xoshiro::rand_core::{Rng, SeedableRng};

/// Trials in a block.
pub const BLOCK: usize = 10_000;
/// Blocks that are drawn side by side.
pub const AT_ONCE: usize = 4;

/// What the draws say of a quantity, in its unit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Outcome {
    pub mean: f64,
    pub sd: f64,
    /// Ends of the interval that leaves 2.5 % of the draws on either side.
    pub lower: f64,
    pub upper: f64,
    pub trials: usize,
    /// Both ends are known as closely as was asked for.
    pub is_stable: bool,
}

/// How long to draw.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Plan {
    pub seed: u64,
    /// How closely both ends are wanted.
    pub tolerance: f64,
    pub block: usize,
    pub most_trials: usize,
}

/// Source of random numbers, the same on every machine.
pub type Generator = Xoshiro256PlusPlus;

/// A number from the normal distribution of mean 0 and standard deviation 1.
pub fn normal(generator: &mut Generator) -> f64 {
    StandardNormal.sample(generator)
}

/// A number from the rectangular distribution of mean 0 and standard deviation 1.
pub fn rectangular(generator: &mut Generator) -> f64 {
    // 53 random bits, from 0 to just below 1.
    let unit = (generator.next_u64() >> 11) as f64 / (1_u64 << 53) as f64;
    (2.0 * unit - 1.0) * 3.0_f64.sqrt()
}

/// Numerical tolerance of an uncertainty given to so many significant digits: half of the
/// last one.
///
/// ```
/// use simmerline::stats::monte_carlo::tolerance;
/// assert!((tolerance(0.35, 2) - 0.005).abs() < 1e-12);
/// assert!((tolerance(3.2, 1) - 0.5).abs() < 1e-12);
/// ```
///
/// # Source
/// JCGM 101:2008, 7.9.2.
pub fn tolerance(standard_uncertainty: f64, digits: i32) -> f64 {
    if standard_uncertainty > 0.0 && standard_uncertainty.is_finite() {
        let last_digit = standard_uncertainty.log10().floor() as i32 - (digits - 1);
        0.5 * 10_f64.powi(last_digit)
    } else {
        0.0
    }
}

/// Draws a quantity block by block until both ends of the 95 % interval are known within
/// the plan's tolerance (twice the standard deviation of their mean over the blocks), or
/// the trials are used up. `begin` gives a block what it draws with. Blocks are drawn
/// side by side, each from a seed of its own, so the outcome does not depend on how many
/// cores there are.
///
/// # Source
/// JCGM 101:2008, 7.9.4; ends by 7.7.2, probabilistically symmetric. DIFFERENCE: mean and
/// standard deviation need not be stable, since a t distribution with few degrees of
/// freedom has no standard deviation.
pub fn propagate<D>(plan: Plan, begin: impl Fn() -> D + Sync) -> Outcome
where
    D: FnMut(&mut Generator) -> f64,
{
    let draw_block = |block: usize| -> Vec<f64> {
        let mut generator = Generator::seed_from_u64(plan.seed.wrapping_add(block as u64));
        let mut draw = begin();
        let mut draws: Vec<f64> = (0..plan.block).map(|_| draw(&mut generator)).collect();
        draws.sort_unstable_by(f64::total_cmp);
        draws
    };
    let mut ends: Vec<[f64; 2]> = Vec::new();
    let mut all = Vec::new();
    loop {
        let first = ends.len();
        let blocks: Vec<Vec<f64>> = std::thread::scope(|scope| {
            let draw_block = &draw_block;
            let threads: Vec<_> = (first..first + AT_ONCE)
                .map(|block| scope.spawn(move || draw_block(block)))
                .collect();
            threads
                .into_iter()
                .map(|thread| thread.join().expect("drawing numbers does not panic"))
                .collect()
        });
        for block in blocks {
            ends.push(ends_of(&block));
            all.extend(block);
        }
        let is_stable = is_stable(&ends, plan.tolerance);
        if is_stable || all.len() + AT_ONCE * plan.block > plan.most_trials {
            all.sort_unstable_by(f64::total_cmp);
            return outcome(&all, is_stable);
        }
    }
}

fn outcome(sorted: &[f64], is_stable: bool) -> Outcome {
    let count = sorted.len() as f64;
    let mean = sorted.iter().sum::<f64>() / count;
    let squares: f64 = sorted.iter().map(|draw| (draw - mean).powi(2)).sum();
    let [lower, upper] = ends_of(sorted);
    Outcome {
        mean,
        sd: (squares / (count - 1.0)).sqrt(),
        lower,
        upper,
        trials: sorted.len(),
        is_stable,
    }
}

fn ends_of(sorted: &[f64]) -> [f64; 2] {
    [0.025, 0.975].map(|probability| {
        let place = (probability * sorted.len() as f64).round() as usize;
        sorted[place.min(sorted.len() - 1)]
    })
}

fn is_stable(ends: &[[f64; 2]], tolerance: f64) -> bool {
    let count = ends.len() as f64;
    (0..2).all(|which| {
        let mean = ends.iter().map(|block| block[which]).sum::<f64>() / count;
        let squares: f64 = ends.iter().map(|block| (block[which] - mean).powi(2)).sum();
        2.0 * (squares / (count * (count - 1.0))).sqrt() <= tolerance
    })
}
