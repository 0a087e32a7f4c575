//! Every limit of the practice in one table, a row a limit, and a campaign's own.

use crate::campaign::model::OwnLimit;
use crate::language::{Message, Phrase, celsius, joined, short};
use crate::units::SECONDS_PER_HOUR;

/// Slack with which a limit that is met exactly counts as met.
pub const SLACK: f64 = 1e-9;

/// Irradiance to which cooking power is normalised, W/m².
///
/// # Source
/// ASAE S580, the clause on standardised cooking power; ISO 19867-1:2018 points to it.
pub const STANDARD_IRRADIANCE_W_M2: f64 = 700.0;

/// Temperature difference at which the line is read for the single figure, K.
///
/// # Source
/// ASAE S580, the clause on the single measure of performance.
pub const RATING_DIFFERENCE_K: f64 = 50.0;

/// Share by which a load may differ from the practice's.
/// Common practice, no published source.
pub const LOAD_TOLERANCE: f64 = 0.05;

/// How binding the practice makes a limit.
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
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Allowed {
    /// The limit or more.
    AtLeast,
    /// The limit or less.
    AtMost,
    /// The limit, give or take [`LOAD_TOLERANCE`].
    About,
}

/// Where the numbers come from. No public copy of the standard shows them.
const MEMORY: &str = "ASAE S580.1, value from memory, clause not seen";

/// Where the rule on R² comes from.
/// DIFFERENCE: the practice is content with a note where R² is lower; we do not
/// call such a rating conforming.
const MEMORY_STRICTER: &str =
    "ASAE S580.1, value from memory; withholding \"conforms\" is stricter than the practice";

/// One row of the table.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Limit {
    /// Reason or finding that a breach gives.
    pub code: &'static str,
    /// Key under `[limits]`; empty where a campaign cannot change it.
    pub key: &'static str,
    /// Name of the message that says what is limited.
    message: &'static str,
    pub value: f64,
    pub unit: &'static str,
    pub allowed: Allowed,
    pub standing: Standing,
    pub source: &'static str,
    /// The value is the campaign's own.
    pub changed: bool,
}

impl Limit {
    /// What is limited, in words.
    pub fn what(&self) -> Message {
        Message::new(self.message)
    }

    /// The limit with its unit.
    pub fn amount(&self) -> Phrase {
        with_unit(short(self.value), self.unit)
    }
}

/// Numbers with the unit of a limit.
pub fn with_unit(numbers: Phrase, unit: &'static str) -> Phrase {
    match unit {
        "°C" => celsius(numbers),
        unit => joined([numbers, unit.into()], " "),
    }
}

