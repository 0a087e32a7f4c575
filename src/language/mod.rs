//! Everything said to people, in any of the report's languages.
//!
//! A [`Message`] is data: the name of a message and what goes into it. [`Words`] puts it
//! into a language by the message files in `templates/languages` (Fluent). To print a
//! message is to say it in English.

mod message;
mod paired;
mod phrase;
mod unit_system;
mod words;

pub use message::Message;
pub use paired::PairedUnit;
pub use phrase::{
    Phrase, celsius, clauses, clock, date, duration, fixed, joined, kelvins, kilograms,
    kilograms_per_square_metre, listed, litres, metres, metres_per_second, p_value, paired_number,
    probability, range, short, spread_clock, square_metres, unit_symbol, within_brackets,
};
pub use unit_system::UnitSystem;
pub use words::{LANGUAGES, Language, STILL_TO_TRANSLATE, Words};
