//! The rating on a scale, with its 95 % interval.

use plotters::prelude::*;

use crate::error::Result;
use crate::language::fixed;
use crate::procedure::s580::rated::Rated;
use crate::report::figures::style::{
    Canvas, GRID, INK, LINE, chart_without_names, fault, label_decimals, pt, stroke, text,
};

/// Its size, points.
pub const WIDTH_PT: f64 = 214.0;
const HEIGHT_PT: f64 = 30.0;
/// Ticks of the scale, about.
const TICKS: usize = 5;
/// How far the scale goes beyond the interval, as a share of its half.
const BEYOND: f64 = 0.9;
/// Height of the interval as a share of the chart.
const BAR: f64 = 0.34;

/// Draws it.
///
/// # Errors
/// [`crate::error::Error::Internal`] if the drawing fails.
pub fn draw_rating_interval(rated: &Rated, canvas: &Canvas<'_>) -> Result<String> {
    let watts = rated.rating.ps50_w;
    let half_w = rated.uncertainty.half_width_w().max(1e-6);
    let (low_w, high_w) = (watts - half_w, watts + half_w);
    let scale = (low_w - BEYOND * half_w, high_w + BEYOND * half_w);
    let words = canvas.words;
    canvas.draw(HEIGHT_PT, |area| {
        let mut chart = chart_without_names(area, scale, (0.0, 1.0))?;
        let decimals = label_decimals(scale, TICKS);
        chart
            .configure_mesh()
            .disable_y_mesh()
            .disable_y_axis()
            .bold_line_style(stroke(&GRID, 0.5))
            .light_line_style(TRANSPARENT)
            .axis_style(stroke(&INK, 0.6))
            .set_all_tick_mark_size(pt(2.0))
            .label_style(text(7.5, &INK))
            .x_labels(TICKS)
            .x_label_formatter(&|value| words.say(fixed(*value, decimals)))
            .draw()
            .map_err(fault)?;
        let bar = [(low_w, 0.5 + BAR / 2.0), (high_w, 0.5 - BAR / 2.0)];
        let bar = Rectangle::new(bar, LINE.filled());
        chart.draw_series([bar]).map_err(fault)?;
        let mark = EmptyElement::at((watts, 0.5))
            + Circle::new((0, 0), pt(4.2), LINE.filled())
            + Circle::new((0, 0), pt(2.8), WHITE.filled());
        chart.draw_series([mark]).map_err(fault)?;
        Ok(())
    })
}
