//! Files that are not whole yet, and the lock of the folder that they are in.

use std::fs::{self, File, TryLockError};
use std::io::{self, Write};
use std::path::{Path, PathBuf};
use std::thread;
use std::time::{Duration, Instant};

use tempfile::{Builder, NamedTempFile};

/// How the name of whatever is not whole yet begins and ends.
pub const PREFIX: &str = ".simmerline-";
pub const SUFFIX: &str = ".part";

/// Longest that another call is waited for; it holds the lock only while it writes.
const PATIENCE: Duration = Duration::from_secs(60);
const PAUSE: Duration = Duration::from_millis(5);

/// A folder in which nobody else writes while this value lives.
///
/// The system takes the lock back from a call that is killed. Where a folder cannot be locked
/// (some network shares, Windows) two calls are not kept apart, and nothing is cleared away,
/// since it may be of a call that still runs.
pub struct Locked<'f> {
    pub folder: &'f Path,
    handle: Option<File>,
}

impl<'f> Locked<'f> {
    /// Waits for the lock of a folder.
    ///
    /// # Errors
    /// [`io::ErrorKind::ResourceBusy`] if another call has held it for a minute.
    pub fn wait(folder: &'f Path) -> io::Result<Self> {
        let handle = wait_for(folder, Instant::now() + PATIENCE)?;
        Ok(Locked { folder, handle })
    }

    /// Whether nobody else can be writing here.
    pub fn is_alone(&self) -> bool {
        self.handle.is_some()
    }

    /// Names of the files that killed calls have not finished.
    ///
    /// # Errors
    /// If the folder cannot be listed.
    pub fn leftovers(&self) -> io::Result<Vec<PathBuf>> {
        if !self.is_alone() {
            return Ok(Vec::new());
        }
        let mut found = listed(self.folder)?;
        found.retain(|path| fs::symlink_metadata(path).is_ok_and(|of| of.is_file()));
        Ok(found)
    }

    /// Puts the folder's own entries on the disk, so that a power cut keeps their order.
    ///
    /// # Errors
    /// If the disk fails; not where folders have no such call.
    pub fn sync(&self) -> io::Result<()> {
        match self.handle.as_ref().map(File::sync_all) {
            Some(Err(error)) if error.kind() != io::ErrorKind::InvalidInput => Err(error),
            _ => Ok(()),
        }
    }

    /// Tries that a file can be made here.
    ///
    /// # Errors
    /// If it cannot.
    pub fn try_part(&self) -> io::Result<()> {
        temporary(self.folder).map(drop)
    }

    /// Writes a file under a name of its own; it is gone again unless it is kept.
    ///
    /// # Errors
    /// If it cannot be written whole.
    pub fn write_part(&self, write: impl FnOnce(&mut File) -> io::Result<()>) -> io::Result<Part> {
        let mut part = temporary(self.folder)?;
        write(part.as_file_mut())?;
        part.as_file().sync_all()?;
        Ok(Part(part))
    }
}

/// A file that is whole, and not in its place yet.
pub struct Part(NamedTempFile);

impl Part {
    /// Its name in the folder.
    pub fn name(&self) -> String {
        let name = self.0.path().file_name().unwrap_or_default();
        name.to_string_lossy().into_owned()
    }

    pub fn file(&self) -> &File {
        self.0.as_file()
    }

    /// Renames it over whatever is there.
    ///
    /// # Errors
    /// If that fails; the part is then gone.
    pub fn put(self, place: &Path) -> io::Result<()> {
        self.0.persist(place).map_err(|error| error.error)?;
        Ok(())
    }

    /// Renames it to where nothing is yet.
    ///
    /// # Errors
    /// If something is there, or that fails; the part is then gone.
    pub fn put_new(self, place: &Path) -> io::Result<()> {
        let put = self.0.persist_noclobber(place);
        put.map_err(|error| error.error)?;
        Ok(())
    }

    /// Leaves it where it is.
    ///
    /// # Errors
    /// If the system does not let it stay.
    pub fn keep(self) -> io::Result<()> {
        self.0.keep().map_err(|error| error.error)?;
        Ok(())
    }
}

/// Bytes, as [`Locked::write_part`] takes them.
pub fn content(bytes: &[u8]) -> impl FnOnce(&mut File) -> io::Result<()> {
    move |file| file.write_all(bytes)
}

/// Whether a name is one of ours for what is not whole yet.
pub fn is_part(name: &str) -> bool {
    name.len() > PREFIX.len() + SUFFIX.len() && name.starts_with(PREFIX) && name.ends_with(SUFFIX)
}

/// Everything in a folder that has a name for what is not whole yet.
///
/// # Errors
/// If the folder cannot be listed.
pub fn listed(folder: &Path) -> io::Result<Vec<PathBuf>> {
    let mut found = Vec::new();
    for entry in fs::read_dir(folder)? {
        let entry = entry?;
        if entry.file_name().to_str().is_some_and(is_part) {
            found.push(entry.path());
        }
    }
    Ok(found)
}

/// A folder, locked; `None` where it cannot be.
///
/// # Errors
/// [`io::ErrorKind::ResourceBusy`] if somebody else still holds it at the end.
pub fn wait_for(folder: &Path, until: Instant) -> io::Result<Option<File>> {
    let Ok(handle) = File::open(folder) else {
        return Ok(None);
    };
    loop {
        match handle.try_lock() {
            Ok(()) => return Ok(Some(handle)),
            Err(TryLockError::Error(_)) => return Ok(None),
            Err(TryLockError::WouldBlock) if Instant::now() < until => thread::sleep(PAUSE),
            Err(TryLockError::WouldBlock) => return Err(io::ErrorKind::ResourceBusy.into()),
        }
    }
}

fn temporary(folder: &Path) -> io::Result<NamedTempFile> {
    let mut builder = Builder::new();
    builder.prefix(PREFIX).suffix(SUFFIX);
    #[cfg(unix)]
    {
        use std::os::unix::fs::PermissionsExt;
        // Readable as any other new file; the umask still applies.
        builder.permissions(fs::Permissions::from_mode(0o666));
    }
    builder.tempfile_in(folder)
}
