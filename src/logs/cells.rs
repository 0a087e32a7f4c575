//! One cell of a log: a number, nothing, or something that cannot be read.

/// What a cell holds.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Cell {
    /// A finite number.
    Number(f64),
    /// Blank, or a word for a missing value.
    Missing,
    /// A number that a logger writes for a fault.
    Fault,
    /// Neither.
    Unreadable,
}

/// Words that stand for a missing value, in lower case.
/// Common practice, no published source.
const MISSING_WORDS: [&str; 8] = ["", "nan", "na", "n/a", "null", "none", "-", "--"];

/// Reads a cell.
///
/// A fault value is a negative number written in nines only, three or more
/// (−999, −9999, −999.9), or −6999 or −7999. Common practice, no published source.
///
/// ```
/// use simmerline::logs::cells::{Cell, read_cell};
/// assert_eq!(read_cell(" 23.4 "), Cell::Number(23.4));
/// assert_eq!(read_cell("-9999.0"), Cell::Fault);
/// assert_eq!(read_cell("9l.4"), Cell::Unreadable);
/// ```
pub fn read_cell(cell: &str) -> Cell {
    let cell = cell.trim();
    let unsigned = cell.trim_start_matches(['+', '-']);
    let starts_like_a_number = cell
        .trim_start_matches(['+', '-'])
        .starts_with(|first: char| first.is_ascii_digit() || first == '.');
    if starts_like_a_number {
        return match cell.parse::<f64>() {
            Ok(value) if value < 0.0 && is_fault(cell) => Cell::Fault,
            Ok(value) if value.is_finite() => Cell::Number(value),
            _ => Cell::Unreadable,
        };
    }
    let is_missing = |word: &str| MISSING_WORDS.contains(&word.to_ascii_lowercase().as_str());
    if is_missing(cell) || unsigned.eq_ignore_ascii_case("nan") {
        Cell::Missing
    } else {
        Cell::Unreadable
    }
}

fn is_fault(negative: &str) -> bool {
    let digits = negative.trim_start_matches('-');
    let (whole, decimals) = digits.split_once('.').unwrap_or((digits, ""));
    let all = |text: &str, digit: u8| text.bytes().all(|byte| byte == digit);
    let nines = whole.len() >= 3 && all(whole, b'9');
    let plain = all(decimals, b'0') || all(decimals, b'9');
    (nines || whole == "6999" || whole == "7999") && plain
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn infinity_and_overflow_are_unreadable() {
        for text in ["inf", "-inf", "infinity", "1e999", "1,5", "12 °C", "0x10"] {
            assert_eq!(read_cell(text), Cell::Unreadable, "{text}");
        }
    }

    #[test]
    fn cold_is_no_fault() {
        assert_eq!(read_cell("-9.9"), Cell::Number(-9.9));
        assert_eq!(read_cell("-99"), Cell::Number(-99.0));
        assert_eq!(read_cell("999"), Cell::Number(999.0));
        assert_eq!(read_cell("-999.1"), Cell::Number(-999.1));
    }

    #[test]
    fn blank_and_fault_cells_are_told_apart() {
        for text in ["", "  ", "NaN", "NA", "null", "--"] {
            assert_eq!(read_cell(text), Cell::Missing, "{text}");
        }
        for text in [
            "-999", "-9999", "-99999", "-999.9", "-9999.00", "-6999", "-7999",
        ] {
            assert_eq!(read_cell(text), Cell::Fault, "{text}");
        }
    }
}
