//! Where in the campaign file, or in what it shares with others, a key stands, and the problems
//! found there.

use std::path::Path;

use jiff::civil::Date;
use serde::Deserialize;
use toml::Spanned;
use toml::de::{DeTable, DeValue};

use super::everyday::{Written, rename, us_name};
use super::merge::{find, merge, moved, remove};
use super::moment::WrittenMoment;
use super::needed::{Missing, with_stand_ins};
use super::schema::CampaignFile;
use super::source::Source;
use super::wording::{hint_for, hint_for_unknown, plain_message, unknown};
use crate::believable::Range;
use crate::bounds::{Bound, CAMPAIGN_KEYS};
use crate::error::{Error, Problem, Problems, Result};
use crate::units::short;

/// What to do about a key that is missing.
const ADD_KEY: &str = "add each key that is missing: simmerline new FOLDER writes a file that shows and explains all of them";

/// What to do about a table that is missing.
const ADD_TABLE: &str =
    "add the table: simmerline new FOLDER writes a file that shows every table and key";

/// The same where a file of shared keys holds too.
const ADD_TO_EITHER: &str = "add each key that is missing, to the campaign file or to the file of shared keys: simmerline new FOLDER writes a file that shows and explains all of them";

/// What belongs to one campaign, and to none beside it or below. A mark that its data are invented
/// must not be lost when its folder is moved.
const OF_ONE_CAMPAIGN: [&str; 11] = [
    "campaign.title",
    "campaign.demonstration",
    "campaign.report_number",
    "campaign.notes",
    "report.client_data",
    "report.sampling",
    "report.external_results",
    "cooker",
    "load",
    "run",
    "stagnation",
];

/// Smallest quantity that counts as more than nothing, in any unit of the file.
const SMALLEST: f64 = 1e-6;

/// The text of a campaign file, and of those that it shares, with the problems found so far.
pub struct Checker<'t> {
    /// The campaign file first, then the nearest that it shares, and so on.
    sources: Vec<Source<'t>>,
    /// Of all of them, with places in all of them laid end to end.
    tree: Option<DeTable<'t>>,
    /// Keys in other units than those of the schema, which the tree has under its names.
    written: Vec<Written>,
    problems: Problems,
}

impl<'t> Checker<'t> {
    /// A checker with no problems yet.
    pub fn new(file: &Path, text: &'t str) -> Self {
        let mut checker = Checker {
            sources: vec![Source::new(file, text, 0)],
            tree: None,
            written: Vec::new(),
            problems: Problems::default(),
        };
        if let Ok(tree) = DeTable::parse(text) {
            let mut tree = tree.into_inner();
            let (written, wrong) = rename(&mut tree);
            (checker.tree, checker.written) = (Some(tree), written);
            for one in wrong {
                checker.problem(
                    &one.canonical,
                    one.what,
                    "keep the one that you measured in",
                );
            }
        }
        checker
    }

    /// Takes in a file of shared keys that lies further up than those before; returns those of
    /// its keys that hold, such as `site.name`.
    ///
    /// # Errors
    /// [`Error::Campaign`] for what is wrong with it whatever the campaign says: syntax, unknown
    /// keys, values of a wrong type, and keys that belong to one campaign.
    pub(super) fn add_shared(&mut self, file: &Path, text: &'t str) -> Result<Vec<String>> {
        let (tree, mut written) = shared_tree(file, text)?;
        let start = self.sources.last().map_or(0, Source::end);
        self.sources.push(Source::new(file, text, start));
        let own = self.tree.as_mut();
        let holding = own.map_or_else(Vec::new, |own| merge(own, moved(tree, start)));
        written.retain(|one| holding.contains(&one.canonical));
        self.written.extend(written);
        Ok(holding)
    }

    /// Parses the text. A key or table that has to be there and is not is noted, and something
    /// else stands in its place, so that everything that is wrong can be told at once.
    ///
    /// # Errors
    /// [`Error::Campaign`] with the place for a syntax error, an unknown key
    /// (with the nearest known one) or a value of a wrong type.
    pub(super) fn parse(&mut self) -> Result<CampaignFile> {
        let own = &self.sources[0];
        if own.text.trim().is_empty() {
            let problem = Problem::at(&own.file, "is empty")
                .hint("simmerline new FOLDER writes a campaign file to fill in");
            return Err(Error::Campaign(problem.into()));
        }
        let text = self.sources[0].text;
        let read = match (self.note_missing(), &self.tree) {
            (Some(filled), _) => as_written(filled),
            (None, Some(tree)) => as_written(tree.clone()),
            // It says what is wrong with the text.
            (None, None) => toml::from_str(text),
        };
        read.map_err(|error| {
            let problem = self.misread(&error);
            self.problems.push(problem);
            self.sort_problems();
            Error::Campaign(std::mem::take(&mut self.problems))
        })
    }

