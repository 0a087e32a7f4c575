//! What is not as it should be while a log is watched. Nothing of it ends the watching.

use crate::language::{Message, Phrase, duration, fixed};
use crate::message;
use crate::shown::shown;
use crate::units::SECONDS_PER_HOUR;

/// Something that is not as it should be.
#[derive(Debug, Clone, PartialEq)]
pub enum Trouble {
    /// The logger has written nothing for some seconds.
    Silent { silent_s: f64 },
    /// A log that the campaign file names is not there, yet or any more.
    LogMissing { log: String, was_there: bool },
    /// A log or its run cannot be used now, in words of the error; watching goes on.
    NotRead { what: String },
    /// The campaign file cannot be used now; the last good one counts.
    CampaignNotRead { what: String },
    /// The last line of a log has no end yet.
    LineNotEnded { log: String },
    /// A log is shorter than it was, or another: its rows of before are not in it.
    BegunAnew { log: String },
    /// Lines came, and none of them has a reading later than a clock time.
    NoneLater { clock: String },
    /// Rows went on at another time than their clock had it, by some seconds, later or earlier.
    ClockJumped { by_s: f64 },
    /// The clock of the rows and that of this computer differ by some seconds.
    ClocksApart { by_s: f64 },
}

impl Trouble {
    /// A stable word for each kind: what is told once of a trouble that lasts.
    pub fn kind(&self) -> &'static str {
        match self {
            Trouble::Silent { .. } => "silent",
            Trouble::LogMissing { .. } => "missing",
            Trouble::NotRead { .. } => "not-read",
            Trouble::CampaignNotRead { .. } => "campaign",
            Trouble::LineNotEnded { .. } => "line",
            Trouble::BegunAnew { .. } => "anew",
            Trouble::NoneLater { .. } => "none-later",
            Trouble::ClockJumped { .. } => "jumped",
            Trouble::ClocksApart { .. } => "apart",
        }
    }

    /// The trouble in words.
    pub fn message(&self) -> Message {
        match self {
            Trouble::Silent { silent_s } => {
                message!("watch-silent", time = time_of(*silent_s))
            }
            Trouble::LogMissing { log, was_there } => match was_there {
                true => message!("watch-log-gone", log = log),
                false => message!("watch-log-missing", log = log),
            },
            Trouble::NotRead { what } => message!("watch-not-read", what = what),
            Trouble::CampaignNotRead { what } => message!("watch-campaign-not-read", what = what),
            Trouble::LineNotEnded { log } => message!("watch-line-not-ended", log = log),
            Trouble::BegunAnew { log } => message!("watch-begun-anew", log = log),
            Trouble::NoneLater { clock } => message!("watch-none-later", clock = clock),
            Trouble::ClockJumped { by_s } => {
                message!("watch-clock-jumped", time = time_of(*by_s))
            }
            Trouble::ClocksApart { by_s } => {
                message!("watch-clocks-apart", time = time_of(*by_s))
            }
        }
    }
}

/// A span of time in seconds: under two minutes `45 s`, else `3 min`, `1 h 40 min`, and from two
/// days on in days, `168 days`.
pub fn time_of(seconds: f64) -> Phrase {
    const IN_SECONDS: f64 = 120.0;
    const SECONDS_PER_DAY: f64 = 24.0 * SECONDS_PER_HOUR;
    const IN_DAYS: f64 = 2.0 * SECONDS_PER_DAY;
    let seconds = seconds.abs();
    if seconds < IN_SECONDS {
        message!("watch-seconds", seconds = fixed(seconds, 0)).into()
    } else if seconds < IN_DAYS {
        duration(seconds)
    } else {
        let days = (seconds / SECONDS_PER_DAY).round() as usize;
        message!("watch-days", days = days).into()
    }
}

/// The first line of an error, for a screen with little room.
pub fn first_line(error: &crate::error::Error) -> String {
    let text = error.to_string();
    shown(text.lines().next().unwrap_or_default()).into_owned()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_time_is_told_in_seconds_in_hours_or_in_days() {
        for (seconds, told) in [
            (45.0, "45 s"),
            (-300.0, "5 min"),
            (6000.0, "1 h 40 min"),
            (172_799.0, "48 h"),
            (172_800.0, "2 days"),
            (14_557_080.0, "168 days"),
        ] {
            assert_eq!(time_of(seconds).to_string(), told);
        }
    }
}
