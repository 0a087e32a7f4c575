//! A field sheet that a person types in: line by line, or from a text file.
//!
//! [`form`] has what holds for a whole sheet, by the kind of its run, [`value`] reads one value
//! and [`mod@line`] one line, [`sheet`] holds the lines of one run and is the log's
//! text, [`start`] says when its times begin, [`desk`] is what a typed line does,
//! [`free_clock`] and [`free_line`] read what people write where no sheet is before them,
//! [`notes`] what such notes say as a whole, [`text_file`] reads a whole text file, and [`run_table`] adds the run to `campaign.toml`,
//! with what [`own_rules`] says of how the log is written.

pub mod desk;
pub mod form;
pub mod free_clock;
pub mod free_line;
pub mod line;
pub mod notes;
pub mod own_rules;
pub mod run_table;
pub mod sheet;
pub mod start;
pub mod text_file;
pub mod value;
