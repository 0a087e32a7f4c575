//! Objects that are packed into a stream, and tables that are one.
//!
//! # Source
//! ISO 32000-1:2008, 7.5.7 (object streams) and 7.4.4.4 (predictors).

use std::collections::BTreeMap;

use lopdf::{Dictionary, Object, ObjectId, Stream};

use super::syntax::Cursor;
use super::tables::Tables;
use super::unreadable::Unreadable;
use crate::verify::pdf::unpack::unpack_bytes;

/// So much all of them together may unpack to, bytes.
const LARGEST: u64 = 512 << 20;
/// A table may unpack to so much, bytes.
const LARGEST_TABLE: u64 = 128 << 20;

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

/// A table that is a stream, unpacked.
///
/// # Errors
/// It cannot be.
pub fn unpacked_table(stream: &Stream, at: usize) -> Result<Vec<u8>, Unreadable> {
    unpacked(stream, LARGEST_TABLE)
        .ok_or_else(|| Unreadable::damaged("a table of objects cannot be unpacked", at))
}

/// The bytes of a stream, with the differences between its rows taken back.
fn unpacked(stream: &Stream, most: u64) -> Option<Vec<u8>> {
    let mut plain = stream.clone();
    let settings = plain.dict.remove(b"DecodeParms");
    let content = unpack_bytes(&plain, most).ok()?;
    match settings {
        None | Some(Object::Null) => Some(content),
        Some(Object::Dictionary(settings)) => without_differences(&content, &settings),
        Some(_) => None,
    }
}

/// Rows that were each written as differences, by PNG's predictors.
///
/// # Source
/// W3C Portable Network Graphics (Second Edition), 9.2: None, Sub, Up, Average, Paeth. Object
/// tables use Up alone, so that is what is read here, and None.
fn without_differences(content: &[u8], settings: &Dictionary) -> Option<Vec<u8>> {
    const PNG: std::ops::RangeInclusive<i64> = 10..=15;
    let states = |key: &[u8], otherwise: i64| match settings.get(key) {
        Ok(value) => value.as_i64().ok(),
        Err(_) => Some(otherwise),
    };
    let predictor = states(b"Predictor", 1)?;
    if predictor == 1 {
        return Some(content.to_vec());
    }
    let columns = usize::try_from(states(b"Columns", 1)?).ok()?;
    let is_plain = states(b"Colors", 1)? == 1 && states(b"BitsPerComponent", 8)? == 8;
    if !PNG.contains(&predictor) || !is_plain || columns == 0 || columns > content.len() {
        return None;
    }
    let mut above = vec![0_u8; columns];
    let mut plain = Vec::with_capacity(content.len());
    for row in content.chunks(columns + 1) {
        let (kind, row) = row.split_first()?;
        let add_up = match kind {
            0 => false,
            2 => true,
            _ => return None,
        };
        for (byte, above) in row.iter().zip(&mut above) {
            *above = if add_up {
                byte.wrapping_add(*above)
            } else {
                *byte
            };
            plain.push(*above);
        }
    }
    Some(plain)
}
