//! The lines of the ratings, each in a panel of its own.

use serde::Serialize;

use super::calls::Calls;
use crate::comparison::Comparison;
use crate::language::{Words, fixed, range};
use crate::message;
use crate::units::decimals_for;

/// Campaigns whose lines are drawn, at most: those with most power.
pub const MOST_PANELS: usize = 24;

/// The panels.
#[derive(Debug, Clone, Serialize)]
pub struct PanelsPart {
    /// So many side by side, each so wide, points.
    pub columns: usize,
    pub panel_pt: f64,
    pub panels: Vec<Panel>,
    pub caption: String,
    /// That others are not drawn; empty where all are.
    pub left_out: String,
}

/// A campaign's panel.
#[derive(Debug, Clone, Serialize)]
pub struct Panel {
    pub number: String,
    pub name: String,
    /// Name of the drawing.
    pub file: String,
    /// Its content in words.
    pub alt: String,
}

/// The ranks that have a panel.
pub fn drawn(comparison: &Comparison) -> impl Iterator<Item = (usize, usize)> + '_ {
    let ranked = comparison.ranking.ranked.iter().copied().enumerate();
    ranked.take(MOST_PANELS)
}

/// Puts the lines into words; `None` without any.
pub fn lines(comparison: &Comparison, calls: &Calls, words: &Words) -> Option<PanelsPart> {
    let panels: Vec<Panel> = drawn(comparison)
        .filter_map(|(rank, place)| {
            let s580 = &comparison.campaigns[place].s580;
            let (line, uncertainty) = (s580.line()?, s580.uncertainty()?);
            let half_width_w = uncertainty.half_width_w();
            let decimals = decimals_for(half_width_w);
            let ends = uncertainty.interval_w;
            Some(Panel {
                number: calls.number(place).to_string(),
                name: calls.name(place).to_owned(),
                file: format!("line-{}.svg", rank + 1),
                alt: words.say(
                    match uncertainty.is_of_one_day() {
                        true => message!("lines-alt-one-day"),
                        false => message!("lines-alt"),
                    }
                    .with(
                        "intercept",
                        fixed(line.intercept, decimals_for(line.intercept_standard_error)),
                    )
                    .with(
                        "slope",
                        fixed(line.slope, decimals_for(line.slope_standard_error).max(2)),
                    )
                    .with("power", fixed(uncertainty.budget.value, decimals))
                    .with("range", range(ends.lower, ends.upper, decimals)),
                ),
            })
        })
        .collect();
    let columns = columns(panels.len());
    let has_one_day = drawn(comparison).any(|(_, place)| {
        let uncertainty = comparison.campaigns[place].s580.uncertainty();
        uncertainty.is_some_and(|uncertainty| uncertainty.is_of_one_day())
    });
    (!panels.is_empty()).then(|| PanelsPart {
        columns,
        panel_pt: panel_pt(columns),
        panels,
        caption: words.say(match has_one_day {
            true => message!("lines-caption-one-day"),
            false => message!("lines-caption"),
        }),
        left_out: left_out(comparison, words),
    })
}

/// Room for panels, points, and between two of them.
const ROOM_PT: f64 = 482.0;
pub const GAP_PT: f64 = 8.0;

/// How many panels stand side by side: as few as leave no row with little in it.
pub fn columns(panels: usize) -> usize {
    match panels {
        ..=3 | 6 => 3,
        5 | 9 | 10 => 5,
        _ => 4,
    }
}

/// How wide each is, points.
pub fn panel_pt(columns: usize) -> f64 {
    (ROOM_PT - GAP_PT * (columns - 1) as f64) / columns as f64
}

/// That only the first are shown; empty where all are.
pub fn left_out(comparison: &Comparison, words: &Words) -> String {
    let ranked = comparison.ranking.ranked.len();
    match ranked > MOST_PANELS {
        true => words.say(message!(
            "comparison-first-only",
            shown = MOST_PANELS,
            campaigns = ranked
        )),
        false => String::new(),
    }
}
