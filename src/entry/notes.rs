//! What notes say as a whole: their unit, whether the vessel was dry, and what holds for all
//! their lines.

use jiff::civil::Date;

use super::form::Form;
use super::free_clock::FreeClock;
use super::free_line::{Read, Reading, is_all_understood, read_free, readings_in};
use super::line::Sky;
use super::value::{Number, Refusal, number};
use crate::measure::Unit;

/// What people call a vessel without water, at the beginning of a line.
const DRY: [&str; 7] = [
    "dry pot",
    "dry vessel",
    "dry run",
    "dry test",
    "empty pot",
    "empty vessel",
    "no water",
];
/// What may follow it for the line to say nothing else.
const AFTER_DRY: [&str; 6] = ["", ",", "(", ":", " in ", " test"];
/// Water gets no hotter than this much above its boiling point, however it was read, K. Common
/// practice, no published source.
const ABOVE_WATER_K: f64 = 5.0;
/// Forms of a date that stands in a line of its own.
const DATES: [&str; 7] = [
    "%Y-%m-%d",
    "%B %d, %Y",
    "%B %d %Y",
    "%d %B %Y",
    "%b %d, %Y",
    "%d %b %Y",
    "%b %d %Y",
];
/// Words that may stand beside the sky or the air in a line that is of all the others.
const FILLERS: [&str; 20] = [
    "all",
    "day",
    "the",
    "whole",
    "sky",
    "skies",
    "temp",
    "temperature",
    "about",
    "in",
    "and",
    "a",
    "few",
    "is",
    "was",
    "morning",
    "afternoon",
    "full",
    "blue",
    "sun",
];

/// What notes say before any line of them is written down.
#[derive(Debug, Clone, PartialEq)]
pub struct Survey {
    /// The unit that stands behind temperatures of the water or the vessel, where it is one.
    pub tested_unit: Option<Unit>,
    /// The same of the air.
    pub air_unit: Option<Unit>,
    /// A line calls the vessel dry.
    pub says_dry: bool,
    /// Temperatures of the vessel or of its water, in whatever unit.
    pub tested: Vec<f64>,
    pub times: Times,
}

/// How times are written.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Times {
    /// All of them are three or four digits, so that such digits are a time.
    pub are_bare: bool,
    /// A dash stands behind each of them and parts it from the reading.
    pub end_with_a_dash: bool,
}

/// Looks over notes.
pub fn survey(text: &str) -> Survey {
    let lines = || {
        text.lines()
            .filter(|line| !is_remark(line) && date_of(line).is_none())
    };
    let clocks: Vec<(FreeClock, &str)> = lines().filter_map(FreeClock::at_start).collect();
    let times = Times {
        are_bare: clocks.iter().all(|(clock, _)| clock.is_bare),
        end_with_a_dash: clocks.len() > 1 && clocks.iter().all(|(_, rest)| has_dash(rest)),
    };
    // What stands without a time is of the air alone.
    let read = lines().flat_map(|line| match times.split(line) {
        Some((_, rest)) => readings_in(rest).unwrap_or_default(),
        None => {
            let mut read = readings_in(line).unwrap_or_default();
            read.retain(|read| read.reading == Reading::Air);
            read
        }
    });
    let read: Vec<Read> = read.collect();
    let of = |reading: Reading| read.iter().filter(move |read| read.reading == reading);
    let unit = |reading: Reading| {
        let mut units = of(reading).filter_map(|read| read.unit);
        let first = units.next()?;
        units.all(|unit| unit == first).then_some(first)
    };
    let numbers = of(Reading::Tested).filter_map(|read| number(&read.digits));
    Survey {
        tested_unit: unit(Reading::Tested),
        air_unit: unit(Reading::Air),
        says_dry: lines().any(says_dry),
        tested: numbers.map(|number| number.value).collect(),
        times,
    }
}

/// Whether a dash stands first and something behind it.
fn has_dash(rest: &str) -> bool {
    rest.strip_prefix(['-', '–', '—'])
        .is_some_and(|rest| rest.starts_with(' '))
}

