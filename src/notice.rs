//! Every warning, with its wording. A notice reaches the terminal and the report.

use std::fmt;

use jiff::civil::Date;

use crate::language::{
    Message, Phrase, celsius, clock, date, duration, fixed, joined, listed, range, short,
};
use crate::logs::account::Skip;
use crate::logs::quantity::Quantity;
use crate::message;
use crate::procedure::cooking::{HOT_C, TimeRange};
use crate::procedure::danger::{COLD_C, DangerZone};

/// Something a reader should know that stops nothing.
#[derive(Debug, Clone, PartialEq)]
pub enum Notice {
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
    /// A log of many days was split into runs.
    LogSplit {
        log: String,
        runs: usize,
        /// Parts of it that are no run.
        without: usize,
        readings_left_out: usize,
        /// The campaign file says when each day's heating begins or ends.
        is_bounded: bool,
        least_rise_k: f64,
    },
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
    /// A log that goes on for more than a day.
    LongRun { log: String, days: f64 },
    /// Water hotter than it can be in an open pot.
    WaterAboveBoiling {
        log: String,
        highest_c: f64,
        boiling_point_c: f64,
    },
    /// Longitude and time zone do not fit together.
    OddSolarNoon {
        log: String,
        /// Solar noon by the local clock, h.
        noon_h: f64,
    },
    /// No column for a quantity, and columns that were not understood.
    ColumnNotFound {
        log: String,
        quantity: Quantity,
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
    /// Spans stated cloudless in which the water stalls as under a cloud.
    StallUnderClearSky {
        log: String,
        /// Local clock times, from and to.
        spans: Vec<(String, String)>,
    },
    /// Heating that would leave food too long where bacteria grow.
    DangerZone(DangerZone),
    /// Dry or wet, the cooker does more than such cookers are known to do.
    AboveFilm {
        /// Share of the sunlight intercepted that the line's intercept takes up.
        share: f64,
    },
    /// The irradiance sensor's plane is not stated.
    PlaneAssumed,
    /// Neither uncertainty nor class of some instruments is stated.
    InstrumentsAssumed {
        /// Quantity, and the class that is taken.
        instruments: Vec<(Phrase, Phrase)>,
    },
    /// The run's `date` differs from that of its readings.
    DateDiffers {
        log: String,
        stated: Date,
        found: Date,
    },
}

impl fmt::Display for Notice {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.message().fmt(f)
    }
}

