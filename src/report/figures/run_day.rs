//! One run against local clock time: temperatures above, irradiance below.

use jiff::tz::TimeZone;
use plotters::prelude::*;
use plotters::style::text_anchor::{HPos, VPos};

use super::style::{
    Area, Axes, Chart, INK, QUIET, SHADE, SUN, anchored, chart, draw, draw_axes, fault, padded, pt,
    stroke, text,
};
use crate::error::Result;
use crate::logs::Series;
use crate::procedure::{Assessment, Run};
use crate::units::{clock_from_hours, fixed, zoned};

const HEIGHT_PT: f64 = 238.0;
const UPPER_PT: f64 = 136.0;
/// Steps between two clock times on the axis, minutes.
const CLOCK_STEPS_MIN: [f64; 7] = [5.0, 10.0, 15.0, 30.0, 60.0, 120.0, 240.0];
/// Most steps on the axis.
const MOST_CLOCK_TICKS: f64 = 9.0;
/// Points of a curve; a longer one is thinned.
const LONGEST_CURVE: usize = 1200;
/// A time between readings over which no curve is drawn, s.
const LONGEST_STEP_S: f64 = 1200.0;

/// Draws a run, with its used spans shaded.
///
/// # Errors
/// [`crate::error::Error::Internal`] if the drawing fails.
pub fn draw_run(assessment: &Assessment, index: usize) -> Result<String> {
    let run = &assessment.runs[index];
    let zone = &assessment.campaign.site.time_zone;
    let hours = |time_us: i64| local_hours(time_us, run, zone);
    let first = run.readings.time_us.first().copied().unwrap_or_default();
    let last = run.readings.time_us.last().copied().unwrap_or_default();
    let (from_h, to_h) = (hours(first), hours(last).max(hours(first) + 0.1));
    let used: Vec<(f64, f64)> = assessment
        .intervals_of(index)
        .filter(|interval| interval.is_used())
        .map(|interval| (hours(interval.start_us), hours(interval.end_us)))
        .collect();
    draw(HEIGHT_PT, |area| {
        let (upper, lower) = area.split_vertically(pt(UPPER_PT));
        let ambient = run.readings.ambient_c.as_ref();
        let water = &run.readings.water_c;
        let values = water
            .value
            .iter()
            .chain(ambient.iter().flat_map(|a| &a.value));
        let (cold_c, hot_c) = padded(values.copied(), false);
        let mut chart = panel(
            &upper,
            (from_h, to_h),
            (cold_c, hot_c),
            "temperature, °C",
            &used,
        )?;
        curve(&mut chart, water, &hours, stroke(&INK, 1.5))?;
        label_end(&mut chart, water, &hours, "water", &INK)?;
        if let Some(ambient) = ambient {
            curve(&mut chart, ambient, &hours, stroke(&QUIET, 1.2))?;
            label_end(&mut chart, ambient, &hours, "ambient", &QUIET)?;
        }
        let sun = run.readings.irradiance_w_m2.as_ref();
        let (_, high) = padded(sun.iter().flat_map(|sun| sun.value.iter().copied()), true);
        let bounds = (0.0, high.max(100.0));
        let mut chart = panel(&lower, (from_h, to_h), bounds, "irradiance, W/m²", &used)?;
        match sun {
            Some(sun) => curve(&mut chart, sun, &hours, stroke(&SUN, 1.2))?,
            None => {
                let middle = ((from_h + to_h) / 2.0, high / 2.0);
                let style = anchored(text(8.5, &QUIET), HPos::Center, VPos::Center);
                let words = Text::new("not measured", middle, style);
                chart.draw_series([words]).map_err(fault)?;
            }
        }
        Ok(())
    })
}

/// Local clock time as hours since midnight of the run's date; goes on past 24.
fn local_hours(time_us: i64, run: &Run, zone: &TimeZone) -> f64 {
    let local = zoned(time_us, zone).datetime();
    let midnight = run.date.to_datetime(jiff::civil::Time::midnight());
    local.duration_since(midnight).as_secs_f64() / 3600.0
}

