//! Petela's factor, and the exergy of water against CoolProp and iapws.

use serde_json::Value;
use simmerline::physics::exergy::{SUN_K, ZERO_CELSIUS_K, gained, share_of_sunlight};
use simmerline::physics::water::SPECIFIC_HEAT_J_PER_KG_K;

use crate::data::{assert_absolute, assert_relative};

fn rows(of: &str) -> Vec<Value> {
    let text = include_str!("../../data/procedures_check.json");
    let file: Value = serde_json::from_str(text).unwrap();
    file[of]["rows"].as_array().unwrap().clone()
}

fn number(row: &Value, key: &str) -> f64 {
    row[key].as_f64().unwrap_or_else(|| panic!("no {key}"))
}

/// One kilogram of water by the formula, J.
fn formula_j_per_kg(row: &Value) -> f64 {
    let kelvin = |key: &str| number(row, key) + ZERO_CELSIUS_K;
    SPECIFIC_HEAT_J_PER_KG_K * gained(kelvin("from_c"), kelvin("to_c"), kelvin("ambient_c"))
}

#[test]
fn petelas_factor_is_that_of_40_digits_at_every_temperature_of_air_and_sun() {
    // Derived: our own arithmetic with 40 digits, tests/data/procedures_check.py; the formula is
    // Petela's (1964), from memory. Tolerance: a few roundings of a double near one.
    let rows = rows("petela_factor");
    assert_eq!(rows.len(), 30);
    for row in rows {
        let found = share_of_sunlight(number(&row, "ambient_k"), number(&row, "sun_k"));
        assert_absolute("factor", found, number(&row, "factor"), 1e-14);
    }
}

#[test]
fn petelas_factor_at_300_k_is_that_of_the_specification_for_three_suns() {
    // Derived: 0.930582, 0.930762, 0.931037; half of the last digit that is written.
    for (sun_k, factor) in [(5762.0, 0.930_582), (SUN_K, 0.930_762), (5800.0, 0.931_037)] {
        assert_absolute("factor", share_of_sunlight(300.0, sun_k), factor, 5e-7);
    }
}

#[test]
fn exergy_of_water_is_that_of_coolprop_and_iapws_within_what_a_fixed_heat_capacity_explains() {
    // h2 − h1 − Ta (s2 − s1) at 101325 Pa by CoolProp (IAPWS-95) and iapws (IAPWS-95, IAPWS-IF97),
    // frozen by tests/data/procedures_check.py. The practice fixes c at 4186 J/(kg K), and that is
    // 0.1 % too much below 55 °C and up to 0.4 % too little from 80 to 95 °C.
    let rows = rows("water_exergy");
    assert_eq!(rows.len(), 12);
    for row in rows {
        let percent = match (number(&row, "from_c"), number(&row, "to_c")) {
            (20.0, 30.0) | (50.0, 55.0) => 0.15,
            (60.0, 90.0) => 0.25,
            (80.0, 95.0) => 0.45,
            other => panic!("a range that nobody looked at: {other:?}"),
        };
        let found = formula_j_per_kg(&row);
        for source in ["coolprop", "iapws95", "iapws97"] {
            let expected = number(&row, &format!("{source}_exergy_j_per_kg"));
            assert_relative(source, found, expected, percent / 100.0);
        }
    }
}

#[test]
fn with_the_mean_heat_capacity_of_the_span_the_exergy_is_that_of_coolprop() {
    // The same rows with c taken from CoolProp's enthalpies: what is left is that c is not constant
    // in the span, under 0.05 %.
    for row in rows("water_exergy") {
        let rise_k = number(&row, "to_c") - number(&row, "from_c");
        let own = number(&row, "coolprop_heat_j_per_kg") / (rise_k * SPECIFIC_HEAT_J_PER_KG_K);
        let expected = number(&row, "coolprop_exergy_j_per_kg");
        assert_relative("exergy", own * formula_j_per_kg(&row), expected, 5e-4);
    }
}

#[test]
fn water_below_the_airs_temperature_loses_exergy_as_it_warms() {
    let below: Vec<Value> = rows("water_exergy")
        .into_iter()
        .filter(|row| number(row, "to_c") <= number(row, "ambient_c"))
        .collect();
    assert_eq!(below.len(), 1);
    for row in below {
        assert!(formula_j_per_kg(&row) < 0.0);
        assert!(number(&row, "iapws95_exergy_j_per_kg") < 0.0);
    }
}

#[test]
fn two_kilograms_from_50_to_55_degrees_gain_4_819083_w_of_exergy() {
    // Derived example of the specification: in 600 s in air of 30 °C.
    let joules = 2.0 * SPECIFIC_HEAT_J_PER_KG_K * gained(323.15, 328.15, 303.15);
    assert_absolute("exergy", joules / 600.0, 4.819_083, 5e-7);
}
