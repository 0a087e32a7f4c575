//! Bands about a line.

use plotters::prelude::*;

use super::style::{Chart, fault};
use crate::error::Result;

/// How much a clear band covers.
const CLEAR: f64 = 0.16;
/// Points along a band.
const STEPS: usize = 80;

/// Evenly spaced places from one end of a span to the other.
pub fn steps((left, right): (f64, f64)) -> impl DoubleEndedIterator<Item = f64> + Clone {
    let step = (right - left) / STEPS as f64;
    (0..=STEPS).map(move |index| left + step * index as f64)
}

/// Lower and upper edge at a distance from a middle.
pub fn about(middle: f64, half_width: f64) -> (f64, f64) {
    (middle - half_width, middle + half_width)
}

/// Fills the space between a lower and an upper edge.
///
/// # Errors
/// [`crate::error::Error::Internal`] if the drawing fails.
pub fn fill_band(
    chart: &mut Chart<'_, '_>,
    span: (f64, f64),
    colour: RGBColor,
    edges: impl Fn(f64) -> (f64, f64),
) -> Result<()> {
    fill(chart, span, colour.filled(), edges)
}

/// The same, with what lies below shining through.
///
/// # Errors
/// [`crate::error::Error::Internal`] if the drawing fails.
pub fn fill_band_clear(
    chart: &mut Chart<'_, '_>,
    span: (f64, f64),
    colour: RGBColor,
    edges: impl Fn(f64) -> (f64, f64),
) -> Result<()> {
    fill(chart, span, colour.mix(CLEAR).filled(), edges)
}

fn fill(
    chart: &mut Chart<'_, '_>,
    span: (f64, f64),
    style: ShapeStyle,
    edges: impl Fn(f64) -> (f64, f64),
) -> Result<()> {
    let both: Vec<(f64, (f64, f64))> = steps(span).map(|x| (x, edges(x))).collect();
    let upper = both.iter().map(|(x, (_, upper))| (*x, *upper));
    let lower = both.iter().rev().map(|(x, (lower, _))| (*x, *lower));
    let outline: Vec<(f64, f64)> = upper.chain(lower).collect();
    let band = Polygon::new(outline, style);
    chart.draw_series([band]).map_err(fault)?;
    Ok(())
}
