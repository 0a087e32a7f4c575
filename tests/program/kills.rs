//! Calls that are killed at any moment: what they leave, and that the next call goes on.
//!
//! `SIMMERLINE_KILLS=1500 cargo test --release --test program kills:: -- --nocapture` kills so
//! often in each test, and says what was left.

use std::collections::BTreeMap;
use std::fs::{self, File};
use std::io::Write;
use std::path::Path;
use std::process::{Child, Command, Stdio};
use std::thread;
use std::time::{Duration, Instant};

use assert_cmd::cargo::cargo_bin;

use crate::bench::{Bench, campaign};

/// Kills in each test, unless the environment asks for more.
const KILLS: usize = 20;
/// The golden ratio: its multiples spread evenly between whole numbers.
const GOLDEN: f64 = 0.618_033_988_749_894_9;
const LIST: &str = "mallee.unfinished.json";

fn kills() -> usize {
    let asked = std::env::var("SIMMERLINE_KILLS").ok();
    asked.map_or(KILLS, |asked| asked.parse().expect("a whole number"))
}

type Files = BTreeMap<String, Vec<u8>>;

fn files(folder: &Path) -> Files {
    let Ok(entries) = fs::read_dir(folder) else {
        return Files::new();
    };
    let entries = entries.map(|entry| entry.unwrap().path());
    let file = |path: std::path::PathBuf| {
        let name = path.file_name().unwrap().to_str().unwrap().to_owned();
        (name, fs::read(path).unwrap())
    };
    entries.map(file).collect()
}

fn is_hidden(name: &str) -> bool {
    name.starts_with('.')
}

fn start(bench: &Bench, arguments: &[&str]) -> Child {
    let mut command = Command::new(cargo_bin!("simmerline"));
    command
        .current_dir(bench.root.path())
        .args(arguments)
        .env("SOURCE_DATE_EPOCH", "1770000000")
        .stdin(Stdio::piped())
        .stdout(Stdio::null())
        .stderr(Stdio::null());
    command.spawn().unwrap()
}

fn duration(mut child: Child) -> Duration {
    let started = Instant::now();
    drop(child.stdin.take());
    assert!(child.wait().unwrap().success());
    started.elapsed()
}

fn kill(mut child: Child) {
    child.kill().unwrap();
    child.wait().unwrap();
}

/// Two editions of the campaign `mallee` that differ in every file.
fn editions(bench: &Bench) -> [Files; 2] {
    ["first", "second"].map(|which| {
        bench.add_campaign(&format!("{which}/mallee"));
        if which == "second" {
            bench.replace(
                "second/mallee/campaign.toml",
                "water_kg = 7.0",
                "water_kg = 7.5",
            );
        }
        let out = format!("out-{which}");
        duration(start(bench, &report(&format!("{which}/mallee"), &out)));
        let files = files(&bench.path(&format!("out-{which}")));
        assert_eq!(files.len(), 5);
        files
    })
}

fn report<'a>(campaign: &'a str, out: &'a str) -> [&'a str; 8] {
    [
        "report", campaign, "--out", out, "--format", "pdf,html", "--quiet", "--fresh",
    ]
}

/// Waits for a file in a folder whose name `is_it`, or for the end of the program.
fn wait_for(folder: &Path, child: &mut Child, is_it: impl Fn(&str) -> bool) {
    while child.try_wait().unwrap().is_none() {
        let entries = fs::read_dir(folder).into_iter().flatten().flatten();
        let mut names = entries.map(|entry| entry.file_name());
        if names.any(|name| is_it(name.to_str().unwrap())) {
            return;
        }
    }
}

