//! What a rating means in the kitchen.
//!
//! [`pots`] is heating times and food, [`year`] the clear months and the fuel, [`danger`] the
//! warning of food that stays where bacteria grow; [`prospect`] puts the first two together.

pub mod danger;
pub mod pots;
pub mod prospect;
pub mod year;

pub use danger::{DangerZone, danger_zone};
pub use prospect::{Prospect, look_ahead};
