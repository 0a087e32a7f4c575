//! Whether the scatter is normal, and how wide the band is with and without instruments.

use plotters::prelude::*;

use crate::error::Result;
use crate::language::{Words, fixed};
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::s580::intervals::Interval;
use crate::procedure::s580::limits::RATING_DIFFERENCE_K;
use crate::procedure::s580::uncertainty::RatingUncertainty;
use crate::report::figures::bands::{about, fill_band};
use crate::report::figures::style::{
    Area, Axes, BAND, Canvas, INK, LINE, OUTER_BAND, chart, draw_axes, fault, padded, pt, size,
    stroke,
};
use crate::stats::normal::normal_order_scores;

const HEIGHT_PT: f64 = 150.0;

/// Draws the normal quantile plot of the residuals beside the line with its two bands.
///
/// # Errors
/// [`crate::error::Error::Internal`] if the drawing fails.
pub fn draw_spread(
    assessment: &Assessment,
    uncertainty: &RatingUncertainty,
    canvas: &Canvas<'_>,
) -> Result<String> {
    let words = canvas.words;
    canvas.draw(HEIGHT_PT, |area| {
        let (left, right) = area.split_horizontally(pt(canvas.width_pt / 2.0));
        draw_quantiles(&left, assessment, uncertainty, words)?;
        draw_bands(&right, assessment, uncertainty, words)
    })
}

fn draw_quantiles(
    area: &Area<'_>,
    assessment: &Assessment,
    uncertainty: &RatingUncertainty,
    words: &Words,
) -> Result<()> {
    let line = &uncertainty.of_line.line;
    let mut residuals: Vec<f64> = assessment
        .s580
        .used()
        .filter_map(Interval::point)
        .map(|(k, power_w)| power_w - line.predict(k))
        .collect();
    residuals.sort_by(f64::total_cmp);
    let scores = normal_order_scores(residuals.len());
    let (left, right) = padded(scores.iter().copied(), false);
    let sd_w = line.residual_sd;
    let ends = [left * sd_w, right * sd_w];
    let bounds = padded(residuals.iter().copied().chain(ends), false);
    let mut chart = chart(area, (left, right), bounds, true, 6.0)?;
    let decimals = if sd_w < 1.0 { 1 } else { 0 };
    let axes = Axes {
        x_name: &words.say(message!("figure-expected")),
        y_name: &words.say(message!("figure-residual")),
        x_text: &|value| words.say(fixed(*value, 0)),
        y_text: &|value| words.say(fixed(*value, decimals)),
        x_labels: 5,
        y_labels: 5,
    };
    draw_axes(&mut chart, &axes)?;
    let expected = [(left, ends[0]), (right, ends[1])];
    let dashed = DashedLineSeries::new(expected, size(3.0), size(2.5), stroke(&LINE, 0.8));
    chart.draw_series(dashed).map_err(fault)?;
    let dots = scores.iter().zip(&residuals);
    let dots = dots.map(|(&x, &y)| Circle::new((x, y), pt(1.5), INK.filled()));
    chart.draw_series(dots).map_err(fault)?;
    Ok(())
}

fn draw_bands(
    area: &Area<'_>,
    assessment: &Assessment,
    uncertainty: &RatingUncertainty,
    words: &Words,
) -> Result<()> {
    let line = &uncertainty.of_line.line;
    let observed = assessment
        .s580
        .used()
        .filter_map(|interval| interval.measured.difference_k);
    let span = padded(observed.chain([RATING_DIFFERENCE_K]), false);
    let outer = |k: f64| about(line.predict(k), uncertainty.of_line.at(k).expanded);
    let inner = |k: f64| about(line.predict(k), uncertainty.of_line.at(k).without_common());
    let edges = [span.0, span.1].map(outer);
    let bounds = padded(edges.iter().flat_map(|edge| [edge.0, edge.1]), false);
    let mut chart = chart(area, span, bounds, true, 6.0)?;
    fill_band(&mut chart, span, OUTER_BAND, outer)?;
    fill_band(&mut chart, span, BAND, inner)?;
    let axes = Axes {
        x_name: &words.say(message!("figure-difference-short")),
        y_name: &words.say(message!("figure-band")),
        x_text: &|value| words.say(fixed(*value, 0)),
        y_text: &|value| words.say(fixed(*value, 0)),
        x_labels: 5,
        y_labels: 5,
    };
    draw_axes(&mut chart, &axes)?;
    let ends = [span.0, span.1].map(|k| (k, line.predict(k)));
    let ruled = LineSeries::new(ends, stroke(&LINE, 1.6));
    chart.draw_series(ruled).map_err(fault)?;
    let mark = (RATING_DIFFERENCE_K, uncertainty.budget.value);
    for foot in [(mark.0, bounds.0), (span.0, mark.1)] {
        let guide = DashedLineSeries::new([foot, mark], size(3.0), size(2.5), stroke(&INK, 0.6));
        chart.draw_series(guide).map_err(fault)?;
    }
    Ok(())
}
