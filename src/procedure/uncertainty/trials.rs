//! The budget once more, by drawing.

use super::budget::Budget;
use super::fitted::{Fitted, Statistical};
use super::shift::Shift;
use crate::campaign::classes::Spread;
use crate::procedure::sources::{CommonError, Source};
use crate::stats::line::Bounds;
use crate::stats::monte_carlo::{
    AT_ONCE, BLOCK, Generator, Outcome, Plan, normal, propagate, rectangular, tolerance,
};
use rand_distr::{ChiSquared, Distribution};

/// Seed of every campaign's draws.
pub const SEED: u64 = 101;
/// Significant digits of the standard uncertainty that both ways must agree in.
pub const DIGITS: i32 = 1;
/// The draws are made finer than the tolerance by this much.
pub const FINER: f64 = 5.0;
/// Most trials, a whole number of rounds.
pub const MOST_TRIALS: usize = 4 * AT_ONCE * BLOCK;

/// What the draws say of a figure, in its unit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MonteCarlo {
    pub outcome: Outcome,
    /// Standard deviation of the draws; `None` where Student's t has none, with two degrees of
    /// freedom or fewer.
    pub sd: Option<f64>,
    /// Largest difference of the ends of both intervals that is none.
    pub tolerance: f64,
    /// Larger of the differences of the lower and of the upper ends.
    pub apart: f64,
}

impl MonteCarlo {
    /// Whether the budget's interval is that of the draws.
    pub fn agrees(&self) -> bool {
        self.apart <= self.tolerance
    }
}

/// The interval that is printed: the budget's where the draws agree with it, else the wider
/// end on either side.
pub fn printed(budget: &Budget, drawn: Option<&MonteCarlo>) -> Bounds {
    let interval = budget.interval();
    match drawn.filter(|drawn| !drawn.agrees()) {
        Some(drawn) => Bounds {
            lower: interval.lower.min(drawn.outcome.lower),
            upper: interval.upper.max(drawn.outcome.upper),
        },
        None => interval,
    }
}

/// Draws every error of some figures through the whole computation: readings, power, fit,
/// figure.
///
/// `figures` reads them off both parameters; `budgets` are theirs. Common errors are drawn once
/// a trial, stated ones from a normal distribution and those within limits from a rectangular
/// one. What scatter and days give both parameters (that of the figure with these `weights`) is
/// normal for a given spread, so it is drawn as that, by a scale that is drawn once a trial: a
/// scaled t distribution with their degrees of freedom. `None` where nothing is uncertain, and
/// where irradiance is so uncertain that some draws of it fall to zero or below.
///
/// # Source
/// JCGM 101:2008, 6.4 for the distributions, 7.9 for the number of trials, 8.1 for the
/// comparison and its tolerance, here of one significant digit.
pub fn draw<const Q: usize>(
    fitted: &Fitted,
    weights: [f64; 2],
    budgets: &[Budget; Q],
    figures: impl Fn([f64; 2]) -> [f64; Q] + Sync,
) -> [Option<MonteCarlo>; Q] {
    let Statistical {
        covariance,
        freedom,
        ..
    } = fitted.statistical(weights);
    let is_uncertain = budgets.iter().any(|budget| budget.combined > 0.0);
    let Some(chi) = ChiSquared::new(freedom).ok().filter(|_| is_uncertain) else {
        return [None; Q];
    };
    let [first, below, second] = covariance.root();
    let tolerances = budgets
        .each_ref()
        .map(|budget| tolerance(budget.combined, DIGITS));
    let plan = Plan {
        seed: SEED,
        tolerance: tolerances.map(|tolerance| tolerance / FINER),
        block: BLOCK,
        most_trials: MOST_TRIALS,
    };
    let places = Places::of(fitted.common());
    let outcomes = propagate(plan, || {
        let (places, figures) = (&places, &figures);
        let mut drawn = vec![0.0; places.errors.len()];
        move |generator: &mut Generator| {
            let shift = places.draw(&mut drawn, generator);
            let scale = (freedom / chi.sample(generator)).sqrt();
            let (one, two) = (normal(generator), normal(generator));
            let fit = fitted.moments.fit(fitted.law, &shift);
            let fit = fit.filter(|_| shift.irradiance > 0.0);
            fit.map_or([f64::NAN; Q], |[b1, b2]| {
                figures([
                    b1 + scale * first * one,
                    b2 + scale * (below * one + second * two),
                ])
            })
        }
    });
    std::array::from_fn(|which| {
        let (budget, outcome) = (&budgets[which], outcomes[which]);
        let is_known = outcome.mean.is_finite() && outcome.sd.is_finite();
        let interval = budget.interval();
        let lower = (interval.lower - outcome.lower).abs();
        (is_known && budget.combined > 0.0).then(|| MonteCarlo {
            sd: (freedom > 2.0).then_some(outcome.sd),
            outcome,
            tolerance: tolerances[which],
            apart: lower.max((interval.upper - outcome.upper).abs()),
        })
    })
}

/// The common errors, each with the place of the draw that it takes: errors of one identity
/// take one.
pub struct Places<'f> {
    errors: Vec<Placed<'f>>,
}

/// An error with its place, and what a draw takes of it at hand.
struct Placed<'f> {
    error: &'f CommonError,
    place: usize,
    spread: Spread,
    source: Source,
    /// One standard uncertainty.
    size: f64,
}

impl<'f> Places<'f> {
    /// Those of some errors.
    pub fn of(errors: impl Iterator<Item = &'f CommonError>) -> Places<'f> {
        let all: Vec<&CommonError> = errors.collect();
        let place = |error: &CommonError| {
            let mut known = all.iter();
            known.position(|known| known.identity == error.identity)
        };
        let errors = all.iter().map(|error| Placed {
            error,
            place: place(error).unwrap_or(0),
            spread: error.spread,
            source: error.source,
            size: error.standard.size(),
        });
        Places {
            errors: errors.collect(),
        }
    }

    /// Each error with its draw, in standard uncertainties.
    pub fn each<'p>(&'p self, drawn: &'p [f64]) -> impl Iterator<Item = (&'f CommonError, f64)> {
        let errors = self.errors.iter();
        errors.map(|placed| (placed.error, drawn[placed.place]))
    }

    /// Readings that are off by a draw of each; `drawn` has room for it.
    pub fn draw(&self, drawn: &mut [f64], generator: &mut Generator) -> Shift {
        let mut shift = Shift::NONE;
        for (index, placed) in self.errors.iter().enumerate() {
            if placed.place == index {
                drawn[index] = match placed.spread {
                    Spread::Normal => normal(generator),
                    Spread::Rectangular => rectangular(generator),
                };
            }
            shift.add(placed.source, drawn[placed.place] * placed.size);
        }
        shift
    }
}
