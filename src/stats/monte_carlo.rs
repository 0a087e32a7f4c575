//! Propagation of distributions by drawing.

use rand_distr::{Distribution, StandardNormal};
use rand_xoshiro::Xoshiro256PlusPlus;
use rand_xoshiro::rand_core::{Rng, SeedableRng};
use simmerline_math::{log10, power_of_ten, squared};

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
    /// How far the end that is known less may be off: twice the standard deviation of its mean
    /// over the blocks.
    pub ends_within: f64,
    /// Both ends are known as closely as was asked for.
    pub is_stable: bool,
}

/// How long to draw.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Plan<const Q: usize> {
    pub seed: u64,
    /// How closely both ends of each quantity are wanted, in its unit.
    pub tolerance: [f64; Q],
    pub block: usize,
    pub most_trials: usize,
}

/// Source of random numbers, the same on every machine.
pub type Generator = Xoshiro256PlusPlus;

/// A number from the normal distribution of mean 0 and standard deviation 1.
#[inline]
pub fn normal(generator: &mut Generator) -> f64 {
    StandardNormal.sample(generator)
}

/// A number from the rectangular distribution of mean 0 and standard deviation 1.
#[inline]
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
        let last_digit = log10(standard_uncertainty).floor() as i32 - (digits - 1);
        0.5 * power_of_ten(last_digit)
    } else {
        0.0
    }
}

/// Draws quantities block by block until both ends of each 95 % interval are known within
/// the plan's tolerance (twice the standard deviation of their mean over the blocks), or
/// the trials are used up. `begin` gives a block what it draws with. Blocks are drawn
/// side by side, each from a seed of its own, so the outcome does not depend on how many
/// cores there are.
///
/// # Source
/// JCGM 101:2008, 7.9.4; ends by 7.7.2, probabilistically symmetric. DIFFERENCE: mean and
/// standard deviation need not be stable, since a t distribution with few degrees of
/// freedom has no standard deviation.
pub fn propagate<const Q: usize, D>(plan: Plan<Q>, begin: impl Fn() -> D + Sync) -> [Outcome; Q]
where
    D: FnMut(&mut Generator) -> [f64; Q],
{
    let draw_block = |block: usize| -> [Block; Q] {
        let mut generator = Generator::seed_from_u64(plan.seed.wrapping_add(block as u64));
        let mut draw = begin();
        let mut draws = [(); Q].map(|()| Vec::with_capacity(plan.block));
        for _ in 0..plan.block {
            for (draws, drawn) in draws.iter_mut().zip(draw(&mut generator)) {
                draws.push(drawn);
            }
        }
        draws.map(Block::of)
    };
    let mut blocks: Vec<[Block; Q]> = Vec::new();
    loop {
        let first = blocks.len();
        let drawn: Vec<[Block; Q]> = std::thread::scope(|scope| {
            let draw_block = &draw_block;
            let threads: Vec<_> = (first..first + AT_ONCE)
                .map(|block| scope.spawn(move || draw_block(block)))
                .collect();
            threads
                .into_iter()
                .map(|thread| thread.join().expect("drawing numbers does not panic"))
                .collect()
        });
        blocks.extend(drawn);
        let of = |which: usize| blocks.iter().map(move |block| &block[which]);
        let within: [f64; Q] = std::array::from_fn(|which| ends_within(of(which)));
        let is_stable = |which: usize| within[which] <= plan.tolerance[which];
        let is_enough = (blocks.len() + AT_ONCE) * plan.block > plan.most_trials;
        if is_enough || (0..Q).all(is_stable) {
            return std::array::from_fn(|which| Outcome {
                ends_within: within[which],
                is_stable: is_stable(which),
                ..outcome(of(which))
            });
        }
    }
}

/// The draws of one quantity in one block.
struct Block {
    draws: Vec<f64>,
    ends: [f64; 2],
}

impl Block {
    fn of(mut draws: Vec<f64>) -> Block {
        let ends = ends_of(&mut draws);
        Block { draws, ends }
    }
}

/// All but how settled it is.
fn outcome<'b>(blocks: impl Iterator<Item = &'b Block> + Clone) -> Outcome {
    let trials: usize = blocks.clone().map(|block| block.draws.len()).sum();
    let count = trials as f64;
    let of_each = |sum: &dyn Fn(&[f64]) -> f64| -> f64 {
        blocks.clone().map(|block| sum(&block.draws)).sum()
    };
    let mean = of_each(&|draws| draws.iter().sum()) / count;
    let squares = of_each(&|draws| draws.iter().map(|draw| squared(draw - mean)).sum());
    let [lower, upper] = [0, 1].map(|which| end_of_all(blocks.clone(), which, trials));
    Outcome {
        mean,
        sd: (squares / (count - 1.0)).sqrt(),
        lower,
        upper,
        trials,
        ends_within: f64::INFINITY,
        is_stable: false,
    }
}

