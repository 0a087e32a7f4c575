//! What the line means for clear days through the year, and for fuel.

use serde::Serialize;

use crate::campaign::model::Impact;
use crate::language::{Message, Phrase, Words, celsius, duration, fixed, kilograms, range, short};
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::cooking::Prospect;
use crate::procedure::cooking::pots::{Cooking, Spread};
use crate::procedure::cooking::year::{ClearYear, FuelSaved, Month, PASTEURISED_C, PASTEURISED_S};
use crate::procedure::s580::limits::RATING_DIFFERENCE_K;
use crate::report::rows::Row;
use crate::units::decimals_for;

/// Joules in a megajoule and in a kilowatt hour.
const J_PER_MJ: f64 = 1e6;
const J_PER_KWH: f64 = 3.6e6;

/// Clear days through the year.
#[derive(Debug, Clone, Serialize)]
pub struct YearPart {
    pub rows: Vec<MonthRow>,
    pub notes: Vec<String>,
    /// Empty unless the campaign asks for it.
    pub fuel: Vec<Row>,
    pub fuel_result: String,
}

/// One month, by its clear middle day.
#[derive(Debug, Clone, Serialize)]
pub struct MonthRow {
    pub month: String,
    pub hours: String,
    pub heat: String,
    pub water: String,
}

/// Puts the year into words; `None` where there is none.
pub fn year_part(assessment: &Assessment, prospect: &Prospect, words: &Words) -> Option<YearPart> {
    let Prospect { cooking, year } = prospect;
    let year = year.as_ref()?;
    let impact = assessment.tested.campaign.impact.as_ref();
    let (fuel, fuel_result) = match (year.fuel, impact) {
        (Some(fuel), Some(impact)) => (
            fuel_rows(&fuel, impact, words),
            words.say(fuel_result(&fuel, impact)),
        ),
        _ => (Vec::new(), String::new()),
    };
    let months = year.months.iter();
    Some(YearPart {
        rows: months.map(|month| month_row(month, words)).collect(),
        notes: notes(assessment, year, cooking)
            .into_iter()
            .map(|note| words.say(note))
            .collect(),
        fuel,
        fuel_result,
    })
}

fn month_row(month: &Month, words: &Words) -> MonthRow {
    let heat = month.heat_j.map(|joules| joules / J_PER_MJ);
    let water = month.pasteurised_kg;
    MonthRow {
        month: words.say(Message::new(format!("month-{}", month.month))),
        hours: format!("{} h", words.say(fixed(month.hours, 1))),
        heat: words.say(message!(
            "year-heat",
            best = fixed(heat.best, 1),
            range = range(heat.lowest, heat.highest, 1)
        )),
        water: words.say(message!(
            "year-water",
            best = fixed(water.best, 0),
            range = range(water.lowest, water.highest, 0)
        )),
    }
}

fn notes(assessment: &Assessment, year: &ClearYear, cooking: &Cooking) -> [Message; 2] {
    let limit = assessment.s580.limits.irradiance_min_w_m2();
    let days = year.months.iter().map(|month| month.heat_j.best);
    let mean_kwh = days.sum::<f64>() / year.months.len() as f64 / J_PER_KWH;
    [
        message!(
            "year-note-balance",
            irradiance = short(limit),
            difference = short(RATING_DIFFERENCE_K),
            mean = fixed(mean_kwh, 2),
            ambient = celsius(fixed(cooking.ambient_c, 1))
        ),
        message!(
            "year-note-water",
            load = kilograms(fixed(cooking.tested_kg, 2)),
            start = celsius(short(cooking.start_c)),
            end = celsius(short(PASTEURISED_C)),
            time = duration(PASTEURISED_S)
        ),
    ]
}

fn fuel_rows(fuel: &FuelSaved, impact: &Impact, words: &Words) -> Vec<Row> {
    let row = |label: Message, text: String| Row::new(&words.say(label), text);
    let sourced =
        |number: Phrase, unit: &str, source: &str| format!("{}{unit}: {source}", words.say(number));
    let heat = fixed(fuel.heat_a_day_j / J_PER_MJ, 1);
    vec![
        row(message!("fuel-name"), impact.fuel.clone()),
        row(
            message!("fuel-heat"),
            words.say(message!("fuel-heat-text", heat = heat)),
        ),
        row(
            message!("fuel-value"),
            sourced(
                short(impact.heating_value_mj_kg),
                " MJ/kg",
                &impact.heating_value_source,
            ),
        ),
        row(
            message!("fuel-stove"),
            sourced(
                fixed(impact.stove_efficiency * 100.0, 0),
                " %",
                &impact.stove_efficiency_source,
            ),
        ),
        row(
            message!("fuel-days"),
            sourced(short(impact.days_per_year), "", &impact.days_source),
        ),
    ]
}

fn fuel_result(fuel: &FuelSaved, impact: &Impact) -> Message {
    let Spread {
        best,
        lowest,
        highest,
    } = fuel.fuel_kg;
    let decimals = decimals_for((highest - lowest) / 2.0);
    message!(
        "fuel-result",
        best = fixed(best, decimals),
        fuel = &impact.fuel,
        range = range(lowest, highest, decimals)
    )
}
