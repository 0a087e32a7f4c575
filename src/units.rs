//! Unit conversions, and the only place where numbers become text for people.

use jiff::Timestamp;
use jiff::tz::TimeZone;
use simmerline_math::{log10, pow, power_of_ten};

/// Seconds in an hour.
pub const SECONDS_PER_HOUR: f64 = 3600.0;
/// Microseconds in a second: the resolution of a reading's time.
pub const MICROSECONDS_PER_SECOND: f64 = 1e6;

/// Seconds between two times in microseconds since 1970.
pub fn seconds_between(from_us: i64, to_us: i64) -> f64 {
    to_us.saturating_sub(from_us) as f64 / MICROSECONDS_PER_SECOND
}

/// A number with a fixed count of decimals, a true minus sign and no "−0".
///
/// ```
/// assert_eq!(simmerline::units::fixed(-1.882, 2), "−1.88");
/// assert_eq!(simmerline::units::fixed(-0.001, 1), "0.0");
/// ```
pub fn fixed(value: f64, decimals: usize) -> String {
    let text = format!("{value:.decimals$}");
    match text.strip_prefix('-') {
        Some(digits) if is_zero(value, decimals) => digits.to_owned(),
        Some(digits) => format!("−{digits}"),
        None => text,
    }
}

/// Whether a number, with so many decimals, has no digit but zeros.
///
/// ```
/// assert!(simmerline::units::is_zero(-0.4, 0));
/// assert!(!simmerline::units::is_zero(-0.4, 1));
/// ```
pub fn is_zero(value: f64, decimals: usize) -> bool {
    let text = format!("{value:.decimals$}");
    let digits = text.strip_prefix('-').unwrap_or(&text);
    digits.bytes().all(|b| b == b'0' || b == b'.')
}

/// A number as short as it is exact enough for a limit: `450`, `1`, `0.75`.
///
/// ```
/// assert_eq!(simmerline::units::short(1727.9999999999998), "1728");
/// ```
pub fn short(value: f64) -> String {
    // Without what is beyond the digits that anybody states.
    let text = format!("{}", (value * SHORT).round() / SHORT);
    text.replace('-', "−")
}

/// Nine decimals.
const SHORT: f64 = 1e9;

/// `from – to`, both with the same count of decimals; one number where they agree.
pub fn range(from: f64, to: f64, decimals: usize) -> String {
    let (from, to) = (fixed(from, decimals), fixed(to, decimals));
    if from == to {
        from
    } else {
        format!("{from} – {to}")
    }
}

/// Kilograms in a pound.
///
/// # Source
/// NIST SP 811 (2008), appendix B.8: exact.
pub const KILOGRAMS_PER_POUND: f64 = 0.453_592_37;

/// Degrees Fahrenheit of a temperature in degrees Celsius.
///
/// # Source
/// NIST SP 811 (2008), appendix B.8.
///
/// ```
/// assert_eq!(simmerline::units::celsius_to_fahrenheit(100.0), 212.0);
/// ```
pub fn celsius_to_fahrenheit(celsius: f64) -> f64 {
    celsius * 1.8 + 32.0
}

/// Degrees Celsius of a temperature in degrees Fahrenheit.
///
/// # Source
/// NIST SP 811 (2008), appendix B.8.
///
/// ```
/// assert_eq!(simmerline::units::fahrenheit_to_celsius(212.0), 100.0);
/// ```
pub fn fahrenheit_to_celsius(fahrenheit: f64) -> f64 {
    (fahrenheit - 32.0) / 1.8
}

/// Pounds of a mass in kilograms.
pub fn kilograms_to_pounds(kilograms: f64) -> f64 {
    kilograms / KILOGRAMS_PER_POUND
}

/// Metres in a foot.
///
/// # Source
/// NIST SP 811 (2008), appendix B.8: exact.
const METRES_PER_FOOT: f64 = 0.3048;
/// Metres in a mile.
///
/// # Source
/// NIST SP 811 (2008), appendix B.8: exact.
const METRES_PER_MILE: f64 = 1609.344;
/// Litres in a gallon of the US.
///
/// # Source
/// NIST SP 811 (2008), appendix B.8: exact, 231 cubic inches.
const LITRES_PER_US_GALLON: f64 = 3.785_411_784;

