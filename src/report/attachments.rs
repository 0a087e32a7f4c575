//! The evidence that a report carries inside: its inputs as they were read, and its results
//! as data.

use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

use super::assets::{Asset, Attachment};
use super::attached_names::attached_names;
use super::edition::Edition;
use crate::bounds::{ATTACHED_BYTES, ATTACHMENTS};
use crate::campaign::Campaign;
use crate::campaign::find::CAMPAIGN_FILE;
use crate::error::{Error, Problem, Result};
use crate::hash::{HashedFile, sha256_hex};
use crate::language::{Message, Words};
use crate::logs::source::unreadable;
use crate::message;

/// A report carries so many attachments at most.
pub const MOST_ATTACHMENTS: usize = ATTACHMENTS.count();
/// All of them together have at most so many bytes.
pub const LARGEST_TOTAL: u64 = ATTACHED_BYTES.most;

/// What to do about more than a report can carry.
const TOO_MUCH: &str = "leave --carry-all out if it was asked for; else report it with --no-attachments, and keep the logs beside it";

/// The attachments of a report, and the files with their bytes.
#[derive(Default)]
pub struct Enclosed {
    pub attachments: Vec<Attachment>,
    pub assets: Vec<Asset>,
    bytes: u64,
}

/// What an attachment is to the document.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Part {
    Campaign,
    Shared,
    Log,
    Photo,
    Rating,
    Intervals,
    Comparison,
    Pairs,
    Plan,
}

/// A campaign whose inputs are enclosed.
pub struct Origin<'a> {
    pub campaign: &'a Campaign,
    /// Every file.
    pub inputs: Vec<HashedFile>,
    /// Where they stand among the attachments: nothing, or a folder's name.
    pub folder: Option<&'a str>,
}

/// A result to be enclosed.
pub struct Enclosure<'a> {
    pub part: Part,
    pub name: &'a str,
    pub text: &'a str,
}

