//! Text on the terminal: lines, tables, errors and remarks. Nothing else writes there.
//!
//! What is printed may hold text of others, from names, keys, values and cells. [`line()`] and
//! [`table`] escape it, line feeds too, so that it forges no line; [`print()`] lets nothing pass
//! but line feeds, so that it moves no cursor and turns no text.

use std::borrow::Cow;
use std::io::{self, Write};
use std::path::Path;

use clap::error::{ContextKind, ContextValue};
use unicode_width::UnicodeWidthStr;

use crate::error::{Error, Problem, Result};
use crate::shown::{shown, shown_in_json, shown_lines};

/// Space between two columns.
const GUTTER: &str = "  ";

/// A line, whatever others wrote into it.
pub fn line(text: &str) -> String {
    shown(text).into_owned() + "\n"
}

/// Prints lines to standard output. A reader that has gone away is no error.
///
/// # Errors
/// [`Error::Usage`] if it cannot be written to, say because a disk is full.
pub fn print(text: &str) -> Result<()> {
    print_own(&shown_lines(text))
}

/// Prints JSON to standard output, for a program that reads it or a person.
///
/// # Errors
/// As [`print()`].
pub fn print_json(json: &str) -> Result<()> {
    print_own(&(shown_in_json(json) + "\n"))
}

/// Prints a text that holds nothing of others, such as a script for a shell, as it is.
///
/// # Errors
/// As [`print()`].
pub fn print_own(text: &str) -> Result<()> {
    let mut out = io::stdout().lock();
    match out.write_all(text.as_bytes()).and_then(|()| out.flush()) {
        Err(error) if error.kind() != io::ErrorKind::BrokenPipe => {
            let problem = Problem::at(
                Path::new("standard output"),
                format!("cannot be written ({error})"),
            );
            Err(Error::Usage(problem.hint("print to another place").into()))
        }
        _ => Ok(()),
    }
}

/// Prints an error to standard error.
pub fn print_error(error: &Error) {
    print_to_stderr(&format!("error: {error}\n"));
}

/// Prints a remark to standard error.
pub fn print_note(note: &str) {
    print_to_stderr(&line(&format!("note: {note}")));
}

/// Prints a remark, and what to do about it.
pub fn print_note_with_hint(note: &str, hint: &str) {
    print_to_stderr(&(line(&format!("note: {note}")) + &line(&format!("hint: {hint}"))));
}

/// Prints a remark for which an error is the reason.
pub fn print_note_of(note: &str, error: &Error) {
    print_to_stderr(&format!("note: {}: {error}\n", shown(note)));
}

fn print_to_stderr(text: &str) {
    let _closed_pipe = io::stderr().lock().write_all(shown_lines(text).as_bytes());
}

/// Prints what the parser of the command line says: help to standard output, what is wrong
/// with an argument to standard error. The exit code.
///
/// # Errors
/// As [`print()`].
pub fn print_usage(mut said: clap::Error) -> Result<u8> {
    let parts: Vec<(ContextKind, ContextValue)> = said
        .context()
        .filter(|(kind, _)| *kind != ContextKind::Usage)
        .map(|(kind, part)| (kind, escaped(part)))
        .collect();
    for (kind, part) in parts {
        said.insert(kind, part);
    }
    let text = said.render().to_string();
    match said.use_stderr() {
        true => print_to_stderr(&text),
        false => print(&text)?,
    }
    Ok(said.exit_code().try_into().unwrap_or(2))
}

/// A part of what the parser says, with the arguments in it on one line.
fn escaped(part: &ContextValue) -> ContextValue {
    match part {
        ContextValue::String(text) => ContextValue::String(shown(text).into_owned()),
        ContextValue::Strings(texts) => {
            let texts = texts.iter().map(|text| shown(text).into_owned());
            ContextValue::Strings(texts.collect())
        }
        ContextValue::StyledStr(text) => ContextValue::StyledStr(plain(text)),
        ContextValue::StyledStrs(texts) => {
            ContextValue::StyledStrs(texts.iter().map(plain).collect())
        }
        other => other.clone(),
    }
}

fn plain(text: &clap::builder::StyledStr) -> clap::builder::StyledStr {
    shown(&text.to_string()).into_owned().into()
}

/// A path as it can be typed in a command.
pub fn quoted(path: &Path) -> String {
    let name = path.display().to_string();
    if name.contains(char::is_whitespace) {
        format!("\"{name}\"")
    } else {
        name
    }
}

/// Which edge of its column a cell keeps to.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Align {
    Left,
    Right,
}

/// A table as text: its columns as wide as their widest cell, a header above a rule.
pub fn table<const N: usize>(header: [(&str, Align); N], rows: &[[String; N]]) -> String {
    let rows: Vec<[Cow<'_, str>; N]> = rows
        .iter()
        .map(|row| row.each_ref().map(|cell| shown(cell)))
        .collect();
    let width = |column: usize| {
        let cells = rows.iter().map(|row| row[column].width());
        cells.chain([header[column].0.width()]).max().unwrap_or(0)
    };
    let widths: [usize; N] = std::array::from_fn(width);
    let row_line = |cells: [&str; N]| {
        let mut text = String::new();
        for (column, cell) in cells.into_iter().enumerate() {
            let gap = " ".repeat(widths[column] - cell.width());
            match header[column].1 {
                Align::Left => text += &format!("{cell}{gap}"),
                Align::Right => text += &format!("{gap}{cell}"),
            }
            text += GUTTER;
        }
        text.trim_end().to_owned() + "\n"
    };
    let rule = "─".repeat(widths.iter().sum::<usize>() + GUTTER.len() * (N - 1));
    let mut text = row_line(header.map(|(name, _)| name)) + &rule + "\n";
    for row in &rows {
        text += &row_line(row.each_ref().map(|cell| cell.as_ref()));
    }
    text
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn wide_characters_keep_the_columns_straight() {
        let header = [("name", Align::Left), ("W", Align::Right)];
        let rows = [
            ["太陽".to_owned(), "7".to_owned()],
            ["pot".to_owned(), "120".to_owned()],
        ];
        assert_eq!(
            table(header, &rows),
            "name    W\n─────────\n太陽    7\npot   120\n"
        );
    }

    #[test]
    fn a_cell_forges_no_row_and_no_line_another() {
        let rows = [["a\nb\u{1b}[A".to_owned()]];
        assert_eq!(
            table([("name", Align::Left)], &rows),
            "name\n────────────\na\\nb\\u{1b}[A\n"
        );
        assert_eq!(line("a\nerror: b"), "a\\nerror: b\n");
    }
}
