//! What a line break must not part: a number and its unit, both ends of a range, a span of time,
//! a sign and its number.

/// Stands for a space at which no line breaks.
const NO_BREAK: char = '\u{a0}';
/// Put behind a dash, it keeps that space from breaking there all the same (Unicode Standard
/// Annex 14, rules LB11 and LB12a).
pub const JOINER: char = '\u{2060}';

/// Symbols of units, as they follow a number.
const UNITS: [&str; 36] = [
    "%", "°", "°C", "°F", "K", "W", "kW", "kWh", "Wh", "J", "kJ", "MJ", "g", "kg", "lb", "m", "mm",
    "cm", "km", "m²", "s", "min", "h", "L", "hPa", "kPa", "Bft", "MB", "kB", "µm", "nm", "Hz",
    "UTC", "ft", "ft²", "mph",
];
/// Signs that belong to the number after them.
const SIGNS: [&str; 10] = ["±", "<", ">", "≤", "≥", "=", "≈", "−", "+", "×"];
/// Signs that belong to what stands before them, too, where that is short, as in "k = 2".
const JOINTS: [&str; 5] = ["<", ">", "≤", "≥", "="];
/// Longest symbol that is kept with a joint after it, characters.
const SYMBOL: usize = 6;
/// Between the ends of a range.
const DASH: &str = "–";
/// Longest code of a body whose standard is cited by number, letters.
const BODY: std::ops::RangeInclusive<usize> = 2..=5;

/// The same text with spaces at which no line breaks.
///
/// ```
/// use simmerline::report::unbroken::kept_together;
///
/// assert_eq!(kept_together("for 1 h 5 min at 700 W/m²"), "for 1\u{a0}h\u{a0}5\u{a0}min at 700\u{a0}W/m²");
/// ```
pub fn kept_together(text: &str) -> String {
    let words: Vec<&str> = text.split(' ').collect();
    let mut kept = String::with_capacity(text.len() + 8);
    for (index, word) in words.iter().enumerate() {
        if index > 0 {
            let is_kept = binds(&words[..index], &words[index..]);
            if is_kept && words[index - 1].ends_with(DASH) {
                kept.push(JOINER);
            }
            kept.push(if is_kept { NO_BREAK } else { ' ' });
        }
        kept.push_str(word);
    }
    kept
}

/// Whether the last word before a space and the first after it stay on one line.
fn binds(before: &[&str], after: &[&str]) -> bool {
    let (Some(left), Some(right)) = (before.last(), after.first()) else {
        return false;
    };
    is_of_number(left, right)
        || is_range(before, after)
        || is_time(before, after)
        || is_of_unit(left, right)
        || is_mark(left, right)
        || is_standard(left, right)
}

/// `700 W/m²`, `± 10`, `10 ±`, `W ± 10`, `k = 2`; a ± that is spoken of ends no line either.
fn is_of_number(left: &str, right: &str) -> bool {
    let is_short = left.chars().count() <= SYMBOL;
    ends_in_number(left) && (is_unit(right) || right == "±")
        || SIGNS.contains(&left.trim_start_matches('(')) && begins_with_number(right)
        || UNITS.contains(&left) && right == "±"
        || left == "±"
        || is_short && !left.is_empty() && JOINTS.contains(&right)
}

/// Both spaces of `1002 – 1029`.
fn is_range(before: &[&str], after: &[&str]) -> bool {
    let (left, right) = (before[before.len() - 1], after[0]);
    if right == DASH {
        let end = after.get(1);
        return ends_in_number(left) && end.is_some_and(|end| begins_with_number(end));
    }
    let start = before.len().checked_sub(2).map(|place| before[place]);
    left == DASH && start.is_some_and(ends_in_number) && begins_with_number(right)
}

/// The space in the middle of `1 h 5 min`.
fn is_time(before: &[&str], after: &[&str]) -> bool {
    let count = before.len().checked_sub(2).map(|place| before[place]);
    let is_part = |unit: &str| matches!(unit, "h" | "min");
    let follows = after.get(1).is_some_and(|unit| is_unit(unit));
    is_part(before[before.len() - 1])
        && count.is_some_and(ends_in_number)
        && after[0].chars().all(|one| one.is_ascii_digit())
        && follows
}

