//! Whatever the bytes, nothing panics.

use std::cell::RefCell;
use std::fmt::Debug;
use std::path::Path;

use jiff::Timestamp;
use proptest::collection::vec;
use proptest::prelude::*;
use proptest::sample::{Index, select};
use proptest::test_runner::TestCaseResult;
use simmerline::campaign::{Campaign, Reach, read_campaign};
use simmerline::error::Error;
use simmerline::logs::Log;
use simmerline::logs::read::read_bytes;
use simmerline::logs::request::Request;
use simmerline::procedure::s580::own_limits::check_own_limits;
use simmerline::procedure::{Assessment, assess};
use simmerline::report::data::rating_file::RatingFile;
use simmerline::report::data::tables::intervals_csv;
use simmerline::report::s580::figures::{power_line, residuals, run_axes, run_day};
use simmerline::report::words;
use tempfile::TempDir;

use crate::pipeline::finite::*;
use crate::pipeline::made::*;

/// Everything that is made of a result, short of typesetting: must not panic, and must
/// hold no number that is none.
fn write_out(rated: &Assessment) -> TestCaseResult {
    let fail = |error: Error| TestCaseError::fail(error.to_string());
    let file = RatingFile::new(rated);
    prop_assert_eq!(non_finite(&file), None);
    file.to_text().map_err(fail)?;
    intervals_csv(rated).map_err(fail)?;
    words::build(
        rated,
        &simmerline::report::Edition::plain(Timestamp::UNIX_EPOCH),
    );
    Ok(())
}

fn draw(rated: &Assessment) -> TestCaseResult {
    let fail = |error: Error| TestCaseError::fail(error.to_string());
    power_line::draw_power_line(
        rated,
        &simmerline::report::figures::style::Canvas::page(simmerline::language::Words::english()),
        power_line::HEIGHTS_PT[2],
    )
    .map_err(fail)?;
    if let Some(sure) = rated.s580.uncertainty() {
        residuals::draw_residuals(
            rated,
            sure,
            &simmerline::report::figures::style::Canvas::page(
                simmerline::language::Words::english(),
            ),
        )
        .map_err(fail)?;
    }
    let canvas =
        simmerline::report::figures::style::Canvas::page(simmerline::language::Words::english());
    let axes = run_axes::RunAxes::of(rated, canvas.words);
    for index in 0..rated.tested.runs.len() {
        run_day::draw_run(rated, index, &axes, &canvas).map_err(fail)?;
    }
    Ok(())
}

/// A campaign with one run, checked, and the folder that it stands in.
fn checked_campaign() -> (TempDir, Campaign) {
    let folder = tempfile::tempdir().unwrap();
    write(folder.path(), "day-1.csv", log_with_irradiance("800"));
    write(
        folder.path(),
        "campaign.toml",
        campaign_text(3.5, &["day-1.csv"]),
    );
    let campaign = read_campaign(folder.path(), Reach::Inside, check_own_limits).unwrap();
    (folder, campaign)
}

/// Reads bytes as the log of a campaign, and rates and writes out what can be read.
/// Whether it could be read.
fn rate_bytes(campaign: &Campaign, bytes: &[u8]) -> std::result::Result<bool, TestCaseError> {
    let request = Request::new(&campaign.runs[0].rules, &campaign.site.time_zone);
    let read = read_bytes(Path::new("day-1.csv"), "day-1.csv", bytes, &request);
    match read {
        Ok(log) => {
            let log = Log {
                inputs: vec![log.file],
                readings: log.readings,
                accounts: vec![log.account],
                notices: log.notices,
            };
            let rated = assess(campaign.clone(), vec![log]);
            let rated = rated.map_err(|error| TestCaseError::fail(error.to_string()))?;
            write_out(&rated)?;
            draw(&rated)?;
            Ok(true)
        }
        Err(Error::Input(problems)) => {
            prop_assert!(!problems.is_empty());
            Ok(false)
        }
        Err(other) => Err(TestCaseError::fail(format!(
            "not a problem of input: {other}"
        ))),
    }
}

/// Text of a few characters that mean something to a reader, and a few that do not.
fn text_of(alphabet: &'static str, longest: usize) -> impl Strategy<Value = String> {
    let characters: Vec<char> = alphabet.chars().collect();
    vec(select(characters), 0..longest).prop_map(|characters| characters.into_iter().collect())
}

