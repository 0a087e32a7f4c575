//! The files of a campaign: what decides what comes of it, and what it names.

use std::collections::BTreeSet;
use std::path::{Path, PathBuf};

use super::find::CAMPAIGN_FILE;
use super::model::Campaign;

/// A file that decides what comes of a campaign.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct InputFile {
    /// As reports name it.
    pub name: String,
    /// Where it is.
    pub path: PathBuf,
}

impl Campaign {
    /// Every file that decides what comes of it, each once: the campaign file, what it shares
    /// with others, its logs and its photo.
    pub fn input_files(&self) -> Vec<InputFile> {
        let shared = self.shared.iter();
        let shared = shared.map(|one| (one.name.as_str(), one.path.as_path()));
        let photo = self.cooker.photo.as_ref();
        let all = std::iter::once((CAMPAIGN_FILE, self.file.as_path()))
            .chain(shared)
            .chain(self.logs())
            .chain(photo.map(|photo| (photo.name.as_str(), photo.path.as_path())));
        let mut seen = BTreeSet::new();
        let each = all.filter(|(name, _)| seen.insert(*name));
        let each = each.map(|(name, path)| InputFile {
            name: name.to_owned(),
            path: path.to_path_buf(),
        });
        each.collect()
    }

    /// The campaign file and those that it shares, the nearest first, each with its text.
    pub fn texts(&self) -> impl Iterator<Item = (&Path, &str)> {
        let shared = self.shared.iter();
        let shared = shared.map(|one| (one.path.as_path(), one.text.as_str()));
        std::iter::once((self.file.as_path(), self.text.as_str())).chain(shared)
    }

    /// The file in which a key such as `calibration`, or what stands below it, is stated: the
    /// campaign file, unless a file of shared keys alone has it.
    pub fn file_of(&self, key: &str) -> &Path {
        let is_below = |held: &String| {
            let rest = held.strip_prefix(key);
            rest.is_some_and(|rest| rest.is_empty() || rest.starts_with('.'))
        };
        let mut shared = self.shared.iter();
        let shared = shared.find(|one| one.holding.iter().any(is_below));
        shared.map_or(&self.file, |one| &one.path)
    }

    /// The logs and the photo, as the campaign file names them.
    pub fn named_files(&self) -> impl Iterator<Item = &str> {
        let logs = self.logs().map(|(name, _)| name);
        let photo = self.cooker.photo.as_ref();
        logs.chain(photo.map(|photo| photo.name.as_str()))
    }

    /// The logs of all runs, weather logs too: as the campaign file names them, and where they
    /// are. One that several runs name is there several times.
    pub fn logs(&self) -> impl Iterator<Item = (&str, &Path)> {
        self.runs.iter().flat_map(|run| {
            let weather = run.weather.as_ref();
            let weather = weather.map(|one| (one.log.as_str(), one.path.as_path()));
            std::iter::once((run.log.as_str(), run.path.as_path())).chain(weather)
        })
    }
}
