//! A test day before it comes: when the sun will do, how often to aim, what to expect.
//!
//! [`day`] is the sun's day over the site, [`aim`] says when to re-aim, [`expect`] what a
//! cooker that is rated already should show; [`plan()`] puts them together.

pub mod aim;
pub mod day;
pub mod expect;
pub mod plan;

pub use plan::{Plan, plan};
