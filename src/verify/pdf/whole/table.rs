//! The cross-reference table, found from the end of the file.
//!
//! # Source
//! ISO 32000-1:2008, 7.5.4 (tables), 7.5.5 (trailer), 7.5.8 (streams in their place).

use std::collections::{BTreeMap, BTreeSet};

use lopdf::{Dictionary, Object, Stream};

use super::indirect::indirect;
use super::predictor::unpacked_table;
use super::syntax::Cursor;
use super::unreadable::Unreadable;
use crate::bounds::PDF_OBJECTS;

/// The last `startxref` is in so many bytes at the end; where more stands behind it, some readers
/// do not find it.
const TAIL: usize = 64;
/// What a trailer says, and what a table that is a stream says besides. Whatever else stood
/// there no reader shows, and some would find it.
const OF_TRAILER: [&[u8]; 4] = [b"Size", b"Root", b"Info", b"ID"];
const OF_STREAM: [&[u8]; 6] = [
    b"Type",
    b"Index",
    b"W",
    b"Length",
    b"Filter",
    b"DecodeParms",
];

/// Where the table says that objects are.
#[derive(Default)]
pub struct Table {
    /// Where it begins, bytes from the beginning of the file.
    pub at: usize,
    /// Objects that stand in the file, by number.
    pub entries: BTreeMap<u32, Entry>,
    /// Objects packed into another one, by number.
    pub packed: BTreeMap<u32, Packed>,
    /// Numbers that are said to be free.
    free: BTreeSet<u32>,
    /// Rows that were read.
    rows: usize,
    pub trailer: Dictionary,
}

/// Where an object is, bytes from the beginning of the file.
#[derive(Debug, Clone, Copy)]
pub struct Entry {
    pub at: usize,
    pub generation: u16,
}

/// An object in a packed one: the number of that, and its place there.
#[derive(Debug, Clone, Copy)]
pub struct Packed {
    pub inside: u32,
    pub index: usize,
}

/// Reads the table: there is one, in a file that was saved as a whole.
///
/// # Errors
/// It is not to be read, or there are several.
pub fn read(bytes: &[u8]) -> Result<Table, Unreadable> {
    let at = start(bytes)?;
    let mut table = Table {
        at,
        ..Table::default()
    };
    table.trailer = match Cursor::new(bytes, at).eat(b"xref") {
        true => table.read_lines(bytes, at)?,
        false => table.read_stream(bytes, at)?,
    };
    table.check_trailer()?;
    table.check_numbers()?;
    Ok(table)
}

/// Where the table begins, as the end of the file says.
fn start(bytes: &[u8]) -> Result<usize, Unreadable> {
    const WORD: &[u8] = b"startxref";
    let from = bytes.len().saturating_sub(TAIL);
    let mut found = bytes[from..].windows(WORD.len());
    let at = found
        .rposition(|part| part == WORD)
        .map(|at| from + at)
        .ok_or_else(|| Unreadable::damaged("its end is missing", bytes.len()))?;
    let mut cursor = Cursor::new(bytes, at);
    let place = ending(&mut cursor)?;
    cursor.skip_blanks();
    match cursor.peek() {
        None => Ok(place),
        Some(_) => Err(Unreadable::two_readings(format!(
            "goes on behind its end (byte {}): some readers read on, others do not",
            cursor.at
        ))),
    }
}

/// Goes past `startxref`, where it leads, and `%%EOF`.
pub fn ending(cursor: &mut Cursor) -> Result<usize, Unreadable> {
    cursor.expect("startxref")?;
    cursor.skip_blanks();
    let place = cursor.whole()?;
    cursor.skip_blanks();
    if !cursor.rest().starts_with(b"%%EOF") {
        return Err(cursor.fault("there is no \"%%EOF\""));
    }
    cursor.at += "%%EOF".len();
    usize::try_from(place).map_err(|_| cursor.fault("its end leads out of the file"))
}

