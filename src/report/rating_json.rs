//! `rating.json`: the whole result as data, in full precision.

use serde::Serialize;

use super::cooking_json::{
    CookingEntry, DangerEntry, StagnationEntry, cooking_entry, danger_entry, stagnation_entries,
};
use super::logs_json::{LogEntry, log_entry};
use super::uncertainty_json::{UncertaintyEntry, uncertainty_entry};
use crate::campaign::model::{Instrument, Instruments, Plane, Site, Uncertainty};
use crate::error::{Error, Result};
use crate::procedure::conformity::Finding;
use crate::procedure::intervals::Interval;
use crate::procedure::limits::Limit;
use crate::procedure::{Assessment, Run};
use crate::report::model::provenance::report_number;
use crate::stats;
use crate::units::rfc3339;

/// Name and version of the schema. Keys are only added within a version.
pub const SCHEMA: &str = "simmerline.rating/1";

/// The file. Units are in the keys; what was not measured is `null`.
#[derive(Debug, Serialize)]
pub struct RatingFile {
    schema: &'static str,
    campaign: String,
    cooker: String,
    demonstration: bool,
    procedure: String,
    report_number: String,
    tester: Option<String>,
    client: Option<String>,
    notes: Option<String>,
    cooker_type: &'static str,
    vessels: u32,
    site: SiteEntry,
    instruments: Vec<InstrumentEntry>,
    intercept_area_m2: f64,
    boiling_point_c: f64,
    runs: Vec<RunEntry>,
    limits: Vec<LimitEntry>,
    rating: Option<RatingEntry>,
    regression: Option<RegressionEntry>,
    uncertainty: Option<UncertaintyEntry>,
    estimates: EstimatesEntry,
    conformity: ConformityEntry,
    cooking: Option<CookingEntry>,
    food_safety_warning: Option<DangerEntry>,
    stagnation: Vec<StagnationEntry>,
    intervals: Vec<IntervalEntry>,
    notices: Vec<String>,
    provenance: Provenance,
}

/// What was estimated in place of a measurement; the budget has how sure that is.
#[derive(Debug, Serialize)]
struct EstimatesEntry {
    /// The campaign file's word for the way; `null` where it was measured.
    irradiance: Option<&'static str>,
    /// By eye, on the Beaufort scale, in some run.
    wind: bool,
}

#[derive(Debug, Serialize)]
struct SiteEntry {
    name: String,
    latitude_deg: f64,
    longitude_deg: f64,
    elevation_m: f64,
    pressure_hpa: Option<f64>,
    time_zone: String,
}

/// One instrument; at most one of its standard uncertainties (k = 1) is stated.
#[derive(Debug, Serialize)]
struct InstrumentEntry {
    quantity: &'static str,
    plane: Option<&'static str>,
    id: Option<String>,
    description: Option<String>,
    relative_uncertainty: Option<f64>,
    uncertainty_k: Option<f64>,
    uncertainty_m_s: Option<f64>,
    uncertainty_s: Option<f64>,
    /// Its class by the campaign file's word.
    class: Option<&'static str>,
    resolution_k: Option<f64>,
}

#[derive(Debug, Serialize)]
struct SpanEntry {
    from: String,
    to: String,
    reason: Option<String>,
}

#[derive(Debug, Serialize)]
struct RunEntry {
    log: String,
    /// What `intervals[].run` calls it: the log, with the date if the log holds several.
    name: String,
    weather_log: Option<String>,
    date: String,
    water_kg: f64,
    load_kg_m2: f64,
    readings: usize,
    intervals: usize,
    used: usize,
    tracking_interval_min: Option<f64>,
    notes: Option<String>,
    holes: Vec<SpanEntry>,
    excluded: Vec<SpanEntry>,
}

#[derive(Debug, Serialize)]
struct LimitEntry {
    code: &'static str,
    key: Option<&'static str>,
    limit: f64,
    unit: &'static str,
    source: &'static str,
    standing: &'static str,
    changed: bool,
}

#[derive(Debug, Serialize)]
struct RatingEntry {
    ps50_w: f64,
    ps50_standard_error_w: f64,
    ps50_confidence_95_w: [f64; 2],
    ps50_prediction_95_w: [f64; 2],
    extrapolated: bool,
}

#[derive(Debug, Serialize)]
struct RegressionEntry {
    intercept_w: f64,
    slope_w_per_k: f64,
    intercept_standard_error_w: f64,
    slope_standard_error_w_per_k: f64,
    covariance_w2_per_k: f64,
    r_squared: Option<f64>,
    residual_sd_w: f64,
    intervals: usize,
    days: usize,
}

#[derive(Debug, Serialize)]
struct ConformityEntry {
    level: &'static str,
    findings: Vec<FindingEntry>,
    missing: Option<String>,
}

