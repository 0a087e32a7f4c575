//! Which limit set aside which intervals of a run: a lane a reason, below the run's panels and
//! the same for every run of the campaign.

use plotters::prelude::*;
use plotters::style::text_anchor::HPos;

use super::run_axes::{GAP_PT, RunAxes, TEXT_PT};
use crate::error::Result;
use crate::procedure::s580::intervals::Interval;
use crate::report::figures::fit::fit_line;
use crate::report::figures::labels::{Label, Labels, Spot};
use crate::report::figures::style::{Area, GRID, INK, LIMIT, NOTE, fault, pt, stroke};

/// From one lane to the next, points.
pub const LANE_PT: f64 = 7.5;
/// Height of a mark, and the least of its width, points.
const MARK_PT: f64 = 3.6;
const NARROWEST_PT: f64 = 1.0;
/// Room between two marks that follow each other, points.
const BETWEEN_PT: f64 = 0.5;

/// Where the lanes are, points from the left and the top edge of the figure.
pub struct LanesPlace<'p> {
    pub left_pt: f64,
    pub right_pt: f64,
    pub top_pt: f64,
    /// Right edge of the figure, at which the counts end.
    pub edge_pt: f64,
    /// An instant, from the left edge.
    pub across_pt: &'p dyn Fn(i64) -> f64,
}

/// Draws the lanes: their names at the left, a mark an interval, and at the right how many.
///
/// # Errors
/// [`crate::error::Error::Internal`] if the drawing fails.
pub fn draw_lanes(
    area: &Area<'_>,
    labels: &mut Labels,
    axes: &RunAxes,
    intervals: &[&Interval],
    place: &LanesPlace<'_>,
) -> Result<()> {
    for (index, (lane, name)) in axes.lanes.iter().zip(&axes.lane_names).enumerate() {
        let middle_pt = place.top_pt + (index as f64 + 0.5) * LANE_PT;
        let ends = [place.left_pt, place.right_pt].map(|across| (pt(across), pt(middle_pt)));
        area.draw(&PathElement::new(ends.to_vec(), stroke(&GRID, 0.5)))
            .map_err(fault)?;
        let mut count = 0;
        for interval in intervals.iter().filter(|interval| lane.holds(interval)) {
            let span = interval.measured.span;
            let from = (place.across_pt)(span.from_us);
            let to = (place.across_pt)(span.to_us) - BETWEEN_PT;
            let (top, bottom) = (middle_pt - MARK_PT / 2.0, middle_pt + MARK_PT / 2.0);
            let corners = [(from, top), (to.max(from + NARROWEST_PT), bottom)];
            let corners = corners.map(|(across, down)| (pt(across), pt(down)));
            area.draw(&Rectangle::new(corners, LIMIT.filled()))
                .map_err(fault)?;
            count += 1;
        }
        let mut write = |words: &str, colour: &RGBColor, across_pt: f64, room_pt: f64| {
            let label = Label {
                words,
                size_pt: fit_line(words, TEXT_PT, room_pt),
                colour,
            };
            let spot = Spot {
                at: (across_pt, middle_pt),
                side: HPos::Right,
            };
            labels.write(area, &label, &[spot])
        };
        let colour = if count > 0 { INK } else { NOTE };
        let room_pt = place.left_pt - GAP_PT;
        write(name, &colour, room_pt, room_pt)?;
        if count > 0 {
            let room_pt = place.edge_pt - place.right_pt;
            write(&count.to_string(), &LIMIT, place.edge_pt, room_pt)?;
        }
    }
    Ok(())
}
