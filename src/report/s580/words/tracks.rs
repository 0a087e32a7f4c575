//! The conditions of page one as tracks: a scale each, with what is allowed and what was seen.

use super::conditions::{BRIEF, brief, is_set_aside_by};
use crate::language::{PairedUnit, Words, clock, paired_number, short};
use crate::procedure::Assessment;
use crate::procedure::limit::Allowed;
use crate::procedure::s580::limits::{LimitKey, S580Limit};
use crate::procedure::s580::screen::observe;

/// How far a scale goes beyond two limits, as a share of what lies between them; beyond an upper
/// limit alone, as a multiple of it; and beyond a lower limit alone.
const BEYOND_TWO: f64 = 0.35;
const BEYOND_HIGHEST: f64 = 1.5;
const BEYOND_LOWEST: f64 = 4.0;

/// One condition on its scale, from 0 to 1.
pub struct Track {
    pub name: String,
    /// From where to where the standard, or the campaign, allows.
    pub allowed: (f64, f64),
    /// Where each limit lies, and its value.
    pub limits: Vec<(f64, String)>,
    /// A limit is the campaign's own.
    pub is_own: bool,
    /// From where to where the used intervals went; `None` where none was measured.
    pub seen: Option<(f64, f64)>,
    pub observed: String,
    /// Intervals set aside.
    pub count: usize,
    /// The same in words: a dash where nothing could set aside.
    pub set_aside: String,
}

/// The tracks, in the order of the conditions in brief.
pub fn tracks(assessment: &Assessment, words: &Words) -> Vec<Track> {
    let rows = brief(assessment, words).into_iter().zip(BRIEF);
    rows.filter_map(|(row, (_, keys))| {
        let all = assessment.s580.limits.rows.iter();
        let limits: Vec<&S580Limit> = all.filter(|limit| keys.contains(&limit.key)).collect();
        let seen = seen(assessment, &limits);
        let (lowest, highest) = scale(&limits, seen)?;
        let share = |value: f64| (value - lowest) / (highest - lowest);
        let end = |is_end: fn(&Allowed) -> bool| {
            let mut ends = limits.iter().filter(|limit| is_end(&limit.allowed));
            ends.next().map(|limit| share(limit.value))
        };
        Some(Track {
            name: row.what,
            allowed: (
                end(|allowed| matches!(allowed, Allowed::AtLeast)).unwrap_or(0.0),
                end(|allowed| matches!(allowed, Allowed::AtMost)).unwrap_or(1.0),
            ),
            limits: limits
                .iter()
                .map(|limit| (share(limit.value), spoken(limit, words)))
                .collect(),
            is_own: limits.iter().any(|limit| limit.changed),
            seen: seen.map(|(low, high)| (share(low), share(high))),
            observed: row.observed,
            count: assessment
                .s580
                .intervals
                .iter()
                .filter(|interval| is_set_aside_by(interval, &limits))
                .count(),
            set_aside: row.set_aside,
        })
    })
    .collect()
}

fn spoken(limit: &S580Limit, words: &Words) -> String {
    words.say(match limit.unit {
        "h" => clock(limit.value),
        "°C" => paired_number(short(limit.value), Some(PairedUnit::Celsius)),
        "K" => paired_number(short(limit.value), Some(PairedUnit::Kelvin)),
        "m/s" => paired_number(short(limit.value), Some(PairedUnit::MetrePerSecond)),
        _ => short(limit.value),
    })
}

/// Lowest and highest value of the used intervals, in the limits' unit.
fn seen(assessment: &Assessment, limits: &[&S580Limit]) -> Option<(f64, f64)> {
    let of_limit = |key: LimitKey| {
        let used = assessment.s580.used();
        used.filter_map(move |interval| {
            observe(&interval.measured, key, assessment.tested.boiling_point_c)
        })
    };
    let values = limits.iter().flat_map(|limit| of_limit(limit.key));
    values.fold(None, |ends: Option<(f64, f64)>, value| {
        let (low, high) = ends.unwrap_or((value, value));
        Some((low.min(value), high.max(value)))
    })
}

/// The ends of a scale that shows the limits and what was seen.
fn scale(limits: &[&S580Limit], seen: Option<(f64, f64)>) -> Option<(f64, f64)> {
    let (lowest, highest) = match limits {
        [low, high] => {
            let room = BEYOND_TWO * (high.value - low.value);
            (low.value - room, high.value + room)
        }
        [only] if matches!(only.allowed, Allowed::AtLeast) => (0.0, BEYOND_LOWEST * only.value),
        [only] => (0.0, BEYOND_HIGHEST * only.value),
        _ => return None,
    };
    let (low, high) = seen.unwrap_or((lowest, highest));
    let ends = (lowest.min(low), highest.max(high));
    (ends.0 < ends.1).then_some(ends)
}
