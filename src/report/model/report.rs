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
use crate::language::{Message, Phrase, Words};
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::conformity::Level;
use crate::report::cautions::{CautionPart, cautions};
use crate::report::sections::{Heading, Sections};
use crate::report::{Edition, Setting};
use crate::units::sentence_case;

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

    /// A row of a list of facts, said in a language.
    pub fn said(words: &Words, label: impl Into<Phrase>, text: impl Into<Phrase>) -> Self {
        Row::new(&words.say(label), words.say(text))
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
    /// Headings of the sections, in their order.
    pub sections: Vec<Heading>,
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
    let (kind, title) = kind_and_title(assessment);
    let sections = Sections::of_report();
    Report {
        setting: edition.setting(),
        kind: words.say(kind),
        title: words.say(title),
        subtitle: words.say(super::tested::subtitle(assessment)),
        number: report_number(assessment),
        marks: marks(assessment, words),
        statement: words.say(message!("report-statement")),
        author: campaign.tester.clone().unwrap_or_default(),
        sections: sections.headings(words),
        headline: headline(assessment, &sections, words),
        tested: tested(assessment, &sections, edition),
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

/// The kind of document and its title, both with what a reader must know of the rating.
fn kind_and_title(assessment: &Assessment) -> (Message, Phrase) {
    let title = &assessment.campaign.title;
    // A rating by an estimate is always indicative.
    if assessment.estimates_irradiance() {
        let title = message!("report-title-estimated", title = title);
        (message!("report-kind-estimated"), title.into())
    } else if assessment.conformity.level == Level::Indicative {
        let title = message!("report-title-indicative", title = title);
        (message!("report-kind-indicative"), title.into())
    } else {
        (message!("report-kind"), title.into())
    }
}

fn marks(assessment: &Assessment, words: &Words) -> Vec<String> {
    let mut marks = Vec::new();
    let level = assessment.conformity.level;
    if level == Level::Indicative {
        marks.push(words.say(level.describe()));
    }
    if assessment.campaign.demonstration {
        marks.push(words.say(message!("report-invented")));
    }
    if assessment.estimates_irradiance() {
        marks.push(sentence_case(&words.say(message!("irradiance-estimated"))));
    }
    marks
}
