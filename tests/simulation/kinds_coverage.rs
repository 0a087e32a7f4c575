//! How often the intervals of the procedures beside the rating hold the truth: the whole tool, from
//! simulated logs to the figures that it states.
//!
//! `cargo test --release --test simulation kinds -- --nocapture` prints every count.

use std::sync::atomic::{AtomicU64, Ordering};

use simmerline::procedure::uncertainty::{Derived, Figure};

use crate::kinds::{
    F1, LOSS_FACTOR, OPTICAL_FACTOR, POT_DIFFERENCE, simulate_box, simulate_dish, simulate_pot,
    true_f2, true_time_constant_s,
};

/// Campaigns of each setting, and of one day.
const CAMPAIGNS: u64 = 100;
const OF_ONE_DAY: u64 = 40;
/// Fewest whose interval holds the truth. Of 100 that hold with 95 %, fewer than 87 do so once in
/// 2000 settings (binomial); what holds oftener is only too wide. Seen with 150 campaigns: 142 to
/// 150 for each figure, of two, three and four days.
const LEAST: usize = 87;

/// One figure over many campaigns.
#[derive(Debug, Default, Clone, Copy)]
struct Covered {
    there: usize,
    holds: usize,
    /// Sums of what it is off by, and of the half-width, each for each of the truth.
    off: f64,
    half_width: f64,
}

impl Covered {
    fn of(figure: Option<Figure>, truth: f64) -> Covered {
        figure.map_or_else(Covered::default, |figure| {
            let interval = figure.interval;
            Covered {
                there: 1,
                holds: usize::from((interval.lower..=interval.upper).contains(&truth)),
                off: figure.value / truth - 1.0,
                half_width: figure.half_width() / truth,
            }
        })
    }

    fn plus(self, other: Covered) -> Covered {
        Covered {
            there: self.there + other.there,
            holds: self.holds + other.holds,
            off: self.off + other.off,
            half_width: self.half_width + other.half_width,
        }
    }

    /// Mean of what it is off by, as a fraction.
    fn mean_off(&self) -> f64 {
        self.off / self.there as f64
    }
}

fn figure(derived: &Option<Derived>) -> Option<Figure> {
    derived.as_ref().map(|derived| derived.figure)
}

/// Every campaign of a setting, two at a time; one figure after the other.
fn all<const COUNT: usize>(
    days: usize,
    one: impl Fn(u64) -> [Covered; COUNT] + Sync,
) -> [Covered; COUNT] {
    let count = if days == 1 { OF_ONE_DAY } else { CAMPAIGNS };
    let next = AtomicU64::new(0);
    let work = || {
        let mut sum = [Covered::default(); COUNT];
        loop {
            let seed = next.fetch_add(1, Ordering::Relaxed);
            if seed >= count {
                return sum;
            }
            for (sum, one) in sum.iter_mut().zip(one(seed)) {
                *sum = sum.plus(one);
            }
        }
    };
    std::thread::scope(|scope| {
        let threads = [scope.spawn(work), scope.spawn(work)];
        let [first, second] = threads.map(|thread| thread.join().unwrap());
        std::array::from_fn(|index| first[index].plus(second[index]))
    })
}

/// Prints what was found of each figure.
fn print(setting: &str, names: &[&str], found: &[Covered]) {
    for (name, found) in names.iter().zip(found) {
        println!(
            "{setting}, {name}: {} of {} hold it, off {:+.2} %, ± {:.1} %",
            found.holds,
            found.there,
            100.0 * found.mean_off(),
            100.0 * found.half_width / found.there as f64
        );
    }
}

/// Every figure is there in every campaign, holds the truth as often as it says, and is within
/// `most` of it on the mean of all campaigns.
#[track_caller]
fn hold(setting: &str, names: &[&str], found: &[Covered], most: f64) {
    print(setting, names, found);
    for (name, found) in names.iter().zip(found) {
        assert_eq!(found.there as u64, CAMPAIGNS, "{setting}, {name}");
        assert!(found.holds >= LEAST, "{setting}, {name}: {found:?}");
        assert!(
            found.mean_off().abs() < most,
            "{setting}, {name}: {found:?}"
        );
    }
}

