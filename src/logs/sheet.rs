//! Spreadsheets (.xlsx, .ods) to rows of text, by calamine.
//!
//! Before it is read, a spreadsheet is measured: a small file can unpack to more than
//! any memory holds.

use std::io::{self, Cursor, Read};
use std::path::Path;

use calamine::{Data, DataRef, ExcelDateTime, Ods, Reader, Xlsx};
use quick_xml::events::{BytesStart, Event};
use zip::ZipArchive;

use super::quote::quoted;
use super::shared_texts::measure_shared_texts;
use super::source::{Source, most_unpacked};
use crate::bounds::{LOG_COLUMNS, SHEET_BYTES, SHEET_CELLS, SHEET_CONTENT, SHEET_ROWS, SHEET_TEXT};
use crate::error::Problem;

/// What a cell takes besides its text, bytes.
const CELL_BYTES: u64 = 24;
/// Longest text of a cell that is kept, characters, and where in it that may end, bytes.
const LONGEST_TEXT: usize = 256;
const LOOKED_AT: usize = 8 * LONGEST_TEXT;

/// What to do about a sheet of more than a log holds.
const TOO_LARGE: &str = "delete what is no reading, and the cells far to the right and far below; or save the columns of the readings as CSV";

/// One sheet.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Sheet {
    pub name: String,
    /// From row 1 on.
    pub rows: Vec<Vec<String>>,
}

/// Reads a sheet by its name, else the first.
///
/// # Errors
/// A [`Problem`] for a file that is damaged, too large or no spreadsheet, and for a
/// sheet that is not there, with those that are.
pub fn read_sheet(path: &Path, source: Source<'_>, wanted: Option<&str>) -> Result<Sheet, Problem> {
    let damaged = |error: String| {
        Problem::at(path, format!("cannot be read as a spreadsheet ({error})"))
            .hint("copy it again, or save it as CSV")
    };
    let too_large = |what: String| Problem::at(path, what).hint(TOO_LARGE);
    let size = source.size().map_err(|error| damaged(error.to_string()))?;
    if let Some(what) = SHEET_BYTES.exceeded_by(size as usize) {
        return Err(damaged(what).hint("save the sheet as CSV"));
    }
    let mut bytes = Vec::new();
    let read = source
        .open()
        .and_then(|mut open| open.read_to_end(&mut bytes));
    read.map_err(|error| damaged(error.to_string()))?;
    let is_ods = measure(&bytes).map_err(damaged)?;
    let cells = Cursor::new(bytes.as_slice());
    if is_ods {
        let mut book: Ods<_> = Ods::new(cells).map_err(|error| damaged(error.to_string()))?;
        let name = choose(path, &book.sheet_names(), wanted)?;
        let range = book
            .worksheet_range(&name)
            .map_err(|error| damaged(error.to_string()))?;
        let (first, left) = range.start().unwrap_or_default();
        refuse_columns(left as usize + range.width()).map_err(too_large)?;
        let mut rows = vec![Vec::new(); first as usize];
        rows.extend(range.rows().map(|row| {
            let before = std::iter::repeat_n(String::new(), left as usize);
            before.chain(row.iter().map(text_of)).collect()
        }));
        return Ok(Sheet { name, rows });
    }
    let mut book: Xlsx<_> = Xlsx::new(cells).map_err(|error| damaged(error.to_string()))?;
    let name = choose(path, &book.sheet_names(), wanted)?;
    let rows = xlsx_rows(&mut book, &name).map_err(|fault| match fault {
        SheetFault::Damaged(what) => damaged(what),
        SheetFault::TooLarge(what) => too_large(what),
    })?;
    Ok(Sheet { name, rows })
}

fn choose(path: &Path, names: &[String], wanted: Option<&str>) -> Result<String, Problem> {
    let found = match wanted {
        Some(wanted) => names.iter().find(|name| name.trim() == wanted.trim()),
        None => names.first(),
    };
    found.cloned().ok_or_else(|| {
        let what = match wanted {
            Some(wanted) => format!("has no sheet \"{wanted}\"; there are: {}", quoted(names)),
            None => "has no sheet".to_owned(),
        };
        Problem::at(path, what).hint("correct sheet = \"…\" in campaign.toml")
    })
}

/// Why a sheet is not read.
enum SheetFault {
    Damaged(String),
    TooLarge(String),
}

fn refuse_columns(columns: usize) -> Result<(), String> {
    LOG_COLUMNS.exceeded_by(columns).map_or(Ok(()), Err)
}

