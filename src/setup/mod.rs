//! A new campaign by question and answer: [`place`] and [`opening`] read what people write,
//! [`answers`] keeps it, [`questions`] asks and checks, [`interview`] leads from one question to
//! the next and back, and [`filled`] writes the campaign file that follows.

pub mod answers;
pub mod filled;
pub mod interview;
pub mod opening;
pub mod place;
pub mod questions;
pub mod zones;
