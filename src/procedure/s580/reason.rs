//! Why the practice does not let one use an interval.

use crate::campaign::model::IrradianceEstimate;
use crate::language::Message;
use crate::message;

/// Why an interval is set aside.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Reason {
    WaterBelowWindow,
    WaterAboveWindow,
    AmbientOutOfRange,
    IrradianceLow,
    IrradianceHigh,
    IrradianceUnsteady,
    WindHigh,
    OutsideSolarWindow,
    ReadingGap,
    ExcludedByTester,
    NotCloudless,
}

impl Reason {
    /// Every reason, in the order of the report.
    pub const ALL: &[Reason] = &[
        Reason::WaterBelowWindow,
        Reason::WaterAboveWindow,
        Reason::AmbientOutOfRange,
        Reason::IrradianceLow,
        Reason::IrradianceHigh,
        Reason::IrradianceUnsteady,
        Reason::WindHigh,
        Reason::OutsideSolarWindow,
        Reason::ReadingGap,
        Reason::ExcludedByTester,
        Reason::NotCloudless,
    ];

    /// The code in files.
    pub fn code(self) -> &'static str {
        match self {
            Reason::WaterBelowWindow => "water-below-window",
            Reason::WaterAboveWindow => "water-above-window",
            Reason::AmbientOutOfRange => "ambient-out-of-range",
            Reason::IrradianceLow => "irradiance-low",
            Reason::IrradianceHigh => "irradiance-high",
            Reason::IrradianceUnsteady => "irradiance-unsteady",
            Reason::WindHigh => "wind-high",
            Reason::OutsideSolarWindow => "outside-solar-window",
            Reason::ReadingGap => "reading-gap",
            Reason::ExcludedByTester => "excluded-by-tester",
            Reason::NotCloudless => "not-cloudless",
        }
    }

    /// The reason in words.
    pub fn describe(self) -> Message {
        Message::new(format!("reason-{}", self.code()))
    }

    /// The reason in a word or two.
    pub fn describe_briefly(self) -> Message {
        Message::new(format!("aside-{}", self.code()))
    }

    /// What the person beside the cooker can do about it.
    ///
    /// Irradiance that a model of the clear sky gives has neither a sensor nor clouds: what is
    /// wrong with it comes of place, time and the height of the sun.
    pub fn remedy(self, estimate: Option<IrradianceEstimate>) -> Message {
        let is_of_sun = matches!(
            self,
            Reason::IrradianceLow | Reason::IrradianceHigh | Reason::IrradianceUnsteady
        );
        match estimate {
            Some(IrradianceEstimate::ClearSky) if is_of_sun => {
                message!("helps-irradiance-of-model")
            }
            _ => Message::new(format!("helps-{}", self.code())),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_reason_is_said() {
        for reason in Reason::ALL {
            for said in [
                reason.describe(),
                reason.describe_briefly(),
                reason.remedy(None),
                reason.remedy(Some(IrradianceEstimate::ClearSky)),
            ] {
                assert!(!said.to_string().is_empty());
            }
        }
    }
}
