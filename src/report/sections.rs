//! The sections of a report and of a comparison; each has its number by its place.

use serde::Serialize;

use crate::campaign::kinds::ProcedureKey;
use crate::language::{Message, Words};
use crate::message;
use crate::procedure::Assessment;

/// A section, as the templates know it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Section {
    Tested,
    Conditions,
    Runs,
    Intervals,
    Regression,
    HeatBalance,
    DryVessel,
    BoxCooker,
    Dish,
    Efficiency,
    Cooking,
    Cautions,
    Provenance,
    Lines,
    Heating,
    Differences,
    Beside,
    Campaigns,
    Method,
}

impl Section {
    fn heading(self) -> Message {
        match self {
            Section::Tested => message!("section-tested"),
            Section::Conditions => message!("section-conditions"),
            Section::Runs => message!("section-runs"),
            Section::Intervals => message!("section-intervals"),
            Section::Regression => message!("section-regression"),
            Section::HeatBalance => message!("section-heat-balance"),
            Section::DryVessel => message!("section-dry-vessel"),
            Section::BoxCooker => message!("section-box-cooker"),
            Section::Dish => message!("section-dish"),
            Section::Efficiency => message!("section-efficiency"),
            Section::Cooking => message!("section-cooking"),
            Section::Cautions => message!("section-cautions"),
            Section::Provenance => message!("section-provenance"),
            Section::Lines => message!("section-lines"),
            Section::Heating => message!("section-heating"),
            Section::Differences => message!("section-differences"),
            Section::Beside => message!("section-beside"),
            Section::Campaigns => message!("section-campaigns"),
            Section::Method => message!("section-method"),
        }
    }
}

/// The sections of one document, in their order.
#[derive(Debug, Clone)]
pub struct Sections(Vec<Section>);

/// A section's heading.
#[derive(Debug, Clone, Serialize)]
pub struct Heading {
    /// By which a template finds what stands below.
    pub code: Section,
    pub number: String,
    pub name: String,
}

impl Sections {
    /// Those of the report on one campaign: of the practice where it heats water, and of each
    /// procedure that says something.
    pub fn of_report(assessment: &Assessment) -> Self {
        let heats = !assessment.tested.heats_no_water();
        // Nothing follows from what is physically impossible.
        let holds = !assessment.s580.is_not_valid();
        let procedures = &assessment.tested.campaign.procedures;
        let asks = |key: ProcedureKey| !procedures.leaves_out(key);
        let has_typed = !assessment.dry_vessel.is_empty();
        let has_dry = !assessment.dry_runs.runs.is_empty() && asks(ProcedureKey::DryVessel);
        let all = [
            (Section::Tested, true),
            (Section::Conditions, heats),
            (Section::Runs, heats),
            (Section::Intervals, heats),
            (Section::Regression, heats),
            (
                Section::HeatBalance,
                heats && holds && asks(ProcedureKey::HeatBalance),
            ),
            (Section::DryVessel, has_dry),
            (Section::BoxCooker, assessment.box_figures.is_some()),
            (Section::Dish, holds && assessment.dish_figures.is_some()),
            (
                Section::Efficiency,
                holds && assessment.efficiency.is_some(),
            ),
            (Section::Cooking, heats || has_typed),
            (Section::Cautions, true),
            (Section::Provenance, true),
        ];
        let there = all.into_iter().filter(|(_, is_there)| *is_there);
        Sections(there.map(|(section, _)| section).collect())
    }

    /// Those of a comparison: the first as far as there is something to say, then those that
    /// there always are.
    pub fn of_comparison(first: &[(Section, bool)]) -> Self {
        let there = first.iter().filter(|(_, is_there)| *is_there);
        let always = [Section::Campaigns, Section::Cautions, Section::Method];
        Sections(there.map(|(section, _)| *section).chain(always).collect())
    }

    /// Whether the document has a section.
    pub fn has(&self, section: Section) -> bool {
        self.0.contains(&section)
    }

    /// The number of a section, from one.
    ///
    /// # Panics
    /// If the document does not have that section.
    pub fn number(&self, section: Section) -> usize {
        let place = self.0.iter().position(|one| *one == section);
        place.expect("a document has the sections that it names") + 1
    }

    /// The headings, in their order.
    pub fn headings(&self, words: &Words) -> Vec<Heading> {
        let heading = |section: &Section| Heading {
            code: *section,
            number: self.number(*section).to_string(),
            name: words.say(section.heading()),
        };
        self.0.iter().map(heading).collect()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_section_put_in_between_moves_those_that_follow() {
        let some = || {
            vec![
                Section::Tested,
                Section::Conditions,
                Section::Cooking,
                Section::Provenance,
            ]
        };
        let mut sections = some();
        sections.insert(1, Section::Differences);
        let moved = Sections(sections);
        let before = Sections(some());
        assert_eq!(
            moved.number(Section::Tested),
            before.number(Section::Tested)
        );
        for section in [Section::Conditions, Section::Cooking, Section::Provenance] {
            assert_eq!(moved.number(section), before.number(section) + 1);
        }
    }

    #[test]
    fn headings_are_numbered_from_one_in_their_order() {
        let headings = Sections::of_comparison(&[(Section::Lines, true), (Section::Beside, false)])
            .headings(Words::english());
        for (place, heading) in headings.iter().enumerate() {
            assert_eq!(heading.number, (place + 1).to_string());
        }
    }
}
