//! What was tested where, with what, as data: parts of `rating.json`.

use schemars::JsonSchema;
use serde::Serialize;

use crate::campaign::Campaign;
use crate::campaign::model::{Instrument, Instruments, Plane, Site};
use crate::campaign::standard_uncertainty::Uncertainty;
use crate::procedure::Assessment;
use crate::units::rfc3339;

/// Where it was tested.
#[derive(Debug, Serialize, JsonSchema)]
pub struct SiteEntry {
    /// Of the place.
    name: String,
    /// North positive, degrees.
    latitude_deg: f64,
    /// East positive, degrees.
    longitude_deg: f64,
    /// Above sea level, m.
    elevation_m: f64,
    /// Air pressure, hPa; null where it was not measured and follows from the elevation.
    pressure_hpa: Option<f64>,
    /// IANA name, or offset from UTC, as the campaign file has it.
    time_zone: String,
}

/// One instrument; at most one of its standard uncertainties (k = 1) is stated, the others
/// are null.
#[derive(Debug, Serialize, JsonSchema)]
pub struct InstrumentEntry {
    /// `irradiance`, `water_temperature`, `ambient_temperature`, `water_mass`, `wind_speed`
    /// or `clock`.
    quantity: &'static str,
    /// Of an irradiance sensor: `normal` to the beam, or `horizontal`.
    plane: Option<&'static str>,
    /// What the campaign file calls it; campaigns that share an instrument give it one id.
    id: Option<String>,
    /// The tester's.
    description: Option<String>,
    /// Standard uncertainty as a fraction of the reading.
    relative_uncertainty: Option<f64>,
    /// Standard uncertainty of a temperature, K.
    uncertainty_k: Option<f64>,
    /// Standard uncertainty of a wind speed, m/s.
    uncertainty_m_s: Option<f64>,
    /// Standard uncertainty of a time, s.
    uncertainty_s: Option<f64>,
    /// Its class by the campaign file's word.
    class: Option<&'static str>,
    /// Smallest step that it shows, K.
    resolution_k: Option<f64>,
}

/// A part of a run.
#[derive(Debug, Serialize, JsonSchema)]
struct SpanEntry {
    /// Local time with its offset from UTC.
    #[schemars(extend("format" = "date-time"))]
    from: String,
    /// Local time with its offset from UTC.
    #[schemars(extend("format" = "date-time"))]
    to: String,
    /// Why, in the tester's words; null where none was given.
    reason: Option<String>,
}

/// Who answers for the report, and what they state of the cooker as tested; null where the
/// campaign file does not say.
#[derive(Debug, Serialize, JsonSchema)]
pub struct StatedEntry {
    /// Name and address of the laboratory.
    laboratory: Option<String>,
    /// How to reach the client.
    client_contact: Option<String>,
    /// What the client supplied of what the campaign file and the logs hold.
    client_data: Option<String>,
    /// Who authorises the report.
    authorised_by: Option<String>,
    /// How the cooker was chosen from among several.
    sampling: Option<String>,
    /// Results that somebody else measured, and who.
    external_results: Option<String>,
    /// Mark or serial number of the cooker.
    cooker_identification: Option<String>,
    /// In which condition it was tested.
    cooker_condition: Option<String>,
    /// Local date on which it came to the tester.
    #[schemars(extend("format" = "date"))]
    cooker_received: Option<String>,
}

/// What the campaign file states for the report.
pub fn stated_entry(campaign: &Campaign) -> StatedEntry {
    let (report, cooker) = (&campaign.report, &campaign.cooker);
    StatedEntry {
        laboratory: report.laboratory.clone(),
        client_contact: report.client_contact.clone(),
        client_data: report.client_data.clone(),
        authorised_by: report.authorised_by.clone(),
        sampling: report.sampling.clone(),
        external_results: report.external_results.clone(),
        cooker_identification: cooker.identification.clone(),
        cooker_condition: cooker.condition.clone(),
        cooker_received: cooker.received.map(|date| date.to_string()),
    }
}

/// One heating of one load on one day.
#[derive(Debug, Serialize, JsonSchema)]
pub struct RunEntry {
    /// The log, as the campaign file names it.
    log: String,
    /// What `intervals[].run` calls it: the log, with the date if the log holds several.
    name: String,
    /// Log of a weather station, if the weather comes from one.
    weather_log: Option<String>,
    /// Local date.
    #[schemars(extend("format" = "date"))]
    date: String,
    /// Water in all vessels, kg.
    water_kg: f64,
    /// Water over intercept area, kg/m².
    load_kg_m2: f64,
    /// Number of readings that count.
    readings: usize,
    /// Number of intervals, used and set aside.
    intervals: usize,
    /// Number of intervals on the line.
    used: usize,
    /// Number of intervals that break no limit, but have no irradiance.
    not_normalised: usize,
    /// Time between two re-aimings, min; null where it is not stated.
    tracking_interval_min: Option<f64>,
    /// Local times at which a note in the log says that the cooker was turned to the sun, with
    /// their offset from UTC.
    aimed: Vec<String>,
    /// Root mean square of the water temperature that the line predicts minus that measured,
    /// K; null where nothing of the run is on the line.
    predicted_rms_k: Option<f64>,
    /// The tester's.
    notes: Option<String>,
    /// Stretches that no interval covers.
    holes: Vec<SpanEntry>,
    /// Stretches that the tester took out.
    excluded: Vec<SpanEntry>,
}

/// The place of the tests.
pub fn site_entry(site: &Site) -> SiteEntry {
    SiteEntry {
        name: site.name.clone(),
        latitude_deg: site.latitude_deg,
        longitude_deg: site.longitude_deg,
        elevation_m: site.elevation_m,
        pressure_hpa: site.pressure_hpa,
        time_zone: site.time_zone_name.clone(),
    }
}

/// The instruments, one a quantity.
pub fn instrument_entries(instruments: &Instruments) -> Vec<InstrumentEntry> {
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

/// The runs, in the campaign's order.
pub fn run_entries(assessment: &Assessment) -> Vec<RunEntry> {
    let zone = &assessment.tested.campaign.site.time_zone;
    let entry = |index: usize| {
        let (run, screening) = (
            &assessment.tested.runs[index],
            &assessment.s580.screenings[index],
        );
        RunEntry {
            log: run.plan.log.clone(),
            name: run.plan.label.clone(),
            weather_log: run.plan.weather.as_ref().map(|weather| weather.log.clone()),
            date: run.date.to_string(),
            water_kg: run.plan.water_kg,
            load_kg_m2: run.load_kg_m2,
            readings: run.readings.time_us.len(),
            intervals: screening.intervals,
            used: screening.on_line,
            not_normalised: screening.not_normalised,
            tracking_interval_min: run.plan.tracking_interval_min,
            aimed: run
                .readings
                .aimed_us
                .iter()
                .map(|time_us| rfc3339(*time_us, zone))
                .collect(),
            predicted_rms_k: assessment.s580.predicted[index]
                .as_ref()
                .map(|predicted| predicted.rms_k),
            notes: run.plan.notes.clone(),
            holes: screening
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
        }
    };
    (0..assessment.tested.runs.len()).map(entry).collect()
}
