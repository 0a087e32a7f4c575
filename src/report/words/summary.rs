//! All figures of a report at a glance.

use serde::Serialize;

use crate::language::{Message, Words, fixed, joined, range};
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::stated::Stated;
use crate::procedure::yardstick::{PUBLISHED, Published, PublishedKind, per_area};
use crate::report::procedure_part::value_of;

/// The table on page two.
#[derive(Debug, Clone, Serialize)]
pub struct SummaryPart {
    pub title: String,
    pub rows: Vec<SummaryRow>,
    pub note: String,
    /// What others measured, to hold the rating against; empty without one.
    pub yardstick: String,
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
pub fn summary(assessment: &Assessment, stated: &[Stated], words: &Words) -> Option<SummaryPart> {
    let rows: Vec<SummaryRow> = stated.iter().map(|stated| row(stated, words)).collect();
    let is_some_of_one_day = stated.iter().any(|one| one.is_of_one_day);
    let marks = [
        is_some_of_one_day.then(|| message!("summary-note-one-day")),
        stated
            .iter()
            .any(|one| one.is_indicative)
            .then(|| message!("summary-note-indicative")),
    ];
    let note = match is_some_of_one_day {
        true => message!("summary-note-some"),
        false => message!("summary-note"),
    };
    let notes = std::iter::once(note).chain(marks.into_iter().flatten());
    let notes: Vec<String> = notes.map(|note| words.say(note)).collect();
    (!rows.is_empty()).then(|| SummaryPart {
        title: words.say(message!("summary-title")),
        rows,
        note: notes.join(" "),
        yardstick: yardstick(assessment, words),
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

/// The rating for each m² beside the published values, each with its source and trust.
fn yardstick(assessment: &Assessment, words: &Words) -> String {
    let Some(per_area) = per_area(assessment) else {
        return String::new();
    };
    let decimals = crate::units::decimals_for(per_area.half_width_w_per_m2);
    let published = PUBLISHED.iter().map(|one| words.say(spoken(one)));
    let own = message!(
        "yardstick-own",
        power = fixed(per_area.w_per_m2, decimals),
        half_width = fixed(per_area.half_width_w_per_m2, decimals),
        percent = fixed(100.0 * per_area.share_of_sunlight, 0)
    );
    let parts = [words.say(own)]
        .into_iter()
        .chain(published)
        .chain([words.say(message!("yardstick-caution"))]);
    words.say(joined(parts, " "))
}

fn spoken(published: &Published) -> Message {
    let (low, high) = published.w_per_m2;
    let value = if low < high {
        range(low, high, 0)
    } else {
        fixed(low, 0)
    };
    match published.kind {
        PublishedKind::Parabolic => message!("yardstick-parabolic"),
        PublishedKind::Box => message!("yardstick-box"),
    }
    .with("value", value)
    .with("source", published.source)
}
