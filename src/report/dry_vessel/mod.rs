//! What tests of the dry vessel add to a report.

pub mod words;
