//! The one invented campaign of the tests: its cooker, its place and its water.

/// The campaign, with what a test may want otherwise.
pub struct Invented<'t> {
    pub cooker_type: &'t str,
    pub intercept_area_m2: f64,
    pub latitude_deg: f64,
    pub longitude_deg: f64,
    pub time_zone: &'t str,
    pub water_kg: f64,
    /// Tables of instruments, as the file has them.
    pub instruments: &'t str,
}

impl Default for Invented<'_> {
    fn default() -> Self {
        Invented {
            cooker_type: "concentrating",
            intercept_area_m2: 1.0,
            latitude_deg: -20.0,
            longitude_deg: 0.0,
            time_zone: "UTC",
            water_kg: 7.0,
            instruments: "[instruments.irradiance]\nplane = \"normal\"\n",
        }
    }
}

impl Invented<'_> {
    /// The campaign file, with a run for each log.
    pub fn text(&self, logs: &[&str]) -> String {
        let runs = logs
            .iter()
            .map(|log| format!("\n[[run]]\nlog = \"{log}\"\n"));
        format!(
            r#"# Invented data, made by tests/kit/campaign.rs
[campaign]
title = "Mallee trough, bare pot"
demonstration = true
tester = "N. Nobody (invented)"

[cooker]
name = "Mallee trough"
type = "{}"
intercept_area_m2 = {:?}

[site]
name = "Nowhere flats (invented)"
latitude_deg = {:?}
longitude_deg = {:?}
elevation_m = 100
time_zone = "{}"

[load]
water_kg = {:?}

{}{}"#,
            self.cooker_type,
            self.intercept_area_m2,
            self.latitude_deg,
            self.longitude_deg,
            self.time_zone,
            self.water_kg,
            self.instruments,
            runs.collect::<String>()
        )
    }
}
