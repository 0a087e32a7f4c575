//! One line of a field sheet as a person types it: `31.5 24 1 clear thin haze`.

use jiff::civil::{Date, Time};
use jiff::tz::TimeZone;

use crate::believable::{
    ABOVE_BOILING_K, AIR_C, COLDEST_TYPED_WATER_C, Range, TYPED_IRRADIANCE_W_M2,
};
use crate::local_time::{Shown, instants_of};
use crate::measure::{Kind, Unit};
use crate::physics::wind::BEAUFORT;
use crate::units::fixed;

/// Longest number, characters.
const LONGEST_NUMBER: usize = 10;
/// Longest note, characters.
const LONGEST_NOTE: usize = 500;
/// What stands for a value that was not read.
const NOT_READ: [&str; 3] = ["-", "–", "—"];

/// What holds for every line of a sheet.
#[derive(Debug, Clone)]
pub struct Form {
    pub date: Date,
    /// The site's zone.
    pub zone: TimeZone,
    pub water_unit: Unit,
    pub air_unit: Unit,
    /// Of water at the site, °C.
    pub boiling_point_c: f64,
    /// A sensor of irradiance is read by hand, too.
    pub has_irradiance: bool,
    /// The data are invented.
    pub is_demonstration: bool,
}

/// Why a line is not taken, and what to type instead.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Refusal {
    /// What was found and what was expected; lower case, no full stop.
    pub what: String,
    pub hint: String,
}

impl Refusal {
    pub fn new(what: impl Into<String>, hint: impl Into<String>) -> Self {
        Refusal {
            what: what.into(),
            hint: hint.into(),
        }
    }
}

/// A number with the digits that were written: they show the instrument's step.
#[derive(Debug, Clone, PartialEq)]
pub struct Number {
    /// With a decimal point.
    pub text: String,
    pub value: f64,
}

/// The sky near the sun since the line before.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Sky {
    /// No cloud.
    Clear,
    Cloud,
}

impl Sky {
    /// The word in the log.
    pub fn word(self) -> &'static str {
        match self {
            Sky::Clear => "clear",
            Sky::Cloud => "cloud",
        }
    }
}

/// What was read at one time.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Cells {
    /// In the sheet's unit.
    pub water: Option<Number>,
    /// In the sheet's unit.
    pub air: Option<Number>,
    /// Number of the Beaufort scale.
    pub wind: Option<Number>,
    pub sky: Option<Sky>,
    /// W/m².
    pub irradiance: Option<Number>,
    pub notes: String,
}

/// A line with the time that it names itself, if it does.
#[derive(Debug, Clone, PartialEq)]
pub struct TypedLine {
    pub time: Option<Time>,
    pub cells: Cells,
}

impl Form {
    /// Reads `[time] water [air] [wind] [sky] [notes…]`, with the irradiance before the notes
    /// where a sensor is read.
    ///
    /// # Errors
    /// A [`Refusal`] for the first item that cannot be read or cannot be true.
    pub fn read_line(&self, text: &str) -> Result<TypedLine, Refusal> {
        if text.trim().chars().any(|c| c.is_control() && c != '\t') {
            return Err(Refusal::new(
                "found a control character, as an arrow key gives",
                "type the line again; undo takes a line back that was taken",
            ));
        }
        let (first, after_first) = next_word(text);
        let (time, rest) = if first.contains(':') {
            (Some(self.time(first)?), after_first)
        } else {
            (None, text)
        };
        let (water, rest) = next_word(rest);
        let (air, rest) = next_word(rest);
        let (wind, rest) = next_word(rest);
        let (sky, rest) = next_word(rest);
        let (irradiance, notes) = match self.has_irradiance {
            true => next_word(rest),
            false => ("", rest),
        };
        if water.is_empty() {
            return Err(Refusal::new(
                format!(
                    "found nothing, expected the water temperature in {}",
                    self.water_unit.symbol()
                ),
                "type it behind the time, or - if it was not read",
            ));
        }
        let cells = Cells {
            water: self.water(water)?,
            air: self.air(air)?,
            wind: self.wind(wind)?,
            sky: self.sky(sky)?,
            irradiance: self.irradiance(irradiance)?,
            notes: self.notes(notes)?,
        };
        if cells == Cells::default() {
            return Err(Refusal::new(
                "found no value",
                "an empty line passes over a time at which nothing was read",
            ));
        }
        Ok(TypedLine { time, cells })
    }

