//! The message files: whole, translated, used, and safe.

mod arguments;
mod code;
mod files;
mod listed;
mod release;
mod reports;
