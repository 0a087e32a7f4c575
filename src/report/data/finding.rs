//! Findings as data: parts of `rating.json`.

use schemars::JsonSchema;
use serde::Serialize;

use crate::procedure::finding::{Finding, Level};

/// Codes of the levels of conformity.
pub const LEVELS: &[&str] = &[
    Level::Conforms.code(),
    Level::ConformsWithNotes.code(),
    Level::Indicative.code(),
    Level::NotValid.code(),
];

/// Something that lowers the level.
#[derive(Debug, Serialize, JsonSchema)]
pub struct FindingEntry {
    /// What was found, by its code.
    code: &'static str,
    /// The same in words.
    text: String,
    /// What would mend it.
    remedy: String,
    /// The best level that it allows.
    #[schemars(extend("enum" = LEVELS))]
    allows: &'static str,
}

/// A finding of any procedure, with its code.
pub fn finding_entry<C>(code: &'static str, finding: &Finding<C>) -> FindingEntry {
    FindingEntry {
        code,
        text: finding.text.to_string(),
        remedy: finding.remedy.to_string(),
        allows: finding.level.code_in_files(),
    }
}