/// The spaces in `4.19 kJ/(kg K)` and `0.118 K m²/W`.
fn is_of_unit(left: &str, right: &str) -> bool {
    left.contains("/(") && !left.contains(')') && right.contains(')')
        || left == "K" && right.starts_with("m²")
}

/// Marks before which some languages put a space.
fn is_mark(left: &str, right: &str) -> bool {
    let mut marks = right.chars();
    left == "«"
        || matches!(marks.next(), Some(':' | ';' | '!' | '?' | '»'))
            && marks.all(|one| matches!(one, '.' | ',' | ')' | '?' | '!'))
}

/// `IEC 60751`, `WMO-No. 8`.
fn is_standard(left: &str, right: &str) -> bool {
    let body = left.trim_start_matches('(');
    let is_body = BODY.contains(&body.len()) && body.chars().all(|one| one.is_ascii_uppercase());
    (is_body || left.ends_with("No.")) && begins_with_number(right)
}

fn ends_in_number(word: &str) -> bool {
    word.ends_with(|last: char| last.is_ascii_digit())
}

fn begins_with_number(word: &str) -> bool {
    let digits = word.trim_start_matches(['−', '+', '±', '-']);
    digits.starts_with(|first: char| first.is_ascii_digit())
}

/// Whether a word begins with a unit: what follows its symbol is no letter.
fn is_unit(word: &str) -> bool {
    let of_symbol = |one: char| one.is_alphabetic() || matches!(one, '°' | '%' | '²' | '³');
    let end = word.find(|one| !of_symbol(one)).unwrap_or(word.len());
    UNITS.contains(&&word[..end])
}

#[cfg(test)]
mod tests {
    use super::*;

    /// With `~` where a line must not break.
    fn kept(text: &str) -> String {
        kept_together(text)
            .replace(JOINER, "")
            .replace(NO_BREAK, "~")
    }

    #[test]
    fn a_number_stays_with_its_unit_and_its_sign() {
        for (text, said) in [
            ("of 700 W/m², the", "of 700~W/m², the"),
            ("± 10 K of it", "±~10~K of it"),
            ("131 ± 10 W (95 %)", "131~±~10~W (95~%)"),
            ("131 W ± 10 W at 50 K.", "131~W~±~10~W at 50~K."),
            ("(8.1 kg/m²) of water", "(8.1~kg/m²) of water"),
            ("4.19 kJ/(kg K) here", "4.19~kJ/(kg~K) here"),
            ("0.118 ± 0.025 K m²/W", "0.118~±~0.025~K~m²/W"),
            ("with k = 2 and p < 0.001", "with k~=~2 and p~<~0.001"),
            ("≥ 30 of 45", "≥~30 of 45"),
        ] {
            assert_eq!(kept(text), said);
        }
    }

    #[test]
    fn a_range_does_not_break_behind_its_dash() {
        assert_eq!(kept_together("3 – 5"), "3\u{a0}–\u{2060}\u{a0}5");
    }

    #[test]
    fn a_range_and_a_span_of_time_stay_whole() {
        for (text, said) in [
            ("saw 1002 – 1029 W/m²", "saw 1002~–~1029~W/m²"),
            ("−16 – 67 W", "−16~–~67~W"),
            ("20 – 35 °C (68 – 95 °F)", "20~–~35~°C (68~–~95~°F)"),
            ("1 h 5 min to 2 h 3 min", "1~h~5~min to 2~h~3~min"),
            ("10:00 – 14:00 by the sun", "10:00~–~14:00 by the sun"),
        ] {
            assert_eq!(kept(text), said);
        }
    }

    #[test]
    fn marks_stay_with_their_words_and_numbers_with_their_standards() {
        assert_eq!(kept("la norme : « oui »"), "la norme~: «~oui~»");
        assert_eq!(kept("IEC 60751, WMO-No. 8"), "IEC~60751, WMO-No.~8");
    }

    #[test]
    fn other_spaces_break_as_ever() {
        for text in [
            "on 4 days – the last of them",
            "a lid, 3 handles and 2 mirrors",
            "No 2 h",
            "the pot  held 3 kinds",
            "16 September 2026",
            "",
            " ",
        ] {
            let others = kept_together(text);
            let joined = others.matches(NO_BREAK).count();
            assert_eq!(joined, usize::from(text == "No 2 h"), "{others}");
        }
    }
}
