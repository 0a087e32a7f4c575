//! Where the files are that a campaign file names.

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

/// What to do about a file that is not among those attached to a report.
pub const NOT_ATTACHED: &str = "it is not attached: ask for a report that carries all its evidence";

/// Where the logs and the photo are looked for.
#[derive(Debug, Clone, Copy)]
pub enum NamedFiles<'f> {
    /// Where their names lead from the campaign's folder.
    From(&'f Path),
    /// Among these, by the names that the campaign file gives them. No other file is looked
    /// at, wherever a name may lead: the campaign file is not trusted.
    Only(&'f BTreeMap<String, PathBuf>),
}

impl NamedFiles<'_> {
    /// Where a file would be; a path that leads nowhere if it is none of those allowed.
    pub fn path(self, name: &str) -> PathBuf {
        match self {
            NamedFiles::From(folder) => folder.join(name),
            NamedFiles::Only(files) => files.get(name).cloned().unwrap_or_default(),
        }
    }

    /// What to do about one that is not there.
    pub fn remedy(self) -> String {
        match self {
            NamedFiles::From(folder) => {
                format!("put it into {}, or correct the name", folder.display())
            }
            NamedFiles::Only(_) => NOT_ATTACHED.to_owned(),
        }
    }

    /// Whether the campaign file comes from who runs the program.
    pub fn is_own(self) -> bool {
        matches!(self, NamedFiles::From(_))
    }
}
