//! Each limit, what was observed, and how many intervals it set aside.

use serde::Serialize;

use crate::language::{
    Message, Phrase, Words, clock, duration, fixed, joined, range, short, spread_clock,
};
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::intervals::Interval;
use crate::procedure::limits::{Allowed, LOAD_TOLERANCE, Limit, with_unit};
use crate::procedure::screen::{Reason, observe};

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

/// Conditions on page one: the message of each, and the keys of its lower and upper limit.
const BRIEF: [(&str, &[&str]); 7] = [
    (
        "brief-irradiance",
        &["irradiance_min_w_m2", "irradiance_max_w_m2"],
    ),
    ("brief-irradiance-change", &["irradiance_range_w_m2"]),
    ("brief-wind", &["wind_mean_max_m_s"]),
    ("brief-ambient", &["ambient_min_c", "ambient_max_c"]),
    (
        "brief-water-above",
        &["water_above_ambient_k", "water_min_c"],
    ),
    (
        "brief-water-below",
        &["water_below_boiling_k", "water_max_c"],
    ),
    (
        "brief-solar-time",
        &["solar_time_start_h", "solar_time_end_h"],
    ),
];

/// The conditions in brief, as the used intervals saw them.
pub fn brief(assessment: &Assessment, words: &Words) -> Vec<BriefRow> {
    BRIEF
        .iter()
        .map(|(name, keys)| brief_row(assessment, name, keys, words))
        .collect()
}

fn brief_row(
    assessment: &Assessment,
    name: &'static str,
    keys: &[&str],
    words: &Words,
) -> BriefRow {
    let rows = assessment.limits.rows.iter();
    let limits: Vec<&Limit> = rows.filter(|limit| keys.contains(&limit.key)).collect();
    let limit = match limits.as_slice() {
        [low, high] if low.unit == "h" => words.say(spread_clock(low.value, high.value)),
        [low, high] => {
            let numbers = joined([short(low.value), short(high.value)], " – ");
            words.say(with_unit(numbers, low.unit))
        }
        others => {
            let others = others.iter();
            others.map(|limit| words.say(spoken_limit(limit))).collect()
        }
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
        what: words.say(match limits.as_slice() {
            [fixed] if fixed.unit == "°C" => message!("brief-water-fixed"),
            _ => Message::new(name),
        }),
        limit,
        observed: words.say(observed.unwrap_or_else(|| nothing_seen(assessment.used().count()))),
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
        .map(|limit| condition_row(assessment, limit, words))
        .collect();
    for reason in [Reason::ReadingGap, Reason::ExcludedByTester] {
        let intervals = assessment.intervals.iter();
        let count = intervals
            .filter(|interval| interval.reasons.contains(&reason))
            .count();
        if count > 0 {
            rows.push(ConditionRow {
                what: words.say(reason.describe()),
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
        message!("conditions-source", procedure = procedure),
        message!("conditions-observed"),
        message!("conditions-common-practice"),
        message!("conditions-r-squared"),
    ];
    if assessment.limits.rows.iter().any(|row| row.changed) {
        notes.push(message!("conditions-own"));
    }
    let notes = notes.into_iter().map(|note| words.say(note)).collect();
    Conditions { rows, notes }
}

fn condition_row(assessment: &Assessment, limit: &Limit, words: &Words) -> ConditionRow {
    let is_reason = Reason::ALL.iter().any(|reason| reason.code() == limit.code);
    let observed = observed(assessment, limit);
    let set_aside = assessment.count_breaking(limit);
    ConditionRow {
        what: words.say(limit.what()),
        limit: words.say(spoken_limit(limit)),
        standing: words.say(if limit.changed {
            limit.standing.describe_own()
        } else {
            limit.standing.describe()
        }),
        set_aside: if is_reason {
            count_or_dash(set_aside, observed.is_some())
        } else {
            "–".to_owned()
        },
        observed: words.say(observed.unwrap_or_else(|| nothing_seen(assessment.intervals.len()))),
        code: limit.code.to_owned(),
        changed: limit.changed,
    }
}

fn spoken_limit(limit: &Limit) -> Phrase {
    let amount = match limit.unit {
        "h" => clock(limit.value),
        "intervals" | "days" | "" => short(limit.value),
        _ => limit.amount(),
    };
    match limit.allowed {
        Allowed::AtLeast => joined(["≥".into(), amount], " "),
        Allowed::AtMost => joined(["≤".into(), amount], " "),
        Allowed::About => message!(
            "conditions-about",
            load = amount,
            tolerance = short(LOAD_TOLERANCE * 100.0)
        )
        .into(),
    }
}

fn observed(assessment: &Assessment, limit: &Limit) -> Option<Phrase> {
    match limit.code {
        _ if limit.key == "wind_gust_m_s" => longest_gust(assessment).map(Phrase::from),
        "load-off" => spread(
            assessment.runs.iter().map(|run| run.load_kg_m2),
            2,
            limit.unit,
        ),
        "too-few-intervals" => Some(assessment.used().count().into()),
        "too-few-days" => Some(assessment.used_dates().len().into()),
        "r-squared-low" => assessment
            .line
            .and_then(|line| Some(fixed(line.r_squared?, 3)))
            .or_else(|| Some(message!("conditions-no-line").into())),
        _ => {
            let intervals = assessment.intervals.iter();
            let values = intervals
                .filter_map(|interval| observe(interval, limit, assessment.boiling_point_c));
            spoken_spread(values, limit.unit)
        }
    }
}

/// The longest time that the wind stayed over the gust limit, in any run.
fn longest_gust(assessment: &Assessment) -> Option<Message> {
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
        0.0 => message!("conditions-never"),
        seconds => message!("conditions-gust", time = duration(seconds)),
    })
}

/// Why nothing was seen: there was no interval, or no reading in any.
fn nothing_seen(intervals: usize) -> Phrase {
    match intervals {
        0 => message!("conditions-no-interval").into(),
        _ => message!("conditions-not-measured").into(),
    }
}

fn spoken_spread(values: impl Iterator<Item = f64>, unit: &'static str) -> Option<Phrase> {
    match unit {
        "h" => extremes(values).map(|(low, high)| spread_clock(low, high)),
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

fn spread(
    values: impl Iterator<Item = f64>,
    decimals: usize,
    unit: &'static str,
) -> Option<Phrase> {
    extremes(values).map(|(low, high)| with_unit(range(low, high, decimals), unit))
}
