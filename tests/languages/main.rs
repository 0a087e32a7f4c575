//! The message files: whole, translated, used, and safe.

mod files;
mod reports;
