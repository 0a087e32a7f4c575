//! A log as rows of cells, from text or from a spreadsheet.

use std::path::Path;
use std::slice;

use csv_core::{ReadRecordResult, Reader, ReaderBuilder};

use super::source::{Source, unreadable};
use super::text::{LineFault, Lines, TextEncoding};
use crate::campaign::model::Delimiter;
use crate::error::Problem;
use crate::language::Message;
use crate::message;

/// Lines over which a quoted cell may go on.
const QUOTED_LINES: usize = 20;

/// Lines that start so are remarks. Common practice, no published source.
const REMARKS: [&str; 3] = ["#", "//", "%"];

/// One row: its cells, trimmed.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Row {
    /// Line it starts on, or row of a spreadsheet, from 1.
    pub line: u64,
    /// A cell goes on over several lines.
    pub spans_lines: bool,
    text: String,
    cells: Vec<(u32, u32)>,
}

impl Row {
    /// Number of cells.
    pub fn len(&self) -> usize {
        self.cells.len()
    }

    /// Length of its text.
    pub fn bytes(&self) -> usize {
        self.text.len()
    }

    /// Whether there is no cell.
    pub fn is_empty(&self) -> bool {
        self.cells.is_empty()
    }

    /// A cell; empty where the row has none.
    pub fn cell(&self, index: usize) -> &str {
        let (from, to) = self.cells.get(index).copied().unwrap_or_default();
        &self.text[from as usize..to as usize]
    }

    /// The cells in order.
    pub fn iter(&self) -> impl DoubleEndedIterator<Item = &str> + ExactSizeIterator {
        (0..self.len()).map(|index| self.cell(index))
    }

    /// Number of cells up to the last that is not blank.
    pub fn filled(&self) -> usize {
        let last = self.iter().rposition(|cell| !cell.is_empty());
        last.map_or(0, |last| last + 1)
    }

    /// Whether it is a remark.
    pub fn is_remark(&self) -> bool {
        let first = self.iter().find(|cell| !cell.is_empty());
        first.is_some_and(is_remark)
    }

    /// The whole row as it is shown to people.
    pub fn shown(&self) -> String {
        let cells: Vec<&str> = self.iter().filter(|cell| !cell.is_empty()).collect();
        cells.join(" ")
    }

    /// The row with so many cells more than `expected` joined into the cell at
    /// `column`: a time that holds spaces, in a log whose cells spaces separate.
    pub fn join(&mut self, column: usize, expected: usize) {
        let extra = self.len().saturating_sub(expected);
        if extra > 0 && column + extra < self.len() {
            self.cells[column].1 = self.cells[column + extra].1;
            self.cells.drain(column + 1..=column + extra);
        }
    }

    /// Whether a cell that goes on over several lines holds one that is a row of so many
    /// cells by itself: then a quotation mark is not closed, and readings are in it.
    pub fn swallows(&self, cells: usize, delimiter: Delimiter) -> bool {
        let separator = delimiter.byte() as char;
        let holds_row = |text: &str| {
            let lines = text.split('\n').skip(1);
            let mut rows =
                lines.filter(|line| line.trim_start().starts_with(|c: char| c.is_ascii_digit()));
            rows.any(|line| line.split(separator).count() + 1 >= cells)
        };
        self.spans_lines && self.iter().any(holds_row)
    }

    /// Replaces the cells.
    pub fn set<'c>(&mut self, line: u64, cells: impl Iterator<Item = &'c str>) {
        self.line = line;
        self.spans_lines = false;
        self.text.clear();
        self.cells.clear();
        for cell in cells {
            let from = self.text.len() as u32;
            self.text.push_str(cell.trim());
            self.cells.push((from, self.text.len() as u32));
            // Keeps cells apart, so that joined ones read as they were written.
            self.text.push(' ');
        }
    }
}

fn is_remark(text: &str) -> bool {
    let text = text.trim_start();
    // `#N/A` is a spreadsheet's missing value.
    REMARKS.iter().any(|mark| text.starts_with(mark)) && !text.starts_with("#N/A")
}

/// Rows of a log, one after the other.
pub enum Rows<'s> {
    Text(Box<TextRows<'s>>),
    Sheet(SheetRows<'s>),
}

impl Rows<'_> {
    /// Puts the next row into `row`; false after the last.
    ///
    /// # Errors
    /// A [`RowFault`], after which there is no next row.
    pub fn next(&mut self, row: &mut Row) -> Result<bool, RowFault> {
        match self {
            Rows::Text(text) => text.next(row),
            Rows::Sheet(sheet) => Ok(sheet.next(row)),
        }
    }

    /// Whether the file stops in the last row without an end of line.
    pub fn is_open_ended(&self) -> bool {
        matches!(self, Rows::Text(text) if text.lines.is_open_ended)
    }
}

