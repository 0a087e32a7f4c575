//! Intervals as points about a line: dots for those that it is drawn through, crosses for the
//! others, and the key that names both.

use plotters::prelude::*;

use super::key::{Entry, Key};
use super::style::{Area, Chart, INK, LINE, QUIET, fault, pt, stroke};
use crate::error::Result;

/// Height of the key's first row, points.
const KEY_PT: f64 = 16.0;
/// Half the size of a dot and of a cross, points.
const DOT_PT: f64 = 1.8;
const CROSS_PT: f64 = 1.9;
/// How far a mark's middle stands before its name, points.
const MARK_PT: f64 = 7.0;
/// How far the line's mark begins before its name, and its length, points.
const LINE_PT: f64 = 17.0;
const LENGTH_PT: f64 = 12.0;
/// Width of the fitted line, points.
pub const LINE_WIDTH_PT: f64 = 1.8;

/// Draws the others as crosses, and on top of them the points of the line as dots.
///
/// # Errors
/// [`crate::error::Error::Internal`] if the drawing fails.
pub fn draw_points(
    chart: &mut Chart<'_, '_>,
    of_line: &[(f64, f64)],
    others: &[(f64, f64)],
) -> Result<()> {
    let crosses = others.iter().map(|at| cross(*at));
    chart.draw_series(crosses).map_err(fault)?;
    let dots = of_line
        .iter()
        .map(|at| EmptyElement::at(*at) + Circle::new((0, 0), pt(DOT_PT), INK.filled()));
    chart.draw_series(dots).map_err(fault)?;
    Ok(())
}

fn cross<C>(at: C) -> Cross<C, i32> {
    Cross::new(at, pt(CROSS_PT), stroke(&QUIET, 0.7))
}

/// A key of both kinds of points and, where there is one, the line.
pub fn point_key(of_line: String, others: String, line: Option<String>, figure_pt: f64) -> Key {
    let entry = |name: String, left_pt: f64, mark_pt: f64| Entry {
        name,
        left_pt,
        mark_pt,
    };
    let points = [entry(of_line, 56.0, 9.0), entry(others, 146.0, 9.0)];
    let line = line.map(|line| entry(line, 227.0, LINE_PT));
    Key::new(points.into_iter().chain(line).collect(), KEY_PT, figure_pt)
}

/// Draws the key; the line's mark has its bands behind it, each of a half height in points and
/// a colour, the widest first.
///
/// # Errors
/// [`crate::error::Error::Internal`] if the drawing fails.
pub fn draw_point_key(area: &Area<'_>, key: &Key, bands: &[(f64, RGBColor)]) -> Result<()> {
    let places = key.write(area, KEY_PT / 2.0 - 1.0)?;
    let before = |place: usize, points: f64| {
        let (left, middle) = *places.get(place)?;
        Some((left - pt(points), middle))
    };
    if let Some(at) = before(0, MARK_PT) {
        let dot = Circle::new(at, pt(DOT_PT), INK.filled());
        area.draw(&dot).map_err(fault)?;
    }
    if let Some(at) = before(1, MARK_PT) {
        area.draw(&cross(at)).map_err(fault)?;
    }
    if let Some((left, middle)) = before(2, LINE_PT) {
        let right = left + pt(LENGTH_PT);
        for (half_pt, colour) in bands {
            let half = pt(*half_pt);
            let band = [(left, middle - half), (right, middle + half)];
            area.draw(&Rectangle::new(band, colour.filled()))
                .map_err(fault)?;
        }
        let ends = vec![(left, middle), (right, middle)];
        let line = PathElement::new(ends, stroke(&LINE, LINE_WIDTH_PT));
        area.draw(&line).map_err(fault)?;
    }
    Ok(())
}
