//! Printing: lines, errors and remarks. Nothing else writes to the terminal.
//!
//! What is printed may hold text of others, from names, keys, values and cells. [`line()`],
//! [`Lines`] and tables escape it, line feeds too, so that it forges no line; [`print()`] lets
//! nothing pass but line feeds, so that it moves no cursor and turns no text. Only [`Lines`] and
//! the labels of errors and remarks bring codes for colours, where [`Screen`] has them.

use std::io::{self, IsTerminal, Write};
use std::path::Path;

use anstream::AutoStream;
use anstream::adapter::strip_str;
use anstyle::{AnsiColor, Style};
use clap::error::{ContextKind, ContextValue};
use unicode_width::UnicodeWidthStr;

use super::lines::Lines;
use super::screen::{Screen, size_out};
use super::wrap::{plain_spaces, wrapped};
use crate::error::{Error, Problem, Result, why};
use crate::language::Words;
use crate::message;
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

/// Prints lines for a screen to standard output; whether somebody still reads it.
///
/// # Errors
/// As [`print()`].
pub fn print_while_read(lines: &Lines) -> Result<bool> {
    let mut out = AutoStream::auto(io::stdout().lock());
    match out
        .write_all(lines.text().as_bytes())
        .and_then(|()| out.flush())
    {
        Err(error) if error.kind() == io::ErrorKind::BrokenPipe => Ok(false),
        Err(error) => Err(not_written(&error)),
        Ok(()) => Ok(true),
    }
}

/// A terminal that is drawn on in place. What stood on it before comes back in the end.
pub struct Canvas {
    /// What was drawn last, and for which size.
    drawn: (String, Option<(usize, usize)>),
}

/// Codes of ECMA-48 and xterm: to the other screen and back, without a cursor and with it.
const OPEN: &str = "\u{1b}[?1049h\u{1b}[?25l";
const CLOSE: &str = "\u{1b}[?25h\u{1b}[?1049l";
/// To the first column of the first line; what is behind the cursor on its line, and below.
const HOME: &str = "\u{1b}[H";
const CLEAR_LINE: &str = "\u{1b}[K";
const CLEAR_BELOW: &str = "\u{1b}[J";

impl Canvas {
    /// Takes the terminal over; `None` where standard output is none that can be drawn on.
    ///
    /// # Errors
    /// As [`print()`].
    pub fn open() -> Result<Option<Canvas>> {
        let is_dumb = std::env::var_os("TERM").is_some_and(|term| term == "dumb");
        if is_dumb || !io::stdout().is_terminal() {
            return Ok(None);
        }
        let canvas = Canvas {
            drawn: (String::new(), None),
        };
        raw(OPEN)?;
        Ok(Some(canvas))
    }

    /// Draws lines from the first one on, as many as the terminal has room for.
    ///
    /// # Errors
    /// As [`print()`].
    pub fn draw(&mut self, lines: &Lines) -> Result<()> {
        let size = size_out();
        if self.drawn.1 == size && self.drawn.0 == lines.text() {
            return Ok(());
        }
        let kept = lines_within(lines.text(), size);
        let kept: Vec<String> = kept
            .into_iter()
            .map(|line| format!("{line}{CLEAR_LINE}"))
            .collect();
        raw(&format!("{HOME}{}{CLEAR_BELOW}", kept.join("\r\n")))?;
        self.drawn = (lines.text().to_owned(), size);
        Ok(())
    }

    /// Whether the terminal has another size than when it was drawn on.
    pub fn has_other_size(&self) -> bool {
        size_out() != self.drawn.1
    }

    /// Sounds the bell.
    ///
    /// # Errors
    /// As [`print()`].
    pub fn sound(&mut self) -> Result<()> {
        raw("\u{7}")
    }
}

impl Drop for Canvas {
    fn drop(&mut self) {
        // The terminal may be gone; there is nobody left to tell.
        let _terminal_gone = raw(CLOSE);
    }
}

/// Writes to the terminal as it is; a terminal of Windows is told before to obey codes.
fn raw(text: &str) -> Result<()> {
    write_out(&mut AutoStream::always_ansi(io::stdout().lock()), text)
}

