//! The intervals as data, for `rating.json`.

use schemars::JsonSchema;
use serde::Serialize;

use crate::procedure::Assessment;
use crate::procedure::intervals::Interval;
use crate::units::rfc3339;

/// One interval, used or set aside. A mean is over time, and null without a reading.
#[derive(Debug, Serialize, JsonSchema)]
pub struct IntervalEntry {
    /// The run's name, as in `runs[].name`.
    run: String,
    /// Local time with its offset from UTC.
    #[schemars(extend("format" = "date-time"))]
    start: String,
    /// Local time with its offset from UTC.
    #[schemars(extend("format" = "date-time"))]
    end: String,
    /// Time that really passed, s.
    duration_s: f64,
    /// Water temperature at the start, °C.
    water_start_c: f64,
    /// Water temperature at the end, °C.
    water_end_c: f64,
    /// Mean water temperature, °C.
    water_mean_c: f64,
    /// Mean ambient temperature, °C.
    ambient_mean_c: Option<f64>,
    /// Mean irradiance, W/m².
    irradiance_mean_w_m2: Option<f64>,
    /// Least irradiance, W/m².
    irradiance_min_w_m2: Option<f64>,
    /// Greatest irradiance, W/m².
    irradiance_max_w_m2: Option<f64>,
    /// Mean wind speed, m/s.
    wind_mean_m_s: Option<f64>,
    /// Apparent solar time of the start, h.
    solar_time_start_h: f64,
    /// Apparent solar time of the end, h.
    solar_time_end_h: f64,
    /// P: m·c·ΔT/Δt, W; negative while the water cools.
    cooking_power_w: f64,
    /// Ps: P × 700 W/m² / mean irradiance, W; null without irradiance.
    standardised_power_w: Option<f64>,
    /// Td: mean water minus mean ambient temperature, K.
    temperature_difference_k: Option<f64>,
    /// Whether the practice lets one use it.
    used: bool,
    /// Every reason for setting it aside, by its code; empty where it is used.
    reasons: Vec<&'static str>,
}

/// The intervals of all runs, in order.
pub fn interval_entries(assessment: &Assessment) -> Vec<IntervalEntry> {
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
