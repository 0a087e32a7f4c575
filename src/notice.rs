//! Every warning, with its wording. A notice reaches the terminal and the report.

use std::fmt;

use crate::procedure::cooking::{HOT_C, TimeRange};
use crate::procedure::danger::{COLD_C, DangerZone};
use crate::units::{clock_from_hours, counted, fixed, range, short, spoken_duration};

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
        lines: String,
        reason: &'static str,
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
        quantity: &'static str,
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
        quantity: &'static str,
        readings: usize,
        apart_k: f64,
    },
    /// Times at which one of several sensors has no reading.
    SensorsIncomplete {
        log: String,
        quantity: &'static str,
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
        quantity: &'static str,
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
        spans: Vec<String>,
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
        instruments: Vec<(&'static str, &'static str)>,
    },
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
            Notice::RowsLeftOut {
                log,
                rows,
                lines,
                reason,
            } => write!(
                f,
                "{log}: {} left out ({}: {reason})",
                counted(*rows, "row"),
                if *rows == 1 {
                    format!("line {lines}")
                } else {
                    format!("lines {lines}")
                }
            ),
            Notice::UnitsAssumed { columns } => {
                let read: Vec<String> = columns
                    .iter()
                    .map(|(header, unit)| format!("\"{header}\" in {unit}"))
                    .collect();
                write!(
                    f,
                    "no unit is stated for {}, read as {}; state it in the header, or under [units]",
                    if columns.len() == 1 {
                        "a column"
                    } else {
                        "columns"
                    },
                    read.join(", ")
                )
            }
            Notice::BeyondCalibration {
                log,
                column,
                readings,
            } => write!(
                f,
                "{log}: {} in column \"{column}\" beyond the points of its calibration, by the nearest straight line",
                counted(*readings, "reading")
            ),
            Notice::QuantityInBoth {
                log,
                weather,
                quantity,
            } => write!(
                f,
                "{quantity} is in {log} and in {weather}; that beside the cooker counts"
            ),
            Notice::WeatherInPart { log, weather } => write!(
                f,
                "{weather} covers a part of {log} only; check the clocks of both (time_zone, weather_clock_offset_s)"
            ),
            Notice::LogSplit {
                log,
                runs,
                without,
                readings_left_out,
                is_bounded,
                least_rise_k,
            } => {
                let kept = if *is_bounded {
                    "from the run's start to its end".to_owned()
                } else {
                    format!(
                        "from the coldest water to the hottest, where it rises by {} K or more",
                        short(*least_rise_k)
                    )
                };
                write!(
                    f,
                    "{log}: split into {} by date and gap, each {kept}; {} and {} left out",
                    counted(*runs, "run"),
                    counted(*without, "part"),
                    counted(*readings_left_out, "reading")
                )
            }
            Notice::FaultValues { log, column, cells } => write!(
                f,
                "{log}: {} in column \"{column}\" taken as missing; check the sensor's wiring",
                counted(*cells, "fault value")
            ),
            Notice::UnbelievableReadings {
                log,
                column,
                readings,
                lowest,
                highest,
                unit,
            } => write!(
                f,
                "{log}: {} in column \"{column}\" cannot be true ({} {unit}) and {} taken as missing; check the sensor",
                counted(*readings, "reading"),
                range(*lowest, *highest, 1),
                if *readings == 1 { "is" } else { "are" }
            ),
            Notice::SensorsApart {
                log,
                quantity,
                readings,
                apart_k,
            } => write!(
                f,
                "{log}: the sensors of {quantity} are more than {} K apart at {}; their mean is used: check that none has failed",
                short(*apart_k),
                counted(*readings, "time")
            ),
            Notice::SensorsIncomplete {
                log,
                quantity,
                readings,
            } => write!(
                f,
                "{log}: at {} one of the sensors of {quantity} has no reading; the mean of the others steps there if they differ",
                counted(*readings, "time")
            ),
            Notice::LongRun { log, days } => write!(
                f,
                "{log}: the readings span {} days, a run is one heating on one day; check the dates, set start and end, or split = \"daily\"",
                fixed(*days, 1)
            ),
            Notice::WaterAboveBoiling {
                log,
                highest_c,
                boiling_point_c,
            } => write!(
                f,
                "{log}: the water reaches {} °C, above its boiling point of {} °C here; check the sensor, the elevation or the pressure",
                fixed(*highest_c, 1),
                fixed(*boiling_point_c, 1)
            ),
            Notice::OddSolarNoon { log, noon_h } => write!(
                f,
                "{log}: solar noon falls at {} by the clock; check the longitude (east positive) and the time zone",
                clock_from_hours(*noon_h)
            ),
            Notice::ColumnNotFound {
                log,
                quantity,
                ignored,
            } => write!(
                f,
                "{log}: no column is understood as {quantity}, which counts as not measured; not read: {}; if one of them holds it, name it under [columns]",
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
            Notice::StallUnderClearSky { log, spans } => write!(
                f,
                "{log}: the water gains less than half of what the line says from {}, as under a cloud, where the sky is stated to be cloudless; look at your notes, and at the aim",
                crate::units::listed(spans)
            ),
            Notice::DangerZone(found) => write!(f, "{}", describe_danger(found)),
            Notice::AboveFilm { share } => write!(
                f,
                "at ambient temperature the line takes up {} % of the sunlight intercepted, more than a reflective film sends on (86 %; common practice, no published source); check intercept area, mass of water and irradiance",
                fixed(share * 100.0, 0)
            ),
            Notice::PlaneAssumed => write!(
                f,
                "the plane of the irradiance sensor is not stated and taken as normal to the beam; state it under [instruments.irradiance]"
            ),
            Notice::InstrumentsAssumed { instruments } => {
                let taken: Vec<String> = instruments
                    .iter()
                    .map(|(quantity, class)| format!("{quantity} by a {class}"))
                    .collect();
                write!(
                    f,
                    "uncertainty not stated, so the most cautious instrument is taken: {}; state class or uncertainty under [instruments]",
                    taken.join(", ")
                )
            }
            Notice::DateDiffers { log, stated, found } => write!(
                f,
                "{log}: the run's date is given as {stated}, its readings begin on {found}; the readings count"
            ),
        }
    }
}

fn describe_danger(found: &DangerZone) -> String {
    let zone = format!("between {} and {} °C", short(COLD_C), short(HOT_C));
    let mut ways = Vec::new();
    if let Some((run, seconds)) = &found.measured {
        ways.push(format!(
            "in {run} the water was {zone} for {}",
            spoken_duration(*seconds)
        ));
    }
    if let Some(predicted) = found.predicted {
        ways.push(match predicted {
            None => format!(
                "by the line the load tested does not get to {} °C",
                short(HOT_C)
            ),
            Some(TimeRange {
                best_s,
                shortest_s,
                longest_s,
            }) => format!(
                "by the line the load tested takes about {} to {} °C ({} {})",
                spoken_duration(best_s),
                short(HOT_C),
                spoken_duration(shortest_s),
                longest_s.map_or_else(
                    || "or more, or it does not get there".to_owned(),
                    |longest_s| format!("to {}", spoken_duration(longest_s))
                )
            ),
        });
    }
    format!(
        "food safety: {}; food must not stay {zone} for more than {} in all (USDA FSIS, WHO), where bacteria grow: cook smaller amounts, begin with hot water, and keep meat, fish, eggs, milk and cooked rice for a stronger sun or another stove",
        ways.join(", and "),
        spoken_duration(found.longest_s)
    )
}
