//! What scatter, days and instruments contribute to the uncertainty of the line.

use super::days::DayEffect;
use super::sensitivity::effect_w;
use crate::campaign::classes::InstrumentKind;
use crate::campaign::model::Instruments;
use crate::physics::water::SPECIFIC_HEAT_J_PER_KG_K;
use crate::procedure::s580::intervals::Interval;
use crate::procedure::s580::limits::STANDARD_IRRADIANCE_W_M2;
use crate::procedure::sources::{CommonError, class_resolution_k, standard_of};
use crate::stats::combine::{combined, effective_freedom};
use crate::stats::line::{COVERAGE, Line};
use crate::stats::student::quantile_t;

/// Degrees of freedom beyond which Student's t is the normal distribution.
const MOST_FREEDOM: f64 = 1e4;

/// Everything that the uncertainty of a line follows from, anywhere along it.
#[derive(Debug, Clone, PartialEq)]
pub struct LineUncertainty {
    pub line: Line,
    pub days: DayEffect,
    pub common: Vec<CommonError>,
    pub reading: ReadingNoise,
}

/// Standard deviation that single readings give the power of one interval, W. It is part
/// of the scatter.
#[derive(Debug, Clone, Copy, Default, PartialEq)]
pub struct ReadingNoise {
    /// From the step in which the water thermometer is read; `None` where it is not known.
    pub resolution_w: Option<f64>,
    /// From the moment at which it is read.
    pub clock_w: f64,
}

/// What one contribution is.
#[derive(Debug, Clone, PartialEq)]
pub enum Origin {
    /// Intervals about the line, or about their day's line.
    Scatter,
    /// The same, where the readings themselves explain more than was seen.
    ReadingNoise,
    Days,
    Common(CommonError),
}

/// One line of a budget.
#[derive(Debug, Clone, PartialEq)]
pub struct Contribution {
    pub origin: Origin,
    /// Standard uncertainty that it gives the line, with the sign of its sensitivity, W.
    pub effect_w: f64,
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

/// The budget of the line read at one temperature difference.
#[derive(Debug, Clone, PartialEq)]
pub struct Budget {
    /// Where the line is read, K.
    pub at_k: f64,
    /// What it reads, W.
    pub power_w: f64,
    pub contributions: Vec<Contribution>,
    /// Of scatter and days, W.
    pub statistical_w: f64,
    pub statistical_freedom: f64,
    /// Of what all intervals share, W.
    pub common_w: f64,
    /// Of both, W.
    pub combined_w: f64,
    pub effective_freedom: f64,
    /// Coverage factor for 95 %.
    pub coverage_factor: f64,
}

impl Budget {
    /// Expanded uncertainty for 95 %, W.
    pub fn expanded_w(&self) -> f64 {
        self.coverage_factor * self.combined_w
    }

    /// A contribution's part of the expanded uncertainty, by its share of the variance, W.
    /// The parts of all contributions add up to it.
    pub fn part_of_expanded_w(&self, contribution: &Contribution) -> f64 {
        contribution.share * self.expanded_w()
    }

    /// Part of the expanded uncertainty that scatter and days have, W.
    pub fn statistical_part_w(&self) -> f64 {
        let parts = self.contributions.iter().filter(|part| !part.is_common());
        parts.map(|part| self.part_of_expanded_w(part)).sum()
    }

    /// What scatter and days would leave of the expanded uncertainty without all that
    /// intervals share, with the same coverage factor, W.
    pub fn without_common_w(&self) -> f64 {
        self.coverage_factor * self.statistical_w
    }

