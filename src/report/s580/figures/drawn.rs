//! All figures, by the names that the words give them.

use super::condition_tracks::draw_condition_tracks;
use super::power_line::{HEIGHTS_PT, draw_power_line};
use super::rating_interval::{self, draw_rating_interval};
use super::residuals::draw_residuals;
use super::run_axes::RunAxes;
use super::run_day::draw_run;
use crate::error::Result;
use crate::procedure::Assessment;
use crate::report::assets::Asset;
use crate::report::figures::style::Canvas;
use crate::report::s580::run_grid::run_width_pt;
use crate::report::s580::shown_runs::ShownRuns;

/// Names of the figures of page one: the line from the tallest to the lowest, and the others.
pub const POWER_LINES: [&str; HEIGHTS_PT.len()] = [
    "power-line.svg",
    "power-line-2.svg",
    "power-line-3.svg",
    "power-line-4.svg",
];
pub const INTERVAL: &str = "interval.svg";
pub const CONDITIONS: &str = "conditions.svg";

/// Draws them.
///
/// # Errors
/// [`crate::error::Error::Internal`] if a drawing fails.
pub fn draw_figures(assessment: &Assessment, canvas: &Canvas<'_>) -> Result<Vec<Asset>> {
    let mut assets = front_figures(assessment, canvas)?;
    let shown = ShownRuns::of(assessment).places;
    let axes = RunAxes::of(assessment, canvas.words);
    let of_run = Canvas {
        width_pt: run_width_pt(canvas.width_pt, shown.len()),
        ..*canvas
    };
    for index in shown {
        assets.push(asset(
            format!("run-{}.svg", index + 1),
            draw_run(assessment, index, &axes, &of_run)?,
        ));
    }
    if let Some(uncertainty) = assessment.s580.uncertainty() {
        let residuals = draw_residuals(assessment, uncertainty, canvas)?;
        assets.push(asset("residuals.svg".to_owned(), residuals));
    }
    Ok(assets)
}

/// Those of page one: the line in several heights, the number on its scale, the conditions.
fn front_figures(assessment: &Assessment, canvas: &Canvas<'_>) -> Result<Vec<Asset>> {
    let conditions = draw_condition_tracks(assessment, canvas)?;
    let mut assets = vec![asset(CONDITIONS.to_owned(), conditions)];
    for (name, height_pt) in POWER_LINES.into_iter().zip(HEIGHTS_PT) {
        let svg = draw_power_line(assessment, canvas, height_pt)?;
        assets.push(asset(name.to_owned(), svg));
    }
    let rated = assessment.s580.rated.iter();
    for rated in rated.filter(|_| !assessment.s580.is_not_valid()) {
        let scale = Canvas {
            width_pt: rating_interval::WIDTH_PT,
            ..*canvas
        };
        let svg = draw_rating_interval(rated, &scale)?;
        assets.push(asset(INTERVAL.to_owned(), svg));
    }
    Ok(assets)
}

fn asset(name: String, svg: String) -> Asset {
    Asset {
        name,
        bytes: svg.into_bytes(),
    }
}
