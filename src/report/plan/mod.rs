//! The plan of a test day in [`words`], and its field sheet as a file ([`outputs`]).

pub mod data;
pub mod outputs;
pub mod words;
