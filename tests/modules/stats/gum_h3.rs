//! JCGM 100:2008 (GUM), annex H.3: calibration of a thermometer, data of table H.6.
//!
//! The line is b = y1 + y2 (t − t0) with t0 = 20 °C. Two tolerances: what the source
//! prints, half of its last digit; and the line worked out once more from table H.6
//! in 40-digit arithmetic (`tests/data/recompute.py`), to rounding. The printed values
//! are those of `check-values`, section 2; numbers of clauses and equations are from
//! memory.

use simmerline::stats::line::{Line, fit_line};

use crate::data::{Table, assert_absolute, assert_relative};

const T0_C: f64 = 20.0;

/// Nine digits of ten that were recomputed; the temperatures have five.
const RECOMPUTED: f64 = 1e-9;

fn calibration_from(t0_c: f64) -> Line {
    let table = Table::new(include_str!("../../data/gum_h3.csv"));
    let above_t0_k: Vec<f64> = table.column("t_c", 11).iter().map(|t| t - t0_c).collect();
    fit_line(&above_t0_k, &table.column("b_c", 11)).unwrap()
}

fn correlation(line: &Line) -> f64 {
    line.covariance / (line.intercept_standard_error * line.slope_standard_error)
}

#[test]
fn intercept_and_its_standard_deviation_agree_with_h_3_3() {
    let line = calibration_from(T0_C);
    let (y1, s_y1) = (line.intercept, line.intercept_standard_error);
    assert_absolute("y1 as printed", y1, -0.1712, 0.000_05);
    assert_absolute("s(y1) as printed", s_y1, 0.0029, 0.000_05);
    assert_relative("y1", y1, -0.171_203_790_131_35, RECOMPUTED);
    assert_relative("s(y1)", s_y1, 0.002_877_597_835_159_95, RECOMPUTED);
}

#[test]
fn slope_and_its_standard_deviation_agree_with_h_3_3() {
    let line = calibration_from(T0_C);
    let (y2, s_y2) = (line.slope, line.slope_standard_error);
    assert_absolute("y2 as printed", y2, 0.002_18, 0.000_005);
    assert_absolute("s(y2) as printed", s_y2, 0.000_67, 0.000_005);
    assert_relative("y2", y2, 0.002_182_697_739_887_28, RECOMPUTED);
    assert_relative("s(y2)", s_y2, 0.000_667_938_773_227_832, RECOMPUTED);
}

#[test]
fn residual_standard_deviation_agrees_with_h_3_3() {
    let s = calibration_from(T0_C).residual_sd;
    assert_absolute("s as printed", s, 0.0035, 0.000_05);
    assert_relative("s", s, 0.003_497_563_963_505_28, RECOMPUTED);
}

#[test]
fn covariance_gives_the_correlation_of_h_3_3() {
    let r = correlation(&calibration_from(T0_C));
    assert_absolute("r(y1, y2) as printed", r, -0.930, 0.000_5);
    assert_relative("r(y1, y2)", r, -0.930_429_603_093, RECOMPUTED);
}

#[test]
fn value_at_30_celsius_and_its_standard_uncertainty_agree_with_h_3_4() {
    let line = calibration_from(T0_C);
    let (b, u) = (line.predict(30.0 - T0_C), line.standard_error(30.0 - T0_C));
    assert_absolute("b(30 °C) as printed", b, -0.1494, 0.000_05);
    assert_absolute("u(b(30 °C)) as printed", u, 0.0041, 0.000_05);
    assert_relative("b(30 °C)", b, -0.149_376_812_732, RECOMPUTED);
    assert_relative("u(b(30 °C))", u, 0.004_138_595_752_85, RECOMPUTED);
}

#[test]
fn covariance_propagates_to_the_uncertainty_at_30_celsius() {
    // H.3.4, equation H.14: u² = s²(y1) + θ² s²(y2) + 2 θ s(y1) s(y2) r, θ = 10 K.
    // Tolerance: half of the last printed digit; and rounding, as the standard error
    // of the line is the same quantity by another formula.
    let line = calibration_from(T0_C);
    let theta_k: f64 = 30.0 - T0_C;
    let squares = line.intercept_standard_error.powi(2)
        + (theta_k * line.slope_standard_error).powi(2)
        + 2.0 * theta_k * line.covariance;
    assert_absolute("u as printed", squares.sqrt(), 0.0041, 0.000_05);
    assert_relative("u", squares.sqrt(), 0.004_138_595_752_85, RECOMPUTED);
}

#[test]
fn moving_t0_to_the_mean_temperature_takes_the_correlation_away() {
    // H.3.5: with t0 at the mean temperature of the observations, 24.0085 °C,
    // r(y1, y2) = 0, and u(b(30 °C)) stays what it was. Tolerance: the mean as
    // written here has four decimals, so |r| ≤ 5e-5 K · √n/√Sxx = 3.2e-5.
    let line = calibration_from(24.0085);
    assert_absolute("r(y1, y2)", correlation(&line), 0.0, 3.2e-5);
    let u = line.standard_error(30.0 - 24.0085);
    assert_relative("u(b(30 °C))", u, 0.004_138_595_752_85, RECOMPUTED);
}
