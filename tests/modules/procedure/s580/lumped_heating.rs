//! Lumped heating of water in closed form: the whole chain from readings to the line
//! against a case whose answer is known. Derived, not published; the derivation:
//!
//! A pot of heat capacity C takes up P = a + b (T − Ta), a = 190 W, b = −2.2 W/K, at
//! Ta = 28 °C and 700 W/m², so T(t) = T∞ − (T∞ − T0) e^(−t/τ), T∞ = Ta − a/b,
//! τ = −C/b, C = 3.5 kg × 4186 J/(kg K). Over any interval the mean power C ΔT/Δt is
//! a + b (T̄ − Ta) exactly, with T̄ the true time-mean of T: the line is 190 − 2.2 Td
//! and Ps(50) = 80 W. If T̄ is the trapezoid over readings h apart, T∞ − T̄ comes out
//! larger by x/tanh x, x = h/(2τ), and both a and b smaller by tanh(x)/x.

use simmerline::campaign::model::Site;
use simmerline::logs::{Readings, Series};
use simmerline::physics::heating::Heating;
use simmerline::procedure::s580::intervals::{IntervalLength, Measured, measure_intervals};
use simmerline::stats::line::{Line, fit_line};

use crate::data::{Table, assert_absolute, assert_relative};

const WATER_KG: f64 = 3.5;
const SPECIFIC_HEAT_J_PER_KG_K: f64 = 4186.0;
const INTERCEPT_W: f64 = 190.0;
const SLOPE_W_PER_K: f64 = -2.2;
const AMBIENT_C: f64 = 28.0;
const START_C: f64 = 40.0;
const IRRADIANCE_W_M2: f64 = 700.0;
/// Thirteen intervals of ten minutes.
const HEATING_S: i64 = 7800;
/// 2026-03-14 10:20 in Lima, microseconds since 1970.
const BEGIN_US: i64 = 1_773_501_600_000_000;

/// Temperatures near 100 °C are good to 1e-14 K, their rise over ten minutes to
/// 1e-14 of at least 2 K, and twelve digits of the line are left.
const ROUNDING: f64 = 1e-10;

fn heat_capacity_j_per_k() -> f64 {
    WATER_KG * SPECIFIC_HEAT_J_PER_KG_K
}

fn time_constant_s() -> f64 {
    -heat_capacity_j_per_k() / SLOPE_W_PER_K
}

fn water_c(after_s: f64) -> f64 {
    let tends_to_c = AMBIENT_C - INTERCEPT_W / SLOPE_W_PER_K;
    tends_to_c - (tends_to_c - START_C) * (-after_s / time_constant_s()).exp()
}

/// Share of the line that the trapezoid over readings `step_s` apart leaves.
fn shrinkage(step_s: i64) -> f64 {
    let x = step_s as f64 / (2.0 * time_constant_s());
    x.tanh() / x
}

fn intervals_of_readings_every(step_s: i64) -> Vec<Measured> {
    let after_s: Vec<i64> = (0..=HEATING_S / step_s).map(|n| n * step_s).collect();
    let time_us: Vec<i64> = after_s.iter().map(|s| BEGIN_US + s * 1_000_000).collect();
    let level = |value: f64| {
        Some(Series {
            time_us: time_us.clone().into(),
            value: vec![value; time_us.len()],
        })
    };
    let readings = Readings {
        water_c: Series {
            time_us: time_us.clone().into(),
            value: after_s.iter().map(|s| water_c(*s as f64)).collect(),
        },
        vessel_c: None,
        ambient_c: level(AMBIENT_C),
        irradiance_w_m2: level(IRRADIANCE_W_M2),
        wind_m_s: level(0.3),
        aimed_us: Vec::new(),
        time_us: time_us.clone().into(),
    };
    let site = Site {
        name: "Invented terrace".to_owned(),
        latitude_deg: -16.4,
        longitude_deg: -71.5,
        elevation_m: 2335.0,
        pressure_hpa: None,
        linke_turbidity: None,
        time_zone: jiff::tz::TimeZone::UTC,
        time_zone_name: "UTC".to_owned(),
    };
    measure_intervals(&readings, WATER_KG, &site, IntervalLength::of_practice())
}