#[test]
fn a_killed_report_leaves_one_edition_or_says_that_it_is_unfinished() {
    let bench = Bench::empty();
    let editions = editions(&bench);
    for (name, bytes) in &editions[0] {
        assert!(editions[1][name] != *bytes, "{name} is the same in both");
    }
    // It fails before it writes anything, but after it has mended the folder.
    bench.write("broken/campaign.toml", "");
    let campaigns = ["first/mallee", "second/mallee"];
    let whole = duration(start(&bench, &report(campaigns[0], "reports")));
    let out = bench.path("reports");
    let mut left: BTreeMap<&str, usize> = BTreeMap::new();
    for round in 0..kills() {
        let new = (round + 1) % 2;
        let share = (round as f64 * GOLDEN).fract();
        let mut child = start(&bench, &report(campaigns[new], "reports"));
        match round % 4 {
            0 => thread::sleep(whole.mul_f64(share)),
            1 => {
                wait_for(&out, &mut child, is_hidden);
                thread::sleep(Duration::from_micros(20_000).mul_f64(share));
            }
            _ => {
                wait_for(&out, &mut child, |name| name == LIST);
                let until = Instant::now() + Duration::from_micros(400).mul_f64(share);
                while Instant::now() < until {}
            }
        }
        kill(child);
        let mut found = files(&out);
        let is_unfinished = found.remove(LIST).is_some();
        let parts = found.keys().filter(|name| is_hidden(name)).count();
        found.retain(|name, _| !is_hidden(name));
        let edition = editions.iter().position(|edition| *edition == found);
        assert!(
            edition.is_some() || is_unfinished,
            "two editions, and nothing says so: {:?}",
            found.keys()
        );
        let state = match (is_unfinished, edition, parts) {
            (true, None, _) => "two editions, named as unfinished",
            (true, Some(_), _) => "one edition, named as unfinished",
            (false, _, 0) => "one edition",
            (false, _, _) => "one edition, and parts of the next",
        };
        *left.entry(state).or_default() += 1;
        bench
            .run(&["report", "broken", "--out", "reports"])
            .exits(4);
        let mended = files(&out);
        let after = editions.iter().position(|edition| *edition == mended);
        let Some(after) = after else {
            panic!("{state}, and not mended: {:?}", mended.keys());
        };
        match is_unfinished {
            true => assert_eq!(after, new, "the new edition was whole"),
            false => assert_eq!(Some(after), edition),
        }
    }
    println!("report: {left:?}");
}

#[test]
fn calls_side_by_side_into_one_folder_all_work() {
    let bench = Bench::empty();
    let editions = editions(&bench);
    bench.add_campaign("jarrah");
    let mut calls = Vec::new();
    for campaign in ["first/mallee", "second/mallee"].repeat(3) {
        calls.push(start(&bench, &report(campaign, "reports")));
    }
    calls.push(start(&bench, &["report", "jarrah", "--format", "html"]));
    for mut call in calls {
        assert!(call.wait().unwrap().success());
    }
    let mut found = files(&bench.path("reports"));
    for ending in ["html", "intervals.csv", "made.json", "rating.json"] {
        let name = format!("jarrah.{ending}");
        assert!(found.remove(&name).is_some(), "{name}");
    }
    assert!(editions.contains(&found), "{:?}", found.keys());
}

#[test]
fn a_call_waits_for_another_that_writes_and_then_clears_what_a_killed_one_left() {
    let bench = Bench::new();
    bench.write("reports/.simmerline-Ab3xY9.part", "half of a file");
    bench.write("reports/.simmerline-notes.txt", "somebody's own");
    let folder = File::open(bench.path("reports")).unwrap();
    folder.lock().unwrap();
    let mut call = start(&bench, &["report", "mallee", "--format", "html"]);
    thread::sleep(Duration::from_millis(700));
    assert!(call.try_wait().unwrap().is_none());
    assert_eq!(files(&bench.path("reports")).len(), 2);
    folder.unlock().unwrap();
    assert!(call.wait().unwrap().success());
    let names: Vec<String> = files(&bench.path("reports")).into_keys().collect();
    let expected = [
        ".simmerline-notes.txt",
        "mallee.html",
        "mallee.intervals.csv",
        "mallee.made.json",
        "mallee.rating.json",
    ];
    assert_eq!(names, expected);
}

const ENTER: [&str; 4] = ["enter", "mallee", "--date", "2026-11-03"];
const SHEET: &str = "10:20 31,5 26 1\n10:30 36 26 1 c\n10:40 40.5 - 1 c\n10:52 45.5 26 2 x\n";

