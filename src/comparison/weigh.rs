//! One figure of two campaigns, the second held against the first.

use jiff::civil::Date;
use simmerline_math::hypot;

use super::effects::{Effect, common, effects_of};
use super::places::{is_one_estimate, is_one_site};
use crate::language::Phrase;
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::s580::limits::RATING_DIFFERENCE_K;
use crate::procedure::sources::Source;
use crate::procedure::uncertainty::budget::freedom_of;
use crate::procedure::uncertainty::{Budget, Fitted, coverage_factor, expanded};
use crate::stats::student::two_sided_p;
use crate::stats::two::jackknife_variance;

/// Fewest days on which two cookers stand side by side that are paired.
const FEWEST_PAIRED_DAYS: usize = 3;

/// How the scatter of a difference was evaluated.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Method {
    /// The campaigns' own scatter and days, one beside the other.
    Apart,
    /// Each day left out of both at once: what a day does to both cancels.
    PairedByDay { days: usize },
}

/// Scatter and days of one campaign, or of both at once.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Spread {
    /// Standard uncertainty that it gives the difference.
    pub standard: f64,
    pub freedom: f64,
    /// Days that it was seen on; `None` where days cannot be told, as with a single one.
    pub days: Option<usize>,
}

/// What one source contributes to the uncertainty of a difference, in the figure's unit.
#[derive(Debug, Clone, PartialEq)]
pub struct Part {
    /// `None`: scatter and days.
    pub source: Option<Source>,
    /// Standard uncertainty that it gives the difference.
    pub of_difference: f64,
    /// What it would give if the two campaigns had nothing in common.
    pub apart: f64,
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

/// A figure of the second campaign less that of the first, in the figure's unit.
#[derive(Debug, Clone, PartialEq)]
pub struct Weighed {
    /// The figure of the first and of the second.
    pub figures: [f64; 2],
    pub value: f64,
    pub method: Method,
    /// Scatter and days of each, or of both at once.
    pub spreads: Vec<Spread>,
    /// Of scatter and days.
    pub statistical: f64,
    /// Of instruments.
    pub common: f64,
    pub combined: f64,
    pub effective_freedom: f64,
    pub coverage_factor: f64,
    /// Probability of so large a difference if there is none.
    pub p: f64,
    /// What scatter and each instrument contribute.
    pub parts: Vec<Part>,
}

impl Weighed {
    /// Half-width of the 95 % interval.
    pub fn expanded(&self) -> f64 {
        self.coverage_factor * self.combined
    }

    /// The 95 % interval of the difference.
    pub fn interval(&self) -> (f64, f64) {
        let half_width = self.expanded();
        (self.value - half_width, self.value + half_width)
    }

    /// Whether both were tested on several days, so that what days do is in it.
    pub fn knows_days(&self) -> bool {
        self.spreads.iter().all(|spread| spread.days.is_some())
    }
}

/// One campaign's part in a difference.
pub struct Side<'a> {
    assessment: &'a Assessment,
    fitted: &'a Fitted,
    /// Days of the fit, in order.
    dates: &'a [Date],
    /// Of the figure.
    budget: Budget,
}

/// A figure of two campaigns.
pub struct Sides<'a> {
    first: Side<'a>,
    second: Side<'a>,
    /// With which the figure is read off both fits.
    weights: [f64; 2],
}