/// Probabilities of the ends of the interval that leaves 2.5 % on either side.
const ENDS: [f64; 2] = [0.025, 0.975];

/// Place of the draw that is an end, among so many in order.
fn place_of(probability: f64, draws: usize) -> usize {
    ((probability * draws as f64).round() as usize).min(draws - 1)
}

/// Both ends; the draws change places.
fn ends_of(draws: &mut [f64]) -> [f64; 2] {
    let [below, above] = ENDS.map(|probability| place_of(probability, draws.len()));
    let (lower, higher) = {
        let (_, lower, higher) = draws.select_nth_unstable_by(below, f64::total_cmp);
        (*lower, higher)
    };
    let upper = match above.checked_sub(below + 1) {
        Some(place) => *higher.select_nth_unstable_by(place, f64::total_cmp).1,
        None => lower,
    };
    [lower, upper]
}

/// An end of the draws of all blocks. It lies between those of the blocks, since each leaves the
/// same share of its own draws beyond its end: only the few draws there are put in order.
fn end_of_all<'b>(
    blocks: impl Iterator<Item = &'b Block> + Clone,
    which: usize,
    trials: usize,
) -> f64 {
    let place = place_of(ENDS[which], trials);
    let ends = blocks.clone().map(|block| block.ends[which]);
    let (Some(least), Some(most)) = (
        ends.clone().min_by(f64::total_cmp),
        ends.max_by(f64::total_cmp),
    ) else {
        return f64::NAN;
    };
    let mut below = 0;
    let mut between: Vec<f64> = Vec::new();
    for block in blocks.clone() {
        for draw in &block.draws {
            if draw.total_cmp(&least).is_lt() {
                below += 1;
            } else if draw.total_cmp(&most).is_le() {
                between.push(*draw);
            }
        }
    }
    match place
        .checked_sub(below)
        .filter(|place| *place < between.len())
    {
        Some(place) => *between.select_nth_unstable_by(place, f64::total_cmp).1,
        // Blocks whose rounded places do not add up to that of all.
        None => {
            let mut all: Vec<f64> = blocks.flat_map(|block| block.draws.clone()).collect();
            *all.select_nth_unstable_by(place, f64::total_cmp).1
        }
    }
}

/// Twice the standard deviation of the mean over the blocks, of the end that has the larger.
fn ends_within<'b>(blocks: impl Iterator<Item = &'b Block> + Clone) -> f64 {
    let count = blocks.clone().count() as f64;
    let within = |which: usize| {
        let ends = blocks.clone().map(|block| block.ends[which]);
        let mean = ends.clone().sum::<f64>() / count;
        let squares: f64 = ends.map(|end| squared(end - mean)).sum();
        2.0 * (squares / (count * (count - 1.0))).sqrt()
    };
    // A draw that is no number leaves nothing known.
    let both = [0, 1].map(within);
    if both.iter().any(|end| end.is_nan()) {
        f64::INFINITY
    } else {
        both[0].max(both[1])
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Blocks of so many draws, the later ones further off.
    fn blocks(sizes: &[usize]) -> Vec<Block> {
        let mut generator = Generator::seed_from_u64(3);
        let mut draws_of = |(block, size): (usize, &usize)| {
            let draws = (0..*size).map(|_| normal(&mut generator) + 0.3 * block as f64);
            Block::of(draws.collect())
        };
        sizes.iter().enumerate().map(&mut draws_of).collect()
    }

    #[test]
    fn ends_of_all_blocks_are_those_of_all_draws_in_order() {
        for sizes in [&[1000, 1000, 1000][..], &[40, 39, 41], &[7, 1, 3], &[1]] {
            let blocks = blocks(sizes);
            let mut all: Vec<f64> = blocks
                .iter()
                .flat_map(|block| block.draws.clone())
                .collect();
            all.sort_by(f64::total_cmp);
            let found = outcome(blocks.iter());
            let expected = ENDS.map(|probability| all[place_of(probability, all.len())]);
            assert_eq!([found.lower, found.upper], expected, "{sizes:?}");
            assert_eq!(found.trials, all.len());
        }
    }

    #[test]
    fn an_end_among_draws_without_a_number_is_none_and_not_another() {
        let block = Block::of(vec![f64::NAN; 40]);
        let found = outcome([block].iter());
        assert!(found.upper.is_nan() && found.mean.is_nan());
    }
}
