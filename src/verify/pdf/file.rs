//! The file as a whole: what it says of itself, its attachments, its pages.

use std::collections::BTreeSet;
use std::fs;
use std::io::Write;
use std::path::{Path, PathBuf};

use jiff::Timestamp;
use lopdf::{Dictionary, Document, Object, ObjectId, Stream};

use super::drawing::{Page, Reading};
use super::same::{Difference, differences};
use super::tree::{fault_of_tree, page_ids};
use super::unpack::{Fault, Unpacked, unpack};
use super::whole::{SIGNATURE, Unreadable, read_whole};
use crate::bounds::{ATTACHED_EACH, PDF_PAGES};
use crate::campaign::wishes::Paper;
use crate::error::{Error, Problem, Result, why};
use crate::hash::sha256_hex;
use crate::logs::source::most_unpacked;
use crate::report::{LARGEST_TOTAL, MOST_ATTACHMENTS};

/// Largest file that is read, bytes.
const LARGEST_FILE: u64 = LARGEST_TOTAL + (256 << 20);
/// Deepest tree of names.
const DEEPEST: usize = 32;

/// How far two sides of a page may differ from a paper's, points.
const SAME_SIZE_PT: f32 = 1.0;

/// What to do about a file that cannot be read.
const ASK: &str = "ask for the report again, as simmerline wrote it";

/// A PDF that can be read.
pub struct Pdf {
    path: PathBuf,
    /// Of the file, bytes.
    size: u64,
    /// Of the file's bytes, lower-case hex.
    sha256: String,
    document: Document,
}

/// What a report says of how it was made.
pub struct Imprint {
    /// Program and version.
    pub creator: String,
    /// Code of the language.
    pub language: String,
    pub issued: Option<Timestamp>,
    pub paper: Option<Paper>,
}

/// A file in the PDF.
pub struct Embedded<'p> {
    pub name: String,
    /// By the word of PDF: `Source`, `Data`, `Supplement`.
    pub relationship: String,
    content: &'p Stream,
}

/// Whether bytes begin as a web page does.
fn is_web_page(bytes: &[u8]) -> bool {
    let start = &bytes[..bytes.len().min(1024)];
    let start = String::from_utf8_lossy(start).to_lowercase();
    start.contains("<!doctype html") || start.contains("<html")
}

impl Pdf {
    /// Reads a file.
    ///
    /// # Errors
    /// [`Error::Input`] for one that is no PDF, is damaged, incomplete or encrypted.
    pub fn read(path: &Path) -> Result<Self> {
        let fail = |what: String, hint: &str| input(Problem::at(path, what).hint(hint));
        let size = fs::metadata(path).map(|metadata| metadata.len());
        if size.is_ok() && !path.is_file() {
            return Err(fail(
                "is no file (a folder, a device or a pipe)".to_owned(),
                "name a report's PDF",
            ));
        }
        if size.is_ok_and(|size| size > LARGEST_FILE) {
            return Err(fail(
                "is too large for a report".to_owned(),
                "name a report's PDF",
            ));
        }
        let bytes = fs::read(path).map_err(|error| {
            fail(
                format!("cannot be read: {}", why(&error)),
                "check its name, and that you may read it",
            )
        })?;
        Pdf::parse(path, &bytes)
    }

    /// Reads a file's bytes.
    ///
    /// # Errors
    /// As [`Pdf::read`].
    pub fn parse(path: &Path, bytes: &[u8]) -> Result<Self> {
        let fail = |what: String, hint: &str| Err(input(Problem::at(path, what).hint(hint)));
        if !bytes.starts_with(SIGNATURE) {
            let hint = match is_web_page(bytes) {
                true => {
                    "only the PDF carries what it was made from: name the PDF of the same report"
                }
                false => "name a report's PDF",
            };
            return fail("is not a PDF".to_owned(), hint);
        }
        let document = read_whole(bytes).map_err(|fault| match fault {
            Unreadable::Damaged { what, at } => {
                let at = at.map_or_else(String::new, |at| format!(", byte {at}"));
                let what = format!("is a damaged or incomplete PDF ({what}{at})");
                input(Problem::at(path, what).hint(ASK))
            }
            Unreadable::Encrypted => input(
                Problem::at(path, "is encrypted")
                    .hint("take the password off, or ask for the report as simmerline wrote it"),
            ),
            Unreadable::TwoReadings { what } => two_readings(path, what),
        })?;
        if document.catalog().is_err() {
            return fail(
                "is a damaged or incomplete PDF (it has no catalogue)".to_owned(),
                ASK,
            );
        }
        if let Some(what) = fault_of_tree(&document) {
            return Err(two_readings(path, what));
        }
        if page_ids(&document).len() > PDF_PAGES.count() {
            return fail("has more pages than any report".to_owned(), ASK);
        }
        Ok(Pdf {
            path: path.to_path_buf(),
            size: bytes.len() as u64,
            sha256: sha256_hex(bytes),
            document,
        })
    }

