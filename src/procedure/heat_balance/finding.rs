//! What can be found about a heat balance.

use crate::procedure::finding;

/// Every finding about a heat balance.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum FindingCode {
    /// There is no interval of the practice, and the steps between readings serve.
    ReadingsFarApart,
    /// All of it was measured on one day.
    OneDay,
    /// Gain and loss are told apart by the temperature difference alone.
    IrradianceHardlyVaried,
    /// The loss may be none.
    LossNotShown,
}

impl FindingCode {
    /// The code in files.
    pub fn code(self) -> &'static str {
        match self {
            FindingCode::ReadingsFarApart => "readings-far-apart",
            FindingCode::OneDay => "one-day",
            FindingCode::IrradianceHardlyVaried => "irradiance-hardly-varied",
            FindingCode::LossNotShown => "loss-not-shown",
        }
    }
}

/// A finding of this procedure.
pub type BalanceFinding = finding::Finding<FindingCode>;
