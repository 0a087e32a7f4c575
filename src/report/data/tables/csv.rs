//! `intervals.csv`: one row an interval, used and set aside, in full precision.

use csv::Writer;

use super::columns::{Cell, Table};
use super::intervals::{interval_rows, no_intervals};
use crate::error::{Error, Result};
use crate::procedure::Assessment;
use crate::shown::in_cell;

/// A campaign's intervals as text; a null is an empty cell, and no cell of text is one that a
/// spreadsheet would run.
///
/// # Errors
/// [`Error::Internal`] if a row does not fit the header.
pub fn intervals_csv(assessment: &Assessment) -> Result<String> {
    let mut table = no_intervals();
    table.rows.extend(interval_rows(assessment));
    to_csv(&table).map_err(|error| Error::Internal(error.to_string()))
}

/// The columns of a table that are in CSV.
fn to_csv(table: &Table) -> std::result::Result<String, Box<dyn std::error::Error>> {
    let mut writer = Writer::from_writer(Vec::new());
    let headings = table.headings.iter();
    writer.write_record(
        headings
            .filter(|heading| heading.is_in_csv)
            .map(|heading| heading.name),
    )?;
    for row in &table.rows {
        let cells = table.headings.iter().zip(row);
        let shown = cells.filter(|(heading, _)| heading.is_in_csv);
        writer.write_record(shown.map(|(_, cell)| text(cell)))?;
    }
    Ok(String::from_utf8(writer.into_inner()?)?)
}

fn text(cell: &Cell) -> String {
    match cell {
        Cell::Null => String::new(),
        Cell::Text(text) => in_cell(text),
        Cell::Number(number) => number.to_string(),
        Cell::Count(count) => count.to_string(),
        Cell::Truth(truth) => truth.to_string(),
        Cell::Instant { local, .. } => local.clone(),
    }
}
