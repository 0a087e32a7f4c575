//! What goes into a document beside its words.

use serde::Serialize;

/// A file that the templates use: a figure, a photo, the bytes of an attachment.
pub struct Asset {
    pub name: String,
    pub bytes: Vec<u8>,
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
