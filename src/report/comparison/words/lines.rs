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

/// How many panels stand side by side: of three to five the most whose last row lacks no more than
/// one, which leaves fewest rows; where each lacks more, those whose last row is fullest.
pub fn columns(panels: usize) -> usize {
    const FEWEST: usize = 3;
    let in_last_row = |columns: usize| panels.saturating_sub(1) % columns + 1;
    let key = |columns: &usize| {
        let found = in_last_row(*columns);
        match found + 1 >= *columns {
            true => (true, 0),
            // By 60, which three, four and five divide, shares of a row are whole numbers.
            false => (false, found * 60 / columns),
        }
    };
    let all = FEWEST..=panels.clamp(FEWEST, 5);
    all.max_by_key(key).unwrap_or(FEWEST)
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

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_last_row_of_panels_lacks_one_or_is_as_full_as_it_can_be() {
        let at_most_three = [1, 2, 3].map(columns);
        assert_eq!(at_most_three, [3, 3, 3]);
        // Panels, columns, and panels in the last row, counted by hand.
        let by_hand = [
            (4, 4, 4),
            (5, 5, 5),
            (6, 3, 3),
            (7, 4, 3),
            (9, 5, 4),
            (12, 4, 4),
            (13, 5, 3),
            (17, 3, 2),
            (20, 5, 5),
            (21, 3, 3),
            (22, 4, 2),
            (24, 5, 4),
        ];
        for (panels, beside, in_last) in by_hand {
            assert_eq!(columns(panels), beside, "{panels}");
            let rows_before = (panels - 1) / beside;
            assert_eq!(panels - rows_before * beside, in_last, "{panels}");
        }
    }
}
