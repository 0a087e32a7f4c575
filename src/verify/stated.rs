//! What the attached results state, as far as the rest is understood by it.

use jiff::civil::Date;
use serde::Deserialize;

use crate::campaign::find::CAMPAIGN_FILE;
use crate::campaign::kinds::RunKind;
use crate::comparison::gather::COUNT;
use crate::report::comparison::data::json::SCHEMA as COMPARISON;
use crate::report::comparison::outputs::COMPARISON_CSV;
use crate::report::data::rating_file::SCHEMA as RATING;
use crate::report::plan::data::SCHEMA as PLAN;
use crate::report::{RATING_ENDING, result_names};

/// An attached result.
pub struct ResultText {
    pub name: String,
    pub text: String,
}

/// What a document is about.
pub enum Subject {
    /// A report on a campaign.
    Report { campaign: String },
    /// A comparison of campaigns.
    Comparison {
        campaigns: Vec<String>,
        /// Place of the campaign that all others are held against.
        baseline: Option<usize>,
        is_mixed: bool,
    },
    /// A field sheet for a day.
    FieldSheet {
        campaign: String,
        date: Date,
        /// What is tested.
        kind: RunKind,
        /// Whether the logs so far gave a rating.
        is_rated: bool,
    },
}

impl Subject {
    /// In words.
    pub fn kind(&self) -> &'static str {
        match self {
            Subject::Report { .. } => "report",
            Subject::Comparison { .. } => "comparison",
            Subject::FieldSheet { .. } => "field sheet",
        }
    }

    /// Name of the results that are a table.
    pub fn table(&self) -> Option<String> {
        match self {
            Subject::Report { campaign } => Some(result_names(campaign).intervals),
            Subject::Comparison { .. } => Some(COMPARISON_CSV.to_owned()),
            Subject::FieldSheet { .. } => None,
        }
    }

    /// Whether each campaign's inputs are in a folder of its name.
    pub fn has_folders(&self) -> bool {
        matches!(self, Subject::Comparison { .. })
    }
}

/// What the results state.
pub struct Stated {
    /// Name of the attachment that has them.
    pub results: String,
    pub subject: Subject,
    pub tool_version: String,
    pub inputs: Vec<StatedInput>,
}

/// An input, as stated.
pub struct StatedInput {
    pub campaign: String,
    pub file: String,
    pub sha256: String,
    /// Its length; `None`: an older version did not state it.
    pub bytes: Option<u64>,
    /// It lay outside the campaign's folder.
    pub is_outside: bool,
}

/// What all results begin with.
#[derive(Deserialize)]
struct Head {
    schema: String,
    provenance: Provenance,
}

#[derive(Deserialize)]
struct Provenance {
    tool_version: String,
    inputs: Vec<InputEntry>,
}

#[derive(Deserialize)]
struct InputEntry {
    /// Where there are several.
    campaign: Option<String>,
    file: String,
    sha256: String,
    /// Older versions did not state it.
    bytes: Option<u64>,
    /// Older versions did not state it.
    #[serde(default)]
    outside: bool,
}

#[derive(Deserialize)]
struct ComparisonHead {
    baseline: Option<String>,
    mixed: bool,
    campaigns: Vec<CampaignName>,
}

#[derive(Deserialize)]
struct CampaignName {
    campaign: String,
}

#[derive(Deserialize)]
struct PlanHead {
    campaign: String,
    date: String,
    /// Older versions planned for water alone, and did not state it.
    kind: Option<String>,
    rated: bool,
}

/// Understands results.
///
/// # Errors
/// Why they are none, in words.
pub fn read_stated(results: &ResultText) -> Result<Stated, String> {
    let wrong = |error: serde_json::Error| format!("does not hold a report's results ({error})");
    let head: Head = serde_json::from_str(&results.text).map_err(wrong)?;
    let subject = match head.schema.as_str() {
        RATING => {
            let campaign = results.name.strip_suffix(RATING_ENDING);
            let campaign = campaign.ok_or("has the results of one campaign under another name")?;
            Subject::Report {
                campaign: campaign.to_owned(),
            }
        }
        COMPARISON => {
            let head: ComparisonHead = serde_json::from_str(&results.text).map_err(wrong)?;
            if !COUNT.contains(&head.campaigns.len()) {
                return Err("compares fewer or more campaigns than a comparison takes".to_owned());
            }
            let campaigns: Vec<String> =
                head.campaigns.into_iter().map(|one| one.campaign).collect();
            let baseline = head.baseline.map(|named| {
                let place = campaigns.iter().position(|campaign| *campaign == named);
                place.ok_or("names a baseline that is none of its campaigns")
            });
            Subject::Comparison {
                baseline: baseline.transpose()?,
                is_mixed: head.mixed,
                campaigns,
            }
        }
        PLAN => {
            let head: PlanHead = serde_json::from_str(&results.text).map_err(wrong)?;
            let date = head.date.parse();
            let kind = match &head.kind {
                None => RunKind::default(),
                Some(word) => RunKind::of_word(word).ok_or("states no kind of run")?,
            };
            Subject::FieldSheet {
                campaign: head.campaign,
                date: date.map_err(|_| "states no date")?,
                kind,
                is_rated: head.rated,
            }
        }
        other => {
            return Err(format!(
                "has the schema \"{}\", which version {} does not know: verify it with the version of simmerline that made it",
                other.escape_debug(),
                env!("CARGO_PKG_VERSION")
            ));
        }
    };
    let inputs = stated_inputs(&subject, head.provenance.inputs)?;
    Ok(Stated {
        results: results.name.clone(),
        subject,
        tool_version: head.provenance.tool_version,
        inputs,
    })
}

/// The inputs: of each campaign its file first.
fn stated_inputs(subject: &Subject, entries: Vec<InputEntry>) -> Result<Vec<StatedInput>, String> {
    let (names, is_single): (Vec<&String>, bool) = match subject {
        Subject::Report { campaign } | Subject::FieldSheet { campaign, .. } => {
            (vec![campaign], true)
        }
        Subject::Comparison { campaigns, .. } => (campaigns.iter().collect(), false),
    };
    let of_campaign = |entry: InputEntry| {
        let campaign = match (is_single, entry.campaign) {
            (true, None) => names[0].clone(),
            (false, Some(campaign)) if names.contains(&&campaign) => campaign,
            _ => return Err("states an input of no campaign, under provenance".to_owned()),
        };
        Ok(StatedInput {
            campaign,
            file: entry.file,
            sha256: entry.sha256,
            bytes: entry.bytes,
            is_outside: entry.outside,
        })
    };
    let inputs = entries
        .into_iter()
        .map(of_campaign)
        .collect::<Result<Vec<_>, _>>()?;
    for name in names {
        let first = inputs.iter().find(|input| input.campaign == *name);
        if first.is_none_or(|first| first.file != CAMPAIGN_FILE) {
            return Err(format!(
                "states no inputs, {CAMPAIGN_FILE} first, under provenance"
            ));
        }
    }
    Ok(inputs)
}
