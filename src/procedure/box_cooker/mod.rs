//! Box cookers: two figures of merit.
//!
//! [`figures`] finds them and the time to boil, [`finding`] names what weakens or prevents them.

pub mod figures;
pub mod finding;

pub use figures::{BoxFigures, box_figures};
