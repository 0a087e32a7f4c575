//! The test of a dry, empty vessel.

pub mod stagnation;

pub use stagnation::{Stagnation, stagnations};
