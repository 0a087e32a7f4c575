//! An invented campaign, written to a folder of its own, with one thing changed.

use std::fmt::Write as _;
use std::fs;
use std::path::PathBuf;
use std::sync::mpsc;
use std::thread;
use std::time::Duration;

use jiff::Timestamp;
use serde_json::Value;
use simmerline::error::{Error, Result};
use simmerline::procedure::Assessment;
use simmerline::procedure::intervals::Interval;
use simmerline::report::data::rating_file::RatingFile;
use simmerline::report::words::{Report, build};
use tempfile::TempDir;

pub const CAMPAIGN: &str = r#"# Invented data, made by tests/sanity/trial.rs
[campaign]
title = "Invented kettle box"
demonstration = true
[cooker]
name = "Invented kettle box"
type = "box"
intercept_area_m2 = 1.0
[site]
name = "Invented plain"
latitude_deg = -20.0
longitude_deg = 0.0
elevation_m = 100
time_zone = "+00:00"
[load]
water_kg = 7.0
[instruments.irradiance]
plane = "normal"
relative_uncertainty = 0.03
[instruments.water_temperature]
class = "thermocouple-t-1"
[instruments.ambient_temperature]
class = "thermocouple-t-1"
[instruments.water_mass]
class = "platform-scale"
"#;

pub const HEADER: &str = "time,water_c,ambient_c,irradiance_w_m2,wind_m_s";
pub const AMBIENT_C: f64 = 26.0;
/// Rows of a log, five minutes apart from 10:05 to 13:55.
pub const ROWS: u32 = 47;
pub const STEP_S: u32 = 300;
/// Intervals of ten minutes in a log.
pub const INTERVALS: usize = 23;
/// How fast the invented water follows, s.
pub const TIME_CONSTANT_S: f64 = 8600.0;

/// Water that starts at ambient and tends to 91 K above it.
pub fn fair_water_c(after_s: f64) -> f64 {
    AMBIENT_C + 91.0 * (1.0 - (-after_s / TIME_CONSTANT_S).exp())
}

/// Local clock time of a row on a day of April.
pub fn clock(day: u32, row: u32) -> String {
    let minutes = 10 * 60 + 5 + row * STEP_S / 60;
    format!(
        "2026-04-{day:02} {:02}:{:02}:00",
        minutes / 60,
        minutes % 60
    )
}

/// A log with the canonical header, from the water's course over the seconds.
pub fn log(day: u32, water_c: impl Fn(f64) -> f64) -> String {
    let mut log = format!("{HEADER}\n");
    for row in 0..ROWS {
        let (time, water_c) = (clock(day, row), water_c(f64::from(row * STEP_S)));
        writeln!(log, "{time},{water_c:.3},{AMBIENT_C},{},0.4", 880 + day).unwrap();
    }
    log
}

pub fn fair_log(day: u32) -> String {
    log(day, fair_water_c)
}

/// A log whose rows and header are changed, row by row; the header is row `None`.
pub fn changed_log(day: u32, change: impl Fn(Option<u32>, &str) -> String) -> String {
    let text = fair_log(day);
    let lines = text.lines().enumerate();
    let changed = lines.map(|(index, line)| change((index as u32).checked_sub(1), line) + "\n");
    changed.collect()
}

/// A campaign in a folder of its own.
pub struct Trial {
    pub folder: TempDir,
    pub campaign: String,
}

impl Trial {
    /// With these logs as runs `day-1.csv`, `day-2.csv`, …
    pub fn of(logs: &[String]) -> Self {
        let mut trial = Trial {
            folder: TempDir::new().unwrap(),
            campaign: CAMPAIGN.to_owned(),
        };
        for (index, log) in logs.iter().enumerate() {
            let name = format!("day-{}.csv", index + 1);
            writeln!(trial.campaign, "[[run]]\nlog = \"{name}\"").unwrap();
            fs::write(trial.path(&name), log).unwrap();
        }
        trial
    }

    /// Three fair days: the campaign conforms.
    pub fn fair() -> Self {
        Trial::of(&[14, 15, 16].map(fair_log))
    }

    /// Three fair days with the second one changed.
    pub fn with_second(log: String) -> Self {
        Trial::of(&[fair_log(14), log, fair_log(16)])
    }

    pub fn path(&self, name: &str) -> PathBuf {
        self.folder.path().join(name)
    }

    /// Replaces text that must be there in the campaign file.
    pub fn change(mut self, from: &str, to: &str) -> Self {
        assert!(self.campaign.contains(from), "{from:?} is not there");
        self.campaign = self.campaign.replacen(from, to, 1);
        self
    }

    /// Adds a table before the first run.
    pub fn with_table(self, table: &str) -> Self {
        self.change("[[run]]", &format!("{table}\n[[run]]"))
    }

    pub fn rate(&self) -> Result<Assessment> {
        fs::write(self.path("campaign.toml"), &self.campaign).unwrap();
        simmerline::assess_folder(self.folder.path())
    }

    #[track_caller]
    pub fn rated(&self) -> Assessment {
        self.rate().unwrap_or_else(|error| panic!("{error}"))
    }

    /// The message of a refusal as unreadable input.
    #[track_caller]
    pub fn refused_as_input(&self) -> String {
        let error = self.rate().expect_err("it is refused");
        assert!(matches!(error, Error::Input(_)), "{error:?}");
        error.to_string()
    }

    /// The message of a refusal as an invalid campaign file.
    #[track_caller]
    pub fn refused_as_campaign(&self) -> String {
        let error = self.rate().expect_err("it is refused");
        assert!(matches!(error, Error::Campaign(_)), "{error:?}");
        error.to_string()
    }
}

pub fn codes(assessment: &Assessment) -> Vec<&'static str> {
    let findings = assessment.conformity.findings.iter();
    findings.map(|finding| finding.code).collect()
}

/// The text of a finding, which must be there.
#[track_caller]
pub fn finding(assessment: &Assessment, code: &str) -> String {
    let mut findings = assessment.conformity.findings.iter();
    let found = findings.find(|finding| finding.code == code);
    found
        .unwrap_or_else(|| panic!("no {code} in {:?}", codes(assessment)))
        .text
        .to_string()
}

pub fn rating_json(assessment: &Assessment) -> Value {
    serde_json::from_str(&RatingFile::new(assessment).to_text().unwrap()).unwrap()
}

pub fn report(assessment: &Assessment) -> Report {
    build(
        assessment,
        &simmerline::report::Edition::plain(Timestamp::UNIX_EPOCH),
    )
}

pub fn ps50_w(assessment: &Assessment) -> f64 {
    assessment.rating.expect("there is a rating").ps50_w
}

/// Numbers of the intervals of one run, without the time.
pub fn points(assessment: &Assessment, run: usize) -> Vec<(f64, f64)> {
    let points = assessment.intervals_of(run).map(Interval::point);
    points.map(|point| point.unwrap()).collect()
}

/// The result of some work, unless it takes too long or panics.
pub fn within<T: Send + 'static>(seconds: u64, work: impl FnOnce() -> T + Send + 'static) -> T {
    let (sender, receiver) = mpsc::channel();
    thread::spawn(move || sender.send(work()).ok());
    receiver
        .recv_timeout(Duration::from_secs(seconds))
        .expect("it neither hangs nor panics")
}
