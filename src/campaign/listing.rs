//! The files in a campaign's folder that may be logs.

use std::fs;
use std::io;
use std::path::Path;

use super::find::CAMPAIGN_FILE;
use super::shared_names::is_shared_name;

/// How the names of files end that the program writes, or reads and does not take for logs: a
/// field sheet typed as text, results, and what is not written to its end.
pub const ENDINGS_OF_OURS: &[&str] = &[
    ".sheet.txt",
    ".intervals.csv",
    ".rating.json",
    ".made.json",
    ".parquet",
    ".pdf",
    ".html",
    ".plan.json",
    ".unfinished.json",
    ".part",
    "comparison.csv",
    "comparison.json",
    "summary.json",
    "datapackage.json",
    ".schema.json",
];

/// Whether a file of a name is hidden, or is the program's own, and so no log unless a campaign
/// file names it.
pub fn is_ours(name: &str) -> bool {
    let lower = name.to_lowercase();
    name.starts_with('.')
        || lower == CAMPAIGN_FILE
        || is_shared_name(name)
        || ENDINGS_OF_OURS.iter().any(|ending| lower.ends_with(ending))
}

/// The names of the files in a folder, in their order, but for hidden ones and ours. Of a name
/// that is no UTF-8 text, what can be shown of it.
///
/// # Errors
/// If the folder cannot be listed.
pub fn files_in(folder: &Path) -> io::Result<Vec<String>> {
    let mut names = Vec::new();
    for entry in fs::read_dir(folder)? {
        let entry = entry?;
        let name = entry.file_name().to_string_lossy().into_owned();
        if !is_ours(&name) && entry.path().is_file() {
            names.push(name);
        }
    }
    names.sort();
    Ok(names)
}
