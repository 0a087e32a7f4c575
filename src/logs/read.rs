//! One log, from its bytes to readings.

use std::path::Path;
use std::thread;

use super::account::{Account, ColumnAccount};
use super::assemble::{Gathered, gather};
use super::cells::{MarkEvidence, Marks, decimal_mark};
use super::columns::{ColumnMap, map_columns};
use super::layout::{Layout, find_layout, find_sheet_layout};
use super::notice::LogNotice;
use super::quantity::Quantity;
use super::readings::Readings;
use super::request::Request;
use super::sheet::{Sheet, read_sheet};
use super::source::{Container, Source, unreadable};
use super::table::{Row, Rows, SheetRows, TextRows};
use super::text::TextEncoding;
use super::times::rules::TimeRules;
use super::times::survey::TimeSurvey;
use super::walk::{Reading, WalkFault, walk};
use crate::error::{Error, Problem, Result};
use crate::hash::HashedFile;
use crate::language::{Message, Phrase};
use crate::message;
use crate::units::MICROSECONDS_PER_SECOND;

/// Rows after which whole numbers are taken to stay whole.
const MARK_ROWS: usize = 100_000;

/// One log as read.
#[derive(Debug, Clone)]
pub struct FileLog {
    /// The file, as it lies.
    pub file: HashedFile,
    pub readings: Readings,
    pub account: Account,
    pub notices: Vec<LogNotice>,
    /// Quantities that it has a column of.
    pub quantities: Vec<Quantity>,
    /// Keys and headers of `[columns]` that it does not have.
    pub absent: Vec<(&'static str, String)>,
    /// Headers of sensors that are calibrated.
    pub calibrated: Vec<String>,
}

impl FileLog {
    fn new(file: HashedFile, content: Content) -> Self {
        let Content {
            map,
            account,
            readings,
            notices,
        } = content;
        let mut quantities: Vec<Quantity> =
            map.sensors.iter().map(|sensor| sensor.quantity).collect();
        quantities.dedup();
        let calibrated = map
            .sensors
            .into_iter()
            .filter(|sensor| sensor.calibration.is_some());
        FileLog {
            file,
            readings,
            account,
            notices,
            quantities,
            absent: map.absent,
            calibrated: calibrated.map(|sensor| sensor.header).collect(),
        }
    }
}

/// What the rows of a log hold, whatever its bytes are.
struct Content {
    map: ColumnMap,
    account: Account,
    readings: Readings,
    notices: Vec<LogNotice>,
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
    let length = Source::File(path).size();
    let length = length.map_err(|error| input(unreadable(path, &error)))?;
    read_source(path, name, Source::Start(path, length), request)
}

/// Reads so many bytes of a log file from its start.
///
/// # Errors
/// As [`read_file`].
pub fn read_start(path: &Path, name: &str, length: u64, request: &Request<'_>) -> Result<FileLog> {
    read_source(path, name, Source::Start(path, length), request)
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
        let hash = scope.spawn(move || source.hashed(name));
        let read = read_content(path, name, source, request);
        let hash = hash
            .join()
            .map_err(|_| Error::Internal("hashing failed".to_owned()))?;
        let content = read?;
        let file = hash.map_err(|error| input(unreadable(path, &error)))?;
        Ok(FileLog::new(file, content))
    })
}

/// The rows of a log, as often as they are needed.
enum Opened<'s> {
    Text(Source<'s>, TextEncoding),
    Sheet(Sheet),
}

fn read_content(
    path: &Path,
    name: &str,
    source: Source<'_>,
    request: &Request<'_>,
) -> Result<Content> {
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
) -> std::result::Result<Content, Fault> {
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
    let walked = walk(&mut open()?, reading).map_err(|fault| opened.walk_fault(path, fault))?;
    let gathered = gather(path, name, &map, walked, request).map_err(Fault::Other)?;
    let written_in = opened.describe(container, &layout);
    Ok(Content {
        account: account_of(name, written_in, reading, request, &gathered),
        readings: gathered.readings,
        notices: gathered.notices,
        map,
    })
}

fn account_of(
    name: &str,
    written_in: Message,
    reading: Reading<'_>,
    request: &Request<'_>,
    gathered: &Gathered,
) -> Account {
    let (map, times) = (reading.map, reading.times);
    let time_us = &gathered.readings.time_us;
    let sensors = map.sensors.iter();
    Account {
        log: name.to_owned(),
        written_in,
        decimal_mark: reading.marks.describe(),
        header_line: reading.layout.header_line,
        time_header: map.time.header.clone(),
        time_format: times.describe(),
        time_example: times.example.clone(),
        time_zone: times.describe_zone(),
        is_elapsed: times.counts_from_start(),
        clock_offset_s: request.clock_offset_us as f64 / MICROSECONDS_PER_SECOND,
        columns: sensors
            .map(|sensor| ColumnAccount::new(sensor, request.vessel_water_kg))
            .collect(),
        notes: map
            .notes
            .map(|column| reading.layout.header[column].clone()),
        not_read: map.ignored.clone(),
        readings: time_us.len(),
        first_us: time_us.first().copied().unwrap_or_default(),
        last_us: time_us.last().copied().unwrap_or_default(),
        step_s: gathered.readings.median_step_s(),
        skipped: gathered.skipped.clone(),
    }
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

    fn walk_fault(&self, path: &Path, fault: WalkFault) -> Fault {
        match (fault, self) {
            (WalkFault::Row(fault, mut problems), Opened::Text(_, encoding)) => {
                let problem = fault.problem(path, Some(*encoding));
                if problems.is_empty() && fault.is_not_text() {
                    return Fault::NotText(problem);
                }
                problems.push(problem);
                Fault::Other(Error::Input(problems))
            }
            (WalkFault::Row(_, problems) | WalkFault::Rows(problems), _) => {
                Fault::Other(Error::Input(problems))
            }
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
