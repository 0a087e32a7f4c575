//! The campaigns that the tests report on: sample runs, and copies with one thing changed.

use std::fs;

use jiff::Timestamp;
use simmerline::assess_folder;
use simmerline::error::Error;
use simmerline::procedure::Assessment;
use simmerline::procedure::finding::Level;
use simmerline::report::Edition;
use simmerline::report::outputs;
use tempfile::TempDir;

use crate::kit::files;
pub use crate::kit::rate::{sample, samples, samples_with_water};
use crate::kit::samples::sample_folder;

/// 3 November 2026, 12:00 UTC.
pub const ISSUED_S: i64 = 1_793_707_200;

/// English, A4, SI.
pub fn edition() -> Edition {
    Edition::plain(issued())
}

pub fn issued() -> Timestamp {
    Timestamp::from_second(ISSUED_S).unwrap()
}

/// Whether the report says of its rating that it is indicative: one without water has none.
pub fn is_called_indicative(assessment: &Assessment) -> bool {
    assessment.s580.conformity.level == Level::Indicative && !assessment.tested.heats_no_water()
}

pub fn pdf_of(assessment: &Assessment) -> Vec<u8> {
    pdf_in(assessment, &edition())
}

/// Without attachments: its logs may be gone.
pub fn slim_pdf_of(assessment: &Assessment) -> Vec<u8> {
    let slim = Edition {
        has_attachments: false,
        ..edition()
    };
    pdf_in(assessment, &slim)
}

fn pdf_in(assessment: &Assessment, edition: &Edition) -> Vec<u8> {
    let outputs = outputs(assessment, edition).unwrap();
    outputs
        .into_iter()
        .find(|output| output.name.ends_with(".pdf"))
        .unwrap()
        .bytes
}

/// A copy of the sample run `open-dish` to change.
pub struct Copy {
    pub root: TempDir,
}

impl Copy {
    pub fn new() -> Self {
        let copy = Copy {
            root: TempDir::new().unwrap(),
        };
        files::copy(&sample_folder("open-dish"), copy.root.path());
        copy
    }

    pub fn write(&self, name: &str, content: impl AsRef<[u8]>) {
        files::write(self.root.path(), name, content);
    }

    /// Replaces text of the campaign file that must be there.
    pub fn replace(self, from: &str, to: &str) -> Self {
        files::replace(self.root.path(), "campaign.toml", from, to);
        self
    }

    /// Takes all runs but the first out.
    pub fn with_one_run(self) -> Self {
        let path = self.root.path().join("campaign.toml");
        let text = fs::read_to_string(&path).unwrap();
        let parts: Vec<&str> = text.split("[[run]]").collect();
        fs::write(path, format!("{}[[run]]{}", parts[0], parts[1])).unwrap();
        self
    }

    /// Changes every row of every log, header too.
    pub fn change_rows(self, change: impl Fn(&[&str]) -> String) -> Self {
        for entry in fs::read_dir(self.root.path()).unwrap() {
            let path = entry.unwrap().path();
            if path.extension().is_some_and(|ending| ending == "csv") {
                let text = fs::read_to_string(&path).unwrap();
                let rows = text.lines().filter(|line| !line.starts_with('#'));
                let changed = rows.map(|row| change(&row.split(',').collect::<Vec<_>>()) + "\n");
                fs::write(&path, changed.collect::<String>()).unwrap();
            }
        }
        self
    }

    pub fn assess(&self) -> Assessment {
        assess_folder(self.root.path()).unwrap()
    }

    /// The error of reading or of setting the report.
    pub fn fails(&self) -> Error {
        match assess_folder(self.root.path()) {
            Err(error) => error,
            Ok(assessment) => match outputs(&assessment, &edition()) {
                Err(error) => error,
                Ok(_) => panic!("a report was made"),
            },
        }
    }
}

/// Campaigns that lack something, each with what it lacks.
pub fn poor_campaigns() -> Vec<(String, Assessment)> {
    let without_rating =
        Copy::new().replace("[[run]]", "[limits]\nirradiance_min_w_m2 = 1099\n[[run]]");
    let one_run = Copy::new().with_one_run();
    let without_irradiance =
        Copy::new().change_rows(|cells| [&cells[..3], &cells[4..]].concat().join(","));
    let without_wind = Copy::new().change_rows(|cells| cells[..4].join(","));
    let one_row = Copy::new().with_one_run();
    one_row.write(
        "2026-09-16.csv",
        "time,water_c,ambient_c\n2026-09-16 12:00:00,30.0,25.0\n",
    );
    let at = |start: &str, end: &str| {
        let span = format!("[[run]]\nstart = \"{start}\"\nend = \"{end}\"");
        Copy::new()
            .with_one_run()
            .replace("[[run]]", &span)
            .assess()
    };
    let lacking = [
        ("rating", without_rating.assess()),
        ("runs", one_run.assess()),
        ("irradiance", without_irradiance.assess()),
        ("wind", without_wind.assess()),
        ("rows", one_row.assess()),
        ("all but one interval", at("12:30", "12:40")),
        ("all but two intervals", at("12:30", "12:50")),
        ("all but three intervals", at("12:20", "12:50")),
    ];
    lacking
        .into_iter()
        .map(|(what, assessment)| (what.to_owned(), assessment))
        .collect()
}
