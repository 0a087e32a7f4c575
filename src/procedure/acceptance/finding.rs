//! What can be found about the acceptance half angle.

use crate::procedure::finding;

/// Every finding about it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum FindingCode {
    /// Too few stretches from one aiming to the next.
    FewAimings,
    /// Gain does not fall with the angle so far that it shows.
    FallNotShown,
}

impl FindingCode {
    /// The code in files.
    pub fn code(self) -> &'static str {
        match self {
            FindingCode::FewAimings => "few-aimings",
            FindingCode::FallNotShown => "fall-not-shown",
        }
    }
}

/// A finding of this procedure.
pub type AcceptanceFinding = finding::Finding<FindingCode>;
