//! What `simmerline new` writes shows every key.

use simmerline::campaign::model::GUARD_KEY;
use simmerline::campaign::template::CAMPAIGN_TEMPLATE;
use simmerline::procedure::s580::limits::own_rows;

/// Every table and key of the campaign file.
const KEYS: [&str; 147] = [
    "kind",
    "procedures",
    "loss_area_m2",
    "glazing_area_m2",
    "vessel_heat_capacity_j_per_k",
    "vessel_mass_kg",
    "vessel_material",
    "vessel_temperature",
    "reached_c",
    "units",
    "format",
    "weather",
    "calibration",
    "vessel_water_kg",
    "sensitivity_uv_per_w_m2",
    "sensitivity_ma_per_w_m2",
    "encoding",
    "delimiter",
    "decimal_mark",
    "thousands_mark",
    "header_line",
    "date_order",
    "sheet",
    "column",
    "gain",
    "offset",
    "points",
    "weather_clock_offset_s",
    "split",
    "campaign",
    "cooker",
    "site",
    "load",
    "instruments",
    "columns",
    "limits",
    "run",
    "title",
    "demonstration",
    "procedure",
    "tester",
    "client",
    "report_number",
    "notes",
    "name",
    "type",
    "intercept_area_m2",
    "aperture",
    "description",
    "photo",
    "cost",
    "currency",
    "mass_kg",
    "shape",
    "diameter_m",
    "width_m",
    "height_m",
    "sides",
    "across_corners_m",
    "points_m",
    "incidence_deg",
    "latitude_deg",
    "longitude_deg",
    "elevation_m",
    "pressure_hpa",
    "time_zone",
    "water_kg",
    "vessels",
    "irradiance",
    "water_temperature",
    "ambient_temperature",
    "water_mass",
    "wind_speed",
    "clock",
    "class",
    "resolution_k",
    "uncertainty_s",
    "target_uncertainty_w",
    "target_relative_uncertainty",
    "plane",
    "relative_uncertainty",
    "id",
    "uncertainty_k",
    "uncertainty_m_s",
    "time",
    "log",
    "tracking_interval_min",
    "date",
    "start",
    "end",
    "exclude",
    "from",
    "to",
    "reason",
    "water_above_ambient_k",
    "water_below_boiling_k",
    "water_min_c",
    "water_max_c",
    "ambient_min_c",
    "ambient_max_c",
    "irradiance_min_w_m2",
    "irradiance_max_w_m2",
    "irradiance_range_w_m2",
    "wind_mean_max_m_s",
    "wind_gust_m_s",
    "solar_time_start_h",
    "solar_time_end_h",
    "interval_s",
    "load_kg_m2",
    "load_tolerance",
    "intervals_min",
    "days_min",
    "r_squared_min",
    "guard",
    "acceptance_half_angle_deg",
    "report",
    "language",
    "paper",
    "runs_shown",
    "laboratory",
    "client_contact",
    "client_data",
    "authorised_by",
    "sampling",
    "external_results",
    "identification",
    "condition",
    "received",
    "linke_turbidity",
    "estimate",
    "cloudless",
    "stagnation",
    "cooking",
    "impact",
    "plateau_c",
    "plateau_f",
    "ambient_c",
    "ambient_f",
    "irradiance_w_m2",
    "start_c",
    "fuel",
    "heating_value_mj_kg",
    "heating_value_source",
    "stove_efficiency",
    "stove_efficiency_source",
    "days_per_year",
    "days_source",
];

/// Keys that the template names in a remark only, beside another of their table.
const REMARKED: [&str; 8] = [
    "target_relative_uncertainty",
    "id",
    "width_m",
    "height_m",
    "sides",
    "across_corners_m",
    "plateau_f",
    "ambient_f",
];

fn is_of_a_word(c: char) -> bool {
    c.is_ascii_alphanumeric() || c == '_'
}

/// Whether a text has `key = `, or `key` at the end of a table's name, as a whole word.
fn shows(text: &str, key: &str) -> bool {
    text.match_indices(key).any(|(start, _)| {
        let (before, after) = (&text[..start], &text[start + key.len()..]);
        !before.ends_with(is_of_a_word) && (after.starts_with(" = ") || after.starts_with(']'))
    })
}

#[test]
fn the_list_of_keys_is_that_of_the_schema() {
    let schema = include_str!("../../../src/campaign/schema.rs");
    // A field is written `pub NAME: TYPE`; one whose key is another word is renamed.
    let renamed = "#[serde(rename = \"type\")]\n    pub kind: ";
    assert!(schema.contains(renamed));
    let schema = schema.replace(renamed, "\n    pub type: ");
    let mut fields: Vec<&str> = schema
        .lines()
        .filter_map(|line| line.strip_prefix("    pub ")?.split_once(": "))
        .map(|(name, _)| name)
        .collect();
    // What a campaign may limit is known to the procedure alone.
    fields.extend(own_rows().filter_map(|row| row.word));
    fields.push(GUARD_KEY);
    let mut listed = KEYS.to_vec();
    for names in [&mut fields, &mut listed] {
        names.sort_unstable();
        names.dedup();
    }
    assert_eq!(listed, fields);
}

#[test]
fn the_template_names_every_key_of_the_schema() {
    let header = |key: &str| CAMPAIGN_TEMPLATE.contains(&format!("[{key}."));
    let missing: Vec<&str> = KEYS
        .into_iter()
        .filter(|key| !shows(CAMPAIGN_TEMPLATE, key) && !header(key))
        .collect();
    let mut remarked = REMARKED.to_vec();
    remarked.sort_by_key(|key| KEYS.iter().position(|other| other == key));
    assert_eq!(missing, remarked);
    let words: Vec<&str> = CAMPAIGN_TEMPLATE.split(|c| !is_of_a_word(c)).collect();
    for key in REMARKED {
        assert!(words.contains(&key), "{key}");
    }
}
