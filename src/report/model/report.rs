//! The report as a whole.

use serde::Serialize;

use super::conditions::{Conditions, conditions};
use super::cooking::{CookingPart, cooking};
use super::evidence::{IntervalTable, RunPart, interval_tables, reason_key, run_parts};
use super::headline::{Headline, headline};
use super::provenance::{ProvenancePart, provenance, report_number};
use super::regression::{RegressionPart, regression};
use super::stagnation::{StagnationPart, stagnation_part};
use super::tested::{Tested, tested};
use crate::procedure::Assessment;
use crate::procedure::conformity::Level;
use crate::report::cautions::{CautionPart, cautions};
use crate::report::{Edition, Setting};
use crate::units::sentence_case;

/// Kind of document.
const KIND: &str = "Solar cooker test report";
/// Said in the title, at the number and in the figure.
pub const IRRADIANCE_ESTIMATED: &str = "irradiance estimated";

/// A label and what stands beside it.
#[derive(Debug, Clone, Serialize)]
pub struct Row {
    pub label: String,
    pub text: String,
}

impl Row {
    /// A row of a list of facts.
    pub fn new(label: &str, text: impl Into<String>) -> Self {
        Row {
            label: label.to_owned(),
            text: text.into(),
        }
    }
}

/// A figure: its file among the document's, its caption, and its content in words.
#[derive(Debug, Clone, Serialize)]
pub struct Figure {
    pub file: String,
    pub caption: String,
    pub alt: String,
}

/// The report.
#[derive(Debug, Clone, Serialize)]
pub struct Report {
    pub setting: Setting,
    /// Kind of document, above the title.
    pub kind: String,
    pub title: String,
    pub subtitle: String,
    pub number: String,
    /// Said on every page: invented, indicative.
    pub marks: Vec<String>,
    /// Foot of every page.
    pub statement: String,
    pub author: String,
    pub headline: Headline,
    pub tested: Tested,
    pub conditions: Conditions,
    pub runs: Vec<RunPart>,
    pub intervals: Vec<IntervalTable>,
    /// Reason codes and what they mean.
    pub reasons: Vec<Row>,
    pub regression: RegressionPart,
    pub cooking: CookingPart,
    /// `None`: no dry vessel was tested.
    pub stagnation: Option<StagnationPart>,
    pub cautions: CautionPart,
    pub provenance: ProvenancePart,
}

/// Puts a result into words.
pub fn build(assessment: &Assessment, edition: &Edition) -> Report {
    let words = &edition.words;
    let campaign = &assessment.campaign;
    let is_indicative = assessment.conformity.level == Level::Indicative;
    let mut marks = Vec::new();
    if is_indicative {
        marks.push("Indicative only".to_owned());
    }
    if campaign.demonstration {
        marks.push("Invented data, for demonstration".to_owned());
    }
    let mut qualities = Vec::new();
    if is_indicative {
        qualities.push("indicative");
    }
    if assessment.estimates_irradiance() {
        marks.push(sentence_case(IRRADIANCE_ESTIMATED));
        qualities.push(IRRADIANCE_ESTIMATED);
    }
    let (mut kind, mut title) = (KIND.to_owned(), campaign.title.clone());
    if !qualities.is_empty() {
        let qualities = qualities.join(", ");
        kind += &format!(": {qualities}");
        title += &format!(" ({qualities})");
    }
    Report {
        setting: edition.setting(),
        kind,
        title,
        subtitle: super::tested::subtitle(assessment),
        number: report_number(assessment),
        marks,
        statement: "Results relate only to the cooker as tested. Reproduce only in full."
            .to_owned(),
        author: campaign.tester.clone().unwrap_or_default(),
        headline: headline(assessment, words),
        tested: tested(assessment, edition),
        conditions: conditions(assessment, words),
        runs: run_parts(assessment, words),
        intervals: interval_tables(assessment, words),
        reasons: reason_key(assessment, words),
        regression: regression(assessment, words),
        cooking: cooking(assessment, words),
        stagnation: stagnation_part(assessment, words),
        cautions: cautions(words),
        provenance: provenance(assessment, edition),
    }
}
