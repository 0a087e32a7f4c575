//! `report` on trees of campaigns: where outputs go, what is left alone, what is told of many,
//! and how the work is spread.

use std::collections::BTreeMap;
use std::fs;
use std::path::Path;
use std::process::{Command, Stdio};
use std::time::Duration;

use assert_cmd::cargo::cargo_bin;
use serde_json::{Value, json};
use simmerline::cli::data::summary_file::SummaryFile;

use crate::bench::{Bench, Ended, heating};
use crate::kit::campaign::Invented;
use crate::kit::schema::Held;

const SUMMARY: Held = Held {
    derived: || SummaryFile::schema().to_value(),
    file: "templates/schemas/summary-1.schema.json",
    keys: "tests/data/summary-1.keys.txt",
};

/// The time of issue of every report here.
const ISSUED: &str = "1790000000";

/// Two campaigns of one name in two branches, and a third.
fn tree() -> Bench {
    let bench = Bench::empty();
    for folder in ["all/spring/mallee", "all/autumn/mallee", "all/wattle"] {
        bench.add_campaign(folder);
    }
    bench
}

/// A call with a fixed time of issue.
fn at_one_time(bench: &Bench, arguments: &[&str]) -> Ended {
    Ended::of(bench.command(arguments).env("SOURCE_DATE_EPOCH", ISSUED))
}

/// What is in a folder, by paths from there, but for what tells of a call.
fn made(bench: &Bench, folder: &str) -> BTreeMap<String, Vec<u8>> {
    let root = bench.path(folder).display().to_string() + "/";
    let files = bench.files(folder).into_iter();
    let files = files.map(|(name, bytes)| (name.replace(&root, ""), bytes));
    files.filter(|(name, _)| name != "summary.json").collect()
}

fn summary(bench: &Bench, folder: &str) -> Value {
    let text = bench.read(&format!("{folder}/summary.json"));
    let summary = serde_json::from_str(&text).unwrap();
    SUMMARY.is_met_by(&summary, folder);
    summary
}

fn counts(summary: &Value) -> [u64; 3] {
    ["made", "left_alone", "failed"].map(|key| summary[key].as_u64().unwrap())
}

#[test]
fn outputs_keep_the_tree_below_each_path() {
    let bench = tree();
    let ended = bench.run(&["report", "all", "--format", "html"]).exits(0);
    ended.prints(&["reports/spring/mallee.html", "reports/wattle.html"]);
    for place in ["spring/mallee", "autumn/mallee", "wattle"] {
        for ending in ["html", "rating.json", "intervals.csv", "made.json"] {
            assert!(bench.path(&format!("reports/{place}.{ending}")).is_file());
        }
    }
    let index = bench.read("reports/index.html").replace("&#x2f;", "/");
    for place in ["spring/mallee", "autumn/mallee", "wattle"] {
        assert!(
            index.contains(&format!("href=\"./{place}.html\"")),
            "{place}"
        );
    }
    // A path that is a campaign has no branch, unless a root is named.
    bench
        .run(&[
            "report",
            "all/spring/mallee",
            "--out",
            "one",
            "--format",
            "html",
        ])
        .exits(0);
    assert!(bench.path("one/mallee.html").is_file());
    let arguments = [
        "report",
        "all/spring/mallee",
        "--root",
        "all",
        "--out",
        "two",
    ];
    bench.run(&arguments).exits(0);
    assert!(bench.path("two/spring/mallee.pdf").is_file());
}

#[test]
fn two_campaigns_of_one_place_are_refused_and_so_is_one_outside_the_root() {
    let bench = tree();
    let ended = bench.run(&["report", "all/spring", "all/autumn"]).exits(2);
    ended.says(&["a second campaign folder named \"mallee\"", "hint: "]);
    let arguments = ["report", "all/wattle", "--root", "all/spring"];
    let ended = bench.run(&arguments).exits(2);
    ended.says(&["does not lie below", "--root"]);
    assert!(!bench.path("reports").exists());
}

