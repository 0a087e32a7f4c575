//! The invented campaign as a box, in a folder of its own, with one thing changed.

use std::path::PathBuf;
use std::sync::mpsc;
use std::thread;
use std::time::Duration;

use jiff::Timestamp;
use serde_json::Value;
use simmerline::error::{Error, Result};
use simmerline::procedure::Assessment;
use simmerline::procedure::s580::intervals::Interval;
use simmerline::report::data::rating_file::RatingFile;
use simmerline::report::words::{Report, build};
use tempfile::TempDir;

use crate::kit::campaign::Invented;
use crate::kit::files::write;
pub use crate::kit::header::HEADER;
pub use crate::kit::heating::{AMBIENT_C, TIME_CONSTANT_S};
use crate::kit::heating::{row_with, water_c};

const INSTRUMENTS: &str = r#"[instruments.irradiance]
plane = "normal"
relative_uncertainty = 0.03
[instruments.water_temperature]
class = "thermocouple-t-1"
[instruments.ambient_temperature]
class = "thermocouple-t-1"
[instruments.water_mass]
class = "platform-scale"
"#;

/// Rows of a log, five minutes apart from 10:05 to 13:55.
pub const ROWS: u32 = 47;
pub const STEP_S: u32 = 300;
/// Intervals of ten minutes in a log.
pub const INTERVALS: usize = 23;

/// A log with the canonical header, from the water's course over the seconds.
pub fn log(day: u32, water_c: impl Fn(f64) -> f64) -> String {
    let rows = (0..ROWS).map(|row| {
        let after_s = row * STEP_S;
        let water = format!("{:.3}", water_c(f64::from(after_s)));
        row_with(day, after_s, &water) + "\n"
    });
    format!("{HEADER}\n{}", rows.collect::<String>())
}

pub fn fair_log(day: u32) -> String {
    log(day, water_c)
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
        let folder = TempDir::new().unwrap();
        let names: Vec<String> = (1..=logs.len()).map(|n| format!("day-{n}.csv")).collect();
        for (name, log) in names.iter().zip(logs) {
            write(folder.path(), name, log);
        }
        let invented = Invented {
            cooker_type: "box",
            time_zone: "+00:00",
            instruments: INSTRUMENTS,
            ..Invented::default()
        };
        let names: Vec<&str> = names.iter().map(String::as_str).collect();
        let campaign = invented.text(&names);
        Trial { folder, campaign }
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
        write(self.folder.path(), "campaign.toml", &self.campaign);
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
    let findings = assessment.s580.conformity.findings.iter();
    findings.map(|finding| finding.code.code()).collect()
}

/// The text of a finding, which must be there.
#[track_caller]
pub fn finding(assessment: &Assessment, code: &str) -> String {
    let mut findings = assessment.s580.conformity.findings.iter();
    let found = findings.find(|finding| finding.code.code() == code);
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
    assessment.s580.rating().expect("there is a rating").ps50_w
}

/// Numbers of the intervals of one run, without the time.
pub fn points(assessment: &Assessment, run: usize) -> Vec<(f64, f64)> {
    let points = assessment.s580.intervals_of(run).map(Interval::point);
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

/// Makes a pipe, or says that there is no way to.
#[cfg(unix)]
pub fn make_pipe(path: &std::path::Path) -> bool {
    let made = std::process::Command::new("mkfifo").arg(path).status();
    let is_made = made.is_ok_and(|status| status.success());
    if !is_made {
        eprintln!("skipped: there is no mkfifo here");
    }
    is_made
}
