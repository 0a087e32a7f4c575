//! Objects that are packed into a stream.
//!
//! # Source
//! ISO 32000-1:2008, 7.5.7 (object streams).

use std::collections::BTreeMap;

use lopdf::{Object, ObjectId, Stream};

use super::predictor::unpacked;
use super::syntax::{Cursor, most_values};
use super::table::Table;
use super::unreadable::Unreadable;
use crate::bounds::PDF_PACKED;

/// All that is said of a stream of objects.
const KEYS: [&[u8]; 6] = [
    b"Type",
    b"N",
    b"First",
    b"Length",
    b"Filter",
    b"DecodeParms",
];

/// Adds the packed objects of a file of a size; the streams that hold them go.
///
/// # Errors
/// The table and a stream disagree about one.
pub fn unpack_all(
    table: &Table,
    size: usize,
    objects: &mut BTreeMap<ObjectId, Object>,
) -> Result<(), Unreadable> {
    let holders = objects.iter().filter(|(_, object)| {
        let stream = object.as_stream();
        stream.is_ok_and(|stream| stream.dict.has_type(b"ObjStm"))
    });
    let holders: Vec<ObjectId> = holders.map(|(id, _)| *id).collect();
    let (mut bytes, mut values, mut found) = (PDF_PACKED.most, most_values(size), 0);
    for id in holders {
        let Some(Object::Stream(stream)) = objects.remove(&id) else {
            continue;
        };
        let is_known = |key: &[u8]| KEYS.contains(&key);
        if !stream.dict.iter().all(|(key, _)| is_known(key)) {
            return Err(damaged(id));
        }
        let content = unpacked(&stream, bytes).ok_or_else(|| damaged(id))?;
        bytes -= content.len() as u64;
        for (index, place) in places(&stream, &content, id, table.packed.len())?
            .into_iter()
            .enumerate()
        {
            let Place { number, from, to } = place;
            let listed = table.packed.get(&number);
            if !listed.is_some_and(|listed| listed.inside == id.0 && listed.index == index) {
                return Err(Unreadable::two_readings(format!(
                    "has an object {number} inside another that its table does not list there"
                )));
            }
            let member = content.get(from..to).ok_or_else(|| damaged(id))?;
            let mut cursor = Cursor::new(member, 0);
            cursor.left = values;
            let object = cursor.value().map_err(|fault| inside(fault, id))?;
            cursor.skip_blanks();
            if cursor.peek().is_some() || object.as_reference().is_ok() {
                return Err(damaged(id));
            }
            values = cursor.left;
            objects.insert((number, 0), object);
            found += 1;
        }
    }
    match found == table.packed.len() {
        true => Ok(()),
        false => Err(Unreadable::two_readings(
            "has a table that lists packed objects where there are none",
        )),
    }
}

fn damaged((number, _): ObjectId) -> Unreadable {
    let what = format!("the objects packed into object {number} cannot be read");
    Unreadable::Damaged { what, at: None }
}

/// A fault inside a packed object, whose place is none of the file's.
fn inside(fault: Unreadable, id: ObjectId) -> Unreadable {
    match fault {
        Unreadable::Damaged { .. } => damaged(id),
        other => other,
    }
}

/// An object packed into another: its number, and where it begins and ends.
struct Place {
    number: u32,
    from: usize,
    to: usize,
}

/// What is packed into one, each behind the other; the table lists so many at most.
fn places(
    stream: &Stream,
    content: &[u8],
    id: ObjectId,
    most: usize,
) -> Result<Vec<Place>, Unreadable> {
    let states = |key: &[u8]| {
        let number = stream.dict.get(key).and_then(Object::as_i64).ok()?;
        usize::try_from(number).ok()
    };
    let (Some(count), Some(first)) = (states(b"N"), states(b"First")) else {
        return Err(damaged(id));
    };
    if count > most {
        return Err(damaged(id));
    }
    let mut head = Cursor::new(content.get(..first).ok_or_else(|| damaged(id))?, 0);
    let mut places: Vec<Place> = Vec::new();
    for _ in 0..count {
        head.skip_blanks();
        let number =
            u32::try_from(head.whole().map_err(|_| damaged(id))?).map_err(|_| damaged(id))?;
        head.skip_blanks();
        let from = usize::try_from(head.whole().map_err(|_| damaged(id))?).ok();
        let from = from.and_then(|from| from.checked_add(first));
        let from = from.ok_or_else(|| damaged(id))?;
        // What overlaps would be read again and again, and gaps by nobody.
        match places.last_mut() {
            Some(before) if from > before.from => before.to = from,
            None if from == first => {}
            _ => return Err(damaged(id)),
        }
        let to = content.len();
        places.push(Place { number, from, to });
    }
    head.skip_blanks();
    match head.peek() {
        None => Ok(places),
        Some(_) => Err(damaged(id)),
    }
}
