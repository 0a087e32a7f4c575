//! `check` of several campaigns: little enough of each to keep of thousands.

use std::path::Path;

use super::check_procedures;
use super::check_text::{findings_to_state, grave_findings, is_held_against_standard};
use super::check_verdict::step_of_several;
use super::report_table::unnamed;
use crate::batch::alike::{Alike, Gravity, Said};
use crate::batch::brief::Brief;
use crate::batch::causes::Causes;
use crate::error::Result;
use crate::language::{Language, Message, Phrase, UnitSystem};
use crate::logs::unnamed::unnamed_logs;
use crate::procedure::Assessment;
use crate::procedure::s580::finding::S580Finding;
use crate::procedure::s580::reason::Reason;
use crate::procedure::s580::result::count_reasons;

/// A campaign as the table of several has it.
pub struct CheckedRow {
    /// Its folder, as it was found, without `./` before it and without quotes.
    pub folder: String,
    /// `None` where it cannot be read.
    pub brief: Option<Brief>,
}

/// Intervals of several campaigns that are set aside for one reason.
pub struct SetAside {
    pub reason: Reason,
    pub remedy: Message,
    pub intervals: usize,
    pub campaigns: Vec<String>,
}

/// What `check` found of several campaigns, what is alike together.
pub struct CheckedMany {
    /// To report them, where nothing else is to be done.
    pub report: Message,
    pub rows: Vec<CheckedRow>,
    /// What each asks for.
    pub wished: Vec<(Language, UnitSystem)>,
    pub next: Alike,
    /// What keeps them from conforming, each with its remedy.
    pub findings: Alike,
    /// What a conforming number carries, each with its remedy.
    pub to_state: Alike,
    pub set_aside: Vec<SetAside>,
    /// Of the figures beside the rating, each with its remedy.
    pub of_figures: Alike,
    pub notices: Alike,
    /// Of those that cannot be read.
    pub causes: Causes,
}

impl CheckedMany {
    /// Of no campaign yet.
    pub fn new(report: Message) -> Self {
        CheckedMany {
            report,
            rows: Vec::new(),
            wished: Vec::new(),
            next: Alike::default(),
            findings: Alike::default(),
            to_state: Alike::default(),
            set_aside: Vec::new(),
            of_figures: Alike::default(),
            notices: Alike::default(),
            causes: Causes::default(),
        }
    }

    /// Adds what came of a campaign.
    pub fn add(&mut self, folder: &Path, assessed: &Result<Assessment>) {
        let typed = folder.strip_prefix(".").unwrap_or(folder);
        let typed = if typed.as_os_str().is_empty() {
            folder
        } else {
            typed
        };
        let folder = typed.display().to_string();
        let brief = match assessed {
            Ok(assessment) => {
                self.add_assessment(&folder, assessment);
                Some(Brief::of(assessment))
            }
            Err(error) => {
                self.causes.add(error);
                None
            }
        };
        self.rows.push(CheckedRow { folder, brief });
    }

    fn add_assessment(&mut self, folder: &str, assessment: &Assessment) {
        let campaign = &assessment.tested.campaign;
        let wishes = &campaign.report;
        self.wished.push((wishes.language, wishes.units));
        let next = step_of_several(assessment, self.report.clone());
        let gravity = Gravity::of_level(assessment.s580.conformity.level);
        let of_campaign = |phrases: Vec<Phrase>| Said { phrases, gravity };
        self.next.add(folder, of_campaign(vec![next]));
        let with_remedy = |text: &Message, remedy: &Message| vec![text.into(), remedy.into()];
        let of_finding = |finding: &S580Finding| Said {
            phrases: with_remedy(&finding.text, &finding.remedy),
            gravity: Gravity::of_level(finding.level),
        };
        if is_held_against_standard(assessment) {
            for finding in grave_findings(assessment) {
                self.findings.add(folder, of_finding(finding));
            }
            for finding in findings_to_state(assessment) {
                self.to_state.add(folder, of_finding(finding));
            }
            self.add_set_aside(folder, assessment);
        }
        if !assessment.s580.is_not_valid() {
            for found in check_procedures::findings(assessment) {
                let said = with_remedy(&found.text, &found.remedy);
                self.of_figures.add(folder, of_campaign(said));
            }
        }
        for notice in &assessment.notices {
            let danger = notice.danger();
            let said = Said {
                phrases: vec![notice.message().into()],
                gravity: Gravity { danger, ..gravity },
            };
            self.notices.add(folder, said);
        }
        if let Some(unnamed) = unnamed(&unnamed_logs(campaign)) {
            self.notices.add(folder, of_campaign(vec![unnamed.into()]));
        }
    }

    fn add_set_aside(&mut self, folder: &str, assessment: &Assessment) {
        if assessment.s580.is_not_valid() {
            return;
        }
        let estimate = assessment.tested.campaign.instruments.irradiance_estimate;
        for (reason, count) in count_reasons(assessment.s580.intervals.iter()) {
            let remedy = reason.remedy(estimate);
            let is_same = |one: &&mut SetAside| one.reason == reason && one.remedy == remedy;
            match self.set_aside.iter_mut().find(is_same) {
                Some(one) => {
                    one.intervals += count;
                    one.campaigns.push(folder.to_owned());
                }
                None => self.set_aside.push(SetAside {
                    reason,
                    remedy,
                    intervals: count,
                    campaigns: vec![folder.to_owned()],
                }),
            }
        }
    }
}
