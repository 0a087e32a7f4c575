//! The files of a comparison, put together.

use super::data::csv::comparison_csv;
use super::data::json::ComparisonFile;
use super::figures::compared_lines::draw_lines;
use super::words::report::build;
use crate::comparison::Comparison;
use crate::error::Result;
use crate::report::Edition;
use crate::report::assets::Asset;
use crate::report::document::{self, COMPARISON};
use crate::report::files::Output;
use crate::report::outputs::refuse_missing_characters;

/// Name of every file of a comparison, before its ending.
pub const NAME: &str = "comparison";

/// Every output.
///
/// # Errors
/// [`crate::error::Error::Campaign`] for a character that the report's fonts lack, and
/// [`crate::error::Error::Internal`] if an output cannot be made.
pub fn outputs(comparison: &Comparison, edition: &Edition) -> Result<Vec<Output>> {
    let report = build(comparison, edition);
    let campaigns: Vec<_> = comparison
        .campaigns
        .iter()
        .map(|one| &one.tested.campaign)
        .collect();
    refuse_missing_characters(&campaigns, &report)?;
    let lines = Asset {
        name: report.figure.file.clone(),
        bytes: draw_lines(comparison, &edition.words)?.into_bytes(),
    };
    let output = |ending: &str, bytes: Vec<u8>| Output {
        name: format!("{NAME}.{ending}"),
        bytes,
    };
    Ok(vec![
        output(
            "pdf",
            document::typeset(COMPARISON, &report, vec![lines], &[], edition.issued)?,
        ),
        output(
            "json",
            ComparisonFile::new(comparison).to_text()?.into_bytes(),
        ),
        output("csv", comparison_csv(comparison)?.into_bytes()),
    ])
}
