//! What a report carries: its attachments, taken out into a folder of their own.

use std::collections::BTreeMap;
use std::fs::{self, File};
use std::io::BufWriter;
use std::path::{Path, PathBuf};

use serde::Deserialize;
use tempfile::TempDir;

use super::pdf::{Embedded, Imprint, Pdf};
use crate::campaign::AttachedFile;
use crate::campaign::find::CAMPAIGN_FILE;
use crate::error::{Error, Problem, Result};
use crate::report::data::rating_file::SCHEMA;
use crate::report::files::copy_new;
use crate::report::{
    LARGEST_TOTAL, MOST_ATTACHMENTS, RATING_ENDING, TakenNames, attached_names, is_plain,
    result_names,
};

/// What the PDF says of who made it, before the version.
const MAKER: &str = "simmerline ";
/// Relationship of results to the report.
const DATA: &str = "Data";
/// Largest attached result that is read, bytes.
const LARGEST_RESULT: u64 = 256 << 20;

/// What to do about a report whose attachments are not as simmerline attaches them.
const CHANGED: &str = "this is not as simmerline wrote it: ask for the report again";

/// A report with everything that it carries.
pub struct Evidence {
    pub pdf: Pdf,
    pub imprint: Imprint,
    /// Version of simmerline that the PDF says it was made by.
    pub made_by: String,
    /// Where the attachments were taken out.
    pub folder: TempDir,
    /// By name.
    pub attachments: BTreeMap<String, Attached>,
    /// Name of the campaign.
    pub campaign: String,
    /// As stated in the attached results.
    pub stated: Stated,
    /// The attached results, as text.
    pub rating: ResultText,
    pub intervals: Option<ResultText>,
    /// The inputs as stated, with the name under which each is attached.
    pub inputs: Vec<Input>,
}

/// One attachment, taken out.
pub struct Attached {
    pub path: PathBuf,
    /// Lower-case hex.
    pub sha256: String,
}

/// An attached result.
pub struct ResultText {
    pub name: String,
    pub text: String,
}

/// An input of the report.
pub struct Input {
    /// As the campaign file calls it.
    pub file: String,
    pub attached_as: String,
    /// As the results state it.
    pub sha256: String,
    /// The results state that it lay outside the campaign's folder.
    pub is_outside: bool,
}

/// Of `rating.json`, what the rest is understood by.
#[derive(Deserialize)]
pub struct Stated {
    schema: String,
    pub provenance: StatedProvenance,
}

/// Its part on where everything is from.
#[derive(Deserialize)]
pub struct StatedProvenance {
    pub tool_version: String,
    inputs: Vec<StatedInput>,
}

#[derive(Deserialize)]
struct StatedInput {
    file: String,
    sha256: String,
    /// Older versions did not state it.
    #[serde(default)]
    outside: bool,
}

impl Evidence {
    /// Takes the attachments out of a report.
    ///
    /// # Errors
    /// [`Error::Input`] for what is no report of ours, carries no evidence, or carries it in a
    /// way that simmerline does not write; [`Error::Usage`] if there is no room to take it out.
    pub fn take_out(pdf: Pdf) -> Result<Self> {
        let imprint = pdf.imprint();
        let made_by = maker(&pdf, &imprint)?;
        let found = pdf.attachments()?;
        if found.is_empty() {
            return Err(input(pdf.problem("carries no evidence: nothing is attached to it").hint(
                "ask for the full report, made without --no-attachments; or compare the SHA-256 of the logs at hand with those that it prints; comparisons and field sheets never carry any",
            )));
        }
        check_names(&pdf, &found)?;
        let name = rating_name(&pdf, &found)?;
        let folder = temporary_folder()?;
        let attachments = unpack_all(&pdf, &found, folder.path())?;
        let campaign = name
            .strip_suffix(RATING_ENDING)
            .unwrap_or_default()
            .to_owned();
        let results = result_names(&campaign);
        let rating = read_result(&pdf, &attachments, &name)?;
        let intervals = attachments
            .contains_key(&results.intervals)
            .then(|| read_result(&pdf, &attachments, &results.intervals));
        let stated = read_stated(&pdf, &rating)?;
        let inputs = named_inputs(&pdf, &stated, &campaign)?;
        drop(found);
        Ok(Evidence {
            imprint,
            made_by,
            folder,
            attachments,
            campaign,
            inputs,
            rating,
            intervals: intervals.transpose()?,
            stated,
            pdf,
        })
    }

    /// Writes every attachment into a folder, under its name: all of them, or none.
    ///
    /// # Errors
    /// [`Error::Usage`] if one is there already or cannot be written.
    pub fn extract(&self, folder: &Path) -> Result<()> {
        let files: Vec<(&str, &Path)> = self
            .attachments
            .iter()
            .map(|(name, attached)| (name.as_str(), attached.path.as_path()))
            .collect();
        copy_new(folder, &files)
    }

    /// The logs and the photo, by the names that the campaign file gives them.
    pub fn files(&self) -> BTreeMap<String, AttachedFile> {
        let attached = |input: &Input| {
            let attached = self.attachments.get(&input.attached_as)?;
            let file = AttachedFile {
                path: attached.path.clone(),
                is_outside: input.is_outside,
            };
            Some((input.file.clone(), file))
        };
        let inputs = self
            .inputs
            .iter()
            .filter(|input| input.file != CAMPAIGN_FILE);
        inputs.filter_map(attached).collect()
    }
}

/// The version of simmerline that a PDF says it was made by.
fn maker(pdf: &Pdf, imprint: &Imprint) -> Result<String> {
    match imprint.creator.strip_prefix(MAKER) {
        Some(version) if !version.is_empty() => Ok(version.to_owned()),
        _ => {
            let problem = pdf.problem("is a PDF, but no report by simmerline");
            Err(input(problem.hint("name a report's PDF as simmerline wrote it: another program that saves it anew may say that it made it")))
        }
    }
}

