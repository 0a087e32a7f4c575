//! Where in the campaign file a key stands, and the problems found in it.

use std::path::{Path, PathBuf};

use jiff::civil::Date;
use serde::Deserialize;
use toml::Spanned;
use toml::de::{DeTable, DeValue};

use super::moment::WrittenMoment;
use super::needed::{Missing, with_stand_ins};
use super::schema::CampaignFile;
use super::wording::{hint_for, hint_for_unknown, plain_message, unknown};
use crate::believable::Range;
use crate::bounds::{Bound, CAMPAIGN_KEYS};
use crate::error::{Error, Problem, Problems, Result};

/// What to do about a key that is missing.
const ADD_KEY: &str = "add each key that is missing: simmerline new FOLDER writes a file that shows and explains all of them";

/// What to do about a table that is missing.
const ADD_TABLE: &str =
    "add the table: simmerline new FOLDER writes a file that shows every table and key";

/// Smallest quantity that counts as more than nothing, in any unit of the file.
const SMALLEST: f64 = 1e-6;

/// The text of a campaign file with the problems found in it so far.
pub struct Checker<'t> {
    file: PathBuf,
    text: &'t str,
    tree: Option<DeTable<'t>>,
    /// Where each line begins.
    line_starts: Vec<usize>,
    problems: Problems,
}

impl<'t> Checker<'t> {
    /// A checker with no problems yet.
    pub fn new(file: &Path, text: &'t str) -> Self {
        Checker {
            file: file.to_path_buf(),
            text,
            tree: DeTable::parse(text).ok().map(|tree| tree.into_inner()),
            line_starts: std::iter::once(0)
                .chain(text.match_indices('\n').map(|(end, _)| end + 1))
                .collect(),
            problems: Problems::default(),
        }
    }

    /// Parses the text. A key or table that has to be there and is not is noted, and something
    /// else stands in its place, so that everything that is wrong can be told at once.
    ///
    /// # Errors
    /// [`Error::Campaign`] with the place for a syntax error, an unknown key
    /// (with the nearest known one) or a value of a wrong type.
    pub(super) fn parse(&mut self) -> Result<CampaignFile> {
        if self.text.trim().is_empty() {
            let problem = Problem::at(&self.file, "is empty")
                .hint("simmerline new FOLDER writes a campaign file to fill in");
            return Err(Error::Campaign(problem.into()));
        }
        let read = match self.note_missing() {
            Some(filled) => {
                let deserializer = toml::de::Deserializer::from(Spanned::new(0..0, filled));
                CampaignFile::deserialize(deserializer)
            }
            None => toml::from_str(self.text),
        };
        read.map_err(|error| {
            let message = error.message().trim();
            let problem = Problem::at(&self.file, plain_message(message)).hint(hint_for(message));
            let problem = match error.span() {
                Some(span) => self.placed(problem, span.start),
                None => problem,
            };
            self.problems.push(problem);
            self.problems.sort_by_line();
            Error::Campaign(std::mem::take(&mut self.problems))
        })
    }

