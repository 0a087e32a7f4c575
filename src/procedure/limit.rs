//! Limits of a published practice: how binding one is, and which side of it is allowed.

use crate::language::{
    Message, Phrase, celsius, clock, joined, kelvins, kilograms_per_square_metre,
    metres_per_second, short,
};

/// Slack with which a limit that is met exactly counts as met.
pub const SLACK: f64 = 1e-9;

/// How binding a practice makes a limit.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Standing {
    /// "Shall".
    Requirement,
    /// "Should".
    Recommendation,
}

impl Standing {
    /// The word in files.
    pub fn word(self) -> &'static str {
        match self {
            Standing::Requirement => "requirement",
            Standing::Recommendation => "recommendation",
        }
    }

    /// The standing in words.
    pub fn describe(self) -> Message {
        Message::new(format!("standing-{}", self.word()))
    }

    /// That a campaign has a limit of its own in place of one that stands so.
    pub fn describe_own(self) -> Message {
        Message::new(format!("standing-own-{}", self.word()))
    }
}

/// Which side of a limit is allowed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Allowed {
    /// The limit or more.
    AtLeast,
    /// The limit or less.
    AtMost,
    /// The limit, give or take a share of it.
    Within(f64),
}

/// One limit; `K` is the procedure's closed list of what it limits.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Limit<K> {
    /// What is limited.
    pub key: K,
    /// Key under `[limits]`; `None` where a campaign cannot change it.
    pub word: Option<&'static str>,
    /// Name of the message that says what is limited.
    pub message: &'static str,
    pub allowed: Allowed,
    pub value: f64,
    pub unit: &'static str,
    pub standing: Standing,
    pub source: &'static str,
    /// The value is the campaign's own.
    pub changed: bool,
}

impl<K> Limit<K> {
    /// What is limited, in words.
    pub fn what(&self) -> Message {
        Message::new(self.message)
    }

    /// The limit with its unit.
    pub fn amount(&self) -> Phrase {
        match self.unit {
            FRACTION => joined([percent(self.value), "%".into()], " "),
            unit => with_unit(short(self.value), unit),
        }
    }

    /// The limit with its unit and the side that it allows: `≥ 450 W/m²`, `≤ 14:00`.
    pub fn bound(&self) -> Phrase {
        let amount = match self.unit {
            "h" => clock(self.value),
            _ => self.amount(),
        };
        match self.allowed {
            Allowed::AtLeast => joined(["≥".into(), amount], " "),
            Allowed::AtMost => joined(["≤".into(), amount], " "),
            Allowed::Within(_) => amount,
        }
    }

    /// Whether a value in the limit's unit lies on the allowed side; one that meets the limit
    /// exactly does.
    pub fn allows(&self, value: f64) -> bool {
        self.allows_all_of(value, 0.0)
    }

    /// Whether a value and all that lies as near to it as its expanded uncertainty, both in the
    /// limit's unit, is on the allowed side.
    ///
    /// # Source
    /// JCGM 106:2012, 8.3, guarded acceptance (from memory).
    pub fn allows_all_of(&self, value: f64, expanded: f64) -> bool {
        match self.allowed {
            Allowed::AtLeast => at_least(value - expanded, self.value),
            Allowed::AtMost => at_most(value + expanded, self.value),
            Allowed::Within(share) => {
                let furthest = (value - self.value).abs() + expanded;
                at_most(furthest / self.value, share)
            }
        }
    }

    /// The same limit with a campaign's own value.
    #[must_use]
    pub fn with_own(self, value: f64) -> Self {
        Limit {
            value,
            changed: true,
            source: "the campaign file",
            ..self
        }
    }
}

/// Unit of a limit that is a share of another: told in percent.
pub const FRACTION: &str = "fraction";
/// Units of limits on how many there are, which are told without one.
pub const INTERVALS: &str = "intervals";
/// See [`INTERVALS`].
pub const DAYS: &str = "days";

/// A fraction as a number of percent, without what is beyond a double's digits.
pub fn percent(fraction: f64) -> Phrase {
    short((fraction * 1e8).round() / 1e6)
}

/// Numbers with the unit of a limit.
pub fn with_unit(numbers: Phrase, unit: &'static str) -> Phrase {
    match unit {
        "°C" => celsius(numbers),
        "K" => kelvins(numbers),
        "m/s" => metres_per_second(numbers),
        "kg/m²" => kilograms_per_square_metre(numbers),
        "" | INTERVALS | DAYS => numbers,
        unit => joined([numbers, unit.into()], " "),
    }
}

/// `value ≥ least`, where meeting it exactly counts.
pub fn at_least(value: f64, least: f64) -> bool {
    value >= least - SLACK
}

/// `value ≤ most`, where meeting it exactly counts.
pub fn at_most(value: f64, most: f64) -> bool {
    value <= most + SLACK
}
