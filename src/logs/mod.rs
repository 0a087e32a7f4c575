//! From a log's bytes to valid readings in time order.
//!
//! [`text`] decodes, [`table`] finds the header and walks the rows, [`columns`]
//! says which column is which quantity, [`cells`] and [`clock`] read numbers and
//! times, [`frame`] orders the rows, and [`smell`] questions the result.
//! Another dialect is another way into [`table::Table`]; nothing after it changes.

pub mod cells;
pub mod clock;
pub mod columns;
pub mod frame;
pub mod read;
pub mod readings;
pub mod smell;
pub mod table;
pub mod text;

pub use read::{Log, read_log};
pub use readings::{Readings, Series};
