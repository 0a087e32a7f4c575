//! What a reader should know of the intervals and of the line.

use jiff::tz::TimeZone;

use super::intervals::{IntervalLength, Measured};
use super::limits::STANDARD_IRRADIANCE_W_M2;
use crate::campaign::model::{Cooker, CookerType};
use crate::language::{Message, Phrase, clock, fixed, joined, listed, short};
use crate::message;
use crate::procedure::run::Run;
use crate::procedure::spans::TimeSpan;
use crate::stats::line::Line;
use crate::units::{local_clock, local_hours};

/// Solar noon further from 12:00 by the clock than in any time zone in use, h.
const FURTHEST_NOON_H: f64 = 3.5;
/// Share of sunlight that a metallised film sends on when new.
/// Common practice, no published source.
const FILM_REFLECTANCE: f64 = 0.86;

/// Something a reader should know that stops nothing.
#[derive(Debug, Clone, PartialEq)]
pub enum S580Notice {
    /// No interval could be formed.
    NoIntervals { log: String, length: IntervalLength },
    /// Longitude and time zone do not fit together.
    OddSolarNoon {
        log: String,
        /// Solar noon by the local clock, h.
        noon_h: f64,
    },
    /// A span excluded by the tester that meets no interval.
    IdleExclusion {
        log: String,
        from: String,
        to: String,
    },
    /// Neither uncertainty nor class of some instruments is stated.
    InstrumentsAssumed {
        /// Quantity, and the class that is taken.
        instruments: Vec<(Phrase, Phrase)>,
    },
    /// Spans stated cloudless in which the water stalls as under a cloud.
    StallUnderClearSky {
        log: String,
        /// Local clock times, from and to.
        spans: Vec<(String, String)>,
    },
    /// Dry or wet, the cooker does more than such cookers are known to do.
    AboveFilm {
        /// Share of the sunlight intercepted that the line's intercept takes up.
        share: f64,
    },
}

impl S580Notice {
    /// What it says.
    pub fn message(&self) -> Message {
        match self {
            S580Notice::NoIntervals { log, length } => {
                let (shortest_min, longest_min) = length.ends_min();
                message!(
                    "notice-no-intervals",
                    log = log,
                    shortest = short(shortest_min),
                    longest = short(longest_min),
                    minutes = short(length.aim_min())
                )
            }
            S580Notice::OddSolarNoon { log, noon_h } => {
                message!("notice-odd-noon", log = log, noon = clock(*noon_h))
            }
            S580Notice::IdleExclusion { log, from, to } => {
                message!("notice-idle-exclusion", log = log, from = from, to = to)
            }
            S580Notice::InstrumentsAssumed { instruments } => {
                let taken = instruments.iter().map(|(quantity, class)| {
                    message!(
                        "notice-instrument-taken",
                        quantity = quantity,
                        class = class
                    )
                });
                message!("notice-instruments-assumed", taken = joined(taken, ", "))
            }
            S580Notice::StallUnderClearSky { log, spans } => {
                let spans = spans.iter();
                let spans = spans.map(|(from, to)| message!("notice-span", from = from, to = to));
                message!("notice-stall", log = log, spans = listed(spans))
            }
            S580Notice::AboveFilm { share } => {
                message!("notice-above-film", share = fixed(share * 100.0, 0))
            }
        }
    }
}

/// What a reader should know of a run's intervals: that there are none, or when noon is.
pub fn about_intervals(
    run: &Run,
    intervals: &[Measured],
    length: IntervalLength,
    zone: &TimeZone,
) -> Option<S580Notice> {
    let log = || run.plan.label.clone();
    let Some(first) = intervals.first() else {
        return Some(S580Notice::NoIntervals { log: log(), length });
    };
    let noon_h = 12.0 + clock_ahead_of_sun_h(first, zone);
    ((noon_h - 12.0).abs() > FURTHEST_NOON_H)
        .then(|| S580Notice::OddSolarNoon { log: log(), noon_h })
}

/// Each span that the tester excludes and that meets no interval.
pub fn idle_exclusions(run: &Run, intervals: &[Measured], zone: &TimeZone) -> Vec<S580Notice> {
    let meets = |span: &TimeSpan| {
        let mut intervals = intervals.iter();
        intervals.any(|interval| span.overlaps(interval.span))
    };
    let idle = run.excluded.iter().filter(|span| !meets(span));
    let notices = idle.map(|span| S580Notice::IdleExclusion {
        log: run.plan.label.clone(),
        from: local_clock(span.from_us, zone),
        to: local_clock(span.to_us, zone),
    });
    notices.collect()
}

/// How far the local clock is ahead of the sun at the start of an interval, h,
/// between −12 and 12.
pub fn clock_ahead_of_sun_h(interval: &Measured, zone: &TimeZone) -> f64 {
    let clock_h = local_hours(interval.span.from_us, zone);
    (clock_h - interval.solar_start_h + 12.0).rem_euclid(24.0) - 12.0
}

/// That a reflector takes up more than its film can send on.
pub fn above_film(cooker: &Cooker, line: &Line) -> Option<S580Notice> {
    let is_reflector = matches!(cooker.kind, CookerType::Panel | CookerType::Concentrating);
    let share = line.intercept / (STANDARD_IRRADIANCE_W_M2 * cooker.intercept_area_m2);
    (is_reflector && share > FILM_REFLECTANCE).then_some(S580Notice::AboveFilm { share })
}
