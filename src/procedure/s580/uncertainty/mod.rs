//! How sure the rating is, and why.
//!
//! [`sensitivity`] says what an error that all intervals share does to the line, [`days`]
//! tells the scatter of intervals from that of days, [`budget`] puts both together at any
//! place of the line, [`limiting`] names what limits it most, [`trials`] checks it by drawing,
//! [`outlook`] says what more data would bring, and [`evaluate()`] does all of it for a
//! campaign.

pub mod budget;
pub mod days;
pub mod evaluate;
pub mod limiting;
pub mod outlook;
pub mod sensitivity;
mod step;
pub mod trials;

pub use budget::{Budget, LineUncertainty};
pub use evaluate::{RatingUncertainty, evaluate};
