//! The units that a report says beside those of the SI.

/// Units of a report. Those of the SI are always there.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum UnitSystem {
    Si,
    /// Degrees Fahrenheit, pounds, feet, miles per hour and the like stand beside.
    Us,
}

impl UnitSystem {
    /// Every system.
    pub const ALL: [UnitSystem; 2] = [UnitSystem::Si, UnitSystem::Us];

    /// The system's word in the campaign file.
    pub fn word(self) -> &'static str {
        match self {
            UnitSystem::Si => "si",
            UnitSystem::Us => "us",
        }
    }
}