impl Times {
    /// The time at which a line begins, and what stands behind it.
    pub fn split(self, line: &str) -> Option<(FreeClock, &str)> {
        if date_of(line).is_some() {
            return None;
        }
        let (clock, rest) = FreeClock::at_start(line)?;
        let rest = match self.end_with_a_dash {
            true => rest.trim_start_matches(['-', '–', '—']).trim_start(),
            false => rest,
        };
        (!clock.is_bare || self.are_bare).then_some((clock, rest))
    }
}

impl Survey {
    /// Whether most of what was read can be no water, in a unit, where water boils at so many °C:
    /// a single value may be a slip.
    pub fn is_hotter_than_water(&self, unit: Unit, boiling_point_c: f64) -> bool {
        let is_hotter = |value: &&f64| unit.to_base(**value) > boiling_point_c + ABOVE_WATER_K;
        let hotter = self.tested.iter().filter(is_hotter).count();
        hotter > 1 && 2 * hotter >= self.tested.len()
    }
}

fn says_dry(line: &str) -> bool {
    let lower = line.trim().trim_end_matches(['.', '!']).to_lowercase();
    let mut rests = DRY.iter().filter_map(|words| lower.strip_prefix(words));
    rests.any(|rest| {
        let mut after = AFTER_DRY.iter();
        rest.is_empty()
            || after.any(|mark| !mark.is_empty() && rest.trim_end().starts_with(mark.trim_end()))
    })
}

/// Whether a line is blank or a remark.
pub fn is_remark(line: &str) -> bool {
    line.trim().is_empty() || line.trim_start().starts_with('#')
}

/// What a line without a time says of others, or beside them.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct General {
    /// The air of lines that have none of their own.
    pub air: Option<Number>,
    /// The sky of lines that have none of their own.
    pub sky: Option<Sky>,
    /// Words that go into no log.
    pub words: String,
}

/// Reads a line without a time.
///
/// # Errors
/// A [`Refusal`] for a date that is not that of the sheet, and for a number without a time.
pub fn read_general(form: &Form, text: &str) -> Result<General, Refusal> {
    let text = text.trim();
    if let Some(date) = date_of(text) {
        return match date == form.date {
            true => Ok(General::default()),
            false => Err(Refusal::new(
                format!("found the date {date}, expected {}", form.date),
                format!("say --date {date}, or keep each day's notes in a file of its own"),
            )),
        };
    }
    if says_dry(text) {
        return Ok(General::default());
    }
    let first = text.split_whitespace().next().unwrap_or_default();
    if first.contains(':') && first.starts_with(|c: char| c.is_ascii_digit()) {
        // It says what is wrong with it.
        form.time(first)?;
    }
    let words = || General {
        words: text.to_owned(),
        ..General::default()
    };
    let has_digit = text.contains(|c: char| c.is_ascii_digit());
    let refused = match (read_free(form, text), has_digit) {
        (Ok(cells), true) if cells.tested.is_none() && cells.air.is_some() => {
            let is_all = is_all_understood(text, &FILLERS);
            return Ok(General {
                air: cells.air,
                sky: cells.sky,
                words: if is_all { String::new() } else { cells.notes },
            });
        }
        (Ok(cells), false) if cells.sky.is_some() && is_all_understood(text, &FILLERS) => {
            return Ok(General {
                sky: cells.sky,
                ..General::default()
            });
        }
        (_, false) => return Ok(words()),
        (Err(refusal), true) if text.to_lowercase().starts_with("air") => refusal,
        (_, true) => Refusal::new(
            format!("found \"{text}\", expected the time first"),
            format!(
                "write every line as in: {}; or air {} for all of them; or # before a remark",
                form.example(),
                form.example_values().2
            ),
        ),
    };
    Err(refused)
}

