//! One panel in the figure of a run: its place, its axis, and what is drawn on it.

use plotters::prelude::*;
use plotters::style::text_anchor::HPos;

use super::run_axes::{GAP_PT, Scale, TEXT_PT};
use crate::error::Result;
use crate::language::{Words, short};
use crate::report::figures::labels::{Label, Labels, PlacePt, Spot};
use crate::report::figures::style::{Area, GRID, INK, LIMIT, NOTE, SHADE, fault, pt, size, stroke};

/// Width of a limit's line; nothing else is drawn in amber with this stroke.
const LIMIT_PT: f64 = 0.75;
/// Length of a dash of a limit's line and of the gap after it, points.
const DASH_PT: f64 = 1.8;
const DASH_GAP_PT: f64 = 1.5;
/// Least distance between two round numbers at an axis, and of one from a limit's, points.
const TICK_PT: f64 = 12.0;
const FROM_LIMIT_PT: f64 = 8.0;
/// Steps between numbers at an axis, in its unit.
const STEPS: &[f64] = &[
    0.5, 1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0, 200.0, 500.0, 1000.0,
];

/// A panel: its edges in points, and what they stand for.
pub struct Panel<'s> {
    pub left_pt: f64,
    pub right_pt: f64,
    pub top_pt: f64,
    pub bottom_pt: f64,
    pub span_h: (f64, f64),
    pub scale: &'s Scale,
}

impl Panel<'_> {
    /// From the left edge of the figure, points.
    pub fn across_pt(&self, hours: f64) -> f64 {
        let (from_h, to_h) = self.span_h;
        let share = ((hours - from_h) / (to_h - from_h)).clamp(0.0, 1.0);
        self.left_pt + share * (self.right_pt - self.left_pt)
    }

    /// From the top edge of the figure, points.
    pub fn down_pt(&self, value: f64) -> f64 {
        let (low, high) = self.scale.range;
        let share = ((value - low) / (high - low)).clamp(0.0, 1.0);
        self.bottom_pt - share * (self.bottom_pt - self.top_pt)
    }

    /// Where a value at an hour stands.
    pub fn place(&self, hours: f64, value: f64) -> PlacePt {
        (self.across_pt(hours), self.down_pt(value))
    }

    /// The ends of a level line at a value.
    pub fn level(&self, value: f64) -> [PlacePt; 2] {
        let down = self.down_pt(value);
        [(self.left_pt, down), (self.right_pt, down)]
    }

    /// Shades spans of hours.
    ///
    /// # Errors
    /// [`crate::error::Error::Internal`] if the drawing fails.
    pub fn shade(&self, area: &Area<'_>, spans_h: &[(f64, f64)]) -> Result<()> {
        for &(from_h, to_h) in spans_h {
            let corners = [(from_h, self.top_pt), (to_h, self.bottom_pt)];
            let corners = corners.map(|(hours, down)| units((self.across_pt(hours), down)));
            area.draw(&Rectangle::new(corners, SHADE.filled()))
                .map_err(fault)?;
        }
        Ok(())
    }

    /// Draws the axis: limits with their numbers, round numbers where there is room beside
    /// them, and the line along the bottom.
    ///
    /// # Errors
    /// [`crate::error::Error::Internal`] if the drawing fails.
    pub fn draw_axis(&self, area: &Area<'_>, labels: &mut Labels, words: &Words) -> Result<()> {
        let mut number = |value: f64, words: &str, colour: &RGBColor| {
            let label = Label {
                words,
                size_pt: TEXT_PT,
                colour,
            };
            let at = (self.left_pt - GAP_PT, self.down_pt(value));
            let side = HPos::Right;
            labels.write(area, &label, &[Spot { at, side }])
        };
        for limit in &self.scale.limits {
            number(limit.value, &limit.name, &LIMIT)?;
        }
        for value in self.round_values() {
            if number(value, &words.say(short(value)), &NOTE)? {
                draw_line(area, &self.level(value), stroke(&GRID, 0.5))?;
            }
        }
        for limit in &self.scale.limits {
            draw_limit(area, &self.level(limit.value))?;
        }
        let bottom = [self.left_pt, self.right_pt].map(|across| (across, self.bottom_pt));
        labels.keep_clear_of(&bottom);
        draw_line(area, &bottom, stroke(&INK, 0.6))
    }

    /// Numbers in round steps, none of them near a limit; zero, or the lowest, first.
    fn round_values(&self) -> Vec<f64> {
        let (low, high) = self.scale.range;
        let per_unit_pt = (self.bottom_pt - self.top_pt) / (high - low);
        let last_number = self.scale.last_number;
        let fits = |step: &&f64| **step * per_unit_pt >= TICK_PT;
        let Some(step) = STEPS.iter().find(fits) else {
            return Vec::new();
        };
        let (first, last) = (
            (low / step).ceil() as i64,
            (last_number / step).floor() as i64,
        );
        let values = (first..=last).map(|count| count as f64 * step);
        let is_free = |value: &f64| {
            let down = self.down_pt(*value);
            let mut limits = self.scale.limits.iter();
            limits.all(|limit| (self.down_pt(limit.value) - down).abs() >= FROM_LIMIT_PT)
        };
        values.filter(is_free).collect()
    }
}

/// Points to drawing units.
fn units((across, down): PlacePt) -> (i32, i32) {
    (pt(across), pt(down))
}

/// Draws a line through places in points; a place alone is a dot.
///
/// # Errors
/// [`crate::error::Error::Internal`] if the drawing fails.
pub fn draw_line(area: &Area<'_>, places: &[PlacePt], style: ShapeStyle) -> Result<()> {
    let points: Vec<(i32, i32)> = places.iter().copied().map(units).collect();
    match points.as_slice() {
        [alone] => area.draw(&Circle::new(*alone, pt(1.2), style.filled())),
        _ => area.draw(&PathElement::new(points, style)),
    }
    .map_err(fault)
}

/// Draws a limit, which [`dotted`] makes a dotted line.
///
/// # Errors
/// [`crate::error::Error::Internal`] if the drawing fails.
pub fn draw_limit(area: &Area<'_>, places: &[PlacePt]) -> Result<()> {
    draw_line(area, places, stroke(&LIMIT, LIMIT_PT))
}

/// A figure with its limits dotted. plotters draws every dash as an element of its own; one
/// attribute does it, and the file of a long campaign stays small.
pub fn dotted(svg: &str) -> String {
    let RGBColor(red, green, blue) = LIMIT;
    let plain = format!(
        "stroke=\"#{red:02X}{green:02X}{blue:02X}\" stroke-width=\"{}\"",
        size(LIMIT_PT)
    );
    let (dash, gap) = (size(DASH_PT), size(DASH_GAP_PT));
    svg.replace(
        &plain,
        &format!("{plain} stroke-dasharray=\"{dash} {gap}\""),
    )
}
