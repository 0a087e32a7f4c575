//! What a reader should know of a run and of the log that it is in.

use jiff::civil::Date;

use crate::language::{Message, celsius, date, fixed, short};
use crate::logs::LogNotice;
use crate::message;

/// Something a reader should know that stops nothing.
#[derive(Debug, Clone, PartialEq)]
pub enum RunNotice {
    /// Of its log.
    Log(LogNotice),
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
    /// Readings before `start` or after `end` of the run.
    ReadingsTrimmed { log: String, readings: usize },
    /// The run's `date` differs from that of its readings.
    DateDiffers {
        log: String,
        stated: Date,
        found: Date,
    },
    /// A log that goes on for more than a day.
    LongRun {
        log: String,
        days: f64,
        /// A log of such runs can be split by days.
        can_be_split: bool,
    },
    /// Water hotter than it can be in an open pot.
    WaterAboveBoiling {
        log: String,
        highest_c: f64,
        boiling_point_c: f64,
    },
}

impl RunNotice {
    /// What it says.
    pub fn message(&self) -> Message {
        match self {
            RunNotice::Log(notice) => notice.message(),
            RunNotice::LogSplit {
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
            RunNotice::ReadingsTrimmed { log, readings } => {
                message!("notice-trimmed", log = log, readings = *readings)
            }
            RunNotice::DateDiffers { log, stated, found } => message!(
                "notice-date-differs",
                log = log,
                stated = date(*stated),
                found = date(*found)
            ),
            RunNotice::LongRun {
                log,
                days,
                can_be_split,
            } => {
                let said = if *can_be_split {
                    message!("notice-long-run")
                } else {
                    message!("notice-long-run-other")
                };
                said.with("log", log).with("days", fixed(*days, 1))
            }
            RunNotice::WaterAboveBoiling {
                log,
                highest_c,
                boiling_point_c,
            } => message!(
                "notice-above-boiling",
                log = log,
                highest = celsius(fixed(*highest_c, 1)),
                boiling = celsius(fixed(*boiling_point_c, 1))
            ),
        }
    }
}
