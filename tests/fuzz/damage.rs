//! Damage to bytes: some of it blind, some by what a parser sees in them.

use std::ops::Range;

use proptest::prelude::*;
use proptest::sample::{Index, select};

/// One act of damage.
#[derive(Debug, Clone)]
pub enum Damage {
    /// One byte with other bits.
    Flip(Index, u8),
    /// The end is missing.
    End(Index),
    Cut(Index, Index),
    /// A part so many times over.
    Repeat(Index, Index, usize),
    /// A part of it again elsewhere.
    Splice(Index, Index, Index),
    /// Another word for a number.
    Number(Index, &'static str),
    /// Digits put behind a number.
    Grow(Index, usize),
    /// Two tokens change places.
    Swap(Index, Index),
    Insert(Index, &'static str),
    /// Two lines change places.
    Lines(Index, Index),
}

/// What stands for a number, a name, a bracket or a whole grammar in one of the formats.
const WORDS: [&str; 68] = [
    "nan",
    "inf",
    "-inf",
    "1e308",
    "1e-320",
    "1e999",
    "0",
    "-0.0",
    "-1",
    "1",
    "2.5",
    "12",
    "24:00",
    "-999",
    "-9999",
    "65535",
    "65536",
    "2147483647",
    "2147483648",
    "-2147483648",
    "4294967295",
    "4294967296",
    "9223372036854775807",
    "-9223372036854775808",
    "18446744073709551615",
    "99999999999999999999",
    "1_000",
    "0x7f",
    "1,5",
    "1.234.567,8",
    "",
    " ",
    "\t",
    "\r\n",
    "\r",
    "\"",
    "\"\"",
    "'",
    ",",
    ";",
    "|",
    "\0",
    "\u{feff}",
    "é",
    "\u{202e}",
    "\u{1b}[2J",
    "2026-13-45",
    "2026-02-29",
    "0000-00-00",
    "9999-12-31",
    "-9999-01-01",
    "1979-05-27T07:32:00Z",
    "+99:99",
    "23:59:60",
    "12:00 AM",
    "[[run]]",
    "[",
    "]",
    "{",
    "}",
    "(",
    ")",
    "<<",
    ">>",
    "1 0 R",
    "/Kids",
    "endstream",
    "&#0;",
];

/// Longest part that is repeated or spliced, bytes.
const PART: usize = 200;

pub fn damage() -> impl Strategy<Value = Damage> {
    let at = any::<Index>;
    prop_oneof![
        3 => (at(), 1..=255_u8).prop_map(|(at, bits)| Damage::Flip(at, bits)),
        1 => at().prop_map(Damage::End),
        2 => (at(), at()).prop_map(|(from, to)| Damage::Cut(from, to)),
        2 => (at(), at(), 2..60_usize).prop_map(|(from, to, n)| Damage::Repeat(from, to, n)),
        2 => (at(), at(), at()).prop_map(|(from, to, at)| Damage::Splice(from, to, at)),
        6 => (at(), select(&WORDS[..])).prop_map(|(at, word)| Damage::Number(at, word)),
        2 => (at(), 1..400_usize).prop_map(|(at, digits)| Damage::Grow(at, digits)),
        3 => (at(), at()).prop_map(|(one, other)| Damage::Swap(one, other)),
        4 => (at(), select(&WORDS[..])).prop_map(|(at, word)| Damage::Insert(at, word)),
        2 => (at(), at()).prop_map(|(one, other)| Damage::Lines(one, other)),
    ]
}

/// Ranges of neighbours of one kind.
fn runs(bytes: &[u8], is_one: impl Fn(u8) -> bool) -> Vec<Range<usize>> {
    let mut found: Vec<Range<usize>> = Vec::new();
    for (at, _) in bytes.iter().enumerate().filter(|(_, byte)| is_one(**byte)) {
        match found.last_mut() {
            Some(last) if last.end == at => last.end = at + 1,
            _ => found.push(at..at + 1),
        }
    }
    found
}

fn is_of_number(byte: u8) -> bool {
    byte.is_ascii_digit() || byte == b'.'
}

fn is_of_token(byte: u8) -> bool {
    byte.is_ascii_alphanumeric() || matches!(byte, b'.' | b'_' | b'-' | b'/' | b'+') || byte > 127
}

/// At most `PART` bytes.
fn part(one: Index, other: Index, bytes: &[u8]) -> Range<usize> {
    let (one, other) = (one.index(bytes.len() + 1), other.index(bytes.len() + 1));
    let from = one.min(other);
    from..one.max(other).min(from + PART)
}

/// The ranges change places.
fn swapped(bytes: &[u8], ranges: &[Range<usize>], one: Index, other: Index) -> Vec<u8> {
    if ranges.is_empty() {
        return bytes.to_vec();
    }
    let (one, other) = (one.index(ranges.len()), other.index(ranges.len()));
    let (first, second) = (&ranges[one.min(other)], &ranges[one.max(other)]);
    if first == second {
        return bytes.to_vec();
    }
    [
        &bytes[..first.start],
        &bytes[second.clone()],
        &bytes[first.end..second.start],
        &bytes[first.clone()],
        &bytes[second.end..],
    ]
    .concat()
}

impl Damage {
    pub fn apply(&self, mut bytes: Vec<u8>) -> Vec<u8> {
        let length = bytes.len() + 1;
        let number = |at: &Index, bytes: &[u8]| {
            let numbers = runs(bytes, is_of_number);
            (!numbers.is_empty()).then(|| numbers[at.index(numbers.len())].clone())
        };
        match self {
            Damage::Flip(at, bits) if !bytes.is_empty() => {
                let at = at.index(bytes.len());
                bytes[at] ^= bits;
            }
            Damage::Flip(..) => {}
            Damage::End(at) => bytes.truncate(at.index(length)),
            Damage::Cut(from, to) => {
                bytes.drain(part(*from, *to, &bytes));
            }
            Damage::Repeat(from, to, times) => {
                let range = part(*from, *to, &bytes);
                let many = bytes[range.clone()].repeat(*times);
                bytes.splice(range, many);
            }
            Damage::Splice(from, to, at) => {
                let copy = bytes[part(*from, *to, &bytes)].to_vec();
                let at = at.index(length);
                bytes.splice(at..at, copy);
            }
            Damage::Number(at, word) => {
                if let Some(range) = number(at, &bytes) {
                    bytes.splice(range, word.bytes());
                }
            }
            Damage::Grow(at, digits) => {
                if let Some(range) = number(at, &bytes) {
                    let digits = std::iter::repeat_n(b'9', *digits);
                    bytes.splice(range.end..range.end, digits);
                }
            }
            Damage::Swap(one, other) => {
                bytes = swapped(&bytes, &runs(&bytes, is_of_token), *one, *other);
            }
            Damage::Insert(at, word) => {
                let at = at.index(length);
                bytes.splice(at..at, word.bytes());
            }
            Damage::Lines(one, other) => {
                let lines = runs(&bytes, |byte| byte != b'\n');
                bytes = swapped(&bytes, &lines, *one, *other);
            }
        }
        bytes
    }
}
