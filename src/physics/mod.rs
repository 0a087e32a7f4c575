//! Pure functions of sun, air and water. Nothing here knows of cookers.

pub mod air;
pub mod exergy;
pub mod food;
pub mod heating;
pub mod sky;
pub mod sun;
pub mod water;
pub mod wind;