fn line_of_readings_every(step_s: i64) -> Line {
    let intervals = intervals_of_readings_every(step_s);
    assert_eq!(intervals.len(), 13);
    let points = intervals.iter().map(|interval| interval.point().unwrap());
    let (difference_k, power_w): (Vec<f64>, Vec<f64>) = points.unzip();
    fit_line(&difference_k, &power_w).unwrap()
}

#[test]
fn end_temperatures_and_power_are_those_of_the_closed_form() {
    // lumped_heating.csv prints nine decimals.
    let table = Table::new(include_str!("../../../data/lumped_heating.csv"));
    let intervals = intervals_of_readings_every(60);
    for (row, interval) in table.rows(13).zip(&intervals) {
        let what = format!("interval {}", row.text("k"));
        let of = |column: &str| row.number(column);
        assert_absolute(&what, interval.duration_s, 600.0, 0.0);
        assert_absolute(&what, interval.water_start_c, of("Tw_start_C"), 0.51e-9);
        assert_absolute(&what, interval.water_end_c, of("Tw_end_C"), 0.51e-9);
        assert_absolute(&what, interval.cooking_power_w, of("P_W"), 0.51e-9);
        let standardised_w = interval.standardised_power_w.unwrap();
        assert_absolute(&what, standardised_w, of("P_W"), 0.51e-9);
    }
}

#[test]
fn mean_of_readings_a_second_apart_is_the_true_time_mean() {
    // Tolerance: the trapezoid errs by h²/12 × ΔT'/Δt, 1.3e-7 K for h = 1 s, where T'
    // falls by 0.92 mK/s in the first ten minutes; and the file's nine decimals.
    let table = Table::new(include_str!("../../../data/lumped_heating.csv"));
    let intervals = intervals_of_readings_every(1);
    for (row, interval) in table.rows(13).zip(&intervals) {
        let what = format!("interval {}", row.text("k"));
        let expected_c = row.number("Tw_time_mean_C");
        assert_absolute(&what, interval.water.mean, expected_c, 1.4e-7);
        let difference_k = interval.difference_k.unwrap();
        assert_absolute(&what, difference_k, expected_c - AMBIENT_C, 1.4e-7);
    }
}

#[test]
fn mean_of_the_two_ends_is_their_midpoint() {
    // lumped_heating.csv prints nine decimals.
    let table = Table::new(include_str!("../../../data/lumped_heating.csv"));
    let intervals = intervals_of_readings_every(600);
    for (row, interval) in table.rows(13).zip(&intervals) {
        let expected_c = row.number("Tw_endpoint_mean_C");
        assert_absolute("mean", interval.water.mean, expected_c, 0.51e-9);
    }
}

#[test]
fn minute_readings_give_190_w_falling_by_2_2_w_per_kelvin_and_80_w_at_50() {
    // Tolerance 7e-6: for h = 60 s, 1 − tanh(x)/x = x²/3 = 6.8e-6.
    let line = line_of_readings_every(60);
    assert_relative("intercept", line.intercept, INTERCEPT_W, 7e-6);
    assert_relative("slope", line.slope, SLOPE_W_PER_K, 7e-6);
    assert_relative("Ps(50)", line.predict(50.0), 80.0, 7e-6);
}

#[test]
fn second_readings_give_the_line_four_digits_closer() {
    // Tolerance 2e-9: for h = 1 s, 1 − tanh(x)/x = x²/3 = 1.9e-9.
    let line = line_of_readings_every(1);
    assert_relative("intercept", line.intercept, INTERCEPT_W, 2e-9);
    assert_relative("slope", line.slope, SLOPE_W_PER_K, 2e-9);
    assert_relative("Ps(50)", line.predict(50.0), 80.0, 2e-9);
}

#[test]
fn sparser_readings_shrink_the_line_by_tanh_x_over_x() {
    for step_s in [1, 60, 120, 300, 600] {
        let line = line_of_readings_every(step_s);
        let share = shrinkage(step_s);
        let what = format!("readings every {step_s} s");
        assert_relative(&what, line.intercept, INTERCEPT_W * share, ROUNDING);
        assert_relative(&what, line.slope, SLOPE_W_PER_K * share, ROUNDING);
        assert_relative(&what, line.predict(50.0), 80.0 * share, ROUNDING);
    }
}

#[test]
fn end_readings_alone_give_79_9459_w() {
    // check-values, section 2, last row: Ps(50) shrinks to 79.9459 W. Four decimals.
    let line = line_of_readings_every(600);
    assert_absolute("Ps(50)", line.predict(50.0), 79.9459, 0.000_051);
}

