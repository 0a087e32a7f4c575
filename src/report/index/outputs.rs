//! The page as a file, and whose files it may replace.

use std::fs;
use std::io::ErrorKind;
use std::path::Path;

use super::words::{FileKind, Listed, build};
use crate::campaign::find::place_in;
use crate::comparison::standing::Standing;
use crate::error::{Error, Problem, Result};
use crate::report::comparison::ranking;
use crate::report::files::Output;
use crate::report::web_page::{self, INDEX};
use crate::report::{Edition, Format};

/// Name of the page, before its ending: what a server shows of a folder.
pub const NAME: &str = "index";
/// Its file.
pub const FILE: &str = "index.html";
/// Stands in every page of ours, and in no other.
const OWN: &str = "<meta name=\"generator\" content=\"simmerline index\" />";
/// So much of a file is searched for it, bytes.
const SEARCHED: usize = 4096;

/// The campaigns of one call.
#[derive(Default)]
pub struct Index {
    campaigns: Vec<Listed>,
    failed: Vec<String>,
}

impl Index {
    /// Adds a campaign whose files are there in these formats, in a branch below the page.
    pub fn add(&mut self, standing: &Standing, branch: &str, formats: &[Format]) {
        let name = place_in(branch, &standing.campaign);
        let reports = [
            (Format::Html, FileKind::WebPage),
            (Format::Pdf, FileKind::Pdf),
        ];
        let reports = reports
            .into_iter()
            .filter(|(format, _)| formats.contains(format));
        let reports = reports.filter_map(|(format, kind)| Some((kind, format.ending()?)));
        let data = [
            (FileKind::Results, "rating.json"),
            (FileKind::Intervals, "intervals.csv"),
        ];
        let files = reports.chain(data);
        self.campaigns.push(Listed {
            standing: Standing {
                campaign: name.clone(),
                ..standing.clone()
            },
            files: files
                .map(|(kind, ending)| (kind, format!("{name}.{ending}")))
                .collect(),
        });
    }

    /// Adds a campaign of which nothing could be written.
    pub fn add_failed(&mut self, name: String) {
        self.failed.push(name);
    }

    /// The page; `None` if there is no report that it could lead to.
    ///
    /// # Errors
    /// [`Error::Internal`] if it cannot be made.
    pub fn output(&self, edition: &Edition) -> Result<Option<Output>> {
        if self.campaigns.is_empty() {
            return Ok(None);
        }
        let standings = self.campaigns.iter().map(|one| one.standing.clone());
        let (ranking, drawings) = ranking(&standings.collect::<Vec<_>>(), &edition.words)?;
        let page = build(&self.campaigns, ranking, &self.failed, edition);
        Ok(Some(Output {
            name: FILE.to_owned(),
            bytes: web_page::compose(INDEX, &page, &drawings)?.into_bytes(),
        }))
    }
}

/// Whether a page of ours is in the folder.
pub fn is_there(folder: &Path) -> bool {
    let bytes = fs::read(folder.join(FILE)).unwrap_or_default();
    let head = &bytes[..bytes.len().min(SEARCHED)];
    head.windows(OWN.len()).any(|piece| piece == OWN.as_bytes())
}

/// Refuses a folder in which a page stands that is not ours, since this one would replace it.
///
/// # Errors
/// [`Error::Usage`] if there is one, or what is there cannot be read.
pub fn refuse_other_page(folder: &Path) -> Result<()> {
    let file = folder.join(FILE);
    let refused =
        |what: String, hint: &str| Err(Error::Usage(Problem::at(&file, what).hint(hint).into()));
    match fs::metadata(&file) {
        Err(error) if error.kind() == ErrorKind::NotFound => Ok(()),
        Err(error) => refused(
            format!("cannot be read ({error})"),
            "choose another folder with --out DIR",
        ),
        Ok(_) if is_there(folder) => Ok(()),
        Ok(_) => refused(
            "was not written by simmerline; the page that leads to the reports would replace it"
                .to_owned(),
            "move it, or choose another folder with --out DIR",
        ),
    }
}
