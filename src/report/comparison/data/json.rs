//! `comparison.json`: the comparison as data, in full precision.

use schemars::generate::SchemaSettings;
use schemars::transform::RestrictFormats;
use schemars::{JsonSchema, Schema};
use serde::Serialize;

use super::pairs::{PairEntry, pair_entry};
use crate::comparison::Comparison;
use crate::error::{Error, Result};
use crate::procedure::Assessment;
use crate::report::comparison::names::{group_letter, letter, number};
use crate::report::data::finding::LEVELS;
use crate::report::number::report_number;

/// Name and version of the schema. Keys are only added within a version.
pub const SCHEMA: &str = "simmerline.comparison/1";

/// Its name as a URI, in its JSON Schema.
pub const SCHEMA_ID: &str = "urn:simmerline:comparison:1";

/// Pairs up to which the file is indented: of more, half of it would be blanks.
const INDENTED: usize = 1000;

/// Campaigns held against each other. Units are in the keys, numbers have full precision. What is
/// not known is null, never zero. Within a version of the schema keys are added, never taken away
/// or changed: a file by an older simmerline may lack the newest.
#[derive(Debug, Serialize, JsonSchema)]
#[schemars(title = "Comparison of solar cookers", extend("$id" = SCHEMA_ID))]
pub struct ComparisonFile {
    /// Name and version of this schema.
    #[schemars(extend("const" = SCHEMA))]
    schema: &'static str,
    /// Made of the inputs' hashes.
    report_number: String,
    /// Some of the data are invented, to show what the program does.
    demonstration: bool,
    /// Name of the campaign that all others are held against.
    baseline: Option<String>,
    /// Campaigns of different procedure or limits are compared.
    mixed: bool,
    /// Air of the heating times, °C; null where there is nothing to heat.
    ambient_c: Option<f64>,
    /// Target of the heating times, °C.
    target_c: f64,
    /// In the order in which they were named.
    campaigns: Vec<CampaignEntry>,
    /// Each with each, or each with the baseline.
    pairs: Vec<PairEntry>,
    /// Groups of two or more campaigns that cannot be told apart, of the most that can be compared
    /// with each other: two of these have a group in common exactly if they cannot. Null with a baseline, and where there are too many to read.
    groups: Option<Vec<GroupEntry>>,
    provenance: Provenance,
}

/// A campaign.
#[derive(Debug, Serialize, JsonSchema)]
struct CampaignEntry {
    /// A, B … Z, AA, AB … by its place.
    letter: String,
    /// Name of its folder.
    campaign: String,
    /// Name of the cooker.
    cooker: String,
    /// Title of the campaign.
    title: String,
    /// That of its own report.
    report_number: String,
    /// Its place by power, from 1; null without a rating, or with an impossible one.
    rank: Option<usize>,
    /// The rating is not physically impossible; null without a rating.
    valid: Option<bool>,
    /// Null without a rating. An impossible one is not to be used: see `valid`.
    ps50_w: Option<f64>,
    /// Half-width of its 95 % interval.
    ps50_expanded_uncertainty_w: Option<f64>,
    /// Of the line.
    intercept_w: Option<f64>,
    /// Of the line.
    slope_w_per_k: Option<f64>,
    /// Of the line.
    r_squared: Option<f64>,
    /// Intervals on the line.
    intervals: usize,
    /// Days with such intervals.
    days: usize,
    /// How far the rating conforms; `indicative` without one.
    #[schemars(extend("enum" = LEVELS))]
    conformity: &'static str,
    /// For each square metre of intercept area; null unless `valid`.
    ps50_w_per_m2: Option<f64>,
    /// For each kilogram of cooker; null unless `valid` and stated.
    ps50_w_per_kg: Option<f64>,
    /// For each unit of cost; null unless `valid` and stated.
    ps50_w_per_cost: Option<f64>,
    /// Of the cost.
    currency: Option<String>,
    /// Time to heat 2 kg of water from 20 °C to `target_c` at 700 W/m², s; null where it does not
    /// get there, or cannot be told.
    heating_2_kg_s: Option<f64>,
    /// Its 95 % range; the second is null where it has no end.
    heating_2_kg_95_s: Option<[Option<f64>; 2]>,
    /// Where its limits depart from those of the first campaign, in words.
    departures: Vec<String>,
    /// Mean over the used intervals.
    mean_irradiance_w_m2: Option<f64>,
    /// Mean over the used intervals.
    mean_ambient_c: Option<f64>,
    /// Mean over the used intervals.
    mean_wind_m_s: Option<f64>,
}

/// Campaigns that cannot be told apart.
#[derive(Debug, Serialize, JsonSchema)]
struct GroupEntry {
    /// a, b … z, aa …
    letter: String,
    /// Names of their folders, most power first.
    campaigns: Vec<String>,
}

/// What the file was made from, and by what.
#[derive(Debug, Serialize, JsonSchema)]
struct Provenance {
    /// Version of simmerline.
    tool_version: &'static str,
    /// Every file it rests on: of each campaign its file, logs and photo.
    inputs: Vec<InputEntry>,
}

