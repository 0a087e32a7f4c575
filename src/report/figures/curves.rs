//! What was measured as thin lines with dots, each with the name of its run at its end, and what
//! the figures of a procedure say of it as a thick line.

use plotters::prelude::*;
use plotters::style::text_anchor::{HPos, VPos};

use super::axis::Axis;
use super::fit::width_pt;
use super::key::{Entry, Key};
use super::points::LINE_WIDTH_PT;
use super::style::{
    Area, Axes, Canvas, Chart, INK, LINE, NUMBER_PT, QUIET, UPRIGHT_PT, anchored, chart, draw_axes,
    fault, label_decimals, padded, points, pt, stroke, text,
};
use crate::error::Result;
use crate::language::{Words, fixed};

/// A point of a curve, in the units of the axes.
pub type At = (f64, f64);

/// Height beside text and on a narrow screen, and as wide as a page, points.
const HEIGHT_PT: f64 = 106.0;
const TALL_PT: f64 = 190.0;
const WIDE_PT: f64 = 400.0;
const KEY_PT: f64 = 16.0;
const X_LABELS: usize = 6;
const Y_LABELS: usize = 5;
/// Most readings of a curve that are drawn as dots.
const MOST_DOTS: usize = 60;
const DOT_PT: f64 = 1.5;
const THIN_PT: f64 = 0.7;
/// A mark of the key: how far it begins before its name, and its length, points.
const MARK_PT: f64 = 17.0;
const LENGTH_PT: f64 = 12.0;
/// Size of the names of runs, and from one to the next, points.
const NAME_PT: f64 = 7.5;
const STEP_PT: f64 = 9.0;
/// From the right edge of the chart to the names, points: room for what leads to them.
const LEADER_PT: f64 = 12.0;
/// What the name of the upright axis and its marks take, points.
const UPRIGHT_NAME_PT: f64 = 22.0;
/// Room right of a chart without names, points.
const RIGHT_PT: f64 = 10.0;

/// What was measured in one run.
pub struct Curve {
    /// Of the run; empty where it needs none.
    pub name: String,
    pub points: Vec<At>,
}

/// What a figure shows, and what it says.
pub struct Curves {
    pub measured: Vec<Curve>,
    /// Measured points that are not joined: each is a dot.
    pub are_joined: bool,
    pub told: Vec<Vec<At>>,
    pub measured_name: String,
    /// Empty: there is no other curve.
    pub told_name: String,
    pub x: Axis,
    pub y: Axis,
    /// The upright axis begins at zero.
    pub from_zero: bool,
}

/// Draws the curves with their key.
///
/// # Errors
/// [`crate::error::Error::Internal`] if the drawing fails.
pub fn draw_curves(curves: &Curves, canvas: &Canvas<'_>) -> Result<String> {
    let entry = |name: &String, left_pt: f64| Entry {
        name: name.clone(),
        left_pt,
        mark_pt: MARK_PT,
    };
    let mut entries = vec![entry(&curves.measured_name, 64.0)];
    if !curves.told_name.is_empty() {
        entries.push(entry(&curves.told_name, 190.0));
    }
    let key = Key::new(entries, KEY_PT, canvas.width_pt);
    let is_wide = canvas.width_pt >= WIDE_PT;
    let height_pt = if is_wide { TALL_PT } else { HEIGHT_PT };
    canvas.draw(height_pt, |area| draw_on(area, curves, &key, canvas.words))
}

fn draw_on(area: &Area<'_>, curves: &Curves, key: &Key, words: &Words) -> Result<()> {
    let (names, plot) = area.split_vertically(pt(key.height_pt()));
    draw_key(&names, key)?;
    let all = || {
        let measured = curves.measured.iter().map(|curve| &curve.points);
        measured.chain(&curves.told).flatten()
    };
    let across = ends(all().map(|at| at.0));
    let up = padded(all().map(|at| at.1), curves.from_zero);
    let (x_decimals, y_decimals) = (
        label_decimals(across, X_LABELS),
        label_decimals(up, Y_LABELS),
    );
    let x_text = |value: &f64| curves.x.number(fixed(*value, x_decimals), words);
    let y_text = |value: &f64| curves.y.number(fixed(*value, y_decimals), words);
    let number_pt = |number: &str| width_pt(number, NUMBER_PT);
    let left_pt = UPRIGHT_PT.max(number_pt(&y_text(&up.1)) + UPRIGHT_NAME_PT);
    // The last number stands below the right end at most.
    let right_pt = right_pt(curves).max(number_pt(&x_text(&across.1)) / 2.0);
    let mut chart = chart(&plot, across, up, true, (left_pt, right_pt))?;
    for Curve { points, .. } in &curves.measured {
        if curves.are_joined {
            let line = LineSeries::new(points.iter().copied(), stroke(&QUIET, THIN_PT));
            chart.draw_series(line).map_err(fault)?;
        }
        if !curves.are_joined || points.len() <= MOST_DOTS {
            let dots = points
                .iter()
                .map(|at| EmptyElement::at(*at) + Circle::new((0, 0), pt(DOT_PT), INK.filled()));
            chart.draw_series(dots).map_err(fault)?;
        }
    }
    for curve in &curves.told {
        let line = LineSeries::new(curve.iter().copied(), stroke(&LINE, LINE_WIDTH_PT));
        chart.draw_series(line).map_err(fault)?;
    }
    let axes = Axes {
        x_name: &curves.x.name(words),
        y_name: &curves.y.name(words),
        x_text: &x_text,
        y_text: &y_text,
        left_pt,
        x_labels: X_LABELS,
        y_labels: Y_LABELS,
    };
    draw_axes(&mut chart, &axes)?;
    draw_names(&mut chart, &curves.measured)
}

