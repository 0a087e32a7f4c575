//! How the dry vessel of each campaign heats up, in a panel of its own.

use plotters::prelude::*;

use super::panel::{OTHERS, Shared, draw_panel};
use super::ranked::asset;
use crate::comparison::Comparison;
use crate::error::Result;
use crate::language::Words;
use crate::procedure::Assessment;
use crate::report::assets::Asset;
use crate::report::comparison::words::calls::Calls;
use crate::report::comparison::words::dry::{DryPart, drawn};
use crate::report::figures::style::{Canvas, Chart, LINE, fault, stroke};
use crate::units::seconds_between;

const THIN_PT: f64 = 0.7;
const THICK_PT: f64 = 1.3;
/// Of a plateau.
const PLATEAU_PT: f64 = 2.8;

/// A dry run: time since its first reading, min, and the vessel, °C.
struct Run {
    points: Vec<(f64, f64)>,
    /// Both ends; `None` without one.
    plateau: Option<[(f64, f64); 2]>,
}

/// Draws the panels, by their names.
///
/// # Errors
/// [`crate::error::Error::Internal`] if the drawing fails.
pub fn dry_panels(
    comparison: &Comparison,
    part: &DryPart,
    calls: &Calls,
    words: &Words,
) -> Result<Vec<Asset>> {
    let places = drawn(comparison, calls);
    let all: Vec<Vec<Run>> = places
        .iter()
        .map(|place| runs(&comparison.campaigns[*place]))
        .collect();
    let points = || all.iter().flatten().flat_map(|run| run.points.iter());
    let shared = Shared::holding(
        points().map(|at| at.0),
        points().map(|at| at.1),
        part.panel_pt,
        "min",
    );
    let canvas = Canvas {
        words,
        width_pt: part.panel_pt,
    };
    let mut assets = Vec::new();
    for (panel, own) in part.panels.iter().zip(&all) {
        let drawn = draw_panel(&shared, &canvas, |chart| {
            for run in all.iter().flatten() {
                draw_line(chart, &run.points, &OTHERS, THIN_PT)?;
            }
            for run in own {
                draw_line(chart, &run.points, &LINE, THICK_PT)?;
                if let Some(plateau) = &run.plateau {
                    draw_line(chart, plateau, &LINE, PLATEAU_PT)?;
                }
            }
            Ok(())
        })?;
        assets.push(asset(&panel.file, drawn));
    }
    Ok(assets)
}

fn runs(one: &Assessment) -> Vec<Run> {
    let runs = one.dry_runs.runs.iter();
    let runs = runs.filter_map(|run| {
        let vessel = one.tested.dry_runs[run.run].readings.vessel_c.as_ref()?;
        let first_us = *vessel.time_us.first()?;
        let minutes = |time_us: i64| seconds_between(first_us, time_us) / 60.0;
        let points = vessel.time_us.iter().zip(&vessel.value);
        Some(Run {
            points: points.map(|(time, c)| (minutes(*time), *c)).collect(),
            plateau: run.plateau.map(|plateau| {
                let ends = [plateau.span.from_us, plateau.span.to_us];
                ends.map(|end| (minutes(end), plateau.vessel_c))
            }),
        })
    });
    runs.collect()
}

fn draw_line(
    chart: &mut Chart<'_, '_>,
    points: &[(f64, f64)],
    ink: &RGBColor,
    width_pt: f64,
) -> Result<()> {
    let line = LineSeries::new(points.iter().copied(), stroke(ink, width_pt));
    chart.draw_series(line).map_err(fault)?;
    Ok(())
}
