//! All figures of a report at a glance.

use serde::Serialize;

use crate::language::Words;
use crate::message;
use crate::procedure::stated::Stated;
use crate::report::procedure_part::value_of;

/// The table on page two.
#[derive(Debug, Clone, Serialize)]
pub struct SummaryPart {
    pub title: String,
    pub rows: Vec<SummaryRow>,
    pub note: String,
}

/// One figure.
#[derive(Debug, Clone, Serialize)]
pub struct SummaryRow {
    /// Name and symbol.
    pub label: String,
    pub value: String,
    pub good_for: String,
    pub not_with: String,
}

/// Some figures in a table; `None` without any.
pub fn summary(stated: &[Stated], words: &Words) -> Option<SummaryPart> {
    let rows: Vec<SummaryRow> = stated.iter().map(|stated| row(stated, words)).collect();
    let marks = [
        stated
            .iter()
            .any(|one| one.is_of_one_day)
            .then(|| message!("summary-note-one-day")),
        stated
            .iter()
            .any(|one| one.is_indicative)
            .then(|| message!("summary-note-indicative")),
    ];
    let notes = std::iter::once(message!("summary-note")).chain(marks.into_iter().flatten());
    let notes: Vec<String> = notes.map(|note| words.say(note)).collect();
    (!rows.is_empty()).then(|| SummaryPart {
        title: words.say(message!("summary-title")),
        rows,
        note: notes.join(" "),
    })
}

fn row(stated: &Stated, words: &Words) -> SummaryRow {
    let mut value = words.say(value_of(stated));
    for mark in [
        stated.is_of_one_day.then(|| message!("summary-one-day")),
        stated.is_indicative.then(|| message!("summary-indicative")),
    ]
    .into_iter()
    .flatten()
    {
        value += " ";
        value += &words.say(mark);
    }
    SummaryRow {
        label: words.say(message!(
            "procedure-label",
            name = stated.key.name(),
            symbol = stated.key.symbol()
        )),
        value,
        good_for: words.say(stated.key.good_for()),
        not_with: words.say(stated.key.not_with()),
    }
}
