//! Tables of text, as wide as they may be.

use std::borrow::Cow;

use unicode_width::{UnicodeWidthChar, UnicodeWidthStr};

use super::wrap::{HANG, in_parts, plain_spaces, widest_piece};
use crate::shown::shown;

/// Fewest columns of a cell whose words are broken.
const LEAST_BROKEN: usize = 12;

/// Space between two columns.
pub const GUTTER: &str = "  ";

/// Which edge of its column a cell keeps to.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Align {
    Left,
    Right,
}

/// A table as text: its columns as wide as their widest cell, a header above a rule.
pub fn table<const N: usize>(header: [(&str, Align); N], rows: &[[String; N]]) -> String {
    table_in(None, header, rows)
}

/// Columns that a table takes with every cell on one line.
pub fn table_width<const N: usize>(header: [(&str, Align); N], rows: &[[String; N]]) -> usize {
    let rows = shown_rows(rows);
    total(&natural_widths(header, &rows))
}

/// The same table in at most `width` columns, as far as its words and numbers allow: cells that
/// keep to the left are wrapped in their columns, the widest first.
pub fn table_in<const N: usize>(
    width: Option<usize>,
    header: [(&str, Align); N],
    rows: &[[String; N]],
) -> String {
    let parts = parts_of_table(width, header, rows);
    parts.head + &parts.rule + "\n" + &parts.rows.concat()
}

/// A table in its parts.
pub struct TableParts {
    /// The lines of the header.
    pub head: String,
    /// Without its line feed.
    pub rule: String,
    /// The lines of each row.
    pub rows: Vec<String>,
}

/// The parts of [`table_in`].
pub fn parts_of_table<const N: usize>(
    width: Option<usize>,
    header: [(&str, Align); N],
    rows: &[[String; N]],
) -> TableParts {
    let rows = shown_rows(rows);
    let mut widths = natural_widths(header, &rows);
    if let Some(width) = width {
        narrow(&mut widths, width, header, &rows);
    }
    let names = header.map(|(name, _)| Cow::Borrowed(name));
    let rows = rows.into_iter();
    TableParts {
        head: row_lines(names, header, &widths),
        rule: "─".repeat(total(&widths)),
        rows: rows.map(|row| row_lines(row, header, &widths)).collect(),
    }
}

fn shown_rows<const N: usize>(rows: &[[String; N]]) -> Vec<[Cow<'_, str>; N]> {
    let rows = rows.iter();
    rows.map(|row| row.each_ref().map(|cell| shown(cell)))
        .collect()
}

fn total(widths: &[usize]) -> usize {
    widths.iter().sum::<usize>() + GUTTER.len() * widths.len().saturating_sub(1)
}

