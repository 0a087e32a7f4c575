//! `new`: a campaign folder to fill in.

use std::fs;
use std::io::ErrorKind;
use std::path::Path;

use super::args::NewOptions;
use super::new_runs::find_logs;
use super::terminal::{print_note, print_sentences, quoted};
use crate::campaign::check::{Given, given_to_new};
use crate::campaign::find::{CAMPAIGN_FILE, check_folder_name};
use crate::campaign::kinds::RunKind;
use crate::campaign::template::{LOG_NAME, header_of, template_of, with_found, without_shared};
use crate::error::{Error, Problem, Result, why};
use crate::language::LANGUAGES;
use crate::report::files::{replace_file, try_folder};
use crate::units::counted;

/// What to do where nothing can be written.
const OTHER_FOLDER: &str = "choose a folder you may write to";

/// Writes the empty log and, last, the campaign file.
///
/// # Errors
/// [`Error::Usage`] if one is there already, or the folder cannot be written to or has a name
/// that cannot be printed.
pub fn run(options: &NewOptions) -> Result<u8> {
    let folder = &options.folder;
    check_folder_name(folder)?;
    let Given {
        shared,
        rules,
        time_zone,
    } = given_to_new(folder)?;
    let found = find_logs(folder, &rules, &time_zone, options.kind);
    let log = format!("{}\n", header_of(options.kind));
    // A call that was killed may have left the log, and nothing typed into it.
    let has_log = !found.runs.is_empty() || is_there(&folder.join(LOG_NAME), Some(&log))?;
    is_there(&folder.join(CAMPAIGN_FILE), None)?;
    fs::create_dir_all(folder).map_err(|error| cannot_write(folder, &error))?;
    try_folder(folder, OTHER_FOLDER)?;
    if !has_log {
        replace_file(&folder.join(LOG_NAME), None, log.as_bytes(), OTHER_FOLDER)?;
    }
    let kind = found
        .runs
        .first()
        .map_or(options.kind, |_| RunKind::default());
    let text = without_shared(&campaign_file(kind), &shared);
    let text = with_found(&text, &found.runs);
    replace_file(
        &folder.join(CAMPAIGN_FILE),
        None,
        text.as_bytes(),
        OTHER_FOLDER,
    )?;
    let name = quoted(folder);
    let wrote = match found.runs.len() {
        0 => format!("{name}: wrote {CAMPAIGN_FILE} and {LOG_NAME}"),
        count => format!(
            "{name}: wrote {CAMPAIGN_FILE}, with the {} found there:",
            counted(count, "log")
        ),
    };
    let runs = found.runs.iter();
    let runs: Vec<String> = runs
        .map(|run| format!("  {}: {}", run.log, run.when))
        .collect();
    let given = shared.iter().filter(|one| !one.holding.is_empty());
    let given = given.map(|one| {
        let (file, keys) = (one.path.display(), one.spoken_keys());
        format!("{file} gives {keys}: these keys need not be filled in")
    });
    let given: Vec<String> = given.collect();
    let both = if found.runs.is_empty() {
        "both"
    } else {
        "the file"
    };
    let next = format!("Fill in {both}, then: simmerline check {name}");
    let said = std::iter::once(&wrote)
        .chain(&runs)
        .chain(&given)
        .chain([&next]);
    print_sentences(&said.map(String::as_str).collect::<Vec<_>>())?;
    found.left_out.iter().for_each(|note| print_note(note));
    Ok(0)
}

/// The campaign file to fill in, with a run of a kind and the languages that there are.
fn campaign_file(kind: RunKind) -> String {
    let [others @ .., last] = LANGUAGES.map(|language| language.code);
    let languages = format!("{} or {last}", others.join(", "));
    template_of(kind).replace("[languages]", &languages)
}

/// Whether a file is there, which has to be the same as what would be written.
fn is_there(path: &Path, text: Option<&str>) -> Result<bool> {
    let Ok(of) = fs::symlink_metadata(path) else {
        return Ok(false);
    };
    let is_same = |text: &str| {
        of.is_file()
            && of.len() == text.len() as u64
            && fs::read(path).is_ok_and(|bytes| bytes == text.as_bytes())
    };
    if text.is_some_and(is_same) {
        return Ok(true);
    }
    let problem = Problem::at(path, "is there already and stays as it is");
    Err(Error::Usage(problem.hint("choose another folder").into()))
}

fn cannot_write(path: &Path, error: &std::io::Error) -> Error {
    let hint = match error.kind() {
        ErrorKind::AlreadyExists => "a file of that name is there already: choose another folder",
        _ => OTHER_FOLDER,
    };
    let problem = Problem::at(path, format!("cannot be written: {}", why(error)));
    Error::Usage(problem.hint(hint).into())
}
