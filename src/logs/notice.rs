//! Every warning about a log, with its wording. It reaches the terminal and the report.

use std::fmt;

use super::account::Skip;
use super::quantity::Quantity;
use super::quote::quoted;
use crate::language::{Message, Phrase, joined, kelvins, range, short};
use crate::message;

/// Something a reader should know of a log that stops nothing.
#[derive(Debug, Clone, PartialEq)]
pub enum LogNotice {
    /// Rows were not in order of time.
    RowsSorted { log: String },
    /// Rows share their time with an earlier one.
    RepeatedTimes { log: String, rows: usize },
    /// Rows behind the readings that are none.
    RowsLeftOut {
        log: String,
        rows: usize,
        lines: Phrase,
        reason: Skip,
    },
    /// No unit is stated for some columns. Without the log, so that logs that are alike
    /// say it once.
    UnitsAssumed {
        /// Header, and the unit that is taken.
        columns: Vec<(String, &'static str)>,
    },
    /// Readings beyond the points of a calibration.
    BeyondCalibration {
        log: String,
        column: String,
        readings: usize,
    },
    /// Both logs of a run hold a quantity.
    QuantityInBoth {
        log: String,
        weather: String,
        quantity: Quantity,
    },
    /// The weather log covers a part of the run.
    WeatherInPart { log: String, weather: String },
    /// A logger's fault values, taken as missing.
    FaultValues {
        log: String,
        column: String,
        cells: usize,
    },
    /// Readings that cannot be true, taken as missing.
    UnbelievableReadings {
        log: String,
        column: String,
        readings: usize,
        /// Lowest and highest of them, in the unit of the canonical log.
        lowest: f64,
        highest: f64,
        unit: &'static str,
    },
    /// Sensors of one quantity far apart.
    SensorsApart {
        log: String,
        quantity: Quantity,
        readings: usize,
        apart_k: f64,
    },
    /// Times at which one of several sensors has no reading.
    SensorsIncomplete {
        log: String,
        quantity: Quantity,
        readings: usize,
    },
    /// No column for a quantity, and columns that were not understood.
    ColumnNotFound {
        log: String,
        quantity: Quantity,
        ignored: Vec<String>,
    },
}

impl fmt::Display for LogNotice {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.message().fmt(f)
    }
}

impl LogNotice {
    /// What it says.
    pub fn message(&self) -> Message {
        match self {
            LogNotice::RowsSorted { log } => message!("notice-rows-sorted", log = log),
            LogNotice::RepeatedTimes { log, rows } => {
                message!("notice-repeated-times", log = log, rows = *rows)
            }
            LogNotice::RowsLeftOut {
                log,
                rows,
                lines,
                reason,
            } => message!(
                "notice-rows-left-out",
                log = log,
                rows = *rows,
                lines = lines,
                reason = reason.describe()
            ),
            LogNotice::UnitsAssumed { columns } => {
                let read = columns.iter().map(|(header, unit)| {
                    message!("notice-unit-assumed", header = header, unit = *unit)
                });
                message!(
                    "notice-units-assumed",
                    count = columns.len(),
                    columns = joined(read, ", ")
                )
            }
            LogNotice::BeyondCalibration {
                log,
                column,
                readings,
            } => message!(
                "notice-beyond-calibration",
                log = log,
                column = column,
                readings = *readings
            ),
            LogNotice::QuantityInBoth {
                log,
                weather,
                quantity,
            } => message!(
                "notice-quantity-in-both",
                log = log,
                weather = weather,
                quantity = quantity.name()
            ),
            LogNotice::WeatherInPart { log, weather } => {
                message!("notice-weather-in-part", log = log, weather = weather)
            }
            LogNotice::FaultValues { log, column, cells } => message!(
                "notice-fault-values",
                log = log,
                column = column,
                cells = *cells
            ),
            LogNotice::UnbelievableReadings {
                log,
                column,
                readings,
                lowest,
                highest,
                unit,
            } => message!(
                "notice-unbelievable",
                log = log,
                column = column,
                readings = *readings,
                values = range(*lowest, *highest, 1),
                unit = *unit
            ),
            LogNotice::SensorsApart {
                log,
                quantity,
                readings,
                apart_k,
            } => message!(
                "notice-sensors-apart",
                log = log,
                quantity = quantity.name(),
                readings = *readings,
                apart = kelvins(short(*apart_k))
            ),
            LogNotice::SensorsIncomplete {
                log,
                quantity,
                readings,
            } => message!(
                "notice-sensors-incomplete",
                log = log,
                quantity = quantity.name(),
                readings = *readings
            ),
            LogNotice::ColumnNotFound {
                log,
                quantity,
                ignored,
            } => message!(
                "notice-column-not-found",
                log = log,
                quantity = quantity.name(),
                ignored = quoted(ignored)
            ),
        }
    }
}
