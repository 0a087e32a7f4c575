//! Results on paper and in files. Reads results and computes none.
//!
//! [`rating_json`] and [`intervals_csv`] are the results as data; [`model`] fixes
//! every string of the report, [`figures`] draws, [`cautions`] warns, [`document`]
//! hands all of it to the templates, and [`files`] writes what came out.

pub mod cautions;
pub mod document;
pub mod figures;
pub mod files;
pub mod intervals_csv;
pub mod model;
pub mod rating_json;

use jiff::Timestamp;

use crate::error::Result;
use crate::procedure::Assessment;
use document::Asset;
use figures::power_line::draw_power_line;
use figures::residuals::draw_residuals;
use figures::run_day::draw_run;
use files::Output;

/// Every output of a campaign, named after its folder; `issued` is the time of issue.
///
/// # Errors
/// [`crate::error::Error`] if one cannot be made.
pub fn outputs(assessment: &Assessment, issued: Timestamp) -> Result<Vec<Output>> {
    let name = &assessment.campaign.name;
    let output = |ending: &str, bytes: Vec<u8>| Output {
        name: format!("{name}.{ending}"),
        bytes,
    };
    let rating = rating_json::RatingFile::new(assessment).to_text()?;
    let report = model::build(assessment, issued);
    Ok(vec![
        output(
            "pdf",
            document::typeset(&report, assets(assessment)?, issued)?,
        ),
        output("rating.json", rating.into_bytes()),
        output(
            "intervals.csv",
            intervals_csv::intervals_csv(assessment)?.into_bytes(),
        ),
    ])
}

/// The figures, and the photo if there is one, by the names that [`model`] gives them.
fn assets(assessment: &Assessment) -> Result<Vec<Asset>> {
    let asset = |name: String, svg: String| Asset {
        name,
        bytes: svg.into_bytes(),
    };
    let mut assets = vec![asset(
        "power-line.svg".to_owned(),
        draw_power_line(assessment)?,
    )];
    for index in 0..assessment.runs.len() {
        assets.push(asset(
            format!("run-{}.svg", index + 1),
            draw_run(assessment, index)?,
        ));
    }
    if let Some(line) = &assessment.line {
        assets.push(asset(
            "residuals.svg".to_owned(),
            draw_residuals(assessment, line)?,
        ));
    }
    assets.extend(assessment.campaign.cooker.photo.iter().map(|photo| Asset {
        name: format!("photo.{}", photo.extension),
        bytes: photo.bytes.clone(),
    }));
    Ok(assets)
}