/// The cells one by one, never the rectangle that a single cell far out would span.
fn xlsx_rows<R: io::Read + io::Seek>(
    book: &mut Xlsx<R>,
    name: &str,
) -> Result<Vec<Vec<String>>, SheetFault> {
    let damaged = |error: calamine::XlsxError| SheetFault::Damaged(error.to_string());
    let mut cells = book.worksheet_cells_reader(name).map_err(damaged)?;
    let mut rows: Vec<Vec<String>> = Vec::new();
    let (mut cells_read, mut text_read) = (0, 0);
    while let Some(cell) = cells.next_cell().map_err(damaged)? {
        let (row, column) = cell.get_position();
        let (row, column) = (row as usize, column as usize);
        let text = match cell.get_value() {
            // Thousands of cells may share one text of megabytes.
            DataRef::SharedString(text) => kept(text),
            other => text_of(&Data::from(other.clone())),
        };
        if text.is_empty() {
            continue;
        }
        refuse_columns(column + 1).map_err(SheetFault::TooLarge)?;
        if let Some(what) = SHEET_ROWS.exceeded_by(row + 1) {
            return Err(SheetFault::TooLarge(what));
        }
        cells_read += 1;
        text_read += text.len() as u64 + (column as u64) * CELL_BYTES;
        if cells_read > SHEET_CELLS.most || text_read > SHEET_TEXT.most {
            return Err(SheetFault::TooLarge(more_than_a_sheet_holds()));
        }
        if rows.len() <= row {
            rows.resize_with(row + 1, Vec::new);
        }
        if rows[row].len() <= column {
            rows[row].resize(column + 1, String::new());
        }
        rows[row][column] = text;
    }
    Ok(rows)
}

/// A cell as a logger would have written it.
fn text_of(cell: &Data) -> String {
    match cell {
        Data::DateTime(at) => time_text(at),
        Data::DurationIso(duration) => clock_of_duration(duration),
        Data::Float(value) => value.to_string(),
        Data::Int(value) => value.to_string(),
        Data::Error(error) => error.to_string(),
        Data::String(text) | Data::DateTimeIso(text) => kept(text),
        Data::Bool(value) => value.to_string(),
        Data::Empty => String::new(),
    }
}

/// Of a cell's text, what is kept: nothing that is longer is a header or a reading.
fn kept(text: &str) -> String {
    let end = text.floor_char_boundary(LOOKED_AT);
    text[..end].trim().chars().take(LONGEST_TEXT).collect()
}

/// A spreadsheet's date and time, or clock time where there is no day.
fn time_text(at: &ExcelDateTime) -> String {
    let (year, month, day, hour, minute, second, milli) = at.to_ymd_hms_milli();
    let clock = format!("{hour:02}:{minute:02}:{second:02}.{milli:03}");
    if at.as_f64() < 1.0 {
        clock
    } else {
        format!("{year:04}-{month:02}-{day:02} {clock}")
    }
}

/// `PT10H20M00S` as a clock time; itself if it is none.
fn clock_of_duration(text: &str) -> String {
    let seconds = text
        .parse::<jiff::SignedDuration>()
        .map(|span| span.as_millis());
    match seconds {
        Ok(millis) if millis >= 0 => {
            let (seconds, milli) = (millis / 1000, millis % 1000);
            let (hour, minute, second) = (seconds / 3600, seconds / 60 % 60, seconds % 60);
            format!("{hour:02}:{minute:02}:{second:02}.{milli:03}")
        }
        _ => text.to_owned(),
    }
}

/// Unpacks an archive to nowhere and counts; whether it is an OpenDocument.
fn measure(bytes: &[u8]) -> Result<bool, String> {
    let mut archive = ZipArchive::new(Cursor::new(bytes)).map_err(|error| error.to_string())?;
    let most = SHEET_CONTENT.most.min(most_unpacked(bytes.len() as u64));
    let mut unpacked = 0;
    let mut is_ods = false;
    for index in 0..archive.len() {
        let entry = archive.by_index(index).map_err(|error| error.to_string())?;
        is_ods |= entry.name().is_ok_and(|name| name == "content.xml");
        let mut limited = entry.take(most + 1 - unpacked);
        unpacked += io::copy(&mut limited, &mut io::sink()).map_err(|error| error.to_string())?;
        if unpacked > most {
            return Err("it unpacks to far more than a log of its size can hold".to_owned());
        }
    }
    measure_shared_texts(&mut archive)?;
    if is_ods {
        let mut content = String::new();
        let entry = archive
            .by_name("content.xml")
            .map_err(|error| error.to_string())?;
        let read = entry.take(most).read_to_string(&mut content);
        read.map_err(|error| error.to_string())?;
        measure_tables(&content)?;
    }
    Ok(is_ods)
}

