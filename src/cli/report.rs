//! `report`: campaigns to reports.

use std::collections::BTreeMap;
use std::io::IsTerminal;
use std::path::{Path, PathBuf};
use std::sync::atomic::{AtomicUsize, Ordering};
use std::sync::mpsc;
use std::thread;

use indicatif::{ProgressBar, ProgressStyle};
use jiff::Timestamp;

use super::args::ReportOptions;
use super::lines::Lines;
use super::report_index::IndexPage;
use super::report_table::{CampaignRow, add_table, notes, unnamed};
use super::screen::Screen;
use super::speech::words_for;
use super::terminal::{line, print, print_error, print_lines, print_note};
use crate::campaign::find::{campaign_name, find_campaigns, refuse_same_names};
use crate::error::{Error, Problem, Result};
use crate::language::Message;
use crate::logs::unnamed::unnamed_logs;
use crate::procedure::Assessment;
use crate::report::comparison::outputs::NAME as COMPARISON;
use crate::report::data::tables::{Collection, TABLES};
use crate::report::files::{FileFacts, prepare_folder, write_all};
use crate::report::{Edition, Format, outputs};
use crate::shown::shown;

/// What to do about two campaigns of one name.
const SAME_NAME: &str = "outputs are named after the folder: rename one, or rate them one at a time into different --out folders";

/// Exit code under `--strict` where a rating falls short of one that conforms.
pub const STRICT_FAILURE: u8 = 5;

/// So many campaigns are rated at once; large logs of more would not fit into memory.
const AT_ONCE: usize = 2;

/// Environment variable that fixes the time of issue, seconds since 1970.
const FIXED_TIME: &str = "SOURCE_DATE_EPOCH";

/// End of the last year that a PDF can be dated in, seconds since 1970.
const END_OF_9999_S: i64 = 253_402_300_800;

/// Rates each campaign and writes its outputs.
///
/// # Errors
/// [`Error::Usage`] if there is no campaign or the output folder cannot be used;
/// what is wrong with a single campaign is printed, and told by the exit code.
pub fn run(options: &ReportOptions) -> Result<u8> {
    let folders = find_campaigns(&options.paths)?;
    refuse_same_names(&folders, SAME_NAME)?;
    refuse_name_of_comparison(&folders)?;
    let issued = time_of_issue()?;
    open_folder(&options.out, options.quiet)?;
    let mut index = IndexPage::begin(&folders, options)?;
    let progress = progress_bar(folders.len(), options.quiet);
    let mut rows = Vec::new();
    let mut first_failure = None;
    let wants_tables = options.format.contains(&Format::Parquet);
    let mut collection = wants_tables.then(Collection::default);
    let work = |folder: &PathBuf| rate_and_write(folder, options, issued);
    side_by_side(&folders, work, |folder, outcome| {
        progress.set_message(shown(&folder.display().to_string()).into_owned());
        match outcome {
            Ok(Rated {
                assessment,
                files,
                unnamed,
            }) => {
                if let Some(collection) = &mut collection {
                    collection.add(&assessment, files);
                }
                if let Some(index) = &mut index {
                    index.add(&assessment, options);
                }
                let report = report_path(&assessment.tested.campaign.name, options);
                rows.push(CampaignRow::of(&assessment, report).noting(unnamed));
            }
            Err(error) => {
                progress.suspend(|| print_error(&error));
                first_failure.get_or_insert(error.exit_code());
                if let Some(index) = &mut index {
                    index.add_failed(folder);
                }
            }
        }
        progress.inc(1);
    });
    progress.finish_and_clear();
    let words = words_for(options.language, rows.iter().map(|row| row.language));
    if !options.quiet && !rows.is_empty() {
        let mut lines = Lines::new(Screen::out());
        add_table(&mut lines, &rows, &words);
        print_lines(&lines)?;
    }
    if let Some(collection) = &collection
        && let Err(error) = write_tables(collection, options, issued)
    {
        print_error(&error);
        first_failure.get_or_insert(error.exit_code());
    }
    if let Some(index) = index
        && let Err(error) = index.write(options, &words, issued)
    {
        print_error(&error);
        first_failure.get_or_insert(error.exit_code());
    }
    if !options.quiet {
        notes(&rows, &words)
            .iter()
            .for_each(|note| print_note(note));
    }
    let is_indicative = rows.iter().any(CampaignRow::falls_short);
    let strict_failure = (options.strict && is_indicative).then_some(STRICT_FAILURE);
    Ok(first_failure.or(strict_failure).unwrap_or(0))
}

/// Makes the output folder ready, and says what earlier calls had left unfinished there.
///
/// # Errors
/// [`Error::Usage`] if it cannot be used.
pub fn open_folder(folder: &Path, is_quiet: bool) -> Result<()> {
    let notes = prepare_folder(folder)?;
    if !is_quiet {
        notes.iter().for_each(|note| print_note(note));
    }
    Ok(())
}

