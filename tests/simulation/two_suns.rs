//! Comparisons of invented campaigns under different suns: what is called different, and what
//! is found.
//!
//! `cargo test --release --test simulation two_suns -- --nocapture` prints every count.

use std::sync::atomic::{AtomicU64, Ordering};

use simmerline::comparison::compare;

use crate::invented::Scenario;

/// Pairs of each kind.
const PAIRS: u64 = 200;
/// One cooker is called different in 5 of 100 pairs or less.
const MOST_BY_CHANCE: usize = 10;
/// Seeds of second campaigns follow those of first ones.
const SECOND: u64 = 1_000;

/// How many pairs are called different.
#[derive(Debug, Default, Clone, Copy)]
struct Called {
    /// By what the report says.
    real: usize,
    /// By the ratings alone, had they decided.
    by_ratings: usize,
}

impl Called {
    fn add(self, other: Called) -> Called {
        Called {
            real: self.real + other.real,
            by_ratings: self.by_ratings + other.by_ratings,
        }
    }
}

fn one(first: &Scenario, second: &Scenario, seed: u64) -> Called {
    let campaigns = vec![
        first.simulate(seed).assessment,
        second.simulate(SECOND + seed).assessment,
    ];
    let found = compare(campaigns, None, false).unwrap();
    let pair = &found.pairs[0];
    assert!(pair.difference.conditions_differ);
    Called {
        real: usize::from(pair.is_shown()),
        by_ratings: usize::from(pair.difference.ratings.p < 0.05),
    }
}

/// All pairs, two at a time.
fn all(first: &Scenario, second: &Scenario) -> Called {
    let next = AtomicU64::new(0);
    let work = || {
        let mut sum = Called::default();
        loop {
            let seed = next.fetch_add(1, Ordering::Relaxed);
            if seed >= PAIRS {
                return sum;
            }
            sum = sum.add(one(first, second, seed));
        }
    };
    std::thread::scope(|scope| {
        let threads = [scope.spawn(work), scope.spawn(work)];
        let sums = threads.map(|thread| thread.join().unwrap());
        sums[0].add(sums[1])
    })
}

#[test]
fn one_cooker_in_two_suns_is_called_different_no_oftener_than_by_chance() {
    let strong = Scenario {
        irradiance_w_m2: 930.0,
        ..Scenario::default()
    };
    let weak = Scenario {
        irradiance_w_m2: 680.0,
        first_day: 11,
        ..Scenario::default()
    };
    let same = all(&strong, &weak);
    let better = Scenario {
        gain_m2: 1.15 * weak.gain_m2,
        ..weak
    };
    let better = all(&strong, &better);
    println!("one cooker: {same:?}; 15 % more gain: {better:?}");
    assert!(same.real <= MOST_BY_CHANCE, "{same:?}");
    // By the ratings, which scale losses with the sun, it is another cooker.
    assert!(same.by_ratings > 150, "{same:?}");
    assert!(better.real > 160, "{better:?}");
}
