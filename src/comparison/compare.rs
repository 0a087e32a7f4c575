//! All campaigns, and all pairs of them.

use super::figures::{PairFigures, figures};
use super::gather::{departures, refuse_incomparable, refuse_mixed};
use super::pair::{Difference, Pair, weigh};
use crate::error::Result;
use crate::language::Message;
use crate::procedure::Assessment;
use crate::procedure::cooking::pots::{START_C, TARGET_C, TimeRange, heating_time};
use crate::procedure::s580::limits::STANDARD_IRRADIANCE_W_M2;
use crate::procedure::stated::{Stated, stated};
use crate::stats::holm::holm;

/// Load that heating times are given for, kg.
pub const HEATED_KG: f64 = 2.0;

/// Campaigns side by side.
#[derive(Debug, Clone)]
pub struct Comparison {
    /// In the order in which they were named.
    pub campaigns: Vec<Assessment>,
    /// The campaign that all others are held against; `None`: each against each.
    pub baseline: Option<usize>,
    /// How each departs from the practice and limits of the first; empty where none does.
    pub departures: Vec<Vec<Message>>,
    /// Pairs of which both have a rating.
    pub pairs: Vec<Pair>,
    /// Every pair, with the figures beside the rating.
    pub figures: Vec<PairFigures>,
    /// What each campaign states.
    pub stated: Vec<Vec<Stated>>,
    /// Air of all heating times, °C; `None` where there is nothing to heat.
    pub ambient_c: Option<f64>,
    /// Their target, °C.
    pub target_c: f64,
    /// Time to heat 2 kg from 20 °C at 700 W/m² by the heat balance; `None`: it does not get there.
    pub heating: Vec<Option<TimeRange>>,
}

impl Comparison {
    /// Whether campaigns of different procedure or limits are compared.
    pub fn is_mixed(&self) -> bool {
        self.departures
            .iter()
            .any(|departures| !departures.is_empty())
    }

    /// Whether a rating is only indicative.
    pub fn is_indicative(&self) -> bool {
        self.rated()
            .any(|one| one.s580.conformity.level.falls_short())
    }

    /// The campaigns that have a rating.
    pub fn rated(&self) -> impl Iterator<Item = &Assessment> {
        let campaigns = self.campaigns.iter();
        campaigns.filter(|one| one.s580.rated.is_some())
    }

    /// The rating of two places; `None` where either has none.
    pub fn pair_of(&self, first: usize, second: usize) -> Option<&Pair> {
        let mut pairs = self.pairs.iter();
        pairs.find(|pair| (pair.difference.first, pair.difference.second) == (first, second))
    }
}

/// Compares campaigns, each with each or all with the baseline.
///
/// # Errors
/// [`crate::error::Error::Usage`] for campaigns that share no figure with another, with the same
/// readings, and, unless `allow_mixed`, of different procedure or limits.
pub fn compare(
    campaigns: Vec<Assessment>,
    baseline: Option<usize>,
    allow_mixed: bool,
) -> Result<Comparison> {
    let stated: Vec<Vec<Stated>> = campaigns.iter().map(stated).collect();
    refuse_incomparable(&campaigns, &stated)?;
    let departures = departures(&campaigns);
    if !allow_mixed {
        refuse_mixed(&campaigns, &departures)?;
    }
    let places = places(campaigns.len(), baseline);
    let pairs = rated_pairs(&campaigns, &places);
    let figures = figures(&campaigns, &stated, &places, &pairs);
    let ambients: Vec<f64> = campaigns
        .iter()
        .filter_map(|one| Some(one.prospect.as_ref()?.cooking.ambient_c))
        .collect();
    let count = ambients.len() as f64;
    let ambient_c = (count > 0.0).then(|| ambients.iter().sum::<f64>() / count);
    let boiling_c = campaigns.iter().map(|one| one.tested.boiling_point_c);
    let target_c = boiling_c.fold(TARGET_C, f64::min);
    let heating = campaigns
        .iter()
        .map(|one| {
            let ambient_c = ambient_c?;
            let balance = one.water_balance.as_ref()?;
            let power = balance.power_at(STANDARD_IRRADIANCE_W_M2);
            heating_time(
                &power,
                HEATED_KG,
                (START_C - ambient_c, target_c - ambient_c),
            )
        })
        .collect();
    Ok(Comparison {
        campaigns,
        baseline,
        departures,
        pairs,
        figures,
        stated,
        ambient_c,
        target_c,
        heating,
    })
}

/// The pairs: each with each, or each with the baseline, which is then the first.
fn places(count: usize, baseline: Option<usize>) -> Vec<(usize, usize)> {
    match baseline {
        Some(base) => (0..count)
            .filter(|&one| one != base)
            .map(|one| (base, one))
            .collect(),
        None => (0..count)
            .flat_map(|one| (one + 1..count).map(move |two| (one, two)))
            .collect(),
    }
}

/// The pairs of which both have a rating.
fn rated_pairs(campaigns: &[Assessment], places: &[(usize, usize)]) -> Vec<Pair> {
    let is_rated = |place: usize| campaigns[place].s580.rated.is_some();
    let rated = places
        .iter()
        .filter(|(one, two)| is_rated(*one) && is_rated(*two));
    let count = rated.clone().count();
    let differences: Vec<Difference> = rated
        .filter_map(|&(first, second)| weigh(campaigns, first, second, count))
        .collect();
    let p: Vec<f64> = differences.iter().map(Difference::p).collect();
    let pairs = differences.into_iter().zip(holm(&p));
    pairs
        .map(|(difference, p_corrected)| Pair {
            difference,
            p_corrected,
        })
        .collect()
}
