//! Limits, intervals, line, conformity and uncertainty as data.

pub mod conformity;
pub mod interval_columns;
pub mod intervals;
pub mod rating;
pub mod rating_columns;
pub mod uncertainty;
