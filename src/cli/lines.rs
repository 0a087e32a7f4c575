//! Lines as they are put together for a screen: a verdict with its mark, sentences, labelled
//! rows, tables.
//!
//! Every text that goes in is escaped there, so that what comes out has no code for the
//! terminal but ours.

use std::borrow::Cow;

use anstyle::{AnsiColor, Style};
use unicode_width::UnicodeWidthStr;

use super::screen::Screen;
use super::table::{Align, parts_of_table, table_in};
use super::wrap::{in_parts, plain_spaces, wrapped};
use crate::procedure::finding::Level;
use crate::shown::shown;

/// How good something is, as a sign and a colour.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Mark {
    /// As it should be.
    Good,
    /// Of use, with a reservation.
    Reserved,
    /// Of no use.
    Bad,
}

impl Mark {
    /// The mark of a level: good is what `--strict` lets pass.
    pub fn of(level: Level) -> Mark {
        match level {
            Level::Conforms | Level::ConformsWithNotes => Mark::Good,
            Level::Indicative => Mark::Reserved,
            Level::NotValid | Level::NoRating => Mark::Bad,
        }
    }

    /// The sign, one column wide.
    pub fn sign(self) -> &'static str {
        match self {
            Mark::Good => "✓",
            Mark::Reserved => "~",
            Mark::Bad => "✗",
        }
    }

    fn style(self) -> Style {
        let colour = match self {
            Mark::Good => AnsiColor::Green,
            Mark::Reserved => AnsiColor::Yellow,
            Mark::Bad => AnsiColor::Red,
        };
        colour.on_default().bold()
    }
}

/// A row of a table with a mark before it.
pub struct MarkedRow<const N: usize> {
    pub mark: Mark,
    pub cells: [String; N],
    /// Further lines.
    pub below: Vec<String>,
}

/// Lines for a screen.
#[derive(Debug, Clone)]
pub struct Lines {
    screen: Screen,
    text: String,
}

impl Lines {
    /// No line yet.
    pub fn new(screen: Screen) -> Self {
        Lines {
            screen,
            text: String::new(),
        }
    }

    /// Columns of a line; `None` for as many as it takes.
    pub fn width(&self) -> Option<usize> {
        self.screen.width
    }

    /// A sentence with its mark before it, which sums up what follows.
    pub fn verdict(&mut self, mark: Mark, text: &str) -> &mut Self {
        let text = wrapped("  ", &shown(text), self.screen.width);
        let sign = self.styled(mark.sign(), mark.style());
        let said = self.styled(text[2..].trim_end(), mark.style());
        self.text += &format!("{sign} {said}\n");
        self
    }

    /// A row of a list, with a mark before it: a lead and a text that hangs behind it; `indent`
    /// stands before the mark.
    pub fn item(&mut self, indent: &str, mark: Mark, lead: &str, text: &str) -> &mut Self {
        let bare = format!("{indent}  {}", shown(lead));
        let text = wrapped(&bare, &shown(text), self.screen.width);
        let sign = self.styled(mark.sign(), mark.style());
        self.text += &format!("{indent}{sign} {}", &text[indent.len() + 2..]);
        self
    }

    /// A title, in bold.
    pub fn title(&mut self, text: &str) -> &mut Self {
        let text = wrapped("", &shown(text), self.screen.width);
        let text = self.styled(text.trim_end(), Style::new().bold());
        self.text += &format!("{text}\n");
        self
    }

    /// A sentence from the left edge.
    pub fn line(&mut self, text: &str) -> &mut Self {
        self.hanging("", text)
    }

    /// A sentence behind a lead, under whose end its further lines begin.
    pub fn hanging(&mut self, lead: &str, text: &str) -> &mut Self {
        self.text += &wrapped(&shown(lead), &shown(text), self.screen.width);
        self
    }

    /// Something found behind a lead, and below it what would remedy it.
    pub fn remedied(&mut self, lead: &str, found: &str, remedy: &str) -> &mut Self {
        let indent = " ".repeat(lead.width());
        self.hanging(lead, found);
        self.hanging(&format!("{indent}→ "), remedy)
    }

    /// Sentences of ours, whose lines all begin at the left edge.
    pub fn paragraph(&mut self, text: &str) -> &mut Self {
        let room = self.screen.width.unwrap_or(usize::MAX);
        for part in in_parts(&shown(text), room, room) {
            self.text += &plain_spaces(&format!("{part}\n"));
        }
        self
    }

    /// A line of a file or of another program, which nobody breaks.
    pub fn as_it_is(&mut self, text: &str) -> &mut Self {
        self.text += &format!("{}\n", shown(text));
        self
    }

    /// An empty line.
    pub fn blank(&mut self) -> &mut Self {
        self.text.push('\n');
        self
    }

