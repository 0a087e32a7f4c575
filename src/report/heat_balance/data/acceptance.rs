//! The acceptance half angle as data, for `rating.json`.

use schemars::JsonSchema;
use serde::Serialize;

use crate::procedure::Assessment;
use crate::report::data::finding::{FindingEntry, finding_entry};

/// How far the sun may stand off the axis before a tenth of the gain is lost, from how power falls
/// between two aimings that notes in the logs tell of.
#[derive(Debug, Serialize, JsonSchema)]
pub struct AcceptanceEntry {
    /// Number of stretches from one aiming to the next that count.
    stretches: usize,
    /// Number of runs with such a stretch.
    runs: usize,
    /// How far the sun stood off the axis at most, degrees.
    largest_angle_deg: f64,
    /// Null where the fall does not show.
    half_angle_deg: Option<f64>,
    /// Ends of its range with 95 %, degrees; null where the fall does not show.
    half_angle_range_deg: Option<[f64; 2]>,
    /// Probability that chance alone makes such a fall; null where it does not show.
    p: Option<f64>,
    /// Why it does not show.
    findings: Vec<FindingEntry>,
}

/// The acceptance half angle; `None` where no log tells when the cooker was aimed.
pub fn acceptance_entry(assessment: &Assessment) -> Option<AcceptanceEntry> {
    let acceptance = assessment.acceptance.as_ref()?;
    let found = acceptance.half_angle;
    let findings = acceptance.findings.iter();
    Some(AcceptanceEntry {
        stretches: acceptance.teeth,
        runs: acceptance.runs,
        largest_angle_deg: acceptance.largest_deg,
        half_angle_deg: found.map(|one| one.value_deg),
        half_angle_range_deg: found.map(|one| [one.range_deg.lower, one.range_deg.upper]),
        p: found.map(|one| one.p),
        findings: findings
            .map(|one| finding_entry(one.code.code(), one))
            .collect(),
    })
}