const OF_BOX: [&str; 3] = ["F1", "F2", "energy"];

fn of_box(days: usize) -> [Covered; 3] {
    all(days, |seed| {
        let simulated = simulate_box(seed, days);
        let figures = simulated.assessment.box_figures.unwrap();
        let energy = simulated
            .assessment
            .efficiency
            .map(|found| found.energy.figure);
        [
            Covered::of(figure(&figures.f1), F1),
            Covered::of(figure(&figures.f2), true_f2(seed)),
            Covered::of(energy, simulated.energy),
        ]
    })
}

const OF_DISH: [&str; 4] = ["τ0", "F'UL", "F'η0", "energy"];

fn of_dish(days: usize) -> [Covered; 4] {
    all(days, |seed| {
        let simulated = simulate_dish(seed, days);
        let figures = simulated.assessment.dish_figures.unwrap();
        let energy = simulated
            .assessment
            .efficiency
            .map(|found| found.energy.figure);
        [
            Covered::of(figure(&figures.time_constant_s), true_time_constant_s(seed)),
            Covered::of(figure(&figures.loss_factor), LOSS_FACTOR),
            Covered::of(figure(&figures.optical_factor), OPTICAL_FACTOR),
            Covered::of(energy, simulated.energy),
        ]
    })
}

const OF_POT: [&str; 1] = ["difference"];

fn of_pot(days: usize, has_dial: bool) -> [Covered; 1] {
    all(days, |seed| {
        let found = simulate_pot(seed, days, has_dial).dry_runs.difference;
        [Covered::of(figure(&found), POT_DIFFERENCE)]
    })
}

#[test]
fn kinds_of_a_box_hold_the_truth_in_87_of_100_campaigns_of_two_and_of_four_days() {
    // On the mean within 1 %: irradiance alone is 2 % off, which 100 campaigns make 0.2 %.
    for days in [2, 4] {
        hold(&format!("box, {days} days"), &OF_BOX, &of_box(days), 0.01);
    }
}

#[test]
fn kinds_of_a_dish_hold_the_truth_in_87_of_100_campaigns_of_two_and_of_four_days() {
    for days in [2, 4] {
        hold(
            &format!("dish, {days} days"),
            &OF_DISH,
            &of_dish(days),
            0.01,
        );
    }
}

#[test]
fn kinds_of_a_dry_pot_hold_the_truth_in_87_of_100_campaigns_of_two_and_of_four_days() {
    for days in [2, 4] {
        let setting = format!("pot, thermocouple, {days} days");
        hold(&setting, &OF_POT, &of_pot(days, false), 0.01);
        // A dial is off by 10 K of 145 K, rectangular: 4 % for one campaign.
        let setting = format!("pot, dial, {days} days");
        hold(&setting, &OF_POT, &of_pot(days, true), 0.015);
    }
}

#[test]
fn kinds_of_one_day_claim_no_95_percent_and_say_so() {
    // What another day would do is not in their intervals, so how often they hold is only printed.
    print("box, one day", &OF_BOX, &of_box(1));
    print("dish, one day", &OF_DISH, &of_dish(1));
    print("pot, dial, one day", &OF_POT, &of_pot(1, true));
    let flat = simulate_box(0, 1).assessment;
    let figures = flat.box_figures.unwrap();
    assert!(figures.f1.unwrap().is_of_one_day && figures.f2.unwrap().is_of_one_day);
    let dish = simulate_dish(0, 1).assessment.dish_figures.unwrap();
    assert!(dish.time_constant_s.unwrap().is_of_one_day);
    assert!(
        simulate_pot(0, 1, true)
            .dry_runs
            .difference
            .unwrap()
            .is_of_one_day
    );
}
