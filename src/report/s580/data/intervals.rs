//! The intervals as data, for `rating.json`.

use schemars::JsonSchema;
use serde::Serialize;

use crate::procedure::Assessment;
use crate::procedure::s580::intervals::{Interval, Verdict};
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
    /// Whether it is a point of the line.
    used: bool,
    /// `used`; `not-normalised`: it breaks no limit, and has no irradiance; or `set-aside`.
    #[schemars(extend("enum" = Verdict::CODES))]
    verdict: &'static str,
    /// Every reason for setting it aside, by its code; empty where it breaks no limit.
    reasons: Vec<&'static str>,
}

/// The intervals of all runs, in order.
pub fn interval_entries(assessment: &Assessment) -> Vec<IntervalEntry> {
    let zone = &assessment.tested.campaign.site.time_zone;
    let entry = |interval: &Interval| IntervalEntry {
        run: assessment.tested.runs[interval.run].plan.label.clone(),
        start: rfc3339(interval.measured.span.from_us, zone),
        end: rfc3339(interval.measured.span.to_us, zone),
        duration_s: interval.measured.duration_s,
        water_start_c: interval.measured.water_start_c,
        water_end_c: interval.measured.water_end_c,
        water_mean_c: interval.measured.water.mean,
        ambient_mean_c: interval.measured.ambient.map(|ambient| ambient.mean),
        irradiance_mean_w_m2: interval.measured.irradiance.map(|sun| sun.mean),
        irradiance_min_w_m2: interval.measured.irradiance.map(|sun| sun.min),
        irradiance_max_w_m2: interval.measured.irradiance.map(|sun| sun.max),
        wind_mean_m_s: interval.measured.wind.map(|wind| wind.mean),
        solar_time_start_h: interval.measured.solar_start_h,
        solar_time_end_h: interval.measured.solar_end_h,
        cooking_power_w: interval.measured.cooking_power_w,
        standardised_power_w: interval.measured.standardised_power_w,
        temperature_difference_k: interval.measured.difference_k,
        used: interval.is_on_line(),
        verdict: interval.verdict.code(),
        reasons: interval
            .reasons()
            .iter()
            .map(|reason| reason.code())
            .collect(),
    };
    assessment.s580.intervals.iter().map(entry).collect()
}
