//! What can be found about a dry run.

use crate::procedure::finding;

/// Every finding about a dry run.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum FindingCode {
    /// Its log has no temperature of the vessel.
    NoVesselTemperature,
    /// Its log has no irradiance.
    NoIrradiance,
    /// Its log has no temperature of the air about the plateau.
    NoAmbient,
    /// The sun was below the horizon.
    SunDown,
    /// The vessel was colder than the air.
    ColderThanAir,
    /// The vessel was hotter than home-built cookers get.
    VeryHot,
    /// It is shorter than a plateau.
    TooShort,
    /// The sun was not steady for long enough.
    SunUnsteady,
    /// The sun was too weak.
    SunWeak,
    /// The difference for each W/m² has no end of its interval.
    NoEnd,
    /// The vessel was still getting hotter, or cooler.
    PlateauNotReached,
    /// There is a plateau, and the vessel may still get hotter.
    MayGetHotter,
}

impl FindingCode {
    /// The code in files.
    pub fn code(self) -> &'static str {
        match self {
            FindingCode::NoVesselTemperature => "no-vessel-temperature",
            FindingCode::NoIrradiance => "no-irradiance",
            FindingCode::NoAmbient => "no-ambient",
            FindingCode::SunDown => "sun-down",
            FindingCode::ColderThanAir => "colder-than-air",
            FindingCode::VeryHot => "very-hot",
            FindingCode::TooShort => "dry-run-too-short",
            FindingCode::SunUnsteady => "sun-unsteady",
            FindingCode::SunWeak => "sun-weak",
            FindingCode::NoEnd => "no-end",
            FindingCode::MayGetHotter => "may-get-hotter",
            FindingCode::PlateauNotReached => "plateau-not-reached",
        }
    }
}

/// A finding of this procedure.
pub type DryFinding = finding::Finding<FindingCode>;
