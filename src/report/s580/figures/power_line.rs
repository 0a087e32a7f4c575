//! Standardised power against temperature difference: the figure of page one.

use plotters::prelude::*;
use plotters::style::text_anchor::{HPos, VPos};

use crate::error::Result;
use crate::language::fixed;
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::s580::intervals::Interval;
use crate::procedure::s580::limits::RATING_DIFFERENCE_K;
use crate::procedure::s580::rated::Rating;
use crate::procedure::s580::uncertainty::RatingUncertainty;
use crate::report::figures::bands::{about, fill_band};
use crate::report::figures::fit::strong_width_pt;
use crate::report::figures::key::Key;
use crate::report::figures::points::{LINE_WIDTH_PT, draw_point_key, draw_points, point_key};
use crate::report::figures::style::{
    Area, Axes, BAND, Canvas, Chart, INK, LINE, OUTER_BAND, QUIET, anchored, chart, draw_axes,
    fault, padded, pt, size, stroke, strong, text,
};
use crate::stats::line::Line;

const HEIGHT_PT: f64 = 276.0;
/// Size of the mark's label, and room beside it, points.
const LABEL_SIZE_PT: f64 = 9.5;
const LABEL_GAP_PT: f64 = 2.0;
/// Least share of the chart's width that the mark's label takes.
const LABEL_SHARE: f64 = 0.17;
/// Widest view beyond the used intervals, K, so that a plateau does not press them flat.
const ROOM_K: f64 = 15.0;

/// Draws used and set-aside intervals, the line, both bands and the 50 K mark.
///
/// # Errors
/// [`crate::error::Error::Internal`] if the drawing fails.
pub fn draw_power_line(assessment: &Assessment, canvas: &Canvas<'_>) -> Result<String> {
    canvas.draw(HEIGHT_PT, |area| draw_on(area, assessment, canvas))
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
    let key = key(assessment, canvas);
    let (names, plot) = area.split_vertically(pt(key.height_pt()));
    draw_point_key(&names, &key, &[(5.0, OUTER_BAND), (2.8, BAND)])?;
    let mut chart = chart(&plot, (left_k, right_k), (bottom_w, top_w), true, 6.0)?;
    let whole = |value: &f64| words.say(fixed(*value, 0));
    let power = if assessment.tested.estimates_irradiance() {
        message!("figure-power-estimated")
    } else {
        message!("figure-power")
    };
    let axes = Axes {
        x_name: &words.say(message!("figure-difference")),
        y_name: &words.say(power),
        x_text: &whole,
        y_text: &whole,
        x_labels: 10,
        y_labels: 8,
    };
    draw_axes(&mut chart, &axes)?;
    if !assessment
        .s580
        .intervals
        .iter()
        .any(|interval| interval.point().is_some())
    {
        let middle = ((left_k + right_k) / 2.0, (bottom_w + top_w) / 2.0);
        let style = anchored(text(9.5, &QUIET), HPos::Center, VPos::Center);
        let nothing = words.say(if assessment.tested.has_irradiance() {
            message!("figure-no-interval")
        } else {
            message!("figure-nothing-to-plot")
        });
        chart
            .draw_series([Text::new(nothing, middle, style)])
            .map_err(fault)?;
    }
    if let Some(uncertainty) = assessment.s580.uncertainty() {
        draw_bands(&mut chart, uncertainty, (left_k, right_k))?;
    }
    draw_intervals(&mut chart, assessment, in_view)?;
    if let (Some(line), Some(rating)) = (assessment.s580.line(), assessment.s580.rating()) {
        let power = fixed(rating.ps50_w, 0);
        let label = words.say(message!("figure-rating", power = power));
        draw_mark(&mut chart, rating, left_k, bottom_w)?;
        label_mark(&mut chart, line, label, (left_k, right_k))?;
    }
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

/// Writes the rating outside the band of single intervals, on the side where the line leaves
/// room.
fn label_mark(
    chart: &mut Chart<'_, '_>,
    line: &Line,
    label: String,
    (left_k, right_k): (f64, f64),
) -> Result<()> {
    let single = line.prediction(RATING_DIFFERENCE_K);
    let (chart_width, _) = chart.plotting_area().dim_in_pixel();
    let width = pt(strong_width_pt(&label, LABEL_SIZE_PT) + LABEL_GAP_PT);
    let least_share = LABEL_SHARE.max(f64::from(width) / f64::from(chart_width));
    let has_room = right_k - RATING_DIFFERENCE_K > least_share * (right_k - left_k);
    let (from_w, horizontal, vertical, offset) = match (line.slope < 0.0, has_room) {
        (true, true) => (single.upper, HPos::Left, VPos::Bottom, (pt(1.0), pt(-3.0))),
        (true, false) => (single.lower, HPos::Right, VPos::Top, (pt(-5.0), pt(3.0))),
        (false, _) => (
            single.upper,
            HPos::Right,
            VPos::Bottom,
            (pt(-1.0), pt(-3.0)),
        ),
    };
    let style = anchored(strong(LABEL_SIZE_PT, &INK), horizontal, vertical);
    let written = EmptyElement::at((RATING_DIFFERENCE_K, from_w)) + Text::new(label, offset, style);
    chart.draw_series([written]).map_err(fault)?;
    Ok(())
}

/// The names of the marks, for the key above the chart.
fn key(assessment: &Assessment, canvas: &Canvas<'_>) -> Key {
    let words = canvas.words;
    let used = assessment.s580.used().count();
    let aside = assessment.s580.set_aside().count();
    let line = assessment.s580.line();
    point_key(
        words.say(message!("figure-key-used", count = used)),
        words.say(message!("figure-key-aside", count = aside)),
        line.map(|_| words.say(message!("figure-key-line"))),
        canvas.width_pt,
    )
}
