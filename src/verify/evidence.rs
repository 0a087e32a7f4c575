//! What a PDF carries: its attachments, taken out into a folder of their own.

use std::collections::BTreeMap;
use std::fs::{self, File};
use std::io::{BufWriter, Write};
use std::path::{Path, PathBuf};

use super::beside::{Beside, Wanted};
use super::pdf::{Embedded, Fault, Imprint, Pdf};
use super::stated::{ResultText, Stated, Subject, read_stated};
use crate::bounds::ATTACHED_EACH;
use crate::campaign::AttachedFile;
use crate::campaign::find::CAMPAIGN_FILE;
use crate::campaign::shared::find_shared;
use crate::error::{Error, Problem, Problems, Result};
use crate::report::comparison::outputs::COMPARISON_JSON;
use crate::report::files::{FileFacts, Workplace, copy_new, no_room, workplace};
use crate::report::plan::outputs::PLAN_ENDING;
use crate::report::{
    LARGEST_TOTAL, MOST_ATTACHMENTS, RATING_ENDING, TakenNames, attached_names, is_plain, placed,
};

/// What the PDF says of who made it, before the version.
const MAKER: &str = "simmerline ";
/// Relationship of results to the document.
const DATA: &str = "Data";

/// What to do about a PDF whose attachments are not as simmerline attaches them.
const CHANGED: &str = "this is not as simmerline wrote it: ask for the file again";

/// A PDF of ours with everything that it carries.
pub struct Evidence {
    pub pdf: Pdf,
    pub imprint: Imprint,
    /// Version of simmerline that the PDF says it was made by.
    pub made_by: String,
    /// Where the attachments were taken out.
    pub folder: Workplace,
    /// By name.
    pub attachments: BTreeMap<String, Attached>,
    /// As stated in the attached results.
    pub stated: Stated,
    /// The attached results, as text.
    pub results: ResultText,
    /// The results that are attached as a table, if there are any.
    pub table: Option<ResultText>,
    /// The inputs as stated, with the name under which each is attached.
    pub inputs: Vec<Input>,
    /// Those of them that the document names by their hash alone, by the same names.
    pub beside: BTreeMap<String, Attached>,
    /// Those of these that were not found, in words.
    pub missing: Problems,
    /// Longest log that the document carries, by what is attached to it, bytes.
    pub largest_log: u64,
}

/// One attachment, taken out, or the file that takes its place.
pub struct Attached {
    pub path: PathBuf,
    /// Lower-case hex.
    pub sha256: String,
}

/// An input of a campaign.
pub struct Input {
    pub campaign: String,
    /// As the campaign file calls it.
    pub file: String,
    pub attached_as: String,
    /// As the results state it.
    pub sha256: String,
    /// Its length as the results state it; `None`: an older version did not.
    pub bytes: Option<u64>,
    /// The results state that it lay outside the campaign's folder.
    pub is_outside: bool,
}

impl Input {
    /// Whether it is stated to be longer.
    fn is_longer_than(&self, bytes: u64) -> bool {
        self.bytes.is_some_and(|stated| stated > bytes)
    }
}

impl Evidence {
    /// Takes the attachments out of a PDF, and looks for the logs that it names by their hash
    /// alone.
    ///
    /// # Errors
    /// [`Error::Input`] for what is no PDF of ours, carries no evidence, or carries it in a
    /// way that simmerline does not write; [`Error::Usage`] if there is no room to take it out.
    pub fn take_out(pdf: Pdf, beside: Beside) -> Result<Self> {
        let imprint = pdf.imprint();
        let made_by = maker(&pdf, &imprint)?;
        let found = pdf.attachments()?;
        if found.is_empty() {
            return Err(input(pdf.problem("carries no evidence: nothing is attached to it").hint(
                "ask for the full PDF, made without --no-attachments; or compare the SHA-256 of the logs at hand with those that it prints",
            )));
        }
        check_names(&pdf, &found)?;
        let name = results_name(&pdf, &found)?;
        let folder = workplace()?;
        let attachments = unpack_all(&pdf, &found, folder.path())?;
        let results = read_result(&pdf, &attachments, &name)?;
        let stated =
            read_stated(&results).map_err(|what| input(of_attachment(&pdf, &name, what)))?;
        let table = stated
            .subject
            .table()
            .filter(|table| attachments.contains_key(table));
        let table = table.map(|table| read_result(&pdf, &attachments, &table));
        let inputs = named_inputs(&stated);
        if inputs.len() > MOST_ATTACHMENTS {
            let what = "states more inputs than a PDF can carry".to_owned();
            return Err(input(of_attachment(&pdf, &name, what)));
        }
        drop(found);
        let largest_log = largest_carried(&inputs, &attachments, &beside);
        let (beside, missing) = find_beside(&pdf, &inputs, &beside, largest_log);
        Ok(Evidence {
            beside,
            missing,
            largest_log,
            imprint,
            made_by,
            folder,
            attachments,
            results,
            table: table.transpose()?,
            inputs,
            stated,
            pdf,
        })
    }