/// Damage done to a file.
#[derive(Debug, Clone)]
enum Damage {
    Cut(Index, Index),
    Double(Index, Index),
    Flip(Index, u8),
    ReplaceNumber(Index, &'static str),
    ReplaceLine(Index, Index),
    Insert(Index, &'static str),
}

/// Words in place of a number: some that are none, some that make no sense, some that may.
const WORDS: [&str; 36] = [
    "nan",
    "NaN",
    "inf",
    "-inf",
    "+inf",
    "1e308",
    "-1e308",
    "1e-320",
    "1e999",
    "0",
    "-0.0",
    "-1",
    "1",
    "2.5",
    "12",
    "45.5",
    "90.5",
    "360",
    "1000",
    "1e-9",
    "-999",
    "-9999",
    "99999999999999999999",
    "9223372036854775807",
    "1_000",
    "0x7f",
    "",
    "\"text\"",
    "[]",
    "true",
    "2026-13-45",
    "1979-05-27T07:32:00Z",
    "10:24",
    "24:00",
    "é",
    "1,5",
];

fn damage() -> impl Strategy<Value = Damage> {
    let (at, other) = (any::<Index>, any::<Index>);
    prop_oneof![
        1 => (at(), other()).prop_map(|(from, to)| Damage::Cut(from, to)),
        1 => (at(), other()).prop_map(|(from, to)| Damage::Double(from, to)),
        2 => (at(), 1..=255_u8).prop_map(|(at, bits)| Damage::Flip(at, bits)),
        12 => (at(), select(&WORDS[..])).prop_map(|(at, word)| Damage::ReplaceNumber(at, word)),
        2 => (at(), other()).prop_map(|(at, by)| Damage::ReplaceLine(at, by)),
        1 => (at(), select(&WORDS[..])).prop_map(|(at, word)| Damage::Insert(at, word)),
    ]
}

/// Where the numbers of a text stand: runs of digits with points.
fn numbers(text: &[u8]) -> Vec<std::ops::Range<usize>> {
    let mut found: Vec<std::ops::Range<usize>> = Vec::new();
    for (at, byte) in text.iter().enumerate() {
        if !byte.is_ascii_digit() && *byte != b'.' {
            continue;
        }
        match found.last_mut() {
            Some(last) if last.end == at => last.end = at + 1,
            _ => found.push(at..at + 1),
        }
    }
    found
}

fn ordered(one: Index, other: Index, length: usize) -> std::ops::Range<usize> {
    let (one, other) = (one.index(length), other.index(length));
    // At most 40 bytes, so that something is left.
    one.min(other)..one.max(other).min(one.min(other) + 40)
}

impl Damage {
    fn apply(&self, mut text: Vec<u8>) -> Vec<u8> {
        let length = text.len() + 1;
        match self {
            Damage::Cut(from, to) => {
                text.drain(ordered(*from, *to, length));
            }
            Damage::Double(from, to) => {
                let range = ordered(*from, *to, length);
                let part = text[range.clone()].to_vec();
                text.splice(range.end..range.end, part);
            }
            Damage::Flip(at, bits) => {
                if !text.is_empty() {
                    let at = at.index(text.len());
                    text[at] ^= bits;
                }
            }
            Damage::ReplaceNumber(which, word) => {
                let numbers = numbers(&text);
                if !numbers.is_empty() {
                    let range = numbers[which.index(numbers.len())].clone();
                    text.splice(range, word.bytes());
                }
            }
            Damage::ReplaceLine(which, by) => {
                let lines: Vec<&[u8]> = text.split(|byte| *byte == b'\n').collect();
                let mut other = lines.clone();
                other[which.index(lines.len())] = lines[by.index(lines.len())];
                text = other.join(&b'\n');
            }
            Damage::Insert(at, word) => {
                let at = at.index(length);
                text.splice(at..at, word.bytes());
            }
        }
        text
    }
}

fn damaged(text: &str, most: usize) -> impl Strategy<Value = Vec<u8>> + use<> {
    let text = text.as_bytes().to_vec();
    vec(damage(), 1..=most).prop_map(move |damages| {
        let damages = damages.iter();
        damages.fold(text.clone(), |text, damage| damage.apply(text))
    })
}

#[test]
fn arbitrary_bytes_as_a_log_never_panic() {
    let (_folder, campaign) = checked_campaign();
    check(1000, vec(any::<u8>(), 0..300), |bytes| {
        rate_bytes(&campaign, &bytes).map(drop)
    });
}

#[test]
fn arbitrary_text_under_a_log_header_never_panics() {
    let (_folder, campaign) = checked_campaign();
    let rows = text_of("0123456789-:T. ,,,,\n\n\n\r\"#eEnaifZ+°\u{feff}\0;", 200);
    check(1000, rows, |rows| {
        rate_bytes(&campaign, format!("{HEADER}\n{rows}").as_bytes()).map(drop)
    });
}

#[test]
fn damaged_log_never_panics_and_is_rated_where_it_can_be_read() {
    let (_folder, campaign) = checked_campaign();
    let log = log_with_irradiance("800").replacen("800", "790.5", 7);
    let readable = RefCell::new(0);
    check(1200, damaged(&log, 2), |bytes| {
        *readable.borrow_mut() += u32::from(rate_bytes(&campaign, &bytes)?);
        Ok(())
    });
    // Enough damaged logs get through to the rating, and enough do not.
    let readable = readable.into_inner();
    assert!(
        (120..1080).contains(&readable),
        "{readable} of 1200 readable"
    );
}

/// A campaign file with every table.
const EVERY_TABLE: &str = r#"
[campaign]
title = "Invented panel"
demonstration = true
procedure = "S580.1"
tester = "A. Sample (invented)"
client = "Invented project"
report_number = "DEMO-9"
notes = "Invented."
[cooker]
name = "Invented panel"
type = "panel"
cost = 20.5
currency = "EUR"
mass_kg = 3.2
[cooker.aperture]
shape = "outline"
points_m = [[0.0, 0.0], [0.7, 0.0], [0.8, 0.7], [0.0, 0.7]]
incidence_deg = 5
[site]
name = "Invented terrace"
latitude_deg = -16.4
longitude_deg = -71.5
elevation_m = 2335
pressure_hpa = 765.5
time_zone = "-05:00"
[load]
water_kg = 3.5
vessels = 2
[instruments.irradiance]
plane = "normal"
relative_uncertainty = 0.03
id = "I-1"
[instruments.water_temperature]
uncertainty_k = 0.5
[instruments.ambient_temperature]
uncertainty_k = 0.5
[instruments.water_mass]
relative_uncertainty = 0.005
[instruments.wind_speed]
uncertainty_m_s = 0.2
[columns]
time = "time"
water_temperature = ["water_c"]
ambient_temperature = "ambient_c"
irradiance = "irradiance_w_m2"
wind_speed = "wind_m_s"
[limits]
water_min_c = 36
water_max_c = 90
ambient_min_c = 15
ambient_max_c = 40
irradiance_min_w_m2 = 0
irradiance_max_w_m2 = 1200
irradiance_range_w_m2 = 1000
wind_mean_max_m_s = 2
wind_gust_m_s = 3
solar_time_start_h = 9
solar_time_end_h = 15
[[run]]
log = "day-1.csv"
water_kg = 3.45
tracking_interval_min = 20
date = 2026-03-14
start = "10:25"
end = "2026-03-14 12:10"
[[run.exclude]]
from = "10:50"
to = "11:00"
reason = "lid lifted"
[[run]]
log = "day-2.csv"
"#;

/// A folder with two readable logs, for campaign files to come.
fn folder_of_logs() -> TempDir {
    let folder = tempfile::tempdir().unwrap();
    let log = log_with_irradiance("800");
    write(
        folder.path(),
        "day-2.csv",
        log.replace("2026-03-14", "2026-03-15"),
    );
    write(folder.path(), "day-1.csv", log);
    folder
}

/// Rates a folder whose campaign file holds these bytes. Whether it could be read.
fn rate_campaign_file(folder: &TempDir, bytes: &[u8]) -> std::result::Result<bool, TestCaseError> {
    write(folder.path(), "campaign.toml", bytes);
    match simmerline::assess_folder(folder.path()) {
        Ok(rated) => {
            write_out(&rated)?;
            draw(&rated)?;
            Ok(true)
        }
        Err(Error::Campaign(problems) | Error::Input(problems)) => {
            prop_assert!(!problems.is_empty());
            Ok(false)
        }
        Err(other) => Err(TestCaseError::fail(format!(
            "not a problem of input: {other}"
        ))),
    }
}

#[test]
fn campaign_file_with_every_table_is_rated() {
    // The starting point of the damage below is sound.
    let rated = rate_campaign_file(&folder_of_logs(), EVERY_TABLE.as_bytes());
    assert!(rated.unwrap());
}

#[test]
fn arbitrary_bytes_as_a_campaign_file_never_panic() {
    let folder = folder_of_logs();
    check(600, vec(any::<u8>(), 0..200), |bytes| {
        rate_campaign_file(&folder, &bytes).map(drop)
    });
}

#[test]
fn arbitrary_text_as_a_campaign_file_never_panics() {
    let folder = folder_of_logs();
    let text = text_of(
        "[[]]\n\n\n=== \"\"\"'#.,{}0123456789-:Tabcdeimnrstux_°\u{feff}",
        120,
    );
    check(600, text, |text| {
        rate_campaign_file(&folder, text.as_bytes()).map(drop)
    });
}

#[test]
fn damaged_campaign_file_never_panics_and_is_rated_where_it_can_be_read() {
    let folder = folder_of_logs();
    let readable = RefCell::new(0);
    check(1500, damaged(EVERY_TABLE, 1), |bytes| {
        *readable.borrow_mut() += u32::from(rate_campaign_file(&folder, &bytes)?);
        Ok(())
    });
    let readable = readable.into_inner();
    assert!(
        (150..1350).contains(&readable),
        "{readable} of 1500 readable"
    );
}

#[test]
fn picture_that_cannot_be_decoded_is_no_fault_of_ours() {
    // The first bytes of a JPEG and nothing after them.
    let folder = folder_of_logs();
    let photo = "type = \"panel\"\nphoto = \"cooker.jpg\"";
    let text = campaign_text(3.5, &["day-1.csv"]).replace("type = \"panel\"", photo);
    write(folder.path(), "campaign.toml", text);
    write(folder.path(), "cooker.jpg", b"\xff\xd8\xff\xe0 cut short");
    let outputs = simmerline::assess_folder(folder.path()).and_then(|rated| {
        simmerline::report::outputs(
            &rated,
            &simmerline::report::Edition::plain(Timestamp::UNIX_EPOCH),
        )
    });
    match outputs {
        Ok(_) | Err(Error::Campaign(_)) => {}
        Err(other) => panic!("{other}"),
    }
}
