//! Each limit, what was observed, and how many intervals it set aside.

use serde::Serialize;

use crate::language::{
    Message, Phrase, Words, clock, duration, fixed, joined, range, short, spread_clock,
};
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::limit::{Allowed, percent, with_unit};
use crate::procedure::s580::Limits;
use crate::procedure::s580::intervals::Interval;
use crate::procedure::s580::limits::{Breach, LimitKey, S580Limit};
use crate::procedure::s580::reason::Reason;
use crate::procedure::s580::screen::observe;
use crate::units::told_below;

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
    pub observed: String,
    pub set_aside: String,
}

/// Conditions on page one: the message of each, and the keys of its lower and upper limit.
pub(super) const BRIEF: &[(&str, &[LimitKey])] = &[
    (
        "brief-irradiance",
        &[LimitKey::IrradianceMin, LimitKey::IrradianceMax],
    ),
    ("brief-irradiance-change", &[LimitKey::IrradianceRange]),
    ("brief-wind", &[LimitKey::WindMean]),
    (
        "brief-ambient",
        &[LimitKey::AmbientMin, LimitKey::AmbientMax],
    ),
    (
        "brief-water-above",
        &[LimitKey::WaterAboveAmbient, LimitKey::WaterMin],
    ),
    (
        "brief-water-below",
        &[LimitKey::WaterBelowBoiling, LimitKey::WaterMax],
    ),
    (
        "brief-solar-time",
        &[LimitKey::SolarTimeStart, LimitKey::SolarTimeEnd],
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
    keys: &[LimitKey],
    words: &Words,
) -> BriefRow {
    let rows = assessment.s580.limits.rows.iter();
    let limits: Vec<&S580Limit> = rows.filter(|limit| keys.contains(&limit.key)).collect();
    let is_aside = |interval: &&Interval| is_set_aside_by(interval, &limits);
    let set_aside = assessment.s580.intervals.iter().filter(is_aside).count();
    let values = limits.iter().flat_map(|limit| {
        assessment.s580.used().filter_map(|interval| {
            observe(
                &interval.measured,
                limit.key,
                assessment.tested.boiling_point_c,
            )
        })
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
        observed: words
            .say(observed.unwrap_or_else(|| nothing_seen(assessment.s580.used().count()))),
        set_aside: count_or_dash(set_aside, is_observed),
    }
}

/// Whether one of some limits set an interval aside.
pub(super) fn is_set_aside_by(interval: &Interval, limits: &[&S580Limit]) -> bool {
    let reasons = interval.reasons().iter();
    let mut breaches = reasons.map(|reason| Breach::SetsAside(*reason));
    breaches.any(|breach| limits.iter().any(|limit| limit.key.breach() == breach))
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
    let procedure = &assessment.tested.campaign.procedure;
    let mut rows: Vec<ConditionRow> = assessment
        .s580
        .limits
        .rows
        .iter()
        // The load's own row says how far it may be off.
        .filter(|limit| limit.key != LimitKey::LoadTolerance)
        .map(|limit| condition_row(assessment, limit, words))
        .collect();
    for reason in [Reason::ReadingGap, Reason::ExcludedByTester] {
        let intervals = assessment.s580.intervals.iter();
        let count = intervals
            .filter(|interval| interval.reasons().contains(&reason))
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
    let limits = &assessment.s580.limits;
    let mut notes = vec![
        message!("conditions-source", procedure = procedure),
        message!("conditions-observed"),
        common_practice(limits),
        message!("conditions-r-squared"),
    ];
    if limits.rows.iter().any(|row| row.changed) {
        notes.push(message!("conditions-own"));
    }
    notes.extend(limits.guard.map(|_| message!("conditions-guard")));
    let notes = notes.into_iter().map(|note| words.say(note)).collect();
    Conditions { rows, notes }
}

/// What of the limits is common practice.
fn common_practice(limits: &Limits) -> Message {
    let (shortest_s, longest_s) = limits.interval().ends_s();
    let said = if limits.is_own(LimitKey::LoadTolerance) {
        message!("conditions-common-practice-interval")
    } else {
        message!(
            "conditions-common-practice",
            tolerance = percent(limits.load_tolerance())
        )
    };
    said.with("shortest", short(shortest_s))
        .with("longest", short(longest_s))
}

fn condition_row(assessment: &Assessment, limit: &S580Limit, words: &Words) -> ConditionRow {
    let breach = limit.key.breach();
    let is_reason = matches!(breach, Breach::SetsAside(_));
    let observed = observed(assessment, limit);
    let set_aside = assessment
        .s580
        .count_breaking(limit, assessment.tested.boiling_point_c);
    let is_own = match limit.key {
        LimitKey::Load => limit.changed || assessment.s580.limits.is_own(LimitKey::LoadTolerance),
        _ => limit.changed,
    };
    ConditionRow {
        what: words.say(limit.what()),
        limit: words.say(spoken_limit(limit)),
        standing: words.say(if is_own {
            limit.standing.describe_own()
        } else {
            limit.standing.describe()
        }),
        set_aside: if is_reason {
            count_or_dash(set_aside, observed.is_some())
        } else {
            "–".to_owned()
        },
        observed: words
            .say(observed.unwrap_or_else(|| nothing_seen(assessment.s580.intervals.len()))),
        code: breach.code().to_owned(),
        changed: is_own,
    }
}

fn spoken_limit(limit: &S580Limit) -> Phrase {
    let amount = match limit.unit {
        "h" => clock(limit.value),
        _ => limit.amount(),
    };
    match limit.allowed {
        Allowed::AtLeast => joined(["≥".into(), amount], " "),
        Allowed::AtMost => joined(["≤".into(), amount], " "),
        Allowed::Within(share) => message!(
            "conditions-about",
            load = amount,
            tolerance = percent(share)
        )
        .into(),
    }
}

fn observed(assessment: &Assessment, limit: &S580Limit) -> Option<Phrase> {
    match limit.key {
        LimitKey::WindGust => longest_gust(assessment).map(Phrase::from),
        LimitKey::Load => spread(
            assessment.tested.runs.iter().map(|run| run.load_kg_m2),
            2,
            limit.unit,
        ),
        LimitKey::Intervals => Some(assessment.s580.used().count().into()),
        LimitKey::Days => Some(assessment.s580.dates.len().into()),
        LimitKey::RSquared => assessment
            .s580
            .line()
            .and_then(|line| Some(r_squared_against(limit, line.r_squared?)))
            .or_else(|| Some(message!("conditions-no-line").into())),
        _ => {
            let intervals = assessment.s580.intervals.iter();
            let values = intervals.filter_map(|interval| {
                observe(
                    &interval.measured,
                    limit.key,
                    assessment.tested.boiling_point_c,
                )
            });
            spoken_spread(values, limit.unit)
        }
    }
}

/// R² with three decimals, or as many as show that it is below its limit.
fn r_squared_against(limit: &S580Limit, r_squared: f64) -> Phrase {
    if limit.allows(r_squared) {
        return fixed(r_squared, 3);
    }
    let (told, decimals) = told_below(r_squared, limit.value, 3);
    fixed(told, decimals)
}

/// The longest time that the wind stayed over the gust limit, in any run.
fn longest_gust(assessment: &Assessment) -> Option<Message> {
    let runs = assessment.tested.runs.iter();
    let measured = runs
        .zip(&assessment.s580.screenings)
        .filter(|(run, _)| run.readings.wind_m_s.is_some());
    let longest_s = measured
        .map(|(_, screening)| screening.longest_gust_s)
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
        "W/m²" | "s" => spread(values, 0, unit),
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
