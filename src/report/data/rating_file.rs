//! `rating.json`: the whole result as data, in full precision.

use schemars::generate::SchemaSettings;
use schemars::transform::RestrictFormats;
use schemars::{JsonSchema, Schema};
use serde::Serialize;

use super::campaign::{
    InstrumentEntry, RunEntry, SiteEntry, StatedEntry, instrument_entries, run_entries, site_entry,
    stated_entry,
};
use super::cooking::{CookingEntry, DangerEntry, cooking_entry, danger_entry};
use super::logs::{LogEntry, log_entry};
use crate::error::{Error, Result};
use crate::procedure::Assessment;
use crate::report::box_cooker::data::{BoxEntry, box_entry};
use crate::report::dish::data::{DishEntry, dish_entry};
use crate::report::dry_vessel::data::{StagnationEntry, stagnation_entries};
use crate::report::dry_vessel::runs_data::{DryRunEntry, dry_run_entries};
use crate::report::efficiency::data::{EfficiencyEntry, efficiency_entry};
use crate::report::heat_balance::data::acceptance::{AcceptanceEntry, acceptance_entry};
use crate::report::heat_balance::data::balance::{BalanceEntry, balance_entry};
use crate::report::number::report_number;
use crate::report::s580::data::conformity::{
    ConformityEntry, LimitEntry, conformity_entry, limit_entry,
};
use crate::report::s580::data::intervals::{IntervalEntry, interval_entries};
use crate::report::s580::data::rating::{
    RatingEntry, RegressionEntry, rating_entry, regression_entry,
};
use crate::report::s580::data::uncertainty::{UncertaintyEntry, uncertainty_entry};

/// Name and version of the schema. Keys are only added within a version.
pub const SCHEMA: &str = "simmerline.rating/1";

/// Its name as a URI, in its JSON Schema.
pub const SCHEMA_ID: &str = "urn:simmerline:rating:1";

/// A campaign's rating by water-heating test, with all that it rests on. Units are in the
/// keys, numbers have full precision, times their offset from UTC. What was not measured is
/// null, never zero. Within a version of the schema keys are added, never taken away or
/// changed: a file by an older simmerline may lack the newest.
#[derive(Debug, Serialize, JsonSchema)]
#[schemars(title = "Rating of a solar cooker", extend("$id" = SCHEMA_ID))]
pub struct RatingFile {
    /// Name and version of this schema.
    #[schemars(extend("const" = SCHEMA))]
    schema: &'static str,
    /// Title of the campaign.
    campaign: String,
    /// Name of the cooker: the thing rated.
    cooker: String,
    /// The data are invented, to show what the program does.
    demonstration: bool,
    /// Test practice, by its number.
    procedure: String,
    /// The tester's, else one made of the inputs' hashes.
    report_number: String,
    /// Who tested.
    tester: Option<String>,
    /// For whom.
    client: Option<String>,
    stated: StatedEntry,
    /// The tester's.
    notes: Option<String>,
    /// `box`, `panel`, `concentrating` or `tube`.
    cooker_type: &'static str,
    /// Number of vessels.
    vessels: u32,
    site: SiteEntry,
    instruments: Vec<InstrumentEntry>,
    /// Area that collects sunlight, projected on the plane normal to the beam, m².
    intercept_area_m2: f64,
    /// Local boiling point of water, °C.
    boiling_point_c: f64,
    /// Those that heat water.
    runs: Vec<RunEntry>,
    /// The practice's, and the campaign's own in their place.
    limits: Vec<LimitEntry>,
    /// Null where no line can be drawn.
    rating: Option<RatingEntry>,
    /// Null where no line can be drawn.
    regression: Option<RegressionEntry>,
    /// How sure the rating is, instruments included; null without a rating.
    uncertainty: Option<UncertaintyEntry>,
    /// Gain from the sun and loss to the air; null where they cannot be fitted.
    heat_balance: Option<BalanceEntry>,
    /// The acceptance half angle; null where no log tells when the cooker was aimed.
    acceptance: Option<AcceptanceEntry>,
    /// Runs of the dry vessel.
    dry_runs: Vec<DryRunEntry>,
    /// Figures of merit of a box cooker; null where they do not apply.
    box_figures: Option<BoxEntry>,
    /// Figures of a concentrating cooker; null where they do not apply.
    dish_figures: Option<DishEntry>,
    /// Energy and exergy; null without a sound interval, or where they are left out.
    efficiency: Option<EfficiencyEntry>,
    estimates: EstimatesEntry,
    conformity: ConformityEntry,
    /// What the line means for cooking; null without a line.
    cooking: Option<CookingEntry>,
    /// Null where there is nothing to warn of. It takes the place of no food-safety rule.
    food_safety_warning: Option<DangerEntry>,
    /// Tests of the dry vessel.
    stagnation: Vec<StagnationEntry>,
    /// Of all runs, in order, used and set aside.
    intervals: Vec<IntervalEntry>,
    /// What the reader should know of the data, in words.
    notices: Vec<String>,
    provenance: Provenance,
}

