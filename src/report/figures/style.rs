//! What all figures share: sizes in points, ink, and text.

use std::fmt::Display;

use plotters::backend::SVGBackend;
use plotters::coord::Shift;
use plotters::coord::types::RangedCoordf64;
use plotters::prelude::*;
use plotters::style::text_anchor::{HPos, Pos, VPos};
use simmerline_math::{log10, pow};

use super::fit::{Fitted, fit, fit_line};
use crate::error::{Error, Result};
use crate::language::Words;

/// Font of all figures; the report embeds it.
const FONT: &str = "Inter";
/// Drawing units in a point. plotters places things on whole units only.
const UNITS_PER_POINT: f64 = 8.0;
/// plotters divides a font's size by this before it writes SVG.
const FONT_SCALE: f64 = 1.24;

/// Width of a figure on paper: that of the report's text block, points.
const PAGE_PT: f64 = 493.0;
/// Width of a figure that stands beside text, points.
const BESIDE_PT: f64 = 250.0;
/// Width of a figure on a narrow screen, points: it is shown half as large again, so that type
/// of 7 points is of 11 pixels on a phone.
const PHONE_PT: f64 = 210.0;

/// Room left of a chart for the numbers and the name of its upright axis, points.
pub const UPRIGHT_PT: f64 = 46.0;
/// Size of the numbers along axes, points.
pub const NUMBER_PT: f64 = 8.0;
/// Size of the names of axes, points.
const NAME_PT: f64 = 8.5;
/// From one line of it to the next, as a share of its size.
const LINE_STEP: f64 = 1.1;
/// How far the name of an axis may reach beyond it at either end, points.
const BEYOND_PT: f64 = 4.0;

/// Ink for axes, text and used intervals.
pub const INK: RGBColor = RGBColor(0x20, 0x2a, 0x30);
/// Ink of marks for what was set aside.
pub const QUIET: RGBColor = RGBColor(0x8b, 0x94, 0x99);
/// Ink of words of less weight, which can still be read on every ground.
pub const NOTE: RGBColor = RGBColor(0x56, 0x60, 0x66);
/// Ink of limits.
pub const LIMIT: RGBColor = RGBColor(0x9a, 0x4a, 0x00);
/// Grid lines.
pub const GRID: RGBColor = RGBColor(0xe1, 0xe5, 0xe7);
/// The fitted line.
pub const LINE: RGBColor = RGBColor(0x0b, 0x5c, 0x6b);
/// Its confidence band.
pub const BAND: RGBColor = RGBColor(0xb9, 0xd6, 0xda);
/// Its band with the instruments.
pub const OUTER_BAND: RGBColor = RGBColor(0xe2, 0xee, 0xf0);
/// Irradiance.
pub const SUN: RGBColor = RGBColor(0xb0, 0x6a, 0x00);
/// Used spans of a run.
pub const SHADE: RGBColor = RGBColor(0xe4, 0xee, 0xf0);

/// A drawing surface.
pub type Area<'a> = DrawingArea<SVGBackend<'a>, Shift>;

/// Points to drawing units.
pub fn pt(points: f64) -> i32 {
    (points * UNITS_PER_POINT).round() as i32
}

/// Drawing units to points.
pub fn points(units: u32) -> f64 {
    f64::from(units) / UNITS_PER_POINT
}

/// Points to an unsigned size in drawing units.
pub fn size(points: f64) -> u32 {
    pt(points).max(0) as u32
}

/// What a figure is drawn on, and the language that it speaks.
#[derive(Clone, Copy)]
pub struct Canvas<'w> {
    pub words: &'w Words,
    /// Its width, points.
    pub width_pt: f64,
}

impl<'w> Canvas<'w> {
    /// As wide as a page's text.
    pub fn page(words: &'w Words) -> Self {
        Canvas {
            words,
            width_pt: PAGE_PT,
        }
    }

    /// Beside text on a page.
    pub fn beside(words: &'w Words) -> Self {
        Canvas {
            words,
            width_pt: BESIDE_PT,
        }
    }

    /// As wide as a narrow screen, with type of the same size.
    pub fn phone(words: &'w Words) -> Self {
        Canvas {
            words,
            width_pt: PHONE_PT,
        }
    }

    /// Draws on a surface of a given height and returns the SVG.
    ///
    /// # Errors
    /// [`Error::Internal`] if the drawing fails.
    pub fn draw<F>(&self, height_pt: f64, drawing: F) -> Result<String>
    where
        F: FnOnce(&Area<'_>) -> Result<()>,
    {
        let mut svg = String::new();
        {
            let sizes = (size(self.width_pt), size(height_pt));
            let area = SVGBackend::with_string(&mut svg, sizes).into_drawing_area();
            drawing(&area)?;
            area.present().map_err(fault)?;
        }
        Ok(svg)
    }
}

/// A plotting failure as our own error.
pub fn fault(error: impl Display) -> Error {
    Error::Internal(format!("a figure cannot be drawn: {error}"))
}

/// Text of a size in points and a colour.
pub fn text(points: f64, colour: &RGBColor) -> TextStyle<'static> {
    let font = (FONT, points * UNITS_PER_POINT * FONT_SCALE);
    font.into_font().color(colour)
}

/// Heavier text.
pub fn strong(points: f64, colour: &RGBColor) -> TextStyle<'static> {
    let font = (FONT, points * UNITS_PER_POINT * FONT_SCALE, FontStyle::Bold);
    font.into_font().color(colour)
}

