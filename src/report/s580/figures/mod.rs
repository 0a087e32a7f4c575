//! The power line and its scatter, and the day of each run.

mod condition_strip;
pub mod condition_tracks;
pub mod drawn;
mod power_labels;
pub mod power_line;
pub mod rating_interval;
pub mod residuals;
pub mod run_aims;
pub mod run_axes;
mod run_clock;
mod run_curves;
pub mod run_day;
mod run_panel;
