//! Boiling point by elevation: ISO 2533:1975 standard atmosphere (the same as ICAO
//! Doc 7488) for the pressure, IAPWS R7-97(2012) (IAPWS-IF97) for the saturation.

use simmerline::physics::air::pressure_pa;
use simmerline::physics::water::boiling_point_c;

use crate::data::{Table, assert_absolute};

/// 0 °C in kelvin.
const ZERO_CELSIUS_K: f64 = 273.15;

fn elevations() -> Table {
    Table::new(include_str!("../../data/boiling_point.csv"))
}

#[test]
fn standard_pressure_is_that_of_the_table_at_nine_elevations() {
    // Tolerance: the file prints tenths of a pascal.
    for row in elevations().rows(9) {
        let elevation_m = row.number("elevation_m");
        let what = format!("pressure at {elevation_m} m");
        let expected = row.number("pressure_pa");
        assert_absolute(&what, pressure_pa(elevation_m), expected, 0.051);
    }
}

#[test]
fn water_boils_where_the_table_says_at_nine_elevations() {
    // Tolerance: the file prints three decimals.
    for row in elevations().rows(9) {
        let elevation_m = row.number("elevation_m");
        let boiling_c = boiling_point_c(pressure_pa(elevation_m));
        let what = format!("boiling point at {elevation_m} m");
        assert_absolute(&what, boiling_c, row.number("boiling_point_c"), 0.000_51);
    }
}

#[test]
fn saturation_temperature_is_that_of_the_verification_table() {
    // IAPWS-IF97, table 36, three rows, from memory. Tolerance: the table prints nine
    // digits, so half of the sixth decimal.
    for (pressure_mpa, expected_k) in [(0.1, 372.755_919), (1.0, 453.035_632), (10.0, 584.149_488)]
    {
        let found_k = boiling_point_c(pressure_mpa * 1e6) + ZERO_CELSIUS_K;
        let what = format!("saturation at {pressure_mpa} MPa");
        assert_absolute(&what, found_k, expected_k, 0.51e-6);
    }
}

#[test]
fn standard_pressure_is_that_printed_at_the_tropopause() {
    // ISO 2533:1975, table of pressure at a geopotential altitude of 11 000 m: 22 632 Pa,
    // from memory, with the temperature 216.65 K that its lapse rate gives. Tolerance:
    // the value is printed to the pascal.
    assert_absolute("pressure at 11 km", pressure_pa(11_000.0), 22_632.0, 0.51);
}
