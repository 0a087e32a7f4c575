//! A test day before it comes: when the sun will do, how often to aim, what to expect.
//!
//! [`pace`] says when in the day a run of a kind is read, [`day`] is the sun's day over the site, [`aim`] says when to re-aim, [`expect`] what a
//! cooker that is rated already should show; [`plan()`] puts them together.

pub mod aim;
pub mod day;
pub mod expect;
pub mod pace;
pub mod plan;

pub use plan::{Plan, plan, usual_kind};
