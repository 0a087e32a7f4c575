//! What was measured as thin lines with dots, and what the figures of a procedure say of it as a
//! thick line.

use plotters::prelude::*;

use super::key::{Entry, Key};
use super::points::LINE_WIDTH_PT;
use super::style::{
    Area, Axes, Canvas, INK, LINE, QUIET, chart, draw_axes, fault, label_decimals, padded, pt,
    stroke,
};
use crate::error::Result;
use crate::language::{Words, fixed};

/// A point of a curve, in the units of the axes.
pub type At = (f64, f64);

const HEIGHT_PT: f64 = 190.0;
const KEY_PT: f64 = 16.0;
const X_LABELS: usize = 8;
const Y_LABELS: usize = 6;
/// Most readings of a curve that are drawn as dots.
const MOST_DOTS: usize = 60;
const DOT_PT: f64 = 1.5;
const THIN_PT: f64 = 0.7;
/// A mark of the key: how far it begins before its name, and its length, points.
const MARK_PT: f64 = 17.0;
const LENGTH_PT: f64 = 12.0;

/// What a figure shows, and what it says.
pub struct Curves {
    pub measured: Vec<Vec<At>>,
    /// Measured points that are not joined: each is a dot.
    pub are_joined: bool,
    pub told: Vec<Vec<At>>,
    pub measured_name: String,
    /// Empty: there is no other curve.
    pub told_name: String,
    pub x_name: String,
    pub y_name: String,
    /// The upright axis begins at zero.
    pub from_zero: bool,
}

/// Draws the curves with their key.
///
/// # Errors
/// [`crate::error::Error::Internal`] if the drawing fails.
pub fn draw_curves(curves: &Curves, canvas: &Canvas<'_>) -> Result<String> {
    let entry = |name: &String, left_pt: f64| Entry {
        name: name.clone(),
        left_pt,
        mark_pt: MARK_PT,
    };
    let mut entries = vec![entry(&curves.measured_name, 64.0)];
    if !curves.told_name.is_empty() {
        entries.push(entry(&curves.told_name, 190.0));
    }
    let key = Key::new(entries, KEY_PT, canvas.width_pt);
    canvas.draw(HEIGHT_PT, |area| draw_on(area, curves, &key, canvas.words))
}

fn draw_on(area: &Area<'_>, curves: &Curves, key: &Key, words: &Words) -> Result<()> {
    let (names, plot) = area.split_vertically(pt(key.height_pt()));
    draw_key(&names, key)?;
    let all = || curves.measured.iter().chain(&curves.told).flatten();
    let across = ends(all().map(|at| at.0));
    let up = padded(all().map(|at| at.1), curves.from_zero);
    let mut chart = chart(&plot, across, up, true, 8.0)?;
    for curve in &curves.measured {
        if curves.are_joined {
            let line = LineSeries::new(curve.iter().copied(), stroke(&QUIET, THIN_PT));
            chart.draw_series(line).map_err(fault)?;
        }
        if !curves.are_joined || curve.len() <= MOST_DOTS {
            let dots = curve
                .iter()
                .map(|at| EmptyElement::at(*at) + Circle::new((0, 0), pt(DOT_PT), INK.filled()));
            chart.draw_series(dots).map_err(fault)?;
        }
    }
    for curve in &curves.told {
        let line = LineSeries::new(curve.iter().copied(), stroke(&LINE, LINE_WIDTH_PT));
        chart.draw_series(line).map_err(fault)?;
    }
    let (x_decimals, y_decimals) = (
        label_decimals(across, X_LABELS),
        label_decimals(up, Y_LABELS),
    );
    let axes = Axes {
        x_name: &curves.x_name,
        y_name: &curves.y_name,
        x_text: &|value| words.say(fixed(*value, x_decimals)),
        y_text: &|value| words.say(fixed(*value, y_decimals)),
        x_labels: X_LABELS,
        y_labels: Y_LABELS,
    };
    draw_axes(&mut chart, &axes)
}

fn draw_key(area: &Area<'_>, key: &Key) -> Result<()> {
    let places = key.write(area, KEY_PT / 2.0 - 1.0)?;
    let marks = [(QUIET, THIN_PT), (LINE, LINE_WIDTH_PT)];
    for ((left, middle), (colour, width_pt)) in places.into_iter().zip(marks) {
        let from = left - pt(MARK_PT);
        let ends = vec![(from, middle), (from + pt(LENGTH_PT), middle)];
        area.draw(&PathElement::new(ends, stroke(&colour, width_pt)))
            .map_err(fault)?;
        if colour == QUIET {
            let at = (from + pt(LENGTH_PT / 2.0), middle);
            let dot = Circle::new(at, pt(DOT_PT), INK.filled());
            area.draw(&dot).map_err(fault)?;
        }
    }
    Ok(())
}

/// From the lowest to the highest value, without room around.
fn ends(values: impl Iterator<Item = f64>) -> (f64, f64) {
    let (low, high) = values.fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), value| {
        (low.min(value), high.max(value))
    });
    if low < high {
        (low, high)
    } else {
        padded([low, high].into_iter(), false)
    }
}
