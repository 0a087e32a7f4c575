//! Where in a log the header stands, and what separates its cells.

use std::collections::BTreeSet;
use std::path::Path;

use super::names::{Recognised, read_header};
use super::source::Source;
use super::table::{Row, RowFault, Rows, TextRows};
use super::text::TextEncoding;
use crate::bounds::{DECLARED_HEAD, HEAD, HEADER, HEADER_LINE, LOG_COLUMNS};
use crate::campaign::model::{Delimiter, LogRules};
use crate::error::Problem;
use crate::measure::{Kind, Unit};

/// Rows among which the header must be.
const HEADER_ROWS: usize = 300;
/// Rows after a header that must look like it, to tell.
const ROWS_BELOW: usize = 8;
/// Rows that may stand between header and readings: units, and what a logger did.
const ROWS_BETWEEN: usize = 3;

/// What the columns of a header must say together, in the points of [`understood`]: one
/// quantity, and something that may be another.
const UNDERSTOOD: usize = 3;

/// Most spaces in a time: date, clock time, AM or PM, offset.
const SPACES_OF_A_TIME: usize = 3;

/// How a log is laid out.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Layout {
    /// `None` for a spreadsheet.
    pub delimiter: Option<Delimiter>,
    /// Line of the header, from 1.
    pub header_line: u64,
    pub header: Vec<String>,
    /// Line and cells of the units under the header.
    pub units: Option<(u64, Vec<String>)>,
    /// Rows before the header, as they are shown.
    pub preamble: Vec<String>,
    /// The same, to tell whether a row is one of them.
    pub known_rows: BTreeSet<String>,
    /// The first rows under the header.
    pub first_rows: Vec<Row>,
}

/// Delimiters in the order in which they are tried.
const DELIMITERS: [Delimiter; 6] = [
    Delimiter::Comma,
    Delimiter::Semicolon,
    Delimiter::Tab,
    Delimiter::Pipe,
    Delimiter::WideSpace,
    Delimiter::Space,
];

/// Finds the layout of a text: the delimiter and the row under which most columns are
/// understood.
///
/// # Errors
/// A [`Problem`] for a log that has no header.
pub fn find_layout(
    path: &Path,
    source: Source<'_>,
    encoding: TextEncoding,
    rules: &LogRules,
) -> Result<Layout, Problem> {
    let declared: &[Delimiter] = match rules.format.delimiter {
        None => &DELIMITERS,
        Some(Delimiter::Space) => &[Delimiter::WideSpace, Delimiter::Space],
        Some(ref delimiter) => std::slice::from_ref(delimiter),
    };
    let mut best: Option<(Score, Layout)> = None;
    for &delimiter in declared {
        // Spaces stand inside cells too: they separate only what nothing else does.
        let is_space = matches!(delimiter, Delimiter::Space | Delimiter::WideSpace);
        if is_space && best.as_ref().is_some_and(|(score, _)| score.separates()) {
            break;
        }
        let mut rows = Rows::Text(Box::new(TextRows::open(path, source, encoding, delimiter)?));
        // What cannot be had further down is met again when the readings are read.
        let (head, _) = read_head(&mut rows, rules);
        let Some((score, layout)) = best_header(&head, rules, Some(delimiter)) else {
            continue;
        };
        if best.as_ref().is_none_or(|(other, _)| score > *other) {
            best = Some((score, layout));
        }
    }
    match best {
        Some((_, layout)) => within_bounds(path, layout),
        None => Err(no_header(path, source, encoding, rules)),
    }
}

/// Finds the layout of a spreadsheet's rows.
///
/// # Errors
/// A [`Problem`] for a sheet that has no header.
pub fn find_sheet_layout(
    path: &Path,
    rows: &mut Rows<'_>,
    rules: &LogRules,
) -> Result<Layout, Problem> {
    let (head, _) = read_head(rows, rules);
    match best_header(&head, rules, None) {
        Some((_, layout)) => within_bounds(path, layout),
        None => Err(
            Problem::at(path, "has no header and readings in this sheet")
                .hint("put a header above the columns, or name another sheet: sheet = \"…\""),
        ),
    }
}

/// A layout whose header is one that a logger writes.
fn within_bounds(path: &Path, layout: Layout) -> Result<Layout, Problem> {
    let refused = |what: String, hint: &str| {
        let problem = Problem::at(path, what).line(layout.header_line);
        Err(problem.hint(hint))
    };
    if let Some(what) = LOG_COLUMNS.exceeded_by(layout.header.len()) {
        let hint = "copy the columns of the readings into a log of their own";
        return refused(what, hint);
    }
    for (index, header) in layout.header.iter().enumerate() {
        if let Some(what) = HEADER.exceeded_by(header.chars().count()) {
            let what = format!("{what}, in the header of column {}", index + 1);
            return refused(what, "give the column a short name");
        }
    }
    let mut characters = layout.header.iter().flat_map(|header| header.chars());
    if characters.any(char::is_control) {
        return Err(Problem::at(path, "has a control character in its header")
            .line(layout.header_line)
            .hint("write the header anew; it may come from a damaged file"));
    }
    Ok(layout)
}

