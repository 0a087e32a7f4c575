//! Energy and exergy: what share of the sunlight the water keeps.
//!
//! [`shares`] finds both over the sound intervals, each a [`step`], [`peak`] the highest rate at
//! which the water gains exergy, and [`finding`] names what weakens them.

pub mod finding;
pub mod peak;
pub mod shares;
pub mod step;

pub use shares::{Efficiency, efficiency};
