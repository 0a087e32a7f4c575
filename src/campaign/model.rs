//! A checked campaign: every value in range, every path known to exist.

use std::path::PathBuf;

use jiff::civil::Date;
use jiff::tz::TimeZone;

use super::aperture::Shape;
use super::moment::Moment;

/// All runs of one cooker in one configuration.
#[derive(Debug, Clone)]
pub struct Campaign {
    /// Folder name: the stem of every output file.
    pub name: String,
    /// The campaign file, as the user would name it.
    pub file: PathBuf,
    /// Its text.
    pub text: String,
    /// SHA-256 of the campaign file, lower-case hex.
    pub sha256: String,
    pub title: String,
    /// Invented data: every page says so.
    pub demonstration: bool,
    /// Test practice, by its number.
    pub procedure: String,
    pub tester: Option<String>,
    pub client: Option<String>,
    pub report_number: Option<String>,
    pub notes: Option<String>,
    pub cooker: Cooker,
    pub site: Site,
    /// Water in the vessels, kg, where a run does not say otherwise.
    pub water_kg: f64,
    pub vessels: u32,
    pub instruments: Instruments,
    pub columns: Columns,
    /// Own limits, in the order of their keys.
    pub limits: Vec<OwnLimit>,
    pub runs: Vec<RunPlan>,
}

/// The thing rated.
#[derive(Debug, Clone)]
pub struct Cooker {
    pub name: String,
    pub kind: CookerType,
    /// Area that collects sunlight, projected on the plane normal to the beam, m².
    pub intercept_area_m2: f64,
    /// The shape the area was computed from, with its incidence angle.
    pub aperture: Option<Aperture>,
    pub description: Option<String>,
    pub photo: Option<Photo>,
    pub cost: Option<f64>,
    pub currency: Option<String>,
    pub mass_kg: Option<f64>,
}

/// Aperture as measured.
#[derive(Debug, Clone)]
pub struct Aperture {
    pub shape: Shape,
    /// Angle between beam and aperture normal, degrees.
    pub incidence_deg: f64,
}

/// A picture of the cooker, read and recognised.
#[derive(Debug, Clone)]
pub struct Photo {
    /// As the campaign file names it.
    pub name: String,
    /// File name extension that matches the bytes: `png` or `jpg`.
    pub extension: &'static str,
    pub bytes: Vec<u8>,
}

/// Kind of cooker.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum CookerType {
    Box,
    Panel,
    Concentrating,
    Tube,
}

impl CookerType {
    /// Every kind.
    pub const ALL: [CookerType; 4] = [
        CookerType::Box,
        CookerType::Panel,
        CookerType::Concentrating,
        CookerType::Tube,
    ];

    /// The kind's word in the campaign file.
    pub fn word(self) -> &'static str {
        match self {
            CookerType::Box => "box",
            CookerType::Panel => "panel",
            CookerType::Concentrating => "concentrating",
            CookerType::Tube => "tube",
        }
    }

    /// The kind in words, for the report.
    pub fn describe(self) -> &'static str {
        match self {
            CookerType::Box => "Box cooker",
            CookerType::Panel => "Panel cooker",
            CookerType::Concentrating => "Concentrating cooker",
            CookerType::Tube => "Tube cooker",
        }
    }
}

/// Where the tests took place.
#[derive(Debug, Clone)]
pub struct Site {
    pub name: String,
    /// Degrees, north positive.
    pub latitude_deg: f64,
    /// Degrees, east positive.
    pub longitude_deg: f64,
    pub elevation_m: f64,
    /// Measured station pressure, hPa.
    pub pressure_hpa: Option<f64>,
    pub time_zone: TimeZone,
    /// The zone as the campaign file names it.
    pub time_zone_name: String,
}

/// Plane of the irradiance sensor.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Plane {
    /// Normal to the beam.
    Normal,
    /// Horizontal.
    Horizontal,
}

/// What was measured with what. Uncertainties are standard uncertainties (k = 1).
#[derive(Debug, Clone)]
pub struct Instruments {
    /// `None` where the campaign file does not say.
    pub irradiance_plane: Option<Plane>,
    pub irradiance: Instrument,
    pub water_temperature: Instrument,
    pub ambient_temperature: Instrument,
    pub water_mass: Instrument,
    pub wind_speed: Instrument,
}

/// One instrument as the tester describes it.
#[derive(Debug, Clone, Default)]
pub struct Instrument {
    pub id: Option<String>,
    pub description: Option<String>,
    pub uncertainty: Option<Uncertainty>,
}

/// Standard uncertainty (k = 1).
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Uncertainty {
    /// Fraction of the reading.
    Relative(f64),
    /// Kelvin.
    Kelvin(f64),
    /// Metres per second.
    MetresPerSecond(f64),
}

/// Headers of a log, where its own are not understood. Empty: the canonical ones.
#[derive(Debug, Clone, Default)]
pub struct Columns {
    pub time: Option<String>,
    pub water_temperature: Vec<String>,
    pub ambient_temperature: Option<String>,
    pub irradiance: Option<String>,
    pub wind_speed: Option<String>,
}

/// A limit the campaign sets itself.
#[derive(Debug, Clone, PartialEq)]
pub struct OwnLimit {
    /// Key under `[limits]`.
    pub key: &'static str,
    /// In the unit that the key names.
    pub value: f64,
}

/// One heating of one load, from one log.
#[derive(Debug, Clone)]
pub struct RunPlan {
    /// Line of the run in the campaign file.
    pub line: Option<u64>,
    /// The log's name as the campaign file gives it.
    pub log: String,
    pub path: PathBuf,
    pub water_kg: f64,
    /// Minutes between two re-aimings.
    pub tracking_interval_min: Option<f64>,
    pub date: Option<Date>,
    pub start: Option<Moment>,
    pub end: Option<Moment>,
    pub notes: Option<String>,
    pub exclusions: Vec<Exclusion>,
}

/// A span that the tester takes out.
#[derive(Debug, Clone)]
pub struct Exclusion {
    pub from: Moment,
    pub to: Moment,
    pub reason: Option<String>,
}

impl std::fmt::Display for Exclusion {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "{} to {}", self.from, self.to)
    }
}