/// Refuses a campaign whose files would take the place of a comparison's.
fn refuse_name_of_comparison(folders: &[PathBuf]) -> Result<()> {
    let is_taken = |folder: &&PathBuf| campaign_name(folder) == COMPARISON;
    let Some(folder) = folders.iter().find(is_taken) else {
        return Ok(());
    };
    let what = "has the name of the files that compare writes, and would replace them";
    let problem = Problem::at(folder, what).hint("rename the folder");
    Err(Error::Usage(problem.into()))
}

/// Works on the folders, `AT_ONCE` at a time, and hands over what came of each in their
/// order.
pub fn side_by_side<T: Send>(
    folders: &[PathBuf],
    work: impl Fn(&PathBuf) -> T + Sync,
    mut hand_over: impl FnMut(&PathBuf, T),
) {
    let (next, work) = (&AtomicUsize::new(0), &work);
    let (done, outcomes) = mpsc::channel();
    thread::scope(|scope| {
        for _ in 0..AT_ONCE {
            let done = done.clone();
            scope.spawn(move || {
                loop {
                    let index = next.fetch_add(1, Ordering::Relaxed);
                    let Some(folder) = folders.get(index) else {
                        break;
                    };
                    done.send((index, work(folder)))
                        .expect("outcomes are taken until all are done");
                }
            });
        }
        drop(done);
        let (mut early, mut due) = (BTreeMap::new(), 0);
        for (index, outcome) in outcomes {
            early.insert(index, outcome);
            while let Some(outcome) = early.remove(&due) {
                hand_over(&folders[due], outcome);
                due += 1;
            }
        }
    });
}

/// A campaign that was rated.
struct Rated {
    assessment: Assessment,
    /// What was written of it.
    files: Vec<FileFacts>,
    /// Of logs that no run names. A report says nothing of them: it follows from what it carries.
    unnamed: Option<Message>,
}

/// A campaign's rating, written.
fn rate_and_write(folder: &Path, options: &ReportOptions, issued: Timestamp) -> Result<Rated> {
    let assessment = crate::assess_reaching(folder, options.files.reach())?;
    let wishes = &assessment.tested.campaign.report;
    let edition = Edition {
        formats: distinct(&options.format),
        has_attachments: !options.no_attachments,
        ..Edition::wished(wishes, issued).in_language(options.language)
    };
    let outputs = outputs(&assessment, &edition)?;
    let name = &assessment.tested.campaign.name;
    let files = write_all(&options.out, name, &outputs)?;
    let unnamed = match options.quiet {
        true => None,
        false => unnamed(&unnamed_logs(&assessment.tested.campaign)),
    };
    Ok(Rated {
        assessment,
        files,
        unnamed,
    })
}

/// Each format once, in the order asked for.
fn distinct(formats: &[Format]) -> Vec<Format> {
    let mut distinct = Vec::new();
    for format in formats {
        if !distinct.contains(format) {
            distinct.push(*format);
        }
    }
    distinct
}

/// Writes the tables of all campaigns, and says where they are.
fn write_tables(collection: &Collection, options: &ReportOptions, issued: Timestamp) -> Result<()> {
    let outputs = collection.outputs(issued)?;
    let written = write_all(&options.out, TABLES, &outputs)?;
    if !options.quiet && !written.is_empty() {
        let paths = written.iter().map(|file| options.out.join(&file.name));
        let paths = paths.map(|path| line(&path.display().to_string()));
        print(&format!("\n{}", paths.collect::<String>()))?;
    }
    Ok(())
}

/// The time printed as that of issue: now, or what the environment fixes.
pub fn time_of_issue() -> Result<Timestamp> {
    let Some(fixed) = std::env::var_os(FIXED_TIME) else {
        return Ok(Timestamp::now());
    };
    let seconds = fixed.to_str().and_then(|text| text.trim().parse().ok());
    seconds
        .filter(|seconds| (0..END_OF_9999_S).contains(seconds))
        .and_then(|seconds| Timestamp::from_second(seconds).ok())
        .ok_or_else(|| {
            let found = fixed.to_string_lossy();
            let problem = Problem::at(
                Path::new(FIXED_TIME),
                format!("found \"{found}\", expected seconds since 1970"),
            );
            Error::Usage(
                problem
                    .hint("unset the environment variable, or give a whole number")
                    .into(),
            )
        })
}

fn progress_bar(campaigns: usize, is_quiet: bool) -> ProgressBar {
    if is_quiet || !std::io::stderr().is_terminal() {
        return ProgressBar::hidden();
    }
    let style = ProgressStyle::with_template("{pos} of {len}  {bar:24}  {msg}")
        .unwrap_or_else(|_| ProgressStyle::default_bar());
    ProgressBar::new(campaigns as u64).with_style(style)
}

/// Where the report is; of several forms, the first, and of none the results.
fn report_path(name: &str, options: &ReportOptions) -> String {
    let mut endings = options.format.iter().filter_map(|format| format.ending());
    let ending = endings.next().unwrap_or("rating.json");
    let file = options.out.join(format!("{name}.{ending}"));
    file.display().to_string()
}
