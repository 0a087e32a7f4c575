//! Whether two documents hold the same, however their files are written.
//!
//! Both are walked together from their catalogues. Left out are numbers of objects, the way in
//! which streams are packed, what a program says of itself where it saves a file, and which
//! panel opens beside the pages; everything else counts, named in a list of ours or not.

use std::collections::{BTreeMap, BTreeSet, VecDeque};

use lopdf::{Dictionary, Document, Object, ObjectId, Stream};

use super::metadata::say_the_same;
use super::tree::page_ids;
use super::unpack::{Packing, Unpacked, packing, unpack, unpack_bytes};

/// So many differences are kept.
const MOST: usize = 1000;
/// Larger than any packet of metadata, bytes.
const LARGEST_METADATA: u64 = 1 << 20;
/// What the trailer leads to.
const CATALOG: &[u8] = b"Root";
const INFORMATION: &[u8] = b"Info";
/// What a program that saves a file again says of itself, and says nothing of the content.
const OF_SAVING: [&[u8]; 2] = [b"Producer", b"ModDate"];
/// How a stream is packed.
const OF_PACKING: [&[u8]; 2] = [b"Length", b"Filter"];

/// The part of a document that something belongs to.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Part {
    /// By its index.
    Page(usize),
    Pages,
    Bookmarks,
    Attachments,
    Structure,
    Metadata,
    Other,
}

/// Something that differs.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Difference {
    pub part: Part,
    /// Keys and places from the catalogue, joined by points.
    pub place: String,
}

/// Everything that differs between two documents, up to a bound. The second one is to be
/// trusted: it sets how far the first is unpacked.
pub fn differences(one: &Document, other: &Document) -> Vec<Difference> {
    let mut walk = Walk::new(one, other);
    walk.all();
    walk.found
}

/// One step on the way to an object: the step before, and what was done.
struct Step {
    before: Option<usize>,
    word: String,
}

/// Two objects that have to be the same.
struct Pair {
    ids: (ObjectId, ObjectId),
    step: usize,
}

struct Walk<'d> {
    one: &'d Document,
    other: &'d Document,
    seen: BTreeSet<(ObjectId, ObjectId)>,
    /// My page for each of theirs.
    pages: BTreeMap<ObjectId, ObjectId>,
    due: VecDeque<Pair>,
    steps: Vec<Step>,
    part: Part,
    found: Vec<Difference>,
}

impl<'d> Walk<'d> {
    fn new(one: &'d Document, other: &'d Document) -> Self {
        Walk {
            one,
            other,
            seen: BTreeSet::new(),
            pages: BTreeMap::new(),
            due: VecDeque::new(),
            steps: Vec::new(),
            part: Part::Other,
            found: Vec::new(),
        }
    }

    /// Part by part, so that what is shared counts to the first that has it.
    fn all(&mut self) {
        let (one, other) = (self.one, self.other);
        let pages: Vec<_> = page_ids(one).into_iter().zip(page_ids(other)).collect();
        self.seen.extend(&pages);
        self.pages = pages
            .iter()
            .map(|(mine, theirs)| (*theirs, *mine))
            .collect();
        let (Ok(mine), Ok(theirs)) = (one.catalog(), other.catalog()) else {
            return self.differ(None, "Root");
        };
        self.entry(mine, theirs, b"Pages", Part::Pages);
        for (index, ids) in pages.into_iter().enumerate() {
            self.part = Part::Page(index);
            let step = self.step(None, format!("page {}", index + 1));
            self.due.push_back(Pair { ids, step });
            self.finish();
        }
        for (key, part) in [
            (&b"Outlines"[..], Part::Bookmarks),
            (b"Names", Part::Attachments),
            (b"AF", Part::Attachments),
            (b"StructTreeRoot", Part::Structure),
            (b"Metadata", Part::Metadata),
        ] {
            self.entry(mine, theirs, key, part);
        }
        for key in keys_of_both(mine, theirs) {
            if !is_panel(mine, theirs, key) {
                self.entry(mine, theirs, key, Part::Other);
            }
        }
        self.part = Part::Metadata;
        self.information();
        self.finish();
        if self.found.is_empty() {
            self.part = Part::Other;
            self.hidden();
        }
    }

