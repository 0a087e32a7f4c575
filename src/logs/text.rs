//! Bytes of a log to text.

use std::borrow::Cow;
use std::path::Path;

use crate::error::Problem;

/// Byte-order marks of UTF-16.
const UTF_16_MARKS: [&[u8]; 2] = [b"\xff\xfe", b"\xfe\xff"];

/// Decodes a log's bytes. So far: UTF-8, with or without a byte-order mark.
///
/// # Errors
/// A [`Problem`] for an empty file, binary content or another encoding.
pub fn decode<'b>(path: &Path, bytes: &'b [u8]) -> Result<Cow<'b, str>, Problem> {
    let bytes = bytes.strip_prefix(b"\xef\xbb\xbf").unwrap_or(bytes);
    if bytes.iter().all(u8::is_ascii_whitespace) {
        return Err(
            Problem::at(path, "is empty, expected a header and readings")
                .hint("was the logger's memory read out? copy the log again"),
        );
    }
    if UTF_16_MARKS.iter().any(|mark| bytes.starts_with(mark)) {
        return Err(Problem::at(path, "is UTF-16 text, expected UTF-8")
            .hint("save the log as CSV in UTF-8"));
    }
    if let Some(offset) = bytes.iter().position(|&byte| byte == 0) {
        return Err(Problem::at(
            path,
            format!(
                "holds binary data (byte {} is zero), expected text",
                offset + 1
            ),
        )
        .hint("export the log as CSV in UTF-8"));
    }
    match std::str::from_utf8(bytes) {
        Ok(text) => Ok(Cow::Borrowed(text)),
        Err(error) => {
            let offset = error.valid_up_to();
            let line = 1 + bytes[..offset]
                .iter()
                .filter(|&&byte| byte == b'\n')
                .count() as u64;
            Err(Problem::at(path, "holds bytes that are not UTF-8 text")
                .line(line)
                .hint("save the log as CSV in UTF-8"))
        }
    }
}