fn no_header(path: &Path, source: Source<'_>, encoding: TextEncoding, rules: &LogRules) -> Problem {
    // The text itself may be at fault; then that is what to say.
    let delimiter = rules.format.delimiter.unwrap_or(Delimiter::Comma);
    let text = TextRows::open(path, source, encoding, delimiter);
    if let Ok(rows) = text
        && let (_, Some(fault)) = read_head(&mut Rows::Text(Box::new(rows)), rules)
    {
        return fault.problem(path, Some(encoding));
    }
    if let Some(line) = rules.format.header_line {
        return Problem::at(path, "names no columns on the line that header_line says")
            .line(line)
            .hint("correct header_line under [format] in campaign.toml, or leave it out");
    }
    Problem::at(path, "has no header and readings")
        .hint("the log needs a line that names its columns, and a line for each reading, with one of comma, semicolon, tab, | or spaces between the cells; was the logger's memory read out?")
}

/// The first rows, and why there are no more of them.
fn read_head(rows: &mut Rows<'_>, rules: &LogRules) -> (Vec<Row>, Option<RowFault>) {
    let declared = rules
        .format
        .header_line
        .map_or(0, |line| line.min(HEADER_LINE.most) as usize);
    let most = HEADER_ROWS.max(declared + ROWS_BELOW);
    let most_bytes = match declared {
        0 => HEAD.count(),
        _ => DECLARED_HEAD.count(),
    };
    let mut head = Vec::new();
    let mut bytes = 0;
    let mut row = Row::default();
    while head.len() < most && (bytes <= most_bytes || head.len() <= ROWS_BELOW) {
        match rows.next(&mut row) {
            Ok(true) => {
                bytes += row.bytes();
                head.push(row.clone());
            }
            Ok(false) => break,
            Err(fault) => return (head, Some(fault)),
        }
    }
    (head, None)
}

/// How well a row does as a header; the first part that differs decides.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
struct Score {
    /// Rows below have its cells.
    has_readings: bool,
    /// Columns that are understood: two a quantity, one for what may be one.
    understood: usize,
    columns: usize,
}

impl Score {
    /// Whether readings were found that are cut into cells as the header is.
    fn separates(self) -> bool {
        self.has_readings && self.understood >= UNDERSTOOD
    }
}

fn best_header(
    head: &[Row],
    rules: &LogRules,
    delimiter: Option<Delimiter>,
) -> Option<(Score, Layout)> {
    let mut best: Option<(Score, usize)> = None;
    for (index, row) in head.iter().enumerate() {
        if let Some(line) = rules.format.header_line
            && row.line != line
        {
            continue;
        }
        let cells = header_cells(row);
        let filled = cells.iter().filter(|cell| !cell.is_empty()).count();
        let is_named = cells.iter().any(|cell| is_named(cell, rules));
        if filled < 2 || (looks_like_reading(row) && !is_named) {
            continue;
        }
        let readings = readings_below(&head[index + 1..], cells.len(), delimiter);
        let score = Score {
            has_readings: readings > 0,
            understood: {
                let cells = cells.iter().take(LOG_COLUMNS.count());
                cells.map(|cell| understood(cell, rules)).sum()
            },
            columns: filled,
        };
        // A remark is a header only if it names columns, a row of numbers never.
        let is_header = score.understood >= UNDERSTOOD
            || (!row.is_remark() && score.has_readings && !looks_like_reading(row));
        if is_header && best.is_none_or(|(other, _)| score > other) {
            best = Some((score, index));
        }
    }
    let (score, index) = best?;
    let header = header_cells(&head[index]);
    let below = &head[index + 1..];
    let units = units_below(below, header.len());
    let preamble = head[..index].iter().map(Row::shown);
    let preamble: Vec<String> = preamble.filter(|text| !text.is_empty()).collect();
    let layout = Layout {
        delimiter,
        header_line: head[index].line,
        header,
        units,
        known_rows: preamble.iter().cloned().collect(),
        preamble,
        first_rows: below.to_vec(),
    };
    Some((score, layout))
}

/// The cells of a header: without the mark of a remark and without blank ones at its end.
fn header_cells(row: &Row) -> Vec<String> {
    let cells = row.iter().take(row.filled()).enumerate();
    let mut cells: Vec<String> = cells
        .map(|(index, cell)| {
            let cell = if index == 0 && row.is_remark() && cell.len() > 1 {
                cell.trim_start_matches(['#', '%', '/', ' '])
            } else {
                cell
            };
            cell.split_whitespace().collect::<Vec<_>>().join(" ")
        })
        .collect();
    // "# time water": the mark stands in a cell of its own.
    if row.is_remark() && cells.first().is_some_and(String::is_empty) {
        cells.remove(0);
    }
    cells
}

/// Whether `[columns]` names a header.
fn is_named(header: &str, rules: &LogRules) -> bool {
    let columns = &rules.columns;
    let single = [
        &columns.ambient_temperature,
        &columns.irradiance,
        &columns.wind_speed,
    ];
    let mut named = single
        .into_iter()
        .flatten()
        .chain(&columns.time)
        .chain(columns.water_temperature.iter().flatten());
    named.any(|name| name.trim().eq_ignore_ascii_case(header))
}

