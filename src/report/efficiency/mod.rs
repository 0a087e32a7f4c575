//! What energy and exergy add to a report: [`words`], [`peak`], their figure, and [`data`].

pub mod data;
pub mod peak;
pub mod words;
