//! The figures of a comparison.

pub mod compared_heating;
pub mod compared_lines;
pub mod ranked;
pub mod strips;
