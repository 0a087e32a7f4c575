//! Heat that food takes up.

use crate::language::Message;

/// Specific heat of unfrozen food, J/(kg K), from its mass fraction of solids (0 to 1):
/// c = 4190 − 2300 x − 628 x³.
///
/// ```
/// let of_water = simmerline::physics::food::specific_heat_j_per_kg_k(0.0);
/// assert_eq!(of_water, 4190.0);
/// ```
///
/// # Source
/// Chen 1985, as the ASHRAE Handbook, Refrigeration, chapter on thermal properties of foods
/// quotes it; from memory.
pub fn specific_heat_j_per_kg_k(solids: f64) -> f64 {
    4190.0 - 2300.0 * solids - 628.0 * solids * solids * solids
}

/// A common food, ready for the pot.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Food {
    /// Its word in the message files and in data.
    pub code: &'static str,
    /// Mass fraction of water.
    ///
    /// ASHRAE Handbook, Refrigeration, table of unfrozen composition; from memory.
    pub water: f64,
    /// Temperature all through at which it cooks, °C, and how long it is held there, s.
    ///
    /// Common practice, no published source; for eggs and fish the temperature is the
    /// cautious one of USDA FSIS, 74 °C.
    pub cooks_at_c: f64,
    pub held_s: f64,
}

/// Mass fraction of water in dry rice, from memory.
const DRY_RICE: f64 = 0.12;
/// Parts of water to one of rice, by mass.
const WATER_TO_RICE: f64 = 2.0;

const fn food(code: &'static str, water: f64, cooks_at_c: f64, held_min: f64) -> Food {
    Food {
        code,
        water,
        cooks_at_c,
        held_s: held_min * 60.0,
    }
}

/// The foods that the report names.
pub const FOODS: &[Food] = &[
    food("potatoes", 0.7896, 90.0, 40.0),
    food("carrots", 0.8779, 90.0, 40.0),
    food("cabbage", 0.9215, 90.0, 30.0),
    food(
        "rice",
        (DRY_RICE + WATER_TO_RICE) / (1.0 + WATER_TO_RICE),
        90.0,
        30.0,
    ),
    food("eggs", 0.7533, 74.0, 15.0),
    food("fish", 0.8122, 74.0, 15.0),
];

impl Food {
    /// What it is called.
    pub fn name(&self) -> Message {
        Message::new(format!("food-{}", self.code))
    }

    /// Its specific heat, J/(kg K).
    pub fn specific_heat_j_per_kg_k(&self) -> f64 {
        specific_heat_j_per_kg_k(1.0 - self.water)
    }
}
