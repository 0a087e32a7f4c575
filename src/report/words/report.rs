//! The report as a whole.

use serde::Serialize;

use super::cautions::{CautionPart, cautions};
use super::cooking::{CookingPart, cooking};
use super::headline::{Headline, headline};
use super::headline_dry::{headline_without_water, kind_without_water};
use super::inputs::checkable;
use super::letterhead::{Letterhead, hashes, letterhead, signatures};
use super::provenance::{ProvenancePart, provenance};
use super::summary::{SummaryPart, summary};
use super::tested::{Tested, tested};
use crate::language::{Message, Phrase, Words};
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::finding::Level;
use crate::procedure::stated::stated;
use crate::report::box_cooker::words::box_part;
use crate::report::dish::words::dish_part;
use crate::report::dry_vessel::runs_words::dry_part;
use crate::report::dry_vessel::words::{StagnationPart, stagnation_part};
use crate::report::efficiency::words::efficiency_part;
use crate::report::heat_balance::words::{BalancePart, heat_balance};
use crate::report::number::report_number;
use crate::report::procedure_part::ProcedurePart;
use crate::report::rows::Row;
use crate::report::s580::words::conditions::{Conditions, conditions};
use crate::report::s580::words::evidence::{IntervalTable, RunsPart, interval_table, runs_part};
use crate::report::s580::words::regression::{RegressionPart, regression};
use crate::report::sections::{Heading, Section, Sections};
use crate::report::spoken::author;
use crate::report::{Edition, Setting};
use crate::units::sentence_case;

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
    pub letterhead: Letterhead,
    pub headline: Headline,
    /// Who signs.
    pub signatures: Vec<Row>,
    /// The beginnings of the inputs' hashes.
    pub hashes: String,
    /// In another language than English: which text governs.
    pub governs: String,
    /// Whether the PDF carries its data, and how anybody checks it.
    pub checkable: String,
    /// All figures at a glance; `None` without any.
    pub summary: Option<SummaryPart>,
    pub tested: Tested,
    pub conditions: Conditions,
    pub runs: RunsPart,
    pub intervals: IntervalTable,
    pub regression: RegressionPart,
    pub heat_balance: BalancePart,
    /// Of each procedure beside the rating: `None` where it says nothing.
    pub dry_vessel: Option<ProcedurePart>,
    pub box_cooker: Option<ProcedurePart>,
    pub dish: Option<ProcedurePart>,
    pub efficiency: Option<ProcedurePart>,
    pub cooking: CookingPart,
    /// `None`: no dry vessel was tested.
    pub stagnation: Option<StagnationPart>,
    pub cautions: CautionPart,
    pub provenance: ProvenancePart,
}

/// Puts a result into words.
pub fn build(assessment: &Assessment, edition: &Edition) -> Report {
    let words = &edition.words;
    let campaign = &assessment.tested.campaign;
    let (kind, title) = kind_and_title(assessment);
    let sections = Sections::of_report(assessment);
    let figures = stated(assessment);
    Report {
        letterhead: letterhead(assessment, &words.say(&kind), edition),
        signatures: signatures(assessment, words),
        hashes: hashes(assessment, sections.number(Section::Provenance), words),
        governs: words.say(message!("caution-governs")),
        setting: edition.setting(),
        kind: words.say(kind),
        title: words.say(title),
        subtitle: words.say(super::tested::subtitle(assessment, words.units)),
        number: report_number(assessment),
        marks: marks(assessment, words),
        statement: words.say(message!("report-statement")),
        author: author(campaign).to_owned(),
        sections: sections.headings(words),
        headline: if assessment.tested.heats_no_water() {
            headline_without_water(assessment, &sections, &figures, words)
        } else {
            headline(assessment, &sections, words)
        },
        checkable: words.say(checkable(
            &[(campaign, assessment.tested.inputs())],
            edition,
        )),
        summary: summary(assessment, &figures, words),
        tested: tested(assessment, &sections, edition),
        conditions: conditions(assessment, words),
        runs: runs_part(assessment, words),
        intervals: interval_table(assessment, words),
        regression: regression(assessment, words),
        heat_balance: heat_balance(assessment, words),
        dry_vessel: dry_part(assessment, &figures, words),
        box_cooker: box_part(assessment, &figures, words),
        dish: dish_part(assessment, &figures, words),
        efficiency: efficiency_part(assessment, &figures, words),
        cooking: cooking(assessment, words),
        stagnation: stagnation_part(assessment, words),
        cautions: cautions(words),
        provenance: provenance(assessment, edition),
    }
}

/// The kind of document and its title, both with what a reader must know of the rating.
fn kind_and_title(assessment: &Assessment) -> (Message, Phrase) {
    let title = &assessment.tested.campaign.title;
    if assessment.tested.heats_no_water() {
        return (kind_without_water(), title.into());
    }
    let level = assessment.s580.conformity.level;
    // A rating by an estimate is always indicative.
    if assessment.tested.estimates_irradiance() && level == Level::Indicative {
        let title = message!("report-title-estimated", title = title);
        return (message!("report-kind-estimated"), title.into());
    }
    match level {
        Level::Conforms | Level::ConformsWithNotes => (message!("report-kind"), title.into()),
        Level::Indicative => {
            let title = message!("report-title-indicative", title = title);
            (message!("report-kind-indicative"), title.into())
        }
        Level::NotValid => {
            let title = message!("report-title-not-valid", title = title);
            (message!("report-kind-not-valid"), title.into())
        }
        Level::NoRating => {
            let title = message!("report-title-no-rating", title = title);
            (message!("report-kind-no-rating"), title.into())
        }
    }
}

fn marks(assessment: &Assessment, words: &Words) -> Vec<String> {
    let mut marks = Vec::new();
    let level = assessment.s580.conformity.level;
    if level.falls_short() && !assessment.tested.heats_no_water() {
        marks.push(words.say(level.describe()));
    }
    if assessment.tested.campaign.demonstration {
        marks.push(words.say(message!("report-invented")));
    }
    if assessment.tested.estimates_irradiance() {
        marks.push(sentence_case(&words.say(message!("irradiance-estimated"))));
    }
    marks
}
