//! A test day that is watched: its files, and a clock that goes as the test wants.

use std::fs::{self, OpenOptions};
use std::io::Write;
use std::path::PathBuf;
use std::time::Duration;

use simmerline::campaign::Reach;
use simmerline::watch::{Look, Now, State, Watcher};
use tempfile::TempDir;

use crate::kit::campaign::Invented;
use crate::kit::files::write;
use crate::kit::header::HEADER;
use crate::kit::heating::{row_with, water_c};

/// Between two rows, s.
pub const STEP_S: u32 = 10;
/// 10:05 on 15 April 2026, when the second heating starts, seconds since 1970.
const START_S: i64 = 1_776_247_500;

/// One row of the second day.
pub fn row(after_s: u32) -> String {
    row_with(15, after_s, &format!("{:.2}", water_c(f64::from(after_s)))) + "\n"
}

/// Rows of the second day, from one time after its start to before another, s.
pub fn rows(from_s: u32, to_s: u32) -> String {
    (from_s..to_s).step_by(STEP_S as usize).map(row).collect()
}

/// The campaign `mallee`, of two days: the first is over, the second is watched.
pub struct Day {
    pub root: TempDir,
    watcher: Option<Watcher>,
    ran_s: f64,
    start_s: i64,
}

impl Day {
    /// Not watched yet; the second day's log ends before a time after its start, s.
    pub fn until(after_s: u32) -> Self {
        let root = TempDir::new().unwrap();
        let first = (0..=46).map(|step| {
            let after_s = step * 300;
            row_with(14, after_s, &format!("{:.2}", water_c(f64::from(after_s)))) + "\n"
        });
        let text = Invented::default().text(&["day-1.csv", "day-2.csv"]);
        write(root.path(), "mallee/campaign.toml", text);
        write(
            root.path(),
            "mallee/day-1.csv",
            format!("{HEADER}\n{}", first.collect::<String>()),
        );
        let day = Day {
            root,
            watcher: None,
            ran_s: 0.0,
            start_s: START_S + i64::from(after_s),
        };
        day.write("day-2.csv", &format!("{HEADER}\n{}", rows(0, after_s)));
        day
    }

    /// The same, watched from then on.
    pub fn watched(after_s: u32) -> Self {
        let mut day = Day::until(after_s);
        day.start();
        day
    }

    pub fn start(&mut self) {
        let watcher = Watcher::start(&self.folder(), Reach::Inside, self.now());
        self.watcher = Some(watcher.unwrap());
    }

    /// The same, so many days after the test.
    pub fn start_days_later(&mut self, days: i64) {
        self.start_s += days * 86_400;
        self.start();
    }

    pub fn folder(&self) -> PathBuf {
        self.root.path().join("mallee")
    }

    pub fn path(&self, name: &str) -> PathBuf {
        self.folder().join(name)
    }

    pub fn write(&self, name: &str, text: &str) {
        write(&self.folder(), name, text);
    }

    pub fn append(&self, text: &str) {
        let mut log = OpenOptions::new();
        let mut log = log.append(true).open(self.path("day-2.csv")).unwrap();
        log.write_all(text.as_bytes()).unwrap();
    }

    pub fn rename(&self, from: &str, to: &str) {
        fs::rename(self.path(from), self.path(to)).unwrap();
    }

    fn now(&self) -> Now {
        Now {
            wall_us: self.start_s * 1_000_000 + (self.ran_s * 1e6) as i64,
            ran: Duration::from_secs_f64(self.ran_s),
        }
    }

    /// A look so many seconds later.
    pub fn look(&mut self, later_s: f64) -> Look {
        self.ran_s += later_s;
        let now = self.now();
        self.watcher.as_mut().unwrap().look(now)
    }

    /// A look so much later that everything is read again that may have changed.
    pub fn look_much_later(&mut self) -> Look {
        self.look(400.0)
    }

    pub fn state(&mut self) -> State<'_> {
        let now = self.now();
        self.watcher.as_mut().unwrap().state(now)
    }

    /// Time of the newest reading, s after the start of the second heating.
    pub fn newest_s(&mut self) -> i64 {
        self.state().newest.unwrap().time_us / 1_000_000 - START_S
    }

    /// Up to which reading all was assessed, s after the start of the second heating.
    pub fn assessed_s(&mut self) -> i64 {
        self.state().assessed_to_us.unwrap() / 1_000_000 - START_S
    }

    /// What is not as it should be, by its kind.
    pub fn troubles(&mut self) -> Vec<&'static str> {
        let state = self.state();
        let kinds = state.troubles.iter().map(|trouble| trouble.kind());
        kinds.collect()
    }
}
