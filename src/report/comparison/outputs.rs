//! The files of a comparison, put together.

use super::data::csv::comparison_csv;
use super::data::json::ComparisonFile;
use super::figures::compared_heating::draw_heating;
use super::figures::compared_lines::draw_lines;
use super::words::report::{ComparisonReport, build};
use crate::comparison::Comparison;
use crate::error::Result;
use crate::language::Words;
use crate::report::Edition;
use crate::report::assets::Asset;
use crate::report::attachments::{Enclosed, Enclosure, Origin, Part, enclose};
use crate::report::document::{self, COMPARISON};
use crate::report::figures::style::Canvas;
use crate::report::files::Output;
use crate::report::outputs::refuse_missing_characters;
use crate::report::rows::Figure;

/// Name of every file of a comparison, before its ending.
pub const NAME: &str = "comparison";

/// Names of the data that the PDF carries.
pub const COMPARISON_JSON: &str = "comparison.json";
pub const COMPARISON_CSV: &str = "comparison.csv";

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
    let json = ComparisonFile::new(comparison).to_text()?;
    let csv = comparison_csv(comparison)?;
    let (mut assets, mut attachments) = (figures(comparison, &report, edition)?, Vec::new());
    if edition.has_attachments {
        let enclosed = enclosed(comparison, &edition.words, &json, &csv)?;
        assets.extend(enclosed.assets);
        attachments = enclosed.attachments;
    }
    let output = |ending: &str, bytes: Vec<u8>| Output {
        name: format!("{NAME}.{ending}"),
        bytes,
    };
    Ok(vec![
        output(
            "pdf",
            document::typeset(COMPARISON, &report, assets, &attachments, edition.issued)?,
        ),
        output("json", json.into_bytes()),
        output("csv", csv.into_bytes()),
    ])
}

/// The figures that the report has.
fn figures(
    comparison: &Comparison,
    report: &ComparisonReport,
    edition: &Edition,
) -> Result<Vec<Asset>> {
    let mut assets = Vec::new();
    let mut add = |figure: &Figure, drawn: String| {
        assets.push(Asset {
            name: figure.file.clone(),
            bytes: drawn.into_bytes(),
        });
    };
    if let Some(lines) = &report.figure {
        add(
            lines,
            draw_lines(comparison, &Canvas::page(&edition.words))?,
        );
    }
    if let Some(dry) = &report.dry {
        add(
            &dry.figure,
            draw_heating(comparison, &Canvas::page(&edition.words))?,
        );
    }
    Ok(assets)
}

/// The evidence: of each campaign all inputs, in a folder of its name, and the comparison as
/// data.
fn enclosed(comparison: &Comparison, words: &Words, json: &str, csv: &str) -> Result<Enclosed> {
    let origins: Vec<Origin> = comparison
        .campaigns
        .iter()
        .map(|one| Origin {
            campaign: &one.tested.campaign,
            inputs: one.tested.inputs(),
            folder: Some(&one.tested.campaign.name),
        })
        .collect();
    let results = [
        (Part::Comparison, COMPARISON_JSON, json),
        (Part::Pairs, COMPARISON_CSV, csv),
    ];
    let results = results.map(|(part, name, text)| Enclosure { part, name, text });
    enclose(&origins, &results, words)
}
