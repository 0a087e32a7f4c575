//! Each limit, what was observed, and how many intervals it set aside.

use serde::Serialize;

use crate::language::Words;
use crate::procedure::Assessment;
use crate::procedure::intervals::Interval;
use crate::procedure::limits::{Allowed, LOAD_TOLERANCE, Limit};
use crate::procedure::screen::{Reason, observe};
use crate::units::{clock_from_hours, fixed, range, short, spoken_duration};

/// Section 2.
#[derive(Debug, Clone, Serialize)]
pub struct Conditions {
    pub rows: Vec<ConditionRow>,
    pub notes: Vec<String>,
}

/// One limit.
#[derive(Debug, Clone, Serialize)]
pub struct ConditionRow {
    pub what: String,
    pub limit: String,
    pub standing: String,
    /// Over all intervals, used or not.
    pub observed: String,
    /// Reason code, and intervals it set aside.
    pub code: String,
    pub set_aside: String,
    /// The limit is the campaign's own.
    pub changed: bool,
}

/// One condition on page one: what the used intervals saw of it.
#[derive(Debug, Clone, Serialize)]
pub struct BriefRow {
    pub what: String,
    pub limit: String,
    pub observed: String,
    pub set_aside: String,
}

/// Conditions on page one, each with the keys of its lower and upper limit.
const BRIEF: [(&str, &[&str]); 7] = [
    (
        "Irradiance",
        &["irradiance_min_w_m2", "irradiance_max_w_m2"],
    ),
    (
        "Change of irradiance in an interval",
        &["irradiance_range_w_m2"],
    ),
    ("Mean wind, and long gusts", &["wind_mean_max_m_s"]),
    (
        "Mean ambient temperature",
        &["ambient_min_c", "ambient_max_c"],
    ),
    (
        "Water above ambient, both ends",
        &["water_above_ambient_k", "water_min_c"],
    ),
    (
        "Water below boiling, both ends",
        &["water_below_boiling_k", "water_max_c"],
    ),
    ("Solar time", &["solar_time_start_h", "solar_time_end_h"]),
];

/// The conditions in brief, as the used intervals saw them.
pub fn brief(assessment: &Assessment, words: &Words) -> Vec<BriefRow> {
    BRIEF
        .iter()
        .map(|(what, keys)| brief_row(assessment, what, keys))
        .collect()
}

fn brief_row(assessment: &Assessment, what: &str, keys: &[&str]) -> BriefRow {
    let rows = assessment.limits.rows.iter();
    let limits: Vec<&Limit> = rows.filter(|limit| keys.contains(&limit.key)).collect();
    let limit = match limits.as_slice() {
        [low, high] if low.unit == "h" => {
            format!(
                "{} – {}",
                clock_from_hours(low.value),
                clock_from_hours(high.value)
            )
        }
        [low, high] => format!("{} – {} {}", short(low.value), short(high.value), low.unit),
        others => others.iter().map(|limit| spoken_limit(limit)).collect(),
    };
    let is_aside = |interval: &&Interval| {
        let mut codes = interval.reasons.iter().map(|reason| reason.code());
        codes.any(|code| limits.iter().any(|limit| limit.code == code))
    };
    let set_aside = assessment.intervals.iter().filter(is_aside).count();
    let values = limits.iter().flat_map(|limit| {
        assessment
            .used()
            .filter_map(|interval| observe(interval, limit, assessment.boiling_point_c))
    });
    let observed = limits
        .first()
        .and_then(|limit| spoken_spread(values, limit.unit));
    let is_observed = observed.is_some();
    BriefRow {
        what: match limits.as_slice() {
            [fixed] if fixed.unit == "°C" => "Water temperature, both ends".to_owned(),
            _ => what.to_owned(),
        },
        limit,
        observed: observed.unwrap_or_else(|| nothing_seen(assessment.used().count())),
        set_aside: count_or_dash(set_aside, is_observed),
    }
}

/// A count, or a dash where nothing was observed that could have set aside.
fn count_or_dash(count: usize, is_observed: bool) -> String {
    if count > 0 || is_observed {
        count.to_string()
    } else {
        "–".to_owned()
    }
}

