//! Box cookers: two figures of merit.
//!
//! [`formulas`] has them and the rises of the water that they take, [`figures`] finds them with the
//! time to boil, and [`told`] says what weakens or prevents them, by the codes in [`finding`].

pub mod figures;
pub mod finding;
pub mod formulas;
pub mod told;

pub use figures::{BoxFigures, box_figures};
