//! How sure the rating is, and why.
//!
//! [`sources`] lists the errors that all intervals share, [`days`] tells the scatter of
//! intervals from that of days, [`budget`] puts both together at any place of the line,
//! [`trials`] checks it by drawing, [`outlook`] says what more data would bring, and
//! [`evaluate()`] does all of it for a campaign.

pub mod budget;
pub mod days;
pub mod evaluate;
pub mod outlook;
pub mod sources;
mod step;
pub mod trials;

pub use budget::{Budget, LineUncertainty};
pub use evaluate::{RatingUncertainty, evaluate};
