//! A small chart of one campaign in ink, the others in grey, on axes that all panels share.

use plotters::prelude::*;

use super::strips::Scale;
use crate::error::Result;
use crate::language::fixed;
use crate::report::figures::style::{
    Area, Canvas, Chart, GRID, INK, fault, pt, size, stroke, text,
};

/// Height of a panel, points.
const HEIGHT_PT: f64 = 84.0;
/// Room for the numbers of the axes, points.
const LEFT_PT: f64 = 20.0;
const BELOW_PT: f64 = 12.0;
/// From one number to the next, at least, points.
const X_APART_PT: f64 = 19.0;
const Y_APART_PT: f64 = 17.0;
/// Size of these numbers, points.
const NUMBER_PT: f64 = 7.0;

/// Ink of the others.
pub const OTHERS: RGBColor = RGBColor(0xc3, 0xca, 0xce);

/// The axes that all panels share.
#[derive(Debug, Clone, Copy)]
pub struct Shared {
    pub x: Scale,
    pub y: Scale,
    /// Stands behind the first number of x: behind the last there is no room.
    pub x_unit: &'static str,
}

impl Shared {
    /// Axes that hold what is drawn on any panel of a width in points.
    pub fn holding(
        x: impl Iterator<Item = f64> + Clone,
        y: impl Iterator<Item = f64> + Clone,
        width_pt: f64,
        x_unit: &'static str,
    ) -> Shared {
        Shared {
            x_unit,
            x: Scale::roomy(x, width_pt - LEFT_PT, X_APART_PT),
            y: Scale::roomy(y, HEIGHT_PT - BELOW_PT, Y_APART_PT),
        }
    }
}

/// Draws a panel: grid and numbers, then what is given.
///
/// # Errors
/// [`crate::error::Error::Internal`] if the drawing fails.
pub fn draw_panel(
    shared: &Shared,
    canvas: &Canvas<'_>,
    drawing: impl FnOnce(&mut Chart<'_, '_>) -> Result<()>,
) -> Result<String> {
    canvas.draw(HEIGHT_PT, |area| {
        let mut chart = axes(area, shared, canvas)?;
        drawing(&mut chart)
    })
}

fn axes<'a, 'b>(area: &'a Area<'b>, shared: &Shared, canvas: &Canvas<'_>) -> Result<Chart<'a, 'b>> {
    let ends = |scale: &Scale| scale.start()..scale.end();
    let mut chart = ChartBuilder::on(area)
        .margin_right(size(4.0))
        .margin_top(size(4.0))
        .x_label_area_size(size(BELOW_PT))
        .y_label_area_size(size(LEFT_PT))
        .build_cartesian_2d(ends(&shared.x), ends(&shared.y))
        .map_err(fault)?;
    let said = |scale: Scale| move |at: &f64| canvas.words.say(fixed(*at, scale.decimals()));
    let (x_number, y_text) = (said(shared.x), said(shared.y));
    let first = shared.x.steps().next();
    let x_text = |at: &f64| match first.map(|first| x_number(&first)) {
        Some(first) if first == x_number(at) => format!("{first}\u{a0}{}", shared.x_unit),
        _ => x_number(at),
    };
    for at in shared.y.steps() {
        let line = [(shared.x.start(), at), (shared.x.end(), at)];
        chart
            .draw_series(LineSeries::new(line, stroke(&GRID, 0.5)))
            .map_err(fault)?;
    }
    chart
        .configure_mesh()
        .disable_mesh()
        .x_labels(shared.x.steps().count())
        .y_labels(shared.y.steps().count())
        .axis_style(stroke(&INK, 0.6))
        .set_all_tick_mark_size(pt(1.8))
        .label_style(text(NUMBER_PT, &INK))
        .x_label_formatter(&x_text)
        .y_label_formatter(&y_text)
        .draw()
        .map_err(fault)?;
    Ok(chart)
}
