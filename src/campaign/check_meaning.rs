//! What the readings are to mean: dry tests, wishes for the cooking section, fuel.

use jiff::civil::Time;

use super::locate::Checker;
use super::model::{CookingWishes, Impact, StagnationLight, StagnationTest};
use super::schema::{CookingTable, ImpactTable, StagnationTable};
use crate::believable::{
    COOKING_AIR_C, COOKING_IRRADIANCE_W_M2, COOKING_START_C, DAYS_PER_YEAR, DRY_VESSEL_C,
    DRY_VESSEL_IRRADIANCE_W_M2, HEATING_VALUE_MJ_KG, LARGEST_UNCERTAINTY_K, MOST_WATER_KG,
    STOVE_EFFICIENCY,
};
use crate::bounds::{AMOUNTS, NAME, REMARK, STAGNATIONS};
use crate::measure::{Kind, Unit};

/// The tests of the dry vessel.
pub fn check_stagnations(
    checker: &mut Checker<'_>,
    written: Vec<StagnationTable>,
) -> Vec<StagnationTest> {
    let hint = "keep those that matter, or make a campaign of each series";
    if !checker.bound("stagnation", written.len(), &STAGNATIONS, hint) {
        return Vec::new();
    }
    let tables = written.into_iter().enumerate();
    tables
        .filter_map(|(index, table)| {
            check_stagnation(checker, &format!("stagnation.{}", index + 1), table)
        })
        .collect()
}

fn check_stagnation(
    checker: &mut Checker<'_>,
    key: &str,
    table: StagnationTable,
) -> Option<StagnationTest> {
    let date = checker.date(&format!("{key}.date"), &table.date);
    let time = table.time.as_ref().map(|written| {
        let time: Option<Time> = written.to_string().parse().ok();
        if time.is_none() {
            let what = format!("found \"{written}\", expected a clock time");
            checker.problem(&format!("{key}.time"), what, "write it as \"12:30\"");
        }
        time
    });
    let plateau_c = check_temperature(checker, key, "plateau", (table.plateau_c, table.plateau_f));
    let ambient_c = check_temperature(checker, key, "ambient", (table.ambient_c, table.ambient_f));
    if let (Some(plateau_c), Some(ambient_c)) = (plateau_c, ambient_c)
        && plateau_c <= ambient_c
    {
        let written = if table.plateau_f.is_some() {
            "plateau_f"
        } else {
            "plateau_c"
        };
        checker.problem(
            &format!("{key}.{written}"),
            "the vessel is no hotter than the air",
            "exchange or correct the two",
        );
    }
    let light = check_light(checker, key, &table, time.is_some());
    checker.length(&format!("{key}.notes"), table.notes.as_deref(), &REMARK);
    if let Some(kelvin) = table.uncertainty_k {
        checker.in_range(
            &format!("{key}.uncertainty_k"),
            kelvin,
            &(0.0..=LARGEST_UNCERTAINTY_K),
            "K",
        );
    }
    Some(StagnationTest {
        date: date?,
        time: time.flatten(),
        plateau_c: plateau_c?,
        ambient_c: ambient_c?,
        light: light?,
        uncertainty_k: table.uncertainty_k,
        notes: table.notes,
    })
}

/// A temperature, °C, from the one of two keys that is written: in °C or in °F.
fn check_temperature(
    checker: &mut Checker<'_>,
    key: &str,
    name: &str,
    written: (Option<f64>, Option<f64>),
) -> Option<f64> {
    let (unit, value) = match written {
        (Some(celsius), None) => ("c", celsius),
        (None, Some(fahrenheit)) => {
            let unit = Unit::parse("°F", &[Kind::Temperature]);
            ("f", unit.map_or(f64::NAN, |unit| unit.to_base(fahrenheit)))
        }
        _ => {
            let what = format!("expected one of {name}_c and {name}_f");
            checker.problem(&format!("{key}.{name}_c"), what, "write what was read");
            return None;
        }
    };
    let key = format!("{key}.{name}_{unit}");
    checker.in_range(&key, value, &DRY_VESSEL_C, "°C, once converted");
    Some(value)
}

