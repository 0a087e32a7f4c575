//! Times as a log writes them, to instants.

use jiff::Timestamp;
use jiff::civil::DateTime;
use jiff::tz::{AmbiguousOffset, TimeZone};

/// Times between the years 1900 and 2200, in microseconds since 1970.
const BELIEVABLE_US: std::ops::Range<i64> = -2_208_988_800_000_000..7_258_118_400_000_000;

/// Reads the time column from top to bottom. Keeps the last instant, because the
/// hour that a clock shows twice in autumn is settled by the order of the rows.
pub struct Clock<'z> {
    zone: &'z TimeZone,
    last_us: i64,
}

/// Why a time cannot be read.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum ClockFault {
    /// The cell is blank.
    Blank,
    /// No date and time.
    Unreadable,
    /// The clocks skipped it.
    Skipped,
}

impl<'z> Clock<'z> {
    /// A clock in the site's zone.
    pub fn new(zone: &'z TimeZone) -> Self {
        Clock {
            zone,
            last_us: i64::MIN,
        }
    }

    /// Microseconds since 1970, UTC, of a local date and time, or of an ISO 8601
    /// time with an offset.
    ///
    /// # Errors
    /// [`ClockFault`] for a cell that holds no time, or one that does not exist.
    pub fn read_us(&mut self, cell: &str) -> Result<i64, ClockFault> {
        let cell = cell.trim();
        if cell.is_empty() {
            return Err(ClockFault::Blank);
        }
        let time_us = match cell.parse::<Timestamp>() {
            Ok(instant) => instant.as_microsecond(),
            Err(_) => self.local_us(cell)?,
        };
        if !BELIEVABLE_US.contains(&time_us) {
            return Err(ClockFault::Unreadable);
        }
        self.last_us = time_us;
        Ok(time_us)
    }

    fn local_us(&self, cell: &str) -> Result<i64, ClockFault> {
        if !cell.contains(':') {
            return Err(ClockFault::Unreadable);
        }
        let local: DateTime = cell.parse().map_err(|_| ClockFault::Unreadable)?;
        let ambiguous = self.zone.to_ambiguous_timestamp(local);
        let instant = match ambiguous.offset() {
            AmbiguousOffset::Unambiguous { .. } => ambiguous.unambiguous(),
            AmbiguousOffset::Gap { .. } => return Err(ClockFault::Skipped),
            AmbiguousOffset::Fold { .. } => {
                let first = ambiguous.earlier();
                let before_last = first
                    .as_ref()
                    .is_ok_and(|first| first.as_microsecond() < self.last_us);
                if before_last {
                    ambiguous.later()
                } else {
                    first
                }
            }
        };
        instant
            .map(Timestamp::as_microsecond)
            .map_err(|_| ClockFault::Unreadable)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn read_all(zone: &str, cells: &[&str]) -> Vec<Result<i64, ClockFault>> {
        let zone = TimeZone::get(zone).unwrap();
        let mut clock = Clock::new(&zone);
        cells.iter().map(|cell| clock.read_us(cell)).collect()
    }

    #[test]
    fn local_time_and_offset_give_the_same_instant() {
        let cells = [
            "2026-03-14 10:20:00",
            "2026-03-14T10:20:00-05:00",
            "2026-03-14T15:20Z",
        ];
        let read = read_all("America/Lima", &cells);
        assert_eq!(read[0], read[1]);
        assert_eq!(read[1], read[2]);
    }

    #[test]
    fn the_repeated_hour_goes_on_by_row_order() {
        let cells = [
            "2026-10-25 02:40:00",
            "2026-10-25 02:50:00",
            "2026-10-25 02:00:00",
            "2026-10-25 02:10:00",
        ];
        let read: Vec<i64> = read_all("Europe/Madrid", &cells)
            .into_iter()
            .flatten()
            .collect();
        let steps: Vec<i64> = read
            .windows(2)
            .map(|pair| (pair[1] - pair[0]) / 60_000_000)
            .collect();
        assert_eq!(steps, [10, 10, 10]);
    }

    #[test]
    fn a_skipped_hour_is_an_error() {
        let read = read_all("Europe/Madrid", &["2026-03-29 02:30:00"]);
        assert_eq!(read[0], Err(ClockFault::Skipped));
    }

    #[test]
    fn a_bare_date_or_number_is_no_time() {
        let read = read_all("UTC", &["2026-03-14", "46000.5", "", "10:20"]);
        assert_eq!(read[2], Err(ClockFault::Blank));
        for index in [0, 1, 3] {
            assert_eq!(read[index], Err(ClockFault::Unreadable), "{index}");
        }
    }
}
