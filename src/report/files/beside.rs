//! Whether the files beside a report are of its edition.

use std::fmt;
use std::io;
use std::path::Path;

use super::output::FileFacts;
use super::unfinished::{is, list_of};
use crate::error::why_of_kind;

/// Why a report and the files beside it are not of one edition.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Apart {
    /// Writing them was interrupted, or is still going on.
    Unfinished,
    /// A file beside it has other content than the report carries under this name.
    Other { name: String },
    /// A file beside it cannot be read.
    Unreadable { name: String, why: io::ErrorKind },
}

impl fmt::Display for Apart {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Apart::Unfinished => write!(
                f,
                "writing this report and its files was interrupted or is going on: write them again with simmerline report"
            ),
            Apart::Other { name } => write!(
                f,
                "{name} beside it is of another edition: it is not the file that the report carries"
            ),
            Apart::Unreadable { name, why } => {
                write!(f, "{name} beside it cannot be read: {}", why_of_kind(*why))
            }
        }
    }
}

/// What in a folder is not of one edition with the report of a campaign there: its own files
/// by the names, lengths and SHA-256 with which the report carries them. A file that is not
/// there is no fault. The web page carries nothing, so nothing is said of it.
pub fn not_together(folder: &Path, campaign: &str, carried: &[FileFacts]) -> Vec<Apart> {
    let mut apart = Vec::new();
    if list_of(folder, campaign).exists() {
        apart.push(Apart::Unfinished);
    }
    for facts in carried {
        let path = folder.join(&facts.name);
        let name = facts.name.clone();
        match is(&path, facts) {
            Ok(false) if path.symlink_metadata().is_ok() => apart.push(Apart::Other { name }),
            Ok(_) => {}
            Err(error) => apart.push(Apart::Unreadable {
                name,
                why: error.kind(),
            }),
        }
    }
    apart
}
