//! Standardised power against temperature difference: the figure of page one.

use plotters::prelude::*;
use plotters::style::text_anchor::{HPos, VPos};

use super::power_labels::write_labels;

use crate::error::Result;
use crate::language::{PairedUnit, Words, fixed, unit_symbol};
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::s580::intervals::Interval;
use crate::procedure::s580::limits::RATING_DIFFERENCE_K;
use crate::procedure::s580::rated::Rating;
use crate::procedure::s580::uncertainty::RatingUncertainty;
use crate::report::figures::axis::Axis;
use crate::report::figures::bands::{about, fill_band};
use crate::report::figures::fit::width_pt;
use crate::report::figures::points::{LINE_WIDTH_PT, draw_points};
use crate::report::figures::style::{
    Area, Axes, BAND, Canvas, Chart, INK, LINE, NUMBER_PT, OUTER_BAND, QUIET, UPRIGHT_PT, anchored,
    chart, draw_axes, fault, nice, padded, pt, size, stroke, text,
};

/// Heights of the figure, points: page one takes the tallest that it has room for.
pub const HEIGHTS_PT: [f64; 4] = [206.0, 172.0, 142.0, 118.0];
/// Least room right of the chart, points.
const RIGHT_PT: f64 = 6.0;
/// Most steps from one label of the upright axis to the next.
const MOST_STEPS: f64 = 8.0;
/// Widest view beyond the used intervals, K, so that a plateau does not press them flat.
const ROOM_K: f64 = 15.0;

/// Draws used and set-aside intervals, the line, both bands and the 50 K mark, each named where
/// it stands.
///
/// # Errors
/// [`crate::error::Error::Internal`] if the drawing fails.
pub fn draw_power_line(
    assessment: &Assessment,
    canvas: &Canvas<'_>,
    height_pt: f64,
) -> Result<String> {
    canvas.draw(height_pt, |area| draw_on(area, assessment, canvas))
}

/// The smallest and largest temperature difference in view, K.
fn view_k(assessment: &Assessment) -> (f64, f64) {
    let used: Vec<f64> = assessment
        .s580
        .used()
        .filter_map(|i| i.measured.difference_k)
        .collect();
    let seen = |values: &[f64]| padded(values.iter().copied(), true);
    let all: Vec<f64> = assessment
        .s580
        .intervals
        .iter()
        .filter_map(|i| i.measured.difference_k)
        .collect();
    if used.is_empty() {
        return seen(&all);
    }
    let (low, high) = padded(used.iter().copied().chain([RATING_DIFFERENCE_K]), true);
    let (all_low, all_high) = seen(&all);
    (
        all_low.max(low - ROOM_K).min(low),
        all_high.min(high + ROOM_K).max(high),
    )
}

/// The first label of the upright axis that no power is above, W, and the number of labels from
/// zero to it.
fn end_at_label(top_w: f64) -> (f64, usize) {
    let step_w = nice(top_w / MOST_STEPS);
    let steps = (top_w / step_w).ceil();
    (steps * step_w, steps as usize + 1)
}

fn draw_on(area: &Area<'_>, assessment: &Assessment, canvas: &Canvas<'_>) -> Result<()> {
    let words = canvas.words;
    let (left_k, right_k) = view_k(assessment);
    let in_view = |interval: &&Interval| {
        let difference_k = interval.measured.difference_k;
        difference_k.is_some_and(|k| (left_k..=right_k).contains(&k))
    };
    let powers = assessment
        .s580
        .intervals
        .iter()
        .filter(in_view)
        .filter_map(|i| i.measured.standardised_power_w);
    let at_edges = assessment.s580.line().into_iter().flat_map(|line| {
        [
            line.prediction(left_k).upper,
            line.prediction(right_k).lower.max(0.0),
        ]
    });
    let (bottom_w, top_w) = padded(powers.chain(at_edges), true);
    let (top_w, y_labels) = match bottom_w {
        0.0 => end_at_label(top_w),
        _ => (top_w, 6),
    };
    let difference = Axis::in_unit(
        message!("figure-difference", unit = unit_symbol(PairedUnit::Kelvin)),
        PairedUnit::Kelvin,
    );
    let difference_text = |k: &f64| difference.number(fixed(*k, 0), words);
    // The last number stands below the right end at most.
    let right_pt = RIGHT_PT.max(width_pt(&difference_text(&right_k), NUMBER_PT) / 2.0);
    let mut chart = chart(
        area,
        (left_k, right_k),
        (bottom_w, top_w),
        true,
        (UPRIGHT_PT, right_pt),
    )?;
    let whole = |value: &f64| words.say(fixed(*value, 0));
    let power = if assessment.tested.estimates_irradiance() {
        message!("figure-power-short-estimated")
    } else {
        message!("figure-power-short")
    };
    let is_narrow = canvas.width_pt < 400.0;
    let axes = Axes {
        x_name: &difference.name(words),
        y_name: &words.say(power),
        x_text: &difference_text,
        y_text: &whole,
        x_labels: if is_narrow { 5 } else { 10 },
        y_labels,
        left_pt: UPRIGHT_PT,
    };
    draw_axes(&mut chart, &axes)?;
    let mut intervals = assessment.s580.intervals.iter();
    if !intervals.any(|interval| interval.point().is_some()) {
        write_nothing(&mut chart, assessment, words)?;
    }
    let is_believed = !assessment.s580.is_not_valid();
    if let Some(uncertainty) = assessment.s580.uncertainty().filter(|_| is_believed) {
        draw_bands(&mut chart, uncertainty, (left_k, right_k))?;
    }
    draw_intervals(&mut chart, assessment, in_view)?;
    if let Some(rating) = assessment.s580.rating().filter(|_| is_believed) {
        draw_mark(&mut chart, rating, left_k, bottom_w)?;
    }
    write_labels(&mut chart, assessment, words, &in_view)
}