    /// Whether the file has these bytes.
    pub fn is(&self, bytes: &[u8]) -> bool {
        self.sha256 == sha256_hex(bytes)
    }

    /// SHA-256 of the file, lower-case hex.
    pub fn sha256(&self) -> &str {
        &self.sha256
    }

    /// A problem with this file.
    pub fn problem(&self, what: impl Into<String>) -> Problem {
        Problem::at(&self.path, what)
    }

    /// What it says of how it was made.
    pub fn imprint(&self) -> Imprint {
        let language = self
            .document
            .catalog()
            .and_then(|catalog| catalog.get(b"Lang"));
        Imprint {
            creator: self.stated(b"Creator").unwrap_or_default(),
            language: language
                .and_then(lopdf::decode_text_string)
                .unwrap_or_default(),
            issued: self
                .stated(b"CreationDate")
                .and_then(|date| timestamp(&date)),
            paper: self.paper(),
        }
    }

    fn paper(&self) -> Option<Paper> {
        let page = self.document.get_dictionary(self.page_ids().next()?).ok()?;
        let media = page
            .get_deref(b"MediaBox", &self.document)
            .ok()?
            .as_array()
            .ok()?;
        let sides: Vec<f32> = media
            .iter()
            .filter_map(|side| side.as_float().ok())
            .collect();
        let [left, bottom, right, top] = sides[..] else {
            return None;
        };
        let is_near = |side: f32, expected: f32| (side - expected).abs() < SAME_SIZE_PT;
        let is_of = |paper: &Paper| {
            let (width, height) = size_pt(*paper);
            is_near(right - left, width) && is_near(top - bottom, height)
        };
        Paper::ALL.into_iter().find(is_of)
    }

    /// Everything that differs from a report set again, which is to be trusted.
    pub fn differences(&self, again: &Pdf) -> Vec<Difference> {
        differences(&self.document, &again.document)
    }

    /// The program that says it saved the file last, if any.
    pub fn saved_by(&self) -> Option<String> {
        self.stated(b"Producer")
    }

    /// What its information states under a key.
    fn stated(&self, key: &[u8]) -> Option<String> {
        let information = self.document.trailer.get_deref(b"Info", &self.document);
        let value = information.and_then(Object::as_dict).ok()?;
        let value = value.get_deref(key, &self.document).ok()?;
        lopdf::decode_text_string(value).ok()
    }

