//! Results on paper and in files. Reads results and computes none.
//!
//! [`rating_json`] and [`intervals_csv`] are the results as data; [`model`] fixes
//! every string of the report, [`figures`] draws, [`cautions`] warns, [`document`]
//! hands all of it to the templates, and [`files`] writes what came out.

pub mod figures;
pub mod files;
pub mod intervals_csv;
pub mod rating_json;

use jiff::Timestamp;

use crate::error::Result;
use crate::procedure::Assessment;
use files::Output;

/// Every output of a campaign, named after its folder.
///
/// # Errors
/// [`crate::error::Error::Internal`] if one cannot be made.
pub fn outputs(assessment: &Assessment, _issued: Timestamp) -> Result<Vec<Output>> {
    let name = &assessment.campaign.name;
    let output = |ending: &str, bytes: Vec<u8>| Output {
        name: format!("{name}.{ending}"),
        bytes,
    };
    let rating = rating_json::RatingFile::new(assessment).to_text()?;
    Ok(vec![
        output("rating.json", rating.into_bytes()),
        output(
            "intervals.csv",
            intervals_csv::intervals_csv(assessment)?.into_bytes(),
        ),
    ])
}
