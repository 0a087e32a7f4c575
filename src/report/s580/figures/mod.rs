//! The power line and its scatter, and the day of each run.

mod condition_strip;
pub mod drawn;
pub mod power_line;
pub mod residuals;
pub mod run_day;
pub mod spread;
