//! A campaign's result in brief: little enough to keep of ten thousand.

use serde::{Deserialize, Serialize};

use crate::campaign::wishes::Paper;
use crate::comparison::standing::Standing;
use crate::procedure::Assessment;
use crate::procedure::caveat::Caveat;

/// What a table of campaigns and a page that leads to their reports say of one.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Brief {
    pub standing: Standing,
    /// What weakens the number.
    pub caveats: Vec<Caveat>,
    /// Intervals of all runs that heat water, used or not.
    pub all_intervals: usize,
    /// Every run is dry or cools down, so that there can be no interval.
    #[serde(default)]
    pub heats_no_water: bool,
    /// Code of the language that the campaign file asks for.
    pub language: String,
    pub paper: Paper,
}

impl Brief {
    /// Of a campaign.
    pub fn of(assessment: &Assessment) -> Brief {
        let wishes = &assessment.tested.campaign.report;
        Brief {
            standing: Standing::of(assessment),
            caveats: Caveat::of(assessment),
            all_intervals: assessment.s580.intervals.len(),
            heats_no_water: assessment.tested.heats_no_water(),
            language: wishes.language.code.to_owned(),
            paper: wishes.paper,
        }
    }
}