/// The same text, held at another point of its box.
pub fn anchored(style: TextStyle<'static>, horizontal: HPos, vertical: VPos) -> TextStyle<'static> {
    style.pos(Pos::new(horizontal, vertical))
}

/// A stroke of a width in points.
pub fn stroke(colour: &RGBColor, width_pt: f64) -> ShapeStyle {
    colour.stroke_width(size(width_pt))
}

/// A chart with plain axes.
pub type Chart<'a, 'b> =
    ChartContext<'a, SVGBackend<'b>, Cartesian2d<RangedCoordf64, RangedCoordf64>>;

/// What a chart's axes say.
pub struct Axes<'s> {
    pub x_name: &'s str,
    pub y_name: &'s str,
    pub x_text: &'s dyn Fn(&f64) -> String,
    pub y_text: &'s dyn Fn(&f64) -> String,
    pub x_labels: usize,
    pub y_labels: usize,
    /// Room left of the chart, points.
    pub left_pt: f64,
}

/// A chart on an area, with room for its labels; `left_pt` is the room for those of its upright
/// axis, `right_pt` its right margin.
///
/// # Errors
/// [`Error::Internal`] if the drawing fails.
pub fn chart<'a, 'b>(
    area: &'a Area<'b>,
    (left, right): (f64, f64),
    (bottom, top): (f64, f64),
    has_x_name: bool,
    (left_pt, right_pt): (f64, f64),
) -> Result<Chart<'a, 'b>> {
    ChartBuilder::on(area)
        .margin_right(size(right_pt))
        .margin_top(size(5.0))
        .x_label_area_size(size(if has_x_name { 25.0 } else { 5.0 }))
        .y_label_area_size(size(left_pt))
        .build_cartesian_2d(left..right, bottom..top)
        .map_err(fault)
}

/// A chart with one scale below it and room for its labels at both ends.
///
/// # Errors
/// [`Error::Internal`] if the drawing fails.
pub fn chart_without_names<'a, 'b>(
    area: &'a Area<'b>,
    (left, right): (f64, f64),
    (bottom, top): (f64, f64),
) -> Result<Chart<'a, 'b>> {
    ChartBuilder::on(area)
        .margin_left(size(12.0))
        .margin_right(size(12.0))
        .x_label_area_size(size(12.0))
        .build_cartesian_2d(left..right, bottom..top)
        .map_err(fault)
}

/// Draws axes and horizontal grid lines over what has been drawn so far. A name that is too
/// long for its axis is set smaller, an upright one first on two lines.
///
/// # Errors
/// [`Error::Internal`] if the drawing fails.
pub fn draw_axes(chart: &mut Chart<'_, '_>, axes: &Axes<'_>) -> Result<()> {
    let (width, height) = chart.plotting_area().dim_in_pixel();
    let room_pt = |length: u32| points(length) + 2.0 * BEYOND_PT;
    let upright = fit(axes.y_name, NAME_PT, room_pt(height));
    let mut mesh = chart.configure_mesh();
    mesh.disable_x_mesh()
        .x_labels(axes.x_labels)
        .y_labels(axes.y_labels)
        .light_line_style(TRANSPARENT)
        .bold_line_style(stroke(&GRID, 0.5))
        .axis_style(stroke(&INK, 0.7))
        .set_all_tick_mark_size(pt(2.2))
        .label_style(text(NUMBER_PT, &INK))
        .axis_desc_style(text(fit_line(axes.x_name, NAME_PT, room_pt(width)), &INK))
        .x_label_formatter(axes.x_text)
        .y_label_formatter(axes.y_text);
    if !axes.x_name.is_empty() {
        mesh.x_desc(axes.x_name);
    }
    mesh.draw().map_err(fault)?;
    write_upright(chart, &upright, axes.left_pt)
}

/// The name of the upright axis, from the left edge of its room.
fn write_upright(chart: &mut Chart<'_, '_>, name: &Fitted<'_>, left_pt: f64) -> Result<()> {
    let (x, y) = (chart.x_range(), chart.y_range());
    let middle = (x.start, (y.start + y.end) / 2.0);
    let lines = name.lines.iter().enumerate().map(|(index, line)| {
        let from_axis_pt = LINE_STEP * name.size_pt * index as f64 - left_pt;
        let style = text(name.size_pt, &INK).transform(FontTransform::Rotate270);
        let style = anchored(style, HPos::Center, VPos::Top);
        EmptyElement::at(middle) + Text::new((*line).to_owned(), (pt(from_axis_pt), 0), style)
    });
    chart.draw_series(lines).map_err(fault)?;
    Ok(())
}

/// A range that holds the values with a little room, starting at zero if `from_zero`.
pub fn padded(values: impl Iterator<Item = f64>, from_zero: bool) -> (f64, f64) {
    let (low, high) = values.fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), value| {
        (low.min(value), high.max(value))
    });
    if low > high {
        return (0.0, 100.0);
    }
    let room = ((high - low) * 0.06).max(1e-6 + high.abs() * 1e-3);
    let bottom = if from_zero { low.min(0.0) } else { low };
    (
        if bottom < 0.0 || !from_zero {
            bottom - room
        } else {
            0.0
        },
        high + room,
    )
}

/// 1, 2 or 5 of a decimal place, and no less than a number: from one label of an axis
/// to the next.
pub fn nice(least: f64) -> f64 {
    let place = pow(10_f64, log10(least).floor());
    let times = [1.0, 2.0, 5.0, 10.0];
    let step = times.iter().map(|times| times * place);
    step.clone()
        .find(|step| *step >= least * 0.999)
        .unwrap_or(10.0 * place)
}

/// Decimals of the labels of an axis, of which so many are asked for: they stand one, two or
/// five units of a decimal place apart, and plotters may draw a few more.
pub fn label_decimals((low, high): (f64, f64), labels: usize) -> usize {
    let least = (high - low) / (labels + 2) as f64;
    let place = log10(least / 5.0).ceil();
    (-place).max(0.0) as usize
}
