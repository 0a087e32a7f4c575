//! Where the files are that a campaign file names, and whether they may be read.
//!
//! A campaign may come from a stranger, and a report carries whatever its campaign file names.
//! So a name leads out of the campaign's folder only if who runs the program allows it.

use std::collections::BTreeMap;
use std::fs;
use std::io::ErrorKind;
use std::path::{Path, PathBuf};

use super::listing::files_in;
use super::shared_names::is_shared_name;
use crate::error::why;

/// What to do about a file that is not among those attached to a report.
const NOT_ATTACHED: &str = "it is not attached: ask for a report that carries all its evidence";

/// How far the names in a campaign file may lead.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Reach {
    /// Into the campaign's folder and those below it.
    Inside,
    /// Anywhere.
    Outside,
}

/// Where the logs and the photo are looked for.
#[derive(Debug, Clone, Copy)]
pub enum NamedFiles<'f> {
    /// Where their names lead from the campaign's folder.
    From(&'f Path, Reach),
    /// Among these, by the names that the campaign file gives them. No other file is looked
    /// at, wherever a name may lead: the campaign file is not trusted.
    Only(&'f BTreeMap<String, AttachedFile>),
}

/// A file that came attached to a report.
#[derive(Debug, Clone)]
pub struct AttachedFile {
    pub path: PathBuf,
    /// The report's data state that it lay outside the campaign's folder.
    pub is_outside: bool,
}

/// Why a named file is not read, and how to mend that.
#[derive(Debug, Clone)]
pub struct NotRead {
    /// Goes on after the name.
    pub what: &'static str,
    pub hint: String,
}

impl NamedFiles<'_> {
    /// Where a file is.
    ///
    /// # Errors
    /// One that is not there, or that lies outside and may not be read.
    pub fn find(self, name: &str) -> Result<PathBuf, NotRead> {
        if is_shared_name(name) {
            return Err(NotRead {
                what: "has the name of a file of shared keys",
                hint: "give the file another name".to_owned(),
            });
        }
        let (path, hint) = match self {
            NamedFiles::From(folder, _) if self.forbids(name) => {
                return Err(NotRead {
                    what: "lies outside the campaign's folder, where a campaign file may not reach",
                    hint: format!(
                        "copy it into {} and name it there; or, if you trust who wrote the campaign file, say --allow-outside: a report then carries the file",
                        folder.display()
                    ),
                });
            }
            NamedFiles::From(folder, _) => (
                Some(folder.join(name)).filter(|path| path.exists()),
                format!("put it into {}, or correct the name", folder.display()),
            ),
            NamedFiles::Only(files) => (
                files.get(name).map(|file| file.path.clone()),
                NOT_ATTACHED.to_owned(),
            ),
        };
        let what = "is not there";
        path.ok_or(NotRead { what, hint })
    }

    /// The names of the files in a folder of the campaign's, as it is written with its slash;
    /// empty for the campaign's own. Hidden files and ours are left out.
    ///
    /// # Errors
    /// A folder that lies outside the campaign's, whoever allows what, or cannot be listed.
    pub fn listed(self, folder: &str) -> Result<Vec<String>, NotRead> {
        if self.is_outside(folder) {
            return Err(NotRead {
                what: "leads out of the campaign's folder, where no pattern is followed",
                hint: "copy the logs into the campaign's folder, or name each of them".to_owned(),
            });
        }
        match self {
            NamedFiles::From(base, _) => match files_in(&base.join(folder)) {
                Ok(names) => Ok(names),
                Err(error) if error.kind() == ErrorKind::NotFound => Ok(Vec::new()),
                Err(error) => Err(NotRead {
                    what: "is of a folder that cannot be listed",
                    hint: format!("{}: make it readable", why(&error)),
                }),
            },
            NamedFiles::Only(files) => {
                let below = files.keys().filter_map(|name| name.strip_prefix(folder));
                let within = below.filter(|name| !name.contains('/'));
                Ok(within.map(str::to_owned).collect())
            }
        }
    }

    /// Whether a file may not be read, there or not.
    pub fn forbids(self, name: &str) -> bool {
        matches!(self, NamedFiles::From(_, Reach::Inside)) && self.is_outside(name)
    }

    /// Whether a file lies outside the campaign's folder: by its name, wherever that leads in
    /// the end, or by a link.
    pub fn is_outside(self, name: &str) -> bool {
        leads_out(name)
            || match self {
                NamedFiles::From(folder, _) => is_linked_out(folder, name),
                NamedFiles::Only(files) => files.get(name).is_some_and(|file| file.is_outside),
            }
    }

    /// Whether the campaign file comes from who runs the program.
    pub fn is_own(self) -> bool {
        matches!(self, NamedFiles::From(..))
    }
}

/// Whether a name by itself leads out of its folder, on any computer: one report has to be
/// read alike on all.
fn leads_out(name: &str) -> bool {
    let is_drive =
        name.chars().nth(1) == Some(':') && name.starts_with(|c: char| c.is_ascii_alphabetic());
    let mut depth = 0;
    let goes_above = name.split(['/', '\\']).any(|part| {
        depth += match part {
            "" | "." => 0,
            ".." => -1,
            _ => 1,
        };
        depth < 0
    });
    name.starts_with(['/', '\\']) || is_drive || goes_above
}

/// Whether a link on the way to a file leads out of a folder.
fn is_linked_out(folder: &Path, name: &str) -> bool {
    match (
        fs::canonicalize(folder),
        fs::canonicalize(folder.join(name)),
    ) {
        (Ok(folder), Ok(file)) => !file.starts_with(folder),
        // What cannot be followed is not read either.
        (_, Err(_)) => false,
        (Err(_), Ok(_)) => true,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_that_lead_out_do_so_on_every_computer() {
        for name in [
            "..",
            "../a.csv",
            "logs/../../a.csv",
            "../here/a.csv",
            "/a.csv",
            "/",
            "\\a.csv",
            "\\\\server\\a.csv",
            "..\\a.csv",
            "logs\\..\\..\\a.csv",
            "C:a.csv",
            "c:\\a.csv",
        ] {
            assert!(leads_out(name), "{name}");
        }
        for name in [
            "a.csv",
            "./a.csv",
            "logs/a.csv",
            "logs/../a.csv",
            "a..csv",
            "...",
            "10:20.csv",
            "",
        ] {
            assert!(!leads_out(name), "{name}");
        }
    }
}
