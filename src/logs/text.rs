//! Bytes of a log to lines of text.

use std::io::{self, Read};
use std::path::Path;

use encoding_rs::{DecoderResult, Encoding, UTF_8, UTF_16BE, UTF_16LE, WINDOWS_1252};
use memchr::memchr2;

use super::source::{HEAD, Source, unreadable};
use crate::bounds::LOG_LINE;
use crate::error::Problem;
use crate::language::Phrase;
use crate::message;

/// How a log's bytes are text.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TextEncoding {
    encoding: &'static Encoding,
    has_mark: bool,
    /// Nothing but ASCII was seen, so that another encoding is as likely.
    is_open: bool,
    is_declared: bool,
}

impl TextEncoding {
    /// Tells the encoding of a log, by the campaign file, a byte-order mark, the
    /// pattern of zeros that UTF-16 has, and whether the bytes are UTF-8. What is left
    /// is taken for Windows-1252, of which Latin-1 is a part.
    ///
    /// # Errors
    /// A [`Problem`] for a file that is empty, binary or cannot be read.
    pub fn detect(
        path: &Path,
        source: Source<'_>,
        declared: Option<&str>,
    ) -> Result<Self, Problem> {
        let failed = |error: io::Error| unreadable(path, &error);
        let mut head = Vec::new();
        let text = source.open_text().map_err(failed)?;
        text.take(HEAD as u64)
            .read_to_end(&mut head)
            .map_err(failed)?;
        let bare = head.strip_prefix(b"\xef\xbb\xbf").unwrap_or(&head);
        if bare.iter().all(u8::is_ascii_whitespace) {
            return Err(
                Problem::at(path, "is empty, expected a header and readings")
                    .hint("was the logger's memory read out? copy the log again"),
            );
        }
        let found = |encoding| TextEncoding {
            encoding,
            has_mark: false,
            is_open: false,
            is_declared: false,
        };
        if let Some((encoding, _)) = Encoding::for_bom(&head) {
            return Ok(TextEncoding {
                has_mark: true,
                ..found(encoding)
            });
        }
        if let Some(encoding) = declared.and_then(|label| Encoding::for_label(label.as_bytes())) {
            return Ok(TextEncoding {
                is_declared: true,
                ..found(encoding)
            });
        }
        if let Some(encoding) = utf_16_by_zeros(&head) {
            return Ok(found(encoding));
        }
        if let Some(offset) = head.iter().position(|&byte| byte == 0) {
            let what = format!(
                "holds binary data (byte {} is zero), expected text",
                offset + 1
            );
            return Err(Problem::at(path, what).hint("export the log as CSV, .xlsx or .ods"));
        }
        let is_cut = head.len() == HEAD;
        Ok(match std::str::from_utf8(&head) {
            Ok(text) => TextEncoding {
                is_open: text.is_ascii(),
                ..found(UTF_8)
            },
            Err(error) if is_cut && error.error_len().is_none() => found(UTF_8),
            Err(_) => found(WINDOWS_1252),
        })
    }

    /// What to try where the bytes turn out not to be text in this encoding.
    pub fn instead(self) -> Option<Self> {
        self.is_open.then_some(TextEncoding {
            encoding: WINDOWS_1252,
            is_open: false,
            ..self
        })
    }

    /// In words.
    pub fn describe(self) -> Phrase {
        let name = match self.encoding.name() {
            "UTF-16LE" => "UTF-16 LE",
            "UTF-16BE" => "UTF-16 BE",
            "windows-1252" => "Windows-1252",
            other => other,
        };
        match (self.has_mark, self.is_declared) {
            (true, _) => message!("encoding-marked", name = name).into(),
            (_, true) => message!("encoding-stated", name = name).into(),
            _ => name.into(),
        }
    }
}

/// Text in Latin letters has a zero in every other byte of UTF-16.
fn utf_16_by_zeros(head: &[u8]) -> Option<&'static Encoding> {
    let zeros = |from: usize| {
        head.iter()
            .skip(from)
            .step_by(2)
            .filter(|&&b| b == 0)
            .count()
    };
    let (even, odd, half) = (zeros(0), zeros(1), head.len() / 2);
    let most = |zeros: usize| half > 4 && zeros * 10 > half * 7;
    let few = |zeros: usize| zeros * 20 < half;
    match () {
        () if most(odd) && few(even) => Some(UTF_16LE),
        () if most(even) && few(odd) => Some(UTF_16BE),
        () => None,
    }
}

/// Why a line could not be had.
#[derive(Debug)]
pub enum LineFault {
    Unreadable(io::Error),
    /// The bytes of this line are no text.
    NotText(u64),
    TooLong(u64),
}

/// Lines of a log, one after the other, each end of line (CR, LF or both) alike.
pub struct Lines<'s> {
    source: Box<dyn Read + 's>,
    decoder: encoding_rs::Decoder,
    raw: Vec<u8>,
    /// Decoded, and handed out up to `at`.
    text: String,
    at: usize,
    line: u64,
    is_read: bool,
    /// The last line handed out has no end: the file stops in it.
    pub is_open_ended: bool,
}

impl<'s> Lines<'s> {
    /// The lines from the start.
    ///
    /// # Errors
    /// That of the file system.
    pub fn open(source: Source<'s>, encoding: TextEncoding) -> io::Result<Self> {
        Ok(Lines {
            source: source.open_text()?,
            decoder: encoding.encoding.new_decoder_with_bom_removal(),
            raw: vec![0; HEAD],
            text: String::new(),
            at: 0,
            line: 0,
            is_read: false,
            is_open_ended: false,
        })
    }

