//! The file from its first byte to its last: nothing in it goes unread.
//!
//! # Source
//! ISO 32000-1:2008, 7.3.8 (streams), 7.3.10 (indirect objects), 7.5.2 (header).

use std::collections::BTreeSet;

use lopdf::{Object, ObjectId, Stream};

use super::syntax::Cursor;
use super::tables::{Tables, ending};
use super::unreadable::Unreadable;

/// A PDF of ours begins with this; programs that save it again may raise the version.
const SIGNATURE: &[u8] = b"%PDF-";

/// What stands in a file, in its order.
#[derive(Default)]
pub struct Scanned {
    pub objects: Vec<Indirect>,
    /// Where each table of objects begins.
    pub tables: BTreeSet<usize>,
}

/// An object with its number.
pub struct Indirect {
    pub id: ObjectId,
    /// Where it begins, bytes from the beginning of the file.
    pub at: usize,
    pub value: Object,
}

/// Reads everything.
///
/// # Errors
/// Something is neither an object nor a table, or breaks off.
pub fn scan(bytes: &[u8], tables: &Tables) -> Result<Scanned, Unreadable> {
    if !bytes.starts_with(SIGNATURE) {
        return Err(Unreadable::damaged("it does not begin as a PDF does", 0));
    }
    // The lengths of streams may be objects of their own, further on.
    let length_of = |(number, _): ObjectId| {
        let entry = tables.entries.get(&number)?;
        let object = indirect(&mut Cursor::new(bytes, entry.at), &|_| None).ok()?;
        object.value.as_i64().ok()
    };
    let mut scanned = Scanned::default();
    let mut cursor = Cursor::new(bytes, SIGNATURE.len());
    cursor.skip_line();
    loop {
        cursor.skip_space()?;
        let at = cursor.at;
        match cursor.peek() {
            None => return Ok(scanned),
            Some(b'0'..=b'9') => {
                let object = indirect(&mut cursor, &length_of)?;
                let is_table = |stream: &Stream| stream.dict.has_type(b"XRef");
                if object.value.as_stream().is_ok_and(is_table) {
                    scanned.tables.insert(at);
                }
                scanned.objects.push(object);
            }
            _ if cursor.eat(b"xref") => {
                scanned.tables.insert(at);
                skip_lines(&mut cursor)?;
            }
            _ => {
                ending(&mut cursor)?;
            }
        }
    }
}

/// Goes past the lines of a table and its trailer, which [`Tables`] has read.
fn skip_lines(cursor: &mut Cursor) -> Result<(), Unreadable> {
    loop {
        cursor.skip_space()?;
        if cursor.eat(b"trailer") {
            return cursor.value().map(drop);
        }
        if !(cursor.eat(b"n") || cursor.eat(b"f")) {
            cursor.whole()?;
        }
    }
}

/// An object with its number, as `12 0 obj … endobj`.
///
/// # Errors
/// It is none, or breaks off.
pub fn indirect(
    cursor: &mut Cursor,
    length_of: &dyn Fn(ObjectId) -> Option<i64>,
) -> Result<Indirect, Unreadable> {
    let at = cursor.at;
    let fault = || Unreadable::damaged("there is no object", at);
    let number = u32::try_from(cursor.whole()?).map_err(|_| fault())?;
    cursor.skip_space()?;
    let generation = u16::try_from(cursor.whole()?).map_err(|_| fault())?;
    cursor.expect("obj")?;
    let mut value = cursor.value()?;
    cursor.skip_space()?;
    if cursor.eat(b"stream") {
        let Object::Dictionary(dictionary) = value else {
            return Err(fault());
        };
        let length = match dictionary.get(b"Length") {
            Ok(Object::Reference(id)) => length_of(*id),
            Ok(length) => length.as_i64().ok(),
            Err(_) => None,
        };
        let content = content(cursor, length)?;
        value = Object::Stream(Stream::new(dictionary, content.to_vec()));
    }
    cursor.expect("endobj")?;
    let id = (number, generation);
    Ok(Indirect { id, at, value })
}

/// The content of a stream, which has to end where its length says.
fn content<'b>(cursor: &mut Cursor<'b>, length: Option<i64>) -> Result<&'b [u8], Unreadable> {
    // A carriage return alone begins no content: readers differ over it.
    cursor.at += usize::from(cursor.peek() == Some(b'\r'));
    if cursor.peek() != Some(b'\n') {
        return Err(cursor.fault("a stream does not begin on a line of its own"));
    }
    cursor.at += 1;
    let length = length.and_then(|length| usize::try_from(length).ok());
    let content = length.and_then(|length| cursor.rest().get(..length));
    let content = content.ok_or_else(|| cursor.fault("a stream has no length that is so"))?;
    cursor.at += content.len();
    cursor.skip_blanks();
    match cursor.eat(b"endstream") {
        true => Ok(content),
        false => Err(cursor.fault("a stream does not end where its length says")),
    }
}
