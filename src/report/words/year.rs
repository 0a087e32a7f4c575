//! What the line means for clear days through the year, and for fuel.

use serde::Serialize;

use crate::campaign::model::Impact;
use crate::error::Result;
use crate::language::{
    Message, PairedUnit, Phrase, Words, celsius, clauses, duration, fixed, kelvins, kilograms,
    litres, range, short, unit_symbol, within_brackets,
};
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::cooking::Prospect;
use crate::procedure::cooking::pots::{Cooking, Spread};
use crate::procedure::cooking::year::{ClearYear, FuelSaved, Month, PASTEURISED_C, PASTEURISED_S};
use crate::procedure::s580::limits::RATING_DIFFERENCE_K;
use crate::report::assets::Asset;
use crate::report::figures::axis::Axis;
use crate::report::figures::bars::{Bars, draw_bars};
use crate::report::figures::style::Canvas;
use crate::report::rows::{Figure, Row};
use crate::report::spoken::not_stated;
use crate::units::decimals_for;

/// The figure's name among the figures.
const FILE: &str = "year.svg";
/// Fewest letters of the name of a month.
const SHORTEST: usize = 3;
/// Joules in a megajoule and in a kilowatt hour.
const J_PER_MJ: f64 = 1e6;
const J_PER_KWH: f64 = 3.6e6;

/// Clear days through the year.
#[derive(Debug, Clone, Serialize)]
pub struct YearPart {
    pub figure: Figure,
    pub notes: Vec<String>,
    /// Empty unless the campaign asks for it.
    pub fuel: Vec<Row>,
    pub fuel_result: String,
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
    Some(YearPart {
        figure: Figure {
            file: FILE.to_owned(),
            caption: words.say(caption(year)),
            alt: words.say(alt(year)),
        },
        notes: notes(assessment, year, cooking)
            .into_iter()
            .map(|note| words.say(note))
            .collect(),
        fuel,
        fuel_result,
    })
}

/// How the figure is read, and the hours that it counts.
fn caption(year: &ClearYear) -> Message {
    let hours = |one: &&Month, other: &&Month| one.hours.total_cmp(&other.hours);
    let told = |month: Option<&Month>| {
        month.map_or_else(not_stated, |month| {
            message!(
                "year-hours-of",
                hours = fixed(month.hours, 1),
                month = name(month)
            )
            .into()
        })
    };
    message!(
        "year-caption",
        fewest = told(year.months.iter().min_by(hours)),
        most = told(year.months.iter().max_by(hours))
    )
}

fn name(month: &Month) -> Message {
    Message::new(format!("month-{}", month.month))
}

/// Every number of the figure.
fn alt(year: &ClearYear) -> Message {
    let months = year.months.iter().map(|month| -> Phrase {
        let (heat, water) = (
            month.heat_j.map(|joules| joules / J_PER_MJ),
            month.pasteurised_kg,
        );
        message!(
            "year-alt-month",
            month = name(month),
            heat = fixed(heat.best, 1),
            heats = range(heat.lowest, heat.highest, 1),
            water = fixed(water.best, 0),
            waters = range(water.lowest, water.highest, 0)
        )
        .into()
    });
    message!("year-alt", months = clauses(months))
}

/// Twelve bars of the heat and of the water of a clear day; `None` without a year.
///
/// # Errors
/// [`crate::error::Error::Internal`] if the drawing fails.
pub fn year_figure(assessment: &Assessment, canvas: &Canvas<'_>) -> Result<Option<Asset>> {
    let year = assessment.prospect.as_ref();
    let Some(year) = year.and_then(|prospect| prospect.year.as_ref()) else {
        return Ok(None);
    };
    let words = canvas.words;
    let months = year.months.iter();
    let panels = [
        Bars {
            axis: Axis::named(message!("year-axis-heat")),
            values: months
                .clone()
                .map(|month| month.heat_j.map(|joules| joules / J_PER_MJ))
                .collect(),
            decimals: 1,
        },
        Bars {
            axis: Axis::in_unit(
                message!("year-axis-water", unit = unit_symbol(PairedUnit::Litre)),
                PairedUnit::Litre,
            ),
            values: months.clone().map(|month| month.pasteurised_kg).collect(),
            decimals: 0,
        },
    ];
    let names: Vec<String> = months.map(|month| words.say(name(month))).collect();
    Ok(Some(Asset {
        name: FILE.to_owned(),
        bytes: draw_bars(&panels, &shortened(&names), canvas)?.into_bytes(),
    }))
}

/// The beginnings of names, as short as they can be told apart, but no shorter than three letters.
fn shortened(names: &[String]) -> Vec<String> {
    let begun = |name: &String, letters: usize| name.chars().take(letters).collect::<String>();
    let is_alone = |name: &String, letters: usize| {
        let alike = |other: &&String| begun(other, letters) == begun(name, letters);
        names.iter().filter(alike).count() == 1
    };
    let short = |name: &String| {
        let length = name.chars().count();
        let letters = (SHORTEST..length).find(|letters| is_alone(name, *letters));
        begun(name, letters.unwrap_or(length))
    };
    names.iter().map(short).collect()
}

fn notes(assessment: &Assessment, year: &ClearYear, cooking: &Cooking) -> [Message; 2] {
    let limit = assessment.s580.limits.irradiance_min_w_m2();
    let days = year.months.iter().map(|month| month.heat_j.best);
    let mean_kwh = days.sum::<f64>() / year.months.len() as f64 / J_PER_KWH;
    [
        message!(
            "year-note-balance",
            irradiance = short(limit),
            difference = kelvins(short(RATING_DIFFERENCE_K)),
            mean = fixed(mean_kwh, 2),
            ambient = celsius(fixed(cooking.ambient_c, 1))
        ),
        message!(
            "year-note-water",
            load = kilograms(fixed(cooking.tested_kg, 2)),
            start = celsius(short(cooking.start_c)),
            end = celsius(short(PASTEURISED_C)),
            time = duration(PASTEURISED_S),
            kilogram = kilograms(short(1.0)),
            litre = litres(short(1.0))
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
        best = kilograms(fixed(best, decimals)),
        fuel = &impact.fuel,
        range = within_brackets(kilograms(range(lowest, highest, decimals)))
    )
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::language::{LANGUAGES, UnitSystem};

    #[test]
    fn months_are_told_apart_by_few_letters_in_every_language() {
        for language in LANGUAGES {
            let words = Words::new(language, UnitSystem::Si);
            let names = (1..=12).map(|month| words.say(Message::new(format!("month-{month}"))));
            let names: Vec<String> = names.collect();
            let short = shortened(&names);
            for (name, short_name) in names.iter().zip(&short) {
                assert!(name.starts_with(short_name.as_str()), "{short_name}");
                assert!(short_name.chars().count() <= 4, "{short_name}");
                let alike = short.iter().filter(|other| *other == short_name);
                assert_eq!(alike.count(), 1, "{}: {short_name}", language.code);
            }
        }
    }
}
