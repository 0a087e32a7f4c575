//! Goes through the rows of a log: which are readings, and what is wrong with the rest.

use std::path::Path;

use super::account::{Skip, Skipped};
use super::aimings::says_aimed;
use super::cells::{Cell, Marks, read_cell};
use super::columns::ColumnMap;
use super::frame::FrameBuilder;
use super::layout::Layout;
use super::names::{Recognised, read_header};
use super::quote::shortened;
use super::sensor::Sensor;
use super::stretches::Stretches;
use super::table::{Row, RowFault, Rows};
use super::times::reader::{TimeFault, TimeReader};
use super::times::rules::TimeRules;
use crate::bounds::{LOG_ROWS, LOG_VALUES};
use crate::campaign::model::Delimiter;
use crate::error::{LISTED_PROBLEMS, Problem, Problems};
use crate::units::counted;

/// Rows that are kept back until it is known whether readings follow them.
const MOST_PENDING: usize = 1000;
/// Lines of sums, means and the like that may stand below the readings.
const MOST_SUMS: usize = 5;
/// A cell that starts with a digit and has so many of them was meant to be a time.
const DIGITS_OF_A_TIME: usize = 4;

/// How the cells of a log are read.
#[derive(Clone, Copy)]
pub struct Reading<'r> {
    pub path: &'r Path,
    pub layout: &'r Layout,
    pub map: &'r ColumnMap,
    pub marks: Marks,
    pub times: &'r TimeRules,
}

/// What the rows held.
pub struct Walked {
    pub frame: FrameBuilder,
    pub rows: usize,
    stretches: Stretches,
    pub skipped: Skipped,
    /// Fault values by sensor.
    pub faults: Vec<usize>,
    /// Times at which a note says that the cooker was turned to the sun, µs since 1970, UTC.
    pub aimed_us: Vec<i64>,
}

impl Layout {
    /// Brings a row into the shape of the header, where spaces separate cells and a
    /// time holds one.
    pub fn fit(&self, row: &mut Row, map: &ColumnMap) {
        let is_spaced = matches!(
            self.delimiter,
            Some(Delimiter::Space | Delimiter::WideSpace)
        );
        if is_spaced && map.time.clock.is_none() {
            row.join(map.time.first, self.header.len());
        }
    }

    /// Whether a row has the cells that are read, and none beyond the header. Where spaces
    /// separate, one that is missing would shift the others; to the right of a
    /// spreadsheet's table there may be another.
    pub fn fits(&self, row: &Row, map: &ColumnMap) -> bool {
        let columns = self.header.len();
        match self.delimiter {
            None => true,
            Some(Delimiter::Space | Delimiter::WideSpace) => row.len() == columns,
            Some(_) => row.len() >= map.least_cells && row.filled() <= columns,
        }
    }

    fn is_header(&self, row: &Row) -> bool {
        let words = |text: &str| text.split_whitespace().collect::<Vec<_>>().join(" ");
        row.filled() == self.header.len()
            && self
                .header
                .iter()
                .zip(row.iter())
                .all(|(header, cell)| *header == words(cell))
    }
}

/// Why the rows gave no readings.
pub enum WalkFault {
    /// What is wrong with them, in their order.
    Rows(Problems),
    /// A row could not be had; what was wrong with those before it.
    Row(RowFault, Problems),
}

/// Puts every reading into a frame.
///
/// # Errors
/// [`WalkFault`].
pub fn walk(rows: &mut Rows<'_>, reading: Reading<'_>) -> Result<Walked, WalkFault> {
    let mut walker = Walker {
        reading,
        times: TimeReader::new(reading.times, &reading.map.time),
        walked: Walked {
            frame: FrameBuilder::new(reading.map.sensors.len()),
            rows: 0,
            stretches: Stretches::default(),
            skipped: Skipped::default(),
            faults: vec![0; reading.map.sensors.len()],
            aimed_us: Vec::new(),
        },
        values: vec![None; reading.map.sensors.len()],
        pending: Vec::new(),
        first_unread: None,
        last_note: (String::new(), false),
        problems: Problems::default(),
    };
    let mut row = Row::default();
    loop {
        match rows.next(&mut row) {
            Ok(true) => {
                walker.take(&mut row);
                if let Some(what) = too_many(walker.walked.rows, walker.values.len()) {
                    let hint = "make several logs of it, such as one a month, with a [[run]] each";
                    let problem = Problem::at(reading.path, what).line(row.line).hint(hint);
                    return Err(WalkFault::Rows(problem.into()));
                }
            }
            Ok(false) => break,
            Err(fault) => {
                walker.fail_pending();
                return Err(WalkFault::Row(fault, walker.problems));
            }
        }
    }
    walker.finish(rows.is_open_ended()).map_err(WalkFault::Rows)
}

