//! One cell of a log: a number, nothing, or something that cannot be read.

use crate::language::Message;
use crate::message;

/// What a cell holds.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Cell {
    /// A finite number.
    Number(f64),
    /// Blank, or a word for a missing value.
    Missing,
    /// A number that a logger writes for a fault, or a spreadsheet's error.
    Fault,
    /// Neither.
    Unreadable,
}

/// How numbers are written.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Marks {
    /// `.` or `,`.
    pub decimal: char,
    /// Between thousands; only where the campaign file declares it.
    pub thousands: Option<char>,
}

impl Marks {
    /// Decimal point, no thousands mark.
    pub const POINT: Marks = Marks {
        decimal: '.',
        thousands: None,
    };

    /// In words.
    pub fn describe(self) -> Message {
        let decimal = match self.decimal {
            ',' => message!("mark-comma"),
            _ => message!("mark-point"),
        };
        match self.thousands {
            Some(mark) => {
                message!("mark-thousands", decimal = decimal, mark = mark.to_string())
            }
            None => decimal,
        }
    }
}

/// Words that stand for a missing value, in lower case.
/// Common practice, no published source.
const MISSING_WORDS: [&str; 9] = [
    "nan", "na", "n/a", "#n/a", "n.a.", "null", "none", "nil", "?",
];

/// Words that a logger writes for a fault, in lower case.
/// Common practice, no published source.
const FAULT_WORDS: [&str; 5] = ["ol", "err", "error", "fault", "overflow"];

/// A spreadsheet's errors, in lower case (OpenDocument 1.3 part 4, and common practice).
const SHEET_ERRORS: [&str; 6] = ["#div/0!", "#value!", "#ref!", "#name?", "#num!", "#null!"];

/// Reads a cell.
///
/// A fault value is a negative number written in nines only, three or more
/// (−999, −9999, −999.9), or −6999 or −7999. Common practice, no published source.
///
/// ```
/// use simmerline::logs::cells::{Cell, Marks, read_cell};
/// assert_eq!(read_cell(" 23.4 ", Marks::POINT), Cell::Number(23.4));
/// assert_eq!(read_cell("-9999.0", Marks::POINT), Cell::Fault);
/// assert_eq!(read_cell("9l.4", Marks::POINT), Cell::Unreadable);
/// let german = Marks { decimal: ',', thousands: Some('.') };
/// assert_eq!(read_cell("1.012,5", german), Cell::Number(1012.5));
/// ```
pub fn read_cell(cell: &str, marks: Marks) -> Cell {
    let cell = cell.trim();
    if is_plain(cell) && (marks.decimal == '.' || !cell.contains('.')) {
        return read_plain(cell);
    }
    if is_missing(cell) {
        return Cell::Missing;
    }
    if FAULT_WORDS.contains(&cell.to_ascii_lowercase().as_str())
        || SHEET_ERRORS.contains(&cell.to_ascii_lowercase().as_str())
    {
        return Cell::Fault;
    }
    match plain_number(cell, marks) {
        Some(plain) => read_plain(&plain),
        None => Cell::Unreadable,
    }
}

/// Whether only characters of a plain number occur, beginning as one.
fn is_plain(cell: &str) -> bool {
    let unsigned = cell.trim_start_matches(['+', '-']);
    unsigned.starts_with(|first: char| first.is_ascii_digit() || first == '.')
        && cell
            .bytes()
            .all(|byte| matches!(byte, b'0'..=b'9' | b'.' | b'+' | b'-' | b'e' | b'E'))
}

fn read_plain(cell: &str) -> Cell {
    match cell.parse::<f64>() {
        Ok(value) if value < 0.0 && is_fault(cell) => Cell::Fault,
        Ok(value) if value.is_finite() => Cell::Number(value),
        _ => Cell::Unreadable,
    }
}

fn is_missing(cell: &str) -> bool {
    let unsigned = cell.trim_start_matches(['+', '-']);
    let is_dashes = cell
        .chars()
        .all(|c| matches!(c, '-' | '–' | '—' | '_' | '.'));
    let word = unsigned.to_ascii_lowercase();
    is_dashes || MISSING_WORDS.contains(&word.as_str())
}

/// A number as `parse` takes it: without thousands marks, with a decimal point and a
/// plain minus sign. `None` if the marks do not stand where they belong.
fn plain_number(cell: &str, marks: Marks) -> Option<String> {
    let cell = cell.replace('−', "-");
    let exponent = cell.find(['e', 'E']).unwrap_or(cell.len());
    let (mantissa, exponent) = cell.split_at(exponent);
    let (whole, decimals) = match mantissa.split_once(marks.decimal) {
        Some((whole, decimals)) => (whole, Some(decimals)),
        None => (mantissa, None),
    };
    let whole = match marks.thousands {
        Some(mark) => without_thousands(whole, mark)?,
        None => whole.to_owned(),
    };
    let plain = match decimals {
        Some(decimals) => format!("{whole}.{decimals}{exponent}"),
        None => format!("{whole}{exponent}"),
    };
    let dots = plain.matches('.').count();
    (is_plain(&plain) && dots <= usize::from(decimals.is_some())).then_some(plain)
}

