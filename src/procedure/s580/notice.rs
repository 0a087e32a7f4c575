//! What a reader should know of the intervals and of the line.

use jiff::Timestamp;
use jiff::tz::{Offset, TimeZone};

use super::intervals::{IntervalLength, Measured};
use super::limits::STANDARD_IRRADIANCE_W_M2;
use crate::believable::LATITUDE_DEG;
use crate::campaign::model::{Cooker, CookerType, Site};
use crate::language::{Message, Phrase, clock, fixed, joined, listed, short};
use crate::message;
use crate::procedure::run::Run;
use crate::procedure::spans::TimeSpan;
use crate::stats::line::Line;
use crate::units::{local_clock, local_hours};

/// Solar noon earlier and later by the clock than in any time zone in use, h. By the IANA time
/// zone database and with the equation of time, the principal places of all zones have had it
/// from 9:58 (Danmarkshavn, a station that keeps UTC; elsewhere from 10:37) to 15:12 (Nome in
/// summer) since 1970. Within zones it is latest on St Lawrence Island, far west of Nome, at 15:42,
/// and at 15:20 in the far west of China (longitudes from memory). Stations in Antarctica keep the
/// time of whoever supplies them, and China's summer time (1986 to 1991) went an hour beyond.
const NOONS_H: std::ops::RangeInclusive<f64> = 9.75..=15.8;
/// Solar noon by the clock where a longitude is likely, h.
const LIKELY_NOONS_H: std::ops::RangeInclusive<f64> = 10.5..=14.5;
/// Degrees of longitude that the sun takes an hour for.
const DEGREES_PER_HOUR: f64 = 15.0;
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
        /// What would put it nearer to 12:00.
        meant: Option<Longitude>,
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

/// A longitude that was meant, with solar noon by the clock, h.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Longitude {
    /// That of the other sign, degrees.
    OtherSign { longitude_deg: f64, noon_h: f64 },
    /// That in the place of the latitude.
    Exchanged { noon_h: f64 },
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
            S580Notice::OddSolarNoon { log, noon_h, meant } => {
                let said = match meant {
                    None => message!("notice-odd-noon"),
                    Some(Longitude::OtherSign {
                        longitude_deg,
                        noon_h,
                    }) => message!(
                        "notice-odd-noon-sign",
                        longitude = short(*longitude_deg),
                        meant = clock(*noon_h)
                    ),
                    Some(Longitude::Exchanged { noon_h }) => {
                        message!("notice-odd-noon-exchanged", meant = clock(*noon_h))
                    }
                };
                said.with("log", log).with("noon", clock(*noon_h))
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
    site: &Site,
) -> Option<S580Notice> {
    let log = || run.plan.label.clone();
    let Some(first) = intervals.first() else {
        return Some(S580Notice::NoIntervals { log: log(), length });
    };
    let noon_h = 12.0 + clock_ahead_of_sun_h(first, &site.time_zone);
    let is_odd = is_odd_noon(noon_h) && !keeps_to_no_place(&site.time_zone);
    is_odd.then(|| S580Notice::OddSolarNoon {
        log: log(),
        noon_h,
        meant: meant_longitude(site, noon_h),
    })
}

/// Whether solar noon by a clock, h, is one that no place on earth has.
pub fn is_odd_noon(noon_h: f64) -> bool {
    !NOONS_H.contains(&noon_h)
}

/// Whether a clock keeps to no place: UTC by one of its names, or an offset of zero, to which
/// loggers are set anywhere. A zone of a place has had its own solar time before.
fn keeps_to_no_place(zone: &TimeZone) -> bool {
    zone.to_offset(Timestamp::UNIX_EPOCH) == Offset::UTC
        && zone.following(Timestamp::MIN).next().is_none()
}

/// What puts solar noon nearest to 12:00, if anything puts it where it is likely: the longitude
/// with the other sign, or latitude and longitude exchanged.
fn meant_longitude(site: &Site, noon_h: f64) -> Option<Longitude> {
    let noon_at = |longitude_deg: f64| {
        (noon_h + (site.longitude_deg - longitude_deg) / DEGREES_PER_HOUR).rem_euclid(24.0)
    };
    let other_sign = Longitude::OtherSign {
        longitude_deg: -site.longitude_deg,
        noon_h: noon_at(-site.longitude_deg),
    };
    let can_be_latitude = LATITUDE_DEG.contains(&site.longitude_deg);
    let exchanged = can_be_latitude.then(|| Longitude::Exchanged {
        noon_h: noon_at(site.latitude_deg),
    });
    let off_h = |one: &Longitude| match one {
        Longitude::OtherSign { noon_h, .. } | Longitude::Exchanged { noon_h } => {
            (LIKELY_NOONS_H.contains(noon_h)).then_some((noon_h - 12.0).abs())
        }
    };
    let all = [Some(other_sign), exchanged].into_iter().flatten();
    let likely = all.filter_map(|one| Some((off_h(&one)?, one)));
    let nearest = likely.min_by(|one, other| one.0.total_cmp(&other.0));
    nearest.map(|(_, longitude)| longitude)
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::campaign::zone::parse_zone;

    #[test]
    fn a_clock_of_zero_offset_keeps_to_no_place_unless_it_names_one() {
        let keeps = |name: &str| keeps_to_no_place(&parse_zone(name).unwrap());
        for name in [
            "UTC",
            "Etc/UTC",
            "GMT",
            "Etc/GMT",
            "Etc/GMT+0",
            "Zulu",
            "+00:00",
            "-00:00",
        ] {
            assert!(keeps(name), "{name}");
        }
        for name in [
            "Africa/Abidjan",
            "Europe/London",
            "Iceland",
            "WET",
            "+01:00",
            "Etc/GMT-1",
        ] {
            assert!(!keeps(name), "{name}");
        }
    }
}
