//! Where no line may break: a number stays with its unit and with the numbers beside it, in
//! all languages of the report.

/// A space at which no line breaks, unless it follows a dash.
const NO_BREAK: char = '\u{a0}';
/// Put behind a dash, it keeps that space from breaking (Unicode Standard Annex 14, LB11).
const JOINER: char = '\u{2060}';

/// What may stand behind a number; a product or quotient of these is one as well.
const UNITS: &[&str] = &[
    "%", "°", "°C", "°F", "K", "W", "kW", "J", "kJ", "MJ", "kWh", "m", "cm", "mm", "km", "µm", "m²",
    "cm²", "ft", "ft²", "mi", "mph", "kg", "g", "mg", "lb", "L", "mL", "l", "gal", "h", "min",
    "s", "d", "mV", "Pa", "hPa", "MB", "kB", "Btu", "×",
];

/// Signs that belong to the number behind them.
const BEFORE_NUMBER: &[&str] = &["±", "≤", "≥", "<", ">", "≈", "=", "×", "−", "+"];

/// Signs that belong to the word before them where a language sets them apart.
const BEHIND_WORD: &[&str] = &[":", ";", "?", "!", "»", "±", "="];

/// Marks that may stand about a number or unit.
const AROUND: &[char] = &['(', ')', '[', ']', ',', '.', ';', ':', '“', '”', '"', '«', '»'];

/// The same text with spaces that do not break where a number would be torn from its unit,
/// from its spread or from the other end of its range.
pub fn kept_together(text: &str) -> String {
    let words: Vec<&str> = text.split(' ').collect();
    let mut kept = String::with_capacity(text.len() + 8);
    for (index, word) in words.iter().enumerate() {
        if index > 0 {
            let before = index.checked_sub(2).map_or("", |before| words[before]);
            let after = words.get(index + 1).copied().unwrap_or("");
            let belong = belong_together(before, words[index - 1], word, after);
            if belong && words[index - 1].ends_with('–') {
                kept.push(JOINER);
            }
            kept.push(if belong { NO_BREAK } else { ' ' });
        }
        kept.push_str(word);
    }
    kept
}

/// Whether no line may break between two words, `left` and `right`, that stand between two
/// others.
fn belong_together(before: &str, left: &str, right: &str, after: &str) -> bool {
    let is_range = |from: &str, dash: &str, to: &str| {
        dash == "–" && (is_number_end(from) || is_unit(from)) && is_number_start(to)
    };
    (is_number_end(left) && is_unit(right))
        || (BEFORE_NUMBER.contains(&left.trim_start_matches('(')) && is_number_start(right))
        || (BEHIND_WORD.contains(&right.trim_end_matches([',', '.', ')'])) && !left.is_empty())
        || left == "«"
        || is_range(left, right, after)
        || is_range(before, left, right)
        || (is_number_end(before) && is_hours(left) && is_number_start(right))
}

/// Whether a word begins with a number, such as `(−3.2` or `1029`.
fn is_number_start(word: &str) -> bool {
    let word = word.trim_start_matches(AROUND);
    let word = word.strip_prefix(['−', '+', '±']).unwrap_or(word);
    word.starts_with(|first: char| first.is_ascii_digit())
}

/// Whether a word ends with a number that a unit may follow, such as `(450` or `0.94`.
fn is_number_end(word: &str) -> bool {
    let figure = |last: char| last.is_ascii_digit() || "⁰¹²³⁴⁵⁶⁷⁸⁹½¼¾".contains(last);
    is_number_start(word) && word.ends_with(figure)
}

/// Whether a word is a unit or several of them, such as `W/(m²` or `kWh.`
fn is_unit(word: &str) -> bool {
    let word = word.trim_matches(AROUND);
    !word.is_empty() && word.split(['/', '·']).all(|part| UNITS.contains(&part.trim_matches(AROUND)))
}

/// Whether a word is the first unit of a length of time, such as `1 h 5 min`.
fn is_hours(word: &str) -> bool {
    ["d", "h", "min"].contains(&word)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn seen(text: &str) -> String {
        kept_together(text).replace(JOINER, "").replace(NO_BREAK, "_")
    }

    #[test]
    fn numbers_stay_with_their_units() {
        for (text, expected) in [
            ("water at 95 °C boils", "water at 95_°C boils"),
            ("of 700 W/m², and", "of 700_W/m², and"),
            ("(45.2 kg/m²).", "(45.2_kg/m²)."),
            ("about 1 h 5 min to 60 °C", "about 1_h_5_min to 60_°C"),
            ("2 h in all", "2_h in all"),
            ("131 ± 10 W (95 %)", "131_±_10_W (95_%)"),
            ("± 10 W", "±_10_W"),
            ("450 – 1100 W/m²", "450_–_1100_W/m²"),
            ("20 °C – 35 °C", "20_°C_–_35_°C"),
            ("−3 – 11 W", "−3_–_11_W"),
            ("10:00 – 14:00", "10:00_–_14:00"),
            ("≥ 5 K", "≥_5_K"),
            ("R² = 0,94; n = 45", "R²_=_0,94; n_=_45"),
            ("12 m² a day", "12_m² a day"),
            ("6,5 × 10⁶ J", "6,5_×_10⁶_J"),
        ] {
            assert_eq!(seen(text), expected);
        }
    }

    #[test]
    fn a_range_does_not_break_behind_its_dash() {
        assert_eq!(kept_together("3 – 5 K"), "3\u{a0}–\u{2060}\u{a0}5\u{a0}K");
    }

    #[test]
    fn words_may_part() {
        for text in [
            "4 days",
            "run 1 in the sun",
            "the box – built of wood – held",
            "at 10:05 a gust",
            "m is a unit",
            "",
            " ",
        ] {
            assert_eq!(seen(text), text);
        }
    }

    #[test]
    fn signs_that_french_sets_apart_stay_with_their_word() {
        assert_eq!(seen("Résultat : « bon » ; fin !"), "Résultat_: «_bon_»_; fin_!");
    }

    #[test]
    fn nothing_else_is_changed() {
        let odd = "  two  spaces \n and a line ";
        assert_eq!(kept_together(odd), odd);
    }
}
