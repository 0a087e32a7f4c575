//! What a report says, held against invented campaigns whose truth is known: the whole tool,
//! from the logs to the figures of page one.
//!
//! `cargo test --release --test simulation -- --nocapture` prints every share.

use std::sync::atomic::{AtomicU64, Ordering};

use crate::invented::Scenario;
use simmerline::stats::line::Bounds;

/// Campaigns of each scenario.
const CAMPAIGNS: u64 = 100;

/// How many of a scenario's campaigns say what is true.
#[derive(Debug, Default, Clone, Copy)]
struct Covered {
    /// Of the power at 700 W/m² and 50 K by the heat balance.
    balance: usize,
    /// Of Ps(50).
    rating: usize,
    /// Mean half-widths, W.
    balance_w: f64,
    rating_w: f64,
    /// Mean of what each is off by, W.
    balance_off_w: f64,
    rating_off_w: f64,
}

fn holds(interval: Bounds, truth: f64) -> usize {
    usize::from(interval.lower <= truth && truth <= interval.upper)
}

fn one(scenario: &Scenario, seed: u64) -> Covered {
    let assessment = scenario.assess(seed);
    let balance = assessment.heat_balance.as_ref().unwrap();
    let rated = assessment.s580.rated.as_ref().unwrap();
    let of_test_w_m2 = assessment.s580.mean_irradiance_w_m2().unwrap();
    let power = &balance.power_700_50_w;
    let (true_w, true_ps50_w) = (scenario.power_700_50_w(), scenario.ps50_w(of_test_w_m2));
    Covered {
        balance: holds(power.interval, true_w),
        rating: holds(rated.uncertainty.interval_w, true_ps50_w),
        balance_w: power.half_width(),
        rating_w: rated.uncertainty.half_width_w(),
        balance_off_w: power.value - true_w,
        rating_off_w: rated.rating.ps50_w - true_ps50_w,
    }
}

/// Every campaign of a scenario, two at a time.
fn all(scenario: &Scenario) -> Covered {
    let next = AtomicU64::new(0);
    let work = || {
        let mut sum = Covered::default();
        loop {
            let seed = next.fetch_add(1, Ordering::Relaxed);
            if seed >= CAMPAIGNS {
                return sum;
            }
            sum = add(sum, one(scenario, seed));
        }
    };
    let sum = std::thread::scope(|scope| {
        let threads = [scope.spawn(work), scope.spawn(work)];
        let sums = threads.map(|thread| thread.join().unwrap());
        add(sums[0], sums[1])
    });
    let count = CAMPAIGNS as f64;
    Covered {
        balance_w: sum.balance_w / count,
        rating_w: sum.rating_w / count,
        balance_off_w: sum.balance_off_w / count,
        rating_off_w: sum.rating_off_w / count,
        ..sum
    }
}

fn add(one: Covered, two: Covered) -> Covered {
    Covered {
        balance: one.balance + two.balance,
        rating: one.rating + two.rating,
        balance_w: one.balance_w + two.balance_w,
        rating_w: one.rating_w + two.rating_w,
        balance_off_w: one.balance_off_w + two.balance_off_w,
        rating_off_w: one.rating_off_w + two.rating_off_w,
    }
}

/// Scenarios, each with what it is about.
fn scenarios() -> Vec<(&'static str, Scenario)> {
    let usual = Scenario::default();
    let at = |irradiance_w_m2: f64| Scenario {
        irradiance_w_m2,
        ..usual
    };
    let step = |step_k: f64| Scenario { step_k, ..usual };
    let thermometer = |class: &'static str, tolerance_k: f64| Scenario {
        class,
        tolerance_k,
        ..usual
    };
    vec![
        ("700 W/m²", at(700.0)),
        ("800 W/m²", at(800.0)),
        ("900 W/m²", at(900.0)),
        ("1000 W/m²", at(1000.0)),
        (
            "losses 15 % apart by day",
            Scenario {
                loss_by_day: 0.15,
                ..usual
            },
        ),
        (
            "gains 10 % apart by day",
            Scenario {
                gain_by_day: 0.10,
                ..usual
            },
        ),
        (
            "three days, losses 15 % apart",
            Scenario {
                days: 3,
                loss_by_day: 0.15,
                ..usual
            },
        ),
        (
            "two days, losses 15 % apart",
            Scenario {
                days: 2,
                loss_by_day: 0.15,
                ..usual
            },
        ),
        ("six days", Scenario { days: 6, ..usual }),
        (
            "aim lost by a quarter",
            Scenario {
                aim_lost: 0.25,
                ..usual
            },
        ),
        (
            "four clouds an hour",
            Scenario {
                clouds_per_h: 4.0,
                ..usual
            },
        ),
        ("read to 0.5 K", step(0.5)),
        ("read to 1 K", step(1.0)),
        ("read to 2.8 K", step(2.8)),
        (
            "thermocouple within 2.5 K",
            thermometer("thermocouple-k-2", 2.5),
        ),
        (
            "thermocouple within 1.5 K",
            thermometer("thermocouple-k-1", 1.5),
        ),
        (
            "kitchen thermometer",
            Scenario {
                step_k: 1.0,
                ..thermometer("kitchen-thermometer", 2.0)
            },
        ),
        (
            "heavy vessel",
            Scenario {
                vessel_j_per_k: 6000.0,
                ..usual
            },
        ),
        (
            "a good sensor",
            Scenario {
                irradiance_uncertainty: 0.005,
                ..usual
            },
        ),
    ]
}

#[test]
fn stated_intervals_hold_the_truth_in_92_of_100_campaigns_or_more() {
    let mut failed = Vec::new();
    for (what, scenario) in scenarios() {
        let found = all(&scenario);
        println!(
            "{what}: heat balance {} (± {:.1} W, off {:+.1} W), rating {} (± {:.1} W, off {:+.1} W)",
            found.balance,
            found.balance_w,
            found.balance_off_w,
            found.rating,
            found.rating_w,
            found.rating_off_w
        );
        if found.balance < 92 || found.rating < 92 {
            failed.push(what);
        }
    }
    assert!(failed.is_empty(), "under 92 of 100: {failed:?}");
}
