//! What notes say as a whole: their unit, whether the vessel was dry, and what holds for all
//! their lines.

use jiff::civil::Date;

use super::form::Form;
use super::free_clock::FreeClock;
use super::free_line::{first_number, read_free, units_in};
use super::line::Sky;
use super::value::{Number, Refusal};
use crate::measure::{Kind, Unit};

/// What people call a vessel without water.
const DRY: [&str; 7] = [
    "dry pot",
    "dry vessel",
    "dry run",
    "dry test",
    "empty pot",
    "empty vessel",
    "no water",
];
/// Water gets no hotter than this much above its boiling point, however it was read, K.
const ABOVE_WATER_K: f64 = 5.0;
/// Forms of a date that stands in a line of its own.
const DATES: [&str; 6] = [
    "%Y-%m-%d",
    "%B %d, %Y",
    "%B %d %Y",
    "%d %B %Y",
    "%b %d, %Y",
    "%d %b %Y",
];

/// What notes say before any line of them is read.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Survey {
    /// The unit of temperature that stands behind their numbers, where it is one.
    pub unit: Option<Unit>,
    /// They call the vessel dry.
    pub says_dry: bool,
    /// Hottest and coldest temperature of the vessel or of its water, in whatever unit.
    pub span: Option<(f64, f64)>,
}

/// Looks over notes.
pub fn survey(text: &str) -> Survey {
    let lines = || text.lines().filter(|line| !is_remark(line));
    let units: Vec<Unit> = lines().flat_map(units_in).collect();
    let unit = units
        .first()
        .filter(|first| units.iter().all(|unit| unit == *first));
    let lower = text.to_lowercase();
    let timed = lines().filter_map(FreeClock::at_start);
    let numbers: Vec<f64> = timed.filter_map(|(_, rest)| first_number(rest)).collect();
    let end = |choose: fn(f64, f64) -> f64| numbers.iter().copied().reduce(choose);
    Survey {
        unit: unit.copied(),
        says_dry: DRY.iter().any(|words| lower.contains(words)),
        span: end(f64::max).zip(end(f64::min)),
    }
}

impl Survey {
    /// Whether what was read can be no water, in a unit, where water boils at so many °C.
    pub fn is_hotter_than_water(&self, unit: Unit, boiling_point_c: f64) -> bool {
        let hottest = self.span.map(|(hottest, _)| unit.to_base(hottest));
        hottest.is_some_and(|hottest_c| hottest_c > boiling_point_c + ABOVE_WATER_K)
    }

    /// The unit of notes that name none, and that can be water in degrees Fahrenheit alone.
    pub fn only_possible_unit(&self, boiling_point_c: f64) -> Option<Unit> {
        let fahrenheit = Unit::parse("°F", &[Kind::Temperature])?;
        let celsius = Unit::base(Kind::Temperature);
        let is_only = self.unit.is_none()
            && self.is_hotter_than_water(celsius, boiling_point_c)
            && !self.is_hotter_than_water(fahrenheit, boiling_point_c)
            && self
                .span
                .is_some_and(|(_, coldest)| fahrenheit.to_base(coldest) > 0.0);
        is_only.then_some(fahrenheit)
    }
}

/// Whether a line is blank or a remark.
pub fn is_remark(line: &str) -> bool {
    line.trim().is_empty() || line.trim_start().starts_with('#')
}

/// What a line without a time says of all the others, or beside them.
#[derive(Debug, Clone, PartialEq)]
pub enum General {
    /// The air of every line that has none of its own.
    Air(Number),
    /// The sky of every line that has none of its own.
    Sky(Sky),
    /// The day, or what the vessel holds: nothing to write into the log.
    Known,
    /// Words that belong to the line before.
    Words(String),
}

