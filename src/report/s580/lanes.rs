//! Why intervals are not on the line, a lane a reason: below each run a row, in the table of
//! intervals a column, in the same order and by the same short names.

use crate::language::Message;
use crate::procedure::Assessment;
use crate::procedure::s580::intervals::Interval;
use crate::procedure::s580::reason::Reason;

/// One of them.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Lane {
    /// The practice sets the interval aside.
    Aside(Reason),
    /// It breaks no limit, and has no irradiance to be normalised by.
    NotNormalised,
}

impl Lane {
    /// Every lane, in the order of the limits.
    pub fn all() -> impl Iterator<Item = Lane> {
        let aside = Reason::ALL.iter().copied().map(Lane::Aside);
        aside.chain([Lane::NotNormalised])
    }

    /// Those that hold an interval of the campaign: the same for each of its runs.
    pub fn of_campaign(assessment: &Assessment) -> Vec<Lane> {
        let intervals = &assessment.s580.intervals;
        Lane::all()
            .filter(|lane| intervals.iter().any(|interval| lane.holds(interval)))
            .collect()
    }

    /// Whether an interval stands in it.
    pub fn holds(self, interval: &Interval) -> bool {
        match self {
            Lane::Aside(reason) => interval.reasons().contains(&reason),
            Lane::NotNormalised => interval.is_not_normalised(),
        }
    }

    /// A word or two for a narrow column.
    pub fn name(self) -> Message {
        match self {
            Lane::Aside(reason) => Message::new(format!("lane-{}", reason.code())),
            Lane::NotNormalised => Message::new("lane-not-normalised"),
        }
    }

    /// What it means.
    pub fn describe(self) -> Message {
        match self {
            Lane::Aside(reason) => reason.describe(),
            Lane::NotNormalised => Message::new("interval-no-irradiance"),
        }
    }

    /// The code in files.
    pub fn code(self) -> &'static str {
        match self {
            Lane::Aside(reason) => reason.code(),
            Lane::NotNormalised => "not-normalised",
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Longest name that a column and a lane have room for, letters.
    const MOST_LETTERS: usize = 14;

    #[test]
    fn every_lane_has_a_short_name_of_its_own() {
        let mut names: Vec<String> = Lane::all().map(|lane| lane.name().to_string()).collect();
        assert!(
            names
                .iter()
                .all(|name| name.chars().count() <= MOST_LETTERS)
        );
        let count = names.len();
        names.sort();
        names.dedup();
        assert_eq!(names.len(), count);
    }
}
