//! What a campaign wishes of its report: language, paper, units, and who answers for it.

use serde::{Deserialize, Serialize};

use crate::language::{Language, UnitSystem};

/// What the campaign file says of its report.
#[derive(Debug, Clone)]
pub struct ReportWishes {
    pub language: Language,
    pub paper: Paper,
    pub units: UnitSystem,
    pub runs_shown: RunsShown,
    /// Name and address of who answers for the test.
    pub laboratory: Option<String>,
    pub client_contact: Option<String>,
    /// What the client supplied of what the campaign file and the logs hold.
    pub client_data: Option<String>,
    pub authorised_by: Option<String>,
    /// How the cooker was chosen from among several.
    pub sampling: Option<String>,
    /// Results from somebody else, and whose.
    pub external_results: Option<String>,
}

/// Which runs the report shows one by one, each with a figure and its intervals.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum RunsShown {
    /// All, or where they are many, some of them.
    Some,
    All,
}

impl RunsShown {
    /// Every choice.
    pub const BOTH: [RunsShown; 2] = [RunsShown::Some, RunsShown::All];

    /// Its word in the campaign file.
    pub fn word(self) -> &'static str {
        match self {
            RunsShown::Some => "some",
            RunsShown::All => "all",
        }
    }
}

/// Paper of a report and of a field sheet.
#[derive(Debug, Clone, Copy, PartialEq, Eq, clap::ValueEnum, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Paper {
    A4,
    UsLetter,
}

impl Paper {
    /// Every paper.
    pub const ALL: [Paper; 2] = [Paper::A4, Paper::UsLetter];

    /// The paper's word in the campaign file and in the templates.
    pub fn word(self) -> &'static str {
        match self {
            Paper::A4 => "a4",
            Paper::UsLetter => "us-letter",
        }
    }
}
