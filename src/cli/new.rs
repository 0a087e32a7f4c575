//! `new`: a campaign folder to fill in.

use std::fs::{self, File};
use std::io::{ErrorKind, Write};
use std::path::Path;

use super::args::NewOptions;
use super::terminal::{line, print, quoted};
use crate::campaign::find::{CAMPAIGN_FILE, check_folder_name};
use crate::campaign::template::{CAMPAIGN_TEMPLATE, CANONICAL_HEADER, LOG_NAME};
use crate::error::{Error, Problem, Result};
use crate::language::LANGUAGES;

/// Writes the campaign file and the empty log.
///
/// # Errors
/// [`Error::Usage`] if one is there already, or the folder cannot be written to or has a name
/// that cannot be printed.
pub fn run(options: &NewOptions) -> Result<u8> {
    let folder = &options.folder;
    check_folder_name(folder)?;
    for name in [CAMPAIGN_FILE, LOG_NAME] {
        if folder.join(name).exists() {
            let problem = Problem::at(&folder.join(name), "is there already and stays as it is")
                .hint("choose another folder");
            return Err(Error::Usage(problem.into()));
        }
    }
    fs::create_dir_all(folder).map_err(|error| cannot_write(folder, &error))?;
    write_new(&folder.join(CAMPAIGN_FILE), &campaign_file())?;
    write_new(&folder.join(LOG_NAME), &format!("{CANONICAL_HEADER}\n"))?;
    let name = quoted(folder);
    let wrote = line(&format!("{name}: wrote {CAMPAIGN_FILE} and {LOG_NAME}"));
    let next = line(&format!("Fill in both, then: simmerline check {name}"));
    print(&(wrote + &next))?;
    Ok(0)
}

/// The campaign file to fill in, with the languages that there are.
fn campaign_file() -> String {
    let [others @ .., last] = LANGUAGES.map(|language| language.code);
    let languages = format!("{} or {last}", others.join(", "));
    CAMPAIGN_TEMPLATE.replace("[languages]", &languages)
}

/// Writes a file that must not be there yet.
fn write_new(path: &Path, text: &str) -> Result<()> {
    File::create_new(path)
        .and_then(|mut file| file.write_all(text.as_bytes()))
        .map_err(|error| cannot_write(path, &error))
}

fn cannot_write(path: &Path, error: &std::io::Error) -> Error {
    let hint = match error.kind() {
        ErrorKind::AlreadyExists => "a file of that name is there already: choose another folder",
        _ => "choose a folder you may write to",
    };
    let problem = Problem::at(path, format!("cannot be written ({error})"));
    Error::Usage(problem.hint(hint).into())
}
