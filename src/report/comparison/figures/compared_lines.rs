//! The lines of several campaigns in one figure, told apart by letter, dash and grey.

use plotters::prelude::*;
use plotters::style::text_anchor::{HPos, VPos};

use crate::comparison::Comparison;
use crate::error::Result;
use crate::language::{Words, fixed};
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::s580::intervals::Interval;
use crate::procedure::s580::limits::RATING_DIFFERENCE_K;
use crate::procedure::s580::uncertainty::RatingUncertainty;
use crate::report::comparison::names::letter;
use crate::report::figures::bands::{about, fill_band_clear, steps};
use crate::report::figures::marks::parts;
use crate::report::figures::style::{
    Area, Axes, Canvas, Chart, INK, anchored, chart, draw_axes, fault, padded, pt, size, stroke,
    strong,
};
use crate::stats::line::Bounds;

const HEIGHT_PT: f64 = 250.0;
/// Room for the letters at the right.
const LETTERS_PT: f64 = 26.0;
/// Least distance of two letters, as a share of the figure's height.
const LETTER_STEP: f64 = 0.048;
/// Campaigns whose intervals are drawn, too.
const WITH_POINTS: usize = 3;
/// Campaigns whose bands are filled; of more, only the edges at 50 K are drawn.
pub const WITH_BANDS: usize = 6;

/// Colours that stay apart in grey and for the colour-blind, darkest first.
const COLOURS: &[RGBColor] = &[
    RGBColor(0x0b, 0x4a, 0x5c),
    RGBColor(0xb0, 0x5a, 0x00),
    RGBColor(0x6a, 0x4c, 0x93),
    RGBColor(0x4d, 0x8a, 0x3d),
];
/// Dash and gap of a campaign's line, points; the first is solid.
pub const DASHES: &[(f64, f64)] = &[(0.0, 0.0), (7.0, 3.0), (2.0, 2.0), (12.0, 3.0), (4.0, 5.0)];

/// The colour of a campaign.
pub fn colour(place: usize) -> RGBColor {
    COLOURS[place % COLOURS.len()]
}

/// Draws all lines with their bands, and their values at 50 K.
///
/// # Errors
/// [`crate::error::Error::Internal`] if the drawing fails.
pub fn draw_lines(comparison: &Comparison, canvas: &Canvas<'_>) -> Result<String> {
    canvas.draw(HEIGHT_PT, |area| draw_on(area, comparison, canvas.words))
}

/// Temperature differences of a campaign's used intervals, and the line there.
struct Drawn<'c> {
    place: usize,
    campaign: &'c Assessment,
    uncertainty: &'c RatingUncertainty,
}

fn draw_on(area: &Area<'_>, comparison: &Comparison, words: &Words) -> Result<()> {
    let drawn: Vec<Drawn<'_>> = comparison
        .campaigns
        .iter()
        .enumerate()
        .filter_map(|(place, campaign)| {
            let uncertainty = campaign.s580.uncertainty()?;
            Some(Drawn {
                place,
                campaign,
                uncertainty,
            })
        })
        .collect();
    let observed = drawn.iter().flat_map(|one| {
        let (low_k, high_k) = one.uncertainty.of_line.line.x_range;
        [low_k, high_k]
    });
    let span = padded(observed.chain([RATING_DIFFERENCE_K]), true);
    let edges = drawn.iter().flat_map(|one| {
        [span.0, span.1].into_iter().flat_map(|k| {
            let (lower, upper) = band(one.uncertainty, k);
            [lower.max(0.0), upper]
        })
    });
    let points = drawn.iter().take(WITH_POINTS).flat_map(|one| {
        one.campaign
            .s580
            .used()
            .filter_map(Interval::point)
            .map(|point| point.1)
    });
    let bounds = padded(edges.chain(points), true);
    let mut chart = chart(area, span, bounds, true, LETTERS_PT)?;
    let whole = |value: &f64| words.say(fixed(*value, 0));
    let axes = Axes {
        x_name: &words.say(message!("figure-difference")),
        y_name: &words.say(message!("figure-power")),
        x_text: &whole,
        y_text: &whole,
        x_labels: 10,
        y_labels: 8,
    };
    draw_axes(&mut chart, &axes)?;
    if drawn.len() <= WITH_BANDS {
        for one in &drawn {
            fill_band_clear(&mut chart, span, colour(one.place), |k| {
                band(one.uncertainty, k)
            })?;
        }
    }
    let at = [
        (RATING_DIFFERENCE_K, bounds.0),
        (RATING_DIFFERENCE_K, bounds.1),
    ];
    let guide = DashedLineSeries::new(at, size(3.0), size(2.5), stroke(&INK, 0.6));
    chart.draw_series(guide).map_err(fault)?;
    for one in &drawn {
        draw_line(&mut chart, one, span)?;
        if drawn.len() <= WITH_POINTS {
            draw_points(&mut chart, one)?;
        }
        draw_rating(&mut chart, one)?;
    }
    draw_letters(&mut chart, &drawn, span, bounds)
}