/// Size of the rectangle that an OpenDocument's rows and columns span, which a few
/// bytes can make enormous by repetition.
fn measure_tables(content: &str) -> Result<(), String> {
    let mut reader = quick_xml::Reader::from_str(content);
    let (mut rows, mut row_repeat, mut columns) = (0_u64, 1_u64, 0_u64);
    // Rows and columns up to the last cell that holds something.
    let (mut used_rows, mut used_columns, mut is_used) = (0_u64, 0_u64, false);
    // Bytes of text, with every repetition.
    let (mut text, mut row_text, mut repeat) = (0_u64, 0_u64, 1_u64);
    loop {
        let event = reader.read_event().map_err(|error| error.to_string())?;
        match &event {
            Event::Eof => return Ok(()),
            Event::Start(tag) | Event::Empty(tag) => {
                let is_empty = matches!(event, Event::Empty(_));
                match local_name(tag) {
                    "table" if !is_empty => (rows, used_rows, used_columns) = (0, 0, 0),
                    "table-row" => {
                        row_repeat = repeated(tag, "table:number-rows-repeated");
                        (columns, is_used, row_text) = (0, false, 0);
                        if is_empty {
                            rows = rows.saturating_add(row_repeat);
                        }
                    }
                    "table-cell" | "covered-table-cell" => {
                        repeat = repeated(tag, "table:number-columns-repeated");
                        columns = columns.saturating_add(repeat);
                        let holds_value = |key: &str| key.starts_with("office:");
                        let mut keys = tag.attributes().filter_map(Result::ok);
                        if !is_empty || keys.any(|attribute| holds_value(attribute.key.0)) {
                            is_used = true;
                            used_columns = used_columns.max(columns);
                            let bytes = tag.len() as u64 + CELL_BYTES;
                            row_text = row_text.saturating_add(bytes.saturating_mul(repeat));
                        }
                    }
                    _ => {}
                }
            }
            Event::Text(inside) => {
                let bytes = (inside.len() as u64).saturating_mul(repeat);
                row_text = row_text.saturating_add(bytes);
            }
            Event::End(tag) if tag.local_name().as_ref() == "table-row" => {
                rows = rows.saturating_add(row_repeat);
                if is_used {
                    used_rows = rows;
                }
                text = text.saturating_add(row_text.saturating_mul(row_repeat));
                let cells = used_rows.saturating_mul(used_columns);
                if cells > SHEET_CELLS.most || text > SHEET_TEXT.most {
                    return Err(more_than_a_sheet_holds());
                }
            }
            _ => {}
        }
    }
}

fn more_than_a_sheet_holds() -> String {
    let (cells, bytes) = (SHEET_CELLS.most, SHEET_TEXT.most);
    format!("holds more than {cells} cells or {bytes} bytes of text")
}

fn local_name<'t>(tag: &'t BytesStart<'_>) -> &'t str {
    let name: &str = tag.name().0;
    name.rsplit(':').next().unwrap_or(name)
}

fn repeated(tag: &BytesStart<'_>, key: &str) -> u64 {
    let mut attributes = tag.attributes().filter_map(Result::ok);
    let value = attributes.find(|attribute| attribute.key.0 == key);
    let number = value.and_then(|attribute| attribute.value.parse::<u64>().ok());
    number.unwrap_or(1)
}

#[cfg(test)]
mod tests {
    use std::io::Write;

    use zip::ZipWriter;
    use zip::write::SimpleFileOptions;

    use super::*;

    fn archive(name: &str, content: &[u8]) -> Vec<u8> {
        let mut writer = ZipWriter::new(Cursor::new(Vec::new()));
        writer
            .start_file(name, SimpleFileOptions::default())
            .unwrap();
        writer.write_all(content).unwrap();
        writer.finish().unwrap().into_inner()
    }

    fn refusal(bytes: &[u8]) -> String {
        let source = Source::Bytes(bytes);
        read_sheet(Path::new("a.xlsx"), source, None)
            .unwrap_err()
            .to_string()
    }

    #[test]
    fn a_spreadsheet_that_unpacks_to_too_much_is_refused() {
        let bytes = archive("xl/workbook.xml", &vec![b' '; 80 << 20]);
        assert!(bytes.len() < 200_000);
        assert!(refusal(&bytes).contains("unpacks"));
    }

    #[test]
    fn repeated_cells_are_counted_before_they_are_made() {
        let content = r#"<office:document-content><table:table>
            <table:table-row table:number-rows-repeated="1000000">
            <table:table-cell table:number-columns-repeated="16000" office:value="1"><p>1</p></table:table-cell>
            </table:table-row></table:table></office:document-content>"#;
        assert!(refusal(&archive("content.xml", content.as_bytes())).contains("cells"));
    }

    #[test]
    fn what_is_no_spreadsheet_is_refused() {
        assert!(refusal(b"PK\x03\x04 and nothing more").contains("spreadsheet"));
        assert!(refusal(&archive("photo.png", b"no sheet")).contains("spreadsheet"));
    }

    #[test]
    fn a_time_of_day_has_no_date() {
        assert_eq!(clock_of_duration("PT10H20M05S"), "10:20:05.000");
        let at = |serial| ExcelDateTime::new(serial, calamine::ExcelDateTimeType::DateTime, false);
        // 45943.541 is 2025-10-13 12:59:02.4: calamine's documentation.
        assert_eq!(time_text(&at(45943.541)), "2025-10-13 12:59:02.400");
        assert_eq!(time_text(&at(0.5)), "12:00:00.000");
    }
}
