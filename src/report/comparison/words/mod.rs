//! Every string of a comparison, in the order of its pages.

pub mod causes;
pub mod differences;
pub mod report;
mod spoken;
pub mod tables;
