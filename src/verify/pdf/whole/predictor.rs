//! Streams whose rows may be written as differences, which tables of objects are.
//!
//! # Source
//! ISO 32000-1:2008, 7.4.4.4 (predictors).

use lopdf::{Dictionary, Object, Stream};

use super::unreadable::Unreadable;
use crate::verify::pdf::unpack::unpack_bytes;

/// A table may unpack to so much, bytes.
const LARGEST_TABLE: u64 = 128 << 20;

/// A table that is a stream, unpacked.
///
/// # Errors
/// It cannot be.
pub fn unpacked_table(stream: &Stream, at: usize) -> Result<Vec<u8>, Unreadable> {
    unpacked(stream, LARGEST_TABLE)
        .ok_or_else(|| Unreadable::damaged("a table of objects cannot be unpacked", at))
}

/// Whether settings say nothing but what is read here.
fn are_known(settings: &Dictionary) -> bool {
    const KEYS: [&[u8]; 4] = [b"Predictor", b"Columns", b"Colors", b"BitsPerComponent"];
    settings
        .iter()
        .all(|(key, _)| KEYS.contains(&key.as_slice()))
}

/// The bytes of a stream, with the differences between its rows taken back.
pub fn unpacked(stream: &Stream, most: u64) -> Option<Vec<u8>> {
    let mut plain = stream.clone();
    let settings = plain.dict.remove(b"DecodeParms");
    let content = unpack_bytes(&plain, most).ok()?;
    match settings {
        None => Some(content),
        Some(Object::Dictionary(settings)) if plain.dict.has(b"Filter") && are_known(&settings) => {
            without_differences(&content, &settings)
        }
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
