//! Every limit of the practice in one table, a row a limit.

use super::finding::FindingCode;
use super::reason::Reason;
use crate::procedure::limit::{Allowed, DAYS, FRACTION, INTERVALS, Limit, Standing};

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
/// Water for each square metre of intercept area, kg/m².
pub const LOAD_KG_M2: f64 = 7.0;

/// Length an interval aims at, s.
///
/// # Source
/// ASAE S580, the clause on cooking power.
pub const INTERVAL_S: f64 = 600.0;
/// Share of its length by which an interval's end may wander, so that readings by hand still
/// give one. Common practice, no published source.
pub const END_TOLERANCE: f64 = 0.1;

/// What the practice limits.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum LimitKey {
    /// Water of an interval above its mean ambient, K.
    WaterAboveAmbient,
    /// Water of an interval below the local boiling point, K.
    WaterBelowBoiling,
    /// Fixed ends of the water window, °C.
    WaterMin,
    WaterMax,
    /// Mean ambient temperature, °C.
    AmbientMin,
    AmbientMax,
    /// Lowest and highest reading of irradiance, W/m², and the range of its readings.
    IrradianceMin,
    IrradianceMax,
    IrradianceRange,
    /// Mean wind, m/s, and what gusts may not exceed for long.
    WindMean,
    WindGust,
    /// Solar time of start and end, h.
    SolarTimeStart,
    SolarTimeEnd,
    /// Length that an interval aims at, s.
    Interval,
    /// Water over intercept area, kg/m², and the share by which it may be off.
    Load,
    LoadTolerance,
    /// Used intervals, and the local dates that they lie on.
    Intervals,
    Days,
    RSquared,
}

/// What breaking a limit gives.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Breach {
    /// The interval is set aside.
    SetsAside(Reason),
    /// The campaign has a finding.
    Finds(FindingCode),
    /// No interval is formed.
    FormsNone,
}

impl Breach {
    /// The code in files.
    pub fn code(self) -> &'static str {
        match self {
            Breach::SetsAside(reason) => reason.code(),
            Breach::Finds(finding) => finding.code(),
            Breach::FormsNone => "no-interval",
        }
    }
}

impl LimitKey {
    /// What breaking the limit gives.
    pub fn breach(self) -> Breach {
        use Breach::{Finds, SetsAside};
        match self {
            LimitKey::WaterAboveAmbient | LimitKey::WaterMin => SetsAside(Reason::WaterBelowWindow),
            LimitKey::WaterBelowBoiling | LimitKey::WaterMax => SetsAside(Reason::WaterAboveWindow),
            LimitKey::AmbientMin | LimitKey::AmbientMax => SetsAside(Reason::AmbientOutOfRange),
            LimitKey::IrradianceMin => SetsAside(Reason::IrradianceLow),
            LimitKey::IrradianceMax => SetsAside(Reason::IrradianceHigh),
            LimitKey::IrradianceRange => SetsAside(Reason::IrradianceUnsteady),
            LimitKey::WindMean | LimitKey::WindGust => SetsAside(Reason::WindHigh),
            LimitKey::SolarTimeStart | LimitKey::SolarTimeEnd => {
                SetsAside(Reason::OutsideSolarWindow)
            }
            LimitKey::Interval => Breach::FormsNone,
            LimitKey::Load | LimitKey::LoadTolerance => Finds(FindingCode::LoadOff),
            LimitKey::Intervals => Finds(FindingCode::TooFewIntervals),
            LimitKey::Days => Finds(FindingCode::TooFewDays),
            LimitKey::RSquared => Finds(FindingCode::RSquaredLow),
        }
    }
}

/// A limit of this practice.
pub type S580Limit = Limit<LimitKey>;

/// Where the numbers come from. No public copy of the standard shows them.
const MEMORY: &str = "ASAE S580.1, value from memory, clause not seen";

/// Where the tolerance on the load comes from.
const COMMON_PRACTICE: &str = "common practice, no published source";

/// Where the rule on R² comes from.
/// DIFFERENCE: the practice is content with a note where R² is lower; we do not
/// call such a rating conforming.
const MEMORY_STRICTER: &str =
    "ASAE S580.1, value from memory; withholding \"conforms\" is stricter than the practice";

