//! `check`: what can be used so far, and what is missing.

use std::path::Path;

use jiff::Timestamp;

use super::args::{CheckOptions, DataFormat};
use super::check_text::describe;
use super::data::check_file::{CampaignEntry, CheckFile};
use super::issue::time_of_issue;
use super::lines::Lines;
use super::report::STRICT_FAILURE;
use super::screen::Screen;
use super::speech::words_for_one;
use super::terminal::{print_error, print_json, print_lines};
use crate::campaign::find::find_campaigns;
use crate::error::Result;
use crate::logs::unnamed::unnamed_logs;
use crate::procedure::Assessment;
use crate::procedure::notice::Notice;
use crate::procedure::slips::dates::in_future;
use crate::procedure::slips::notice::SlipNotice;

/// Screens each campaign and prints what was found.
///
/// # Errors
/// [`crate::error::Error::Usage`] if there is no campaign, or for a fixed time that is none; what is wrong with a single one is
/// printed, and told by the exit code.
pub fn run(options: &CheckOptions) -> Result<u8> {
    let now = time_of_issue()?;
    let mut outcome = ExitCodes::default();
    let mut entries = Vec::new();
    for (index, folder) in find_campaigns(&options.paths)?.iter().enumerate() {
        let assessed = assess(folder, options, now);
        outcome.add(&assessed);
        match options.format {
            DataFormat::Text => print_text(folder, &assessed, options, index == 0)?,
            DataFormat::Json => entries.push(CampaignEntry::of(folder, &assessed)),
        }
    }
    let code = outcome.code(options.strict);
    if options.format == DataFormat::Json {
        print_json(&CheckFile::new(entries, code).to_text()?)?;
    }
    Ok(code)
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
    is_first: bool,
) -> Result<()> {
    let mut lines = Lines::new(Screen::out());
    match assessed {
        Ok(assessment) => {
            if !is_first {
                lines.blank();
            }
            let words = words_for_one(options.language, &assessment.tested.campaign.report);
            let unnamed = unnamed_logs(&assessment.tested.campaign);
            describe(&mut lines, assessment, &unnamed, folder, &words);
        }
        Err(error) => print_error(error),
    }
    print_lines(&lines)
}
