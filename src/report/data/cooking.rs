//! What the rating means for cooking as data, for `rating.json`.

use schemars::JsonSchema;
use serde::Serialize;

use crate::campaign::model::Impact;
use crate::procedure::cooking::Prospect;
use crate::procedure::cooking::danger::DangerZone;
use crate::procedure::cooking::pots::{FoodHeating, Spread, TimeRange, WaterHeating};
use crate::procedure::cooking::year::Month;

/// What the line means for a pot. A heating or food that does not get there has null.
/// Ranges (`…_95_…`) are from the lowest to the highest along the line's 95 % band,
/// instruments included.
#[derive(Debug, Serialize, JsonSchema)]
pub struct CookingEntry {
    /// For which it is worked out, W/m².
    irradiance_w_m2: f64,
    /// For which it is worked out, °C.
    ambient_c: f64,
    /// Of the water, °C.
    start_c: f64,
    /// Of the water, °C.
    target_c: f64,
    /// Water temperature at which the line reaches zero, °C.
    heat_ends_c: Option<f64>,
    /// Its range, °C.
    heat_ends_95_c: Option<[f64; 2]>,
    heatings: Vec<HeatingEntry>,
    foods: Vec<FoodEntry>,
    /// Clear middle days of the months.
    months: Vec<MonthEntry>,
    /// Null where the campaign does not ask for it.
    fuel_saved: Option<FuelEntry>,
}

/// Time to heat one load.
#[derive(Debug, Serialize, JsonSchema)]
struct HeatingEntry {
    /// The load, kg.
    water_kg: f64,
    /// From start to target, s.
    time_s: Option<f64>,
    /// Shortest and longest, s.
    time_95_s: Option<[Option<f64>; 2]>,
    /// From start to boiling, s.
    boil_time_s: Option<f64>,
    /// Shortest and longest, s.
    boil_time_95_s: Option<[Option<f64>; 2]>,
}

/// How much of a food can be cooked in the solar window.
#[derive(Debug, Serialize, JsonSchema)]
struct FoodEntry {
    /// In words.
    food: String,
    /// J/(kg K).
    specific_heat_j_per_kg_k: f64,
    /// Temperature that cooks it, °C.
    cooks_at_c: f64,
    /// Time that it is held there, s.
    held_s: f64,
    /// Not more than the load tested, kg.
    amount_kg: Option<f64>,
    /// Least and most, kg.
    amount_95_kg: [Option<f64>; 2],
}

/// The clear middle day of a month.
#[derive(Debug, Serialize, JsonSchema)]
struct MonthEntry {
    /// 1 to 12.
    month: i8,
    /// In which a clear sky gives enough irradiance by the practice, h.
    hours: f64,
    /// Taken up in them by water 50 K above ambient, J.
    heat_j: f64,
    /// Least and most, J.
    heat_95_j: [f64; 2],
    /// Water pasteurised in them, load by load, kg.
    pasteurised_kg: f64,
    /// Least and most, kg.
    pasteurised_95_kg: [f64; 2],
}

/// Fuel not burnt.
#[derive(Debug, Serialize, JsonSchema)]
struct FuelEntry {
    /// By the campaign file's name.
    fuel: String,
    /// Mean heat on a clear day, J.
    heat_a_day_j: f64,
    /// In a year, kg.
    fuel_kg_per_year: f64,
    /// Least and most, kg.
    fuel_95_kg_per_year: [f64; 2],
}

/// Food that would stay too long between 5 and 60 °C.
#[derive(Debug, Serialize, JsonSchema)]
pub struct DangerEntry {
    /// Longest time allowed there, s.
    longest_allowed_s: f64,
    /// The run that stayed longest, if that was too long.
    measured_run: Option<String>,
    /// How long it stayed, s.
    measured_s: Option<f64>,
    /// By the line, with the load tested, s; null where it never gets to 60 °C, or is not
    /// warned of.
    predicted_s: Option<f64>,
    /// Shortest and longest, s.
    predicted_95_s: Option<[Option<f64>; 2]>,
    /// By the line it never gets to 60 °C.
    never_hot: bool,
}

fn pair<T>(spread: Spread<T>) -> [T; 2] {
    [spread.lowest, spread.highest]
}

fn range_s(time: TimeRange) -> [Option<f64>; 2] {
    [Some(time.shortest_s), time.longest_s]
}

/// The entry of a campaign that has a line.
pub fn cooking_entry(prospect: &Prospect, impact: Option<&Impact>) -> CookingEntry {
    let Prospect { cooking, year } = prospect;
    let fuel = year.as_ref().and_then(|year| year.fuel).zip(impact);
    CookingEntry {
        irradiance_w_m2: cooking.irradiance_w_m2,
        ambient_c: cooking.ambient_c,
        start_c: cooking.start_c,
        target_c: cooking.target_c,
        heat_ends_c: cooking
            .heat_ends
            .map(|ends| ends.best_c)
            .filter(|best_c| *best_c < cooking.boiling_point_c),
        heat_ends_95_c: cooking
            .heat_ends
            .map(|ends| [ends.lowest_c, ends.highest_c]),
        heatings: cooking.heatings.iter().map(heating_entry).collect(),
        foods: cooking.foods.iter().map(food_entry).collect(),
        months: year
            .iter()
            .flat_map(|year| &year.months)
            .map(month_entry)
            .collect(),
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
