//! `check`: what can be used so far, and what is missing.

use std::path::Path;
use std::sync::atomic::{AtomicBool, Ordering};

use jiff::Timestamp;

use super::args::{CheckOptions, DataFormat};
use super::check_many::CheckedMany;
use super::check_many_text::describe_many;
use super::check_text::describe;
use super::data::check_file::{CampaignEntry, CheckFile};
use super::issue::time_of_issue;
use super::lines::Lines;
use super::progress::progress_bar;
use super::report::STRICT_FAILURE;
use super::screen::Screen;
use super::speech::{words_for, words_for_one};
use super::terminal::{
    print_error, print_errors, print_json, print_lines, print_while_read, quoted,
};
use crate::batch::jobs::{Jobs, memory_of, side_by_side};
use crate::campaign::find::find_campaigns;
use crate::error::Result;
use crate::logs::unnamed::unnamed_logs;
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::notice::Notice;
use crate::procedure::slips::dates::in_future;
use crate::procedure::slips::notice::SlipNotice;
use crate::shown::shown;

/// Screens each campaign and prints what was found: of one whole, of several what they have in
/// common.
///
/// # Errors
/// [`crate::error::Error::Usage`] if there is no campaign, or for a fixed time that is none; what is wrong with a single one is
/// printed, and told by the exit code.
pub fn run(options: &CheckOptions) -> Result<u8> {
    let now = time_of_issue()?;
    let folders = find_campaigns(&options.paths)?;
    let mut outcome = ExitCodes::default();
    let mut output = Output::new(options, folders.len());
    let progress = progress_bar(folders.len(), folders.len() < 2);
    let is_over = AtomicBool::new(false);
    side_by_side(
        Jobs::wanted(None),
        &folders,
        |folder| memory_of(folder),
        |folder| {
            let is_wanted = !is_over.load(Ordering::Relaxed);
            is_wanted.then(|| assess(folder, options, now))
        },
        |folder, assessed| {
            let Some(assessed) = assessed.filter(|_| !is_over.load(Ordering::Relaxed)) else {
                return;
            };
            progress.set_message(shown(&folder.display().to_string()).into_owned());
            outcome.add(&assessed);
            progress.suspend(|| output.add(folder, &assessed, options));
            is_over.store(output.is_over(), Ordering::Relaxed);
            progress.inc(1);
        },
    );
    progress.finish_and_clear();
    let code = outcome.code(options.strict);
    output.end(options, code)?;
    Ok(code)
}

/// How far campaigns are printed one after the other.
#[derive(Clone, Copy)]
enum Printed {
    Nothing,
    Some,
    /// Nobody reads any more of it.
    Closed,
}

/// What is printed, and when.
enum Output {
    Json(Vec<CampaignEntry>),
    /// Each campaign as soon as it is screened.
    Each(Result<Printed>),
    /// All together in the end.
    Many(Box<CheckedMany>),
}

impl Output {
    fn new(options: &CheckOptions, campaigns: usize) -> Output {
        match options.format {
            DataFormat::Json => Output::Json(Vec::new()),
            DataFormat::Text if campaigns < 2 || options.whole => {
                Output::Each(Ok(Printed::Nothing))
            }
            DataFormat::Text => {
                let paths = options.paths.iter().map(|path| quoted(path));
                let paths = paths.collect::<Vec<_>>().join(" ");
                let command = format!("simmerline report {paths}");
                let report = message!("check-next-reports", command = command);
                Output::Many(Box::new(CheckedMany::new(report)))
            }
        }
    }

    fn add(&mut self, folder: &Path, assessed: &Result<Assessment>, options: &CheckOptions) {
        match self {
            Output::Json(entries) => entries.push(CampaignEntry::of(folder, assessed)),
            Output::Each(Ok(before @ (Printed::Nothing | Printed::Some))) => {
                let is_begun = matches!(before, Printed::Some);
                *self = Output::Each(print_text(folder, assessed, options, is_begun));
            }
            Output::Each(Ok(Printed::Closed) | Err(_)) => {}
            Output::Many(checked) => checked.add(folder, assessed),
        }
    }

    /// Whether what comes of further campaigns could not be printed.
    fn is_over(&self) -> bool {
        matches!(self, Output::Each(Ok(Printed::Closed) | Err(_)))
    }

    fn end(self, options: &CheckOptions, code: u8) -> Result<()> {
        match self {
            Output::Json(entries) => print_json(&CheckFile::new(entries, code).to_text()?),
            Output::Each(printed) => printed.map(|_| ()),
            Output::Many(checked) => {
                let words = words_for(options.language, checked.wished.iter().copied());
                let errors = checked.causes.told();
                let mut lines = Lines::new(Screen::out());
                describe_many(&mut lines, *checked, &words);
                print_lines(&lines)?;
                print_errors(&errors);
                Ok(())
            }
        }
    }
}

/// What came of the campaigns so far.
#[derive(Default)]
struct ExitCodes {
    first_failure: Option<u8>,
    falls_short: bool,
}

impl ExitCodes {
    fn add(&mut self, assessed: &Result<Assessment>) {
        match assessed {
            Ok(assessment) => {
                self.falls_short |= assessment.s580.conformity.level.falls_short();
            }
            Err(error) => {
                self.first_failure.get_or_insert(error.exit_code());
            }
        }
    }

    fn code(&self, is_strict: bool) -> u8 {
        let strict_failure = (is_strict && self.falls_short).then_some(STRICT_FAILURE);
        self.first_failure.or(strict_failure).unwrap_or(0)
    }
}

fn assess(folder: &Path, options: &CheckOptions, now: Timestamp) -> Result<Assessment> {
    let mut assessment = crate::assess_reaching(folder, options.files.reach())?;
    crate::report::check_characters(&assessment)?;
    let in_future = in_future(&assessment.tested, now).into_iter();
    let in_future = in_future.map(|slip| Notice::Slip(SlipNotice::Date(slip)));
    assessment.notices.extend(in_future);
    Ok(assessment)
}

fn print_text(
    folder: &Path,
    assessed: &Result<Assessment>,
    options: &CheckOptions,
    is_begun: bool,
) -> Result<Printed> {
    let mut lines = Lines::new(Screen::out());
    match assessed {
        Ok(assessment) => {
            if is_begun {
                lines.blank();
            }
            let words = words_for_one(options.language, &assessment.tested.campaign.report);
            let unnamed = unnamed_logs(&assessment.tested.campaign);
            describe(&mut lines, assessment, &unnamed, folder, &words);
        }
        Err(error) => print_error(error),
    }
    match print_while_read(&lines)? {
        true => Ok(Printed::Some),
        false => Ok(Printed::Closed),
    }
}