impl<'a> Sides<'a> {
    /// The ratings; `None` unless both have one.
    pub fn of_ratings(first: &'a Assessment, second: &'a Assessment) -> Option<Sides<'a>> {
        let side = |assessment: &'a Assessment| {
            let uncertainty = assessment.s580.uncertainty()?;
            Some(Side {
                assessment,
                fitted: &uncertainty.of_line.fitted,
                dates: &assessment.s580.dates,
                budget: uncertainty.budget.clone(),
            })
        };
        Some(Sides {
            first: side(first)?,
            second: side(second)?,
            weights: [1.0, RATING_DIFFERENCE_K],
        })
    }

    /// What is read off both heat balances; `None` unless both have one.
    pub fn of_balances(
        first: &'a Assessment,
        second: &'a Assessment,
        weights: [f64; 2],
    ) -> Option<Sides<'a>> {
        let side = |assessment: &'a Assessment| {
            let balance = assessment.water_balance.as_ref()?;
            Some(Side {
                assessment,
                fitted: &balance.fitted,
                dates: &balance.dates,
                budget: balance.fitted.budget(weights),
            })
        };
        Some(Sides {
            first: side(first)?,
            second: side(second)?,
            weights,
        })
    }

    /// Weighs the difference.
    ///
    /// Errors of one identity are one error: with signs, u² = (u_second − u_first)² for those
    /// that both share, and u_first² + u_second² for the others. Scatter and days add, unless
    /// both cookers were tested on the same days at one site: then each day is left out of
    /// both at once, with k − 1 degrees of freedom for k days.
    ///
    /// # Source
    /// JCGM 100:2008, 5.2.2 and F.1.2.3. DIFFERENCE: [`expanded`] in place of G.4.1.
    pub fn weigh(&self) -> Weighed {
        let (first, second) = (&self.first, &self.second);
        let figures = [first.budget.value, second.budget.value];
        let (method, spreads) = match self.paired_by_day() {
            Some((days, spread)) => (Method::PairedByDay { days }, vec![spread]),
            None => (Method::Apart, vec![first.spread(), second.spread()]),
        };
        let finite: Vec<(f64, f64)> = spreads
            .iter()
            .map(|spread| (spread.standard, spread.freedom))
            .collect();
        let statistical = finite.iter().fold(0.0, |sum: f64, (u, _)| hypot(sum, *u));
        let effects = self.effects();
        let common = common(&effects);
        let combined = hypot(statistical, common);
        let coverage_factor = match combined > 0.0 {
            true => expanded(&finite, common) / combined,
            false => coverage_factor(f64::INFINITY),
        };
        let effective = freedom_of(coverage_factor);
        let value = figures[1] - figures[0];
        Weighed {
            figures,
            value,
            method,
            spreads,
            statistical,
            common,
            combined,
            effective_freedom: effective,
            coverage_factor,
            p: if combined > 0.0 {
                two_sided_p(value / combined, effective)
            } else {
                f64::from(u8::from(value == 0.0))
            },
            parts: self.parts(statistical, &effects),
        }
    }

    /// Number of days, and scatter and days from leaving out each day of both at once; `None`
    /// unless both were tested on the same days at one site. Not below what single readings
    /// give.
    fn paired_by_day(&self) -> Option<(usize, Spread)> {
        let without = [&self.first, &self.second].map(|side| side.fitted.without_a_day.as_ref());
        let days = self.first.dates.len();
        if !self.is_one_place_and_time() || days < FEWEST_PAIRED_DAYS {
            return None;
        }
        let read = |fit: &[f64; 2]| self.weights[0] * fit[0] + self.weights[1] * fit[1];
        let without = without[0]?.iter().zip(without[1]?);
        let differences: Vec<f64> = without
            .map(|(first, second)| read(second) - read(first))
            .collect();
        let of_readings = [&self.first, &self.second]
            .map(|side| side.fitted.of_readings.of(self.weights))
            .iter()
            .sum();
        let variance = jackknife_variance(&differences).max(of_readings);
        let spread = Spread {
            standard: variance.sqrt(),
            freedom: days as f64 - 1.0,
            days: Some(days),
        };
        Some((days, spread))
    }

    /// Whether both stood at one site on the same days.
    fn is_one_place_and_time(&self) -> bool {
        let sites = [&self.first, &self.second].map(|side| &side.assessment.tested.campaign.site);
        is_one_site(sites[0], sites[1]) && self.first.dates == self.second.dates
    }

    /// Whether irradiance was estimated of one sky, at one site on the same days. What the
    /// estimate is off by is then one error.
    pub fn is_one_sky(&self) -> bool {
        let campaigns = [&self.first, &self.second].map(|side| &side.assessment.tested.campaign);
        is_one_estimate(campaigns[0], campaigns[1]) && self.is_one_place_and_time()
    }

    /// Errors of both campaigns in the difference.
    fn effects(&self) -> Vec<Effect> {
        effects_of([&self.first.budget, &self.second.budget], self.is_one_sky())
    }

    /// What scatter and each instrument contribute.
    fn parts(&self, statistical: f64, effects: &[Effect]) -> Vec<Part> {
        let of_each = [&self.first, &self.second].map(|side| side.budget.statistical);
        let mut parts = vec![Part {
            source: None,
            of_difference: statistical,
            apart: hypot(of_each[0], of_each[1]),
        }];
        for effect in effects {
            if parts.iter().any(|part| part.source == Some(effect.source)) {
                continue;
            }
            let alike = effects.iter().filter(|other| other.source == effect.source);
            let alike: Vec<Effect> = alike.cloned().collect();
            parts.push(Part {
                source: Some(effect.source),
                of_difference: common(&alike),
                apart: alike
                    .iter()
                    .fold(0.0, |sum: f64, one| hypot(sum, one.effect)),
            });
        }
        parts
    }
}

impl Side<'_> {
    fn spread(&self) -> Spread {
        Spread {
            standard: self.budget.statistical,
            freedom: self.budget.statistical_freedom,
            days: self.fitted.days(),
        }
    }
}
