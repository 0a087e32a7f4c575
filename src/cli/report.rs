//! `report`: campaigns to reports.

use jiff::Timestamp;

use super::args::ReportOptions;
use super::data::summary_file::{NAME as SUMMARY, Outcome, SummaryFile};
use super::issue::open_folder;
use super::lines::Lines;
use super::progress::progress_bar;
use super::report_index::IndexPage;
use super::report_one::{Call, Done};
use super::report_table::{CampaignRow, Noticed, add_table, notes};
use super::screen::Screen;
use super::speech::words_for;
use super::terminal::{
    line, print, print_error, print_errors, print_lines, print_note, print_note_in, quoted,
};
use crate::batch::causes::Causes;
use crate::batch::collection::{kept_below, tables};
use crate::batch::jobs::{Jobs, memory_of, side_by_side};
use crate::batch::record::Record;
use crate::campaign::find::{Unit, find_units};
use crate::error::{Error, Problem, Result};
use crate::language::{UnitSystem, Words};
use crate::message;
use crate::report::Format;
use crate::report::comparison::outputs::NAME as COMPARISON;
use crate::report::data::tables::collection::TABLES;
use crate::report::files::write_all;
use crate::shown::shown;

/// Exit code under `--strict` where a rating falls short of one that conforms.
pub const STRICT_FAILURE: u8 = 5;

/// Rates each campaign and writes its outputs.
///
/// # Errors
/// [`Error::Usage`] if there is no campaign or the output folder cannot be used;
/// what is wrong with a single campaign is printed, and told by the exit code.
pub fn run(options: &ReportOptions) -> Result<u8> {
    let units = find_units(&options.paths, options.root.as_deref())?;
    refuse_name_of_comparison(&units)?;
    let call = Call::begin(options)?;
    open_folder(&options.out, options.quiet)?;
    let index = IndexPage::begin(&units, options)?;
    let progress = progress_bar(units.len(), options.quiet);
    let mut told = Told::new(index, options);
    side_by_side(
        Jobs::wanted(options.jobs),
        &units,
        |unit| memory_of(&unit.folder),
        |unit| call.work(unit),
        |unit, outcome| {
            progress.set_message(shown(&unit.folder.display().to_string()).into_owned());
            told.add(unit, outcome);
            progress.inc(1);
        },
    );
    progress.finish_and_clear();
    told.end(units.len(), call.issued)
}

/// Refuses a campaign whose files would take the place of a comparison's.
fn refuse_name_of_comparison(units: &[Unit]) -> Result<()> {
    let Some(unit) = units.iter().find(|unit| unit.place() == COMPARISON) else {
        return Ok(());
    };
    let what = "has the name of the files that compare writes, and would replace them";
    let problem = Problem::at(&unit.folder, what).hint("rename the folder");
    Err(Error::Usage(problem.into()))
}

/// What is told of a call, on the terminal and in files of all its campaigns together.
struct Told<'o> {
    options: &'o ReportOptions,
    rows: Vec<CampaignRow>,
    noticed: Vec<Noticed>,
    left_alone: usize,
    causes: Causes,
    first_failure: Option<u8>,
    index: Option<IndexPage>,
    summary: SummaryFile,
}

impl<'o> Told<'o> {
    fn new(index: Option<IndexPage>, options: &'o ReportOptions) -> Self {
        Told {
            options,
            rows: Vec::new(),
            noticed: Vec::new(),
            left_alone: 0,
            causes: Causes::default(),
            first_failure: None,
            index,
            summary: SummaryFile::default(),
        }
    }

    fn add(&mut self, unit: &Unit, outcome: Result<Done>) {
        match outcome {
            Ok(Done::Made { record, noticed }) => {
                self.noticed.push(noticed);
                self.add_record(unit, *record, Outcome::Made);
            }
            Ok(Done::LeftAlone { record, noticed }) => {
                self.left_alone += 1;
                self.noticed.push(noticed);
                self.add_record(unit, *record, Outcome::LeftAlone);
            }
            Err(error) => {
                self.first_failure.get_or_insert(error.exit_code());
                self.causes.add(&error);
                self.summary.add_failed(unit, &error);
                if let Some(index) = &mut self.index {
                    index.add_failed(unit);
                }
            }
        }
    }

    fn add_record(&mut self, unit: &Unit, record: Record, outcome: Outcome) {
        self.summary.add(unit, &record, outcome);
        if let Some(index) = &mut self.index {
            index.add(unit, &record.brief, self.options);
        }
        let report = report_path(&unit.place(), self.options);
        self.rows.push(CampaignRow::of(record.brief, report));
    }

