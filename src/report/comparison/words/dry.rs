//! The dry vessels of several campaigns: plateaus in a table, heating in a figure.

use serde::Serialize;

use super::tables::FigureTable;
use crate::comparison::Comparison;
use crate::language::{Phrase, Words, celsius, clauses, fixed};
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::dry_vessel::dry_run::DryRun;
use crate::report::comparison::figures::compared_heating::FILE;
use crate::report::comparison::names::letter;
use crate::report::procedure_part::spoken;
use crate::report::rows::Figure;

/// Campaigns of which the figure is drawn.
const FEWEST: usize = 2;

/// Dry vessels side by side.
#[derive(Debug, Clone, Serialize)]
pub struct DryPart {
    pub plateaus: FigureTable,
    pub figure: Figure,
    /// It stands on page one, since there is no line of a rating to draw there.
    pub is_in_front: bool,
}

/// Whether so many campaigns have readings of a dry vessel that they are drawn.
pub fn has_dry(comparison: &Comparison) -> bool {
    let campaigns = comparison.campaigns.iter();
    let is_dry = |one: &&Assessment| one.dry_runs.runs.iter().any(|run| run.highest_c.is_some());
    campaigns.filter(is_dry).count() >= FEWEST
}

/// Puts the dry vessels into words; `None` unless several campaigns have one.
pub fn dry(comparison: &Comparison, words: &Words) -> Option<DryPart> {
    has_dry(comparison).then(|| DryPart {
        plateaus: plateaus(comparison, words),
        figure: figure(comparison, words),
        is_in_front: comparison.rated().next().is_none(),
    })
}

fn runs(comparison: &Comparison) -> impl Iterator<Item = (usize, &Assessment, &DryRun)> {
    let campaigns = comparison.campaigns.iter().enumerate();
    campaigns.flat_map(|(place, one)| one.dry_runs.runs.iter().map(move |run| (place, one, run)))
}

fn plateaus(comparison: &Comparison, words: &Words) -> FigureTable {
    const NONE: &str = "–";
    let row = |(place, one, run): (usize, &Assessment, &DryRun)| {
        let plateau = run.plateau.as_ref();
        let cell = |value: Option<f64>| value.map_or_else(|| NONE.into(), |value| fixed(value, 0));
        let cells: [Phrase; 6] = [
            letter(place).to_string().into(),
            (&one.tested.dry_runs[run.run].plan.label).into(),
            cell(plateau.map(|one| one.vessel_c)),
            cell(plateau.map(|one| one.ambient_c)),
            cell(plateau.map(|one| one.irradiance_w_m2)),
            run.difference
                .as_ref()
                .map_or_else(|| NONE.into(), |one| spoken(&one.figure, 1.0).into()),
        ];
        cells.map(|cell| words.say(cell)).to_vec()
    };
    let header = [
        message!("dry-head-run"),
        message!("dry-head-plateau"),
        message!("dry-head-ambient"),
        message!("dry-head-irradiance"),
        message!("dry-head-difference"),
    ];
    let header = header.into_iter().map(|name| words.say(name));
    FigureTable {
        header: [String::new()].into_iter().chain(header).collect(),
        rows: runs(comparison).map(row).collect(),
        note: words.say(message!("comparison-dry-note")),
    }
}

fn figure(comparison: &Comparison, words: &Words) -> Figure {
    let read = runs(comparison).filter_map(|(place, _, run)| {
        Some(message!(
            "comparison-dry-one",
            campaign = letter(place).to_string(),
            highest = celsius(fixed(run.highest_c?, 0))
        ))
    });
    Figure {
        file: FILE.to_owned(),
        caption: words.say(message!("comparison-dry-caption")),
        alt: words.say(message!("comparison-dry-alt", runs = clauses(read))),
    }
}
