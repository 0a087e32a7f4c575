//! Residuals about the line: what the scatter looks like, over Td, over the day, and against a
//! normal distribution.

use jiff::civil::Date;
use plotters::prelude::*;

use crate::error::Result;
use crate::language::{Message, PairedUnit, Phrase, Words, clock, fixed, unit_symbol};
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::s580::uncertainty::RatingUncertainty;
use crate::report::figures::axis::Axis;
use crate::report::figures::key::{Entry, Key};
use crate::report::figures::marks::{KINDS, parts};
use crate::report::figures::style::{
    Area, Axes, Canvas, Chart, INK, LINE, UPRIGHT_PT, chart, draw_axes, fault, padded, pt, size,
    stroke,
};
use crate::stats::normal::normal_order_scores;
use crate::units::{local_hours, zoned};

/// Height of one panel, points.
const PANEL_PT: f64 = 96.0;
/// Width from which the panels stand side by side, points.
const WIDE_PT: f64 = 400.0;
/// What the first of them takes more, for its upright axis, points.
const AXIS_PT: f64 = 38.0;
/// Room right of a panel for half of the last number below it, points.
const RIGHT_PT: f64 = 17.0;
/// Height of the row that names the days.
const KEY_PT: f64 = 14.0;
/// Where the first day stands in that row, and what its mark takes before it, points.
const KEY_LEFT_PT: f64 = 56.0;
const KEY_MARK_PT: f64 = 9.0;
/// Least width of one day in that row, points.
const KEY_STEP_PT: f64 = 72.0;

/// A residual with its place.
struct Residual {
    difference_k: f64,
    hour: f64,
    /// What a normal distribution lets expect of one of its rank, standard deviations.
    expected: f64,
    watts: f64,
    day: usize,
}

/// Draws the residuals of the used intervals, marked by day, with lines at twice their
/// standard deviation, and the normal distribution that has it.
///
/// # Errors
/// [`crate::error::Error::Internal`] if the drawing fails.
pub fn draw_residuals(
    assessment: &Assessment,
    uncertainty: &RatingUncertainty,
    canvas: &Canvas<'_>,
) -> Result<String> {
    let words = canvas.words;
    let dates = &assessment.s580.dates;
    let residuals = residuals(assessment, uncertainty);
    let sd_w = uncertainty.of_line.line.residual_sd;
    let largest_w = residuals.iter().map(|residual| residual.watts.abs());
    let heights = Heights {
        sd_w,
        largest_w: largest_w.fold(2.0 * sd_w, f64::max) * 1.15 + 1e-6,
    };
    let key = (dates.len() <= KINDS).then(|| key(dates, canvas));
    let key_pt = key.as_ref().map_or(0.0, Key::height_pt);
    let panels = panels();
    let is_wide = canvas.width_pt >= WIDE_PT;
    let rows = if is_wide { 1 } else { panels.len() };
    canvas.draw(key_pt + PANEL_PT * rows as f64, |area| {
        let (names, mut rest) = area.split_vertically(pt(key_pt));
        if let Some(key) = &key {
            draw_key(&names, key)?;
        }
        let one_pt = (canvas.width_pt - AXIS_PT) / panels.len() as f64;
        for (place, panel) in panels.iter().enumerate() {
            let (place_of_it, others) = if is_wide {
                let axis_pt = if place == 0 { AXIS_PT } else { 0.0 };
                rest.split_horizontally(pt(one_pt + axis_pt))
            } else {
                rest.split_vertically(pt(PANEL_PT))
            };
            let has_axis = place == 0 || !is_wide;
            draw_panel(&place_of_it, &residuals, &heights, panel, has_axis, words)?;
            rest = others;
        }
        Ok(())
    })
}

fn residuals(assessment: &Assessment, uncertainty: &RatingUncertainty) -> Vec<Residual> {
    let line = &uncertainty.of_line.line;
    let zone = &assessment.tested.campaign.site.time_zone;
    let dates = &assessment.s580.dates;
    let of_interval = assessment.s580.used().filter_map(|interval| {
        let (difference_k, power_w) = interval.point()?;
        let date = zoned(interval.measured.span.from_us, zone).date();
        Some(Residual {
            difference_k,
            hour: local_hours(interval.measured.span.from_us, zone),
            expected: 0.0,
            watts: power_w - line.predict(difference_k),
            day: dates.iter().position(|known| *known == date)?,
        })
    });
    let mut residuals: Vec<Residual> = of_interval.collect();
    residuals.sort_by(|one, two| one.watts.total_cmp(&two.watts));
    let scores = normal_order_scores(residuals.len());
    for (residual, score) in residuals.iter_mut().zip(scores) {
        residual.expected = score;
    }
    residuals
}

/// Of the upright axis, W.
struct Heights {
    sd_w: f64,
    largest_w: f64,
}

/// What residuals are drawn over.
struct Panel {
    x: Axis,
    x_number: fn(f64) -> Phrase,
    x_of: fn(&Residual) -> f64,
    /// Drawn against the normal distribution, else about zero.
    is_normal: bool,
}

