//! What `watch` says first: how it stands, and what to do next.

use std::path::Path;

use super::check_verdict::next_step;
use super::lines::Mark;
use crate::campaign::kinds::RunKind;
use crate::campaign::model::IrradianceEstimate;
use crate::language::{Message, Phrase, clauses, clock, fixed};
use crate::message;
use crate::procedure::limit::{Allowed, with_unit};
use crate::procedure::s580::reason::Reason;
use crate::units::{MICROSECONDS_PER_SECOND, local_clock};
use crate::watch::State;
use crate::watch::day::{Aim, Window};
use crate::watch::growing::{Broken, Fault, Running};
use crate::watch::trouble::time_of;

/// The answer to how it stands.
#[derive(Debug, Clone, PartialEq)]
pub struct Answer {
    pub mark: Mark,
    pub sentence: Message,
    /// What to do.
    pub next: Phrase,
}

impl Answer {
    fn new(mark: Mark, sentence: Message, next: impl Into<Phrase>) -> Answer {
        Answer {
            mark,
            sentence,
            next: next.into(),
        }
    }
}

/// The answer: what keeps rows from coming before what spoils them, and that before what may.
pub fn answer(state: &State<'_>, folder: &Path) -> Answer {
    let is_closed = matches!(state.window(), Some(Window::ClosedAt(_)));
    let has_window = state.kind != RunKind::Cooling;
    let is_waiting = state.is_waiting || state.newest.is_none();
    if is_waiting && !(is_closed && has_window) {
        let next = message!("watch-next-start");
        return Answer::new(Mark::Reserved, message!("watch-waiting"), next);
    }
    if let Some(silent_s) = state.silent_s
        && !(is_closed && has_window)
    {
        let said = message!("watch-silent", time = time_of(silent_s));
        return Answer::new(Mark::Bad, said, message!("watch-next-logger"));
    }
    if is_closed && has_window {
        let next = match state.assessment.filter(|_| has_enough(state)) {
            Some(enough) => next_step(enough, folder),
            None => message!("watch-next-tomorrow").into(),
        };
        return Answer::new(Mark::Reserved, message!("watch-over"), next);
    }
    let aim_due = matches!(state.aim(), Some(Aim::Due(_)));
    if state.kind != RunKind::Water {
        let said = message!("watch-other-run", kind = state.kind.describe());
        let next = match aim_due && state.kind == RunKind::Dry {
            true => message!("watch-next-aim"),
            false => message!("watch-next-keep"),
        };
        return Answer::new(Mark::Good, said, next);
    }
    if state.growth.is_none() {
        return Answer::new(
            Mark::Reserved,
            message!("watch-no-run"),
            message!("watch-next-no-run"),
        );
    }
    let Some(running) = state.running() else {
        let next = match aim_due {
            true => message!("watch-next-aim"),
            false => message!("watch-next-keep"),
        };
        return Answer::new(Mark::Reserved, message!("watch-begins"), next);
    };
    of_interval(state, running, aim_due, folder)
}

fn of_interval(state: &State<'_>, running: &Running, aim_due: bool, folder: &Path) -> Answer {
    let passed_min = (running.so_far.duration_s / 60.0).floor();
    let minutes = |message: Message| {
        message
            .with("passed", fixed(passed_min, 0))
            .with("length", fixed(running.aim_s / 60.0, 0))
    };
    if let Some(first) = running.spoiled.first() {
        let said = message!("watch-spoiled", faults = faults(&running.spoiled));
        return Answer::new(Mark::Bad, said, after_spoiled(state, running, first.reason));
    }
    let next: Phrase = if aim_due {
        message!("watch-next-aim").into()
    } else if let Some(first) = running.at_risk.first() {
        first.reason.remedy(estimate_of(state)).into()
    } else if nears_boiling(running) {
        message!("watch-next-cool-water").into()
    } else if let Some(enough) = state.assessment.filter(|_| has_enough(state)) {
        match Mark::of(enough.s580.conformity.level) {
            Mark::Good => message!("watch-next-enough").into(),
            Mark::Reserved | Mark::Bad => next_step(enough, folder),
        }
    } else {
        message!("watch-next-keep").into()
    };
    match running.at_risk.is_empty() {
        true => Answer::new(Mark::Good, minutes(message!("watch-good")), next),
        false => {
            let said = message!("watch-at-risk", faults = faults(&running.at_risk));
            Answer::new(Mark::Reserved, said, next)
        }
    }
}

fn estimate_of(state: &State<'_>) -> Option<IrradianceEstimate> {
    state.campaign.instruments.irradiance_estimate
}

/// Whether neither an interval nor a day is missing.
fn has_enough(state: &State<'_>) -> bool {
    let conformity = state.assessment.map(|found| &found.s580.conformity);
    conformity.is_some_and(|conformity| conformity.missing.is_none())
}

/// What helps once an interval is spoiled, and when the next begins where it may be better.
fn after_spoiled(state: &State<'_>, running: &Running, reason: Reason) -> Phrase {
    let remedy = reason.remedy(estimate_of(state));
    let is_of_moment = matches!(
        reason,
        Reason::IrradianceLow | Reason::IrradianceHigh | Reason::IrradianceUnsteady
    );
    if !is_of_moment {
        return remedy.into();
    }
    let start_us = running.so_far.span.from_us;
    let begins_us = start_us + (running.aim_s * MICROSECONDS_PER_SECOND) as i64;
    message!(
        "watch-next-spoiled",
        remedy = remedy,
        clock = local_clock(begins_us, &state.campaign.site.time_zone)
    )
    .into()
}

/// Whether the next interval will end in water that is too hot.
fn nears_boiling(running: &Running) -> bool {
    let so_far = &running.so_far;
    // Rates over a moment say little.
    if so_far.duration_s < running.aim_s / 4.0 {
        return false;
    }
    let rise_k_s = (so_far.water_end_c - so_far.water_start_c) / so_far.duration_s;
    let left_s = 2.0 * running.aim_s - so_far.duration_s;
    so_far.water_end_c + rise_k_s * left_s > running.margins.water_c
}

fn faults(faults: &[Fault]) -> Phrase {
    clauses(faults.iter().map(fault))
}

/// A fault with its number and the limit, where it has some.
fn fault(fault: &Fault) -> Message {
    let Some(Broken {
        limit,
        found: Some(found),
    }) = fault.broken
    else {
        return fault.reason.describe();
    };
    let said = match limit.allowed {
        Allowed::AtLeast => message!("watch-at-least"),
        Allowed::AtMost | Allowed::Within(_) => message!("watch-at-most"),
    };
    let (found, least) = match limit.unit {
        "h" => (clock(found), clock(limit.value)),
        unit => (with_unit(told(found, limit.value), unit), limit.amount()),
    };
    said.with("what", limit.what())
        .with("found", found)
        .with("limit", least)
}

/// A number with as few decimals as tell it from its limit.
fn told(found: f64, limit: f64) -> Phrase {
    let fewest = if limit.abs() >= 100.0 { 0 } else { 1 };
    let differs = |decimals: &usize| {
        let shown = crate::units::fixed(found, *decimals);
        shown != crate::units::fixed(limit, *decimals)
    };
    fixed(found, (fewest..4).find(differs).unwrap_or(4))
}