/// Why a row could not be had.
#[derive(Debug)]
pub enum RowFault {
    Line(LineFault),
    /// A quotation mark on this line is not closed.
    OpenQuote(u64),
}

impl RowFault {
    /// Whether the bytes are no text in the encoding that was tried.
    pub fn is_not_text(&self) -> bool {
        matches!(self, RowFault::Line(LineFault::NotText(_)))
    }

    /// As a problem with a log.
    pub fn problem(&self, path: &Path, encoding: Option<TextEncoding>) -> Problem {
        match self {
            RowFault::Line(fault) => fault.problem(path, encoding),
            RowFault::OpenQuote(line) => {
                Problem::at(path, "a quotation mark opened here is not closed")
                    .line(*line)
                    .hint("delete the quotation mark, or close it")
            }
        }
    }
}

/// Rows of a spreadsheet, read as a whole.
pub struct SheetRows<'s> {
    rows: slice::Iter<'s, Vec<String>>,
    line: u64,
}

impl<'s> SheetRows<'s> {
    /// The rows, of which the first is row 1 of the sheet.
    pub fn new(rows: &'s [Vec<String>]) -> Self {
        SheetRows {
            rows: rows.iter(),
            line: 0,
        }
    }

    fn next(&mut self, row: &mut Row) -> bool {
        let Some(cells) = self.rows.next() else {
            return false;
        };
        self.line += 1;
        row.set(self.line, cells.iter().map(String::as_str));
        true
    }
}

/// Rows of text.
pub struct TextRows<'s> {
    lines: Lines<'s>,
    delimiter: Delimiter,
    quoted: QuotedRow,
}

impl<'s> TextRows<'s> {
    /// The rows from the start.
    ///
    /// # Errors
    /// A [`Problem`] for a file that cannot be opened.
    pub fn open(
        path: &Path,
        source: Source<'s>,
        encoding: TextEncoding,
        delimiter: Delimiter,
    ) -> Result<Self, Problem> {
        let lines = Lines::open(source, encoding).map_err(|error| unreadable(path, &error))?;
        Ok(TextRows {
            lines,
            delimiter,
            quoted: QuotedRow::new(delimiter),
        })
    }

    fn next(&mut self, row: &mut Row) -> Result<bool, RowFault> {
        let Some(line) = self.lines.next().map_err(RowFault::Line)? else {
            return Ok(false);
        };
        // A remark may hold a quotation mark that nothing closes.
        let is_plain = !line.contains('"') || (is_remark(line) && !self.quoted.is_closed(line));
        if is_plain {
            split_plain(line, self.delimiter, |cells| row.set(0, cells));
            row.line = self.lines.line();
            return Ok(true);
        }
        self.quoted.begin();
        let mut is_whole = self.quoted.feed(line);
        let first = self.lines.line();
        for _ in 1..QUOTED_LINES {
            if is_whole {
                break;
            }
            match self.lines.next().map_err(RowFault::Line)? {
                Some(line) => is_whole = self.quoted.feed(line),
                None => break,
            }
        }
        if !is_whole {
            return Err(RowFault::OpenQuote(first));
        }
        row.set(first, self.quoted.cells());
        row.spans_lines = self.lines.line() > first;
        Ok(true)
    }
}

/// Hands the cells of a line without quotation marks to `visit`.
fn split_plain(
    line: &str,
    delimiter: Delimiter,
    visit: impl FnOnce(&mut dyn Iterator<Item = &str>),
) {
    match delimiter {
        Delimiter::Space => visit(&mut line.split_whitespace()),
        Delimiter::WideSpace => {
            let cells = line.split("  ").map(str::trim);
            visit(&mut cells.filter(|cell| !cell.is_empty()));
        }
        _ => visit(&mut line.split(delimiter.byte() as char)),
    }
}

/// A row with quotation marks, taken apart by the csv library after RFC 4180.
struct QuotedRow {
    reader: Reader,
    delimiter: u8,
    is_spaced: bool,
    output: Vec<u8>,
    written: usize,
    ends: Vec<usize>,
    ended: usize,
    text: String,
}