/// Room right of the chart: for the names of runs and what leads to them.
fn right_pt(curves: &Curves) -> f64 {
    let names = curves.measured.iter().map(|curve| &curve.name);
    let widest = names
        .map(|name| width_pt(name, NAME_PT))
        .fold(0.0, f64::max);
    if widest > 0.0 {
        widest + LEADER_PT + 4.0
    } else {
        RIGHT_PT
    }
}

/// Names each curve at the right edge, at the height of its end as far as the others leave
/// room, with a thin line from its end. More names than there is room for are left out.
fn draw_names(chart: &mut Chart<'_, '_>, curves: &[Curve]) -> Result<()> {
    let named = curves.iter().filter(|curve| !curve.name.is_empty());
    let ends = named.filter_map(|curve| Some((*curve.points.last()?, curve.name.as_str())));
    let mut ends: Vec<(At, &str)> = ends.collect();
    ends.sort_by(|one, two| two.0.1.total_cmp(&one.0.1));
    let (_, height) = chart.plotting_area().dim_in_pixel();
    let top = chart.plotting_area().get_base_pixel().1;
    let heights_pt: Vec<f64> = ends
        .iter()
        .map(|(end, _)| {
            let (_, y) = chart.backend_coord(end);
            f64::from(y - top) / f64::from(pt(1.0))
        })
        .collect();
    let Some(places_pt) = apart(&heights_pt, points(height)) else {
        return Ok(());
    };
    let right = chart.x_range().end;
    for (((end, name), height_pt), place_pt) in ends.into_iter().zip(heights_pt).zip(places_pt) {
        let edge = chart.backend_coord(&(right, end.1)).0;
        let from_end = edge - chart.backend_coord(&end).0;
        let down = pt(place_pt - height_pt);
        let leader = vec![(0, 0), (from_end + pt(LEADER_PT - 2.0), down)];
        let style = anchored(text(NAME_PT, &INK), HPos::Left, VPos::Center);
        let at_name = (from_end + pt(LEADER_PT), down);
        let mark = EmptyElement::at(end)
            + PathElement::new(leader, stroke(&QUIET, 0.4))
            + Text::new(name.to_owned(), at_name, style);
        chart.draw_series([mark]).map_err(fault)?;
    }
    Ok(())
}

/// Heights from the top, in their order, moved as little as keeps them a step apart and within
/// the chart; `None` where they do not fit.
fn apart(heights_pt: &[f64], room_pt: f64) -> Option<Vec<f64>> {
    if STEP_PT * heights_pt.len() as f64 > room_pt + STEP_PT {
        return None;
    }
    let mut places: Vec<f64> = heights_pt.to_vec();
    for place in 1..places.len() {
        places[place] = places[place].max(places[place - 1] + STEP_PT);
    }
    let mut lowest = room_pt;
    for place in places.iter_mut().rev() {
        *place = place.min(lowest);
        lowest = *place - STEP_PT;
    }
    Some(places)
}

fn draw_key(area: &Area<'_>, key: &Key) -> Result<()> {
    let places = key.write(area, KEY_PT / 2.0 - 1.0)?;
    let marks = [(QUIET, THIN_PT), (LINE, LINE_WIDTH_PT)];
    for ((left, middle), (colour, width_pt)) in places.into_iter().zip(marks) {
        let from = left - pt(MARK_PT);
        let ends = vec![(from, middle), (from + pt(LENGTH_PT), middle)];
        area.draw(&PathElement::new(ends, stroke(&colour, width_pt)))
            .map_err(fault)?;
        if colour == QUIET {
            let at = (from + pt(LENGTH_PT / 2.0), middle);
            let dot = Circle::new(at, pt(DOT_PT), INK.filled());
            area.draw(&dot).map_err(fault)?;
        }
    }
    Ok(())
}

/// From the lowest to the highest value, without room around.
fn ends(values: impl Iterator<Item = f64>) -> (f64, f64) {
    let (low, high) = values.fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), value| {
        (low.min(value), high.max(value))
    });
    if low < high {
        (low, high)
    } else {
        padded([low, high].into_iter(), false)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_stand_apart_in_their_order_and_within_the_chart() {
        for heights in [
            vec![50.0, 50.2, 50.4],
            vec![98.0, 99.0],
            vec![0.0, 40.0, 80.0],
        ] {
            let places = apart(&heights, 100.0).unwrap();
            assert!(places.iter().all(|place| (0.0..=100.0).contains(place)));
            assert!(
                places
                    .windows(2)
                    .all(|pair| pair[1] - pair[0] >= STEP_PT - 1e-9),
                "{places:?}"
            );
        }
        assert_eq!(apart(&[0.0, 40.0, 80.0], 100.0).unwrap(), [0.0, 40.0, 80.0]);
        assert_eq!(apart(&[10.0; 20], 100.0), None);
    }
}
