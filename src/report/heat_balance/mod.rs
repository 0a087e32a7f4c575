//! What the heat balance adds to a report: its [`words`] with the [`acceptance_words`], [`figures`] and [`data`].

pub mod acceptance_words;
pub mod data;
pub mod figures;
pub mod words;
