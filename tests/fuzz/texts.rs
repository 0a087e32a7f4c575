//! What people and loggers write as text: logs, times, campaign files, field sheets.

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};

use jiff::tz::TimeZone;
use simmerline::campaign::kinds::RunKind;
use simmerline::campaign::model::{LogRules, RunPlan};
use simmerline::campaign::moment::Moment;
use simmerline::campaign::template::CAMPAIGN_TEMPLATE;
use simmerline::campaign::{AttachedFile, Campaign, Reach, read_attached_campaign, read_campaign};
use simmerline::entry::form::Form;
use simmerline::entry::line::clock;
use simmerline::entry::notes::survey;
use simmerline::entry::sheet::Sheet;
use simmerline::entry::start::read_date;
use simmerline::entry::text_file::{read_text, text_of};
use simmerline::error::{Error, Result};
use simmerline::logs::quantity::Role;
use simmerline::logs::read::read_bytes;
use simmerline::logs::request::Request;
use simmerline::logs::times::dates::read_written;
use simmerline::logs::times::time_of_day::{find_zone, read_zone};
use simmerline::measure::{Kind, Unit};
use simmerline::procedure::s580::own_limits::check_own_limits;
use simmerline::setup::answers::Answers;
use simmerline::setup::filled::filled;
use simmerline::setup::questions::Question;

use crate::kit::header::HEADER;
use crate::limits::TEXT;
use crate::target::{Part, Sample, Target};

/// A text is its only part.
fn only(parts: &[Part]) -> Vec<u8> {
    parts.iter().flat_map(|part| part.bytes.clone()).collect()
}

/// The folders of campaigns below one, in order.
fn campaigns(below: &str) -> Vec<PathBuf> {
    let entries = fs::read_dir(below).unwrap();
    let mut folders: Vec<PathBuf> = entries.map(|entry| entry.unwrap().path()).collect();
    folders.retain(|folder| folder.join("campaign.toml").is_file());
    folders.sort();
    folders
}

fn name_of(path: &Path) -> String {
    path.file_name().unwrap().to_str().unwrap().to_owned()
}

/// The campaigns in every dress whose first run has one log alone, with that log.
pub fn dresses() -> Vec<(Campaign, Sample)> {
    let mut found = Vec::new();
    for folder in campaigns("tests/data/dresses") {
        let campaign = read_campaign(&folder, Reach::Inside, check_own_limits).unwrap();
        let run = &campaign.runs[0];
        if run.weather.is_none() && run.vessel_water_kg.is_empty() {
            let sample = Sample::whole(name_of(&folder), fs::read(&run.path).unwrap());
            found.push((campaign, sample));
        }
    }
    assert!(found.len() > 60, "only {} dresses", found.len());
    found
}

/// Reads bytes as the first log of a campaign.
pub fn read_as_log(campaign: &Campaign, bytes: &[u8]) -> Result<()> {
    let run: &RunPlan = &campaign.runs[0];
    let request = Request {
        role: Role::Whole,
        date: run.date,
        start: run.start,
        sensitivity: campaign.instruments.sensitivity,
        ..Request::new(&run.rules, &campaign.site.time_zone)
    };
    read_bytes(&run.path, &run.log, bytes, &request).map(drop)
}

#[test]
fn log_text() {
    let _one = crate::limits::one_at_a_time();
    let (campaigns, samples): (Vec<Campaign>, Vec<Sample>) = dresses().into_iter().unzip();
    let parse = |index: usize, bytes: &[u8]| read_as_log(&campaigns[index], bytes);
    Target {
        name: "log_text",
        samples,
        always: TEXT,
        join: only,
        parse,
    }
    .run();
}

/// One time in many hands, three times over.
const TIMES: [[&str; 3]; 16] = [
    [
        "2026-03-14 10:20:00",
        "2026-03-14 10:30:00",
        "2026-03-14 10:40:00",
    ],
    [
        "2026-03-14T10:20:00Z",
        "2026-03-14T10:30:00Z",
        "2026-03-14T10:40:00Z",
    ],
    [
        "2026-03-14T10:20:00.5+05:30",
        "2026-03-14T10:30:00.5+05:30",
        "2026-03-14T10:40:00.5+05:30",
    ],
    ["20260314T102000", "20260314T103000", "20260314T104000"],
    ["14.03.2026 10:20", "14.03.2026 10:30", "14.03.2026 10:40"],
    ["14/03/26 10:20", "14/03/26 10:30", "14/03/26 10:40"],
    [
        "3/14/2026 10:20:00 AM",
        "3/14/2026 10:30:00 AM",
        "3/14/2026 10:40:00 AM",
    ],
    [
        "14 March 2026 10:20",
        "14 March 2026 10:30",
        "14 March 2026 10:40",
    ],
    [
        "Mar 14, 2026 10:20:00 PM",
        "Mar 14, 2026 10:30:00 PM",
        "Mar 14, 2026 10:40:00 PM",
    ],
    [
        "14 marzo 2026 10:20",
        "14 marzo 2026 10:30",
        "14 marzo 2026 10:40",
    ],
    [
        "14-mars-2026 10h20",
        "14-mars-2026 10h30",
        "14-mars-2026 10h40",
    ],
    ["1773483600", "1773484200", "1773484800"],
    ["1773483600000", "1773484200000", "1773484800000"],
    ["46095.43056", "46095.43750", "46095.44444"],
    [
        "2026/03/14 10:20:00,250",
        "2026/03/14 10:30:00,250",
        "2026/03/14 10:40:00,250",
    ],
    [
        "Sat 2026-03-14 10:20 UTC",
        "Sat 2026-03-14 10:30 UTC",
        "Sat 2026-03-14 10:40 UTC",
    ],
];

