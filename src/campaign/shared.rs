//! What campaigns share: files named `shared.toml` in a campaign's folder and above it.
//!
//! They are looked for by the program, and never named by a campaign file. So they do not ask
//! for `--allow-outside`, which is about names in a file that may come from a stranger: what
//! stands above a stranger's folder is of who put the folder there. A report names and carries
//! each of them all the same, as everything that it rests on.

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};

use super::find::real_path;
use super::named_files::AttachedFile;
use super::read_text::read_text;
use super::shared_file::SharedFile;
use super::shared_names::{MOST, SHARED_FILE, shared_name};
use crate::error::{Error, Problem, Problems, Result};

/// So many folders above a campaign's own are searched.
const HIGHEST: usize = MOST - 1;

/// What stands in the place of one that cannot be used.
const KIND: &str = "file of shared keys";

/// Where one is.
pub struct SharedPlace {
    /// Its name among the inputs.
    pub name: String,
    pub path: PathBuf,
    /// So many folders above the campaign's own.
    pub levels_above: usize,
}

/// Those that hold for the campaign in a folder, the nearest first: in the folder itself, with
/// those that `verify --extract` put beside it, then in each folder above it.
///
/// # Errors
/// [`Error::Campaign`] for more than hold for one campaign, and for a link that leads elsewhere.
pub fn find_shared(folder: &Path) -> Result<Vec<SharedPlace>> {
    let beside = (0..MOST).map(|rank| (0, folder.join(shared_name(rank))));
    let beside: Vec<(usize, PathBuf)> = beside.take_while(|(_, path)| is_there(path)).collect();
    let real = real_path_to_be(folder);
    let above = real.ancestors().enumerate().skip(1).take(HIGHEST);
    let above =
        above.map(|(level, above)| (level, as_named(folder, level, above).join(SHARED_FILE)));
    let found = beside
        .into_iter()
        .chain(above.filter(|(_, path)| is_there(path)));
    let places = found
        .enumerate()
        .map(|(rank, (levels_above, path))| SharedPlace {
            name: shared_name(rank),
            path,
            levels_above,
        });
    let places: Vec<SharedPlace> = places.collect();
    if let Some(one_more) = places.get(MOST) {
        let found = places.len();
        let what = format!("found {found} files of shared keys, expected at most {MOST}");
        let problem = Problem::at(&one_more.path, what).hint("join some of them");
        return Err(Error::Campaign(problem.into()));
    }
    let mut problems = Problems::default();
    let of_links = places
        .iter()
        .filter_map(|place| problem_of_link(&place.path));
    of_links.for_each(|problem| problems.push(problem));
    match problems.is_empty() {
        true => Ok(places),
        false => Err(Error::Campaign(problems)),
    }
}

/// Those among the files that came attached to a report: no other is looked for.
pub fn attached_shared(files: &BTreeMap<String, AttachedFile>) -> Vec<SharedPlace> {
    let places = (0..MOST).map_while(|rank| {
        let name = shared_name(rank);
        let path = files.get(&name)?.path.clone();
        Some(SharedPlace {
            name,
            path,
            levels_above: 0,
        })
    });
    places.collect()
}

/// Reads them.
///
/// # Errors
/// [`Error::Campaign`] as for a campaign file.
pub fn read_shared(places: Vec<SharedPlace>) -> Result<Vec<SharedFile>> {
    let read = places.into_iter().map(|place| {
        let read = read_text(&place.path, KIND)?;
        Ok(SharedFile {
            name: place.name,
            path: place.path,
            levels_above: place.levels_above,
            text: read.text,
            sha256: read.sha256,
            bytes: read.bytes,
            holding: Vec::new(),
        })
    });
    read.collect()
}

/// The real path of a folder that need not be there yet.
fn real_path_to_be(folder: &Path) -> PathBuf {
    let there = folder.ancestors().find_map(|above| {
        let place = match above.as_os_str().is_empty() {
            true => Path::new("."),
            false => above,
        };
        let real = fs::canonicalize(place).ok()?;
        let below = folder.strip_prefix(above).ok()?;
        Some(match below.as_os_str().is_empty() {
            true => real,
            false => real.join(below),
        })
    });
    there.unwrap_or_else(|| folder.to_path_buf())
}

/// Whether anything of that name is there, a link that leads nowhere too.
fn is_there(path: &Path) -> bool {
    fs::symlink_metadata(path).is_ok()
}

/// A link may lead to another file of its folder alone: what it says holds for campaigns, and
/// is attached to their reports.
fn problem_of_link(path: &Path) -> Option<Problem> {
    let is_link = fs::symlink_metadata(path).is_ok_and(|of| of.is_symlink());
    if !is_link {
        return None;
    }
    let folder = path.parent().map(real_path).unwrap_or_default();
    let what = match fs::canonicalize(path) {
        Ok(target) if target.starts_with(&folder) => return None,
        Ok(_) => "is a link that leads out of its folder",
        Err(_) => "is a link that leads to no file",
    };
    Some(Problem::at(path, what).hint("put the file itself in its place"))
}

/// A folder so many levels above another, as whoever named that would name it.
fn as_named(folder: &Path, level: usize, real: &Path) -> PathBuf {
    let here = Path::new("");
    let folder = folder.strip_prefix(".").unwrap_or(folder);
    let shortest = folder.ancestors().take(level + 1).last().unwrap_or(here);
    let climbed = level - (folder.ancestors().count() - 1).min(level);
    let shortened = (0..climbed).fold(shortest.to_path_buf(), |path, _| path.join(".."));
    // By way of a link, what is written before it leads to another folder.
    let from_within = (0..level).fold(folder.to_path_buf(), |path, _| path.join(".."));
    let is_it = |path: &PathBuf| {
        let path = if path == here { Path::new(".") } else { path };
        fs::canonicalize(path).is_ok_and(|found| found == real)
    };
    let mut named = [shortened, from_within].into_iter();
    named.find(is_it).unwrap_or_else(|| real.to_path_buf())
}
