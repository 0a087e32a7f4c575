//! The figures of a comparison.

pub mod compared_heating;
pub mod compared_lines;