/// Encloses inputs and results; logs are read again, and have to be as they were. Those that an
/// edition keeps beside the PDF are left out.
///
/// # Errors
/// [`Error::Input`] for a file that has changed or gone since it was read, and
/// [`Error::Usage`] for more than a PDF can carry.
pub fn enclose(
    origins: &[Origin<'_>],
    results: &[Enclosure<'_>],
    edition: &Edition,
) -> Result<Enclosed> {
    let words = &edition.words;
    let inputs = origins.iter().flat_map(|origin| {
        origin
            .inputs
            .iter()
            .map(move |input| placed(origin.folder, &input.name))
    });
    let taken: Vec<&str> = results.iter().map(|result| result.name).collect();
    let mut names = attached_names(inputs, &taken).into_iter();
    let mut enclosed = Enclosed::default();
    let mut hashes: BTreeSet<(String, &String)> = BTreeSet::new();
    for origin in origins {
        for input in &origin.inputs {
            let name = names.next().expect("every input has a name");
            let is_inside = !edition.keeps_beside(origin.campaign, input);
            if is_inside && hashes.insert((name.clone(), &input.sha256)) {
                let (part, bytes) = read_again(origin.campaign, &input.name, &input.sha256)?;
                enclosed.add(origin.campaign, words, part, &name, bytes)?;
            }
        }
    }
    for result in results {
        let bytes = result.text.as_bytes().to_vec();
        enclosed.add(origins[0].campaign, words, result.part, result.name, bytes)?;
    }
    Ok(enclosed)
}

/// An input's name within the folder of its campaign.
pub fn placed(folder: Option<&str>, input: &str) -> String {
    match folder {
        Some(folder) => format!("{folder}/{input}"),
        None => input.to_owned(),
    }
}

/// An input's bytes, which have to be those that were read.
fn read_again(campaign: &Campaign, input: &str, sha256: &str) -> Result<(Part, Vec<u8>)> {
    let log = campaign.runs.iter().find_map(|run| {
        let weather = run
            .weather
            .as_ref()
            .map(|weather| (&weather.log, &weather.path));
        let mut logs = std::iter::once((&run.log, &run.path)).chain(weather);
        logs.find(|(log, _)| *log == input).map(|(_, path)| path)
    });
    let mut shared = campaign.shared.iter().filter(|one| one.name == input);
    let photo = campaign.cooker.photo.as_ref();
    let (part, path): (Part, &Path) = match (log, photo) {
        _ if input == CAMPAIGN_FILE => (Part::Campaign, &campaign.file),
        _ if let Some(shared) = shared.next() => (Part::Shared, &shared.path),
        (Some(path), _) => (Part::Log, path),
        (None, Some(photo)) => return Ok((Part::Photo, photo.bytes.clone())),
        (None, None) => return Err(Error::Internal(format!("\"{input}\" is no input"))),
    };
    let bytes = fs::read(path).map_err(|error| Error::Input(unreadable(path, &error).into()))?;
    if sha256_hex(&bytes) == sha256 {
        return Ok((part, bytes));
    }
    let problem = Problem::at(path, "has changed since it was read for this report");
    let hint = "wait until nothing writes to it any more, and report again";
    Err(Error::Input(problem.hint(hint).into()))
}

impl Enclosed {
    fn add(
        &mut self,
        campaign: &Campaign,
        words: &Words,
        part: Part,
        name: &str,
        bytes: Vec<u8>,
    ) -> Result<()> {
        self.bytes += bytes.len() as u64;
        if self.attachments.len() == MOST_ATTACHMENTS || self.bytes > LARGEST_TOTAL {
            let what = format!(
                "has more inputs than a PDF can carry ({MOST_ATTACHMENTS} files, {LARGEST_TOTAL} bytes)"
            );
            let problem = Problem::at(&campaign.file, what).hint(TOO_MUCH);
            return Err(Error::Usage(problem.into()));
        }
        let file = format!("attached/{}", self.attachments.len() + 1);
        self.attachments.push(Attachment {
            file: file.clone(),
            name: name.to_owned(),
            mime: mime(part, name, &bytes),
            relationship: match part {
                Part::Campaign | Part::Shared | Part::Log => "source",
                Part::Rating | Part::Intervals | Part::Comparison | Part::Pairs | Part::Plan => {
                    "data"
                }
                Part::Photo => "supplement",
            },
            description: words.say(describe(part)),
        });
        self.assets.push(Asset { name: file, bytes });
        Ok(())
    }
}

fn describe(part: Part) -> Message {
    match part {
        Part::Campaign => message!("attached-campaign"),
        Part::Shared => message!("attached-shared"),
        Part::Log => message!("attached-log"),
        Part::Photo => message!("attached-photo"),
        Part::Rating => message!("attached-rating"),
        Part::Intervals => message!("attached-intervals"),
        Part::Comparison => message!("attached-comparison"),
        Part::Pairs => message!("attached-pairs"),
        Part::Plan => message!("attached-plan"),
    }
}

/// The media type, by what the bytes are rather than by what the file is called.
fn mime(part: Part, name: &str, bytes: &[u8]) -> &'static str {
    const OPEN_DOCUMENT: &[u8] = b"mimetypeapplication/vnd.oasis.opendocument.spreadsheet";
    let is_open_document = || {
        bytes
            .windows(OPEN_DOCUMENT.len())
            .take(128)
            .any(|at| at == OPEN_DOCUMENT)
    };
    match part {
        Part::Campaign | Part::Shared => "application/toml",
        Part::Rating | Part::Comparison | Part::Plan => "application/json",
        Part::Intervals | Part::Pairs => "text/csv",
        Part::Photo if bytes.starts_with(b"\x89PNG") => "image/png",
        Part::Photo => "image/jpeg",
        Part::Log if bytes.starts_with(b"\x1f\x8b") => "application/gzip",
        Part::Log if bytes.starts_with(b"PK\x03\x04") && is_open_document() => {
            "application/vnd.oasis.opendocument.spreadsheet"
        }
        Part::Log if bytes.starts_with(b"PK\x03\x04") => {
            "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet"
        }
        Part::Log if name.to_lowercase().ends_with(".csv") => "text/csv",
        Part::Log => "text/plain",
    }
}
