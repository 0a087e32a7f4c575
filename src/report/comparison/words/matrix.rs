//! Differences of each campaign from each, as a matrix that can be read at a glance.

use serde::Serialize;

use super::calls::Calls;
use super::causes::{Cause, cause_of};
use super::spoken::spoken;
use crate::comparison::Comparison;
use crate::comparison::pair::{ALIKE_IRRADIANCE, Pair, compared};
use crate::language::{Message, Phrase, Words, fixed, joined};
use crate::message;

/// Fewest and most campaigns of a matrix: of more, it is not read any longer.
const SIZE: std::ops::RangeInclusive<usize> = 3..=8;

/// The matrix: a row for each rank but the last, a column for each but the first.
#[derive(Debug, Clone, Serialize)]
pub struct MatrixPart {
    pub title: String,
    pub columns: Vec<Call>,
    pub rows: Vec<MatrixRow>,
    /// How it is read.
    pub notes: Vec<String>,
}

/// A campaign at the edge of the matrix.
#[derive(Debug, Clone, Serialize)]
pub struct Call {
    pub number: String,
    pub name: String,
}

/// A row.
#[derive(Debug, Clone, Serialize)]
pub struct MatrixRow {
    pub call: Call,
    /// One for each column; `None` on and below the diagonal.
    pub cells: Vec<Option<Cell>>,
}

/// What a difference comes to.
#[derive(Debug, Clone, Serialize)]
pub struct Cell {
    /// `+30`; a dash where it cannot be told.
    pub value: String,
    pub interval: String,
    pub is_shown: bool,
    /// Set behind the value where it is of powers at common conditions, or its interval is of
    /// one day; empty elsewhere.
    pub mark: &'static str,
    /// Where it comes from; empty where that is not shown.
    pub cause: String,
    /// All of it in a sentence's words.
    pub alt: String,
}

/// Behind a difference that is of powers at common conditions.
const AT_COMMON: &str = "*";
/// Behind a difference of campaigns that were not tested on several days each.
const OF_ONE_DAY: &str = "†";

/// Puts the matrix into words; `None` for fewer or more campaigns than one is made of, and
/// with a baseline.
pub fn matrix(comparison: &Comparison, calls: &Calls, words: &Words) -> Option<MatrixPart> {
    let ranked = &comparison.ranking.ranked;
    if comparison.baseline.is_some() || !SIZE.contains(&ranked.len()) {
        return None;
    }
    let call = |rank: usize| Call {
        number: (rank + 1).to_string(),
        name: calls.name(ranked[rank]).to_owned(),
    };
    let columns = 1..ranked.len();
    let row = |rank: usize| MatrixRow {
        call: call(rank),
        cells: columns
            .clone()
            .map(|column| {
                let (pair, sign) = comparison.between(rank, column).filter(|_| column > rank)?;
                Some(cell(pair, sign, words))
            })
            .collect(),
    };
    Some(MatrixPart {
        title: words.say(message!("matrix-title")),
        columns: columns.clone().map(call).collect(),
        rows: (0..ranked.len() - 1).map(row).collect(),
        notes: notes(&comparison.pairs)
            .into_iter()
            .map(|note| words.say(note))
            .collect(),
    })
}

/// What a pair comes to, with a sign.
pub fn cell(pair: &Pair, sign: f64, words: &Words) -> Cell {
    let Some(weighed) = pair.difference.decisive() else {
        return Cell {
            value: "–".to_owned(),
            interval: String::new(),
            is_shown: false,
            mark: "",
            cause: String::new(),
            alt: words.say(message!("matrix-untold")),
        };
    };
    let (value, interval) = spoken(weighed, sign);
    let shown = match pair.is_shown() {
        true => message!("difference-real"),
        false => message!("difference-not-shown"),
    };
    let (value, interval) = (words.say(value), words.say(interval));
    Cell {
        alt: words.say(message!(
            "matrix-alt",
            value = &value,
            interval = &interval,
            verdict = shown
        )),
        cause: cause_word(pair).map_or_else(String::new, |word| words.say(word)),
        value,
        interval,
        is_shown: pair.is_shown(),
        mark: marks(pair),
    }
}

