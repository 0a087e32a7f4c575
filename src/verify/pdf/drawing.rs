//! What is on a page: its words, and a digest of everything that is drawn.

use std::collections::{BTreeSet, HashMap};

use lopdf::{Dictionary, Document, Object, ObjectId, Stream};
use sha2::{Digest, Sha256};

use super::content::{Characters, instructions};
use super::unpack::{Fault, Packing, packing, unpack};
use crate::bounds::PDF_PAGES_BYTES;

/// What a stream and a value count at least, bytes.
const LEAST_OF_STREAM: u64 = 1 << 10;
const LEAST_OF_VALUE: u64 = 8;
/// Deepest nesting of objects.
const DEEPEST: usize = 64;

/// A page.
#[derive(Debug, PartialEq, Eq)]
pub struct Page {
    /// What it says, without white space.
    pub text: String,
    /// A digest of all that is drawn on it.
    pub drawing: [u8; 32],
    /// The same, with words in the place of glyphs: fonts hold the letters of all pages, so
    /// that other words on one of them change how every page is drawn.
    pub strokes: [u8; 32],
}

/// Reading pages; what several of them share is read once.
pub struct Reading<'d> {
    document: &'d Document,
    /// Bytes that may yet be unpacked.
    left: u64,
    digests: HashMap<ObjectId, [u8; 32]>,
    /// Figures and pictures, with words in the place of glyphs.
    drawn: HashMap<ObjectId, [u8; 32]>,
    characters: HashMap<ObjectId, Characters>,
    underway: BTreeSet<ObjectId>,
}

/// Entries that lead to other pages and to the structure, or say how a stream is packed.
const LEADING_AWAY: [&[u8]; 7] = [
    b"Parent",
    b"P",
    b"StructParent",
    b"StructParents",
    b"Tabs",
    b"Length",
    b"Filter",
];

/// Entries that a page without its own takes from the nodes above it.
///
/// # Source
/// ISO 32000-1:2008, 7.7.3.4 (clause from memory).
const INHERITED: [&[u8]; 4] = [b"CropBox", b"MediaBox", b"Resources", b"Rotate"];

impl<'d> Reading<'d> {
    /// Nothing read yet, of a file of so many bytes.
    pub fn new(document: &'d Document, size: u64) -> Self {
        Reading {
            document,
            left: PDF_PAGES_BYTES.most.max(16 * size),
            digests: HashMap::new(),
            drawn: HashMap::new(),
            characters: HashMap::new(),
            underway: BTreeSet::new(),
        }
    }

    /// One page.
    ///
    /// # Errors
    /// What is wrong with it.
    pub fn page(&mut self, id: ObjectId) -> Result<Page, Fault> {
        let document = self.document;
        let page = document.get_dictionary(id).map_err(|_| Fault::Damaged)?;
        let mut content = Vec::new();
        for part in document.get_page_contents(id) {
            content.extend(self.unpacked_object(part)?);
            content.push(b'\n');
        }
        let mut hasher = Sha256::new();
        self.dictionary(page, &mut hasher, DEEPEST)?;
        for key in INHERITED.iter().filter(|key| !page.has(key)) {
            if let Some(object) = self.inherited(page, key) {
                feed(&mut hasher, b'i', key);
                self.object(object, &mut hasher, DEEPEST)?;
            }
        }
        let drawing = hasher.finalize().into();
        let mut strokes = Sha256::new();
        self.entries(page, &[b"Contents", b"Resources"], &mut strokes, DEEPEST)?;
        let resources = match page.get(b"Resources") {
            Ok(resources) => Some(resources),
            Err(_) => self.inherited(page, b"Resources"),
        };
        let text = self.strokes(&content, resources, &mut strokes, DEEPEST)?;
        Ok(Page {
            text,
            drawing,
            strokes: strokes.finalize().into(),
        })
    }