impl QuotedRow {
    fn new(delimiter: Delimiter) -> Self {
        QuotedRow {
            reader: ReaderBuilder::new().delimiter(delimiter.byte()).build(),
            delimiter: delimiter.byte(),
            is_spaced: matches!(delimiter, Delimiter::Space | Delimiter::WideSpace),
            output: vec![0; 1024],
            written: 0,
            ends: vec![0; 64],
            ended: 0,
            text: String::new(),
        }
    }

    /// Whether a line is a row by itself.
    fn is_closed(&mut self, line: &str) -> bool {
        self.begin();
        self.feed(line)
    }

    fn begin(&mut self) {
        self.reader.reset();
        (self.written, self.ended) = (0, 0);
    }

    /// Takes a line; whether the row is whole with it.
    fn feed(&mut self, line: &str) -> bool {
        let joined;
        let spaced_quote = format!("{} \"", self.delimiter as char);
        let line = if self.is_spaced {
            joined = line.split_whitespace().collect::<Vec<_>>().join(" ");
            &joined
        } else if line.contains(&spaced_quote) {
            // DIFFERENCE: a space before a quotation mark is no part of the cell.
            joined = line.replace(&spaced_quote, &format!("{}\"", self.delimiter as char));
            &joined
        } else {
            line
        };
        self.read(line.as_bytes()) || self.read(b"\n")
    }

    fn read(&mut self, mut input: &[u8]) -> bool {
        loop {
            let (result, read, wrote, ended) = self.reader.read_record(
                input,
                &mut self.output[self.written..],
                &mut self.ends[self.ended..],
            );
            input = &input[read..];
            self.written += wrote;
            self.ended += ended;
            match result {
                ReadRecordResult::InputEmpty => return false,
                ReadRecordResult::OutputFull => self.output.resize(2 * self.output.len(), 0),
                ReadRecordResult::OutputEndsFull => self.ends.resize(2 * self.ends.len(), 0),
                ReadRecordResult::Record | ReadRecordResult::End => return true,
            }
        }
    }

    fn cells(&mut self) -> impl Iterator<Item = &str> {
        self.text.clear();
        let output = &self.output[..self.written];
        self.text.push_str(&String::from_utf8_lossy(output));
        let starts = std::iter::once(0).chain(self.ends.iter().copied());
        let ends = self.ends[..self.ended].iter().copied();
        let cells = starts.zip(ends);
        cells.map(|(from, to)| self.text.get(from..to).unwrap_or_default())
    }
}

impl Delimiter {
    fn byte(self) -> u8 {
        match self {
            Delimiter::Comma => b',',
            Delimiter::Semicolon => b';',
            Delimiter::Tab => b'\t',
            Delimiter::Pipe => b'|',
            Delimiter::Space | Delimiter::WideSpace => b' ',
        }
    }

    /// In words.
    pub fn describe(self) -> Message {
        match self {
            Delimiter::Comma => message!("delimiter-comma"),
            Delimiter::Semicolon => message!("delimiter-semicolon"),
            Delimiter::Tab => message!("delimiter-tab"),
            Delimiter::Pipe => message!("delimiter-pipe"),
            Delimiter::Space => message!("delimiter-space"),
            Delimiter::WideSpace => message!("delimiter-wide-space"),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn rows_of(text: &str, delimiter: Delimiter) -> Vec<Vec<String>> {
        let path = Path::new("a.csv");
        let source = Source::Bytes(text.as_bytes());
        let encoding = TextEncoding::detect(path, source, None).unwrap();
        let mut rows = TextRows::open(path, source, encoding, delimiter).unwrap();
        let (mut row, mut read) = (Row::default(), Vec::new());
        while rows.next(&mut row).unwrap() {
            read.push(row.iter().map(str::to_owned).collect());
        }
        read
    }

    #[test]
    fn spaces_of_any_number_separate() {
        let rows = rows_of("  a   b c \n1 \t 2   3\n", Delimiter::Space);
        assert_eq!(rows, [["a", "b", "c"], ["1", "2", "3"]]);
        let rows = rows_of("Water temp   Sun\n21.8  894\n", Delimiter::WideSpace);
        assert_eq!(rows, [["Water temp", "Sun"], ["21.8", "894"]]);
    }

    #[test]
    fn a_time_with_a_space_is_joined() {
        let mut row = Row::default();
        row.set(1, ["2026-03-14", "10:20:00", "21.8"].into_iter());
        row.join(0, 2);
        assert_eq!(
            row.iter().collect::<Vec<_>>(),
            ["2026-03-14 10:20:00", "21.8"]
        );
    }
}