fn panels() -> [Panel; 3] {
    let whole = |value: f64| fixed(value, 0);
    [
        Panel {
            x: Axis::in_unit(
                message!(
                    "figure-difference-short",
                    unit = unit_symbol(PairedUnit::Kelvin)
                ),
                PairedUnit::Kelvin,
            ),
            x_number: whole,
            x_of: |residual| residual.difference_k,
            is_normal: false,
        },
        Panel {
            x: Axis::named(message!("figure-start")),
            x_number: clock,
            x_of: |residual| residual.hour,
            is_normal: false,
        },
        Panel {
            x: Axis::named(message!("figure-expected")),
            x_number: whole,
            x_of: |residual| residual.expected,
            is_normal: true,
        },
    ]
}

fn draw_panel(
    area: &Area<'_>,
    residuals: &[Residual],
    heights: &Heights,
    panel: &Panel,
    has_axis: bool,
    words: &Words,
) -> Result<()> {
    let across = padded(residuals.iter().map(panel.x_of), false);
    let up = (-heights.largest_w, heights.largest_w);
    let mut chart = if has_axis {
        chart(area, across, up, true, (UPRIGHT_PT, RIGHT_PT))?
    } else {
        without_axis(area, across, up)?
    };
    let decimals = if heights.largest_w < 3.0 { 1 } else { 0 };
    let y_name = words.say(message!("figure-residual"));
    let axes = Axes {
        x_name: &panel.x.name(words),
        y_name: if has_axis { &y_name } else { "" },
        x_text: &|value| panel.x.number((panel.x_number)(*value), words),
        y_text: &|value| words.say(fixed(*value, decimals)),
        x_labels: 4,
        y_labels: 5,
        left_pt: UPRIGHT_PT,
    };
    draw_axes(&mut chart, &axes)?;
    draw_expected(&mut chart, across, heights.sd_w, panel.is_normal)?;
    let marks = residuals.iter().map(|residual| {
        let (face, edge) = parts(residual.day, INK);
        EmptyElement::at(((panel.x_of)(residual), residual.watts)) + face + edge
    });
    chart.draw_series(marks).map_err(fault)?;
    Ok(())
}

/// A chart that shares its upright axis with the one beside it.
fn without_axis<'a, 'b>(
    area: &'a Area<'b>,
    (left, right): (f64, f64),
    (bottom, top): (f64, f64),
) -> Result<Chart<'a, 'b>> {
    ChartBuilder::on(area)
        .margin_left(size(8.0))
        .margin_right(size(RIGHT_PT))
        .margin_top(size(5.0))
        .x_label_area_size(size(31.0))
        .build_cartesian_2d(left..right, bottom..top)
        .map_err(fault)
}

/// Where residuals would lie: about zero, nearly all within twice their standard deviation; or
/// on the line of a normal distribution.
fn draw_expected(
    chart: &mut Chart<'_, '_>,
    (left, right): (f64, f64),
    sd_w: f64,
    is_normal: bool,
) -> Result<()> {
    if is_normal {
        let ends = [(left, left * sd_w), (right, right * sd_w)];
        let dashed = DashedLineSeries::new(ends, size(2.0), size(2.5), stroke(&LINE, 0.6));
        chart.draw_series(dashed).map_err(fault)?;
        return Ok(());
    }
    let zero = LineSeries::new([(left, 0.0), (right, 0.0)], stroke(&LINE, 1.2));
    chart.draw_series(zero).map_err(fault)?;
    for height_w in [-2.0 * sd_w, 2.0 * sd_w] {
        let ends = [(left, height_w), (right, height_w)];
        let dashed = DashedLineSeries::new(ends, size(2.0), size(2.5), stroke(&LINE, 0.6));
        chart.draw_series(dashed).map_err(fault)?;
    }
    Ok(())
}

/// The days, for the key above the panels.
fn key(dates: &[Date], canvas: &Canvas<'_>) -> Key {
    let words = canvas.words;
    let entry = |(place, date): (usize, &Date)| {
        let month = Message::new(format!("month-{}", date.month()));
        let day = message!("figure-day", day = date.day().to_string(), month = month);
        Entry {
            name: words.say(day),
            left_pt: KEY_LEFT_PT + KEY_STEP_PT * place as f64,
            mark_pt: KEY_MARK_PT,
        }
    };
    Key::new(
        dates.iter().enumerate().map(entry).collect(),
        KEY_PT,
        canvas.width_pt,
    )
}

/// Names the marks of the days.
fn draw_key(area: &Area<'_>, key: &Key) -> Result<()> {
    let places = key.write(area, KEY_PT / 2.0)?;
    for (day, (left, middle)) in places.into_iter().enumerate() {
        let (face, edge) = parts(day, INK);
        let mark = EmptyElement::at((left - pt(7.0), middle)) + face + edge;
        area.draw(&mark).map_err(fault)?;
    }
    Ok(())
}
