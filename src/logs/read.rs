//! One log, from its bytes to readings.

use std::path::Path;
use std::thread;

use jiff::civil::Date;
use jiff::tz::TimeZone;

use super::account::Account;
use super::assemble::finish;
use super::cells::{MarkEvidence, Marks, decimal_mark};
use super::columns::{ColumnMap, map_columns};
use super::layout::{Layout, find_layout, find_sheet_layout};
use super::quantity::{Quantity, Role};
use super::readings::Readings;
use super::sheet::{Sheet, read_sheet};
use super::source::{Container, Source, unreadable};
use super::table::{Row, Rows, SheetRows, TextRows};
use super::text::TextEncoding;
use super::times::rules::TimeRules;
use super::times::survey::TimeSurvey;
use super::walk::{Reading, WalkFault, walk};
use crate::campaign::model::{Calibration, LogRules, Plane, Sensitivity};
use crate::campaign::moment::Moment;
use crate::error::{Error, Problem, Result};
use crate::language::{Message, Phrase};
use crate::message;
use crate::notice::Notice;

/// Rows after which whole numbers are taken to stay whole.
const MARK_ROWS: usize = 100_000;

/// How a log is to be read.
#[derive(Debug, Clone)]
pub struct Request<'c> {
    pub role: Role,
    pub rules: &'c LogRules,
    /// The site's zone.
    pub zone: &'c TimeZone,
    /// Of the run, for times without a date and dates with two readings.
    pub date: Option<Date>,
    /// Of the run, from which elapsed time counts.
    pub start: Option<Moment>,
    /// Added to all times, µs.
    pub clock_offset_us: i64,
    pub calibrations: &'c [Calibration],
    pub sensitivity: Sensitivity,
    /// Of the irradiance sensor; `None` where it is not stated.
    pub plane: Option<Plane>,
    /// Water in each vessel, kg; empty where the vessels count alike.
    pub vessel_water_kg: &'c [f64],
}

impl<'c> Request<'c> {
    /// A run's only log, with nothing said about it but the rules.
    pub fn new(rules: &'c LogRules, zone: &'c TimeZone) -> Self {
        Request {
            role: Role::Whole,
            rules,
            zone,
            date: None,
            start: None,
            clock_offset_us: 0,
            calibrations: &[],
            sensitivity: Sensitivity::default(),
            plane: None,
            vessel_water_kg: &[],
        }
    }
}

