//! What the line means for a pot of water and of food.

use serde::Serialize;

use super::headline::spoken_journey;
use super::year::{YearPart, year_part};
use crate::language::Words;
use crate::notice::Notice;
use crate::procedure::Assessment;
use crate::procedure::cooking::{Cooking, FoodHeating, TARGET_C, TimeRange, WaterHeating};
use crate::units::{fixed, range, sentence_case, short, spoken_duration};

/// Section 6.
#[derive(Debug, Clone, Default, Serialize)]
pub struct CookingPart {
    /// Food that would stay too long where bacteria grow; empty: nothing to warn of.
    pub warning: String,
    /// Heading of the time column.
    pub journey: String,
    pub rows: Vec<HeatingRow>,
    pub ends: String,
    /// Heading over the foods.
    pub foods_title: String,
    pub foods: Vec<FoodRow>,
    pub foods_note: String,
    /// `None` without a line.
    pub year: Option<YearPart>,
    pub assumptions: Vec<String>,
}

/// One load.
#[derive(Debug, Clone, Serialize)]
pub struct HeatingRow {
    pub load: String,
    pub time: String,
    pub confidence: String,
    /// To boiling, with its range.
    pub boil: String,
}

/// One food.
#[derive(Debug, Clone, Serialize)]
pub struct FoodRow {
    pub food: String,
    pub specific_heat: String,
    pub cooked: String,
    pub amount: String,
    pub confidence: String,
}

/// Puts section 6 into words.
pub fn cooking(assessment: &Assessment, words: &Words) -> CookingPart {
    let danger = assessment.danger_zone.clone();
    let warning = danger.map_or_else(String::new, |found| {
        format!("{}.", sentence_case(&Notice::DangerZone(found).to_string()))
    });
    match &assessment.cooking {
        Some(cooking) => CookingPart {
            warning,
            year: year_part(assessment, cooking),
            ..describe(cooking, words)
        },
        None => CookingPart {
            warning,
            ends: "Without a line nothing can be said about heating times.".to_owned(),
            ..CookingPart::default()
        },
    }
}

fn describe(cooking: &Cooking, words: &Words) -> CookingPart {
    let row = |heating: &WaterHeating| HeatingRow {
        load: if heating.water_kg == cooking.tested_kg {
            format!("{} kg, as tested", fixed(heating.water_kg, 2))
        } else {
            format!("{} kg", short(heating.water_kg))
        },
        time: match (heating.time, cooking.heat_ends) {
            (Some(time), _) => spoken_duration(time.best_s),
            (None, Some(ends)) => format!(
                "{}; tends to {} °C",
                if heating.may_get_there {
                    "may not get there"
                } else {
                    "does not get there"
                },
                fixed(ends.best_c, 0)
            ),
            (None, None) => "does not get there".to_owned(),
        },
        confidence: heating.time.map_or_else(|| "–".to_owned(), spoken_range),
        boil: heating.boil.map_or_else(
            || "does not get there".to_owned(),
            |time| format!("{} ({})", spoken_duration(time.best_s), spoken_range(time)),
        ),
    };
    let foods = cooking.foods.iter();
    CookingPart {
        journey: words.say(spoken_journey(cooking)),
        rows: cooking.heatings.iter().map(row).collect(),
        ends: ends(cooking),
        foods_title: format!(
            "Food brought to cooking temperature and held there within {}",
            spoken_duration(cooking.window_s)
        ),
        foods: foods.map(|food| food_row(food, cooking)).collect(),
        foods_note: format!(
            "From {} °C at {} W/m², in the length of the solar window; never more than the {} kg of the load tested, beyond which the rating says nothing. Specific heats by Chen 1985 from water contents of the ASHRAE Handbook, Refrigeration (both from memory); cooking temperatures and times are common practice, no published source, the 74 °C those of USDA FSIS. Estimated: try it with a thermometer in the food.",
            short(cooking.start_c),
            short(cooking.irradiance_w_m2),
            fixed(cooking.tested_kg, 2)
        ),
        assumptions: assumptions(cooking),
        ..CookingPart::default()
    }
}

