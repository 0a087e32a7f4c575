//! What the line means for a pot of water.

use serde::Serialize;

use super::headline::spoken_journey;
use crate::procedure::Assessment;
use crate::procedure::cooking::{Cooking, TARGET_C, TimeRange, WaterHeating};
use crate::units::{fixed, range, short, spoken_duration};

/// Section 6.
#[derive(Debug, Clone, Serialize)]
pub struct CookingPart {
    /// Heading of the time column.
    pub journey: String,
    pub rows: Vec<HeatingRow>,
    pub ends: String,
    pub assumptions: Vec<String>,
}

/// One load.
#[derive(Debug, Clone, Serialize)]
pub struct HeatingRow {
    pub load: String,
    pub time: String,
    pub confidence: String,
}

/// Puts section 6 into words.
pub fn cooking(assessment: &Assessment) -> CookingPart {
    match &assessment.cooking {
        Some(cooking) => describe(cooking),
        None => CookingPart {
            journey: String::new(),
            rows: Vec::new(),
            ends: "Without a line nothing can be said about heating times.".to_owned(),
            assumptions: Vec::new(),
        },
    }
}

fn describe(cooking: &Cooking) -> CookingPart {
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
    };
    CookingPart {
        journey: spoken_journey(cooking),
        rows: cooking.heatings.iter().map(row).collect(),
        ends: ends(cooking),
        assumptions: assumptions(cooking),
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
        "Steady sunlight of {} W/m² in the plane of the irradiance sensor, ambient {} °C (mean of the used intervals), wind as in the used intervals, the cooker re-aimed as in the test.",
        short(cooking.irradiance_w_m2),
        fixed(cooking.ambient_c, 1)
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
