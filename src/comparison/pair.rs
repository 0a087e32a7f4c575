//! The difference of two campaigns.

use super::needed::{Needed, needed};
use super::shape::{Shape, shape};
use super::weigh::{Sides, Weighed};
use crate::procedure::Assessment;
use crate::procedure::heat_balance::balance::at_w;
use crate::procedure::s580::limits::{RATING_DIFFERENCE_K, STANDARD_IRRADIANCE_W_M2};
use crate::procedure::s580::uncertainty::days::SHOWN_P;
use crate::stats::holm::holm;

/// Share by which mean irradiance may differ before ratings, which scale losses with the sun,
/// are no longer held against each other. Common practice, no published source: it moves a
/// rating by no more than this share of its losses.
pub const ALIKE_IRRADIANCE: f64 = 0.02;

/// Two campaigns, the second held against the first.
#[derive(Debug, Clone, PartialEq)]
pub struct Difference {
    /// Places among the campaigns compared.
    pub first: usize,
    pub second: usize,
    /// Of Ps(50), W.
    pub ratings: Weighed,
    /// Mean irradiance differs by so much, or its plane, that ratings, which scale losses with
    /// the sun, do not tell cookers apart.
    pub conditions_differ: bool,
    /// Irradiance is in another plane: gains for each W/m² are not of one kind then, so that
    /// nothing is told of heat balances either.
    pub planes_differ: bool,
    /// What estimates of irradiance are off by is one error in both.
    pub is_one_sky: bool,
    /// Of the power at 700 W/m² and 50 K by the heat balances, W; `None` without both, and in
    /// different planes.
    pub common_conditions: Option<Weighed>,
    /// Of gain and loss; `None` without both heat balances, and in different planes.
    pub causes: Option<Causes>,
    /// Analysis of covariance of the normalised lines. It names no cause: losses are scaled
    /// with the sun in them. `None` where slopes cannot be told apart from scatter.
    pub shape: Option<Shape>,
}

/// What a difference may come from.
#[derive(Debug, Clone, PartialEq)]
pub struct Causes {
    /// Of the heat balances' g.
    pub gain_m2: Weighed,
    /// Of the heat balances' u.
    pub loss_w_per_k: Weighed,
}

/// A difference as one of several pairs.
#[derive(Debug, Clone, PartialEq)]
pub struct Pair {
    pub difference: Difference,
    /// Probability of so large a difference if there is none, corrected by Holm for the number of
    /// pairs that can be compared; 1 where the difference cannot be told.
    pub p_corrected: f64,
    /// What it takes to show the decisive difference; `None` where that cannot be told.
    pub needed: Option<Needed>,
}

/// How many pairs can be compared: they alone are tested, so they alone are the family that p is
/// corrected for.
pub fn compared(pairs: &[Pair]) -> usize {
    let decisive = pairs.iter().map(|pair| pair.difference.decisive());
    decisive.flatten().count()
}

/// Differences as pairs of one family, in their order.
pub fn family(differences: Vec<Difference>) -> Vec<Pair> {
    let tested: Vec<f64> = differences
        .iter()
        .filter_map(|difference| Some(difference.decisive()?.p))
        .collect();
    let mut corrected = holm(&tested).into_iter();
    let of_family = |difference: Difference| {
        let (p_corrected, needed) = match difference.decisive() {
            Some(weighed) => (corrected.next(), Some(needed(weighed, tested.len()))),
            None => (None, None),
        };
        Pair {
            difference,
            p_corrected: p_corrected.unwrap_or(1.0),
            needed,
        }
    };
    differences.into_iter().map(of_family).collect()
}

/// The pair of two places; pairs stand in the order of their places.
pub fn find(pairs: &[Pair], first: usize, second: usize) -> Option<&Pair> {
    let places = |pair: &Pair| (pair.difference.first, pair.difference.second);
    let found = pairs.binary_search_by_key(&(first, second), places);
    found.ok().map(|place| &pairs[place])
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

    /// Whether what days do is in the decisive difference.
    pub fn knows_days(&self) -> bool {
        self.decisive().is_some_and(Weighed::knows_days)
    }

    /// Whether it would be real if this were the only pair.
    pub fn is_shown_alone(&self) -> bool {
        self.p() < SHOWN_P
    }
}

impl Pair {
    /// Whether a place is one of both.
    pub fn is_of(&self, place: usize) -> bool {
        self.difference.first == place || self.difference.second == place
    }

    /// Whether the difference is real, however many pairs were looked at. On a single day
    /// it could be the day's.
    pub fn is_shown(&self) -> bool {
        self.difference.knows_days() && self.p_corrected < SHOWN_P
    }
}

/// Weighs the difference of two campaigns; `None` unless both have a rating.
pub fn weigh(campaigns: &[Assessment], first: usize, second: usize) -> Option<Difference> {
    let (one, two) = (&campaigns[first], &campaigns[second]);
    let sides = Sides::of_ratings(one, two)?;
    let planes_differ = one.tested.lies_flat() != two.tested.lies_flat();
    let of_balances = |weights: [f64; 2]| {
        let sides = Sides::of_balances(one, two, weights).filter(|_| !planes_differ);
        Some(sides?.weigh())
    };
    let causes = || {
        Some(Causes {
            gain_m2: of_balances([1.0, 0.0])?,
            loss_w_per_k: of_balances([0.0, 1.0])?,
        })
    };
    Some(Difference {
        first,
        second,
        ratings: sides.weigh(),
        conditions_differ: planes_differ || suns_differ(one, two),
        planes_differ,
        is_one_sky: sides.is_one_sky(),
        common_conditions: of_balances(at_w(STANDARD_IRRADIANCE_W_M2, RATING_DIFFERENCE_K)),
        causes: causes(),
        shape: shape(one.s580.uncertainty()?, two.s580.uncertainty()?),
    })
}

/// Whether mean irradiance differed.
fn suns_differ(one: &Assessment, two: &Assessment) -> bool {
    let means = [one, two].map(|side| side.s580.mean_irradiance_w_m2());
    let [Some(one_w_m2), Some(two_w_m2)] = means else {
        return true;
    };
    (one_w_m2 - two_w_m2).abs() > ALIKE_IRRADIANCE * one_w_m2.max(two_w_m2)
}
