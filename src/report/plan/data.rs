//! `NAME.DATE.plan.json`: what a field sheet follows from. The sheet carries it inside.

use serde::Serialize;

use crate::error::{Error, Result};
use crate::planning::Plan;

/// Name and version of the schema. Keys are only added within a version.
pub const SCHEMA: &str = "simmerline.plan/1";

#[derive(Serialize)]
struct PlanFile<'p> {
    schema: &'static str,
    campaign: &'p str,
    date: String,
    /// What is tested.
    kind: &'static str,
    /// Whether the logs so far gave a rating.
    rated: bool,
    provenance: Provenance<'p>,
}

#[derive(Serialize)]
struct Provenance<'p> {
    tool_version: &'static str,
    inputs: Vec<InputEntry<'p>>,
}

#[derive(Serialize)]
struct InputEntry<'p> {
    file: &'p str,
    sha256: &'p str,
    /// Length of the file.
    bytes: u64,
    /// It lay outside the campaign's folder.
    outside: bool,
}

/// The file as text.
///
/// # Errors
/// [`Error::Internal`] if a value has no JSON form.
pub fn plan_text(plan: &Plan) -> Result<String> {
    let inputs = plan.inputs.iter().map(|input| InputEntry {
        file: &input.name,
        sha256: &input.sha256,
        bytes: input.bytes,
        outside: plan.campaign.outside.contains(&input.name),
    });
    let file = PlanFile {
        schema: SCHEMA,
        campaign: &plan.campaign.name,
        date: plan.date.to_string(),
        kind: plan.kind.word(),
        rated: plan.is_rated,
        provenance: Provenance {
            tool_version: env!("CARGO_PKG_VERSION"),
            inputs: inputs.collect(),
        },
    };
    let text = serde_json::to_string_pretty(&file);
    text.map(|text| text + "\n")
        .map_err(|error| Error::Internal(error.to_string()))
}
