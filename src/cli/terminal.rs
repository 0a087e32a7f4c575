//! Printing: lines, errors and remarks. Nothing else writes to the terminal.
//!
//! What is printed may hold text of others, from names, keys, values and cells. [`line()`],
//! [`Lines`] and tables escape it, line feeds too, so that it forges no line; [`print()`] lets
//! nothing pass but line feeds, so that it moves no cursor and turns no text. Only [`Lines`] and
//! the labels of errors and remarks bring codes for colours, where [`Screen`] has them.

use std::io::{self, Write};
use std::path::Path;

use anstream::AutoStream;
use anstyle::{AnsiColor, Style};
use clap::error::{ContextKind, ContextValue};

use super::lines::Lines;
use super::screen::Screen;
use super::wrap::wrapped;
use crate::error::{Error, Problem, Result, why};
use crate::shown::{shown, shown_in_json, shown_lines};

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

/// Prints lines for a screen to standard output.
///
/// # Errors
/// As [`print()`].
pub fn print_lines(lines: &Lines) -> Result<()> {
    write_out(&mut AutoStream::auto(io::stdout().lock()), lines.text())
}

/// Prints sentences to standard output, each on lines of its own.
///
/// # Errors
/// As [`print()`].
pub fn print_sentences(sentences: &[&str]) -> Result<()> {
    let mut lines = Lines::new(Screen::out());
    for sentence in sentences {
        lines.line(sentence);
    }
    print_lines(&lines)
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
    write_out(&mut io::stdout().lock(), text)
}

fn write_out(out: &mut impl Write, text: &str) -> Result<()> {
    match out.write_all(text.as_bytes()).and_then(|()| out.flush()) {
        Err(error) if error.kind() != io::ErrorKind::BrokenPipe => {
            let problem = Problem::at(
                Path::new("standard output"),
                format!("cannot be written: {}", why(&error)),
            );
            Err(Error::Usage(problem.hint("print to another place").into()))
        }
        _ => Ok(()),
    }
}

/// Prints an error to standard error.
pub fn print_error(error: &Error) {
    print_told(&format!("error: {error}\n"));
}

/// Prints errors that say themselves what they are.
pub fn print_errors(told: &[String]) {
    print_told(&told.concat());
}

/// Prints a remark to standard error.
pub fn print_note(note: &str) {
    print_told(&line(&format!("note: {note}")));
}

/// Prints a remark, and what to do about it.
pub fn print_note_with_hint(note: &str, hint: &str) {
    print_told(&(line(&format!("note: {note}")) + &line(&format!("hint: {hint}"))));
}

/// Prints a remark for which an error is the reason.
pub fn print_note_of(note: &str, error: &Error) {
    print_told(&format!("note: {}: {error}\n", shown(note)));
}

/// Prints lines that begin with what they are.
fn print_told(text: &str) {
    let told = told(Screen::err(), text);
    let _closed_pipe = AutoStream::auto(io::stderr().lock()).write_all(told.as_bytes());
}

/// The labels with which errors and remarks begin.
const LABELS: [(&str, Style); 3] = [
    ("error: ", AnsiColor::Red.on_default().bold()),
    ("note: ", Style::new().bold()),
    ("hint: ", Style::new()),
];

/// Lines as a screen shows them: wrapped behind their labels.
fn told(screen: Screen, text: &str) -> String {
    let mut told = String::new();
    for line in shown_lines(text).lines() {
        let label = LABELS.iter().find(|(label, _)| line.starts_with(label));
        let (label, style) = label.copied().unwrap_or_default();
        let wrapped = wrapped(label, &line[label.len()..], screen.width);
        match screen.has_colours && style != Style::new() {
            true => told += &format!("{style}{label}{style:#}{}", &wrapped[label.len()..]),
            false => told += &wrapped,
        }
    }
    told
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

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_line_forges_no_other() {
        assert_eq!(line("a\nerror: b"), "a\\nerror: b\n");
    }

    #[test]
    fn errors_and_hints_hang_behind_their_labels() {
        let screen = Screen {
            width: Some(24),
            has_colours: false,
        };
        let text = "error: file.csv: is empty and no log\nhint: export it once more, whole\n";
        assert_eq!(
            told(screen, text),
            "error: file.csv: is\n       empty and no log\n\
             hint: export it once\n      more, whole\n"
        );
        assert_eq!(told(Screen::PIPE, text), text);
        let screen = Screen {
            has_colours: true,
            ..Screen::PIPE
        };
        assert_eq!(
            told(screen, "error: a\u{1b}[2J\n"),
            "\u{1b}[1m\u{1b}[31merror: \u{1b}[0ma\\u{1b}[2J\n"
        );
    }
}
