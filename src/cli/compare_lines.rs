//! What `compare` prints: the verdict, the ranking, what both rest on.

use super::lines::{Lines, Mark, MarkedRow};
use super::table::{Align, decimals_aligned};
use crate::comparison::figures::FigurePair;
use crate::comparison::{Comparison, Pair};
use crate::language::{Words, fixed};
use crate::message;
use crate::procedure::finding::Level;
use crate::report::Edition;
use crate::report::comparison::words::beside::lines as figure_lines;
use crate::report::comparison::words::ranking::{RankRow, RankingPart};
use crate::report::comparison::words::ranking_notes::{Medium, ranking_notes};
use crate::report::comparison::words::report::{Built, build};

/// Below the title of a pair's figures.
const INDENT: &str = "  ";

/// Adds the comparison to the lines: the verdict first.
pub fn describe(lines: &mut Lines, comparison: &Comparison, edition: &Edition) {
    let words = &edition.words;
    let Built { report, extra, .. } = build(comparison, edition);
    lines.verdict(mark(comparison), &report.title);
    if let Some(lead) = &report.verdict.lead {
        let said = message!(
            "terminal-lead",
            value = &lead.value,
            interval = &lead.interval,
            label = &lead.label
        );
        lines.hanging(INDENT, &words.say(said));
    }
    lines.hanging(INDENT, &report.subtitle).blank();
    if let Some(ranking) = &report.ranking {
        add_ranking(lines, ranking, words);
        lines.blank();
    }
    for sentence in &report.verdict.sentences {
        lines.line(sentence);
    }
    add_figures(lines, comparison, words);
    if let Some(ranking) = &report.ranking {
        let notes = ranking_notes(comparison, &extra, Medium::Terminal);
        let notes = notes.into_iter().map(|note| words.say(note));
        let notes = [ranking.left_out.clone()].into_iter().chain(notes);
        for note in notes.filter(|note| !note.is_empty()) {
            lines.line(&note);
        }
    }
    if !report.caveats.is_empty() {
        lines.blank();
        let rows = report.caveats.into_iter().map(|row| (row.label, row.text));
        lines.rows("", &rows.collect::<Vec<_>>());
    }
}

/// Good where something is told of the ratings, or without any of other figures, and what leads
/// is not only indicative.
fn mark(comparison: &Comparison) -> Mark {
    let mut figures = comparison.figures.iter().flat_map(|pair| &pair.figures);
    let is_told = match comparison.pairs.is_empty() {
        true => figures.any(FigurePair::is_told_apart),
        false => comparison.pairs.iter().any(Pair::is_shown),
    };
    let first = comparison.ranking.ranked.first();
    let is_sound = first.is_none_or(|place| comparison.standings[*place].level < Level::Indicative);
    match is_told && is_sound {
        true => Mark::Good,
        false => Mark::Reserved,
    }
}

/// Fewest columns in which differences have a column of their own.
const WITH_DIFFERENCES: usize = 72;

/// A row a campaign: mark, rank, title, power; further numbers and the status below, and the
/// difference where a line is too short for it.
fn add_ranking(lines: &mut Lines, ranking: &RankingPart, words: &Words) {
    let [number, campaign, rating, groups] = [
        message!("terminal-rank"),
        message!("terminal-campaign"),
        message!("terminal-rating"),
        message!("page-ranking-groups"),
    ]
    .map(|name| words.say(name));
    let powers = powers(&ranking.rows, words);
    // Power for each square metre stands behind R², intervals and days.
    let per_area = usize::from(ranking.has_support);
    let difference = ranking.differences.clone().unwrap_or_default();
    let is_narrow = lines.width().is_some_and(|width| width < WITH_DIFFERENCES);
    let has_differences = ranking.differences.is_some() && !is_narrow;
    let difference_below = |row: &RankRow| {
        let told = Some(told_difference(row)).filter(|told| is_narrow && !told.is_empty());
        told.map(|told| format!("{difference}: {told}"))
    };
    let rows = ranking.rows.iter().zip(powers);
    let rows: Vec<MarkedRow<6>> = rows
        .map(|(row, power)| MarkedRow {
            mark: mark_of(row),
            cells: [
                row.number.clone(),
                row.name.clone(),
                power,
                row.cells.get(per_area).cloned().unwrap_or_default(),
                row.groups.clone(),
                told_difference(row),
            ],
            below: below(row, words)
                .into_iter()
                .chain(difference_below(row))
                .collect(),
        })
        .collect();
    let per_area = ranking.columns.get(per_area).cloned().unwrap_or_default();
    let header = [
        (number.as_str(), Align::Right),
        (campaign.as_str(), Align::Left),
        (rating.as_str(), Align::Left),
        (per_area.as_str(), Align::Right),
        (groups.as_str(), Align::Left),
        (difference.as_str(), Align::Right),
    ];
    match (ranking.has_groups, has_differences) {
        (true, true) => lines.marked_table(header, &rows),
        (true, false) => lines.marked_table(
            kept(header, [0, 1, 2, 3, 4]),
            &kept_of(rows, [0, 1, 2, 3, 4]),
        ),
        (false, true) => lines.marked_table(
            kept(header, [0, 1, 2, 3, 5]),
            &kept_of(rows, [0, 1, 2, 3, 5]),
        ),
        (false, false) => {
            lines.marked_table(kept(header, [0, 1, 2, 3]), &kept_of(rows, [0, 1, 2, 3]))
        }
    };
}

