//! What vessels are made of, and the heat that they store.

use crate::language::{Message, kilograms, short};
use crate::message;

/// A material of vessels, with its specific heat capacity, J/(kg K).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Material {
    /// Its word in the campaign file.
    pub word: &'static str,
    pub specific_heat_j_per_kg_k: f64,
}

/// Materials of vessels.
///
/// # Source
/// EN 12524:2000, design values at room temperature, as an open library carries them (seen
/// there; the standard itself was not): `tests/data/procedures_check.json`. Ceramic is porcelain,
/// enamelled steel is steel. They grow by some 2 to 10 % up to 100 °C, which is in the uncertainty
/// that is taken.
pub static MATERIALS: [Material; 8] = [
    material("aluminium", 880.0),
    material("cast-iron", 450.0),
    material("steel", 450.0),
    material("stainless-steel", 460.0),
    material("copper", 380.0),
    material("glass", 750.0),
    material("ceramic", 840.0),
    material("fired-clay", 800.0),
];

const fn material(word: &'static str, specific_heat_j_per_kg_k: f64) -> Material {
    Material {
        word,
        specific_heat_j_per_kg_k,
    }
}

/// The heat capacity of the vessels.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum VesselHeat {
    /// As stated, J/K.
    Stated(f64),
    /// Of their mass, kg, and what they are made of.
    Weighed(f64, &'static Material),
}

impl VesselHeat {
    /// J/K.
    pub fn j_per_k(&self) -> f64 {
        match self {
            VesselHeat::Stated(j_per_k) => *j_per_k,
            VesselHeat::Weighed(kg, material) => kg * material.specific_heat_j_per_kg_k,
        }
    }

    /// Where it is from, in words.
    pub fn basis(&self) -> Message {
        match self {
            VesselHeat::Stated(_) => message!("vessel-heat-stated"),
            VesselHeat::Weighed(kg, material) => message!(
                "vessel-heat-weighed",
                mass = kilograms(short(*kg)),
                material = Message::new(format!("material-{}", material.word)),
                heat = short(material.specific_heat_j_per_kg_k)
            ),
        }
    }
}
