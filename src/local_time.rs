//! Local clock times to instants.
//!
//! Where clocks are put forward they skip some times, and where they are put back they show
//! some twice. [`instants_of`] tells these apart; of a time that is shown twice, everything
//! else here takes the first.

use jiff::Timestamp;
use jiff::civil::{Date, DateTime};
use jiff::tz::{AmbiguousOffset, TimeZone};

use crate::units::MICROSECONDS_PER_SECOND;

/// When the clocks of a zone show a local time.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Shown {
    /// They skip it.
    Never,
    Once(Timestamp),
    Twice {
        first: Timestamp,
        second: Timestamp,
    },
}

/// When the clocks of a zone show a local time; `None` beyond all times that there are here.
pub fn instants_of(local: DateTime, zone: &TimeZone) -> Option<Shown> {
    let ambiguous = zone.to_ambiguous_timestamp(local);
    match ambiguous.offset() {
        AmbiguousOffset::Gap { .. } => Some(Shown::Never),
        AmbiguousOffset::Unambiguous { .. } => ambiguous.unambiguous().ok().map(Shown::Once),
        AmbiguousOffset::Fold { .. } => Some(Shown::Twice {
            first: ambiguous.earlier().ok()?,
            second: ambiguous.later().ok()?,
        }),
    }
}

/// The instant of a local time; `None` for one that the clocks skip.
pub fn first_instant(local: DateTime, zone: &TimeZone) -> Option<Timestamp> {
    match instants_of(local, zone)? {
        Shown::Never => None,
        Shown::Once(instant) | Shown::Twice { first: instant, .. } => Some(instant),
    }
}

/// The instant of a local time as seconds since 1970, UTC; of one that the clocks skip, the
/// instant at which it would have been had they not been put forward.
pub fn unix_seconds(local: DateTime, zone: &TimeZone) -> Option<f64> {
    let instant = zone.to_ambiguous_timestamp(local).compatible().ok()?;
    Some(instant.as_microsecond() as f64 / MICROSECONDS_PER_SECOND)
}

/// When a local date begins, microseconds since 1970, UTC; where the clocks skip midnight, as
/// [`unix_seconds`].
pub fn midnight_us(date: Date, zone: &TimeZone) -> Option<i64> {
    let midnight = zone.to_ambiguous_timestamp(date.at(0, 0, 0, 0));
    Some(midnight.compatible().ok()?.as_microsecond())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn at(local: &str) -> (DateTime, TimeZone) {
        let zone = TimeZone::get("Europe/Madrid").unwrap();
        (local.parse().unwrap(), zone)
    }

    fn utc(text: &str) -> Timestamp {
        text.parse().unwrap()
    }

    #[test]
    fn a_time_that_is_shown_twice_is_the_first() {
        let (local, zone) = at("2026-10-25T02:30");
        let (first, second) = (utc("2026-10-25T00:30Z"), utc("2026-10-25T01:30Z"));
        assert_eq!(
            instants_of(local, &zone),
            Some(Shown::Twice { first, second })
        );
        assert_eq!(first_instant(local, &zone), Some(first));
        let seconds = first.as_second() as f64;
        assert_eq!(unix_seconds(local, &zone), Some(seconds));
    }

    #[test]
    fn a_time_that_is_skipped_is_none_or_lies_behind_the_change() {
        let (local, zone) = at("2026-03-29T02:30");
        assert_eq!(instants_of(local, &zone), Some(Shown::Never));
        assert_eq!(first_instant(local, &zone), None);
        let seconds = utc("2026-03-29T01:30Z").as_second() as f64;
        assert_eq!(unix_seconds(local, &zone), Some(seconds));
    }

    #[test]
    fn any_other_time_is_shown_once() {
        let (local, zone) = at("2026-06-21T12:00");
        let noon = utc("2026-06-21T10:00Z");
        assert_eq!(instants_of(local, &zone), Some(Shown::Once(noon)));
        assert_eq!(first_instant(local, &zone), Some(noon));
    }
}
