//! Writing outputs: each whole, or not at all.

use std::fs;
use std::io::{self, Write};
use std::path::{Path, PathBuf};

use tempfile::{Builder, NamedTempFile};

use crate::error::{Error, Problem, Result};
use crate::hash::sha256_hex;

/// What to do where a report cannot be written.
const OTHER_OUT: &str = "choose a folder you may write to with --out DIR";

/// One output: its file name and content.
pub struct Output {
    pub name: String,
    pub bytes: Vec<u8>,
}

/// What can be said of an output without its content.
#[derive(Debug, Clone)]
pub struct FileFacts {
    pub name: String,
    /// Length in bytes.
    pub length: usize,
    /// SHA-256, lower-case hex.
    pub sha256: String,
}

impl Output {
    /// Its name, length and hash.
    pub fn facts(&self) -> FileFacts {
        FileFacts {
            name: self.name.clone(),
            length: self.bytes.len(),
            sha256: sha256_hex(&self.bytes),
        }
    }
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
    fs::create_dir_all(folder).map_err(|error| cannot("be made", folder, &error, OTHER_OUT))?;
    try_folder(folder, OTHER_OUT)
}

/// Tries that a file can be made in a folder; `hint` says what to do if not.
///
/// # Errors
/// [`Error::Usage`] if it cannot.
pub fn try_folder(folder: &Path, hint: &str) -> Result<()> {
    let tried = temporary(folder);
    tried
        .map(drop)
        .map_err(|error| cannot("be written to", folder, &error, hint))
}

/// Puts bytes in the place of a file, or where none is yet: first into a temporary file
/// beside it, which is then renamed. `hint` says what to do if that fails.
///
/// # Errors
/// [`Error::Usage`] if it cannot be written; the older file is then as it was.
pub fn replace_file(path: &Path, bytes: &[u8], hint: &str) -> Result<()> {
    // What a link leads to is replaced, not the link.
    let target = fs::canonicalize(path).unwrap_or_else(|_| path.to_path_buf());
    let failed = |error: std::io::Error| cannot("be written", path, &error, hint);
    let folder = match target.parent() {
        Some(folder) if folder != Path::new("") => folder,
        _ => Path::new("."),
    };
    let mut file = temporary(folder).map_err(failed)?;
    if let Ok(older) = fs::metadata(&target) {
        let permissions = older.permissions();
        if permissions.readonly() {
            return Err(failed(std::io::ErrorKind::PermissionDenied.into()));
        }
        file.as_file()
            .set_permissions(permissions)
            .map_err(failed)?;
    }
    file.write_all(bytes)
        .and_then(|()| file.as_file().sync_all())
        .map_err(failed)?;
    file.persist(&target).map_err(|error| failed(error.error))?;
    Ok(())
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
        let mut file = temporary(folder)
            .map_err(|error| cannot("be written to", folder, &error, OTHER_OUT))?;
        file.write_all(&output.bytes)
            .and_then(|()| file.as_file().sync_all())
            .map_err(|error| cannot("be written", &path, &error, OTHER_OUT))?;
        complete.push((file, path));
    }
    let mut written = Vec::new();
    for (file, path) in complete {
        file.persist(&path)
            .map_err(|error| cannot("be written", &path, &error.error, OTHER_OUT))?;
        written.push(path);
    }
    Ok(written)
}

/// Copies files into a folder, which is made if it is not there, under relative names that do
/// not lead out of it: all of them, or none. No file that is there is touched.
///
/// # Errors
/// [`Error::Usage`] if one of them, or a link in its way, is there already, or if one cannot
/// be written; what has been written is then taken away again.
pub fn copy_new(folder: &Path, files: &[(&str, &Path)]) -> Result<()> {
    let hint = "choose another folder, that is empty or new";
    let failed = |path: &Path, error: &io::Error| cannot("be written", path, error, hint);
    for (name, _) in files {
        refuse_in_the_way(folder, name, hint)?;
    }
    let mut made = Made::default();
    made.folders(folder)
        .map_err(|error| failed(folder, &error))?;
    let mut complete = Vec::new();
    for (name, source) in files {
        let path = folder.join(name);
        let mut file = temporary(folder).map_err(|error| failed(&path, &error))?;
        fs::File::open(source)
            .and_then(|mut source| io::copy(&mut source, &mut file))
            .and_then(|_| file.as_file().sync_all())
            .map_err(|error| failed(&path, &error))?;
        complete.push((file, path));
    }
    for (file, path) in complete {
        let parent = path.parent().unwrap_or(folder);
        made.folders(parent)
            .map_err(|error| failed(&path, &error))?;
        file.persist_noclobber(&path)
            .map_err(|error| failed(&path, &error.error))?;
        made.files.push(path);
    }
    made.keep();
    Ok(())
}

/// Refuses a name at which something is, or that a link would lead elsewhere.
fn refuse_in_the_way(folder: &Path, name: &str, hint: &str) -> Result<()> {
    let mut path = folder.to_path_buf();
    let mut parts = Path::new(name).components().peekable();
    while let Some(part) = parts.next() {
        path.push(part);
        let is_last = parts.peek().is_none();
        match fs::symlink_metadata(&path) {
            Ok(found) if is_last || !found.is_dir() => {
                let what = "is there already, and is not overwritten";
                return Err(Error::Usage(Problem::at(&path, what).hint(hint).into()));
            }
            _ => {}
        }
    }
    Ok(())
}

/// Files and folders that are taken away again unless all went well.
#[derive(Default)]
struct Made {
    files: Vec<PathBuf>,
    folders: Vec<PathBuf>,
}

impl Made {
    /// Makes a folder and those above it, as far as they are not there.
    fn folders(&mut self, folder: &Path) -> io::Result<()> {
        let above = folder.ancestors().filter(|above| *above != Path::new(""));
        let missing: Vec<&Path> = above.take_while(|above| !above.exists()).collect();
        for folder in missing.into_iter().rev() {
            fs::create_dir(folder)?;
            self.folders.push(folder.to_path_buf());
        }
        Ok(())
    }

    fn keep(mut self) {
        self.files.clear();
        self.folders.clear();
    }
}

impl Drop for Made {
    fn drop(&mut self) {
        for file in &self.files {
            let _another_error_is_told = fs::remove_file(file);
        }
        for folder in self.folders.iter().rev() {
            let _another_error_is_told = fs::remove_dir(folder);
        }
    }
}

fn temporary(folder: &Path) -> std::io::Result<NamedTempFile> {
    let mut builder = Builder::new();
    builder.prefix(".simmerline-").suffix(".part");
    #[cfg(unix)]
    {
        use std::os::unix::fs::PermissionsExt;
        // Readable as any other new file; the umask still applies.
        builder.permissions(fs::Permissions::from_mode(0o666));
    }
    builder.tempfile_in(folder)
}

/// The kind of an error alone: its text would name our temporary file.
fn cannot(what: &str, path: &Path, error: &std::io::Error, hint: &str) -> Error {
    let problem = Problem::at(path, format!("cannot {what} ({})", error.kind()));
    Error::Usage(problem.hint(hint).into())
}
