//! Why the practice does not let one use an interval.

use crate::language::Message;

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

    /// What the person beside the cooker can do about it, on the terminal.
    pub fn remedy(self) -> &'static str {
        match self {
            Reason::WaterBelowWindow => {
                "start with water a few kelvin above ambient, or let it warm before it counts"
            }
            Reason::WaterAboveWindow => {
                "stop the run, or start again with cool water, once the water nears boiling"
            }
            Reason::AmbientOutOfRange => "choose another season or time of day",
            Reason::IrradianceLow => "wait for clear sky, and keep the sensor's glass clean",
            Reason::IrradianceHigh => {
                "check the sensor's calibration, and keep reflected light off it"
            }
            Reason::IrradianceUnsteady => {
                "test on days without passing cloud, and keep the sensor aimed"
            }
            Reason::WindHigh => "test in a sheltered place or on calmer days",
            Reason::OutsideSolarWindow => "heat within the window, which is in solar time",
            Reason::ReadingGap => "record every quantity at least once in every interval",
            Reason::ExcludedByTester => "nothing, unless the exclusion was a mistake",
            Reason::NotCloudless => {
                "note for every reading whether the sky was cloudless; measure irradiance where clouds pass"
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_reason_is_said() {
        for reason in Reason::ALL {
            assert!(!reason.describe().to_string().is_empty());
        }
    }
}