    /// Rows of a label and what it says, which stand in columns; a label that would leave too
    /// little room has a line of its own.
    pub fn rows(&mut self, indent: &str, rows: &[(String, String)]) -> &mut Self {
        let labels: Vec<Cow<'_, str>> = rows.iter().map(|(label, _)| shown(label)).collect();
        let widest = self.width().map_or(usize::MAX, |width| width * 2 / 5);
        let widths = labels.iter().map(|label| label.width());
        let column = widths.filter(|taken| *taken <= widest).max().unwrap_or(0) + 2;
        for (label, (_, text)) in labels.iter().zip(rows) {
            if label.width() > widest {
                self.hanging(indent, label);
                self.hanging(&format!("{indent}{}", " ".repeat(column)), text);
                continue;
            }
            let gap = " ".repeat(column - label.width());
            self.hanging(&format!("{indent}{label}{gap}"), text);
        }
        self
    }

    /// A table, its header above a rule.
    pub fn table<const N: usize>(
        &mut self,
        header: [(&str, Align); N],
        rows: &[[String; N]],
    ) -> &mut Self {
        self.text += &table_in(self.screen.width, header, rows);
        self
    }

    /// A table whose rows may have a text below them.
    pub fn table_above<const N: usize>(
        &mut self,
        header: [(&str, Align); N],
        rows: &[([String; N], String)],
    ) -> &mut Self {
        let cells: Vec<[String; N]> = rows.iter().map(|(cells, _)| cells.clone()).collect();
        let parts = parts_of_table(self.screen.width, header, &cells);
        self.text += &format!("{}{}\n", parts.head, parts.rule);
        for ((_, below), text) in rows.iter().zip(&parts.rows) {
            self.text += text;
            if !below.is_empty() {
                self.hanging("    ", below);
            }
        }
        self
    }

    /// A table whose rows have a mark before them and may have more lines below them, which
    /// share one line where they fit.
    pub fn marked_table<const N: usize>(
        &mut self,
        header: [(&str, Align); N],
        rows: &[MarkedRow<N>],
    ) -> &mut Self {
        let cells: Vec<[String; N]> = rows.iter().map(|row| row.cells.clone()).collect();
        let room = self.screen.width.map(|width| width.saturating_sub(2));
        let parts = parts_of_table(room, header, &cells);
        for line in parts.head.lines() {
            self.text += &format!("  {line}\n");
        }
        self.text += &format!("──{}\n", parts.rule);
        for (row, text) in rows.iter().zip(&parts.rows) {
            let sign = self.styled(row.mark.sign(), row.mark.style());
            let mut lead = sign.as_str();
            for line in text.lines() {
                self.text += &format!("{lead} {line}\n");
                lead = " ";
            }
            self.below(&row.below);
        }
        self
    }

    fn below(&mut self, texts: &[String]) {
        const INDENT: &str = "    ";
        let on_one = texts.join("  ");
        let taken = INDENT.width() + shown(&on_one).width();
        if self.screen.width.is_none_or(|width| taken <= width) && !texts.is_empty() {
            self.hanging(INDENT, &on_one);
            return;
        }
        for text in texts {
            self.hanging(INDENT, text);
        }
    }

    /// Lines of the same screen, below these.
    pub fn append(&mut self, other: &Lines) -> &mut Self {
        self.text += &other.text;
        self
    }

    /// Whether there is no line.
    pub fn is_empty(&self) -> bool {
        self.text.is_empty()
    }

    /// The lines as they are printed.
    pub fn text(&self) -> &str {
        &self.text
    }

    fn styled(&self, text: &str, style: Style) -> String {
        match self.screen.has_colours && style != Style::new() {
            true => format!("{style}{text}{style:#}"),
            false => text.to_owned(),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const NARROW: Screen = Screen {
        width: Some(24),
        has_colours: false,
    };

    #[test]
    fn a_verdict_hangs_behind_its_mark() {
        let mut lines = Lines::new(NARROW);
        lines.verdict(Mark::Reserved, "Indicative only: one more day of test");
        assert_eq!(lines.text(), "~ Indicative only: one\n  more day of test\n");
    }

    #[test]
    fn colours_are_there_where_they_are_shown_and_never_from_others() {
        let screen = Screen {
            has_colours: true,
            ..NARROW
        };
        let mut lines = Lines::new(screen);
        lines.verdict(Mark::Bad, "a\u{1b}[2J").line("b\u{1b}[2J");
        assert_eq!(
            lines.text(),
            "\u{1b}[1m\u{1b}[31m✗\u{1b}[0m \u{1b}[1m\u{1b}[31ma\\u{1b}[2J\u{1b}[0m\nb\\u{1b}[2J\n"
        );
    }

    #[test]
    fn rows_stand_in_columns_and_wrap_in_theirs() {
        let rows = [("sun", "rises early in the day"), ("aim", "here")];
        let rows = rows.map(|(label, text)| (label.to_owned(), text.to_owned()));
        let mut lines = Lines::new(NARROW);
        lines.rows("  ", &rows);
        assert_eq!(
            lines.text(),
            "  sun  rises early in\n       the day\n  aim  here\n"
        );
        let long = [("a label of some length".to_owned(), "7 W".to_owned())];
        let mut lines = Lines::new(NARROW);
        lines.rows("  ", &[&rows[1..], &long].concat());
        assert_eq!(
            lines.text(),
            "  aim  here\n  a label of some length\n       7 W\n"
        );
    }
}
