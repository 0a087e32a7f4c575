//! How each log was read, as data: the part `provenance.logs` of `rating.json`.

use jiff::tz::TimeZone;
use serde::Serialize;

use crate::logs::account::Account;
use crate::units::rfc3339;

/// How a log was read.
#[derive(Debug, Serialize)]
pub struct LogEntry {
    log: String,
    written_in: String,
    decimal_mark: String,
    header_line: u64,
    time_column: String,
    time_format: String,
    time_example: String,
    time_zone: String,
    clock_offset_s: f64,
    columns: Vec<ColumnEntry>,
    columns_not_read: Vec<String>,
    readings: usize,
    first: String,
    last: String,
    step_s: Option<f64>,
    rows_left_out: Vec<String>,
}

/// How a column of numbers was understood.
#[derive(Debug, Serialize)]
struct ColumnEntry {
    column: String,
    quantity: String,
    found_by: String,
    unit: &'static str,
    unit_from: String,
    correction: String,
}

/// A log's entry; times in the site's zone.
pub fn log_entry(account: &Account, zone: &TimeZone) -> LogEntry {
    let columns = account.columns.iter().map(|column| ColumnEntry {
        column: column.header.clone(),
        quantity: column.quantity.to_string(),
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
