//! What the rating means for cooking as data, for `rating.json`.

use serde::Serialize;

use crate::campaign::model::StagnationLight;
use crate::procedure::Assessment;
use crate::procedure::cooking::{Cooking, FoodHeating, Spread, TimeRange, WaterHeating};
use crate::procedure::danger::DangerZone;
use crate::procedure::year::Month;

#[derive(Debug, Serialize)]
pub struct CookingEntry {
    irradiance_w_m2: f64,
    ambient_c: f64,
    start_c: f64,
    target_c: f64,
    heat_ends_c: Option<f64>,
    heat_ends_95_c: Option<[f64; 2]>,
    heatings: Vec<HeatingEntry>,
    foods: Vec<FoodEntry>,
    /// Clear middle days of the months.
    months: Vec<MonthEntry>,
    fuel_saved: Option<FuelEntry>,
}

#[derive(Debug, Serialize)]
struct HeatingEntry {
    water_kg: f64,
    time_s: Option<f64>,
    time_95_s: Option<[Option<f64>; 2]>,
    boil_time_s: Option<f64>,
    boil_time_95_s: Option<[Option<f64>; 2]>,
}

#[derive(Debug, Serialize)]
struct FoodEntry {
    food: String,
    specific_heat_j_per_kg_k: f64,
    cooks_at_c: f64,
    held_s: f64,
    /// Not more than the load tested.
    amount_kg: Option<f64>,
    amount_95_kg: [Option<f64>; 2],
}

#[derive(Debug, Serialize)]
struct MonthEntry {
    month: i8,
    hours: f64,
    heat_j: f64,
    heat_95_j: [f64; 2],
    pasteurised_kg: f64,
    pasteurised_95_kg: [f64; 2],
}

#[derive(Debug, Serialize)]
struct FuelEntry {
    fuel: String,
    heat_a_day_j: f64,
    fuel_kg_per_year: f64,
    fuel_95_kg_per_year: [f64; 2],
}

/// Food that would stay too long between 5 and 60 °C.
#[derive(Debug, Serialize)]
pub struct DangerEntry {
    longest_allowed_s: f64,
    measured_run: Option<String>,
    measured_s: Option<f64>,
    /// By the line, with the load tested; `null` where it never gets to 60 °C, or is not
    /// warned of.
    predicted_s: Option<f64>,
    predicted_95_s: Option<[Option<f64>; 2]>,
    never_hot: bool,
}

/// One test of the dry vessel.
#[derive(Debug, Serialize)]
pub struct StagnationEntry {
    date: String,
    plateau_c: f64,
    ambient_c: f64,
    irradiance_w_m2: f64,
    irradiance_estimated: bool,
    difference_per_irradiance_k_m2_per_w: f64,
    expanded_uncertainty_k_m2_per_w: f64,
}

fn pair<T>(spread: Spread<T>) -> [T; 2] {
    [spread.lowest, spread.highest]
}

fn range_s(time: TimeRange) -> [Option<f64>; 2] {
    [Some(time.shortest_s), time.longest_s]
}

/// The entry of a campaign that has a line.
pub fn cooking_entry(assessment: &Assessment, cooking: &Cooking) -> CookingEntry {
    let year = assessment.year.as_ref();
    let impact = assessment.campaign.impact.as_ref();
    let fuel = year.and_then(|year| year.fuel).zip(impact);
    CookingEntry {
        irradiance_w_m2: cooking.irradiance_w_m2,
        ambient_c: cooking.ambient_c,
        start_c: cooking.start_c,
        target_c: cooking.target_c,
        heat_ends_c: cooking.heat_ends.map(|ends| ends.best_c),
        heat_ends_95_c: cooking
            .heat_ends
            .map(|ends| [ends.lowest_c, ends.highest_c]),
        heatings: cooking.heatings.iter().map(heating_entry).collect(),
        foods: cooking.foods.iter().map(food_entry).collect(),
        months: year.map_or_else(Vec::new, |year| {
            year.months.iter().map(month_entry).collect()
        }),
        fuel_saved: fuel.map(|(saved, impact)| FuelEntry {
            fuel: impact.fuel.clone(),
            heat_a_day_j: saved.heat_a_day_j,
            fuel_kg_per_year: saved.fuel_kg.best,
            fuel_95_kg_per_year: pair(saved.fuel_kg),
        }),
    }
}

fn heating_entry(heating: &WaterHeating) -> HeatingEntry {
    HeatingEntry {
        water_kg: heating.water_kg,
        time_s: heating.time.map(|time| time.best_s),
        time_95_s: heating.time.map(range_s),
        boil_time_s: heating.boil.map(|time| time.best_s),
        boil_time_95_s: heating.boil.map(range_s),
    }
}

fn food_entry(heating: &FoodHeating) -> FoodEntry {
    FoodEntry {
        food: heating.food.name().to_string(),
        specific_heat_j_per_kg_k: heating.food.specific_heat_j_per_kg_k(),
        cooks_at_c: heating.food.cooks_at_c,
        held_s: heating.food.held_s,
        amount_kg: heating.kg.best,
        amount_95_kg: pair(heating.kg),
    }
}

fn month_entry(month: &Month) -> MonthEntry {
    MonthEntry {
        month: month.month,
        hours: month.hours,
        heat_j: month.heat_j.best,
        heat_95_j: pair(month.heat_j),
        pasteurised_kg: month.pasteurised_kg.best,
        pasteurised_95_kg: pair(month.pasteurised_kg),
    }
}

/// The warning, if there is one.
pub fn danger_entry(found: &DangerZone) -> DangerEntry {
    let predicted = found.predicted.flatten();
    DangerEntry {
        longest_allowed_s: found.longest_s,
        measured_run: found.measured.as_ref().map(|(run, _)| run.clone()),
        measured_s: found.measured.as_ref().map(|(_, seconds)| *seconds),
        predicted_s: predicted.map(|time| time.best_s),
        predicted_95_s: predicted.map(range_s),
        never_hot: found.predicted == Some(None),
    }
}

/// The tests of the dry vessel.
pub fn stagnation_entries(assessment: &Assessment) -> Vec<StagnationEntry> {
    let tests = assessment.campaign.stagnations.iter();
    tests
        .zip(&assessment.stagnations)
        .map(|(test, found)| StagnationEntry {
            date: test.date.to_string(),
            plateau_c: test.plateau_c,
            ambient_c: test.ambient_c,
            irradiance_w_m2: found.irradiance_w_m2,
            irradiance_estimated: test.light == StagnationLight::ClearSky,
            difference_per_irradiance_k_m2_per_w: found.per_irradiance_k_m2_w,
            expanded_uncertainty_k_m2_per_w: found.expanded_k_m2_w,
        })
        .collect()
}