    /// Notes every key and table that is missing; the file with something in their place.
    fn note_missing(&mut self) -> Option<DeTable<'t>> {
        let (missing, filled) = with_stand_ins(self.tree.as_ref()?);
        for one in &missing {
            match one {
                Missing::Table(table) => {
                    self.problem(table, format!("the table [{table}] is missing"), ADD_TABLE);
                }
                Missing::Key { table, key } => {
                    let what = format!("the key \"{key}\" is missing");
                    self.problem(&format!("{table}.{key}"), what, ADD_KEY);
                }
            }
        }
        (!missing.is_empty()).then_some(filled)
    }

    /// Line (from 1) on which a key of a table stands behind a `#`, as in a file that is to be
    /// filled in.
    fn line_behind_remark(&self, table_line: u64, key: &str) -> Option<u64> {
        let below = self.text.lines().enumerate().skip(table_line as usize);
        let mut of_table = below.take_while(|(_, line)| !line.trim_start().starts_with('['));
        let is_key = |line: &str| {
            let bare = line.trim_start().strip_prefix('#')?.trim_start();
            let rest = bare.strip_prefix(key)?.trim_start();
            rest.starts_with('=').then_some(())
        };
        let found = of_table.find(|(_, line)| is_key(line).is_some());
        found.map(|(index, _)| index as u64 + 1)
    }

    /// Table and key at an offset in the text, as a person reads them.
    fn item_at(&self, offset: usize) -> Option<String> {
        let end = self.text[offset..]
            .find('\n')
            .map_or(self.text.len(), |end| offset + end);
        let upto = &self.text[..end];
        let header = upto
            .lines()
            .rev()
            .map(str::trim)
            .find(|line| line.starts_with('['));
        let header = header.and_then(|line| line.rfind(']').map(|end| &line[..=end]));
        let key = upto
            .lines()
            .next_back()
            .and_then(|line| line.split_once('='));
        let key = key
            .map(|(key, _)| key.trim())
            .filter(|key| !key.starts_with(['#', '[']));
        match (header, key) {
            (Some(header), Some(key)) => Some(format!("{header} {key}")),
            (header, key) => header.or(key).map(str::to_owned),
        }
    }

    /// Notes every text that holds a character that cannot be printed.
    pub(super) fn refuse_unprintable(&mut self) {
        let mut found = Vec::new();
        for value in self.tree.iter().flat_map(|tree| tree.values()) {
            visit_values(value, &mut |value| {
                if let DeValue::String(text) = value.get_ref() {
                    let wrong = text.chars().find(|&character| is_unprintable(character));
                    found.extend(wrong.map(|wrong| (value.span().start, wrong)));
                }
            });
        }
        for (start, wrong) in found {
            if self.problems.are_full() {
                self.problems.count_unlisted();
                continue;
            }
            let code = wrong as u32;
            let what = format!("holds the character U+{code:04X}, which cannot be printed");
            let problem = Problem::at(&self.file, what)
                .hint("delete it; it often comes along when text is copied");
            self.problems.push(self.placed(problem, start));
        }
    }

    /// Notes a problem with a key such as `site.latitude_deg` or `run.2.log`.
    pub fn problem(&mut self, key: &str, what: impl Into<String>, hint: impl Into<String>) {
        if self.problems.are_full() {
            return self.problems.count_unlisted();
        }
        let mut problem = Problem::at(&self.file, what)
            .item(spoken_key(key))
            .hint(hint);
        if let Some(line) = self.line_of(key) {
            problem = problem.line(line);
        }
        self.problems.push(problem);
    }

    /// Notes a key of a table that is none of those known there.
    pub fn unknown_key(&mut self, table: &str, key: &str, known: &[&str]) {
        if self.problems.are_full() {
            return self.problems.count_unlisted();
        }
        let problem = Problem::at(&self.file, unknown(key)).hint(hint_for_unknown(key, known));
        let written = self.tree.as_ref().and_then(|tree| tree.get(table));
        let written = written.and_then(|table| table.get_ref().as_table()?.get_key_value(key));
        let start = written.map(|(name, _)| name.span().start);
        self.problems.push(match start {
            Some(start) => self.placed(problem, start),
            None => problem.item(format!("[{table}] {key}")),
        });
    }

    /// The problem at an offset in the text.
    fn placed(&self, problem: Problem, offset: usize) -> Problem {
        let problem = problem.line(self.line_at(offset));
        match self.item_at(offset) {
            Some(item) => problem.item(item),
            None => problem,
        }
    }

    /// Notes a problem unless the number lies in the range.
    pub fn in_range(&mut self, key: &str, value: f64, range: &Range, unit: &str) {
        if !range.contains(&value) {
            let (lowest, highest) = (range.start(), range.end());
            let what = format!("found {value}, expected {lowest} to {highest} {unit}");
            self.problem(key, what, "correct the value");
        }
    }

    /// Notes a problem unless the number is more than zero and no
    /// greater than `highest`. Says whether it is.
    pub(super) fn positive(&mut self, key: &str, value: f64, highest: f64, unit: &str) -> bool {
        let is_right = (SMALLEST..=highest).contains(&value);
        if !is_right {
            let what = format!("found {value}, expected more than 0 and at most {highest} {unit}");
            self.problem(key, what, "correct the value");
        }
        is_right
    }

    /// A date without a clock time; a problem if it is none.
    pub(super) fn date(&mut self, key: &str, written: &WrittenMoment) -> Option<Date> {
        let date = written.date();
        if date.is_none() {
            let what = format!("found \"{written}\", expected a date");
            self.problem(key, what, "write the date as 2026-03-14");
        }
        date
    }

    /// Notes a problem if a text is empty or longer than its place on paper.
    pub(super) fn text(&mut self, key: &str, text: &str, longest: &Bound) {
        if text.trim().is_empty() {
            self.problem(
                key,
                "is empty",
                "say what a reader of the report should see",
            );
        } else {
            self.length(key, Some(text), longest);
        }
    }

    /// Notes a problem if a text is longer than its place on paper.
    pub(super) fn length(&mut self, key: &str, text: Option<&str>, longest: &Bound) {
        let hint = "shorten it; description and notes have room for more";
        self.bound(
            key,
            text.map_or(0, |text| text.chars().count()),
            longest,
            hint,
        );
    }

    /// Notes a problem unless there are no more than allowed. Says whether there are not.
    pub(super) fn bound(&mut self, key: &str, found: usize, most: &Bound, hint: &str) -> bool {
        let what = most.exceeded_by(found);
        let is_right = what.is_none();
        if let Some(what) = what {
            self.problem(key, what, hint);
        }
        is_right
    }

    /// Refuses a file of more keys and values than are read.
    ///
    /// # Errors
    /// [`Error::Campaign`].
    pub(super) fn refuse_too_many(&self) -> Result<()> {
        let mut found = 0;
        for value in self.tree.iter().flat_map(|tree| tree.values()) {
            visit_values(value, &mut |_| found += 1);
        }
        let Some(what) = CAMPAIGN_KEYS.exceeded_by(found) else {
            return Ok(());
        };
        let hint = "readings go into a log; make several campaigns of one that is so large";
        Err(Error::Campaign(
            Problem::at(&self.file, what).hint(hint).into(),
        ))
    }

    /// The result, unless there were problems.
    ///
    /// # Errors
    /// [`Error::Campaign`] with every problem noted.
    pub fn finish<T>(mut self, value: T) -> Result<T> {
        if self.problems.is_empty() {
            Ok(value)
        } else {
            self.problems.sort_by_line();
            Err(Error::Campaign(self.problems))
        }
    }

    /// Line (from 1) of a key, or where it is to be filled in, or of the nearest table above it
    /// that exists.
    pub(super) fn line_of(&self, key: &str) -> Option<u64> {
        let mut table = self.tree.as_ref()?;
        let mut start = None;
        let mut parts = key.split('.');
        while let Some(part) = parts.next() {
            let Some((name, value)) = table.get_key_value(part) else {
                let line = start.map(|start| self.line_at(start));
                let is_last = parts.next().is_none();
                let remark = line.filter(|_| is_last);
                return remark
                    .and_then(|line| self.line_behind_remark(line, part))
                    .or(line);
            };
            start = Some(name.span().start);
            let mut value = value;
            if let DeValue::Array(items) = value.get_ref() {
                let index = parts.next().and_then(|part| part.parse::<usize>().ok());
                let Some(item) = index.and_then(|index| items.get(index.checked_sub(1)?)) else {
                    break;
                };
                start = Some(item.span().start);
                value = item;
            }
            match value.get_ref() {
                DeValue::Table(below) => table = below,
                _ => break,
            }
        }
        start.map(|start| self.line_at(start))
    }

    fn line_at(&self, offset: usize) -> u64 {
        self.line_starts.partition_point(|&start| start <= offset) as u64
    }
}

