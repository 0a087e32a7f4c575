//! Rules of what is never printed: noise, codes, key names.

use std::collections::BTreeSet;
use std::sync::LazyLock;

use super::made::{Made, words_of};
use super::rules::Found;

/// Most significant digits of an uncertainty.
const MOST_DIGITS: usize = 4;
/// Decimals from which on a number is not rounded.
const NOISE_DECIMALS: usize = 6;

/// Texts of a page; a line at a time.
fn texts(made: &Made) -> impl Iterator<Item = (usize, &str)> {
    let pages = made.lines.iter().enumerate();
    pages.flat_map(|(index, lines)| lines.iter().map(move |line| (index, line.text.as_str())))
}

/// Page one tells every fact where nothing falls short, and the first two where at most three
/// things do.
pub fn untold_facts(made: &Made) -> Vec<Found> {
    let first: Vec<&str> = (made.lines[0].iter())
        .map(|line| line.text.as_str())
        .collect();
    let least = match made.shortcomings {
        0 => made.facts.len(),
        1..=3 => 2,
        _ => 0,
    };
    let facts = made.facts.iter().take(least);
    let is_told = |fact: &&String| first.iter().any(|line| begins_with(line, fact));
    let untold = facts.filter(|fact| !is_told(fact));
    untold
        .map(|fact| Found::on(0, format!("\"{fact}\" is not told")))
        .collect()
}

/// Whether a line begins with a name, word by word; a long name goes on in the next line.
fn begins_with(line: &str, name: &str) -> bool {
    let mut both = line.split_whitespace().zip(name.split_whitespace());
    !line.trim().is_empty() && both.all(|(found, expected)| found == expected)
}

/// A number as it is printed, by its digits before and after the decimal mark.
struct Number<'t> {
    /// What stands before it in its line.
    before: &'t str,
    written: &'t str,
    after: &'t str,
}

/// Numbers of a text; a comma or a point with digits on both sides is of them.
fn numbers(text: &str) -> Vec<Number<'_>> {
    let mut found = Vec::new();
    let mut from = 0;
    while let Some(start) = text[from..].find(|letter: char| letter.is_ascii_digit()) {
        let start = from + start;
        let letters: Vec<(usize, char)> = text[start..].char_indices().collect();
        let is_digit = |at: usize| {
            letters
                .get(at)
                .is_some_and(|(_, letter)| letter.is_ascii_digit())
        };
        let count = (0..letters.len())
            .take_while(|&at| is_digit(at) || ".,".contains(letters[at].1) && is_digit(at + 1))
            .count();
        let end = letters
            .get(count)
            .map_or(text.len(), |(offset, _)| start + offset);
        found.push(Number {
            before: &text[..start],
            written: &text[start..end],
            after: &text[end..],
        });
        from = end;
    }
    found
}

impl Number<'_> {
    fn decimals(&self) -> usize {
        let parts = self.written.rsplit_once([',', '.']);
        parts.map_or(0, |(_, decimals)| decimals.len())
    }

    fn significant(&self) -> usize {
        let digits: String = self.written.chars().filter(char::is_ascii_digit).collect();
        digits.trim_start_matches('0').len()
    }

    /// Whether it is part of a name, a hash or a file's name.
    fn is_in_a_word(&self) -> bool {
        let touches = |letter: char| letter.is_alphanumeric() || "_-".contains(letter);
        self.before.ends_with(touches) || self.after.starts_with(touches)
    }
}

/// No "0.00 W", nothing with more decimals than are known, and no long number after ±.
pub fn wrong_numbers(made: &Made) -> Vec<Found> {
    let mut found = Vec::new();
    for (page, text) in texts(made) {
        for number in numbers(text).iter().filter(|number| !number.is_in_a_word()) {
            let after: String = number
                .after
                .chars()
                .filter(|c| !c.is_whitespace())
                .take(2)
                .collect();
            let is_watt = after.starts_with('W') && !after.starts_with("W/");
            let is_nothing = number.significant() == 0 && number.decimals() >= 2;
            let is_after_spread = number.before.trim_end().ends_with('±');
            let what = match number {
                _ if is_nothing && is_watt => "no power",
                _ if number.decimals() >= NOISE_DECIMALS => "not rounded",
                _ if is_after_spread && number.significant() > MOST_DIGITS => "too many digits",
                _ => continue,
            };
            found.push(Found::on(page, format!("{what}: {}", number.written)));
        }
    }
    found
}

