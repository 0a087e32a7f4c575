//! The campaign file exactly as written: one struct a table, one field a key.
//!
//! Nothing is checked here beyond types and key names; [`super::check`] does that.

use std::collections::BTreeMap;
use std::fmt;

use serde::de::Visitor;
use serde::{Deserialize, Deserializer};

use super::measured;
use super::moment::WrittenMoment;

/// What stands to the right of a key of `[limits]`.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum LimitValue {
    Number(f64),
    Switch(bool),
}

impl<'de> Deserialize<'de> for LimitValue {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        deserializer.deserialize_any(LimitVisitor)
    }
}

struct LimitVisitor;

impl Visitor<'_> for LimitVisitor {
    type Value = LimitValue;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("a number, or true or false")
    }

    fn visit_f64<E>(self, value: f64) -> Result<LimitValue, E> {
        Ok(LimitValue::Number(value))
    }

    fn visit_i64<E>(self, value: i64) -> Result<LimitValue, E> {
        Ok(LimitValue::Number(value as f64))
    }

    fn visit_bool<E>(self, value: bool) -> Result<LimitValue, E> {
        Ok(LimitValue::Switch(value))
    }
}

/// `campaign.toml`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CampaignFile {
    pub campaign: CampaignTable,
    #[serde(default)]
    pub report: ReportTable,
    pub cooker: CookerTable,
    pub site: SiteTable,
    #[serde(default)]
    pub load: LoadTable,
    #[serde(default)]
    pub instruments: InstrumentTables,
    #[serde(default)]
    pub columns: ColumnTable,
    #[serde(default)]
    pub units: UnitTable,
    #[serde(default)]
    pub format: FormatTable,
    #[serde(default)]
    pub weather: WeatherTable,
    #[serde(default)]
    pub calibration: Vec<CalibrationTable>,
    /// Own limits, by keys that the procedure knows.
    #[serde(default)]
    pub limits: BTreeMap<String, LimitValue>,
    #[serde(default)]
    pub run: Vec<RunTable>,
    #[serde(default)]
    pub stagnation: Vec<StagnationTable>,
    #[serde(default)]
    pub cooking: CookingTable,
    pub impact: Option<ImpactTable>,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CampaignTable {
    pub title: String,
    #[serde(default)]
    pub demonstration: bool,
    pub procedure: Option<String>,
    pub procedures: Option<Vec<String>>,
    pub tester: Option<String>,
    pub client: Option<String>,
    pub report_number: Option<String>,
    pub notes: Option<String>,
    pub target_uncertainty_w: Option<f64>,
    pub target_relative_uncertainty: Option<f64>,
}

#[derive(Debug, Default, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct ReportTable {
    pub language: Option<String>,
    pub paper: Option<String>,
    pub units: Option<String>,
    pub runs_shown: Option<String>,
    pub laboratory: Option<String>,
    pub client_contact: Option<String>,
    pub client_data: Option<String>,
    pub authorised_by: Option<String>,
    pub sampling: Option<String>,
    pub external_results: Option<String>,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CookerTable {
    pub name: String,
    #[serde(rename = "type")]
    pub kind: String,
    #[serde(default, deserialize_with = "measured::optional::<_, measured::Area>")]
    pub intercept_area_m2: Option<f64>,
    pub aperture: Option<ApertureTable>,
    pub description: Option<String>,
    pub photo: Option<String>,
    pub identification: Option<String>,
    pub condition: Option<String>,
    pub received: Option<WrittenMoment>,
    pub cost: Option<f64>,
    pub currency: Option<String>,
    #[serde(default, deserialize_with = "measured::optional::<_, measured::Mass>")]
    pub mass_kg: Option<f64>,
    pub acceptance_half_angle_deg: Option<f64>,
    #[serde(default, deserialize_with = "measured::optional::<_, measured::Area>")]
    pub loss_area_m2: Option<f64>,
    #[serde(default, deserialize_with = "measured::optional::<_, measured::Area>")]
    pub glazing_area_m2: Option<f64>,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ApertureTable {
    pub shape: String,
    #[serde(
        default,
        deserialize_with = "measured::optional::<_, measured::Length>"
    )]
    pub diameter_m: Option<f64>,
    #[serde(
        default,
        deserialize_with = "measured::optional::<_, measured::Length>"
    )]
    pub width_m: Option<f64>,
    #[serde(
        default,
        deserialize_with = "measured::optional::<_, measured::Length>"
    )]
    pub height_m: Option<f64>,
    pub sides: Option<u32>,
    #[serde(
        default,
        deserialize_with = "measured::optional::<_, measured::Length>"
    )]
    pub across_corners_m: Option<f64>,
    #[serde(default, deserialize_with = "measured::points::<_, measured::Length>")]
    pub points_m: Option<Vec<[f64; 2]>>,
    pub incidence_deg: Option<f64>,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct SiteTable {
    pub name: String,
    pub latitude_deg: f64,
    pub longitude_deg: f64,
    #[serde(deserialize_with = "measured::one::<_, measured::Length>")]
    pub elevation_m: f64,
    pub pressure_hpa: Option<f64>,
    pub linke_turbidity: Option<f64>,
    pub time_zone: String,
}

