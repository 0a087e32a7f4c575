//! The log that a sheet is typed into, on disk.

use std::fs::{self, File};
use std::io::{self, ErrorKind, Read};
use std::path::{Path, PathBuf};

use crate::entry::form::Form;
use crate::entry::sheet::Sheet;
use crate::error::{Error, Problem, Result, why};
use crate::hash::sha256_hex;
use crate::report::files::replace_file;

/// Largest text that is read as a sheet, bytes.
const LARGEST_SHEET: u64 = 4 << 20;
/// What to do where nothing can be saved.
pub const NOT_SAVED: &str = "see that you may write to the campaign's folder";

/// The log of a sheet on disk.
pub struct TypedLog {
    pub name: String,
    pub path: PathBuf,
    /// SHA-256 of what was read or saved last; `None` where it is not there.
    saved: Option<String>,
}

impl TypedLog {
    /// The log with the sheet that it holds, if it is there.
    ///
    /// # Errors
    /// [`Error::Usage`] for a file that cannot be read or is no sheet of this form;
    /// [`Error::Input`] for rows that cannot be read.
    pub fn open(folder: &Path, name: String, form: Form) -> Result<(Self, Sheet)> {
        let path = folder.join(&name);
        let bytes = read_if_there(&path)?;
        let sheet = match &bytes {
            None => Sheet::new(form),
            // What is no text has no typed sheet's header either.
            Some(bytes) => Sheet::from_csv(form, &path, &String::from_utf8_lossy(bytes))?,
        };
        let saved = bytes.as_deref().map(sha256_hex);
        Ok((TypedLog { name, path, saved }, sheet))
    }

    /// The log to write anew, and the text that it holds, if a sheet was typed into it.
    ///
    /// # Errors
    /// [`Error::Usage`] for a file that cannot be read or is no sheet.
    pub fn open_anew(folder: &Path, name: String, form: &Form) -> Result<(Self, Option<Vec<u8>>)> {
        let path = folder.join(&name);
        let bytes = read_if_there(&path)?;
        let is_sheet = |bytes: &[u8]| Sheet::is_one(form, &String::from_utf8_lossy(bytes));
        if bytes.as_deref().is_some_and(|bytes| !is_sheet(bytes)) {
            let problem = Problem::at(&path, "is there already, and is no sheet that was typed in");
            let hint = "it stays as it is; choose another name with --log NAME.csv";
            return Err(Error::Usage(problem.hint(hint).into()));
        }
        let saved = bytes.as_deref().map(sha256_hex);
        Ok((TypedLog { name, path, saved }, bytes))
    }

    /// Keeps a text that is about to be written over, beside the log, under a name that nothing
    /// has yet.
    ///
    /// # Errors
    /// [`Error::Usage`] if it cannot be written.
    pub fn keep_older(&self, bytes: &[u8]) -> Result<PathBuf> {
        let named = |number: usize| {
            let mut name = self.path.clone().into_os_string();
            name.push(match number {
                1 => ".before".to_owned(),
                number => format!(".before-{number}"),
            });
            PathBuf::from(name)
        };
        // A link that leads nowhere is there, too.
        let is_free = |path: &PathBuf| fs::symlink_metadata(path).is_err();
        let path = (1..).map(named).find(is_free);
        let path = path.expect("numbers have no end");
        replace_file(&path, None, bytes, NOT_SAVED)?;
        Ok(path)
    }

    /// Saves the whole sheet, unless somebody else has changed the log meanwhile.
    ///
    /// # Errors
    /// [`Error::Usage`] if it was changed meanwhile or cannot be written.
    pub fn save(&mut self, sheet: &Sheet) -> Result<()> {
        let text = sheet.to_csv()?;
        replace_file(
            &self.path,
            self.saved.as_deref(),
            text.as_bytes(),
            NOT_SAVED,
        )?;
        self.saved = Some(sha256_hex(text.as_bytes()));
        Ok(())
    }
}

fn read_if_there(path: &Path) -> Result<Option<Vec<u8>>> {
    match read_small(path) {
        Ok(bytes) => Ok(Some(bytes)),
        Err(error) if error.kind() == ErrorKind::NotFound => Ok(None),
        Err(error) => {
            let problem = Problem::at(path, format!("cannot be read: {}", why(&error)));
            let hint = "move it away, or choose another name with --log NAME.csv";
            Err(Error::Usage(problem.hint(hint).into()))
        }
    }
}

/// A file no larger than a sheet can be. A device or a pipe may never end, or never begin.
pub fn read_small(path: &Path) -> io::Result<Vec<u8>> {
    let of = fs::metadata(path)?;
    if !of.is_file() {
        let what = "it is a folder, a device or a pipe, expected a file";
        return Err(io::Error::new(ErrorKind::InvalidInput, what));
    }
    let mut bytes = Vec::new();
    // It may grow while it is read.
    let mut file = File::open(path)?.take(LARGEST_SHEET + 1);
    file.read_to_end(&mut bytes)?;
    if bytes.len() as u64 > LARGEST_SHEET {
        let size = of.len().max(LARGEST_SHEET + 1);
        let what = format!("{size} bytes, too long for a sheet that was typed in");
        return Err(io::Error::new(ErrorKind::FileTooLarge, what));
    }
    Ok(bytes)
}