/// Digits in groups of three, joined; `None` for other groups.
fn without_thousands(whole: &str, mark: char) -> Option<String> {
    let is_mark =
        |c: char| c == mark || (mark == ' ' && matches!(c, '\u{a0}' | '\u{202f}' | '\u{2009}'));
    let groups: Vec<&str> = whole.split(is_mark).collect();
    let (first, rest) = groups.split_first()?;
    let digits = first.trim_start_matches(['+', '-']).len();
    let fits = rest.is_empty() || (1..=3).contains(&digits);
    (fits && rest.iter().all(|group| group.len() == 3)).then(|| groups.concat())
}

fn is_fault(negative: &str) -> bool {
    let digits = negative.trim_start_matches('-');
    let (whole, decimals) = digits.split_once('.').unwrap_or((digits, ""));
    let all = |text: &str, digit: u8| text.bytes().all(|byte| byte == digit);
    let nines = whole.len() >= 3 && all(whole, b'9');
    let plain = all(decimals, b'0') || all(decimals, b'9');
    (nines || whole == "6999" || whole == "7999") && plain
}

/// What the cells of a log say about how its numbers are written.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct MarkEvidence {
    /// A number with a mark that can only be a decimal point, and its line.
    point: Option<(u64, String)>,
    /// The same for a comma.
    comma: Option<(u64, String)>,
    /// A number such as `1,234`, which can be read in two ways.
    open_comma: Option<(u64, String)>,
    /// A number such as `1.234`.
    open_point: Option<(u64, String)>,
    /// A whole number of three digits or more.
    long_whole: bool,
}

/// Numbers that can be read in two ways.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct OpenMarks {
    pub line: u64,
    pub found: String,
    /// Both readings, as numbers with a decimal point.
    pub readings: [String; 2],
}

impl MarkEvidence {
    /// Takes a cell into account.
    pub fn see(&mut self, line: u64, cell: &str) {
        let digits = cell.trim_start_matches(['+', '-', '−']);
        if !digits.starts_with(|c: char| c.is_ascii_digit() || matches!(c, '.' | ',')) {
            return;
        }
        let mantissa = digits.split(['e', 'E']).next().unwrap_or_default();
        if !mantissa
            .bytes()
            .all(|b| b.is_ascii_digit() || b == b'.' || b == b',')
        {
            return;
        }
        let Some(last) = mantissa.rfind(['.', ',']) else {
            // Not a logger's −999.
            self.long_whole |= mantissa.len() >= 3 && digits.len() == cell.len();
            return;
        };
        let (whole, decimals) = (&mantissa[..last], &mantissa[last + 1..]);
        let is_comma = mantissa[last..].starts_with(',');
        // The mark after a leading zero, or before other than three digits, is decimal;
        // so is the last of two different ones. The same one twice is no decimal mark.
        let mark = if is_comma { ',' } else { '.' };
        let has_other = whole.contains(if is_comma { '.' } else { ',' });
        let is_repeated = whole.contains(mark);
        let is_decimal = !is_repeated
            && (has_other
                || decimals.len() != 3
                || whole.is_empty()
                || whole.starts_with('0')
                || whole.len() > 3);
        let slot = match (is_comma, is_repeated, is_decimal) {
            // 1.234.567: points between thousands, so a comma would be decimal.
            (false, true, _) => &mut self.comma,
            (true, true, _) => &mut self.point,
            (true, false, true) => &mut self.comma,
            (false, false, true) => &mut self.point,
            (true, false, false) => &mut self.open_comma,
            (false, false, false) => &mut self.open_point,
        };
        slot.get_or_insert_with(|| (line, cell.to_owned()));
    }

    /// Whether no further cell is needed to tell.
    pub fn is_enough(&self) -> bool {
        self.point.is_some() || self.comma.is_some()
    }
}

