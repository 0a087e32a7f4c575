//! A log's times to instants.
//!
//! [`dates`] takes one written time apart, by the words of [`calendar`]; [`cells`] puts
//! the time cells of a row together; [`survey`] settles for the whole column how it is to
//! be read, which is [`rules`]; [`reader`] reads it row by row, by the zone of [`clock`].

pub mod calendar;
pub mod cells;
pub mod clock;
pub mod dates;
pub mod reader;
pub mod rules;
pub mod survey;