    /// Feeds what instructions draw into a digest, with words in the place of glyphs; gives
    /// the words.
    fn strokes(
        &mut self,
        content: &[u8],
        resources: Option<&'d Object>,
        hasher: &mut Sha256,
        depth: usize,
    ) -> Result<String, Fault> {
        let depth = depth.checked_sub(1).ok_or(Fault::Damaged)?;
        let document = self.document;
        let resources = resources.and_then(|found| document.dereference(found).ok());
        let resources = resources.and_then(|(_, found)| found.as_dict().ok());
        let of_kind = |kind: &[u8]| {
            let found = resources?.get_deref(kind, document).ok()?;
            found.as_dict().ok()
        };
        let (fonts, drawn) = (of_kind(b"Font"), of_kind(b"XObject"));
        if let Some(resources) = resources {
            self.entries(resources, &[b"Font", b"XObject"], hasher, depth)?;
        }
        let (mut text, mut font) = (String::new(), None);
        instructions(content, |operator, operands| {
            feed(hasher, b'o', operator);
            match (operator, operands) {
                (b"Tf", [Object::Name(name), size]) => {
                    let dictionary = fonts.and_then(|fonts| fonts.get_deref(name, document).ok());
                    let dictionary = dictionary.and_then(|found| found.as_dict().ok());
                    font = dictionary
                        .map(|found| self.map_of(found))
                        .transpose()?
                        .flatten();
                    let family = dictionary.map_or(&b""[..], family);
                    feed(hasher, b'f', family);
                    feed_value(hasher, size);
                }
                (b"Do", [Object::Name(name)]) => {
                    let object = drawn.and_then(|drawn| drawn.get(name).ok());
                    match object.map(Object::as_reference) {
                        Some(Ok(id)) => hasher.update(self.drawn(id, depth)?),
                        _ => return Err(Fault::Damaged),
                    }
                }
                (b"Tj" | b"TJ" | b"'" | b"\"", _) => {
                    let map = font.and_then(|id| self.characters.get(&id));
                    let before = text.len();
                    for operand in operands {
                        show(operand, map, hasher, &mut text)?;
                    }
                    self.charge((text.len() - before) as u64)?;
                }
                _ => operands
                    .iter()
                    .for_each(|operand| feed_value(hasher, operand)),
            }
            Ok(())
        })?;
        Ok(text)
    }

    /// A digest of what a page draws by its name: a figure or a picture.
    fn drawn(&mut self, id: ObjectId, depth: usize) -> Result<[u8; 32], Fault> {
        if let Some(digest) = self.drawn.get(&id) {
            return Ok(*digest);
        }
        let object = self.document.get_object(id).map_err(|_| Fault::Damaged)?;
        let stream = object.as_stream().map_err(|_| Fault::Damaged)?;
        let mut hasher = Sha256::new();
        let kind = stream.dict.get(b"Subtype").and_then(Object::as_name);
        let is_form = kind.is_ok_and(|kind| kind == b"Form");
        if !is_form {
            self.object(object, &mut hasher, depth)?;
        } else if self.underway.insert(id) {
            self.entries(&stream.dict, &[b"Resources"], &mut hasher, depth)?;
            let content = self.unpacked(stream)?;
            let resources = stream.dict.get(b"Resources").ok();
            self.strokes(&content, resources, &mut hasher, depth)?;
            self.underway.remove(&id);
        }
        let digest = hasher.finalize().into();
        self.drawn.insert(id, digest);
        Ok(digest)
    }

    /// What a page takes from the nodes above it.
    fn inherited(&self, page: &'d Dictionary, key: &[u8]) -> Option<&'d Object> {
        let above = |node: &'d Dictionary| {
            let parent = node.get(b"Parent").and_then(Object::as_reference).ok()?;
            self.document.get_dictionary(parent).ok()
        };
        let nodes = std::iter::successors(above(page), |node| above(node));
        nodes.take(DEEPEST).find_map(|node| node.get(key).ok())
    }

    /// Counts what was done: a file may share one part many times.
    fn charge(&mut self, bytes: u64) -> Result<(), Fault> {
        self.left = self.left.checked_sub(bytes).ok_or(Fault::TooLarge)?;
        Ok(())
    }

    fn unpacked_object(&mut self, id: ObjectId) -> Result<Vec<u8>, Fault> {
        let stream = self.document.get_object(id).and_then(Object::as_stream);
        self.unpacked(stream.map_err(|_| Fault::Damaged)?)
    }

    fn unpacked(&mut self, stream: &Stream) -> Result<Vec<u8>, Fault> {
        let mut bytes = Vec::new();
        let unpacked = unpack(stream, &mut bytes, self.left)?;
        self.charge(unpacked.bytes.max(LEAST_OF_STREAM))?;
        Ok(bytes)
    }

    /// The map of a font's characters, by its object; it is read once.
    fn map_of(&mut self, font: &Dictionary) -> Result<Option<ObjectId>, Fault> {
        let Ok(id) = font.get(b"ToUnicode").and_then(Object::as_reference) else {
            return Ok(None);
        };
        if !self.characters.contains_key(&id) {
            let characters = Characters::parse(&self.unpacked_object(id)?)?;
            self.characters.insert(id, characters);
        }
        Ok(Some(id))
    }

