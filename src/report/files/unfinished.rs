//! Files that are put in their places together.
//!
//! `NAME.unfinished.json` lists them from before the first is renamed until after the last.
//! So at every moment either the files are of one edition, or the list is there, and with it,
//! whole and on the disk, whatever has no place yet.

use std::fs;
use std::io::{self, ErrorKind};
use std::path::{Path, PathBuf};

use serde::{Deserialize, Serialize};

use super::output::{FileFacts, sha256_of};
use super::part::{Locked, Part, content, is_part};

/// How the name of a list ends.
const ENDING: &str = ".unfinished.json";
/// Longest list that is read, bytes.
const LONGEST: u64 = 1 << 20;
/// What the list says to whoever opens it.
const WHAT: &str = "Files that belong together. Where this list is still there, writing them \
    was interrupted, and they may be of two editions: the next simmerline report into this \
    folder finishes it.";

/// Files on their way to their places.
#[derive(Serialize, Deserialize)]
pub struct Unfinished {
    what: String,
    tool_version: String,
    files: Vec<OnItsWay>,
}

#[derive(Serialize, Deserialize)]
struct OnItsWay {
    /// What it is called until it is in its place.
    part: String,
    #[serde(flatten)]
    facts: FileFacts,
}

impl Unfinished {
    /// Writes the list of files that are whole; from then on they stay until they are in
    /// their places.
    ///
    /// # Errors
    /// If the list cannot be written; the parts are then gone.
    pub fn begin(
        locked: &Locked<'_>,
        set: &str,
        files: Vec<(Part, FileFacts)>,
    ) -> io::Result<Self> {
        let listed = files.iter().map(|(part, facts)| OnItsWay {
            part: part.name(),
            facts: facts.clone(),
        });
        let unfinished = Unfinished {
            what: WHAT.to_owned(),
            tool_version: env!("CARGO_PKG_VERSION").to_owned(),
            files: listed.collect(),
        };
        let text = serde_json::to_string_pretty(&unfinished)? + "\n";
        let list = locked.write_part(content(text.as_bytes()))?;
        // Their names have to be on the disk before the list that counts on them.
        locked.sync()?;
        list.put(&list_of(locked.folder, set))?;
        for (part, _) in files {
            part.keep()?;
        }
        locked.sync()?;
        Ok(unfinished)
    }

    /// Puts all files in their places and takes the list away.
    ///
    /// # Errors
    /// If that fails; the list stays, and the next call tries again.
    pub fn finish(&self, locked: &Locked<'_>, set: &str) -> io::Result<()> {
        for file in &self.files {
            let part = locked.folder.join(&file.part);
            match fs::rename(part, locked.folder.join(&file.facts.name)) {
                // A killed call had put it in its place.
                Err(error) if error.kind() == ErrorKind::NotFound => {}
                renamed => renamed?,
            }
        }
        locked.sync()?;
        // Should it come back after a power cut, all that it lists is in place.
        fs::remove_file(list_of(locked.folder, set))
    }

    /// Whether every file is there whole, in its place or before it.
    fn is_whole(&self, folder: &Path) -> io::Result<bool> {
        for file in &self.files {
            let facts = &file.facts;
            let is_ours = is_part(&file.part) && is_name(&file.part) && is_name(&facts.name);
            let place = folder.join(&facts.name);
            if !is_ours || place.is_dir() {
                return Ok(false);
            }
            if !is(&folder.join(&file.part), facts)? && !is(&place, facts)? {
                return Ok(false);
            }
        }
        Ok(true)
    }
}

/// What became of the lists that killed calls have left in a folder, each by its name.
#[derive(Debug, Default)]
pub struct Mended {
    pub finished: Vec<String>,
    /// What has been changed or taken away since, so that only a new edition helps.
    pub stuck: Vec<String>,
}

/// Finishes what killed calls have begun, and removes what they have left.
///
/// # Errors
/// If the folder cannot be read, or files not put in their places.
pub fn mend(locked: &Locked<'_>) -> io::Result<Mended> {
    let mut mended = Mended::default();
    if !locked.is_alone() {
        return Ok(mended);
    }
    for set in sets(locked.folder)? {
        match read(&list_of(locked.folder, &set))? {
            Some(unfinished) if unfinished.is_whole(locked.folder)? => {
                unfinished.finish(locked, &set)?;
                mended.finished.push(set);
            }
            _ => mended.stuck.push(set),
        }
    }
    for path in locked.leftovers()? {
        // It does no harm, and may be of somebody else: the next call tries again.
        let _not_ours_to_remove = fs::remove_file(path);
    }
    Ok(mended)
}

/// Where the list of files that belong together is while they are written.
pub fn list_of(folder: &Path, set: &str) -> PathBuf {
    folder.join(format!("{set}{ENDING}"))
}

/// Whether a file is there with this length and hash.
///
/// # Errors
/// If it is there and cannot be read.
pub fn is(path: &Path, facts: &FileFacts) -> io::Result<bool> {
    match fs::symlink_metadata(path) {
        Ok(of) if of.is_file() && of.len() == facts.length as u64 => {}
        Err(error) if error.kind() != ErrorKind::NotFound => return Err(error),
        _ => return Ok(false),
    }
    Ok(sha256_of(path)? == facts.sha256)
}

/// A name that leads to no other folder.
fn is_name(name: &str) -> bool {
    Path::new(name).file_name().is_some_and(|last| last == name)
}

/// Names of the lists in a folder.
fn sets(folder: &Path) -> io::Result<Vec<String>> {
    let mut sets = Vec::new();
    for entry in fs::read_dir(folder)? {
        let name = entry?.file_name();
        let set = name.to_str().and_then(|name| name.strip_suffix(ENDING));
        sets.extend(set.filter(|set| !set.is_empty()).map(str::to_owned));
    }
    sets.sort();
    Ok(sets)
}

/// A list; `None` if it is none of ours.
fn read(path: &Path) -> io::Result<Option<Unfinished>> {
    let of = fs::symlink_metadata(path)?;
    if !of.is_file() || of.len() > LONGEST {
        return Ok(None);
    }
    Ok(serde_json::from_slice(&fs::read(path)?).ok())
}
