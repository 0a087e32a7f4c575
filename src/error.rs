//! What can go wrong, as data: where, what was found, what to do about it.
//!
//! Each class of [`Error`] has one exit code; the help texts list them. Every part of a problem
//! may hold text of others, so it is [`shown`] on one line; the line feeds between are ours.

use std::fmt;
use std::io;
use std::path::{Path, PathBuf};

use crate::shown::shown;

/// At most this many problems of one file are listed; the rest are counted.
pub const LISTED_PROBLEMS: usize = 20;

/// Where a problem sits. Fields that do not apply are `None`.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Place {
    /// File or folder, as the user would name it.
    pub path: PathBuf,
    /// Line in the file, counted from 1.
    pub line: Option<u64>,
    /// Column header in a log, or key in a campaign file.
    pub item: Option<String>,
}

/// One problem: where, what was found and expected, and how to mend it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Problem {
    /// Position, never glued into `what`.
    pub place: Place,
    /// What was found and what was expected; lower case, no full stop.
    pub what: String,
    /// What to do about it, where that is not plain from `what`.
    pub hint: Option<String>,
}

impl Problem {
    /// A problem with a file or folder as a whole.
    pub fn at(path: &Path, what: impl Into<String>) -> Self {
        let place = Place {
            path: path.to_path_buf(),
            ..Place::default()
        };
        Problem {
            place,
            what: what.into(),
            hint: None,
        }
    }

    /// The same problem, placed at a line (counted from 1).
    pub fn line(mut self, line: u64) -> Self {
        self.place.line = Some(line);
        self
    }

    /// The same problem, placed at a column header or key.
    pub fn item(mut self, item: impl Into<String>) -> Self {
        self.place.item = Some(item.into());
        self
    }

    /// The same problem with a remedy.
    pub fn hint(mut self, hint: impl Into<String>) -> Self {
        self.hint = Some(hint.into());
        self
    }
}

impl fmt::Display for Place {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}", shown(&self.path.display().to_string()))?;
        if let Some(line) = self.line {
            write!(f, ":{line}")?;
        }
        if let Some(item) = &self.item {
            write!(f, ": {}", shown(item))?;
        }
        Ok(())
    }
}

impl Problem {
    fn write_without_hint(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}: {}", self.place, shown(&self.what))
    }
}

impl fmt::Display for Problem {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.write_without_hint(f)?;
        if let Some(hint) = &self.hint {
            write!(f, "\nhint: {}", shown(hint))?;
        }
        Ok(())
    }
}

/// All problems of one or more files, of each the first [`LISTED_PROBLEMS`] of them in full.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Problems {
    listed: Vec<Problem>,
    unlisted: usize,
}

impl Problems {
    /// Adds one problem, listed or counted.
    pub fn push(&mut self, problem: Problem) {
        if self.are_full() {
            self.count_unlisted();
        } else {
            self.listed.push(problem);
        }
    }

    /// Whether another problem would only be counted: then its words need not be found.
    pub fn are_full(&self) -> bool {
        self.listed.len() >= LISTED_PROBLEMS
    }

    /// Counts a problem that is not listed.
    pub fn count_unlisted(&mut self) {
        self.unlisted += 1;
    }

    /// Puts the problems in the order of these files, and of the lines in each.
    pub fn sort_by_place(&mut self, files: &[&Path]) {
        let rank = |path: &Path| files.iter().position(|file| *file == path);
        self.listed
            .sort_by_key(|problem| (rank(&problem.place.path), problem.place.line));
    }

    /// Whether nothing is wrong.
    pub fn is_empty(&self) -> bool {
        self.listed.is_empty()
    }

    /// Adds the problems of another file, as many as it lists.
    pub fn extend(&mut self, other: Problems) {
        self.unlisted += other.unlisted;
        self.listed.extend(other.listed);
    }

    /// How many are only counted.
    pub fn unlisted(&self) -> usize {
        self.unlisted
    }

    /// The problems kept in full.
    pub fn listed(&self) -> &[Problem] {
        &self.listed
    }
}

impl From<Problem> for Problems {
    fn from(problem: Problem) -> Self {
        Problems {
            listed: vec![problem],
            unlisted: 0,
        }
    }
}

impl fmt::Display for Problems {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        for (index, problem) in self.listed.iter().enumerate() {
            if index > 0 {
                write!(f, "\nerror: ")?;
            }
            // Problems that are mended alike share one hint, after the last of them.
            match self.listed.get(index + 1) {
                Some(next) if next.hint == problem.hint => problem.write_without_hint(f)?,
                _ => write!(f, "{problem}")?,
            }
        }
        if self.unlisted > 0 {
            write!(f, "\nhint: not listed here: {} more of them", self.unlisted)?;
        }
        Ok(())
    }
}

/// Why a file or folder could not be used, in words and without the system's number.
pub fn why(error: &io::Error) -> String {
    let said = error.to_string();
    let of_system = said.split(" (os error ").next().unwrap_or_default();
    match why_of_kind(error.kind()) {
        // It has words of its own, or the kind says less than the text.
        kind if error.get_ref().is_some() || kind.starts_with("uncategorized") => {
            of_system.to_owned()
        }
        kind => kind,
    }
}

/// The same of its kind alone, for an error whose text would name a file of ours.
pub fn why_of_kind(kind: io::ErrorKind) -> String {
    match kind {
        io::ErrorKind::NotFound => "there is no such file or folder".to_owned(),
        io::ErrorKind::IsADirectory => "it is a folder".to_owned(),
        io::ErrorKind::NotADirectory => "a part of its path is a file, not a folder".to_owned(),
        io::ErrorKind::StorageFull => "the disk is full".to_owned(),
        kind => kind.to_string(),
    }
}

/// Everything that stops a campaign, by class.
#[derive(Debug, thiserror::Error)]
pub enum Error {
    /// The command line asks for something that cannot be done.
    #[error("{0}")]
    Usage(Problems),
    /// A log cannot be read.
    #[error("{0}")]
    Input(Problems),
    /// The campaign file is invalid.
    #[error("{0}")]
    Campaign(Problems),
    /// A PDF of which readers show different things.
    #[error("{0}")]
    TwoReadings(Problems),
    /// A fault of ours.
    #[error("this is a fault in simmerline, not in your data: {}", shown(.0))]
    Internal(String),
}

/// The library's result.
pub type Result<T> = std::result::Result<T, Error>;

impl Error {
    /// The class in one word, for programs.
    pub fn class(&self) -> &'static str {
        match self {
            Error::Internal(_) => "internal",
            Error::Usage(_) => "usage",
            Error::Input(_) => "log",
            Error::Campaign(_) => "campaign-file",
            Error::TwoReadings(_) => "two-readings",
        }
    }

    /// The process's exit code for this class.
    pub fn exit_code(&self) -> u8 {
        match self {
            Error::Internal(_) => 1,
            Error::Usage(_) => 2,
            Error::Input(_) => 3,
            Error::Campaign(_) => 4,
            Error::TwoReadings(_) => 6,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_stops_a_file_is_said_without_the_number_of_the_system() {
        let missing = std::fs::read("nowhere/at/all").unwrap_err();
        assert_eq!(why(&missing), "there is no such file or folder");
        assert_eq!(
            why(&io::Error::other("a device or a pipe")),
            "a device or a pipe"
        );
        for number in 1..=133 {
            let said = why(&io::Error::from_raw_os_error(number));
            assert!(
                !said.contains("os error") && !said.contains("uncategorized"),
                "{said}"
            );
            assert!(!said.is_empty());
        }
    }
}