/// Where the irradiance is from: measured, or of a cloudless sky at a time.
fn check_light(
    checker: &mut Checker<'_>,
    key: &str,
    table: &StagnationTable,
    has_time: bool,
) -> Option<StagnationLight> {
    match (table.irradiance_w_m2, table.cloudless) {
        (Some(irradiance_w_m2), false) => {
            let key = format!("{key}.irradiance_w_m2");
            checker.in_range(&key, irradiance_w_m2, &DRY_VESSEL_IRRADIANCE_W_M2, "W/m²");
            Some(StagnationLight::Measured(irradiance_w_m2))
        }
        (None, true) if has_time => Some(StagnationLight::ClearSky),
        (None, true) => {
            let what = "a cloudless sky needs the time of the plateau";
            checker.problem(&format!("{key}.time"), what, "add it as time = \"12:30\"");
            None
        }
        _ => {
            checker.problem(
                &format!("{key}.irradiance_w_m2"),
                "expected one of irradiance_w_m2 and cloudless = true",
                "write the irradiance that was measured, or that the sky was cloudless",
            );
            None
        }
    }
}

/// What the report is to say about cooking.
pub fn check_wishes(checker: &mut Checker<'_>, written: CookingTable) -> CookingWishes {
    let water_kg = written.water_kg.unwrap_or_default();
    for &kg in &water_kg {
        checker.positive("cooking.water_kg", kg, MOST_WATER_KG, "kg");
    }
    let hint = "keep those that matter";
    checker.bound("cooking.water_kg", water_kg.len(), &AMOUNTS, hint);
    for (key, value, range, unit) in [
        (
            "cooking.irradiance_w_m2",
            written.irradiance_w_m2,
            COOKING_IRRADIANCE_W_M2,
            "W/m², within the range of the standard",
        ),
        ("cooking.ambient_c", written.ambient_c, COOKING_AIR_C, "°C"),
        ("cooking.start_c", written.start_c, COOKING_START_C, "°C"),
    ] {
        if let Some(value) = value {
            checker.in_range(key, value, &range, unit);
        }
    }
    let reached_c = written.reached_c.unwrap_or_default();
    for &celsius in &reached_c {
        checker.in_range("cooking.reached_c", celsius, &DRY_VESSEL_C, "°C");
    }
    checker.bound("cooking.reached_c", reached_c.len(), &AMOUNTS, hint);
    CookingWishes {
        water_kg,
        irradiance_w_m2: written.irradiance_w_m2,
        ambient_c: written.ambient_c,
        start_c: written.start_c,
        reached_c,
    }
}

/// The fuel, where the campaign file asks for it.
pub fn check_impact(checker: &mut Checker<'_>, written: Option<ImpactTable>) -> Option<Impact> {
    let written = written?;
    let (heat, share) = (written.heating_value_mj_kg, written.stove_efficiency);
    checker.in_range(
        "impact.heating_value_mj_kg",
        heat,
        &HEATING_VALUE_MJ_KG,
        "MJ/kg",
    );
    checker.in_range(
        "impact.stove_efficiency",
        share,
        &STOVE_EFFICIENCY,
        "as a fraction (0.15 is 15 %)",
    );
    checker.in_range(
        "impact.days_per_year",
        written.days_per_year,
        &DAYS_PER_YEAR,
        "days",
    );
    for (key, text) in [
        ("impact.fuel", &written.fuel),
        ("impact.heating_value_source", &written.heating_value_source),
        (
            "impact.stove_efficiency_source",
            &written.stove_efficiency_source,
        ),
        ("impact.days_source", &written.days_source),
    ] {
        checker.text(key, text, &NAME);
    }
    Some(Impact {
        fuel: written.fuel,
        heating_value_mj_kg: heat,
        heating_value_source: written.heating_value_source,
        stove_efficiency: share,
        stove_efficiency_source: written.stove_efficiency_source,
        days_per_year: written.days_per_year,
        days_source: written.days_source,
    })
}