/// `run.2.log` as a person reads it: `[[run]] 2, log`.
fn spoken_key(key: &str) -> String {
    match key.split('.').collect::<Vec<_>>().as_slice() {
        [table @ ("run" | "calibration" | "stagnation")] => format!("[[{table}]]"),
        ["run", number] => format!("[[run]] {number}"),
        ["calibration", number] => format!("[[calibration]] {number}"),
        ["stagnation", number] => format!("[[stagnation]] {number}"),
        ["stagnation", number, key] => format!("[[stagnation]] {number}, {key}"),
        ["calibration", number, key] => format!("[[calibration]] {number}, {key}"),
        ["run", number, rest @ ..] => format!("[[run]] {number}, {}", rest.join(" ")),
        [tables @ .., last] if !tables.is_empty() => format!("[{}] {last}", tables.join(".")),
        _ => format!("[{key}]"),
    }
}

/// Control characters, byte-order marks, private use and non-characters.
fn is_unprintable(character: char) -> bool {
    let code = character as u32;
    let is_break = matches!(character, '\n' | '\r' | '\t');
    (character.is_control() && !is_break)
        || matches!(code, 0xFEFF | 0xE000..=0xF8FF | 0xF0000.. | 0xFDD0..=0xFDEF)
        || code & 0xFFFE == 0xFFFE
}

/// Hands a value and every one below it to `visit`.
fn visit_values(
    value: &toml::Spanned<DeValue<'_>>,
    visit: &mut impl FnMut(&toml::Spanned<DeValue<'_>>),
) {
    visit(value);
    match value.get_ref() {
        DeValue::Array(items) => items.iter().for_each(|item| visit_values(item, visit)),
        DeValue::Table(table) => table.values().for_each(|item| visit_values(item, visit)),
        _ => {}
    }
}
