//! RFC 3339 (July 2002), section 5.8, "Examples": times in the profile of ISO 8601 that
//! the internet uses, and the same instants that the RFC says they are.

use jiff::tz::TimeZone;

use crate::logs::several_runs::log_times_us;

/// Microseconds since 1970 of a time, by the time library.
fn instant_us(text: &str) -> i64 {
    text.parse::<jiff::Timestamp>().unwrap().as_microsecond()
}

#[test]
fn an_offset_is_the_same_instant_as_its_utc() {
    // "1996-12-19T16:39:57-08:00 … is equivalent to 1996-12-20T00:39:57Z in UTC."
    let zone = TimeZone::get("Europe/Madrid").unwrap();
    let times = ["1996-12-19T16:39:57-08:00", "1996-12-20T00:40:57Z"];
    let read = log_times_us(&times, &zone);
    assert_eq!(read[0], instant_us("1996-12-20T00:39:57Z"));
    assert_eq!(read[1] - read[0], 60_000_000);
}

#[test]
fn fractions_of_a_second_and_odd_offsets_are_kept() {
    let times = [
        // "20 minutes and 50.52 seconds after the 23rd hour of April 12th, 1985 in UTC"
        "1985-04-12T23:20:50.52Z",
        // Netherlands time, 20 minutes ahead: "noon, January 1, 1937"
        "1937-01-01T12:00:27.87+00:20",
    ];
    let read = log_times_us(&times, &TimeZone::UTC);
    // 1985-04-12 is day 5580 since 1970; 1937-01-01 is day −12053.
    let day_us = 86_400_000_000_i64;
    let clock_us = |h: i64, m: i64, s_us: i64| (h * 3600 + m * 60) * 1_000_000 + s_us;
    assert!(read.contains(&(5580 * day_us + clock_us(23, 20, 50_520_000))));
    assert!(read.contains(&(-12053 * day_us + clock_us(11, 40, 27_870_000))));
}
