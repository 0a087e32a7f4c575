//! Which intervals the practice lets one use, and every reason for those it does not.

use super::in_force::Limits;
use super::intervals::{Interval, Measured, Verdict, find_holes, measure_intervals};
use super::limits::{Breach, LimitKey, S580Limit};
use super::notice::{S580Notice, about_intervals, idle_exclusions};
use super::reason::Reason;
use crate::campaign::model::Site;
use crate::logs::{Readings, Series};
use crate::procedure::run::Run;
use crate::procedure::spans::TimeSpan;
use crate::units::seconds_between;

/// How long wind may stay over the gust limit before the run is lost, s.
const LONGEST_GUST_S: f64 = 600.0;

/// Longest time that consecutive wind readings over the gust limit span, s.
fn longest_gust_s(wind: Option<&Series>, limits: &Limits) -> f64 {
    let Some(wind) = wind else {
        return 0.0;
    };
    let gust = limits.wind_gust();
    let mut longest_s: f64 = 0.0;
    let mut since_us = None;
    for (&time_us, &value) in wind.time_us.iter().zip(&wind.value) {
        if gust.allows_all_of(value, limits.guard_band(gust.key, value)) {
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
    /// Longest time that the wind of the run stayed over the gust limit, s.
    pub longest_gust_s: f64,
}

/// The number of an interval that a limit is held against, in the limit's unit;
/// `None` where it was not measured, or the limit is not on single intervals.
pub fn observe(interval: &Measured, key: LimitKey, boiling_point_c: f64) -> Option<f64> {
    let coldest_c = interval.water_start_c.min(interval.water_end_c);
    let hottest_c = interval.water_start_c.max(interval.water_end_c);
    let sun = interval.irradiance;
    match key {
        LimitKey::WaterAboveAmbient => Some(coldest_c - interval.ambient?.mean),
        LimitKey::WaterBelowBoiling => Some(boiling_point_c - hottest_c),
        LimitKey::WaterMin => Some(coldest_c),
        LimitKey::WaterMax => Some(hottest_c),
        LimitKey::AmbientMin | LimitKey::AmbientMax => Some(interval.ambient?.mean),
        LimitKey::IrradianceMin => Some(sun?.min),
        LimitKey::IrradianceMax => Some(sun?.max),
        LimitKey::IrradianceRange => Some(sun?.max - sun?.min),
        LimitKey::WindMean => Some(interval.wind?.mean),
        LimitKey::SolarTimeStart => Some(interval.solar_start_h),
        // Past solar midnight the hours go on counting.
        LimitKey::SolarTimeEnd if interval.solar_end_h < interval.solar_start_h => {
            Some(interval.solar_end_h + 24.0)
        }
        LimitKey::SolarTimeEnd => Some(interval.solar_end_h),
        LimitKey::Interval => Some(interval.duration_s),
        LimitKey::WindGust
        | LimitKey::Load
        | LimitKey::LoadTolerance
        | LimitKey::Intervals
        | LimitKey::Days
        | LimitKey::RSquared => None,
    }
}

/// Whether an interval breaks a limit, one of `limits`.
pub fn breaks(
    interval: &Measured,
    limit: &S580Limit,
    limits: &Limits,
    around: Surroundings,
) -> bool {
    if limit.key == LimitKey::WindGust {
        return around.longest_gust_s > LONGEST_GUST_S;
    }
    let observed = observe(interval, limit.key, around.boiling_point_c);
    observed.is_some_and(|value| !limit.allows_all_of(value, limits.guard_band(limit.key, value)))
}

/// The intervals of one run, screened, and what else was seen of it.
#[derive(Debug, Clone, PartialEq)]
pub struct Screening {
    /// Number of intervals, of those that are used (on the line), and of those that break no
    /// limit but have no irradiance.
    pub intervals: usize,
    pub on_line: usize,
    pub not_normalised: usize,
    /// Stretches that no interval covers.
    pub holes: Vec<TimeSpan>,
    /// Longest time that the wind stayed over the gust limit, s.
    pub longest_gust_s: f64,
    /// Of the intervals as formed.
    pub notice: Option<S580Notice>,
    /// Of excluded spans that meet none.
    pub idle: Vec<S580Notice>,
}

/// Cuts a run into intervals and screens them; `index` is its place among the runs.
pub fn screen_run(
    index: usize,
    run: &Run,
    site: &Site,
    limits: &Limits,
    boiling_point_c: f64,
) -> (Screening, Vec<Interval>) {
    let readings = &run.readings;
    let longest_gust_s = longest_gust_s(readings.wind_m_s.as_ref(), limits);
    let around = Surroundings {
        boiling_point_c,
        longest_gust_s,
    };
    let length = limits.interval();
    let measured = measure_intervals(readings, run.plan.water_kg, site, length);
    let holes = find_holes(&measured, &readings.water_c.time_us, length);
    let notice = about_intervals(run, &measured, length, site);
    let idle = idle_exclusions(run, &measured, &site.time_zone);
    let screened = measured.into_iter().map(|measured| Interval {
        run: index,
        verdict: screen(&measured, run, limits, around),
        measured,
    });
    let intervals: Vec<Interval> = screened.collect();
    let count = |counts: fn(&Interval) -> bool| intervals.iter().filter(|i| counts(i)).count();
    let screening = Screening {
        intervals: intervals.len(),
        on_line: count(Interval::is_on_line),
        not_normalised: count(Interval::is_not_normalised),
        holes,
        longest_gust_s,
        notice,
        idle,
    };
    (screening, intervals)
}

/// What the practice says of one interval, with every reason.
pub fn screen(interval: &Measured, run: &Run, limits: &Limits, around: Surroundings) -> Verdict {
    let cloudless = run.cloudless.as_ref();
    let is_clouded =
        cloudless.is_some_and(|spans| !spans.iter().any(|span| span.holds(interval.span)));
    let applies = |reason: &Reason| match reason {
        Reason::ReadingGap => has_gap(interval, &run.readings, is_clouded),
        Reason::ExcludedByTester => {
            let mut excluded = run.excluded.iter();
            excluded.any(|span| span.overlaps(interval.span))
        }
        Reason::NotCloudless => is_clouded,
        reason => {
            let breach = Breach::SetsAside(*reason);
            let mut rows = limits.rows.iter().filter(|row| row.key.breach() == breach);
            rows.any(|limit| breaks(interval, limit, limits, around))
        }
    };
    let reasons: Vec<Reason> = Reason::ALL.iter().copied().filter(applies).collect();
    if !reasons.is_empty() {
        Verdict::SetAside(reasons)
    } else if interval.point().is_some() {
        Verdict::OnLine
    } else {
        Verdict::NotNormalised
    }
}

/// A quantity that the run measures has no reading in the interval. Two readings in
/// it are never too far apart: it lasts no longer than readings may be apart.
fn has_gap(interval: &Measured, readings: &Readings, is_clouded: bool) -> bool {
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
