//! What a comparison comes to: its title.

use serde::Serialize;

use super::calls::Calls;
use super::differences::pair_sentence;
use super::spoken::spoken;
use super::{beside, causes, differences};
use crate::comparison::Comparison;
use crate::comparison::pair::Pair;
use crate::language::{Message, Phrase, Words, fixed, joined};
use crate::message;
use crate::procedure::finding::Level;
use crate::units::decimals_for;

/// The verdict.
#[derive(Debug, Clone, Serialize)]
pub struct Verdict {
    pub title: String,
    /// The difference of two, large; `None` where it is not of two.
    pub lead: Option<Lead>,
    pub sentences: Vec<String>,
}

/// A difference as a large number.
#[derive(Debug, Clone, Serialize)]
pub struct Lead {
    /// `+30`.
    pub value: String,
    pub unit: &'static str,
    /// `18 to 42`.
    pub interval: String,
    /// What it is of.
    pub label: String,
    /// It is shown, however many pairs were looked at.
    pub is_shown: bool,
}

/// Whether one of two ranks is shown to give more: 1 the first, −1 the second, 0 neither.
pub fn shown_sign(comparison: &Comparison, one: usize, other: usize) -> i8 {
    let shown = comparison.between(one, other).filter(|(pair, _)| pair.is_shown());
    let value = shown.and_then(|(pair, sign)| Some(pair.difference.decisive()?.value * sign));
    value.map_or(0, |value| if value > 0.0 { 1 } else { -1 })
}

/// Puts the verdict into words.
pub fn verdict(comparison: &Comparison, calls: &Calls, words: &Words) -> Verdict {
    let say = |phrases: Vec<Phrase>| phrases.into_iter().map(|one| words.say(one)).collect();
    let pair = match comparison.pairs.as_slice() {
        [only] => Some(only),
        _ => None,
    };
    Verdict {
        title: words.say(title(comparison, calls, words)),
        lead: pair.and_then(|pair| lead(comparison, pair, calls, words)),
        sentences: say(sentences(comparison, calls)),
    }
}

fn title(comparison: &Comparison, calls: &Calls, words: &Words) -> Phrase {
    let ranked = &comparison.ranking.ranked;
    match (ranked.as_slice(), comparison.baseline) {
        ([], _) => beside::title(comparison, calls),
        ([only], _) => message!(
            "verdict-title-only",
            name = calls.name(*only),
            power = power(comparison, *only, words)
        )
        .into(),
        ([one, two], _) => of_two(comparison, calls, [*one, *two], words),
        (_, Some(base)) if ranked.contains(&base) => against(comparison, calls, base, words).into(),
        ([top, ..], _) => of_many(comparison, calls, *top, words).into(),
    }
}

/// `161 ± 14 W`, with the level where it falls short.
fn power(comparison: &Comparison, place: usize, words: &Words) -> Phrase {
    let standing = &comparison.standings[place];
    let Some(found) = standing.power else {
        return message!("ratings-no-rating").into();
    };
    let decimals = decimals_for(found.half_width_w);
    let said = message!(
        "verdict-power",
        power = fixed(found.value_w, decimals),
        half_width = fixed(found.half_width_w, decimals)
    );
    // A value and its unit stay on one line.
    let said = words.say(said).replace(' ', "\u{a0}");
    match standing.level {
        Level::Indicative => message!("verdict-power-indicative", power = said).into(),
        _ => said.into(),
    }
}

/// Two: which gives more, and by how much; or that it is not told.
fn of_two(
    comparison: &Comparison,
    calls: &Calls,
    [one, two]: [usize; 2],
    words: &Words,
) -> Phrase {
    let names = match shown_sign(comparison, 0, 1) {
        -1 => [two, one],
        _ => [one, two],
    };
    let [first, second] = names.map(|place| calls.name(place));
    let decisive = comparison.between(0, 1);
    let decisive = decisive.and_then(|(pair, _)| pair.difference.decisive());
    match (shown_sign(comparison, 0, 1), decisive) {
        (0, _) | (_, None) => message!("verdict-title-two-alike", first = first, second = second),
        (_, Some(weighed)) => {
            let size = fixed(weighed.value.abs(), decimals_for(weighed.expanded()));
            let size = words.say(joined([size, "W".into()], "\u{a0}"));
            message!(
                "verdict-title-two",
                first = first,
                second = second,
                difference = size
            )
        }
    }
    .into()
}