#[test]
fn what_has_not_changed_is_left_alone_and_said() {
    let bench = tree();
    let arguments = ["report", "all", "--format", "parquet"];
    let first = bench.run(&arguments).exits(0);
    assert_eq!(counts(&summary(&bench, "reports")), [3, 0, 0]);
    let before = made(&bench, "reports");
    let again = bench.run(&arguments).exits(0);
    assert_eq!(counts(&summary(&bench, "reports")), [0, 3, 0]);
    // The table is there in full, and what is of one time of issue stays of it.
    assert_eq!(first.out, again.out);
    assert!(
        again.err.contains("3 of 3 campaigns left as they are"),
        "{}",
        again.err
    );
    let package = "datapackage.json";
    let but_package = |mut files: BTreeMap<String, Vec<u8>>| {
        files.remove(package);
        files
    };
    assert!(but_package(before) == but_package(made(&bench, "reports")));
    // One alone says so of itself.
    let arguments = ["report", "all/wattle", "--format", "parquet"];
    let ended = bench.run(&arguments).exits(0);
    assert!(
        ended.err.contains("left as it is: nothing"),
        "{}",
        ended.err
    );
}

#[test]
fn every_change_is_seen() {
    let bench = tree();
    let report = |more: &[&str]| {
        let mut arguments = vec!["report", "all", "--format", "parquet"];
        arguments.extend(more);
        bench.run(&arguments).exits(0);
        counts(&summary(&bench, "reports"))
    };
    assert_eq!(report(&[]), [3, 0, 0]);
    // A log, a campaign file.
    bench.replace("all/wattle/day-1.csv", "# Invented data", "# Invented");
    assert_eq!(report(&[]), [1, 2, 0], "a log");
    bench.replace(
        "all/wattle/campaign.toml",
        "water_kg = 7.0",
        "water_kg = 7.1",
    );
    assert_eq!(report(&[]), [1, 2, 0], "a campaign file");
    // An output that was changed, or is gone.
    let rating = "reports/spring/mallee.rating.json";
    bench.replace(rating, "simmerline", "Simmerline");
    assert_eq!(report(&[]), [1, 2, 0], "an output");
    let rows = "reports/intervals/branch=spring/mallee.parquet";
    fs::remove_file(bench.path(rows)).unwrap();
    assert_eq!(report(&[]), [1, 2, 0], "rows");
    fs::remove_file(bench.path("reports/wattle.made.json")).unwrap();
    assert_eq!(report(&[]), [1, 2, 0], "a record");
    bench.write("reports/wattle.made.json", "{}");
    assert_eq!(report(&[]), [1, 2, 0], "a record of nothing");
    // Shared keys that appear and go, and a log that a pattern finds.
    bench.write(
        "all/shared.toml",
        "[campaign]\ntester = \"N. Nobody (invented)\"\n",
    );
    assert_eq!(report(&[]), [3, 0, 0], "shared keys");
    fs::remove_file(bench.path("all/shared.toml")).unwrap();
    assert_eq!(report(&[]), [3, 0, 0], "no shared keys");
    let toml = "all/wattle/campaign.toml";
    for day in ["day-2.csv", "day-3.csv"] {
        bench.replace(toml, &format!("[[run]]\nlog = \"{day}\"\n"), "");
    }
    bench.replace(toml, "log = \"day-1.csv\"", "log = \"day-*.csv\"");
    assert_eq!(report(&[]), [1, 2, 0], "a pattern");
    assert_eq!(report(&[]), [0, 3, 0]);
    bench.write("all/wattle/day-4.csv", heating(19));
    assert_eq!(report(&[]), [1, 2, 0], "a log that a pattern finds");
    // What a PDF carries, the time of issue.
    assert_eq!(report(&["--carry-all"]), [3, 0, 0], "what is carried");
    assert_eq!(report(&["--no-attachments"]), [3, 0, 0], "nothing carried");
    at_one_time(&bench, &["report", "all", "--format", "parquet"]).exits(0);
    assert_eq!(
        counts(&summary(&bench, "reports")),
        [3, 0, 0],
        "time of issue"
    );
    assert_eq!(report(&[]), [3, 0, 0], "no fixed time of issue");
    // An option; the version.
    assert_eq!(report(&["--language", "fr"]), [3, 0, 0], "language");
    assert_eq!(report(&["--language", "fr"]), [0, 3, 0]);
    let record = "reports/wattle.made.json";
    bench.replace(record, env!("CARGO_PKG_VERSION"), "0.0.1");
    assert_eq!(report(&["--language", "fr"]), [1, 2, 0], "version");
    assert_eq!(report(&["--language", "fr", "--fresh"]), [3, 0, 0], "fresh");
}