/// Says why no interval is drawn.
fn write_nothing(chart: &mut Chart<'_, '_>, assessment: &Assessment, words: &Words) -> Result<()> {
    let (k, watts) = (chart.x_range(), chart.y_range());
    let middle = ((k.start + k.end) / 2.0, (watts.start + watts.end) / 2.0);
    let style = anchored(text(9.5, &QUIET), HPos::Center, VPos::Center);
    let nothing = words.say(if assessment.tested.has_irradiance() {
        message!("figure-no-interval")
    } else {
        message!("figure-nothing-to-plot")
    });
    let label = Text::new(nothing, middle, style);
    chart.draw_series([label]).map_err(fault)?;
    Ok(())
}

fn draw_bands(
    chart: &mut Chart<'_, '_>,
    uncertainty: &RatingUncertainty,
    (left_k, right_k): (f64, f64),
) -> Result<()> {
    let line = &uncertainty.of_line.line;
    let span = (left_k, right_k);
    fill_band(chart, span, OUTER_BAND, |k| {
        about(line.predict(k), uncertainty.of_line.at(k).expanded)
    })?;
    fill_band(chart, span, BAND, |k| {
        about(line.predict(k), uncertainty.of_line.at(k).without_common())
    })?;
    let (low_k, high_k) = line.x_range;
    let observed = [(low_k, line.predict(low_k)), (high_k, line.predict(high_k))];
    let beyond = [
        (left_k, line.predict(left_k)),
        (right_k, line.predict(right_k)),
    ];
    chart
        .draw_series(LineSeries::new(beyond, stroke(&LINE, 0.7)))
        .map_err(fault)?;
    chart
        .draw_series(LineSeries::new(observed, stroke(&LINE, LINE_WIDTH_PT)))
        .map_err(fault)?;
    Ok(())
}

fn draw_intervals(
    chart: &mut Chart<'_, '_>,
    assessment: &Assessment,
    in_view: impl Fn(&&Interval) -> bool,
) -> Result<()> {
    let points = |used: bool| -> Vec<(f64, f64)> {
        let intervals = assessment
            .s580
            .intervals
            .iter()
            .filter(|interval| in_view(interval));
        intervals
            .filter(|interval| interval.is_on_line() == used)
            .filter_map(Interval::point)
            .collect()
    };
    draw_points(chart, &points(true), &points(false))
}

fn draw_mark(chart: &mut Chart<'_, '_>, rating: &Rating, left_k: f64, bottom_w: f64) -> Result<()> {
    let at = (RATING_DIFFERENCE_K, rating.ps50_w);
    for far in [(RATING_DIFFERENCE_K, bottom_w), (left_k, rating.ps50_w)] {
        let guide = DashedLineSeries::new([far, at], size(3.0), size(2.5), stroke(&INK, 0.6));
        chart.draw_series(guide).map_err(fault)?;
    }
    let diamond = |half_pt: f64| {
        let half = pt(half_pt);
        vec![(0, -half), (half, 0), (0, half), (-half, 0)]
    };
    let mark = EmptyElement::at(at)
        + Polygon::new(diamond(6.0), INK.filled())
        + Polygon::new(diamond(4.6), WHITE.filled());
    chart.draw_series([mark]).map_err(fault)?;
    Ok(())
}
