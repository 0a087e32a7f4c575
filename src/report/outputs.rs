//! A campaign's outputs, put together.

use std::path::Path;

use jiff::Timestamp;

use super::assets::Asset;
use super::attached_names::result_names;
use super::attachments::{Enclosed, Enclosure, Origin, Part, enclose};
use super::box_cooker::heating::rise_figure;
use super::data::rating_file::RatingFile;
use super::data::tables::intervals_csv;
use super::dish::falls::fall_figure;
use super::document;
use super::dry_vessel::heating::heating_figure;
use super::edition::{Edition, Format};
use super::efficiency::peak::exergy_figure;
use super::figures::style::Canvas;
use super::files::Output;
use super::heat_balance::figures::power_per_irradiance::balance_figure;
use super::s580::figures::drawn::draw_figures;
use super::words::headline_dry::front;
use super::words::year::year_figure;
use super::{web_page, words};
use crate::campaign::Campaign;
use crate::error::{Error, Problem, Problems, Result};
use crate::language::Words;
use crate::procedure::Assessment;

/// Every output of a campaign, named after its folder.
///
/// # Errors
/// [`Error::Campaign`] for a character that the report's fonts lack, [`Error::Input`] for a
/// log that has changed since it was read, [`Error::Usage`] for more than a PDF can carry,
/// and [`Error::Internal`] if an output cannot be made.
pub fn outputs(assessment: &Assessment, edition: &Edition) -> Result<Vec<Output>> {
    let name = &assessment.tested.campaign.name;
    let output = |ending: &str, bytes: Vec<u8>| Output {
        name: format!("{name}.{ending}"),
        bytes,
    };
    let rating = RatingFile::new(assessment).to_text()?;
    let intervals = intervals_csv(assessment)?;
    // Data alone need no words, and no font that has their characters.
    let has_pages = edition
        .formats
        .iter()
        .any(|format| format.ending().is_some());
    let report = has_pages
        .then(|| printable_report(assessment, edition))
        .transpose()?;
    let mut outputs = Vec::new();
    for format in &edition.formats {
        // A form without an ending is of all campaigns together: `tables::shards`.
        let (Some(ending), Some(report)) = (format.ending(), &report) else {
            continue;
        };
        let mut assets = assets(assessment, format, &edition.words)?;
        let bytes = match format {
            Format::Html => {
                let phone = Canvas::phone(&edition.words);
                let narrow = figures(assessment, &phone, &phone)?;
                assets.extend(narrow.into_iter().map(Asset::for_narrow_screen));
                web_page::compose(web_page::REPORT, report, &assets)?.into_bytes()
            }
            _ => {
                let mut attachments = Vec::new();
                if edition.has_attachments {
                    let enclosed = enclosed(assessment, edition, &rating, &intervals)?;
                    assets.extend(enclosed.assets);
                    attachments = enclosed.attachments;
                }
                let (template, issued) = (document::REPORT, edition.issued);
                document::typeset(template, report, assets, &attachments, issued)?
            }
        };
        outputs.push(output(ending, bytes));
    }
    outputs.push(output("rating.json", rating.into_bytes()));
    outputs.push(output("intervals.csv", intervals.into_bytes()));
    Ok(outputs)
}

/// The evidence of one campaign.
fn enclosed(
    assessment: &Assessment,
    edition: &Edition,
    rating: &str,
    intervals: &str,
) -> Result<Enclosed> {
    let names = result_names(&assessment.tested.campaign.name);
    let origin = Origin {
        campaign: &assessment.tested.campaign,
        inputs: assessment.tested.inputs(),
        folder: None,
    };
    let results = [
        (Part::Rating, &names.rating, rating),
        (Part::Intervals, &names.intervals, intervals),
    ];
    let results = results.map(|(part, name, text)| Enclosure { part, name, text });
    enclose(&[origin], &results, edition)
}

/// Checks that the report's fonts have every character it would print.
///
/// # Errors
/// [`Error::Campaign`] with the line of each that they lack.
pub fn check_characters(assessment: &Assessment) -> Result<()> {
    let edition = Edition::wished(&assessment.tested.campaign.report, Timestamp::UNIX_EPOCH);
    printable_report(assessment, &edition).map(|_| ())
}

