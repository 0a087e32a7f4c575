//! The end of `enter`: the typed log becomes a run of the campaign.

use std::fs;
use std::path::Path;

use super::terminal::{print, print_note, print_sentences, quoted};
use crate::campaign::check::check_new_text;
use crate::campaign::kinds::RunKind;
use crate::campaign::model::{IrradianceEstimate, RunPlan};
use crate::campaign::{Campaign, Reach, read_campaign_to_plan};
use crate::entry::own_rules::own_rules;
use crate::entry::run_table::{Place, RunEntry, lines_by_hand, with_run};
use crate::entry::sheet::{Sheet, spoken};
use crate::error::{Error, Problem, Result};
use crate::logs::read_logs;
use crate::planning::usual_kind;
use crate::procedure::s580::own_limits::check_own_limits;
use crate::report::files::replace_file;
use crate::units::counted;

/// What to do where the campaign file cannot be written.
const NOT_WRITTEN: &str = "add the lines above to it by hand, or type done once you may write it";

/// Longest log that can be a header alone, bytes.
const LONGEST_EMPTY_LOG: u64 = 4096;

/// Adds the run of a saved sheet to the campaign file, and says what is saved.
///
/// # Errors
/// [`Error::Campaign`] or [`Error::Usage`] if the campaign file does not take the run;
/// the lines to add by hand are printed before.
pub fn add_run(
    folder: &Path,
    reach: Reach,
    log: &str,
    sheet: &Sheet,
    is_again: bool,
) -> Result<u8> {
    let (Some(first), Some(last)) = (sheet.lines().first(), sheet.lines().last()) else {
        print("No line was typed, so no run is added.\n")?;
        return Ok(0);
    };
    print_sentences(&[&format!(
        "{}: {} from {} to {}",
        folder.join(log).display(),
        counted(sheet.lines().len(), "line"),
        spoken(first.time),
        spoken(last.time)
    )])?;
    // It may have been changed while somebody typed.
    let campaign = read_campaign_to_plan(folder, reach, check_own_limits)?;
    let place = place(&campaign, &folder.join(log), Some(sheet.form.kind));
    let entry = RunEntry {
        is_again,
        ..entry(&campaign, log, place, sheet)
    };
    let written = write(folder, reach, &campaign, &entry);
    if let Err(error) = written {
        let saved = format!(
            "The log is saved. Its run in {} would be:",
            campaign.file.display()
        );
        print_sentences(&["", &saved, ""])?;
        // As it is to be copied.
        print(&(lines_by_hand(&entry) + "\n"))?;
        if sheet.lines().iter().all(|line| line.cells.air.is_none()) {
            print_note(
                "no line has an air temperature: type it, or name a second log that holds it in the run, as weather = \"…\"",
            );
        }
        return Err(error);
    }
    let done = match place {
        Place::New => format!("the run {log} is added"),
        Place::Present(_) => format!("the run {log} is there"),
        Place::Matched(..) => format!("the run {log} is there, by a pattern"),
        Place::InsteadOf(empty) => format!("the run {log} takes the place of the empty {empty}"),
    };
    let spans = match entry.cloudless.len() {
        0 => String::new(),
        count => format!(", with {}", counted(count, "cloudless span")),
    };
    let kind = match entry.kind {
        RunKind::Water => String::new(),
        kind => format!(", kind = \"{}\"", kind.word()),
    };
    let done = format!("{}: {done}{kind}{spans}", campaign.file.display());
    let next = format!("Next: simmerline check {}", quoted(folder));
    print_sentences(&[&done, &next])?;
    Ok(0)
}

fn entry<'r>(campaign: &Campaign, log: &'r str, place: Place<'r>, sheet: &Sheet) -> RunEntry<'r> {
    // In the shade there is no sun to estimate.
    let is_clear_sky = sheet.form.in_sun()
        && campaign.instruments.irradiance_estimate == Some(IrradianceEstimate::ClearSky);
    let cloudless = match is_clear_sky {
        true => sheet.clear_spans(),
        false => Vec::new(),
    };
    if is_clear_sky && cloudless.is_empty() {
        print_note(
            "no line after the first is marked clear, so no irradiance can be estimated for this run",
        );
    }
    RunEntry {
        log,
        kind: sheet.form.kind,
        place,
        own_rules: own_rules(sheet, &campaign.rules, &campaign.site.time_zone_name),
        cloudless,
        is_again: false,
    }
}

