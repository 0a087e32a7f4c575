//! Times a tester writes by hand: a clock time, or a full date and time.

use jiff::civil::{Date, DateTime, Time};
use jiff::tz::TimeZone;
use serde::Deserialize;

use crate::local_time::first_instant;

/// A time in the campaign file as written: a string, or TOML's own date-time.
#[derive(Debug, Clone, Deserialize)]
#[serde(untagged)]
pub enum WrittenMoment {
    /// In quotes.
    Text(String),
    /// Without quotes.
    Toml(toml::value::Datetime),
}

impl WrittenMoment {
    /// The date that it is, without a clock time.
    pub fn date(&self) -> Option<Date> {
        self.to_string().parse().ok()
    }
}

impl std::fmt::Display for WrittenMoment {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        match self {
            WrittenMoment::Text(text) => write!(f, "{}", text.trim()),
            WrittenMoment::Toml(value) => write!(f, "{value}"),
        }
    }
}

/// A time that may still need the run's date.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Moment {
    /// Local clock time on the run's date.
    Clock(Time),
    /// Local date and clock time.
    Local(DateTime),
    /// A time with its offset.
    Instant(jiff::Timestamp),
}

impl Moment {
    /// Reads `10:05`, `10:05:30`, `2026-03-14 10:05`, or one with an offset.
    pub fn parse(text: &str) -> Option<Moment> {
        let text = &with_two_digits(text.trim());
        if !text.contains('-') && text.contains(':') {
            return text.parse().ok().map(Moment::Clock);
        }
        if let Ok(instant) = text.parse::<jiff::Timestamp>() {
            return Some(Moment::Instant(instant));
        }
        let has_clock = text.contains(':');
        text.parse().ok().filter(|_| has_clock).map(Moment::Local)
    }

    /// Microseconds since 1970 in the site's zone, on the run's date where the
    /// moment has none; `None` for a time that the clocks there skipped. Of a time that
    /// they showed twice it is the first.
    pub fn resolve_us(&self, run_date: Date, zone: &TimeZone) -> Option<i64> {
        let local = match self {
            Moment::Instant(instant) => return Some(instant.as_microsecond()),
            Moment::Local(local) => *local,
            Moment::Clock(clock) => run_date.to_datetime(*clock),
        };
        first_instant(local, zone).map(|instant| instant.as_microsecond())
    }
}

/// A time with its hour in two digits: `9:05` as `09:05`.
fn with_two_digits(text: &str) -> String {
    let start = text.rfind([' ', 'T']).map_or(0, |at| at + 1);
    let (before, clock) = text.split_at(start);
    match clock.find(':') {
        Some(1) => format!("{before}0{clock}"),
        _ => text.to_owned(),
    }
}

impl std::fmt::Display for Moment {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        match self {
            Moment::Clock(clock) => write!(f, "{}", clock.strftime("%H:%M")),
            Moment::Local(local) => write!(f, "{}", local.strftime("%Y-%m-%d %H:%M")),
            Moment::Instant(instant) => write!(f, "{instant}"),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn clock_date_time_and_offset_are_told_apart() {
        assert!(matches!(Moment::parse("10:05"), Some(Moment::Clock(_))));
        assert_eq!(Moment::parse("9:05"), Moment::parse("09:05"));
        assert_eq!(
            Moment::parse("2026-03-14 9:05"),
            Moment::parse("2026-03-14 09:05")
        );
        assert!(matches!(
            Moment::parse("2026-03-14 10:05"),
            Some(Moment::Local(_))
        ));
        assert!(matches!(
            Moment::parse("2026-03-14T10:05:00-05:00"),
            Some(Moment::Instant(_))
        ));
    }

    #[test]
    fn a_bare_date_or_words_are_no_moment() {
        assert_eq!(Moment::parse("2026-03-14"), None);
        assert_eq!(Moment::parse("after lunch"), None);
        assert_eq!(Moment::parse("25:00"), None);
    }
}