    /// Expanded uncertainty for 95 % of what all intervals share alone, W: more data do
    /// not make it smaller.
    pub fn common_expanded_w(&self) -> f64 {
        coverage_factor(f64::INFINITY) * self.common_w
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

impl LineUncertainty {
    /// The budget of the line read at `at_k`.
    ///
    /// Scatter and days: u² = s²·A + s_d²·B, with the sums A and B of the squared weights
    /// of intervals and of days in the line there. Where days differ they are what is
    /// independent, with k − 1 degrees of freedom for k days; else the intervals are, with
    /// n − 2. Common errors move the whole line and add as [`combined`] does. Degrees of
    /// freedom by Welch–Satterthwaite; those of the instruments are infinite.
    ///
    /// # Source
    /// JCGM 100:2008, 5.1.2, 5.2.2, G.4.1 and G.6.4; first order.
    pub fn at(&self, at_k: f64) -> Budget {
        let line = &self.line;
        let (independent, freedom) = self.independent(at_k);
        let common = self.common.iter().map(|error| Contribution {
            effect_w: effect_w(error, line, at_k),
            origin: Origin::Common(error.clone()),
            share: 0.0,
        });
        let mut contributions: Vec<Contribution> = independent.into_iter().chain(common).collect();
        let effects: Vec<f64> = contributions.iter().map(|part| part.effect_w).collect();
        let correlation =
            |one: usize, two: usize| match (&contributions[one].origin, &contributions[two].origin)
            {
                (Origin::Common(one), Origin::Common(two)) if one.identity == two.identity => 1.0,
                _ => 0.0,
            };
        let statistical: Vec<f64> = contributions
            .iter()
            .filter(|part| !part.is_common())
            .map(|part| part.effect_w)
            .collect();
        let statistical_w = combined(&statistical, |_, _| 0.0);
        let combined_w = combined(&effects, correlation);
        let shares: Vec<f64> = (0..effects.len())
            .map(|one| {
                let related = (0..effects.len()).map(|two| {
                    let r = if one == two {
                        1.0
                    } else {
                        correlation(one, two)
                    };
                    r * effects[two]
                });
                effects[one] * related.sum::<f64>()
            })
            .collect();
        let variance = combined_w * combined_w;
        for (part, share) in contributions.iter_mut().zip(shares) {
            part.share = if variance > 0.0 {
                share / variance
            } else {
                0.0
            };
        }
        let effective = effective_freedom(combined_w, &[(statistical_w, freedom)]);
        Budget {
            at_k,
            power_w: line.predict(at_k),
            contributions,
            statistical_w,
            statistical_freedom: freedom,
            common_w: (variance - statistical_w * statistical_w).max(0.0).sqrt(),
            combined_w,
            effective_freedom: effective.min(MOST_FREEDOM),
            coverage_factor: coverage_factor(effective),
        }
    }

    /// Scatter and days at `at_k`, with the degrees of freedom of both together.
    fn independent(&self, at_k: f64) -> (Vec<Contribution>, f64) {
        let part = |origin: Origin, variance: f64| Contribution {
            origin,
            effect_w: variance.sqrt(),
            share: 0.0,
        };
        let scatter = self.scatter();
        let origin = if scatter.is_seen {
            Origin::Scatter
        } else {
            Origin::ReadingNoise
        };
        let mut parts = vec![part(
            origin,
            scatter.sd_w * scatter.sd_w * self.line.leverage(at_k),
        )];
        if scatter.between_sd_w > 0.0 {
            let weight = self.days.weight_of_days(&self.line, at_k);
            parts.push(part(Origin::Days, scatter.between_sd_w.powi(2) * weight));
        }
        (parts, scatter.freedom)
    }

    /// Standard deviations of intervals and days that the line's uncertainty follows from.
    pub fn scatter(&self) -> Scatter {
        let floor_w = self.reading.of_interval_w();
        let days = &self.days;
        let (seen_w, between_sd_w, freedom) = match (days.within_sd_w, days.between_sd_w) {
            (Some(within_w), Some(between_w)) if days.is_honoured() => {
                // Days that differ less than intervals would allow do not make them surer.
                let sd_w = if between_w > 0.0 {
                    within_w
                } else {
                    within_w.max(self.line.residual_sd)
                };
                (sd_w, between_w, (days.days.len() - 1) as f64)
            }
            _ => (self.line.residual_sd, 0.0, (self.line.points - 2) as f64),
        };
        let is_seen = seen_w >= floor_w;
        Scatter {
            sd_w: seen_w.max(floor_w),
            between_sd_w,
            is_seen,
            freedom: if is_seen || between_sd_w > 0.0 {
                freedom
            } else {
                MOST_FREEDOM
            },
        }
    }
}

/// Spread of intervals and of days.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Scatter {
    /// Standard deviation of single intervals, W.
    pub sd_w: f64,
    /// Standard deviation of days, W; zero where none is told apart.
    pub between_sd_w: f64,
    /// `false`: the readings themselves explain more than was seen.
    pub is_seen: bool,
    /// Degrees of freedom of both together.
    pub freedom: f64,
}

impl ReadingNoise {
    /// What single readings give the power of the intervals on the line, root mean square:
    /// u = m c √2 u(T)/Δt · 700/G for a step of u(T)·√12, and |Ps| √2 u(t)/Δt for the
    /// moment of reading. Both ends of an interval are read.
    ///
    /// # Source
    /// JCGM 100:2008, F.2.2.1 for the step; first order.
    ///
    /// The step is as stated, else as seen in the readings, else that of the class.
    pub fn of(
        intervals: &[(&Interval, f64)],
        instruments: &Instruments,
        step_seen_k: Option<f64>,
    ) -> ReadingNoise {
        let thermometer = &instruments.water_temperature;
        let stated_k = thermometer.resolution_k.or(step_seen_k);
        let step_k = stated_k.or_else(|| class_resolution_k(thermometer));
        let moment_s = standard_of(&instruments.clock, InstrumentKind::Clock)
            .uncertainty
            .size();
        let root_mean_square = |of: &dyn Fn(&(&Interval, f64)) -> Option<f64>| {
            let squares: Vec<f64> = intervals
                .iter()
                .filter_map(|interval| Some(of(interval)?.powi(2)))
                .collect();
            (squares.iter().sum::<f64>() / squares.len().max(1) as f64).sqrt()
        };
        let per_kelvin = |(interval, water_kg): &(&Interval, f64)| {
            let interval = &interval.measured;
            let power_w = water_kg * SPECIFIC_HEAT_J_PER_KG_K / interval.duration_s;
            Some(power_w * STANDARD_IRRADIANCE_W_M2 / interval.irradiance?.mean)
        };
        let per_second = |(interval, _): &(&Interval, f64)| {
            let interval = &interval.measured;
            Some(interval.standardised_power_w? / interval.duration_s)
        };
        let both_ends = 2.0_f64.sqrt();
        ReadingNoise {
            resolution_w: step_k
                .map(|step_k| both_ends * step_k / 12.0_f64.sqrt() * root_mean_square(&per_kelvin)),
            clock_w: both_ends * moment_s * root_mean_square(&per_second),
        }
    }

    /// All of it, W.
    pub fn of_interval_w(&self) -> f64 {
        self.resolution_w.unwrap_or(0.0).hypot(self.clock_w)
    }
}
