//! One log, from its bytes to readings.

use std::path::Path;
use std::thread;

use jiff::civil::Date;
use jiff::tz::TimeZone;

use super::account::{Account, ColumnAccount, Skip};
use super::cells::{MarkEvidence, Marks};
use super::columns::{ColumnMap, Quantity, Role, Sensor, UnitFrom, map_columns};
use super::frame::Frame;
use super::layout::{Layout, find_layout, find_sheet_layout};
use super::readings::{Merged, Readings, Series, Vessels, merge};
use super::sheet::{Sheet, read_sheet};
use super::smell::take_out_faults;
use super::source::{Container, Source, unreadable};
use super::table::{Row, Rows, SheetRows, TextRows};
use super::text::TextEncoding;
use super::times::{TimeRules, TimeSurvey};
use super::walk::{Reading, WalkFault, Walked, walk};
use crate::campaign::model::{Calibration, LogRules, Sensitivity};
use crate::campaign::moment::Moment;
use crate::error::{Error, Problem, Problems, Result};
use crate::notice::Notice;
use crate::units::{MICROSECONDS_PER_SECOND, seconds_between};

/// Rows after which whole numbers are taken to stay whole.
const MARK_ROWS: usize = 100_000;

/// Sensors of one load further apart than this are worth a look. Only the water can
/// have several.
/// Common practice, no published source.
const SENSORS_APART_K: f64 = 15.0;
/// Share of the readings from which on it is said.
const SHARE_APART: f64 = 0.05;

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
    log.account.decimal_mark = match marks.decimal {
        ',' => "comma".to_owned(),
        _ => "point".to_owned(),
    };
    if let Some(mark) = marks.thousands {
        log.account.decimal_mark += &format!(", thousands \"{mark}\" (campaign file)");
    }
    log.account.header_line = layout.header_line;
    log.account.time_format = times.describe();
    log.account.time_example = times.example().to_owned();
    log.account.time_zone = times.describe_zone();
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

    fn describe(&self, container: Container, layout: &Layout) -> String {
        match self {
            Opened::Sheet(sheet) => format!("spreadsheet, sheet \"{}\"", sheet.name),
            Opened::Text(_, encoding) => {
                let packed = if container == Container::Gzip {
                    "gzip, "
                } else {
                    ""
                };
                let delimiter = layout
                    .delimiter
                    .map_or("", |delimiter| delimiter.describe());
                format!(
                    "{packed}{}, cells separated by {delimiter}",
                    encoding.describe()
                )
            }
        }
    }
}

