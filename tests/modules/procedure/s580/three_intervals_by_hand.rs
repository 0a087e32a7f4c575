//! Three intervals worked by hand from the formulas of ASAE S580 (cooking power,
//! standardised cooking power, temperature difference, regression, single measure;
//! clause numbers not seen): P = m c ΔT/Δt, Ps = P × 700/G, Td = Tw − Ta,
//! Ps = a + b Td, Ps(50) = a + 50 b. All readings are invented. The steps in the
//! comments are rounded; `tests/data/recompute.py` has them in 40 digits.
//!
//! m = 2 kg, c = 4186 J/(kg K), m c = 8372 J/K; time-weighted means (trapezoid).
//!
//! ```text
//!    t/s   Tw/°C   Ta/°C  G/(W/m²)
//!      0   40.00    25.0    800     interval 1: 0 to 600 s
//!    300   43.40    25.0    840
//!    600   46.00    26.0    820
//!   3000   60.00    26.0    820     no reading 540 to 660 s after 600 s: a hole;
//!   3300   62.60    26.4    850     interval 2: 3000 to 3620 s, 620 s long
//!   3620   64.96    26.0    820
//!   6000   80.00    26.0    820     a hole; interval 3: 6000 to 6580 s, 580 s long
//!   6280   82.34    27.0    790
//!   6580   84.06    26.0    820
//! ```

use jiff::tz::TimeZone;
use simmerline::campaign::model::Site;
use simmerline::logs::{Readings, Series};
use simmerline::procedure::s580::intervals::{IntervalLength, Measured, measure_intervals};
use simmerline::stats::line::{Line, fit_line};

use crate::data::{assert_absolute, assert_relative};

/// 2026-03-14 11:00 in Lima, microseconds since 1970.
const BEGIN_US: i64 = 1_773_504_000_000_000;

/// Readings as in the table above: s, °C, °C, W/m².
const READINGS: [(i64, f64, f64, f64); 9] = [
    (0, 40.00, 25.0, 800.0),
    (300, 43.40, 25.0, 840.0),
    (600, 46.00, 26.0, 820.0),
    (3000, 60.00, 26.0, 820.0),
    (3300, 62.60, 26.4, 850.0),
    (3620, 64.96, 26.0, 820.0),
    (6000, 80.00, 26.0, 820.0),
    (6280, 82.34, 27.0, 790.0),
    (6580, 84.06, 26.0, 820.0),
];

/// Terminating decimals: only rounding of the last digits of a double.
const ROUNDING: f64 = 1e-12;
/// Quotients written down to nine digits or more.
const NINE_DIGITS: f64 = 1e-9;

fn intervals() -> Vec<Measured> {
    let series = |value: fn(&(i64, f64, f64, f64)) -> f64| Series {
        time_us: READINGS
            .map(|(after_s, ..)| BEGIN_US + after_s * 1_000_000)
            .to_vec()
            .into(),
        value: READINGS.iter().map(value).collect(),
    };
    let water_c = series(|reading| reading.1);
    let readings = Readings {
        time_us: water_c.time_us.clone(),
        water_c,
        vessel_c: None,
        ambient_c: Some(series(|reading| reading.2)),
        irradiance_w_m2: Some(series(|reading| reading.3)),
        wind_m_s: None,
        aimed_us: Vec::new(),
    };
    let site = Site {
        name: "Invented terrace".to_owned(),
        latitude_deg: -16.4,
        longitude_deg: -71.5,
        elevation_m: 2335.0,
        pressure_hpa: None,
        linke_turbidity: None,
        time_zone: TimeZone::get("America/Lima").unwrap(),
        time_zone_name: "America/Lima".to_owned(),
    };
    measure_intervals(&readings, 2.0, &site, IntervalLength::of_practice())
}

fn line() -> Line {
    let points = intervals();
    let points = points.iter().map(|interval| interval.point().unwrap());
    let (difference_k, power_w): (Vec<f64>, Vec<f64>) = points.unzip();
    fit_line(&difference_k, &power_w).unwrap()
}

fn assert_three(what: &str, found: impl Fn(&Measured) -> f64, expected: [f64; 3], by: f64) {
    let intervals = intervals();
    assert_eq!(intervals.len(), 3);
    for (interval, expected) in intervals.iter().zip(expected) {
        assert_relative(what, found(interval), expected, by);
    }
}

#[test]
fn intervals_run_from_reading_to_reading_round_the_holes() {
    let spans: Vec<(i64, i64)> = intervals()
        .iter()
        .map(|interval| {
            let after_s = |time_us: i64| (time_us - BEGIN_US) / 1_000_000;
            (after_s(interval.span.from_us), after_s(interval.span.to_us))
        })
        .collect();
    assert_eq!(spans, [(0, 600), (3000, 3620), (6000, 6580)]);
    let durations: Vec<f64> = intervals().iter().map(|i| i.duration_s).collect();
    assert_eq!(durations, [600.0, 620.0, 580.0]);
}

#[test]
fn cooking_powers_are_83_72_and_66_976_and_58_604_w() {
    // 8372 × 6.00/600 = 83.72; 8372 × 4.96/620 = 8372 × 0.008 = 66.976;
    // 8372 × 4.06/580 = 8372 × 0.007 = 58.604.
    let power_w = |interval: &Measured| interval.cooking_power_w;
    assert_three("P", power_w, [83.72, 66.976, 58.604], ROUNDING);
}

