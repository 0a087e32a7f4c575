//! Figures as SVG, drawn with plotters; text in a font that the report embeds.
//!
//! Everything that knows plotters is in this folder.

mod bands;
pub mod compared_lines;
pub mod condition_strip;
mod fit;
mod key;
pub mod marks;
pub mod power_line;
pub mod residuals;
pub mod run_day;
pub mod spread;
pub mod style;