#[derive(Debug, Serialize)]
struct FindingEntry {
    code: &'static str,
    text: String,
    remedy: String,
    allows: &'static str,
}

#[derive(Debug, Serialize)]
struct IntervalEntry {
    run: String,
    start: String,
    end: String,
    duration_s: f64,
    water_start_c: f64,
    water_end_c: f64,
    water_mean_c: f64,
    ambient_mean_c: Option<f64>,
    irradiance_mean_w_m2: Option<f64>,
    irradiance_min_w_m2: Option<f64>,
    irradiance_max_w_m2: Option<f64>,
    wind_mean_m_s: Option<f64>,
    solar_time_start_h: f64,
    solar_time_end_h: f64,
    cooking_power_w: f64,
    standardised_power_w: Option<f64>,
    temperature_difference_k: Option<f64>,
    used: bool,
    reasons: Vec<&'static str>,
}

#[derive(Debug, Serialize)]
struct Provenance {
    tool_version: &'static str,
    inputs: Vec<InputEntry>,
    logs: Vec<LogEntry>,
}

#[derive(Debug, Serialize)]
struct InputEntry {
    file: String,
    sha256: String,
}

impl RatingFile {
    /// The file's content.
    pub fn new(assessment: &Assessment) -> Self {
        let campaign = &assessment.campaign;
        let inputs = assessment.inputs().into_iter();
        RatingFile {
            schema: SCHEMA,
            campaign: campaign.title.clone(),
            cooker: campaign.cooker.name.clone(),
            demonstration: campaign.demonstration,
            procedure: campaign.procedure.clone(),
            report_number: report_number(assessment),
            tester: campaign.tester.clone(),
            client: campaign.client.clone(),
            notes: campaign.notes.clone(),
            cooker_type: campaign.cooker.kind.word(),
            vessels: campaign.vessels,
            site: site_entry(&campaign.site),
            instruments: instrument_entries(&campaign.instruments),
            intercept_area_m2: campaign.cooker.intercept_area_m2,
            boiling_point_c: assessment.boiling_point_c,
            runs: run_entries(assessment),
            limits: assessment.limits.rows.iter().map(limit_entry).collect(),
            rating: rating_entry(assessment),
            regression: regression_entry(assessment),
            uncertainty: uncertainty_entry(assessment),
            estimates: EstimatesEntry {
                irradiance: campaign
                    .instruments
                    .irradiance_estimate
                    .map(|way| way.word()),
                wind: assessment.runs.iter().any(|run| run.estimates_wind),
            },
            conformity: ConformityEntry {
                level: assessment.conformity.level.code(),
                findings: assessment
                    .conformity
                    .findings
                    .iter()
                    .map(finding_entry)
                    .collect(),
                missing: assessment
                    .conformity
                    .missing
                    .as_ref()
                    .map(ToString::to_string),
            },
            cooking: assessment
                .cooking
                .as_ref()
                .map(|cooking| cooking_entry(assessment, cooking)),
            food_safety_warning: assessment.danger_zone.as_ref().map(danger_entry),
            stagnation: stagnation_entries(assessment),
            intervals: interval_entries(assessment),
            notices: assessment.notices.iter().map(ToString::to_string).collect(),
            provenance: Provenance {
                tool_version: env!("CARGO_PKG_VERSION"),
                inputs: inputs
                    .map(|(file, sha256)| InputEntry { file, sha256 })
                    .collect(),
                logs: assessment
                    .accounts
                    .iter()
                    .map(|account| log_entry(account, &campaign.site.time_zone))
                    .collect(),
            },
        }
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

fn pair(interval: stats::line::Interval) -> [f64; 2] {
    [interval.lower, interval.upper]
}

fn site_entry(site: &Site) -> SiteEntry {
    SiteEntry {
        name: site.name.clone(),
        latitude_deg: site.latitude_deg,
        longitude_deg: site.longitude_deg,
        elevation_m: site.elevation_m,
        pressure_hpa: site.pressure_hpa,
        time_zone: site.time_zone_name.clone(),
    }
}

fn instrument_entries(instruments: &Instruments) -> Vec<InstrumentEntry> {
    let plane = instruments.irradiance_plane.map(|plane| match plane {
        Plane::Normal => "normal",
        Plane::Horizontal => "horizontal",
    });
    let entry = |quantity, instrument: &Instrument| {
        let stated = instrument.uncertainty;
        InstrumentEntry {
            quantity,
            plane: plane.filter(|_| quantity == "irradiance"),
            id: instrument.id.clone(),
            description: instrument.description.clone(),
            relative_uncertainty: match stated {
                Some(Uncertainty::Relative(fraction)) => Some(fraction),
                _ => None,
            },
            uncertainty_k: match stated {
                Some(Uncertainty::Kelvin(kelvin)) => Some(kelvin),
                _ => None,
            },
            uncertainty_m_s: match stated {
                Some(Uncertainty::MetresPerSecond(speed)) => Some(speed),
                _ => None,
            },
            uncertainty_s: match stated {
                Some(Uncertainty::Seconds(seconds)) => Some(seconds),
                _ => None,
            },
            class: instrument.class.map(|class| class.word),
            resolution_k: instrument.resolution_k,
        }
    };
    vec![
        entry("irradiance", &instruments.irradiance),
        entry("water_temperature", &instruments.water_temperature),
        entry("ambient_temperature", &instruments.ambient_temperature),
        entry("water_mass", &instruments.water_mass),
        entry("wind_speed", &instruments.wind_speed),
        entry("clock", &instruments.clock),
    ]
}

fn run_entries(assessment: &Assessment) -> Vec<RunEntry> {
    let zone = &assessment.campaign.site.time_zone;
    let entry = |run: &Run| RunEntry {
        log: run.plan.log.clone(),
        name: run.plan.label.clone(),
        weather_log: run.plan.weather.as_ref().map(|weather| weather.log.clone()),
        date: run.date.to_string(),
        water_kg: run.plan.water_kg,
        load_kg_m2: run.load_kg_m2,
        readings: run.readings.time_us.len(),
        intervals: run.intervals,
        used: run.used,
        tracking_interval_min: run.plan.tracking_interval_min,
        notes: run.plan.notes.clone(),
        holes: run
            .holes
            .iter()
            .map(|hole| SpanEntry {
                from: rfc3339(hole.from_us, zone),
                to: rfc3339(hole.to_us, zone),
                reason: None,
            })
            .collect(),
        excluded: run
            .excluded
            .iter()
            .zip(&run.plan.exclusions)
            .map(|(span, written)| SpanEntry {
                from: rfc3339(span.from_us, zone),
                to: rfc3339(span.to_us, zone),
                reason: written.reason.clone(),
            })
            .collect(),
    };
    assessment.runs.iter().map(entry).collect()
}

fn limit_entry(row: &Limit) -> LimitEntry {
    LimitEntry {
        code: row.code,
        key: (!row.key.is_empty()).then_some(row.key),
        limit: row.value,
        unit: row.unit,
        source: row.source,
        standing: row.standing.word(),
        changed: row.changed,
    }
}

fn rating_entry(assessment: &Assessment) -> Option<RatingEntry> {
    let rating = assessment.rating?;
    Some(RatingEntry {
        ps50_w: rating.ps50_w,
        ps50_standard_error_w: rating.standard_error_w,
        ps50_confidence_95_w: pair(rating.confidence_w),
        ps50_prediction_95_w: pair(rating.prediction_w),
        extrapolated: rating.is_extrapolated,
    })
}

fn regression_entry(assessment: &Assessment) -> Option<RegressionEntry> {
    let line = assessment.line?;
    Some(RegressionEntry {
        intercept_w: line.intercept,
        slope_w_per_k: line.slope,
        intercept_standard_error_w: line.intercept_standard_error,
        slope_standard_error_w_per_k: line.slope_standard_error,
        covariance_w2_per_k: line.covariance,
        r_squared: line.r_squared,
        residual_sd_w: line.residual_sd,
        intervals: line.points,
        days: assessment.used_dates().len(),
    })
}

fn finding_entry(finding: &Finding) -> FindingEntry {
    FindingEntry {
        code: finding.code,
        text: finding.text.to_string(),
        remedy: finding.remedy.to_string(),
        allows: finding.level.code(),
    }
}

fn interval_entries(assessment: &Assessment) -> Vec<IntervalEntry> {
    let zone = &assessment.campaign.site.time_zone;
    let entry = |interval: &Interval| IntervalEntry {
        run: assessment.runs[interval.run].plan.label.clone(),
        start: rfc3339(interval.start_us, zone),
        end: rfc3339(interval.end_us, zone),
        duration_s: interval.duration_s,
        water_start_c: interval.water_start_c,
        water_end_c: interval.water_end_c,
        water_mean_c: interval.water.mean,
        ambient_mean_c: interval.ambient.map(|ambient| ambient.mean),
        irradiance_mean_w_m2: interval.irradiance.map(|sun| sun.mean),
        irradiance_min_w_m2: interval.irradiance.map(|sun| sun.min),
        irradiance_max_w_m2: interval.irradiance.map(|sun| sun.max),
        wind_mean_m_s: interval.wind.map(|wind| wind.mean),
        solar_time_start_h: interval.solar_start_h,
        solar_time_end_h: interval.solar_end_h,
        cooking_power_w: interval.cooking_power_w,
        standardised_power_w: interval.standardised_power_w,
        temperature_difference_k: interval.difference_k,
        used: interval.is_used(),
        reasons: interval
            .reasons
            .iter()
            .map(|reason| reason.code())
            .collect(),
    };
    assessment.intervals.iter().map(entry).collect()
}
