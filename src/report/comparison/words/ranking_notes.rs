//! How the groups and differences beside a ranking are read.

use super::bracketing::{FEWEST, WITH_MATRIX, in_column};
use super::matrix::{
    alone_note, is_at_common, is_of_one_day, is_shown_alone_only, one_day_note, told_together,
    untold_note,
};
use super::ranking::{Extra, NOT_HELD};
use crate::comparison::Comparison;
use crate::comparison::pair::Pair;
use crate::language::{Message, Phrase};
use crate::message;

/// On what a ranking is read.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Medium {
    /// It has brackets, and bold type.
    Paper,
    /// It has letters, and bold type.
    Web,
    /// It has letters, and a mark where no difference is shown.
    Terminal,
}

/// Puts them into words, as far as there is something that they are of.
pub fn ranking_notes(comparison: &Comparison, extra: &Extra, medium: Medium) -> Vec<Phrase> {
    let mut notes: Vec<Phrase> = Vec::new();
    if comparison.ranking.ranked.len() >= FEWEST && comparison.baseline.is_none() {
        let of_groups = on_groups(comparison, extra, medium);
        notes.extend(of_groups.into_iter().map(Phrase::from));
    }
    if let Some(column) = in_column(comparison) {
        let pairs: Vec<&Pair> = column.into_iter().flatten().map(|(pair, _)| pair).collect();
        notes.extend(on_differences(comparison, &pairs, medium));
    }
    notes
}

/// What bars, letters and dashes say.
fn on_groups(comparison: &Comparison, extra: &Extra, medium: Medium) -> Vec<Message> {
    let is_untold = |pair: &Pair| pair.difference.decisive().is_none();
    let of_dashes = match (extra.has_brackets(), medium) {
        // There is neither a bar nor a letter beside it.
        (false, _) => message!("ranking-note-dash"),
        (true, Medium::Paper) => message!("ranking-note-not-held"),
        (true, Medium::Web | Medium::Terminal) => message!("ranking-note-not-held-letters"),
    };
    let all = [
        of_groups(comparison, extra, medium),
        any_in_groups(comparison, extra, is_untold).then(|| message!("ranking-note-undecided")),
        any_in_groups(comparison, extra, is_of_one_day).then(|| message!("ranking-note-one-day")),
        extra.has_dashes().then_some(of_dashes),
    ];
    all.into_iter().flatten().collect()
}

/// What it means to share a bar or a letter, or to have none; `None` where all have a dash.
fn of_groups(comparison: &Comparison, extra: &Extra, medium: Medium) -> Option<Message> {
    let pairs = told_together(&comparison.pairs);
    let is_paper = medium == Medium::Paper;
    if !extra.alike.is_empty() {
        return Some(match is_paper {
            true => message!("ranking-note-alike", pairs = pairs),
            false => message!("ranking-note-alike-beside", pairs = pairs),
        });
    }
    match (extra.has_brackets(), extra.has_dashes()) {
        (true, false) if is_paper => Some(message!("ranking-note-brackets", pairs = pairs)),
        (true, true) if is_paper => Some(message!("ranking-note-brackets-dash", pairs = pairs)),
        (true, false) => Some(message!("ranking-note-letters", pairs = pairs)),
        (true, true) => Some(message!("ranking-note-letters-dash", pairs = pairs)),
        (false, false) => {
            let are_apart = comparison.pairs.iter().all(Pair::is_shown);
            are_apart.then(|| message!("ranking-note-all-apart", pairs = pairs))
        }
        (false, true) => {
            let has_others = extra.letters.iter().any(|letters| letters != NOT_HELD);
            has_others.then(|| message!("ranking-note-rest-apart", pairs = pairs))
        }
    }
}

/// Whether any pair of two without a dash is so.
fn any_in_groups(comparison: &Comparison, extra: &Extra, is: impl Fn(&Pair) -> bool) -> bool {
    let has_dash = |place: usize| {
        let rank = comparison.ranking.rank(place);
        let letters = rank.and_then(|rank| extra.letters.get(rank));
        letters.is_some_and(|letters| letters == NOT_HELD)
    };
    let mut pairs = comparison.pairs.iter();
    pairs.any(|pair| {
        let places = [pair.difference.first, pair.difference.second];
        is(pair) && !places.into_iter().any(has_dash)
    })
}

/// What the column of differences says.
fn on_differences(comparison: &Comparison, pairs: &[&Pair], medium: Medium) -> Vec<Phrase> {
    let any = |is: fn(&Pair) -> bool| pairs.iter().any(|pair| is(pair));
    let has_one_day = any(is_of_one_day);
    let said = match (medium, has_one_day) {
        (Medium::Terminal, false) => message!("terminal-note-differences"),
        (Medium::Terminal, true) => message!("terminal-note-differences-one-day"),
        (_, false) => message!("ranking-note-differences"),
        (_, true) => message!("ranking-note-differences-one-day"),
    };
    let mut notes: Vec<Phrase> = vec![said.with("pairs", told_together(&comparison.pairs)).into()];
    // A terminal has room for it where a reader sees such a difference.
    if medium != Medium::Terminal || any(is_shown_alone_only) {
        notes.extend(alone_note(&comparison.pairs).map(Phrase::from));
    }
    if has_one_day {
        notes.push(one_day_note());
    }
    if any(is_at_common) {
        notes.push(message!("ranking-note-common").into());
    }
    notes.extend(untold_note(pairs).map(Phrase::from));
    let is_cut = comparison.baseline.is_none() && comparison.ranking.ranked.len() > WITH_MATRIX;
    if is_cut {
        notes.push(message!("ranking-note-data").into());
    }
    notes
}
