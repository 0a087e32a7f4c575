//! A sheet from a text file: every line with its time, `#` before a remark.

use std::path::Path;

use super::sheet::{Line, Sheet};
use super::value::Refusal;
use crate::error::{Error, Problem, Problems, Result};

/// What is odd about a line that was taken all the same.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Odd {
    /// Counted from 1.
    pub line: u64,
    pub what: String,
}

/// Adds the lines of a text to an empty sheet; what is odd about them.
///
/// # Errors
/// [`Error::Input`] with every line that cannot be taken, and if there is none.
pub fn read_text(sheet: &mut Sheet, path: &Path, bytes: &[u8]) -> Result<Vec<Odd>> {
    let text = std::str::from_utf8(bytes).map_err(|error| {
        let what = format!("is not UTF-8 text (at byte {})", error.valid_up_to() + 1);
        let problem = Problem::at(path, what).hint("save it as plain text in UTF-8");
        Error::Input(problem.into())
    })?;
    let text = text.strip_prefix('\u{feff}').unwrap_or(text);
    let mut problems = Problems::default();
    let mut odd = Vec::new();
    for (line, text) in (1..).zip(text.lines()) {
        if text.trim().is_empty() || text.trim_start().starts_with('#') {
            continue;
        }
        match read_line(sheet, text) {
            Ok(what) => odd.extend(what.map(|what| Odd { line, what })),
            Err(Refusal { what, hint }) => {
                problems.push(Problem::at(path, what).line(line).hint(hint));
            }
        }
    }
    if problems.is_empty() && sheet.lines().is_empty() {
        let problem = Problem::at(path, "holds no line of readings");
        problems.push(problem.hint(format!("write one a time, as in: {}", sheet.form.example())));
    }
    match problems.is_empty() {
        true => Ok(odd),
        false => Err(Error::Input(problems)),
    }
}

fn read_line(sheet: &mut Sheet, text: &str) -> std::result::Result<Option<String>, Refusal> {
    let first = text.split_whitespace().next().unwrap_or_default();
    if !first.contains(':') {
        return Err(Refusal::new(
            format!("found \"{first}\", expected the time first"),
            format!("write every line of a file as in: {}", sheet.form.example()),
        ));
    }
    let typed = sheet.form.read_line(text)?;
    let time = match typed.time {
        Some(time) => time,
        None => sheet.form.time(first)?,
    };
    let cells = typed.cells;
    sheet.add(Line { time, cells })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::entry::form::tests::form;

    fn read(bytes: &[u8]) -> Result<(Sheet, Vec<Odd>)> {
        let mut sheet = Sheet::new(form("°C"));
        let odd = read_text(&mut sheet, Path::new("sheet.txt"), bytes)?;
        Ok((sheet, odd))
    }

    #[test]
    fn remarks_and_blank_lines_are_passed_over_and_odd_lines_told() {
        let text = "\u{feff}# invented\r\n\r\n10:20 30\r\n  # later\r\n10:30 60 24 1 c\r\n";
        let (sheet, odd) = read(text.as_bytes()).unwrap();
        assert_eq!(sheet.lines().len(), 2);
        let what = "the water rose by 30.0 K since 10:20".to_owned();
        assert_eq!(odd, [Odd { line: 5, what }]);
    }

    #[test]
    fn every_line_that_cannot_be_taken_is_listed() {
        let text = "10:20 30\n31.5 24\n10:40 3l\ndone\n10:10 32\n10:50 33\n";
        let Err(Error::Input(problems)) = read(text.as_bytes()) else {
            panic!("was read");
        };
        let lines: Vec<_> = problems.listed().iter().map(|p| p.place.line).collect();
        assert_eq!(lines, [Some(2), Some(3), Some(4), Some(5)]);
    }

    #[test]
    fn a_file_without_readings_or_of_no_text_is_refused() {
        for bytes in [b"# nothing\n".as_slice(), b"", b"10:20 30\n\xff"] {
            assert!(read(bytes).is_err());
        }
    }
}
