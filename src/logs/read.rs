//! One log, from its file to readings.

use std::fs;
use std::path::Path;

use csv::StringRecord;
use jiff::tz::TimeZone;

use super::cells::{Cell, read_cell};
use super::clock::{Clock, ClockFault};
use super::columns::{ColumnMap, Quantity, Sensor, map_columns};
use super::frame::{Frame, FrameBuilder};
use super::readings::{Merged, Readings, Series, merge};
use super::smell::take_out_faults;
use super::table::{Table, Walked};
use super::text::decode;
use crate::campaign::model::{Columns, RunPlan};
use crate::error::{Error, Problem, Problems, Result};
use crate::hash::sha256_hex;
use crate::notice::Notice;

/// Sensors of one load further apart than this are worth a look. Only the water can
/// have several.
/// Common practice, no published source.
const SENSORS_APART_K: f64 = 15.0;
/// Share of the readings from which on it is said.
const SHARE_APART: f64 = 0.05;

/// A log as read.
#[derive(Debug, Clone)]
pub struct Log {
    /// SHA-256 of the file, lower-case hex.
    pub sha256: String,
    /// Valid readings in order of time.
    pub readings: Readings,
    /// What a reader should know.
    pub notices: Vec<Notice>,
}

/// Reads the log of a run.
///
/// # Errors
/// [`Error::Input`] with line and column of everything that cannot be read.
pub fn read_log(run: &RunPlan, columns: &Columns, zone: &TimeZone) -> Result<Log> {
    if !run.path.is_file() {
        let problem = Problem::at(
            &run.path,
            "is no file (a folder or a device), expected a log",
        );
        return Err(input(
            problem.hint("correct the log's name in campaign.toml"),
        ));
    }
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
    let readings = assemble(path, name, &frame, &map.sensors, &mut notices)?;
    Ok(Log {
        sha256: sha256_hex(bytes),
        readings,
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
                .hint("write the time as 2026-03-14 10:20:00; in a spreadsheet, format the column as yyyy-mm-dd hh:mm:ss")
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

/// Readings by quantity: each sensor's faults taken out, then the mean of the sensors.
fn assemble(
    path: &Path,
    name: &str,
    frame: &Frame,
    sensors: &[Sensor],
    notices: &mut Vec<Notice>,
) -> Result<Readings> {
    let time_us = frame.time_us()?;
    let mut problems = Problems::default();
    let mut of_quantity = |quantity: Quantity| -> Result<Series> {
        let mut valid = Vec::new();
        for (index, sensor) in sensors.iter().enumerate() {
            if sensor.quantity != quantity {
                continue;
            }
            let mut series = frame.sensor(index, &time_us)?;
            match take_out_faults(path, sensor, &mut series) {
                Ok(taken_out) => {
                    notices.extend(taken_out.map(|taken_out| Notice::UnbelievableReadings {
                        log: name.to_owned(),
                        column: sensor.header.clone(),
                        readings: taken_out.readings,
                        lowest: taken_out.lowest,
                        highest: taken_out.highest,
                        unit: quantity.unit(),
                    }))
                }
                Err(problem) => problems.push(problem),
            }
            valid.push(series);
        }
        let merged = merge(valid, SENSORS_APART_K);
        notices.extend(merge_notices(name, quantity, &merged));
        if quantity.is_needed() && merged.mean.value.is_empty() && problems.is_empty() {
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
        time_us,
    };
    if problems.is_empty() {
        Ok(readings)
    } else {
        Err(Error::Input(problems))
    }
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

fn shortened(text: &str) -> String {
    const LONGEST: usize = 40;
    match text.char_indices().nth(LONGEST) {
        Some((end, _)) => format!("{}…", text[..end].escape_debug()),
        None => text.escape_debug().to_string(),
    }
}

fn input(problem: Problem) -> Error {
    Error::Input(problem.into())
}
