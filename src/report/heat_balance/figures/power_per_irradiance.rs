//! Power over irradiance against temperature difference over irradiance: gain and loss as a
//! straight line.

use plotters::prelude::*;

use crate::error::Result;
use crate::language::{Words, fixed};
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::heat_balance::HeatBalance;
use crate::procedure::heat_balance::fit::is_sound;
use crate::procedure::s580::intervals::Interval;
use crate::report::assets::Asset;
use crate::report::figures::bands::{about, fill_band};
use crate::report::figures::key::Key;
use crate::report::figures::points::{LINE_WIDTH_PT, draw_point_key, draw_points, point_key};
use crate::report::figures::style::{
    Area, Axes, BAND, Canvas, LINE, UPRIGHT_PT, chart, draw_axes, fault, label_decimals, padded,
    pt, stroke,
};

/// Its name among the figures.
pub const FILE: &str = "heat-balance.svg";

const HEIGHT_PT: f64 = 120.0;
const X_LABELS: usize = 5;
const Y_LABELS: usize = 5;
/// Share of the mean irradiance below which a point of the line does not widen the view: as
/// irradiance falls to none, what is divided by it grows without end.
const WEAK_SUN: f64 = 0.5;
/// How far other points and the band widen the view on each side, as a share of what the
/// line and its points take.
const ROOM: f64 = 0.25;

/// A point: Td/G, K m²/W, and P/G, m².
type At = (f64, f64);

/// What is drawn.
pub struct View {
    /// From the left to the right edge, K m²/W.
    pub k_m2_per_w: (f64, f64),
    /// From the bottom to the top, m².
    pub m2: (f64, f64),
    /// Points of the intervals that the line is fitted to.
    pub of_line: Vec<At>,
    /// Points of the others that lie in view.
    pub others: Vec<At>,
    /// How many of either kind lie beyond the view.
    pub beyond: usize,
}

/// The points of a heat balance, and the edges between which they are seen.
pub fn view(assessment: &Assessment, found: &HeatBalance) -> View {
    let points = |of_line: bool| {
        let intervals = found.rests_on(&assessment.s580).iter();
        intervals
            .filter(move |interval| is_sound(interval) == of_line)
            .filter_map(point)
    };
    let all = || points(true).chain(points(false)).map(|(_, at)| at);
    let weak_w_m2 = WEAK_SUN * found.mean_irradiance_w_m2;
    let strong = points(true).filter(|(irradiance_w_m2, _)| *irradiance_w_m2 >= weak_w_m2);
    let strong: Vec<At> = strong.map(|(_, at)| at).collect();
    let across = padded(strong.iter().map(|at| at.0), true);
    let across = widened(across, all().map(|at| at.0));
    let band = found.power_at(1.0);
    let at_edges = [across.0, across.1].map(|x| (line_at(found, x), band.half_width([1.0, x])));
    let line = at_edges.map(|(middle, _)| middle);
    let up = padded(strong.iter().map(|at| at.1).chain(line), false);
    let of_band = at_edges.map(|(middle, half)| about(middle, half));
    let of_band = of_band.into_iter().flat_map(|(low, high)| [low, high]);
    let in_reach = all().filter(|at| is_within(across, at.0));
    let up = widened(up, in_reach.map(|at| at.1).chain(of_band));
    let is_seen = |at: &At| is_within(across, at.0) && is_within(up, at.1);
    let seen = |of_line: bool| -> Vec<At> {
        let points = points(of_line).map(|(_, at)| at);
        points.filter(is_seen).collect()
    };
    let (of_line, others) = (seen(true), seen(false));
    View {
        k_m2_per_w: across,
        m2: up,
        beyond: all().count() - of_line.len() - others.len(),
        of_line,
        others,
    }
}

fn is_within((low, high): (f64, f64), value: f64) -> bool {
    (low..=high).contains(&value)
}