/// The decimal mark that the columns of a log have in common; `.` where there is none.
///
/// # Errors
/// [`OpenMarks`] where every number can be read in two ways.
pub fn decimal_mark(columns: &[MarkEvidence]) -> Result<char, OpenMarks> {
    let open = |(line, found): &(u64, String), mark: char| OpenMarks {
        line: *line,
        found: found.clone(),
        readings: [found.replace(mark, "."), found.replace(mark, "")],
    };
    let first_line = |of: fn(&MarkEvidence) -> &Option<(u64, String)>| {
        columns
            .iter()
            .filter_map(|column| of(column).as_ref())
            .min()
    };
    let (point, comma) = (first_line(|c| &c.point), first_line(|c| &c.comma));
    match (point, comma) {
        (Some(point), Some(comma)) => return Ok(if point.0 <= comma.0 { '.' } else { ',' }),
        (Some(_), None) => return Ok('.'),
        (None, Some(_)) => return Ok(','),
        (None, None) => {}
    }
    if let Some(comma) = first_line(|column| &column.open_comma) {
        return Err(open(comma, ','));
    }
    // 1.234 among 894 in one column: thousands, or decimals that were left off?
    let mut mixed = columns.iter().filter(|column| column.long_whole);
    match mixed.find_map(|column| column.open_point.as_ref()) {
        Some(point) => Err(open(point, '.')),
        None => Ok('.'),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn point(cell: &str) -> Cell {
        read_cell(cell, Marks::POINT)
    }

    fn comma(cell: &str, thousands: Option<char>) -> Cell {
        let decimal = ',';
        read_cell(cell, Marks { decimal, thousands })
    }

    #[test]
    fn infinity_and_overflow_are_unreadable() {
        for text in [
            "inf", "-inf", "infinity", "1e999", "1,5", "12 °C", "0x10", "1.2.3",
        ] {
            assert_eq!(point(text), Cell::Unreadable, "{text}");
        }
    }

    #[test]
    fn cold_is_no_fault() {
        assert_eq!(point("-9.9"), Cell::Number(-9.9));
        assert_eq!(point("-99"), Cell::Number(-99.0));
        assert_eq!(point("999"), Cell::Number(999.0));
        assert_eq!(point("-999.1"), Cell::Number(-999.1));
        assert_eq!(point("−5.5"), Cell::Number(-5.5));
    }

    #[test]
    fn blank_and_fault_cells_are_told_apart() {
        for text in ["", "  ", "NaN", "NA", "null", "--", "---", "#N/A"] {
            assert_eq!(point(text), Cell::Missing, "{text}");
        }
        for text in [
            "-999", "-9999", "-99999", "-999.9", "-9999.00", "-6999", "-7999", "#DIV/0!",
        ] {
            assert_eq!(point(text), Cell::Fault, "{text}");
        }
        assert_eq!(comma("-999,9", None), Cell::Fault);
    }

    #[test]
    fn a_decimal_comma_is_read_and_a_stray_point_is_not() {
        assert_eq!(comma("23,4", None), Cell::Number(23.4));
        assert_eq!(comma("2,34E+01", None), Cell::Number(23.4));
        assert_eq!(comma("894", None), Cell::Number(894.0));
        assert_eq!(comma("23.4", None), Cell::Unreadable);
        assert_eq!(comma("1.012,5", None), Cell::Unreadable);
        assert_eq!(point("1,012.5"), Cell::Unreadable);
    }

    #[test]
    fn declared_thousands_stand_in_threes() {
        assert_eq!(comma("1.012,5", Some('.')), Cell::Number(1012.5));
        assert_eq!(comma("1 012,5", Some(' ')), Cell::Number(1012.5));
        assert_eq!(comma("1.01,5", Some('.')), Cell::Unreadable);
        assert_eq!(comma("10125,5", Some('.')), Cell::Number(10125.5));
    }

    fn of_column(cells: &[&str]) -> Result<char, OpenMarks> {
        let mut evidence = MarkEvidence::default();
        for (line, cell) in cells.iter().enumerate() {
            evidence.see(line as u64, cell);
        }
        decimal_mark(&[evidence])
    }

    #[test]
    fn the_decimal_mark_is_told_by_what_cannot_be_otherwise() {
        assert_eq!(of_column(&["21", "1.012", "21.8"]), Ok('.'));
        assert_eq!(of_column(&["894,125", "21,8"]), Ok(','));
        assert_eq!(of_column(&["0,894"]), Ok(','));
        assert_eq!(of_column(&["1.012,5"]), Ok(','));
        assert_eq!(of_column(&["1,012.5"]), Ok('.'));
        assert_eq!(of_column(&["21", "894"]), Ok('.'));
        assert_eq!(of_column(&["21.125", "22.250"]), Ok('.'));
    }

    #[test]
    fn numbers_with_two_readings_are_open() {
        let open = of_column(&["21", "1,012"]).unwrap_err();
        assert_eq!(open.readings, ["1.012", "1012"]);
        assert!(of_column(&["894", "1.012"]).is_err());
    }
}
