//! Intervals, line and uncertainty as data.

pub mod intervals;
pub mod rating;
pub mod uncertainty;