    /// Feeds an object into a digest, with all that it leads to.
    fn object(
        &mut self,
        object: &'d Object,
        hasher: &mut Sha256,
        depth: usize,
    ) -> Result<(), Fault> {
        let Some(depth) = depth.checked_sub(1) else {
            return Err(Fault::Damaged);
        };
        self.charge(LEAST_OF_VALUE)?;
        match object {
            Object::Null => hasher.update(b"null"),
            Object::Boolean(is_so) => hasher.update([b'b', u8::from(*is_so)]),
            // As a real: another program may write 1.0 as 1.
            Object::Integer(number) => hasher.update((*number as f32).to_be_bytes()),
            Object::Real(number) => hasher.update(number.to_be_bytes()),
            Object::Name(name) => feed(hasher, b'n', name),
            Object::String(string, _) => feed(hasher, b's', string),
            Object::Array(items) => {
                feed(hasher, b'a', &items.len().to_be_bytes());
                for item in items {
                    self.object(item, hasher, depth)?;
                }
            }
            Object::Dictionary(dictionary) => self.dictionary(dictionary, hasher, depth)?,
            Object::Stream(stream) => {
                self.dictionary(&stream.dict, hasher, depth)?;
                match packing(stream) {
                    Packing::Other => {
                        if let Ok(filter) = stream.dict.get(b"Filter") {
                            self.object(filter, hasher, depth)?;
                        }
                        feed(hasher, b'r', &stream.content);
                    }
                    Packing::None | Packing::Deflate => feed(hasher, b'r', &self.unpacked(stream)?),
                }
            }
            Object::Reference(id) => hasher.update(self.referred(*id, depth)?),
        }
        Ok(())
    }

    fn dictionary(
        &mut self,
        dictionary: &'d Dictionary,
        hasher: &mut Sha256,
        depth: usize,
    ) -> Result<(), Fault> {
        self.entries(dictionary, &[], hasher, depth)
    }

    /// Feeds the entries of a dictionary, but for those that are left out.
    fn entries(
        &mut self,
        dictionary: &'d Dictionary,
        left_out: &[&[u8]],
        hasher: &mut Sha256,
        depth: usize,
    ) -> Result<(), Fault> {
        let mut entries: Vec<(&Vec<u8>, &Object)> = dictionary.iter().collect();
        let counts = |key: &[u8]| !LEADING_AWAY.contains(&key) && !left_out.contains(&key);
        entries.retain(|(key, _)| counts(key));
        entries.sort_by_key(|(key, _)| *key);
        for (key, value) in entries {
            feed(hasher, b'k', key);
            self.object(value, hasher, depth)?;
        }
        hasher.update(b"end");
        Ok(())
    }

    fn referred(&mut self, id: ObjectId, depth: usize) -> Result<[u8; 32], Fault> {
        if let Some(digest) = self.digests.get(&id) {
            return Ok(*digest);
        }
        let mut hasher = Sha256::new();
        let object = self.document.get_object(id);
        let is_page = object.as_ref().is_ok_and(|object| {
            object
                .as_dict()
                .is_ok_and(|dictionary| dictionary.has_type(b"Page"))
        });
        match object {
            // A link's target, a circle, or nothing: all of it is told by its place.
            Ok(object) if !is_page && self.underway.insert(id) => {
                self.object(object, &mut hasher, depth)?;
                self.underway.remove(&id);
            }
            _ => hasher.update(b"elsewhere"),
        }
        let digest = hasher.finalize().into();
        self.digests.insert(id, digest);
        Ok(digest)
    }
}

/// Feeds shown text: its characters, and what moves them.
fn show(
    operand: &Object,
    map: Option<&Characters>,
    hasher: &mut Sha256,
    text: &mut String,
) -> Result<(), Fault> {
    match operand {
        Object::Array(items) => {
            for item in items {
                show(item, map, hasher, text)?;
            }
        }
        Object::String(codes, _) => {
            let shown = match map {
                Some(map) => map.text(codes)?,
                None => Characters::default().text(codes)?,
            };
            feed(hasher, b't', shown.as_bytes());
            text.push_str(&shown);
        }
        other => feed_value(hasher, other),
    }
    Ok(())
}

/// A font's family, without the letters that tell its excerpts apart.
///
/// # Source
/// ISO 32000-1:2008, 9.6.4: six letters and a plus sign.
fn family(font: &Dictionary) -> &[u8] {
    let name = font.get(b"BaseFont").and_then(Object::as_name);
    let name = name.unwrap_or_default();
    match name.get(6) {
        Some(b'+') => &name[7..],
        _ => name,
    }
}

/// Feeds a value of a content stream, in which nothing is referred to.
fn feed_value(hasher: &mut Sha256, value: &Object) {
    match value {
        Object::Integer(number) => hasher.update((*number as f32).to_be_bytes()),
        Object::Real(number) => hasher.update(number.to_be_bytes()),
        other => feed(hasher, b'v', format!("{other:?}").as_bytes()),
    }
}

/// Feeds bytes whose length nothing else tells.
fn feed(hasher: &mut Sha256, kind: u8, bytes: &[u8]) {
    hasher.update([kind]);
    hasher.update((bytes.len() as u64).to_be_bytes());
    hasher.update(bytes);
}
