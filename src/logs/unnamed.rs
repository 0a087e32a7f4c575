//! Files that look like logs: those in a campaign's folder that no run names.

use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};

use jiff::tz::TimeZone;

use super::columns::map_columns;
use super::layout::{Layout, find_layout, find_sheet_layout};
use super::quantity::Role;
use super::request::Request;
use super::sheet::read_sheet;
use super::source::{Container, Source};
use super::table::{Rows, SheetRows};
use super::text::TextEncoding;
use crate::campaign::Campaign;
use crate::campaign::find::real_path;
use crate::campaign::kinds::RunKind;
use crate::campaign::listing::files_in;
use crate::campaign::model::LogRules;

/// How the names of files end that loggers and spreadsheets write; `.gz` may follow.
const ENDINGS: [&str; 8] = [
    ".csv", ".tsv", ".txt", ".dat", ".log", ".xlsx", ".xls", ".ods",
];

/// A spreadsheet of so many bytes is opened, to see what is in it; a larger one counts by its
/// name.
const OPENED_BYTES: u64 = 2 << 20;

/// Longest file that can be a header and nothing else, bytes.
const LONGEST_HEADER: u64 = 4096;

/// So many files of a folder are looked at.
const LOOKED_AT: usize = 500;

/// Names of the files in a campaign's folder that look like logs and that no run names, in
/// order.
pub fn unnamed_logs(campaign: &Campaign) -> Vec<String> {
    let folder = match campaign.file.parent() {
        Some(parent) if !parent.as_os_str().is_empty() => parent,
        _ => Path::new("."),
    };
    let named = campaign.input_files().into_iter();
    let named: BTreeSet<PathBuf> = named.map(|input| real_path(&input.path)).collect();
    // What cannot be listed has no notice; whether it can be read is no question of this.
    let names = files_in(folder).unwrap_or_default().into_iter();
    let unnamed = names.filter(|name| has_ending(name)).filter(|name| {
        fs::canonicalize(folder.join(name)).is_ok_and(|path| !named.contains(&path))
    });
    let unnamed = unnamed
        .take(LOOKED_AT)
        .map(|name| (folder.join(&name), name));
    let looks_like_one =
        |path: &Path| !is_header_alone(path) && looks_like_log(path, &campaign.rules);
    unnamed
        .filter(|(path, _)| looks_like_one(path))
        .map(|(_, name)| name)
        .collect()
}

/// Whether a file is one line, as the empty log is that `new` writes.
fn is_header_alone(path: &Path) -> bool {
    fs::metadata(path).is_ok_and(|of| of.len() <= LONGEST_HEADER)
        && fs::read_to_string(path).is_ok_and(|text| {
            let lines = text.lines().filter(|line| !line.trim().is_empty());
            lines.count() <= 1
        })
}

/// Whether a file of a name may be a log.
pub fn has_ending(name: &str) -> bool {
    let lower = name.to_lowercase();
    let lower = lower.strip_suffix(".gz").unwrap_or(&lower);
    ENDINGS.iter().any(|ending| lower.ends_with(ending))
}

/// Whether the head of a file has columns that a run is made of, or that the weather is.
pub fn looks_like_log(path: &Path, rules: &LogRules) -> bool {
    let source = Source::File(path);
    let layout = match source.container() {
        Ok(Container::OldSpreadsheet) => return true,
        Ok(Container::Spreadsheet) => {
            if source.size().is_ok_and(|size| size > OPENED_BYTES) {
                return true;
            }
            let sheet = read_sheet(path, source, rules.format.sheet.as_deref());
            sheet.ok().and_then(|sheet| {
                let mut rows = Rows::Sheet(SheetRows::new(&sheet.rows));
                find_sheet_layout(path, &mut rows, rules).ok()
            })
        }
        Ok(Container::Plain | Container::Gzip) => {
            let encoding = rules.format.encoding.as_deref();
            let encoding = TextEncoding::detect(path, source, encoding);
            encoding
                .ok()
                .and_then(|encoding| find_layout(path, source, encoding, rules).ok())
        }
        Err(_) => return false,
    };
    layout.is_some_and(|layout| is_of_a_run(path, &layout, rules))
}

fn is_of_a_run(path: &Path, layout: &Layout, rules: &LogRules) -> bool {
    let roles = [
        (Role::Whole, RunKind::Water),
        (Role::Whole, RunKind::Dry),
        (Role::Weather, RunKind::Water),
    ];
    let zone = TimeZone::UTC;
    roles.into_iter().any(|(role, kind)| {
        let request = Request {
            role,
            kind,
            ..Request::new(rules, &zone)
        };
        map_columns(path, layout, &request).is_ok_and(|map| !map.sensors.is_empty())
    })
}
