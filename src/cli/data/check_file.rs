//! What `check --format json` prints.

use std::path::Path;

use schemars::{JsonSchema, Schema};
use serde::Serialize;

use super::problem::{ProblemEntry, problem_entries};
use super::{schema_of, text_of};
use crate::campaign::kinds::{ProcedureKey, RunKind};
use crate::cli::check_procedures;
use crate::cli::check_verdict::verdict;
use crate::error::{Error, Result};
use crate::logs::unnamed::unnamed_logs;
use crate::procedure::Assessment;
use crate::procedure::caveat::Caveat;
use crate::procedure::finding::Level;
use crate::procedure::run::Run;
use crate::procedure::s580::reason::Reason;
use crate::procedure::s580::result::count_reasons;
use crate::procedure::stated::stated;
use crate::report::data::logs::{LogEntry, log_entry};

/// Name and version of the schema. Keys are only added within a version.
pub const SCHEMA: &str = "simmerline.check/1";

/// Its name as a URI, in its JSON Schema.
pub const SCHEMA_ID: &str = "urn:simmerline:check:1";

/// Codes of the levels, best first.
const LEVELS: [&str; 5] = [
    Level::Conforms.code(),
    Level::ConformsWithNotes.code(),
    Level::Indicative.code(),
    Level::NotValid.code(),
    Level::NoRating.code(),
];

/// What can be used so far of each campaign, and what is missing. Units are in the keys,
/// sentences are English, what is not there is null, never zero. Within a version of the schema
/// keys are added, never taken away or changed.
#[derive(Debug, Serialize, JsonSchema)]
#[schemars(title = "Check of solar cooker campaigns", extend("$id" = SCHEMA_ID))]
pub struct CheckFile {
    /// Name and version of this schema.
    #[schemars(extend("const" = SCHEMA))]
    schema: &'static str,
    /// Version of simmerline.
    tool_version: &'static str,
    /// With which the program ends.
    exit_code: u8,
    /// In the order of the command line.
    campaigns: Vec<CampaignEntry>,
}

/// A campaign: either what was found, or what stops it.
#[derive(Debug, Serialize, JsonSchema)]
pub struct CampaignEntry {
    /// As it was found from the command line.
    folder: String,
    /// 0, or the exit code of what stops it.
    exit_code: u8,
    /// Null where problems stop it.
    checked: Option<CheckedEntry>,
    /// What stops it; of each file at most twenty. Empty where nothing does.
    problems: Vec<ProblemEntry>,
}

/// What was found.
#[derive(Debug, Serialize, JsonSchema)]
struct CheckedEntry {
    /// The folder's name.
    name: String,
    /// Title of the campaign.
    campaign: String,
    /// Name of the cooker.
    cooker: String,
    /// The data are invented, to show what the program does.
    demonstration: bool,
    /// How far the rating conforms so far.
    #[schemars(extend("enum" = LEVELS))]
    level: &'static str,
    /// What weakens the number though it conforms no less for it: estimated irradiance, a sensor
    /// that lay flat, a single day.
    caveats: Vec<String>,
    /// What to do next.
    next: String,
    /// The number so far; null where there is none, or none that can be true.
    rating: Option<RatingEntry>,
    /// Intervals and days still missing; null where enough are used, or more would not help.
    missing: Option<String>,
    /// Intervals of all runs that heat water.
    intervals: usize,
    /// Those that are used, with irradiance.
    used: usize,
    /// Local dates with a used interval.
    days: usize,
    /// Of every kind.
    runs: Vec<RunEntry>,
    /// Of the rating and of the figures beside it.
    findings: Vec<FindingEntry>,
    /// Why intervals are set aside; one may be set aside for several reasons, and then counts
    /// for each.
    set_aside: Vec<AsideEntry>,
    /// Every figure that there is so far.
    figures: Vec<StatedEntry>,
    /// What the reader should know of the data.
    notices: Vec<String>,
    /// Files in its folder that look like logs and that no run names.
    unnamed_logs: Vec<String>,
    /// Files of keys that campaigns share, the nearest first.
    shared: Vec<SharedEntry>,
    /// How each log was read.
    logs: Vec<LogEntry>,
}

