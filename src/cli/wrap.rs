//! A text in lines that are no longer than the screen is wide.

use unicode_width::UnicodeWidthStr;

use crate::report::unbroken::{JOINER, kept_together};

/// Fewest columns that a text is given, however far it is indented.
const LEAST_ROOM: usize = 16;

/// Indentation of further lines: whoever wrote the text begins none at the left edge.
pub const HANG: usize = 2;

/// The lines of a text: broken between words, not between a number and its unit, and not in a
/// word, so that a long path can still be copied. The first begins after `lead`, the others are
/// indented as wide as `lead` is, at least by [`HANG`].
pub fn wrapped(lead: &str, text: &str, width: Option<usize>) -> String {
    let Some(width) = width else {
        return plain_spaces(&format!("{lead}{text}\n"));
    };
    let (taken, hang) = (lead.width(), lead.width().max(HANG));
    let room = |taken: usize| width.saturating_sub(taken).max(LEAST_ROOM);
    let mut lines = String::new();
    for (index, part) in in_parts(text, room(taken), room(hang)).iter().enumerate() {
        match index {
            0 => lines.push_str(lead),
            _ => lines.extend(std::iter::repeat_n(' ', hang)),
        }
        lines.push_str(part);
        lines.truncate(lines.trim_end_matches(' ').len());
        lines.push('\n');
    }
    plain_spaces(&lines)
}

/// Lines once they are broken: a space that does not break is a space, for whoever searches.
pub fn plain_spaces(lines: &str) -> String {
    lines.replace('\u{a0}', " ").replace(JOINER, "")
}

/// A text in parts of at most so many columns, the first and the others, where its words allow
/// it.
pub fn in_parts(text: &str, first_room: usize, room: usize) -> Vec<String> {
    let mut parts = Vec::new();
    let mut part = String::new();
    let mut has_word = false;
    for piece in &pieces(text) {
        let room = match parts.is_empty() {
            true => first_room,
            false => room,
        };
        let is_too_long = part.width() + piece.trim_end().width() > room;
        if is_too_long && has_word {
            parts.push(std::mem::take(&mut part).trim_end().to_owned());
        }
        part.push_str(piece);
        has_word = true;
    }
    parts.push(part.trim_end().to_owned());
    parts
}

/// Widest piece of a text that stays on one line.
pub fn widest_piece(text: &str) -> usize {
    let widths = pieces(text)
        .into_iter()
        .map(|piece| piece.trim_end().width());
    widths.max().unwrap_or(0)
}

/// The pieces between which a text can be broken, each with the spaces behind it.
fn pieces(text: &str) -> Vec<String> {
    let kept = kept_together(text);
    let mut pieces: Vec<String> = Vec::new();
    for word in kept.split_inclusive(' ') {
        match pieces.last_mut() {
            // Spaces that follow each other, and those before the first word.
            Some(piece) if word == " " || piece.trim().is_empty() => piece.push_str(word),
            _ => pieces.push(word.to_owned()),
        }
    }
    pieces
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn lines_break_between_words_and_hang_under_the_text() {
        let said = "the quick brown fox jumps over the lazy dog";
        assert_eq!(
            wrapped("note: ", said, Some(30)),
            "note: the quick brown fox\n      jumps over the lazy dog\n"
        );
        assert_eq!(wrapped("note: ", said, None), format!("note: {said}\n"));
        assert_eq!(wrapped("", "", Some(30)), "\n");
    }

    #[test]
    fn a_space_that_does_not_break_keeps_words_together_and_is_a_space_then() {
        let said = "power of 30\u{a0}horses or so";
        assert_eq!(
            wrapped("- ", said, Some(19)),
            "- power of\n  30 horses or so\n"
        );
        assert_eq!(wrapped("- ", said, None), "- power of 30 horses or so\n");
    }

    #[test]
    fn nobody_begins_a_line_at_the_left_edge() {
        let said = "a name that goes on with error: forged";
        assert_eq!(
            wrapped("", said, Some(30)),
            "a name that goes on with\n  error: forged\n"
        );
    }

    #[test]
    fn a_value_stays_with_its_unit_and_its_half_width() {
        for value in [
            "131 ± 10 W",
            "700 W/m²",
            "95 %",
            "10 to 12 °C",
            "1 – 2 kg",
            "2 h 3 min",
        ] {
            for room in 16..40 {
                let said = format!("some words before {value}, and more");
                let lines = in_parts(&said, room, room);
                let kept = value.split(" to ").last().unwrap();
                let mut lines = lines.iter().map(|line| plain_spaces(line));
                assert!(lines.any(|line| line.contains(kept)), "{said}");
            }
        }
    }

    #[test]
    fn a_word_that_is_too_long_has_a_line_of_its_own_and_stays_whole() {
        let path = "a/very/long/path/that/does/not/fit.pdf";
        assert_eq!(
            in_parts(&format!("see {path} there"), 20, 20),
            ["see", path, "there"]
        );
    }

    #[test]
    fn indentation_and_gaps_within_a_line_stay() {
        assert_eq!(in_parts("  a  b", 20, 20), ["  a  b"]);
    }
}
