//! One log, from its file to readings.

use std::fs;
use std::path::Path;

use csv::StringRecord;
use jiff::tz::TimeZone;

use super::cells::{Cell, read_cell};
use super::clock::{Clock, ClockFault};
use super::columns::{ColumnMap, Quantity, Sensor, map_columns};
use super::frame::FrameBuilder;
use super::readings::Readings;
use super::smell::take_out_faults;
use super::table::{Table, Walked};
use super::text::decode;
use crate::campaign::model::{Columns, RunPlan};
use crate::error::{Error, Problem, Problems, Result};
use crate::hash::sha256_hex;
use crate::notice::Notice;

/// A log as read.
#[derive(Debug, Clone)]
pub struct Log {
    /// SHA-256 of the file, lower-case hex.
    pub sha256: String,
    /// Valid readings in order of time.
    pub readings: Readings,
    /// Columns that were read.
    pub sensors: Vec<Sensor>,
    /// Headers of columns that were not.
    pub ignored_columns: Vec<String>,
    /// What a reader should know.
    pub notices: Vec<Notice>,
}

/// Reads the log of a run.
///
/// # Errors
/// [`Error::Input`] with line and column of everything that cannot be read.
pub fn read_log(run: &RunPlan, columns: &Columns, zone: &TimeZone) -> Result<Log> {
    let bytes = fs::read(&run.path).map_err(|error| {
        let problem = Problem::at(&run.path, format!("cannot be read ({error})"))
            .hint("check that it is a file and that you may read it");
        Error::Input(problem.into())
    })?;
    read_bytes(&run.path, &run.log, &bytes, columns, zone)
}

/// Reads a log from its bytes; `name` is what the notices call it.
///
/// # Errors
/// As [`read_log`].
pub fn read_bytes(
    path: &Path,
    name: &str,
    bytes: &[u8],
    columns: &Columns,
    zone: &TimeZone,
) -> Result<Log> {
    let text = decode(path, bytes).map_err(input)?;
    let table = Table::open(path, &text).map_err(input)?;
    let map = map_columns(path, &table.header, columns).map_err(Error::Input)?;
    let mut rows = RowReader::new(path, &map, zone);
    let mut problems = Problems::default();
    let walked = table.walk(&mut problems, |line, row, problems| {
        rows.read(line, row, problems);
    });
    if walked.rows == 0 && problems.is_empty() {
        problems
            .push(Problem::at(path, "has a header and no readings").hint(
                "write the readings below the header, or copy the log from the logger again",
            ));
    }
    if !problems.is_empty() {
        return Err(Error::Input(problems));
    }
    let faults = rows.faults;
    let frame = rows.frame.finish()?;
    let mut readings = frame.readings(&map.sensors)?;
    let mut notices = row_notices(name, walked, &map, &faults);
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
    for (quantity, taken_out) in check_readings(path, &mut readings)? {
        notices.push(Notice::UnbelievableReadings {
            log: log(),
            quantity: quantity.name(),
            readings: taken_out,
        });
    }
    Ok(Log {
        sha256: sha256_hex(bytes),
        readings,
        sensors: map.sensors,
        ignored_columns: map.ignored,
        notices,
    })
}

/// Reads cells into the frame and remembers faults by sensor.
struct RowReader<'m> {
    path: &'m Path,
    map: &'m ColumnMap,
    clock: Clock<'m>,
    frame: FrameBuilder,
    faults: Vec<usize>,
    values: Vec<Option<f64>>,
}

impl<'m> RowReader<'m> {
    fn new(path: &'m Path, map: &'m ColumnMap, zone: &'m TimeZone) -> Self {
        RowReader {
            path,
            map,
            clock: Clock::new(zone),
            frame: FrameBuilder::new(map.sensors.len()),
            faults: vec![0; map.sensors.len()],
            values: vec![None; map.sensors.len()],
        }
    }

