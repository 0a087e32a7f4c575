//! Bars with whiskers: a value a step, its range, and the number itself.

use plotters::prelude::*;
use plotters::style::text_anchor::{HPos, VPos};

use super::axis::Axis;
use super::fit::{fit_line, strong_width_pt, width_pt};
use super::style::{
    Area, BAND, Canvas, GRID, INK, LINE, NOTE, anchored, fault, points, pt, size, stroke, strong,
    text,
};
use crate::error::Result;
use crate::language::{Words, fixed};
use crate::procedure::cooking::pots::Spread;

/// Height of a panel, points.
const HEIGHT_PT: f64 = 88.0;
/// Room above a chart for its name, and below for the names of its steps, points.
const NAME_PT: f64 = 15.0;
const STEPS_PT: f64 = 12.0;
/// Least room left of it for the numbers of its axis, and what they keep off it, points.
const NUMBERS_PT: f64 = 26.0;
const BESIDE_PT: f64 = 7.0;
/// Between two panels, points.
const GAP_PT: f64 = 14.0;
/// Narrower canvases have their panels one below the other, points.
const ABREAST_PT: f64 = 400.0;
/// Sizes of the names of panels, and of all other type, points.
const STRONG_PT: f64 = 8.0;
const SMALL_PT: f64 = 7.0;
/// Half the width of a bar and of a whisker's ends, as a share of a step.
const BAR: f64 = 0.34;
const END: f64 = 0.13;
/// Room above the highest whisker for its number, as a share of the axis.
const HEADROOM: f64 = 0.16;
/// Least distance of two names of steps, points.
const APART_PT: f64 = 1.5;

/// A panel.
pub struct Bars {
    /// Upright.
    pub axis: Axis,
    /// A value a step; none is below zero.
    pub values: Vec<Spread>,
    pub decimals: usize,
}

/// Draws panels over the same steps, abreast where there is room; `steps` are their names.
///
/// # Errors
/// [`crate::error::Error::Internal`] if the drawing fails.
pub fn draw_bars(panels: &[Bars], steps: &[String], canvas: &Canvas<'_>) -> Result<String> {
    let is_abreast = canvas.width_pt >= ABREAST_PT;
    let rows = if is_abreast { 1 } else { panels.len() };
    canvas.draw(HEIGHT_PT * rows as f64, |area| {
        let shape = if is_abreast {
            (1, panels.len())
        } else {
            (rows, 1)
        };
        let parts = area.split_evenly(shape);
        for (panel, part) in panels.iter().zip(&parts) {
            let part = part.margin(0, size(4.0), 0, size(if is_abreast { GAP_PT } else { 0.0 }));
            draw_panel(&part, panel, steps, canvas.words)?;
        }
        Ok(())
    })
}

fn draw_panel(area: &Area<'_>, panel: &Bars, steps: &[String], words: &Words) -> Result<()> {
    let wide_pt = points(area.dim_in_pixel().0);
    let (name, chart) = area.split_vertically(pt(NAME_PT));
    let said = panel.axis.name(words);
    let fitted = STRONG_PT.min(STRONG_PT * (wide_pt - 1.0) / strong_width_pt(&said, STRONG_PT));
    let style = anchored(strong(fitted, &INK), HPos::Left, VPos::Top);
    name.draw(&Text::new(said, (pt(1.0), pt(1.0)), style))
        .map_err(fault)?;
    let top = panel.values.iter().map(|value| value.highest);
    let top = top.fold(0.0, f64::max).max(f64::MIN_POSITIVE) * (1.0 + HEADROOM);
    let decimals = usize::from(top < 4.0);
    let number = |value: f64| panel.axis.number(fixed(value, decimals), words);
    let numbers_pt = NUMBERS_PT.max(width_pt(&number(top), SMALL_PT) + BESIDE_PT);
    let mut chart = ChartBuilder::on(&chart)
        .margin_top(size(2.0))
        .x_label_area_size(size(STEPS_PT))
        .y_label_area_size(size(numbers_pt))
        .build_cartesian_2d(0.5..steps.len() as f64 + 0.5, 0.0..top)
        .map_err(fault)?;
    chart
        .configure_mesh()
        .disable_x_mesh()
        .x_labels(0)
        .y_labels(4)
        .light_line_style(TRANSPARENT)
        .bold_line_style(stroke(&GRID, 0.5))
        .axis_style(stroke(&INK, 0.7))
        .set_all_tick_mark_size(pt(2.0))
        .label_style(text(SMALL_PT, &INK))
        .y_label_formatter(&|value| number(*value))
        .draw()
        .map_err(fault)?;
    let step_pt = points(chart.plotting_area().dim_in_pixel().0) / steps.len() as f64;
    let placed = || {
        panel
            .values
            .iter()
            .zip(1..)
            .map(|(value, step)| (f64::from(step), *value))
    };
    let bars = placed()
        .map(|(x, value)| Rectangle::new([(x - BAR, 0.0), (x + BAR, value.best)], BAND.filled()));
    chart.draw_series(bars).map_err(fault)?;
    chart
        .draw_series(placed().flat_map(|(x, value)| whisker(x, value)))
        .map_err(fault)?;
    let numbers: Vec<String> = panel
        .values
        .iter()
        .map(|value| words.say(fixed(value.best, panel.decimals)))
        .collect();
    let number_pt = smallest(&numbers, step_pt);
    let labels = placed().zip(&numbers).map(|((x, value), number)| {
        let style = anchored(text(number_pt, &INK), HPos::Center, VPos::Bottom);
        EmptyElement::at((x, value.highest)) + Text::new(number.clone(), (0, -pt(1.5)), style)
    });
    chart.draw_series(labels).map_err(fault)?;
    let step_size_pt = smallest(steps, step_pt);
    let names = steps.iter().zip(1..).map(|(name, step)| {
        let style = anchored(text(step_size_pt, &NOTE), HPos::Center, VPos::Top);
        EmptyElement::at((f64::from(step), 0.0)) + Text::new(name.clone(), (0, pt(3.0)), style)
    });
    chart.draw_series(names).map_err(fault)?;
    Ok(())
}

/// From end to end of a range, with a cap at both.
fn whisker(x: f64, value: Spread) -> [PathElement<(f64, f64)>; 3] {
    let Spread {
        lowest, highest, ..
    } = value;
    let line = |ends: Vec<(f64, f64)>| PathElement::new(ends, stroke(&LINE, 0.8));
    [
        line(vec![(x, lowest), (x, highest)]),
        line(vec![(x - END, lowest), (x + END, lowest)]),
        line(vec![(x - END, highest), (x + END, highest)]),
    ]
}

/// The size at which each of several labels fits into a step.
fn smallest(labels: &[String], step_pt: f64) -> f64 {
    let sizes = labels
        .iter()
        .map(|label| fit_line(label, SMALL_PT, step_pt - APART_PT));
    sizes.fold(SMALL_PT, f64::min)
}
