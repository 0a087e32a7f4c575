//! Files on disk: each whole or not at all, and one campaign's outputs together.
//!
//! A file is first written under a name of its own (`part`), and renamed when it is whole.
//! Outputs that belong together are listed before the first is renamed (`unfinished`), so
//! that a call that is killed in between leaves a list that the next one works off. Whoever
//! writes holds the folder's lock: what is unfinished in a locked folder is of a killed call.

mod beside;
mod extract;
mod output;
mod part;
mod place;
mod unfinished;
mod workplace;

pub use beside::{Apart, not_together};
pub use extract::copy_new;
pub use output::{FileFacts, Output, sha256_of};
pub use place::{prepare_folder, remove_file, replace_file, try_folder, write_all};
pub use workplace::{Workplace, no_room, workplace};
