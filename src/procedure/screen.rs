//! Which intervals the practice lets one use, and every reason for those it does not.

use super::intervals::{Interval, LONGEST_INTERVAL_S};
use super::limits::{Limits, at_least, at_most};
use crate::logs::{Readings, Series};
use crate::units::seconds_between;

/// How long wind may stay over the gust limit before the run is lost, s.
const LONGEST_GUST_S: f64 = 600.0;

/// Why an interval is set aside.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Reason {
    WaterBelowWindow,
    WaterAboveWindow,
    AmbientOutOfRange,
    IrradianceLow,
    IrradianceHigh,
    IrradianceUnsteady,
    WindHigh,
    OutsideSolarWindow,
    ReadingGap,
    ExcludedByTester,
}

impl Reason {
    /// Every reason, in the order of the report.
    pub const ALL: [Reason; 10] = [
        Reason::WaterBelowWindow,
        Reason::WaterAboveWindow,
        Reason::AmbientOutOfRange,
        Reason::IrradianceLow,
        Reason::IrradianceHigh,
        Reason::IrradianceUnsteady,
        Reason::WindHigh,
        Reason::OutsideSolarWindow,
        Reason::ReadingGap,
        Reason::ExcludedByTester,
    ];

    /// The code in files.
    pub fn code(self) -> &'static str {
        match self {
            Reason::WaterBelowWindow => "water-below-window",
            Reason::WaterAboveWindow => "water-above-window",
            Reason::AmbientOutOfRange => "ambient-out-of-range",
            Reason::IrradianceLow => "irradiance-low",
            Reason::IrradianceHigh => "irradiance-high",
            Reason::IrradianceUnsteady => "irradiance-unsteady",
            Reason::WindHigh => "wind-high",
            Reason::OutsideSolarWindow => "outside-solar-window",
            Reason::ReadingGap => "reading-gap",
            Reason::ExcludedByTester => "excluded-by-tester",
        }
    }

    /// The reason in words.
    pub fn describe(self) -> &'static str {
        match self {
            Reason::WaterBelowWindow => "the water was still too close to ambient",
            Reason::WaterAboveWindow => "the water was too close to boiling",
            Reason::AmbientOutOfRange => "the air was too cold or too hot",
            Reason::IrradianceLow => "the sun was too weak",
            Reason::IrradianceHigh => "the sun was too strong",
            Reason::IrradianceUnsteady => "the sun was unsteady",
            Reason::WindHigh => "it was too windy",
            Reason::OutsideSolarWindow => "it was too early or too late in the solar day",
            Reason::ReadingGap => "readings were missing",
            Reason::ExcludedByTester => "the tester excluded the span",
        }
    }

    /// What the person beside the cooker can do about it.
    pub fn remedy(self) -> &'static str {
        match self {
            Reason::WaterBelowWindow => {
                "start with water a few kelvin above ambient, or let it warm before it counts"
            }
            Reason::WaterAboveWindow => {
                "stop the run, or start again with cool water, once the water nears boiling"
            }
            Reason::AmbientOutOfRange => "choose another season or time of day",
            Reason::IrradianceLow => "wait for clear sky, and keep the sensor's glass clean",
            Reason::IrradianceHigh => {
                "check the sensor's calibration, and keep reflected light off it"
            }
            Reason::IrradianceUnsteady => {
                "test on days without passing cloud, and keep the sensor aimed"
            }
            Reason::WindHigh => "test in a sheltered place or on calmer days",
            Reason::OutsideSolarWindow => {
                "heat between the start and end of the window in solar time, not clock time"
            }
            Reason::ReadingGap => "record every quantity at least every ten minutes",
            Reason::ExcludedByTester => "nothing, unless the exclusion was a mistake",
        }
    }
}

/// A span that the tester excludes, microseconds since 1970, UTC.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct ExcludedSpan {
    pub from_us: i64,
    pub to_us: i64,
}

impl ExcludedSpan {
    /// Whether an interval overlaps the span.
    pub fn overlaps(&self, interval: &Interval) -> bool {
        interval.start_us < self.to_us && interval.end_us > self.from_us
    }
}

