//! How the dry vessels of several campaigns heat up, told apart as the lines of ratings are.

use plotters::prelude::*;

use super::compared_lines::{DASHES, colour, write_letters};
use crate::comparison::Comparison;
use crate::error::Result;
use crate::language::{Words, fixed};
use crate::message;
use crate::report::figures::style::{
    Area, Axes, Canvas, Chart, chart, draw_axes, fault, padded, size, stroke,
};
use crate::units::seconds_between;

/// Its name among the figures.
pub const FILE: &str = "dry-vessels.svg";

const HEIGHT_PT: f64 = 210.0;
/// Room for the letters at the right.
const LETTERS_PT: f64 = 26.0;
const THIN_PT: f64 = 0.9;
const THICK_PT: f64 = 2.6;

/// A dry run: time since its first reading, min, and the vessel, °C.
struct Drawn {
    place: usize,
    points: Vec<(f64, f64)>,
    /// Both ends; `None` without one.
    plateau: Option<[(f64, f64); 2]>,
}

/// Draws the vessel's temperature in every dry run; thick: its plateau.
///
/// # Errors
/// [`crate::error::Error::Internal`] if the drawing fails.
pub fn draw_heating(comparison: &Comparison, canvas: &Canvas<'_>) -> Result<String> {
    canvas.draw(HEIGHT_PT, |area| draw_on(area, comparison, canvas.words))
}

fn drawn(comparison: &Comparison) -> Vec<Drawn> {
    let campaigns = comparison.campaigns.iter().enumerate();
    let runs = campaigns.flat_map(|(place, one)| {
        let runs = one.dry_runs.runs.iter();
        runs.filter_map(move |run| {
            let vessel = one.tested.dry_runs[run.run].readings.vessel_c.as_ref()?;
            let first_us = *vessel.time_us.first()?;
            let minutes = |time_us: i64| seconds_between(first_us, time_us) / 60.0;
            let points = vessel.time_us.iter().zip(&vessel.value);
            Some(Drawn {
                place,
                points: points.map(|(time, c)| (minutes(*time), *c)).collect(),
                plateau: run.plateau.map(|plateau| {
                    let ends = [plateau.span.from_us, plateau.span.to_us];
                    ends.map(|end| (minutes(end), plateau.vessel_c))
                }),
            })
        })
    });
    runs.collect()
}

fn draw_on(area: &Area<'_>, comparison: &Comparison, words: &Words) -> Result<()> {
    let drawn = drawn(comparison);
    let all = || drawn.iter().flat_map(|one| one.points.iter());
    let last_min = all().map(|at| at.0).fold(1.0, f64::max);
    let bounds = padded(all().map(|at| at.1), false);
    let mut chart = chart(area, (0.0, last_min), bounds, true, LETTERS_PT)?;
    let whole = |value: &f64| words.say(fixed(*value, 0));
    let axes = Axes {
        x_name: &words.say(message!("dry-axis-time")),
        y_name: &words.say(message!("dry-axis-vessel")),
        x_text: &whole,
        y_text: &whole,
        x_labels: 8,
        y_labels: 6,
    };
    draw_axes(&mut chart, &axes)?;
    for one in &drawn {
        draw_run(&mut chart, one)?;
    }
    // One letter a campaign, where its longest run ends.
    let mut ends: Vec<(usize, (f64, f64))> = Vec::new();
    for one in &drawn {
        let Some(&end) = one.points.last() else {
            continue;
        };
        match ends.iter_mut().find(|(place, _)| *place == one.place) {
            Some((_, at)) if at.0 < end.0 => *at = end,
            Some(_) => {}
            None => ends.push((one.place, end)),
        }
    }
    let ends = ends.into_iter().map(|(place, at)| (place, at.1)).collect();
    write_letters(&mut chart, ends, last_min, bounds)
}

fn draw_run(chart: &mut Chart<'_, '_>, one: &Drawn) -> Result<()> {
    let (dash_pt, gap_pt) = DASHES[one.place % DASHES.len()];
    let colour = colour(one.place);
    let points = one.points.iter().copied();
    if dash_pt > 0.0 {
        let style = stroke(&colour, THIN_PT);
        let dashed = DashedLineSeries::new(points, size(dash_pt), size(gap_pt), style);
        chart.draw_series(dashed).map_err(fault)?;
    } else {
        let solid = LineSeries::new(points, stroke(&colour, THIN_PT));
        chart.draw_series(solid).map_err(fault)?;
    }
    if let Some(plateau) = one.plateau {
        let thick = LineSeries::new(plateau, stroke(&colour, THICK_PT));
        chart.draw_series(thick).map_err(fault)?;
    }
    Ok(())
}
