//! All figures, by the names that the words give them.

use super::power_line::draw_power_line;
use super::residuals::draw_residuals;
use super::run_day::draw_run;
use super::spread::draw_spread;
use crate::error::Result;
use crate::procedure::Assessment;
use crate::report::assets::Asset;
use crate::report::figures::style::Canvas;

/// Draws them.
///
/// # Errors
/// [`crate::error::Error::Internal`] if a drawing fails.
pub fn draw_figures(assessment: &Assessment, canvas: &Canvas<'_>) -> Result<Vec<Asset>> {
    let asset = |name: String, svg: String| Asset {
        name,
        bytes: svg.into_bytes(),
    };
    let mut assets = vec![asset(
        "power-line.svg".to_owned(),
        draw_power_line(assessment, canvas)?,
    )];
    for index in 0..assessment.tested.runs.len() {
        assets.push(asset(
            format!("run-{}.svg", index + 1),
            draw_run(assessment, index, canvas)?,
        ));
    }
    if let Some(uncertainty) = assessment.s580.uncertainty() {
        let residuals = draw_residuals(assessment, uncertainty, canvas)?;
        assets.push(asset("residuals.svg".to_owned(), residuals));
        assets.push(asset(
            "band.svg".to_owned(),
            draw_spread(assessment, uncertainty, canvas)?,
        ));
    }
    Ok(assets)
}