#[test]
fn mean_irradiances_are_825_and_835_and_805_w_per_m2() {
    // (820 × 300 + 830 × 300)/600; (835 × 300 + 835 × 320)/620; (805 × 280 + 805 × 300)/580.
    let sun = |interval: &Measured| interval.irradiance.unwrap();
    assert_three("G", |i| sun(i).mean, [825.0, 835.0, 805.0], ROUNDING);
    assert_three("least G", |i| sun(i).min, [800.0, 820.0, 790.0], ROUNDING);
    assert_three("most G", |i| sun(i).max, [840.0, 850.0, 820.0], ROUNDING);
}

#[test]
fn standardised_powers_are_71_035_and_56_148_and_50_96_w() {
    // 83.72 × 700/825 = 58604/825; 66.976 × 700/835 = 46883.2/835; 58.604/1.15 = 50.96.
    let power_w = |interval: &Measured| interval.standardised_power_w.unwrap();
    let expected = [71.035_151_515_2, 56.147_544_910_2, 50.96];
    assert_three("Ps", power_w, expected, NINE_DIGITS);
}

#[test]
fn mean_water_temperatures_are_43_2_and_62_58_and_82_22_celsius() {
    // (41.7 + 44.7)/2; (61.3 × 300 + 63.78 × 320)/620; (81.17 × 280 + 83.2 × 300)/580.
    let expected = [43.2, 62.58, 82.22];
    assert_three("Tw", |i| i.water.mean, expected, ROUNDING);
}

#[test]
fn mean_ambient_temperatures_are_25_25_and_26_2_and_26_5_celsius() {
    // (25 + 25.5)/2; (26.2 × 300 + 26.2 × 320)/620; (26.5 × 280 + 26.5 × 300)/580.
    let expected = [25.25, 26.2, 26.5];
    assert_three("Ta", |i| i.ambient.unwrap().mean, expected, ROUNDING);
}

#[test]
fn temperature_differences_are_17_95_and_36_38_and_55_72_kelvin() {
    let expected = [17.95, 36.38, 55.72];
    assert_three("Td", |i| i.difference_k.unwrap(), expected, ROUNDING);
}

#[test]
fn wind_that_was_not_measured_is_missing_and_not_zero() {
    assert!(intervals().iter().all(|interval| interval.wind.is_none()));
}

#[test]
fn line_is_78_799_w_falling_by_0_52935_w_per_kelvin() {
    // Mean Td = 110.05/3 = 36.68333…, mean Ps = 178.1426964/3 = 59.38089881.
    // Deviations of Td −18.733333, −0.303333, 19.036667; of Ps 11.654253, −3.233354,
    // −8.420899. Sxx = 350.937778 + 0.092011 + 362.394678 = 713.424467;
    // Sxy = −218.323 + 0.980784 − 160.305844 = −377.648060.
    // b = Sxy/Sxx; a = 59.38089881 + 0.529345541 × 36.68333333.
    let line = line();
    assert_relative("b", line.slope, -0.529_345_541_098, NINE_DIGITS);
    assert_relative("a", line.intercept, 78.799_057_741, NINE_DIGITS);
    assert_eq!(line.points, 3);
    assert_absolute("least Td", line.x_range.0, 17.95, 1e-12);
    assert_absolute("most Td", line.x_range.1, 55.72, 1e-12);
}

#[test]
fn scatter_about_the_line_is_4_157_w_and_r_squared_0_9204() {
    // Residuals 1.737846, −3.393922, 1.656076: squares 3.020110 + 11.518707 + 2.742587
    // = 17.281403, one degree of freedom, s = √17.281403. Syy = 135.821606 + 10.454577
    // + 70.911537 = 217.187720; R² = 1 − 17.281403/217.187720.
    let line = line();
    assert_relative("s", line.residual_sd, 4.157_090_747_17, NINE_DIGITS);
    let r_squared = line.r_squared.unwrap();
    assert_relative("R²", r_squared, 0.920_431_028_723, NINE_DIGITS);
}

#[test]
fn standard_errors_and_covariance_follow_from_the_scatter() {
    // u(b) = s/√Sxx = 4.157091/26.709999; u(a) = s √(1/3 + 36.683333²/713.424467)
    // = 4.157091 × √2.219531; cov = −36.683333 × 17.281403/713.424467.
    let line = line();
    let (of_a, of_b) = (line.intercept_standard_error, line.slope_standard_error);
    assert_relative("u(b)", of_b, 0.155_637_951_288, NINE_DIGITS);
    assert_relative("u(a)", of_a, 6.193_285_841_67, NINE_DIGITS);
    assert_relative("cov(a, b)", line.covariance, -0.888_586_689, NINE_DIGITS);
}

#[test]
fn rating_at_50_kelvin_is_52_33_w() {
    // 78.799057741 − 50 × 0.529345541098.
    assert_relative("Ps(50)", line().predict(50.0), 52.331_780_686, NINE_DIGITS);
}

#[test]
fn rating_has_the_bands_of_one_degree_of_freedom() {
    // u = s √(1/3 + 13.316667²/713.424467) = 4.157091 × √0.581900 = 3.171128;
    // for a single interval s √1.581900 = 5.228523; t(0.975, 1) = 12.7062047
    // (student_t.csv). Half-widths 40.292997 and 66.434685 W; eight digits.
    let line = line();
    let u_w = line.standard_error(50.0);
    assert_relative("u(Ps(50))", u_w, 3.171_127_617_89, NINE_DIGITS);
    let confidence_w = line.confidence(50.0).half_width();
    assert_relative("confidence", confidence_w, 40.292_996_8, 1e-8);
    let prediction_w = line.prediction(50.0).half_width();
    assert_relative("prediction", prediction_w, 66.434_685_0, 1e-8);
    let middle_w = (line.confidence(50.0).lower + line.confidence(50.0).upper) / 2.0;
    assert_relative("middle", middle_w, 52.331_780_686, NINE_DIGITS);
}