const fn limit(
    key: LimitKey,
    word: Option<&'static str>,
    message: &'static str,
    (allowed, value, unit): (Allowed, f64, &'static str),
    standing: Standing,
) -> S580Limit {
    Limit {
        key,
        word,
        message,
        allowed,
        value,
        unit,
        standing,
        source: MEMORY,
        changed: false,
    }
}

use Allowed::{AtLeast, AtMost, Within};
use Standing::{Recommendation, Requirement};

/// The practice's table.
pub const PRACTICE: &[S580Limit] = &[
    limit(
        LimitKey::WaterAboveAmbient,
        Some("water_above_ambient_k"),
        "limit-water-above-ambient",
        (AtLeast, 5.0, "K"),
        Requirement,
    ),
    limit(
        LimitKey::WaterBelowBoiling,
        Some("water_below_boiling_k"),
        "limit-water-below-boiling",
        (AtLeast, 5.0, "K"),
        Requirement,
    ),
    limit(
        LimitKey::AmbientMin,
        Some("ambient_min_c"),
        "limit-ambient",
        (AtLeast, 20.0, "°C"),
        Recommendation,
    ),
    limit(
        LimitKey::AmbientMax,
        Some("ambient_max_c"),
        "limit-ambient",
        (AtMost, 35.0, "°C"),
        Recommendation,
    ),
    limit(
        LimitKey::IrradianceMin,
        Some("irradiance_min_w_m2"),
        "limit-irradiance-lowest",
        (AtLeast, 450.0, "W/m²"),
        Requirement,
    ),
    limit(
        LimitKey::IrradianceMax,
        Some("irradiance_max_w_m2"),
        "limit-irradiance-highest",
        (AtMost, 1100.0, "W/m²"),
        Requirement,
    ),
    limit(
        LimitKey::IrradianceRange,
        Some("irradiance_range_w_m2"),
        "limit-irradiance-change",
        (AtMost, 100.0, "W/m²"),
        Requirement,
    ),
    limit(
        LimitKey::WindMean,
        Some("wind_mean_max_m_s"),
        "limit-wind-mean",
        (AtMost, 1.0, "m/s"),
        Recommendation,
    ),
    limit(
        LimitKey::WindGust,
        Some("wind_gust_m_s"),
        "limit-wind-gust",
        (AtMost, 2.5, "m/s"),
        Requirement,
    ),
    limit(
        LimitKey::SolarTimeStart,
        Some("solar_time_start_h"),
        "limit-solar-time-start",
        (AtLeast, 10.0, "h"),
        Recommendation,
    ),
    limit(
        LimitKey::SolarTimeEnd,
        Some("solar_time_end_h"),
        "limit-solar-time-end",
        (AtMost, 14.0, "h"),
        Recommendation,
    ),
    limit(
        LimitKey::Interval,
        Some("interval_s"),
        "limit-interval",
        (Within(END_TOLERANCE), INTERVAL_S, "s"),
        Requirement,
    ),
    limit(
        LimitKey::Load,
        Some("load_kg_m2"),
        "limit-load",
        (Within(LOAD_TOLERANCE), LOAD_KG_M2, "kg/m²"),
        Requirement,
    ),
    Limit {
        source: COMMON_PRACTICE,
        ..limit(
            LimitKey::LoadTolerance,
            Some("load_tolerance"),
            "limit-load-tolerance",
            (AtMost, LOAD_TOLERANCE, FRACTION),
            Requirement,
        )
    },
    limit(
        LimitKey::Intervals,
        Some("intervals_min"),
        "limit-intervals",
        (AtLeast, 30.0, INTERVALS),
        Requirement,
    ),
    limit(
        LimitKey::Days,
        Some("days_min"),
        "limit-days",
        (AtLeast, 3.0, DAYS),
        Requirement,
    ),
    Limit {
        source: MEMORY_STRICTER,
        ..limit(
            LimitKey::RSquared,
            Some("r_squared_min"),
            "limit-r-squared",
            (AtLeast, 0.75, ""),
            Recommendation,
        )
    },
];

/// Rows that a campaign may put in place of a moving end of the water window, which is named
/// first.
pub const FIXED_WINDOW: &[(LimitKey, S580Limit)] = &[
    (
        LimitKey::WaterAboveAmbient,
        limit(
            LimitKey::WaterMin,
            Some("water_min_c"),
            "limit-water-temperature",
            (AtLeast, 0.0, "°C"),
            Requirement,
        ),
    ),
    (
        LimitKey::WaterBelowBoiling,
        limit(
            LimitKey::WaterMax,
            Some("water_max_c"),
            "limit-water-temperature",
            (AtMost, 0.0, "°C"),
            Requirement,
        ),
    ),
];

/// Every limit that a campaign may set: the practice's rows, and the fixed ends of the water
/// window behind the moving ones, with which [`PRACTICE`] begins.
pub fn own_rows() -> impl Iterator<Item = &'static S580Limit> {
    let (moving, others) = PRACTICE.split_at(FIXED_WINDOW.len());
    let fixed = FIXED_WINDOW.iter().map(|(_, row)| row);
    let rows = moving.iter().chain(fixed).chain(others);
    rows.filter(|row| row.word.is_some())
}

/// Each fixed end of the water window, with the moving one whose place it takes.
pub fn fixed_ends() -> impl Iterator<Item = (&'static S580Limit, &'static S580Limit)> {
    FIXED_WINDOW.iter().filter_map(|(moving, fixed)| {
        let mut practice = PRACTICE.iter();
        Some((fixed, practice.find(|row| row.key == *moving)?))
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_row_and_its_standing_are_said() {
        let fixed = FIXED_WINDOW.iter().map(|(_, row)| row);
        for row in PRACTICE.iter().chain(fixed) {
            assert!(!row.what().to_string().is_empty());
            let word = row.standing.word();
            assert_eq!(row.standing.describe().to_string(), word);
            let own = row.standing.describe_own().to_string();
            assert_eq!(own, format!("own ({word})"));
        }
    }
}
