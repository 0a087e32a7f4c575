//! What all words share: rows of facts, and figures.

use serde::Serialize;

use crate::language::{Phrase, Words};

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
