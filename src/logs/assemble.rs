//! The rows of a log to readings by quantity, with an account of them.

use std::path::Path;

use super::account::{Account, ColumnAccount, Skip};
use super::columns::ColumnMap;
use super::frame::Frame;
use super::quantity::Quantity;
use super::read::{FileLog, Request};
use super::readings::{Merged, Readings, Series, Vessels, merge};
use super::sensor::{Sensor, UnitFrom};
use super::smell::take_out_faults;
use super::walk::Walked;
use crate::campaign::model::Curve;
use crate::error::{Error, Problem, Problems, Result};
use crate::language::Message;
use crate::notice::Notice;
use crate::units::{MICROSECONDS_PER_SECOND, seconds_between};

/// Sensors of one load further apart than this are worth a look. Only the water can
/// have several.
/// Common practice, no published source.
const SENSORS_APART_K: f64 = 15.0;
/// Share of the readings from which on it is said.
const SHARE_APART: f64 = 0.05;

/// From rows to readings by quantity, with what a reader should know.
///
/// # Errors
/// [`Error::Input`] for a quantity whose values cannot be what its column says, or that
/// has no valid reading.
pub fn finish(
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
        written_in: unread(),
        decimal_mark: unread(),
        header_line: 0,
        time_header: map.time.header.clone(),
        time_format: unread(),
        time_example: String::new(),
        time_zone: unread(),
        is_elapsed: false,
        clock_offset_s: request.clock_offset_us as f64 / MICROSECONDS_PER_SECOND,
        columns: map
            .sensors
            .iter()
            .map(|sensor| ColumnAccount::new(sensor, request.vessel_water_kg))
            .collect(),
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

/// Before a log has been read whole.
fn unread() -> Message {
    Message::new("log-not-read")
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
                reason,
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
    }
    let assumed = map
        .sensors
        .iter()
        .filter(|sensor| sensor.unit_from == UnitFrom::Assumed);
    let columns: Vec<_> = assumed
        .map(|sensor| (sensor.header.clone(), sensor.unit.symbol()))
        .collect();
    if !columns.is_empty() {
        notices.push(Notice::UnitsAssumed { columns });
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
    let Some(Curve::Points(points)) = &sensor.calibration else {
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
            quantity,
            readings: merged.apart,
            apart_k: SENSORS_APART_K,
        });
    }
    if merged.incomplete > 0 {
        notices.push(Notice::SensorsIncomplete {
            log: name.to_owned(),
            quantity,
            readings: merged.incomplete,
        });
    }
    notices
}