/// A range that holds more values, as far as there is [`ROOM`] for them.
fn widened((low, high): (f64, f64), values: impl Iterator<Item = f64>) -> (f64, f64) {
    let room = ROOM * (high - low);
    let within = values.map(|value| value.clamp(low - room, high + room));
    within.fold((low, high), |(low, high), value| {
        (low.min(value), high.max(value))
    })
}

/// Mean irradiance of an interval, W/m², and its point; `None` where it lacks something.
fn point(interval: &Interval) -> Option<(f64, At)> {
    let measured = &interval.measured;
    let irradiance_w_m2 = measured.irradiance?.mean;
    let x = measured.difference_k? / irradiance_w_m2;
    let y = measured.cooking_power_w / irradiance_w_m2;
    (irradiance_w_m2 > 0.0).then_some((irradiance_w_m2, (x, y)))
}

/// g − u·Td/G, m², at a Td/G in K m²/W.
fn line_at(found: &HeatBalance, k_m2_per_w: f64) -> f64 {
    let [gain_m2, loss_w_per_k] = found.fitted.parameters;
    gain_m2 - loss_w_per_k * k_m2_per_w
}

/// The figure, where there is a heat balance.
///
/// # Errors
/// [`crate::error::Error::Internal`] if the drawing fails.
pub fn balance_figure(assessment: &Assessment, canvas: &Canvas<'_>) -> Result<Option<Asset>> {
    let Some(found) = &assessment.heat_balance else {
        return Ok(None);
    };
    let svg = draw_power_per_irradiance(assessment, found, canvas)?;
    Ok(Some(Asset {
        name: FILE.to_owned(),
        bytes: svg.into_bytes(),
    }))
}

/// Draws the intervals of the heat balance and the others, and the line with its 95 % band.
///
/// # Errors
/// [`crate::error::Error::Internal`] if the drawing fails.
pub fn draw_power_per_irradiance(
    assessment: &Assessment,
    found: &HeatBalance,
    canvas: &Canvas<'_>,
) -> Result<String> {
    let words = canvas.words;
    let view = view(assessment, found);
    let line = if found.is_of_one_day() {
        message!("balance-key-line-one-day")
    } else {
        message!("balance-key-line")
    };
    let key = point_key(
        words.say(message!("balance-key-used", count = view.of_line.len())),
        words.say(message!("balance-key-others", count = view.others.len())),
        Some(words.say(line)),
        canvas.width_pt,
    );
    canvas.draw(HEIGHT_PT, |area| draw_on(area, found, &view, &key, words))
}

fn draw_on(
    area: &Area<'_>,
    found: &HeatBalance,
    view: &View,
    key: &Key,
    words: &Words,
) -> Result<()> {
    let (names, plot) = area.split_vertically(pt(key.height_pt()));
    draw_point_key(&names, key, &[(5.0, BAND)])?;
    let (across, up) = (view.k_m2_per_w, view.m2);
    let mut chart = chart(&plot, across, up, true, (UPRIGHT_PT, 6.0))?;
    let band = found.power_at(1.0);
    fill_band(&mut chart, across, BAND, |x| {
        let (low, high) = about(line_at(found, x), band.half_width([1.0, x]));
        (low.max(up.0), high.min(up.1))
    })?;
    let ends = [across.0, across.1].map(|x| (x, line_at(found, x)));
    chart
        .draw_series(LineSeries::new(ends, stroke(&LINE, LINE_WIDTH_PT)))
        .map_err(fault)?;
    draw_points(&mut chart, &view.of_line, &view.others)?;
    let (x_decimals, y_decimals) = (
        label_decimals(across, X_LABELS),
        label_decimals(up, Y_LABELS),
    );
    let axes = Axes {
        x_name: &words.say(message!("balance-axis-difference")),
        y_name: &words.say(message!("balance-axis-power")),
        x_text: &|value| words.say(fixed(*value, x_decimals)),
        y_text: &|value| words.say(fixed(*value, y_decimals)),
        x_labels: X_LABELS,
        y_labels: Y_LABELS,
        left_pt: UPRIGHT_PT,
    };
    draw_axes(&mut chart, &axes)
}
