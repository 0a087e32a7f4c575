//! How much a log may hold: as much as is allowed is read, more is refused with its place,
//! the number and a remedy. All readings are invented.

use std::fmt::Write as _;
use std::io::{Cursor, Write as _};
use std::path::Path;

use jiff::tz::TimeZone;
use simmerline::bounds::{HEADER, LOG_COLUMNS, LOG_LINE, SHEET_ROWS};
use simmerline::campaign::model::LogRules;
use simmerline::error::Error;
use simmerline::logs::read::{FileLog, read_bytes};
use simmerline::logs::request::Request;
use zip::ZipWriter;
use zip::write::SimpleFileOptions;

use crate::kit::header;
use crate::kit::heating::row_with;

fn read(bytes: &[u8]) -> Result<FileLog, Error> {
    let zone = TimeZone::UTC;
    let rules = LogRules::default();
    let request = Request::new(&rules, &zone);
    read_bytes(Path::new("a.csv"), "a.csv", bytes, &request)
}

#[track_caller]
fn refused(bytes: &[u8], parts: &[&str]) {
    let Err(error) = read(bytes) else {
        panic!("was read")
    };
    let said = error.to_string();
    assert_eq!(error.exit_code(), 3, "{said}");
    for part in ["a.csv", "hint: "].iter().chain(parts) {
        assert!(said.contains(part), "no {part:?} in {said}");
    }
}

/// A log with more columns to the right.
fn log(more_headers: &str, more_cells: &str) -> String {
    let mut log = format!("{}{more_headers}\n", header::HEADER);
    for step in 0..30 {
        let row = row_with(14, step * 120, &format!("{:.1}", 26.0 + f64::from(step)));
        writeln!(log, "{row}{more_cells}").unwrap();
    }
    log
}

#[test]
fn the_widest_log_is_read_and_one_wider_is_refused() {
    let wide = |columns: usize| {
        let more = columns - 5;
        let headers: String = (0..more).map(|n| format!(",channel {n}")).collect();
        log(&headers, &",1.5".repeat(more))
    };
    let widest = read(wide(LOG_COLUMNS.count()).as_bytes()).unwrap();
    assert_eq!(widest.readings.time_us.len(), 30);
    assert_eq!(widest.account.not_read.len(), LOG_COLUMNS.count() - 5);
    let said = "a.csv:1: found 1001 columns, expected at most 1000";
    refused(wide(LOG_COLUMNS.count() + 1).as_bytes(), &[said]);
}

#[test]
fn the_longest_header_is_read_and_a_longer_one_is_refused() {
    let long = |letters: usize| log(&format!(",{}", "x".repeat(letters)), ",1.5");
    assert!(read(long(HEADER.count()).as_bytes()).is_ok());
    let said = "a.csv:1: found 501 characters, expected at most 500, in the header of column 6";
    refused(long(HEADER.count() + 1).as_bytes(), &[said]);
}

#[test]
fn a_long_remark_and_a_long_cell_are_no_header() {
    // Each took longer than anybody waited: every cut between two words was tried.
    let words = "word ".repeat(40_000);
    let remark = format!("{words},{words}\n{}", log("", ""));
    assert_eq!(read(remark.as_bytes()).unwrap().readings.time_us.len(), 30);
    let footer = format!("{}{words},{words}\n", log("", ""));
    assert_eq!(read(footer.as_bytes()).unwrap().readings.time_us.len(), 30);
}

#[test]
fn a_line_that_does_not_end_is_refused() {
    let long = "x".repeat(2 * LOG_LINE.count());
    refused((log("", "") + &long).as_bytes(), &["a.csv:32: ", "1 MiB"]);
}

/// A sheet of which cells are given by name.
fn sheet(cells: &[(&str, &str)], rows_below: usize) -> Vec<u8> {
    let mut rows = String::new();
    for (name, value) in cells {
        let row = name.trim_start_matches(|c: char| c.is_ascii_uppercase());
        write!(
            rows,
            r#"<row r="{row}"><c r="{name}" t="str"><v>{value}</v></c></row>"#
        )
        .unwrap();
    }
    let last = 1 + rows_below;
    write!(rows, r#"<row r="{last}"><c r="A{last}"><v>1</v></c></row>"#).unwrap();
    let namespace = r#"xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main""#;
    let links = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    let relations = "http://schemas.openxmlformats.org/package/2006/relationships";
    let parts = [
        (
            "_rels/.rels",
            format!(
                r#"<Relationships xmlns="{relations}"><Relationship Id="r1" Type="{links}/officeDocument" Target="xl/workbook.xml"/></Relationships>"#
            ),
        ),
        (
            "xl/workbook.xml",
            format!(
                r#"<workbook {namespace} xmlns:r="{links}"><sheets><sheet name="S" sheetId="1" r:id="r1"/></sheets></workbook>"#
            ),
        ),
        (
            "xl/_rels/workbook.xml.rels",
            format!(
                r#"<Relationships xmlns="{relations}"><Relationship Id="r1" Type="{links}/worksheet" Target="worksheets/sheet1.xml"/></Relationships>"#
            ),
        ),
        (
            "xl/worksheets/sheet1.xml",
            format!(
                r#"<worksheet {namespace}><dimension ref="A1:XFD1048576"/><sheetData>{rows}</sheetData></worksheet>"#
            ),
        ),
    ];
    let mut writer = ZipWriter::new(Cursor::new(Vec::new()));
    for (name, text) in parts {
        writer
            .start_file(name, SimpleFileOptions::default())
            .unwrap();
        writer.write_all(text.as_bytes()).unwrap();
    }
    writer.finish().unwrap().into_inner()
}

#[test]
fn a_sheet_that_says_it_is_enormous_takes_what_it_holds() {
    // It is small, and no log.
    refused(&sheet(&[("A1", "time")], 3), &["has no header"]);
}

#[test]
fn a_cell_far_to_the_right_or_far_below_is_refused() {
    let right = sheet(&[("A1", "time"), ("ALM2", "1.5")], 3);
    refused(&right, &["found 1001 columns, expected at most 1000"]);
    let below = sheet(&[("A1", "time")], SHEET_ROWS.count());
    refused(&below, &["found 1048577 rows, expected at most 1048576"]);
}
