//! How often the stated 95 % interval covers the truth, by simulation: invented campaigns
//! with a known line, scatter, days that differ, and instruments that read wrong.
//!
//! `cargo test --release --test simulation -- --nocapture` prints every share.

use simmerline::campaign::classes::Spread;
use simmerline::campaign::model::{Instrument, Instruments, Sensitivity};
use simmerline::campaign::standard_uncertainty::Uncertainty;
use simmerline::procedure::s580::uncertainty::LineUncertainty;
use simmerline::procedure::sources::{Basis, Source, common_errors};
use simmerline::procedure::uncertainty::Point;
use simmerline::procedure::uncertainty::points::ReadingSpread;
use simmerline::stats::line::fit_line;
use simmerline::stats::monte_carlo::{Generator, normal};

use rand_xoshiro::rand_core::SeedableRng;

const CAMPAIGNS: usize = 5_000;
const INTERCEPT_W: f64 = 232.0;
const SLOPE_W_PER_K: f64 = -2.0;
const SCATTER_W: f64 = 6.0;
const A_DAY: usize = 11;
const AMBIENT_C: f64 = 28.0;

/// A campaign's worth of truth.
struct Scenario {
    days: usize,
    day_sd_w: f64,
    /// Standard deviation of the days' slopes, as a fraction.
    slope_sd: f64,
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
        vessel_temperature: Instrument::default(),
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
        .filter(|error| !error.source.is_scale())
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
    let mut points = Vec::new();
    for day in 0..scenario.days {
        let of_day_w = scenario.day_sd_w * normal(generator);
        let slope_off = scenario.slope_sd * normal(generator);
        let from_k = 10.0 + 4.0 * normal(generator);
        for step in 0..A_DAY {
            let true_k = from_k + 4.6 * step as f64;
            let slope_w_per_k = SLOPE_W_PER_K * (1.0 + slope_off);
            let true_w = INTERCEPT_W + slope_w_per_k * true_k;
            let seen_w = true_w + of_day_w + SCATTER_W * normal(generator);
            points.push(Point {
                x1: 1.0,
                water_c: AMBIENT_C + true_k + shift_k,
                ambient_c: AMBIENT_C,
                of_water: seen_w * scale,
                of_vessels: 0.0,
                per_kelvin: 0.0,
                per_second: 0.0,
                day,
                follows: step > 0,
            });
        }
    }
    let (difference_k, power_w): (Vec<f64>, Vec<f64>) = points
        .iter()
        .map(|point| (point.difference_k(), point.of_water))
        .unzip();
    let line = fit_line(&difference_k, &power_w).unwrap();
    let readings = ReadingSpread::default();
    let uncertainty = LineUncertainty::of(&line, &points, readings, errors).unwrap();
    let budget = uncertainty.at(50.0);
    let truth_w = INTERCEPT_W + SLOPE_W_PER_K * 50.0;
    let interval = budget.interval();
    (interval.lower..=interval.upper).contains(&truth_w)
}

/// Scenarios: standard deviations of days (W) and of their slopes (a fraction), and whether the
/// instruments are in error.
const SCENARIOS: &[(f64, f64, bool)] = &[
    (0.0, 0.0, false),
    (0.0, 0.0, true),
    (6.0, 0.0, false),
    (15.0, 0.0, true),
    (0.0, 0.05, false),
    (0.0, 0.15, false),
    (6.0, 0.15, true),
];

/// Percent of the campaigns whose interval covers the truth.
fn percent(days: usize, (day_sd_w, slope_sd, has_instruments): (f64, f64, bool)) -> f64 {
    let (irradiance, thermometer_k) = if has_instruments {
        (0.025, 0.5)
    } else {
        (0.0, 0.0)
    };
    let scenario = Scenario {
        days,
        day_sd_w,
        slope_sd,
        irradiance,
        thermometer_k,
    };
    let mut generator = Generator::seed_from_u64(2026);
    let covered = (0..CAMPAIGNS)
        .filter(|_| covers(&scenario, &mut generator))
        .count();
    let percent = 100.0 * covered as f64 / CAMPAIGNS as f64;
    println!(
        "{days} days, {day_sd_w} W and slopes {slope_sd} a day, instruments {has_instruments}: \
         {percent:.1} %"
    );
    percent
}

#[test]
fn budgets_interval_covers_the_truth_in_94_to_99_of_100_campaigns() {
    let mut failed = Vec::new();
    for scenario in SCENARIOS {
        for days in [2, 3, 4, 6] {
            let covered = percent(days, *scenario);
            if !(94.0..=99.5).contains(&covered) {
                failed.push((days, scenario, covered));
            }
        }
    }
    assert!(failed.is_empty(), "outside 94 to 99.5 %: {failed:?}");
}
