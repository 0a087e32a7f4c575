//! `intervals.csv`: one row an interval, used and set aside, in full precision; the
//! last column says whether the data are invented.

use csv::Writer;

use crate::error::{Error, Result};
use crate::procedure::Assessment;
use crate::units::rfc3339;

/// Columns, with their units; an empty cell is a quantity without readings.
const HEADER: [&str; 20] = [
    "run",
    "start",
    "end",
    "duration_s",
    "water_start_c",
    "water_end_c",
    "water_mean_c",
    "ambient_mean_c",
    "irradiance_mean_w_m2",
    "irradiance_min_w_m2",
    "irradiance_max_w_m2",
    "wind_mean_m_s",
    "solar_time_start_h",
    "solar_time_end_h",
    "cooking_power_w",
    "standardised_power_w",
    "temperature_difference_k",
    "used",
    "reasons",
    "demonstration",
];

/// The table as text; several reasons are separated by spaces.
///
/// # Errors
/// [`Error::Internal`] if a row does not fit the header.
pub fn intervals_csv(assessment: &Assessment) -> Result<String> {
    let zone = &assessment.campaign.site.time_zone;
    let number = |value: f64| value.to_string();
    let optional = |value: Option<f64>| value.map_or_else(String::new, number);
    let mut table = Writer::from_writer(Vec::new());
    table.write_record(HEADER).map_err(internal)?;
    for interval in &assessment.intervals {
        let reasons: Vec<&str> = interval
            .reasons
            .iter()
            .map(|reason| reason.code())
            .collect();
        let sun = interval.irradiance;
        table
            .write_record([
                assessment.runs[interval.run].plan.label.clone(),
                rfc3339(interval.start_us, zone),
                rfc3339(interval.end_us, zone),
                number(interval.duration_s),
                number(interval.water_start_c),
                number(interval.water_end_c),
                number(interval.water.mean),
                optional(interval.ambient.map(|ambient| ambient.mean)),
                optional(sun.map(|sun| sun.mean)),
                optional(sun.map(|sun| sun.min)),
                optional(sun.map(|sun| sun.max)),
                optional(interval.wind.map(|wind| wind.mean)),
                number(interval.solar_start_h),
                number(interval.solar_end_h),
                number(interval.cooking_power_w),
                optional(interval.standardised_power_w),
                optional(interval.difference_k),
                interval.is_used().to_string(),
                reasons.join(" "),
                assessment.campaign.demonstration.to_string(),
            ])
            .map_err(internal)?;
    }
    let bytes = table
        .into_inner()
        .map_err(|error| Error::Internal(error.to_string()))?;
    String::from_utf8(bytes).map_err(|error| Error::Internal(error.to_string()))
}

fn internal(error: csv::Error) -> Error {
    Error::Internal(error.to_string())
}