    fn read(&mut self, line: u64, row: &StringRecord, problems: &mut Problems) {
        for (index, sensor) in self.map.sensors.iter().enumerate() {
            let text = row.get(sensor.column).unwrap_or_default();
            self.values[index] = match read_cell(text) {
                Cell::Number(value) => Some(value),
                Cell::Missing => None,
                Cell::Fault => {
                    self.faults[index] += 1;
                    None
                }
                Cell::Unreadable => {
                    let unit = sensor.quantity.unit();
                    let what =
                        format!("found \"{}\", expected a number in {unit}", shortened(text));
                    problems.push(
                        Problem::at(self.path, what)
                            .line(line)
                            .item(format!("column \"{}\"", sensor.header))
                            .hint(
                                "correct the number, with a decimal point, or leave the cell blank",
                            ),
                    );
                    None
                }
            };
        }
        let text = row.get(self.map.time).unwrap_or_default();
        match self.clock.read_us(text) {
            Ok(time_us) => self.frame.push(time_us, self.values.iter().copied()),
            Err(fault) => {
                let problem = time_problem(self.path, text, fault);
                problems.push(
                    problem
                        .line(line)
                        .item(format!("column \"{}\"", self.map.time_header)),
                );
            }
        }
    }
}

fn time_problem(path: &Path, text: &str, fault: ClockFault) -> Problem {
    let problem = |what: String| Problem::at(path, what);
    let found = shortened(text);
    match fault {
        ClockFault::Blank => problem("the time is missing".to_owned())
            .hint("write the time as 2026-03-14 10:20:00, or delete the row"),
        ClockFault::Unreadable => {
            problem(format!("found \"{found}\", expected a date and time"))
                .hint("write the time as 2026-03-14 10:20:00, with an offset if you like")
        }
        ClockFault::Skipped => {
            problem(format!("found \"{found}\", which the clocks of the site's zone skipped"))
                .hint("check site.time_zone; a logger kept on one offset all year wants that offset, such as \"-05:00\"")
        }
    }
}

fn row_notices(name: &str, walked: Walked, map: &ColumnMap, faults: &[usize]) -> Vec<Notice> {
    let mut notices = Vec::new();
    if walked.blank_rows > 0 {
        notices.push(Notice::BlankRows {
            log: name.to_owned(),
            rows: walked.blank_rows,
        });
    }
    for (sensor, &cells) in map.sensors.iter().zip(faults) {
        if cells > 0 {
            notices.push(Notice::FaultValues {
                log: name.to_owned(),
                column: sensor.header.clone(),
                cells,
            });
        }
    }
    for quantity in Quantity::ALL {
        let found = map.sensors.iter().any(|sensor| sensor.quantity == quantity);
        if !found && !map.ignored.is_empty() {
            notices.push(Notice::ColumnNotFound {
                log: name.to_owned(),
                quantity: quantity.name(),
                header: quantity.header(),
                ignored: map.ignored.clone(),
            });
        }
    }
    notices
}

/// Takes faults out of every series; says of which quantity how many.
fn check_readings(path: &Path, readings: &mut Readings) -> Result<Vec<(Quantity, usize)>> {
    let mut taken_out = Vec::new();
    let mut problems = Problems::default();
    let series = [
        (Quantity::Water, Some(&mut readings.water_c)),
        (Quantity::Ambient, readings.ambient_c.as_mut()),
        (Quantity::Irradiance, readings.irradiance_w_m2.as_mut()),
        (Quantity::Wind, readings.wind_m_s.as_mut()),
    ];
    for (quantity, series) in series {
        let Some(series) = series else { continue };
        match take_out_faults(path, quantity, series) {
            Ok(0) => {}
            Ok(faults) => taken_out.push((quantity, faults)),
            Err(problem) => problems.push(problem),
        }
    }
    for quantity in Quantity::ALL {
        if quantity.is_needed() && !readings.measures(quantity) {
            problems.push(
                Problem::at(path, format!("has no valid {}", quantity.name()))
                    .hint("check the sensor and the column; a run cannot be rated without it"),
            );
        }
    }
    if problems.is_empty() {
        Ok(taken_out)
    } else {
        Err(Error::Input(problems))
    }
}

fn shortened(text: &str) -> String {
    const LONGEST: usize = 40;
    match text.char_indices().nth(LONGEST) {
        Some((end, _)) => format!("{}…", &text[..end]),
        None => text.to_owned(),
    }
}

fn input(problem: Problem) -> Error {
    Error::Input(problem.into())
}
