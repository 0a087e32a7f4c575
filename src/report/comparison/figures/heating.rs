//! The drawings of heating times.

use super::ranked::asset;
use super::strips::{Dot, Scale, draw_axis, draw_strip};
use crate::comparison::Comparison;
use crate::error::Result;
use crate::language::{Phrase, Words, duration};
use crate::report::assets::Asset;
use crate::report::comparison::words::heating::HeatingPart;
use crate::report::comparison::words::ranking::mark;
use crate::report::figures::style::Canvas;

/// The axis ends at so many times the longest best estimate: a range may have no end at all.
const BEYOND: f64 = 2.0;

/// Draws axis and strips, by their names.
///
/// # Errors
/// [`crate::error::Error::Internal`] if the drawing fails.
pub fn heating_strips(
    comparison: &Comparison,
    part: &HeatingPart,
    words: &Words,
) -> Result<Vec<Asset>> {
    let ranges = || part.rows.iter().filter_map(|row| row.range);
    let slowest_s = ranges().map(|range| range.best_s).fold(0.0, f64::max);
    let ends = ranges().map(|range| range.longest_s.unwrap_or(range.best_s));
    let ends = ends.map(|end| end.min(BEYOND * slowest_s));
    let scale = Scale::of_times(ends, part.plot_pt);
    let canvas = Canvas {
        words,
        width_pt: part.plot_pt,
    };
    let label = |at: f64| match at {
        0.0 => Phrase::from("0"),
        _ => duration(at),
    };
    let mut assets = vec![asset(&part.axis, draw_axis(&scale, label, &canvas)?)];
    for row in &part.rows {
        let level = comparison.standings[row.place].level;
        let dot = row.range.map(|range| Dot {
            value: range.best_s,
            lower: range.shortest_s,
            upper: range.longest_s.filter(|end| *end <= scale.end()),
            mark: mark(level),
        });
        let strip = draw_strip(
            &scale,
            dot.as_ref(),
            (part.row_pt, part.row_pt / 2.0),
            &canvas,
        )?;
        assets.push(asset(&row.strip, strip));
    }
    Ok(assets)
}
