//! Tests of the dry vessel in words.

use serde::Serialize;

use crate::campaign::model::{StagnationLight, StagnationTest};
use crate::language::Words;
use crate::procedure::Assessment;
use crate::procedure::stagnation::Stagnation;
use crate::units::{decimals_for, fixed, spoken_date};

/// Tests of the dry vessel.
#[derive(Debug, Clone, Serialize)]
pub struct StagnationPart {
    pub rows: Vec<StagnationRow>,
    pub note: String,
}

/// One test.
#[derive(Debug, Clone, Serialize)]
pub struct StagnationRow {
    pub date: String,
    pub plateau: String,
    pub ambient: String,
    pub irradiance: String,
    pub result: String,
    pub notes: String,
}

/// Puts the tests into words; `None` where there are none.
pub fn stagnation_part(assessment: &Assessment, words: &Words) -> Option<StagnationPart> {
    let tests = assessment.campaign.stagnations.iter();
    let rows: Vec<StagnationRow> = tests
        .zip(&assessment.stagnations)
        .map(|(test, found)| row(test, found))
        .collect();
    (!rows.is_empty()).then_some(StagnationPart {
        rows,
        note: "Highest steady temperature of the empty, dark vessel above ambient, for each W/m²; ± for 95 %, an oven thermometer within ± 10 K where no uncertainty is stated. It tells losses from light, and is no cooking power. The ratio is the one Mullick, Kandpal and Saxena 1987 use for box cookers (from memory); for other cookers it only compares like with like. To hold it against, common practice, no published source: a thin dark pot in a shallow many-sided reflector of about a square metre comes to around 190 °C in half an hour. An empty vessel can glow, crack or lose its coating: never leave it.".to_owned(),
    })
}

fn row(test: &StagnationTest, found: &Stagnation) -> StagnationRow {
    let clock = test
        .time
        .map_or_else(String::new, |time| format!(", {}", time.strftime("%H:%M")));
    StagnationRow {
        date: format!("{}{clock}", spoken_date(test.date)),
        plateau: format!("{} °C", fixed(test.plateau_c, 0)),
        ambient: format!("{} °C", fixed(test.ambient_c, 0)),
        irradiance: format!(
            "{} W/m²{}",
            fixed(found.irradiance_w_m2, 0),
            match test.light {
                StagnationLight::Measured(_) => "",
                StagnationLight::ClearSky => ", estimated",
            }
        ),
        result: spoken_stagnation(found),
        notes: test.notes.clone().unwrap_or_default(),
    }
}

/// `0.183 ± 0.020 K m²/W`.
pub fn spoken_stagnation(found: &Stagnation) -> String {
    let decimals = decimals_for(found.expanded_k_m2_w);
    format!(
        "{} ± {} K m²/W",
        fixed(found.per_irradiance_k_m2_w, decimals),
        fixed(found.expanded_k_m2_w, decimals)
    )
}
