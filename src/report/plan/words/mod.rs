//! The plan in words ([`day`]), and as a field sheet for a pencil ([`sheet`]).

pub mod day;
pub mod sheet;
