//! The files of a comparison, put together.

use super::data::csv::comparison_csv;
use super::data::json::ComparisonFile;
use super::figures::dry_panels::dry_panels;
use super::figures::heating::heating_strips;
use super::figures::line_panels::line_panels;
use super::figures::ranked::{narrow_ranking_assets, ranking_assets};
use super::words::report::{Built, build};
use crate::comparison::Comparison;
use crate::error::Result;
use crate::language::Words;
use crate::report::assets::Asset;
use crate::report::attachments::{Enclosed, Enclosure, Origin, Part, enclose};
use crate::report::document::{self, COMPARISON};
use crate::report::files::Output;
use crate::report::outputs::refuse_missing_characters;
use crate::report::{Edition, Format, web_page};

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
    let built = build(comparison, edition);
    let report = &built.report;
    let campaigns: Vec<_> = comparison
        .campaigns
        .iter()
        .map(|one| &one.tested.campaign)
        .collect();
    refuse_missing_characters(&campaigns, report)?;
    let json = ComparisonFile::new(comparison).to_text()?;
    let csv = comparison_csv(comparison)?;
    let output = |ending: &str, bytes: Vec<u8>| Output {
        name: format!("{NAME}.{ending}"),
        bytes,
    };
    let mut outputs = Vec::new();
    for format in &edition.formats {
        let mut assets = drawings(comparison, &built, &edition.words)?;
        match format {
            Format::Html => {
                if let Some(part) = &report.ranking {
                    let standings = &comparison.standings;
                    assets.extend(narrow_ranking_assets(standings, part, &edition.words)?);
                }
                let page = web_page::compose(web_page::COMPARISON, report, &assets)?;
                outputs.push(output("html", page.into_bytes()));
            }
            Format::Pdf => {
                let mut attachments = Vec::new();
                if edition.has_attachments {
                    let enclosed = enclosed(comparison, edition, &json, &csv)?;
                    assets.extend(enclosed.assets);
                    attachments = enclosed.attachments;
                }
                let issued = edition.issued;
                let pdf = document::typeset(COMPARISON, report, assets, &attachments, issued)?;
                outputs.push(output("pdf", pdf));
            }
            // Tables of campaigns are of reports; there is none of a comparison.
            Format::Parquet => {}
        }
    }
    outputs.push(output("json", json.into_bytes()));
    outputs.push(output("csv", csv.into_bytes()));
    Ok(outputs)
}

/// The drawings that the report names.
fn drawings(comparison: &Comparison, built: &Built, words: &Words) -> Result<Vec<Asset>> {
    let report = &built.report;
    let mut assets = Vec::new();
    if let Some(part) = &report.ranking {
        let standings = &comparison.standings;
        assets.extend(ranking_assets(standings, part, &built.extra, words)?);
    }
    if let Some(part) = &report.lines {
        assets.extend(line_panels(comparison, part, words)?);
    }
    if let Some(part) = &report.heating {
        assets.extend(heating_strips(comparison, part, words)?);
    }
    if let Some(part) = &report.dry {
        assets.extend(dry_panels(comparison, part, &built.calls, words)?);
    }
    Ok(assets)
}

/// The evidence: of each campaign all inputs, in a folder of its name, and the comparison as
/// data.
fn enclosed(comparison: &Comparison, edition: &Edition, json: &str, csv: &str) -> Result<Enclosed> {
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
    enclose(&origins, &results, edition)
}
