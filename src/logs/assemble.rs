//! The rows of a log to readings by quantity.

use std::path::Path;

use super::account::{Skip, Skipped};
use super::columns::ColumnMap;
use super::frame::Frame;
use super::notice::LogNotice;
use super::quantity::Quantity;
use super::readings::{Merged, Readings, Series, Vessels, merge};
use super::request::Request;
use super::sensor::{Sensor, UnitFrom};
use super::smell::take_out_faults;
use super::walk::Walked;
use crate::campaign::model::Curve;
use crate::error::{Error, Problem, Problems, Result};

/// Sensors of one load further apart than this are worth a look. Only the water can
/// have several.
/// Common practice, no published source.
const SENSORS_APART_K: f64 = 15.0;
/// Share of the readings from which on it is said.
const SHARE_APART: f64 = 0.05;

/// The rows of a log as readings by quantity.
pub struct Gathered {
    pub readings: Readings,
    /// What a reader should know.
    pub notices: Vec<LogNotice>,
    /// Rows that are no readings.
    pub skipped: Skipped,
}

/// From rows to readings by quantity, with what a reader should know.
///
/// # Errors
/// [`Error::Input`] for a quantity whose values cannot be what its column says, or that
/// has no valid reading.
pub fn gather(
    path: &Path,
    name: &str,
    map: &ColumnMap,
    walked: Walked,
    request: &Request<'_>,
) -> Result<Gathered> {
    let mut notices = row_notices(name, map, &walked);
    let mut aimed_us = walked.aimed_us;
    aimed_us
        .iter_mut()
        .for_each(|time_us| *time_us += request.clock_offset_us);
    aimed_us.sort_unstable();
    aimed_us.dedup();
    let mut frame = walked.frame.finish(request.clock_offset_us)?;
    let log = || name.to_owned();
    if frame.was_unsorted {
        notices.push(LogNotice::RowsSorted { log: log() });
    }
    if frame.repeated > 0 {
        notices.push(LogNotice::RepeatedTimes {
            log: log(),
            rows: frame.repeated,
        });
    }
    let readings = assemble(path, name, &mut frame, map, request, &mut notices)?;
    Ok(Gathered {
        readings: Readings {
            aimed_us,
            ..readings
        },
        notices,
        skipped: walked.skipped,
    })
}

fn row_notices(name: &str, map: &ColumnMap, walked: &Walked) -> Vec<LogNotice> {
    let mut notices = Vec::new();
    for reason in [Skip::Footer, Skip::CutOff] {
        let rows = walked.skipped.count(reason);
        if rows > 0 {
            notices.push(LogNotice::RowsLeftOut {
                log: name.to_owned(),
                rows,
                lines: walked.skipped.lines(reason),
                reason,
            });
        }
    }
    for (sensor, &cells) in map.sensors.iter().zip(&walked.faults) {
        if cells > 0 {
            notices.push(LogNotice::FaultValues {
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
        notices.push(LogNotice::UnitsAssumed { columns });
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
    notices: &mut Vec<LogNotice>,
) -> Result<Readings> {
    let mut problems = Problems::default();
    let mut of_quantity = |quantity: Quantity| -> Result<Series> {
        let mut valid = Vec::new();
        let mut vessels = Vec::new();
        for (index, sensor) in map.sensors.iter().enumerate() {
            if sensor.quantity != quantity {
                continue;
            }
            let mut series = frame.take_sensor(index);
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
        let is_sought = request.role.sought(request.kind).contains(&quantity)
            && map.sensors.iter().any(|s| s.quantity == quantity);
        if quantity.is_needed(request.kind)
            && is_sought
            && merged.mean.value.is_empty()
            && problems.is_empty()
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
        vessel_c: measured(of_quantity(Quantity::Vessel)?),
        ambient_c: measured(of_quantity(Quantity::Ambient)?),
        irradiance_w_m2: measured(of_quantity(Quantity::Irradiance)?),
        wind_m_s: measured(of_quantity(Quantity::Wind)?),
        time_us: frame.time_us(),
        aimed_us: Vec::new(),
    };
    if problems.is_empty() {
        Ok(readings)
    } else {
        Err(Error::Input(problems))
    }
}

/// Readings beyond the ends of a table of calibration points.
fn beyond_points(name: &str, sensor: &Sensor, series: &Series) -> Option<LogNotice> {
    let Some(Curve::Points(points)) = &sensor.calibration else {
        return None;
    };
    let (first, last) = (points.first()?[1], points.last()?[1]);
    let readings = series
        .value
        .iter()
        .filter(|value| !(first..=last).contains(*value))
        .count();
    (readings > 0).then(|| LogNotice::BeyondCalibration {
        log: name.to_owned(),
        column: sensor.header.clone(),
        readings,
    })
}

fn merge_notices(name: &str, quantity: Quantity, merged: &Merged) -> Vec<LogNotice> {
    let mut notices = Vec::new();
    if merged.apart as f64 > SHARE_APART * merged.mean.value.len() as f64 {
        notices.push(LogNotice::SensorsApart {
            log: name.to_owned(),
            quantity,
            readings: merged.apart,
            apart_k: SENSORS_APART_K,
        });
    }
    if merged.incomplete > 0 {
        notices.push(LogNotice::SensorsIncomplete {
            log: name.to_owned(),
            quantity,
            readings: merged.incomplete,
        });
    }
    notices
}
