//! Readings too far apart for the practice's intervals: what the heat balance makes of them.

use crate::invented::Scenario;

const CAMPAIGNS: u64 = 60;
/// Of 60 that hold with 95 %, fewer than 52 do so in one of 400 settings.
const LEAST: usize = 52;

/// How many of the campaigns of a scenario hold the power at 700 W/m² and 50 K, and the mean of
/// the half-widths, W.
fn held(what: &str, scenario: &Scenario) -> usize {
    let (mut held, mut half_width_w, mut off_w) = (0, 0.0, 0.0);
    for seed in 0..CAMPAIGNS {
        let assessment = scenario.simulate(seed).assessment;
        assert!(
            assessment.s580.rated.is_none(),
            "{what}: no interval of the practice"
        );
        let balance = assessment.heat_balance.expect("gain and loss are fitted");
        let apart_min = balance.far_apart.as_ref().map(|one| one.step_min);
        assert_eq!(apart_min, Some(scenario.every_min as f64), "{what}");
        let (power, truth_w) = (&balance.power_700_50_w, scenario.power_700_50_w());
        let holds = (power.interval.lower..=power.interval.upper).contains(&truth_w);
        held += usize::from(holds);
        half_width_w += power.half_width() / CAMPAIGNS as f64;
        off_w += (power.value - truth_w) / CAMPAIGNS as f64;
    }
    println!("{what}, of {CAMPAIGNS}: {held} (± {half_width_w:.1} W, off {off_w:+.1} W)");
    held
}

#[test]
fn balance_of_readings_far_apart_holds_the_truth_in_52_of_60_campaigns() {
    let every = |every_min: usize, clouds_per_h: f64| Scenario {
        every_min,
        clouds_per_h,
        ..Scenario::default()
    };
    let by_hand = |every_min: usize| Scenario {
        step_k: 1.0,
        tolerance_k: 2.0,
        class: "kitchen-thermometer",
        ..every(every_min, 0.0)
    };
    let settings = [
        ("every 15 minutes, no clouds", every(15, 0.0)),
        ("every 20 minutes, no clouds", every(20, 0.0)),
        ("every 30 minutes, no clouds", every(30, 0.0)),
        ("every 15 minutes, a cloud in three hours", every(15, 0.3)),
        ("every 20 minutes, a cloud in three hours", every(20, 0.3)),
        ("every 15 minutes, a kitchen thermometer", by_hand(15)),
        ("every 20 minutes, a kitchen thermometer", by_hand(20)),
    ];
    let failed: Vec<&str> = settings
        .iter()
        .filter(|(what, scenario)| held(what, scenario) < LEAST)
        .map(|(what, _)| *what)
        .collect();
    assert!(
        failed.is_empty(),
        "under {LEAST} of {CAMPAIGNS}: {failed:?}"
    );
}