/// Puts section 2 into words.
pub fn conditions(assessment: &Assessment, words: &Words) -> Conditions {
    let procedure = &assessment.campaign.procedure;
    let mut rows: Vec<ConditionRow> = assessment
        .limits
        .rows
        .iter()
        .map(|limit| condition_row(assessment, limit))
        .collect();
    for reason in [Reason::ReadingGap, Reason::ExcludedByTester] {
        let intervals = assessment.intervals.iter();
        let count = intervals
            .filter(|interval| interval.reasons.contains(&reason))
            .count();
        if count > 0 {
            rows.push(ConditionRow {
                what: reason.describe().to_owned(),
                limit: "–".to_owned(),
                standing: "–".to_owned(),
                observed: "–".to_owned(),
                code: reason.code().to_owned(),
                set_aside: count.to_string(),
                changed: false,
            });
        }
    }
    let mut notes = vec![
        format!("Limits follow ASAE {procedure}, in our own words. They were set down from knowledge of the practice, without a copy of the standard at hand; where much depends on one, hold it against the standard."),
        "Observed: lowest to highest over all intervals, used or set aside. An interval that breaks several limits counts for each of them.".to_owned(),
        "The ± 5 % on the load and the 540 to 660 s that an interval may last are common practice, no published source.".to_owned(),
        "Where R² is too low the practice is content with a note; this report then withholds \"conforms\", which is stricter.".to_owned(),
    ];
    if assessment.limits.rows.iter().any(|row| row.changed) {
        notes.push(
            "Limits marked \"own\" are the campaign's and deviate from the practice.".to_owned(),
        );
    }
    Conditions { rows, notes }
}

fn condition_row(assessment: &Assessment, limit: &Limit) -> ConditionRow {
    let is_reason = Reason::ALL.iter().any(|reason| reason.code() == limit.code);
    let observed = observed(assessment, limit);
    let set_aside = assessment.count_breaking(limit);
    ConditionRow {
        what: limit.what.to_owned(),
        limit: spoken_limit(limit),
        standing: if limit.changed {
            format!("own, for a {}", limit.standing.word())
        } else {
            limit.standing.word().to_owned()
        },
        set_aside: if is_reason {
            count_or_dash(set_aside, observed.is_some())
        } else {
            "–".to_owned()
        },
        observed: observed.unwrap_or_else(|| nothing_seen(assessment.intervals.len())),
        code: limit.code.to_owned(),
        changed: limit.changed,
    }
}

fn spoken_limit(limit: &Limit) -> String {
    let sign = match limit.allowed {
        Allowed::AtLeast => "≥ ",
        Allowed::AtMost => "≤ ",
        Allowed::About => "",
    };
    match limit.unit {
        "h" => format!("{sign}{}", clock_from_hours(limit.value)),
        "intervals" | "days" | "" => format!("{sign}{}", short(limit.value)),
        unit if limit.allowed == Allowed::About => {
            format!(
                "{} {unit} ± {} %",
                short(limit.value),
                short(LOAD_TOLERANCE * 100.0)
            )
        }
        unit => format!("{sign}{} {unit}", short(limit.value)),
    }
}

fn observed(assessment: &Assessment, limit: &Limit) -> Option<String> {
    match limit.code {
        _ if limit.key == "wind_gust_m_s" => longest_gust(assessment),
        "load-off" => spread(
            assessment.runs.iter().map(|run| run.load_kg_m2),
            2,
            limit.unit,
        ),
        "too-few-intervals" => Some(assessment.used().count().to_string()),
        "too-few-days" => Some(assessment.used_dates().len().to_string()),
        "r-squared-low" => assessment
            .line
            .and_then(|line| Some(fixed(line.r_squared?, 3)))
            .or_else(|| Some("no line".to_owned())),
        _ => {
            let intervals = assessment.intervals.iter();
            let values = intervals
                .filter_map(|interval| observe(interval, limit, assessment.boiling_point_c));
            spoken_spread(values, limit.unit)
        }
    }
}

/// The longest time that the wind stayed over the gust limit, in any run.
fn longest_gust(assessment: &Assessment) -> Option<String> {
    let measured = assessment
        .runs
        .iter()
        .filter(|run| run.readings.wind_m_s.is_some());
    let longest_s = measured
        .map(|run| run.longest_gust_s)
        .fold(None, |longest: Option<f64>, s| {
            Some(longest.map_or(s, |longest| longest.max(s)))
        })?;
    Some(match longest_s {
        0.0 => "never".to_owned(),
        seconds => format!("for {} at most", spoken_duration(seconds)),
    })
}

/// Why nothing was seen: there was no interval, or no reading in any.
fn nothing_seen(intervals: usize) -> String {
    if intervals == 0 {
        "no interval"
    } else {
        "not measured"
    }
    .to_owned()
}

fn spoken_spread(values: impl Iterator<Item = f64>, unit: &str) -> Option<String> {
    match unit {
        "h" => extremes(values)
            .map(|(low, high)| format!("{} – {}", clock_from_hours(low), clock_from_hours(high))),
        "W/m²" => spread(values, 0, unit),
        unit => spread(values, 1, unit),
    }
}

fn extremes(values: impl Iterator<Item = f64>) -> Option<(f64, f64)> {
    values.fold(None, |seen, value| match seen {
        None => Some((value, value)),
        Some((low, high)) => Some((low.min(value), high.max(value))),
    })
}

fn spread(values: impl Iterator<Item = f64>, decimals: usize, unit: &str) -> Option<String> {
    extremes(values).map(|(low, high)| format!("{} {unit}", range(low, high, decimals)))
}
