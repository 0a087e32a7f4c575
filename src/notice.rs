//! Every warning, with its wording. A notice reaches the terminal and the report.

use std::fmt;

use crate::units::counted;

/// Something a reader should know that stops nothing.
#[derive(Debug, Clone, PartialEq)]
pub enum Notice {
    /// Rows were not in order of time.
    RowsSorted { log: String },
    /// Rows share their time with an earlier one.
    RepeatedTimes { log: String, rows: usize },
    /// Rows with no cell filled.
    BlankRows { log: String, rows: usize },
    /// A logger's fault values, taken as missing.
    FaultValues {
        log: String,
        column: String,
        cells: usize,
    },
    /// Readings that cannot be true, taken as missing.
    UnbelievableReadings {
        log: String,
        quantity: &'static str,
        readings: usize,
    },
    /// No column for a quantity, and columns that were not understood.
    ColumnNotFound {
        log: String,
        quantity: &'static str,
        header: &'static str,
        ignored: Vec<String>,
    },
    /// Readings before `start` or after `end` of the run.
    ReadingsTrimmed { log: String, readings: usize },
    /// No interval could be formed.
    NoIntervals { log: String },
    /// A span excluded by the tester that meets no interval.
    IdleExclusion {
        log: String,
        from: String,
        to: String,
    },
    /// The irradiance sensor's plane is not stated.
    PlaneAssumed,
    /// The run's `date` differs from that of its readings.
    DateDiffers {
        log: String,
        stated: String,
        found: String,
    },
}

impl fmt::Display for Notice {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Notice::RowsSorted { log } => {
                write!(
                    f,
                    "{log}: the rows were not in order of time and have been sorted"
                )
            }
            Notice::RepeatedTimes { log, rows } => write!(
                f,
                "{log}: {} with the time of an earlier row left out; the first counts",
                counted(*rows, "row")
            ),
            Notice::BlankRows { log, rows } => {
                write!(f, "{log}: {} passed over", counted(*rows, "blank row"))
            }
            Notice::FaultValues { log, column, cells } => write!(
                f,
                "{log}: {} in column \"{column}\" taken as missing; check the sensor's wiring",
                counted(*cells, "fault value")
            ),
            Notice::UnbelievableReadings {
                log,
                quantity,
                readings,
            } => write!(
                f,
                "{log}: {} of {quantity} cannot be true and {} taken as missing; check the sensor",
                counted(*readings, "reading"),
                if *readings == 1 { "is" } else { "are" }
            ),
            Notice::ColumnNotFound {
                log,
                quantity,
                header,
                ignored,
            } => write!(
                f,
                "{log}: no column \"{header}\", so {quantity} counts as not measured; not read: {}; if one of them holds it, name it under [columns]",
                crate::logs::columns::quoted(ignored)
            ),
            Notice::ReadingsTrimmed { log, readings } => write!(
                f,
                "{log}: {} before the run's start or after its end left out",
                counted(*readings, "reading")
            ),
            Notice::NoIntervals { log } => write!(
                f,
                "{log}: no two water readings are 9 to 11 minutes apart, so there is no interval; log at steps that add up to ten minutes"
            ),
            Notice::IdleExclusion { log, from, to } => write!(
                f,
                "{log}: the excluded span {from} to {to} meets no interval; check its times"
            ),
            Notice::PlaneAssumed => write!(
                f,
                "the plane of the irradiance sensor is not stated and taken as normal to the beam; state it under [instruments.irradiance]"
            ),
            Notice::DateDiffers { log, stated, found } => write!(
                f,
                "{log}: the run's date is given as {stated}, its readings begin on {found}; the readings count"
            ),
        }
    }
}
