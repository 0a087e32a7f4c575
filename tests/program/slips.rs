//! Slips that people make, one row a slip: the edit to a sound campaign, and all that is said of
//! it that is not said of the sound one. What is said of honest campaigns is nothing.
//!
//! All data are invented and made here: a dish that takes up 28 % of the sunlight and loses
//! 3.1 W/K, on four days, with weather that changes as weather does.

use std::fmt::Write as _;

use serde_json::Value;

use super::bench::{Bench, Ended, HEADER};
use super::slips_table::{SLIPS, UNSUSPICIOUS};

/// 25 November 2026, after all dates of the sound campaign.
const NOW: &str = "1795600000";

/// The days of April 2026 of the sound campaign.
pub const DAYS: [u32; 4] = [5, 6, 7, 8];

/// What a person changes.
#[derive(Clone, Copy)]
pub enum Edit {
    /// Text of the campaign file, which must be there.
    Toml(&'static str, &'static str),
    /// Every row of the logs of some days.
    Rows(&'static [u32], fn(usize, &mut Row)),
    /// Text of the log of a day, which must be there.
    Text(u32, &'static str, &'static str),
    /// The log of a day again, under another name.
    Copy(u32, &'static str),
}

/// A slip, and all that is said of it: parts of each sentence, in order, with `…` between.
pub struct Slip {
    pub what: &'static str,
    pub edits: &'static [Edit],
    pub said: &'static [&'static str],
}

/// A row of a log.
#[derive(Clone)]
pub struct Row {
    pub date: String,
    /// Since midnight.
    pub clock_s: u32,
    pub water_c: f64,
    pub air_c: f64,
    pub sun_w_m2: f64,
    pub wind_m_s: f64,
    /// It is left out.
    pub is_gone: bool,
}

/// Seconds from row to row.
const STEP_S: u32 = 300;
/// Rows of a log, from 10:05 to 13:55.
const ROWS: usize = 47;

/// The rows of a day of April, stepped through the heat balance of the dish with its 7 kg.
pub fn rows(day: u32, power: f64) -> Vec<Row> {
    let mut water_c = 27.0;
    let row = |index: usize| {
        let wave = |period: usize, size: f64| size * ((index + day as usize) % period) as f64;
        let air_c = 26.0 + 0.04 * index as f64 + wave(5, 0.1);
        let sun_w_m2 = 880.0 + f64::from(day) + wave(7, 3.0);
        let row = Row {
            date: format!("2026-04-{day:02}"),
            clock_s: 10 * 3600 + 5 * 60 + index as u32 * STEP_S,
            water_c,
            air_c,
            sun_w_m2,
            wind_m_s: 0.4 + wave(4, 0.1),
            is_gone: false,
        };
        let heat_w = power * (0.28 * sun_w_m2 - 3.1 * (water_c - air_c));
        water_c += heat_w * f64::from(STEP_S) / (7.0 * 4186.0);
        row
    };
    (0..ROWS).map(row).collect()
}

impl Row {
    fn written(&self) -> String {
        let Row {
            date,
            clock_s,
            water_c,
            air_c,
            sun_w_m2,
            wind_m_s,
            ..
        } = self;
        let (hour, minute) = (clock_s / 3600, clock_s / 60 % 60);
        format!(
            "{date} {hour:02}:{minute:02}:00,{water_c:.1},{air_c:.1},{sun_w_m2:.0},{wind_m_s:.1}"
        )
    }
}

/// The sound campaign.
fn sound() -> String {
    let runs = DAYS.map(|day| format!("\n[[run]]\nlog = \"day-{day}.csv\"\n"));
    format!(
        r#"# Invented data, made by tests/program/slips.rs
[campaign]
title = "Mallee dish, bare pot"
tester = "N. Nobody (invented)"

[cooker]
name = "Mallee dish (invented)"
type = "concentrating"
intercept_area_m2 = 1.0

[site]
name = "Nowhere flats (invented)"
latitude_deg = -19.0
longitude_deg = 33.0
elevation_m = 600
time_zone = "Africa/Harare"

[load]
water_kg = 7.0

[instruments.irradiance]
plane = "normal"
{}"#,
        runs.concat()
    )
}

/// Writes the sound campaign with edits; the name of its folder is `mallee`.
fn spoilt(edits: &[Edit]) -> Bench {
    let bench = Bench::empty();
    bench.write("mallee/campaign.toml", sound());
    for day in DAYS {
        let mut rows = rows(day, 1.0);
        for edit in edits {
            if let Edit::Rows(days, change) = edit
                && days.contains(&day)
            {
                let rows = rows.iter_mut().enumerate();
                rows.for_each(|(index, row)| change(index, row));
            }
        }
        let kept = rows.iter().filter(|row| !row.is_gone);
        let mut text = format!("# Invented data\n{HEADER}\n");
        kept.for_each(|row| writeln!(text, "{}", row.written()).unwrap());
        bench.write(&format!("mallee/day-{day}.csv"), text);
    }
    for edit in edits {
        match edit {
            Edit::Toml(from, to) => {
                bench.replace("mallee/campaign.toml", from, to);
            }
            Edit::Text(day, from, to) => {
                bench.replace(&format!("mallee/day-{day}.csv"), from, to);
            }
            Edit::Copy(day, name) => {
                let text = bench.read(&format!("mallee/day-{day}.csv"));
                bench.write(&format!("mallee/{name}"), text);
            }
            Edit::Rows(..) => {}
        }
    }
    bench
}

/// Everything that `check` says of a campaign that is not a number: problems with their hints,
/// notices, findings by their codes, logs that no run names. The warning of food that stays warm
/// is left out: it follows the rating.
fn said(bench: &Bench) -> Vec<String> {
    let arguments = ["check", "mallee", "--format", "json"];
    let ended = Ended::of(bench.command(&arguments).env("SOURCE_DATE_EPOCH", NOW));
    let checked: Value =
        serde_json::from_str(&ended.out).unwrap_or_else(|_| panic!("{}", ended.err));
    let campaign = &checked["campaigns"][0];
    let list = |value: &Value| value.as_array().cloned().unwrap_or_default();
    let text = |value: &Value| value.as_str().unwrap_or_default().to_owned();
    let problems = list(&campaign["problems"]).into_iter().map(|problem| {
        let place = [
            text(&problem["file"]),
            problem["line"].to_string(),
            text(&problem["item"]),
        ];
        format!(
            "problem {}: {}; {}",
            place.join(":"),
            text(&problem["what"]),
            text(&problem["hint"])
        )
    });
    let found = &campaign["checked"];
    let notices = list(&found["notices"])
        .into_iter()
        .map(|notice| text(&notice))
        .filter(|notice| !notice.starts_with("food safety"));
    let findings = list(&found["findings"]).into_iter();
    let findings = findings.map(|one| format!("finding {}", text(&one["code"])));
    let unnamed = list(&found["unnamed_logs"]).into_iter();
    let unnamed = unnamed.map(|name| format!("unnamed {}", text(&name)));
    problems
        .chain(notices)
        .chain(findings)
        .chain(unnamed)
        .collect()
}

/// What is said of one and not of the other, in order.
fn beyond(said: Vec<String>, before: &[String]) -> Vec<String> {
    let mut before = before.to_vec();
    let new = said.into_iter().filter(|one| {
        let known = before.iter().position(|other| other == one);
        known.map(|at| before.remove(at)).is_none()
    });
    new.collect()
}

/// Whether a sentence holds all parts of a pattern, one after the other.
fn fits(sentence: &str, pattern: &str) -> bool {
    let mut rest = Some(sentence);
    for part in pattern.split('…').map(str::trim) {
        rest = rest
            .and_then(|text| text.split_once(part))
            .map(|(_, rest)| rest);
    }
    rest.is_some()
}

fn holds_exactly(said: &[String], patterns: &[&str]) -> bool {
    let pairs = said.iter().zip(patterns);
    said.len() == patterns.len() && pairs.into_iter().all(|(said, pattern)| fits(said, pattern))
}

#[test]
fn every_slip_is_said_and_nothing_else() {
    let before = said(&spoilt(&[]));
    assert!(SLIPS.len() >= 60, "{}", SLIPS.len());
    let mut wrong = String::new();
    for slip in SLIPS.iter().chain(UNSUSPICIOUS) {
        let said = beyond(said(&spoilt(slip.edits)), &before);
        if !holds_exactly(&said, slip.said) {
            writeln!(
                wrong,
                "\n{}:\n  said {said:#?}\n  not {:#?}",
                slip.what, slip.said
            )
            .unwrap();
        }
    }
    assert!(wrong.is_empty(), "{wrong}");
}

#[test]
fn of_the_sound_campaign_only_assumed_instruments_and_evaporation_are_said() {
    let said = said(&spoilt(&[]));
    assert!(
        holds_exactly(&said, &["uncertainty not stated", "finding evaporation"]),
        "{said:#?}"
    );
}

#[test]
fn what_check_says_of_a_slip_is_in_the_report_and_its_data_too() {
    let bench = spoilt(&[Edit::Toml("water_kg = 7.0", "water_kg = 15.4")]);
    let part = "if the number were pounds";
    let report = ["report", "mallee", "--format", "html"];
    let ended = Ended::of(bench.command(&report).env("SOURCE_DATE_EPOCH", NOW)).exits(0);
    assert!(ended.says(&[part]).err.contains("mallee: "));
    assert!(bench.read("reports/mallee.html").contains(part));
    let notices = bench.rating("mallee")["notices"].to_string();
    assert!(notices.contains(part), "{notices}");
}

#[test]
fn readings_in_the_future_are_told_on_the_terminal_and_not_on_paper() {
    let bench = spoilt(&[]);
    // 2 February 2026, two months before the tests.
    let early = |arguments: &[&str]| {
        Ended::of(
            bench
                .command(arguments)
                .env("SOURCE_DATE_EPOCH", "1770000000"),
        )
        .exits(0)
    };
    let report = ["report", "mallee", "--format", "html"];
    let told = "day-8.csv: its readings are of 8 April 2026, and today is 2 February 2026";
    early(&report).says(&[told]);
    early(&["check", "mallee"]).prints(&["its readings are of 8 April 2026"]);
    assert!(!bench.read("reports/mallee.html").contains("today is"));
}

#[test]
fn what_to_do_next_is_to_look_at_a_note_on_place_or_time_first() {
    let next = |edits: &[Edit]| -> String {
        let bench = spoilt(edits);
        let arguments = ["check", "mallee", "--format", "json"];
        let ended = Ended::of(bench.command(&arguments).env("SOURCE_DATE_EPOCH", NOW));
        let checked: Value = serde_json::from_str(&ended.out).unwrap();
        let next = checked["campaigns"][0]["checked"]["next"].as_str();
        next.unwrap().to_owned()
    };
    let sound = next(&[]);
    assert!(!sound.contains("look first"), "{sound}");
    let no_wind = Edit::Text(6, ",wind_m_s", ",gusts");
    let wrong_sign = Edit::Toml("longitude_deg = 33.0", "longitude_deg = -33.0");
    let of_place = next(&[wrong_sign, no_wind]);
    let look =
        "look first at the note on the site, a date or a clock, and correct what is wrong; then ";
    assert!(of_place.starts_with(look), "{of_place}");
    let wrong_year: fn(usize, &mut Row) = |_, row| row.date = "2025-04-08".to_owned();
    let of_date = next(&[Edit::Rows(&[8], wrong_year)]);
    assert_eq!(of_date, format!("{look}{sound}"));
}

/// Where a model gives irradiance, what helps weak sun is no sensor's.
#[test]
fn what_helps_weak_sun_of_a_model_speaks_of_no_sensor() {
    let wrong_sign = Edit::Toml("longitude_deg = 33.0", "longitude_deg = -33.0");
    let model = Edit::Toml("plane = \"normal\"", "estimate = \"clear-sky\"");
    let no_sensor = DAYS.map(|day| Edit::Text(day, ",irradiance_w_m2", ",dust"));
    let edits: Vec<Edit> = [wrong_sign, model].into_iter().chain(no_sensor).collect();
    let bench = spoilt(&edits);
    for day in DAYS {
        let log = format!("log = \"day-{day}.csv\"");
        let span = "cloudless = [{ from = \"10:05\", to = \"13:55\" }]";
        bench.replace("mallee/campaign.toml", &log, &format!("{log}\n{span}"));
    }
    let helps = "check latitude, longitude and time zone, from which the sun is estimated";
    let checked = bench.run(&["check", "mallee"]).exits(0).out;
    let text = checked.split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(text.contains(helps) && !text.contains("glass"), "{checked}");
    let json = bench
        .run(&["check", "mallee", "--format", "json"])
        .exits(0)
        .out;
    assert!(json.contains(helps) && !json.contains("glass"), "{json}");
}
