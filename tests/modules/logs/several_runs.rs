//! Runs and logs that are not one to one: two logs a run, several runs in a log. The
//! readings are invented, in straight lines, so that each is known beforehand.

use std::fmt::Write as _;
use std::path::Path;

use jiff::tz::TimeZone;
use simmerline::assess_folder;
use simmerline::campaign::model::LogRules;
use simmerline::error::{Error, Result};
use simmerline::logs::read::read_bytes;
use simmerline::logs::request::Request;
use simmerline::procedure::Assessment;
use tempfile::TempDir;

use crate::kit::campaign::Invented;
use crate::kit::files::write;
use crate::kit::header::HEADER;

/// Times of a log's readings, µs since 1970, in order.
pub fn log_times_us(times: &[&str], zone: &TimeZone) -> Vec<i64> {
    let rows: String = times
        .iter()
        .map(|time| format!("{time},21.5,24.5\n"))
        .collect();
    let log = format!("time,water_c,ambient_c\n{rows}");
    let rules = LogRules::default();
    let request = Request::new(&rules, zone);
    let read = read_bytes(Path::new("a.csv"), "a.csv", log.as_bytes(), &request);
    read.unwrap_or_else(|error| panic!("{error}"))
        .readings
        .time_us
        .to_vec()
}

/// Rows of one heating at 0.5 K/min from 30 °C, a reading every five minutes.
fn heating(date: &str, hour: u32, rows: u32) -> String {
    let mut text = String::new();
    for row in 0..rows {
        let minute = row * 5;
        let water_c = 30.0 + 0.5 * f64::from(minute);
        let (h, m) = (hour + minute / 60, minute % 60);
        writeln!(text, "{date} {h:02}:{m:02}:00,{water_c},25,800,0.5").unwrap();
    }
    text
}

struct Folder(TempDir);

impl Folder {
    fn new(runs: &str, files: &[(&str, String)]) -> Self {
        let folder = Folder(tempfile::tempdir().unwrap());
        let invented = Invented {
            cooker_type: "box",
            instruments: "",
            ..Invented::default()
        };
        write(folder.0.path(), "campaign.toml", invented.text(&[]) + runs);
        for (name, text) in files {
            write(folder.0.path(), name, text);
        }
        folder
    }

    fn rate(&self) -> Result<Assessment> {
        assess_folder(self.0.path())
    }

    #[track_caller]
    fn refusal(&self) -> String {
        match self.rate() {
            Err(Error::Input(problems) | Error::Campaign(problems)) => problems.to_string(),
            Err(other) => panic!("{other}"),
            Ok(_) => panic!("it is rated"),
        }
    }
}

fn log(parts: &[String]) -> String {
    format!("{HEADER}\n{}", parts.concat())
}

const SPLIT: &str = "[[run]]\nlog = \"all.csv\"\nsplit = \"daily\"\n";

#[test]
fn a_log_of_three_days_is_three_runs() {
    let days = ["2026-03-10", "2026-03-11", "2026-03-12"].map(|date| heating(date, 11, 25));
    let rated = Folder::new(SPLIT, &[("all.csv", log(&days))])
        .rate()
        .unwrap();
    let dates: Vec<String> = rated
        .tested
        .runs
        .iter()
        .map(|run| run.date.to_string())
        .collect();
    assert_eq!(dates, ["2026-03-10", "2026-03-11", "2026-03-12"]);
    assert_eq!(rated.tested.runs[1].plan.label, "all.csv 2026-03-11");
    for (run, screening) in rated.tested.runs.iter().zip(&rated.s580.screenings) {
        assert_eq!((screening.intervals, run.readings.time_us.len()), (12, 25));
    }
}

#[test]
fn the_cooling_after_the_hottest_reading_is_left_out_and_counted() {
    let mut cooling = String::new();
    for minute in [5, 15, 25, 35, 45] {
        writeln!(
            cooling,
            "2026-03-10 14:{minute:02}:00,{},25,800,0.5",
            80 - minute
        )
        .unwrap();
    }
    let text = log(&[heating("2026-03-10", 12, 25), cooling]);
    let rated = Folder::new(SPLIT, &[("all.csv", text)]).rate().unwrap();
    assert_eq!(
        rated.tested.runs[0].readings.water_c.value.last(),
        Some(&90.0)
    );
    let told: Vec<String> = rated.notices.iter().map(ToString::to_string).collect();
    assert!(
        told.iter().any(|told| told.contains("5 readings left out")),
        "{told:?}"
    );
}

