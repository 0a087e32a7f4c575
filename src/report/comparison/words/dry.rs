//! The dry vessels of several campaigns: plateaus in a table, heating in a panel each.

use serde::Serialize;

use super::calls::Calls;
use super::lines::{MOST_PANELS, Panel, columns, panel_pt};
use crate::comparison::Comparison;
use crate::language::{PairedUnit, Phrase, Words, celsius, fixed, paired_number, unit_symbol};
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::dry_vessel::dry_run::DryRun;
use crate::report::procedure_part::spoken;

/// Campaigns of which panels are drawn, at least.
const FEWEST: usize = 2;
/// What stands where there is nothing to say.
const NONE: &str = "–";

/// Dry vessels side by side.
#[derive(Debug, Clone, Serialize)]
pub struct DryPart {
    pub title: String,
    pub header: Vec<String>,
    pub rows: Vec<Vec<String>>,
    pub note: String,
    /// So many side by side, each so wide, points.
    pub columns: usize,
    pub panel_pt: f64,
    pub panels: Vec<Panel>,
    pub caption: String,
    /// It stands on page one, since there is no rating to rank.
    pub is_in_front: bool,
}

/// Places of the campaigns whose dry vessels are shown, in the order of their numbers.
pub fn drawn(comparison: &Comparison, calls: &Calls) -> Vec<usize> {
    let places = calls.order().iter().copied();
    let is_dry = |place: &usize| {
        let runs = &comparison.campaigns[*place].dry_runs.runs;
        runs.iter().any(|run| run.highest_c.is_some())
    };
    places.filter(is_dry).take(MOST_PANELS).collect()
}

/// Puts the dry vessels into words; `None` unless several campaigns have one.
pub fn dry(comparison: &Comparison, calls: &Calls, words: &Words) -> Option<DryPart> {
    let places = drawn(comparison, calls);
    let degrees = unit_symbol(PairedUnit::Celsius);
    let header = [
        message!("dry-head-run"),
        message!("dry-head-plateau", unit = degrees.clone()),
        message!("dry-head-ambient", unit = degrees),
        message!("dry-head-irradiance"),
        message!("dry-head-difference"),
    ];
    let header = header.into_iter().map(|name| words.say(name));
    let rows = places.iter().flat_map(|place| {
        let one = &comparison.campaigns[*place];
        let runs = one.dry_runs.runs.iter();
        runs.map(move |run| row(calls, *place, one, run, words))
    });
    let panel = |place: &usize| Panel {
        number: calls.number(*place).to_string(),
        name: calls.name(*place).to_owned(),
        file: format!("dry-{}.svg", place + 1),
        alt: words.say(alt(&comparison.campaigns[*place])),
    };
    (places.len() >= FEWEST).then(|| DryPart {
        title: words.say(message!("comparison-dry-title")),
        header: [String::new(), String::new()]
            .into_iter()
            .chain(header)
            .collect(),
        rows: rows.collect(),
        note: words.say(message!("comparison-dry-note")),
        columns: columns(places.len()),
        panel_pt: panel_pt(columns(places.len())),
        panels: places.iter().map(panel).collect(),
        caption: words.say(message!("comparison-dry-caption")),
        is_in_front: comparison.ranking.ranked.is_empty(),
    })
}

fn row(calls: &Calls, place: usize, one: &Assessment, run: &DryRun, words: &Words) -> Vec<String> {
    let plateau = run.plateau.as_ref();
    let cell = |value: Option<f64>| value.map_or_else(|| NONE.into(), |value| fixed(value, 0));
    let degrees = |c: Option<f64>| paired_number(cell(c), c.map(|_| PairedUnit::Celsius));
    let cells: [Phrase; 7] = [
        calls.number(place).into(),
        calls.name(place).into(),
        (&one.tested.dry_runs[run.run].plan.label).into(),
        degrees(plateau.map(|one| one.vessel_c)),
        degrees(plateau.map(|one| one.ambient_c)),
        cell(plateau.map(|one| one.irradiance_w_m2)),
        run.difference
            .as_ref()
            .map_or_else(|| NONE.into(), |one| spoken(&one.figure, 1.0).into()),
    ];
    cells.map(|cell| words.say(cell)).to_vec()
}

/// The highest reading of a campaign's dry runs.
fn alt(one: &Assessment) -> Phrase {
    let highest = one.dry_runs.runs.iter().filter_map(|run| run.highest_c);
    let highest_c = highest.reduce(f64::max);
    let highest = highest_c.map_or_else(|| NONE.into(), |c| celsius(fixed(c, 0)));
    message!("comparison-dry-alt", highest = highest).into()
}
