//! Objects that are packed into a stream.
//!
//! # Source
//! ISO 32000-1:2008, 7.5.7 (object streams).

use std::collections::BTreeMap;

use lopdf::{Object, ObjectId, Stream};

use super::predictor::unpacked;
use super::syntax::Cursor;
use super::tables::Tables;
use super::unreadable::Unreadable;

/// So much all of them together may unpack to, bytes.
const LARGEST: u64 = 512 << 20;

/// Adds the packed objects; the streams that hold them go.
///
/// # Errors
/// A table and a stream disagree about one.
pub fn unpack_all(
    tables: &Tables,
    objects: &mut BTreeMap<ObjectId, Object>,
) -> Result<(), Unreadable> {
    let holders = objects.iter().filter(|(_, object)| {
        let stream = object.as_stream();
        stream.is_ok_and(|stream| stream.dict.has_type(b"ObjStm"))
    });
    let holders: Vec<ObjectId> = holders.map(|(id, _)| *id).collect();
    let (mut left, mut found) = (LARGEST, 0);
    for id in holders {
        let Some(Object::Stream(stream)) = objects.remove(&id) else {
            continue;
        };
        let content = unpacked(&stream, left).ok_or_else(|| damaged(id))?;
        left -= content.len() as u64;
        for (index, (number, object)) in members(&stream, &content, id)?.into_iter().enumerate() {
            let entry = tables.packed.get(&number);
            if !entry.is_some_and(|entry| entry.inside == id.0 && entry.index == index) {
                return Err(Unreadable::two_readings(format!(
                    "has an object {number} inside another that its table does not list there"
                )));
            }
            objects.insert((number, 0), object);
            found += 1;
        }
    }
    match found == tables.packed.len() {
        true => Ok(()),
        false => Err(Unreadable::two_readings(
            "has a table that lists packed objects where there are none",
        )),
    }
}

fn damaged((number, _): ObjectId) -> Unreadable {
    Unreadable::damaged(
        format!("the objects packed into object {number} cannot be read"),
        0,
    )
}

/// What is packed into one: each with its number.
fn members(
    stream: &Stream,
    content: &[u8],
    id: ObjectId,
) -> Result<Vec<(u32, Object)>, Unreadable> {
    let states = |key: &[u8]| {
        let number = stream.dict.get(key).and_then(Object::as_i64).ok()?;
        usize::try_from(number).ok()
    };
    let (Some(count), Some(first)) = (states(b"N"), states(b"First")) else {
        return Err(damaged(id));
    };
    let mut head = Cursor::new(content.get(..first).ok_or_else(|| damaged(id))?, 0);
    let mut members = Vec::new();
    for _ in 0..count {
        head.skip_space()?;
        let number = u32::try_from(head.whole()?).map_err(|_| damaged(id))?;
        head.skip_space()?;
        let at = usize::try_from(head.whole()?)
            .ok()
            .and_then(|at| at.checked_add(first));
        let mut cursor = Cursor::new(content, at.ok_or_else(|| damaged(id))?);
        members.push((number, cursor.value()?));
    }
    Ok(members)
}