#[test]
fn rows_of_older_results_are_not_left_to_be_asked() {
    let bench = tree();
    bench
        .run(&["report", "all", "--format", "parquet"])
        .exits(0);
    let rows = "reports/campaigns/branch=-/wattle.parquet";
    assert!(bench.path(rows).is_file());
    bench.replace(
        "all/wattle/campaign.toml",
        "water_kg = 7.0",
        "water_kg = 7.1",
    );
    let arguments = ["report", "all/wattle", "--format", "html"];
    let ended = bench.run(&arguments).exits(0);
    assert!(!bench.path(rows).exists());
    assert!(
        ended
            .err
            .contains("simmerline collect reports --out reports"),
        "{}",
        ended.err
    );
    // Renewed, the tables hold it again, and one of an earlier call.
    bench
        .run(&["report", "all/wattle", "--format", "parquet"])
        .exits(0);
    fs::rename(bench.path("all/wattle"), bench.path("all/jarrah")).unwrap();
    let ended = bench
        .run(&["report", "all", "--format", "parquet"])
        .exits(0);
    assert!(ended.err.contains("hold 1 more campaigns"), "{}", ended.err);
    // Another campaign of one name is replaced, and that is said.
    bench
        .run(&[
            "report",
            "all/spring/mallee",
            "--out",
            "flat",
            "--format",
            "parquet",
        ])
        .exits(0);
    for day in 1..=3 {
        bench.write(
            &format!("all/autumn/mallee/day-{day}.csv"),
            heating(20 + day),
        );
    }
    bench.replace(
        "all/autumn/mallee/campaign.toml",
        "water_kg = 7.0",
        "water_kg = 7.05",
    );
    let arguments = [
        "report",
        "all/autumn/mallee",
        "--out",
        "flat",
        "--format",
        "parquet",
    ];
    let ended = bench.run(&arguments).exits(0);
    assert!(
        ended.err.contains("another campaign of this name"),
        "{}",
        ended.err
    );
    // One of which no file is as it was is the same campaign all the same.
    for day in 1..=3 {
        bench.write(
            &format!("all/autumn/mallee/day-{day}.csv"),
            heating(24 + day),
        );
    }
    bench.replace(
        "all/autumn/mallee/campaign.toml",
        "water_kg = 7.05",
        "water_kg = 7.1",
    );
    let ended = bench.run(&arguments).exits(0);
    assert!(!ended.err.contains("another campaign"), "{}", ended.err);
    // A record that is none is not passed over.
    bench.write("flat/mallee.made.json", "{");
    let ended = bench.run(&["collect", "flat", "--out", "tables"]).exits(2);
    ended.says(&[
        "mallee.made.json: is no record that this version reads",
        "hint: ",
    ]);
}

#[test]
fn a_cause_that_many_share_is_told_once_and_each_has_its_entry() {
    let bench = Bench::empty();
    for number in 0..6 {
        let folder = format!("all/c-{number}");
        bench.add_campaign(&folder);
        if number > 0 {
            let toml = format!("{folder}/campaign.toml");
            bench.replace(&toml, "water_kg = 7.0", "water_kg = -7.0");
        }
    }
    fs::remove_file(bench.path("all/c-5/day-2.csv")).unwrap();
    let arguments = ["report", "all", "--format", "parquet"];
    let ended = bench.run(&arguments).exits(4);
    assert_eq!(ended.err.matches("found -7").count(), 1, "{}", ended.err);
    ended.says(&[
        "error: 5 places: all/c-1/campaign.toml:",
        "and 2 more",
        "hint: ",
    ]);
    let summary = summary(&bench, "reports");
    assert_eq!(counts(&summary), [1, 0, 5]);
    let entry = &summary["campaigns"][4];
    assert_eq!(entry["campaign"], "c-4");
    assert_eq!(entry["outcome"], "failed");
    assert_eq!(entry["error"], "campaign-file");
    assert_eq!(entry["exit_code"], 4);
    assert!(entry["problems"][0]["hint"].is_string(), "{entry}");
    let done = &summary["campaigns"][0];
    assert_eq!(done["outcome"], "made");
    assert_eq!(done["error"], Value::Null);
    let outputs = done["outputs"].as_array().unwrap();
    for output in outputs {
        let path = format!("reports/{}", output.as_str().unwrap());
        assert!(bench.path(&path).is_file(), "{path}");
    }
    assert_eq!(outputs.len(), 4);
}

#[test]
fn the_schema_in_the_repository_is_that_of_the_program() {
    SUMMARY.is_that_of_the_program();
    SUMMARY.loses_no_key();
    SUMMARY.says_what_it_is(
        "urn:simmerline:summary:1",
        "Summary of a call on solar cooker campaigns",
    );
    SUMMARY.describes_every_key(3);
}

