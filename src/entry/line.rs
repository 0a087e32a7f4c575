//! One line of a field sheet as a person types it: `31.5 24 1 clear thin haze`.

use jiff::civil::Time;

use super::form::{Column, Form};
use super::value::{Number, Refusal, is_not_read, number, temperature};
use crate::believable::{
    ABOVE_BOILING_K, AIR_C, COLDEST_TYPED_WATER_C, DRY_VESSEL_C, TYPED_IRRADIANCE_W_M2,
};
use crate::campaign::kinds::RunKind;
use crate::local_time::{Shown, instants_of};
use crate::physics::wind::BEAUFORT;

/// Longest note, characters.
const LONGEST_NOTE: usize = 500;

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
    /// The temperature that the run is about, in the sheet's unit.
    pub tested: Option<Number>,
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

impl Cells {
    /// What a log says of them in a column; nothing of the time.
    pub fn text(&self, column: Column) -> &str {
        fn digits(number: &Option<Number>) -> &str {
            number.as_ref().map_or("", |number| &number.text)
        }
        match column {
            Column::Time => "",
            Column::Tested => digits(&self.tested),
            Column::Air => digits(&self.air),
            Column::Wind => digits(&self.wind),
            Column::Sky => self.sky.map_or("", Sky::word),
            Column::Irradiance => digits(&self.irradiance),
            Column::Notes => &self.notes,
        }
    }
}

impl Form {
    /// Reads `[time] water [air] [wind] [sky] [notes…]`, with the irradiance before the notes
    /// where a sensor is read. In a dry run the vessel stands in the place of the water, and of
    /// a cooling run the sky is not read.
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
        let (time, mut rest) = if first.contains(':') {
            (Some(self.time(first)?), after_first)
        } else {
            (None, text)
        };
        if rest.trim().is_empty() {
            return Err(Refusal::new(
                format!(
                    "found nothing, expected the {} temperature in {}",
                    self.tested_name(),
                    self.tested_unit.symbol()
                ),
                "type it behind the time, or - if it was not read",
            ));
        }
        let mut cells = Cells::default();
        for column in self.columns().skip_while(|column| *column == Column::Time) {
            let word;
            (word, rest) = match column {
                Column::Notes => (rest, ""),
                _ => next_word(rest),
            };
            self.read_cell(&mut cells, column, word)?;
        }
        if cells == Cells::default() {
            return Err(Refusal::new(
                "found no value",
                "an empty line passes over a time at which nothing was read",
            ));
        }
        Ok(TypedLine { time, cells })
    }

    /// Reads what stands in a column, but for the time.
    ///
    /// # Errors
    /// A [`Refusal`] for what cannot be read or cannot be true.
    pub fn read_cell(&self, cells: &mut Cells, column: Column, text: &str) -> Result<(), Refusal> {
        match column {
            Column::Time => {}
            Column::Tested => cells.tested = self.tested(text)?,
            Column::Air => cells.air = self.air(text)?,
            Column::Wind => cells.wind = self.wind(text)?,
            Column::Sky => cells.sky = self.sky(text)?,
            Column::Irradiance => cells.irradiance = self.irradiance(text)?,
            Column::Notes => cells.notes = self.notes(text)?,
        }
        Ok(())
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

    /// The temperature that the run is about; `None` where it was not read.
    ///
    /// # Errors
    /// If it is no number; if it is of water, and below −5 °C or more than 2 K above the local
    /// boiling point; if it is of a dry vessel, and not within −40 to 600 °C.
    pub fn tested(&self, text: &str) -> Result<Option<Number>, Refusal> {
        let believed_c = match self.kind {
            RunKind::Dry => DRY_VESSEL_C,
            RunKind::Water | RunKind::Cooling => {
                COLDEST_TYPED_WATER_C..=self.boiling_point_c + ABOVE_BOILING_K
            }
        };
        temperature(self.tested_name(), self.tested_unit, &believed_c, text)
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
                    "found a wind of {text}, expected a number of the Beaufort scale from 0 to {strongest}: in a gale nothing can be tested"
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

/// The first word, and what stands behind it.
fn next_word(text: &str) -> (&str, &str) {
    let text = text.trim_start();
    match text.find(char::is_whitespace) {
        Some(end) => text.split_at(end),
        None => (text, ""),
    }
}

#[cfg(test)]
mod tests {
    use jiff::tz::TimeZone;

    use super::*;
    use crate::entry::form::tests::{form, form_of};

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
        let water = typed.cells.tested.unwrap();
        assert_eq!((water.text.as_str(), water.value), ("31.50", 31.5));
        assert_eq!(typed.cells.air.unwrap().value, -3.0);
        assert_eq!(typed.cells.wind.unwrap().value, 1.5);
        assert_eq!(typed.cells.sky, Some(Sky::Clear));
        assert_eq!(typed.cells.notes, "thin haze,  west");
    }

    #[test]
    fn what_was_not_read_is_left_out_or_a_dash() {
        let typed = form("°C").read_line("- - - x").unwrap();
        assert_eq!((typed.time, &typed.cells.tested), (None, &None));
        assert_eq!(typed.cells.sky, Some(Sky::Cloud));
        let typed = form("°C").read_line("88°C").unwrap();
        assert_eq!(typed.cells.tested.unwrap().text, "88");
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
            (
                "31.5 24 9",
                "a wind of 9, expected a number of the Beaufort scale from 0 to 8",
            ),
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
        assert_eq!(typed.cells.tested.unwrap().value, 120.0);
        let refusal = refused("°F", "250");
        // 23 °F are −5 °C, 215.6 °F are 102 °C: NIST SP 811 (2008), appendix B.8.
        assert_eq!(
            refusal.what,
            "found water of 250 °F (121.1 °C), expected 23 to 215.6 °F"
        );
        let refusal = refused("°F", "3l");
        assert!(refusal.hint.contains("a number such as 89,"), "{refusal:?}");
    }

    #[test]
    fn a_dry_vessel_may_be_far_hotter_than_water() {
        let form = form_of(RunKind::Dry, "°F");
        let typed = form.read_line("12:20 365 75 1 c 880 lid on").unwrap();
        assert_eq!(typed.cells.tested.unwrap().value, 365.0);
        assert_eq!(typed.cells.irradiance.unwrap().value, 880.0);
        assert_eq!(typed.cells.notes, "lid on");
        let refusal = form.read_line("1500 75").unwrap_err();
        assert!(
            refusal
                .what
                .contains("vessel of 1500 °F (815.6 °C), expected −40 to 1112.0 °F"),
            "{refusal:?}"
        );
        let refusal = form_of(RunKind::Dry, "°C").read_line("350F").unwrap_err();
        assert!(
            refusal.hint.contains("vessel_temperature = \"°F\""),
            "{refusal:?}"
        );
    }

    #[test]
    fn of_a_cooling_run_neither_sky_nor_sun_is_read() {
        let form = form_of(RunKind::Cooling, "°C");
        let typed = form.read_line("13:20 94.5 24 1 clear of the wall").unwrap();
        assert_eq!((typed.cells.sky, typed.cells.irradiance), (None, None));
        assert_eq!(typed.cells.notes, "clear of the wall");
        let refusal = form.read_line("103 24").unwrap_err();
        assert!(refusal.what.contains("water of 103 °C"), "{refusal:?}");
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
