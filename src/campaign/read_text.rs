//! A campaign file, or one of keys that campaigns share, read as text.

use std::fs;
use std::path::Path;

use crate::bounds::CAMPAIGN_BYTES;
use crate::error::{Error, Problem, Result, why};
use crate::hash::sha256_hex;

/// A file as read.
pub struct ReadText {
    /// Without a byte-order mark.
    pub text: String,
    /// Of its bytes, lower-case hex.
    pub sha256: String,
    /// Its length.
    pub bytes: u64,
}

impl ReadText {
    /// Of a text that is a whole file.
    pub fn of(text: String) -> Self {
        ReadText {
            sha256: sha256_hex(text.as_bytes()),
            bytes: text.len() as u64,
            text,
        }
    }
}

/// Reads a file; `kind` is what it is, as in "campaign file".
///
/// # Errors
/// [`Error::Campaign`] for what is no file, is larger than any campaign file, cannot be read or
/// is no text.
pub fn read_text(file: &Path, kind: &str) -> Result<ReadText> {
    let fail =
        |what: String, hint: &str| Error::Campaign(Problem::at(file, what).hint(hint).into());
    if file.exists() && !file.is_file() {
        return Err(fail(
            "is no file (a folder or a device)".to_owned(),
            &format!("put a {kind} of that name in its place"),
        ));
    }
    let size = fs::metadata(file).map_or(0, |metadata| metadata.len());
    if let Some(what) = CAMPAIGN_BYTES.exceeded_by(size as usize) {
        return Err(fail(
            what,
            &format!("is this a log? the {kind} is a short text"),
        ));
    }
    let bytes = fs::read(file).map_err(|error| {
        fail(
            format!("cannot be read: {}", why(&error)),
            "check that it is a file and that you may read it",
        )
    })?;
    let text = std::str::from_utf8(&bytes).map_err(|error| {
        fail(
            format!("is not UTF-8 text (at byte {})", error.valid_up_to() + 1),
            "save it as plain text in UTF-8",
        )
    })?;
    Ok(ReadText {
        text: text.strip_prefix('\u{feff}').unwrap_or(text).to_owned(),
        sha256: sha256_hex(&bytes),
        bytes: bytes.len() as u64,
    })
}
