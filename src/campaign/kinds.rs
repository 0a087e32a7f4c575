//! Kinds of run, and the procedures that a campaign may ask for.

use crate::language::Message;
use crate::message;

/// What is in the vessels during a run, and where the sun is.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub enum RunKind {
    /// A load of water heats in the sun.
    #[default]
    Water,
    /// A hot load cools, the aperture shaded or turned away.
    Cooling,
    /// The empty vessel, or the bare plate, aimed at the sun.
    Dry,
}

impl RunKind {
    /// Every kind.
    pub const ALL: [RunKind; 3] = [RunKind::Water, RunKind::Cooling, RunKind::Dry];

    /// The kind's word in the campaign file.
    pub fn word(self) -> &'static str {
        match self {
            RunKind::Water => "water",
            RunKind::Cooling => "cooling",
            RunKind::Dry => "dry",
        }
    }

    /// The kind of a word.
    pub fn of_word(word: &str) -> Option<RunKind> {
        Self::ALL.into_iter().find(|kind| kind.word() == word)
    }

    /// Whether the vessels hold water.
    pub fn has_water(self) -> bool {
        self != RunKind::Dry
    }

    /// The kind in words.
    pub fn describe(self) -> Message {
        match self {
            RunKind::Water => message!("run-kind-water"),
            RunKind::Cooling => message!("run-kind-cooling"),
            RunKind::Dry => message!("run-kind-dry"),
        }
    }
}

/// A published procedure, as a campaign file names it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum ProcedureKey {
    S580,
    HeatBalance,
    DryVessel,
    BoxCooker,
    Dish,
    Efficiency,
}

impl ProcedureKey {
    /// Every procedure.
    pub const ALL: [ProcedureKey; 6] = [
        ProcedureKey::S580,
        ProcedureKey::HeatBalance,
        ProcedureKey::DryVessel,
        ProcedureKey::BoxCooker,
        ProcedureKey::Dish,
        ProcedureKey::Efficiency,
    ];

    /// Its word in the campaign file.
    pub fn word(self) -> &'static str {
        match self {
            ProcedureKey::S580 => "s580",
            ProcedureKey::HeatBalance => "heat-balance",
            ProcedureKey::DryVessel => "dry-vessel",
            ProcedureKey::BoxCooker => "box-cooker",
            ProcedureKey::Dish => "dish",
            ProcedureKey::Efficiency => "efficiency",
        }
    }
}

/// The procedures that a campaign asks for by name; `None`: all that its data allow.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Procedures(pub Option<Vec<ProcedureKey>>);

impl Procedures {
    /// Whether a procedure is left out.
    pub fn leaves_out(&self, key: ProcedureKey) -> bool {
        self.0.as_ref().is_some_and(|named| !named.contains(&key))
    }

    /// Whether a procedure is asked for by its name.
    pub fn name(&self, key: ProcedureKey) -> bool {
        self.0.as_ref().is_some_and(|named| named.contains(&key))
    }
}
