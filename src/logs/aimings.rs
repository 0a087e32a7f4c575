//! Notes in a log that say that the cooker was turned to the sun again.
//!
//! The words stand in `aimings.toml`, which says how to add one.

use std::collections::BTreeMap;
use std::sync::LazyLock;

use serde::Deserialize;

use super::fold::fold;

type ByLanguage = BTreeMap<String, Vec<String>>;

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct AimingsFile {
    headers: ByLanguage,
    turned: ByLanguage,
    denied: ByLanguage,
    other: ByLanguage,
    target: ByLanguage,
}

/// A phrase, word by word.
type Phrase = Vec<String>;

struct Table {
    headers: Vec<Phrase>,
    turned: Vec<Phrase>,
    denied: Vec<Phrase>,
    other: Vec<Phrase>,
    target: Vec<Phrase>,
}

static TABLE: LazyLock<Table> = LazyLock::new(|| {
    let file: AimingsFile =
        toml::from_str(include_str!("aimings.toml")).expect("aimings.toml is checked by a test");
    let phrases = |words: &ByLanguage| {
        words
            .values()
            .flatten()
            .map(|text| words_of(text))
            .collect()
    };
    Table {
        headers: phrases(&file.headers),
        turned: phrases(&file.turned),
        denied: phrases(&file.denied),
        other: phrases(&file.other),
        target: phrases(&file.target),
    }
});

/// The words of a text as they are compared.
fn words_of(text: &str) -> Phrase {
    let folded = fold(text);
    let words = folded.split(|letter: char| !letter.is_alphanumeric());
    let words = words.filter(|word| !word.is_empty());
    words.map(str::to_owned).collect()
}

/// Where in the words of a clause one of some phrases stands first.
fn first_of(phrases: &[Phrase], clause: &[String]) -> Option<(usize, usize)> {
    let at = |start: usize| {
        let rest = &clause[start..];
        let found = phrases.iter().find(|phrase| rest.starts_with(phrase));
        found.map(|phrase| (start, phrase.len()))
    };
    (0..clause.len()).find_map(at)
}

/// Whether a header is that of a column of notes.
pub fn is_of_notes(header: &str) -> bool {
    TABLE.headers.contains(&words_of(header))
}

/// Whether a note says that the cooker was turned to the sun at its time: it holds a word for
/// that, in a clause without a denial before it and without another thing that moves.
pub fn says_aimed(note: &str) -> bool {
    let clauses = note.split([
        ',', ';', '.', ':', '?', '!', '/', '(', ')', '–', '—', '&', '+',
    ]);
    let clauses: Vec<Phrase> = clauses
        .map(words_of)
        .filter(|words| !words.is_empty())
        .collect();
    let is_denial = |clause: Option<&Phrase>| {
        clause.is_some_and(|clause| {
            first_of(&TABLE.denied, clause).is_some_and(|(at, words)| at + words == clause.len())
        })
    };
    let said = |(place, clause): (usize, &Phrase)| {
        let clause = without(&TABLE.target, clause);
        let Some((at, _)) = first_of(&TABLE.turned, &clause) else {
            return false;
        };
        first_of(&TABLE.denied, &clause[..at]).is_none()
            && first_of(&TABLE.other, &clause).is_none()
            && !is_denial(clauses.get(place + 1))
    };
    clauses.iter().enumerate().any(said)
}

/// A clause without what stands for the sun as a target.
fn without(phrases: &[Phrase], clause: &[String]) -> Phrase {
    let Some((at, words)) = first_of(phrases, clause) else {
        return clause.to_vec();
    };
    [&clause[..at], &clause[at + words..]].concat()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn words_are_written_as_they_are_compared() {
        let table = &*TABLE;
        for phrase in [&table.headers, &table.turned, &table.denied, &table.other]
            .into_iter()
            .flatten()
        {
            let written = phrase.join(" ");
            assert_eq!(words_of(&written), *phrase);
            assert!(!phrase.is_empty());
        }
        let file: AimingsFile = toml::from_str(include_str!("aimings.toml")).unwrap();
        let of = [
            file.headers,
            file.turned,
            file.denied,
            file.other,
            file.target,
        ];
        for text in of.iter().flat_map(|words| words.values().flatten()) {
            assert_eq!(&words_of(text).join(" "), text, "not normalised");
        }
    }

    #[test]
    fn a_note_that_the_cooker_was_turned_is_understood_in_every_language() {
        for note in [
            "moved it",
            "Moved",
            "re-aimed",
            "Re-aimed the dish, light wind",
            "begun, aimed at the sun",
            "turned to the sun",
            "no cloud; adjusted",
            "tracked",
            "rotated box 10°",
            "movido",
            "Reorientada al sol",
            "Tournée vers le soleil",
            "réorienté",
            "nachgeführt",
            "Kocher neu ausgerichtet",
            "zur Sonne gedreht",
            "reorientado para o sol",
            "Imegeuzwa",
        ] {
            assert!(says_aimed(note), "{note}");
        }
    }

    #[test]
    fn denials_and_other_things_that_move_are_no_aiming() {
        for note in [
            "",
            "begun",
            "not moved",
            "didn't move it",
            "forgot to move it",
            "never turned",
            "moved? no",
            "re-aimed: no",
            "must be turned",
            "no se ha movido",
            "pas tourné",
            "non réorienté",
            "nicht gedreht",
            "não foi ajustado",
            "haijageuzwa",
            "sun gone for a while",
            "clouds moved in",
            "turned cloudy",
            "pot moved",
            "lid turned",
            "wind turned",
            "sun moved behind the tree",
            "sensor adjusted",
            "turned off",
            "removed",
        ] {
            assert!(!says_aimed(note), "{note}");
        }
    }

    #[test]
    fn a_header_of_notes_is_known_alone() {
        for header in [
            "notes",
            "Notes",
            "Remarks",
            "Bemerkung",
            "Observações",
            "Remarques",
        ] {
            assert!(is_of_notes(header), "{header}");
        }
        for header in ["sky", "note temperature", "", "moved"] {
            assert!(!is_of_notes(header), "{header}");
        }
    }
}
