//! The data files: lines of numbers under a header, remarks after `#`.

/// A data file of `tests/data`.
pub struct Table {
    header: Vec<&'static str>,
    rows: Vec<Vec<&'static str>>,
}

/// One row of a data file.
pub struct Row<'t> {
    header: &'t [&'static str],
    cells: &'t [&'static str],
}

impl Table {
    /// Takes a file's text apart. No cell is quoted in these files.
    pub fn new(text: &'static str) -> Self {
        let mut lines = text
            .lines()
            .map(str::trim)
            .filter(|line| !line.is_empty() && !line.starts_with('#'))
            .map(|line| line.split(',').map(str::trim).collect::<Vec<_>>());
        let header = lines.next().expect("a data file has a header");
        let rows: Vec<Vec<&'static str>> = lines.collect();
        for row in &rows {
            assert_eq!(row.len(), header.len(), "{row:?}");
        }
        Table { header, rows }
    }

    /// The rows in order; a file cut short is noticed here.
    pub fn rows(&self, expected: usize) -> impl Iterator<Item = Row<'_>> {
        assert_eq!(self.rows.len(), expected, "rows of the data file");
        self.rows.iter().map(|cells| Row {
            header: &self.header,
            cells,
        })
    }

    /// A column of numbers.
    pub fn column(&self, name: &str, expected: usize) -> Vec<f64> {
        self.rows(expected).map(|row| row.number(name)).collect()
    }
}

impl Row<'_> {
    /// A cell as text.
    pub fn text(&self, name: &str) -> &'static str {
        let column = self.header.iter().position(|header| *header == name);
        self.cells[column.unwrap_or_else(|| panic!("no column {name}"))]
    }

    /// A cell as a number.
    pub fn number(&self, name: &str) -> f64 {
        let text = self.text(name);
        text.parse()
            .unwrap_or_else(|_| panic!("{name}: {text} is no number"))
    }
}

/// Fails unless two numbers differ by no more than a relative tolerance.
#[track_caller]
pub fn assert_relative(what: &str, found: f64, expected: f64, tolerance: f64) {
    assert_absolute(what, found, expected, tolerance * expected.abs());
}

/// Fails unless two numbers differ by no more than a tolerance in their own unit.
#[track_caller]
pub fn assert_absolute(what: &str, found: f64, expected: f64, tolerance: f64) {
    let difference = (found - expected).abs();
    assert!(
        difference <= tolerance,
        "{what}: found {found}, expected {expected}, {difference:e} apart, allowed {tolerance:e}"
    );
}
