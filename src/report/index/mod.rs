//! The web page that leads to the reports of one call: [`words`] fix its strings, and
//! [`outputs`] puts the file together.

pub mod outputs;
pub mod words;
