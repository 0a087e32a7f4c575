//! What the figures of a concentrating cooker add to a report: [`words`], [`falls`], their
//! figure, and [`data`].

pub mod data;
pub mod falls;
pub mod words;
