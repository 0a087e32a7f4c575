//! Where in the campaign file a key stands, and how its text failed to parse.

use std::path::{Path, PathBuf};

use toml::de::{DeTable, DeValue};

use super::schema::CampaignFile;
use crate::error::{Error, Problem, Problems, Result};

/// The text of a campaign file with the problems found in it so far.
pub struct Checker<'t> {
    file: PathBuf,
    text: &'t str,
    tree: Option<DeTable<'t>>,
    problems: Problems,
}

impl<'t> Checker<'t> {
    /// A checker with no problems yet.
    pub fn new(file: &Path, text: &'t str) -> Self {
        Checker {
            file: file.to_path_buf(),
            text,
            tree: DeTable::parse(text).ok().map(|tree| tree.into_inner()),
            problems: Problems::default(),
        }
    }

    /// Parses the text.
    ///
    /// # Errors
    /// [`Error::Campaign`] with the line for a syntax error, an unknown key
    /// (with the nearest known one), a missing key or a value of a wrong type.
    pub fn parse(&self) -> Result<CampaignFile> {
        toml::from_str(self.text).map_err(|error| {
            let message = error.message().trim().to_owned();
            let mut problem = Problem::at(&self.file, message.replace('`', "\""));
            if let Some(span) = error.span() {
                problem = problem.line(self.line_at(span.start));
            }
            if let Some(hint) = hint_for(&message) {
                problem = problem.hint(hint);
            }
            Error::Campaign(problem.into())
        })
    }

    /// Notes a problem with a key such as `site.latitude_deg` or `run.2.log`.
    pub fn problem(&mut self, key: &str, what: impl Into<String>, hint: impl Into<String>) {
        let mut problem = Problem::at(&self.file, what)
            .item(spoken_key(key))
            .hint(hint);
        if let Some(line) = self.line_of(key) {
            problem = problem.line(line);
        }
        self.problems.push(problem);
    }

    /// Notes a problem unless the number lies between the bounds, both allowed.
    pub fn in_range(&mut self, key: &str, value: f64, lowest: f64, highest: f64, unit: &str) {
        if !(lowest..=highest).contains(&value) {
            self.problem(
                key,
                format!("found {value}, expected {lowest} to {highest} {unit}"),
                format!("correct the value; it must be in {unit}"),
            );
        }
    }

    /// Notes a problem unless the number is greater than zero and no greater than `highest`.
    pub fn positive(&mut self, key: &str, value: f64, highest: f64, unit: &str) {
        if !(value > 0.0 && value <= highest) {
            self.problem(
                key,
                format!("found {value}, expected more than 0 and at most {highest} {unit}"),
                format!("correct the value; it must be in {unit}"),
            );
        }
    }

    /// The result, unless there were problems.
    ///
    /// # Errors
    /// [`Error::Campaign`] with every problem noted.
    pub fn finish<T>(self, value: T) -> Result<T> {
        if self.problems.is_empty() {
            Ok(value)
        } else {
            Err(Error::Campaign(self.problems))
        }
    }

    /// Line (from 1) of a key, or of the nearest table above it that exists.
    pub fn line_of(&self, key: &str) -> Option<u64> {
        let mut table = self.tree.as_ref()?;
        let mut start = None;
        let mut parts = key.split('.');
        while let Some(part) = parts.next() {
            let Some((name, value)) = table.iter().find(|(name, _)| name.get_ref() == part) else {
                break;
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
        let before = self.text.as_bytes().iter().take(offset);
        1 + before.filter(|&&byte| byte == b'\n').count() as u64
    }
}

/// `run.2.log` as a person reads it: `[[run]] 2, log`.
fn spoken_key(key: &str) -> String {
    match key.split('.').collect::<Vec<_>>().as_slice() {
        ["run"] => "[[run]]".to_owned(),
        ["run", number] => format!("[[run]] {number}"),
        ["run", number, rest @ ..] => format!("[[run]] {number}, {}", rest.join(" ")),
        [tables @ .., last] if !tables.is_empty() => format!("[{}] {last}", tables.join(".")),
        _ => format!("[{key}]"),
    }
}

/// The word nearest to `wrong`, if any is near enough to be meant.
pub fn nearest<'w>(wrong: &str, words: impl IntoIterator<Item = &'w str>) -> Option<&'w str> {
    words
        .into_iter()
        .map(|word| {
            (
                strsim::jaro_winkler(&wrong.to_lowercase(), &word.to_lowercase()),
                word,
            )
        })
        .filter(|(likeness, _)| *likeness > 0.75)
        .max_by(|left, right| left.0.total_cmp(&right.0))
        .map(|(_, word)| word)
}

fn hint_for(message: &str) -> Option<String> {
    let quoted: Vec<&str> = message.split('`').skip(1).step_by(2).collect();
    if message.starts_with("unknown field") {
        let (wrong, known) = quoted.split_first()?;
        let list = known.join(", ");
        return Some(match nearest(wrong, known.iter().copied()) {
            Some(near) => format!("did you mean \"{near}\"? known here: {list}"),
            None => format!("known here: {list}"),
        });
    }
    if message.starts_with("missing field") {
        let key = quoted.first()?;
        return Some(format!(
            "add the key \"{key}\"; simmerline new writes a file that shows every key"
        ));
    }
    if message.starts_with("invalid type") {
        return Some(
            "text goes in quotes, numbers do not and have a decimal point, not a comma".to_owned(),
        );
    }
    Some(
        "text goes in quotes, a table starts with [name], each key has a line of its own"
            .to_owned(),
    )
}