    /// The names of all that belongs to the document, in their order.
    pub fn expected(&self) -> Vec<String> {
        let inputs = self.inputs.iter().map(|input| input.attached_as.clone());
        let inputs = inputs.filter(|name| !self.beside.contains_key(name));
        let results = [Some(self.results.name.clone()), self.stated.subject.table()];
        let mut expected: Vec<String> = inputs.chain(results.into_iter().flatten()).collect();
        expected.sort();
        expected.dedup();
        expected
    }

    /// Writes every attachment that belongs to the document into a folder, under its name: all
    /// of them, or none. Says how many.
    ///
    /// # Errors
    /// [`Error::Usage`] if one is there already or cannot be written, or if keys that campaigns
    /// share would hold there: the campaign would not be what it was;
    /// [`Error::Campaign`] for such keys that cannot be looked for.
    pub fn extract(&self, folder: &Path) -> Result<usize> {
        if let Some(shared) = find_shared(folder)?.first() {
            let what = "would hold for the campaign in the folder that the attachments go to";
            let problem = Problem::at(&shared.path, what);
            let hint = "choose a folder that is not below a file of shared keys";
            return Err(Error::Usage(problem.hint(hint).into()));
        }
        let expected = self.expected();
        let files: Vec<(&str, &Path)> = expected
            .iter()
            .filter_map(|name| Some((name.as_str(), self.attachments.get(name)?.path.as_path())))
            .collect();
        copy_new(folder, &files)?;
        Ok(files.len())
    }

    /// The results of a report as it carries them, to hold the files beside it against them;
    /// of other documents none.
    ///
    /// # Errors
    /// [`Error::Usage`] if the folder for temporary files fails.
    pub fn results_beside(&self) -> Result<Option<(&str, Vec<FileFacts>)>> {
        let Subject::Report { campaign } = &self.stated.subject else {
            return Ok(None);
        };
        let names = [Some(self.results.name.clone()), self.stated.subject.table()];
        let names = names.into_iter().flatten();
        let attached = names.filter_map(|name| Some((self.attachments.get(&name)?, name)));
        let facts = attached.map(|(attached, name)| {
            let of = fs::metadata(&attached.path).map_err(|error| no_room(&error))?;
            Ok(FileFacts {
                name,
                length: of.len() as usize,
                sha256: attached.sha256.clone(),
            })
        });
        Ok(Some((campaign, facts.collect::<Result<Vec<_>>>()?)))
    }

    /// What is attached under an input's name, or lies beside the document in its place.
    pub fn content(&self, attached_as: &str) -> Option<&Attached> {
        let beside = || self.beside.get(attached_as);
        self.attachments.get(attached_as).or_else(beside)
    }

    /// A campaign's file, and its logs and photo by the names that the file gives them.
    pub fn files(&self, campaign: &str) -> (PathBuf, BTreeMap<String, AttachedFile>) {
        let of_campaign = self
            .inputs
            .iter()
            .filter(|input| input.campaign == campaign);
        let attached = of_campaign.filter_map(|input| {
            let attached = self.content(&input.attached_as)?;
            let file = AttachedFile {
                path: attached.path.clone(),
                is_outside: input.is_outside,
            };
            Some((input.file.clone(), file))
        });
        let mut files: BTreeMap<String, AttachedFile> = attached.collect();
        let missing = || {
            self.folder
                .path()
                .join(placed(self.folder_of(campaign), CAMPAIGN_FILE))
        };
        let of_campaign = files.remove(CAMPAIGN_FILE).map(|file| file.path);
        (of_campaign.unwrap_or_else(missing), files)
    }

    /// The folder of a campaign's inputs among the attachments, if they have one.
    pub fn folder_of<'c>(&self, campaign: &'c str) -> Option<&'c str> {
        self.stated.subject.has_folders().then_some(campaign)
    }
}

/// The stated inputs, and under which names they are attached.
fn named_inputs(stated: &Stated) -> Vec<Input> {
    let subject = &stated.subject;
    let table = subject.table();
    let results: Vec<&str> = [Some(stated.results.as_str()), table.as_deref()]
        .into_iter()
        .flatten()
        .collect();
    let folder = |campaign: &str| subject.has_folders().then(|| campaign.to_owned());
    let places = stated
        .inputs
        .iter()
        .map(|input| placed(folder(&input.campaign).as_deref(), &input.file));
    let names = attached_names(places, &results);
    let named = stated
        .inputs
        .iter()
        .zip(names)
        .map(|(stated, attached_as)| Input {
            campaign: stated.campaign.clone(),
            file: stated.file.clone(),
            attached_as,
            sha256: stated.sha256.clone(),
            bytes: stated.bytes,
            is_outside: stated.is_outside,
        });
    named.collect()
}

