//! What is said of food and of safe water, against the sources that it names.

use simmerline::physics::food::{FOODS, specific_heat_j_per_kg_k};
use simmerline::procedure::cooking::danger::COLD_C;
use simmerline::procedure::cooking::pots::HOT_C;
use simmerline::procedure::cooking::year::{PASTEURISED_C, PASTEURISED_S};
use simmerline::report::words::cautions::cautions;

use crate::data::assert_relative;

#[test]
fn specific_heats_are_those_of_the_handbooks_table() {
    // ASHRAE Handbook, Refrigeration, thermal properties of foods: mass fraction of water and
    // specific heat above freezing, kJ/(kg K); from memory. The table's own method differs
    // from Chen's equation by up to 2 %.
    for (food, water, table_kj) in [
        ("potatoes, in pieces", 0.7896, 3.67),
        ("carrots, in pieces", 0.8779, 3.92),
        ("cabbage, chopped", 0.9215, 4.02),
        ("eggs, whole", 0.7533, 3.63),
        ("fish (cod)", 0.8122, 3.78),
    ] {
        let found = FOODS
            .iter()
            .find(|known| known.name().to_string() == food)
            .unwrap();
        assert_eq!(found.water, water, "{food}");
        assert_relative(
            food,
            found.specific_heat_j_per_kg_k(),
            table_kj * 1000.0,
            0.02,
        );
    }
    // By hand: x = 0.2, 4190 − 460 − 628 · 0.008 = 3724.976 J/(kg K).
    assert_relative("by hand", specific_heat_j_per_kg_k(0.2), 3724.976, 1e-12);
    // One part of rice (12 % water) in two of water: x = 0.88/3.
    let rice = FOODS.iter().find(|food| food.code == "rice").unwrap();
    assert_relative("rice", 1.0 - rice.water, 0.88 / 3.0, 1e-12);
}

/// Value of a row of the table of safety thresholds, and its unit.
fn threshold(topic: &str) -> (&'static str, &'static str) {
    let text = include_str!("../../../data/safety_thresholds.csv");
    let line = text
        .lines()
        .find(|line| line.starts_with(topic))
        .unwrap_or_else(|| panic!("no {topic}"));
    let cells: Vec<&str> = line.split(',').collect();
    (cells[1], cells[2])
}

#[test]
fn temperatures_and_times_are_those_of_the_sources() {
    // WHO Five Keys 2006, key 4; WAPI literature for pasteurising; USDA FSIS for the highest
    // safe minimum temperature: topics, values and sources in `tests/data`.
    let (zone, unit) = threshold("danger zone (WHO)");
    assert_eq!((zone, unit), ("5 - 60", "degC"));
    assert_eq!((COLD_C, HOT_C), (5.0, 60.0));
    assert_eq!(threshold("water pasteurisation").0, "65 for 6");
    assert_eq!((PASTEURISED_C, PASTEURISED_S), (65.0, 6.0 * 60.0));
    assert_eq!(threshold("poultry leftovers").0, "165 (73.9)");
    for food in ["eggs, whole", "fish (cod)"] {
        let found = FOODS
            .iter()
            .find(|known| known.name().to_string() == food)
            .unwrap();
        assert!(found.cooks_at_c >= 73.9, "{food}");
    }
    assert_eq!(threshold("time limit,"), ("2 (1 above 90 F/32 C)", "h"));
    let food = cautions(simmerline::language::Words::english()).cautions;
    let food = food
        .iter()
        .find(|caution| caution.title == "Food safety")
        .unwrap();
    for said in [
        "between 5 °C and 60 °C",
        "two hours in all, one hour where the air is above 32 °C",
        "74 °C",
    ] {
        assert!(food.text.contains(said), "{said}");
    }
}
