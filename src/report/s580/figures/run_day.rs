//! One run against local clock time: temperatures, irradiance, wind, and what was used.

use jiff::tz::TimeZone;
use plotters::prelude::*;
use plotters::style::text_anchor::{HPos, VPos};

use super::condition_strip::{ROW_PT, StripPlace, draw_strip, strip_rows};
use crate::error::Result;
use crate::language::{Message, Words, clock, fixed};
use crate::logs::Series;
use crate::message;
use crate::procedure::s580::intervals::Interval;
use crate::procedure::s580::predicted::Predicted;
use crate::procedure::{Assessment, Run};
use crate::report::figures::fit::width_pt;
use crate::report::figures::style::{
    Area, Axes, Canvas, Chart, INK, LINE, QUIET, SHADE, SUN, anchored, chart, draw_axes, fault,
    padded, pt, size, stroke, text,
};
use crate::units::{SECONDS_PER_HOUR, seconds_between, zoned};

const PANELS_PT: f64 = 206.0;
const TEMPERATURE_PT: f64 = 92.0;
const IRRADIANCE_PT: f64 = 52.0;
/// Room between the clock and the strip of conditions.
const STRIP_GAP_PT: f64 = 3.0;
/// Size of the names of curves, and the room beside them, points.
const NAME_PT: f64 = 8.0;
const NAME_GAP_PT: f64 = 4.0;
/// Least room for them at the right, points.
const NAMES_PT: f64 = 44.0;
/// Steps between two clock times on the axis, minutes.
const CLOCK_STEPS_MIN: &[f64] = &[5.0, 10.0, 15.0, 30.0, 60.0, 120.0, 240.0];
/// Hours in a day.
const HOURS_PER_DAY: f64 = 24.0;
/// Most steps on the axis.
const MOST_CLOCK_TICKS: f64 = 9.0;
/// Points of a curve; a longer one is thinned.
const LONGEST_CURVE: usize = 1200;
/// Shortest time between readings over which no curve is drawn, s.
const LONGEST_STEP_S: f64 = 700.0;

/// Draws a run, with its used spans shaded, and what the line predicts for it.
///
/// # Errors
/// [`crate::error::Error::Internal`] if the drawing fails.
pub fn draw_run(assessment: &Assessment, index: usize, canvas: &Canvas<'_>) -> Result<String> {
    let words = canvas.words;
    let run = &assessment.tested.runs[index];
    let zone = &assessment.tested.campaign.site.time_zone;
    let hours = |time_us: i64| local_hours(time_us, run, zone);
    let first = run.readings.time_us.first().copied().unwrap_or_default();
    let last = run.readings.time_us.last().copied().unwrap_or_default();
    let (from_h, to_h) = (hours(first), hours(last).max(hours(first) + 0.1));
    let used: Vec<(f64, f64)> = assessment
        .s580
        .intervals_of(index)
        .filter(|interval| interval.is_on_line())
        .map(|interval| {
            (
                hours(interval.measured.span.from_us),
                hours(interval.measured.span.to_us),
            )
        })
        .collect();
    let intervals: Vec<&Interval> = assessment.s580.intervals_of(index).collect();
    let strip = strip_rows(&intervals, words);
    let height_pt = PANELS_PT + STRIP_GAP_PT + ROW_PT * strip.len() as f64;
    canvas.draw(height_pt, |area| {
        let (panels, below) = area.split_vertically(pt(PANELS_PT));
        let (temperatures, rest) = panels.split_vertically(pt(TEMPERATURE_PT));
        let (irradiance, wind) = rest.split_vertically(pt(IRRADIANCE_PT));
        let day = Day {
            span_h: (from_h, to_h),
            used: &used,
            hours: &hours,
            names_pt: names_pt(words),
            words,
        };
        let predicted = assessment.s580.predicted[index].as_ref();
        draw_temperatures(&temperatures, run, predicted, &intervals, &day)?;
        let sun = run.readings.irradiance_w_m2.as_ref();
        draw_single(
            &irradiance,
            sun,
            &day,
            (message!("figure-irradiance"), SUN, 100.0),
            false,
        )?;
        let air = run.readings.wind_m_s.as_ref();
        let wind_speed = message!("figure-wind");
        draw_single(&wind, air, &day, (wind_speed, INK, 1.5), true)?;
        let (_, below) = below.split_vertically(pt(STRIP_GAP_PT));
        draw_strip(
            &below,
            &strip,
            &StripPlace {
                span_h: day.span_h,
                right_pt: day.names_pt,
                hours: day.hours,
            },
        )
    })
}

