//! Used intervals and days that a rating still lacks.

use super::finding::{FindingCode, S580Finding};
use super::in_force::Limits;
use super::limits::LimitKey;
use crate::language::Message;
use crate::message;

/// Used intervals and days, and how many are missing.
pub struct Shortfall {
    used: usize,
    days: usize,
    least_used: usize,
    least_days: usize,
    /// The campaign's own, in place of the practice's.
    is_own_used: bool,
    is_own_days: bool,
}

impl Shortfall {
    /// Of so many used intervals and days.
    pub fn new(limits: &Limits, used: usize, days: usize) -> Self {
        Shortfall {
            used,
            days,
            least_used: limits.least_intervals(),
            least_days: limits.least_days(),
            is_own_used: limits.is_own(LimitKey::Intervals),
            is_own_days: limits.is_own(LimitKey::Days),
        }
    }

    fn missing_intervals(&self) -> usize {
        self.least_used.saturating_sub(self.used)
    }

    fn missing_days(&self) -> usize {
        self.least_days.saturating_sub(self.days)
    }

    /// What is missing in words; `None`: nothing.
    pub fn describe(&self) -> Option<Message> {
        let (intervals, days) = (self.missing_intervals(), self.missing_days());
        match (intervals, days) {
            (0, 0) => None,
            (0, _) => Some(message!("missing-days", days = days)),
            (_, 0) => Some(message!("missing-intervals", intervals = intervals)),
            _ => Some(message!(
                "missing-intervals-and-days",
                intervals = intervals,
                days = days
            )),
        }
    }

    /// A finding for each that is missing.
    pub fn findings(&self) -> Vec<S580Finding> {
        let mut findings = Vec::new();
        if self.missing_intervals() > 0 {
            findings.push(S580Finding::indicative(
                FindingCode::TooFewIntervals,
                if self.is_own_used {
                    message!("finding-too-few-intervals-own")
                } else {
                    message!("finding-too-few-intervals")
                }
                .with("intervals", self.used)
                .with("least", self.least_used),
                message!(
                    "finding-too-few-intervals-remedy",
                    intervals = self.missing_intervals()
                ),
            ));
        }
        if self.missing_days() > 0 {
            findings.push(S580Finding::indicative(
                FindingCode::TooFewDays,
                if self.is_own_days {
                    message!("finding-too-few-days-own")
                } else {
                    message!("finding-too-few-days")
                }
                .with("days", self.days)
                .with("least", self.least_days),
                message!("finding-too-few-days-remedy", days = self.missing_days()),
            ));
        }
        findings
    }
}
