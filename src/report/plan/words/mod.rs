//! The plan in words ([`day`], [`facts`] by the kind of run), and as a field sheet for a pencil
//! ([`sheet`]).

pub mod day;
pub mod facts;
pub mod sheet;
