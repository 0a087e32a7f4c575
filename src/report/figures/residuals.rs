//! Residuals about the line: what the scatter looks like, over Td and over the day.

use plotters::prelude::*;
use plotters::style::text_anchor::{HPos, VPos};

use super::marks::{KINDS, parts};
use super::style::{
    Area, Axes, INK, LINE, WIDTH_PT, anchored, chart, draw, draw_axes, fault, padded, pt, size,
    stroke, text,
};
use crate::error::Result;
use crate::language::Words;
use crate::procedure::Assessment;
use crate::procedure::uncertainty::RatingUncertainty;
use crate::units::{clock_from_hours, fixed, local_hours, zoned};

const HEIGHT_PT: f64 = 158.0;
/// Height of the row that names the days.
const KEY_PT: f64 = 14.0;
/// Width of one day in that row, points.
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
    sure: &RatingUncertainty,
    words: &Words,
) -> Result<String> {
    let line = &sure.of_line.line;
    let zone = &assessment.campaign.site.time_zone;
    let dates = assessment.used_dates();
    let residuals: Vec<Residual> = assessment
        .used()
        .filter_map(|interval| {
            let (difference_k, power_w) = interval.point()?;
            let date = zoned(interval.start_us, zone).date();
            Some(Residual {
                difference_k,
                hour: local_hours(interval.start_us, zone),
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
    let whole = |value: &f64| fixed(*value, 0);
    let clock = |value: &f64| clock_from_hours(*value);
    draw(HEIGHT_PT, |area| {
        let (key, panels) = area.split_vertically(pt(KEY_PT));
        if dates.len() <= KINDS {
            let names = dates.iter().map(|date| date.strftime("%-d %B").to_string());
            draw_key(&key, &names.collect::<Vec<_>>())?;
        }
        let (left, right) = panels.split_horizontally(pt(WIDTH_PT / 2.0));
        let by_difference: Vec<(f64, f64, usize)> = residuals
            .iter()
            .map(|at| (at.difference_k, at.watts, at.day))
            .collect();
        let by_hour: Vec<(f64, f64, usize)> = residuals
            .iter()
            .map(|at| (at.hour, at.watts, at.day))
            .collect();
        let heights = (largest_w, twice_w);
        draw_panel(
            &left,
            &by_difference,
            heights,
            ("temperature difference Td, K", &whole),
        )?;
        draw_panel(
            &right,
            &by_hour,
            heights,
            ("local time at the start", &clock),
        )
    })
}

fn draw_panel(
    area: &Area<'_>,
    points: &[(f64, f64, usize)],
    (largest_w, twice_w): (f64, f64),
    (x_name, x_text): (&str, &dyn Fn(&f64) -> String),
) -> Result<()> {
    let (left, right) = padded(points.iter().map(|point| point.0), false);
    let mut chart = chart(area, (left, right), (-largest_w, largest_w), true, 6.0)?;
    let decimals = if largest_w < 3.0 { 1 } else { 0 };
    let axes = Axes {
        x_name,
        y_name: "Ps minus line, W",
        x_text,
        y_text: &|value| fixed(*value, decimals),
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
    let marks = points.iter().map(|&(x, y, day)| {
        let (face, edge) = parts(day, INK);
        EmptyElement::at((x, y)) + face + edge
    });
    chart.draw_series(marks).map_err(fault)?;
    Ok(())
}

/// Names the marks of the days.
fn draw_key(area: &Area<'_>, names: &[String]) -> Result<()> {
    let middle = pt(KEY_PT / 2.0);
    for (day, name) in names.iter().enumerate() {
        let left_pt = 49.0 + KEY_STEP_PT * day as f64;
        let (face, edge) = parts(day, INK);
        let mark = EmptyElement::at((pt(left_pt), middle)) + face + edge;
        area.draw(&mark).map_err(fault)?;
        let style = anchored(text(8.0, &INK), HPos::Left, VPos::Center);
        let label = Text::new(name.as_str(), (pt(left_pt + 7.0), middle), style);
        area.draw(&label).map_err(fault)?;
    }
    Ok(())
}
