//! A checked campaign: every value in range, every path known to exist.

use std::collections::BTreeSet;
use std::path::PathBuf;

use jiff::civil::{Date, Time};
use jiff::tz::TimeZone;

use super::aperture::Shape;
use super::classes::Class;
use super::kinds::{Procedures, RunKind};
use super::materials::VesselHeat;
use super::moment::Moment;
use super::shared_file::SharedFile;
use super::standard_uncertainty::Uncertainty;
use super::wishes::ReportWishes;
use crate::language::Message;
use crate::measure::Unit;

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
    /// Length of the file.
    pub bytes: u64,
    /// What it shares with other campaigns, the nearest first.
    pub shared: Vec<SharedFile>,
    pub title: String,
    /// Invented data: every page says so.
    pub demonstration: bool,
    /// Test practice, by its number.
    pub procedure: String,
    /// Those that are asked for.
    pub procedures: Procedures,
    pub tester: Option<String>,
    pub client: Option<String>,
    pub report_number: Option<String>,
    pub notes: Option<String>,
    pub report: ReportWishes,
    /// Expanded uncertainty (95 %) of Ps(50) that the tester aims at.
    pub target: Option<Target>,
    pub cooker: Cooker,
    pub site: Site,
    /// Water in the vessels, kg, where a run does not say otherwise; `None` where no run needs
    /// any and none is stated.
    pub water_kg: Option<f64>,
    pub vessels: u32,
    /// Heat that the vessels store; `None` where nothing is stated.
    pub vessel_heat: Option<VesselHeat>,
    pub instruments: Instruments,
    pub calibrations: Vec<Calibration>,
    /// How logs are to be read, where a run does not say otherwise.
    pub rules: LogRules,
    /// Own limits, in the order of their keys.
    pub limits: Vec<OwnLimit>,
    /// The uncertainty of what is held against a limit counts against it.
    pub has_guard_band: bool,
    pub runs: Vec<RunPlan>,
    pub stagnations: Vec<StagnationTest>,
    pub wishes: CookingWishes,
    pub impact: Option<Impact>,
    /// Logs and photo that lie outside its folder, by their names in the campaign file.
    pub outside: BTreeSet<String>,
}

/// A test of the dry, empty vessel: it is left in the sun until it gets no hotter.
#[derive(Debug, Clone)]
pub struct StagnationTest {
    pub date: Date,
    /// Local clock time of the plateau.
    pub time: Option<Time>,
    /// Highest steady temperature of the vessel, °C.
    pub plateau_c: f64,
    pub ambient_c: f64,
    pub light: StagnationLight,
    /// Standard uncertainty of the thermometer, K, as stated.
    pub uncertainty_k: Option<f64>,
    pub notes: Option<String>,
}

/// Where the irradiance of a stagnation test is from.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum StagnationLight {
    /// W/m².
    Measured(f64),
    /// The sky was cloudless: from the clear-sky model.
    ClearSky,
}

/// What the report is to say about cooking, where the campaign file asks for it.
#[derive(Debug, Clone, Default)]
pub struct CookingWishes {
    /// Amounts of water, kg; empty: the usual ones.
    pub water_kg: Vec<f64>,
    pub irradiance_w_m2: Option<f64>,
    pub ambient_c: Option<f64>,
    /// Temperature of water and food at the start, °C.
    pub start_c: Option<f64>,
    /// Temperatures whose time a dry run tells, °C; empty: the usual ones.
    pub reached_c: Vec<f64>,
}

/// The fuel that the cooker's heat stands in for, with the source of each assumption.
#[derive(Debug, Clone)]
pub struct Impact {
    pub fuel: String,
    /// Lower heating value, MJ/kg.
    pub heating_value_mj_kg: f64,
    pub heating_value_source: String,
    /// Share of that heat which the stove brings into the pot.
    pub stove_efficiency: f64,
    pub stove_efficiency_source: String,
    pub days_per_year: f64,
    pub days_source: String,
}

/// An expanded uncertainty to aim at.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Target {
    Watts(f64),
    /// Fraction of Ps(50).
    Fraction(f64),
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
    /// Mark or serial number that tells it from others.
    pub identification: Option<String>,
    /// In which condition it was tested.
    pub condition: Option<String>,
    pub received: Option<Date>,
    pub cost: Option<f64>,
    pub currency: Option<String>,
    pub mass_kg: Option<f64>,
    /// How far off its axis the sun may stand before light is lost, degrees.
    pub acceptance_half_angle_deg: Option<f64>,
    /// Surface of the vessels that loses heat, m².
    pub loss_area_m2: Option<f64>,
    /// Glass of a box, without its mirrors, m².
    pub glazing_area_m2: Option<f64>,
}

