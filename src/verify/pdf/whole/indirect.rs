//! One object with its number.
//!
//! # Source
//! ISO 32000-1:2008, 7.3.8 (streams), 7.3.10 (indirect objects).

use lopdf::{Object, ObjectId, Stream};

use super::syntax::Cursor;
use super::unreadable::Unreadable;

/// An object with its number.
pub struct Indirect {
    pub id: ObjectId,
    /// Where it begins, bytes from the beginning of the file.
    pub at: usize,
    pub value: Object,
}

/// An object that is a length takes no more room, bytes.
const LONGEST_LENGTH: usize = 80;

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
    cursor.skip_blanks();
    let generation = u16::try_from(cursor.whole()?).map_err(|_| fault())?;
    cursor.expect("obj")?;
    let mut value = cursor.value()?;
    cursor.skip_blanks();
    if cursor.eat(b"stream") {
        let Object::Dictionary(dictionary) = value else {
            return Err(fault());
        };
        let stated = dictionary.get(b"Length").cloned();
        let length = match &stated {
            Ok(Object::Reference(id)) => length_of(*id),
            Ok(length) => length.as_i64().ok(),
            Err(_) => None,
        };
        let content = content(cursor, length)?;
        let mut stream = Stream::new(dictionary, content.to_vec());
        // lopdf writes the number in the place of a reference, which has to be checked, too.
        if let Ok(stated) = stated {
            stream.dict.set("Length", stated);
        }
        value = Object::Stream(stream);
    }
    cursor.expect("endobj")?;
    let id = (number, generation);
    Ok(Indirect { id, at, value })
}

/// The number that an object is, as `12 0 obj 345 endobj`.
///
/// # Errors
/// It is none.
pub fn length_at(bytes: &[u8], at: usize) -> Result<i64, Unreadable> {
    // It is short: many streams may have one length.
    let end = bytes.len().min(at.saturating_add(LONGEST_LENGTH));
    let cursor = &mut Cursor::new(&bytes[..end], at);
    cursor.whole()?;
    cursor.skip_blanks();
    cursor.whole()?;
    cursor.expect("obj")?;
    cursor.skip_blanks();
    let length = cursor.whole()?;
    cursor.expect("endobj")?;
    i64::try_from(length).map_err(|_| cursor.fault("a stream has no length that is so"))
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
