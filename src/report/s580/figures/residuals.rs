//! Residuals about the line: what the scatter looks like, over Td and over the day.

use jiff::civil::Date;
use plotters::prelude::*;

use crate::error::Result;
use crate::language::{Message, Words, clock, fixed};
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::s580::uncertainty::RatingUncertainty;
use crate::report::figures::key::{Entry, Key};
use crate::report::figures::marks::{KINDS, parts};
use crate::report::figures::style::{
    Area, Axes, Canvas, INK, LINE, chart, draw_axes, fault, padded, pt, size, stroke,
};
use crate::units::{local_hours, zoned};

const HEIGHT_PT: f64 = 158.0;
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
    watts: f64,
    day: usize,
}

/// Draws the residuals of the used intervals, marked by day, with lines at twice their
/// standard deviation.
///
/// # Errors
/// [`crate::error::Error::Internal`] if the drawing fails.
pub fn draw_residuals(
    assessment: &Assessment,
    uncertainty: &RatingUncertainty,
    canvas: &Canvas<'_>,
) -> Result<String> {
    let words = canvas.words;
    let line = &uncertainty.of_line.line;
    let zone = &assessment.tested.campaign.site.time_zone;
    let dates = &assessment.s580.dates;
    let residuals: Vec<Residual> = assessment
        .s580
        .used()
        .filter_map(|interval| {
            let (difference_k, power_w) = interval.point()?;
            let date = zoned(interval.measured.span.from_us, zone).date();
            Some(Residual {
                difference_k,
                hour: local_hours(interval.measured.span.from_us, zone),
                watts: power_w - line.predict(difference_k),
                day: dates.iter().position(|known| *known == date)?,
            })
        })
        .collect();
    let twice_w = 2.0 * line.residual_sd;
    let largest_w = residuals
        .iter()
        .map(|residual| residual.watts.abs())
        .fold(twice_w, f64::max)
        * 1.15
        + 1e-6;
    let key = (dates.len() <= KINDS).then(|| key(dates, canvas));
    let key_pt = key.as_ref().map_or(KEY_PT, Key::height_pt);
    canvas.draw(HEIGHT_PT, |area| {
        let (names, panels) = area.split_vertically(pt(key_pt));
        if let Some(key) = &key {
            draw_key(&names, key)?;
        }
        let (left, right) = panels.split_horizontally(pt(canvas.width_pt / 2.0));
        let heights = (largest_w, twice_w);
        let by_difference = Panel {
            x_name: message!("figure-difference-short"),
            x_text: &|value| words.say(fixed(*value, 0)),
            x_of: |residual| residual.difference_k,
        };
        let by_hour = Panel {
            x_name: message!("figure-start"),
            x_text: &|value| words.say(clock(*value)),
            x_of: |residual| residual.hour,
        };
        draw_panel(&left, &residuals, heights, &by_difference, words)?;
        draw_panel(&right, &residuals, heights, &by_hour, words)
    })
}

/// What residuals are drawn over.
struct Panel<'p> {
    x_name: Message,
    x_text: &'p dyn Fn(&f64) -> String,
    x_of: fn(&Residual) -> f64,
}

fn draw_panel(
    area: &Area<'_>,
    residuals: &[Residual],
    (largest_w, twice_w): (f64, f64),
    panel: &Panel<'_>,
    words: &Words,
) -> Result<()> {
    let (left, right) = padded(residuals.iter().map(panel.x_of), false);
    let mut chart = chart(area, (left, right), (-largest_w, largest_w), true, 6.0)?;
    let decimals = if largest_w < 3.0 { 1 } else { 0 };
    let axes = Axes {
        x_name: &words.say(panel.x_name.clone()),
        y_name: &words.say(message!("figure-residual")),
        x_text: panel.x_text,
        y_text: &|value| words.say(fixed(*value, decimals)),
        x_labels: 5,
        y_labels: 5,
    };
    draw_axes(&mut chart, &axes)?;
    chart
        .draw_series(LineSeries::new(
            [(left, 0.0), (right, 0.0)],
            stroke(&LINE, 1.2),
        ))
        .map_err(fault)?;
    for height_w in [-twice_w, twice_w] {
        let ends = [(left, height_w), (right, height_w)];
        let dashed = DashedLineSeries::new(ends, size(2.0), size(2.5), stroke(&LINE, 0.6));
        chart.draw_series(dashed).map_err(fault)?;
    }
    let marks = residuals.iter().map(|residual| {
        let (face, edge) = parts(residual.day, INK);
        EmptyElement::at(((panel.x_of)(residual), residual.watts)) + face + edge
    });
    chart.draw_series(marks).map_err(fault)?;
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