/// A panel with its used spans shaded; the lower one carries the clock.
fn panel<'a, 'b>(
    area: &'a Area<'b>,
    span_h: (f64, f64),
    bounds: (f64, f64),
    name: &str,
    used: &[(f64, f64)],
) -> Result<Chart<'a, 'b>> {
    let has_clock = name.starts_with("irradiance");
    let mut chart = chart(area, span_h, bounds, has_clock, 44.0)?;
    shade(&mut chart, used, bounds)?;
    let axes = Axes {
        x_name: if has_clock { "local clock time" } else { "" },
        y_name: name,
        x_text: &|_| String::new(),
        y_text: &|value| fixed(*value, 0),
        x_labels: 0,
        y_labels: 5,
    };
    draw_axes(&mut chart, &axes)?;
    draw_clock(&mut chart, span_h, bounds.0, has_clock)?;
    Ok(chart)
}

/// Ticks at round clock times, which a decimal axis does not find.
fn draw_clock(
    chart: &mut Chart<'_, '_>,
    (from_h, to_h): (f64, f64),
    bottom: f64,
    with_text: bool,
) -> Result<()> {
    let fits = |minutes: &&f64| (to_h - from_h) * 60.0 / **minutes <= MOST_CLOCK_TICKS;
    let step_h = CLOCK_STEPS_MIN.iter().find(fits).unwrap_or(&1440.0) / 60.0;
    let first = (from_h / step_h - 1e-9).ceil() as i64;
    let last = (to_h / step_h + 1e-9).floor() as i64;
    let ticks = (first..=last).map(|step| {
        let hours = step as f64 * step_h;
        let text_below = if with_text {
            clock_from_hours(hours)
        } else {
            String::new()
        };
        let style = anchored(text(8.0, &INK), HPos::Center, VPos::Top);
        EmptyElement::at((hours, bottom))
            + PathElement::new(vec![(0, 0), (0, pt(2.2))], stroke(&INK, 0.7))
            + Text::new(text_below, (0, pt(4.4)), style)
    });
    chart.draw_series(ticks).map_err(fault)?;
    Ok(())
}

fn shade(chart: &mut Chart<'_, '_>, spans: &[(f64, f64)], (low, high): (f64, f64)) -> Result<()> {
    let shades = spans
        .iter()
        .map(|&(from_h, to_h)| Rectangle::new([(from_h, low), (to_h, high)], SHADE.filled()));
    chart.draw_series(shades).map_err(fault)?;
    Ok(())
}

/// Draws a series, interrupted where readings are far apart.
fn curve(
    chart: &mut Chart<'_, '_>,
    series: &Series,
    hours: &impl Fn(i64) -> f64,
    style: ShapeStyle,
) -> Result<()> {
    let step = series.value.len().div_ceil(LONGEST_CURVE).max(1);
    let mut piece: Vec<(f64, f64)> = Vec::new();
    let mut pieces = Vec::new();
    for (&time_us, &value) in series.time_us.iter().zip(&series.value).step_by(step) {
        let at = hours(time_us);
        if piece
            .last()
            .is_some_and(|last| (at - last.0) * 3600.0 > LONGEST_STEP_S)
        {
            pieces.push(std::mem::take(&mut piece));
        }
        piece.push((at, value));
    }
    pieces.push(piece);
    for piece in pieces {
        chart
            .draw_series(LineSeries::new(piece, style))
            .map_err(fault)?;
    }
    Ok(())
}

fn label_end(
    chart: &mut Chart<'_, '_>,
    series: &Series,
    hours: &impl Fn(i64) -> f64,
    name: &str,
    colour: &RGBColor,
) -> Result<()> {
    let (Some(&time_us), Some(&value)) = (series.time_us.last(), series.value.last()) else {
        return Ok(());
    };
    let style = anchored(text(8.0, colour), HPos::Left, VPos::Center);
    let label =
        EmptyElement::at((hours(time_us), value)) + Text::new(name.to_owned(), (pt(4.0), 0), style);
    chart.draw_series([label]).map_err(fault)?;
    Ok(())
}
