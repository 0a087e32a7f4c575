//! What can be found about the figures of a concentrating cooker.

use crate::procedure::finding;

/// Every finding about the figures of a concentrating cooker.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum FindingCode {
    /// There is no cooling run.
    NoCoolingRun,
    /// A cooling run begins too near to ambient.
    BeginsTooCool,
    /// The water warms in a run that is to cool.
    Warms,
    /// A cooling run has too few readings, or a hole.
    CoolingTooShort,
    /// `loss_area_m2` is not stated.
    NoLossArea,
    /// What the vessels store is not stated.
    NoVesselHeat,
    /// No run of water heats up under the sun.
    NoHeating,
    /// The sensor of irradiance did not face the sun.
    PlaneNotNormal,
    /// A sensor that faces the sun sees the sky around it, too.
    GlobalNotBeam,
    /// One day alone.
    OneDay,
    /// Water evaporates above 80 °C.
    Evaporation,
    /// A figure has no end of its interval.
    NoEnd,
    /// Cooling and heat balance give losses that differ.
    LossesDiffer,
    /// Runs of water that do not count.
    RunsLeftOut,
    /// In the sun of the test the water does not boil, or may not.
    DoesNotBoil,
}

impl FindingCode {
    /// The code in files.
    pub fn code(self) -> &'static str {
        match self {
            FindingCode::NoCoolingRun => "no-cooling-run",
            FindingCode::BeginsTooCool => "begins-too-cool",
            FindingCode::Warms => "warms",
            FindingCode::CoolingTooShort => "cooling-too-short",
            FindingCode::NoLossArea => "no-loss-area",
            FindingCode::NoVesselHeat => "no-vessel-heat",
            FindingCode::NoHeating => "no-heating",
            FindingCode::PlaneNotNormal => "plane-not-normal",
            FindingCode::GlobalNotBeam => "global-not-beam",
            FindingCode::OneDay => "one-day",
            FindingCode::Evaporation => "evaporation",
            FindingCode::NoEnd => "no-end",
            FindingCode::LossesDiffer => "losses-differ",
            FindingCode::RunsLeftOut => "runs-left-out",
            FindingCode::DoesNotBoil => "does-not-boil",
        }
    }
}

/// A finding of this procedure.
pub type DishFinding = finding::Finding<FindingCode>;
