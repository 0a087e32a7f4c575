//! What can be found about energy and exergy.

use crate::procedure::finding;

/// Every finding about energy and exergy.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum FindingCode {
    /// More heat than sunlight.
    MoreThanSunlight,
    /// The sensor of irradiance did not face the sun.
    PlaneNotNormal,
    /// The rate of exergy has no highest point among the intervals.
    NoPeak,
    /// There is one, but not without one of the days.
    PeakUnsure,
    /// The loss is not known, so the peak has nothing to be held against.
    NoLoss,
    /// One day alone.
    OneDay,
    /// Water evaporates above 80 °C.
    Evaporation,
}

impl FindingCode {
    /// The code in files.
    pub fn code(self) -> &'static str {
        match self {
            FindingCode::MoreThanSunlight => "more-than-sunlight",
            FindingCode::PlaneNotNormal => "plane-not-normal",
            FindingCode::NoPeak => "no-peak",
            FindingCode::PeakUnsure => "peak-unsure",
            FindingCode::NoLoss => "no-loss",
            FindingCode::OneDay => "one-day",
            FindingCode::Evaporation => "evaporation",
        }
    }
}

/// A finding of this procedure.
pub type EfficiencyFinding = finding::Finding<FindingCode>;
