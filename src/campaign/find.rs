//! Campaign folders below the paths a person names.

use std::collections::BTreeSet;
use std::fs;
use std::path::{Component, Path, PathBuf};

use crate::error::{Error, Problem, Problems, Result, why};
use crate::shown::is_unseen;

/// Name of the file that makes a folder a campaign.
pub const CAMPAIGN_FILE: &str = "campaign.toml";

/// How deep below a named folder campaigns are looked for.
const DEEPEST: usize = 6;

/// A campaign as a unit of work: where it is, and where in a tree of outputs its own belong.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Unit {
    /// The campaign's folder, as it was found.
    pub folder: PathBuf,
    /// Folders between the root of the tree and the campaign's own, with `/` between them;
    /// empty for a campaign directly below the root.
    pub branch: String,
    /// Name of the campaign: that of its folder.
    pub name: String,
}

impl Unit {
    /// Branch and name, as a person reads them.
    pub fn place(&self) -> String {
        place_in(&self.branch, &self.name)
    }
}

/// What is in a branch: its path from the root of the tree.
pub fn place_in(branch: &str, name: &str) -> String {
    match branch {
        "" => name.to_owned(),
        branch => format!("{branch}/{name}"),
    }
}

/// Campaigns at or below each path, with their places in the tree: counted from `root`, or
/// else from the path by which each was found.
///
/// # Errors
/// As [`find_campaigns`]; and [`Error::Usage`] for a campaign that does not lie below the root,
/// for two that have one place, and for a branch that is no text.
pub fn find_units(paths: &[PathBuf], root: Option<&Path>) -> Result<Vec<Unit>> {
    if let Some(root) = root.filter(|root| !root.is_dir()) {
        let problem = Problem::at(root, "is no folder that is there");
        let hint = "name a folder above all campaigns as --root";
        return Err(Error::Usage(problem.hint(hint).into()));
    }
    let mut problems = Problems::default();
    let mut units = Vec::new();
    let (mut seen, mut places) = (BTreeSet::new(), BTreeSet::new());
    for path in paths {
        let found = match find_each(std::slice::from_ref(path)) {
            Err(Error::Usage(found)) => {
                problems.extend(found);
                continue;
            }
            found => found?,
        };
        for folder in found {
            if !seen.insert(real_path(&folder)) {
                continue;
            }
            let unit = match unit_of(folder, path, root) {
                Ok(unit) => unit,
                Err(problem) => {
                    problems.push(problem);
                    continue;
                }
            };
            if !places.insert((unit.branch.clone(), unit.name.clone())) {
                let what = format!("a second campaign folder named \"{}\"", unit.place());
                problems.push(Problem::at(&unit.folder, what).hint(SAME_PLACE));
            }
            units.push(unit);
        }
    }
    if problems.is_empty() {
        Ok(units)
    } else {
        Err(Error::Usage(problems))
    }
}

/// What to do about two campaigns whose outputs would have one name.
const SAME_PLACE: &str = "outputs keep the tree below each path that is named: name a folder above both, rename one, or report them into different --out folders";

fn unit_of(
    folder: PathBuf,
    found_below: &Path,
    root: Option<&Path>,
) -> std::result::Result<Unit, Problem> {
    let real = real_path(&folder);
    let root = real_path(root.unwrap_or(found_below));
    // A path may itself be a campaign, or its file.
    let above = real.parent().unwrap_or(&real);
    let between = match above.strip_prefix(&root) {
        Ok(between) => between,
        Err(_) if root.starts_with(&real) => Path::new(""),
        Err(_) => {
            let what = format!("does not lie below {}", root.display());
            return Err(
                Problem::at(&folder, what).hint("name a folder above all campaigns as --root")
            );
        }
    };
    let parts = between.components().map(|part| match part {
        Component::Normal(part) => part.to_str(),
        _ => None,
    });
    let Some(parts) = parts.collect::<Option<Vec<_>>>() else {
        let problem = Problem::at(&folder, "the name of a folder above it is no UTF-8 text");
        return Err(problem.hint("rename that folder: outputs keep the tree"));
    };
    let branch = parts.join("/");
    if branch.chars().any(is_unseen) {
        let what = "the name of a folder above it holds a character that cannot be printed";
        return Err(Problem::at(&folder, what).hint("rename that folder: outputs keep the tree"));
    }
    Ok(Unit {
        name: campaign_name(&folder),
        branch,
        folder,
    })
}

/// Campaign folders at or below each path, in the order of their names, each once.
///
/// A path may be a campaign folder, a `campaign.toml`, or a folder that holds
/// campaign folders at any depth up to six; hidden folders are passed over.
///
/// # Errors
/// [`Error::Usage`] for a path that does not exist, is another file, or holds
/// no campaign.
pub fn find_campaigns(paths: &[PathBuf]) -> Result<Vec<PathBuf>> {
    let mut folders = find_each(paths)?;
    let mut seen = BTreeSet::new();
    folders.retain(|folder| seen.insert(real_path(folder)));
    Ok(folders)
}

