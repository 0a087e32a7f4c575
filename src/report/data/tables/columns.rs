//! What a table is made of: headings, and cells under them.

use jiff::tz::TimeZone;

use crate::procedure::Assessment;
use crate::procedure::s580::intervals::Interval;
use crate::units::rfc3339;

/// What the cells of a column are.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Kind {
    Text,
    Number,
    /// A whole number.
    Count,
    Truth,
    /// A moment in time.
    Instant,
}

/// What stands above a column, and what it means.
#[derive(Debug, Clone, Copy)]
pub struct Heading {
    /// With its unit; unique in its table.
    pub name: &'static str,
    pub kind: Kind,
    /// Empty where there is none.
    pub unit: &'static str,
    pub description: &'static str,
    /// No cell is null.
    pub is_required: bool,
    pub is_in_csv: bool,
}

impl Heading {
    /// A column without nulls, in CSV too.
    pub const fn new(name: &'static str, kind: Kind, description: &'static str) -> Self {
        Heading {
            name,
            kind,
            unit: "",
            description,
            is_required: true,
            is_in_csv: true,
        }
    }

    /// A column of numbers without nulls, in CSV too.
    pub const fn number(name: &'static str, unit: &'static str, description: &'static str) -> Self {
        let heading = Heading::new(name, Kind::Number, description);
        Heading { unit, ..heading }
    }

    /// The same, where a cell may be null.
    #[must_use]
    pub const fn or_null(self) -> Self {
        Heading {
            is_required: false,
            ..self
        }
    }

    /// The same, in no CSV.
    #[must_use]
    pub const fn not_in_csv(self) -> Self {
        Heading {
            is_in_csv: false,
            ..self
        }
    }
}

/// A column: its heading, and how a cell of it is found.
pub struct Column<F> {
    pub heading: Heading,
    pub cell: F,
}

/// How the cell of a campaign is found.
pub type OfCampaign = fn(&Assessment) -> Cell;

/// How the cell of an interval is found.
pub type OfInterval = fn(&Assessment, &Interval) -> Cell;

/// A column.
pub const fn column<F: Copy>(heading: Heading, cell: F) -> Column<F> {
    Column { heading, cell }
}

/// One value, or none: what was not measured is `Null`, never zero.
#[derive(Debug, Clone, PartialEq)]
pub enum Cell {
    Null,
    Text(String),
    Number(f64),
    Count(i64),
    Truth(bool),
    Instant {
        /// Microseconds since 1970, UTC.
        us: i64,
        /// RFC 3339 local time with its offset.
        local: String,
    },
}

impl Cell {
    /// A moment, in µs since 1970, and its local time.
    pub fn instant(us: i64, zone: &TimeZone) -> Self {
        Cell::Instant {
            us,
            local: rfc3339(us, zone),
        }
    }

    /// Codes, separated by spaces; null without any.
    pub fn codes<'c>(codes: impl Iterator<Item = &'c str>) -> Self {
        match codes.collect::<Vec<_>>().join(" ") {
            none if none.is_empty() => Cell::Null,
            codes => Cell::Text(codes),
        }
    }
}

impl From<&str> for Cell {
    fn from(text: &str) -> Self {
        Cell::Text(text.to_owned())
    }
}

impl From<&String> for Cell {
    fn from(text: &String) -> Self {
        Cell::Text(text.clone())
    }
}

impl From<String> for Cell {
    fn from(text: String) -> Self {
        Cell::Text(text)
    }
}

impl From<f64> for Cell {
    fn from(number: f64) -> Self {
        Cell::Number(number)
    }
}

impl From<usize> for Cell {
    /// No count of ours comes near the largest.
    fn from(count: usize) -> Self {
        Cell::Count(i64::try_from(count).unwrap_or(i64::MAX))
    }
}

impl From<bool> for Cell {
    fn from(truth: bool) -> Self {
        Cell::Truth(truth)
    }
}

impl<T> From<Option<T>> for Cell
where
    Cell: From<T>,
{
    fn from(value: Option<T>) -> Self {
        value.map_or(Cell::Null, Cell::from)
    }
}

/// Headings, and rows of as many cells.
pub struct Table {
    pub headings: Vec<Heading>,
    pub rows: Vec<Vec<Cell>>,
}

impl Table {
    /// A table without rows.
    pub fn new(headings: Vec<Heading>) -> Self {
        Table {
            headings,
            rows: Vec::new(),
        }
    }
}
