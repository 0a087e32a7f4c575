//! All campaigns, and all pairs of them.

use super::gather::{departures, refuse_incomparable, refuse_mixed};
use super::pair::{Difference, Pair, weigh};
use crate::error::Result;
use crate::language::Message;
use crate::procedure::Assessment;
use crate::procedure::cooking::pots::{START_C, TARGET_C, TimeRange, heating_time};
use crate::procedure::finding::Level;
use crate::procedure::s580::limits::STANDARD_IRRADIANCE_W_M2;
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
    pub pairs: Vec<Pair>,
    /// Air and target of all heating times, °C.
    pub ambient_c: f64,
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
        let mut campaigns = self.campaigns.iter();
        campaigns.any(|one| one.s580.conformity.level == Level::Indicative)
    }
}

/// Compares campaigns, each with each or all with the baseline.
///
/// # Errors
/// [`crate::error::Error::Usage`] for campaigns without a rating, with the same readings,
/// and, unless `allow_mixed`, of different procedure or limits.
pub fn compare(
    campaigns: Vec<Assessment>,
    baseline: Option<usize>,
    allow_mixed: bool,
) -> Result<Comparison> {
    refuse_incomparable(&campaigns)?;
    let departures = departures(&campaigns);
    if !allow_mixed {
        refuse_mixed(&campaigns, &departures)?;
    }
    let count = campaigns.len();
    let places: Vec<(usize, usize)> = match baseline {
        Some(base) => (0..count)
            .filter(|&one| one != base)
            .map(|one| (base, one))
            .collect(),
        None => (0..count)
            .flat_map(|one| (one + 1..count).map(move |two| (one, two)))
            .collect(),
    };
    let count_of_pairs = places.len();
    let differences: Vec<Difference> = places
        .into_iter()
        .filter_map(|(first, second)| weigh(&campaigns, first, second, count_of_pairs))
        .collect();
    let p: Vec<f64> = differences.iter().map(Difference::p).collect();
    let pairs = differences.into_iter().zip(holm(&p));
    let pairs = pairs.map(|(difference, p_corrected)| Pair {
        difference,
        p_corrected,
    });
    let ambients: Vec<f64> = campaigns
        .iter()
        .filter_map(|one| Some(one.prospect.as_ref()?.cooking.ambient_c))
        .collect();
    let ambient_c = ambients.iter().sum::<f64>() / ambients.len().max(1) as f64;
    let boiling_c = campaigns.iter().map(|one| one.tested.boiling_point_c);
    let target_c = boiling_c.fold(TARGET_C, f64::min);
    let span_k = (START_C - ambient_c, target_c - ambient_c);
    let heating = campaigns
        .iter()
        .map(|one| {
            let power = one
                .water_balance
                .as_ref()?
                .power_at(STANDARD_IRRADIANCE_W_M2);
            heating_time(&power, HEATED_KG, span_k)
        })
        .collect();
    Ok(Comparison {
        campaigns,
        baseline,
        departures,
        pairs: pairs.collect(),
        ambient_c,
        target_c,
        heating,
    })
}