/// The same, with folders that are named twice twice.
///
/// # Errors
/// As [`find_campaigns`].
pub fn find_each(paths: &[PathBuf]) -> Result<Vec<PathBuf>> {
    let mut problems = Problems::default();
    let mut folders = Vec::new();
    for path in paths {
        match campaigns_under(path) {
            Ok(found) => folders.extend(found),
            Err(problem) => problems.push(problem),
        }
    }
    if problems.is_empty() {
        Ok(folders)
    } else {
        Err(Error::Usage(problems))
    }
}

/// The one campaign folder at or below a path.
///
/// # Errors
/// As [`find_campaigns`], and where there are several.
pub fn find_one(path: &Path) -> Result<PathBuf> {
    let mut folders = find_campaigns(&[path.to_path_buf()])?;
    if folders.len() > 1 {
        let what = format!("holds {} campaigns, expected one", folders.len());
        let hint = format!("name one of them, such as {}", folders[0].display());
        return Err(Error::Usage(Problem::at(path, what).hint(hint).into()));
    }
    Ok(folders.remove(0))
}

/// A path by which a folder can be told from others, however it was named.
pub fn real_path(folder: &Path) -> PathBuf {
    fs::canonicalize(folder).unwrap_or_else(|_| folder.to_path_buf())
}

/// Campaigns are known by their folder's name, so no two may share it; `remedy` says what
/// to do then.
///
/// # Errors
/// [`Error::Usage`] with every folder whose name an earlier one has.
pub fn refuse_same_names(folders: &[PathBuf], remedy: &str) -> Result<()> {
    let mut problems = Problems::default();
    let mut names = Vec::new();
    for folder in folders {
        let name = campaign_name(folder);
        if names.contains(&name) {
            problems.push(
                Problem::at(folder, format!("a second campaign folder named \"{name}\""))
                    .hint(remedy),
            );
        }
        names.push(name);
    }
    if problems.is_empty() {
        Ok(())
    } else {
        Err(Error::Usage(problems))
    }
}

/// Name of a campaign: that of its folder.
pub fn campaign_name(folder: &Path) -> String {
    fs::canonicalize(folder)
        .ok()
        .as_deref()
        .and_then(Path::file_name)
        .map_or_else(
            || "campaign".to_owned(),
            |name| name.to_string_lossy().into_owned(),
        )
}

/// A campaign's name stands in every output and on the terminal, so it has to be text that can
/// be seen.
///
/// # Errors
/// [`Error::Usage`] for a folder whose name is no text, or holds a character that controls,
/// directs or hides.
pub fn check_folder_name(folder: &Path) -> Result<()> {
    let real = real_path(folder);
    let name = real.file_name().unwrap_or_default();
    let what = match name
        .to_str()
        .map(|name| name.chars().find(|&c| is_unseen(c)))
    {
        Some(None) => return Ok(()),
        Some(Some(wrong)) => format!(
            "its name holds the character U+{:04X}, which cannot be printed",
            wrong as u32
        ),
        None => "its name is no UTF-8 text".to_owned(),
    };
    let hint = "choose another name for the folder: outputs are named after it";
    Err(Error::Usage(Problem::at(folder, what).hint(hint).into()))
}

fn campaigns_under(path: &Path) -> std::result::Result<Vec<PathBuf>, Problem> {
    let metadata = fs::metadata(path).map_err(|error| {
        Problem::at(path, format!("cannot be opened: {}", why(&error)))
            .hint("name a campaign folder, or a folder that holds some")
    })?;
    if metadata.is_file() {
        return match (path.file_name(), path.parent()) {
            (Some(name), Some(parent)) if name == CAMPAIGN_FILE => {
                let here = parent.as_os_str().is_empty();
                Ok(vec![if here {
                    PathBuf::from(".")
                } else {
                    parent.to_path_buf()
                }])
            }
            _ => Err(Problem::at(path, "is a file, expected a folder")
                .hint(format!("name the folder that holds {CAMPAIGN_FILE}"))),
        };
    }
    let mut found = Vec::new();
    walk(path, DEEPEST, &mut found)?;
    if found.is_empty() {
        return Err(Problem::at(path, format!("holds no {CAMPAIGN_FILE}"))
            .hint(format!("start one with: simmerline new {}", path.display())));
    }
    Ok(found)
}

fn walk(folder: &Path, depth: usize, found: &mut Vec<PathBuf>) -> std::result::Result<(), Problem> {
    if folder.join(CAMPAIGN_FILE).exists() {
        found.push(folder.to_path_buf());
        return Ok(());
    }
    if depth == 0 {
        return Ok(());
    }
    let unlisted = |error: std::io::Error| {
        Problem::at(folder, format!("cannot be listed: {}", why(&error)))
            .hint("make it readable, or name the campaign folders themselves")
    };
    let mut below = Vec::new();
    for entry in fs::read_dir(folder).map_err(unlisted)? {
        let entry = entry.map_err(unlisted)?;
        let hidden = entry.file_name().to_string_lossy().starts_with('.');
        if entry.file_type().map_err(unlisted)?.is_dir() && !hidden {
            below.push(entry.path());
        }
    }
    below.sort();
    for path in below {
        walk(&path, depth - 1, found)?;
    }
    Ok(())
}
