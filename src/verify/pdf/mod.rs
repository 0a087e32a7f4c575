//! A report's PDF, taken apart. Everything that knows lopdf is in this folder.
//!
//! The file may have been made to do harm: nothing in it is believed before it is checked,
//! nothing is unpacked beyond a bound, and no path of references is followed without end.

mod content;
mod drawing;
mod file;
mod metadata;
mod same;
mod tree;
mod unpack;
mod whole;

pub use drawing::Page;
pub use file::{Embedded, Imprint, Pdf};
pub use same::{Difference, Part};
pub use unpack::Fault;
