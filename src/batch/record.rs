//! What a campaign's outputs were made of. `NAME.made.json` lies beside them and is put in its
//! place with them; by it the next call sees what has changed since.

use std::borrow::Cow;
use std::fs;
use std::path::{Path, PathBuf};

use jiff::Timestamp;
use serde::{Deserialize, Serialize};

use super::brief::Brief;
use crate::campaign::Campaign;
use crate::campaign::find::Unit;
use crate::error::{Error, Result};
use crate::hash::{HashedFile, sha256_hex};
use crate::language::Language;
use crate::logs::source::Source;
use crate::procedure::tested::inputs;
use crate::report::files::{FileFacts, Output, sha256_of};
use crate::report::{Carried, Format, is_plain};

/// How the name of a record ends.
pub const ENDING: &str = ".made.json";
/// Name and version of its form.
const SCHEMA: &str = "simmerline.made/1";
/// Longest record that is read, bytes: 4,000 inputs of long names have less.
const LONGEST: u64 = 8 << 20;

/// What is chosen for a call and decides what it makes of a campaign.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Choices {
    /// Code of the language; `None`: the campaign's.
    pub language: Option<String>,
    /// Forms, each once, in the order asked for.
    pub formats: Vec<Format>,
    pub carried: Carried,
    /// Time of issue, seconds since 1970, where it is fixed.
    pub issued: Option<i64>,
}

impl Choices {
    /// Of a language, forms, what a PDF carries, and the time of issue, where it is fixed.
    pub fn new(
        language: Option<Language>,
        formats: Vec<Format>,
        carried: Carried,
        fixed: Option<Timestamp>,
    ) -> Choices {
        Choices {
            language: language.map(|language| language.code.to_owned()),
            formats,
            carried,
            issued: fixed.map(Timestamp::as_second),
        }
    }
}

/// A file that outputs rest on.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub struct Input {
    /// As the campaign file calls it.
    pub name: String,
    /// SHA-256, lower-case hex.
    pub sha256: String,
    /// It lies outside the campaign's folder.
    pub outside: bool,
}

/// How the names of the campaign's files in data sets begin: outputs that only some calls make.
const ROWS: [&str; 2] = ["campaigns/branch=", "intervals/branch="];

/// What a campaign's outputs were made of.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Record {
    schema: String,
    tool_version: String,
    choices: Choices,
    /// Folders between the root of the outputs and those of this campaign.
    pub branch: String,
    /// By [`mark_of`] where the campaign's folder is; `None` where it is not known, as in records
    /// of versions before 0.6.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    folder: Option<String>,
    pub inputs: Vec<Input>,
    /// By their paths from the root of the outputs.
    pub outputs: Vec<FileFacts>,
    pub brief: Brief,
}

impl Record {
    /// Of outputs that were made of inputs by choices; `folder` is the campaign's, by [`mark_of`].
    pub fn new(
        choices: Choices,
        branch: &str,
        folder: Option<String>,
        inputs: Vec<Input>,
        outputs: Vec<FileFacts>,
        brief: Brief,
    ) -> Record {
        Record {
            schema: SCHEMA.to_owned(),
            tool_version: env!("CARGO_PKG_VERSION").to_owned(),
            choices,
            branch: branch.to_owned(),
            folder,
            inputs,
            outputs,
            brief,
        }
    }

    /// Name of the campaign.
    pub fn name(&self) -> &str {
        &self.brief.standing.campaign
    }

    /// The record as a file beside the outputs.
    ///
    /// # Errors
    /// [`Error::Internal`] if a value has no JSON form.
    pub fn output(&self) -> Result<Output> {
        let text = serde_json::to_string_pretty(self);
        let text = text.map_err(|error| Error::Internal(error.to_string()))? + "\n";
        Ok(Output {
            name: format!("{}{ENDING}", self.name()),
            bytes: text.into_bytes(),
        })
    }

    /// The record in a file; `None` where there is none, or what is there is no record of this
    /// form: then nothing is known of the outputs beside it.
    pub fn read(path: &Path) -> Option<Record> {
        let is_short = fs::metadata(path).is_ok_and(|of| of.is_file() && of.len() <= LONGEST);
        let text = is_short.then(|| fs::read(path).ok()).flatten()?;
        let record: Record = serde_json::from_slice(&text).ok()?;
        (record.schema == SCHEMA).then_some(record)
    }