#[test]
fn start_and_end_bound_each_day() {
    let days = ["2026-03-10", "2026-03-11"].map(|date| heating(date, 11, 25));
    let runs = format!("{SPLIT}start = \"11:30\"\nend = \"12:30\"\n");
    let rated = Folder::new(&runs, &[("all.csv", log(&days))])
        .rate()
        .unwrap();
    let screenings = rated.s580.screenings.iter();
    let intervals: Vec<usize> = screenings.map(|screening| screening.intervals).collect();
    assert_eq!(intervals, [6, 6]);
}

#[test]
fn a_gap_of_more_than_an_hour_parts_two_runs_of_one_day() {
    let parts = [heating("2026-03-10", 9, 19), heating("2026-03-10", 13, 19)];
    let rated = Folder::new(SPLIT, &[("all.csv", log(&parts))])
        .rate()
        .unwrap();
    let labels: Vec<&str> = rated
        .tested
        .runs
        .iter()
        .map(|run| run.plan.label.as_str())
        .collect();
    assert_eq!(labels, ["all.csv 2026-03-10 (1)", "all.csv 2026-03-10 (2)"]);
}

#[test]
fn a_log_without_heating_cannot_be_split() {
    let flat = "2026-03-10 11:00:00,30,25,800,0.5\n2026-03-10 11:10:00,31,25,800,0.5\n";
    let folder = Folder::new(SPLIT, &[("all.csv", format!("{HEADER}\n{flat}"))]);
    assert!(folder.refusal().contains("no heating was found"));
}

#[test]
fn runs_may_share_a_log_if_each_has_its_date() {
    let days = ["2026-03-10", "2026-03-11"].map(|date| heating(date, 11, 25));
    let run = |date: &str, kg: f64| {
        format!("[[run]]\nlog = \"all.csv\"\ndate = {date}\nwater_kg = {kg}\n")
    };
    let runs = run("2026-03-11", 6.0) + &run("2026-03-10", 7.0);
    let rated = Folder::new(&runs, &[("all.csv", log(&days))])
        .rate()
        .unwrap();
    let loads: Vec<(String, f64)> = rated
        .tested
        .runs
        .iter()
        .map(|run| (run.date.to_string(), run.plan.water_kg))
        .collect();
    assert_eq!(
        loads,
        [
            ("2026-03-11".to_owned(), 6.0),
            ("2026-03-10".to_owned(), 7.0)
        ]
    );
    let twice = run("2026-03-11", 6.0) + &run("2026-03-11", 6.0);
    let message = Folder::new(&twice, &[("all.csv", log(&days))]).refusal();
    assert!(message.contains("at the same time"), "{message}");
}

/// A cooker's log of time and water, and a weather log of the rest.
fn two_logs(weather_rows: &str, extra: &str) -> Folder {
    let water: String = heating("2026-03-10", 11, 25)
        .lines()
        .map(|row| row.splitn(3, ',').take(2).collect::<Vec<_>>().join(",") + "\n")
        .collect();
    let run = format!("[[run]]\nlog = \"pot.csv\"\nweather = \"mast.csv\"\n{extra}");
    let weather =
        format!("time;Temperature (°C);Solar radiation (W/m²);Wind (km/h)\n{weather_rows}");
    Folder::new(
        &run,
        &[
            ("pot.csv", format!("time,water_c\n{water}")),
            ("mast.csv", weather),
        ],
    )
}

fn weather_rows(minutes: impl Iterator<Item = u32>) -> String {
    minutes
        .map(|minute| {
            let (h, m) = (11 + minute / 60, minute % 60);
            format!("2026-03-10 {h:02}:{m:02}:00;25,5;{};3,6\n", 700 + minute)
        })
        .collect()
}

#[test]
fn each_quantity_keeps_the_readings_of_its_own_log() {
    let rated = two_logs(&weather_rows((0..=120).step_by(3)), "")
        .rate()
        .unwrap();
    let readings = &rated.tested.runs[0].readings;
    assert_eq!(readings.water_c.value.len(), 25);
    assert_eq!(readings.wind_m_s.as_ref().unwrap().value, vec![1.0; 41]);
    // From 11:00 to 11:10 the mast was read at 0, 3, 6 and 9 minutes: a straight line.
    let first = &rated.s580.intervals[0];
    assert_eq!(first.measured.irradiance.unwrap().mean, 704.5);
    assert_eq!(first.measured.ambient.unwrap().mean, 25.5);
}

