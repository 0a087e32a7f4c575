//! Which limit set aside which minutes of a run: a row a reason, below the run's panels.

use plotters::prelude::*;
use plotters::style::text_anchor::{HPos, VPos};

use crate::error::Result;
use crate::language::{Words, duration};
use crate::message;
use crate::procedure::s580::intervals::Interval;
use crate::procedure::s580::reason::Reason;
use crate::report::figures::style::{
    Area, GRID, INK, QUIET, anchored, chart, fault, pt, stroke, text,
};

/// Height of a row, points: its name with its bar below.
pub const ROW_PT: f64 = 14.5;
/// Height of a bar as a share of its row.
const BAR_SHARE: f64 = 0.2;

/// One row: a name, and the intervals that it stands for.
pub struct StripRow<'i> {
    pub name: String,
    pub intervals: Vec<&'i Interval>,
    pub is_used: bool,
}

/// What the strip shares with the panels above it.
pub struct StripPlace<'p> {
    pub span_h: (f64, f64),
    /// Right margin, points.
    pub right_pt: f64,
    /// Local clock time of an instant, hours.
    pub hours: &'p dyn Fn(i64) -> f64,
}

/// The rows of a run: what is used, then each reason that set something aside, in the order
/// of the limits.
pub fn strip_rows<'i>(intervals: &[&'i Interval], words: &Words) -> Vec<StripRow<'i>> {
    let row = |reason: Option<Reason>| {
        let of_row = |interval: &&Interval| match reason {
            Some(reason) => interval.reasons().contains(&reason),
            None => interval.is_on_line(),
        };
        let intervals: Vec<&Interval> = intervals.iter().copied().filter(of_row).collect();
        let time = duration(
            intervals
                .iter()
                .map(|interval| interval.measured.duration_s)
                .sum(),
        );
        let name = match reason {
            Some(reason) => message!("strip-aside", reason = reason.describe(), time = time),
            None => message!("strip-used", time = time),
        };
        StripRow {
            name: words.say(name),
            is_used: reason.is_none(),
            intervals,
        }
    };
    let aside = Reason::ALL.iter().map(|&reason| row(Some(reason)));
    let rows = [row(None)].into_iter().chain(aside);
    rows.filter(|row| row.is_used || !row.intervals.is_empty())
        .collect()
}

/// Draws the rows on an area under panels that show the same span of hours.
///
/// # Errors
/// [`crate::error::Error::Internal`] if the drawing fails.
pub fn draw_strip(area: &Area<'_>, rows: &[StripRow<'_>], place: &StripPlace<'_>) -> Result<()> {
    let (from_h, to_h) = place.span_h;
    let count = rows.len() as f64;
    let mut chart = chart(area, (from_h, to_h), (0.0, count), false, place.right_pt)?;
    for (index, row) in rows.iter().enumerate() {
        let bottom = count - index as f64 - 1.0;
        let line = PathElement::new(
            vec![
                (from_h, bottom + BAR_SHARE / 2.0),
                (to_h, bottom + BAR_SHARE / 2.0),
            ],
            stroke(&GRID, 0.5),
        );
        chart.draw_series([line]).map_err(fault)?;
        let colour = if row.is_used { INK } else { QUIET };
        let bars = row.intervals.iter().map(|interval| {
            let (start_h, end_h) = (
                (place.hours)(interval.measured.span.from_us),
                (place.hours)(interval.measured.span.to_us),
            );
            Rectangle::new(
                [(start_h, bottom), (end_h, bottom + BAR_SHARE)],
                colour.filled(),
            )
        });
        chart.draw_series(bars).map_err(fault)?;
        let style = anchored(text(7.0, &INK), HPos::Left, VPos::Bottom);
        let name = EmptyElement::at((from_h, bottom + BAR_SHARE))
            + Text::new(row.name.clone(), (0, -pt(1.2)), style);
        chart.draw_series([name]).map_err(fault)?;
    }
    Ok(())
}