#[derive(Debug, Default, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct LoadTable {
    #[serde(default, deserialize_with = "measured::optional::<_, measured::Mass>")]
    pub water_kg: Option<f64>,
    #[serde(default, deserialize_with = "measured::several::<_, measured::Mass>")]
    pub vessel_water_kg: Option<Vec<f64>>,
    pub vessels: Option<u32>,
    pub vessel_heat_capacity_j_per_k: Option<f64>,
    #[serde(default, deserialize_with = "measured::optional::<_, measured::Mass>")]
    pub vessel_mass_kg: Option<f64>,
    pub vessel_material: Option<String>,
}

#[derive(Debug, Default, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct InstrumentTables {
    pub irradiance: IrradianceTable,
    pub water_temperature: InstrumentTable,
    pub vessel_temperature: InstrumentTable,
    pub ambient_temperature: InstrumentTable,
    pub water_mass: InstrumentTable,
    pub wind_speed: InstrumentTable,
    pub clock: InstrumentTable,
}

#[derive(Debug, Default, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct IrradianceTable {
    pub plane: Option<String>,
    pub estimate: Option<String>,
    pub sensitivity_uv_per_w_m2: Option<f64>,
    pub sensitivity_ma_per_w_m2: Option<f64>,
    pub relative_uncertainty: Option<f64>,
    pub class: Option<String>,
    pub id: Option<String>,
    pub description: Option<String>,
}

#[derive(Debug, Default, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct InstrumentTable {
    #[serde(
        default,
        deserialize_with = "measured::optional::<_, measured::Difference>"
    )]
    pub uncertainty_k: Option<f64>,
    pub uncertainty_m_s: Option<f64>,
    pub uncertainty_s: Option<f64>,
    pub relative_uncertainty: Option<f64>,
    #[serde(
        default,
        deserialize_with = "measured::optional::<_, measured::Difference>"
    )]
    pub resolution_k: Option<f64>,
    pub class: Option<String>,
    pub id: Option<String>,
    pub description: Option<String>,
}

/// Headers of a log. A list of times is a date column and a clock column; a list in
/// the list of water temperatures holds the sensors of one vessel.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct ColumnTable {
    pub time: Option<OneOrMore<String>>,
    pub water_temperature: Option<OneOrMore<OneOrMore<String>>>,
    pub vessel_temperature: Option<String>,
    pub ambient_temperature: Option<String>,
    pub irradiance: Option<String>,
    pub wind_speed: Option<String>,
}

/// A list of items, or one of them. The list comes first: of a list of lists, the outer
/// one is this.
#[derive(Debug, Clone, Deserialize)]
#[serde(untagged)]
pub enum OneOrMore<T> {
    More(Vec<T>),
    One(T),
}

impl<T> OneOrMore<T> {
    /// As a list.
    pub fn into_vec(self) -> Vec<T> {
        match self {
            OneOrMore::One(item) => vec![item],
            OneOrMore::More(items) => items,
        }
    }
}

