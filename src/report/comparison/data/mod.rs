//! A comparison as data, in full precision.

pub mod csv;
pub mod json;
mod pairs;
