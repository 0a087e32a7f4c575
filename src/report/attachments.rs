//! The evidence that a report carries inside: its inputs as they were read, and its results
//! as data.

use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

use super::assets::{Asset, Attachment};
use super::attached_names::{attached_names, result_names};
use crate::bounds::{ATTACHED_BYTES, ATTACHMENTS};
use crate::campaign::find::CAMPAIGN_FILE;
use crate::error::{Error, Problem, Result};
use crate::hash::sha256_hex;
use crate::language::{Message, Words};
use crate::logs::source::unreadable;
use crate::message;
use crate::procedure::Assessment;

/// A report carries so many attachments at most.
pub const MOST_ATTACHMENTS: usize = ATTACHMENTS.count();
/// All of them together have at most so many bytes.
pub const LARGEST_TOTAL: u64 = ATTACHED_BYTES.most;

/// What to do about more than a report can carry.
const TOO_MUCH: &str = "report it with --no-attachments, and keep the logs beside it";

/// The attachments of a report, and the files with their bytes.
#[derive(Default)]
pub struct Enclosed {
    pub attachments: Vec<Attachment>,
    pub assets: Vec<Asset>,
    bytes: u64,
}

/// What an attachment is to the report.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Part {
    Campaign,
    Log,
    Photo,
    Rating,
    Intervals,
}

/// Encloses the inputs and the results; logs are read again, and have to be as they were.
///
/// # Errors
/// [`Error::Input`] for a file that has changed or gone since it was read, and
/// [`Error::Usage`] for more than a PDF can carry.
pub fn enclose(
    assessment: &Assessment,
    words: &Words,
    rating: &str,
    intervals: &str,
) -> Result<Enclosed> {
    let results = result_names(&assessment.tested.campaign.name);
    let inputs = assessment.tested.inputs();
    let names = attached_names(inputs.iter().map(|(input, _)| input.as_str()), &results);
    let mut enclosed = Enclosed::default();
    let mut done: BTreeSet<(String, String)> = BTreeSet::new();
    for (name, (input, sha256)) in names.into_iter().zip(inputs) {
        let of_this = (name, sha256);
        if done.contains(&of_this) {
            continue;
        }
        let (part, bytes) = read_again(assessment, &input, &of_this.1)?;
        enclosed.add(assessment, words, part, &of_this.0, bytes)?;
        done.insert(of_this);
    }
    for (part, name, text) in [
        (Part::Rating, results.rating, rating),
        (Part::Intervals, results.intervals, intervals),
    ] {
        enclosed.add(assessment, words, part, &name, text.as_bytes().to_vec())?;
    }
    Ok(enclosed)
}

/// An input's bytes, which have to be those that were read.
fn read_again(assessment: &Assessment, input: &str, sha256: &str) -> Result<(Part, Vec<u8>)> {
    let campaign = &assessment.tested.campaign;
    let log = campaign.runs.iter().find_map(|run| {
        let weather = run
            .weather
            .as_ref()
            .map(|weather| (&weather.log, &weather.path));
        let mut logs = std::iter::once((&run.log, &run.path)).chain(weather);
        logs.find(|(log, _)| *log == input).map(|(_, path)| path)
    });
    let photo = campaign.cooker.photo.as_ref();
    let (part, path): (Part, &Path) = match (log, photo) {
        _ if input == CAMPAIGN_FILE => (Part::Campaign, &campaign.file),
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
        assessment: &Assessment,
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
            let problem = Problem::at(&assessment.tested.campaign.file, what).hint(TOO_MUCH);
            return Err(Error::Usage(problem.into()));
        }
        let file = format!("attached/{}", self.attachments.len() + 1);
        self.attachments.push(Attachment {
            file: file.clone(),
            name: name.to_owned(),
            mime: mime(part, name, &bytes),
            relationship: match part {
                Part::Campaign | Part::Log => "source",
                Part::Rating | Part::Intervals => "data",
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
        Part::Log => message!("attached-log"),
        Part::Photo => message!("attached-photo"),
        Part::Rating => message!("attached-rating"),
        Part::Intervals => message!("attached-intervals"),
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
        Part::Campaign => "application/toml",
        Part::Rating => "application/json",
        Part::Intervals => "text/csv",
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
