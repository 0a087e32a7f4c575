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

/// Sun, load, times and aiming, as far as they apply to the kind of run.
pub fn facts(plan: &Plan, words: &Words) -> Vec<Row> {
    let row = |label: Message, text: Phrase| Row::new(&words.say(label), words.say(text));
    let aim = || row(message!("plan-aim"), aiming(plan).into());
    match plan.kind {
        RunKind::Water => {
            let mut rows = sun_rows(plan, words);
            rows.extend(load_rows(plan, words));
            rows.push(aim());
            rows
        }
        RunKind::Dry => vec![
            row(message!("plan-sun"), course(plan).into()),
            row(message!("plan-high-sun"), high_sun(plan).into()),
            row(message!("plan-clear-sky"), most_sun(plan).into()),
            row(message!("plan-begin"), message!("plan-dry-begin").into()),
            row(message!("plan-read"), dry_reading(plan).into()),
            aim(),
        ],
        RunKind::Cooling => vec![
            row(message!("plan-water"), cooling_load(plan).into()),
            row(message!("plan-begin"), cooling_begin(plan).into()),
            row(message!("plan-read"), cooling_reading().into()),
            row(message!("plan-end"), cooling_end(plan).into()),
        ],
    }
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
