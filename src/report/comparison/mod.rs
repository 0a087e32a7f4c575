//! A comparison on paper and as data: [`words`] and [`differences`] fix its strings,
//! [`comparison_json`] and [`comparison_csv`] are the results as data, and
//! [`outputs`] puts the files together.

pub mod comparison_csv;
pub mod comparison_json;
pub mod differences;
pub mod outputs;
pub mod tables;
pub mod words;