/// The first lines of a text that a terminal of so many columns and lines has room for, where
/// it breaks lines that are longer than it is wide.
fn lines_within(text: &str, size: Option<(usize, usize)>) -> Vec<&str> {
    let Some((columns, most)) = size.filter(|(columns, lines)| *columns > 0 && *lines > 0) else {
        return text.lines().collect();
    };
    let mut taken = 0;
    let fits = |line: &&str| {
        let width = strip_str(line).to_string().width();
        taken += width.div_ceil(columns).max(1);
        taken <= most
    };
    text.lines().take_while(fits).collect()
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
        Err(error) if error.kind() != io::ErrorKind::BrokenPipe => Err(not_written(&error)),
        _ => Ok(()),
    }
}

fn not_written(error: &io::Error) -> Error {
    let problem = Problem::at(
        Path::new("standard output"),
        format!("cannot be written: {}", why(error)),
    );
    Error::Usage(problem.hint("print to another place").into())
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

/// Prints a remark that is in a language, with its label in it, too.
pub fn print_note_in(words: &Words, note: &str) {
    let label = words.say(message!(
        "terminal-whose",
        whose = message!("terminal-note"),
        said = ""
    ));
    let screen = Screen::err();
    let told = labelled(screen, (&shown(&label), NOTE), &shown(note));
    let _closed_pipe = AutoStream::auto(io::stderr().lock()).write_all(told.as_bytes());
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

const NOTE: Style = Style::new().bold();

/// The labels with which errors and remarks begin.
const LABELS: [(&str, Style); 3] = [
    ("error: ", AnsiColor::Red.on_default().bold()),
    ("note: ", NOTE),
    ("hint: ", Style::new()),
];

/// Lines as a screen shows them: wrapped behind their labels.
fn told(screen: Screen, text: &str) -> String {
    let mut told = String::new();
    for line in shown_lines(text).lines() {
        let label = LABELS.iter().find(|(label, _)| line.starts_with(label));
        let label = label.copied().unwrap_or_default();
        told += &labelled(screen, label, &line[label.0.len()..]);
    }
    told
}

/// A text behind its label.
fn labelled(screen: Screen, (label, style): (&str, Style), text: &str) -> String {
    let wrapped = wrapped(label, text, screen.width);
    match screen.has_colours && style != Style::new() {
        // A space in it that does not break is a space once lines are broken.
        true => format!(
            "{style}{}{style:#}{}",
            plain_spaces(label),
            &wrapped[plain_spaces(label).len()..]
        ),
        false => wrapped,
    }
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

/// A path as it can be typed in a command: in quotes where a shell would take it apart.
pub fn quoted(path: &Path) -> String {
    let name = path.display().to_string();
    let is_special = |c: char| c.is_whitespace() || "\"'$`!*?[](){}<>|&;#~".contains(c);
    match name.contains(is_special) {
        false => name,
        // What a shell looks into within double quotes.
        true if name.contains(['"', '$', '`', '!', '\\']) => {
            format!("'{}'", name.replace('\'', "'\\''"))
        }
        true => format!("\"{name}\""),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    // Quoting: POSIX.1-2024, Shell Command Language, 2.2.
    #[test]
    fn a_path_is_quoted_where_a_shell_would_take_it_apart() {
        for (name, said) in [
            ("ünï/dish-2", "ünï/dish-2"),
            ("my dish", "\"my dish\""),
            ("it's", "\"it's\""),
            ("a \"q\" dish", "'a \"q\" dish'"),
            ("$HOME's", "'$HOME'\\''s'"),
        ] {
            assert_eq!(quoted(Path::new(name)), said);
        }
    }

    #[test]
    fn a_line_forges_no_other() {
        assert_eq!(line("a\nerror: b"), "a\\nerror: b\n");
    }

    #[test]
    fn as_many_lines_are_drawn_as_a_terminal_has_room_for() {
        let text = "\u{1b}[1mone\u{1b}[0m\n23456\n7\n";
        assert_eq!(lines_within(text, None).len(), 3);
        for (size, expected) in [
            ((80, 24), 3),
            ((80, 2), 2),
            ((4, 3), 2),
            ((4, 4), 3),
            ((0, 0), 3),
        ] {
            assert_eq!(lines_within(text, Some(size)).len(), expected, "{size:?}");
        }
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