/// Feet of a length in metres.
pub fn metres_to_feet(metres: f64) -> f64 {
    metres / METRES_PER_FOOT
}

/// Square feet of an area in square metres.
pub fn square_metres_to_square_feet(square_metres: f64) -> f64 {
    square_metres / (METRES_PER_FOOT * METRES_PER_FOOT)
}

/// Miles per hour of a speed in metres per second.
pub fn metres_per_second_to_miles_per_hour(metres_per_second: f64) -> f64 {
    metres_per_second * SECONDS_PER_HOUR / METRES_PER_MILE
}

/// Pounds per square foot of a mass per area in kilograms per square metre.
pub fn kilograms_per_square_metre_to_pounds_per_square_foot(kilograms_per_m2: f64) -> f64 {
    kilograms_to_pounds(kilograms_per_m2) * METRES_PER_FOOT * METRES_PER_FOOT
}

/// Gallons of the US of a volume in litres.
pub fn litres_to_us_gallons(litres: f64) -> f64 {
    litres / LITRES_PER_US_GALLON
}

/// A temperature difference in degrees Fahrenheit, of one in kelvin.
///
/// # Source
/// NIST SP 811 (2008), appendix B.8.
///
/// ```
/// assert_eq!(simmerline::units::kelvin_to_fahrenheit_difference(50.0), 90.0);
/// ```
pub fn kelvin_to_fahrenheit_difference(kelvin: f64) -> f64 {
    kelvin * 1.8
}

/// Probabilities below it are not told apart.
pub const LEAST_PROBABILITY: f64 = 0.001;

/// A probability: `0.034`, `0.34`, or `< 0.001`.
///
/// ```
/// assert_eq!(simmerline::units::probability(0.0342), "0.034");
/// assert_eq!(simmerline::units::probability(0.0002), "<\u{a0}0.001");
/// ```
pub fn probability(p: f64) -> String {
    match p {
        _ if p < LEAST_PROBABILITY => "<\u{a0}0.001".to_owned(),
        _ if p < 0.1 => fixed(p, 3),
        _ => fixed(p, 2),
    }
}

/// Digits after the point that show a number with so many significant digits; at most three.
///
/// ```
/// assert_eq!(simmerline::units::digits_after_point(4.35, 2), 1);
/// assert_eq!(simmerline::units::digits_after_point(15.1, 2), 0);
/// ```
pub fn digits_after_point(value: f64, digits: i32) -> usize {
    if value.is_finite() && value > 0.0 {
        (f64::from(digits - 1) - log10(value).floor()).clamp(0.0, 3.0) as usize
    } else {
        1
    }
}

/// Decimals that show a value no finer than its half-width deserves: the
/// half-width keeps one significant digit, or two where the first is a 1 or 2.
/// At most three.
///
/// ```
/// assert_eq!(simmerline::units::decimals_for(7.2), 0);
/// assert_eq!(simmerline::units::decimals_for(1.4), 1);
/// assert_eq!(simmerline::units::decimals_for(0.04), 2);
/// ```
///
/// # Source
/// JCGM 100:2008, 7.2.6: no more than two significant digits.
pub fn decimals_for(half_width: f64) -> usize {
    if half_width.is_finite() && half_width > 0.0 {
        let finest = if half_width < 3.0 * pow(10_f64, log10(half_width).floor()) {
            1.0
        } else {
            0.0
        };
        (finest - log10(half_width).floor()).clamp(0.0, 3.0) as usize
    } else {
        1
    }
}

/// Hours of the day as a clock: `10.25` → `10:15`, rounded to the minute.
pub fn clock_from_hours(hours: f64) -> String {
    let minutes = (hours * 60.0).round().rem_euclid(1440.0) as u32;
    format!("{:02}:{:02}", minutes / 60, minutes % 60)
}

