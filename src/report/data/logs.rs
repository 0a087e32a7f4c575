//! How each log was read, as data: the part `provenance.logs` of `rating.json`.

use jiff::tz::TimeZone;
use schemars::JsonSchema;
use serde::Serialize;

use crate::logs::account::Account;
use crate::units::rfc3339;

/// How a log was read.
#[derive(Debug, Serialize, JsonSchema)]
pub struct LogEntry {
    /// As the campaign file names it.
    log: String,
    /// Encoding and delimiter, or the sheet, in words.
    written_in: String,
    /// In words.
    decimal_mark: String,
    /// Line of the header, from 1.
    header_line: u64,
    /// Header of the time.
    time_column: String,
    /// How times are written, in words.
    time_format: String,
    /// A time of the log, as written.
    time_example: String,
    /// Zone of the times, in words.
    time_zone: String,
    /// Added to all times, s.
    clock_offset_s: f64,
    columns: Vec<ColumnEntry>,
    /// Header of the column of notes, of which those are read that say that the cooker was
    /// turned to the sun; null without one.
    notes_column: Option<String>,
    /// Headers of the columns that are not read.
    columns_not_read: Vec<String>,
    /// Number of readings.
    readings: usize,
    /// Local time of the first reading with its offset from UTC.
    #[schemars(extend("format" = "date-time"))]
    first: String,
    /// Local time of the last reading with its offset from UTC.
    #[schemars(extend("format" = "date-time"))]
    last: String,
    /// Median time from one reading to the next, s; null with a single one.
    step_s: Option<f64>,
    /// Rows that are no readings, by reason, in words.
    rows_left_out: Vec<String>,
}

/// How a column of numbers was understood.
#[derive(Debug, Serialize, JsonSchema)]
struct ColumnEntry {
    /// Its header.
    column: String,
    /// What it measures, in words.
    quantity: String,
    /// How that was found, in words.
    found_by: String,
    /// In which it was read.
    unit: &'static str,
    /// How the unit was found, in words.
    unit_from: String,
    /// What was added or multiplied, in words; empty where nothing was.
    correction: String,
}

/// A log's entry; times in the site's zone.
pub fn log_entry(account: &Account, zone: &TimeZone) -> LogEntry {
    let columns = account.columns.iter().map(|column| ColumnEntry {
        column: column.header.clone(),
        quantity: column.quantity.name().to_string(),
        found_by: column.found_by.to_string(),
        unit: column.unit,
        unit_from: column.unit_from.to_string(),
        correction: column.correction().to_string(),
    });
    LogEntry {
        log: account.log.clone(),
        written_in: account.written_in.to_string(),
        decimal_mark: account.decimal_mark.to_string(),
        header_line: account.header_line,
        time_column: account.time_header.clone(),
        time_format: account.time_format.to_string(),
        time_example: account.time_example.clone(),
        time_zone: account.time_zone.to_string(),
        clock_offset_s: account.clock_offset_s,
        columns: columns.collect(),
        notes_column: account.notes.clone(),
        columns_not_read: account.not_read.clone(),
        readings: account.readings,
        first: rfc3339(account.first_us, zone),
        last: rfc3339(account.last_us, zone),
        step_s: account.step_s,
        rows_left_out: account
            .skipped
            .describe()
            .iter()
            .map(ToString::to_string)
            .collect(),
    }
}
