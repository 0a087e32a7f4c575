//! Writing outputs: each whole, or not at all.

use std::fs;
use std::io::Write;
use std::path::{Path, PathBuf};

use tempfile::{Builder, NamedTempFile};

use crate::error::{Error, Problem, Result};

/// One output: its file name and content.
pub struct Output {
    pub name: String,
    pub bytes: Vec<u8>,
}

/// Makes the output folder if it is not there, and tries that it can be written to.
///
/// # Errors
/// [`Error::Usage`] if it is a file, or cannot be made or written to.
pub fn prepare_folder(folder: &Path) -> Result<()> {
    if folder.is_file() {
        let problem = Problem::at(folder, "is a file, expected a folder");
        return Err(Error::Usage(
            problem.hint("choose another --out DIR").into(),
        ));
    }
    fs::create_dir_all(folder).map_err(|error| cannot("be made", folder, &error))?;
    temporary(folder).map(drop)
}

/// Writes all outputs: first each to a temporary file beside its place, then, when
/// all are complete, renames them over whatever stood there.
///
/// # Errors
/// [`Error::Usage`] if one cannot be written; then no older file has been touched
/// unless a rename itself fails.
pub fn write_all(folder: &Path, outputs: &[Output]) -> Result<Vec<PathBuf>> {
    let mut complete = Vec::new();
    for output in outputs {
        let path = folder.join(&output.name);
        if path.is_dir() {
            let problem = Problem::at(&path, "is a folder where a file has to go");
            return Err(Error::Usage(
                problem.hint("move it away, or choose another --out").into(),
            ));
        }
        let mut file = temporary(folder)?;
        file.write_all(&output.bytes)
            .and_then(|()| file.as_file().sync_all())
            .map_err(|error| cannot("be written", &path, &error))?;
        complete.push((file, path));
    }
    let mut written = Vec::new();
    for (file, path) in complete {
        file.persist(&path)
            .map_err(|error| cannot("be written", &path, &error.error))?;
        written.push(path);
    }
    Ok(written)
}

fn temporary(folder: &Path) -> Result<NamedTempFile> {
    let mut builder = Builder::new();
    builder.prefix(".simmerline-").suffix(".part");
    #[cfg(unix)]
    {
        use std::os::unix::fs::PermissionsExt;
        // Readable as any other new file; the umask still applies.
        builder.permissions(fs::Permissions::from_mode(0o666));
    }
    builder
        .tempfile_in(folder)
        .map_err(|error| cannot("be written to", folder, &error))
}

/// The kind of an error alone: its text would name our temporary file.
fn cannot(what: &str, path: &Path, error: &std::io::Error) -> Error {
    let problem = Problem::at(path, format!("cannot {what} ({})", error.kind()))
        .hint("choose a folder you may write to with --out DIR");
    Error::Usage(problem.into())
}
