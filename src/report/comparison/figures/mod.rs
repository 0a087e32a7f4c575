//! The figures of a comparison.

pub mod dry_panels;
pub mod heating;
pub mod line_panels;
pub mod panel;
pub mod ranked;
pub mod strips;
