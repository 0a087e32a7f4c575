//! What tests of the dry vessel add to a report.

pub mod data;
pub mod words;
