//! What campaigns share: files named [`SHARED_FILE`] in a campaign's folder and above it.
//!
//! They are looked for by the program, and never named by a campaign file. So they do not ask
//! for `--allow-outside`, which is about names in a file that may come from a stranger: what
//! stands above a stranger's folder is of who put the folder there. A report names and carries
//! each of them all the same, as everything that it rests on.

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};

use super::find::real_path;
use super::model::SharedFile;
use super::named_files::AttachedFile;
use super::read_text::read_text;
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
}

/// Those that hold for the campaign in a folder, the nearest first: in the folder itself, with
/// those that `verify --extract` put beside it, then in each folder above it.
///
/// # Errors
/// [`Error::Campaign`] for more than hold for one campaign, and for a link that leads elsewhere.
pub fn find_shared(folder: &Path) -> Result<Vec<SharedPlace>> {
    let beside = (0..MOST).map(|rank| folder.join(shared_name(rank)));
    let beside: Vec<PathBuf> = beside.take_while(|path| is_there(path)).collect();
    let real = real_path(folder);
    let above = real.ancestors().enumerate().skip(1).take(HIGHEST);
    let above = above.map(|(level, above)| as_named(folder, level, above).join(SHARED_FILE));
    let paths: Vec<PathBuf> = beside
        .into_iter()
        .chain(above.filter(|path| is_there(path)))
        .collect();
    if let Some(one_more) = paths.get(MOST) {
        let what = format!(
            "found {} files of shared keys, expected at most {MOST}",
            paths.len()
        );
        let problem = Problem::at(one_more, what).hint("join some of them");
        return Err(Error::Campaign(problem.into()));
    }
    let mut problems = Problems::default();
    for path in &paths {
        problems_of_link(path)
            .into_iter()
            .for_each(|problem| problems.push(problem));
    }
    if !problems.is_empty() {
        return Err(Error::Campaign(problems));
    }
    let places = paths
        .into_iter()
        .enumerate()
        .map(|(rank, path)| SharedPlace {
            name: shared_name(rank),
            path,
        });
    Ok(places.collect())
}

/// Those among the files that came attached to a report: no other is looked for.
pub fn attached_shared(files: &BTreeMap<String, AttachedFile>) -> Vec<SharedPlace> {
    let places = (0..MOST).map_while(|rank| {
        let name = shared_name(rank);
        let path = files.get(&name)?.path.clone();
        Some(SharedPlace { name, path })
    });
    places.collect()
}

/// Reads them.
///
/// # Errors
/// [`Error::Campaign`] as for a campaign file.
pub fn read_shared(places: Vec<SharedPlace>) -> Result<Vec<SharedFile>> {
    let read = places.into_iter().map(|SharedPlace { name, path }| {
        let read = read_text(&path, KIND)?;
        Ok(SharedFile {
            name,
            path,
            text: read.text,
            sha256: read.sha256,
            holding: Vec::new(),
        })
    });
    read.collect()
}

/// Whether anything of that name is there, a link that leads nowhere too.
fn is_there(path: &Path) -> bool {
    fs::symlink_metadata(path).is_ok()
}

/// A link may lead to another file of its folder alone: what it says holds for campaigns, and
/// is attached to their reports.
fn problems_of_link(path: &Path) -> Option<Problem> {
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
    let shortened = folder.ancestors().nth(level);
    let climbed = match folder == Path::new(".") {
        true => PathBuf::new(),
        false => folder.to_path_buf(),
    };
    let climbed = (0..level).fold(climbed, |path, _| path.join(".."));
    let mut named = shortened
        .map(Path::to_path_buf)
        .into_iter()
        .chain([climbed]);
    let is_it = |path: &PathBuf| {
        let path = match path.as_os_str().is_empty() {
            true => Path::new("."),
            false => path,
        };
        fs::canonicalize(path).is_ok_and(|found| found == real)
    };
    named.find(is_it).unwrap_or_else(|| real.to_path_buf())
}
