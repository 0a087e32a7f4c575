//! What the heat balance adds to a report: its [`words`], [`figures`] and [`data`].

pub mod data;
pub mod figures;
pub mod words;