const fn limit(
    code: &'static str,
    key: &'static str,
    message: &'static str,
    (allowed, value, unit): (Allowed, f64, &'static str),
    standing: Standing,
) -> Limit {
    Limit {
        code,
        key,
        message,
        value,
        unit,
        allowed,
        standing,
        source: MEMORY,
        changed: false,
    }
}

use Allowed::{About, AtLeast, AtMost};
use Standing::{Recommendation, Requirement};

/// The practice's table.
pub const PRACTICE: [Limit; 15] = [
    limit(
        "water-below-window",
        "water_above_ambient_k",
        "limit-water-above-ambient",
        (AtLeast, 5.0, "K"),
        Requirement,
    ),
    limit(
        "water-above-window",
        "water_below_boiling_k",
        "limit-water-below-boiling",
        (AtLeast, 5.0, "K"),
        Requirement,
    ),
    limit(
        "ambient-out-of-range",
        "ambient_min_c",
        "limit-ambient",
        (AtLeast, 20.0, "°C"),
        Recommendation,
    ),
    limit(
        "ambient-out-of-range",
        "ambient_max_c",
        "limit-ambient",
        (AtMost, 35.0, "°C"),
        Recommendation,
    ),
    limit(
        "irradiance-low",
        "irradiance_min_w_m2",
        "limit-irradiance-lowest",
        (AtLeast, 450.0, "W/m²"),
        Requirement,
    ),
    limit(
        "irradiance-high",
        "irradiance_max_w_m2",
        "limit-irradiance-highest",
        (AtMost, 1100.0, "W/m²"),
        Requirement,
    ),
    limit(
        "irradiance-unsteady",
        "irradiance_range_w_m2",
        "limit-irradiance-change",
        (AtMost, 100.0, "W/m²"),
        Requirement,
    ),
    limit(
        "wind-high",
        "wind_mean_max_m_s",
        "limit-wind-mean",
        (AtMost, 1.0, "m/s"),
        Recommendation,
    ),
    limit(
        "wind-high",
        "wind_gust_m_s",
        "limit-wind-gust",
        (AtMost, 2.5, "m/s"),
        Requirement,
    ),
    limit(
        "outside-solar-window",
        "solar_time_start_h",
        "limit-solar-time-start",
        (AtLeast, 10.0, "h"),
        Recommendation,
    ),
    limit(
        "outside-solar-window",
        "solar_time_end_h",
        "limit-solar-time-end",
        (AtMost, 14.0, "h"),
        Recommendation,
    ),
    limit(
        "load-off",
        "",
        "limit-load",
        (About, 7.0, "kg/m²"),
        Requirement,
    ),
    limit(
        "too-few-intervals",
        "",
        "limit-intervals",
        (AtLeast, 30.0, "intervals"),
        Requirement,
    ),
    limit(
        "too-few-days",
        "",
        "limit-days",
        (AtLeast, 3.0, "days"),
        Requirement,
    ),
    Limit {
        source: MEMORY_STRICTER,
        ..limit(
            "r-squared-low",
            "",
            "limit-r-squared",
            (AtLeast, 0.75, ""),
            Recommendation,
        )
    },
];

/// Rows that a campaign may put in place of a moving end of the water window.
const FIXED_WINDOW: [(&str, Limit); 2] = [
    (
        "water_above_ambient_k",
        limit(
            "water-below-window",
            "water_min_c",
            "limit-water-temperature",
            (AtLeast, 0.0, "°C"),
            Requirement,
        ),
    ),
    (
        "water_below_boiling_k",
        limit(
            "water-above-window",
            "water_max_c",
            "limit-water-temperature",
            (AtMost, 0.0, "°C"),
            Requirement,
        ),
    ),
];

/// The limits that hold for a campaign.
#[derive(Debug, Clone, PartialEq)]
pub struct Limits {
    /// In the order of [`PRACTICE`].
    pub rows: Vec<Limit>,
}

impl Limits {
    /// The practice's limits with a campaign's own in their place.
    pub fn new(own: &[OwnLimit]) -> Self {
        let own_value = |key: &str| own.iter().find(|own| own.key == key).map(|own| own.value);
        let rows = PRACTICE.map(|row| {
            let fixed = FIXED_WINDOW
                .iter()
                .find(|(replaced, _)| *replaced == row.key);
            if let Some((_, fixed)) = fixed
                && let Some(value) = own_value(fixed.key)
            {
                return Limit {
                    value,
                    changed: true,
                    source: "the campaign file",
                    ..*fixed
                };
            }
            match own_value(row.key) {
                Some(value) if value != row.value => Limit {
                    value,
                    changed: true,
                    source: "the campaign file",
                    ..row
                },
                _ => row,
            }
        });
        Limits {
            rows: rows.to_vec(),
        }
    }

    /// Length of the solar window, s.
    pub fn solar_window_s(&self) -> f64 {
        let hour = |key: &str| self.get(key).unwrap_or(0.0);
        (hour("solar_time_end_h") - hour("solar_time_start_h")).max(0.0) * SECONDS_PER_HOUR
    }

    /// Value of the limit with a key, if it holds for this campaign.
    pub fn get(&self, key: &str) -> Option<f64> {
        self.rows
            .iter()
            .find(|row| row.key == key)
            .map(|row| row.value)
    }

    /// Two limits between which nothing lies, if an own one contradicts another.
    pub fn contradiction(&self) -> Option<String> {
        let pairs = [
            ("ambient_min_c", "ambient_max_c"),
            ("irradiance_min_w_m2", "irradiance_max_w_m2"),
            ("solar_time_start_h", "solar_time_end_h"),
        ];
        pairs.into_iter().find_map(|(low, high)| {
            let (lowest, highest) = (self.get(low)?, self.get(high)?);
            let what =
                format!("{low} is {lowest} and {high} is {highest}, so nothing lies between");
            (lowest >= highest).then_some(what)
        })
    }

    /// Value of the one limit behind a finding of the whole campaign.
    pub fn of_finding(&self, code: &str) -> f64 {
        let row = self.rows.iter().find(|row| row.code == code);
        row.expect("the table has a row for each finding with a limit")
            .value
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

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_fixed_window_replaces_the_moving_one() {
        let limits = Limits::new(&[OwnLimit {
            key: "water_min_c",
            value: 40.0,
        }]);
        assert_eq!(limits.get("water_min_c"), Some(40.0));
        assert_eq!(limits.get("water_above_ambient_k"), None);
        assert_eq!(limits.get("water_below_boiling_k"), Some(5.0));
        assert!(limits.rows[0].changed);
    }

    #[test]
    fn an_own_limit_equal_to_the_practice_is_no_change() {
        let limits = Limits::new(&[OwnLimit {
            key: "ambient_min_c",
            value: 20.0,
        }]);
        assert!(limits.rows.iter().all(|row| !row.changed));
    }

    #[test]
    fn every_row_and_its_standing_are_said() {
        let rows = PRACTICE.into_iter().chain(FIXED_WINDOW.map(|(_, row)| row));
        for row in rows {
            assert!(!row.what().to_string().is_empty());
            let word = row.standing.word();
            assert_eq!(row.standing.describe().to_string(), word);
            let own = row.standing.describe_own().to_string();
            assert_eq!(own, format!("own, for a {word}"));
        }
    }

    #[test]
    fn every_key_of_the_campaign_file_has_a_row() {
        use crate::campaign::schema::LimitTable;
        let keys: Vec<&str> = PRACTICE
            .iter()
            .map(|row| row.key)
            .filter(|key| !key.is_empty())
            .collect();
        let all = keys
            .iter()
            .map(|key| format!("{key} = 1.0\n"))
            .collect::<String>();
        let table: LimitTable =
            toml::from_str(&(all + "water_min_c = 1.0\nwater_max_c = 1.0")).unwrap();
        assert_eq!(table.entries().len(), keys.len() + FIXED_WINDOW.len());
    }
}