/// Words with hyphens that are English as well.
const ENGLISH: &[&str] = &["clear-sky", "self-test", "box-cooker"];

/// Codes of reasons, findings, methods: strings of the source text that are words with hyphens.
static CODES: LazyLock<BTreeSet<String>> = LazyLock::new(|| {
    let mut codes = BTreeSet::new();
    let mut folders = vec![
        "src/procedure".into(),
        "src/campaign".into(),
        "src/comparison".into(),
    ];
    while let Some(folder) = folders.pop() {
        let entries = std::fs::read_dir::<std::path::PathBuf>(folder).unwrap();
        for path in entries.map(|entry| entry.unwrap().path()) {
            if path.is_dir() {
                folders.push(path);
                continue;
            }
            let source = std::fs::read_to_string(path).unwrap();
            // A code, and nothing else, in quotes.
            let quoted = source.split('"');
            codes.extend(
                quoted
                    .filter(|text| is_joined_by(text, '-'))
                    .map(str::to_owned),
            );
        }
    }
    assert!(codes.contains("water-below-window"), "{codes:?}");
    codes.retain(|code| !ENGLISH.contains(&code.as_str()));
    codes
});

/// Whether a word is small letters and digits, in parts that are joined by one letter.
fn is_joined_by(word: &str, joint: char) -> bool {
    let is_part = |part: &str| {
        !part.is_empty()
            && part
                .chars()
                .all(|letter| letter.is_ascii_lowercase() || letter.is_ascii_digit())
    };
    word.contains(joint)
        && word.starts_with(|letter: char| letter.is_ascii_lowercase())
        && word.split(joint).all(is_part)
}

/// No code, and no name of a key, but where the tester wrote it himself.
pub fn codes(made: &Made) -> Vec<Found> {
    let mut found = Vec::new();
    for (page, text) in texts(made) {
        let words = words_of(text).map(|word| word.trim_matches(['.', '/', '-']));
        for word in words.filter(|word| !made.own_words.contains(*word)) {
            if CODES.contains(word) {
                found.push(Found::on(page, format!("a code: {word}")));
            } else if is_joined_by(word, '_') {
                found.push(Found::on(page, format!("a key: {word}")));
            }
        }
    }
    found
}

/// A probability is a number, or below one: after "p =" comes a digit.
pub fn wrong_probabilities(made: &Made) -> Vec<Found> {
    let mut found = Vec::new();
    for (page, text) in texts(made) {
        for (at, _) in text
            .match_indices("p =")
            .chain(text.match_indices("p\u{a0}="))
        {
            let is_word = text[..at].ends_with(char::is_alphanumeric);
            let said = text[at..]
                .split_once('=')
                .map_or("", |(_, said)| said.trim_start());
            if !is_word && !said.is_empty() && !said.starts_with(|c: char| c.is_ascii_digit()) {
                let said: String = text[at..].chars().take(24).collect();
                found.push(Found::on(page, said));
            }
        }
    }
    found
}

#[test]
fn numbers_are_found_in_a_text() {
    let found = numbers("− 12,5 kg ± 1727.9999999, v1.2 (0.00 W)");
    let found: Vec<(&str, usize, usize)> = (found.iter())
        .map(|number| (number.written, number.significant(), number.decimals()))
        .collect();
    let expected = [
        ("12,5", 3, 1),
        ("1727.9999999", 11, 7),
        ("1.2", 2, 1),
        ("0.00", 0, 2),
    ];
    assert_eq!(found, expected);
}

#[test]
fn a_name_is_told_by_whole_words_only() {
    let name = "Water from 20 to 95 °C";
    for line in [
        "Water from 20 to 95 °C",
        "Water from",
        "Water from 20 to 95 °C in 2 h",
    ] {
        assert!(begins_with(line, name), "{line}");
    }
    for line in ["", "Water", "Water falls", "Waters from 20", "Wate"] {
        assert_eq!(begins_with(line, name), line == "Water", "{line}");
    }
}
