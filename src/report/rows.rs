//! What all words share: rows of facts, figures, and findings.

use serde::Serialize;

use crate::language::{Phrase, Words};
use crate::procedure::finding::Finding;
use crate::units::sentence_case;

/// A label and what stands beside it.
#[derive(Debug, Clone, Serialize)]
pub struct Row {
    pub label: String,
    pub text: String,
}

impl Row {
    /// A row of a list of facts.
    pub fn new(label: &str, text: impl Into<String>) -> Self {
        Row {
            label: label.to_owned(),
            text: text.into(),
        }
    }

    /// A row of a list of facts, said in a language.
    pub fn said(words: &Words, label: impl Into<Phrase>, text: impl Into<Phrase>) -> Self {
        Row::new(&words.say(label), words.say(text))
    }
}

/// A figure: its file among the document's, its caption, and its content in words.
#[derive(Debug, Clone, Serialize)]
pub struct Figure {
    pub file: String,
    pub caption: String,
    pub alt: String,
}

/// A finding and what would mend it.
#[derive(Debug, Clone, Serialize)]
pub struct FindingText {
    pub code: String,
    pub text: String,
    pub remedy: String,
}

impl FindingText {
    /// A finding of any procedure, with its code in files.
    pub fn said<C>(words: &Words, code: &str, finding: &Finding<C>) -> Self {
        FindingText {
            code: code.to_owned(),
            text: sentence_case(&words.say(&finding.text)),
            remedy: sentence_case(&words.say(&finding.remedy)),
        }
    }
}