/// The kind of the run whose log this is, or that waits for one; else that of all runs so far; else
/// it heats water.
pub fn kind_of_log(campaign: &Campaign, path: &Path) -> RunKind {
    let name = match place(campaign, path, None) {
        Place::New => return usual_kind(campaign),
        Place::Matched(_, kind) => return kind,
        Place::Present(name) | Place::InsteadOf(name) => name,
    };
    let run = campaign.runs.iter().find(|run| run.log == name);
    run.map_or_else(RunKind::default, |run| run.kind)
}

/// The kind of all runs but one, where they are of one; else it heats water.
pub fn kind_beside(campaign: &Campaign, log: &str) -> RunKind {
    let mut kinds = campaign.runs.iter().filter(|run| run.log != log);
    let first = kinds.next().map(|run| run.kind);
    let is_one = |kind: &RunKind| kinds.all(|run| run.kind == *kind);
    first.filter(is_one).unwrap_or_default()
}

/// The run that names the log, or one whose log is empty: one of the kind, if there is one.
fn place<'c>(campaign: &'c Campaign, path: &Path, kind: Option<RunKind>) -> Place<'c> {
    let is_same = |run: &&RunPlan| match (fs::canonicalize(&run.path), fs::canonicalize(path)) {
        (Ok(one), Ok(other)) => one == other,
        _ => false,
    };
    let runs = || campaign.runs.iter();
    if let Some(run) = runs().find(is_same) {
        return match run.is_matched {
            true => Place::Matched(&run.log, run.kind),
            false => Place::Present(&run.log),
        };
    }
    // What a pattern found has no table of its own, that could name another log.
    let empty = || runs().filter(|run| !run.is_matched && is_empty_log(&run.path));
    let of_kind = empty().find(|run| kind.is_none_or(|kind| run.kind == kind));
    match of_kind.or_else(|| empty().next()) {
        Some(run) => Place::InsteadOf(&run.log),
        None => Place::New,
    }
}

/// Whether a log has a header and nothing else. One that is long or no text has more.
fn is_empty_log(path: &Path) -> bool {
    let is_short = |size: u64| size <= LONGEST_EMPTY_LOG;
    let Ok(true) = fs::metadata(path).map(|of| of.is_file() && is_short(of.len())) else {
        return false;
    };
    let Ok(text) = fs::read_to_string(path) else {
        return false;
    };
    let lines = text.lines().map(str::trim);
    let mut lines = lines.filter(|line| !line.is_empty() && !line.starts_with('#'));
    lines.next().is_some() && lines.next().is_none()
}

/// Writes the campaign file with the run, once its new text and the log in it were read.
fn write(folder: &Path, reach: Reach, campaign: &Campaign, entry: &RunEntry<'_>) -> Result<()> {
    let text = with_run(&campaign.text, entry).map_err(|refusal| {
        let problem = Problem::at(&campaign.file, refusal.what);
        let hint = format!("change it by hand: {}", refusal.hint);
        Error::Campaign(problem.hint(hint).into())
    })?;
    let mut changed = check_new_text(folder, &text, reach, check_own_limits)?;
    let name = match entry.place {
        Place::Present(name) | Place::Matched(name, _) => name,
        Place::New | Place::InsteadOf(_) => entry.log,
    };
    changed.runs.retain(|run| run.log == name);
    // They may be of the columns of other logs.
    changed.calibrations.clear();
    read_logs(&changed)?;
    if text == campaign.text {
        return Ok(());
    }
    let older = Some(campaign.sha256.as_str());
    replace_file(&campaign.file, older, text.as_bytes(), NOT_WRITTEN)
}