#[test]
fn any_number_of_jobs_gives_the_same_bytes() {
    let bench = tree();
    let report = |jobs: &str| {
        let out = format!("with-{jobs}");
        let formats = ["--format", "pdf,html,parquet"];
        let arguments = [
            &["report", "all", "--jobs", jobs, "--out", &out][..],
            &formats,
        ]
        .concat();
        let ended = at_one_time(&bench, &arguments).exits(0);
        (made(&bench, &out), ended.out.replace(&out, ""))
    };
    let one = report("1");
    for jobs in ["2", "7"] {
        assert!(report(jobs) == one, "{jobs} jobs");
    }
    let ended = bench.run(&["report", "all", "--jobs", "0"]).exits(2);
    assert!(ended.err.contains("--jobs"), "{}", ended.err);
}

#[test]
fn units_are_told_with_their_inputs_and_a_broken_one_with_what_stops_it() {
    let bench = tree();
    bench.replace(
        "all/wattle/campaign.toml",
        "water_kg = 7.0",
        "water_kg = -7.0",
    );
    let ended = bench.run(&["units", "all"]).exits(0);
    assert_eq!(ended.err, "");
    let lines: Vec<Value> = ended
        .out
        .lines()
        .map(|line| serde_json::from_str(line).unwrap())
        .collect();
    let places: Vec<&str> = lines
        .iter()
        .map(|one| one["place"].as_str().unwrap())
        .collect();
    assert_eq!(places, ["autumn/mallee", "spring/mallee", "wattle"]);
    assert_eq!(lines[0]["folder"], "all/autumn/mallee");
    assert_eq!(lines[0]["branch"], "autumn");
    let inputs = lines[0]["inputs"].as_array().unwrap();
    let names: Vec<&Value> = inputs.iter().map(|input| &input["name"]).collect();
    assert_eq!(
        names,
        ["campaign.toml", "day-1.csv", "day-2.csv", "day-3.csv"]
    );
    assert_eq!(inputs[1]["bytes"], json!(heating(14).len()));
    let sum: u64 = inputs
        .iter()
        .map(|input| input["bytes"].as_u64().unwrap())
        .sum();
    assert_eq!(lines[0]["bytes"], json!(sum));
    // A campaign file with a mistake still names its logs; one that cannot be read does not.
    assert_eq!(lines[2]["inputs"].as_array().unwrap().len(), 4);
    let error = lines[2]["error"].as_str().unwrap();
    assert!(error.contains("water_kg"), "{error}");
    fs::write(bench.path("all/wattle/campaign.toml"), [0xff, 0xfe]).unwrap();
    let ended = bench.run(&["units", "all"]).exits(0);
    let last: Value = serde_json::from_str(ended.out.lines().last().unwrap()).unwrap();
    assert_eq!(last["inputs"], Value::Null);
}

#[test]
fn tables_are_the_same_however_the_campaigns_were_spread() {
    let bench = tree();
    let rows = ["--format", "parquet"];
    let whole = [&["report", "all", "--out", "whole"][..], &rows].concat();
    at_one_time(&bench, &whole).exits(0);
    for (shard, folders) in [
        ("one", &["all/spring"][..]),
        ("two", &["all/autumn", "all/wattle"]),
    ] {
        let mut arguments = vec!["report", "--root", "all", "--out", shard];
        arguments.extend(folders);
        arguments.extend(rows);
        at_one_time(&bench, &arguments).exits(0);
    }
    at_one_time(&bench, &["collect", "two", "one", "--out", "tables"]).exits(0);
    for name in ["campaigns.parquet", "intervals.parquet"] {
        let read = |folder: &str| fs::read(bench.path(&format!("{folder}/{name}"))).unwrap();
        assert!(read("tables") == read("whole"), "{name}");
    }
    // Their own files do not lie below, so that the package has the tables alone.
    let package: Value = serde_json::from_str(&bench.read("tables/datapackage.json")).unwrap();
    assert_eq!(package["resources"].as_array().unwrap().len(), 2);
    at_one_time(&bench, &["collect", "whole", "--out", "whole"]).exits(0);
    let package: Value = serde_json::from_str(&bench.read("whole/datapackage.json")).unwrap();
    assert_eq!(package["resources"].as_array().unwrap().len(), 2 + 3 * 2);
}

