//! How the comparison was made.

use crate::comparison::Comparison;
use crate::comparison::pair::{ALIKE_IRRADIANCE, Pair, compared};
use crate::comparison::weigh::Method;
use crate::language::{Message, Phrase, clauses, fixed};
use crate::message;

/// The notes on method, as far as there is something that they are of.
pub fn notes(comparison: &Comparison) -> Vec<Phrase> {
    let pairs = &comparison.pairs;
    let mut notes: Vec<Phrase> = Vec::new();
    if !pairs.is_empty() {
        notes.extend(on_ratings(comparison));
    }
    let mut figures = comparison.figures.iter();
    if figures.any(|pair| !pair.figures.is_empty()) {
        let count = comparison.figures.len();
        notes.push(message!("beside-note-difference").into());
        notes.push(message!("beside-note-alike").into());
        notes.push(message!("beside-note-pairs", pairs = count).into());
    }
    notes.push(message!("comparison-note-reports").into());
    notes.push(message!("unchecked-memory", works = clauses(works(comparison))).into());
    notes.push(message!("unchecked-common").into());
    notes
}

/// What a comparison itself quotes and nobody had at hand.
fn works(comparison: &Comparison) -> impl Iterator<Item = Message> {
    let groups = names_groups(comparison).then(|| message!("memory-groups"));
    groups.into_iter().chain([message!("memory-cautions")])
}

/// Whether the notes say what groups are.
fn names_groups(comparison: &Comparison) -> bool {
    let has_ratings = !comparison.pairs.is_empty() && comparison.ranking.ranked.len() > 2;
    has_ratings && comparison.groups.is_some()
}

fn on_ratings(comparison: &Comparison) -> Vec<Phrase> {
    let pairs = &comparison.pairs;
    let paired = |pair: &&Pair| {
        let weighed = pair.difference.decisive();
        weighed.is_some_and(|weighed| weighed.method != Method::Apart)
    };
    let paired = pairs.iter().filter(paired).count();
    let percent = fixed(ALIKE_IRRADIANCE * 100.0, 0);
    let mut notes: Vec<Phrase> = vec![
        message!("comparison-note-ratings").into(),
        message!("comparison-note-suns", percent = percent).into(),
    ];
    if pairs.iter().any(|pair| pair.difference.planes_differ) {
        notes.push(message!("comparison-note-planes").into());
    }
    notes.extend([
        message!("comparison-note-uncertainty").into(),
        message!(
            "comparison-note-paired",
            paired = paired,
            pairs = pairs.len()
        )
        .into(),
        message!("comparison-note-p", pairs = compared(pairs)).into(),
    ]);
    if names_groups(comparison) {
        notes.push(message!("comparison-note-groups").into());
    }
    notes.push(message!("comparison-note-causes").into());
    notes.push(message!("comparison-note-needed").into());
    notes
}
