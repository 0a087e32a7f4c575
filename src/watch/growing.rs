//! The interval that runs now, and what would spoil it.

use crate::campaign::model::Site;
use crate::procedure::Run;
use crate::procedure::s580::Limits;
use crate::procedure::s580::intervals::{Measured, Verdict, measure_growing};
use crate::procedure::s580::limits::{Breach, LimitKey, S580Limit};
use crate::procedure::s580::reason::Reason;
use crate::procedure::s580::screen::{Surroundings, breaks, observe, screen, screen_run};
use crate::procedure::spans::TimeSpan;
use crate::units::SECONDS_PER_HOUR;

/// A limit that an interval breaks.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Broken {
    pub limit: S580Limit,
    /// What is held against it, in its unit; `None` for gusts, which are of the whole run.
    pub found: Option<f64>,
}

/// Why an interval cannot be used as it stands.
#[derive(Debug, Clone, PartialEq)]
pub struct Fault {
    pub reason: Reason,
    /// The limit behind the reason; `None` where it is none of a number.
    pub broken: Option<Broken>,
}

/// Between what the readings have to stay until the interval ends.
#[derive(Debug, Clone, Copy, Default, PartialEq)]
pub struct Margins {
    /// Lowest and highest irradiance, W/m².
    pub irradiance_w_m2: Option<(f64, f64)>,
    /// Highest mean wind, and the mean so far, m/s.
    pub wind_m_s: Option<(f64, f64)>,
    /// Hottest water, °C.
    pub water_c: f64,
}

/// The interval that runs now.
#[derive(Debug, Clone, PartialEq)]
pub struct Running {
    /// From its start to the last water reading.
    pub so_far: Measured,
    /// Length that it is to have, s.
    pub aim_s: f64,
    /// What no further reading can mend.
    pub spoiled: Vec<Fault>,
    /// What a mean over the rest of it can still mend.
    pub at_risk: Vec<Fault>,
    pub margins: Margins,
}

/// A run whose log grows.
#[derive(Debug, Clone, PartialEq)]
pub struct Growth {
    /// Intervals that no further reading can change.
    pub settled: usize,
    /// The last of them: its span, and what the practice says of it.
    pub last: Option<(TimeSpan, Verdict)>,
    /// `None` before a second water reading.
    pub running: Option<Running>,
}

/// How far a run has come.
pub fn growth(run: &Run, site: &Site, limits: &Limits, boiling_point_c: f64) -> Growth {
    let length = limits.interval();
    let growing = measure_growing(&run.readings, run.plan.water_kg, site, length);
    let (screening, intervals) = screen_run(0, run, site, limits, boiling_point_c);
    let around = Surroundings {
        boiling_point_c,
        longest_gust_s: screening.longest_gust_s,
    };
    let last = growing.settled.checked_sub(1).map(|at| &intervals[at]);
    let shortest_h = length.ends_s().0 / SECONDS_PER_HOUR;
    Growth {
        settled: growing.settled,
        last: last.map(|last| (last.measured.span, last.verdict.clone())),
        running: growing.so_far.map(|mut so_far| {
            // It will not end before it has its shortest length.
            so_far.solar_end_h = so_far.solar_end_h.max(so_far.solar_start_h + shortest_h);
            let faults = faults(&so_far, run, limits, around);
            let (spoiled, at_risk) = faults.into_iter().partition(is_final);
            Running {
                aim_s: length.aim_min() * 60.0,
                spoiled,
                at_risk,
                margins: margins(&so_far, limits, boiling_point_c),
                so_far,
            }
        }),
    }
}

/// Whether no further reading of the interval can mend it.
fn is_final(fault: &Fault) -> bool {
    let is_of_mean = fault
        .broken
        .is_some_and(|broken| is_of_mean(broken.limit.key));
    !is_of_mean && fault.reason != Reason::ReadingGap
}

/// Whether a limit is on a mean, which the rest of the interval still moves.
fn is_of_mean(key: LimitKey) -> bool {
    matches!(
        key,
        LimitKey::WindMean | LimitKey::AmbientMin | LimitKey::AmbientMax
    )
}

fn faults(so_far: &Measured, run: &Run, limits: &Limits, around: Surroundings) -> Vec<Fault> {
    let verdict = screen(so_far, run, limits, around);
    let Verdict::SetAside(reasons) = verdict else {
        return Vec::new();
    };
    let fault = |reason: Reason| {
        let breach = Breach::SetsAside(reason);
        let rows = limits.rows.iter().filter(|row| row.key.breach() == breach);
        let broken = rows.filter(|row| breaks(so_far, row, limits, around));
        // Gusts set the run aside, whatever becomes of the mean.
        let broken = broken.min_by_key(|row| is_of_mean(row.key));
        Fault {
            reason,
            broken: broken.map(|limit| Broken {
                limit: *limit,
                found: observe(so_far, limit.key, around.boiling_point_c),
            }),
        }
    };
    reasons.into_iter().map(fault).collect()
}

fn margins(so_far: &Measured, limits: &Limits, boiling_point_c: f64) -> Margins {
    // A guard band is a share of irradiance.
    let share = |key: LimitKey| limits.guard_band(key, 1.0);
    let sun = so_far.irradiance.map(|sun| {
        let least = limits.irradiance_min_w_m2() / (1.0 - share(LimitKey::IrradianceMin));
        let most = limits.irradiance_max_w_m2() / (1.0 + share(LimitKey::IrradianceMax));
        let range = limits
            .get(LimitKey::IrradianceRange)
            .unwrap_or(f64::INFINITY);
        let range = range / (1.0 + share(LimitKey::IrradianceRange));
        (least.max(sun.max - range), most.min(sun.min + range))
    });
    let wind = so_far.wind.zip(limits.get(LimitKey::WindMean));
    let wind = wind.map(|(wind, most)| {
        (
            most - limits.guard_band(LimitKey::WindMean, wind.mean),
            wind.mean,
        )
    });
    Margins {
        irradiance_w_m2: sun,
        wind_m_s: wind,
        water_c: limits.water_stop_c(boiling_point_c),
    }
}