/// Names have to be such as simmerline gives, each once.
fn check_names(pdf: &Pdf, found: &[Embedded<'_>]) -> Result<()> {
    let mut taken = TakenNames::default();
    for attachment in found {
        let name = &attachment.name;
        let what = if !is_plain(name) {
            "is a name that simmerline gives no attachment: it may lead to another folder"
        } else if !taken.add(name) {
            "is the name of two attachments"
        } else {
            continue;
        };
        return Err(input(of_attachment(pdf, name, what.to_owned())));
    }
    Ok(())
}

/// The attachment that has all results.
fn rating_name(pdf: &Pdf, found: &[Embedded<'_>]) -> Result<String> {
    let is_rating = |one: &&Embedded<'_>| {
        one.relationship == DATA && one.name.ends_with(RATING_ENDING) && !one.name.contains('/')
    };
    let mut ratings = found.iter().filter(is_rating);
    match (ratings.next(), ratings.next()) {
        (Some(one), None) => Ok(one.name.clone()),
        (one, _) => {
            let count = if one.is_none() { "no" } else { "more than one" };
            let what =
                format!("is no report by simmerline: it carries {count} NAME{RATING_ENDING}");
            Err(input(pdf.problem(what).hint(CHANGED)))
        }
    }
}

fn temporary_folder() -> Result<TempDir> {
    let folder = tempfile::Builder::new().prefix("simmerline-").tempdir();
    folder.map_err(|error| no_room(&std::env::temp_dir(), &error))
}

/// Unpacks every attachment under its name.
fn unpack_all(
    pdf: &Pdf,
    found: &[Embedded<'_>],
    folder: &Path,
) -> Result<BTreeMap<String, Attached>> {
    let mut left = LARGEST_TOTAL;
    let mut attachments = BTreeMap::new();
    for attachment in found {
        let path = folder.join(&attachment.name);
        let parent = path.parent().unwrap_or(folder);
        fs::create_dir_all(parent).map_err(|error| no_room(folder, &error))?;
        let file = File::create_new(&path).map_err(|error| no_room(folder, &error))?;
        let unpacked = attachment.unpack(&mut BufWriter::new(file), left);
        let unpacked =
            unpacked.map_err(|what| input(of_attachment(pdf, &attachment.name, what)))?;
        left -= unpacked.bytes;
        let attached = Attached {
            path,
            sha256: unpacked.sha256,
        };
        attachments.insert(attachment.name.clone(), attached);
    }
    Ok(attachments)
}

fn read_result(
    pdf: &Pdf,
    attachments: &BTreeMap<String, Attached>,
    name: &str,
) -> Result<ResultText> {
    let fail = |what: &str| input(of_attachment(pdf, name, what.to_owned()));
    let path = &attachments
        .get(name)
        .ok_or_else(|| fail("is not attached"))?
        .path;
    let size = fs::metadata(path)
        .map_err(|error| no_room(path, &error))?
        .len();
    if size > LARGEST_RESULT {
        return Err(fail("is larger than any report's results"));
    }
    let bytes = fs::read(path).map_err(|error| no_room(path, &error))?;
    let text = String::from_utf8(bytes).map_err(|_| fail("is not UTF-8 text"))?;
    Ok(ResultText {
        name: name.to_owned(),
        text,
    })
}

fn read_stated(pdf: &Pdf, rating: &ResultText) -> Result<Stated> {
    let stated: Stated = serde_json::from_str(&rating.text).map_err(|error| {
        let what = format!("does not hold a report's results ({error})");
        input(of_attachment(pdf, &rating.name, what))
    })?;
    if stated.schema == SCHEMA {
        return Ok(stated);
    }
    let what = format!(
        "has the schema \"{}\", expected \"{SCHEMA}\"",
        stated.schema.escape_debug()
    );
    let problem = of_attachment(pdf, &rating.name, what);
    Err(input(problem.hint(
        "verify it with the version of simmerline that made it",
    )))
}

/// The stated inputs, and under which names they are attached; the campaign file first.
fn named_inputs(pdf: &Pdf, stated: &Stated, campaign: &str) -> Result<Vec<Input>> {
    let inputs = &stated.provenance.inputs;
    let is_led = inputs
        .first()
        .is_some_and(|first| first.file == CAMPAIGN_FILE);
    if !is_led || inputs.len() > MOST_ATTACHMENTS {
        let name = result_names(campaign).rating;
        let what = format!("states no inputs, {CAMPAIGN_FILE} first, under provenance");
        return Err(input(of_attachment(pdf, &name, what)));
    }
    let files = inputs.iter().map(|input| input.file.as_str());
    let names = attached_names(files, &result_names(campaign));
    let named = inputs.iter().zip(names).map(|(stated, attached_as)| Input {
        file: stated.file.clone(),
        attached_as,
        sha256: stated.sha256.clone(),
        is_outside: stated.outside,
    });
    Ok(named.collect())
}

/// A problem with an attachment; its name may hold anything.
fn of_attachment(pdf: &Pdf, name: &str, what: String) -> Problem {
    let shown: String = name.escape_debug().take(120).collect();
    pdf.problem(what)
        .item(format!("attachment \"{shown}\""))
        .hint(CHANGED)
}

fn no_room(place: &Path, error: &std::io::Error) -> Error {
    let what = format!("attachments cannot be taken out there ({})", error.kind());
    let hint = "make room there, or set TMPDIR to another folder";
    Error::Usage(Problem::at(place, what).hint(hint).into())
}

fn input(problem: Problem) -> Error {
    Error::Input(problem.into())
}
