//! No input takes memory out of proportion, whatever is packed into it.

use std::io::{Cursor, Write};
use std::path::Path;

use flate2::Compression;
use flate2::write::GzEncoder;
use jiff::tz::TimeZone;
use simmerline::campaign::model::LogRules;
use simmerline::logs::read::read_bytes;
use simmerline::logs::request::Request;
use zip::ZipWriter;
use zip::write::SimpleFileOptions;

use crate::kit::header::HEADER;
use crate::limits::{MIB, TEXT, within_limits};

fn gzip(bytes: &[u8]) -> Vec<u8> {
    let mut encoder = GzEncoder::new(Vec::new(), Compression::best());
    encoder.write_all(bytes).unwrap();
    encoder.finish().unwrap()
}

fn archive(files: &[(&str, &[u8])]) -> Vec<u8> {
    let mut writer = ZipWriter::new(Cursor::new(Vec::new()));
    for (name, content) in files {
        writer
            .start_file(*name, SimpleFileOptions::default())
            .unwrap();
        writer.write_all(content).unwrap();
    }
    writer.finish().unwrap().into_inner()
}

fn ods(rows: &str) -> Vec<u8> {
    let content = format!(
        r#"<?xml version="1.0"?><office:document-content xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0"><office:body><office:spreadsheet><table:table table:name="Invented">{rows}</table:table></office:spreadsheet></office:body></office:document-content>"#
    );
    let kind = b"application/vnd.oasis.opendocument.spreadsheet";
    archive(&[("mimetype", kind), ("content.xml", content.as_bytes())])
}

fn xlsx(sheet_data: &str) -> Vec<u8> {
    let types = r#"<?xml version="1.0"?><Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="xml" ContentType="application/xml"/></Types>"#;
    let relations = r#"<?xml version="1.0"?><Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/worksheet" Target="worksheets/sheet1.xml"/></Relationships>"#;
    let workbook = r#"<?xml version="1.0"?><workbook xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships"><sheets><sheet name="Invented" sheetId="1" r:id="rId1"/></sheets></workbook>"#;
    let sheet = format!(
        r#"<?xml version="1.0"?><worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData>{sheet_data}</sheetData></worksheet>"#
    );
    archive(&[
        ("[Content_Types].xml", types.as_bytes()),
        ("xl/_rels/workbook.xml.rels", relations.as_bytes()),
        ("xl/workbook.xml", workbook.as_bytes()),
        ("xl/worksheets/sheet1.xml", sheet.as_bytes()),
    ])
}

fn cell(reference: &str) -> String {
    format!(r#"<c r="{reference}" t="inlineStr"><is><t>water</t></is></c>"#)
}

#[test]
fn memory_stays_in_proportion_to_the_input() {
    let _one = crate::limits::one_at_a_time();
    let rows = "2026-03-14 10:20:00,21.8,23.9,894,0.7\n".repeat(100_000);
    let zeros = vec![b'0'; 200 * MIB];
    let filled = r#"<table:table-cell table:number-columns-repeated="16384" office:value-type="float" office:value="1"><text:p>1</text:p></table:table-cell>"#;
    let long: String = (1..5000)
        .map(|row| {
            let text = "x".repeat(20_000);
            format!(r#"<c r="A{row}" t="inlineStr"><is><t>{text}</t></is></c>"#)
        })
        .collect();
    let header = format!("{HEADER}\n");
    let inputs: Vec<(&str, Vec<u8>)> = vec![
        ("a plain log", format!("{HEADER}\n{rows}").into_bytes()),
        ("one endless line", b"1,2,".repeat(4 * MIB)),
        (
            "nothing but delimiters",
            [header.as_bytes(), &b",".repeat(8 * MIB)].concat(),
        ),
        ("nothing but quotation marks", b"\"".repeat(8 * MIB)),
        (
            "a quoted cell without end",
            [header.as_bytes(), b"\"", &b"x\n".repeat(4 * MIB)].concat(),
        ),
        ("ends of lines", b"\n".repeat(8 * MIB)),
        ("headers", header.repeat(100_000).into_bytes()),
        ("a gzip bomb", gzip(&zeros)),
        (
            "a gzip bomb of lines",
            gzip(&b"1,2,3,4,5\n".repeat(10 * MIB)),
        ),
        ("a zip bomb", archive(&[("xl/workbook.xml", &zeros)])),
        (
            "a far cell",
            xlsx(&format!(r#"<row r="1048576">{}</row>"#, cell("XFD1048576"))),
        ),
        (
            "a row that no sheet has",
            xlsx(&format!(
                r#"<row r="400000000">{}</row>"#,
                cell("A400000000")
            )),
        ),
        (
            "a row beyond 32 bits",
            xlsx(&format!(
                r#"<row r="4294967295">{}</row>"#,
                cell("A4294967296")
            )),
        ),
        (
            "a long text in many cells",
            xlsx(&format!(r#"<row r="1">{long}</row>"#)),
        ),
        (
            "a long text in repeated rows",
            ods(&format!(
                r#"<table:table-row table:number-rows-repeated="1000000"><table:table-cell><text:p>{}</text:p></table:table-cell></table:table-row>"#,
                "x".repeat(100_000)
            )),
        ),
        (
            "repeated cells",
            ods(&format!("<table:table-row>{filled}</table:table-row>").repeat(2000)),
        ),
        (
            "repeated rows",
            ods(&format!(
                r#"<table:table-row table:number-rows-repeated="1048576">{filled}</table:table-row>"#
            )),
        ),
    ];
    let zone = TimeZone::UTC;
    let rules = LogRules::default();
    for (name, bytes) in inputs {
        let request = Request::new(&rules, &zone);
        let read = within_limits(TEXT, bytes.len(), || {
            read_bytes(Path::new(name), name, &bytes, &request)
        });
        let read = read.unwrap_or_else(|reason| panic!("{name}: {reason}"));
        assert_eq!(read.is_ok(), name == "a plain log", "{name}");
    }
}