    /// Objects that nothing leads to: a reader that mends a file may find them all the same.
    fn hidden(&mut self) {
        let of = |document: &Document, key: &[u8]| {
            let found = document.trailer.get(key).and_then(Object::as_reference);
            found.ok()
        };
        let mut known: BTreeSet<ObjectId> = self.seen.iter().map(|(mine, _)| *mine).collect();
        known.extend(
            [CATALOG, INFORMATION]
                .iter()
                .filter_map(|key| of(self.one, key)),
        );
        let lengths = self.one.objects.values().filter_map(|object| {
            let length = object.as_stream().ok()?.dict.get(b"Length").ok()?;
            length.as_reference().ok()
        });
        known.extend(lengths);
        let is_table = |object: &Object| {
            let stream = object.as_stream();
            stream.is_ok_and(|stream| stream.dict.has_type(b"XRef"))
        };
        let mut objects = self.one.objects.iter();
        let hidden = objects.find(|(id, object)| !known.contains(*id) && !is_table(object));
        if let Some(((number, _), _)) = hidden {
            self.differ(None, &format!("object {number}, which nothing leads to"));
        }
    }

    /// One entry of the catalogues, with all that it leads to.
    fn entry(&mut self, mine: &'d Dictionary, theirs: &'d Dictionary, key: &[u8], part: Part) {
        self.part = part;
        self.of_key(mine, theirs, key, None);
        self.finish();
    }

    fn information(&mut self) {
        let step = self.step(None, text(INFORMATION));
        let of = |document: &'d Document| {
            let found = document.trailer.get(INFORMATION).ok()?;
            document.get_dictionary(found.as_reference().ok()?).ok()
        };
        match (of(self.one), of(self.other)) {
            (Some(mine), Some(theirs)) => {
                let keys = keys_of_both(mine, theirs);
                let is_text = |key: &[u8]| mine.get(key).map_or(true, |one| one.as_str().is_ok());
                let counts = |key: &&[u8]| !(OF_SAVING.contains(key) && is_text(key));
                for key in keys.into_iter().filter(counts) {
                    self.of_key(mine, theirs, key, Some(step));
                }
            }
            (None, None) => {}
            _ => self.differ(Some(step), ""),
        }
    }

    fn finish(&mut self) {
        // Merged or doubled objects pair up with as many as there are, and never with more.
        let most = 4 * (self.one.objects.len() + self.other.objects.len()) + 1000;
        while let Some(pair) = self.due.pop_front() {
            if self.seen.len() > most {
                self.due.clear();
                return self.differ(None, "objects are shared as in no report");
            }
            let get = |document: &'d Document, id: ObjectId| document.objects.get(&id);
            let null = &Object::Null;
            let mine = get(self.one, pair.ids.0).unwrap_or(null);
            let theirs = get(self.other, pair.ids.1).unwrap_or(null);
            self.values(mine, theirs, pair.step);
        }
    }

    fn step(&mut self, before: Option<usize>, word: String) -> usize {
        self.steps.push(Step { before, word });
        self.steps.len() - 1
    }

    fn differ(&mut self, step: Option<usize>, word: &str) {
        if self.found.len() == MOST {
            return;
        }
        let mut words = Vec::from_iter((!word.is_empty()).then(|| word.to_owned()));
        let mut at = step;
        while let Some(step) = at {
            words.push(self.steps[step].word.clone());
            at = self.steps[step].before;
        }
        words.reverse();
        self.found.push(Difference {
            part: self.part,
            place: words.join("."),
        });
    }

    fn of_key(
        &mut self,
        mine: &'d Dictionary,
        theirs: &'d Dictionary,
        key: &[u8],
        before: Option<usize>,
    ) {
        let step = self.step(before, text(key));
        match (mine.get(key), theirs.get(key)) {
            (Ok(mine), Ok(theirs)) => self.values(mine, theirs, step),
            (Err(_), Err(_)) => {}
            _ => self.differ(Some(step), ""),
        }
    }

    fn values(&mut self, mine: &'d Object, theirs: &'d Object, step: usize) {
        match (mine, theirs) {
            (Object::Reference(mine), Object::Reference(theirs)) => {
                let ids = (*mine, *theirs);
                if self.pages.get(theirs).is_some_and(|page| page != mine) {
                    return self.differ(Some(step), "another page");
                }
                if self.seen.insert(ids) {
                    self.due.push_back(Pair { ids, step });
                }
                return;
            }
            // Some readers pass over what ought to be an object of its own, and is not.
            (Object::Reference(_), _) | (_, Object::Reference(_)) => {
                return self.differ(Some(step), "");
            }
            _ => {}
        }
        match (mine, theirs) {
            (Object::Dictionary(mine), Object::Dictionary(theirs)) => {
                for key in keys_of_both(mine, theirs) {
                    self.of_key(mine, theirs, key, Some(step));
                }
            }
            (Object::Stream(mine), Object::Stream(theirs)) => self.streams(mine, theirs, step),
            (Object::Array(mine), Object::Array(theirs)) if mine.len() == theirs.len() => {
                for (index, (mine, theirs)) in mine.iter().zip(theirs).enumerate() {
                    let step = self.step(Some(step), index.to_string());
                    self.values(mine, theirs, step);
                }
            }
            (mine, theirs) if are_same(mine, theirs) => {}
            _ => self.differ(Some(step), ""),
        }
    }

    fn streams(&mut self, mine: &'d Stream, theirs: &'d Stream, step: usize) {
        let is_plain = |stream| !matches!(packing(stream), Packing::Other);
        let are_plain = is_plain(mine) && is_plain(theirs);
        let keys = keys_of_both(&mine.dict, &theirs.dict);
        let counts = |key: &&[u8]| !(are_plain && OF_PACKING.contains(key)) && *key != b"Length";
        for key in keys.into_iter().filter(counts) {
            self.of_key(&mine.dict, &theirs.dict, key, Some(step));
        }
        let is_same = match are_plain {
            true if is_metadata(mine) && is_metadata(theirs) => have_same_metadata(mine, theirs),
            true => have_same_content(mine, theirs),
            false => mine.content == theirs.content,
        };
        if !is_same {
            self.differ(Some(step), "content");
        }
    }
}

