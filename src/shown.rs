//! Text of others, where something would obey it.
//!
//! Names, keys, values and cells come from whoever wrote the files. A terminal obeys control
//! characters, direction characters let a text read as another one, and a spreadsheet runs
//! cells.

use std::borrow::Cow;

/// Characters that control, join, direct or hide, first and last of each range: the classes
/// Cc, Cf, Zl and Zp and the property Default_Ignorable_Code_Point of the Unicode Standard.
const UNSEEN: [(char, char); 27] = [
    ('\0', '\u{1f}'),
    ('\u{7f}', '\u{9f}'),
    ('\u{ad}', '\u{ad}'),
    ('\u{34f}', '\u{34f}'),
    ('\u{600}', '\u{605}'),
    ('\u{61c}', '\u{61c}'),
    ('\u{6dd}', '\u{6dd}'),
    ('\u{70f}', '\u{70f}'),
    ('\u{890}', '\u{891}'),
    ('\u{8e2}', '\u{8e2}'),
    ('\u{115f}', '\u{1160}'),
    ('\u{17b4}', '\u{17b5}'),
    ('\u{180b}', '\u{180f}'),
    ('\u{200b}', '\u{200f}'),
    ('\u{2028}', '\u{202e}'),
    ('\u{2060}', '\u{206f}'),
    ('\u{3164}', '\u{3164}'),
    ('\u{fe00}', '\u{fe0f}'),
    ('\u{feff}', '\u{feff}'),
    ('\u{ffa0}', '\u{ffa0}'),
    ('\u{fff0}', '\u{fffb}'),
    ('\u{110bd}', '\u{110bd}'),
    ('\u{110cd}', '\u{110cd}'),
    ('\u{13430}', '\u{1343f}'),
    ('\u{1bca0}', '\u{1bca3}'),
    ('\u{1d173}', '\u{1d17a}'),
    ('\u{e0000}', '\u{e0fff}'),
];

/// Whether a character controls, joins, directs or hides rather than shows itself.
pub fn is_unseen(character: char) -> bool {
    character != ' '
        && !character.is_ascii_graphic()
        && UNSEEN
            .iter()
            .any(|&(first, last)| (first..=last).contains(&character))
}

/// A text on one line, with every unseen character escaped: `\n`, `\u{1b}`.
pub fn shown(text: &str) -> Cow<'_, str> {
    escaped(text, is_unseen)
}

/// The same, with line feeds as they are: for text whose lines are ours.
pub fn shown_lines(text: &str) -> Cow<'_, str> {
    escaped(text, |character| character != '\n' && is_unseen(character))
}

/// JSON with the unseen characters of its strings escaped as JSON does it: it means the same.
pub fn shown_in_json(json: &str) -> String {
    let mut shown = String::with_capacity(json.len());
    for character in json.chars() {
        match is_unseen(character) && character != '\n' {
            true => {
                let units = character.encode_utf16(&mut [0; 2]).to_vec();
                shown.extend(units.iter().map(|unit| format!("\\u{unit:04x}")));
            }
            false => shown.push(character),
        }
    }
    shown
}

fn escaped(text: &str, is_escaped: impl Fn(char) -> bool) -> Cow<'_, str> {
    if !text.chars().any(&is_escaped) {
        return Cow::Borrowed(text);
    }
    let mut shown = String::with_capacity(text.len() + 8);
    for character in text.chars() {
        match is_escaped(character) {
            true => shown.extend(character.escape_default()),
            false => shown.push(character),
        }
    }
    Cow::Owned(shown)
}

/// Beginnings of a cell that a spreadsheet may run as a formula, in full width too (OWASP, "CSV
/// Injection", from memory).
const RUN_AS_FORMULA: [char; 11] = ['=', '+', '-', '@', '\t', '\r', '\n', '＝', '＋', '－', '＠'];

/// A text as a cell of CSV that no spreadsheet runs: behind an apostrophe, as OWASP advises.
pub fn in_cell(text: &str) -> String {
    // One that looks as if it had been made so gets one more, so that it comes back.
    match text.starts_with(RUN_AS_FORMULA) || out_of_cell(text) != text {
        true => format!("'{text}"),
        false => text.to_owned(),
    }
}

/// The text that [`in_cell`] made a cell of.
pub fn out_of_cell(cell: &str) -> &str {
    let bare = cell.trim_start_matches('\'');
    match bare.len() < cell.len() && bare.starts_with(RUN_AS_FORMULA) {
        true => &cell[1..],
        false => cell,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_a_terminal_obeys_is_escaped_and_letters_are_not() {
        assert_eq!(
            shown("a\u{1b}[31m\r\n\u{9b}2J\u{7}\u{202e}b\u{2028}\t"),
            "a\\u{1b}[31m\\r\\n\\u{9b}2J\\u{7}\\u{202e}b\\u{2028}\\t"
        );
        for plain in ["é e\u{301} °C ± − 太陽 Лог \u{a0}", "C:\\logs\\x \"y\" 'z'"] {
            assert!(matches!(shown(plain), Cow::Borrowed(text) if text == plain));
        }
    }

    #[test]
    fn a_cell_that_would_be_run_stands_behind_an_apostrophe() {
        for text in [
            "=1+1", "+1", "-1", "@x", "\t=1", "\r=1", "\n=1", "＝1", "＋1", "－1", "＠x", "'=1",
            "''=1",
        ] {
            assert_eq!(in_cell(text), format!("'{text}"));
            assert_eq!(out_of_cell(&in_cell(text)), text);
        }
        for text in ["", "a=1", "'a", "day-1.csv", "− 1", " x"] {
            assert_eq!(in_cell(text), text);
            assert_eq!(out_of_cell(text), text);
        }
    }

    #[test]
    fn json_means_the_same_when_it_is_shown() {
        let text = "a\u{202e}\u{9b}\u{1b}\n\u{e0041}é";
        let json = serde_json::to_string_pretty(&[text]).unwrap();
        let shown = shown_in_json(&json);
        assert!(
            shown.contains("a\\u202e\\u009b\\u001b\\n\\udb40\\udc41é"),
            "{shown}"
        );
        assert_eq!(serde_json::from_str::<[String; 1]>(&shown).unwrap(), [text]);
    }

    #[test]
    fn lines_of_ours_stay_lines() {
        assert_eq!(shown_lines("a\nb\r\n"), "a\nb\\r\n");
    }
}
