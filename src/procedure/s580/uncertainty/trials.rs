//! The budget once more, by drawing.

use super::budget::{Budget, LineUncertainty};
use crate::campaign::classes::Spread;
use crate::procedure::s580::intervals::{Interval, cooking_power_w, standardised_power_w};
use crate::procedure::sources::{CommonError, Source};
use crate::stats::monte_carlo::{
    AT_ONCE, BLOCK, Generator, Outcome, Plan, normal, propagate, rectangular, tolerance,
};
use rand_distr::{ChiSquared, Distribution};

/// Seed of every campaign's draws.
pub const SEED: u64 = 101;
/// Significant digits of the standard uncertainty that both ways must agree in.
const DIGITS: i32 = 1;
/// The draws are made finer than the tolerance by this much.
const FINER: f64 = 5.0;
/// Most intervals that are drawn, over all trials.
const MOST_DRAWS: usize = 4_000_000;
/// Fewest trials in a block.
const SMALLEST_BLOCK: usize = 2_000;

/// What the draws say of Ps(50).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MonteCarlo {
    pub outcome: Outcome,
    /// Standard deviation of the draws, W; `None` where Student's t has none, with two
    /// degrees of freedom or fewer.
    pub sd_w: Option<f64>,
    /// Largest difference of the ends of both intervals that is none, W.
    pub tolerance_w: f64,
    /// Larger of the differences of the lower and of the upper ends, W.
    pub apart_w: f64,
}

impl MonteCarlo {
    /// Whether the budget's interval is that of the draws.
    pub fn agrees(&self) -> bool {
        self.apart_w <= self.tolerance_w
    }
}

/// One interval as it was read.
struct Read {
    water_kg: f64,
    start_c: f64,
    end_c: f64,
    duration_s: f64,
    irradiance_w_m2: f64,
    difference_k: f64,
    day: usize,
}

/// Draws every error of the budget through the whole computation: readings, power,
/// normalisation, regression, line at the budget's temperature difference.
///
/// Common errors are drawn once a trial, stated ones from a normal distribution and those
/// within limits from a rectangular one; scatter and days as a scaled t distribution with
/// their degrees of freedom, the scale drawn once a trial. `None` where nothing is uncertain,
/// and where irradiance is so uncertain that some draws of it fall to zero or below.
///
/// # Source
/// JCGM 101:2008, 6.4 for the distributions, 7.9 for the number of trials, 8.1 for the
/// comparison and its tolerance, here of one significant digit.
pub fn draw(
    uncertainty: &LineUncertainty,
    budget: &Budget,
    intervals: &[(&Interval, f64)],
    day: &[usize],
) -> Option<MonteCarlo> {
    if budget.combined_w <= 0.0 {
        return None;
    }
    let reads = reads(intervals, day);
    let tolerance_w = tolerance(budget.combined_w, DIGITS);
    let intervals = reads.len().max(1);
    let block = (MOST_DRAWS / AT_ONCE / intervals).clamp(SMALLEST_BLOCK, BLOCK);
    let plan = Plan {
        seed: SEED,
        tolerance: tolerance_w / FINER,
        block,
        most_trials: MOST_DRAWS / intervals,
    };
    let scatter = uncertainty.scatter();
    let chi = ChiSquared::new(scatter.freedom).ok()?;
    let outcome = propagate(plan, || {
        let mut of_day = vec![0.0; uncertainty.days.days.len()];
        let reads = &reads;
        move |generator: &mut Generator| {
            let errors = Errors::draw(&uncertainty.common, generator);
            let scale = (scatter.freedom / chi.sample(generator)).sqrt();
            for day in &mut of_day {
                *day = scale * scatter.between_sd_w * normal(generator);
            }
            let points = reads.iter().map(|read| {
                let (difference_k, power_w) = errors.apply(read);
                let noise_w = scale * scatter.sd_w * normal(generator) + of_day[read.day];
                (difference_k, power_w + noise_w)
            });
            read_line(points, budget.at_k)
        }
    });
    if !(outcome.mean.is_finite() && outcome.sd.is_finite()) {
        return None;
    }
    let ends = [
        budget.power_w - budget.expanded_w(),
        budget.power_w + budget.expanded_w(),
    ];
    let apart_w = (ends[0] - outcome.lower)
        .abs()
        .max((ends[1] - outcome.upper).abs());
    Some(MonteCarlo {
        sd_w: (scatter.freedom > 2.0).then_some(outcome.sd),
        outcome,
        tolerance_w,
        apart_w,
    })
}

