//! A log's times to instants.
//!
//! [`tokens`] cuts a written time into pieces, [`time_of_day`] and [`dates`] read them, by
//! the words of [`calendar`], to what is [`written`]; [`cells`] puts the time cells of a
//! row together; [`survey`] settles for the whole column how it is to be read, which is
//! [`rules`]; [`reader`] reads it row by row, by the zone of [`clock`].

pub mod calendar;
pub mod cells;
pub mod clock;
pub mod dates;
pub mod reader;
pub mod rules;
pub mod survey;
pub mod time_of_day;
pub mod tokens;
pub mod written;
