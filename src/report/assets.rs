//! What goes into a document beside its words.

use serde::Serialize;

/// A file that the templates use: a figure, a photo, the bytes of an attachment.
pub struct Asset {
    pub name: String,
    pub bytes: Vec<u8>,
}

/// What the name of a figure that is drawn for a narrow screen begins with.
const NARROW: &str = "narrow-";

impl Asset {
    /// The same figure as another, drawn for a narrow screen: the web page shows one of both.
    #[must_use]
    pub fn for_narrow_screen(self) -> Self {
        Asset {
            name: format!("{NARROW}{}", self.name),
            ..self
        }
    }

    /// The figure that this is a drawing of for a narrow screen, if it is one.
    pub fn narrow_of(&self) -> Option<&str> {
        self.name.strip_prefix(NARROW)
    }
}

/// One attachment, as the template takes it.
#[derive(Debug, Clone, Serialize)]
pub struct Attachment {
    /// The document's file with its bytes.
    pub file: String,
    /// Under which it is attached.
    pub name: String,
    pub mime: &'static str,
    /// To the report, by the words of PDF.
    pub relationship: &'static str,
    /// One line.
    pub description: String,
}
