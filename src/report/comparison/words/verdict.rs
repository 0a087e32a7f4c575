//! What a comparison comes to: its title.

use serde::Serialize;

use super::calls::Calls;
use super::differences::pair_sentence;
use super::spoken::spoken;
use super::told::{Told, told};
use super::{beside, causes, differences};
use crate::comparison::Comparison;
use crate::comparison::pair::{Pair, compared};
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
        (_, Some(base)) if !ranked.contains(&base) => beside::title(comparison, calls),
        ([one, two], _) => of_two(comparison, calls, [*one, *two], words),
        (_, Some(base)) => against(comparison, calls, base, words).into(),
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
fn of_two(comparison: &Comparison, calls: &Calls, [one, two]: [usize; 2], words: &Words) -> Phrase {
    let told = told(comparison, 0, 1);
    let [first, second] = match told {
        Told::Less => [two, one],
        _ => [one, two],
    };
    let decisive = comparison.between(0, 1);
    let decisive = decisive.and_then(|(pair, _)| pair.difference.decisive());
    let said = match (told, decisive) {
        (Told::More | Told::Less, Some(weighed)) => {
            let size = fixed(weighed.value.abs(), decimals_for(weighed.expanded()));
            let size = words.say(joined([size, "W".into()], "\u{a0}"));
            message!("verdict-title-two", difference = size)
        }
        (Told::Alike, _) => message!("verdict-title-two-alike"),
        _ => message!("verdict-title-two-untold"),
    };
    said.with("first", calls.name(first))
        .with("second", calls.name(second))
        .into()
}

/// Many: which gives most, or how many lead.
fn of_many(comparison: &Comparison, calls: &Calls, top: usize, words: &Words) -> Message {
    let others = 1..comparison.ranking.ranked.len();
    let all: Vec<Told> = others.map(|rank| told(comparison, 0, rank)).collect();
    let count = |is: Told| all.iter().filter(|one| **one == is).count();
    let second = |is: Told| {
        let rank = all.iter().position(|one| *one == is).unwrap_or(0) + 1;
        calls.name(comparison.ranking.ranked[rank])
    };
    let counts = [Told::Less, Told::Alike, Told::More, Told::Untold].map(count);
    let said = match counts {
        [0, 0, _, 0] => message!("verdict-title-most"),
        [0, 0, 0, _] => message!("verdict-title-alone"),
        [0, 0, ..] => message!("verdict-title-most-told"),
        [0, 1, ..] => message!("verdict-title-leads-one", second = second(Told::Alike)),
        [0, alike, ..] => message!("verdict-title-leads", others = alike),
        // By the heat balances, where irradiance differed.
        [1, ..] => message!("verdict-title-beaten-by-one", second = second(Told::Less)),
        [more, ..] => message!("verdict-title-beaten", others = more),
    };
    said.with("name", calls.name(top))
        .with("power", power(comparison, top, words))
}

/// A baseline: how many give more and less.
fn against(comparison: &Comparison, calls: &Calls, base: usize, words: &Words) -> Message {
    let rank = comparison.ranking.rank(base).unwrap_or(0);
    let others = 0..comparison.ranking.ranked.len();
    let others = others.filter(|other| *other != rank);
    let all: Vec<Told> = others.map(|other| told(comparison, other, rank)).collect();
    let count = |is: Told| all.iter().filter(|one| **one == is).count();
    message!(
        "verdict-title-baseline",
        name = calls.name(base),
        power = power(comparison, base, words),
        more = count(Told::More),
        less = count(Told::Less),
        alike = count(Told::Alike) + count(Told::Untold)
    )
}

/// The difference of the only pair.
fn lead(comparison: &Comparison, pair: &Pair, calls: &Calls, words: &Words) -> Option<Lead> {
    let told = comparison.told(pair.difference.first, pair.difference.second);
    let weighed = pair.difference.decisive()?;
    let (value, interval) = spoken(weighed, told.sign);
    let label = match (pair.difference.conditions_differ, weighed.knows_days()) {
        (true, true) => message!("verdict-lead-common"),
        (true, false) => message!("verdict-lead-common-one-day"),
        (false, true) => message!("verdict-lead"),
        (false, false) => message!("verdict-lead-one-day"),
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
            sentences.push(in_all(shown, pairs).into());
            sentences.extend(untold_pairs(pairs).map(Phrase::from));
            sentences.extend(differences::leaders_needed(comparison, calls));
        }
    }
    if comparison.pairs.is_empty() {
        sentences.extend(unrated_baseline(comparison, calls).map(Phrase::from));
        sentences.extend(beside::sentences(comparison, calls));
    }
    let mut campaigns = comparison.campaigns.iter();
    if campaigns.all(|one| one.tested.heats_no_water()) {
        sentences.push(message!("headline-no-water-means").into());
    }
    sentences
}

/// How many of those that can be compared are shown to differ.
fn in_all(shown: usize, pairs: &[Pair]) -> Message {
    let compared = compared(pairs);
    let said = match compared == pairs.len() {
        true => message!("verdict-in-all"),
        false => message!("verdict-in-all-compared", compared = compared),
    };
    said.with("shown", shown).with("pairs", pairs.len())
}

/// How many pairs cannot be compared, and why.
fn untold_pairs(pairs: &[Pair]) -> impl Iterator<Item = Message> {
    let untold = |planes_differ: bool| {
        let is_untold = |pair: &&Pair| {
            let difference = &pair.difference;
            difference.decisive().is_none() && difference.planes_differ == planes_differ
        };
        pairs.iter().filter(is_untold).count()
    };
    let (of_planes, of_balances) = (untold(true), untold(false));
    let said = [
        (of_planes > 0).then(|| message!("verdict-untold-pairs-planes", pairs = of_planes)),
        (of_balances > 0).then(|| message!("verdict-untold-pairs", pairs = of_balances)),
    ];
    said.into_iter().flatten()
}

/// That ratings are not compared since the baseline has none.
fn unrated_baseline(comparison: &Comparison, calls: &Calls) -> Option<Message> {
    let base = comparison.baseline?;
    let has_others = !comparison.ranking.ranked.is_empty();
    let is_unrated = comparison.ranking.rank(base).is_none();
    (has_others && is_unrated)
        .then(|| message!("verdict-baseline-unrated", name = calls.name(base)))
}
