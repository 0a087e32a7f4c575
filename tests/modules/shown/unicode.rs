//! Characters that are shown escaped, held against the Unicode Standard's classes Cc, Cf, Zl
//! and Zp and its property Default_Ignorable_Code_Point (`tests/data/unseen_characters.csv`):
//! the same characters, no more and no fewer.

use simmerline::shown::{is_unseen, shown};

use crate::data::Table;

#[test]
fn unseen_characters_are_those_of_the_unicode_standard() {
    let table = Table::new(include_str!("../../data/unseen_characters.csv"));
    let code = |text: &str| u32::from_str_radix(text, 16).unwrap();
    let ranges: Vec<(u32, u32)> = table
        .rows(27)
        .map(|row| (code(row.text("from")), code(row.text("to"))))
        .collect();
    for character in '\0'..=char::MAX {
        let of_unicode = ranges
            .iter()
            .any(|(from, to)| (*from..=*to).contains(&(character as u32)));
        assert_eq!(is_unseen(character), of_unicode, "{character:?}");
    }
}

#[test]
fn what_is_shown_holds_no_unseen_character_and_nothing_else_is_changed() {
    for character in '\0'..=char::MAX {
        let text = format!("a{character}b");
        let seen = shown(&text);
        assert!(!seen.chars().any(is_unseen), "{seen:?}");
        assert_eq!(seen == text, !is_unseen(character), "{character:?}");
    }
}