#[test]
fn nothing_is_invented_across_a_hole() {
    let rows = weather_rows((0..=30).step_by(5).chain((75..=120).step_by(5)));
    let rated = two_logs(&rows, "").rate().unwrap();
    let gaps: Vec<bool> = rated
        .s580
        .intervals
        .iter()
        .map(|interval| interval.measured.irradiance.is_none())
        .collect();
    // The intervals from 11:30 on: the first has the reading at its start.
    let expected = [
        false, false, false, false, true, true, true, false, false, false, false, false,
    ];
    assert_eq!(gaps, expected);
    assert!(
        rated.s580.intervals[4]
            .reasons()
            .iter()
            .any(|reason| reason.code() == "reading-gap")
    );
}

#[test]
fn a_wrong_clock_is_put_right() {
    let late = weather_rows((2..=122).step_by(5));
    let rated = two_logs(&late, "weather_clock_offset_s = -120\n")
        .rate()
        .unwrap();
    let times = &rated.tested.runs[0]
        .readings
        .irradiance_w_m2
        .as_ref()
        .unwrap()
        .time_us;
    assert_eq!(**times, **rated.tested.runs[0].readings.time_us);
}

#[test]
fn a_weather_log_of_another_day_is_refused() {
    let rows = weather_rows((0..=120).step_by(5)).replace("2026-03-10", "2026-03-13");
    let message = two_logs(&rows, "").refusal();
    assert!(
        message.contains("no reading while the cooker's log runs"),
        "{message}"
    );
}

#[test]
fn clock_times_go_on_after_midnight() {
    let rows: String = (0..13)
        .map(|step| {
            let minute = 23 * 60 + step * 10;
            format!(
                "{:02}:{:02},{},25,800,0.5\n",
                minute / 60 % 24,
                minute % 60,
                30 + step
            )
        })
        .collect();
    let run = "[[run]]\nlog = \"night.csv\"\ndate = 2026-03-10\n";
    let rated = Folder::new(run, &[("night.csv", format!("{HEADER}\n{rows}"))])
        .rate()
        .unwrap();
    let times = &rated.tested.runs[0].readings.time_us;
    assert!(
        times
            .windows(2)
            .all(|pair| pair[1] - pair[0] == 600_000_000)
    );
    let noon = rows.replace("23:00", "11:00").replace("23:10", "10:50");
    let message = Folder::new(run, &[("night.csv", format!("{HEADER}\n{noon}"))]).refusal();
    assert!(message.contains("earlier than the row above"), "{message}");
}

#[test]
fn a_clock_of_twelve_hours_without_am_and_pm_is_refused() {
    let rows = "2026-03-10 12:40,30,25,800,0.5\n2026-03-10 12:50,31,25,800,0.5\n2026-03-10 01:00,32,25,800,0.5\n";
    let run = "[[run]]\nlog = \"noon.csv\"\n";
    let message = Folder::new(run, &[("noon.csv", format!("{HEADER}\n{rows}"))]).refusal();
    assert!(message.contains("noon.csv:4"), "{message}");
    assert!(message.contains("AM and PM"), "{message}");
}

#[test]
fn runs_that_share_a_log_weigh_its_vessels_each_by_its_own_load() {
    let rows = |date: &str| format!("{date} 11:00:00,30,50,25\n{date} 11:10:00,40,70,25\n");
    let text = format!(
        "time,A,B,ambient_c\n{}{}",
        rows("2026-03-10"),
        rows("2026-03-11")
    );
    let run = |date: &str, kg: &str| {
        format!("[[run]]\nlog = \"all.csv\"\ndate = {date}\nvessel_water_kg = {kg}\n")
    };
    let runs = "[columns]\nwater_temperature = [\"A\", \"B\"]\n".to_owned()
        + &run("2026-03-10", "[6.0, 1.0]")
        + &run("2026-03-11", "[1.0, 6.0]");
    let rated = Folder::new(&runs, &[("all.csv", text)]).rate().unwrap();
    let rises: Vec<f64> = rated
        .s580
        .intervals
        .iter()
        .map(|interval| interval.measured.water_end_c - interval.measured.water_start_c)
        .collect();
    // 10 K in A and 20 K in B, weighted 6 to 1 and 1 to 6.
    assert!((rises[0] - 80.0 / 7.0).abs() < 1e-9, "{rises:?}");
    assert!((rises[1] - 130.0 / 7.0).abs() < 1e-9, "{rises:?}");
}
