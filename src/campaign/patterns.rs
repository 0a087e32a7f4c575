//! A `log` that is a pattern: one run of each file that it matches.

use std::collections::{BTreeMap, BTreeSet};

use glob::{MatchOptions, Pattern};

use super::listing::is_ours;
use super::locate::Checker;
use super::moment::{Moment, WrittenMoment};
use super::named_files::{NamedFiles, NotRead};
use super::schema::{CampaignFile, RunTable};
use crate::bounds::RUNS;
use crate::shown::is_unseen;

/// What stands for other characters in the name of a file.
const WILD: &[char] = &['*', '?'];

/// A run as written, or one of those that a pattern stands for.
#[derive(Debug)]
pub struct WrittenRun {
    /// Its place among the `[[run]]` tables, from 1.
    pub number: usize,
    /// Its log was found by a pattern.
    pub is_matched: bool,
    pub table: RunTable,
}

/// A pattern: the folder as it is written, with its slash, and what the file's name is to be.
pub struct LogPattern {
    pub folder: String,
    name: Pattern,
}

impl LogPattern {
    /// The pattern that a `log` is, unless a file of that very name is there.
    pub fn of(log: &str, files: NamedFiles<'_>) -> Option<Self> {
        let start = log.rfind('/').map_or(0, |slash| slash + 1);
        let (folder, name) = log.split_at(start);
        if !name.contains(WILD) || files.find(log).is_ok() {
            return None;
        }
        // Only these two are wild: a bracket stands for itself, and two stars for one.
        let mut plain = name.replace('[', "[[]");
        while plain.contains("**") {
            plain = plain.replace("**", "*");
        }
        Some(LogPattern {
            folder: folder.to_owned(),
            name: Pattern::new(&plain).ok()?,
        })
    }

    /// Whether a file of its folder is meant: hidden files and ours are not.
    pub fn matches(&self, name: &str) -> bool {
        const OPTIONS: MatchOptions = MatchOptions {
            case_sensitive: true,
            require_literal_separator: true,
            require_literal_leading_dot: true,
        };
        !is_ours(name) && self.name.matches_with(name, OPTIONS)
    }
}

/// The runs of a campaign file.
pub struct WrittenRuns {
    /// Number of the `[[run]]` tables.
    pub tables: usize,
    /// In their order.
    pub all: Vec<WrittenRun>,
}

/// The runs, with those of each pattern in its place, in the order of the names of their logs.
/// Files that the campaign file names are passed over by patterns.
pub fn spread(
    checker: &mut Checker<'_>,
    files: NamedFiles<'_>,
    written: &mut CampaignFile,
    must_match: bool,
) -> WrittenRuns {
    let runs = std::mem::take(&mut written.run);
    let patterns: Vec<Option<LogPattern>> = runs
        .iter()
        .map(|table| LogPattern::of(&table.log, files))
        .collect();
    let logs = runs.iter().zip(&patterns);
    let logs = logs.filter_map(|(run, pattern)| pattern.is_none().then_some(&run.log));
    let weather = runs.iter().filter_map(|run| run.weather.as_ref());
    let named: BTreeSet<String> = logs
        .chain(weather)
        .chain(&written.cooker.photo)
        .map(|name| without_here(name))
        .collect();
    let tables = runs.len();
    let mut matched: BTreeMap<String, usize> = BTreeMap::new();
    let mut all = Vec::new();
    for (index, (table, pattern)) in runs.into_iter().zip(patterns).enumerate() {
        let number = index + 1;
        let Some(pattern) = pattern else {
            all.push(WrittenRun {
                number,
                is_matched: false,
                table,
            });
            continue;
        };
        refuse_keys_of_one_log(checker, number, &table);
        let key = format!("run.{number}.log");
        let logs = match logs_of(files, &pattern, &named) {
            Ok(logs) => logs,
            Err(NotRead { what, hint }) => {
                checker.problem(&key, format!("the pattern \"{}\" {what}", table.log), hint);
                continue;
            }
        };
        if logs.is_empty() && must_match {
            checker.problem(
                &key,
                format!("the pattern \"{}\" matches no file that is not named elsewhere", table.log),
                "put the logs into the campaign's folder, or correct the pattern: * stands for any characters of a file's name, ? for one",
            );
        }
        for log in logs {
            if let Some(wrong) = log.chars().find(|&character| is_unseen(character)) {
                let code = wrong as u32;
                let what = format!(
                    "the pattern matches a file whose name holds the character U+{code:04X}, which cannot be printed"
                );
                checker.problem(&key, what, "give the file another name");
            } else if let Some(other) = matched.insert(without_here(&log), number) {
                let what =
                    format!("the pattern matches \"{log}\", as that of [[run]] {other} does");
                let hint = "make them differ, or name the log in a [[run]] of its own: patterns pass over it then";
                checker.problem(&key, what, hint);
            } else if all.len() <= RUNS.count() {
                all.push(WrittenRun {
                    number,
                    is_matched: true,
                    table: RunTable {
                        log,
                        ..table.clone()
                    },
                });
            }
        }
    }
    WrittenRuns { tables, all }
}

/// The names of the files that a pattern matches, in order, but for those that are named.
pub fn logs_of(
    files: NamedFiles<'_>,
    pattern: &LogPattern,
    named: &BTreeSet<String>,
) -> Result<Vec<String>, NotRead> {
    let mut logs = files.listed(&pattern.folder)?;
    logs.retain(|name| pattern.matches(name));
    logs.sort();
    let logs = logs.into_iter().map(|name| pattern.folder.clone() + &name);
    Ok(logs
        .filter(|log| !named.contains(&without_here(log)))
        .collect())
}

/// Keys that can be true of one log only.
fn refuse_keys_of_one_log(checker: &mut Checker<'_>, number: usize, table: &RunTable) {
    let has_date = |written: &WrittenMoment| {
        let moment = Moment::parse(&written.to_string());
        matches!(moment, Some(Moment::Local(_) | Moment::Instant(_)))
    };
    let span = |from, to| has_date(from) || has_date(to);
    let mut excluded = table.exclude.iter();
    let keys = [
        ("date", table.date.is_some()),
        ("start", table.start.as_ref().is_some_and(has_date)),
        ("end", table.end.as_ref().is_some_and(has_date)),
        ("exclude", excluded.any(|one| span(&one.from, &one.to))),
        // Nobody saw the sky of days to come.
        ("cloudless", !table.cloudless.is_empty()),
    ];
    let found: Vec<&str> = keys
        .iter()
        .filter(|(_, is)| *is)
        .map(|(key, _)| *key)
        .collect();
    if let Some(first) = found.first() {
        checker.problem(
            &format!("run.{number}.{first}"),
            format!("is about one day ({}), and the log is a pattern for many", found.join(", ")),
            "write a [[run]] of its own for the log that this is about: the pattern passes over a log that is named",
        );
    }
}

/// A path without the parts that lead nowhere.
pub fn without_here(path: &str) -> String {
    let parts = path.split('/').filter(|part| !matches!(*part, "" | "."));
    parts.collect::<Vec<_>>().join("/")
}
