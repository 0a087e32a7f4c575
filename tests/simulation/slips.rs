//! How often a slip is said of honest campaigns, and how often a run of another cooker is found.
//!
//! `cargo test --release --test simulation slips:: -- --nocapture` prints every share.

use crate::invented::Scenario;
use simmerline::procedure::notice::Notice;
use simmerline::procedure::slips::notice::SlipNotice;

/// Campaigns of each scenario.
const CAMPAIGNS: u64 = 40;

/// How many of a scenario's campaigns have a slip said of them, and of how many it is that the
/// last run is of another cooker.
fn counts(scenario: &Scenario) -> (usize, usize) {
    let last = format!("{:02}.csv", scenario.first_day + scenario.days - 1);
    let (mut said, mut found) = (0, 0);
    for seed in 0..CAMPAIGNS {
        let assessment = scenario.simulate(seed).assessment;
        let slips = assessment.notices.iter().filter_map(|notice| match notice {
            Notice::Slip(slip) => Some(slip),
            _ => None,
        });
        let slips: Vec<&SlipNotice> = slips.collect();
        let is_last =
            |slip: &&SlipNotice| matches!(slip, SlipNotice::OddRun(odd) if odd.log == last);
        said += usize::from(!slips.is_empty());
        found += usize::from(slips.iter().any(is_last));
    }
    (said, found)
}

#[test]
fn of_honest_campaigns_hardly_ever_is_a_slip_said() {
    let usual = Scenario::default();
    let of_days = |days: usize| Scenario { days, ..usual };
    let scenarios = [
        ("two days", of_days(2), 0),
        ("three days", of_days(3), 0),
        ("four days", usual, 0),
        ("six days", of_days(6), 0),
        (
            "four clouds an hour",
            Scenario {
                clouds_per_h: 4.0,
                ..usual
            },
            0,
        ),
        (
            "read to 2.8 K",
            Scenario {
                step_k: 2.8,
                ..usual
            },
            0,
        ),
        (
            "gains 10 % apart by day",
            Scenario {
                gain_by_day: 0.10,
                ..usual
            },
            1,
        ),
        (
            "losses 15 % apart by day",
            Scenario {
                loss_by_day: 0.15,
                ..usual
            },
            1,
        ),
        (
            "three days, losses 15 % apart",
            Scenario {
                loss_by_day: 0.15,
                ..of_days(3)
            },
            1,
        ),
    ];
    for (what, scenario, most) in scenarios {
        let (said, _) = counts(&scenario);
        println!("{what}: of {said} of {CAMPAIGNS}");
        assert!(said <= most, "{what}: {said}");
    }
}

/// A cooker of half or twice the gain and loss is found, one that is a quarter weaker or stronger
/// is left to the days.
#[test]
fn a_run_of_another_cooker_is_found_where_it_is_far_off() {
    let usual = Scenario::default();
    let of = |days: usize, last_cooker: f64| Scenario {
        days,
        last_cooker,
        ..usual
    };
    let scenarios = [
        ("three days, the last of half", of(3, 0.5), 0.9..=1.0),
        ("four days, the last of half", of(4, 0.5), 0.95..=1.0),
        ("four days, the last of twice", of(4, 2.0), 0.95..=1.0),
        ("six days, the last of half", of(6, 0.5), 0.95..=1.0),
        ("four days, the last of 0.6", of(4, 0.6), 0.3..=1.0),
        ("four days, the last of 0.75", of(4, 0.75), 0.0..=0.05),
    ];
    for (what, scenario, share) in scenarios {
        let (_, found) = counts(&scenario);
        println!("{what}: {found} of {CAMPAIGNS}");
        assert!(
            share.contains(&(found as f64 / CAMPAIGNS as f64)),
            "{what}: {found}"
        );
    }
}