/// Many: which gives most, or how many lead.
fn of_many(comparison: &Comparison, calls: &Calls, top: usize, words: &Words) -> Message {
    let others = 1..comparison.ranking.ranked.len();
    let signs: Vec<i8> = others.map(|rank| shown_sign(comparison, 0, rank)).collect();
    let count = |sign: i8| signs.iter().filter(|one| **one == sign).count();
    let second = |sign: i8| {
        let rank = signs.iter().position(|one| *one == sign).unwrap_or(0) + 1;
        calls.name(comparison.ranking.ranked[rank])
    };
    let said = match (count(-1), count(0)) {
        (0, 0) => message!("verdict-title-most"),
        (0, 1) => message!("verdict-title-leads-one", second = second(0)),
        (0, alike) => message!("verdict-title-leads", others = alike),
        // By the heat balances, where irradiance differed.
        (1, _) => message!("verdict-title-beaten-by-one", second = second(-1)),
        (more, _) => message!("verdict-title-beaten", others = more),
    };
    said.with("name", calls.name(top))
        .with("power", power(comparison, top, words))
}

/// A baseline: how many give more and less.
fn against(comparison: &Comparison, calls: &Calls, base: usize, words: &Words) -> Message {
    let pairs = comparison.pairs.iter();
    let values = pairs.map(|pair| {
        let shown = Some(pair).filter(|pair| pair.is_shown());
        let weighed = shown.and_then(|pair| pair.difference.decisive());
        weighed.map_or(0.0, |weighed| weighed.value)
    });
    let values: Vec<f64> = values.collect();
    let count = |is: &dyn Fn(f64) -> bool| values.iter().filter(|value| is(**value)).count();
    message!(
        "verdict-title-baseline",
        name = calls.name(base),
        power = power(comparison, base, words),
        more = count(&|value| value > 0.0),
        less = count(&|value| value < 0.0),
        alike = count(&|value| value == 0.0)
    )
}

/// The difference of the only pair.
fn lead(comparison: &Comparison, pair: &Pair, calls: &Calls, words: &Words) -> Option<Lead> {
    let told = comparison.told(pair.difference.first, pair.difference.second);
    let weighed = pair.difference.decisive()?;
    let (value, interval) = spoken(weighed, told.sign);
    let label = match pair.difference.conditions_differ {
        true => message!("verdict-lead-common"),
        false => message!("verdict-lead"),
    };
    let label = label
        .with("minuend", calls.name(told.minuend))
        .with("subtrahend", calls.name(told.subtrahend));
    Some(Lead {
        value: words.say(value),
        unit: "W",
        interval: words.say(interval),
        label: words.say(label),
        is_shown: pair.is_shown(),
    })
}

fn sentences(comparison: &Comparison, calls: &Calls) -> Vec<Phrase> {
    let mut sentences: Vec<Phrase> = Vec::new();
    match comparison.pairs.as_slice() {
        [] => {}
        [only] => {
            sentences.push(pair_sentence(comparison, only, calls));
            sentences.push(causes::cause(comparison, only, calls));
        }
        pairs => {
            let shown = pairs.iter().filter(|pair| pair.is_shown()).count();
            sentences.push(message!("verdict-in-all", shown = shown, pairs = pairs.len()).into());
            sentences.extend(differences::leaders_needed(comparison, calls));
        }
    }
    if comparison.pairs.is_empty() {
        sentences.extend(beside::sentences(comparison, calls));
    }
    let mut campaigns = comparison.campaigns.iter();
    if campaigns.all(|one| one.tested.heats_no_water()) {
        sentences.push(message!("headline-no-water-means").into());
    }
    sentences
}