/// A file that was read.
#[derive(Debug, Serialize, JsonSchema)]
struct InputEntry {
    /// Name of the campaign's folder.
    campaign: String,
    /// As the campaign file names it.
    file: String,
    /// SHA-256 of its bytes, 64 lower-case hex digits.
    sha256: String,
    /// Its length, bytes.
    bytes: u64,
    /// It lay outside the campaign's folder.
    outside: bool,
}

impl ComparisonFile {
    /// The file's content.
    pub fn new(comparison: &Comparison) -> Self {
        let name = |place: usize| comparison.campaigns[place].tested.campaign.name.clone();
        let inputs = comparison.campaigns.iter().flat_map(|one| {
            let campaign = &one.tested.campaign;
            one.tested.inputs().into_iter().map(|input| InputEntry {
                campaign: campaign.name.clone(),
                outside: campaign.outside.contains(&input.name),
                file: input.name,
                sha256: input.sha256,
                bytes: input.bytes,
            })
        });
        let campaigns = comparison.campaigns.iter().enumerate();
        ComparisonFile {
            schema: SCHEMA,
            report_number: number(comparison),
            demonstration: comparison
                .campaigns
                .iter()
                .any(|one| one.tested.campaign.demonstration),
            baseline: comparison.baseline.map(name),
            mixed: comparison.is_mixed(),
            ambient_c: comparison.ambient_c,
            target_c: comparison.target_c,
            campaigns: campaigns
                .map(|(place, one)| campaign_entry(comparison, place, one))
                .collect(),
            pairs: comparison
                .figures
                .iter()
                .map(|figures| pair_entry(comparison, figures))
                .collect(),
            groups: groups(comparison),
            provenance: Provenance {
                tool_version: env!("CARGO_PKG_VERSION"),
                inputs: inputs.collect(),
            },
        }
    }

    /// The JSON Schema (draft 2020-12) that every file meets; the repository has it as
    /// `templates/schemas/comparison-1.schema.json`.
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
        let text = match self.pairs.len() > INDENTED {
            true => serde_json::to_string(self),
            false => serde_json::to_string_pretty(self),
        };
        text.map(|text| text + "\n")
            .map_err(|error| Error::Internal(error.to_string()))
    }
}

/// Groups of several, in the order of their letters.
fn groups(comparison: &Comparison) -> Option<Vec<GroupEntry>> {
    let name = |rank: usize| {
        let place = comparison.ranking.ranked[rank];
        comparison.campaigns[place].tested.campaign.name.clone()
    };
    let several = comparison.groups.as_ref()?.iter();
    let several = several.filter(|group| group.len() > 1);
    let entry = |(index, group): (usize, &Vec<usize>)| GroupEntry {
        letter: group_letter(index),
        campaigns: group.iter().map(|rank| name(*rank)).collect(),
    };
    Some(several.enumerate().map(entry).collect())
}

fn campaign_entry(comparison: &Comparison, place: usize, one: &Assessment) -> CampaignEntry {
    let cooker = &one.tested.campaign.cooker;
    let standing = &comparison.standings[place];
    let valid_w = standing.valid_power().map(|power| power.value_w);
    let per = |quantity: Option<f64>| valid_w.zip(quantity).map(|(w, per)| w / per);
    let heating = comparison.heating[place];
    let around = one.s580.environment();
    CampaignEntry {
        letter: letter(place),
        campaign: one.tested.campaign.name.clone(),
        cooker: cooker.name.clone(),
        title: one.tested.campaign.title.clone(),
        report_number: report_number(one),
        rank: comparison.ranking.rank(place).map(|rank| rank + 1),
        valid: standing.power.map(|_| valid_w.is_some()),
        ps50_w: one.s580.rating().map(|rating| rating.ps50_w),
        ps50_expanded_uncertainty_w: one
            .s580
            .uncertainty()
            .as_ref()
            .map(|uncertainty| uncertainty.budget.expanded),
        intercept_w: one.s580.line().map(|line| line.intercept),
        slope_w_per_k: one.s580.line().map(|line| line.slope),
        r_squared: one.s580.line().and_then(|line| line.r_squared),
        intervals: one.s580.used().count(),
        days: one.s580.dates.len(),
        conformity: one.s580.conformity.level.code_in_files(),
        ps50_w_per_m2: per(Some(cooker.intercept_area_m2)),
        ps50_w_per_kg: per(cooker.mass_kg),
        ps50_w_per_cost: per(cooker.cost),
        currency: cooker.currency.clone(),
        heating_2_kg_s: heating.map(|time| time.best_s),
        heating_2_kg_95_s: heating.map(|time| [Some(time.shortest_s), time.longest_s]),
        departures: comparison.departures[place]
            .iter()
            .map(|departure| departure.by_key().to_string())
            .collect(),
        mean_irradiance_w_m2: around.irradiance.map(|around| around.mean),
        mean_ambient_c: around.ambient.map(|around| around.mean),
        mean_wind_m_s: around.wind.map(|around| around.mean),
    }
}