/// Aperture as measured.
#[derive(Debug, Clone)]
pub struct Aperture {
    pub shape: Shape,
    /// Angle between beam and aperture normal, degrees.
    pub incidence_deg: f64,
}

/// A picture of the cooker, as it stands in the report.
#[derive(Debug, Clone)]
pub struct Photo {
    /// As the campaign file names it.
    pub name: String,
    pub path: PathBuf,
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
    pub fn describe(self) -> Message {
        Message::new(format!("cooker-{}", self.word()))
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
    /// Linke turbidity of a clear sky, as stated.
    pub linke_turbidity: Option<f64>,
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

/// Irradiance that no sensor at the cooker measured in the plane normal to the beam.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum IrradianceEstimate {
    /// From a model, for spans stated to be cloudless.
    ClearSky,
    /// From a sensor that lies flat.
    FromHorizontal,
    /// From a station nearby.
    Station,
    /// From the short-circuit current of a solar panel.
    SolarPanel,
}

impl IrradianceEstimate {
    /// Every way.
    pub const ALL: [IrradianceEstimate; 4] = [
        IrradianceEstimate::ClearSky,
        IrradianceEstimate::FromHorizontal,
        IrradianceEstimate::Station,
        IrradianceEstimate::SolarPanel,
    ];

    /// Its word in the campaign file.
    pub fn word(self) -> &'static str {
        match self {
            IrradianceEstimate::ClearSky => "clear-sky",
            IrradianceEstimate::FromHorizontal => "from-horizontal",
            IrradianceEstimate::Station => "station",
            IrradianceEstimate::SolarPanel => "solar-panel",
        }
    }

    /// Where it is from, in words.
    pub fn describe(self) -> Message {
        Message::new(format!("estimated-{}", self.word()))
    }
}

/// What was measured with what. Uncertainties are standard uncertainties (k = 1).
#[derive(Debug, Clone)]
pub struct Instruments {
    /// `None` where the campaign file does not say.
    pub irradiance_plane: Option<Plane>,
    /// Irradiance is estimated, and how.
    pub irradiance_estimate: Option<IrradianceEstimate>,
    pub sensitivity: Sensitivity,
    pub irradiance: Instrument,
    pub water_temperature: Instrument,
    pub vessel_temperature: Instrument,
    pub ambient_temperature: Instrument,
    pub water_mass: Instrument,
    pub wind_speed: Instrument,
    pub clock: Instrument,
}

impl Instruments {
    /// Whether a sensor of irradiance stands beside the cooker.
    pub fn has_own_irradiance(&self) -> bool {
        use IrradianceEstimate::{ClearSky, Station};
        !matches!(self.irradiance_estimate, Some(ClearSky | Station))
    }
}

/// One instrument as the tester describes it.
#[derive(Debug, Clone, Default)]
pub struct Instrument {
    pub id: Option<String>,
    pub description: Option<String>,
    /// As stated.
    pub uncertainty: Option<Uncertainty>,
    /// Its class, whose uncertainty is taken where none is stated.
    pub class: Option<&'static Class>,
    /// Smallest step of its readings, K, as stated.
    pub resolution_k: Option<f64>,
}

/// How a log is to be read, where that cannot be seen from it.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct LogRules {
    pub columns: Columns,
    pub units: Units,
    /// The units are of this run alone, and count before those that its log states.
    pub units_come_first: bool,
    pub format: Format,
}

/// Headers of a log, where its own are not understood.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Columns {
    /// One column, or a date column and a clock column.
    pub time: Vec<String>,
    /// The sensors of each vessel.
    pub water_temperature: Vec<Vec<String>>,
    pub vessel_temperature: Option<String>,
    pub ambient_temperature: Option<String>,
    pub irradiance: Option<String>,
    pub wind_speed: Option<String>,
}

/// Units, where a log does not state them.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Units {
    /// Of a time that is a number: elapsed, or since 1970.
    pub time: Option<Unit>,
    pub water_temperature: Option<Unit>,
    pub vessel_temperature: Option<Unit>,
    pub ambient_temperature: Option<Unit>,
    pub irradiance: Option<Unit>,
    pub wind_speed: Option<Unit>,
}

