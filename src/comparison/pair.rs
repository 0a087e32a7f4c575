//! The difference of two ratings.

use super::needed::{Needed, needed};
use super::shape::{Shape, shape};
use super::weigh::{Effect, Side, Weighed, apart, common, effects, weigh_figure};
use crate::language::Phrase;
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::heat_balance::balance::at_w;
use crate::procedure::s580::limits::{RATING_DIFFERENCE_K, STANDARD_IRRADIANCE_W_M2};
use crate::procedure::s580::uncertainty::days::SHOWN_P;
use crate::procedure::sources::Source;

/// Share by which mean irradiance may differ before ratings, which scale losses with the sun,
/// are no longer held against each other. Common practice, no published source: it moves a
/// rating by no more than this share of its losses.
const ALIKE_IRRADIANCE: f64 = 0.02;

/// What one source contributes to the uncertainty of a difference.
#[derive(Debug, Clone, PartialEq)]
pub struct Part {
    /// `None`: scatter and days.
    pub source: Option<Source>,
    /// Standard uncertainty that it gives the difference, W.
    pub of_difference_w: f64,
    /// What it would give if the two campaigns had nothing in common, W.
    pub apart_w: f64,
}

impl Part {
    /// What contributes, in words.
    pub fn name(&self) -> Phrase {
        match self.source {
            Some(source) => source.name().into(),
            None => message!("pair-budget-scatter").into(),
        }
    }
}

/// Two campaigns, the second held against the first.
#[derive(Debug, Clone, PartialEq)]
pub struct Difference {
    /// Places among the campaigns compared.
    pub first: usize,
    pub second: usize,
    /// Of Ps(50), W.
    pub ratings: Weighed,
    /// Irradiance differs by so much that ratings, which scale losses with the sun, say
    /// nothing of the cookers.
    pub conditions_differ: bool,
    /// Of the power at 700 W/m² and 50 K by the heat balances, W; `None` without them.
    pub common_conditions: Option<Weighed>,
    /// Of gain (m²) and loss (W/K).
    pub gain_m2: Option<Weighed>,
    pub loss_w_per_k: Option<Weighed>,
    /// Both were tested on several days, so that what a day does can be told.
    pub knows_days: bool,
    /// What contributes to the uncertainty of the ratings' difference.
    pub parts: Vec<Part>,
    /// `None` where slopes cannot be told apart from scatter.
    pub shape: Option<Shape>,
    pub needed: Needed,
}

/// A difference as one of several pairs.
#[derive(Debug, Clone, PartialEq)]
pub struct Pair {
    pub difference: Difference,
    /// Probability of so large a difference if there is none, corrected by Holm for the
    /// number of pairs.
    pub p_corrected: f64,
}

impl Difference {
    /// The difference of which "real" is said: of the ratings, and where irradiance differed,
    /// at common conditions; `None` where that cannot be told.
    pub fn decisive(&self) -> Option<&Weighed> {
        if self.conditions_differ {
            self.common_conditions.as_ref()
        } else {
            Some(&self.ratings)
        }
    }

    /// Probability of so large a difference if there is none; 1 where it cannot be told.
    pub fn p(&self) -> f64 {
        self.decisive().map_or(1.0, |weighed| weighed.p)
    }

    /// Whether it would be real if this were the only pair.
    pub fn is_shown_alone(&self) -> bool {
        self.p() < SHOWN_P
    }
}

impl Pair {
    /// Whether the difference is real, however many pairs were looked at. On a single day
    /// it could be the day's.
    pub fn is_shown(&self) -> bool {
        self.difference.knows_days && self.p_corrected < SHOWN_P
    }
}

/// Weighs the difference of two campaigns, one of so many pairs; `None` unless both have a
/// rating.
pub fn weigh(
    campaigns: &[Assessment],
    first: usize,
    second: usize,
    pairs: usize,
) -> Option<Difference> {
    let (one, two) = (&campaigns[first], &campaigns[second]);
    let (uncertainty_one, uncertainty_two) = (one.s580.uncertainty()?, two.s580.uncertainty()?);
    let (side_one, side_two) = (Side::of_rating(one)?, Side::of_rating(two)?);
    let ratings = weigh_figure(&side_one, &side_two, [1.0, RATING_DIFFERENCE_K]);
    let of_balances = |weights: [f64; 2]| {
        let sides = (
            Side::of_balance(one, weights)?,
            Side::of_balance(two, weights)?,
        );
        Some(weigh_figure(&sides.0, &sides.1, weights))
    };
    let common_w = ratings.common;
    Some(Difference {
        first,
        second,
        parts: parts(&side_one, &side_two, &ratings),
        ratings,
        conditions_differ: conditions_differ(one, two),
        common_conditions: of_balances(at_w(STANDARD_IRRADIANCE_W_M2, RATING_DIFFERENCE_K)),
        gain_m2: of_balances([1.0, 0.0]),
        loss_w_per_k: of_balances([0.0, 1.0]),
        knows_days: ![uncertainty_one, uncertainty_two]
            .iter()
            .any(|uncertainty| uncertainty.is_of_one_day()),
        shape: shape(uncertainty_one, uncertainty_two),
        needed: needed(
            &uncertainty_one.of_line,
            &uncertainty_two.of_line,
            common_w,
            pairs,
        ),
    })
}

/// Whether mean irradiance differed.
fn conditions_differ(one: &Assessment, two: &Assessment) -> bool {
    let means = [one, two].map(|side| side.s580.mean_irradiance_w_m2());
    let [Some(one_w_m2), Some(two_w_m2)] = means else {
        return true;
    };
    (one_w_m2 - two_w_m2).abs() > ALIKE_IRRADIANCE * one_w_m2.max(two_w_m2)
}

/// What scatter and each instrument contribute to the difference of two ratings.
fn parts(one: &Side<'_>, two: &Side<'_>, ratings: &Weighed) -> Vec<Part> {
    let all = effects(one, two);
    let mut parts = vec![Part {
        source: None,
        of_difference_w: ratings.statistical,
        apart_w: one.budget.statistical.hypot(two.budget.statistical),
    }];
    for effect in &all {
        if parts.iter().any(|part| part.source == Some(effect.source)) {
            continue;
        }
        let alike = all.iter().filter(|other| other.source == effect.source);
        let alike: Vec<Effect<'_>> = alike.cloned().collect();
        parts.push(Part {
            source: Some(effect.source),
            of_difference_w: common(&alike),
            apart_w: apart(&alike),
        });
    }
    parts
}
