//! The file from its first byte to its last: nothing in it goes unread.
//!
//! # Source
//! ISO 32000-1:2008, 7.5.2 (header), 7.5.3 (body).

use std::collections::BTreeMap;

use lopdf::{Object, ObjectId, Stream};

use super::SIGNATURE;
use super::indirect::{Indirect, indirect, length_at};
use super::syntax::{Cursor, most_values};
use super::table::{Table, ending};
use super::unreadable::Unreadable;

/// Versions in which readers take names alike: ours and those that programs change it to.
const VERSIONS: [&[u8]; 7] = [b"1.2", b"1.3", b"1.4", b"1.5", b"1.6", b"1.7", b"2.0"];

/// What stands in a file, in its order.
#[derive(Default)]
pub struct Scanned {
    pub objects: Vec<Indirect>,
    /// Where each table of objects begins.
    pub tables: Vec<usize>,
}

impl Scanned {
    /// The objects of the file, where its table and the file itself agree on every one.
    ///
    /// # Errors
    /// They do not.
    pub fn hold_against(self, table: &Table) -> Result<BTreeMap<ObjectId, Object>, Unreadable> {
        if self.tables != [table.at] {
            return Err(Unreadable::two_readings(
                "has a table of objects that its end does not lead to",
            ));
        }
        let mut objects = BTreeMap::new();
        for object in self.objects {
            let (number, generation) = object.id;
            let is_listed = table
                .entries
                .get(&number)
                .is_some_and(|entry| entry.at == object.at && entry.generation == generation);
            if !is_listed {
                return Err(Unreadable::two_readings(format!(
                    "has an object {number} (byte {}) that its table does not list there",
                    object.at
                )));
            }
            objects.insert(object.id, object.value);
        }
        if objects.len() != table.entries.len() {
            return Err(Unreadable::two_readings(
                "has a table that lists objects where there are none",
            ));
        }
        Ok(objects)
    }
}

/// Reads everything.
///
/// # Errors
/// Something is neither an object nor a table, or breaks off.
pub fn scan(bytes: &[u8], table: &Table) -> Result<Scanned, Unreadable> {
    // The lengths of streams may be objects of their own, further on.
    let length_of = |(number, _): ObjectId| {
        let entry = table.entries.get(&number)?;
        length_at(bytes, entry.at).ok()
    };
    let mut scanned = Scanned::default();
    let mut cursor = Cursor::new(bytes, 0);
    if !bytes.starts_with(SIGNATURE) {
        return Err(cursor.fault("it does not begin as a PDF does"));
    }
    cursor.at = SIGNATURE.len();
    cursor.left = most_values(bytes.len());
    if !VERSIONS.contains(&cursor.word()) {
        return Err(cursor.fault("it is of no version of PDF that readers agree on"));
    }
    loop {
        cursor.skip_space()?;
        let at = cursor.at;
        match cursor.peek() {
            None => return Ok(scanned),
            Some(b'0'..=b'9') => {
                let object = indirect(&mut cursor, &length_of)?;
                if object.value.as_reference().is_ok() {
                    return Err(Unreadable::two_readings(format!(
                        "has an object {} that only refers to another",
                        object.id.0
                    )));
                }
                let is_table = |stream: &Stream| stream.dict.has_type(b"XRef");
                if object.value.as_stream().is_ok_and(is_table) {
                    scanned.tables.push(at);
                }
                scanned.objects.push(object);
            }
            _ if cursor.eat(b"xref") => {
                scanned.tables.push(at);
                skip_lines(&mut cursor)?;
            }
            _ => {
                let leads = ending(&mut cursor)?;
                cursor.skip_blanks();
                if leads != table.at || cursor.peek().is_some() {
                    return Err(Unreadable::two_readings(
                        "has more than one end, or one that leads elsewhere than its table",
                    ));
                }
            }
        }
    }
}

/// Goes past the lines of a table and its trailer, which [`Table`] has read.
fn skip_lines(cursor: &mut Cursor) -> Result<(), Unreadable> {
    loop {
        cursor.skip_blanks();
        if cursor.eat(b"trailer") {
            return cursor.value().map(drop);
        }
        if !(cursor.eat(b"n") || cursor.eat(b"f")) {
            cursor.whole()?;
        }
    }
}
