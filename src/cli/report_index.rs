//! The page that leads to the reports of one call, as `report` writes it.

use jiff::Timestamp;

use super::args::ReportOptions;
use super::terminal::{line, print, print_note};
use crate::batch::brief::Brief;
use crate::campaign::find::Unit;
use crate::campaign::wishes::Paper;
use crate::error::{Error, Problem, Result};
use crate::language::Words;
use crate::report::files::write_all;
use crate::report::index::outputs::{FILE, Index, NAME, is_there, refuse_other_page};
use crate::report::{Edition, Format};

/// The page of a call, if it writes one: several campaigns, as web pages.
pub struct IndexPage {
    index: Index,
    /// That of the first campaign.
    paper: Option<Paper>,
}

impl IndexPage {
    /// Begins the page that a call is to write, if it is to write one.
    ///
    /// # Errors
    /// [`Error::Usage`] for a campaign whose report would have the page's name, and for a page
    /// in the output folder that is not ours.
    pub fn begin(units: &[Unit], options: &ReportOptions) -> Result<Option<Self>> {
        if !options.format.contains(&Format::Html) {
            return Ok(None);
        }
        refuse_name(units)?;
        // With a root this is a part of a whole.
        let is_part = options.root.is_some();
        if units.len() < 2 || is_part {
            if is_there(&options.out) && !options.quiet && !is_part {
                print_note(&format!(
                    "{} leads to reports of an earlier call, and stays as it is; report all campaigns together to renew it",
                    options.out.join(FILE).display()
                ));
            }
            return Ok(None);
        }
        refuse_other_page(&options.out)?;
        Ok(Some(IndexPage {
            index: Index::default(),
            paper: None,
        }))
    }

    /// Adds a campaign whose files are there.
    pub fn add(&mut self, unit: &Unit, brief: &Brief, options: &ReportOptions) {
        self.index
            .add(&brief.standing, &unit.branch, &options.format);
        self.paper.get_or_insert(brief.paper);
    }

    /// Adds a campaign that could not be written.
    pub fn add_failed(&mut self, unit: &Unit) {
        self.index.add_failed(unit.place());
    }

    /// Writes the page in a language, and says where it is.
    ///
    /// # Errors
    /// [`Error::Usage`] if it cannot be written, [`Error::Internal`] if it cannot be made.
    pub fn write(self, options: &ReportOptions, words: &Words, issued: Timestamp) -> Result<()> {
        let plain = Edition::plain(issued);
        let edition = Edition {
            words: Words::new(words.language, words.units),
            paper: self.paper.unwrap_or(plain.paper),
            ..plain
        };
        let Some(page) = self.index.output(&edition)? else {
            return Ok(());
        };
        write_all(&options.out, NAME, &[page])?;
        if !options.quiet {
            let file = options.out.join(FILE);
            print(&format!("\n{}", line(&file.display().to_string())))?;
        }
        Ok(())
    }
}

/// Refuses a campaign whose report would take the place of the page that leads to all.
fn refuse_name(units: &[Unit]) -> Result<()> {
    let is_taken = |unit: &&Unit| unit.place().eq_ignore_ascii_case(NAME);
    let Some(unit) = units.iter().find(is_taken) else {
        return Ok(());
    };
    let what = format!("has the name of {FILE}, the page that leads to all reports");
    let problem = Problem::at(&unit.folder, what).hint("rename the folder");
    Err(Error::Usage(problem.into()))
}