/// One log as read.
#[derive(Debug, Clone)]
pub struct FileLog {
    /// SHA-256 of the file, lower-case hex.
    pub sha256: String,
    pub readings: Readings,
    pub account: Account,
    pub notices: Vec<Notice>,
    /// Quantities that it has a column of.
    pub quantities: Vec<Quantity>,
    /// Keys and headers of `[columns]` that it does not have.
    pub absent: Vec<(&'static str, String)>,
    /// Headers of sensors that are calibrated.
    pub calibrated: Vec<String>,
}

/// Reads a log file; `name` is what notices call it.
///
/// # Errors
/// [`Error::Input`] with line and column of everything that cannot be read.
pub fn read_file(path: &Path, name: &str, request: &Request<'_>) -> Result<FileLog> {
    if !path.is_file() {
        let problem = Problem::at(path, "is no file (a folder or a device), expected a log");
        return Err(input(
            problem.hint("correct the log's name in campaign.toml"),
        ));
    }
    read_source(path, name, Source::File(path), request)
}

/// Reads a log from its bytes.
///
/// # Errors
/// As [`read_file`].
pub fn read_bytes(path: &Path, name: &str, bytes: &[u8], request: &Request<'_>) -> Result<FileLog> {
    read_source(path, name, Source::Bytes(bytes), request)
}

fn read_source(
    path: &Path,
    name: &str,
    source: Source<'_>,
    request: &Request<'_>,
) -> Result<FileLog> {
    thread::scope(|scope| {
        // Hashing a large log takes as long as reading it.
        let hash = scope.spawn(move || source.sha256());
        let read = read_readings(path, name, source, request);
        let hash = hash
            .join()
            .map_err(|_| Error::Internal("hashing failed".to_owned()))?;
        let mut log = read?;
        log.sha256 = hash.map_err(|error| input(unreadable(path, &error)))?;
        Ok(log)
    })
}

/// The rows of a log, as often as they are needed.
enum Opened<'s> {
    Text(Source<'s>, TextEncoding),
    Sheet(Sheet),
}

fn read_readings(
    path: &Path,
    name: &str,
    source: Source<'_>,
    request: &Request<'_>,
) -> Result<FileLog> {
    let container = source
        .container()
        .map_err(|error| input(unreadable(path, &error)))?;
    let sheet = request.rules.format.sheet.as_deref();
    match container {
        Container::OldSpreadsheet => Err(input(
            Problem::at(path, "is a spreadsheet of the old .xls kind")
                .hint("save it as .xlsx, .ods or CSV"),
        )),
        Container::Spreadsheet => {
            let sheet = read_sheet(path, source, sheet).map_err(input)?;
            read_opened(path, name, container, &Opened::Sheet(sheet), request).map_err(Fault::error)
        }
        Container::Plain | Container::Gzip => {
            let declared = request.rules.format.encoding.as_deref();
            let encoding = TextEncoding::detect(path, source, declared).map_err(input)?;
            let read = |encoding| {
                let opened = Opened::Text(source, encoding);
                read_opened(path, name, container, &opened, request)
            };
            match (read(encoding), encoding.instead()) {
                (Err(Fault::NotText(_)), Some(other)) => read(other).map_err(Fault::error),
                (read, _) => read.map_err(Fault::error),
            }
        }
    }
}

/// Why a log was not read.
enum Fault {
    /// It is not text in the encoding that was tried.
    NotText(Problem),
    Other(Error),
}

impl Fault {
    fn error(self) -> Error {
        match self {
            Fault::NotText(problem) => input(problem),
            Fault::Other(error) => error,
        }
    }
}

impl From<Problem> for Fault {
    fn from(problem: Problem) -> Self {
        Fault::Other(input(problem))
    }
}

fn read_opened(
    path: &Path,
    name: &str,
    container: Container,
    opened: &Opened<'_>,
    request: &Request<'_>,
) -> std::result::Result<FileLog, Fault> {
    let layout = match opened {
        Opened::Text(source, encoding) => find_layout(path, *source, *encoding, request.rules)?,
        Opened::Sheet(sheet) => find_sheet_layout(path, &mut sheet.rows(), request.rules)?,
    };
    let map = map_columns(path, &layout, request).map_err(|p| Fault::Other(Error::Input(p)))?;
    let open = || opened.rows(path, &layout);
    let (marks, times) = survey(path, open()?, &layout, &map, request)?;
    let reading = Reading {
        path,
        layout: &layout,
        map: &map,
        marks,
        times: &times,
    };
    let walked = walk(&mut open()?, reading).map_err(|fault| match (fault, opened) {
        (WalkFault::Row(fault, problems), Opened::Text(_, encoding)) => {
            let problem = fault.problem(path, Some(*encoding));
            if problems.is_empty() && fault.is_not_text() {
                return Fault::NotText(problem);
            }
            let mut problems = problems;
            problems.push(problem);
            Fault::Other(Error::Input(problems))
        }
        (WalkFault::Row(_, problems) | WalkFault::Rows(problems), _) => {
            Fault::Other(Error::Input(problems))
        }
    })?;
    let mut log = finish(path, name, &map, walked, request).map_err(Fault::Other)?;
    log.account.written_in = opened.describe(container, &layout);
    let decimal = match marks.decimal {
        ',' => message!("mark-comma"),
        _ => message!("mark-point"),
    };
    log.account.decimal_mark = match marks.thousands {
        Some(mark) => message!("mark-thousands", decimal = decimal, mark = mark.to_string()),
        None => decimal,
    };
    log.account.header_line = layout.header_line;
    log.account.time_format = times.describe();
    log.account.time_example = times.example.clone();
    log.account.time_zone = times.describe_zone();
    log.account.is_elapsed = times.counts_from_start();
    Ok(log)
}

impl Opened<'_> {
    fn rows(&self, path: &Path, layout: &Layout) -> std::result::Result<Rows<'_>, Problem> {
        match (self, layout.delimiter) {
            (Opened::Text(source, encoding), Some(delimiter)) => {
                let rows = TextRows::open(path, *source, *encoding, delimiter)?;
                Ok(Rows::Text(Box::new(rows)))
            }
            (Opened::Sheet(sheet), _) => Ok(sheet.rows()),
            (Opened::Text(..), None) => Err(Problem::at(path, "has no delimiter")),
        }
    }

    fn describe(&self, container: Container, layout: &Layout) -> Message {
        match self {
            Opened::Sheet(sheet) => message!("written-sheet", sheet = &sheet.name),
            Opened::Text(_, encoding) => {
                let delimiter = layout
                    .delimiter
                    .map_or_else(|| "".into(), |delimiter| Phrase::from(delimiter.describe()));
                let written = match container {
                    Container::Gzip => message!("written-gzip"),
                    _ => message!("written-text"),
                };
                written
                    .with("encoding", encoding.describe())
                    .with("delimiter", delimiter)
            }
        }
    }
}

