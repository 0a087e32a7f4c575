//! The `[[run]]` tables: logs, loads, times and exclusions.

use std::fs;
use std::path::{Path, PathBuf};

use super::locate::Checker;
use super::model::{Exclusion, RunPlan};
use super::moment::{Moment, WrittenMoment};
use super::schema::RunTable;

/// The runs, each with a log of its own that is there.
pub fn check_runs(
    checker: &mut Checker<'_>,
    folder: &Path,
    written: Vec<RunTable>,
    campaign_water_kg: f64,
) -> Vec<RunPlan> {
    if written.is_empty() {
        checker.problem(
            "run",
            "there is no run",
            "add a [[run]] table with log = \"…\" for each log",
        );
    }
    let mut runs: Vec<RunPlan> = Vec::new();
    for (index, table) in written.into_iter().enumerate() {
        let key = format!("run.{}", index + 1);
        let path = folder.join(&table.log);
        if !path.exists() {
            checker.problem(
                &format!("{key}.log"),
                format!("the log \"{}\" is not there", table.log),
                format!("put it into {}, or correct the name", folder.display()),
            );
        } else if let Some(other) = runs.iter().position(|run| same_file(&run.path, &path)) {
            checker.problem(
                &format!("{key}.log"),
                format!("names the same log as [[run]] {}", other + 1),
                "each run has a log of its own; delete one of the two",
            );
        }
        runs.push(check_run(checker, &key, table, path, campaign_water_kg));
    }
    runs
}

fn same_file(left: &Path, right: &Path) -> bool {
    match (fs::canonicalize(left), fs::canonicalize(right)) {
        (Ok(left), Ok(right)) => left == right,
        _ => left == right,
    }
}

fn check_run(
    checker: &mut Checker<'_>,
    key: &str,
    table: RunTable,
    path: PathBuf,
    campaign_water_kg: f64,
) -> RunPlan {
    if let Some(water_kg) = table.water_kg {
        checker.positive(&format!("{key}.water_kg"), water_kg, 1000.0, "kg");
    }
    if let Some(minutes) = table.tracking_interval_min {
        checker.positive(
            &format!("{key}.tracking_interval_min"),
            minutes,
            1440.0,
            "min",
        );
    }
    let date = table.date.and_then(|written| {
        let date = written.to_string().parse().ok();
        if date.is_none() {
            checker.problem(
                &format!("{key}.date"),
                format!("found \"{written}\", expected a date"),
                "write the date as 2026-03-14",
            );
        }
        date
    });
    let mut moment = |name: &str, written: &WrittenMoment| {
        let moment = Moment::parse(&written.to_string());
        if moment.is_none() {
            checker.problem(
                &format!("{key}.{name}"),
                format!("found \"{written}\", expected a time"),
                "write local clock time as \"10:05\", or \"2026-03-14 10:05\"",
            );
        }
        moment
    };
    let start = table
        .start
        .as_ref()
        .and_then(|written| moment("start", written));
    let end = table
        .end
        .as_ref()
        .and_then(|written| moment("end", written));
    let mut exclusions = Vec::new();
    for (number, span) in table.exclude.into_iter().enumerate() {
        let name = |end: &str| format!("exclude.{}.{end}", number + 1);
        let from = moment(&name("from"), &span.from);
        let to = moment(&name("to"), &span.to);
        if let (Some(from), Some(to)) = (from, to) {
            exclusions.push(Exclusion {
                from,
                to,
                reason: span.reason,
            });
        }
    }
    RunPlan {
        line: checker.line_of(key),
        log: table.log,
        path,
        water_kg: table.water_kg.unwrap_or(campaign_water_kg),
        tracking_interval_min: table.tracking_interval_min,
        date,
        start,
        end,
        notes: table.notes,
        exclusions,
    }
}
