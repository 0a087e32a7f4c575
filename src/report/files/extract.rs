//! Copies of files, put where nothing is yet.

use std::fs;
use std::io;
use std::path::{Path, PathBuf};

use super::part::Locked;
use super::place::cannot;
use super::unfinished::mend;
use crate::error::{Error, Problem, Result};

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
    let locked = Locked::wait(folder).map_err(|error| failed(folder, &error))?;
    mend(&locked).map_err(|error| failed(folder, &error))?;
    let mut complete = Vec::new();
    for (name, source) in files {
        let path = folder.join(name);
        let copy = |to: &mut fs::File| io::copy(&mut fs::File::open(source)?, to).map(drop);
        let part = locked.write_part(copy);
        complete.push((part.map_err(|error| failed(&path, &error))?, path));
    }
    for (part, path) in complete {
        let parent = path.parent().unwrap_or(folder);
        made.folders(parent)
            .and_then(|()| part.put_new(&path))
            .map_err(|error| failed(&path, &error))?;
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
