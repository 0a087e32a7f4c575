//! `new`: a campaign folder to fill in.

use std::fs;
use std::io::{self, ErrorKind, IsTerminal};
use std::path::Path;

use jiff::civil::Date;
use jiff::tz::TimeZone;

use super::args::NewOptions;
use super::issue::time_of_issue;
use super::lines::Lines;
use super::new_ask::{answers_given, ask};
use super::new_runs::{FoundLogs, find_logs};
use super::screen::Screen;
use super::terminal::{print_lines, print_note, print_sentences, quoted};
use crate::campaign::check::{Given, given_to_new};
use crate::campaign::find::{CAMPAIGN_FILE, check_folder_name};
use crate::campaign::kinds::RunKind;
use crate::campaign::shared_file::SharedFile;
use crate::campaign::template::{
    FoundRun, LOG_NAME, header_of, template_of, with_found, without_shared,
};
use crate::campaign::zone::parse_zone;
use crate::error::{Error, Problem, Result, why};
use crate::language::LANGUAGES;
use crate::report::files::{replace_file, try_folder};
use crate::setup::answers::{Answers, SunSensor};
use crate::setup::filled::filled;
use crate::setup::questions::Question;
use crate::units::counted;

/// What a remark begins with on a key that is to be filled in.
const TO_FILL_IN: &str = "# FILL IN";
/// What to do where nothing can be written.
const OTHER_FOLDER: &str = "choose a folder you may write to";

/// Asks what no option answers, where there is a terminal; writes the empty log and, last, the
/// campaign file.
///
/// # Errors
/// [`Error::Usage`] if one is there already, an answer cannot be, or the folder cannot be
/// written to or has a name that cannot be printed.
pub fn run(options: &NewOptions) -> Result<u8> {
    let folder = &options.folder;
    check_folder_name(folder)?;
    let given = given_to_new(folder)?;
    let shared = Answers {
        units: Some(given.units).filter(|_| is_shared(&given, Question::Units)),
        ..Answers::default()
    };
    let (dropped, answered): (Vec<_>, Vec<_>) = options
        .given()
        .into_iter()
        .partition(|(question, _)| is_shared(&given, *question));
    let said = answers_given(shared, &answered)?;
    for (question, _) in dropped {
        let option = question.option();
        print_note(&format!(
            "--{option} is not written: a file of shared keys gives it"
        ));
    }
    is_there(&folder.join(CAMPAIGN_FILE), None)?;
    let mut found = found_logs(folder, &given, &said);
    let how_read = |answers: &Answers| (answers.time_zone.clone(), answers.kind());
    let read_so = how_read(&said);
    let is_asked = !options.yes && io::stdin().is_terminal() && io::stdout().is_terminal();
    let answers = match is_asked {
        false => with_zone_of_place(said)?,
        true => {
            // Before a dozen questions, not after.
            let there = folder.ancestors().find(|one| one.is_dir());
            try_folder(there.unwrap_or(Path::new(".")), OTHER_FOLDER)?;
            print_found(&found)?;
            let questions = questions(options, &given, &found);
            let said = Answers {
                logged_sun: logged_sun(&found),
                ..said
            };
            match ask(said, questions)? {
                Some(answers) => answers,
                None => {
                    print_sentences(&["Nothing is written."])?;
                    return Ok(0);
                }
            }
        }
    };
    if answers.takes_logs == Some(false) {
        found = FoundLogs::default();
    } else if how_read(&answers) != read_so {
        found = found_logs(folder, &given, &answers);
    }
    let is_complete = write(folder, &given.shared, &found, &answers)?;
    print_written(folder, &given.shared, &found, &answers, is_complete)?;
    found.left_out.iter().for_each(|note| print_note(note));
    Ok(0)
}

/// The logs that lie there, read as runs of the kind that was said, by the clock that was said.
fn found_logs(folder: &Path, given: &Given, answers: &Answers) -> FoundLogs {
    let zone = answers.time_zone.as_deref().and_then(parse_zone);
    let zone = zone.unwrap_or_else(|| given.time_zone.clone());
    find_logs(folder, &given.rules, &zone, answers.kind())
}

/// Whether a file of shared keys answers a question.
fn is_shared(given: &Given, question: Question) -> bool {
    let mut holding = given.shared.iter().flat_map(|one| &one.holding);
    question
        .key()
        .is_some_and(|key| holding.any(|held| held == key))
}

