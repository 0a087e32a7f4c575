//! How a report is made: when, in which language and units, on which paper.

use std::collections::BTreeMap;

use jiff::Timestamp;
use serde::{Deserialize, Serialize};

use crate::bounds::CARRIED_LOG;
use crate::campaign::Campaign;
use crate::campaign::wishes::{Paper, ReportWishes};
use crate::hash::HashedFile;
use crate::language::{Language, UnitSystem, Words};
use crate::message;

/// A form in which results can be had; JSON and CSV there always are.
#[derive(Debug, Clone, Copy, PartialEq, Eq, clap::ValueEnum, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Format {
    /// The report, as PDF
    Pdf,
    /// The report, as one web page that needs no network
    Html,
    /// A row of each campaign and of each interval, as Apache Parquet
    Parquet,
}

impl Format {
    /// What the name of a campaign's file in it ends with; `None`: its files are in folders of
    /// their own.
    pub fn ending(self) -> Option<&'static str> {
        match self {
            Format::Pdf => Some("pdf"),
            Format::Html => Some("html"),
            Format::Parquet => None,
        }
    }
}

/// What a PDF carries of what it was made from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Carried {
    Nothing,
    /// All but the longest logs.
    Usual,
    All,
}

impl Carried {
    /// Longest log that goes inside, bytes.
    pub fn largest_log(self) -> u64 {
        match self {
            Carried::All => u64::MAX,
            Carried::Nothing | Carried::Usual => CARRIED_LOG.most,
        }
    }
}

/// What is chosen about a report, apart from what it says.
pub struct Edition {
    /// Time of issue.
    pub issued: Timestamp,
    pub words: Words,
    pub paper: Paper,
    pub formats: Vec<Format>,
    /// The PDF carries its evidence inside.
    pub has_attachments: bool,
    /// Longest log that goes inside, bytes: a longer one is named by its hash and kept beside
    /// the PDF.
    pub largest_log: u64,
}

/// What a template needs to know of an edition.
#[derive(Debug, Clone, Serialize)]
pub struct Setting {
    /// Code of the language, for hyphenation and screen readers.
    pub language: &'static str,
    pub paper: &'static str,
    pub references: References,
    /// The template's own words: messages that begin with `page-`, by the rest of their name.
    pub words: BTreeMap<String, String>,
}

/// How a language refers to another place of the document; `[number]` stands for its number.
#[derive(Debug, Clone, Serialize)]
pub struct References {
    pub section: String,
    pub page: String,
}

impl References {
    fn of(words: &Words) -> Self {
        let foot = words.say(message!("page-foot"));
        let (page, _) = foot.split_once("[page]").unwrap_or((foot.as_str(), ""));
        References {
            section: words.say(message!("budget-in-section", section = "[number]")),
            page: format!("{page}[number]"),
        }
    }
}

/// Prefix of messages that are a template's own words.
const OF_TEMPLATES: &str = "page-";

impl Edition {
    /// In English, on A4, in the units of the SI, as PDF with attachments.
    pub fn plain(issued: Timestamp) -> Self {
        Edition {
            issued,
            words: Words::new(Language::ENGLISH, UnitSystem::Si),
            paper: Paper::A4,
            formats: vec![Format::Pdf],
            has_attachments: true,
            largest_log: CARRIED_LOG.most,
        }
    }

    /// As a campaign wishes it.
    pub fn wished(wishes: &ReportWishes, issued: Timestamp) -> Self {
        Edition {
            words: Words::new(wishes.language, wishes.units),
            paper: wishes.paper,
            ..Edition::plain(issued)
        }
    }

    /// The same in another language; `None`: in the same.
    #[must_use]
    pub fn in_language(self, language: Option<Language>) -> Self {
        match language {
            Some(language) => Edition {
                words: Words::new(language, self.words.units),
                ..self
            },
            None => self,
        }
    }

    /// The same with more or less inside.
    #[must_use]
    pub fn carrying(self, carried: Carried) -> Self {
        Edition {
            has_attachments: carried != Carried::Nothing,
            largest_log: carried.largest_log(),
            ..self
        }
    }

    /// Whether an input is kept beside the PDF, which carries the others.
    pub fn keeps_beside(&self, campaign: &Campaign, input: &HashedFile) -> bool {
        let is_log = || campaign.logs().any(|(name, _)| name == input.name);
        self.has_attachments && input.bytes > self.largest_log && is_log()
    }

    /// What the templates need to know of it.
    pub fn setting(&self) -> Setting {
        Setting {
            language: self.words.language.code,
            paper: self.paper.word(),
            references: References::of(&self.words),
            words: self.words.beginning_with(OF_TEMPLATES),
        }
    }
}
