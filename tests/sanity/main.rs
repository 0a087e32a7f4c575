//! Campaigns that make no sense, and what is said about them.
//!
//! All campaigns and readings are invented: closed-form water temperatures, written to a
//! folder of their own and rated by the library.

mod bad_input;
mod results;
mod template;
mod trial;