    /// Files of rows that this record names and `newer` does not: no call makes them any more.
    pub fn rows_without(&self, newer: &Record) -> Vec<&str> {
        let is_row = |name: &str| ROWS.iter().any(|start| name.starts_with(start));
        let is_kept = |name: &str| newer.outputs.iter().any(|output| output.name == name);
        let names = self.outputs.iter().map(|output| output.name.as_str());
        names
            .filter(|name| is_row(name) && is_plain(name) && !is_kept(name))
            .collect()
    }

    /// Whether it is of another campaign than `newer`: of another folder, and nothing that it
    /// rests on is among what `newer` rests on. A campaign of one run whose log is typed in again
    /// has nothing left that was there before, and is still the same. Where a folder is not known,
    /// the title tells.
    pub fn is_of_another(&self, newer: &Record) -> bool {
        let is_in_both = |input: &Input| newer.inputs.iter().any(|one| one.sha256 == input.sha256);
        let is_elsewhere = match (&self.folder, &newer.folder) {
            (Some(folder), Some(newer)) => folder != newer,
            _ => self.brief.standing.title != newer.brief.standing.title,
        };
        is_elsewhere && !self.inputs.iter().any(is_in_both)
    }

    /// Whether the outputs are what this version would make of these inputs by these choices,
    /// and are as they were written. `root` is the root of the outputs.
    pub fn holds(&self, choices: &Choices, unit: &Unit, inputs: &[Input], root: &Path) -> bool {
        let is_there = |facts: &FileFacts| {
            let path = root.join(&facts.name);
            // The length first: it is told without reading.
            fs::symlink_metadata(&path)
                .is_ok_and(|of| of.is_file() && of.len() == facts.length as u64)
                && sha256_of(&path).is_ok_and(|sha256| sha256 == facts.sha256)
        };
        self.tool_version == env!("CARGO_PKG_VERSION")
            && self.choices == *choices
            && self.branch == unit.branch
            && self.name() == unit.name
            && self.inputs == inputs
            && self.outputs.iter().all(is_there)
    }
}

/// What a campaign rests on now.
///
/// # Errors
/// If a log cannot be read.
pub fn inputs_now(campaign: &Campaign) -> std::io::Result<Vec<Input>> {
    let mut logs: Vec<HashedFile> = Vec::new();
    for (name, path) in campaign.logs() {
        if !logs.iter().any(|known| known.name == name) {
            logs.push(Source::File(path).hashed(name)?);
        }
    }
    Ok(listed(inputs(campaign, &logs), campaign))
}

/// Inputs with names to their fields, each once, in the order of their names.
pub fn listed(inputs: Vec<HashedFile>, campaign: &Campaign) -> Vec<Input> {
    let inputs = inputs.into_iter();
    let mut inputs: Vec<Input> = inputs
        .map(|HashedFile { name, sha256, .. }| Input {
            outside: campaign.outside.contains(&name),
            name,
            sha256,
        })
        .collect();
    inputs.sort();
    inputs.dedup();
    inputs
}

/// Tells a campaign's folder from others without naming it: SHA-256 of the way to it from the root
/// of the outputs, so that it is the same wherever both are. `None` where one of them cannot be
/// found.
pub fn mark_of(folder: &Path, root: &Path) -> Option<String> {
    let (folder, root) = (fs::canonicalize(folder).ok()?, fs::canonicalize(root).ok()?);
    let both = folder.components().zip(root.components());
    let shared = both.take_while(|(one, other)| one == other).count();
    let up = root.components().skip(shared).map(|_| "..".into());
    let down = folder.components().skip(shared);
    let down = down.map(|part| part.as_os_str().to_string_lossy());
    let way: Vec<Cow<'_, str>> = up.chain(down).collect();
    Some(sha256_hex(way.join("/").as_bytes()))
}

/// Where the record of a campaign is, below the root of the outputs.
pub fn place_of(root: &Path, branch: &str, name: &str) -> PathBuf {
    root.join(branch).join(format!("{name}{ENDING}"))
}