/// Reads a line without a time.
///
/// # Errors
/// A [`Refusal`] for a date that is not that of the sheet, and for a number without a time.
pub fn read_general(form: &Form, text: &str) -> Result<General, Refusal> {
    let text = text.trim();
    if let Some(date) = date_of(text) {
        return match date == form.date {
            true => Ok(General::Known),
            false => Err(Refusal::new(
                format!("found the date {date}, expected {}", form.date),
                format!("say --date {date}, or keep each day's notes in a file of its own"),
            )),
        };
    }
    if let Some(time) = text
        .split_whitespace()
        .next()
        .filter(|first| first.contains(':') && first.starts_with(|c: char| c.is_ascii_digit()))
    {
        // It says what is wrong with it.
        form.time(time)?;
    }
    let has_digit = text.contains(|c: char| c.is_ascii_digit());
    if !has_digit {
        let lower = text.to_lowercase();
        if DRY.iter().any(|words| lower.contains(words)) {
            return Ok(General::Known);
        }
        let sky = read_free(form, text)?.sky;
        return Ok(sky.map_or_else(|| General::Words(text.to_owned()), General::Sky));
    }
    match read_free(form, text) {
        Ok(cells) if cells.tested.is_none() && cells.air.is_some() => {
            Ok(General::Air(cells.air.expect("it is there")))
        }
        _ => Err(Refusal::new(
            format!("found \"{text}\", expected the time first"),
            format!(
                "write every line as in: {}; or air {} for all of them; or # before a remark",
                form.example(),
                form.example_values().2
            ),
        )),
    }
}

fn date_of(text: &str) -> Option<Date> {
    let text = text.trim_end_matches(['.', ':']);
    let text = text.strip_prefix("date:").map_or(text, str::trim);
    DATES
        .iter()
        .find_map(|form| Date::strptime(form, text).ok())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::entry::form::tests::form;

    fn unit(symbol: &str) -> Unit {
        Unit::parse(symbol, &[Kind::Temperature]).unwrap()
    }

    #[test]
    fn notes_tell_their_unit_and_a_dry_pot() {
        let found = survey("July 4\nair 75F\n10:20 165F\n10:35 moved it 5 degrees, 190\n");
        assert_eq!(found.unit, Some(unit("°F")));
        assert_eq!((found.says_dry, found.span), (false, Some((190.0, 165.0))));
        assert!(!found.is_hotter_than_water(unit("°F"), 95.0));
        assert!(survey("Empty pot\n10:20 300F\n").says_dry);
        assert!(survey("10:20 300F\n").is_hotter_than_water(unit("°F"), 100.0));
        assert_eq!(survey("10:20 65C\n10:30 165F\n").unit, None, "two");
    }

    #[test]
    fn numbers_that_are_water_in_fahrenheit_alone_are_that() {
        let fahrenheit = Some(unit("°F"));
        let of = |text: &str| survey(text).only_possible_unit(100.0);
        assert_eq!(of("10:20 85\n10:40 165\n"), fahrenheit);
        assert_eq!(of("10:20 31\n10:40 65\n"), None, "°C may be as well");
        assert_eq!(of("10:20 165\n10:40 365\n"), None, "no water in either");
        assert_eq!(of("10:20 85C\n10:40 165C\n"), None, "it is said");
    }

    #[test]
    fn lines_without_a_time_hold_for_all_or_are_words() {
        let form = form("°F");
        let read = |text: &str| read_general(&form, text);
        assert!(matches!(read("air 75F"), Ok(General::Air(number)) if number.value == 75.0));
        assert!(matches!(read("75F outside"), Ok(General::Air(_))));
        assert_eq!(read("sunny all day"), Ok(General::Sky(Sky::Clear)));
        assert_eq!(read("2026-11-03"), Ok(General::Known));
        assert_eq!(read("November 3, 2026"), Ok(General::Known));
        assert_eq!(read("empty pot"), Ok(General::Known));
        let words = General::Words("black pot, lid on".to_owned());
        assert_eq!(read("black pot, lid on"), Ok(words));
        assert!(
            read("November 4, 2026")
                .unwrap_err()
                .what
                .contains("2026-11-04")
        );
        assert!(
            read("165")
                .unwrap_err()
                .what
                .contains("expected the time first")
        );
    }
}