fn date_of(text: &str) -> Option<Date> {
    let text = text.trim().trim_end_matches(['.', ':']);
    let text = match text.get(..5) {
        Some(label) if label.eq_ignore_ascii_case("date:") => text[5..].trim(),
        _ => text,
    };
    DATES
        .iter()
        .find_map(|form| Date::strptime(form, text).ok())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::entry::form::tests::form;
    use crate::measure::Kind;

    fn unit(symbol: &str) -> Unit {
        Unit::parse(symbol, &[Kind::Temperature]).unwrap()
    }

    #[test]
    fn notes_tell_their_units_and_a_dry_pot() {
        let found = survey("July 4\nair 24C\n10:20 165F\n10:35 moved it 5 degrees, 190\n");
        assert_eq!(found.tested_unit, Some(unit("°F")));
        assert_eq!(found.air_unit, Some(unit("°C")));
        assert_eq!(
            (found.says_dry, found.tested.as_slice()),
            (false, [165.0, 190.0].as_slice())
        );
        assert!(!found.is_hotter_than_water(unit("°F"), 95.0));
        assert!(survey("Empty pot\n10:20 300F\n").says_dry);
        assert!(survey("Dry pot, lid on\n").says_dry);
        for text in [
            "# no dry run today\n",
            "no water lost\n",
            "the empty pot was heavy\n",
        ] {
            assert!(!survey(text).says_dry, "{text}");
        }
        assert_eq!(survey("10:20 65C\n10:30 165F\n").tested_unit, None, "two");
        let note = survey("10:20 65 24 1 c next to an oven at 350 F\n");
        assert_eq!(note.tested_unit, None, "of something else");
    }

    #[test]
    fn one_value_too_high_is_a_slip_and_most_are_a_dry_pot() {
        let is_dry = |text: &str| survey(text).is_hotter_than_water(unit("°C"), 100.0);
        assert!(!is_dry("10:20 31.5\n10:30 33\n10:40 355\n10:50 38\n"));
        assert!(is_dry("10:20 40\n10:30 80\n10:40 130\n10:50 150\n"));
        assert!(!is_dry("10:20 120\n"));
    }

    #[test]
    fn digits_are_a_time_and_a_dash_parts_it_where_all_lines_are_so() {
        let text = "1020 165\n1030 - 170\n";
        assert_eq!(survey(text).tested, [165.0, 170.0]);
        assert!(survey(text).times.are_bare);
        // "130" is a reading whose time is missing.
        let found = survey("10:20 165\n130 75\n");
        assert!(!found.times.are_bare);
        assert!(found.times.split("130 75").is_none());
        assert!(survey("10:20 - 165\n10:30 - 170\n").times.end_with_a_dash);
        assert!(!survey("10:20 165\n10:30 - 75 1\n").times.end_with_a_dash);
        assert!(found.times.split("2026-11-03").is_none(), "a date");
    }

    #[test]
    fn lines_without_a_time_hold_for_others_or_are_words() {
        let form = form("°F");
        let read = |text: &str| read_general(&form, text);
        let air = |text: &str| read(text).unwrap().air.map(|air| air.value);
        assert_eq!(air("air 75F"), Some(75.0));
        assert_eq!(air("75F outside"), Some(75.0));
        let both = read("sunny, air 75F, light wind").unwrap();
        assert_eq!(
            (both.air.unwrap().value, both.sky),
            (75.0, Some(Sky::Clear))
        );
        assert!(both.words.contains("light wind"), "{}", both.words);
        assert_eq!(read("sunny all day").unwrap().sky, Some(Sky::Clear));
        for nothing in [
            "2026-11-03",
            "Date: 2026-11-03",
            "November 3, 2026",
            "empty pot",
        ] {
            assert_eq!(read(nothing), Ok(General::default()), "{nothing}");
        }
        for words in [
            "black pot, lid on",
            "Sun cooker test, blue pot",
            "clear glass lid",
        ] {
            assert_eq!(read(words).unwrap().words, words);
            assert_eq!(read(words).unwrap().sky, None, "{words}");
        }
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
