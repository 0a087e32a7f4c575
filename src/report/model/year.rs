//! What the line means for clear days through the year, and for fuel.

use serde::Serialize;

use super::report::Row;
use crate::campaign::model::Impact;
use crate::procedure::Assessment;
use crate::procedure::cooking::{Cooking, Spread};
use crate::procedure::limits::RATING_DIFFERENCE_K;
use crate::procedure::year::{ClearYear, FuelSaved, Month, PASTEURISED_C, PASTEURISED_S};
use crate::units::{decimals_for, fixed, range, short, spoken_duration};

/// Joules in a megajoule and in a kilowatt hour.
const J_PER_MJ: f64 = 1e6;
const J_PER_KWH: f64 = 3.6e6;

/// The months of the year.
const MONTHS: [&str; 12] = [
    "January",
    "February",
    "March",
    "April",
    "May",
    "June",
    "July",
    "August",
    "September",
    "October",
    "November",
    "December",
];

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

/// Puts the year into words; `None` without a line.
pub fn year_part(assessment: &Assessment, cooking: &Cooking) -> Option<YearPart> {
    let year = assessment.year.as_ref()?;
    let impact = assessment.campaign.impact.as_ref();
    let (fuel, fuel_result) = match (year.fuel, impact) {
        (Some(fuel), Some(impact)) => (fuel_rows(&fuel, impact), fuel_result(&fuel, impact)),
        _ => (Vec::new(), String::new()),
    };
    Some(YearPart {
        rows: year.months.iter().map(month_row).collect(),
        notes: notes(assessment, year, cooking),
        fuel,
        fuel_result,
    })
}

fn month_row(month: &Month) -> MonthRow {
    let heat = month.heat_j.map(|joules| joules / J_PER_MJ);
    let water = month.pasteurised_kg;
    MonthRow {
        month: MONTHS[usize::from(month.month.unsigned_abs()) - 1].to_owned(),
        hours: format!("{} h", fixed(month.hours, 1)),
        heat: format!(
            "{} MJ ({})",
            fixed(heat.best, 1),
            range(heat.lowest, heat.highest, 1)
        ),
        water: format!(
            "{} L ({})",
            fixed(water.best, 0),
            range(water.lowest, water.highest, 0)
        ),
    }
}

fn notes(assessment: &Assessment, year: &ClearYear, cooking: &Cooking) -> Vec<String> {
    let limit = assessment.limits.get("irradiance_min_w_m2").unwrap_or(0.0);
    let days = year.months.iter().map(|month| month.heat_j.best);
    let mean_kwh = days.sum::<f64>() / year.months.len() as f64 / J_PER_KWH;
    vec![
        format!(
            "Estimated for the 15th of each month under a sky without clouds (Ineichen and Perez 2002), counting the hours with {} W/m² or more on the plane normal to the beam; every cloudy or hazy hour takes its part away. Heat: into water {} K warmer than the air; the mean of the months is {} kWh a day. Ambient {} °C all year, the cooker aimed all day; in brackets 95 % ranges, from the rating's uncertainty alone.",
            short(limit),
            short(RATING_DIFFERENCE_K),
            fixed(mean_kwh, 2),
            fixed(cooking.ambient_c, 1)
        ),
        format!(
            "Water: loads of {} kg one after the other, each from {} °C to {} °C and held for {} (Ciochetti and Metcalf 1984, from memory); 1 kg is taken as 1 L. WHO finds that viruses die only slowly between 60 and 65 °C: where you can, bring water to a rolling boil, and read the caution on drinking water. For clear water only; heat takes away no poison.",
            fixed(cooking.tested_kg, 2),
            short(cooking.start_c),
            short(PASTEURISED_C),
            spoken_duration(PASTEURISED_S)
        ),
    ]
}

fn fuel_rows(fuel: &FuelSaved, impact: &Impact) -> Vec<Row> {
    let heat_mj = fixed(fuel.heat_a_day_j / J_PER_MJ, 1);
    let (value, efficiency) = (impact.heating_value_mj_kg, impact.stove_efficiency * 100.0);
    vec![
        Row::new("fuel", impact.fuel.clone()),
        Row::new(
            "heat on a clear day",
            format!("{heat_mj} MJ, the mean of the months above"),
        ),
        Row::new(
            "lower heating value",
            format!("{} MJ/kg: {}", short(value), impact.heating_value_source),
        ),
        Row::new(
            "efficiency of the stove",
            format!(
                "{} %: {}",
                fixed(efficiency, 0),
                impact.stove_efficiency_source
            ),
        ),
        Row::new(
            "days in a year",
            format!("{}: {}", short(impact.days_per_year), impact.days_source),
        ),
    ]
}

fn fuel_result(fuel: &FuelSaved, impact: &Impact) -> String {
    let Spread {
        best,
        lowest,
        highest,
    } = fuel.fuel_kg;
    let decimals = decimals_for((highest - lowest) / 2.0);
    format!(
        "With these assumptions, all of them the tester's, the same heat would take an estimated {} kg of {} in a year ({} kg from the rating's uncertainty alone). It is saved only as far as the fire is really not lit; nothing is promised.",
        fixed(best, decimals),
        impact.fuel,
        range(lowest, highest, decimals)
    )
}
