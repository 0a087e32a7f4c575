//! The logs that a folder holds before it is a campaign's.

use std::path::Path;

use jiff::tz::TimeZone;

use crate::campaign::kinds::RunKind;
use crate::campaign::listing::files_in;
use crate::campaign::model::{LogRules, Plane};
use crate::campaign::template::{FoundRun, LOG_NAME, header_of};
use crate::error::Error;
use crate::language::Words;
use crate::logs::read::{FileLog, read_file};
use crate::logs::request::Request;
use crate::logs::unnamed::{has_ending, looks_like_log};
use crate::shown::is_unseen;
use crate::units::{counted, zoned};

/// Endings of files that are as often a text as a log: what is none is passed over.
const OF_TEXTS: [&str; 2] = [".txt", ".log"];

/// The logs of a folder.
#[derive(Default)]
pub struct FoundLogs {
    /// In the order of their first readings.
    pub runs: Vec<FoundRun>,
    /// What is said of those that cannot be read.
    pub left_out: Vec<String>,
}

/// Looks for logs in a folder, and reads each, as one of a kind or else of another.
pub fn find_logs(folder: &Path, rules: &LogRules, zone: &TimeZone, kind: RunKind) -> FoundLogs {
    // A folder that is not there yet, or cannot be listed, holds none that could be named.
    let names = files_in(folder).unwrap_or_default().into_iter();
    let (mut runs, mut left_out) = (Vec::new(), Vec::new());
    for name in names.filter(|name| has_ending(name)) {
        let path = folder.join(&name);
        if is_empty_log(&path, &name) || is_text(&path, &name, rules) {
            continue;
        }
        if name.contains(is_unseen) || name.contains(char::REPLACEMENT_CHARACTER) {
            left_out.push(format!(
                "{} is left out: its name cannot be printed; give it another",
                path.display()
            ));
            continue;
        }
        match read_as(&path, &name, rules, zone, kind) {
            Ok((kind, plane, log)) => {
                let run = FoundRun {
                    is_horizontal: plane == Some(Plane::Horizontal),
                    ..found(name, kind, &log, zone)
                };
                runs.push((log.account.first_us, run));
            }
            Err(error) => left_out.push(left_out_for(&path, &error)),
        }
    }
    runs.sort_by(|(one_us, one), (other_us, other)| {
        (one_us, &one.log).cmp(&(other_us, &other.log))
    });
    FoundLogs {
        runs: runs.into_iter().map(|(_, run)| run).collect(),
        left_out,
    }
}

/// Why a log is left out, by the first that is wrong with it.
fn left_out_for(path: &Path, error: &Error) -> String {
    let first = match error {
        Error::Input(problems) | Error::Campaign(problems) | Error::Usage(problems) => {
            problems.listed().first()
        }
        _ => None,
    };
    let why = first.map_or_else(|| error.to_string(), |problem| problem.what.clone());
    format!(
        "{} is left out: {why}; write a [[run]] for it that says how it is read, or leave it",
        path.display()
    )
}

/// Whether a file is no log though its name might be one's.
fn is_text(path: &Path, name: &str, rules: &LogRules) -> bool {
    let lower = name.to_lowercase();
    OF_TEXTS.iter().any(|ending| lower.ends_with(ending)) && !looks_like_log(path, rules)
}

/// Whether a file is the empty log that an earlier call has written.
fn is_empty_log(path: &Path, name: &str) -> bool {
    let is_header = |text: String| {
        let mut kinds = RunKind::ALL.into_iter();
        kinds.any(|kind| text.trim_end() == header_of(kind))
    };
    name == LOG_NAME
        && path.metadata().is_ok_and(|of| of.len() < 4096)
        && std::fs::read_to_string(path).is_ok_and(is_header)
}

/// A log with the kind and the plane of its sensor as which it could be read.
type ReadSo = (RunKind, Option<Plane>, FileLog);

/// Reads a log as one of a kind; where that cannot be, of water, or of a dry vessel.
fn read_as(
    path: &Path,
    name: &str,
    rules: &LogRules,
    zone: &TimeZone,
    kind: RunKind,
) -> Result<ReadSo, Error> {
    let read_in = |kind, plane| {
        let request = Request {
            kind,
            plane,
            ..Request::new(rules, zone)
        };
        read_file(path, name, &request)
    };
    let read = |kind| {
        let flat = || {
            read_in(kind, Some(Plane::Horizontal)).map(|log| (kind, Some(Plane::Horizontal), log))
        };
        match read_in(kind, None) {
            Ok(log) => Ok((kind, None, log)),
            // Its header may say that the sensor lies flat.
            Err(error) => flat().map_err(|_| error),
        }
    };
    // A vessel's temperature serves for the water's, and is that of a dry one in a log of ours.
    let of_vessel = |log: &FileLog| {
        let mut columns = log.account.columns.iter();
        columns.any(|column| header_of(RunKind::Dry).split(',').nth(1) == Some(&column.header))
    };
    match read(kind) {
        Ok((RunKind::Water, plane, log)) if of_vessel(&log) => {
            read(RunKind::Dry).or(Ok((kind, plane, log)))
        }
        read => read,
    }
    .or_else(|error| {
        let others = [RunKind::Water, RunKind::Dry].into_iter();
        let mut others = others.filter(|other| *other != kind);
        others.find_map(|other| read(other).ok()).ok_or(error)
    })
}

fn found(log: String, kind: RunKind, read: &FileLog, zone: &TimeZone) -> FoundRun {
    let [from, to] = [read.account.first_us, read.account.last_us].map(|us| zoned(us, zone));
    let has_days = from.date() != to.date();
    let when = match has_days {
        true => format!("{} to {}", from.date(), to.date()),
        false => format!(
            "{}, {} to {}",
            from.date(),
            from.strftime("%H:%M"),
            to.strftime("%H:%M")
        ),
    };
    FoundRun {
        log,
        kind,
        has_days: has_days && kind == RunKind::Water,
        when,
        understood: understood(kind, read),
        has_irradiance: read.readings.irradiance_w_m2.is_some(),
        is_horizontal: false,
    }
}

/// How a log was understood, in a line.
fn understood(kind: RunKind, read: &FileLog) -> String {
    let words = Words::english();
    let columns = read.account.columns.iter().map(|column| {
        let quantity = words.say(column.quantity.name());
        format!("{quantity} from \"{}\" in {}", column.header, column.unit)
    });
    let columns: Vec<String> = columns.collect();
    let kind = match kind {
        RunKind::Water => String::new(),
        kind => format!("{}: ", words.say(kind.describe())),
    };
    format!(
        "{kind}{}, {}",
        counted(read.account.readings, "reading"),
        columns.join(", ")
    )
}
