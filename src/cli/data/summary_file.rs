//! `summary.json`: how a call of `report` ended, for other programs.

use schemars::{JsonSchema, Schema};
use serde::Serialize;

use super::problem::{ProblemEntry, problem_entries};
use super::{schema_of, text_of};
use crate::batch::brief::Brief;
use crate::batch::record::Record;
use crate::campaign::find::Unit;
use crate::error::{Error, Result};
use crate::report::files::Output;

/// Name and version of the schema. Keys are only added within a version.
pub const SCHEMA: &str = "simmerline.summary/1";
/// Its name as a URI, in its JSON Schema.
pub const SCHEMA_ID: &str = "urn:simmerline:summary:1";
/// Name of the file.
pub const FILE: &str = "summary.json";
/// The file's name before its ending.
pub const NAME: &str = "summary";

/// How a call of `report` ended: an entry a campaign, in their order. Sentences are English, what
/// is not there is null. Within a version of the schema keys are added, never taken away or
/// changed.
#[derive(Debug, Serialize, JsonSchema)]
#[schemars(title = "Summary of a call on solar cooker campaigns", extend("$id" = SCHEMA_ID))]
pub struct SummaryFile {
    /// Name and version of this schema.
    #[schemars(extend("const" = SCHEMA))]
    schema: &'static str,
    /// Version of simmerline.
    tool_version: &'static str,
    /// Campaigns whose outputs were made.
    made: usize,
    /// Campaigns whose outputs were as they would be made again.
    left_alone: usize,
    /// Campaigns that were stopped; what earlier calls wrote of them is as it was.
    failed: usize,
    campaigns: Vec<SummaryEntry>,
}

/// What came of a campaign.
#[derive(Debug, Serialize, JsonSchema)]
struct SummaryEntry {
    /// The folder's name.
    campaign: String,
    /// Folders between the root of the tree and the campaign's own, with / between them; empty
    /// for none.
    branch: String,
    /// The campaign's folder, as it was found from the command line.
    folder: String,
    outcome: Outcome,
    /// 0, or the exit code of what stopped it.
    exit_code: u8,
    /// What kind of problem stopped it; null where none did.
    error: Option<&'static str>,
    /// What stopped it; of each file at most twenty. Empty where nothing did.
    problems: Vec<ProblemEntry>,
    /// How far the rating conforms; null where the campaign was stopped.
    level: Option<&'static str>,
    /// Standardised cooking power at 50 K, W; null where there is none, or none that can be true.
    ps50_w: Option<f64>,
    /// Half the width of its interval for 95 %, W; null with it.
    expanded_uncertainty_w: Option<f64>,
    /// Paths of the outputs, from the folder in which this file is.
    outputs: Vec<String>,
}

/// What was done about a campaign.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Outcome {
    /// Its outputs were made.
    Made,
    /// Its outputs were as they would be made again.
    LeftAlone,
    /// It was stopped.
    Failed,
}

impl Default for SummaryFile {
    fn default() -> Self {
        SummaryFile {
            schema: SCHEMA,
            tool_version: env!("CARGO_PKG_VERSION"),
            made: 0,
            left_alone: 0,
            failed: 0,
            campaigns: Vec::new(),
        }
    }
}

impl SummaryFile {
    /// Adds a campaign whose outputs are there.
    pub fn add(&mut self, unit: &Unit, record: &Record, outcome: Outcome) {
        let Brief { standing, .. } = &record.brief;
        let power = standing.valid_power();
        let outputs = record.outputs.iter().map(|output| output.name.clone());
        self.push(SummaryEntry {
            level: Some(standing.level.code()),
            ps50_w: power.map(|power| power.value_w),
            expanded_uncertainty_w: power.map(|power| power.half_width_w),
            outputs: outputs.collect(),
            ..entry(unit, outcome)
        });
    }

    /// Adds a campaign that was stopped.
    pub fn add_failed(&mut self, unit: &Unit, error: &Error) {
        self.push(SummaryEntry {
            exit_code: error.exit_code(),
            error: Some(error.class()),
            problems: problem_entries(error),
            ..entry(unit, Outcome::Failed)
        });
    }

    fn push(&mut self, entry: SummaryEntry) {
        let count = match entry.outcome {
            Outcome::Made => &mut self.made,
            Outcome::LeftAlone => &mut self.left_alone,
            Outcome::Failed => &mut self.failed,
        };
        *count += 1;
        self.campaigns.push(entry);
    }

    /// The JSON Schema that the file meets; the repository has it as
    /// `templates/schemas/summary-1.schema.json`.
    pub fn schema() -> Schema {
        schema_of::<Self>()
    }

    /// The file.
    ///
    /// # Errors
    /// [`Error::Internal`] if a value has no JSON form.
    pub fn output(&self) -> Result<Output> {
        Ok(Output {
            name: FILE.to_owned(),
            bytes: (text_of(self)? + "\n").into_bytes(),
        })
    }
}

fn entry(unit: &Unit, outcome: Outcome) -> SummaryEntry {
    SummaryEntry {
        campaign: unit.name.clone(),
        branch: unit.branch.clone(),
        folder: unit.folder.display().to_string(),
        outcome,
        exit_code: 0,
        error: None,
        problems: Vec::new(),
        level: None,
        ps50_w: None,
        expanded_uncertainty_w: None,
        outputs: Vec::new(),
    }
}