    /// A clock time of the sheet's date.
    ///
    /// # Errors
    /// If it is none, or the clocks at the site skipped it.
    pub fn time(&self, text: &str) -> Result<Time, Refusal> {
        let Some(time) = clock(text) else {
            return Err(Refusal::new(
                format!("found \"{text}\", expected a time of the day"),
                "write hours and minutes, as in 10:22",
            ));
        };
        let local = self.date.to_datetime(time);
        if instants_of(local, &self.zone) == Some(Shown::Never) {
            return Err(Refusal::new(
                format!("found {text}, which the clocks skipped on {}", self.date),
                "correct the time, the date or the site's time_zone",
            ));
        }
        Ok(time)
    }

    /// Water temperature; `None` where it was not read.
    ///
    /// # Errors
    /// If it is no number, below −5 °C, or more than 2 K above the local boiling point.
    pub fn water(&self, text: &str) -> Result<Option<Number>, Refusal> {
        let highest_c = self.boiling_point_c + ABOVE_BOILING_K;
        temperature(
            "water",
            self.water_unit,
            &(COLDEST_TYPED_WATER_C..=highest_c),
            text,
        )
    }

    /// Temperature of the air; `None` where it was not read.
    ///
    /// # Errors
    /// If it is no number, or not within −40 to 60 °C.
    pub fn air(&self, text: &str) -> Result<Option<Number>, Refusal> {
        temperature("air", self.air_unit, &AIR_C, text)
    }

    /// Number of the Beaufort scale; `None` where the wind was not looked at.
    ///
    /// # Errors
    /// If it is no number or half number from 0 to 8.
    pub fn wind(&self, text: &str) -> Result<Option<Number>, Refusal> {
        if is_not_read(text) {
            return Ok(None);
        }
        let strongest = BEAUFORT.len() - 1;
        let found = number(text);
        let is_on_scale = |number: &Number| {
            (0.0..=strongest as f64).contains(&number.value) && (2.0 * number.value).fract() == 0.0
        };
        match found {
            Some(number) if is_on_scale(&number) => Ok(Some(number)),
            Some(number) if number.value > strongest as f64 => Err(Refusal::new(
                format!(
                    "found a wind of {text}, beyond {strongest} on the Beaufort scale: nobody cooks in that"
                ),
                "type the number of what you saw; help shows the scale",
            )),
            _ => Err(Refusal::new(
                format!(
                    "found \"{text}\", expected the wind as a Beaufort number, 0 to {strongest}"
                ),
                "type the number of what you saw, or -; help shows the scale",
            )),
        }
    }

    /// The sky near the sun; `None` where it is not said.
    ///
    /// # Errors
    /// If it is another word.
    pub fn sky(&self, text: &str) -> Result<Option<Sky>, Refusal> {
        if is_not_read(text) {
            return Ok(None);
        }
        match text.to_lowercase().as_str() {
            "clear" | "c" => Ok(Some(Sky::Clear)),
            "cloud" | "x" => Ok(Some(Sky::Cloud)),
            _ => Err(Refusal::new(
                format!("found \"{text}\", expected the sky near the sun: clear or cloud"),
                "type c or x, or - in its place before the notes",
            )),
        }
    }

    /// Irradiance, W/m²; `None` where it was not read.
    ///
    /// # Errors
    /// If it is no number from 0 to 2000.
    pub fn irradiance(&self, text: &str) -> Result<Option<Number>, Refusal> {
        if is_not_read(text) {
            return Ok(None);
        }
        let found = number(text);
        found
            .filter(|number| TYPED_IRRADIANCE_W_M2.contains(&number.value))
            .map(Some)
            .ok_or_else(|| {
                let most = TYPED_IRRADIANCE_W_M2.end();
                Refusal::new(
                    format!("found \"{text}\", expected the irradiance in W/m², 0 to {most}"),
                    "type the number of the meter, or - in its place before the notes",
                )
            })
    }

    /// Notes without spaces around them.
    ///
    /// # Errors
    /// If they are longer than 500 characters.
    pub fn notes(&self, text: &str) -> Result<String, Refusal> {
        let letters = text.trim().chars().count();
        if letters > LONGEST_NOTE {
            return Err(Refusal::new(
                format!("found notes of {letters} characters, expected at most {LONGEST_NOTE}"),
                "shorten them",
            ));
        }
        Ok(text.trim().to_owned())
    }
}

/// Hours and minutes: `9:05`, `10:22`.
pub fn clock(text: &str) -> Option<Time> {
    let (hour, minute) = text.split_once(':')?;
    let is_number = |text: &str, longest: usize| {
        (1..=longest).contains(&text.len()) && text.bytes().all(|b| b.is_ascii_digit())
    };
    if !is_number(hour, 2) || !is_number(minute, 2) || minute.len() != 2 {
        return None;
    }
    Time::new(hour.parse().ok()?, minute.parse().ok()?, 0, 0).ok()
}

