//! The acceptance half angle: how far the sun may stand off the axis of a cooker that is aimed
//! now and then, from the sawtooth that its power shows.
//!
//! [`teeth`] takes a run apart at its aimings, [`fall`] is how gain falls with the angle,
//! [`fit()`] finds the angle over all teeth by [`squares`], and [`finding`] names what prevents it.

pub mod fall;
pub mod finding;
pub mod fit;
pub mod squares;
pub mod teeth;

pub use fit::{Acceptance, HalfAngle, fit};