/// What measures the sunlight, as far as logs tell.
fn logged_sun(found: &FoundLogs) -> Option<SunSensor> {
    let measuring: Vec<&FoundRun> = found.runs.iter().filter(|run| run.has_irradiance).collect();
    match measuring.iter().any(|run| run.is_horizontal) {
        true => Some(SunSensor::LiesFlat),
        false => (!measuring.is_empty()).then_some(SunSensor::FacesSun),
    }
}

/// What is asked: what neither an option nor a file of shared keys answers.
fn questions(options: &NewOptions, given: &Given, found: &FoundLogs) -> Vec<Question> {
    let answered: Vec<Question> = options
        .given()
        .iter()
        .map(|(question, _)| *question)
        .collect();
    let is_open = |question: &Question| {
        let has_logs = *question != Question::Logs || !found.runs.is_empty();
        has_logs && !answered.contains(question) && !is_shared(given, *question)
    };
    Question::ALL.into_iter().filter(is_open).collect()
}

/// Nobody is asked: where a place is said, and no zone, it is that of the place.
fn with_zone_of_place(mut answers: Answers) -> Result<Answers> {
    let has_none = answers.time_zone.is_none();
    if let Some(zone) = Question::TimeZone.offers(&answers).filter(|_| has_none) {
        print_note(&format!(
            "time_zone = \"{zone}\" is that of the place; --time-zone states another"
        ));
        answers.time_zone = Some(zone);
    }
    Ok(answers)
}

/// Writes the campaign file, last, and before it an empty log where there is none. Says whether
/// nothing is left to fill in.
fn write(
    folder: &Path,
    shared: &[SharedFile],
    found: &FoundLogs,
    answers: &Answers,
) -> Result<bool> {
    let log = format!("{}\n", header_of(answers.kind()));
    // A call that was killed may have left the log, and nothing typed into it.
    let has_log = !found.runs.is_empty() || is_there(&folder.join(LOG_NAME), Some(&log))?;
    fs::create_dir_all(folder).map_err(|error| cannot_write(folder, &error))?;
    try_folder(folder, OTHER_FOLDER)?;
    if !has_log {
        replace_file(&folder.join(LOG_NAME), None, log.as_bytes(), OTHER_FOLDER)?;
    }
    let first = found.runs.first();
    let kind = first.map_or(answers.kind(), |_| RunKind::default());
    let text = filled(&campaign_file(kind), answers);
    let text = with_found(&without_shared(&text, shared), &found.runs);
    replace_file(
        &folder.join(CAMPAIGN_FILE),
        None,
        text.as_bytes(),
        OTHER_FOLDER,
    )?;
    Ok(!text.contains(TO_FILL_IN))
}

/// Says which logs lie there, and how each was understood.
fn print_found(found: &FoundLogs) -> Result<()> {
    if found.runs.is_empty() && found.left_out.is_empty() {
        return Ok(());
    }
    let mut lines = Lines::new(Screen::out());
    lines.line("Logs that lie there:");
    let rows = found.runs.iter().map(|run| {
        let said = format!("{}; {}", run.when, run.understood);
        (run.log.clone(), said)
    });
    lines.rows("  ", &rows.collect::<Vec<_>>());
    for note in &found.left_out {
        lines.hanging("  ", note);
    }
    lines.blank();
    print_lines(&lines)
}

/// Says what was written, and what to do next.
fn print_written(
    folder: &Path,
    shared: &[SharedFile],
    found: &FoundLogs,
    answers: &Answers,
    is_complete: bool,
) -> Result<()> {
    let zone = answers.time_zone.as_deref().and_then(parse_zone);
    let today = time_of_issue()?.to_zoned_datetime(zone.unwrap_or(TimeZone::UTC));
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
    let said = std::iter::once(wrote)
        .chain(runs)
        .chain(given)
        .chain(next_steps(&name, found, is_complete, today.date()));
    let said: Vec<String> = said.collect();
    print_sentences(&said.iter().map(String::as_str).collect::<Vec<_>>())
}

/// What to do once the file is written.
fn next_steps(name: &str, found: &FoundLogs, is_complete: bool, today: Date) -> Vec<String> {
    match (is_complete, found.runs.is_empty()) {
        (true, true) => vec![
            format!("When to test, and a sheet for a pencil: simmerline plan {name}"),
            format!(
                "Type readings in, or take a file of notes: simmerline enter {name} --date {today}"
            ),
            format!(
                "While a logger writes: name its log in {CAMPAIGN_FILE}, then simmerline watch {name}"
            ),
        ],
        (true, false) => vec![format!("Next: simmerline check {name}")],
        (false, true) => vec![format!("Fill in both, then: simmerline check {name}")],
        (false, false) => vec![format!("Fill in the file, then: simmerline check {name}")],
    }
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
