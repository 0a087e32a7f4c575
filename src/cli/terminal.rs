//! Text on the terminal: tables, errors and remarks.

use std::io::{self, Write};
use std::path::Path;

use unicode_width::UnicodeWidthStr;

use crate::error::{Error, Problem, Result};

/// Space between two columns.
const GUTTER: &str = "  ";

/// Prints to standard output. A reader that has gone away is no error.
///
/// # Errors
/// [`Error::Usage`] if it cannot be written to, say because a disk is full.
pub fn print(text: &str) -> Result<()> {
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
    print_to_stderr(&format!("note: {note}\n"));
}

fn print_to_stderr(text: &str) {
    let _closed_pipe = io::stderr().lock().write_all(text.as_bytes());
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
    let width = |column: usize| {
        let cells = rows.iter().map(|row| row[column].width());
        cells.chain([header[column].0.width()]).max().unwrap_or(0)
    };
    let widths: [usize; N] = std::array::from_fn(width);
    let line = |cells: [&str; N]| {
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
    let mut text = line(header.map(|(name, _)| name)) + &rule + "\n";
    for row in rows {
        text += &line(row.each_ref().map(String::as_str));
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
}
