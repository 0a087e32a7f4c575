//! A comparison on paper and as data: [`words`] fix its strings, [`figures`] draw, [`data`]
//! are its results for other programs, and [`outputs`] puts the files together. [`ranking()`] is for
//! any page that ranks campaigns.

pub mod data;
pub mod figures;
pub mod names;
pub mod outputs;
pub mod ranking;
pub mod words;

pub use ranking::ranking;
