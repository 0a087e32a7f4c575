//! What the figures of a box cooker add to a report: [`words`], [`heating`], their figure, and
//! [`data`].

pub mod data;
pub mod heating;
pub mod words;
