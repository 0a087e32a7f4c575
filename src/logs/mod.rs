//! From a log's bytes to valid readings in time order.
//!
//! In the order in which a reading travels: [`source`] unpacks the bytes, [`text`]
//! decodes them to lines, [`sheet`] takes a spreadsheet instead, with
//! [`shared_texts`], [`table`] cuts rows
//! into cells. [`layout`] finds the header; [`names`], by [`header_text`],
//! [`time_header`] and [`synonyms`], says what a header means, and [`columns`], by a
//! [`search`] with [`time_columns`] and [`column_units`], which [`sensor`] measures which
//! [`quantity`].
//! [`cells`] and [`times`] read numbers and times; [`walk`] goes through the rows, with
//! an eye on [`stretches`] out of order. [`frame`] orders them, [`aimings`] understands notes, [`smell`] questions and
//! [`assemble`] gathers the [`readings`], and [`join`] puts the logs of a run together.
//! [`mod@read`] runs all that for one log, as a [`request`] asks, and [`account`] keeps
//! how it was read. Used all the way: [`fold`] for words that are compared, [`quote`] for
//! what a message shows, [`notice`] for what a reader should know. [`unnamed`] looks for logs
//! that no run names.

pub mod account;
pub mod aimings;
pub mod assemble;
pub mod cells;
pub mod column_units;
pub mod columns;
pub mod fold;
pub mod frame;
pub mod header_text;
pub mod join;
pub mod layout;
pub mod names;
pub mod notice;
pub mod quantity;
pub mod quote;
pub mod read;
pub mod readings;
pub mod request;
pub mod search;
pub mod sensor;
pub mod shared_texts;
pub mod sheet;
pub mod smell;
pub mod source;
pub mod stretches;
pub mod synonyms;
pub mod table;
pub mod text;
pub mod time_columns;
pub mod time_header;
pub mod times;
pub mod unnamed;
pub mod walk;

pub use join::{Log, Part, read_each_log, read_log_of, read_logs};
pub use notice::LogNotice;
pub use readings::{Readings, Series};