    /// What is written, with something in the place of all that is missing.
    ///
    /// # Errors
    /// As [`Checker::parse`], but for what is missing.
    pub(super) fn parse_with_stand_ins(&self) -> Result<CampaignFile> {
        let tree = self.tree.clone().unwrap_or_default();
        let read = as_written(with_stand_ins(&tree).1);
        read.map_err(|error| Error::Campaign(self.misread(&error).into()))
    }

    /// What the parser says, in plain words and with its place.
    fn misread(&self, error: &toml::de::Error) -> Problem {
        let message = error.message().trim();
        let (what, hint) = (plain_message(message), hint_for(message));
        match error.span() {
            Some(span) => self.placed(span.start, what).hint(hint),
            None => Problem::at(&self.sources[0].file, what).hint(hint),
        }
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
                    let path = format!("{table}.{key}");
                    let hint = self.how_to_fill_in(&path).unwrap_or_else(|| {
                        let hint = match self.sources.len() {
                            1 => ADD_KEY,
                            _ => ADD_TO_EITHER,
                        };
                        hint.to_owned()
                    });
                    self.problem(&path, what, hint);
                }
            }
        }
        (!missing.is_empty()).then_some(filled)
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
            let problem = self
                .placed(start, what)
                .hint("delete it; it often comes along when text is copied");
            self.problems.push(problem);
        }
    }

    /// How a key is filled in that stands in a remark of the file, in its unit or in others;
    /// `None` where it stands in none.
    pub(super) fn how_to_fill_in(&self, key: &str) -> Option<String> {
        let (table, name) = key.rsplit_once('.')?;
        let (_, line) = self.remark_of(key)?;
        let other = us_name(table, name);
        let other = other.map_or_else(String::new, |other| format!(", or write {other}"));
        Some(format!(
            "take the # away in line {line} and write your own value{other}"
        ))
    }

    /// Notes a problem with a key such as `site.latitude_deg` or `run.2.log`.
    pub fn problem(&mut self, key: &str, what: impl Into<String>, hint: impl Into<String>) {
        if self.problems.are_full() {
            return self.problems.count_unlisted();
        }
        let problem = match self.place_of(key) {
            Some((source, line)) => Problem::at(&source.file, what).line(line),
            None => Problem::at(&self.sources[0].file, what),
        };
        let written = self.written.iter().find(|one| one.canonical == key);
        let named = written.map_or(key, |one| &one.key);
        self.problems
            .push(problem.item(spoken_key(named)).hint(hint));
    }

    /// The name under which a key was written, without its tables.
    pub(super) fn name_of<'k>(&'k self, key: &'k str) -> &'k str {
        let written = self.written.iter().find(|one| one.canonical == key);
        let named = written.map_or(key, |one| one.key.as_str());
        named.rsplit('.').next().unwrap_or(named)
    }

    /// A value as it was written, with what it is in the unit of the schema.
    fn said(&self, key: &str, value: f64, unit: &str) -> String {
        let written = self.written.iter().find(|one| one.canonical == key);
        match written.filter(|one| !one.value.is_empty()) {
            // The unit may go on to say more.
            Some(one) => {
                let unit = unit.split([',', ' ']).next().unwrap_or_default();
                format!("{}, which is {} {unit},", one.value, short(value))
            }
            None => format!("{value},"),
        }
    }

    /// Notes a key of a table that is none of those known there.
    pub fn unknown_key(&mut self, table: &str, key: &str, known: &[&str]) {
        if self.problems.are_full() {
            return self.problems.count_unlisted();
        }
        let (what, hint) = (unknown(key), hint_for_unknown(key, known));
        let written = self.tree.as_ref().and_then(|tree| tree.get(table));
        let written = written.and_then(|table| table.get_ref().as_table()?.get_key_value(key));
        let start = written.map(|(name, _)| name.span().start);
        let problem = match start {
            Some(start) => self.placed(start, what),
            None => Problem::at(&self.sources[0].file, what).item(format!("[{table}] {key}")),
        };
        self.problems.push(problem.hint(hint));
    }

    /// The text that holds an offset, and the offset in it.
    fn source_at(&self, offset: usize) -> (&Source<'t>, usize) {
        let after = self
            .sources
            .partition_point(|source| source.start <= offset);
        let source = &self.sources[after.saturating_sub(1)];
        (source, offset - source.start)
    }

    /// A problem at an offset.
    fn placed(&self, offset: usize, what: impl Into<String>) -> Problem {
        let (source, offset) = self.source_at(offset);
        let problem = Problem::at(&source.file, what).line(source.line_at(offset));
        match source.item_at(offset) {
            Some(item) => problem.item(item),
            None => problem,
        }
    }

    /// Notes a problem unless the number lies in the range.
    pub fn in_range(&mut self, key: &str, value: f64, range: &Range, unit: &str) {
        if !range.contains(&value) {
            let (lowest, highest) = (range.start(), range.end());
            let said = self.said(key, value, unit);
            let what = format!("found {said} expected {lowest} to {highest} {unit}");
            self.problem(key, what, "correct the value");
        }
    }

    /// Notes a problem unless the number is more than zero and no
    /// greater than `highest`. Says whether it is.
    pub(super) fn positive(&mut self, key: &str, value: f64, highest: f64, unit: &str) -> bool {
        let is_right = (SMALLEST..=highest).contains(&value);
        if !is_right {
            let said = self.said(key, value, unit);
            let what = format!("found {said} expected more than 0 and at most {highest} {unit}");
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
            Problem::at(&self.sources[0].file, what).hint(hint).into(),
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
            self.sort_problems();
            Err(Error::Campaign(self.problems))
        }
    }

    /// Puts the problems in the order of the files, and of the lines in each.
    fn sort_problems(&mut self) {
        let files: Vec<&Path> = self.sources.iter().map(|one| one.file.as_path()).collect();
        self.problems.sort_by_place(&files);
    }

    /// Line (from 1) of a key of the campaign file, as [`Self::place_of`] finds it.
    pub(super) fn line_of(&self, key: &str) -> Option<u64> {
        self.place_of(key).map(|(_, line)| line)
    }

    /// The file and the line (from 1) on which a key stands in a remark.
    fn remark_of(&self, key: &str) -> Option<(&Source<'t>, u64)> {
        let (table, name) = key.rsplit_once('.')?;
        let (source, line) = self.place_of(table)?;
        Some((source, source.line_behind_remark(line, name)?))
    }

    /// The file and the line (from 1) of a key, or where it is to be filled in, or of the nearest
    /// table above it that exists.
    fn place_of(&self, key: &str) -> Option<(&Source<'t>, u64)> {
        let mut table = self.tree.as_ref()?;
        let mut start = None;
        let mut parts = key.split('.');
        let at = |start: usize| {
            let (source, offset) = self.source_at(start);
            (source, source.line_at(offset))
        };
        while let Some(part) = parts.next() {
            let Some((name, value)) = table.get_key_value(part) else {
                let place = start.map(at);
                let is_last = parts.next().is_none();
                let remark = place.filter(|_| is_last).and_then(|(source, line)| {
                    Some((source, source.line_behind_remark(line, part)?))
                });
                return remark.or(place);
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
        start.map(at)
    }
}

/// The keys of a file of shared keys, if all of them may be shared.
fn shared_tree<'t>(file: &Path, text: &'t str) -> Result<(DeTable<'t>, Vec<Written>)> {
    let mut alone = Checker::new(file, text);
    alone.refuse_too_many()?;
    let Some(tree) = alone.tree.clone() else {
        // It says what is wrong, since the same text is not parsed.
        return alone
            .parse()
            .and_then(|_| Err(Error::Internal("shared keys".to_owned())));
    };
    let mut of_all = tree.clone();
    for key in OF_ONE_CAMPAIGN {
        if find(&tree, key).is_some() {
            let what = "belongs to one campaign, and is not shared";
            let hint = "move it into the campaign.toml of each campaign that it holds for";
            alone.problem(key, what, hint);
            remove(&mut of_all, key);
        }
    }
    let (_, filled) = with_stand_ins(&of_all);
    if let Err(error) = as_written(filled) {
        let problem = alone.misread(&error);
        alone.problems.push(problem);
    }
    let written = std::mem::take(&mut alone.written);
    alone.finish((tree, written))
}

/// A tree as the schema has it.
fn as_written(tree: DeTable<'_>) -> std::result::Result<CampaignFile, toml::de::Error> {
    CampaignFile::deserialize(toml::de::Deserializer::from(Spanned::new(0..0, tree)))
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
