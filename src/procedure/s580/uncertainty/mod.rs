//! How sure the rating is, and why.
//!
//! [`of_line`] is the uncertainty anywhere along the line, by the kit that all procedures
//! share, [`days`] shows what days and neighbours do, [`limiting`] names what limits the figure
//! most, [`outlook`] says what more data would bring, and [`evaluate()`] does all of it for a
//! campaign.

pub mod days;
pub mod evaluate;
pub mod limiting;
pub mod of_line;
pub mod outlook;

pub use evaluate::{RatingUncertainty, evaluate};
pub use of_line::LineUncertainty;
