//! Errors of two campaigns in the difference of a figure: what is one error in both cancels as far
//! as it does the same to both.

use crate::procedure::sources::Source;
use crate::procedure::uncertainty::Budget;
use crate::procedure::uncertainty::budget::Origin;
use crate::stats::combine::combined;

/// An error of one campaign, with its effect on the difference.
#[derive(Debug, Clone)]
pub struct Effect {
    pub source: Source,
    /// Errors of one identity are one error.
    pub identity: String,
    /// Standard uncertainty that it gives the difference, with its sign, in the figure's unit.
    pub effect: f64,
}

/// Errors of the first and of the second campaign in second less first; `is_one_sky`: what
/// estimates of irradiance are off by is one error in both.
pub fn effects_of([first, second]: [&Budget; 2], is_one_sky: bool) -> Vec<Effect> {
    let of = |budget: &Budget, sign: f64| -> Vec<Effect> {
        let parts = budget.contributions.iter();
        let effects = parts.filter_map(|part| match &part.origin {
            Origin::Common(error) => Some((error, sign * part.effect)),
            _ => None,
        });
        effects
            .map(|(error, effect)| Effect {
                source: error.source,
                identity: if is_one_sky && error.source.is_estimate() {
                    error.source.code().to_owned()
                } else {
                    error.identity.clone()
                },
                effect,
            })
            .collect()
    };
    [of(first, -1.0), of(second, 1.0)].concat()
}

/// Standard uncertainty of some errors together.
pub fn common(effects: &[Effect]) -> f64 {
    let sizes: Vec<f64> = effects.iter().map(|effect| effect.effect).collect();
    let correlation =
        |i: usize, j: usize| f64::from(u8::from(effects[i].identity == effects[j].identity));
    combined(&sizes, correlation)
}