impl Sheet {
    fn rows(&self) -> Rows<'static> {
        Rows::Sheet(SheetRows::new(self.rows.clone()))
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
    let mut marks = MarkEvidence::default();
    let (mut row, mut seen) = (Row::default(), 0);
    // A row that cannot be had is met again when the readings are read.
    while let Ok(true) = rows.next(&mut row) {
        if row.line <= layout.header_line {
            continue;
        }
        layout.fit(&mut row, map);
        if !layout.fits(&row) {
            continue;
        }
        seen += 1;
        times.see(&row, request.date);
        for sensor in &map.sensors {
            marks.see(row.line, row.cell(sensor.column));
        }
        let marks_are_settled =
            marks.is_enough() || seen >= MARK_ROWS || format.decimal_mark.is_some();
        if marks_are_settled && times.is_settled() {
            break;
        }
    }
    let decimal = match (format.decimal_mark, format.thousands_mark) {
        (Some(mark), _) => mark,
        // The other one of the two.
        (None, Some('.')) => ',',
        (None, Some(',')) => '.',
        (None, _) => marks.decimal_mark().map_err(|open| {
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

/// From rows to readings by quantity, with what a reader should know.
fn finish(
    path: &Path,
    name: &str,
    map: &ColumnMap,
    walked: Walked,
    request: &Request<'_>,
) -> Result<FileLog> {
    let mut notices = row_notices(name, map, &walked);
    let mut frame = walked.frame.finish(request.clock_offset_us)?;
    let log = || name.to_owned();
    if frame.was_unsorted {
        notices.push(Notice::RowsSorted { log: log() });
    }
    if frame.repeated > 0 {
        notices.push(Notice::RepeatedTimes {
            log: log(),
            rows: frame.repeated,
        });
    }
    let readings = assemble(path, name, &mut frame, map, request, &mut notices)?;
    let times = &readings.time_us;
    let account = Account {
        log: log(),
        written_in: String::new(),
        decimal_mark: String::new(),
        header_line: 0,
        time_header: map.time.header.clone(),
        time_format: String::new(),
        time_example: String::new(),
        time_zone: String::new(),
        clock_offset_s: request.clock_offset_us as f64 / MICROSECONDS_PER_SECOND,
        columns: map.sensors.iter().map(ColumnAccount::new).collect(),
        not_read: map.ignored.clone(),
        readings: times.len(),
        first_us: times.first().copied().unwrap_or_default(),
        last_us: times.last().copied().unwrap_or_default(),
        step_s: median_step_s(times),
        skipped: walked.skipped,
    };
    let mut quantities: Vec<Quantity> = map.sensors.iter().map(|sensor| sensor.quantity).collect();
    quantities.dedup();
    let calibrated = map
        .sensors
        .iter()
        .filter(|sensor| sensor.calibration.is_some());
    Ok(FileLog {
        sha256: String::new(),
        readings,
        account,
        notices,
        quantities,
        absent: map.absent.clone(),
        calibrated: calibrated.map(|sensor| sensor.header.clone()).collect(),
    })
}

fn median_step_s(time_us: &[i64]) -> Option<f64> {
    let mut steps: Vec<i64> = time_us.windows(2).map(|pair| pair[1] - pair[0]).collect();
    let middle = steps.len() / 2;
    if steps.is_empty() {
        return None;
    }
    let (_, median, _) = steps.select_nth_unstable(middle);
    Some(seconds_between(0, *median))
}

fn row_notices(name: &str, map: &ColumnMap, walked: &Walked) -> Vec<Notice> {
    let mut notices = Vec::new();
    for reason in [Skip::Footer, Skip::CutOff] {
        let rows = walked.skipped.count(reason);
        if rows > 0 {
            notices.push(Notice::RowsLeftOut {
                log: name.to_owned(),
                rows,
                lines: walked.skipped.lines(reason),
                reason: reason.describe(),
            });
        }
    }
    for (sensor, &cells) in map.sensors.iter().zip(&walked.faults) {
        if cells > 0 {
            notices.push(Notice::FaultValues {
                log: name.to_owned(),
                column: sensor.header.clone(),
                cells,
            });
        }
        if sensor.unit_from == UnitFrom::Assumed {
            notices.push(Notice::UnitAssumed {
                log: name.to_owned(),
                column: sensor.header.clone(),
                unit: sensor.unit.symbol(),
                key: sensor.quantity.key(),
            });
        }
    }
    notices
}

/// Readings by quantity: each sensor's faults taken out, then the mean of the sensors.
fn assemble(
    path: &Path,
    name: &str,
    frame: &mut Frame,
    map: &ColumnMap,
    request: &Request<'_>,
    notices: &mut Vec<Notice>,
) -> Result<Readings> {
    let mut problems = Problems::default();
    let mut of_quantity = |quantity: Quantity| -> Result<Series> {
        let mut valid = Vec::new();
        let mut vessels = Vec::new();
        for (index, sensor) in map.sensors.iter().enumerate() {
            if sensor.quantity != quantity {
                continue;
            }
            let mut series = frame.take_sensor(index)?;
            match take_out_faults(path, sensor, &mut series) {
                Ok(taken_out) => {
                    notices.extend(taken_out.map(|taken_out| taken_out.notice(name, sensor)))
                }
                Err(problem) => problems.push(problem),
            }
            notices.extend(beyond_points(name, sensor, &series));
            valid.push(series);
            vessels.push(sensor.vessel);
        }
        let loads = match quantity {
            Quantity::Water => request.vessel_water_kg,
            _ => &[],
        };
        let merged = merge(
            valid,
            &Vessels {
                of_sensor: &vessels,
                water_kg: loads,
            },
            SENSORS_APART_K,
        );
        notices.extend(merge_notices(name, quantity, &merged));
        let is_sought = request.role.sought().contains(&quantity)
            && map.sensors.iter().any(|s| s.quantity == quantity);
        if quantity.is_needed() && is_sought && merged.mean.value.is_empty() && problems.is_empty()
        {
            let what = format!("has no valid {}", quantity.name());
            let hint = "check the sensor and the column; a run cannot be rated without it";
            problems.push(Problem::at(path, what).hint(hint));
        }
        Ok(merged.mean)
    };
    let measured = |series: Series| (!series.value.is_empty()).then_some(series);
    let readings = Readings {
        water_c: of_quantity(Quantity::Water)?,
        ambient_c: measured(of_quantity(Quantity::Ambient)?),
        irradiance_w_m2: measured(of_quantity(Quantity::Irradiance)?),
        wind_m_s: measured(of_quantity(Quantity::Wind)?),
        time_us: frame.time_us(),
    };
    if problems.is_empty() {
        Ok(readings)
    } else {
        Err(Error::Input(problems))
    }
}

/// Readings beyond the ends of a table of calibration points.
fn beyond_points(name: &str, sensor: &Sensor, series: &Series) -> Option<Notice> {
    let Some(crate::campaign::model::Curve::Points(points)) = &sensor.calibration else {
        return None;
    };
    let (first, last) = (points.first()?[1], points.last()?[1]);
    let readings = series
        .value
        .iter()
        .filter(|value| !(first..=last).contains(*value))
        .count();
    (readings > 0).then(|| Notice::BeyondCalibration {
        log: name.to_owned(),
        column: sensor.header.clone(),
        readings,
    })
}

fn merge_notices(name: &str, quantity: Quantity, merged: &Merged) -> Vec<Notice> {
    let mut notices = Vec::new();
    if merged.apart as f64 > SHARE_APART * merged.mean.value.len() as f64 {
        notices.push(Notice::SensorsApart {
            log: name.to_owned(),
            quantity: quantity.name(),
            readings: merged.apart,
            apart_k: SENSORS_APART_K,
        });
    }
    if merged.incomplete > 0 {
        notices.push(Notice::SensorsIncomplete {
            log: name.to_owned(),
            quantity: quantity.name(),
            readings: merged.incomplete,
        });
    }
    notices
}

fn input(problem: Problem) -> Error {
    Error::Input(problem.into())
}
