//! Every notice of an assessment: what a reader should know that stops nothing.

use std::fmt;

use super::cooking::danger::{Danger, DangerZone};
use super::run_notice::RunNotice;
use super::s580::notice::S580Notice;
use super::slips::notice::SlipNotice;
use crate::campaign::Campaign;
use crate::language::{Message, listed};
use crate::message;

/// A notice, by the stage that gives it. It reaches the terminal and the report.
#[derive(Debug, Clone, PartialEq)]
pub enum Notice {
    Run(RunNotice),
    S580(S580Notice),
    /// Of what looks like a slip of the pen, a clock or a sensor.
    Slip(SlipNotice),
    /// Heating that would leave food too long where bacteria grow.
    DangerZone(DangerZone),
    /// Logs and photo that were read from outside the campaign's folder, as named there.
    Outside(Vec<String>),
}

/// That files lie outside the campaign's folder, if some do.
pub fn outside(campaign: &Campaign) -> Option<Notice> {
    let files: Vec<String> = campaign.outside.iter().cloned().collect();
    (!files.is_empty()).then_some(Notice::Outside(files))
}

impl Notice {
    /// Whether it doubts where the site is or what its clocks and dates say: on these rests where
    /// the sun stood, and with it nearly all that is said.
    pub fn doubts_place_or_time(&self) -> bool {
        matches!(
            self,
            Notice::S580(S580Notice::OddSolarNoon { .. })
                | Notice::Slip(
                    SlipNotice::FarFromZone(_) | SlipNotice::Sun(_) | SlipNotice::Date(_)
                )
        )
    }

    /// How bad it is, if it warns of food safety.
    pub fn danger(&self) -> Option<Danger> {
        match self {
            Notice::DangerZone(found) => Some(found.danger()),
            _ => None,
        }
    }

    /// What it says.
    pub fn message(&self) -> Message {
        match self {
            Notice::Run(notice) => notice.message(),
            Notice::S580(notice) => notice.message(),
            Notice::Slip(notice) => notice.message(),
            Notice::DangerZone(found) => found.message(),
            Notice::Outside(files) => message!("notice-outside", files = listed(files)),
        }
    }
}

impl fmt::Display for Notice {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.message().fmt(f)
    }
}
