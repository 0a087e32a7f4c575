//! Invented campaigns and logs, by proptest from a fixed seed: the same on every machine.

use std::fmt::Write as _;

use jiff::Timestamp;
use proptest::collection::vec;
use proptest::prelude::*;
use proptest::test_runner::{RngSeed, TestCaseResult, TestRunner};
use simmerline::error::Result;
use simmerline::procedure::Assessment;

use crate::kit::campaign::Invented;
pub use crate::kit::files::write;
pub use crate::kit::header::HEADER;
use crate::kit::rate::rate;

/// Seed of every test.
pub const SEED: u64 = 20_260_314;

/// 2026-03-14 10:20 in Lima, seconds since 1970.
pub const BEGIN_S: i64 = 1_773_501_600;
pub const DAY_S: i64 = 86_400;

/// Runs a test on so many invented cases.
#[track_caller]
pub fn check<S: Strategy>(cases: u32, cases_of: S, test: impl Fn(S::Value) -> TestCaseResult) {
    let config = ProptestConfig {
        cases,
        rng_seed: RngSeed::Fixed(SEED),
        failure_persistence: None,
        max_shrink_iters: 400,
        ..ProptestConfig::default()
    };
    let mut runner = TestRunner::new(config);
    if let Err(error) = runner.run(&cases_of, test) {
        panic!("{error}");
    }
}

const INSTRUMENTS: &str = r#"[instruments.irradiance]
plane = "normal"
relative_uncertainty = 0.03
[instruments.water_temperature]
uncertainty_k = 0.5
"#;

/// The invented campaign as a panel in Peru.
pub fn campaign_text(water_kg: f64, logs: &[&str]) -> String {
    let invented = Invented {
        cooker_type: "panel",
        intercept_area_m2: 0.5,
        latitude_deg: -16.4,
        longitude_deg: -71.5,
        time_zone: "America/Lima",
        water_kg,
        instruments: INSTRUMENTS,
    };
    invented.text(logs)
}

/// Rates logs as one campaign.
pub fn rate_logs(water_kg: f64, logs: &[String]) -> Result<Assessment> {
    let names: Vec<String> = (1..=logs.len()).map(|n| format!("day-{n}.csv")).collect();
    let names: Vec<&str> = names.iter().map(String::as_str).collect();
    let logs = logs.iter().map(String::as_str);
    let named: Vec<(&str, &str)> = names.iter().copied().zip(logs).collect();
    rate(&campaign_text(water_kg, &names), &named)
}

/// Rows of a day that gives a rating: water that warms towards a plateau, with noise.
pub fn fair_day(day: i64) -> impl Strategy<Value = Vec<String>> {
    let noise = vec((-1.0..1.0_f64, -1.0..1.0_f64), 241);
    // Steps of which a multiple lies within nine to eleven minutes; 166 s has none.
    let step_s = prop_oneof![45..=120_i64, 180..=220_i64, 275..=325_i64];
    (step_s, 120.0..260.0_f64, 1.2..2.6_f64, noise).prop_map(
        move |(step_s, at_ambient_w, loss_w_per_k, noise)| {
            let (ambient_c, heat_capacity) = (27.0, 3.5 * 4186.0);
            let tends_to_c = ambient_c + at_ambient_w / loss_w_per_k;
            let rows = noise.into_iter().enumerate();
            let rows = rows.map(|(n, (of_water, of_sun))| {
                let after_s = n as i64 * step_s;
                let left = (-(after_s as f64) * loss_w_per_k / heat_capacity).exp();
                let water_c = (tends_to_c - (tends_to_c - 30.0) * left).min(97.0) + 0.1 * of_water;
                let sun = 850.0 + 20.0 * of_sun;
                let time = Timestamp::from_second(BEGIN_S + day * DAY_S + after_s).unwrap();
                format!("{time},{water_c:.3},{ambient_c},{sun:.1},0.4")
            });
            // The solar window ends three and a half hours after the start.
            rows.take((12_600 / step_s) as usize).collect()
        },
    )
}

pub fn log_of(rows: &[String]) -> String {
    format!("{HEADER}\n{}\n", rows.join("\n"))
}

/// One row of a day on which much goes wrong: seconds since the row before, and four
/// cells, some of them missing.
pub type MessyRow = (i64, [Option<f64>; 4]);

pub fn cell(values: std::ops::Range<i32>, unit: f64) -> impl Strategy<Value = Option<f64>> {
    prop_oneof![
        9 => values.prop_map(move |value| Some(f64::from(value) * unit)),
        1 => Just(None),
    ]
}

pub fn messy_row() -> impl Strategy<Value = MessyRow> {
    let step_s = prop_oneof![6 => 30..=150_i64, 2 => 500..=700_i64, 1 => 700..=2000_i64];
    let sun =
        prop_oneof![6 => cell(700..800, 1.0), 2 => cell(400..1200, 1.0), 1 => cell(-5..30, 1.0)];
    let wind = prop_oneof![6 => cell(0..12, 0.1), 1 => cell(20..40, 0.1)];
    let cells = [
        cell(150..1000, 0.1).boxed(),
        cell(150..400, 0.1).boxed(),
        sun.boxed(),
        wind.boxed(),
    ];
    (step_s, cells)
}

pub fn messy_day() -> impl Strategy<Value = Vec<MessyRow>> {
    vec(messy_row(), 20..160)
}

/// Instants of the rows, seconds since 1970.
pub fn instants(rows: &[MessyRow]) -> Vec<i64> {
    let mut at_s = BEGIN_S;
    rows.iter()
        .map(|(step_s, _)| {
            at_s += step_s;
            at_s
        })
        .collect()
}

pub fn messy_log(rows: &[MessyRow]) -> String {
    let mut log = format!("{HEADER}\n");
    for ((n, (_, cells)), at_s) in rows.iter().enumerate().zip(instants(rows)) {
        let missing = ["", "NaN", "-999", "-9999.0"][n % 4];
        let text = cells.map(|cell| cell.map_or(missing.to_owned(), |value| value.to_string()));
        let time = Timestamp::from_second(at_s).unwrap();
        writeln!(log, "{time},{}", text.join(",")).unwrap();
    }
    log
}
