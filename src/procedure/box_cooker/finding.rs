//! What can be found about the figures of a box cooker.

use crate::procedure::finding;

/// Every finding about the figures of a box cooker.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum FindingCode {
    /// There is no dry run.
    NoDryRun,
    /// No dry run has a plateau.
    NoPlateau,
    /// The sensor of irradiance did not lie flat, or nobody says how it stood.
    PlaneNotHorizontal,
    /// Whatever mirrors there are have to be covered.
    CoverMirrors,
    /// No run of water passes both temperatures without a hole.
    NoHeating,
    /// Runs of water that do not count.
    RunsLeftOut,
    /// The load is not that of the procedure.
    LoadOff,
    /// F1·H does not reach the end of some rises, or of all: those have no F2.
    BeyondReach,
    /// F1·H is so near to it that F2 has no upper end.
    NoUpperEnd,
    /// F1·H is near to it: F2 follows F1 steeply.
    NearReach,
    /// One day alone.
    OneDay,
    /// Water evaporates above 80 °C.
    Evaporation,
    /// In the sun of the test the water does not boil, or may not.
    DoesNotBoil,
}

impl FindingCode {
    /// The code in files.
    pub fn code(self) -> &'static str {
        match self {
            FindingCode::NoDryRun => "no-dry-run",
            FindingCode::NoPlateau => "no-plateau",
            FindingCode::PlaneNotHorizontal => "plane-not-horizontal",
            FindingCode::CoverMirrors => "cover-mirrors",
            FindingCode::NoHeating => "no-heating",
            FindingCode::RunsLeftOut => "runs-left-out",
            FindingCode::LoadOff => "load-off",
            FindingCode::BeyondReach => "beyond-reach",
            FindingCode::NoUpperEnd => "no-upper-end",
            FindingCode::NearReach => "near-reach",
            FindingCode::OneDay => "one-day",
            FindingCode::Evaporation => "evaporation",
            FindingCode::DoesNotBoil => "does-not-boil",
        }
    }
}

/// A finding of this procedure.
pub type BoxFinding = finding::Finding<FindingCode>;