#[test]
fn what_cannot_be_collected_is_refused_and_nothing_is_written() {
    let bench = tree();
    bench.run(&["report", "all", "--out", "plain"]).exits(0);
    let rows = ["report", "all", "--format", "parquet", "--out", "rows"];
    bench.run(&rows).exits(0);
    let refused = |arguments: &[&str], parts: &[&str]| {
        let all = [&["collect", "--out", "tables"][..], arguments].concat();
        bench.run(&all).exits(2).says(parts);
        assert!(bench.names("tables").is_empty());
    };
    refused(&["all"], &["all: holds no record of a report"]);
    refused(
        &["plain"],
        &[
            "plain/autumn/mallee: was reported without --format parquet",
            "plain/spring/mallee: was reported without --format parquet\nhint: ",
            "plain/wattle: was reported without --format parquet",
        ],
    );
    refused(
        &["plain", "rows"],
        &["is in plain too, and is not the same there"],
    );
    refused(&["nowhere"], &["nowhere: cannot be listed"]);
    fs::write(bench.path("rows/intervals/branch=-/wattle.parquet"), "PAR1").unwrap();
    refused(&["rows"], &["wattle.parquet: is not as it was written"]);
}

/// So many campaigns are reported and stopped three times.
const STOPPED: usize = 60;

/// A campaign of one short run.
fn tiny(bench: &Bench, folder: &str) {
    let toml = Invented::default().text(&["day-1.csv"]);
    bench.write(&format!("{folder}/campaign.toml"), toml);
    let day = heating(14);
    let rows: Vec<&str> = day.lines().take(14).collect();
    bench.write(&format!("{folder}/day-1.csv"), rows.join("\n") + "\n");
}

/// Records in a folder and below it, while somebody writes there.
fn records_in(folder: &Path) -> usize {
    let entries = fs::read_dir(folder).into_iter().flatten().flatten();
    let counts = entries.map(|entry| match entry.file_type() {
        Ok(kind) if kind.is_dir() => records_in(&entry.path()),
        _ => usize::from(entry.file_name().to_string_lossy().ends_with(".made.json")),
    });
    counts.sum()
}

/// `SIMMERLINE_CAMPAIGNS=2000` has as many as a programme of years.
#[test]
fn a_call_that_is_stopped_three_times_ends_as_one_that_is_not() {
    let bench = Bench::empty();
    let wanted = std::env::var("SIMMERLINE_CAMPAIGNS").ok();
    let count = wanted.map_or(STOPPED, |count| count.parse().unwrap());
    for number in 0..count {
        tiny(&bench, &format!("all/b-{}/c-{number}", number % 7));
    }
    let call = |out: &str| {
        let mut command = Command::new(cargo_bin!("simmerline"));
        command
            .current_dir(bench.root.path())
            .args(["report", "all", "--format", "parquet", "--out", out])
            .env("SOURCE_DATE_EPOCH", ISSUED)
            .stdout(Stdio::null())
            .stderr(Stdio::null());
        command
    };
    let done = |out: &str| records_in(&bench.path(out));
    assert!(call("whole").status().unwrap().success());
    for part in 1..=3 {
        let mut child = call("stopped").spawn().unwrap();
        while done("stopped") < part * count / 4 && child.try_wait().unwrap().is_none() {
            std::thread::sleep(Duration::from_millis(5));
        }
        child.kill().unwrap();
        child.wait().unwrap();
    }
    let before = done("stopped");
    assert!(before < count, "never stopped");
    assert!(call("stopped").status().unwrap().success());
    let summary = summary(&bench, "stopped");
    let [made_now, left_alone, failed] = counts(&summary);
    assert_eq!(left_alone + made_now, count as u64);
    assert_eq!(failed, 0);
    assert!(left_alone as usize >= before, "{left_alone} of {before}");
    let (whole, stopped) = (made(&bench, "whole"), made(&bench, "stopped"));
    assert!(whole.keys().eq(stopped.keys()));
    let differs = whole.iter().find(|(name, bytes)| stopped[*name] != **bytes);
    assert_eq!(differs.map(|(name, _)| name), None);
}

#[test]
fn two_calls_into_one_folder_at_once_end_as_one() {
    let bench = Bench::empty();
    for number in 0..12 {
        tiny(&bench, &format!("all/c-{number:02}"));
    }
    let call = |out: &str| {
        let mut command = Command::new(cargo_bin!("simmerline"));
        command
            .current_dir(bench.root.path())
            .args(["report", "all", "--format", "parquet", "--out", out])
            .env("SOURCE_DATE_EPOCH", ISSUED)
            .stdout(Stdio::null());
        command.spawn().unwrap()
    };
    assert!(call("whole").wait().unwrap().success());
    let mut both = [call("both"), call("both")];
    for child in &mut both {
        assert!(child.wait().unwrap().success());
    }
    assert!(made(&bench, "whole") == made(&bench, "both"));
}
