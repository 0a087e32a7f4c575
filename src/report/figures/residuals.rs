//! Residuals about the line: what the scatter looks like.

use plotters::prelude::*;

use super::style::{Axes, INK, LINE, chart, draw, draw_axes, fault, padded, pt, size, stroke};
use crate::error::Result;
use crate::procedure::Assessment;
use crate::procedure::intervals::Interval;
use crate::stats::line::Line;
use crate::units::fixed;

const HEIGHT_PT: f64 = 135.0;

/// Draws the residuals of the used intervals, with lines at twice their standard deviation.
///
/// # Errors
/// [`crate::error::Error::Internal`] if the drawing fails.
pub fn draw_residuals(assessment: &Assessment, line: &Line) -> Result<String> {
    let points = assessment.used().filter_map(Interval::point);
    let residuals: Vec<(f64, f64)> = points
        .map(|(k, power_w)| (k, power_w - line.predict(k)))
        .collect();
    let twice_w = 2.0 * line.residual_sd;
    let (left_k, right_k) = padded(residuals.iter().map(|point| point.0), false);
    let largest_w = residuals
        .iter()
        .map(|point| point.1.abs())
        .fold(twice_w, f64::max)
        * 1.15
        + 1e-6;
    draw(HEIGHT_PT, |area| {
        let mut chart = chart(area, (left_k, right_k), (-largest_w, largest_w), true, 6.0)?;
        let decimals = if largest_w < 3.0 { 1 } else { 0 };
        let axes = Axes {
            x_name: "temperature difference Td, K",
            y_name: "Ps minus line, W",
            x_text: &|value| fixed(*value, 0),
            y_text: &|value| fixed(*value, decimals),
            x_labels: 10,
            y_labels: 5,
        };
        draw_axes(&mut chart, &axes)?;
        let level = [(left_k, 0.0), (right_k, 0.0)];
        chart
            .draw_series(LineSeries::new(level, stroke(&LINE, 1.2)))
            .map_err(fault)?;
        for height_w in [-twice_w, twice_w] {
            let ends = [(left_k, height_w), (right_k, height_w)];
            let dashed = DashedLineSeries::new(ends, size(2.0), size(2.5), stroke(&LINE, 0.6));
            chart.draw_series(dashed).map_err(fault)?;
        }
        let dots = residuals
            .iter()
            .map(|&at| Circle::new(at, pt(1.8), INK.filled()));
        chart.draw_series(dots).map_err(fault)?;
        Ok(())
    })
}
