//! Which intervals the practice lets one use, and every reason for those it does not.

use super::intervals::Interval;
use super::limits::{Allowed, Limit, Limits, at_least, at_most};
use super::run::Run;
use crate::language::Message;
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
    NotCloudless,
}

impl Reason {
    /// Every reason, in the order of the report.
    pub const ALL: [Reason; 11] = [
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
        Reason::NotCloudless,
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
            Reason::NotCloudless => "not-cloudless",
        }
    }

    /// The reason in words.
    pub fn describe(self) -> Message {
        Message::new(format!("reason-{}", self.code()))
    }

    /// What the person beside the cooker can do about it, on the terminal.
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
            Reason::OutsideSolarWindow => "heat within the window, which is in solar time",
            Reason::ReadingGap => "record every quantity at least every ten minutes",
            Reason::ExcludedByTester => "nothing, unless the exclusion was a mistake",
            Reason::NotCloudless => {
                "note for every reading whether the sky was cloudless; measure irradiance where clouds pass"
            }
        }
    }
}

/// A span of time, microseconds since 1970, UTC.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct TimeSpan {
    pub from_us: i64,
    pub to_us: i64,
}

impl TimeSpan {
    /// Whether an interval overlaps the span.
    pub fn overlaps(&self, interval: &Interval) -> bool {
        interval.start_us < self.to_us && interval.end_us > self.from_us
    }

    /// Whether an interval lies in the span as a whole.
    pub fn holds(&self, interval: &Interval) -> bool {
        self.from_us <= interval.start_us && interval.end_us <= self.to_us
    }
}

/// Longest time that consecutive wind readings over the gust limit span, s.
pub fn longest_gust_s(wind: Option<&Series>, limits: &Limits) -> f64 {
    let (Some(wind), Some(limit_m_s)) = (wind, limits.get("wind_gust_m_s")) else {
        return 0.0;
    };
    let mut longest_s: f64 = 0.0;
    let mut since_us = None;
    for (&time_us, &value) in wind.time_us.iter().zip(&wind.value) {
        if at_most(value, limit_m_s) {
            since_us = None;
        } else {
            let start_us = *since_us.get_or_insert(time_us);
            longest_s = longest_s.max(seconds_between(start_us, time_us));
        }
    }
    longest_s
}

/// What an interval's surroundings add to its own numbers.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Surroundings {
    /// Local boiling point of water, °C.
    pub boiling_point_c: f64,
    /// Longest gust of the run, by [`longest_gust_s`].
    pub longest_gust_s: f64,
}

/// The number of an interval that a limit is held against, in the limit's unit;
/// `None` where it was not measured, or the limit is not on single intervals.
pub fn observe(interval: &Interval, limit: &Limit, boiling_point_c: f64) -> Option<f64> {
    let coldest_c = interval.water_start_c.min(interval.water_end_c);
    let hottest_c = interval.water_start_c.max(interval.water_end_c);
    let sun = interval.irradiance;
    match limit.key {
        "water_above_ambient_k" => Some(coldest_c - interval.ambient?.mean),
        "water_below_boiling_k" => Some(boiling_point_c - hottest_c),
        "water_min_c" => Some(coldest_c),
        "water_max_c" => Some(hottest_c),
        "ambient_min_c" | "ambient_max_c" => Some(interval.ambient?.mean),
        "irradiance_min_w_m2" => Some(sun?.min),
        "irradiance_max_w_m2" => Some(sun?.max),
        "irradiance_range_w_m2" => Some(sun?.max - sun?.min),
        "wind_mean_max_m_s" => Some(interval.wind?.mean),
        "solar_time_start_h" => Some(interval.solar_start_h),
        // Past solar midnight the hours go on counting.
        "solar_time_end_h" if interval.solar_end_h < interval.solar_start_h => {
            Some(interval.solar_end_h + 24.0)
        }
        "solar_time_end_h" => Some(interval.solar_end_h),
        _ => None,
    }
}

/// Whether an interval breaks a limit.
pub fn breaks(interval: &Interval, limit: &Limit, around: Surroundings) -> bool {
    if limit.key == "wind_gust_m_s" {
        return around.longest_gust_s > LONGEST_GUST_S;
    }
    match (
        observe(interval, limit, around.boiling_point_c),
        limit.allowed,
    ) {
        (Some(value), Allowed::AtLeast) => !at_least(value, limit.value),
        (Some(value), Allowed::AtMost) => !at_most(value, limit.value),
        _ => false,
    }
}

/// Notes every reason of every interval of one run.
pub fn screen_run(intervals: &mut [Interval], run: &Run, limits: &Limits, around: Surroundings) {
    for interval in intervals {
        let is_clouded = run
            .cloudless
            .as_ref()
            .is_some_and(|spans| !spans.iter().any(|span| span.holds(interval)));
        let applies = |reason: &Reason| match reason {
            Reason::ReadingGap => has_gap(interval, &run.readings, is_clouded),
            Reason::ExcludedByTester => run.excluded.iter().any(|span| span.overlaps(interval)),
            Reason::NotCloudless => is_clouded,
            reason => {
                let mut rows = limits
                    .rows
                    .iter()
                    .filter(|limit| limit.code == reason.code());
                rows.any(|limit| breaks(interval, limit, around))
            }
        };
        interval.reasons = Reason::ALL.into_iter().filter(applies).collect();
    }
}

/// A quantity that the run measures has no reading in the interval. Two readings in
/// it are never too far apart: it lasts no longer than readings may be apart.
fn has_gap(interval: &Interval, readings: &Readings, is_clouded: bool) -> bool {
    let has_sun = readings.irradiance_w_m2.is_some() && !is_clouded;
    let quantities = [
        (readings.ambient_c.is_some(), interval.ambient),
        (has_sun, interval.irradiance),
        (readings.wind_m_s.is_some(), interval.wind),
    ];
    quantities
        .into_iter()
        .any(|(is_measured, summary)| is_measured && summary.is_none())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_reason_is_said() {
        for reason in Reason::ALL {
            assert!(!reason.describe().to_string().is_empty());
        }
    }
}
