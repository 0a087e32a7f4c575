//! From a log's bytes to valid readings in time order.
//!
//! In the order in which a reading travels: [`source`] unpacks the bytes, [`text`]
//! decodes them to lines, [`sheet`] takes a spreadsheet instead, [`table`] cuts rows
//! into cells; [`layout`] finds the header, [`names`] and [`columns`] say which column
//! is which quantity in which unit; [`cells`], [`dates`] and [`times`] read numbers and
//! times, [`clock`] knows the zone; [`walk`] goes through the rows; [`frame`] orders
//! them, [`smell`] questions the result, and [`join`] puts the logs of a run together.
//! [`account`] keeps how a log was read.

pub mod account;
pub mod cells;
pub mod clock;
pub mod columns;
pub mod dates;
pub mod frame;
pub mod join;
pub mod layout;
pub mod names;
pub mod read;
pub mod readings;
pub mod sheet;
pub mod smell;
pub mod source;
pub mod table;
pub mod text;
pub mod times;
pub mod walk;

pub use join::{Log, read_logs};
pub use readings::{Readings, Series};