/// Every reader of one time on each line, and the lines as the times of a log.
fn read_times(bytes: &[u8]) -> Result<()> {
    let text = String::from_utf8_lossy(bytes);
    let mut log = HEADER.replace(',', ";");
    for line in text.lines() {
        read_written(line);
        Moment::parse(line);
        read_zone(line);
        find_zone(line);
        clock(line);
        // What it says of a text that is no date is held like any error.
        if let Err(error @ Error::Internal(_)) = read_date(line) {
            return Err(error);
        }
        log += &format!("\n{line};31.5;24.0;800;0.5");
    }
    let (rules, zone) = (LogRules::default(), TimeZone::UTC);
    let request = Request::new(&rules, &zone);
    read_bytes(Path::new("day.csv"), "day.csv", log.as_bytes(), &request).map(drop)
}

#[test]
fn times() {
    let _one = crate::limits::one_at_a_time();
    let samples = TIMES.iter().enumerate();
    Target {
        name: "times",
        samples: samples
            .map(|(index, lines)| Sample::whole(format!("form-{index}"), lines.join("\n")))
            .collect(),
        always: TEXT,
        join: only,
        parse: |_: usize, bytes: &[u8]| read_times(bytes),
    }
    .run();
}

#[test]
fn campaign_file() {
    let _one = crate::limits::one_at_a_time();
    let folders = [campaigns("sample-runs"), campaigns("tests/data/dresses")].concat();
    let files_of = |folder: &PathBuf| -> BTreeMap<String, AttachedFile> {
        let paths = fs::read_dir(folder)
            .unwrap()
            .map(|entry| entry.unwrap().path());
        let attached = |path: PathBuf| AttachedFile {
            path,
            is_outside: false,
        };
        let named = paths.map(|path| (name_of(&path), attached(path)));
        named.collect()
    };
    let files: Vec<BTreeMap<String, AttachedFile>> = folders.iter().map(files_of).collect();
    let samples = folders.iter().map(|folder| {
        let text = fs::read(folder.join("campaign.toml")).unwrap();
        Sample::whole(name_of(folder), text)
    });
    let written = tempfile::tempdir().unwrap();
    let file = written.path().join("campaign.toml");
    Target {
        name: "campaign_file",
        samples: samples.collect(),
        always: TEXT,
        join: only,
        parse: |index: usize, bytes: &[u8]| {
            fs::write(&file, bytes).unwrap();
            read_attached_campaign(&file, "invented", &files[index], check_own_limits).map(drop)
        },
    }
    .run();
}

