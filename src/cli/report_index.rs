//! The page that leads to the reports of one call, as `report` writes it.

use std::path::{Path, PathBuf};

use jiff::Timestamp;

use super::args::ReportOptions;
use super::terminal::{line, print, print_note};
use crate::campaign::find::campaign_name;
use crate::campaign::wishes::Paper;
use crate::error::{Error, Problem, Result};
use crate::language::Words;
use crate::procedure::Assessment;
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
    pub fn begin(folders: &[PathBuf], options: &ReportOptions) -> Result<Option<Self>> {
        if !options.format.contains(&Format::Html) {
            return Ok(None);
        }
        refuse_name(folders)?;
        if folders.len() < 2 {
            if is_there(&options.out) && !options.quiet {
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

    /// Adds a campaign that has been written.
    pub fn add(&mut self, campaign: &Assessment, options: &ReportOptions) {
        self.index.add(campaign, &options.format);
        self.paper
            .get_or_insert(campaign.tested.campaign.report.paper);
    }

    /// Adds a campaign that could not be written.
    pub fn add_failed(&mut self, folder: &Path) {
        self.index.add_failed(campaign_name(folder));
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
fn refuse_name(folders: &[PathBuf]) -> Result<()> {
    let is_taken = |folder: &&PathBuf| campaign_name(folder).eq_ignore_ascii_case(NAME);
    let Some(folder) = folders.iter().find(is_taken) else {
        return Ok(());
    };
    let what = format!("has the name of {FILE}, the page that leads to all reports");
    let problem = Problem::at(folder, what).hint("rename the folder");
    Err(Error::Usage(problem.into()))
}
