//! Runs that cannot both be true.

use std::path::Path;

use super::problem::run_problem;
use super::run::Run;
use crate::error::Problem;

/// Two runs that cannot both be true, if there are any; `file` is the campaign file.
pub fn find_conflict(file: &Path, runs: &[Run]) -> Option<Problem> {
    overlap(file, runs).or_else(|| copy(file, runs))
}

/// So many readings of two runs may lie at one time by a slip in one of them.
const COMMON_READINGS: usize = 1;

/// Two runs at one time: a cooker heats one load at a time, so readings stand twice.
fn overlap(file: &Path, runs: &[Run]) -> Option<Problem> {
    runs.iter().enumerate().find_map(|(index, run)| {
        let span = |run: &Run| {
            let times = &run.readings.time_us;
            Some((*times.first()?, *times.last()?))
        };
        // A stray date makes a span long; readings of both runs must lie in what is common.
        let meets = |other: &&Run| {
            let Some((one, two)) = span(run).zip(span(other)) else {
                return false;
            };
            let (from, to) = (one.0.max(two.0), one.1.min(two.1));
            let readings = |run: &Run| {
                // In order of time.
                let times = &run.readings.time_us;
                let before = times.partition_point(|&time| time < from);
                times.partition_point(|&time| time <= to) - before
            };
            from < to && readings(run) > COMMON_READINGS && readings(other) > COMMON_READINGS
        };
        let other = runs[..index].iter().find(meets)?;
        let what = format!("runs at the same time as \"{}\"", other.plan.label);
        let hint = "a cooker heats one load at a time: take out the log that is there twice, correct date, start and end, or give another cooker a campaign of its own";
        Some(run_problem(file, &run.plan, &what, hint))
    })
}

/// Two runs of one file with the same water temperatures from end to end: a sheet that was
/// not named is read twice, under another date.
fn copy(file: &Path, runs: &[Run]) -> Option<Problem> {
    runs.iter().enumerate().find_map(|(index, run)| {
        let is_same = |other: &&Run| {
            let (one, two) = (tested_c(run), tested_c(other));
            let sheets = [run, other].map(|run| &run.plan.rules.format.sheet);
            let is_one_file = other.plan.path == run.plan.path && sheets[0] != sheets[1];
            let is_one_kind = run.plan.kind.has_water() == other.plan.kind.has_water();
            is_one_file && is_one_kind && one.len() > COMMON_READINGS && one == two
        };
        let other = runs[..index].iter().find(is_same)?;
        let mut steps = tested_c(run).windows(2);
        let is_flat = steps.all(|pair| pair[0] == pair[1]);
        let what = format!(
            "has the same temperatures as \"{}\", reading by reading",
            other.plan.label
        );
        let hint = "a log is a run once: take one of the two out, or name its sheet or its date";
        (!is_flat).then(|| run_problem(file, &run.plan, &what, hint))
    })
}

/// The temperatures that a run is about, °C: of the water, or of the dry vessel.
fn tested_c(run: &Run) -> &[f64] {
    match &run.readings.vessel_c {
        Some(vessel) if !run.plan.kind.has_water() => &vessel.value,
        _ => &run.readings.water_c.value,
    }
}