/// How a log is written. `None`: as it looks.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Format {
    /// WHATWG label of the encoding.
    pub encoding: Option<String>,
    pub delimiter: Option<Delimiter>,
    pub decimal_mark: Option<char>,
    pub thousands_mark: Option<char>,
    /// Counted from 1.
    pub header_line: Option<u64>,
    pub date_order: Option<DateOrder>,
    /// Zone of the logger's clock, if not the site's.
    pub time_zone: Option<TimeZone>,
    /// Sheet of a spreadsheet.
    pub sheet: Option<String>,
}

/// What separates the cells of a row.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Delimiter {
    Comma,
    Semicolon,
    Tab,
    Pipe,
    /// Runs of spaces.
    Space,
    /// Runs of two spaces or more, so that a cell can hold single ones.
    WideSpace,
}

/// Order of day, month and year.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum DateOrder {
    YearMonthDay,
    DayMonthYear,
    MonthDayYear,
}

/// A second log of a run, from a weather station.
#[derive(Debug, Clone)]
pub struct WeatherPlan {
    /// The log's name as the campaign file gives it.
    pub log: String,
    pub path: PathBuf,
    /// Added to its times, µs.
    pub clock_offset_us: i64,
    pub rules: LogRules,
}

/// Calibration of one sensor: true value from its reading, both in the unit of the
/// canonical log.
#[derive(Debug, Clone, PartialEq)]
pub struct Calibration {
    /// Header of the sensor's column.
    pub column: String,
    pub curve: Curve,
}

/// From reading to true value.
#[derive(Debug, Clone, PartialEq)]
pub enum Curve {
    /// gain × reading + offset.
    Line { gain: f64, offset: f64 },
    /// Reading and true value, readings rising, straight lines between.
    Points(Vec<[f64; 2]>),
}

/// Irradiance sensors that are logged as a voltage or a current.
#[derive(Debug, Clone, Copy, Default, PartialEq)]
pub struct Sensitivity {
    /// µV per W/m².
    pub uv_per_w_m2: Option<f64>,
    /// Short-circuit current of a reference cell, mA per W/m².
    pub ma_per_w_m2: Option<f64>,
}

/// Key under `[limits]` that asks for a guard band.
pub const GUARD_KEY: &str = "guard";

/// A limit the campaign sets itself.
#[derive(Debug, Clone, PartialEq)]
pub struct OwnLimit {
    /// Key under `[limits]`.
    pub key: String,
    /// In the unit that the key names.
    pub value: f64,
}

/// One test of one load or of the dry vessel, from one log.
#[derive(Debug, Clone)]
pub struct RunPlan {
    /// Place of the run among the `[[run]]` tables, from 1; those of one pattern share it.
    pub number: usize,
    /// Its log was found by a pattern.
    pub is_matched: bool,
    /// Line of the run in the campaign file.
    pub line: Option<u64>,
    pub kind: RunKind,
    /// The log's name as the campaign file gives it.
    pub log: String,
    /// What the run is called: its log, with the date where a log holds several runs.
    pub label: String,
    pub path: PathBuf,
    pub rules: LogRules,
    pub weather: Option<WeatherPlan>,
    /// The log holds many days: each local date, and each side of a long gap, is a run.
    pub is_split: bool,
    /// Other runs name the same log: of a run with a `date` only that date counts.
    pub shares_log: bool,
    /// None of it, 0 kg, in a dry vessel.
    pub water_kg: f64,
    /// Water in each vessel, kg; empty where the vessels are not told apart.
    pub vessel_water_kg: Vec<f64>,
    /// Minutes between two re-aimings.
    pub tracking_interval_min: Option<f64>,
    pub date: Option<Date>,
    pub start: Option<Moment>,
    pub end: Option<Moment>,
    pub notes: Option<String>,
    pub exclusions: Vec<Exclusion>,
    /// Spans that the tester states to have been cloudless.
    pub cloudless: Vec<Span>,
}

/// From one time to another.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Span {
    pub from: Moment,
    pub to: Moment,
}

impl std::fmt::Display for Span {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "{} to {}", self.from, self.to)
    }
}

/// A span that the tester takes out.
#[derive(Debug, Clone)]
pub struct Exclusion {
    pub span: Span,
    pub reason: Option<String>,
}
