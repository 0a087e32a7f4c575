//! From a log's bytes to valid readings in time order.
//!
//! In the order in which a reading travels: [`source`] unpacks the bytes, [`text`]
//! decodes them to lines, [`sheet`] takes a spreadsheet instead, [`table`] cuts rows
//! into cells; [`layout`] finds the header, [`names`] by [`synonyms`], [`time_columns`] and [`columns`] say which column
//! is which [`quantity`], read by which [`sensor`]; [`cells`] and [`times`] read numbers and
//! times; [`walk`] goes through the rows; [`frame`] orders
//! them, [`smell`] questions and [`assemble`] gathers the result, and [`join`] puts the logs of a run together.
//! [`account`] keeps how a log was read.

pub mod account;
pub mod assemble;
pub mod cells;
pub mod columns;
pub mod frame;
pub mod join;
pub mod layout;
pub mod names;
pub mod quantity;
pub mod read;
pub mod readings;
pub mod sensor;
pub mod sheet;
pub mod smell;
pub mod source;
pub mod synonyms;
pub mod table;
pub mod text;
pub mod time_columns;
pub mod times;
pub mod walk;

pub use join::{Log, read_logs};
pub use readings::{Readings, Series};
