//! Logs that a document names by their SHA-256 alone: they are looked for in one folder.

use std::fs;
use std::io;
use std::path::{Path, PathBuf};

use crate::bounds::CARRIED_LOG;
use crate::error::why;
use crate::logs::source::Source;
use crate::report::is_plain;

/// Where the logs are that a document does not carry.
#[derive(Debug, Clone)]
pub struct Beside {
    folder: PathBuf,
    /// Longest log that goes inside without being asked for, bytes.
    pub largest_log: u64,
}

/// A log that is looked for, as the results state it.
pub struct Wanted<'w> {
    /// Names that it may have in the folder.
    pub names: Vec<String>,
    pub sha256: &'w str,
    pub bytes: u64,
}

impl Beside {
    /// In a folder.
    pub fn folder(folder: &Path) -> Self {
        Beside {
            folder: folder.to_path_buf(),
            largest_log: CARRIED_LOG.most,
        }
    }

    /// The same, where another length than that of the rule decides what goes inside.
    #[must_use]
    pub fn with_largest_log(self, largest_log: u64) -> Self {
        Beside {
            largest_log,
            ..self
        }
    }

    /// The log: only the file that has the stated length and SHA-256 is it.
    ///
    /// # Errors
    /// In words, what is there instead.
    pub fn find(&self, wanted: &Wanted<'_>) -> Result<PathBuf, String> {
        let mut others = Vec::new();
        let mut seen: Vec<&String> = Vec::new();
        for name in &wanted.names {
            // The name is a stranger's: it may not lead out of the folder.
            if !is_plain(name) || seen.contains(&name) {
                continue;
            }
            seen.push(name);
            let path = self.folder.join(name);
            match other_than(&path, wanted) {
                Ok(None) => return Ok(path),
                Ok(Some(other)) => others.push(format!("{} {other}", path.display())),
                Err(error) if error.kind() == io::ErrorKind::NotFound => {}
                Err(error) => {
                    others.push(format!(
                        "{} cannot be read: {}",
                        path.display(),
                        why(&error)
                    ));
                }
            }
        }
        let folder = match self.folder.as_os_str().is_empty() {
            true => Path::new("."),
            false => &self.folder,
        };
        match others.is_empty() {
            true => Err(format!("it is not in {}", folder.display())),
            false => Err(others.join(", ")),
        }
    }
}

/// What a file is, if it is not the one that is looked for.
fn other_than(path: &Path, wanted: &Wanted<'_>) -> io::Result<Option<String>> {
    let facts = fs::metadata(path)?;
    if !facts.is_file() {
        return Ok(Some("is no file".to_owned()));
    }
    // The length first: it is told without reading.
    if facts.len() != wanted.bytes {
        return Ok(Some(format!("is another file, of {} bytes", facts.len())));
    }
    let sha256 = Source::File(path).hashed("")?.sha256;
    Ok((sha256 != wanted.sha256).then(|| format!("is another file, of SHA-256 {sha256}")))
}
