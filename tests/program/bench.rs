//! A folder of invented campaigns for each test, and the program run inside it.

use std::fs;
use std::path::{Path, PathBuf};

use assert_cmd::Command;
use assert_cmd::cargo::cargo_bin_cmd;
use serde_json::Value;
use tempfile::TempDir;

use crate::kit::campaign::Invented;
use crate::kit::files;
pub use crate::kit::header::HEADER;
use crate::kit::heating::row_with;
pub use crate::kit::heating::{AMBIENT_C, water_c};

/// The campaign that each test spoils in one way: three clear days, and it conforms.
pub fn campaign() -> String {
    Invented::default().text(&["day-1.csv", "day-2.csv", "day-3.csv"])
}

/// Written by `report` for the campaign `mallee`.
pub const OUTPUTS: [&str; 4] = [
    "mallee.intervals.csv",
    "mallee.made.json",
    "mallee.pdf",
    "mallee.rating.json",
];

/// One row of a heating, with the water to a tenth.
pub fn row(day: u32, after_s: u32) -> String {
    row_with(day, after_s, &format!("{:.1}", water_c(f64::from(after_s))))
}

/// A heating of 230 minutes, a row every five.
pub fn heating(day: u32) -> String {
    let rows = (0..=46).map(|step| row(day, step * 300) + "\n");
    format!("# Invented data\n{HEADER}\n{}", rows.collect::<String>())
}

/// A folder of its own for each test; the program runs inside it.
pub struct Bench {
    pub root: TempDir,
}

/// What a finished program leaves.
pub struct Ended {
    pub code: i32,
    pub out: String,
    pub err: String,
}

impl Bench {
    pub fn empty() -> Self {
        Bench {
            root: TempDir::new().unwrap(),
        }
    }

    /// Holds the campaign `mallee`.
    pub fn new() -> Self {
        let bench = Bench::empty();
        bench.add_campaign("mallee");
        bench
    }

    pub fn add_campaign(&self, folder: &str) {
        self.write(&format!("{folder}/campaign.toml"), campaign());
        for day in 1..=3 {
            self.write(&format!("{folder}/day-{day}.csv"), heating(13 + day));
        }
    }

    pub fn path(&self, name: &str) -> PathBuf {
        self.root.path().join(name)
    }

    pub fn read(&self, name: &str) -> String {
        fs::read_to_string(self.path(name)).unwrap()
    }

    /// Text of a PDF, without its spaces.
    pub fn pdf_text(&self, name: &str) -> String {
        let pdf = lopdf::Document::load(self.path(name)).unwrap();
        let pages: Vec<u32> = pdf.get_pages().into_keys().collect();
        let text = pdf.extract_text(&pages).unwrap();
        text.split_whitespace().collect()
    }

    pub fn write(&self, name: &str, content: impl AsRef<[u8]>) {
        files::write(self.root.path(), name, content);
    }

    /// Replaces text that must be there; the number of the last new line.
    pub fn replace(&self, name: &str, from: &str, to: &str) -> usize {
        files::replace(self.root.path(), name, from, to)
    }

    /// Changes every line of a file; `None` takes it out.
    pub fn change_lines(&self, name: &str, change: impl Fn(usize, &str) -> Option<String>) {
        let text = self.read(name);
        let lines = text.lines().enumerate();
        let changed = lines.filter_map(|(index, line)| change(index + 1, line));
        let text: String = changed.map(|line| line + "\n").collect();
        self.write(name, text);
    }

    /// Changes every line of every log that is neither remark nor header.
    pub fn change_rows(&self, change: impl Fn(&[&str]) -> String) {
        for day in 1..=3 {
            self.change_lines(&format!("mallee/day-{day}.csv"), |line, text| {
                let cells: Vec<&str> = text.split(',').collect();
                Some(if line == 1 {
                    text.to_owned()
                } else {
                    change(&cells)
                })
            });
        }
    }

    pub fn command(&self, arguments: &[&str]) -> Command {
        let mut command = cargo_bin_cmd!("simmerline");
        command
            .current_dir(self.root.path())
            .env_remove("SOURCE_DATE_EPOCH")
            .args(arguments);
        command
    }