fn food_row(heating: &FoodHeating, cooking: &Cooking) -> FoodRow {
    let amount = |kg: f64| {
        if kg >= cooking.tested_kg {
            format!("{} kg or more", fixed(kg, 1))
        } else {
            format!("{} kg", fixed(kg, 1))
        }
    };
    let kg = heating.kg;
    FoodRow {
        food: heating.food.name.to_owned(),
        specific_heat: format!(
            "{} kJ/(kg K)",
            fixed(heating.food.specific_heat_j_per_kg_k() / 1000.0, 2)
        ),
        cooked: format!(
            "{} °C for {}",
            short(heating.food.cooks_at_c),
            spoken_duration(heating.food.held_s)
        ),
        amount: kg
            .best
            .map_or_else(|| "does not get there".to_owned(), amount),
        confidence: match (kg.lowest, kg.highest) {
            _ if kg.best.is_none() => "–".to_owned(),
            (Some(lowest), Some(highest)) if lowest < highest => {
                format!("{} to {}", fixed(lowest, 1), amount(highest))
            }
            (Some(lowest), _) => amount(lowest),
            (None, Some(highest)) => format!("up to {}; it may not get there", amount(highest)),
            (None, None) => "–".to_owned(),
        },
    }
}

fn spoken_range(time: TimeRange) -> String {
    let shortest = spoken_duration(time.shortest_s);
    match time.longest_s {
        Some(longest_s) => format!("{shortest} to {}", spoken_duration(longest_s)),
        None => format!("{shortest} or more; it may not get there"),
    }
}

fn ends(cooking: &Cooking) -> String {
    let boiling = fixed(cooking.boiling_point_c, 1);
    match cooking.heat_ends {
        Some(ends) if ends.best_c < cooking.boiling_point_c => format!(
            "The useful heat ends at a water temperature of {} °C (95 %: {} °C), where the line reaches zero; water boils at {boiling} °C here.",
            fixed(ends.best_c, 0),
            range(ends.lowest_c, ends.highest_c, 0)
        ),
        Some(ends) if ends.lowest_c < cooking.boiling_point_c => format!(
            "Water boils at {boiling} °C here, probably before the useful heat ends: the range of that end reaches down to {} °C.",
            fixed(ends.lowest_c, 0)
        ),
        Some(_) => format!("Water boils at {boiling} °C here, before the useful heat ends."),
        None => format!(
            "The line does not fall, so it shows no end of the useful heat; water boils at {boiling} °C here."
        ),
    }
}

fn assumptions(cooking: &Cooking) -> Vec<String> {
    let gets_there = cooking
        .heatings
        .iter()
        .any(|heating| heating.time.is_some());
    let mut assumptions = Vec::new();
    if cooking.boils_below_target && gets_there {
        assumptions.push(format!(
            "Water boils at {} °C here, below {} °C; times are to boiling.",
            fixed(cooking.boiling_point_c, 1),
            fixed(TARGET_C, 0)
        ));
    }
    assumptions.push(format!(
        "Steady sunlight of {} W/m² in the plane of the irradiance sensor, ambient {} °C ({}), wind as in the used intervals, the cooker re-aimed as in the test.",
        short(cooking.irradiance_w_m2),
        fixed(cooking.ambient_c, 1),
        if cooking.is_ambient_asked {
            "as the campaign asks"
        } else {
            "mean of the used intervals"
        }
    ));
    assumptions.push("The load takes up the same power as the load tested; far smaller or larger loads take up less or more, and the heat that the pot itself stores is left out. Below and above the temperatures of the used intervals the line is carried on straight.".to_owned());
    if gets_there {
        assumptions.push("Ranges run along the edges of the line's 95 % band, instruments included. They hold for the mean of many heatings, not for a single one under a cloud.".to_owned());
    }
    assumptions.push(
        "Water is not food: food heats more slowly, and a lid that is lifted costs many minutes."
            .to_owned(),
    );
    assumptions
}