fn reads(intervals: &[(&Interval, f64)], day: &[usize]) -> Vec<Read> {
    let read = |((interval, water_kg), &day): (&(&Interval, f64), &usize)| {
        let interval = &interval.measured;
        Some(Read {
            water_kg: *water_kg,
            start_c: interval.water_start_c,
            end_c: interval.water_end_c,
            duration_s: interval.duration_s,
            irradiance_w_m2: interval.irradiance?.mean,
            difference_k: interval.difference_k?,
            day,
        })
    };
    intervals.iter().zip(day).filter_map(read).collect()
}

/// The common errors of one trial.
struct Errors {
    irradiance: f64,
    mass: f64,
    specific_heat: f64,
    time: f64,
    water_k: f64,
    ambient_k: f64,
}

impl Errors {
    fn draw(common: &[CommonError], generator: &mut Generator) -> Errors {
        let mut errors = Errors {
            irradiance: 1.0,
            mass: 1.0,
            specific_heat: 1.0,
            time: 1.0,
            water_k: 0.0,
            ambient_k: 0.0,
        };
        let mut drawn: Vec<(&str, f64)> = Vec::with_capacity(common.len());
        for error in common {
            let one = drawn
                .iter()
                .find(|(identity, _)| *identity == error.identity);
            let unit = match (one, error.spread) {
                (Some((_, unit)), _) => *unit,
                (None, Spread::Normal) => normal(generator),
                (None, Spread::Rectangular) => rectangular(generator),
            };
            drawn.push((&error.identity, unit));
            let size = unit * error.standard.size();
            match error.source {
                Source::Irradiance | Source::ClearSky | Source::Conversion | Source::Distance => {
                    errors.irradiance += size
                }
                Source::WaterMass => errors.mass += size,
                Source::SpecificHeat => errors.specific_heat += size,
                Source::ClockRate => errors.time += size,
                Source::WaterTemperature => errors.water_k += size,
                Source::AmbientTemperature => errors.ambient_k += size,
            }
        }
        errors
    }

    /// Td and Ps of an interval whose readings are off by these errors.
    fn apply(&self, read: &Read) -> (f64, f64) {
        let cooking_w = cooking_power_w(
            read.water_kg * self.mass,
            read.start_c + self.water_k,
            read.end_c + self.water_k,
            read.duration_s * self.time,
        ) * self.specific_heat;
        let irradiance_w_m2 = read.irradiance_w_m2 * self.irradiance;
        let power_w = standardised_power_w(cooking_w, irradiance_w_m2).unwrap_or(f64::NAN);
        (read.difference_k + self.water_k - self.ambient_k, power_w)
    }
}

/// Least squares, and the line at `at_k`.
fn read_line(points: impl Iterator<Item = (f64, f64)>, at_k: f64) -> f64 {
    // About the place where the line is read, so that its value there is the intercept.
    let (mut n, mut x1, mut y1, mut xx, mut xy) = (0.0, 0.0, 0.0, 0.0, 0.0);
    for (difference_k, y) in points {
        let x = difference_k - at_k;
        n += 1.0;
        x1 += x;
        y1 += y;
        xx += x * x;
        xy += x * y;
    }
    (y1 * xx - x1 * xy) / (n * xx - x1 * x1)
}
