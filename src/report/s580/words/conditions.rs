//! Each limit, what was observed, and how many intervals it set aside.

use serde::Serialize;

use crate::language::{
    Message, Phrase, Words, duration, fixed, joined, range, short, spread_clock,
};
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::limit::{Allowed, percent, with_unit};
use crate::procedure::s580::intervals::Interval;
use crate::procedure::s580::limits::{Breach, LimitKey, S580Limit};
use crate::procedure::s580::reason::Reason;
use crate::procedure::s580::screen::observe;
use crate::report::s580::lanes::Lane;
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
    /// By which its lane below the runs and its column among the intervals is called; empty
    /// where it sets no interval aside.
    pub short_name: String,
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
    let what = match limits.as_slice() {
        [fixed] if fixed.key == LimitKey::WaterMin => message!("brief-water-lowest"),
        [fixed] if fixed.key == LimitKey::WaterMax => message!("brief-water-highest"),
        _ => Message::new(name),
    };
    let is_of_sun = keys.contains(&LimitKey::IrradianceMin);
    let what = match is_of_sun && assessment.tested.estimates_irradiance() {
        true => message!("brief-estimated", what = what),
        false => what,
    };
    BriefRow {
        what: words.say(what),
        observed: words.say(observed.unwrap_or_else(|| nothing_used(assessment, &limits))),
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
    // The load's own row says how far it may be off.
    let limits = assessment.s580.limits.rows.iter();
    let limits = limits.filter(|limit| limit.key != LimitKey::LoadTolerance);
    let limits: Vec<&S580Limit> = limits.collect();
    let mut rows = Vec::new();
    let mut rest = limits.as_slice();
    while let [limit, after @ ..] = rest {
        let upper = after.first().filter(|upper| are_ends(limit, upper));
        rows.push(match upper {
            Some(upper) => span_row(assessment, limit, upper, words),
            None => condition_row(assessment, limit, words),
        });
        rest = &after[usize::from(upper.is_some())..];
    }
    let without_limit = WITHOUT_LIMIT.iter();
    rows.extend(without_limit.filter_map(|lane| row_without_limit(assessment, *lane, words)));
    let limits = &assessment.s580.limits;
    let own = limits.rows.iter().any(|row| row.changed);
    let notes = [message!("conditions-observed")]
        .into_iter()
        .chain([message!("conditions-r-squared")])
        .chain(own.then(|| message!("conditions-own")))
        .chain(limits.guard.map(|_| message!("conditions-guard")));
    let notes = notes.map(|note| words.say(note)).collect();
    Conditions { rows, notes }
}

/// What is not a limit of the practice and yet keeps intervals from the line.
const WITHOUT_LIMIT: &[Lane] = &[
    Lane::Aside(Reason::ReadingGap),
    Lane::Aside(Reason::ExcludedByTester),
    Lane::Aside(Reason::NotCloudless),
    Lane::NotNormalised,
];

/// Whether two limits are the ends of one span, of which one row can tell: they set aside for
/// the same reason, and are alike in all but the side and the number.
fn are_ends(lower: &S580Limit, upper: &S580Limit) -> bool {
    let sides = (lower.allowed, upper.allowed) == (Allowed::AtLeast, Allowed::AtMost);
    let is_span = matches!(
        (lower.key, upper.key),
        (LimitKey::AmbientMin, LimitKey::AmbientMax)
            | (LimitKey::SolarTimeStart, LimitKey::SolarTimeEnd)
    );
    is_span && sides && (lower.standing, lower.changed) == (upper.standing, upper.changed)
}

/// The row of a lower and an upper limit together.
fn span_row(
    assessment: &Assessment,
    lower: &S580Limit,
    upper: &S580Limit,
    words: &Words,
) -> ConditionRow {
    let values = [lower, upper]
        .into_iter()
        .flat_map(|limit| values(assessment, limit.key));
    let observed = spoken_spread(values, lower.unit);
    let limit = match lower.unit {
        "h" => spread_clock(lower.value, upper.value),
        unit => {
            let numbers = joined([short(lower.value), short(upper.value)], " – ");
            with_unit(numbers, unit)
        }
    };
    let of_lower = condition_row(assessment, lower, words);
    let aside = assessment.s580.intervals.iter();
    let aside = aside.filter(|interval| lane_of(lower).is_some_and(|lane| lane.holds(interval)));
    ConditionRow {
        what: words.say(match lower.key {
            LimitKey::SolarTimeStart => message!("limit-solar-time"),
            _ => lower.what(),
        }),
        limit: words.say(limit),
        set_aside: count_or_dash(aside.count(), observed.is_some()),
        observed: words
            .say(observed.unwrap_or_else(|| nothing_seen(assessment.s580.intervals.len()))),
        ..of_lower
    }
}

/// The lane in which stand those that a limit sets aside.
fn lane_of(limit: &S580Limit) -> Option<Lane> {
    match limit.key.breach() {
        Breach::SetsAside(reason) => Some(Lane::Aside(reason)),
        Breach::Finds(_) | Breach::FormsNone => None,
    }
}

/// The row of what sets aside without a limit, if it does.
fn row_without_limit(assessment: &Assessment, lane: Lane, words: &Words) -> Option<ConditionRow> {
    let intervals = assessment.s580.intervals.iter();
    let count = intervals.filter(|interval| lane.holds(interval)).count();
    (count > 0).then(|| ConditionRow {
        what: words.say(lane.describe()),
        short_name: words.say(lane.name()),
        limit: "–".to_owned(),
        standing: "–".to_owned(),
        observed: "–".to_owned(),
        code: lane.code().to_owned(),
        set_aside: count.to_string(),
        changed: false,
    })
}

fn condition_row(assessment: &Assessment, limit: &S580Limit, words: &Words) -> ConditionRow {
    let lane = lane_of(limit);
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
        short_name: lane.map_or_else(String::new, |lane| words.say(lane.name())),
        limit: words.say(spoken_limit(limit)),
        standing: words.say(if is_own {
            limit.standing.describe_own()
        } else {
            limit.standing.describe()
        }),
        set_aside: if lane.is_some() {
            count_or_dash(set_aside, observed.is_some())
        } else {
            "–".to_owned()
        },
        observed: words
            .say(observed.unwrap_or_else(|| nothing_seen(assessment.s580.intervals.len()))),
        code: limit.key.breach().code().to_owned(),
        changed: is_own,
    }
}

/// A limit in words: `≥ 450 W/m²`.
pub fn spoken_limit(limit: &S580Limit) -> Phrase {
    match limit.allowed {
        Allowed::AtLeast | Allowed::AtMost => limit.bound(),
        Allowed::Within(share) => message!(
            "conditions-about",
            load = limit.amount(),
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
        key => spoken_spread(values(assessment, key), limit.unit),
    }
}

/// What a limit is held against, in each interval where it was measured.
fn values(assessment: &Assessment, key: LimitKey) -> impl Iterator<Item = f64> {
    let boiling_point_c = assessment.tested.boiling_point_c;
    let intervals = assessment.s580.intervals.iter();
    intervals.filter_map(move |interval| observe(&interval.measured, key, boiling_point_c))
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

/// Why the used intervals saw nothing: none is used, though there are some that had it measured;
/// else as for all intervals.
fn nothing_used(assessment: &Assessment, limits: &[&S580Limit]) -> Phrase {
    let is_measured = limits
        .iter()
        .any(|limit| values(assessment, limit.key).next().is_some());
    match assessment.s580.used().next() {
        None if is_measured => message!("conditions-none-used").into(),
        _ => nothing_seen(assessment.s580.intervals.len()),
    }
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
