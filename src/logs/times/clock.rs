//! Local clock times to instants, through daylight saving.

use jiff::Timestamp;
use jiff::civil::{Date, DateTime};
use jiff::tz::TimeZone;

use super::written::{DAY_US, SECOND_US};
use crate::local_time::{Shown, instants_of};

/// Times between the years 1900 and 2200, in microseconds since 1970.
const BELIEVABLE_US: std::ops::Range<i64> = -2_208_988_800_000_000..7_258_118_400_000_000;

/// Reads local times from top to bottom. Keeps the last instant, because the hour that
/// a clock shows twice in autumn is settled by the order of the rows.
pub struct Clock<'z> {
    zone: &'z TimeZone,
    last_us: Option<i64>,
    /// Rows run from the newest to the oldest.
    is_backward: bool,
    /// Local times between which the offset is one and certain.
    steady: Steady,
}

/// Why a local time is no instant.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum ClockFault {
    /// The clocks skipped it.
    Skipped,
    /// Too far from now to be a reading.
    Unbelievable,
}

#[derive(Default)]
struct Steady {
    local_us: std::ops::Range<i64>,
    offset_us: i64,
}

impl<'z> Clock<'z> {
    /// A clock in a zone; `is_backward` if the newest row stands first.
    pub fn new(zone: &'z TimeZone, is_backward: bool) -> Self {
        Clock {
            zone,
            last_us: None,
            is_backward,
            steady: Steady::default(),
        }
    }

    /// Microseconds since 1970, UTC, of a local time: microseconds since 1970 by the
    /// local clock.
    ///
    /// # Errors
    /// [`ClockFault`] for a time that does not exist, or far from any test.
    pub fn instant_us(&mut self, local_us: i64) -> Result<i64, ClockFault> {
        let time_us = if self.steady.local_us.contains(&local_us) {
            local_us - self.steady.offset_us
        } else {
            self.look_up(local_us)?
        };
        self.note(time_us)
    }

    /// Takes note of an instant that needs no zone.
    ///
    /// # Errors
    /// [`ClockFault::Unbelievable`].
    pub fn note(&mut self, time_us: i64) -> Result<i64, ClockFault> {
        if !BELIEVABLE_US.contains(&time_us) {
            return Err(ClockFault::Unbelievable);
        }
        self.last_us = Some(time_us);
        Ok(time_us)
    }

    /// Whether the clocks show a local time twice.
    pub fn is_repeated(&self, local_us: i64) -> bool {
        let shown = civil(local_us).and_then(|local| instants_of(local, self.zone));
        matches!(shown, Some(Shown::Twice { .. }))
    }

    fn look_up(&mut self, local_us: i64) -> Result<i64, ClockFault> {
        let local = civil(local_us).ok_or(ClockFault::Unbelievable)?;
        let instant = match instants_of(local, self.zone).ok_or(ClockFault::Unbelievable)? {
            Shown::Once(instant) => instant,
            Shown::Never => return Err(ClockFault::Skipped),
            Shown::Twice { first, second } => {
                let is_past = |instant: Timestamp, last: i64| match self.is_backward {
                    false => instant.as_microsecond() < last,
                    true => instant.as_microsecond() > last,
                };
                // The one that comes first in the order of the rows, unless the rows are past it.
                let (next, other) = match self.is_backward {
                    false => (first, second),
                    true => (second, first),
                };
                match self.last_us {
                    Some(last) if is_past(next, last) => other,
                    _ => next,
                }
            }
        };
        self.remember(instant, local_us);
        Ok(instant.as_microsecond())
    }

    /// Remembers how far around an instant the offset does not change.
    fn remember(&mut self, instant: Timestamp, local_us: i64) {
        let time_us = instant.as_microsecond();
        // A day's distance from a change keeps skipped and repeated times out. A change
        // at this very instant lies before it.
        let just_after = Timestamp::from_microsecond(time_us + 1).unwrap_or(instant);
        let before = self.zone.preceding(just_after).next();
        let after = self.zone.following(instant).next();
        let offset_us = local_us - time_us;
        let from = before.map_or(BELIEVABLE_US.start, |change| {
            change.timestamp().as_microsecond() + offset_us + DAY_US
        });
        let to = after.map_or(BELIEVABLE_US.end, |change| {
            change.timestamp().as_microsecond() + offset_us - DAY_US
        });
        self.steady = Steady {
            local_us: from..to.max(from),
            offset_us,
        };
    }
}

fn civil(local_us: i64) -> Option<DateTime> {
    let seconds = local_us.div_euclid(SECOND_US);
    let nanos = local_us.rem_euclid(SECOND_US) * 1000;
    let as_utc = Timestamp::new(seconds, i32::try_from(nanos).ok()?).ok()?;
    Some(as_utc.to_zoned_datetime(TimeZone::UTC).datetime())
}

/// Microseconds since 1970 by the local clock at midnight of a date.
pub fn midnight_us(date: Date) -> i64 {
    let epoch = jiff::civil::date(1970, 1, 1);
    (date - epoch).get_days() as i64 * DAY_US
}

#[cfg(test)]
mod tests {
    use super::*;

    const MINUTE_US: i64 = 60 * SECOND_US;

    fn at(date: Date, hour: i64, minute: i64) -> i64 {
        midnight_us(date) + (hour * 60 + minute) * MINUTE_US
    }

    fn steps_min(is_backward: bool, minutes: &[i64]) -> Vec<i64> {
        let zone = TimeZone::get("Europe/Madrid").unwrap();
        let mut clock = Clock::new(&zone, is_backward);
        let date = jiff::civil::date(2026, 10, 25);
        let read: Vec<i64> = minutes
            .iter()
            .map(|minute| clock.instant_us(at(date, 0, *minute)).unwrap())
            .collect();
        read.windows(2)
            .map(|pair| (pair[1] - pair[0]) / MINUTE_US)
            .collect()
    }

    #[test]
    fn the_repeated_hour_goes_on_by_row_order() {
        assert_eq!(
            steps_min(false, &[160, 170, 120, 130, 180]),
            [10, 10, 10, 50]
        );
        assert_eq!(
            steps_min(true, &[180, 130, 120, 170, 160]),
            [-50, -10, -10, -10]
        );
    }

    #[test]
    fn a_skipped_hour_is_an_error() {
        let zone = TimeZone::get("Europe/Madrid").unwrap();
        let mut clock = Clock::new(&zone, false);
        let date = jiff::civil::date(2026, 3, 29);
        assert!(clock.instant_us(at(date, 1, 59)).is_ok());
        assert_eq!(clock.instant_us(at(date, 2, 30)), Err(ClockFault::Skipped));
    }

    #[test]
    fn remembered_offsets_are_those_of_the_zone() {
        let zone = TimeZone::get("Australia/Lord_Howe").unwrap();
        let mut clock = Clock::new(&zone, false);
        let mut date = jiff::civil::date(2026, 1, 1);
        while date.year() == 2026 {
            let local = date.at(12, 0, 0, 0);
            let expected = zone.to_timestamp(local).unwrap().as_microsecond();
            assert_eq!(clock.instant_us(at(date, 12, 0)), Ok(expected), "{date}");
            date = date.tomorrow().unwrap();
        }
    }
}