/// Some columns of a header.
fn kept<const N: usize, const M: usize>(
    header: [(&str, Align); N],
    columns: [usize; M],
) -> [(&str, Align); M] {
    columns.map(|column| header[column])
}

/// The same columns of rows.
fn kept_of<const N: usize, const M: usize>(
    rows: Vec<MarkedRow<N>>,
    columns: [usize; M],
) -> Vec<MarkedRow<M>> {
    let kept = rows.into_iter().map(|row| MarkedRow {
        mark: row.mark,
        cells: columns.map(|column| row.cells[column].clone()),
        below: row.below,
    });
    kept.collect()
}

fn mark_of(row: &RankRow) -> Mark {
    let levels = Level::ALL.iter();
    let mut levels = levels.filter(|level| level.code() == row.level);
    levels.next().map_or(Mark::Bad, |level| Mark::of(*level))
}

/// The status, where a reader must know it.
fn below(row: &RankRow, words: &Words) -> Vec<String> {
    let status = (row.level != Level::Conforms.code()).then(|| row.status.clone());
    let of_one_day = row.is_of_one_day && !row.is_struck;
    let of_one_day = of_one_day.then(|| words.say(message!("terminal-one-day")));
    status.into_iter().chain(of_one_day).collect()
}

/// Before a difference that is not shown.
const NOT_SHOWN: &str = "? ";

fn told_difference(row: &RankRow) -> String {
    match &row.difference {
        Some(found) if !found.interval.is_empty() => {
            let mark = if found.is_shown { "" } else { NOT_SHOWN };
            format!("{mark}{} ({})", found.value, found.interval)
        }
        Some(found) => found.value.clone(),
        None => String::new(),
    }
}

/// `131 ± 10`, with the numbers and the ± of all rows below each other; one that is physically
/// impossible is not told.
fn powers(rows: &[RankRow], words: &Words) -> Vec<String> {
    let decimal_mark = words.say(fixed(0.5, 1)).replace(['0', '5'], "");
    let aligned = |of: fn(&RankRow) -> &String| {
        let cells = rows.iter().map(|row| match row.is_struck {
            true => "–".to_owned(),
            false => of(row).clone(),
        });
        decimals_aligned(&cells.collect::<Vec<_>>(), &decimal_mark)
    };
    let (values, spreads) = (aligned(|row| &row.power), aligned(|row| &row.half_width));
    let pairs = values.into_iter().zip(spreads).zip(rows);
    pairs
        .map(|((value, spread), row)| match row.is_struck {
            true => value,
            false => format!("{value} {spread}"),
        })
        .collect()
}

/// The figures beside the rating of two; of more they are in the files.
fn add_figures(lines: &mut Lines, comparison: &Comparison, words: &Words) {
    let [pair] = comparison.figures.as_slice() else {
        return;
    };
    let figures = figure_lines(comparison, pair, words);
    if figures.is_empty() {
        return;
    }
    lines.blank();
    for [name, difference, verdict] in figures {
        lines.hanging(INDENT, &format!("{name}  {difference}, {verdict}"));
    }
}