/// What was estimated in place of a measurement; the budget has how sure that is.
#[derive(Debug, Serialize, JsonSchema)]
struct EstimatesEntry {
    /// The campaign file's word for the way; null where it was measured.
    irradiance: Option<&'static str>,
    /// By eye, on the Beaufort scale, in some run.
    wind: bool,
}

/// What the file was made from, and by what.
#[derive(Debug, Serialize, JsonSchema)]
struct Provenance {
    /// Version of simmerline.
    tool_version: &'static str,
    /// Every file it rests on: campaign file, files of shared keys, logs, photo.
    inputs: Vec<InputEntry>,
    /// How each log was read.
    logs: Vec<LogEntry>,
}

/// A file that was read.
#[derive(Debug, Serialize, JsonSchema)]
struct InputEntry {
    /// As the campaign file names it.
    file: String,
    /// SHA-256 of its bytes, 64 lower-case hex digits.
    sha256: String,
    /// Its length, bytes.
    bytes: u64,
    /// It lay outside the campaign's folder, or a link led out; it was read all the same
    /// because whoever made the file allowed it.
    outside: bool,
}

impl RatingFile {
    /// The file's content.
    pub fn new(assessment: &Assessment) -> Self {
        let campaign = &assessment.tested.campaign;
        let inputs = assessment.tested.inputs().into_iter();
        RatingFile {
            schema: SCHEMA,
            campaign: campaign.title.clone(),
            cooker: campaign.cooker.name.clone(),
            demonstration: campaign.demonstration,
            procedure: campaign.procedure.clone(),
            report_number: report_number(assessment),
            tester: campaign.tester.clone(),
            client: campaign.client.clone(),
            stated: stated_entry(campaign),
            notes: campaign.notes.clone(),
            cooker_type: campaign.cooker.kind.word(),
            vessels: campaign.vessels,
            site: site_entry(&campaign.site),
            instruments: instrument_entries(&campaign.instruments),
            intercept_area_m2: campaign.cooker.intercept_area_m2,
            boiling_point_c: assessment.tested.boiling_point_c,
            runs: run_entries(assessment),
            limits: assessment
                .s580
                .limits
                .rows
                .iter()
                .map(limit_entry)
                .collect(),
            rating: rating_entry(assessment),
            regression: regression_entry(assessment),
            uncertainty: uncertainty_entry(assessment),
            heat_balance: balance_entry(assessment),
            acceptance: acceptance_entry(assessment),
            dry_runs: dry_run_entries(assessment),
            box_figures: box_entry(assessment),
            dish_figures: dish_entry(assessment),
            efficiency: efficiency_entry(assessment),
            estimates: EstimatesEntry {
                irradiance: campaign
                    .instruments
                    .irradiance_estimate
                    .map(|way| way.word()),
                wind: assessment.tested.runs.iter().any(|run| run.estimates_wind),
            },
            conformity: conformity_entry(&assessment.s580.conformity, &assessment.s580.limits),
            cooking: assessment
                .prospect
                .as_ref()
                .map(|prospect| cooking_entry(prospect, campaign.impact.as_ref())),
            food_safety_warning: assessment.danger_zone.as_ref().map(danger_entry),
            stagnation: stagnation_entries(assessment),
            intervals: interval_entries(assessment),
            notices: assessment.notices.iter().map(ToString::to_string).collect(),
            provenance: Provenance {
                tool_version: env!("CARGO_PKG_VERSION"),
                inputs: inputs
                    .map(|input| InputEntry {
                        outside: campaign.outside.contains(&input.name),
                        file: input.name,
                        sha256: input.sha256,
                        bytes: input.bytes,
                    })
                    .collect(),
                logs: assessment
                    .tested
                    .accounts
                    .iter()
                    .map(|account| log_entry(account, &campaign.site.time_zone))
                    .collect(),
            },
        }
    }

    /// The JSON Schema (draft 2020-12) that every file meets; the repository has it as
    /// `templates/schemas/rating-1.schema.json`.
    pub fn schema() -> Schema {
        let settings = SchemaSettings::draft2020_12().for_serialize();
        let settings = settings.with_transform(RestrictFormats::default());
        settings.into_generator().into_root_schema_for::<Self>()
    }

    /// The file as text.
    ///
    /// # Errors
    /// [`Error::Internal`] if a value has no JSON form.
    pub fn to_text(&self) -> Result<String> {
        let text = serde_json::to_string_pretty(self);
        text.map(|text| text + "\n")
            .map_err(|error| Error::Internal(error.to_string()))
    }
}