/// A span of time as people say it: `35 min`, `1 h 40 min`.
///
/// ```
/// assert_eq!(simmerline::units::spoken_duration(6000.0), "1 h 40 min");
/// ```
pub fn spoken_duration(seconds: f64) -> String {
    let minutes = (seconds / 60.0).round() as u64;
    match (minutes / 60, minutes % 60) {
        (0, m) => format!("{m} min"),
        (h, 0) => format!("{h} h"),
        (h, m) => format!("{h} h {m} min"),
    }
}

/// A count with its noun: `1 day`, `3 days`.
pub fn counted(count: usize, noun: &str) -> String {
    format!("{count} {noun}{}", if count == 1 { "" } else { "s" })
}

/// A number below a limit, to be told so that it reads as below it: rounded to the fewest
/// decimals that show it, from `fewest` to four, or cut off after the fourth; with that count
/// of decimals.
///
/// ```
/// assert_eq!(simmerline::units::told_below(0.741, 0.75, 2), (0.741, 2));
/// assert_eq!(simmerline::units::told_below(0.7496, 0.75, 2), (0.7496, 4));
/// assert_eq!(simmerline::units::told_below(0.74999, 0.75, 2), (0.7499, 4));
/// ```
pub fn told_below(value: f64, limit: f64, fewest: usize) -> (f64, usize) {
    let scaled = |decimals: usize| power_of_ten(decimals as i32);
    let reads_below =
        |decimals: &usize| (value * scaled(*decimals)).round() / scaled(*decimals) < limit;
    match (fewest..=MOST_DECIMALS).find(reads_below) {
        Some(decimals) => (value, decimals),
        None => {
            let scale = scaled(MOST_DECIMALS);
            ((value * scale).floor() / scale, MOST_DECIMALS)
        }
    }
}

/// Most decimals with which a number is told to be below a limit.
const MOST_DECIMALS: usize = 4;

/// The same text with a capital letter first.
pub fn sentence_case(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or_else(String::new, |first| {
        first.to_uppercase().chain(letters).collect()
    })
}

/// A reading's time (microseconds since 1970) in a zone.
pub fn zoned(time_us: i64, zone: &TimeZone) -> jiff::ZonedDateTime {
    Timestamp::from_microsecond(time_us)
        .expect("every time was read from a timestamp")
        .to_zoned_datetime(zone.clone())
}

/// Local clock time, `10:20`.
pub fn local_clock(time_us: i64, zone: &TimeZone) -> String {
    zoned(time_us, zone).strftime("%H:%M").to_string()
}

/// Local clock time as hours since midnight.
pub fn local_hours(time_us: i64, zone: &TimeZone) -> f64 {
    let clock = zoned(time_us, zone).datetime().time();
    let since_midnight = clock.duration_since(jiff::civil::Time::midnight());
    since_midnight.as_secs_f64() / SECONDS_PER_HOUR
}

/// RFC 3339 local time with its offset, `2026-03-14T10:20:00-05:00`.
pub fn rfc3339(time_us: i64, zone: &TimeZone) -> String {
    zoned(time_us, zone)
        .strftime("%Y-%m-%dT%H:%M:%S%.f%:z")
        .to_string()
}

/// A date in words, `14 March 2026`.
pub fn spoken_date(date: jiff::civil::Date) -> String {
    date.strftime("%-d %B %Y").to_string()
}

#[cfg(test)]
mod tests {
    use super::*;

    // NIST SP 811 (2008), appendix B.8, prints factors from units of the US to those of the SI,
    // with seven digits where they are not exact; held against them to these.
    #[test]
    fn units_of_the_us_are_those_of_nist_sp_811() {
        let one_of = |to_us: fn(f64) -> f64, si: f64| {
            let us = to_us(si);
            assert!((us - 1.0).abs() < 5e-7, "{si} of the SI are {us}");
        };
        one_of(metres_to_feet, 0.3048);
        one_of(square_metres_to_square_feet, 9.290_304e-2);
        one_of(metres_per_second_to_miles_per_hour, 0.447_04);
        one_of(
            kilograms_per_square_metre_to_pounds_per_square_foot,
            4.882_428,
        );
        one_of(litres_to_us_gallons, 3.785_412);
        one_of(kilograms_to_pounds, 0.453_592_37);
        one_of(kelvin_to_fahrenheit_difference, 5.0 / 9.0);
    }
}