    pub fn run(&self, arguments: &[&str]) -> Ended {
        Ended::of(&mut self.command(arguments))
    }

    /// Every file below a folder with its content, hidden ones too.
    pub fn files(&self, folder: &str) -> Vec<(String, Vec<u8>)> {
        let mut files = Vec::new();
        list(&self.path(folder), &mut files);
        files.sort();
        files
    }

    pub fn names(&self, folder: &str) -> Vec<String> {
        let root = self.path(folder).display().to_string() + "/";
        let files = self.files(folder).into_iter();
        files.map(|(name, _)| name.replace(&root, "")).collect()
    }

    pub fn rating(&self, name: &str) -> Value {
        serde_json::from_str(&self.read(&format!("reports/{name}.rating.json"))).unwrap()
    }

    /// `report mallee` succeeds; its rating.
    pub fn report(&self) -> Value {
        self.run(&["report", "mallee"]).exits(0);
        self.rating("mallee")
    }

    /// Neither `report` nor `check` takes the campaign: the exit code, every part of the
    /// message, a remedy, and not one file more or less than before.
    pub fn refuses(&self, code: i32, parts: &[&str]) -> Ended {
        let before = self.files("");
        let checked = self.run(&["check", "mallee"]).exits(code);
        let ended = self.run(&["report", "mallee"]).exits(code).says(parts);
        assert_eq!(checked.err, ended.err);
        assert!(ended.err.starts_with("error: "), "{}", ended.err);
        assert!(ended.err.contains("\nhint: "), "no remedy: {}", ended.err);
        assert_eq!(ended.out, "");
        assert!(self.files("") == before, "a file was written or changed");
        ended
    }
}

pub fn list(folder: &Path, files: &mut Vec<(String, Vec<u8>)>) {
    let Ok(entries) = fs::read_dir(folder) else {
        return;
    };
    for entry in entries {
        let path = entry.unwrap().path();
        if path.is_dir() {
            list(&path, files);
        } else {
            files.push((path.display().to_string(), fs::read(&path).unwrap()));
        }
    }
}

impl Ended {
    pub fn of(command: &mut Command) -> Self {
        let output = command.output().unwrap();
        Ended {
            code: output.status.code().unwrap(),
            out: String::from_utf8(output.stdout).unwrap(),
            err: String::from_utf8(output.stderr).unwrap(),
        }
    }

    pub fn exits(self, code: i32) -> Self {
        assert_eq!(
            self.code, code,
            "stderr: {}\nstdout: {}",
            self.err, self.out
        );
        self
    }

    /// Standard error holds every part.
    pub fn says(self, parts: &[&str]) -> Self {
        for part in parts {
            assert!(self.err.contains(part), "no {part:?} in: {}", self.err);
        }
        self
    }

    /// Standard output holds every part.
    pub fn prints(self, parts: &[&str]) -> Self {
        for part in parts {
            assert!(self.out.contains(part), "no {part:?} in: {}", self.out);
        }
        self
    }
}

/// One replacement in `campaign.toml` makes it invalid; the message names its last line.
pub fn refuses_campaign(from: &str, to: &str, parts: &[&str]) {
    let bench = Bench::new();
    let line = bench.replace("mallee/campaign.toml", from, to);
    let place = format!("error: mallee/campaign.toml:{line}: ");
    bench.refuses(4, &[&[place.as_str()], parts].concat());
}

/// One replacement in a log makes it unreadable; the message names its last line.
pub fn refuses_row(from: &str, to: &str, parts: &[&str]) {
    let bench = Bench::new();
    let line = bench.replace("mallee/day-2.csv", from, to);
    let place = format!("error: mallee/day-2.csv:{line}: ");
    bench.refuses(3, &[&[place.as_str()], parts].concat());
}

/// A whole log that cannot be read.
pub fn refuses_log(content: impl AsRef<[u8]>, parts: &[&str]) {
    let bench = Bench::new();
    bench.write("mallee/day-2.csv", content);
    bench.refuses(3, &[&["error: mallee/day-2.csv"], parts].concat());
}