fn natural_widths<const N: usize>(
    header: [(&str, Align); N],
    rows: &[[Cow<'_, str>; N]],
) -> [usize; N] {
    std::array::from_fn(|column| {
        let cells = rows.iter().map(|row| row[column].width());
        cells.chain([header[column].0.width()]).max().unwrap_or(0)
    })
}

/// Takes columns away until the table fits: first from headers wider than all that stands below
/// them, then from the widest that can spare some.
fn narrow<const N: usize>(
    widths: &mut [usize; N],
    width: usize,
    header: [(&str, Align); N],
    rows: &[[Cow<'_, str>; N]],
) {
    let widest = |column: usize, of: fn(&str) -> usize| {
        let cells = rows.iter().map(|row| of(&row[column]));
        let cells = cells.max().unwrap_or(0);
        cells.max(widest_piece(header[column].0))
    };
    let of_cells: [usize; N] = std::array::from_fn(|column| widest(column, str::width));
    let least: [usize; N] = std::array::from_fn(|column| match header[column].1 {
        Align::Right => of_cells[column],
        Align::Left => widest(column, widest_piece) + hang_of(column),
    });
    for column in 0..N {
        let excess = total(widths).saturating_sub(width);
        let spare = widths[column] - of_cells[column];
        widths[column] -= spare.min(excess);
    }
    let broken: [usize; N] = std::array::from_fn(|column| match header[column].1 {
        Align::Right => of_cells[column],
        Align::Left => least[column].min(LEAST_BROKEN),
    });
    // Where words are too wide, as long names of files are, they are broken.
    for least in [least, broken] {
        while total(widths) > width {
            let spare = (0..N).filter(|column| widths[*column] > least[*column]);
            let Some(widest) = spare.max_by_key(|column| widths[*column]) else {
                break;
            };
            widths[widest] -= 1;
        }
    }
}

/// A part of a cell in pieces that are no wider than its column.
fn in_pieces(part: &str, width: usize, hang: usize) -> Vec<String> {
    let mut pieces = vec![String::new()];
    for character in part.chars() {
        let room = match pieces.len() {
            1 => width,
            _ => width.saturating_sub(hang),
        };
        let piece = pieces.last_mut().expect("there is one");
        if piece.width() + character.width().unwrap_or(0) > room && !piece.is_empty() {
            pieces.push(String::new());
        }
        pieces.last_mut().expect("there is one").push(character);
    }
    pieces
}

/// Indentation of the further lines of a cell: at the left edge a row begins, and nothing else.
fn hang_of(column: usize) -> usize {
    match column {
        0 => HANG,
        _ => 0,
    }
}

/// A row, of as many lines as its longest cell takes.
fn row_lines<const N: usize>(
    cells: [Cow<'_, str>; N],
    header: [(&str, Align); N],
    widths: &[usize; N],
) -> String {
    let parts: [Vec<String>; N] = std::array::from_fn(|column| {
        let (width, hang) = (widths[column], hang_of(column));
        let parts = in_parts(&cells[column], width, width.saturating_sub(hang));
        let parts = parts.iter().flat_map(|part| in_pieces(part, width, hang));
        parts.collect()
    });
    let height = parts.iter().map(Vec::len).max().unwrap_or(1);
    let mut text = String::new();
    for index in 0..height {
        let mut line = String::new();
        for column in 0..N {
            let part = parts[column].get(index).map_or("", String::as_str);
            let part = match index {
                0 => part.to_owned(),
                _ => format!("{}{part}", " ".repeat(hang_of(column))),
            };
            let gap = " ".repeat(widths[column].saturating_sub(part.width()));
            match header[column].1 {
                Align::Left => line += &format!("{part}{gap}"),
                Align::Right => line += &format!("{gap}{part}"),
            }
            line += GUTTER;
        }
        text += &plain_spaces(line.trim_end());
        text.push('\n');
    }
    text
}

/// Numbers of one column with their decimal marks below each other, all equally wide; what is
/// no number keeps to the right.
pub fn decimals_aligned(cells: &[String], decimal_mark: &str) -> Vec<String> {
    let fraction = |cell: &str| cell.find(decimal_mark).map_or(0, |at| cell[at..].width());
    let is_number = |cell: &str| cell.ends_with(|last: char| last.is_ascii_digit());
    let numbers = cells.iter().filter(|cell| is_number(cell));
    let widest = numbers.map(|cell| fraction(cell)).max().unwrap_or(0);
    let padded = cells.iter().map(|cell| match is_number(cell) {
        true => format!("{cell}{}", " ".repeat(widest - fraction(cell))),
        false => cell.clone(),
    });
    let padded: Vec<String> = padded.collect();
    let width = padded.iter().map(|cell| cell.width()).max().unwrap_or(0);
    let padded = padded.into_iter();
    padded
        .map(|cell| format!("{}{cell}", " ".repeat(width - cell.width())))
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    const HEADER: [(&str, Align); 3] = [
        ("name", Align::Left),
        ("W", Align::Right),
        ("why", Align::Left),
    ];

    fn rows() -> [[String; 3]; 2] {
        [
            ["太陽", "7", "cloud, cloud and more cloud"],
            ["pot", "120", "–"],
        ]
        .map(|row| row.map(str::to_owned))
    }

    #[test]
    fn wide_characters_keep_the_columns_straight() {
        let header = [HEADER[0], HEADER[1]];
        let rows = rows().map(|[name, power, _]| [name, power]);
        assert_eq!(
            table(header, &rows),
            "name    W\n─────────\n太陽    7\npot   120\n"
        );
        assert_eq!(table_width(header, &rows), 9);
    }

    #[test]
    fn a_table_too_wide_wraps_the_widest_cells_in_their_column() {
        assert_eq!(
            table_in(Some(24), HEADER, &rows()),
            "name    W  why\n\
             ────────────────────────\n\
             太陽    7  cloud, cloud\n           and more\n           cloud\n\
             pot   120  –\n"
        );
    }

    #[test]
    fn a_cell_at_the_left_edge_hangs() {
        let rows = [["a log of error: forged".to_owned(), "7".to_owned()]];
        let header = [HEADER[0], HEADER[1]];
        assert_eq!(
            table_in(Some(18), header, &rows),
            "name             W\n──────────────────\n\
             a log of error:  7\n  forged\n"
        );
    }

    #[test]
    fn a_name_without_spaces_is_broken_where_nothing_else_helps() {
        let rows = [["a-log-with-a-long-name.csv".to_owned(), "7".to_owned()]];
        let header = [HEADER[0], HEADER[1]];
        assert_eq!(
            table_in(Some(18), header, &rows),
            "name             W\n──────────────────\n\
             a-log-with-a-lo  7\n  ng-name.csv\n"
        );
    }

    #[test]
    fn a_header_wraps_before_a_cell_does() {
        let header = [("name", Align::Left), ("power in W", Align::Right)];
        let rows = [["two words".to_owned(), "120".to_owned()]];
        assert_eq!(
            table_in(Some(18), header, &rows),
            "name         power\n              in W\n──────────────────\ntwo words      120\n"
        );
    }

    #[test]
    fn a_cell_forges_no_row() {
        let rows = [["a\nb\u{1b}[A".to_owned()]];
        assert_eq!(
            table([("name", Align::Left)], &rows),
            "name\n────────────\na\\nb\\u{1b}[A\n"
        );
    }

    #[test]
    fn numbers_stand_with_their_decimal_marks_below_each_other() {
        let cells = ["131", "5.25", "–", "64.5"].map(str::to_owned);
        assert_eq!(
            decimals_aligned(&cells, "."),
            ["131   ", "  5.25", "     –", " 64.5 "]
        );
    }
}
