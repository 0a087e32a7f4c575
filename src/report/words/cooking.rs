//! What the line means for a pot of water and of food.

use serde::Serialize;

use super::year::{YearPart, year_part};
use crate::language::{
    Message, Phrase, Words, celsius, duration, fixed, joined, kilograms, range, short,
};
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::cooking::Prospect;
use crate::procedure::cooking::pots::{Cooking, FoodHeating, HeatEnd, TimeRange, WaterHeating};
use crate::units::sentence_case;

/// Temperature all through that makes any food safe, °C.
///
/// USDA FSIS, safe minimum internal temperatures: that of poultry and leftovers.
const SAFE_C: f64 = 74.0;

/// The section on cooking.
#[derive(Debug, Clone, Serialize)]
pub struct CookingPart {
    /// That the section is no result of the test; empty without a line.
    pub opinion: String,
    /// Food that would stay too long where bacteria grow; empty: nothing to warn of.
    pub warning: String,
    /// Heading of the time column.
    pub journey: String,
    pub rows: Vec<HeatingRow>,
    pub ends: String,
    /// Heading over the foods.
    pub foods_title: String,
    pub foods: Vec<FoodRow>,
    /// In place of the rows, where all of them would say the load tested or more; else empty.
    pub foods_all: String,
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
    /// To boiling, with its range; empty where the times are to boiling already.
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

/// From where to where water is heated: `from 20 to 95 °C`.
pub fn spoken_journey(cooking: &Cooking) -> Message {
    let start = fixed(cooking.start_c, 0);
    if cooking.boils_below_target {
        message!(
            "journey-to-boiling",
            start = celsius(start),
            boiling = celsius(fixed(cooking.target_c, 1))
        )
    } else {
        let target = fixed(cooking.target_c, 0);
        let degrees = message!("journey-degrees", start = start, target = target);
        message!("journey", degrees = celsius(degrees.into()))
    }
}

/// Puts the section on cooking into words.
pub fn cooking(assessment: &Assessment, words: &Words) -> CookingPart {
    let danger = assessment.danger_zone.as_ref();
    let warning = danger.map_or_else(String::new, |found| {
        let said = words.say(found.message());
        format!("{}.", sentence_case(&said))
    });
    match &assessment.prospect {
        Some(prospect) => by_line(assessment, prospect, warning, words),
        None if assessment.s580.is_not_valid() => {
            without_line(String::new(), message!("cooking-not-valid"), words)
        }
        None => without_line(warning, message!("cooking-no-line"), words),
    }
}

fn by_line(
    assessment: &Assessment,
    prospect: &Prospect,
    warning: String,
    words: &Words,
) -> CookingPart {
    let cooking = &prospect.cooking;
    let heatings = cooking.heatings.iter();
    let foods = cooking.foods.iter();
    let is_all_of_it =
        !cooking.foods.is_empty() && foods.clone().all(|food| is_capped(food, cooking));
    CookingPart {
        opinion: words.say(message!("cooking-opinion")),
        warning,
        journey: words.say(spoken_journey(cooking)),
        rows: heatings
            .map(|heating| heating_row(heating, cooking, words))
            .collect(),
        ends: words.say(ends(cooking)),
        foods_title: if is_all_of_it {
            String::new()
        } else {
            words.say(message!(
                "cooking-foods-title",
                time = duration(cooking.window_s)
            ))
        },
        foods: if is_all_of_it {
            Vec::new()
        } else {
            foods.map(|food| food_row(food, cooking, words)).collect()
        },
        foods_all: if is_all_of_it {
            words.say(foods_all(cooking))
        } else {
            String::new()
        },
        foods_note: words.say(message!(
            "cooking-foods-about",
            start = celsius(short(cooking.start_c)),
            irradiance = fixed(cooking.irradiance_w_m2, 0),
            load = kilograms(fixed(cooking.tested_kg, 2)),
            safe = celsius(short(SAFE_C)),
        )),
        year: year_part(assessment, prospect, words),
        assumptions: assumptions(assessment, prospect)
            .into_iter()
            .map(|assumed| words.say(assumed))
            .collect(),
    }
}

fn without_line(warning: String, absence: Message, words: &Words) -> CookingPart {
    CookingPart {
        opinion: String::new(),
        warning,
        journey: String::new(),
        rows: Vec::new(),
        ends: words.say(absence),
        foods_title: String::new(),
        foods: Vec::new(),
        foods_all: String::new(),
        foods_note: String::new(),
        year: None,
        assumptions: Vec::new(),
    }
}

fn heating_row(heating: &WaterHeating, cooking: &Cooking, words: &Words) -> HeatingRow {
    let is_possible =
        |highest: Option<HeatEnd>, to_c: f64| highest.is_some_and(|ends| ends.highest_c >= to_c);
    let time = match (heating.time, cooking.heat_ends) {
        (Some(time), _) => duration(time.best_s),
        (None, Some(ends)) => {
            let said = if heating.may_get_there {
                message!("cooking-probably-not-ends")
            } else {
                message!("cooking-no-ends")
            };
            let whole = whole_degrees(ends.best_c, cooking.boiling_point_c);
            said.with("temperature", celsius(fixed(whole, 0))).into()
        }
        (None, None) => message!("cooking-no").into(),
    };
    let boil = match heating.boil {
        Some(time) => message!(
            "cooking-boil",
            time = duration(time.best_s),
            range = spoken_range(time)
        ),
        None if is_possible(cooking.heat_ends, cooking.boiling_point_c) => {
            message!("cooking-probably-not")
        }
        None => message!("cooking-no"),
    };
    HeatingRow {
        load: if heating.water_kg == cooking.tested_kg {
            let load = kilograms(fixed(heating.water_kg, 2));
            words.say(message!("cooking-load-tested", load = load))
        } else {
            words.say(kilograms(short(heating.water_kg)))
        },
        time: words.say(time),
        confidence: heating
            .time
            .map_or_else(|| "–".to_owned(), |time| words.say(spoken_range(time))),
        boil: if cooking.boils_below_target {
            String::new()
        } else {
            words.say(boil)
        },
    }
}

/// Whole degrees of a temperature of water, never more than those at which it boils.
fn whole_degrees(water_c: f64, boiling_point_c: f64) -> f64 {
    water_c.round().min(boiling_point_c.floor())
}

/// Whether as much of a food as the load tested, or more, is cooked even by the slow end.
fn is_capped(heating: &FoodHeating, cooking: &Cooking) -> bool {
    let is_enough = |kg: Option<f64>| kg.is_some_and(|kg| kg >= cooking.tested_kg);
    is_enough(heating.kg.best) && is_enough(heating.kg.lowest)
}

/// Every food, where all of them can be cooked in the amount of the load tested.
fn foods_all(cooking: &Cooking) -> Message {
    let foods = cooking.foods.iter().map(|heating| -> Phrase {
        let cooked = message!(
            "cooking-cooked-at",
            temperature = celsius(short(heating.food.cooks_at_c)),
            time = duration(heating.food.held_s)
        );
        message!(
            "cooking-food-and-how",
            food = heating.food.name(),
            cooked = cooked
        )
        .into()
    });
    message!(
        "cooking-foods-all",
        load = kilograms(fixed(cooking.tested_kg, 1)),
        time = duration(cooking.window_s),
        foods = joined(foods.collect::<Vec<Phrase>>(), "; ")
    )
}

fn food_row(heating: &FoodHeating, cooking: &Cooking, words: &Words) -> FoodRow {
    let amount = |kg: f64| -> Phrase {
        let amount = kilograms(fixed(kg, 1));
        if kg >= cooking.tested_kg {
            message!("cooking-amount-or-more", amount = amount).into()
        } else {
            amount
        }
    };
    let kg = heating.kg;
    let confidence = match (kg.lowest, kg.highest) {
        (Some(lowest), Some(highest)) if lowest < highest => message!(
            "cooking-amount-range",
            lowest = fixed(lowest, 1),
            highest = amount(highest)
        )
        .into(),
        (Some(lowest), _) => amount(lowest),
        (None, Some(highest)) => message!("cooking-amount-up-to", highest = amount(highest)).into(),
        (None, None) => "–".into(),
    };
    FoodRow {
        food: words.say(heating.food.name()),
        specific_heat: format!(
            "{} kJ/(kg K)",
            words.say(fixed(heating.food.specific_heat_j_per_kg_k() / 1000.0, 2))
        ),
        cooked: words.say(message!(
            "cooking-cooked-at",
            temperature = celsius(short(heating.food.cooks_at_c)),
            time = duration(heating.food.held_s)
        )),
        amount: words.say(match (kg.best, kg.highest) {
            (Some(best), _) => amount(best),
            (None, Some(_)) => message!("cooking-amount-probably-none").into(),
            (None, None) => message!("cooking-amount-none").into(),
        }),
        confidence: words.say(confidence),
    }
}

/// From the shortest time that the 95 % range allows to the longest.
pub(super) fn spoken_range(time: TimeRange) -> Message {
    let shortest = duration(time.shortest_s);
    match time.longest_s {
        Some(longest_s) => message!(
            "cooking-time-range",
            shortest = shortest,
            longest = duration(longest_s)
        ),
        None => message!("cooking-time-open", shortest = shortest),
    }
}

fn ends(cooking: &Cooking) -> Message {
    let boiling_point_c = cooking.boiling_point_c;
    let boiling = celsius(fixed(boiling_point_c, 1));
    let whole = |water_c: f64| whole_degrees(water_c, boiling_point_c);
    match cooking.heat_ends {
        Some(ends) if ends.best_c < boiling_point_c => {
            let said = if ends.highest_c < boiling_point_c {
                let (lowest, highest) = (whole(ends.lowest_c), whole(ends.highest_c));
                message!(
                    "cooking-heat-ends",
                    range = celsius(range(lowest, highest, 0))
                )
            } else {
                let lowest = celsius(fixed(whole(ends.lowest_c), 0));
                message!("cooking-heat-ends-or-boils", lowest = lowest)
            };
            said.with("irradiance", fixed(cooking.irradiance_w_m2, 0))
                .with("end", celsius(fixed(whole(ends.best_c), 0)))
                .with("boiling", boiling)
        }
        Some(ends) if ends.lowest_c < boiling_point_c => message!(
            "cooking-ends-perhaps",
            boiling = boiling,
            lowest = celsius(fixed(whole(ends.lowest_c), 0))
        ),
        Some(_) => message!("cooking-ends-above", boiling = boiling),
        None => message!("cooking-never-ends", boiling = boiling),
    }
}

fn assumptions(assessment: &Assessment, prospect: &Prospect) -> Vec<Message> {
    let cooking = &prospect.cooking;
    let is_of_one_day = assessment
        .s580
        .uncertainty()
        .is_some_and(|found| found.is_of_one_day());
    let mut times = cooking.heatings.iter().map(|heating| heating.time);
    let gets_there = times.any(|time| time.is_some());
    let mut assumptions = Vec::new();
    let light = if cooking.is_irradiance_asked {
        message!("cooking-light-asked")
    } else {
        message!("cooking-light-of-test")
    };
    let air = if cooking.is_ambient_asked {
        message!("cooking-air-asked")
    } else {
        message!("cooking-air-mean")
    };
    assumptions.push(light.with("irradiance", fixed(cooking.irradiance_w_m2, 0)));
    assumptions.push(air.with("ambient", celsius(fixed(cooking.ambient_c, 1))));
    assumptions.push(message!("cooking-assumed-load"));
    if gets_there {
        assumptions.push(if is_of_one_day {
            message!("cooking-assumed-edges-one-day")
        } else {
            message!("cooking-assumed-edges")
        });
    }
    assumptions.push(message!("cooking-assumed-water"));
    if prospect.year.is_none() {
        assumptions.push(message!("cooking-no-months"));
    }
    assumptions
}
