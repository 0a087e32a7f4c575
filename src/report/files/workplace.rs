//! A folder for what is needed only while a call runs.

use std::fs;
use std::io;
use std::path::Path;
use std::time::{Duration, Instant};

use tempfile::{Builder, TempDir};

use super::part::{PREFIX, SUFFIX, listed, wait_for};
use crate::error::{Error, Problem, Result, why_of_kind};

/// So often another call may take a new folder for a leftover before it is locked.
const TRIES: usize = 20;
const PATIENCE: Duration = Duration::from_secs(60);

/// A folder in the one for temporary files; it is removed with this value. That of a call
/// that was killed is removed by the next.
pub struct Workplace {
    // Removed before its lock is given back.
    folder: TempDir,
    _lock: Option<fs::File>,
}

impl Workplace {
    pub fn path(&self) -> &Path {
        self.folder.path()
    }
}

/// A new folder of our own, where the system has such things.
///
/// # Errors
/// [`Error::Usage`] if there is no room for it.
pub fn workplace() -> Result<Workplace> {
    let place = std::env::temp_dir();
    remove_leftovers(&place);
    for _ in 0..TRIES {
        let mut builder = Builder::new();
        let folder = builder.prefix(PREFIX).suffix(SUFFIX).tempdir_in(&place);
        let folder = folder.map_err(|error| no_room(&error))?;
        let lock = wait_for(folder.path(), Instant::now() + PATIENCE);
        let lock = lock.map_err(|error| no_room(&error))?;
        // Between the two, another call may have taken it for a leftover.
        if folder.path().is_dir() {
            return Ok(Workplace {
                folder,
                _lock: lock,
            });
        }
    }
    Err(no_room(&io::ErrorKind::NotFound.into()))
}

/// Why the folder for temporary files cannot be used, and what to do about it.
pub fn no_room(error: &io::Error) -> Error {
    let what = format!(
        "the folder for temporary files cannot be used: {}",
        why_of_kind(error.kind())
    );
    let hint = "make room there, or set TMPDIR to a folder that you may write to";
    Error::Usage(Problem::at(&std::env::temp_dir(), what).hint(hint).into())
}

/// Removes the folders that nobody has locked.
fn remove_leftovers(place: &Path) {
    // A folder that cannot be listed may still take a new one.
    for path in listed(place).unwrap_or_default() {
        let is_folder = fs::symlink_metadata(&path).is_ok_and(|of| of.is_dir());
        if is_folder && let Ok(Some(_lock)) = wait_for(&path, Instant::now()) {
            // It does no harm, and may be of somebody else: the next call tries again.
            let _not_ours_to_remove = fs::remove_dir_all(&path);
        }
    }
}
