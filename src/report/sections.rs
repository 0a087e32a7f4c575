//! The sections of a report and of a comparison; each has its number by its place.

use serde::Serialize;

use crate::language::{Message, Words};
use crate::message;

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
    Cooking,
    Cautions,
    Provenance,
    Differences,
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
            Section::Cooking => message!("section-cooking"),
            Section::Cautions => message!("section-cautions"),
            Section::Provenance => message!("section-provenance"),
            Section::Differences => message!("section-differences"),
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
    /// Those of the report on one campaign.
    pub fn of_report() -> Self {
        Sections(vec![
            Section::Tested,
            Section::Conditions,
            Section::Runs,
            Section::Intervals,
            Section::Regression,
            Section::HeatBalance,
            Section::Cooking,
            Section::Cautions,
            Section::Provenance,
        ])
    }

    /// Those of a comparison.
    pub fn of_comparison() -> Self {
        Sections(vec![
            Section::Differences,
            Section::Campaigns,
            Section::Cautions,
            Section::Method,
        ])
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
        let Sections(mut sections) = Sections::of_report();
        sections.insert(1, Section::Differences);
        let moved = Sections(sections);
        let before = Sections::of_report();
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
        for sections in [Sections::of_report(), Sections::of_comparison()] {
            let headings = sections.headings(Words::english());
            for (place, heading) in headings.iter().enumerate() {
                assert_eq!(heading.number, (place + 1).to_string());
            }
        }
    }
}
