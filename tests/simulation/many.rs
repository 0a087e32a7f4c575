//! Comparisons of several invented campaigns: what is said of all pairs together, and of the days
//! that would show a difference.
//!
//! `cargo test --release --test simulation many -- --nocapture` prints every count.

use std::sync::atomic::{AtomicU64, Ordering};

use simmerline::comparison::{Comparison, compare};

use crate::invented::Scenario;

/// Sets of each kind, and cookers in each.
const SETS: u64 = 60;
const COOKERS: u64 = 6;
/// Pairs of which more days are asked for.
const PAIRS: u64 = 80;
/// Seeds of one set follow those of another.
const APART: u64 = 10_000;

/// Cookers of which each has so much more gain than the one before, the last seven times as much
/// more, each tested on days of its own.
fn set(more: f64, seed: u64) -> Comparison {
    let campaign = |cooker: u64| {
        let steps = cooker + if cooker + 1 == COOKERS { 6 } else { 0 };
        let scenario = Scenario {
            gain_m2: (1.0 + more * steps as f64) * Scenario::default().gain_m2,
            first_day: 1 + 4 * cooker as usize,
            ..Scenario::default()
        };
        scenario
            .simulate(APART + COOKERS * seed + cooker)
            .assessment
    };
    compare((0..COOKERS).map(campaign).collect(), None, false).unwrap()
}

/// Counts, over seeds from zero, of what is so; two at a time.
fn count<const KINDS: usize>(
    seeds: u64,
    of: impl Fn(u64) -> [usize; KINDS] + Sync,
) -> [usize; KINDS] {
    let next = AtomicU64::new(0);
    let work = || {
        let mut sums = [0; KINDS];
        loop {
            let seed = next.fetch_add(1, Ordering::Relaxed);
            if seed >= seeds {
                return sums;
            }
            let found = of(seed);
            (0..KINDS).for_each(|kind| sums[kind] += found[kind]);
        }
    };
    std::thread::scope(|scope| {
        let threads = [scope.spawn(work), scope.spawn(work)];
        let [one, two] = threads.map(|thread| thread.join().unwrap());
        std::array::from_fn(|kind| one[kind] + two[kind])
    })
}

#[test]
fn of_six_cookers_that_are_alike_no_pair_is_called_different_oftener_than_by_chance() {
    let [sets] = count(SETS, |seed| {
        let pairs = set(0.0, seed).pairs;
        assert_eq!(pairs.len(), 15);
        [usize::from(pairs.iter().any(|pair| pair.is_shown()))]
    });
    println!("a pair called different: {sets} of {SETS} sets of six that are alike");
    // 95 % for all pairs together: 3 sets of 60 are expected at most, and above 7 lies chance
    // of 1 in 100 (binomial).
    assert!(sets <= 7, "{sets}");
}

#[test]
fn of_cookers_that_differ_no_difference_is_turned_round() {
    // A difference that is called real is that of the cookers, and what "gives most" does.
    let [shown, wrong, titles, wrong_titles] = count(SETS, |seed| {
        let found = set(0.05, seed);
        let shown = found.pairs.iter().filter(|pair| pair.is_shown());
        let is_wrong = |value: f64| value <= 0.0;
        let values: Vec<f64> = shown
            .filter_map(|pair| Some(pair.difference.decisive()?.value))
            .collect();
        let top = found.ranking.ranked[0];
        let is_told = |pair: &&simmerline::comparison::Pair| {
            pair.is_shown() && [pair.difference.first, pair.difference.second].contains(&top)
        };
        let gives_most = found.pairs.iter().filter(is_told).count() == COOKERS as usize - 1;
        [
            values.len(),
            values.iter().filter(|value| is_wrong(**value)).count(),
            usize::from(gives_most),
            usize::from(gives_most && top != COOKERS as usize - 1),
        ]
    });
    println!("{shown} pairs shown, {wrong} the wrong way; {titles} titles, {wrong_titles} wrong");
    assert!(shown > 200, "{shown}");
    assert!(titles > 20, "{titles}");
    assert!(wrong <= 3, "{wrong} of {shown}");
    assert!(wrong_titles <= 3, "{wrong_titles} of {titles}");
}

#[test]
fn so_many_more_days_as_are_asked_for_mostly_show_the_difference() {
    let scenario = Scenario {
        irradiance_uncertainty: 0.005,
        ..Scenario::default()
    };
    let pair = |first: &Scenario, second: &Scenario, seed: u64| {
        let campaigns = vec![
            first.simulate(seed).assessment,
            second.simulate(APART + seed).assessment,
        ];
        compare(campaigns, None, false).unwrap().pairs.remove(0)
    };
    let [asked, shown] = count(PAIRS, |seed| {
        let second = Scenario {
            first_day: 16,
            ..scenario
        };
        let Some(needed) = pair(&scenario, &second, seed).needed else {
            return [0, 0];
        };
        // Days of one month, as they are made here.
        let Some(more) = needed.days_each.filter(|more| (1..=10).contains(more)) else {
            return [0, 0];
        };
        let days = scenario.days + more;
        let first = Scenario { days, ..scenario };
        let second = Scenario {
            days,
            gain_m2: scenario.gain_m2 * (1.0 + needed.sought_w / gained_w(&scenario)),
            ..second
        };
        let found = pair(&first, &second, 2 * APART + seed);
        [1, usize::from(found.is_shown())]
    });
    println!("{shown} of {asked} differences shown after as many days as were asked for");
    assert!(asked > 20, "{asked}");
    assert!(10 * shown > 6 * asked, "{shown} of {asked}");
}

/// What the gain alone gives at 700 W/m², W.
fn gained_w(scenario: &Scenario) -> f64 {
    let without_loss = Scenario {
        loss_w_per_k: 0.0,
        ..*scenario
    };
    without_loss.power_700_50_w()
}
