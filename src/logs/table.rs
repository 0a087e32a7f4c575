//! A log as a table of text: its header and, one after the other, its rows.

use std::path::Path;

use csv::{Reader, ReaderBuilder, StringRecord};

use crate::error::{Problem, Problems};

/// Lines that start with this character are remarks.
const COMMENT: u8 = b'#';

/// Separators that a person may have used instead of a comma.
const OTHER_SEPARATORS: [(char, &str); 3] = [(';', "semicolons"), ('\t', "tabs"), ('|', "bars")];

/// A log whose header has been read.
pub struct Table<'t> {
    path: &'t Path,
    text: &'t str,
    /// Header cells, trimmed.
    pub header: Vec<String>,
    reader: Reader<&'t [u8]>,
}

/// What walking the rows met besides rows.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub struct Walked {
    /// Rows with at least one cell filled.
    pub rows: usize,
    /// Rows whose cells are all blank.
    pub blank_rows: usize,
}

impl<'t> Table<'t> {
    /// Reads the header of comma-separated text: its first line that is neither
    /// blank nor a remark.
    ///
    /// # Errors
    /// A [`Problem`] if there is no header, or it is not separated by commas.
    pub fn open(path: &'t Path, text: &'t str) -> Result<Self, Problem> {
        let mut reader = ReaderBuilder::new()
            .has_headers(false)
            .flexible(true)
            .comment(Some(COMMENT))
            .from_reader(text.as_bytes());
        let mut first = StringRecord::new();
        let found = reader
            .read_record(&mut first)
            .map_err(|error| unreadable(path, &error))?;
        if !found {
            return Err(
                Problem::at(path, "holds only remarks, expected a header and readings")
                    .hint("was the logger's memory read out? copy the log again"),
            );
        }
        let line = line_of(text, &first);
        if let [only] = first.iter().collect::<Vec<_>>().as_slice() {
            for (separator, name) in OTHER_SEPARATORS {
                if only.contains(separator) {
                    return Err(Problem::at(
                        path,
                        format!("columns are separated by {name}, expected commas"),
                    )
                    .line(line)
                    .hint("save the log as CSV with commas and decimal points"));
                }
            }
        }
        if first
            .iter()
            .any(|cell| cell.trim().chars().any(char::is_control))
        {
            return Err(Problem::at(path, "has a control character in its header")
                .line(line)
                .hint("write the header anew; it may come from a damaged file"));
        }
        Ok(Table {
            path,
            text,
            header: first.iter().map(|cell| cell.trim().to_owned()).collect(),
            reader,
        })
    }

    /// Hands every row that is not blank to `visit` with its line number; a row
    /// with another number of cells than the header is a problem.
    pub fn walk(
        mut self,
        problems: &mut Problems,
        mut visit: impl FnMut(u64, &StringRecord, &mut Problems),
    ) -> Walked {
        let mut walked = Walked::default();
        let mut row = StringRecord::new();
        loop {
            match self.reader.read_record(&mut row) {
                Ok(true) => {}
                Ok(false) => return walked,
                Err(error) => {
                    problems.push(unreadable(self.path, &error));
                    return walked;
                }
            }
            let line = line_of(self.text, &row);
            if row.iter().all(|cell| cell.trim().is_empty()) {
                walked.blank_rows += 1;
            } else if row.iter().any(|cell| cell.contains(['\n', '\r'])) {
                problems.push(
                    Problem::at(
                        self.path,
                        "a quotation mark opened here is not closed on this line",
                    )
                    .line(line)
                    .hint("delete the quotation mark, or close it"),
                );
            } else if row.len() == self.header.len() {
                walked.rows += 1;
                visit(line, &row, problems);
            } else {
                let (found, expected) = (row.len(), self.header.len());
                problems.push(
                    Problem::at(
                        self.path,
                        format!("found {found} cells, expected {expected} as in the header"),
                    )
                    .line(line)
                    .hint(
                        "complete or delete the row; a decimal comma also splits a number in two",
                    ),
                );
            }
        }
    }
}

/// Line of a row, counted from 1. The reader's own position is that before the
/// blank lines and remarks that it passed over to get to the row.
fn line_of(text: &str, row: &StringRecord) -> u64 {
    let Some(position) = row.position() else {
        return 1;
    };
    let from = usize::try_from(position.byte()).unwrap_or(usize::MAX);
    let rest = text.as_bytes().get(from..).unwrap_or_default();
    let lines = rest.split(|&byte| byte == b'\n');
    let passed_over =
        lines.take_while(|line| matches!(line.first(), None | Some(&b'\r' | &COMMENT)));
    position.line() + passed_over.count() as u64
}

fn unreadable(path: &Path, error: &csv::Error) -> Problem {
    let problem = Problem::at(path, format!("cannot be read as CSV ({error})"))
        .hint("save the log as CSV in UTF-8");
    match error.position() {
        Some(position) => problem.line(position.line()),
        None => problem,
    }
}
