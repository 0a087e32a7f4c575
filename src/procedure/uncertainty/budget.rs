//! What scatter, days and instruments contribute to one figure, in the figure's unit.

use std::cell::Cell;

use crate::procedure::sources::{CommonError, Source};
use crate::stats::combine::combined;
use crate::stats::line::{Bounds, COVERAGE};
use crate::stats::student::quantile_t;
use simmerline_math::hypot;

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
    pub share_of_variance: f64,
    /// Share of the square of the expanded uncertainty; these add up to one, too.
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
    /// Expanded uncertainty for 95 %.
    pub expanded: f64,
}

impl Budget {
    /// Combines scatter and days with common errors, given with the effect of one standard
    /// uncertainty each. Errors of one identity are one error and add with their signs; see
    /// [`expanded`] for the expanded uncertainty.
    ///
    /// # Source
    /// JCGM 100:2008, 5.1.2 and 5.2.2; first order.
    pub fn new(
        value: f64,
        (origin, statistical): (Origin, f64),
        freedom: f64,
        common: impl Iterator<Item = (CommonError, f64)>,
    ) -> Budget {
        let part = |origin: Origin, effect: f64| Contribution {
            origin,
            effect,
            share_of_variance: 0.0,
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
        // What each adds to the variance, with its part of what it shares with others.
        let added: Vec<f64> = (0..effects.len())
            .map(|one| {
                let places = 0..effects.len();
                let related = places.map(|two| correlation(one, two) * effects[two]);
                effects[one] * related.sum::<f64>()
            })
            .collect();
        let common = (variance - statistical * statistical).max(0.0).sqrt();
        let expanded = expanded(&[(statistical, freedom)], common);
        let share = |of: f64, whole: f64| if whole > 0.0 { of / whole } else { 0.0 };
        let of_instruments = coverage_factor(f64::INFINITY);
        let of_statistics = coverage_factor(freedom);
        for (part, added) in contributions.iter_mut().zip(added) {
            let factor = if part.is_common() {
                of_instruments
            } else {
                of_statistics
            };
            part.share_of_variance = share(added, variance);
            part.share = share(factor * factor * added, expanded * expanded);
        }
        Budget {
            value,
            contributions,
            statistical,
            statistical_freedom: freedom,
            common,
            combined,
            expanded,
        }
    }

    /// Expanded over combined uncertainty; that of the normal distribution where nothing is
    /// uncertain.
    pub fn coverage_factor(&self) -> f64 {
        if self.combined > 0.0 {
            self.expanded / self.combined
        } else {
            coverage_factor(f64::INFINITY)
        }
    }

    /// Degrees of freedom for which Student's t is the coverage factor.
    pub fn effective_freedom(&self) -> f64 {
        freedom_of(self.coverage_factor())
    }

    /// The value less and plus the expanded uncertainty.
    pub fn interval(&self) -> Bounds {
        Bounds {
            lower: self.value - self.expanded,
            upper: self.value + self.expanded,
        }
    }

    /// Share of the square of the expanded uncertainty that scatter and days have.
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
    // It takes long to find, and a curve asks for the same two a hundred times.
    thread_local! {
        static LAST: Cell<[(f64, f64); 2]> = const { Cell::new([(0.0, 0.0); 2]) };
    }
    let freedom = freedom.clamp(1.0, MOST_FREEDOM);
    let [last, before] = LAST.get();
    for (known, factor) in [last, before] {
        if known == freedom {
            return factor;
        }
    }
    let found = (freedom, quantile_t((1.0 + COVERAGE) / 2.0, freedom));
    LAST.set([found, last]);
    found.1
}

/// Expanded uncertainty for 95 % of parts u with ν degrees of freedom each, and of instruments,
/// whose degrees of freedom are endless: √(Σ(t(ν)·u)² + (z·u_common)²).
///
/// # Source
/// Common practice, no published source. DIFFERENCE: JCGM 100:2008, G.4.1, takes one t for
/// all, by Welch and Satterthwaite's degrees of freedom. With two to four days and instruments
/// beside them that covered 87 to 93 % of simulated campaigns, and one cooker differed from
/// itself in more than 5 % of pairs; this covers what it says (contributor's guide).
pub fn expanded(finite: &[(f64, f64)], common: f64) -> f64 {
    let parts = finite
        .iter()
        .map(|(u, freedom)| coverage_factor(*freedom) * u);
    let common = coverage_factor(f64::INFINITY) * common;
    parts.fold(common, |sum: f64, part| hypot(sum, part))
}

/// Halvings until degrees of freedom are known to their last digit.
const HALVINGS: usize = 60;

/// The degrees of freedom of a coverage factor for 95 %.
pub fn freedom_of(factor: f64) -> f64 {
    let (mut few, mut many) = (1.0, MOST_FREEDOM);
    for _ in 0..HALVINGS {
        let middle = f64::sqrt(few * many);
        if coverage_factor(middle) > factor {
            few = middle;
        } else {
            many = middle;
        }
    }
    many
}