/// Whether consecutive wind readings over the gust limit span more than ten minutes.
pub fn has_long_gust(wind: Option<&Series>, limits: &Limits) -> bool {
    let (Some(wind), Some(limit_m_s)) = (wind, limits.get("wind_gust_m_s")) else {
        return false;
    };
    let mut since_us = None;
    wind.time_us
        .iter()
        .zip(&wind.value)
        .any(|(&time_us, &value)| {
            if at_most(value, limit_m_s) {
                since_us = None;
                return false;
            }
            seconds_between(*since_us.get_or_insert(time_us), time_us) > LONGEST_GUST_S
        })
}

/// Notes every reason of every interval of one run.
pub fn screen_run(
    intervals: &mut [Interval],
    readings: &Readings,
    excluded: &[ExcludedSpan],
    limits: &Limits,
    boiling_point_c: f64,
) {
    let gusty = has_long_gust(readings.wind_m_s.as_ref(), limits);
    for interval in intervals {
        let applies = |reason: &Reason| match reason {
            Reason::WaterBelowWindow => is_water_below(interval, limits),
            Reason::WaterAboveWindow => is_water_above(interval, limits, boiling_point_c),
            Reason::WindHigh => gusty || is_wind_high(interval, limits),
            Reason::ReadingGap => has_gap(interval, readings),
            Reason::ExcludedByTester => excluded.iter().any(|span| span.overlaps(interval)),
            other => breaks_range(interval, *other, limits),
        };
        interval.reasons = Reason::ALL.into_iter().filter(applies).collect();
    }
}

fn is_water_below(interval: &Interval, limits: &Limits) -> bool {
    let lowest_c = interval.water_start_c.min(interval.water_end_c);
    let moving = || {
        let above_k = limits.get("water_above_ambient_k")?;
        Some(interval.ambient?.mean + above_k)
    };
    let limit_c = limits.get("water_min_c").or_else(moving);
    limit_c.is_some_and(|limit_c| !at_least(lowest_c, limit_c))
}

fn is_water_above(interval: &Interval, limits: &Limits, boiling_point_c: f64) -> bool {
    let highest_c = interval.water_start_c.max(interval.water_end_c);
    let moving = || Some(boiling_point_c - limits.get("water_below_boiling_k")?);
    let limit_c = limits.get("water_max_c").or_else(moving);
    limit_c.is_some_and(|limit_c| !at_most(highest_c, limit_c))
}

fn is_wind_high(interval: &Interval, limits: &Limits) -> bool {
    match (interval.wind, limits.get("wind_mean_max_m_s")) {
        (Some(wind), Some(most)) => !at_most(wind.mean, most),
        _ => false,
    }
}

/// Reasons that hold one number of the interval against one limit.
fn breaks_range(interval: &Interval, reason: Reason, limits: &Limits) -> bool {
    let under = |value: Option<f64>, key: &str| matches!((value, limits.get(key)), (Some(value), Some(least)) if !at_least(value, least));
    let over = |value: Option<f64>, key: &str| matches!((value, limits.get(key)), (Some(value), Some(most)) if !at_most(value, most));
    let ambient_c = interval.ambient.map(|ambient| ambient.mean);
    let sun = interval.irradiance;
    match reason {
        Reason::AmbientOutOfRange => {
            under(ambient_c, "ambient_min_c") || over(ambient_c, "ambient_max_c")
        }
        Reason::IrradianceLow => under(sun.map(|sun| sun.min), "irradiance_min_w_m2"),
        Reason::IrradianceHigh => over(sun.map(|sun| sun.max), "irradiance_max_w_m2"),
        Reason::IrradianceUnsteady => {
            over(sun.map(|sun| sun.max - sun.min), "irradiance_range_w_m2")
        }
        Reason::OutsideSolarWindow => {
            under(Some(interval.solar_start_h), "solar_time_start_h")
                || over(Some(interval.solar_end_h), "solar_time_end_h")
                || interval.solar_end_h < interval.solar_start_h
        }
        _ => false,
    }
}

/// A quantity that the run measures has no reading in the interval, or two
/// neighbouring ones further apart than an interval may be long.
fn has_gap(interval: &Interval, readings: &Readings) -> bool {
    let quantities = [
        (true, Some(interval.water)),
        (readings.ambient_c.is_some(), interval.ambient),
        (readings.irradiance_w_m2.is_some(), interval.irradiance),
        (readings.wind_m_s.is_some(), interval.wind),
    ];
    quantities
        .into_iter()
        .any(|(is_measured, summary)| match summary {
            None => is_measured,
            Some(summary) => summary.longest_gap_s > LONGEST_INTERVAL_S as f64,
        })
}
