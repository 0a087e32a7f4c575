//! Specific heat of liquid water by IAPWS R7-97(2012) (IAPWS-IF97) at 101325 Pa,
//! 10 to 95 °C, against the constant that the practice fixes.

use simmerline::physics::water::SPECIFIC_HEAT_J_PER_KG_K;

use crate::data::{Table, assert_relative};

fn tabulated() -> Vec<f64> {
    Table::new(include_str!("../../data/water_properties.csv")).column("specific_heat_j_kg_k", 18)
}

#[test]
fn constant_lies_within_the_specific_heats_from_10_to_95_celsius() {
    // The span, 4178.55 to 4210.57 J/(kg K), is the source's own: no tolerance.
    let table = tabulated();
    let lowest = table.iter().copied().fold(f64::INFINITY, f64::min);
    let highest = table.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    assert!((lowest..=highest).contains(&SPECIFIC_HEAT_J_PER_KG_K));
}

#[test]
fn constant_is_the_mean_specific_heat_within_a_thousandth() {
    // Tolerance 0.1 %: the practice rounds to 4186; the mean depends on the span chosen.
    let table = tabulated();
    let mean = table.iter().sum::<f64>() / table.len() as f64;
    assert_relative("specific heat", SPECIFIC_HEAT_J_PER_KG_K, mean, 1e-3);
}

#[test]
fn constant_is_within_six_thousandths_of_every_tabulated_specific_heat() {
    // The furthest is 4210.57 J/(kg K) at 95 °C, 0.58 % away; check-values, section 3,
    // row "specific heat, density of water".
    for tabulated in tabulated() {
        assert_relative("specific heat", SPECIFIC_HEAT_J_PER_KG_K, tabulated, 6e-3);
    }
}
