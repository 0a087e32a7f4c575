//! What can be found about a rating.

use serde::{Deserialize, Serialize};

use crate::procedure::finding;

/// Every finding that lowers the level of a rating.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum FindingCode {
    TooFewIntervals,
    TooFewDays,
    NoRating,
    RSquaredLow,
    LineNotFalling,
    NoUsefulHeat,
    Extrapolated,
    LoadOff,
    WindNotMeasured,
    WindEstimated,
    IrradianceEstimated,
    IrradianceNotNormal,
    IrradiancePlaneNotStated,
    ImpossibleGain,
    ImpossibleRating,
    RequirementRelaxed,
    RecommendationRelaxed,
    LimitTightened,
    ExcludedByTester,
}

impl FindingCode {
    /// Its place among those of one level, the gravest first: the number cannot be, is none, has
    /// not the irradiance that it needs; then what more of the same does not mend, then the rest.
    pub fn place(self) -> u8 {
        match self {
            FindingCode::ImpossibleGain | FindingCode::ImpossibleRating => 0,
            FindingCode::NoRating | FindingCode::LineNotFalling | FindingCode::NoUsefulHeat => 1,
            FindingCode::IrradianceEstimated
            | FindingCode::IrradianceNotNormal
            | FindingCode::IrradiancePlaneNotStated => 2,
            FindingCode::LoadOff
            | FindingCode::WindNotMeasured
            | FindingCode::WindEstimated
            | FindingCode::RequirementRelaxed
            | FindingCode::RecommendationRelaxed
            | FindingCode::LimitTightened => 3,
            FindingCode::TooFewIntervals
            | FindingCode::TooFewDays
            | FindingCode::RSquaredLow
            | FindingCode::Extrapolated
            | FindingCode::ExcludedByTester => 4,
        }
    }

    /// The code in files.
    pub fn code(self) -> &'static str {
        match self {
            FindingCode::TooFewIntervals => "too-few-intervals",
            FindingCode::TooFewDays => "too-few-days",
            FindingCode::NoRating => "no-rating",
            FindingCode::RSquaredLow => "r-squared-low",
            FindingCode::LineNotFalling => "line-not-falling",
            FindingCode::NoUsefulHeat => "no-useful-heat",
            FindingCode::Extrapolated => "extrapolated",
            FindingCode::LoadOff => "load-off",
            FindingCode::WindNotMeasured => "wind-not-measured",
            FindingCode::WindEstimated => "wind-estimated",
            FindingCode::IrradianceEstimated => "irradiance-estimated",
            FindingCode::IrradianceNotNormal => "irradiance-not-normal",
            FindingCode::IrradiancePlaneNotStated => "irradiance-plane-not-stated",
            FindingCode::ImpossibleGain => "impossible-gain",
            FindingCode::ImpossibleRating => "impossible-rating",
            FindingCode::RequirementRelaxed => "requirement-relaxed",
            FindingCode::RecommendationRelaxed => "recommendation-relaxed",
            FindingCode::LimitTightened => "limit-tightened",
            FindingCode::ExcludedByTester => "excluded-by-tester",
        }
    }
}

/// A finding of this practice.
pub type S580Finding = finding::Finding<FindingCode>;
