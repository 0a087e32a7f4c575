//! Writing outputs: each whole, or not at all, and what belongs together together.

use std::fs;
use std::io::{self, ErrorKind};
use std::path::Path;

use super::output::{FileFacts, Output, sha256_of};
use super::part::{Locked, content};
use super::unfinished::{Mended, Unfinished, mend};
use crate::error::{Error, Problem, Result, why_of_kind};

/// What to do where a report cannot be written.
const OTHER_OUT: &str = "choose a folder you may write to with --out DIR";

/// Makes the output folder if it is not there, tries that it can be written to, finishes what
/// killed calls have begun there, and says so.
///
/// # Errors
/// [`Error::Usage`] if it is a file, or cannot be made or written to.
pub fn prepare_folder(folder: &Path) -> Result<Vec<String>> {
    if folder.is_file() {
        let problem = Problem::at(folder, "is a file, expected a folder");
        return Err(Error::Usage(
            problem.hint("choose another --out DIR").into(),
        ));
    }
    fs::create_dir_all(folder).map_err(|error| cannot("be made", folder, &error, OTHER_OUT))?;
    let mended = mended(folder, OTHER_OUT)?;
    let place = folder.display();
    let finished = mended.finished.iter().map(|set| {
        format!(
            "{place}: writing {set} was interrupted earlier; all its files are of one edition now"
        )
    });
    let stuck = mended.stuck.iter().map(|set| {
        format!("{place}: writing {set} was interrupted earlier, and its files may be of two editions: report it again")
    });
    Ok(finished.chain(stuck).collect())
}

/// Tries that a file can be made in a folder, and clears away what killed calls have left
/// there; `hint` says what to do if not.
///
/// # Errors
/// [`Error::Usage`] if it cannot.
pub fn try_folder(folder: &Path, hint: &str) -> Result<()> {
    mended(folder, hint).map(drop)
}

fn mended(folder: &Path, hint: &str) -> Result<Mended> {
    let tried = Locked::wait(folder).and_then(|locked| {
        // First of all, since a leftover may be what fills the disk.
        let mended = mend(&locked);
        locked.try_part()?;
        mended
    });
    tried.map_err(|error| cannot("be written to", folder, &error, hint))
}

/// Puts bytes in the place of a file, or where none is yet: first into a temporary file
/// beside it, which is then renamed. `older` is the SHA-256 of what has been read there,
/// `None` where there was nothing; `hint` says what to do if writing fails.
///
/// # Errors
/// [`Error::Usage`] if something else is there now, or it cannot be written; the file is
/// then as it was.
pub fn replace_file(path: &Path, older: Option<&str>, bytes: &[u8], hint: &str) -> Result<()> {
    // What a link leads to is replaced, not the link.
    let target = fs::canonicalize(path).unwrap_or_else(|_| path.to_path_buf());
    let failed = |error: io::Error| cannot("be written", path, &error, hint);
    let folder = match target.parent() {
        Some(folder) if folder != Path::new("") => folder,
        _ => Path::new("."),
    };
    let locked = Locked::wait(folder).map_err(failed)?;
    let part = locked.write_part(content(bytes)).map_err(failed)?;
    let Some(older) = older else {
        let put = part.put_new(&target);
        return put.and_then(|()| locked.sync()).map_err(|error| {
            match error.kind() == ErrorKind::AlreadyExists {
                true => changed(path),
                false => failed(error),
            }
        });
    };
    let permissions = match fs::metadata(&target) {
        Ok(of) => of.permissions(),
        Err(error) if error.kind() == ErrorKind::NotFound => return Err(changed(path)),
        Err(error) => return Err(failed(error)),
    };
    if permissions.readonly() {
        return Err(failed(ErrorKind::PermissionDenied.into()));
    }
    part.file().set_permissions(permissions).map_err(failed)?;
    if sha256_of(&target).map_err(failed)? != older {
        return Err(changed(path));
    }
    part.put(&target)
        .and_then(|()| locked.sync())
        .map_err(failed)
}

fn changed(path: &Path) -> Error {
    let what = "was changed by another program meanwhile, and stays as that left it";
    let hint = "give the same command again: it goes on from what is there";
    Error::Usage(Problem::at(path, what).hint(hint).into())
}

/// Writes outputs that belong together, over what is there: first each whole under a name of
/// its own, then, when all are, renamed. `set` is the name that they share. A call that is
/// killed while it renames leaves a list that the next [`prepare_folder`] works off.
///
/// # Errors
/// [`Error::Usage`] if one cannot be written; then no older file has been touched, unless a
/// rename itself fails, which leaves the list.
pub fn write_all(folder: &Path, set: &str, outputs: &[Output]) -> Result<Vec<FileFacts>> {
    for output in outputs {
        refuse_in_place(&folder.join(&output.name))?;
    }
    let failed = |error: io::Error| cannot("be written to", folder, &error, OTHER_OUT);
    let locked = Locked::wait(folder).map_err(failed)?;
    let mut whole = Vec::new();
    for output in outputs {
        let path = folder.join(&output.name);
        let part = locked
            .write_part(content(&output.bytes))
            .map_err(|error| cannot("be written", &path, &error, OTHER_OUT))?;
        whole.push((part, output.facts()));
    }
    let facts = whole.iter().map(|(_, facts)| facts.clone()).collect();
    if let [output] = outputs {
        // A single file is together with itself.
        let path = folder.join(&output.name);
        let put = whole.pop().map_or(Ok(()), |(part, _)| part.put(&path));
        put.and_then(|()| locked.sync()).map_err(failed)?;
    } else if !outputs.is_empty() {
        Unfinished::begin(&locked, set, whole)
            .and_then(|unfinished| unfinished.finish(&locked, set))
            .map_err(failed)?;
    }
    Ok(facts)
}

/// Removes an output that no call makes any more, if it is still there.
///
/// # Errors
/// [`Error::Usage`] if it cannot be removed.
pub fn remove_file(path: &Path) -> Result<()> {
    match fs::remove_file(path) {
        Err(error) if error.kind() != ErrorKind::NotFound => {
            Err(cannot("be removed", path, &error, "remove it by hand"))
        }
        _ => Ok(()),
    }
}

/// Refuses what is no plain file in the place of an output.
fn refuse_in_place(path: &Path) -> Result<()> {
    let what = match fs::symlink_metadata(path) {
        Ok(of) if of.is_dir() => "is a folder where a file has to go",
        Ok(of) if of.is_symlink() => "is a link where a file has to go",
        Ok(of) if !of.is_file() => "is a device or a pipe where a file has to go",
        Err(error) if error.kind() != ErrorKind::NotFound => {
            return Err(cannot("be written", path, &error, OTHER_OUT));
        }
        _ => return Ok(()),
    };
    let hint = "move it away, or choose another --out";
    Err(Error::Usage(Problem::at(path, what).hint(hint).into()))
}

/// The kind of an error alone: its text would name our temporary file.
pub fn cannot(what: &str, path: &Path, error: &io::Error, hint: &str) -> Error {
    let problem = Problem::at(
        path,
        format!("cannot {what}: {}", why_of_kind(error.kind())),
    );
    let hint = match error.kind() {
        ErrorKind::StorageFull | ErrorKind::QuotaExceeded => format!("make room there, or {hint}"),
        ErrorKind::FileTooLarge => format!("allow larger files there, or {hint}"),
        ErrorKind::ResourceBusy => {
            format!(
                "another call of simmerline is writing there: wait until it has ended, or {hint}"
            )
        }
        _ => hint.to_owned(),
    };
    Error::Usage(problem.hint(hint).into())
}
