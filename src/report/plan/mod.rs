//! The plan of a test day in [`words`].

pub mod words;