fn is_not_read(text: &str) -> bool {
    text.is_empty() || NOT_READ.contains(&text)
}

/// The first word, and what stands behind it.
fn next_word(text: &str) -> (&str, &str) {
    let text = text.trim_start();
    match text.find(char::is_whitespace) {
        Some(end) => text.split_at(end),
        None => (text, ""),
    }
}

/// Digits with at most one decimal point or comma, and a sign.
fn number(text: &str) -> Option<Number> {
    let text = text.replace('−', "-").replace(',', ".");
    let digits = text.strip_prefix('-').unwrap_or(&text);
    let is_number = digits.starts_with(|c: char| c.is_ascii_digit())
        && digits.ends_with(|c: char| c.is_ascii_digit())
        && digits.bytes().all(|b| b.is_ascii_digit() || b == b'.')
        && digits.matches('.').count() <= 1
        && text.len() <= LONGEST_NUMBER;
    let value = text.parse().ok().filter(|_| is_number)?;
    Some(Number { text, value })
}

/// A temperature in a unit, which may stand behind it, within a range in °C.
fn temperature(
    what: &str,
    unit: Unit,
    believed_c: &Range,
    text: &str,
) -> Result<Option<Number>, Refusal> {
    if is_not_read(text) {
        return Ok(None);
    }
    let symbol = unit.symbol();
    let end = text
        .rfind(|c: char| c.is_ascii_digit())
        .map_or(0, |at| at + 1);
    let (digits, behind) = text.split_at(end);
    let written = Unit::parse(behind, &[Kind::Temperature]).filter(|_| !behind.is_empty());
    let found = number(digits).filter(|_| behind.is_empty() || written.is_some());
    let Some(found) = found else {
        return Err(Refusal::new(
            format!("found \"{text}\", expected the {what} temperature in {symbol}"),
            "type a number such as 31.5, or - if it was not read",
        ));
    };
    let other_unit = |other: Unit| {
        let key = if what == "air" { "ambient" } else { what };
        format!(
            "convert it, or write {key}_temperature = \"{}\" under [units] in campaign.toml before anything is typed",
            other.symbol()
        )
    };
    if let Some(other) = written.filter(|other| *other != unit) {
        return Err(Refusal::new(
            format!("found {text}, expected the {what} temperature in {symbol}"),
            other_unit(other),
        ));
    }
    let is_possible = |celsius: f64| believed_c.contains(&celsius);
    let celsius = unit.to_base(found.value);
    if is_possible(celsius) {
        return Ok(Some(found));
    }
    let converted = match symbol {
        "°C" => String::new(),
        _ => format!(" ({} °C)", fixed(celsius, 1)),
    };
    let refusal = format!(
        "found {what} of {} {symbol}{converted}, expected {} to {} °C",
        found.text,
        fixed(*believed_c.start(), 0),
        fixed(*believed_c.end(), 1)
    );
    let hint = Unit::parse("°F", &[Kind::Temperature])
        .filter(|fahrenheit| unit != *fahrenheit && is_possible(fahrenheit.to_base(found.value)))
        .map(|fahrenheit| {
            let celsius = fixed(fahrenheit.to_base(found.value), 1);
            format!(
                "was it read in °F? {} °F are {celsius} °C: {}",
                found.text,
                other_unit(fahrenheit)
            )
        });
    let plain = || "type the line again with what the thermometer showed".to_owned();
    Err(Refusal::new(refusal, hint.unwrap_or_else(plain)))
}

#[cfg(test)]
pub mod tests {
    use super::*;

    /// A form of 3 November 2026 at sea level.
    pub fn form(unit: &str) -> Form {
        let unit = Unit::parse(unit, &[Kind::Temperature]).unwrap();
        Form {
            date: "2026-11-03".parse().unwrap(),
            zone: TimeZone::UTC,
            water_unit: unit,
            air_unit: unit,
            boiling_point_c: 100.0,
            has_irradiance: false,
            is_demonstration: true,
        }
    }