impl Notice {
    /// What it says.
    pub fn message(&self) -> Message {
        match self {
            Notice::RowsSorted { log } => message!("notice-rows-sorted", log = log),
            Notice::RepeatedTimes { log, rows } => {
                message!("notice-repeated-times", log = log, rows = *rows)
            }
            Notice::RowsLeftOut {
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
            Notice::UnitsAssumed { columns } => {
                let read = columns.iter().map(|(header, unit)| {
                    message!("notice-unit-assumed", header = header, unit = *unit)
                });
                message!(
                    "notice-units-assumed",
                    count = columns.len(),
                    columns = joined(read, ", ")
                )
            }
            Notice::BeyondCalibration {
                log,
                column,
                readings,
            } => message!(
                "notice-beyond-calibration",
                log = log,
                column = column,
                readings = *readings
            ),
            Notice::QuantityInBoth {
                log,
                weather,
                quantity,
            } => message!(
                "notice-quantity-in-both",
                log = log,
                weather = weather,
                quantity = quantity.name()
            ),
            Notice::WeatherInPart { log, weather } => {
                message!("notice-weather-in-part", log = log, weather = weather)
            }
            Notice::LogSplit {
                log,
                runs,
                without,
                readings_left_out,
                is_bounded,
                least_rise_k,
            } => {
                let split = if *is_bounded {
                    message!("notice-log-split-bounded")
                } else {
                    message!("notice-log-split-rising", rise = short(*least_rise_k))
                };
                split
                    .with("log", log)
                    .with("runs", *runs)
                    .with("parts", message!("notice-log-parts", count = *without))
                    .with(
                        "readings",
                        message!("notice-log-readings", count = *readings_left_out),
                    )
            }
            Notice::FaultValues { log, column, cells } => message!(
                "notice-fault-values",
                log = log,
                column = column,
                cells = *cells
            ),
            Notice::UnbelievableReadings {
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
            Notice::SensorsApart {
                log,
                quantity,
                readings,
                apart_k,
            } => message!(
                "notice-sensors-apart",
                log = log,
                quantity = quantity.name(),
                readings = *readings,
                apart = short(*apart_k)
            ),
            Notice::SensorsIncomplete {
                log,
                quantity,
                readings,
            } => message!(
                "notice-sensors-incomplete",
                log = log,
                quantity = quantity.name(),
                readings = *readings
            ),
            Notice::LongRun { log, days } => {
                message!("notice-long-run", log = log, days = fixed(*days, 1))
            }
            Notice::WaterAboveBoiling {
                log,
                highest_c,
                boiling_point_c,
            } => message!(
                "notice-above-boiling",
                log = log,
                highest = celsius(fixed(*highest_c, 1)),
                boiling = celsius(fixed(*boiling_point_c, 1))
            ),
            Notice::OddSolarNoon { log, noon_h } => {
                message!("notice-odd-noon", log = log, noon = clock(*noon_h))
            }
            Notice::ColumnNotFound {
                log,
                quantity,
                ignored,
            } => message!(
                "notice-column-not-found",
                log = log,
                quantity = quantity.name(),
                ignored = crate::logs::columns::quoted(ignored)
            ),
            Notice::ReadingsTrimmed { log, readings } => {
                message!("notice-trimmed", log = log, readings = *readings)
            }
            Notice::NoIntervals { log } => message!("notice-no-intervals", log = log),
            Notice::IdleExclusion { log, from, to } => {
                message!("notice-idle-exclusion", log = log, from = from, to = to)
            }
            Notice::StallUnderClearSky { log, spans } => {
                let spans = spans.iter();
                let spans = spans.map(|(from, to)| message!("notice-span", from = from, to = to));
                message!("notice-stall", log = log, spans = listed(spans))
            }
            Notice::DangerZone(found) => describe_danger(found),
            Notice::AboveFilm { share } => {
                message!("notice-above-film", share = fixed(share * 100.0, 0))
            }
            Notice::PlaneAssumed => message!("notice-plane-assumed"),
            Notice::InstrumentsAssumed { instruments } => {
                let taken = instruments.iter().map(|(quantity, class)| {
                    message!(
                        "notice-instrument-taken",
                        quantity = quantity,
                        class = class
                    )
                });
                message!("notice-instruments-assumed", taken = joined(taken, ", "))
            }
            Notice::DateDiffers { log, stated, found } => message!(
                "notice-date-differs",
                log = log,
                stated = date(*stated),
                found = date(*found)
            ),
        }
    }
}

fn describe_danger(found: &DangerZone) -> Message {
    let hot = || celsius(short(HOT_C));
    let predicted = found.predicted.map(|predicted| match predicted {
        None => message!("danger-never", hot = hot()),
        Some(TimeRange {
            best_s,
            shortest_s,
            longest_s,
        }) => match longest_s {
            Some(longest_s) => message!("danger-takes", longest = duration(longest_s)),
            None => message!("danger-takes-open"),
        }
        .with("time", duration(best_s))
        .with("hot", hot())
        .with("shortest", duration(shortest_s)),
    });
    let said = match (&found.measured, predicted) {
        (Some((run, seconds)), Some(predicted)) => message!(
            "danger-both",
            run = run,
            time = duration(*seconds),
            predicted = predicted
        ),
        (Some((run, seconds)), None) => {
            message!("danger-measured", run = run, time = duration(*seconds))
        }
        (None, Some(predicted)) => message!("danger-predicted", predicted = predicted),
        (None, None) => unreachable!("a danger is measured or predicted"),
    };
    said.with(
        "zone",
        message!("danger-zone", cold = celsius(short(COLD_C)), hot = hot()),
    )
    .with("longest", duration(found.longest_s))
}
