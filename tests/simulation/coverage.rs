//! How often the stated 95 % interval covers the truth, by simulation: invented campaigns
//! with a known line, scatter, days that differ, and instruments that read wrong.
//!
//! `cargo test --release --test simulation -- --nocapture` prints every share.

use simmerline::campaign::classes::Spread;
use simmerline::campaign::model::{Instrument, Instruments, Sensitivity};
use simmerline::campaign::standard_uncertainty::Uncertainty;
use simmerline::procedure::s580::uncertainty::LineUncertainty;
use simmerline::procedure::s580::uncertainty::budget::ReadingNoise;
use simmerline::procedure::s580::uncertainty::days::{DayEffect, Points};
use simmerline::procedure::sources::{Basis, Source, common_errors};
use simmerline::stats::line::fit_line;
use simmerline::stats::monte_carlo::{Generator, normal};

use rand_xoshiro::rand_core::SeedableRng;

const CAMPAIGNS: usize = 5_000;
const INTERCEPT_W: f64 = 232.0;
const SLOPE_W_PER_K: f64 = -2.0;
const SCATTER_W: f64 = 6.0;
const A_DAY: usize = 11;

/// A campaign's worth of truth.
struct Scenario {
    days: usize,
    day_sd_w: f64,
    /// Standard uncertainty of irradiance, and of either thermometer.
    irradiance: f64,
    thermometer_k: f64,
}

fn instruments(scenario: &Scenario) -> Instruments {
    let stated = |uncertainty: Uncertainty| Instrument {
        uncertainty: Some(uncertainty),
        ..Instrument::default()
    };
    Instruments {
        irradiance_plane: None,
        irradiance_estimate: None,
        sensitivity: Sensitivity::default(),
        irradiance: stated(Uncertainty::Relative(scenario.irradiance)),
        water_temperature: stated(Uncertainty::Kelvin(scenario.thermometer_k)),
        ambient_temperature: stated(Uncertainty::Kelvin(scenario.thermometer_k)),
        water_mass: stated(Uncertainty::Relative(0.0)),
        wind_speed: Instrument::default(),
        clock: Instrument::default(),
    }
}

/// Whether the interval of one simulated campaign covers the truth.
fn covers(scenario: &Scenario, generator: &mut Generator) -> bool {
    let instruments = instruments(scenario);
    let errors: Vec<_> = common_errors(&instruments, "invented")
        .into_iter()
        .filter(|error| error.basis == Basis::Stated && error.spread == Spread::Normal)
        .collect();
    let (mut scale, mut shift_k) = (1.0, 0.0);
    for error in &errors {
        let off = error.standard.size() * normal(generator);
        match error.source {
            Source::Irradiance => scale /= 1.0 + off,
            Source::WaterTemperature => shift_k += off,
            Source::AmbientTemperature => shift_k -= off,
            _ => {}
        }
    }
    let mut points = Points::default();
    for day in 0..scenario.days {
        let of_day_w = scenario.day_sd_w * normal(generator);
        let from_k = 10.0 + 4.0 * normal(generator);
        for step in 0..A_DAY {
            let true_k = from_k + 4.6 * step as f64;
            let true_w = INTERCEPT_W + SLOPE_W_PER_K * true_k;
            let seen_w = true_w + of_day_w + SCATTER_W * normal(generator);
            points.difference_k.push(true_k + shift_k);
            points.power_w.push(seen_w * scale);
            points.day.push(day);
            points.follows.push(step > 0);
        }
    }
    let line = fit_line(&points.difference_k, &points.power_w).unwrap();
    let uncertainty = LineUncertainty {
        line,
        days: DayEffect::weigh(&line, &points),
        common: errors,
        reading: ReadingNoise::default(),
    };
    let budget = uncertainty.at(50.0);
    let truth_w = INTERCEPT_W + SLOPE_W_PER_K * 50.0;
    (budget.power_w - truth_w).abs() <= budget.expanded_w()
}

#[test]
fn stated_interval_covers_the_truth_in_93_to_97_of_100_campaigns() {
    let mut failed = Vec::new();
    for (day_sd_w, instruments) in [
        (0.0, (0.0, 0.0)),
        (0.0, (0.025, 0.5)),
        (6.0, (0.0, 0.0)),
        (6.0, (0.025, 0.5)),
        (15.0, (0.025, 0.5)),
    ] {
        for days in [4, 6] {
            let scenario = Scenario {
                days,
                day_sd_w,
                irradiance: instruments.0,
                thermometer_k: instruments.1,
            };
            let mut generator = Generator::seed_from_u64(2026);
            let covered = (0..CAMPAIGNS)
                .filter(|_| covers(&scenario, &mut generator))
                .count();
            let percent = 100.0 * covered as f64 / CAMPAIGNS as f64;
            println!(
                "{days} days, {day_sd_w} W a day, irradiance {}: {percent} %",
                instruments.0
            );
            if !(93.0..=97.0).contains(&percent) {
                failed.push(percent);
            }
        }
    }
    assert!(failed.is_empty(), "outside 93 to 97 %: {failed:?}");
}
