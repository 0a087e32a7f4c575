//! What scatter, days and instruments contribute to one figure, in the figure's unit.

use crate::procedure::sources::{CommonError, Source};
use crate::stats::combine::{combined, effective_freedom};
use crate::stats::line::{Bounds, COVERAGE};
use crate::stats::student::quantile_t;

/// Degrees of freedom beyond which Student's t is the normal distribution.
pub const MOST_FREEDOM: f64 = 1e4;

/// What one contribution is.
#[derive(Debug, Clone, PartialEq)]
pub enum Origin {
    /// Intervals about the fit, on one day.
    Scatter,
    /// The same, where the readings themselves explain more than was seen.
    ReadingNoise,
    /// Days with all that is in them: how far the figure moves when one is left out.
    Days,
    Common(CommonError),
}

/// One line of a budget.
#[derive(Debug, Clone, PartialEq)]
pub struct Contribution {
    pub origin: Origin,
    /// Standard uncertainty that it gives the figure, with the sign of its sensitivity.
    pub effect: f64,
    /// Share of the variance; all shares add up to one.
    pub share: f64,
}

impl Contribution {
    /// Whether all intervals share it.
    pub fn is_common(&self) -> bool {
        matches!(self.origin, Origin::Common(_))
    }

    /// How it was evaluated: A by statistics, B otherwise.
    pub fn evaluation(&self) -> char {
        match self.origin {
            Origin::Scatter | Origin::Days => 'A',
            Origin::ReadingNoise | Origin::Common(_) => 'B',
        }
    }
}

/// The budget of one figure.
#[derive(Debug, Clone, PartialEq)]
pub struct Budget {
    pub value: f64,
    pub contributions: Vec<Contribution>,
    /// Of scatter and days.
    pub statistical: f64,
    pub statistical_freedom: f64,
    /// Of what all intervals share.
    pub common: f64,
    /// Of both.
    pub combined: f64,
    pub effective_freedom: f64,
    /// Coverage factor for 95 %.
    pub coverage_factor: f64,
}

impl Budget {
    /// Combines scatter and days with common errors, given with the effect of one standard
    /// uncertainty each. Errors of one identity are one error and add with their signs.
    /// Degrees of freedom by Welch–Satterthwaite; those of the instruments are infinite.
    ///
    /// # Source
    /// JCGM 100:2008, 5.1.2, 5.2.2, G.4.1 and G.6.4; first order.
    pub fn new(
        value: f64,
        (origin, statistical): (Origin, f64),
        freedom: f64,
        common: impl Iterator<Item = (CommonError, f64)>,
    ) -> Budget {
        let part = |origin: Origin, effect: f64| Contribution {
            origin,
            effect,
            share: 0.0,
        };
        let common = common.map(|(error, effect)| part(Origin::Common(error), effect));
        let mut contributions: Vec<Contribution> = [part(origin, statistical)]
            .into_iter()
            .chain(common)
            .collect();
        let effects: Vec<f64> = contributions.iter().map(|part| part.effect).collect();
        let correlation = |one: usize, two: usize| {
            let origins = (&contributions[one].origin, &contributions[two].origin);
            let is_one = match origins {
                (Origin::Common(one), Origin::Common(two)) => one.identity == two.identity,
                _ => one == two,
            };
            f64::from(u8::from(is_one))
        };
        let combined = combined(&effects, correlation);
        let variance = combined * combined;
        let share = |one: usize| {
            let places = 0..effects.len();
            let related = places.map(|two| correlation(one, two) * effects[two]);
            let share = effects[one] * related.sum::<f64>();
            if variance > 0.0 {
                share / variance
            } else {
                0.0
            }
        };
        let shares: Vec<f64> = (0..effects.len()).map(share).collect();
        for (part, share) in contributions.iter_mut().zip(shares) {
            part.share = share;
        }
        let effective = effective_freedom(combined, &[(statistical, freedom)]);
        Budget {
            value,
            contributions,
            statistical,
            statistical_freedom: freedom,
            common: (variance - statistical * statistical).max(0.0).sqrt(),
            combined,
            effective_freedom: effective.min(MOST_FREEDOM),
            coverage_factor: coverage_factor(effective),
        }
    }

    /// Expanded uncertainty for 95 %.
    pub fn expanded(&self) -> f64 {
        self.coverage_factor * self.combined
    }

    /// The value less and plus the expanded uncertainty.
    pub fn interval(&self) -> Bounds {
        Bounds {
            lower: self.value - self.expanded(),
            upper: self.value + self.expanded(),
        }
    }

    /// Share of the variance that scatter and days have.
    pub fn statistical_share(&self) -> f64 {
        let parts = self.contributions.iter().filter(|part| !part.is_common());
        parts.map(|part| part.share).sum()
    }

    /// What scatter and days would leave of the expanded uncertainty without all that
    /// intervals share.
    pub fn without_common(&self) -> f64 {
        coverage_factor(self.statistical_freedom) * self.statistical
    }

    /// Expanded uncertainty for 95 % of what all intervals share alone: more data do not make
    /// it smaller.
    pub fn common_expanded(&self) -> f64 {
        coverage_factor(f64::INFINITY) * self.common
    }

    /// The source, of those that all intervals share, that gives most.
    pub fn heaviest_common(&self) -> Option<Source> {
        let parts = self.contributions.iter();
        let common = parts.filter_map(|part| match &part.origin {
            Origin::Common(error) => Some((error.source, part.effect.abs())),
            _ => None,
        });
        let heaviest = common.max_by(|one, two| one.1.total_cmp(&two.1));
        heaviest.map(|(source, _)| source)
    }
}

/// Student's t for 95 % and degrees of freedom that need not be whole.
///
/// # Source
/// JCGM 100:2008, G.6.4, which lets one interpolate or round down. Rounded down, k would
/// leap from 4.3 to 12.7 where 2 degrees of freedom are passed.
pub fn coverage_factor(freedom: f64) -> f64 {
    quantile_t((1.0 + COVERAGE) / 2.0, freedom.clamp(1.0, MOST_FREEDOM))
}