fn band(uncertainty: &RatingUncertainty, at_k: f64) -> (f64, f64) {
    let budget = uncertainty.of_line.at(at_k);
    about(budget.value, budget.expanded)
}

fn draw_line(chart: &mut Chart<'_, '_>, one: &Drawn<'_>, span: (f64, f64)) -> Result<()> {
    let line = &one.uncertainty.of_line.line;
    let (dash_pt, gap_pt) = DASHES[one.place % DASHES.len()];
    for (span, width_pt) in [(span, 0.5), (line.x_range, 1.7)] {
        let points = steps(span).map(|k| (k, line.predict(k)));
        let style = stroke(&colour(one.place), width_pt);
        if dash_pt > 0.0 {
            let dashed = DashedLineSeries::new(points, size(dash_pt), size(gap_pt), style);
            chart.draw_series(dashed).map_err(fault)?;
        } else {
            let solid = LineSeries::new(points, style);
            chart.draw_series(solid).map_err(fault)?;
        }
    }
    Ok(())
}

fn draw_points(chart: &mut Chart<'_, '_>, one: &Drawn<'_>) -> Result<()> {
    let marks = one
        .campaign
        .s580
        .used()
        .filter_map(Interval::point)
        .map(|at| {
            let (face, edge) = parts(one.place, colour(one.place));
            EmptyElement::at(at) + face + edge
        });
    chart.draw_series(marks).map_err(fault)?;
    Ok(())
}

/// Ps(50) with its 95 % interval as a bar, the bars of many campaigns side by side.
fn draw_rating(chart: &mut Chart<'_, '_>, one: &Drawn<'_>) -> Result<()> {
    let budget = &one.uncertainty.budget;
    let Bounds { lower, upper } = one.uncertainty.interval_w;
    let ends = [(RATING_DIFFERENCE_K, lower), (RATING_DIFFERENCE_K, upper)];
    let style = stroke(&colour(one.place), 2.2);
    chart
        .draw_series(LineSeries::new(ends, style))
        .map_err(fault)?;
    let mark = EmptyElement::at((RATING_DIFFERENCE_K, budget.value))
        + Circle::new((0, 0), pt(3.4), colour(one.place).filled())
        + Circle::new((0, 0), pt(2.1), WHITE.filled());
    chart.draw_series([mark]).map_err(fault)?;
    Ok(())
}

/// A letter at the end of each line, moved apart where lines end close together.
fn draw_letters(
    chart: &mut Chart<'_, '_>,
    drawn: &[Drawn<'_>],
    span: (f64, f64),
    bounds: (f64, f64),
) -> Result<()> {
    let ends = drawn
        .iter()
        .map(|one| (one.place, one.uncertainty.of_line.line.predict(span.1)))
        .collect();
    write_letters(chart, ends, span.1, bounds)
}

/// The letters of campaigns at the right edge, at the heights given, moved apart where these
/// are close together.
///
/// # Errors
/// [`crate::error::Error::Internal`] if the drawing fails.
pub fn write_letters(
    chart: &mut Chart<'_, '_>,
    mut ends: Vec<(usize, f64)>,
    edge: f64,
    (bottom, top): (f64, f64),
) -> Result<()> {
    let step = LETTER_STEP * (top - bottom);
    ends.sort_by(|one, two| one.1.total_cmp(&two.1));
    // Upwards until no two touch, then down again from the top.
    let mut lowest = bottom;
    for (_, at) in &mut ends {
        *at = at.max(lowest);
        lowest = *at + step;
    }
    let mut highest = top;
    for (_, at) in ends.iter_mut().rev() {
        *at = at.min(highest);
        highest = *at - step;
    }
    for (place, at) in ends {
        let style = anchored(strong(9.5, &colour(place)), HPos::Left, VPos::Center);
        let written = EmptyElement::at((edge, at))
            + Text::new(letter(place).to_string(), (pt(5.0), 0), style);
        chart.draw_series([written]).map_err(fault)?;
    }
    Ok(())
}