/// Keys that campaigns share, of every table that may stand there.
const SHARED_KEYS: &str = "# Invented
[campaign]
tester = \"N. Nobody\"
target_uncertainty_w = 5.0
[report]
language = \"fr\"
[site]
name = \"Nowhere flats\"
latitude_deg = -20.0
longitude_deg = 14.0
elevation_m = 100
time_zone = \"UTC\"
[instruments.irradiance]
plane = \"normal\"
class = \"pyranometer-b\"
id = \"P1\"
[instruments.water_temperature]
uncertainty_k = 0.5
[columns]
water_temperature = [[\"A\", \"B\"], \"C\"]
[units]
wind_speed = \"km/h\"
[weather.format]
decimal_mark = \",\"
[[calibration]]
column = \"A\"
points = [[0.0, 0.1], [99.0, 98.0]]
[limits]
water_min_c = 40
guard = true
[cooking]
water_kg = [1, 2]
[impact]
fuel = \"wood\"
heating_value_mj_kg = 15.6
heating_value_source = \"A\"
";

/// A campaign that has some of those keys itself, and the logs of a pattern.
const BELOW_THEM: &str = "[campaign]
title = \"Mallee trough (invented)\"
target_relative_uncertainty = 0.05
[cooker]
name = \"Mallee trough\"
type = \"box\"
intercept_area_m2 = 1.0
[site]
name = \"North corner\"
[load]
water_kg = 7.0
[instruments.irradiance]
id = \"P2\"
[impact]
days_per_year = 200
stove_efficiency = 0.1
stove_efficiency_source = \"B\"
days_source = \"C\"
[[run]]
log = \"day-*.csv\"
";

#[test]
fn shared_keys() {
    let _one = crate::limits::one_at_a_time();
    let written = tempfile::tempdir().unwrap();
    let path = |name: &str| written.path().join(name);
    let names = ["shared.toml", "shared-2.toml", "day-1.csv", "day-2.csv"];
    let attached = |path: PathBuf| AttachedFile {
        path,
        is_outside: false,
    };
    let files: BTreeMap<String, AttachedFile> = names
        .into_iter()
        .map(|name| (name.to_owned(), attached(path(name))))
        .collect();
    fs::write(path("campaign.toml"), BELOW_THEM).unwrap();
    // The sound ones give what a damaged one may lack, and stand behind it in the text.
    fs::write(path("shared-2.toml"), SHARED_KEYS).unwrap();
    Target {
        name: "shared_keys",
        samples: vec![Sample::whole("every-table", SHARED_KEYS)],
        always: TEXT,
        join: only,
        parse: |_, bytes: &[u8]| {
            fs::write(path("shared.toml"), bytes).unwrap();
            let file = path("campaign.toml");
            read_attached_campaign(&file, "invented", &files, check_own_limits).map(drop)
        },
    }
    .run();
}

fn form() -> Form {
    let celsius = Unit::base(Kind::Temperature);
    Form {
        date: "2026-11-03".parse().unwrap(),
        zone: TimeZone::UTC,
        kind: RunKind::Water,
        tested_unit: celsius,
        air_unit: celsius,
        boiling_point_c: 100.0,
        has_irradiance: false,
        is_demonstration: true,
    }
}

const PLACES: &str = "35.0844, -106.6504
35°05'04\"N 106°39'01\"W
N 35 5.07 W 106 39.02
35,0844; -106,6504
16 lb 3 oz
3'4\" x 2 ft
8 sides 38 in across corners
10.3 sq ft
";

/// What a person answers to the questions of a new campaign.
#[test]
fn answers() {
    let _one = crate::limits::one_at_a_time();
    Target {
        name: "answers",
        samples: vec![Sample::whole("invented", PLACES)],
        always: TEXT,
        join: only,
        parse: |_: usize, bytes: &[u8]| {
            for line in String::from_utf8_lossy(bytes).lines() {
                for question in Question::ALL {
                    let mut answers = Answers::default();
                    if question.take(&mut answers, line).is_ok() {
                        // What is taken makes a campaign file that can be read.
                        let text = filled(CAMPAIGN_TEMPLATE, &answers);
                        let read: std::result::Result<toml::Value, _> = toml::from_str(&text);
                        read.map_err(|error| Error::Internal(format!("{error}, after: {line}")))?;
                    }
                }
            }
            Ok(())
        },
    }
    .run();
}

const FIELD_SHEET: &str = "# clock water air wind sky notes
10:00 24 24 1 clear begun (invented)
10:10 31.5 - 2 clear
10:20 38,5 24.5 1 cloud a thin veil
10:30 - 25 0 clear the lid was lifted
10:40 52 25 1 clear
";

const NOTES: &str = "November 3, 2026
air 24C (shade)
sunny all day
at 10:20 am: 31.5°C
10h30 - moved it 5°, 36, no clouds
10:40 water 41 air 24.5; calm
11 a.m. 49 °C, 24 outside
black pot, lid on
12:50 70 hazy, wind 2
1:00 74 after 2 min
";

#[test]
fn field_sheet() {
    let _one = crate::limits::one_at_a_time();
    let path = Path::new("sheet.txt");
    let again = |csv: &str| match Sheet::from_csv(form(), path, csv) {
        Ok(_) => Ok(()),
        Err(error) => Err(Error::Internal(format!("{error}, after: {csv}"))),
    };
    Target {
        name: "field_sheet",
        samples: vec![
            Sample::whole("invented", FIELD_SHEET),
            Sample::whole("invented-notes", NOTES),
        ],
        always: TEXT,
        join: only,
        // What is taken can be written, and read again.
        parse: |_: usize, bytes: &[u8]| {
            let mut sheet = Sheet::new(form());
            let text = text_of(path, bytes)?;
            survey(text);
            read_text(&mut sheet, path, text)?;
            again(&sheet.to_csv()?)
        },
    }
    .run();
}