/// A file of shared keys.
#[derive(Debug, Serialize, JsonSchema)]
struct SharedEntry {
    /// As it was found from the command line.
    file: String,
    /// Those of its keys that hold for the campaign, such as `site.name`.
    keys: Vec<String>,
}

/// Standardised cooking power at 50 K.
#[derive(Debug, Serialize, JsonSchema)]
struct RatingEntry {
    /// W.
    ps50_w: f64,
    /// Half the width of its interval for 95 %, W.
    expanded_uncertainty_w: f64,
    /// All used intervals are of one day, so that what another day would do is not in it.
    one_day: bool,
}

/// A run.
#[derive(Debug, Serialize, JsonSchema)]
struct RunEntry {
    /// Its name: that of its log, with the date where one log has several.
    run: String,
    /// Local date, as 2026-03-14.
    #[schemars(extend("format" = "date"))]
    date: String,
    /// `water`, `cooling` or `dry`.
    kind: &'static str,
    /// Number of readings.
    readings: usize,
    /// Null for a run that heats no water.
    intervals: Option<usize>,
    /// Those that are used; null for a run that heats no water.
    used: Option<usize>,
}

/// Something that lowers a level.
#[derive(Debug, Serialize, JsonSchema)]
struct FindingEntry {
    /// The procedure that it is about, by its word in the campaign file.
    procedure: &'static str,
    /// The run that it is about; null where it is about all.
    run: Option<String>,
    /// What was found, by its code.
    code: &'static str,
    /// The same in words.
    text: String,
    /// What would remedy it.
    remedy: String,
    /// The best level that it allows.
    #[schemars(extend("enum" = LEVELS))]
    allows: &'static str,
}

/// A reason for which intervals are set aside.
#[derive(Debug, Serialize, JsonSchema)]
struct AsideEntry {
    /// The reason, by its code.
    reason: &'static str,
    /// Number of intervals.
    intervals: usize,
    /// The reason in words.
    text: String,
    /// What helps.
    helps: String,
}

/// A figure.
#[derive(Debug, Serialize, JsonSchema)]
struct StatedEntry {
    /// Which, by its code.
    figure: &'static str,
    /// In `unit`.
    value: f64,
    /// Ends of its interval for 95 %, in `unit`; null where nothing is said of it.
    interval_95: Option<[f64; 2]>,
    /// Empty for a number alone.
    unit: &'static str,
    /// What another day would do is not in its interval.
    one_day: bool,
    /// Its conditions were not those of its procedure.
    indicative: bool,
}

impl CheckFile {
    /// Of campaigns, and the exit code of the call.
    pub fn new(campaigns: Vec<CampaignEntry>, exit_code: u8) -> Self {
        CheckFile {
            schema: SCHEMA,
            tool_version: env!("CARGO_PKG_VERSION"),
            exit_code,
            campaigns,
        }
    }

    /// The JSON Schema that what is printed meets; the repository has it as
    /// `templates/schemas/check-1.schema.json`.
    pub fn schema() -> Schema {
        schema_of::<Self>()
    }

    /// As text.
    ///
    /// # Errors
    /// [`Error::Internal`] if a value has no JSON form.
    pub fn to_text(&self) -> Result<String> {
        text_of(self)
    }
}

impl CampaignEntry {
    /// Of a campaign in a folder: what was found, or what stops it.
    pub fn of(folder: &Path, outcome: &Result<Assessment>) -> Self {
        CampaignEntry {
            folder: folder.display().to_string(),
            exit_code: outcome.as_ref().err().map_or(0, Error::exit_code),
            checked: outcome.as_ref().ok().map(|found| checked(found, folder)),
            problems: outcome.as_ref().err().map_or(Vec::new(), problem_entries),
        }
    }
}

