//! Every string of a comparison, in the order of its pages.

pub mod beside;
pub mod causes;
pub mod differences;
pub mod dry;
pub mod ranking;
pub mod report;
mod spoken;
pub mod status;
pub mod tables;
