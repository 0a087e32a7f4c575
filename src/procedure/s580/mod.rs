//! The published practice of cooker tests: ASAE S580.1.
//!
//! [`limits`] is its table of limits, [`in_force`] those that hold for a campaign,
//! [`intervals`] measures intervals from readings, [`screen`] sets aside those that the
//! practice does not let one use, for the reasons in [`reason`]; [`rated`] draws the line and reads the figure, [`uncertainty`] says how sure it
//! is, [`conformity`] weighs what is left by the findings in [`finding`], [`own_limits`] and
//! [`shortfall`]; [`predicted`], [`environment`] and [`stall`] hold the line against the runs.
//! [`result`] runs them in this order.

pub mod conformity;
pub mod environment;
pub mod finding;
pub mod guard;
pub mod in_force;
pub mod intervals;
pub mod limits;
pub mod notice;
pub mod own_limits;
pub mod predicted;
pub mod rated;
pub mod reason;
pub mod result;
pub mod screen;
pub mod shortfall;
pub mod stall;
pub mod uncertainty;

pub use in_force::Limits;
pub use result::{S580, rate};