/// What a shown difference comes from, in a word.
fn cause_word(pair: &Pair) -> Option<Message> {
    match cause_of(pair).filter(|_| pair.is_shown())? {
        Cause::Gain => Some(message!("matrix-gain")),
        Cause::Loss => Some(message!("matrix-loss")),
        Cause::Both => Some(message!("matrix-both")),
        Cause::NotShown | Cause::Untold => None,
    }
}

/// What stands behind the difference of a pair.
pub fn marks(pair: &Pair) -> &'static str {
    match (pair.difference.conditions_differ, is_of_one_day(pair)) {
        (false, false) => "",
        (true, false) => AT_COMMON,
        (false, true) => OF_ONE_DAY,
        (true, true) => "*†",
    }
}

/// Whether there is a difference, but not of several days each.
pub fn is_of_one_day(pair: &Pair) -> bool {
    pair.difference.decisive().is_some() && !pair.difference.knows_days()
}

/// Whether there is a difference, and it is of powers at common conditions.
pub fn is_at_common(pair: &Pair) -> bool {
    pair.difference.conditions_differ && pair.difference.decisive().is_some()
}

/// What the mark of a single day says.
pub fn one_day_note() -> Phrase {
    joined(
        [
            Phrase::from(OF_ONE_DAY),
            message!("matrix-note-of-one-day").into(),
        ],
        " ",
    )
}

/// Why some pairs have a dash; `None` where none has.
pub fn untold_note(pairs: &[&Pair]) -> Option<Message> {
    let is_untold = |pair: &&&Pair| pair.difference.decisive().is_none();
    let untold = pairs.iter().filter(is_untold);
    let of_planes = untold.clone().filter(|pair| pair.difference.planes_differ);
    match (of_planes.count(), untold.count()) {
        (_, 0) => None,
        (0, _) => Some(message!("matrix-note-untold")),
        (planes, all) if planes == all => Some(message!("matrix-note-untold-planes")),
        _ => Some(message!("matrix-note-untold-either")),
    }
}

/// Pairs that 95 % is for together; one where none can be compared, which is 95 % alone.
pub fn told_together(pairs: &[Pair]) -> usize {
    compared(pairs).max(1)
}

/// What says that an interval is of its pair alone; `None` of a single pair.
pub fn alone_note(pairs: &[Pair]) -> Option<Message> {
    (compared(pairs) > 1).then(|| message!("pairs-note-alone"))
}

/// Whether an interval is without zero, and the difference is not shown among so many pairs.
pub fn is_shown_alone_only(pair: &Pair) -> bool {
    let difference = &pair.difference;
    difference.knows_days() && difference.is_shown_alone() && !pair.is_shown()
}

/// How the matrix is read, as far as there is something to read.
fn notes(pairs: &[Pair]) -> Vec<Phrase> {
    let has_one_day = pairs.iter().any(is_of_one_day);
    let first = match has_one_day {
        true => message!("matrix-note-one-day"),
        false => message!("matrix-note"),
    };
    let mut notes: Vec<Phrase> = vec![first.with("pairs", told_together(pairs)).into()];
    notes.extend(alone_note(pairs).map(Phrase::from));
    if has_one_day {
        notes.push(one_day_note());
    }
    if pairs.iter().any(is_at_common) {
        let percent = fixed(ALIKE_IRRADIANCE * 100.0, 0);
        let said = message!("matrix-note-common", percent = percent);
        notes.push(joined([Phrase::from(AT_COMMON), said.into()], " "));
    }
    let all: Vec<&Pair> = pairs.iter().collect();
    notes.extend(untold_note(&all).map(Phrase::from));
    if pairs.iter().any(|pair| cause_word(pair).is_some()) {
        notes.push(message!("matrix-note-cause").into());
    }
    notes
}
