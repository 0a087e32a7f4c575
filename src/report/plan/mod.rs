//! The plan of a test day in words ([`words`]), and as a field sheet for a pencil
//! ([`sheet`]).

pub mod sheet;
pub mod words;