/// Whether an entry of the catalogue says which panel stands open beside the pages: a program
/// that saves a file with attachments may add it.
///
/// # Source
/// ISO 32000-1:2008, Table 28.
fn is_panel(mine: &Dictionary, theirs: &Dictionary, key: &[u8]) -> bool {
    const PANELS: [&[u8]; 4] = [b"UseNone", b"UseOutlines", b"UseThumbs", b"UseAttachments"];
    let opens = mine.get(key).and_then(Object::as_name);
    key == b"PageMode" && !theirs.has(key) && opens.is_ok_and(|panel| PANELS.contains(&panel))
}

fn is_metadata(stream: &Stream) -> bool {
    stream.dict.has_type(b"Metadata")
}

fn have_same_metadata(mine: &Stream, theirs: &Stream) -> bool {
    let unpacked = |stream| unpack_bytes(stream, LARGEST_METADATA);
    match (unpacked(mine), unpacked(theirs)) {
        (Ok(mine), Ok(theirs)) => say_the_same(&mine, &theirs),
        _ => false,
    }
}

/// Whether two streams unpack to the same; the first is no longer than the second can be.
fn have_same_content(mine: &Stream, theirs: &Stream) -> bool {
    if mine.content == theirs.content
        && mine.dict.get(b"Filter").ok() == theirs.dict.get(b"Filter").ok()
    {
        return true;
    }
    let unpacked = |stream, most| unpack(stream, &mut std::io::sink(), most).ok();
    let Some(Unpacked { sha256, bytes }) = unpacked(theirs, u64::MAX) else {
        return false;
    };
    unpacked(mine, bytes).is_some_and(|mine| mine.sha256 == sha256)
}

/// Values that hold no others.
fn are_same(mine: &Object, theirs: &Object) -> bool {
    match (mine, theirs) {
        (Object::Null, Object::Null) => true,
        (Object::Integer(mine), Object::Integer(theirs)) => mine == theirs,
        (Object::Real(mine), Object::Real(theirs)) => mine == theirs,
        // Another program may write 1.0 as 1, and not 1 as 1.0, which some readers pass over.
        (Object::Integer(mine), Object::Real(theirs)) => *mine as f32 == *theirs,
        (Object::Boolean(mine), Object::Boolean(theirs)) => mine == theirs,
        (Object::Name(mine), Object::Name(theirs)) => mine == theirs,
        (Object::String(mine, _), Object::String(theirs, _)) => mine == theirs,
        _ => false,
    }
}

/// Keys of either dictionary, each once.
fn keys_of_both<'d>(mine: &'d Dictionary, theirs: &'d Dictionary) -> Vec<&'d [u8]> {
    let of = |dictionary: &'d Dictionary| dictionary.iter().map(|(key, _)| key.as_slice());
    let more = of(theirs).filter(|key| !mine.has(key));
    of(mine).chain(more).collect()
}

fn text(key: &[u8]) -> String {
    String::from_utf8_lossy(key).escape_debug().to_string()
}
