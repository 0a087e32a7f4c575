//! Tests of the dry vessel in words.

use serde::Serialize;

use crate::campaign::model::{StagnationLight, StagnationTest};
use crate::language::{Message, Phrase, Words, celsius, date, fixed, joined};
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::dry_vessel::stagnation::Stagnation;
use crate::units::decimals_for;

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
    let tests = assessment.tested.campaign.stagnations.iter();
    let rows: Vec<StagnationRow> = tests
        .zip(&assessment.dry_vessel)
        .map(|(test, found)| row(test, found, words))
        .collect();
    (!rows.is_empty()).then_some(StagnationPart {
        rows,
        note: words.say(message!("stagnation-note")),
    })
}

fn row(test: &StagnationTest, found: &Stagnation, words: &Words) -> StagnationRow {
    let irradiance = fixed(found.irradiance_w_m2, 0);
    let irradiance: Phrase = match test.light {
        StagnationLight::Measured(_) => joined([irradiance, "W/m²".into()], " "),
        StagnationLight::ClearSky => {
            message!("stagnation-irradiance-estimated", irradiance = irradiance).into()
        }
    };
    StagnationRow {
        date: words.say(match test.time {
            Some(time) => message!(
                "stagnation-date-and-time",
                date = date(test.date),
                time = time.strftime("%H:%M").to_string()
            )
            .into(),
            None => date(test.date),
        }),
        plateau: words.say(celsius(fixed(test.plateau_c, 0))),
        ambient: words.say(celsius(fixed(test.ambient_c, 0))),
        irradiance: words.say(irradiance),
        result: words.say(spoken_stagnation(found)),
        notes: test.notes.clone().unwrap_or_default(),
    }
}

/// `0.183 ± 0.020 K m²/W`.
pub fn spoken_stagnation(found: &Stagnation) -> Message {
    let decimals = decimals_for(found.expanded_k_m2_w);
    message!(
        "stagnation-result",
        difference = fixed(found.per_irradiance_k_m2_w, decimals),
        half_width = fixed(found.expanded_k_m2_w, decimals)
    )
}
