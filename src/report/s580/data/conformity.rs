//! Limits, and whether a result conforms, as data: parts of `rating.json`.

use schemars::JsonSchema;
use serde::Serialize;

use crate::procedure::s580::conformity::Conformity;
use crate::procedure::s580::limits::S580Limit;
use crate::report::data::finding::{FindingEntry, LEVELS, finding_entry};

/// A limit of the practice, or the campaign's own in its place.
#[derive(Debug, Serialize, JsonSchema)]
pub struct LimitEntry {
    /// Reason or finding that breaking it gives.
    code: &'static str,
    /// Its key under `[limits]` of the campaign file; null where it cannot be changed.
    key: Option<&'static str>,
    /// In `unit`.
    limit: f64,
    /// Of the limit.
    unit: &'static str,
    /// Where it is from.
    source: &'static str,
    /// `requirement` or `recommendation`.
    standing: &'static str,
    /// The campaign has put its own in place of the practice's.
    changed: bool,
}

/// Whether the rating conforms to the practice.
#[derive(Debug, Serialize, JsonSchema)]
pub struct ConformityEntry {
    /// `conforms`, `conforms-with-notes` or `indicative`.
    #[schemars(extend("enum" = LEVELS))]
    level: &'static str,
    /// What lowers the level.
    findings: Vec<FindingEntry>,
    /// Intervals and days still missing, in words; null where none are.
    missing: Option<String>,
}

/// A limit.
pub fn limit_entry(row: &S580Limit) -> LimitEntry {
    LimitEntry {
        code: row.key.breach().code(),
        key: row.word,
        limit: row.value,
        unit: row.unit,
        source: row.source,
        standing: row.standing.word(),
        changed: row.changed,
    }
}

/// The level, and what lowers it.
pub fn conformity_entry(conformity: &Conformity) -> ConformityEntry {
    let findings = conformity.findings.iter();
    ConformityEntry {
        level: conformity.level.code(),
        findings: findings
            .map(|finding| finding_entry(finding.code.code(), finding))
            .collect(),
        missing: conformity.missing.as_ref().map(ToString::to_string),
    }
}
