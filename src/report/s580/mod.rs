//! What ASAE S580.1 adds to a report: its [`words`], [`figures`] and [`data`].

pub mod data;
pub mod figures;
pub mod lanes;
mod run_grid;
pub mod shown_runs;
pub mod words;
