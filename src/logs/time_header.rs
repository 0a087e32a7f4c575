//! What the header of a time column says besides its name: zone, and what is before the
//! colon.

use super::fold::fold;
use super::header_text::{apart, bracketed, suffixes};
use super::times::time_of_day::{find_zone, read_zone};
use crate::measure::{Kind, Unit};

/// The offset from UTC that the header of a time column states, s.
pub fn zone_of(header: &str) -> Option<i32> {
    let header = &apart(header);
    let in_brackets = bracketed(header).into_iter().map(|(_, inside)| inside);
    let at_end = suffixes(header).map(|(_, suffix)| suffix.to_owned());
    in_brackets
        .chain(at_end)
        .find_map(|text| read_zone(&text))
        .or_else(|| find_zone(header))
}

/// What a time column's header says of its zone, where that is not understood: "AEST",
/// "standard time".
pub fn unknown_zone_of(header: &str) -> Option<String> {
    const WORDS: [&str; 14] = [
        "standard",
        "daylight",
        "summer",
        "winter",
        "dst",
        "sommerzeit",
        "winterzeit",
        "verano",
        "invierno",
        "ete",
        "hiver",
        "verao",
        "inverno",
        "eastern",
    ];
    const ZONES: [&str; 44] = [
        "EST", "EDT", "CST", "CDT", "MST", "MDT", "PST", "PDT", "AEST", "AEDT", "ACST", "ACDT",
        "AWST", "NZST", "NZDT", "CET", "CEST", "MEZ", "MESZ", "WET", "WEST", "EET", "EEST", "BST",
        "IST", "SAST", "CAT", "EAT", "WAT", "PKT", "JST", "KST", "HKT", "SGT", "BRT", "ART", "CLT",
        "PET", "COT", "VET", "AST", "NPT", "MSK", "OEZ",
    ];
    let is_zone = |inside: &String| {
        let is_letters = ZONES.contains(&inside.trim());
        let folded = fold(inside);
        is_letters || folded.split_whitespace().any(|word| WORDS.contains(&word))
    };
    if zone_of(header).is_some() {
        return None;
    }
    let mut inside = bracketed(header).into_iter().map(|(_, inside)| inside);
    inside.find(is_zone)
}

/// The unit before the colon in a header such as `(mm:ss)` or `[h:min]`.
pub fn clock_unit_of(text: &str) -> Option<Unit> {
    let inside = bracketed(text).into_iter().map(|(_, inside)| inside);
    let mut patterns = inside.chain(std::iter::once(text.to_owned()));
    let pattern = patterns.find(|text| {
        let letters = |c: char| c.is_alphabetic() || c == ':' || c == ' ';
        text.contains(':') && text.chars().all(letters)
    })?;
    let symbol = match fold(&pattern).trim().chars().next()? {
        'h' | 's' => "h", // "hh:mm", "stunden:minuten"
        'm' => "min",
        _ => return None,
    };
    Unit::parse(symbol, &[Kind::Time])
}