fn checked(assessment: &Assessment, folder: &Path) -> CheckedEntry {
    let tested = &assessment.tested;
    let campaign = &tested.campaign;
    let s580 = &assessment.s580;
    let zone = &campaign.site.time_zone;
    let rated = s580.rated.as_ref().filter(|_| !s580.is_not_valid());
    let accounts = tested.accounts.iter();
    // More intervals help nothing where the number cannot be true.
    let missing = s580.conformity.missing.as_ref();
    let missing = missing.filter(|_| !s580.is_not_valid());
    CheckedEntry {
        name: campaign.name.clone(),
        campaign: campaign.title.clone(),
        cooker: campaign.cooker.name.clone(),
        demonstration: campaign.demonstration,
        level: s580.conformity.level.code(),
        caveats: Caveat::of(assessment)
            .into_iter()
            .map(|caveat| caveat.describe().to_string())
            .collect(),
        next: verdict(assessment, folder).next.to_string(),
        rating: rated.map(|rated| RatingEntry {
            ps50_w: rated.rating.ps50_w,
            expanded_uncertainty_w: rated.uncertainty.half_width_w(),
            one_day: rated.uncertainty.is_of_one_day(),
        }),
        missing: missing.map(ToString::to_string),
        intervals: s580.intervals.len(),
        used: s580.used().count(),
        days: s580.dates.len(),
        runs: runs(assessment),
        findings: findings(assessment),
        set_aside: count_reasons(s580.intervals.iter())
            .into_iter()
            .map(|(reason, count)| aside(reason, count, assessment))
            .collect(),
        figures: figures(assessment),
        notices: assessment.notices.iter().map(ToString::to_string).collect(),
        unnamed_logs: unnamed_logs(campaign),
        shared: campaign
            .shared
            .iter()
            .map(|one| SharedEntry {
                file: one.path.display().to_string(),
                keys: one.holding.clone(),
            })
            .collect(),
        logs: accounts.map(|account| log_entry(account, zone)).collect(),
    }
}

fn runs(assessment: &Assessment) -> Vec<RunEntry> {
    let tested = &assessment.tested;
    let water = tested.runs.iter().zip(&assessment.s580.screenings);
    let water = water.map(|(run, screening)| RunEntry {
        readings: run.readings.time_us.len(),
        intervals: Some(screening.intervals),
        used: Some(screening.on_line),
        ..without_water(run)
    });
    let others = tested.cooling_runs.iter().chain(&tested.dry_runs);
    water.chain(others.map(without_water)).collect()
}

fn without_water(run: &Run) -> RunEntry {
    let readings = match run.plan.kind {
        RunKind::Dry => run.readings.vessel_c.as_ref().map(|of| of.time_us.len()),
        RunKind::Water | RunKind::Cooling => Some(run.readings.water_c.time_us.len()),
    };
    RunEntry {
        run: run.plan.label.clone(),
        date: run.date.to_string(),
        kind: run.plan.kind.word(),
        readings: readings.unwrap_or(0),
        intervals: None,
        used: None,
    }
}

fn findings(assessment: &Assessment) -> Vec<FindingEntry> {
    let of_rating = assessment.s580.conformity.findings.iter();
    let of_rating = of_rating.map(|one| FindingEntry {
        procedure: ProcedureKey::S580.word(),
        run: None,
        code: one.code.code(),
        text: one.text.to_string(),
        remedy: one.remedy.to_string(),
        allows: one.level.code(),
    });
    let others = check_procedures::findings(assessment).into_iter();
    let others = others.map(|one| FindingEntry {
        procedure: one.procedure.word(),
        run: one.run,
        code: one.code,
        text: one.text.to_string(),
        remedy: one.remedy.to_string(),
        allows: one.level.code(),
    });
    of_rating.chain(others).collect()
}

fn aside(reason: Reason, count: usize, assessment: &Assessment) -> AsideEntry {
    let estimate = assessment.tested.campaign.instruments.irradiance_estimate;
    AsideEntry {
        reason: reason.code(),
        intervals: count,
        text: reason.describe().to_string(),
        helps: reason.remedy(estimate).to_string(),
    }
}

fn figures(assessment: &Assessment) -> Vec<StatedEntry> {
    let all = stated(assessment).into_iter();
    all.map(|one| {
        let scale = one.key.scale();
        let interval = one.figure.map(|figure| figure.interval);
        StatedEntry {
            figure: one.key.code(),
            value: one.value * scale,
            interval_95: interval.map(|ends| [ends.lower * scale, ends.upper * scale]),
            unit: one.key.unit(),
            one_day: one.is_of_one_day,
            indicative: one.is_indicative,
        }
    })
    .collect()
}
