//! Labels that touch neither each other nor a curve, and do not leave their figure.

use plotters::prelude::*;
use plotters::style::text_anchor::{HPos, VPos};

use super::fit::width_pt;
use super::style::{Area, anchored, fault, pt, text};
use crate::error::Result;

/// Height of a line of text as a share of its size.
const LINE_HEIGHT: f64 = 1.0;
/// Least distance from what has been drawn, points.
const CLEAR_PT: f64 = 1.2;
/// From one point of a curve that is to be kept clear of to the next, points.
const CURVE_STEP_PT: f64 = 1.0;

/// A place on a figure: points from its left and from its top edge.
pub type PlacePt = (f64, f64);

/// Where a label may stand: at the left, the middle or the right of a place, which is at half
/// its height.
#[derive(Clone, Copy)]
pub struct Spot {
    pub at: PlacePt,
    pub side: HPos,
}

/// A label: its words, their size in points and their colour.
#[derive(Clone, Copy)]
pub struct Label<'w> {
    pub words: &'w str,
    pub size_pt: f64,
    pub colour: &'w RGBColor,
}

#[derive(Debug, Clone, Copy)]
struct Frame {
    left: f64,
    top: f64,
    right: f64,
    bottom: f64,
}

impl Frame {
    fn of(label: &Label<'_>, spot: Spot) -> Self {
        let (x, y) = spot.at;
        let width = width_pt(label.words, label.size_pt);
        let left = match spot.side {
            HPos::Left => x,
            HPos::Center => x - width / 2.0,
            HPos::Right => x - width,
        };
        let half = label.size_pt * LINE_HEIGHT / 2.0;
        Frame {
            left,
            top: y - half,
            right: left + width,
            bottom: y + half,
        }
    }

    fn touches(&self, other: &Frame) -> bool {
        self.left < other.right + CLEAR_PT
            && other.left < self.right + CLEAR_PT
            && self.top < other.bottom
            && other.top < self.bottom
    }

    fn is_met_by(&self, (x, y): PlacePt) -> bool {
        (self.left - CLEAR_PT..=self.right + CLEAR_PT).contains(&x)
            && (self.top..=self.bottom).contains(&y)
    }
}

/// The labels of one figure.
pub struct Labels {
    width_pt: f64,
    height_pt: f64,
    taken: Vec<Frame>,
    kept_clear: Vec<PlacePt>,
}

impl Labels {
    /// None yet, on a figure of a size in points.
    pub fn new(width_pt: f64, height_pt: f64) -> Self {
        Labels {
            width_pt,
            height_pt,
            taken: Vec::new(),
            kept_clear: Vec::new(),
        }
    }

    /// Width of the figure, points.
    pub fn width_pt(&self) -> f64 {
        self.width_pt
    }

    /// No label comes to stand on this curve.
    pub fn keep_clear_of(&mut self, curve: &[PlacePt]) {
        self.kept_clear.extend(curve.first());
        for pair in curve.windows(2) {
            let [(x, y), (next_x, next_y)] = [pair[0], pair[1]];
            let (along, down) = (next_x - x, next_y - y);
            let steps = (along.abs().max(down.abs()) / CURVE_STEP_PT)
                .ceil()
                .max(1.0);
            let step = |n: usize| {
                let share = n as f64 / steps;
                (x + along * share, y + down * share)
            };
            self.kept_clear.extend((1..=steps as usize).map(step));
        }
    }

    /// Writes a label at the first of some spots where it is free, and tells whether there
    /// was one.
    ///
    /// # Errors
    /// [`crate::error::Error::Internal`] if the drawing fails.
    pub fn write(&mut self, area: &Area<'_>, label: &Label<'_>, spots: &[Spot]) -> Result<bool> {
        let is_free = |spot: &&Spot| {
            let frame = Frame::of(label, **spot);
            let is_inside = frame.left >= 0.0
                && frame.right <= self.width_pt
                && frame.top >= 0.0
                && frame.bottom <= self.height_pt;
            let meets = |place: &PlacePt| frame.is_met_by(*place);
            is_inside
                && !self.taken.iter().any(|other| frame.touches(other))
                && !self.kept_clear.iter().any(meets)
        };
        let Some(spot) = spots.iter().find(is_free) else {
            return Ok(false);
        };
        self.taken.push(Frame::of(label, *spot));
        let style = anchored(text(label.size_pt, label.colour), spot.side, VPos::Center);
        let at = (pt(spot.at.0), pt(spot.at.1));
        area.draw(&Text::new(label.words.to_owned(), at, style))
            .map_err(fault)?;
        Ok(true)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::language::Words;
    use crate::report::figures::style::{Canvas, INK};

    fn written(spots: &[PlacePt], curve: &[PlacePt]) -> Vec<bool> {
        let mut written = Vec::new();
        let canvas = Canvas::phone(Words::english());
        let drawn = canvas.draw(50.0, |area| {
            let mut labels = Labels::new(canvas.width_pt, 50.0);
            labels.keep_clear_of(curve);
            for at in spots {
                let label = Label {
                    words: "water",
                    size_pt: 8.0,
                    colour: &INK,
                };
                let side = HPos::Left;
                written.push(labels.write(area, &label, &[Spot { at: *at, side }])?);
            }
            Ok(())
        });
        drawn.unwrap();
        written
    }

    #[test]
    fn a_label_that_would_touch_another_is_left_out() {
        let spots = [(10.0, 20.0), (15.0, 22.0), (10.0, 29.0), (60.0, 20.0)];
        assert_eq!(written(&spots, &[]), [true, false, true, true]);
    }

    #[test]
    fn a_label_stands_neither_on_a_curve_nor_beyond_the_figure() {
        let curve = [(0.0, 10.0), (270.0, 10.0)];
        let spots = [(50.0, 12.0), (50.0, 20.0), (260.0, 30.0), (-1.0, 40.0)];
        assert_eq!(written(&spots, &curve), [false, true, false, false]);
    }
}