    /// The files in it.
    ///
    /// # Errors
    /// [`Error::Input`] for more of them than a report has, and for an entry that is none.
    pub fn attachments(&self) -> Result<Vec<Embedded<'_>>> {
        let Some(root) = self.name_tree() else {
            return Ok(Vec::new());
        };
        let mut entries = Vec::new();
        self.gather(root, &mut entries, &mut BTreeSet::new(), DEEPEST)?;
        entries
            .into_iter()
            .map(|entry| self.embedded(entry))
            .collect()
    }

    fn names(&self) -> Option<&Dictionary> {
        let catalog = self.document.catalog().ok()?;
        let names = catalog.get_deref(b"Names", &self.document);
        names.and_then(Object::as_dict).ok()
    }

    fn name_tree(&self) -> Option<&Dictionary> {
        let root = self.names()?.get_deref(b"EmbeddedFiles", &self.document);
        root.and_then(Object::as_dict).ok()
    }

    /// Everything that a tree of names holds.
    fn gather<'p>(
        &'p self,
        node: &'p Dictionary,
        entries: &mut Vec<&'p Object>,
        seen: &mut BTreeSet<ObjectId>,
        depth: usize,
    ) -> Result<()> {
        let list = |key: &[u8]| {
            let list = node.get_deref(key, &self.document);
            list.and_then(Object::as_array)
                .map_or(&[][..], Vec::as_slice)
        };
        entries.extend(list(b"Names").chunks_exact(2).map(|pair| &pair[1]));
        if entries.len() > MOST_ATTACHMENTS {
            let what = format!("has more than {MOST_ATTACHMENTS} attachments, which no report has");
            return Err(input(self.problem(what).hint(ASK)));
        }
        for kid in list(b"Kids") {
            let id = kid.as_reference().ok();
            let child = id.and_then(|id| self.document.get_dictionary(id).ok());
            let is_new = id.is_some_and(|id| seen.insert(id));
            match child {
                Some(child) if is_new && depth > 0 => {
                    self.gather(child, entries, seen, depth - 1)?
                }
                _ => {
                    return Err(input(
                        self.problem("has a list of attachments that leads nowhere or in circles")
                            .hint(ASK),
                    ));
                }
            }
        }
        Ok(())
    }

    fn embedded<'p>(&'p self, entry: &'p Object) -> Result<Embedded<'p>> {
        let read = || {
            let (_, entry) = self.document.dereference(entry).ok()?;
            let entry = entry.as_dict().ok()?;
            let files = entry
                .get_deref(b"EF", &self.document)
                .ok()?
                .as_dict()
                .ok()?;
            // Programs differ in which of the two they take.
            let is_one =
                |dictionary: &Dictionary| match (dictionary.get(b"F"), dictionary.get(b"UF")) {
                    (Ok(one), Ok(other)) => one == other,
                    _ => true,
                };
            let name = entry.get(b"UF").or_else(|_| entry.get(b"F")).ok()?;
            let content = files
                .get_deref(b"F", &self.document)
                .ok()?
                .as_stream()
                .ok()?;
            let relationship = entry.get(b"AFRelationship").and_then(Object::as_name);
            is_one(files).then_some(Embedded {
                name: readable(name)?,
                relationship: String::from_utf8_lossy(relationship.unwrap_or_default())
                    .into_owned(),
                content,
            })
        };
        read().ok_or_else(|| {
            input(
                self.problem(
                    "has an attachment without content, or without a name that can be read",
                )
                .hint(ASK),
            )
        })
    }

    fn page_ids(&self) -> impl Iterator<Item = ObjectId> + use<> {
        page_ids(&self.document).into_iter()
    }

    /// All pages, in their order.
    ///
    /// # Errors
    /// [`Error::Input`] with the page that cannot be read.
    pub fn pages(&self) -> Result<Vec<Page>> {
        let mut reading = Reading::new(&self.document, self.size);
        let mut pages = Vec::new();
        for id in self.page_ids() {
            let page = reading.page(id).map_err(|fault| {
                let what = fault.what();
                input(
                    self.problem(what)
                        .item(format!("page {}", pages.len() + 1))
                        .hint(ASK),
                )
            })?;
            pages.push(page);
        }
        Ok(pages)
    }
}

impl Embedded<'_> {
    /// Unpacks it, to so many bytes at most, and says its SHA-256 and its size.
    ///
    /// # Errors
    /// What is wrong with it, or with where it is written to.
    pub fn unpack(&self, out: &mut impl Write, most: u64) -> std::result::Result<Unpacked, Fault> {
        let packed = self.content.content.len() as u64;
        let most = most.min(ATTACHED_EACH.most.max(most_unpacked(packed)));
        unpack(self.content, out, most)
    }
}

/// A text without characters that decoding would drop.
fn readable(text: &Object) -> Option<String> {
    let is_unicode =
        |bytes: &[u8]| bytes.starts_with(b"\xfe\xff") || bytes.starts_with(b"\xef\xbb\xbf");
    let bytes = text.as_str().ok()?;
    let drops = !is_unicode(bytes) && bytes.iter().any(u8::is_ascii_control);
    lopdf::decode_text_string(text).ok().filter(|_| !drops)
}

/// Width and height, points.
///
/// # Source
/// ISO 216 for A4; US Letter is 8.5 by 11 inches (ANSI/ASME Y14.1).
fn size_pt(paper: Paper) -> (f32, f32) {
    match paper {
        Paper::A4 => (595.276, 841.890),
        Paper::UsLetter => (612.0, 792.0),
    }
}

/// A PDF's date, which reports write in UTC: `D:20261103120000Z`.
fn timestamp(date: &str) -> Option<Timestamp> {
    let digits = date.strip_prefix("D:")?.strip_suffix('Z')?;
    let civil = jiff::civil::DateTime::strptime("%Y%m%d%H%M%S", digits).ok()?;
    jiff::tz::TimeZone::UTC.to_timestamp(civil).ok()
}

/// Readers would show different things of one file.
fn two_readings(path: &Path, what: impl Into<String>) -> Error {
    let problem = Problem::at(path, what.into()).hint(
        "readers show different things of such a file, and no report is like that: ask for the report again, as simmerline wrote it",
    );
    Error::TwoReadings(problem.into())
}

fn input(problem: Problem) -> Error {
    Error::Input(problem.into())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_date_is_read_as_reports_write_it() {
        let issued = timestamp("D:20261103120000Z").unwrap();
        assert_eq!(issued.to_string(), "2026-11-03T12:00:00Z");
        for date in ["", "D:2026", "D:20261103120000+01'00'", "D:20261399120000Z"] {
            assert_eq!(timestamp(date), None, "{date}");
        }
    }
}