/// The report in words. Characters of a log's own text that the fonts lack become "?";
/// one of the campaign file is refused, with its line.
fn printable_report(assessment: &Assessment, edition: &Edition) -> Result<words::Report> {
    let campaign = &assessment.tested.campaign;
    let mut report = words::build(assessment, edition);
    let missing = document::missing_characters(&report)?;
    if missing.is_empty() {
        return Ok(report);
    }
    let of_logs: Vec<char> = missing
        .into_iter()
        .filter(|character| !campaign.texts().any(|(_, text)| text.contains(*character)))
        .collect();
    if !of_logs.is_empty() {
        let printable = |text: &mut String| *text = text.replace(of_logs.as_slice(), "?");
        report.provenance.notices.iter_mut().for_each(printable);
        for part in &mut report.provenance.logs {
            for row in part.readings.iter_mut().chain(&mut part.form) {
                printable(&mut row.label);
                printable(&mut row.text);
            }
        }
    }
    refuse_missing_characters(&[&assessment.tested.campaign], &report)?;
    Ok(report)
}

/// Names every character that cannot be printed, with its line in the campaign file.
///
/// # Errors
/// [`Error::Campaign`] with each.
pub fn refuse_missing_characters(
    campaigns: &[&Campaign],
    report: &impl serde::Serialize,
) -> Result<()> {
    let mut problems = Problems::default();
    for character in document::missing_characters(report)? {
        let what = format!("the report's fonts have no \"{character}\"");
        let hint =
            "write names and notes, of logs and columns too, in Latin, Greek or Cyrillic letters";
        let line_in = |(file, text): (&Path, &str)| {
            let mut lines = text.lines();
            let line = lines.position(|line| line.contains(character))?;
            Some((file.to_path_buf(), line))
        };
        let place = campaigns
            .iter()
            .flat_map(|campaign| campaign.texts())
            .find_map(line_in);
        problems.push(match place {
            Some((file, line)) => Problem::at(&file, what).hint(hint).line(line as u64 + 1),
            None => Problem::at(&campaigns[0].file, what).hint(hint),
        });
    }
    if problems.is_empty() {
        Ok(())
    } else {
        Err(Error::Campaign(problems))
    }
}

/// The figures, and the photo if there is one, by the names that [`words`] gives them.
fn assets(assessment: &Assessment, format: &Format, words: &Words) -> Result<Vec<Asset>> {
    let page = Canvas::page(words);
    // On paper the procedures beside the rating have text beside their figures.
    let beside = match format {
        Format::Html => page,
        _ => Canvas::beside(words),
    };
    let mut assets = figures(assessment, &page, &beside)?;
    let photo = assessment.tested.campaign.cooker.photo.iter();
    assets.extend(photo.map(|photo| Asset {
        name: format!("photo.{}", photo.extension),
        bytes: photo.bytes.clone(),
    }));
    Ok(assets)
}

/// Those of the rating on one canvas, those of the procedures beside it on another.
fn figures(
    assessment: &Assessment,
    canvas: &Canvas<'_>,
    beside: &Canvas<'_>,
) -> Result<Vec<Asset>> {
    let mut figures = draw_figures(assessment, canvas)?;
    figures.extend(balance_figure(assessment, beside)?);
    figures.extend(heating_figure(assessment, beside)?);
    figures.extend(rise_figure(assessment, beside)?);
    figures.extend(fall_figure(assessment, beside)?);
    if assessment.tested.heats_no_water() {
        let of_front = [
            heating_figure(assessment, canvas)?,
            fall_figure(assessment, canvas)?,
        ];
        figures.extend(of_front.into_iter().flatten().map(|asset| Asset {
            name: front(&asset.name),
            ..asset
        }));
    }
    figures.extend(exergy_figure(assessment, beside)?);
    figures.extend(year_figure(assessment, canvas)?);
    Ok(figures)
}