/// What to say of so many readings of so many sensors, where they are too many.
fn too_many(rows: usize, sensors: usize) -> Option<String> {
    let values = || LOG_VALUES.exceeded_by(rows.saturating_mul(sensors));
    LOG_ROWS.exceeded_by(rows).or_else(values)
}

/// A row that is no reading, and is a fault only if readings follow it.
struct Pending {
    line: u64,
    problem: Problem,
    /// It was meant to be a reading.
    is_reading: bool,
    /// All its cells but the time are numbers: a reading, or a line of sums and means.
    has_numbers: bool,
    is_short: bool,
}

struct Walker<'w> {
    reading: Reading<'w>,
    times: TimeReader<'w>,
    walked: Walked,
    values: Vec<Option<f64>>,
    pending: Vec<Pending>,
    /// Of the first row that has all cells but no time, if no row has one.
    first_unread: Option<Problem>,
    /// The last note that was read, and whether it says that the cooker was turned to the sun.
    last_note: (String, bool),
    problems: Problems,
}

impl Walker<'_> {
    fn skip(&mut self, reason: Skip, line: u64) {
        self.walked.skipped.add(reason, line);
    }

    fn take(&mut self, row: &mut Row) {
        let layout = self.reading.layout;
        if row.line <= layout.header_line {
            match row.line < layout.header_line {
                true if row.is_remark() => self.skip(Skip::Remark, row.line),
                true if row.filled() > 0 => self.skip(Skip::BeforeHeader, row.line),
                _ => {}
            }
            return;
        }
        layout.fit(row, self.reading.map);
        if row.spans_lines
            && row.swallows(
                layout.header.len(),
                layout.delimiter.unwrap_or(Delimiter::Comma),
            )
        {
            self.fail_pending();
            let problem = RowFault::OpenQuote(row.line).problem(self.reading.path, None);
            return self.problems.push(problem);
        }
        let mut unread = TimeFault::Blank;
        if layout.fits(row, self.reading.map) && !row.cell(self.reading.map.time.first).is_empty() {
            // What nearly every row is.
            match self.times.read_us(row) {
                Ok(time_us) => return self.read(row, time_us),
                Err(
                    fault @ (TimeFault::Unreadable
                    | TimeFault::Blank
                    | TimeFault::NoClock
                    | TimeFault::TwoNotations
                    | TimeFault::NotInOrder(_)),
                ) => {
                    unread = fault;
                }
                Err(fault) => {
                    self.fail_pending();
                    let problem = self.time_problem(row, &fault);
                    return self.problems.push(problem);
                }
            }
        }
        self.set_aside(row, &unread);
    }

    /// A row that is no reading as it stands.
    fn set_aside(&mut self, row: &Row, unread: &TimeFault) {
        let Reading { layout, map, .. } = self.reading;
        let line = row.line;
        let header = layout.header.len();
        if row.iter().take(header).all(str::is_empty)
            && (row.filled() == 0 || layout.delimiter.is_none())
        {
            return self.skip(Skip::Blank, line);
        }
        if row.is_remark() {
            return self.skip(Skip::Remark, line);
        }
        if layout.is_header(row) {
            for row in std::mem::take(&mut self.pending) {
                self.skip(Skip::BeforeHeaderAgain, row.line);
            }
            return self.skip(Skip::HeaderAgain, line);
        }
        let is_units =
            |(_, units): &(u64, Vec<String>)| units.iter().map(String::as_str).eq(row.iter());
        if layout.units.as_ref().is_some_and(is_units) {
            return self.skip(Skip::UnitsRow, line);
        }
        if layout.known_rows.contains(&row.shown()) {
            return self.skip(Skip::BeforeHeaderAgain, line);
        }
        let time = row.cell(map.time.first);
        let digits = time.bytes().filter(u8::is_ascii_digit).count();
        let fits = layout.fits(row, self.reading.map);
        let looks_like_a_time =
            digits >= DIGITS_OF_A_TIME && time.starts_with(|c: char| c.is_ascii_digit());
        let is_number = |sensor: &Sensor| matches!(self.cell(sensor, row), Cell::Number(_));
        let has_numbers = fits && map.sensors.iter().all(is_number);
        let is_reading = match fits {
            true if *unread == TimeFault::Blank => map
                .sensors
                .iter()
                .all(|sensor| self.cell(sensor, row) != Cell::Unreadable),
            true => looks_like_a_time && map.sensors.iter().any(is_number),
            false => looks_like_a_time || self.times.read_us(row).is_ok(),
        };
        if self.walked.rows == 0 && !is_reading && !has_numbers {
            if fits {
                let problem = self.time_problem(row, unread);
                self.first_unread.get_or_insert(problem);
            }
            return self.skip(Skip::BetweenHeaderAndReadings, line);
        }
        let problem = if self.is_second_header(row) {
            let what = "is a second header, with other columns or units than the first";
            let hint = "put what follows into a log of its own, with a [[run]] of its own";
            Problem::at(self.reading.path, what).line(line).hint(hint)
        } else if fits {
            self.time_problem(row, unread)
        } else {
            self.shape_problem(row)
        };
        self.pending.push(Pending {
            line,
            problem,
            is_reading,
            has_numbers,
            is_short: row.len() < map.least_cells,
        });
        if self.pending.len() > MOST_PENDING {
            self.fail_pending();
        }
    }

    /// Whether a row names columns; of many that are wrong, the first alone are asked.
    fn is_second_header(&self, row: &Row) -> bool {
        let is_told = !self.problems.are_full() && self.pending.len() < LISTED_PROBLEMS;
        let is_name = |cell: &&str| matches!(read_header(cell).recognised, Recognised::As { .. });
        let cells = row.iter().take(self.reading.layout.header.len());
        is_told && cells.filter(is_name).take(3).count() > 2
    }

    fn read(&mut self, row: &Row, time_us: i64) {
        self.fail_pending();
        self.walked.rows += 1;
        self.walked.stretches.see(row.line, time_us);
        for (index, sensor) in self.reading.map.sensors.iter().enumerate() {
            self.values[index] = match self.cell(sensor, row) {
                Cell::Number(reading) => Some(sensor.value(reading)),
                Cell::Missing => None,
                Cell::Fault => {
                    self.walked.faults[index] += 1;
                    None
                }
                Cell::Unreadable => {
                    self.problems.push(self.number_problem(sensor, row));
                    None
                }
            };
        }
        self.walked.frame.push(time_us, self.values.iter().copied());
        if let Some(column) = self.reading.map.notes
            && self.says_aimed(row.cell(column))
        {
            self.walked.aimed_us.push(time_us);
        }
    }

    /// Whether a note says that the cooker was turned to the sun. A log may have the same words in
    /// every row.
    fn says_aimed(&mut self, note: &str) -> bool {
        if note.is_empty() {
            return false;
        }
        if self.last_note.0 != note {
            self.last_note = (note.to_owned(), says_aimed(note));
        }
        self.last_note.1
    }

    fn cell(&self, sensor: &Sensor, row: &Row) -> Cell {
        let text = row.cell(sensor.column);
        let text = if sensor.has_unit_in_cells {
            sensor.number_alone(text)
        } else {
            text
        };
        let is_sheet = self.reading.layout.delimiter.is_none();
        // A spreadsheet's numbers know no marks; its texts do.
        match is_sheet.then(|| read_cell(text, Marks::POINT)) {
            None | Some(Cell::Unreadable) => read_cell(text, self.reading.marks),
            Some(number) => number,
        }
    }

    /// Readings follow: what was kept back is at fault.
    fn fail_pending(&mut self) {
        for pending in self.pending.drain(..) {
            self.problems.push(pending.problem);
        }
    }

    fn finish(mut self, is_open_ended: bool) -> Result<Walked, Problems> {
        let last = self.pending.len().saturating_sub(1);
        let has_readings = self.walked.rows > 0;
        let numbers = self.pending.iter().filter(|row| row.has_numbers).count();
        let are_sums = numbers <= MOST_SUMS;
        for (index, row) in std::mem::take(&mut self.pending).into_iter().enumerate() {
            if has_readings && index == last && is_open_ended && row.is_short {
                self.skip(Skip::CutOff, row.line);
            } else if has_readings && !row.is_reading && (are_sums || !row.has_numbers) {
                self.skip(Skip::Footer, row.line);
            } else {
                self.problems.push(row.problem);
            }
        }
        if !has_readings && self.problems.is_empty() {
            let empty = || {
                Problem::at(self.reading.path, "has a header and no readings").hint(
                    "write the readings below the header, or copy the log from the logger again; what is on paper or in notes is taken by simmerline enter",
                )
            };
            self.problems
                .push(self.first_unread.take().unwrap_or_else(empty));
        }
        if let Some(line) = self
            .walked
            .stretches
            .interleaved(self.walked.frame.time_us())
        {
            let what = "the time goes back here, and the rows that follow run through times that were there before";
            let hint = "was the clock put back, or was a second log added? put what follows into a log of its own, or correct its times";
            self.problems
                .push(Problem::at(self.reading.path, what).line(line).hint(hint));
        }
        if self.problems.is_empty() {
            Ok(self.walked)
        } else {
            Err(self.problems)
        }
    }

    fn shape_problem(&self, row: &Row) -> Problem {
        let expected = self.reading.layout.header.len();
        let found = if row.len() < expected {
            row.len()
        } else {
            row.filled()
        };
        let what = format!(
            "found {}, expected {expected} as in the header",
            counted(found, "cell")
        );
        let hint = match self.reading.layout.delimiter {
            Some(Delimiter::Comma) if found > expected => {
                "delete what is too much; a decimal comma splits a number in two where commas separate the cells: save the log with semicolons or tabs between them"
            }
            _ => "complete or delete the row",
        };
        Problem::at(self.reading.path, what)
            .line(row.line)
            .hint(hint)
    }

    fn number_problem(&self, sensor: &Sensor, row: &Row) -> Problem {
        let text = row.cell(sensor.column);
        let what = format!(
            "found \"{}\", expected a number in {}",
            shortened(text),
            sensor.unit.symbol()
        );
        let Marks { decimal, thousands } = self.reading.marks;
        let looks_marked = text.contains(|c: char| c.is_ascii_digit())
            && text
                .bytes()
                .all(|b| b.is_ascii_digit() || b"., '-+".contains(&b) || !b.is_ascii())
            && text.contains(['.', ',', '\'', ' ', '\u{a0}', '\u{202f}']);
        let hint = match (looks_marked, decimal, thousands) {
            (true, _, None) => format!(
                "the decimal mark here is \"{decimal}\"; if the number has thousands, declare their mark as thousands_mark under [format] in campaign.toml; if not, declare decimal_mark"
            ),
            (_, '.', _) => {
                "correct the number, with a decimal point, or leave the cell blank".to_owned()
            }
            _ => {
                "correct the number, with a decimal comma as in the others, or leave the cell blank"
                    .to_owned()
            }
        };
        Problem::at(self.reading.path, what)
            .line(row.line)
            .item(format!("column \"{}\"", sensor.header))
            .hint(hint)
    }

    fn time_problem(&self, row: &Row, fault: &TimeFault) -> Problem {
        let columns = &self.reading.map.time;
        let found = shortened(&columns.text(row));
        let (what, hint) = match fault {
            TimeFault::Blank => (
                "the time is missing".to_owned(),
                "write the time as 2026-03-14 10:20:00, or delete the row",
            ),
            TimeFault::Unreadable => (
                format!(
                    "found \"{found}\", expected {}",
                    self.reading.times.expected()
                ),
                "correct the time, or write all of them as 2026-03-14 10:20:00; time zones other than UTC are written as an offset",
            ),
            TimeFault::NoClock => (
                format!("found \"{found}\", a date without a clock time"),
                "write the time as 2026-03-14 10:20:00; if the clock time has a column of its own, name both under [columns]: time = [\"Date\", \"Clock\"]",
            ),
            TimeFault::Skipped => (
                format!("found \"{found}\", which the clocks of the site's zone skipped"),
                "check site.time_zone; a logger kept on one offset all year wants that offset, such as time_zone = \"-05:00\" under [format]",
            ),
            TimeFault::TwoWays([first, second]) => (
                format!("found \"{found}\", which is {first} or {second}"),
                "write date_order under [format] in campaign.toml",
            ),
            TimeFault::TwoNotations => (
                format!(
                    "found \"{found}\", another way to write a date than the first, \"{}\"",
                    self.reading.times.example
                ),
                "write all dates of a log in one way; a spreadsheet may have read some with day and month exchanged",
            ),
            TimeFault::NotInOrder(order) => (
                format!("found \"{found}\", which is no day in the order {order}"),
                "correct the date, or date_order under [format] in campaign.toml; all dates of a log stand in one order",
            ),
            TimeFault::TwelveHours => (
                format!("found \"{found}\", about twelve hours before the row above"),
                "write 24-hour times, or AM and PM behind those of a 12-hour clock",
            ),
            TimeFault::GoesBack => (
                format!("found \"{found}\", earlier than the row above"),
                "rows with clock times or elapsed times only stand in order of time; write 24-hour times, or AM and PM; a log that was begun anew is a run of its own",
            ),
        };
        Problem::at(self.reading.path, what)
            .line(row.line)
            .item(format!("column \"{}\"", columns.header))
            .hint(hint)
    }
}
