//! Whether a file changed, from its metadata alone.

use std::collections::BTreeMap;
use std::fs::Metadata;
use std::path::{Path, PathBuf};
use std::time::SystemTime;

/// What the file system says of a file, without its bytes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Mark {
    /// Bytes.
    pub length: u64,
    pub modified: Option<SystemTime>,
    /// Another file of the same name has another one, where the system numbers its files.
    number: u64,
}

impl Mark {
    /// Of a file or a folder; `None` where it is not there or may not be looked at.
    pub fn of(path: &Path) -> Option<Mark> {
        let metadata = std::fs::metadata(path).ok()?;
        Some(Mark {
            length: metadata.len(),
            modified: metadata.modified().ok(),
            number: number(&metadata),
        })
    }
}

#[cfg(unix)]
fn number(metadata: &Metadata) -> u64 {
    std::os::unix::fs::MetadataExt::ino(metadata)
}

#[cfg(not(unix))]
fn number(_: &Metadata) -> u64 {
    0
}

/// The marks of some files.
pub type Marks = BTreeMap<PathBuf, Option<Mark>>;

/// Looks at files, each once.
pub fn marks<'p>(paths: impl Iterator<Item = &'p Path>) -> Marks {
    paths
        .map(|path| (path.to_owned(), Mark::of(path)))
        .collect()
}