/// Units, where a log does not state them.
#[derive(Debug, Clone, Default, PartialEq, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct UnitTable {
    pub time: Option<String>,
    pub water_temperature: Option<String>,
    pub vessel_temperature: Option<String>,
    pub ambient_temperature: Option<String>,
    pub irradiance: Option<String>,
    pub wind_speed: Option<String>,
}

/// How a log is written, where that cannot be seen.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct FormatTable {
    pub encoding: Option<String>,
    pub delimiter: Option<String>,
    pub decimal_mark: Option<String>,
    pub thousands_mark: Option<String>,
    pub header_line: Option<u64>,
    pub date_order: Option<String>,
    pub time_zone: Option<String>,
    pub sheet: Option<String>,
}

/// How weather logs are read; what is not set is as for the other logs.
#[derive(Debug, Clone, Default, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct WeatherTable {
    pub columns: ColumnTable,
    pub units: UnitTable,
    pub format: FormatTable,
}

/// Calibration of one sensor, by its column.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CalibrationTable {
    pub column: String,
    pub gain: Option<f64>,
    pub offset: Option<f64>,
    pub points: Option<Vec<[f64; 2]>>,
}

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct RunTable {
    pub log: String,
    pub kind: Option<String>,
    pub weather: Option<String>,
    pub weather_clock_offset_s: Option<f64>,
    pub split: Option<String>,
    pub sheet: Option<String>,
    #[serde(default)]
    pub columns: ColumnTable,
    #[serde(default)]
    pub units: UnitTable,
    #[serde(default)]
    pub format: FormatTable,
    #[serde(default, deserialize_with = "measured::optional::<_, measured::Mass>")]
    pub water_kg: Option<f64>,
    #[serde(default, deserialize_with = "measured::several::<_, measured::Mass>")]
    pub vessel_water_kg: Option<Vec<f64>>,
    pub tracking_interval_min: Option<f64>,
    pub date: Option<WrittenMoment>,
    pub start: Option<WrittenMoment>,
    pub end: Option<WrittenMoment>,
    pub notes: Option<String>,
    #[serde(default)]
    pub exclude: Vec<ExcludeTable>,
    #[serde(default)]
    pub cloudless: Vec<CloudlessTable>,
}

/// A span that the tester states to have been cloudless.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CloudlessTable {
    pub from: WrittenMoment,
    pub to: WrittenMoment,
}

/// A test of the dry, empty vessel.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct StagnationTable {
    pub date: WrittenMoment,
    pub time: Option<WrittenMoment>,
    pub plateau_c: Option<f64>,
    pub plateau_f: Option<f64>,
    pub ambient_c: Option<f64>,
    pub ambient_f: Option<f64>,
    pub irradiance_w_m2: Option<f64>,
    #[serde(default)]
    pub cloudless: bool,
    #[serde(
        default,
        deserialize_with = "measured::optional::<_, measured::Difference>"
    )]
    pub uncertainty_k: Option<f64>,
    pub notes: Option<String>,
}

/// What the report is to say about cooking.
#[derive(Debug, Default, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct CookingTable {
    #[serde(default, deserialize_with = "measured::several::<_, measured::Mass>")]
    pub water_kg: Option<Vec<f64>>,
    pub irradiance_w_m2: Option<f64>,
    #[serde(
        default,
        deserialize_with = "measured::optional::<_, measured::Temperature>"
    )]
    pub ambient_c: Option<f64>,
    #[serde(
        default,
        deserialize_with = "measured::optional::<_, measured::Temperature>"
    )]
    pub start_c: Option<f64>,
    #[serde(
        default,
        deserialize_with = "measured::several::<_, measured::Temperature>"
    )]
    pub reached_c: Option<Vec<f64>>,
}

/// Fuel that the cooker stands in for.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ImpactTable {
    pub fuel: String,
    pub heating_value_mj_kg: f64,
    pub heating_value_source: String,
    pub stove_efficiency: f64,
    pub stove_efficiency_source: String,
    pub days_per_year: f64,
    pub days_source: String,
}

#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ExcludeTable {
    pub from: WrittenMoment,
    pub to: WrittenMoment,
    pub reason: Option<String>,
}