/// Room at the right for the names of curves, points.
fn names_pt(words: &Words) -> f64 {
    let names = [message!("figure-water"), message!("figure-ambient")];
    let widths = names.map(|name| width_pt(&words.say(name), NAME_PT) + 2.0 * NAME_GAP_PT);
    widths.into_iter().fold(NAMES_PT, f64::max)
}

/// What the panels of a run share.
struct Day<'d> {
    span_h: (f64, f64),
    /// Spans of used intervals, hours.
    used: &'d [(f64, f64)],
    hours: &'d dyn Fn(i64) -> f64,
    /// Room at the right for the names of curves, points.
    names_pt: f64,
    words: &'d Words,
}

fn draw_temperatures(
    area: &Area<'_>,
    run: &Run,
    predicted: Option<&Predicted>,
    intervals: &[&Interval],
    day: &Day<'_>,
) -> Result<()> {
    let ambient = run.readings.ambient_c.as_ref();
    let water = &run.readings.water_c;
    let values = water
        .value
        .iter()
        .chain(ambient.iter().flat_map(|ambient| &ambient.value));
    let bounds = padded(values.copied(), false);
    let mut chart = panel(
        area,
        day,
        bounds,
        (message!("figure-temperature"), 0),
        false,
    )?;
    curve(&mut chart, water, day, stroke(&INK, 1.5))?;
    label_end(&mut chart, water, day, message!("figure-water"), &INK)?;
    if let Some(ambient) = ambient {
        curve(&mut chart, ambient, day, stroke(&QUIET, 1.2))?;
        label_end(&mut chart, ambient, day, message!("figure-ambient"), &QUIET)?;
    }
    match predicted {
        Some(predicted) => draw_predicted(&mut chart, predicted, intervals, day),
        None => Ok(()),
    }
}

/// What the line predicts, dashed, and what was measured at the ends of the intervals, dots.
fn draw_predicted(
    chart: &mut Chart<'_, '_>,
    predicted: &Predicted,
    intervals: &[&Interval],
    day: &Day<'_>,
) -> Result<()> {
    let dots = intervals.iter().map(|interval| {
        EmptyElement::at((
            (day.hours)(interval.measured.span.to_us),
            interval.measured.water_end_c,
        )) + Circle::new((0, 0), pt(1.5), INK.filled())
    });
    chart.draw_series(dots).map_err(fault)?;
    for piece in &predicted.pieces {
        let points = piece
            .iter()
            .map(|&(time_us, water_c)| ((day.hours)(time_us), water_c));
        let dashed = DashedLineSeries::new(points, size(4.0), size(2.5), stroke(&LINE, 1.4));
        chart.draw_series(dashed).map_err(fault)?;
    }
    Ok(())
}

/// A panel for one quantity from zero, with its name, colour and least range.
fn draw_single(
    area: &Area<'_>,
    series: Option<&Series>,
    day: &Day<'_>,
    (name, colour, least): (Message, RGBColor, f64),
    has_clock: bool,
) -> Result<()> {
    let values = series
        .into_iter()
        .flat_map(|series| series.value.iter().copied());
    let high = values.fold(least, f64::max) * 1.06;
    let decimals = if high < 5.0 { 1 } else { 0 };
    let mut chart = panel(area, day, (0.0, high), (name, decimals), has_clock)?;
    let Some(series) = series else {
        let middle = ((day.span_h.0 + day.span_h.1) / 2.0, high / 2.0);
        let style = anchored(text(8.5, &QUIET), HPos::Center, VPos::Center);
        let absence = day.words.say(message!("figure-not-measured"));
        chart
            .draw_series([Text::new(absence, middle, style)])
            .map_err(fault)?;
        return Ok(());
    };
    curve(&mut chart, series, day, stroke(&colour, 1.2))
}

/// Local clock time as hours since midnight of the run's date; goes on past 24.
fn local_hours(time_us: i64, run: &Run, zone: &TimeZone) -> f64 {
    let local = zoned(time_us, zone).datetime();
    let midnight = run.date.to_datetime(jiff::civil::Time::midnight());
    local.duration_since(midnight).as_secs_f64() / 3600.0
}