#[test]
fn enter_goes_on_after_any_kill() {
    let bench = Bench::empty();
    let text = campaign();
    let text = &text[..text.find("\n[[run]]").unwrap()];
    bench.write("sheet.txt", SHEET);
    let typed = format!("{SHEET}done\n");
    let from = [&ENTER[..], &["--from", "sheet.txt"]].concat();
    let call = |is_typed: bool| {
        let mut child = start(&bench, if is_typed { &ENTER } else { &from });
        let mut stdin = child.stdin.take().unwrap();
        // A program that does not read it may be gone.
        let _gone = is_typed.then(|| stdin.write_all(typed.as_bytes()));
        child
    };
    let reset = || {
        let _none_yet = fs::remove_dir_all(bench.path("mallee"));
        bench.write("mallee/campaign.toml", text);
    };
    reset();
    let whole = [false, true].map(|is_typed| {
        reset();
        duration(call(is_typed))
    });
    let expected = files(&bench.path("mallee"));
    assert_eq!(expected.len(), 2);
    let log = &expected["2026-11-03.csv"];
    let mut left: BTreeMap<String, usize> = BTreeMap::new();
    for round in 0..kills() {
        reset();
        let is_typed = round % 2 == 1;
        let child = call(is_typed);
        let share = (round as f64 * GOLDEN).fract();
        thread::sleep(whole[usize::from(is_typed)].mul_f64(share));
        kill(child);
        let mut found = files(&bench.path("mallee"));
        found.retain(|name, _| !is_hidden(name));
        let state: Vec<&String> = found.keys().collect();
        let has_run = found["campaign.toml"] != text.as_bytes();
        *left
            .entry(format!("{state:?}, run: {has_run}"))
            .or_default() += 1;
        if let Some(found) = found.get("2026-11-03.csv") {
            assert!(log.starts_with(found), "a log that is no beginning");
            assert!(is_typed || found == log);
        }
        if has_run {
            assert!(found == expected);
        }
        assert!(call(is_typed).wait().unwrap().success());
        assert!(files(&bench.path("mallee")) == expected, "{state:?}");
    }
    println!("enter: {left:?}");
}

#[test]
fn new_goes_on_where_it_was_killed_between_its_files() {
    let bench = Bench::empty();
    bench.run(&["new", "plot"]).exits(0);
    let whole = files(&bench.path("plot"));
    fs::remove_file(bench.path("plot/campaign.toml")).unwrap();
    bench.write("plot/.simmerline-Ab3xY9.part", "half of it");
    bench.run(&["new", "plot"]).exits(0);
    assert!(files(&bench.path("plot")) == whole);
    bench.run(&["new", "plot"]).exits(2);
}

#[test]
fn what_a_killed_verify_leaves_is_removed_by_the_next() {
    let bench = Bench::new();
    bench.report();
    fs::create_dir(bench.path("room")).unwrap();
    // Somebody's own, whatever it is called.
    fs::create_dir(bench.path("room/simmerline-own")).unwrap();
    let verify = || {
        let mut command = Command::new(cargo_bin!("simmerline"));
        command
            .current_dir(bench.root.path())
            .args(["verify", "reports/mallee.pdf"])
            .env("TMPDIR", bench.path("room"))
            .stdout(Stdio::null());
        command.spawn().unwrap()
    };
    let mut running = verify();
    wait_for(&bench.path("room"), &mut running, is_hidden);
    kill(running);
    let count = || fs::read_dir(bench.path("room")).unwrap().count();
    assert_eq!(count(), 2, "it was killed before it took anything out");
    let both = [verify(), verify()];
    for mut call in both {
        assert!(call.wait().unwrap().success());
    }
    assert_eq!(count(), 1);
    assert!(bench.path("room/simmerline-own").is_dir());
}

#[test]
fn verify_names_files_of_another_edition_beside_the_report() {
    let bench = Bench::new();
    bench.report();
    let note = "note: mallee.rating.json beside it is of another edition";
    let agrees = bench.run(&["verify", "reports/mallee.pdf"]).exits(0);
    assert!(!agrees.out.contains("note: "), "{}", agrees.out);
    bench.replace("mallee/campaign.toml", "water_kg = 7.0", "water_kg = 7.5");
    bench
        .run(&["report", "mallee", "--format", "html"])
        .exits(0);
    bench.run(&["verify", "reports/mallee.pdf"]).prints(&[note]);
    bench.write(&format!("reports/{LIST}"), "{}");
    bench
        .run(&["verify", "reports/mallee.pdf"])
        .prints(&["was interrupted or is going on"]);
}