/// One line of a table: its kind, 1 for an object and 0 for a free number, its place and its
/// generation. Readers count on its 20 bytes.
fn row(cursor: &mut Cursor) -> Result<[u64; 3], Unreadable> {
    let fault = cursor.fault("a line of a table of objects is none");
    let line = cursor.rest().get(..20).ok_or_else(|| fault.clone())?;
    let number = |digits: &[u8]| {
        let is_plain = digits.iter().all(u8::is_ascii_digit);
        let digits = std::str::from_utf8(digits).ok().filter(|_| is_plain);
        digits.and_then(|digits| digits.parse().ok())
    };
    let kind = match line[17] {
        b'n' => 1,
        b'f' => 0,
        _ => return Err(fault),
    };
    let is_so = line[10] == b' '
        && line[16] == b' '
        && [&b" \n"[..], b"\r\n", b" \r"].contains(&&line[18..]);
    match (number(&line[..10]), number(&line[11..16])) {
        (Some(place), Some(generation)) if is_so => {
            cursor.at += line.len();
            Ok([kind, place, generation])
        }
        _ => Err(fault),
    }
}

impl Table {
    /// Objects are numbered from 1, and all below the size that the trailer states.
    fn check_numbers(&self) -> Result<(), Unreadable> {
        let numbers = || self.entries.keys().chain(self.packed.keys());
        if numbers().any(|number| *number == 0) {
            return Err(Unreadable::two_readings(
                "has an object of number 0, which some readers pass over",
            ));
        }
        let size = self.trailer.get(b"Size").and_then(Object::as_i64);
        match size {
            Ok(size) if numbers().all(|number| i64::from(*number) < size) => Ok(()),
            Ok(_) => Err(Unreadable::two_readings(
                "has objects beyond the number of them that it states, which some readers pass over",
            )),
            Err(_) => Err(Unreadable::damaged(
                "it does not say how many objects it has",
                self.at,
            )),
        }
    }

    /// A table of lines, with its trailer.
    fn read_lines(&mut self, bytes: &[u8], at: usize) -> Result<Dictionary, Unreadable> {
        let mut cursor = Cursor::new(bytes, at);
        cursor.expect("xref")?;
        loop {
            cursor.skip_blanks();
            if cursor.eat(b"trailer") {
                break;
            }
            let first = cursor.whole()?;
            cursor.skip_blanks();
            let count = cursor.whole()?;
            cursor.skip_blanks();
            for number in first..first.saturating_add(count) {
                let row = row(&mut cursor)?;
                // Some readers take such a table for one that is numbered wrongly.
                if number == first && first > 0 && row[0] == 0 {
                    return Err(Unreadable::two_readings(
                        "has a table of objects that begins with a free number",
                    ));
                }
                self.add(number, row, cursor.at)?;
            }
        }
        match cursor.value()? {
            Object::Dictionary(trailer) => Ok(trailer),
            _ => Err(cursor.fault("there is no trailer")),
        }
    }

    /// A table as a stream, whose dictionary is its trailer.
    fn read_stream(&mut self, bytes: &[u8], at: usize) -> Result<Dictionary, Unreadable> {
        let object = indirect(&mut Cursor::new(bytes, at), &|_| None)?;
        let Object::Stream(stream) = object.value else {
            return Err(Unreadable::damaged("there is no table of objects", at));
        };
        if !stream.dict.has_type(b"XRef") {
            return Err(Unreadable::damaged("there is no table of objects", at));
        }
        self.read_rows(&stream, at)?;
        Ok(stream.dict)
    }

