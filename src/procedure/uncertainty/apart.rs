//! Why the interval by drawing is not the budget's.

use super::budget::{Budget, Origin};
use super::fitted::{Fitted, Statistical};
use super::trials::{MonteCarlo, Places, SEED};
use crate::campaign::classes::Spread;
use crate::stats::line::Bounds;
use crate::stats::monte_carlo::{BLOCK, Generator, Plan, normal, propagate};
use crate::stats::normal::quantile;
use rand_distr::{ChiSquared, Distribution};

/// What sets both intervals apart most.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Apart {
    /// The figure is divided by irradiance: as far off on either side, it moves the figure
    /// further on one.
    Division,
    /// Other errors do not act in proportion, or not one by one.
    Curved,
    /// Errors known by their limits alone have no tails; the budget takes them as normal.
    Limits,
    /// Few degrees of freedom: Student's t and a normal distribution do not combine exactly as
    /// the root of a sum of squares.
    FewFreedom,
    /// The draws themselves: their ends had not settled.
    Unsettled,
}

/// The part of each cause in the distance of one end, in the figure's unit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Causes {
    pub division: f64,
    pub curved: f64,
    pub limits: f64,
    pub few_freedom: f64,
    /// How far the draws' own end is unsettled.
    pub unsettled: f64,
}

impl Causes {
    /// The one that does most towards `distance`.
    fn gravest(&self, distance: f64) -> Apart {
        let tails = if self.few_freedom.abs() <= self.unsettled {
            Apart::Unsettled
        } else {
            Apart::FewFreedom
        };
        let all = [
            (Apart::Division, self.division),
            (Apart::Curved, self.curved),
            (Apart::Limits, self.limits),
            (tails, self.few_freedom),
        ];
        let towards = |size: f64| size * distance.signum();
        let gravest = all.into_iter();
        let gravest = gravest.max_by(|one, two| towards(one.1).total_cmp(&towards(two.1)));
        gravest.map_or(tails, |(cause, _)| cause)
    }
}

/// What sets the draws of the figure with these `weights` apart from its budget; `None` where
/// they agree.
///
/// The same random numbers are put through the budget's own sum of effects with every error
/// normal, then with each error's own distribution, and then with a division by irradiance. From
/// the budget's interval to the draws' each step adds one cause, and the end that lies further
/// off tells which of them does most.
pub fn apart(
    fitted: &Fitted,
    weights: [f64; 2],
    budget: &Budget,
    drawn: &MonteCarlo,
) -> Option<Apart> {
    if drawn.agrees() {
        return None;
    }
    let [below, above] = causes(fitted, weights, budget, drawn)?;
    let interval = budget.interval();
    let lower = drawn.outcome.lower - interval.lower;
    let upper = drawn.outcome.upper - interval.upper;
    Some(if lower.abs() > upper.abs() {
        below.gravest(lower)
    } else {
        above.gravest(upper)
    })
}

/// What each cause does to the lower and to the upper end.
pub fn causes(
    fitted: &Fitted,
    weights: [f64; 2],
    budget: &Budget,
    drawn: &MonteCarlo,
) -> Option<[Causes; 2]> {
    let Statistical {
        covariance,
        freedom,
        ..
    } = fitted.statistical(weights);
    let chi = ChiSquared::new(freedom).ok()?;
    let [first, below, second] = covariance.root();
    let effects: Vec<f64> = budget
        .contributions
        .iter()
        .filter_map(common_effect)
        .collect();
    let places = Places::of(fitted.common());
    let plan = Plan {
        seed: SEED,
        tolerance: [0.0; 3],
        block: BLOCK,
        most_trials: drawn.outcome.trials,
    };
    let [normals, linear, divided] = propagate(plan, || {
        let (places, effects) = (&places, &effects);
        let mut drawn = vec![0.0; effects.len()];
        move |generator: &mut Generator| {
            let shift = places.draw(&mut drawn, generator);
            let scale = (freedom / chi.sample(generator)).sqrt();
            let (one, two) = (normal(generator), normal(generator));
            let scattered =
                scale * (weights[0] * first * one + weights[1] * (below * one + second * two));
            let (mut as_normal, mut of_sun, mut of_others) = (0.0, 0.0, 0.0);
            for ((error, unit), effect) in places.each(&drawn).zip(effects) {
                as_normal += effect * as_if_normal(error.spread, unit);
                if error.source.is_irradiance() {
                    of_sun += effect * unit;
                } else {
                    of_others += effect * unit;
                }
            }
            [
                budget.value + as_normal + scattered,
                budget.value + of_sun + of_others + scattered,
                (budget.value + of_others) / shift.irradiance + scattered,
            ]
        }
    });
    let ends = |of: &dyn Fn(Bounds) -> f64| {
        let bounds = |outcome: &crate::stats::monte_carlo::Outcome| Bounds {
            lower: outcome.lower,
            upper: outcome.upper,
        };
        Causes {
            few_freedom: of(bounds(&normals)) - of(budget.interval()),
            limits: of(bounds(&linear)) - of(bounds(&normals)),
            division: of(bounds(&divided)) - of(bounds(&linear)),
            curved: of(bounds(&drawn.outcome)) - of(bounds(&divided)),
            unsettled: normals.ends_within,
        }
    };
    Some([ends(&|bounds| bounds.lower), ends(&|bounds| bounds.upper)])
}

fn common_effect(part: &super::budget::Contribution) -> Option<f64> {
    matches!(part.origin, Origin::Common(_)).then_some(part.effect)
}

/// The draw of a normal distribution that stands as far out as this one of its own.
fn as_if_normal(spread: Spread, unit: f64) -> f64 {
    match spread {
        Spread::Normal => unit,
        Spread::Rectangular => quantile((unit / 3.0_f64.sqrt() + 1.0) / 2.0),
    }
}
