//! NIST Special Publication 811 (2008), appendix B.8 and B.9: conversion factors as the
//! tables print them, from memory of the tables, to seven digits; the exact ones of the
//! international foot, mile and Btu are in `src/measure.toml`.

use simmerline::measure::{Kind, Unit};

/// The tables print seven digits.
const SEVEN_DIGITS: f64 = 5e-7;

#[track_caller]
fn check(unit: &str, kind: Kind, reading: f64, expected: f64) {
    let converted = Unit::parse(unit, &[kind]).unwrap().to_base(reading);
    let apart = (converted - expected).abs();
    assert!(
        apart <= SEVEN_DIGITS * expected.abs(),
        "{unit}: {converted}, not {expected}"
    );
}

#[test]
fn speeds_have_the_factors_of_the_tables() {
    check("km/h", Kind::Speed, 1.0, 2.777778e-1);
    check("mph", Kind::Speed, 1.0, 4.4704e-1);
    check("knots", Kind::Speed, 1.0, 5.144444e-1);
    check("ft/min", Kind::Speed, 1.0, 5.08e-3);
    check("ft/s", Kind::Speed, 1.0, 3.048e-1);
}

#[test]
fn irradiance_has_the_factor_of_the_tables() {
    // British thermal unit (IT) per square foot hour, to W/m².
    check("BTU/(h ft²)", Kind::Irradiance, 1.0, 3.154591);
}

#[test]
fn temperatures_follow_the_definitions() {
    // t/°C = (t/°F − 32)/1.8; t/°C = T/K − 273.15.
    check("°F", Kind::Temperature, 212.0, 100.0);
    check("°F", Kind::Temperature, 375.0, 190.555_555_6);
    check("°F", Kind::Temperature, -40.0, -40.0);
    check("K", Kind::Temperature, 373.15, 100.0);
}