/// 2 for a header that names a quantity, 1 for one that may, 0 for one that says nothing.
fn understood(header: &str, rules: &LogRules) -> usize {
    if is_named(header, rules) {
        return 2;
    }
    match read_header(header).recognised {
        Recognised::As { .. } => 2,
        // A unit alone is a row of units.
        _ if Unit::parse(header, &Kind::IN_LOGS).is_some() => 0,
        Recognised::OneOf(_) | Recognised::Other => 1,
        Recognised::Unknown => 0,
    }
}

/// Whether at least one cell is a number and few are words.
fn looks_like_reading(row: &Row) -> bool {
    let is_number = |cell: &&str| {
        let unsigned = cell.trim_start_matches(['+', '-', '−']);
        let digits = unsigned.bytes().filter(u8::is_ascii_digit).count();
        let marks = [
            b'.', b',', b':', b'-', b'/', b' ', b'T', b'Z', b'+', b'e', b'E',
        ];
        unsigned.starts_with(|c: char| c.is_ascii_digit() || c == '.' || c == ',')
            && digits * 2 > unsigned.bytes().filter(|b| !marks.contains(b)).count()
    };
    let filled = row.iter().filter(|cell| !cell.is_empty()).count();
    filled > 0 && row.iter().filter(is_number).count() * 2 >= filled
}

fn readings_below(below: &[Row], columns: usize, delimiter: Option<Delimiter>) -> usize {
    // A time with spaces in it, where spaces separate cells.
    let extra = match delimiter {
        Some(Delimiter::Space | Delimiter::WideSpace) => SPACES_OF_A_TIME,
        _ => 0,
    };
    let below = below
        .iter()
        .filter(|row| row.filled() > 0 && !row.is_remark());
    below
        .take(ROWS_BELOW)
        .filter(|row| {
            // A row of a spreadsheet ends with its last cell that holds something.
            let is_whole = row.len() >= columns || delimiter.is_none();
            let fits = is_whole && row.filled() <= columns + extra;
            fits && looks_like_reading(row)
        })
        .count()
}

/// The row of units under a header, if there is one.
fn units_below(below: &[Row], columns: usize) -> Option<(u64, Vec<String>)> {
    let mut candidates = below
        .iter()
        .filter(|row| row.filled() > 0 && !row.is_remark())
        .take(ROWS_BETWEEN)
        .take_while(|row| !looks_like_reading(row));
    let row = candidates.find(|row| {
        let bare = |cell: &str| cell.trim_matches(['(', ')', '[', ']']).to_owned();
        row.len() <= columns + 1
            && row
                .iter()
                .any(|cell| Unit::parse(&bare(cell), &Kind::IN_LOGS).is_some())
    })?;
    Some((row.line, row.iter().map(str::to_owned).collect()))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn layout_of(text: &str) -> Layout {
        let path = Path::new("a.csv");
        let source = Source::Bytes(text.as_bytes());
        let encoding = TextEncoding::detect(path, source, None).unwrap();
        find_layout(path, source, encoding, &LogRules::default()).unwrap()
    }

    #[test]
    fn the_header_is_found_under_a_preamble() {
        let layout = layout_of(
            "Logger, model invented\nSerial;0042\n\nZeit;Wasser (°C);Luft (°C)\n10:20;21,8;23,9\n",
        );
        assert_eq!(layout.delimiter, Some(Delimiter::Semicolon));
        assert_eq!((layout.header_line, layout.preamble.len()), (4, 2));
        assert_eq!(layout.header, ["Zeit", "Wasser (°C)", "Luft (°C)"]);
    }

    #[test]
    fn a_row_of_units_is_told_from_a_reading() {
        let layout = layout_of("time\twater\tambient\n\t°C\t°C\n10:20\t21.8\t23.9\n");
        assert_eq!(layout.units.unwrap().0, 2);
        let layout = layout_of("time\twater\tambient\n10:20\t21.8\t23.9\n");
        assert_eq!(layout.units, None);
    }

    #[test]
    fn spaces_inside_cells_do_not_separate() {
        let text = "time,water (°C),ambient (°C)\n2026-03-14 10:20:00,21.8,23.9\n";
        assert_eq!(layout_of(text).delimiter, Some(Delimiter::Comma));
        let text = "time   water   ambient\n2026-03-14 10:20   21.8   23.9\n";
        assert_eq!(layout_of(text).delimiter, Some(Delimiter::WideSpace));
        let text = "time water ambient\n2026-03-14T10:20 21.8 23.9\n";
        assert_eq!(layout_of(text).delimiter, Some(Delimiter::Space));
    }

    #[test]
    fn a_header_may_be_a_remark() {
        let layout = layout_of("# made by hand\n# time,water,ambient\n10:20,21.8,23.9\n");
        assert_eq!(layout.header, ["time", "water", "ambient"]);
    }
}
