//! Concentrating cookers: a cooling and a heating test.
//!
//! [`cooling`] finds how fast a load cools, [`formulas`] has what follows with the heatings,
//! [`figures`] finds loss, optical factor and time to boil, and [`told`] says what weakens or
//! prevents them, by the codes in [`finding`].

pub mod cooling;
pub mod figures;
pub mod finding;
pub mod formulas;
pub mod told;

pub use figures::{DishFigures, dish_figures};
