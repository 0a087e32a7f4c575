//! What weakens a rating though it conforms no less for it.

use serde::{Deserialize, Serialize};

use super::Assessment;
use super::s580::finding::FindingCode;
use crate::language::Message;
use crate::message;

/// What a reader of the number alone would not see.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Caveat {
    IrradianceEstimated,
    /// Of no run, so that there is no rating.
    IrradianceNotMeasured,
    SensorLiesFlat,
    PlaneNotStated,
    OneDay,
    /// Of several days none can be left out, so how they differ is not in the ±.
    DaysNotInSpread,
    Extrapolated,
}

impl Caveat {
    /// Those of a campaign.
    pub fn of(assessment: &Assessment) -> Vec<Caveat> {
        let s580 = &assessment.s580;
        let findings = &s580.conformity.findings;
        let is_found = |code| findings.iter().any(|finding| finding.code == code);
        let rated = s580.rated.as_ref();
        let has_number = !s580.is_not_valid();
        let lacks_days = rated.is_some_and(|rated| rated.uncertainty.is_of_one_day()) && has_number;
        let is_of_one_day = s580.dates.len() < 2;
        let all = [
            (
                Caveat::IrradianceEstimated,
                assessment.tested.estimates_irradiance(),
            ),
            (
                Caveat::IrradianceNotMeasured,
                !assessment.tested.runs.is_empty() && !assessment.tested.has_irradiance(),
            ),
            (Caveat::SensorLiesFlat, assessment.tested.lies_flat()),
            (
                Caveat::PlaneNotStated,
                is_found(FindingCode::IrradiancePlaneNotStated),
            ),
            (Caveat::OneDay, lacks_days && is_of_one_day),
            (Caveat::DaysNotInSpread, lacks_days && !is_of_one_day),
            (
                Caveat::Extrapolated,
                is_found(FindingCode::Extrapolated) && has_number,
            ),
        ];
        let all = all.into_iter().filter(|(_, holds)| *holds);
        all.map(|(caveat, _)| caveat).collect()
    }

    /// In words.
    pub fn describe(self) -> Message {
        match self {
            Caveat::IrradianceEstimated => message!("irradiance-estimated"),
            Caveat::IrradianceNotMeasured => message!("terminal-irradiance-not-measured"),
            Caveat::SensorLiesFlat => message!("terminal-horizontal"),
            Caveat::PlaneNotStated => message!("terminal-plane-not-stated"),
            Caveat::OneDay => message!("terminal-one-day"),
            Caveat::DaysNotInSpread => message!("terminal-days-not-in-spread"),
            Caveat::Extrapolated => message!("terminal-extrapolated"),
        }
    }
}