    /// Prints the table and what goes with it, and writes the files of all campaigns together.
    fn end(mut self, campaigns: usize, issued: Timestamp) -> Result<u8> {
        let words = self.words();
        let is_loud = !self.options.quiet;
        print_errors(&self.causes.told());
        if is_loud && campaigns > 1 && self.causes.failed() > 0 {
            print_note(&format!(
                "{} of {campaigns} campaigns could not be reported; what lies there of them is of earlier calls",
                self.causes.failed()
            ));
        }
        if is_loud && !self.rows.is_empty() {
            let mut lines = Lines::new(Screen::out());
            add_table(&mut lines, &self.rows, &words);
            print_lines(&lines)?;
        }
        let written = [
            self.write_tables(campaigns, issued),
            self.write_index(&words, issued),
            self.write_summary(campaigns),
        ];
        for error in written.into_iter().filter_map(Result::err) {
            print_error(&error);
            self.first_failure.get_or_insert(error.exit_code());
        }
        if is_loud {
            let noticed = notes(&self.noticed, &words);
            noticed.iter().for_each(|note| print_note_in(&words, note));
            if self.left_alone > 0 {
                let all = campaigns;
                let left = message!("terminal-left-alone", count = self.left_alone, all = all);
                print_note_in(&words, &words.say(left));
            }
        }
        let falls_short = self.rows.iter().any(CampaignRow::falls_short);
        let strict_failure = (self.options.strict && falls_short).then_some(STRICT_FAILURE);
        Ok(self.first_failure.or(strict_failure).unwrap_or(0))
    }

    fn words(&self) -> Words {
        let languages = self.rows.iter().filter_map(CampaignRow::language);
        // Its rows are of watts alone.
        let wished = languages.map(|language| (language, UnitSystem::Si));
        words_for(self.options.language, wished)
    }

    /// Collects the rows of all campaigns whose outputs are there, and says where they are.
    fn write_tables(&self, campaigns: usize, issued: Timestamp) -> Result<()> {
        let out = &self.options.out;
        let wants_rows = self.options.format.contains(&Format::Parquet);
        if campaigns < 2 || self.is_part() || !wants_rows || self.rows.is_empty() {
            self.note_older_tables();
            return Ok(());
        }
        let mut kept = kept_below(std::slice::from_ref(out))?;
        // What was reported without rows is not part of the tables.
        kept.retain(|one| one.has_rows());
        let written = write_all(out, TABLES, &tables(&kept, out, issued)?)?;
        if self.options.quiet {
            return Ok(());
        }
        let paths = written.iter().map(|file| out.join(&file.name));
        let paths = paths.map(|path| line(&path.display().to_string()));
        print(&format!("\n{}", paths.collect::<String>()))?;
        let others = kept.len().saturating_sub(self.rows.len());
        if others > 0 {
            print_note(&format!(
                "the tables hold {others} more campaigns, whose files lie in {} from earlier calls",
                out.display()
            ));
        }
        Ok(())
    }

    /// With a root the call is a part of a whole: what is of all together is collected later.
    fn is_part(&self) -> bool {
        self.options.root.is_some()
    }

    /// Says that tables of an earlier call are older than what this one has made.
    fn note_older_tables(&self) {
        let out = &self.options.out;
        let tables = out.join(format!("{TABLES}.json"));
        let has_made = self.rows.len() > self.left_alone;
        if has_made && !self.is_part() && !self.options.quiet && tables.is_file() {
            print_note(&format!(
                "{} and the tables beside it are of an earlier call; to renew them: simmerline collect {out} --out {out}",
                tables.display(),
                out = quoted(out)
            ));
        }
    }

    fn write_index(&mut self, words: &Words, issued: Timestamp) -> Result<()> {
        match self.index.take() {
            Some(index) => index.write(self.options, words, issued),
            None => Ok(()),
        }
    }

    fn write_summary(&self, campaigns: usize) -> Result<()> {
        match campaigns {
            0 | 1 => Ok(()),
            _ if self.is_part() => Ok(()),
            _ => write_all(&self.options.out, SUMMARY, &[self.summary.output()?]).map(drop),
        }
    }
}

/// Where the report is; of several forms, the first, and of none the results.
fn report_path(place: &str, options: &ReportOptions) -> String {
    let mut endings = options.format.iter().filter_map(|format| format.ending());
    let ending = endings.next().unwrap_or("rating.json");
    let file = options.out.join(format!("{place}.{ending}"));
    file.display().to_string()
}
