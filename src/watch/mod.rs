//! A test day while it runs: the logs that grow, and what the person at the cooker has to know.
//!
//! In the order in which a row travels: [`mark`] sees that a file changed, [`whole_lines`] leaves
//! out a line that is only half written, [`known`] reads campaign and logs and has them assessed
//! as `check` does, [`tail`] adds the rows that came since without reading the rest again,
//! [`arrival`] is when they came,
//! [`growing`] the interval that runs now and what would spoil it, [`day`] the hours of sun
//! and when to aim, [`trouble`] what is not as it should be. [`watcher`] does all of it at every
//! look, and [`state`] is what it saw, for whoever shows it.

pub mod arrival;
pub mod day;
pub mod growing;
pub mod known;
pub mod mark;
pub mod state;
pub mod tail;
pub mod trouble;
pub mod watcher;
pub mod whole_lines;

pub use arrival::Now;
pub use state::State;
pub use watcher::{Look, Watcher};