/// A panel with its used spans shaded; the lowest one carries the clock.
fn panel<'a, 'b>(
    area: &'a Area<'b>,
    day: &Day<'_>,
    bounds: (f64, f64),
    (name, decimals): (Message, usize),
    has_clock: bool,
) -> Result<Chart<'a, 'b>> {
    let mut chart = chart(area, day.span_h, bounds, has_clock, day.names_pt)?;
    shade(&mut chart, day.used, bounds)?;
    let words = day.words;
    let x_name = has_clock.then(|| words.say(message!("figure-clock")));
    let axes = Axes {
        x_name: &x_name.unwrap_or_default(),
        y_name: &words.say(name),
        x_text: &|_| String::new(),
        y_text: &|value| words.say(fixed(*value, decimals)),
        x_labels: 0,
        y_labels: 4,
    };
    draw_axes(&mut chart, &axes)?;
    draw_clock(&mut chart, day, bounds.0, has_clock)?;
    Ok(chart)
}

/// Ticks at round clock times, which a decimal axis does not find.
fn draw_clock(
    chart: &mut Chart<'_, '_>,
    day: &Day<'_>,
    bottom: f64,
    with_text: bool,
) -> Result<()> {
    let (from_h, to_h) = day.span_h;
    let fits = |minutes: &&f64| (to_h - from_h) * 60.0 / **minutes <= MOST_CLOCK_TICKS;
    let days = ((to_h - from_h) / HOURS_PER_DAY / MOST_CLOCK_TICKS).ceil();
    let step_h = CLOCK_STEPS_MIN
        .iter()
        .find(fits)
        .map_or(days * HOURS_PER_DAY, |minutes| minutes / 60.0);
    let first = (from_h / step_h - 1e-9).ceil() as i64;
    let last = (to_h / step_h + 1e-9).floor() as i64;
    let ticks = (first..=last).map(|step| {
        let hours = step as f64 * step_h;
        let text_below = if with_text {
            day.words.say(clock(hours))
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
    day: &Day<'_>,
    style: ShapeStyle,
) -> Result<()> {
    let step = series.value.len().div_ceil(LONGEST_CURVE).max(1);
    let longest_s = longest_step_s(series);
    let mut piece: Vec<(f64, f64)> = Vec::new();
    let mut pieces = Vec::new();
    for (&time_us, &value) in series.time_us.iter().zip(&series.value).step_by(step) {
        let at = (day.hours)(time_us);
        if piece
            .last()
            .is_some_and(|last| (at - last.0) * SECONDS_PER_HOUR > longest_s)
        {
            pieces.push(std::mem::take(&mut piece));
        }
        piece.push((at, value));
    }
    pieces.push(piece);
    for piece in pieces {
        // A reading alone would be no line.
        let alone = (piece.len() == 1).then(|| piece[0]);
        let dot = alone.map(|at| Circle::new(at, pt(1.2), style.filled()));
        chart.draw_series(dot).map_err(fault)?;
        chart
            .draw_series(LineSeries::new(piece, style))
            .map_err(fault)?;
    }
    Ok(())
}

/// A time between readings over which no curve is drawn, s: longer than these readings are
/// mostly apart.
fn longest_step_s(series: &Series) -> f64 {
    let times = series.time_us.windows(2);
    let mut steps_s: Vec<f64> = times
        .map(|pair| seconds_between(pair[0], pair[1]))
        .collect();
    steps_s.sort_by(f64::total_cmp);
    let median_s = steps_s.get(steps_s.len() / 2).copied().unwrap_or(0.0);
    (1.5 * median_s).max(LONGEST_STEP_S)
}

fn label_end(
    chart: &mut Chart<'_, '_>,
    series: &Series,
    day: &Day<'_>,
    name: Message,
    colour: &RGBColor,
) -> Result<()> {
    let Some(&value) = series.value.last() else {
        return Ok(());
    };
    let style = anchored(text(NAME_PT, colour), HPos::Left, VPos::Center);
    let label = EmptyElement::at((day.span_h.1, value))
        + Text::new(day.words.say(name), (pt(NAME_GAP_PT), 0), style);
    chart.draw_series([label]).map_err(fault)?;
    Ok(())
}
