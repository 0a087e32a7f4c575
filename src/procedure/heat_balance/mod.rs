//! The heat balance: what the cooker gains from the sun and loses to the air.
//!
//! [`fit()`] finds gain and loss over all sound intervals, and [`balance`] is what can be said
//! with them at any irradiance; [`finding`] names what weakens it. Where readings are too far apart
//! for an interval of the practice, it rests on those that [`mod@far_apart`] makes.

pub mod balance;
pub mod far_apart;
pub mod finding;
pub mod fit;

pub use balance::HeatBalance;
pub use fit::{Heat, fit};