/// Longest log that a document carries. Where one is attached that would not be without being
/// asked for, all were asked for.
fn largest_carried(
    inputs: &[Input],
    attachments: &BTreeMap<String, Attached>,
    beside: &Beside,
) -> u64 {
    let mut long = inputs
        .iter()
        .filter(|input| input.is_longer_than(beside.largest_log));
    match long.any(|input| attachments.contains_key(&input.attached_as)) {
        true => u64::MAX,
        false => beside.largest_log,
    }
}

/// The logs that a document names by their hash alone, and what is to be said of those that are
/// not there.
fn find_beside(
    pdf: &Pdf,
    inputs: &[Input],
    beside: &Beside,
    largest_log: u64,
) -> (BTreeMap<String, Attached>, Problems) {
    let (mut found, mut missing) = (BTreeMap::new(), Problems::default());
    for input in inputs {
        let bytes = input.bytes.filter(|bytes| *bytes > largest_log);
        let Some(bytes) = bytes.filter(|_| !found.contains_key(&input.attached_as)) else {
            continue;
        };
        let last = input.file.rsplit(['/', '\\']).next().unwrap_or_default();
        let own = [input.file.as_str(), last].map(str::to_owned);
        let [of_campaign, last_of_campaign] =
            [input.file.as_str(), last].map(|name| placed(Some(&input.campaign), name));
        let [whole, last] = own;
        let wanted = Wanted {
            names: vec![
                input.attached_as.clone(),
                of_campaign,
                last_of_campaign,
                whole,
                last,
            ],
            sha256: &input.sha256,
            bytes,
        };
        match beside.find(&wanted) {
            Ok(path) => {
                let sha256 = input.sha256.clone();
                found.insert(input.attached_as.clone(), Attached { path, sha256 });
            }
            Err(instead) => missing.push(not_beside(pdf, input, bytes, &instead)),
        }
    }
    (found, missing)
}

/// A log that was not found beside the document.
fn not_beside(pdf: &Pdf, input: &Input, bytes: u64, instead: &str) -> Problem {
    let shown = |text: &str| -> String { text.escape_debug().take(120).collect() };
    let what = format!(
        "does not carry this log, of {bytes} bytes and SHA-256 {}, and {instead}",
        shown(&input.sha256)
    );
    pdf.problem(what)
        .item(format!("log \"{}\"", shown(&input.file)))
        .hint("put the log beside the PDF under its name, or name its folder: --logs DIR")
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
fn results_name(pdf: &Pdf, found: &[Embedded<'_>]) -> Result<String> {
    let is_results = |one: &&Embedded<'_>| {
        let name = one.name.as_str();
        let is_named = name == COMPARISON_JSON
            || [RATING_ENDING, PLAN_ENDING]
                .iter()
                .any(|ending| name.ends_with(ending));
        one.relationship == DATA && is_named && !name.contains('/')
    };
    let mut results = found.iter().filter(is_results);
    match (results.next(), results.next()) {
        (Some(one), None) => Ok(one.name.clone()),
        (one, _) => {
            let count = if one.is_none() { "no" } else { "more than one" };
            let what = format!(
                "is no report by simmerline: it carries {count} NAME{RATING_ENDING} or {COMPARISON_JSON} or NAME{PLAN_ENDING}"
            );
            Err(input(pdf.problem(what).hint(CHANGED)))
        }
    }
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
        fs::create_dir_all(parent).map_err(|error| no_room(&error))?;
        let mut file = BufWriter::new(File::create_new(&path).map_err(|error| no_room(&error))?);
        let unpacked = attachment.unpack(&mut file, left);
        let unpacked = unpacked.map_err(|fault| match fault {
            // That is no fault of the report.
            Fault::Writing(error) => no_room(&error),
            fault => input(of_attachment(pdf, &attachment.name, fault.what())),
        })?;
        // Dropping it would not say that the last bytes had no room.
        file.flush().map_err(|error| no_room(&error))?;
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
    let size = fs::metadata(path).map_err(|error| no_room(&error))?.len();
    if size > ATTACHED_EACH.most {
        return Err(fail("is larger than any report's results"));
    }
    let bytes = fs::read(path).map_err(|error| no_room(&error))?;
    let text = String::from_utf8(bytes).map_err(|_| fail("is not UTF-8 text"))?;
    Ok(ResultText {
        name: name.to_owned(),
        text,
    })
}

/// A problem with an attachment; its name may hold anything.
fn of_attachment(pdf: &Pdf, name: &str, what: String) -> Problem {
    let shown: String = name.escape_debug().take(120).collect();
    pdf.problem(what)
        .item(format!("attachment \"{shown}\""))
        .hint(CHANGED)
}

fn input(problem: Problem) -> Error {
    Error::Input(problem.into())
}
