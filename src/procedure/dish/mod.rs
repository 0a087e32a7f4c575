//! Concentrating cookers: a cooling and a heating test.
//!
//! [`cooling`] finds the loss, [`figures`] the optical factor and the time to boil, and
//! [`finding`] names what weakens or prevents them.

pub mod cooling;
pub mod figures;
pub mod finding;

pub use figures::{DishFigures, dish_figures};
