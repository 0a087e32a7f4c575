//! The campaign file exactly as written: one struct a table, one field a key.
//!
//! Nothing is checked here beyond types and key names; [`super::check`] does that.

use serde::Deserialize;

use super::moment::WrittenMoment;

/// `campaign.toml`.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CampaignFile {
    pub campaign: CampaignTable,
    pub cooker: CookerTable,
    pub site: SiteTable,
    pub load: LoadTable,
    #[serde(default)]
    pub instruments: InstrumentTables,
    #[serde(default)]
    pub columns: ColumnTable,
    #[serde(default)]
    pub limits: LimitTable,
    #[serde(default)]
    pub run: Vec<RunTable>,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CampaignTable {
    pub title: String,
    #[serde(default)]
    pub demonstration: bool,
    pub procedure: Option<String>,
    pub tester: Option<String>,
    pub client: Option<String>,
    pub report_number: Option<String>,
    pub notes: Option<String>,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CookerTable {
    pub name: String,
    #[serde(rename = "type")]
    pub kind: String,
    pub intercept_area_m2: Option<f64>,
    pub aperture: Option<ApertureTable>,
    pub description: Option<String>,
    pub photo: Option<String>,
    pub cost: Option<f64>,
    pub currency: Option<String>,
    pub mass_kg: Option<f64>,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ApertureTable {
    pub shape: String,
    pub diameter_m: Option<f64>,
    pub width_m: Option<f64>,
    pub height_m: Option<f64>,
    pub sides: Option<u32>,
    pub across_corners_m: Option<f64>,
    pub points_m: Option<Vec<[f64; 2]>>,
    pub incidence_deg: Option<f64>,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct SiteTable {
    pub name: String,
    pub latitude_deg: f64,
    pub longitude_deg: f64,
    pub elevation_m: f64,
    pub pressure_hpa: Option<f64>,
    pub time_zone: String,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct LoadTable {
    pub water_kg: f64,
    #[serde(default = "one_vessel")]
    pub vessels: u32,
}

fn one_vessel() -> u32 {
    1
}

#[derive(Debug, Default, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct InstrumentTables {
    pub irradiance: IrradianceTable,
    pub water_temperature: InstrumentTable,
    pub ambient_temperature: InstrumentTable,
    pub water_mass: InstrumentTable,
    pub wind_speed: InstrumentTable,
}

#[derive(Debug, Default, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct IrradianceTable {
    pub plane: Option<String>,
    pub relative_uncertainty: Option<f64>,
    pub id: Option<String>,
    pub description: Option<String>,
}

#[derive(Debug, Default, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct InstrumentTable {
    pub uncertainty_k: Option<f64>,
    pub uncertainty_m_s: Option<f64>,
    pub relative_uncertainty: Option<f64>,
    pub id: Option<String>,
    pub description: Option<String>,
}

#[derive(Debug, Default, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct ColumnTable {
    pub time: Option<String>,
    pub water_temperature: Option<OneOrMore>,
    pub ambient_temperature: Option<String>,
    pub irradiance: Option<String>,
    pub wind_speed: Option<String>,
}

/// One header, or a list of them.
#[derive(Debug, Deserialize)]
#[serde(untagged)]
pub enum OneOrMore {
    One(String),
    More(Vec<String>),
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct RunTable {
    pub log: String,
    pub water_kg: Option<f64>,
    pub tracking_interval_min: Option<f64>,
    pub date: Option<WrittenMoment>,
    pub start: Option<WrittenMoment>,
    pub end: Option<WrittenMoment>,
    pub notes: Option<String>,
    #[serde(default)]
    pub exclude: Vec<ExcludeTable>,
}

#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ExcludeTable {
    pub from: WrittenMoment,
    pub to: WrittenMoment,
    pub reason: Option<String>,
}

/// Own limits; the keys are those of the practice's table, with a fixed water window.
#[derive(Debug, Default, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct LimitTable {
    pub water_above_ambient_k: Option<f64>,
    pub water_below_boiling_k: Option<f64>,
    pub water_min_c: Option<f64>,
    pub water_max_c: Option<f64>,
    pub ambient_min_c: Option<f64>,
    pub ambient_max_c: Option<f64>,
    pub irradiance_min_w_m2: Option<f64>,
    pub irradiance_max_w_m2: Option<f64>,
    pub irradiance_range_w_m2: Option<f64>,
    pub wind_mean_max_m_s: Option<f64>,
    pub wind_gust_m_s: Option<f64>,
    pub solar_time_start_h: Option<f64>,
    pub solar_time_end_h: Option<f64>,
}

impl LimitTable {
    /// The limits that are set, by key.
    pub fn entries(&self) -> Vec<(&'static str, f64)> {
        [
            ("water_above_ambient_k", self.water_above_ambient_k),
            ("water_below_boiling_k", self.water_below_boiling_k),
            ("water_min_c", self.water_min_c),
            ("water_max_c", self.water_max_c),
            ("ambient_min_c", self.ambient_min_c),
            ("ambient_max_c", self.ambient_max_c),
            ("irradiance_min_w_m2", self.irradiance_min_w_m2),
            ("irradiance_max_w_m2", self.irradiance_max_w_m2),
            ("irradiance_range_w_m2", self.irradiance_range_w_m2),
            ("wind_mean_max_m_s", self.wind_mean_max_m_s),
            ("wind_gust_m_s", self.wind_gust_m_s),
            ("solar_time_start_h", self.solar_time_start_h),
            ("solar_time_end_h", self.solar_time_end_h),
        ]
        .into_iter()
        .filter_map(|(key, value)| Some((key, value?)))
        .collect()
    }
}
