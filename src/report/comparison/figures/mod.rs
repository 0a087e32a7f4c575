//! The figure of a comparison.

pub mod compared_lines;
