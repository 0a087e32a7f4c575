//! How far a rating can be trusted, in a few words.

use crate::comparison::standing::Standing;
use crate::language::{Message, Phrase, joined};
use crate::message;
use crate::procedure::finding::Level;
use crate::procedure::s580::finding::FindingCode;

/// The level, and why it is no better: `indicative only: irradiance estimated, no wind`.
pub fn status(standing: &Standing) -> Phrase {
    let of_one_day = standing.power.is_some_and(|power| power.is_of_one_day);
    // That the data say too little of days stands there once.
    let is_told = |code: &FindingCode| !(of_one_day && *code == FindingCode::TooFewDays);
    let reasons = standing.reasons.iter().copied().filter(is_told);
    let reasons = reasons.map(|code| reason(code, standing.lies_flat));
    let one_day = of_one_day.then(|| message!("status-one-day"));
    let mut reasons: Vec<Message> = one_day.into_iter().chain(reasons).collect();
    reasons.dedup();
    let level = level(standing.level);
    if reasons.is_empty() || standing.level == Level::NoRating {
        return level.into();
    }
    message!("status-for", level = level, reasons = joined(reasons, ", ")).into()
}

/// A level in the middle of a line.
pub fn level(level: Level) -> Message {
    match level {
        Level::Conforms => message!("ratings-conforms"),
        Level::ConformsWithNotes => message!("ratings-conforms-with-notes"),
        Level::Indicative => message!("ratings-indicative"),
        Level::NotValid => message!("ratings-not-valid"),
        Level::NoRating => message!("ratings-no-rating"),
    }
}

/// A finding in two or three words.
fn reason(code: FindingCode, lies_flat: bool) -> Message {
    match code {
        FindingCode::TooFewIntervals => message!("status-too-few-intervals"),
        FindingCode::TooFewDays => message!("status-too-few-days"),
        FindingCode::NoRating => message!("ratings-no-rating"),
        FindingCode::RSquaredLow => message!("status-r-squared-low"),
        FindingCode::LineNotFalling => message!("status-line-not-falling"),
        FindingCode::NoUsefulHeat => message!("status-no-useful-heat"),
        FindingCode::Extrapolated => message!("status-extrapolated"),
        FindingCode::LoadOff => message!("status-load-off"),
        FindingCode::WindNotMeasured => message!("status-wind-not-measured"),
        FindingCode::WindEstimated => message!("status-wind-estimated"),
        FindingCode::IrradianceEstimated => message!("irradiance-estimated"),
        FindingCode::IrradianceNotNormal if lies_flat => message!("status-flat"),
        FindingCode::IrradianceNotNormal => message!("status-irradiance-missing"),
        FindingCode::IrradiancePlaneNotStated => message!("status-plane-not-stated"),
        FindingCode::ImpossibleGain | FindingCode::ImpossibleRating => {
            message!("status-impossible-gain")
        }
        FindingCode::RequirementRelaxed | FindingCode::RecommendationRelaxed => {
            message!("status-own-limits-looser")
        }
        FindingCode::LimitTightened => message!("status-own-limits-tighter"),
        FindingCode::ExcludedByTester => message!("status-excluded"),
    }
}
