//! A PDF file as a whole, read strictly: every way in which readers find its objects has to
//! find the same ones.
//!
//! Readers differ. Some believe the cross-reference tables, some look for objects themselves
//! where a table seems wrong; some take the first of two entries, some the last. So a file is
//! read from its first byte to its last ([`scan`]), its table is read from the end
//! ([`table`]), and unless both give the same objects, each once, it is refused. What is
//! read is handed over as lopdf's values ([`syntax`]).

mod indirect;
mod packed;
mod predictor;
mod scan;
pub mod syntax;
mod table;
mod unreadable;

use std::collections::BTreeMap;

use lopdf::{Dictionary, Document, Object, ObjectId};

pub use unreadable::Unreadable;

/// A PDF begins with this.
pub const SIGNATURE: &[u8] = b"%PDF-";

/// Everything in a file: its objects by number and generation, and its trailer.
///
/// # Errors
/// Why it is no PDF, or how readers differ over it.
///
/// # Source
/// ISO 32000-1:2008, 7.5 (file structure).
pub fn read_whole(bytes: &[u8]) -> Result<Document, Unreadable> {
    let table = table::read(bytes)?;
    let scanned = scan::scan(bytes, &table)?;
    let mut objects = scanned.hold_against(&table)?;
    packed::unpack_all(&table, bytes.len(), &mut objects)?;
    check_generations(&objects)?;
    let mut document = Document::new();
    document.max_id = objects.keys().last().map_or(0, |(number, _)| *number);
    document.objects = objects;
    document.trailer = table.trailer;
    refuse_linearized(&document)?;
    Ok(document)
}

/// Whether every reference to an object is to the generation that there is: some readers look
/// at the number alone.
fn check_generations(objects: &BTreeMap<ObjectId, Object>) -> Result<(), Unreadable> {
    let numbers: BTreeMap<u32, u16> = objects.keys().copied().collect();
    // Values are nested no deeper than they are read.
    fn is_so(numbers: &BTreeMap<u32, u16>, value: &Object) -> bool {
        let all_of =
            |dictionary: &Dictionary| dictionary.iter().all(|(_, one)| is_so(numbers, one));
        match value {
            Object::Reference((number, generation)) => {
                numbers.get(number).is_none_or(|known| known == generation)
            }
            Object::Array(items) => items.iter().all(|item| is_so(numbers, item)),
            Object::Dictionary(dictionary) => all_of(dictionary),
            Object::Stream(stream) => all_of(&stream.dict),
            _ => true,
        }
    }
    match objects.values().all(|object| is_so(&numbers, object)) {
        true => Ok(()),
        false => Err(Unreadable::two_readings(
            "refers to an object by a generation that there is not, which some readers pass over",
        )),
    }
}

/// A file may say that it is laid out for the web. Some readers then believe tables of their
/// own, which others do not read.
///
/// # Source
/// ISO 32000-1:2008, Annex F.
fn refuse_linearized(document: &Document) -> Result<(), Unreadable> {
    let is_layout = |object: &Object| {
        let dictionary = object.as_dict();
        dictionary.is_ok_and(|dictionary| dictionary.has(b"Linearized"))
    };
    match document.objects.values().any(is_layout) {
        false => Ok(()),
        true => Err(Unreadable::two_readings(
            "is laid out for the web (/Linearized), which readers take in different ways: save it as a whole",
        )),
    }
}
