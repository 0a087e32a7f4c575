//! A sheet from a text file: lines of a field sheet or notes as people write them, `#` before a
//! remark.

use std::path::Path;

use jiff::civil::Time;

use super::form::{Column, Form};
use super::free_clock::FreeClock;
use super::free_line::read_free;
use super::line::{Cells, clock as clock_of_sheet};
use super::notes::{General, is_remark, read_general, survey};
use super::sheet::{Line, Sheet, spoken};
use super::value::Refusal;
use crate::error::{Error, Problem, Problems, Result};
use crate::shown::is_unseen;

/// What is to be said of a line that was taken.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Told {
    /// Counted from 1.
    pub line: u64,
    pub what: String,
}

/// What came of a text, beside the lines on the sheet.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Taken {
    /// What is odd about lines.
    pub odd: Vec<Told>,
    /// What lines were taken for that are not written as a field sheet has them.
    pub understood: Vec<Told>,
}

/// Text of a file.
///
/// # Errors
/// [`Error::Input`] if it is not UTF-8.
pub fn text_of<'b>(path: &Path, bytes: &'b [u8]) -> Result<&'b str> {
    let text = std::str::from_utf8(bytes).map_err(|error| {
        let what = format!("is not UTF-8 text (at byte {})", error.valid_up_to() + 1);
        let problem = Problem::at(path, what).hint("save it as plain text in UTF-8");
        Error::Input(problem.into())
    })?;
    Ok(text.strip_prefix('\u{feff}').unwrap_or(text))
}

/// Adds the lines of a text to an empty sheet: lines of a field sheet, or notes as people write
/// them.
///
/// # Errors
/// [`Error::Input`] with every line that cannot be taken, and if there is none.
pub fn read_text(sheet: &mut Sheet, path: &Path, text: &str) -> Result<Taken> {
    let mut refused: Vec<(u64, Refusal)> = Vec::new();
    let mut taken = Taken::default();
    let times = survey(text).times;
    let lines = (1..).zip(text.lines());
    let lines: Vec<(u64, &str)> = lines.filter(|(_, line)| !is_remark(line)).collect();
    let mut of_others = OfOthers::default();
    for &(line, text) in &lines {
        if let Some(refusal) = control_character(text) {
            refused.push((line, refusal));
        } else if times.split(text).is_none() {
            match read_general(&sheet.form, text) {
                Ok(general) => of_others.lines.push((line, general)),
                Err(refusal) => refused.push((line, refusal)),
            }
        }
    }
    taken.understood.extend(of_others.told(&sheet.form));
    for (line, text) in lines {
        let Some((clock, rest)) = times
            .split(text)
            .filter(|_| control_character(text).is_none())
        else {
            continue;
        };
        let written = Written {
            first: text.split_whitespace().next().unwrap_or_default(),
            clock,
            rest,
        };
        match read_line(sheet, &written, of_others.at(line)) {
            Ok((odd, understood)) => {
                taken.odd.extend(odd.map(|what| Told { line, what }));
                let understood = understood.map(|what| Told { line, what });
                taken.understood.extend(understood);
            }
            Err(refusal) => refused.push((line, refusal)),
        }
    }
    refused.sort_by_key(|(line, _)| *line);
    let mut problems = Problems::default();
    for (line, Refusal { what, hint }) in refused {
        problems.push(Problem::at(path, what).line(line).hint(hint));
    }
    if problems.is_empty() && sheet.lines().is_empty() {
        let problem = Problem::at(path, "holds no line of readings");
        problems.push(problem.hint(format!("write one a time, as in: {}", sheet.form.example())));
    }
    taken.understood.sort_by_key(|told| told.line);
    match problems.is_empty() {
        true => Ok(taken),
        false => Err(Error::Input(problems)),
    }
}

/// What lines without a time say of those that have one.
#[derive(Debug, Default)]
struct OfOthers {
    lines: Vec<(u64, General)>,
}

impl OfOthers {
    /// The air and the sky of a line that has none of its own: what was said last above it; the
    /// air, where none was, what is said first below.
    fn at(&self, line: u64) -> General {
        let above = || self.lines.iter().rev().filter(|(at, _)| *at < line);
        let air = above().find_map(|(_, general)| general.air.clone());
        let below = || {
            self.lines
                .iter()
                .find_map(|(_, general)| general.air.clone())
        };
        General {
            air: air.or_else(below),
            sky: above().find_map(|(_, general)| general.sky),
            words: String::new(),
        }
    }

    fn told(&self, form: &Form) -> Vec<Told> {
        let airs = self
            .lines
            .iter()
            .filter(|(_, general)| general.air.is_some());
        let is_only_air = airs.count() == 1;
        let mut told = Vec::new();
        for (line, General { air, sky, words }) in &self.lines {
            let whose = match is_only_air {
                true => "for every line without its own",
                false => "for lines below without their own",
            };
            let air = air
                .as_ref()
                .map(|air| format!("air {} {}, {whose}", air.text, form.air_unit.symbol()));
            let sky = sky.filter(|_| form.in_sun());
            let sky =
                sky.map(|sky| format!("sky {}, for lines below without their own", sky.word()));
            let words = (!words.is_empty())
                .then(|| format!("words without a time, which stay in this file alone: {words}"));
            let what: Vec<String> = [air, sky, words].into_iter().flatten().collect();
            if !what.is_empty() {
                told.push(Told {
                    line: *line,
                    what: what.join("; "),
                });
            }
        }
        told
    }
}

/// A line with its time, taken apart.
struct Written<'t> {
    first: &'t str,
    clock: FreeClock,
    rest: &'t str,
}