impl Sheet {
    fn rows(&self) -> Rows<'_> {
        Rows::Sheet(SheetRows::new(&self.rows))
    }
}

/// Settles how numbers and times are written, from as many rows as that takes.
fn survey(
    path: &Path,
    mut rows: Rows<'_>,
    layout: &Layout,
    map: &ColumnMap,
    request: &Request<'_>,
) -> std::result::Result<(Marks, TimeRules), Problem> {
    let format = &request.rules.format;
    let mut times = TimeSurvey::new(&map.time);
    let mut marks = vec![MarkEvidence::default(); map.sensors.len()];
    let (mut row, mut seen) = (Row::default(), 0);
    // A row that cannot be had is met again when the readings are read.
    while let Ok(true) = rows.next(&mut row) {
        if row.line <= layout.header_line {
            continue;
        }
        layout.fit(&mut row, map);
        if !layout.fits(&row, map) {
            continue;
        }
        seen += 1;
        times.see(&row, request.date);
        for (sensor, marks) in map.sensors.iter().zip(&mut marks) {
            marks.see(row.line, row.cell(sensor.column));
        }
        let marks_are_settled = marks.iter().any(MarkEvidence::is_enough)
            || seen >= MARK_ROWS
            || format.decimal_mark.is_some();
        if marks_are_settled && times.is_settled() {
            break;
        }
    }
    let decimal = match (format.decimal_mark, format.thousands_mark) {
        (Some(mark), _) => mark,
        // The other one of the two.
        (None, Some('.')) => ',',
        (None, Some(',')) => '.',
        (None, _) => decimal_mark(&marks).map_err(|open| {
            let [decimal, thousands] = &open.readings;
            let what = format!("found \"{}\", which is {decimal} or {thousands}", open.found);
            Problem::at(path, what).line(open.line).hint(
                "write decimal_mark, or thousands_mark if it stands between thousands, under [format] in campaign.toml",
            )
        })?,
    };
    let times = times.finish(request).map_err(|fault| {
        Problem::at(path, fault.what)
            .line(fault.line)
            .item(format!("column \"{}\"", map.time.header))
            .hint(fault.hint)
    })?;
    let thousands = format.thousands_mark;
    Ok((Marks { decimal, thousands }, times))
}

fn input(problem: Problem) -> Error {
    Error::Input(problem.into())
}