    /// Number of the line handed out last, from 1.
    pub fn line(&self) -> u64 {
        self.line
    }

    /// The next line without its end; `None` after the last.
    ///
    /// # Errors
    /// [`LineFault`], after which there is no next line.
    #[allow(clippy::should_implement_trait)] // hands out borrowed lines
    pub fn next(&mut self) -> Result<Option<&str>, LineFault> {
        let mut searched = self.at;
        loop {
            let found = memchr2(b'\n', b'\r', &self.text.as_bytes()[searched..]);
            let end = found.map(|offset| searched + offset);
            if let Some(end) = end {
                let after = &self.text.as_bytes()[end..];
                let is_split = after == b"\r" && !self.is_read;
                if !is_split {
                    let start = self.at;
                    self.at = end + if after.starts_with(b"\r\n") { 2 } else { 1 };
                    self.line += 1;
                    return Ok(Some(&self.text[start..end]));
                }
            } else if self.is_read {
                let start = self.at;
                self.at = self.text.len();
                self.is_open_ended = start < self.at;
                self.line += u64::from(self.is_open_ended);
                return Ok(self.is_open_ended.then_some(&self.text[start..]));
            }
            if self.text.len() - self.at > LOG_LINE.count() {
                return Err(LineFault::TooLong(self.line + 1));
            }
            searched = end.unwrap_or(self.text.len()) - self.at;
            self.refill()?;
        }
    }

    /// Reads and decodes another block behind what has not been handed out.
    fn refill(&mut self) -> Result<(), LineFault> {
        self.text.drain(..self.at);
        self.at = 0;
        let read = self
            .source
            .read(&mut self.raw)
            .map_err(LineFault::Unreadable)?;
        self.is_read = read == 0;
        let raw = &self.raw[..read];
        let most = self
            .decoder
            .max_utf8_buffer_length_without_replacement(read);
        self.text.reserve(most.unwrap_or(4 * read));
        let (result, _) =
            self.decoder
                .decode_to_string_without_replacement(raw, &mut self.text, self.is_read);
        match result {
            DecoderResult::InputEmpty => Ok(()),
            DecoderResult::Malformed(..) | DecoderResult::OutputFull => {
                let ends = self.text.bytes().filter(|&byte| byte == b'\n').count() as u64;
                Err(LineFault::NotText(self.line + 1 + ends))
            }
        }
    }
}

impl LineFault {
    /// As a problem with a log in some encoding.
    pub fn problem(&self, path: &Path, encoding: Option<TextEncoding>) -> Problem {
        match self {
            LineFault::Unreadable(error) => unreadable(path, error),
            LineFault::NotText(line) => {
                let encoding = encoding.map_or("".to_owned(), |encoding| {
                    format!("{} ", encoding.describe())
                });
                let what = format!("holds bytes that are not {encoding}text");
                Problem::at(path, what).line(*line).hint(
                    "copy the log again; if it is in another encoding, name it under [format] encoding, such as \"windows-1252\"",
                )
            }
            LineFault::TooLong(line) => Problem::at(path, "a line is longer than 1 MiB")
                .line(*line)
                .hint("a log has a reading a line; is the file damaged?"),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn lines_of(bytes: &[u8]) -> (String, Vec<String>) {
        let path = Path::new("a.csv");
        let source = Source::Bytes(bytes);
        let encoding = TextEncoding::detect(path, source, None).unwrap();
        let mut lines = Lines::open(source, encoding).unwrap();
        let mut read = Vec::new();
        while let Some(line) = lines.next().unwrap() {
            read.push(line.to_owned());
        }
        (encoding.describe().to_string(), read)
    }

    #[test]
    fn every_end_of_line_is_one() {
        for text in ["a\nb\n\nc", "a\r\nb\r\n\r\nc\r\n", "a\rb\r\rc\r"] {
            assert_eq!(lines_of(text.as_bytes()).1, ["a", "b", "", "c"], "{text:?}");
        }
    }

    #[test]
    fn an_end_of_line_across_blocks_is_one() {
        let mut bytes = vec![b'x'; HEAD - 1];
        bytes.extend(b"\r\ny");
        let (_, read) = lines_of(&bytes);
        assert_eq!((read.len(), read[1].as_str()), (2, "y"));
    }

    #[test]
    fn encodings_are_told_apart() {
        let utf_16 = |swap: bool| -> Vec<u8> {
            let pair = |unit: u16| {
                if swap {
                    unit.to_be_bytes()
                } else {
                    unit.to_le_bytes()
                }
            };
            "Wasser °C;é".encode_utf16().flat_map(pair).collect()
        };
        let cases: [(Vec<u8>, &str); 6] = [
            ("Wasser °C;é".into(), "UTF-8"),
            ("\u{feff}Wasser °C;é".into(), "UTF-8 with byte-order mark"),
            (b"Wasser \xb0C;\xe9".to_vec(), "Windows-1252"),
            (utf_16(false), "UTF-16 LE"),
            (utf_16(true), "UTF-16 BE"),
            (
                [&b"\xff\xfe"[..], &utf_16(false)].concat(),
                "UTF-16 LE with byte-order mark",
            ),
        ];
        for (bytes, name) in cases {
            let (encoding, read) = lines_of(&bytes);
            assert_eq!((encoding.as_str(), read[0].as_str()), (name, "Wasser °C;é"));
        }
    }
}
