//! The text of a header: its brackets, what is cut off its end, its words.

use super::fold::fold;
use super::synonyms::TABLE;
use crate::measure::{Kind, Unit};

/// What stands in brackets behind a name.
pub enum Bracket {
    /// Something that looks like a unit and is none of the quantity's.
    NoUnit(String),
    /// Another thing than the name: its gusts, its lid.
    OtherThing,
    /// Which one, or where it is.
    Label,
}

/// Units of what is no reading of a cooker test.
const FOREIGN_UNITS: [&str; 46] = [
    "furlong", "furlongs", "l", "litre", "litres", "liter", "liters", "kg", "g", "lb", "bar",
    "mbar", "hpa", "kpa", "psi", "lux", "lx", "klux", "ppm", "hz", "w", "kw", "wh", "kwh", "j",
    "mj", "m", "cm", "mm", "km", "ft", "pa", "ohm", "db", "beaufort", "bft", "bf", "pulse",
    "pulses", "counts", "index", "level", "raw", "adc", "state", "rpm",
];

/// Words for another thing than the quantity they stand behind.
const OTHER_THINGS: [&str; 22] = [
    "lid",
    "plate",
    "absorber",
    "glass",
    "wall",
    "direct",
    "diffuse",
    "beam",
    "max",
    "maximum",
    "min",
    "minimum",
    "gust",
    "gusts",
    "boe",
    "boen",
    "bo",
    "direction",
    "std",
    "sd",
    "inlet",
    "outlet",
];

/// Brackets of a header that are looked into: a name has one or two.
const MOST_BRACKETS: usize = 4;
/// Longest unit at the end of a header, bytes, with the mark before it; the longest known
/// one has half of that.
const LONGEST_UNIT: usize = 60;

/// Judges what stands in brackets.
pub fn judge_bracket(inside: &str) -> Bracket {
    let folded = fold(inside);
    let folded = folded.trim();
    let looks_like_a_unit = folded.contains(['/', '°', '²', '^', '%'])
        || FOREIGN_UNITS.contains(&folded)
        || Unit::parse(folded, &Kind::IN_LOGS).is_some();
    let mut words = folded.split(|c: char| !c.is_alphanumeric());
    if looks_like_a_unit {
        Bracket::NoUnit(inside.to_owned())
    } else if words.any(|word| OTHER_THINGS.contains(&word)) {
        Bracket::OtherThing
    } else {
        Bracket::Label
    }
}

/// A header without "(24 h)", which says how the clock is read.
pub fn without_clock_label(header: &str) -> String {
    let is_label = |inside: &str| {
        let letters: String = inside.to_lowercase().split_whitespace().collect();
        matches!(letters.as_str(), "24h" | "12h" | "24hr" | "12hr")
    };
    match bracketed(header)
        .into_iter()
        .find(|(_, inside)| is_label(inside))
    {
        Some((around, _)) => around.trim().to_owned(),
        None => header.to_owned(),
    }
}

/// A header with the words of camel case apart.
pub fn apart(header: &str) -> String {
    let header = header.replace(
        ['ª', 'º'],
        if header.contains("ºC") || header.contains("ºF") {
            "°"
        } else {
            " "
        },
    );
    if header.contains([' ', '_']) {
        return header;
    }
    let mut words = String::new();
    let mut last = ' ';
    for character in header.chars() {
        if last.is_lowercase() && character.is_uppercase() {
            words.push('_');
        }
        words.push(character);
        last = character;
    }
    words
}

/// A header without filler words at its end: "Water_C_Avg".
pub fn without_last_filler(header: &str) -> &str {
    match header.rfind(['_', ' ']) {
        Some(at) if TABLE.filler.contains(&fold(&header[at + 1..])) => &header[..at],
        _ => header,
    }
}

/// Each bracketed part with the header around it, the last first; of many, the last few.
pub fn bracketed(header: &str) -> Vec<(String, String)> {
    let mut parts = Vec::new();
    let mut open: Vec<usize> = Vec::new();
    for (at, character) in header.char_indices() {
        match character {
            '(' | '[' | '{' => open.push(at),
            ')' | ']' | '}' => {
                // Only the outermost: W/(m²) is one unit.
                if let (Some(start), true) = (open.pop(), open.is_empty()) {
                    let around = format!("{} {}", &header[..start], &header[at + 1..]);
                    parts.push((around, header[start + 1..at].to_owned()));
                }
            }
            _ => {}
        }
    }
    parts.reverse();
    parts.truncate(MOST_BRACKETS);
    parts
}

/// Ways to cut a unit off the end: after a comma, slash or underline; after a space, if
/// it has more than one letter.
pub fn suffixes(header: &str) -> impl Iterator<Item = (&str, &str)> {
    let first = header.len().saturating_sub(LONGEST_UNIT);
    let ends = header.char_indices().filter(move |(at, _)| *at >= first);
    ends.filter_map(move |(at, character)| {
        let is_cut = matches!(character, ',' | ';' | '/' | '_' | '-' | '|' | ':')
            || character.is_whitespace();
        if !is_cut || at == 0 {
            return None;
        }
        let suffix = header[at + character.len_utf8()..].trim();
        let letters = suffix
            .chars()
            .filter(|c| c.is_alphanumeric() || *c == '°')
            .count();
        let is_letter = letters == 1 && character.is_whitespace();
        // "Lufttemperatur in °C"
        let name = &header[..at];
        let is_open = !suffix.starts_with(['(', '[']);
        let name = name.strip_suffix(" in").filter(|_| is_open).unwrap_or(name);
        (!suffix.is_empty() && !is_letter).then_some((name, suffix))
    })
}
