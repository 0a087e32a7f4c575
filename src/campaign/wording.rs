//! How a problem of the campaign file is worded.

use super::everyday::in_unit;
use super::key_units::KeyUnit;
use super::measured::FOUND_TEXT;

/// Tables that every campaign file has.
const NEEDED_TABLES: [&str; 4] = ["campaign", "cooker", "site", "load"];

/// Words in quotes, separated by commas.
pub fn words<const N: usize>(words: [&str; N]) -> String {
    words.map(|word| format!("\"{word}\"")).join(", ")
}

/// The word nearest to `wrong`, if any is near enough to be meant.
pub fn nearest<'w>(wrong: &str, words: impl IntoIterator<Item = &'w str>) -> Option<&'w str> {
    words
        .into_iter()
        .map(|word| {
            (
                strsim::jaro_winkler(&wrong.to_lowercase(), &word.to_lowercase()),
                word,
            )
        })
        .filter(|(likeness, _)| *likeness > 0.75)
        .max_by(|left, right| left.0.total_cmp(&right.0))
        .map(|(_, word)| word)
}

/// What the parser says, in the words of somebody who writes the file.
pub fn plain_message(message: &str) -> String {
    let first_quoted = message.split('`').nth(1).unwrap_or_default();
    if message.starts_with("unknown field") {
        return unknown(first_quoted);
    }
    if message.starts_with("missing field") {
        return if NEEDED_TABLES.contains(&first_quoted) {
            format!("the table [{first_quoted}] is missing")
        } else {
            format!("the key \"{first_quoted}\" is missing")
        };
    }
    if message.starts_with("invalid basic string") {
        return "text in quotes is not closed on this line".to_owned();
    }
    let words = [
        ("invalid type: sequence", "found a list"),
        ("invalid type: map", "found a table"),
        ("invalid type:", "found"),
        ("invalid value:", "found"),
        ("expected f64", "expected a number"),
        ("expected u32", "expected a whole number"),
        (
            "expected a boolean",
            "expected true or false, without quotes",
        ),
        ("expected a string", "expected text in quotes"),
        ("expected a sequence", "expected a list in brackets"),
        ("expected a map", "expected a table"),
        ("`", "\""),
    ];
    words
        .iter()
        .fold(message.to_owned(), |text, (theirs, ours)| {
            text.replace(theirs, ours)
        })
}

/// That a key is none of those known.
pub fn unknown(key: &str) -> String {
    format!("unknown key \"{key}\"")
}

/// What to do about a key that is none of those known. A key in the same unit is meant as it is;
/// to one in another unit, or from a key that names none, the unit is said, so that nobody takes
/// over a number as it stands.
pub fn hint_for_unknown(wrong: &str, known: &[&str]) -> String {
    let written = KeyUnit::of(wrong);
    let in_one_unit = known.iter().copied().filter(|key| match written {
        Some(written) => KeyUnit::of(key).is_some_and(|unit| unit.is(written)),
        None => KeyUnit::of(key).is_none(),
    });
    let alike = nearest(wrong, in_one_unit);
    let stem = |key: &'_ str| KeyUnit::of(key).map_or(key.len(), |unit| unit.stem(key).len());
    let wrong_stem = &wrong[..stem(wrong)];
    let near_stem = nearest(wrong_stem, known.iter().map(|key| &key[..stem(key)]));
    let stem_fits = |key: &str| near_stem.is_some_and(|near| near == &key[..stem(key)]);
    if let Some(near) = alike.filter(|near| stem_fits(near)) {
        return format!("did you mean \"{near}\"?");
    }
    let other = known.iter().find(|key| stem_fits(key));
    let in_its_unit = written.and_then(|written| in_unit(other?, written.symbol));
    if let Some(key) = in_its_unit {
        return format!("did you mean \"{key}\"?");
    }
    match (other, other.and_then(|key| KeyUnit::of(key)), written) {
        (Some(near), Some(unit), Some(written)) => {
            let how = written.conversion(unit);
            let how = how.map_or_else(String::new, |how| format!(": {how}"));
            format!(
                "\"{wrong}\" is in {}, and the key here is \"{near}\", in {}{how}; convert the number and write that key",
                written.symbol, unit.symbol
            )
        }
        (Some(near), Some(unit), None) => {
            format!("did you mean \"{near}\"? its number is in {}", unit.symbol)
        }
        (Some(near), None, _) => format!("did you mean \"{near}\"?"),
        (None, _, _) => format!("known here: {}", known.join(", ")),
    }
}

/// What to do about what the parser says.
pub fn hint_for(message: &str) -> String {
    let quoted: Vec<&str> = message.split('`').skip(1).step_by(2).collect();
    if let (true, [wrong, known @ ..]) = (message.starts_with("unknown field"), quoted.as_slice()) {
        return hint_for_unknown(wrong, known);
    }
    if let (true, [key, ..]) = (message.starts_with("missing field"), quoted.as_slice()) {
        let what = if NEEDED_TABLES.contains(key) {
            "the table"
        } else {
            "the key"
        };
        return format!("add {what}; simmerline new FOLDER writes a file that shows every key");
    }
    if message.starts_with(FOUND_TEXT) {
        return "write it in quotes, with a decimal point and without a thousands mark; or a bare number under the key that ends in its unit".to_owned();
    }
    "text goes in quotes; a number has none, and a decimal point, not a comma; a table starts with [name]; each key has a line of its own".to_owned()
}