    #[test]
    fn irradiance_stands_before_the_notes_where_a_sensor_is_read() {
        let form = Form {
            has_irradiance: true,
            ..form("°C")
        };
        let typed = form.read_line("31.5 24 1 c 912,5 thin haze").unwrap();
        assert_eq!(typed.cells.irradiance.unwrap().value, 912.5);
        assert_eq!(typed.cells.notes, "thin haze");
        let typed = form.read_line("31.5 24 1 c - 2 min late").unwrap();
        assert_eq!(
            (typed.cells.irradiance, typed.cells.notes.as_str()),
            (None, "2 min late")
        );
        for wrong in ["thin", "-5", "2001"] {
            let refusal = form.read_line(&format!("31.5 24 1 c {wrong}")).unwrap_err();
            assert!(
                refusal.what.contains("expected the irradiance"),
                "{refusal:?}"
            );
        }
    }

    fn refused(unit: &str, text: &str) -> Refusal {
        let read = form(unit).read_line(text);
        read.expect_err(&format!("{text:?} was taken"))
    }

    #[test]
    fn a_line_is_taken_apart_and_keeps_its_digits() {
        let typed = form("°C").read_line(" 9:05 31,50 -3 1.5 C thin haze,  west ");
        let typed = typed.unwrap();
        assert_eq!(typed.time, clock("09:05"));
        let water = typed.cells.water.unwrap();
        assert_eq!((water.text.as_str(), water.value), ("31.50", 31.5));
        assert_eq!(typed.cells.air.unwrap().value, -3.0);
        assert_eq!(typed.cells.wind.unwrap().value, 1.5);
        assert_eq!(typed.cells.sky, Some(Sky::Clear));
        assert_eq!(typed.cells.notes, "thin haze,  west");
    }

    #[test]
    fn what_was_not_read_is_left_out_or_a_dash() {
        let typed = form("°C").read_line("- - - x").unwrap();
        assert_eq!((typed.time, &typed.cells.water), (None, &None));
        assert_eq!(typed.cells.sky, Some(Sky::Cloud));
        let typed = form("°C").read_line("88°C").unwrap();
        assert_eq!(typed.cells.water.unwrap().text, "88");
        assert_eq!(typed.cells.air, None);
    }

    #[test]
    fn every_item_that_cannot_be_is_refused_by_name() {
        for (text, part) in [
            ("3l.5", "\"3l.5\", expected the water temperature in °C"),
            ("1e1", "\"1e1\""),
            ("nan", "\"nan\""),
            ("31.5.2", "\"31.5.2\""),
            ("31.5 haze", "\"haze\", expected the air temperature"),
            ("-6", "water of -6 °C, expected −5 to 102.0 °C"),
            ("102.5", "water of 102.5 °C"),
            ("31.5 61", "air of 61 °C, expected −40 to 60.0 °C"),
            ("31.5 -41", "air of -41 °C"),
            ("31.5 24 9", "beyond 8 on the Beaufort scale"),
            ("31.5 24 1.2", "expected the wind as a Beaufort number"),
            ("31.5 24 -1", "expected the wind as a Beaufort number"),
            ("31.5 24 1.2m/s", "\"1.2m/s\""),
            ("31.5 24 1 thin haze", "\"thin\", expected the sky"),
            ("25:10 31.5", "\"25:10\", expected a time"),
            ("10:5 31.5", "\"10:5\", expected a time"),
            ("10:22", "found nothing, expected the water temperature"),
            ("- -", "found no value"),
            ("31.5\u{1b}[A", "control character"),
        ] {
            let refusal = refused("°C", text);
            assert!(refusal.what.contains(part), "{text}: {}", refusal.what);
            assert!(!refusal.hint.is_empty());
        }
    }

    #[test]
    fn fahrenheit_where_celsius_is_expected_is_told() {
        let refusal = refused("°C", "120 88");
        assert!(refusal.hint.contains("120 °F are 48.9 °C"), "{refusal:?}");
        let refusal = refused("°C", "88F");
        assert!(refusal.hint.contains("water_temperature = \"°F\""));
        let refusal = refused("°C", "31 88");
        assert!(refusal.hint.contains("ambient_temperature = \"°F\""));
        let typed = form("°F").read_line("120 88").unwrap();
        assert_eq!(typed.cells.water.unwrap().value, 120.0);
        let refusal = refused("°F", "250");
        assert!(refusal.what.contains("(121.1 °C)"), "{refusal:?}");
    }

    #[test]
    fn a_time_that_the_clocks_skipped_is_refused() {
        let form = Form {
            date: "2026-03-29".parse().unwrap(),
            zone: TimeZone::get("Europe/Berlin").unwrap(),
            ..form("°C")
        };
        assert!(
            form.read_line("2:30 31.5")
                .unwrap_err()
                .what
                .contains("skipped")
        );
        assert!(form.read_line("3:30 31.5").is_ok());
    }
}