#[test]
fn points_without_scatter_leave_no_uncertainty() {
    // R² is 1 and the residual 0 by construction. Tolerance: ROUNDING of 190 W.
    let line = line_of_readings_every(60);
    assert_absolute("R²", line.r_squared.unwrap(), 1.0, 1e-12);
    assert_absolute("residual sd", line.residual_sd, 0.0, ROUNDING * INTERCEPT_W);
    let half_width_w = line.confidence(50.0).half_width();
    assert_absolute("confidence", half_width_w, 0.0, ROUNDING * INTERCEPT_W);
}

fn pot() -> Heating {
    Heating {
        intercept_w: INTERCEPT_W,
        slope_w_per_k: SLOPE_W_PER_K,
        heat_capacity_j_per_k: heat_capacity_j_per_k(),
    }
}

#[test]
fn heating_time_is_that_of_the_closed_form_for_every_row() {
    // From 40 °C to the end temperature of each row of lumped_heating.csv. Tolerance:
    // nine decimals of a temperature that rises by at least 3.6 mK/s, 0.15 µs.
    let table = Table::new(include_str!("../../../data/lumped_heating.csv"));
    for row in table.rows(13) {
        let to_k = row.number("Tw_end_C") - AMBIENT_C;
        let time_s = pot().time_s(START_C - AMBIENT_C, to_k).unwrap();
        assert_absolute("time", time_s, row.number("t_end_s"), 0.2e-6);
    }
}

/// Seconds that it takes to heat, by steps of the differential equation itself
/// (fourth order, 1 s), and a part of the last step.
fn stepped_time_s(pot: Heating, from_k: f64, to_k: f64) -> f64 {
    let rise = |k: f64| (pot.intercept_w + pot.slope_w_per_k * k) / pot.heat_capacity_j_per_k;
    let step = |k: f64, h: f64| {
        let k1 = rise(k);
        let k2 = rise(k + h / 2.0 * k1);
        let k3 = rise(k + h / 2.0 * k2);
        let k4 = rise(k + h * k3);
        k + h / 6.0 * (k1 + 2.0 * k2 + 2.0 * k3 + k4)
    };
    let (mut at_k, mut time_s) = (from_k, 0.0);
    while step(at_k, 1.0) < to_k {
        at_k = step(at_k, 1.0);
        time_s += 1.0;
    }
    // Within a step of 1 s the rise is level to h/τ, at most 2e-3 of itself: halve.
    let (mut low_s, mut high_s) = (0.0, 1.0);
    for _ in 0..50 {
        let middle_s = (low_s + high_s) / 2.0;
        if step(at_k, middle_s) < to_k {
            low_s = middle_s;
        } else {
            high_s = middle_s;
        }
    }
    time_s + low_s
}

#[test]
fn heating_time_is_that_of_stepping_the_differential_equation() {
    // Falling, level and rising power; 1 and 4 kg. Tolerance: a fourth-order step errs
    // by (h/τ)⁴/120 < 1e-13 of the rise, and thousands of steps add 1e-13 of rounding
    // each: 1e-9 is ample.
    for slope_w_per_k in [-2.2, -0.8, 0.0, 0.5] {
        for water_kg in [1.0, 4.0] {
            let pot = Heating {
                slope_w_per_k,
                heat_capacity_j_per_k: water_kg * SPECIFIC_HEAT_J_PER_KG_K,
                ..pot()
            };
            for (from_k, to_k) in [(-8.0, 67.0), (12.0, 80.0), (0.0, 1.0)] {
                let time_s = pot.time_s(from_k, to_k).unwrap();
                let stepped_s = stepped_time_s(pot, from_k, to_k);
                let what = format!("{slope_w_per_k} W/K, {water_kg} kg, to {to_k} K");
                assert_relative(&what, time_s, stepped_s, 1e-9);
            }
        }
    }
}

#[test]
fn heating_ends_where_the_power_does() {
    // 190/2.2 = 86.3636… K above ambient: one kelvin short of it there is a time, at it
    // there is none. Tolerance: rounding.
    let tends_to_k = pot().tends_to_k().unwrap();
    assert_relative("end", tends_to_k, 190.0 / 2.2, 1e-15);
    assert!(pot().time_s(0.0, tends_to_k - 1.0).is_some());
    assert!(pot().time_s(0.0, tends_to_k + 1e-9).is_none());
}
