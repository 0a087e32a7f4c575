//! What is on a page: its words, and a digest of everything that is drawn.

use std::collections::{BTreeMap, BTreeSet, HashMap};

use lopdf::{Dictionary, Document, Object, ObjectId, Stream};
use sha2::{Digest, Sha256};

use super::text::{Characters, shown_text};
use super::unpack::{Fault, Packing, packing, unpack};

/// So much one part of a page, and all pages together, may unpack to, bytes.
const LARGEST_PART: u64 = 32 << 20;
const LARGEST_PAGES: u64 = 256 << 20;
/// Deepest nesting of objects.
const DEEPEST: usize = 64;

/// A page: what it says, without white space, and a digest of all that is drawn on it.
#[derive(Debug, PartialEq, Eq)]
pub struct Page {
    pub text: String,
    pub drawing: [u8; 32],
}

/// Reading pages; what several of them share is read once.
pub struct Reading<'d> {
    document: &'d Document,
    /// Bytes that may yet be unpacked.
    left: u64,
    digests: HashMap<ObjectId, [u8; 32]>,
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
    /// Nothing read yet.
    pub fn new(document: &'d Document) -> Self {
        Reading {
            document,
            left: LARGEST_PAGES,
            digests: HashMap::new(),
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
        let mut instructions = Vec::new();
        for part in document.get_page_contents(id) {
            instructions.extend(self.unpacked_object(part)?);
            instructions.push(b'\n');
        }
        let mut hasher = Sha256::new();
        self.dictionary(page, &mut hasher, DEEPEST)?;
        for key in INHERITED.iter().filter(|key| !page.has(key)) {
            if let Some(object) = self.inherited(page, key) {
                feed(&mut hasher, b'i', key);
                self.object(object, &mut hasher, DEEPEST)?;
            }
        }
        let maps = self.read_fonts(id)?;
        let fonts = maps
            .into_iter()
            .map(|(name, map)| (name, &self.characters[&map]));
        Ok(Page {
            text: shown_text(&instructions, &fonts.collect()),
            drawing: hasher.finalize().into(),
        })
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

    fn unpacked_object(&mut self, id: ObjectId) -> Result<Vec<u8>, Fault> {
        let stream = self.document.get_object(id).and_then(Object::as_stream);
        self.unpacked(stream.map_err(|_| Fault::Damaged)?)
    }

    fn unpacked(&mut self, stream: &Stream) -> Result<Vec<u8>, Fault> {
        let mut bytes = Vec::new();
        let unpacked = unpack(stream, &mut bytes, LARGEST_PART.min(self.left))?;
        self.left -= unpacked.bytes;
        Ok(bytes)
    }

    /// The page's fonts by name, each with the map of its characters, which is read.
    fn read_fonts(&mut self, page: ObjectId) -> Result<BTreeMap<Vec<u8>, ObjectId>, Fault> {
        let fonts = self.document.get_page_fonts(page);
        let mut maps = BTreeMap::new();
        for (name, font) in fonts.map_err(|_| Fault::Damaged)? {
            let Ok(map) = font.get(b"ToUnicode").and_then(Object::as_reference) else {
                continue;
            };
            if !self.characters.contains_key(&map) {
                let characters = Characters::parse(&self.unpacked_object(map)?);
                self.characters.insert(map, characters);
            }
            maps.insert(name, map);
        }
        Ok(maps)
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
        let mut entries: Vec<(&Vec<u8>, &Object)> = dictionary.iter().collect();
        entries.retain(|(key, _)| !LEADING_AWAY.contains(&key.as_slice()));
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

/// Feeds bytes whose length nothing else tells.
fn feed(hasher: &mut Sha256, kind: u8, bytes: &[u8]) {
    hasher.update([kind]);
    hasher.update((bytes.len() as u64).to_be_bytes());
    hasher.update(bytes);
}
