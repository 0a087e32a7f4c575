//! RFC 4180 (October 2005), section 2, "Definition of the CSV Format": the examples of
//! its seven rules, as this log reader takes them apart.

use std::path::Path;

use simmerline::campaign::model::Delimiter;
use simmerline::logs::source::Source;
use simmerline::logs::table::{Row, Rows, TextRows};
use simmerline::logs::text::TextEncoding;

fn rows(text: &str) -> Vec<Vec<String>> {
    let path = Path::new("example.csv");
    let source = Source::Bytes(text.as_bytes());
    let encoding = TextEncoding::detect(path, source, None).unwrap();
    let text = TextRows::open(path, source, encoding, Delimiter::Comma).unwrap();
    let mut rows = Rows::Text(Box::new(text));
    let (mut row, mut read) = (Row::default(), Vec::new());
    while rows.next(&mut row).unwrap() {
        read.push(row.iter().map(str::to_owned).collect());
    }
    read
}

const TWO_ROWS: [[&str; 3]; 2] = [["aaa", "bbb", "ccc"], ["zzz", "yyy", "xxx"]];

#[test]
fn rules_1_and_2_records_end_with_crlf_and_the_last_may_not() {
    assert_eq!(rows("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n"), TWO_ROWS);
    assert_eq!(rows("aaa,bbb,ccc\r\nzzz,yyy,xxx"), TWO_ROWS);
}

#[test]
fn rule_3_a_header_is_a_record_like_the_others() {
    let with_header = rows("field_name,field_name,field_name\r\naaa,bbb,ccc\r\nzzz,yyy,xxx\r\n");
    assert_eq!(with_header[0], ["field_name", "field_name", "field_name"]);
    assert_eq!(with_header[1..], TWO_ROWS);
}

#[test]
fn rule_5_fields_may_be_quoted() {
    assert_eq!(rows("\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx"), TWO_ROWS);
}

#[test]
fn rule_6_a_quoted_field_holds_line_breaks_quotes_and_commas() {
    let read = rows("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx");
    // Line breaks are all one to this reader: LF.
    assert_eq!(read, [["aaa", "b\nbb", "ccc"], ["zzz", "yyy", "xxx"]]);
    assert_eq!(rows("\"a,b\",c"), [["a,b", "c"]]);
}

#[test]
fn rule_7_a_quote_in_a_field_is_written_twice() {
    assert_eq!(
        rows("\"aaa\",\"b\"\"bb\",\"ccc\""),
        [["aaa", "b\"bb", "ccc"]]
    );
}

#[test]
fn rule_4_spaces_belong_to_a_field() {
    // DIFFERENCE: spaces around a cell are taken off; no reading needs them.
    assert_eq!(rows("aaa, b bb ,ccc"), [["aaa", "b bb", "ccc"]]);
}