    fn read_rows(&mut self, stream: &Stream, at: usize) -> Result<(), Unreadable> {
        let fault = || Unreadable::damaged("a table of objects cannot be read", at);
        let numbers = |key: &[u8]| -> Option<Vec<u64>> {
            let list = stream.dict.get(key).and_then(Object::as_array).ok()?;
            list.iter()
                .map(|item| item.as_i64().ok()?.try_into().ok())
                .collect()
        };
        let size = stream.dict.get(b"Size").and_then(Object::as_i64);
        let size = size.ok().and_then(|size| u64::try_from(size).ok());
        let widths = numbers(b"W")
            .filter(|widths| widths.len() == 3)
            .ok_or_else(fault)?;
        if widths.iter().any(|width| *width > 8) {
            return Err(fault());
        }
        let sections = match stream.dict.has(b"Index") {
            true => numbers(b"Index").ok_or_else(fault)?,
            false => vec![0, size.ok_or_else(fault)?],
        };
        let row_length = widths.iter().sum::<u64>() as usize;
        let content = unpacked_table(stream, at)?;
        let mut rows = content.chunks_exact(row_length.max(1));
        for section in sections.chunks(2) {
            let [first, count] = *section else {
                return Err(fault());
            };
            for number in first..first.saturating_add(count) {
                let mut rest = rows.next().ok_or_else(fault)?;
                let mut field = |width: u64, otherwise: u64| {
                    let (bytes, after) = rest.split_at(width as usize);
                    rest = after;
                    let value = bytes
                        .iter()
                        .fold(0, |sum, byte| sum << 8 | u64::from(*byte));
                    if width == 0 { otherwise } else { value }
                };
                let row = [
                    field(widths[0], 1),
                    field(widths[1], 0),
                    field(widths[2], 0),
                ];
                self.add(number, row, at)?;
            }
        }
        // What stands behind the last row is read by nobody.
        match rows.next().is_none() && rows.remainder().is_empty() {
            true => Ok(()),
            false => Err(fault()),
        }
    }

    /// An entry: its kind and two fields, as Table 18 of the standard has them.
    fn add(
        &mut self,
        number: u64,
        [kind, second, third]: [u64; 3],
        at: usize,
    ) -> Result<(), Unreadable> {
        self.rows += 1;
        let fault = || Unreadable::damaged("a table of objects has an entry that is none", at);
        let number = u32::try_from(number).map_err(|_| fault())?;
        if self.rows > PDF_OBJECTS.count() {
            return Err(Unreadable::damaged(
                "it lists more objects than any report has",
                at,
            ));
        }
        let is_known = self.entries.contains_key(&number)
            || self.packed.contains_key(&number)
            || (kind != 0 && self.free.contains(&number));
        if is_known {
            return Err(Unreadable::two_readings(format!(
                "lists object {number} twice, so that readers may show one or the other"
            )));
        }
        let (second, third) = (
            usize::try_from(second).map_err(|_| fault())?,
            usize::try_from(third).map_err(|_| fault())?,
        );
        match kind {
            0 => drop(self.free.insert(number)),
            1 => {
                let generation = u16::try_from(third).map_err(|_| fault())?;
                let at = second;
                self.entries.insert(number, Entry { at, generation });
            }
            2 => {
                let inside = u32::try_from(second).map_err(|_| fault())?;
                let index = third;
                self.packed.insert(number, Packed { inside, index });
            }
            _ => return Err(fault()),
        }
        Ok(())
    }

    /// The trailer leads to the catalogue and to what the file says of itself, and says
    /// nothing else.
    fn check_trailer(&self) -> Result<(), Unreadable> {
        let trailer = &self.trailer;
        if trailer.has(b"Encrypt") {
            return Err(Unreadable::Encrypted);
        }
        if trailer.has(b"Prev") || trailer.has(b"XRefStm") {
            return Err(Unreadable::two_readings(
                "has more than one table of objects, so that readers may show an older or a newer state: save it as a whole, not laid out for the web",
            ));
        }
        let is_stream = trailer.has_type(b"XRef");
        let is_known =
            |key: &[u8]| OF_TRAILER.contains(&key) || (is_stream && OF_STREAM.contains(&key));
        let leads = |key: &[u8]| trailer.get(key).is_ok_and(|one| one.as_reference().is_ok());
        let is_so =
            trailer.iter().all(|(key, _)| is_known(key)) && leads(b"Root") && leads(b"Info");
        match is_so {
            true => Ok(()),
            false => Err(Unreadable::two_readings(
                "has a trailer that says more or less than where it begins",
            )),
        }
    }
}
