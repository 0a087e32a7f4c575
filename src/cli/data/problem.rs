//! What stops a campaign, as data.

use schemars::JsonSchema;
use serde::Serialize;

use crate::error::{Error, Problem};

/// What is wrong, where, and what mends it.
#[derive(Debug, Serialize, JsonSchema)]
pub struct ProblemEntry {
    /// File or folder; null for a fault of the program.
    file: Option<String>,
    /// Line of the file, from 1; null where it is about no line.
    line: Option<u64>,
    /// Column of a log, or key of the campaign file; null where it is about neither.
    item: Option<String>,
    /// What was found and what was expected, in English.
    what: String,
    /// What to do about it, in English; null where that is plain.
    hint: Option<String>,
}

/// The problems of an error, as many as it lists.
pub fn problem_entries(error: &Error) -> Vec<ProblemEntry> {
    match error {
        Error::Usage(problems)
        | Error::Input(problems)
        | Error::Campaign(problems)
        | Error::TwoReadings(problems) => problems.listed().iter().map(entry).collect(),
        Error::Internal(_) => vec![ProblemEntry {
            file: None,
            line: None,
            item: None,
            what: error.to_string(),
            hint: None,
        }],
    }
}

fn entry(problem: &Problem) -> ProblemEntry {
    ProblemEntry {
        file: Some(problem.place.path.display().to_string()),
        line: problem.place.line,
        item: problem.place.item.clone(),
        what: problem.what.clone(),
        hint: problem.hint.clone(),
    }
}
