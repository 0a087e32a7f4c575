//! What to know before a run of each kind: a row for each thing.

use super::day::{
    EXAMPLE_C, aiming, clocks, course, load_rows, spoken_difference, spoken_temperature, sun_rows,
};
use crate::campaign::kinds::RunKind;
use crate::language::{Message, Phrase, Words, clock, fixed, kilograms, short};
use crate::message;
use crate::planning::Plan;
use crate::planning::pace::{COOLING_END_K, COOLING_STEP_MIN, solar_hours};
use crate::procedure::dry_vessel::plateau::LEAST_W_M2;
use crate::report::rows::Row;

/// Sun, load, times and aiming, as far as they apply to the kind of run: in the order of the
/// day.
pub fn facts(plan: &Plan, words: &Words) -> Vec<Row> {
    match plan.kind {
        RunKind::Water => {
            let rows = sun_rows(plan, words).into_iter();
            rows.chain(load_rows(plan, words))
                .chain([aim(plan, words)])
                .collect()
        }
        RunKind::Dry => {
            let [sun, high_sun, clear_sky] = dry_sun_rows(plan, words);
            let [begin, read] = dry_rows(plan, words);
            vec![sun, high_sun, clear_sky, begin, read, aim(plan, words)]
        }
        RunKind::Cooling => cooling_rows(plan, words),
    }
}

/// The same, with what has to be known before one walks out first: when, with how much, how to
/// aim.
pub fn facts_by_use(plan: &Plan, words: &Words) -> Vec<Row> {
    match plan.kind {
        RunKind::Water => {
            let [sun, window, clear_sky] = sun_rows(plan, words);
            let [water, start, stop] = load_rows(plan, words);
            let aim = aim(plan, words);
            vec![window, water, aim, start, stop, clear_sky, sun]
        }
        RunKind::Dry => {
            let [sun, high_sun, clear_sky] = dry_sun_rows(plan, words);
            let [begin, read] = dry_rows(plan, words);
            vec![high_sun, begin, aim(plan, words), read, clear_sky, sun]
        }
        RunKind::Cooling => cooling_rows(plan, words),
    }
}

fn row(words: &Words, label: Message, text: impl Into<Phrase>) -> Row {
    Row::said(words, label, text)
}

fn aim(plan: &Plan, words: &Words) -> Row {
    row(words, message!("plan-aim"), aiming(plan))
}

fn dry_sun_rows(plan: &Plan, words: &Words) -> [Row; 3] {
    [
        row(words, message!("plan-sun"), course(plan)),
        row(words, message!("plan-high-sun"), high_sun(plan)),
        row(words, message!("plan-clear-sky"), most_sun(plan)),
    ]
}

fn dry_rows(plan: &Plan, words: &Words) -> [Row; 2] {
    [
        row(words, message!("plan-begin"), message!("plan-dry-begin")),
        row(words, message!("plan-read"), dry_reading(plan)),
    ]
}

fn cooling_rows(plan: &Plan, words: &Words) -> Vec<Row> {
    vec![
        row(words, message!("plan-water"), cooling_load(plan)),
        row(words, message!("plan-begin"), cooling_begin(plan)),
        row(words, message!("plan-read"), cooling_reading()),
        row(words, message!("plan-end"), cooling_end(plan)),
    ]
}

/// The hours in which a dry vessel is read.
fn high_sun(plan: &Plan) -> Message {
    let (from_h, to_h) = solar_hours(plan.kind, &plan.limits).unwrap_or_default();
    message!(
        "plan-high-sun-text",
        clocks = clocks(plan, &plan.day.window),
        from = clock(from_h),
        to = clock(to_h)
    )
}

/// How strong a clear sky is that day.
fn most_sun(plan: &Plan) -> Message {
    let most = if !plan.has_sheet() {
        message!("plan-high-sun-none")
    } else if plan.day.most_w_m2 < LEAST_W_M2 {
        message!("plan-high-sun-weak", least = short(LEAST_W_M2))
    } else {
        message!("plan-high-sun-most")
    };
    most.with("highest", fixed(plan.day.most_w_m2, 0))
}

fn dry_reading(plan: &Plan) -> Message {
    match plan.campaign.instruments.has_own_irradiance() {
        true => message!("plan-dry-read-sun"),
        false => message!("plan-dry-read"),
    }
}

fn cooling_load(plan: &Plan) -> Message {
    match plan.campaign.water_kg {
        Some(water_kg) => message!("plan-cooling-load", load = kilograms(short(water_kg))),
        None => message!("plan-cooling-load-unstated"),
    }
}

fn cooling_begin(plan: &Plan) -> Message {
    message!(
        "plan-cooling-begin",
        boiling = spoken_temperature(plan, plan.boiling_point_c)
    )
}

fn cooling_reading() -> Message {
    message!(
        "plan-cooling-read",
        minutes = fixed(f64::from(COOLING_STEP_MIN), 0)
    )
}

fn cooling_end(plan: &Plan) -> Message {
    message!(
        "plan-cooling-end",
        difference = spoken_difference(plan, COOLING_END_K),
        end = spoken_temperature(plan, EXAMPLE_C + COOLING_END_K),
        air = spoken_temperature(plan, EXAMPLE_C)
    )
}
