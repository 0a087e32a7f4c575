//! A comparison on paper and as data: [`words`] fix its strings, [`figures`] draw, [`data`]
//! are its results for other programs, and [`outputs`] puts the files together.

pub mod data;
pub mod figures;
pub mod names;
pub mod outputs;
pub mod words;