fn control_character(text: &str) -> Option<Refusal> {
    let is_bad = |c: char| c != '\t' && is_unseen(c);
    text.contains(is_bad).then(|| {
        Refusal::new(
            "found a character that cannot be seen, as an arrow key or a copied text brings",
            "write the line again",
        )
    })
}

/// Adds a line with its time; what is odd about it, and what it was taken for, where it is not
/// written as on a field sheet.
fn read_line(
    sheet: &mut Sheet,
    written: &Written<'_>,
    of_others: General,
) -> std::result::Result<(Option<String>, Option<String>), Refusal> {
    let form = &sheet.form;
    let Written { first, clock, rest } = *written;
    let last = sheet.lines().last().map(|line| line.time);
    let time = clock.time_after(last, form.in_sun());
    let time = form.time(&time.map_or_else(|| first.to_owned(), spoken))?;
    let (mut cells, is_free) = match form.read_line(rest) {
        Ok(typed) if typed.time.is_none() => (typed.cells, false),
        refused => match (read_free(form, rest), refused) {
            (Ok(cells), _) => (cells, true),
            // What begins with a number is written as on a field sheet, if it is numbers alone.
            (Err(_), Err(refusal)) if is_of_a_sheet(rest) => return Err(refusal),
            (Err(refusal), _) => return Err(refusal),
        },
    };
    cells.air = cells.air.or(of_others.air);
    cells.sky = cells.sky.or(of_others.sky.filter(|_| form.in_sun()));
    let is_other_time = clock_of_sheet(first) != Some(time);
    let understood = (is_free || is_other_time).then(|| described(form, time, &cells));
    let odd = sheet.add(Line { time, cells })?;
    Ok((odd, understood))
}

/// Whether a line begins with two words of numbers, or is one.
fn is_of_a_sheet(rest: &str) -> bool {
    let mut words = rest.split_whitespace().take(2);
    words.all(|word| word.starts_with(|c: char| c.is_ascii_digit()))
}

/// A line as it was taken.
fn described(form: &Form, time: Time, cells: &Cells) -> String {
    let mut parts = vec![spoken(time)];
    for column in form.columns() {
        let text = cells.text(column);
        let said = match (column, form.unit(column)) {
            _ if text.is_empty() => continue,
            (Column::Tested, Some(unit)) => format!("{} {text} {unit}", form.tested_name()),
            (Column::Air, Some(unit)) => format!("air {text} {unit}"),
            (Column::Wind, _) => format!("wind {text} Bft"),
            (Column::Irradiance, Some(unit)) => format!("irradiance {text} {unit}"),
            (Column::Sky, _) => format!("sky {text}"),
            _ => format!("notes: {text}"),
        };
        parts.push(said);
    }
    parts.join(", ")
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::entry::form::tests::form;

    fn read(unit: &str, text: &str) -> Result<(Sheet, Taken)> {
        let mut sheet = Sheet::new(form(unit));
        let path = Path::new("sheet.txt");
        let taken = read_text(&mut sheet, path, text_of(path, text.as_bytes())?)?;
        Ok((sheet, taken))
    }

    #[test]
    fn remarks_and_blank_lines_are_passed_over_and_odd_lines_told() {
        let text = "\u{feff}# invented\r\n\r\n10:20 30\r\n  # later\r\n10:30 60 24 1 c\r\n";
        let (sheet, taken) = read("°C", text).unwrap();
        assert_eq!(sheet.lines().len(), 2);
        let what = "the water rose by 30.0 K since 10:20".to_owned();
        assert_eq!(taken.odd, [Told { line: 5, what }]);
        assert_eq!(taken.understood, []);
    }

    #[test]
    fn every_line_that_cannot_be_taken_is_listed() {
        let text = "10:20 30\n31.5 24\n10:40 3l\n10:10 32\n10:50 33\n";
        let Err(Error::Input(problems)) = read("°C", text) else {
            panic!("was read");
        };
        let lines: Vec<_> = problems.listed().iter().map(|p| p.place.line).collect();
        assert_eq!(lines, [Some(2), Some(3), Some(4)]);
    }

    #[test]
    fn a_file_without_readings_or_of_no_text_is_refused() {
        for text in ["# nothing\n", "", "nothing\n"] {
            assert!(read("°C", text).is_err());
        }
        assert!(text_of(Path::new("sheet.txt"), b"10:20 30\n\xff").is_err());
    }

    #[test]
    fn notes_are_taken_for_lines_and_what_for_is_told() {
        let text = "# invented\nNov 3, 2026\nair 75F\n12:40 165F sunny\n\
                    12:50 moved it, 180\nstill no breeze\n1:00 190 cloudy\n";
        let (sheet, taken) = read("°F", text).unwrap();
        let csv = sheet.to_csv().unwrap();
        assert_eq!(
            csv,
            "# Invented sample data\n\
             time,water (°F),air (°F),wind (Bft),sky,notes\n\
             2026-11-03 12:40,165,75,,clear,sunny\n\
             2026-11-03 12:50,180,75,,,moved it\n\
             2026-11-03 13:00,190,75,,cloud,cloudy\n"
        );
        let told: Vec<String> = taken
            .understood
            .iter()
            .map(|told| format!("{} {}", told.line, told.what))
            .collect();
        assert_eq!(
            told,
            [
                "3 air 75 °F, for every line without its own",
                "4 12:40, water 165 °F, air 75 °F, sky clear, notes: sunny",
                "5 12:50, water 180 °F, air 75 °F, notes: moved it",
                "6 words without a time, which stay in this file alone: still no breeze",
                "7 13:00, water 190 °F, air 75 °F, sky cloud, notes: cloudy",
            ]
        );
    }
}
