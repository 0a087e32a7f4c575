//! The program as a person meets it: exit codes, messages, and which files are there
//! afterwards. All campaigns are invented and made here.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::Stdio;

use assert_cmd::Command;
use assert_cmd::cargo::{cargo_bin, cargo_bin_cmd};
use serde_json::Value;
use tempfile::TempDir;

/// The campaign that each test spoils in one way: three clear days, and it conforms.
const CAMPAIGN: &str = r#"# Invented data, made by tests/cli.rs
[campaign]
title = "Mallee trough, bare pot"
demonstration = true
tester = "N. Nobody (invented)"

[cooker]
name = "Mallee trough"
type = "concentrating"
intercept_area_m2 = 1.0

[site]
name = "Nowhere flats (invented)"
latitude_deg = -20.0
longitude_deg = 0.0
elevation_m = 100
time_zone = "UTC"

[load]
water_kg = 7.0

[instruments.irradiance]
plane = "normal"

[[run]]
log = "day-1.csv"

[[run]]
log = "day-2.csv"

[[run]]
log = "day-3.csv"
"#;

const HEADER: &str = "time,water_c,ambient_c,irradiance_w_m2,wind_m_s";
const AMBIENT_C: f64 = 26.0;
/// Written by `report` for the campaign `mallee`.
const OUTPUTS: [&str; 3] = ["mallee.intervals.csv", "mallee.pdf", "mallee.rating.json"];

/// Water in a pot that starts at ambient and tends to 91 K above it.
fn water_c(seconds: u32) -> f64 {
    AMBIENT_C + 91.0 * (1.0 - (-f64::from(seconds) / 8600.0).exp())
}

/// One row: `seconds` after the start of a heating, which starts at 10:05 on `day` of April.
fn row(day: u32, seconds: u32) -> String {
    let clock = 10 * 3600 + 5 * 60 + seconds;
    let (hour, minute, second) = (clock / 3600, clock / 60 % 60, clock % 60);
    format!(
        "2026-04-{day:02} {hour:02}:{minute:02}:{second:02},{:.1},{AMBIENT_C:.1},{},0.4",
        water_c(seconds),
        880 + day
    )
}

/// A heating of 230 minutes, a row every five.
fn heating(day: u32) -> String {
    let rows = (0..=46).map(|step| row(day, step * 300) + "\n");
    format!("# Invented data\n{HEADER}\n{}", rows.collect::<String>())
}

/// A folder of its own for each test; the program runs inside it.
struct Bench {
    root: TempDir,
}

/// What a finished program leaves.
struct Ended {
    code: i32,
    out: String,
    err: String,
}

impl Bench {
    fn empty() -> Self {
        Bench {
            root: TempDir::new().unwrap(),
        }
    }

    /// Holds the campaign `mallee`.
    fn new() -> Self {
        let bench = Bench::empty();
        bench.add_campaign("mallee");
        bench
    }

    fn add_campaign(&self, folder: &str) {
        self.write(&format!("{folder}/campaign.toml"), CAMPAIGN);
        for day in 1..=3 {
            self.write(&format!("{folder}/day-{day}.csv"), heating(13 + day));
        }
    }

    fn path(&self, name: &str) -> PathBuf {
        self.root.path().join(name)
    }

    fn read(&self, name: &str) -> String {
        fs::read_to_string(self.path(name)).unwrap()
    }

    fn write(&self, name: &str, content: impl AsRef<[u8]>) {
        let path = self.path(name);
        fs::create_dir_all(path.parent().unwrap()).unwrap();
        fs::write(path, content).unwrap();
    }

    /// Replaces text that must be there; the number of the last new line.
    fn replace(&self, name: &str, from: &str, to: &str) -> usize {
        let text = self.read(name);
        let start = text
            .find(from)
            .unwrap_or_else(|| panic!("{name} does not hold {from:?}"));
        self.write(name, text.replacen(from, to, 1));
        1 + text[..start].matches('\n').count() + to.matches('\n').count()
    }

    /// Changes every line of a file; `None` takes it out.
    fn change_lines(&self, name: &str, change: impl Fn(usize, &str) -> Option<String>) {
        let text = self.read(name);
        let lines = text.lines().enumerate();
        let changed = lines.filter_map(|(index, line)| change(index + 1, line));
        let text: String = changed.map(|line| line + "\n").collect();
        self.write(name, text);
    }

    /// Changes every line of every log that is neither remark nor header.
    fn change_rows(&self, change: impl Fn(&[&str]) -> String) {
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

    fn command(&self, arguments: &[&str]) -> Command {
        let mut command = cargo_bin_cmd!("simmerline");
        command
            .current_dir(self.root.path())
            .env_remove("SOURCE_DATE_EPOCH")
            .args(arguments);
        command
    }

    fn run(&self, arguments: &[&str]) -> Ended {
        Ended::of(&mut self.command(arguments))
    }

    /// Every file below a folder with its content, hidden ones too.
    fn files(&self, folder: &str) -> Vec<(String, Vec<u8>)> {
        let mut files = Vec::new();
        list(&self.path(folder), &mut files);
        files.sort();
        files
    }

    fn names(&self, folder: &str) -> Vec<String> {
        let root = self.path(folder).display().to_string() + "/";
        let files = self.files(folder).into_iter();
        files.map(|(name, _)| name.replace(&root, "")).collect()
    }

    fn rating(&self, name: &str) -> Value {
        serde_json::from_str(&self.read(&format!("reports/{name}.rating.json"))).unwrap()
    }

    /// `report mallee` succeeds; its rating.
    fn report(&self) -> Value {
        self.run(&["report", "mallee"]).exits(0);
        self.rating("mallee")
    }

    /// Neither `report` nor `check` takes the campaign: the exit code, every part of the
    /// message, a remedy, and not one file more or less than before.
    fn refuses(&self, code: i32, parts: &[&str]) -> Ended {
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

fn list(folder: &Path, files: &mut Vec<(String, Vec<u8>)>) {
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
    fn of(command: &mut Command) -> Self {
        let output = command.output().unwrap();
        Ended {
            code: output.status.code().unwrap(),
            out: String::from_utf8(output.stdout).unwrap(),
            err: String::from_utf8(output.stderr).unwrap(),
        }
    }

    fn exits(self, code: i32) -> Self {
        assert_eq!(
            self.code, code,
            "stderr: {}\nstdout: {}",
            self.err, self.out
        );
        self
    }

    /// Standard error holds every part.
    fn says(self, parts: &[&str]) -> Self {
        for part in parts {
            assert!(self.err.contains(part), "no {part:?} in: {}", self.err);
        }
        self
    }

    /// Standard output holds every part.
    fn prints(self, parts: &[&str]) -> Self {
        for part in parts {
            assert!(self.out.contains(part), "no {part:?} in: {}", self.out);
        }
        self
    }
}

/// One replacement in `campaign.toml` makes it invalid; the message names its last line.
fn refuses_campaign(from: &str, to: &str, parts: &[&str]) {
    let bench = Bench::new();
    let line = bench.replace("mallee/campaign.toml", from, to);
    let place = format!("error: mallee/campaign.toml:{line}: ");
    bench.refuses(4, &[&[place.as_str()], parts].concat());
}

/// One replacement in a log makes it unreadable; the message names its last line.
fn refuses_row(from: &str, to: &str, parts: &[&str]) {
    let bench = Bench::new();
    let line = bench.replace("mallee/day-2.csv", from, to);
    let place = format!("error: mallee/day-2.csv:{line}: ");
    bench.refuses(3, &[&[place.as_str()], parts].concat());
}

/// A whole log that cannot be read.
fn refuses_log(content: impl AsRef<[u8]>, parts: &[&str]) {
    let bench = Bench::new();
    bench.write("mallee/day-2.csv", content);
    bench.refuses(3, &[&["error: mallee/day-2.csv"], parts].concat());
}

// report

#[test]
fn report_writes_three_files_and_prints_the_table_alone() {
    let bench = Bench::new();
    let ended = bench.run(&["report", "mallee"]).exits(0);
    assert_eq!(bench.names("reports"), OUTPUTS);
    assert!(
        fs::read(bench.path("reports/mallee.pdf"))
            .unwrap()
            .starts_with(b"%PDF-")
    );
    assert_eq!(ended.err, "", "a pipe shows no progress bar");
    let rating = bench.rating("mallee");
    assert_eq!(rating["schema"], "simmerline.rating/1");
    assert_eq!(rating["conformity"]["level"], "conforms");
    let intervals = rating["intervals"].as_array().unwrap().len();
    assert_eq!(
        bench.read("reports/mallee.intervals.csv").lines().count(),
        intervals + 1
    );
    let ps50_w = rating["rating"]["ps50_w"].as_f64().unwrap();
    let ended = ended.prints(&[
        "cooker",
        "R²",
        "Mallee trough",
        "conforms",
        "reports/mallee.pdf",
    ]);
    let row = ended.out.lines().nth(2).unwrap();
    assert!(row.contains(&format!("  {ps50_w:.0}")), "{row}");
    assert!(row.contains(&format!("/{intervals}  ")), "{row}");
    assert_eq!(ended.out.lines().count(), 3);
}

#[test]
fn report_puts_outputs_into_a_new_folder_named_with_out() {
    let bench = Bench::new();
    bench
        .run(&["report", "mallee", "--out", "a/b"])
        .exits(0)
        .prints(&["a/b/mallee.pdf"]);
    assert_eq!(bench.names("a/b"), OUTPUTS);
    assert!(!bench.path("reports").exists());
}

#[test]
fn quiet_report_prints_nothing_but_errors() {
    let bench = Bench::new();
    bench.write("mallee/day-1.csv", heating(14) + &row(14, 0) + "\n");
    let ended = bench.run(&["report", "mallee", "--quiet"]).exits(0);
    assert_eq!((ended.out.as_str(), ended.err.as_str()), ("", ""));
    assert_eq!(bench.names("reports"), OUTPUTS);
    bench.write("mallee/day-1.csv", "");
    let ended = bench.run(&["report", "mallee", "--quiet"]).exits(3);
    assert_eq!(ended.out, "");
    assert!(
        ended.err.starts_with("error: mallee/day-1.csv"),
        "{}",
        ended.err
    );
}

#[test]
fn strict_report_exits_with_5_only_if_a_rating_is_indicative() {
    let bench = Bench::new();
    bench.run(&["report", "mallee", "--strict"]).exits(0);
    bench.add_campaign("jarrah");
    bench.replace(
        "jarrah/campaign.toml",
        "plane = \"normal\"",
        "plane = \"horizontal\"",
    );
    bench
        .run(&["report", "mallee", "jarrah"])
        .exits(0)
        .prints(&["indicative only"]);
    bench
        .run(&["report", "mallee", "jarrah", "--strict"])
        .exits(5)
        .prints(&["indicative only"]);
    assert_eq!(bench.rating("jarrah")["conformity"]["level"], "indicative");
}

#[test]
fn a_broken_campaign_does_not_stop_the_others() {
    let bench = Bench::empty();
    for name in ["all/acacia", "all/broken", "all/wattle"] {
        bench.add_campaign(name);
    }
    fs::remove_file(bench.path("all/broken/day-3.csv")).unwrap();
    let ended = bench
        .run(&["report", "all"])
        .exits(4)
        .says(&["all/broken/campaign.toml", "day-3.csv"]);
    assert_eq!(ended.err.matches("error: ").count(), 1);
    let stems: Vec<String> = bench.names("reports");
    assert_eq!(stems.len(), 6, "{stems:?}");
    assert!(
        stems
            .iter()
            .all(|name| name.starts_with("acacia.") || name.starts_with("wattle."))
    );
    assert_eq!(ended.out.matches("Mallee trough").count(), 2);
    bench
        .run(&["check", "all"])
        .exits(4)
        .prints(&["acacia: ", "wattle: "]);
}

#[test]
fn a_broken_campaign_outweighs_an_indicative_one() {
    let bench = Bench::new();
    bench.replace(
        "mallee/campaign.toml",
        "plane = \"normal\"",
        "plane = \"horizontal\"",
    );
    bench.add_campaign("broken");
    bench.write("broken/day-1.csv", "");
    bench
        .run(&["report", "mallee", "broken", "--strict"])
        .exits(3);
    assert_eq!(bench.names("reports"), OUTPUTS);
}

#[test]
fn existing_outputs_are_overwritten_and_no_temporary_file_stays() {
    let bench = Bench::new();
    for name in OUTPUTS {
        bench.write(&format!("reports/{name}"), "old");
    }
    bench.report();
    assert_eq!(bench.names("reports"), OUTPUTS);
    for (name, content) in bench.files("reports") {
        assert!(content.len() > 1000, "{name} is still the old one");
    }
}

#[test]
fn an_output_folder_that_is_a_file_or_below_one_is_refused_before_rating() {
    let bench = Bench::new();
    bench.write("taken", "a file");
    let before = bench.files("");
    for out in ["taken", "taken/below"] {
        let ended = bench.run(&["report", "mallee", "--out", out]).exits(2);
        let ended = ended.says(&[&format!("error: {out}: "), "hint: ", "--out"]);
        assert_eq!(ended.out, "");
    }
    assert!(bench.files("") == before);
}

#[test]
fn a_folder_in_the_place_of_an_output_leaves_every_older_output_as_it_was() {
    for taken in OUTPUTS {
        let bench = Bench::new();
        for name in OUTPUTS.into_iter().filter(|name| *name != taken) {
            bench.write(&format!("reports/{name}"), "old");
        }
        bench.write(&format!("reports/{taken}/inside"), "a file");
        let before = bench.files("");
        let ended = bench.run(&["report", "mallee"]).exits(2);
        ended.says(&[&format!("error: reports/{taken}: "), "hint: "]);
        assert!(bench.files("") == before, "{taken}");
    }
}

#[test]
fn the_same_input_and_time_of_issue_give_the_same_files_byte_for_byte() {
    let bench = Bench::new();
    let run = || {
        let mut command = bench.command(&["report", "mallee"]);
        Ended::of(command.env("SOURCE_DATE_EPOCH", "1770000000")).exits(0);
        bench.files("reports")
    };
    let first = run();
    fs::remove_dir_all(bench.path("reports")).unwrap();
    assert!(first == run());
}

#[test]
fn a_time_of_issue_that_is_no_time_is_refused() {
    let bench = Bench::new();
    for fixed in ["yesterday", "", "1.5", "99999999999999999999"] {
        let mut command = bench.command(&["report", "mallee"]);
        let ended = Ended::of(command.env("SOURCE_DATE_EPOCH", fixed)).exits(2);
        ended.says(&["SOURCE_DATE_EPOCH", &format!("\"{fixed}\""), "hint: "]);
        assert!(!bench.path("reports").exists());
    }
}

#[test]
fn a_time_of_issue_far_off_is_refused_or_printed_and_no_fault() {
    let bench = Bench::new();
    for fixed in ["-1", "253402207200", "-62135596801", "-377705023201"] {
        let mut command = bench.command(&["report", "mallee"]);
        let ended = Ended::of(command.env("SOURCE_DATE_EPOCH", fixed));
        assert!([0, 2].contains(&ended.code), "{fixed}: {}", ended.err);
    }
}

#[test]
fn an_error_for_a_reader_that_has_gone_keeps_its_exit_code() {
    let bench = Bench::new();
    bench.write("mallee/day-1.csv", "");
    let mut program = std::process::Command::new(cargo_bin!("simmerline"));
    program
        .current_dir(bench.root.path())
        .args(["report", "mallee"]);
    let (reader, writer) = std::io::pipe().unwrap();
    drop(reader);
    let status = program
        .stdout(Stdio::null())
        .stderr(writer)
        .status()
        .unwrap();
    assert_eq!(status.code(), Some(3));
}

#[test]
fn a_table_for_a_reader_that_has_gone_is_no_error() {
    let bench = Bench::new();
    let mut program = std::process::Command::new(cargo_bin!("simmerline"));
    program
        .current_dir(bench.root.path())
        .args(["report", "mallee"]);
    let (reader, writer) = std::io::pipe().unwrap();
    drop(reader);
    let status = program.stdout(writer).status().unwrap();
    assert_eq!(status.code(), Some(0));
    assert_eq!(bench.names("reports"), OUTPUTS);
}

// check

#[test]
fn check_prints_counts_reasons_findings_and_remedies_and_writes_nothing() {
    let bench = Bench::new();
    for day in [2, 3] {
        let run = format!("\n[[run]]\nlog = \"day-{day}.csv\"\n");
        bench.replace("mallee/campaign.toml", &run, "");
    }
    bench.replace(
        "mallee/campaign.toml",
        "plane = \"normal\"",
        "plane = \"horizontal\"",
    );
    let before = bench.files("");
    let ended = bench.run(&["check", "mallee"]).exits(0).prints(&[
        "mallee: Mallee trough, bare pot (invented data)",
        "set aside for",
        "Indicative only",
        "too-few-intervals: ",
        "too-few-days: used intervals on 1 day, the practice asks for 3",
        "irradiance-not-normal: ",
        "mend: used intervals on 2 more days",
        "mend: mount the sensor",
        "water-below-window (1): ",
        "helps: start with water",
    ]);
    assert_eq!(ended.err, "");
    let row = ended.out.lines().find(|line| line.starts_with("day-1.csv"));
    let cells: Vec<&str> = row.unwrap().split_whitespace().collect();
    // 47 readings five minutes apart make 23 intervals.
    assert_eq!(cells[..4], ["day-1.csv", "2026-04-14", "47", "23"]);
    let used: usize = cells[4].parse().unwrap();
    assert!((1..23).contains(&used), "{row:?}");
    assert!(
        ended
            .out
            .contains(&format!("{} more intervals and 2 more days", 30 - used))
    );
    assert!(bench.files("") == before);
    assert!(!bench.path("reports").exists());
}

#[test]
fn check_of_a_conforming_campaign_says_that_it_is_enough() {
    let bench = Bench::new();
    let ended = bench.run(&["check", "mallee"]).exits(0);
    ended.prints(&["Conforms. Ps(50) so far ", "intervals and days are enough"]);
}

// new

#[test]
fn a_new_campaign_is_understood_up_to_its_empty_log() {
    let bench = Bench::empty();
    bench
        .run(&["new", "plot"])
        .exits(0)
        .prints(&["plot", "campaign.toml", "run-1.csv"]);
    assert_eq!(bench.names("plot"), ["campaign.toml", "run-1.csv"]);
    assert_eq!(bench.read("plot/run-1.csv"), format!("{HEADER}\n"));
    let ended = bench.run(&["check", "plot"]).exits(3);
    ended.says(&[
        "error: plot/run-1.csv: has a header and no readings",
        "hint: ",
    ]);
    bench.write("plot/run-1.csv", heating(14));
    bench
        .run(&["check", "plot"])
        .exits(0)
        .prints(&["run-1.csv"]);
}

#[test]
fn every_key_that_a_new_campaign_file_shows_is_known() {
    let bench = Bench::empty();
    bench.run(&["new", "plot"]).exits(0);
    let is_key = |text: &str| {
        let name = text.split(" = ").next().unwrap_or_default();
        text.contains(" = ")
            && name
                .bytes()
                .all(|b| b.is_ascii_lowercase() || b == b'_' || b.is_ascii_digit())
    };
    let mut shown = 0;
    let text = bench.read("plot/campaign.toml");
    let lines = text
        .lines()
        .filter(|line| !line.starts_with("intercept_area_m2"));
    let uncommented = lines.map(|line| match line.strip_prefix("# ") {
        Some(rest) if is_key(rest) || rest.starts_with('[') => {
            shown += 1;
            format!("{rest}\n")
        }
        _ => format!("{line}\n"),
    });
    let text: String = uncommented.collect();
    assert!(shown > 30, "{shown}");
    bench.write("plot/campaign.toml", text.replace("photo = ", "# photo = "));
    let header = "Date Time,T1,T2,Air,Sun,Wind";
    let rows = heating(14)
        .lines()
        .skip(2)
        .map(|row| {
            let cells: Vec<&str> = row.split(',').collect();
            format!(
                "{},{},{},{},{},{}\n",
                cells[0], cells[1], cells[1], cells[2], cells[3], cells[4]
            )
        })
        .collect::<String>();
    bench.write("plot/run-1.csv", format!("{header}\n{rows}"));
    bench
        .run(&["check", "plot"])
        .exits(0)
        .prints(&["excluded-by-tester"]);
}

#[test]
fn new_overwrites_neither_a_campaign_file_nor_a_log() {
    let bench = Bench::empty();
    bench.write("with-file/campaign.toml", "mine");
    bench.write("with-log/run-1.csv", "mine");
    bench.write("taken", "a file");
    let before = bench.files("");
    for (folder, named) in [
        ("with-file", "with-file/campaign.toml"),
        ("with-log", "with-log/run-1.csv"),
        ("taken", "taken"),
        ("taken/below", "taken/below"),
    ] {
        let ended = bench.run(&["new", folder]).exits(2);
        ended.says(&[&format!("error: {named}: "), "hint: ", "choose"]);
    }
    assert!(bench.files("") == before);
}

// help, version, completions, manual

#[test]
fn help_of_the_program_and_of_each_command_shows_an_example_and_the_exit_codes() {
    let bench = Bench::empty();
    let ended = bench.run(&["--help"]).exits(0);
    ended.prints(&[
        "report",
        "check",
        "new",
        "completions",
        "manual",
        "Example",
        "Exit codes:",
    ]);
    for command in ["report", "check", "new", "completions", "manual"] {
        for flag in ["--help", "-h"] {
            let ended = bench.run(&[command, flag]).exits(0);
            let example = format!("simmerline {command}");
            ended.prints(&["Example:", &example, "Exit codes:", "  2  "]);
        }
    }
}

#[test]
fn help_names_every_exit_code() {
    let ended = Bench::empty().run(&["--help"]).exits(0);
    for code in 0..=5 {
        assert!(
            ended.out.contains(&format!("\n  {code}  ")),
            "{code}: {}",
            ended.out
        );
    }
}

#[test]
fn version_is_that_of_the_crate() {
    let ended = Bench::empty().run(&["--version"]).exits(0);
    assert_eq!(
        ended.out,
        format!("simmerline {}\n", env!("CARGO_PKG_VERSION"))
    );
}

#[test]
fn a_command_line_that_asks_for_nothing_or_for_the_unknown_is_refused() {
    let bench = Bench::new();
    for arguments in [
        &[][..],
        &["report"],
        &["check"],
        &["new"],
        &["rate", "mallee"],
        &["report", "mallee", "--stric"],
        &["completions", "abacus"],
    ] {
        let ended = bench.run(arguments).exits(2);
        assert!(
            ended.err.contains("Usage") || ended.err.contains("possible values"),
            "{}",
            ended.err
        );
    }
}

#[test]
fn completions_of_each_shell_know_commands_and_options() {
    let bench = Bench::empty();
    for shell in ["bash", "zsh", "fish"] {
        let ended = bench.run(&["completions", shell]).exits(0);
        let ended = ended.prints(&["simmerline", "report", "check", "strict", "quiet"]);
        assert_eq!(ended.err, "");
    }
}

#[test]
fn the_manual_page_has_every_command_and_the_exit_codes() {
    let ended = Bench::empty().run(&["manual"]).exits(0);
    let ended = ended.prints(&[
        ".TH",
        "report",
        "check",
        "completions",
        "strict",
        "Exit codes",
    ]);
    assert_eq!(ended.err, "");
}

// paths

#[test]
fn a_path_without_a_campaign_is_refused_with_what_to_do() {
    let bench = Bench::new();
    fs::create_dir(bench.path("bare")).unwrap();
    let before = bench.files("");
    for (path, part) in [
        ("nowhere", "error: nowhere: cannot be opened"),
        ("bare", "error: bare: holds no campaign.toml"),
        (
            "mallee/day-1.csv",
            "error: mallee/day-1.csv: is a file, expected a folder",
        ),
        (
            "mallee/day-1.csv/x",
            "error: mallee/day-1.csv/x: cannot be opened",
        ),
    ] {
        for command in ["report", "check"] {
            let ended = bench.run(&[command, "mallee", path]).exits(2);
            let ended = ended.says(&[part, "\nhint: "]);
            assert_eq!(ended.out, "");
        }
    }
    bench
        .run(&["check", "bare"])
        .exits(2)
        .says(&["simmerline new bare"]);
    assert!(bench.files("") == before);
}

#[test]
fn campaigns_are_found_below_a_folder_but_not_in_hidden_ones_and_each_once() {
    let bench = Bench::empty();
    bench.add_campaign("shed/shelf/wattle");
    bench.add_campaign("shed/acacia");
    bench.add_campaign("shed/.old/acacia");
    let ended = bench
        .run(&["check", "shed", "shed/acacia", "shed/acacia/campaign.toml"])
        .exits(0);
    let titles: Vec<&str> = ended
        .out
        .lines()
        .filter(|line| line.contains("(invented data)"))
        .collect();
    let named = |name: &str| {
        titles
            .iter()
            .filter(|title| title.starts_with(name))
            .count()
    };
    assert_eq!(
        (titles.len(), named("acacia: "), named("wattle: ")),
        (2, 1, 1)
    );
}

#[test]
fn a_campaign_folder_named_by_a_dot_keeps_its_name() {
    let bench = Bench::new();
    let mut command = bench.command(&["report", "."]);
    Ended::of(command.current_dir(bench.path("mallee"))).exits(0);
    assert_eq!(bench.names("mallee/reports"), OUTPUTS);
}

#[test]
fn two_campaign_folders_of_one_name_are_refused() {
    let bench = Bench::empty();
    bench.add_campaign("first/mallee");
    bench.add_campaign("second/mallee");
    let before = bench.files("");
    let ended = bench.run(&["report", "first", "second"]).exits(2);
    ended.says(&[
        "error: second/mallee: ",
        "named \"mallee\"",
        "\nhint: ",
        "--out",
    ]);
    assert!(bench.files("") == before);
}

// a campaign file that is wrong

#[test]
fn a_syntax_error_is_refused_with_its_line() {
    refuses_campaign("type = \"concentrating\"", "type = \"concentrating", &[]);
    refuses_campaign("elevation_m = 100", "elevation_m = 1,5", &[]);
    refuses_campaign("[load]", "[load", &[]);
}

#[test]
fn a_campaign_file_that_is_no_text_or_empty_is_refused() {
    for content in [
        &b"\xff\xfe[\x00c\x00"[..],
        b"",
        b"\x00\x01\x02",
        b"[campaign]\ntitle = \"\xe4\"\n",
    ] {
        let bench = Bench::new();
        bench.write("mallee/campaign.toml", content);
        bench.refuses(4, &["error: mallee/campaign.toml"]);
    }
    let bench = Bench::new();
    fs::remove_file(bench.path("mallee/campaign.toml")).unwrap();
    fs::create_dir(bench.path("mallee/campaign.toml")).unwrap();
    bench.refuses(4, &["error: mallee/campaign.toml: cannot be read"]);
}

#[test]
fn an_unknown_key_is_refused_and_the_nearest_suggested() {
    refuses_campaign(
        "latitude_deg",
        "lattitude_deg",
        &["\"lattitude_deg\"", "did you mean \"latitude_deg\"?"],
    );
    refuses_campaign(
        "water_kg = 7.0",
        "water_kg = 7.0\nvesels = 2",
        &["did you mean \"vessels\"?"],
    );
    refuses_campaign(
        "water_kg = 7.0",
        "water_kg = 7.0\n[limits]\nwind_gust = 3",
        &["did you mean \"wind_gust_m_s\"?"],
    );
}

#[test]
fn an_unknown_table_is_refused_and_the_nearest_suggested() {
    refuses_campaign(
        "[instruments.irradiance]",
        "[instrument.irradiance]",
        &["did you mean \"instruments\"?"],
    );
}

#[test]
fn a_missing_key_or_table_is_refused_by_name() {
    for (line, key) in [
        ("title = \"Mallee trough, bare pot\"\n", "\"title\""),
        ("latitude_deg = -20.0\n", "\"latitude_deg\""),
        ("water_kg = 7.0\n", "\"water_kg\""),
        ("time_zone = \"UTC\"\n", "\"time_zone\""),
        ("type = \"concentrating\"\n", "\"type\""),
        ("intercept_area_m2 = 1.0\n", "intercept_area_m2"),
        ("[load]\nwater_kg = 7.0\n", "[load]"),
    ] {
        let bench = Bench::new();
        bench.replace("mallee/campaign.toml", line, "");
        bench.refuses(4, &["error: mallee/campaign.toml", key]);
    }
}

#[test]
fn a_campaign_without_a_run_is_refused() {
    let bench = Bench::new();
    let text = bench.read("mallee/campaign.toml");
    bench.write(
        "mallee/campaign.toml",
        text.split("[[run]]").next().unwrap(),
    );
    bench.refuses(4, &["there is no run", "[[run]]", "log = "]);
}

#[test]
fn a_value_of_a_wrong_type_is_refused_with_its_line() {
    refuses_campaign(
        "latitude_deg = -20.0",
        "latitude_deg = \"20 S\"",
        &["hint: "],
    );
    refuses_campaign(
        "demonstration = true",
        "demonstration = \"yes\"",
        &["hint: "],
    );
    refuses_campaign("log = \"day-2.csv\"", "log = [\"day-2.csv\"]", &["hint: "]);
}

#[test]
fn a_number_out_of_sense_is_refused_with_its_line_key_and_bounds() {
    for (from, to, key, bounds) in [
        (
            "latitude_deg = -20.0",
            "latitude_deg = 123",
            "latitude_deg",
            "-90 to 90 degrees",
        ),
        (
            "longitude_deg = 0.0",
            "longitude_deg = 181.0",
            "longitude_deg",
            "-180 to 180 degrees",
        ),
        (
            "elevation_m = 100",
            "elevation_m = 9000",
            "elevation_m",
            "6000 m",
        ),
        ("water_kg = 7.0", "water_kg = 0", "water_kg", "more than 0"),
        (
            "water_kg = 7.0",
            "water_kg = -7.0",
            "water_kg",
            "more than 0",
        ),
        (
            "intercept_area_m2 = 1.0",
            "intercept_area_m2 = -1.0",
            "intercept_area_m2",
            "0.001 to 1000 m²",
        ),
        (
            "log = \"day-2.csv\"",
            "log = \"day-2.csv\"\nwater_kg = 0.0",
            "water_kg",
            "more than 0",
        ),
        (
            "water_kg = 7.0",
            "water_kg = 7.0\nvessels = 0",
            "vessels",
            "at least 1",
        ),
        (
            "elevation_m = 100",
            "elevation_m = 100\npressure_hpa = 1.013",
            "pressure_hpa",
            "400 to 1100 hPa",
        ),
        (
            "plane = \"normal\"",
            "relative_uncertainty = 3",
            "relative_uncertainty",
            "0 to 1",
        ),
    ] {
        refuses_campaign(from, to, &[&format!("{key}: found "), bounds]);
    }
}

#[test]
fn values_that_are_no_numbers_are_refused_at_each_key() {
    for (from, to) in [
        ("latitude_deg = -20.0", "latitude_deg = nan"),
        ("longitude_deg = 0.0", "longitude_deg = inf"),
        ("elevation_m = 100", "elevation_m = -inf"),
        ("water_kg = 7.0", "water_kg = inf"),
        ("water_kg = 7.0", "water_kg = nan"),
        ("intercept_area_m2 = 1.0", "intercept_area_m2 = nan"),
        ("intercept_area_m2 = 1.0", "intercept_area_m2 = inf"),
        (
            "water_kg = 7.0",
            "water_kg = 7.0\n[limits]\nambient_min_c = nan",
        ),
        (
            "water_kg = 7.0",
            "water_kg = 7.0\n[limits]\nambient_max_c = inf",
        ),
        ("plane = \"normal\"", "relative_uncertainty = nan"),
        (
            "intercept_area_m2 = 1.0",
            "[cooker.aperture]\nshape = \"circle\"\ndiameter_m = nan",
        ),
        (
            "type = \"concentrating\"",
            "type = \"concentrating\"\nmass_kg = nan",
        ),
        (
            "type = \"concentrating\"",
            "type = \"concentrating\"\ncost = inf",
        ),
        (
            "log = \"day-2.csv\"",
            "log = \"day-2.csv\"\ntracking_interval_min = nan",
        ),
    ] {
        let (key, value) = to.lines().last().unwrap().split_once(" = ").unwrap();
        let found = format!("found {}, expected ", value.parse::<f64>().unwrap());
        refuses_campaign(from, to, &[&format!("{key}: "), &found]);
    }
}

#[test]
fn own_limits_that_leave_nothing_or_no_hour_of_the_day_are_refused() {
    for (limits, key) in [
        ("solar_time_start_h = 30", "solar_time_start_h"),
        ("solar_time_end_h = -1", "solar_time_end_h"),
        ("wind_gust_m_s = -1", "wind_gust_m_s"),
        ("ambient_min_c = 35\nambient_max_c = 20", "ambient_m"),
        ("water_min_c = 90\nwater_max_c = 40", "water_m"),
    ] {
        let bench = Bench::new();
        let to = format!("water_kg = 7.0\n[limits]\n{limits}");
        bench.replace("mallee/campaign.toml", "water_kg = 7.0", &to);
        bench.refuses(4, &["error: mallee/campaign.toml:", key]);
    }
}

#[test]
fn both_area_and_aperture_are_refused() {
    refuses_campaign(
        "intercept_area_m2 = 1.0",
        "aperture = { shape = \"circle\", diameter_m = 1.1 }\nintercept_area_m2 = 1.0",
        &[
            "intercept_area_m2",
            "[cooker.aperture]",
            "expected one",
            "delete the other",
        ],
    );
}

#[test]
fn an_aperture_that_is_no_shape_is_refused() {
    for (aperture, part) in [
        ("{ shape = \"square\" }", "\"square\""),
        ("{ shape = \"circle\" }", "diameter_m"),
        ("{ shape = \"rectangle\", width_m = 1.0 }", "height_m"),
        (
            "{ shape = \"regular-polygon\", sides = 2, across_corners_m = 1.0 }",
            "sides",
        ),
        (
            "{ shape = \"outline\", points_m = [[0, 0], [1, 1]] }",
            "2 points",
        ),
        (
            "{ shape = \"outline\", points_m = [[0, 0], [1, 1], [1, 0], [0, 1]] }",
            "crosses itself",
        ),
        (
            "{ shape = \"circle\", diameter_m = 1.0, incidence_deg = 95 }",
            "incidence_deg",
        ),
        (
            "{ shape = \"outline\", points_m = [[0, 0], [1, 1], [2, 2]] }",
            "aperture",
        ),
    ] {
        let to = format!("aperture = {aperture}");
        refuses_campaign("intercept_area_m2 = 1.0", &to, &["aperture", part]);
    }
}

#[test]
fn an_unknown_zone_is_refused_and_the_nearest_suggested() {
    refuses_campaign(
        "\"UTC\"",
        "\"Africa/Nairoby\"",
        &["\"Africa/Nairoby\"", "did you mean \"Africa/Nairobi\"?"],
    );
    for zone in ["", "+25:00", "-5", "UTC+2", "local"] {
        refuses_campaign(
            "time_zone = \"UTC\"",
            &format!("time_zone = \"{zone}\""),
            &["time_zone", "\"-05:00\""],
        );
    }
}

#[test]
fn a_word_that_is_not_among_the_known_ones_is_refused_with_those() {
    refuses_campaign(
        "\"concentrating\"",
        "\"parabolic\"",
        &["\"parabolic\"", "\"box\"", "\"tube\""],
    );
    refuses_campaign(
        "\"normal\"",
        "\"tilted\"",
        &["\"tilted\"", "\"horizontal\""],
    );
    refuses_campaign(
        "demonstration = true",
        "procedure = \"X9\"",
        &["\"X9\"", "\"S580.1\""],
    );
}

#[test]
fn an_uncertainty_under_a_key_of_another_quantity_is_refused() {
    refuses_campaign(
        "water_kg = 7.0",
        "water_kg = 7.0\n[instruments.water_temperature]\nrelative_uncertainty = 0.01",
        &["relative_uncertainty", "did you mean \"uncertainty_k\"?"],
    );
}

#[test]
fn a_time_or_date_of_a_run_that_is_none_is_refused() {
    for (key, value) in [
        ("start", "\"10.05\""),
        ("end", "\"25:00\""),
        ("date", "\"14 April\""),
    ] {
        let to = format!("log = \"day-2.csv\"\n{key} = {value}");
        refuses_campaign(
            "log = \"day-2.csv\"",
            &to,
            &[key, value.trim_matches('"'), "hint: write"],
        );
    }
}

#[test]
fn a_start_and_end_that_leave_no_reading_are_refused() {
    let bench = Bench::new();
    let to = "log = \"day-2.csv\"\nstart = \"14:30\"";
    bench.replace("mallee/campaign.toml", "log = \"day-2.csv\"", to);
    bench.refuses(4, &["mallee/campaign.toml", "day-2.csv", "start and end"]);
}

#[test]
fn an_exclusion_that_ends_before_it_begins_is_refused() {
    let bench = Bench::new();
    let to = "log = \"day-2.csv\"\nexclude = [{ from = \"12:00\", to = \"11:00\" }]";
    bench.replace("mallee/campaign.toml", "log = \"day-2.csv\"", to);
    bench.refuses(
        4,
        &["mallee/campaign.toml", "day-2.csv", "ends before it begins"],
    );
}

#[test]
fn every_problem_of_a_campaign_file_is_listed_at_once() {
    let bench = Bench::new();
    bench.replace(
        "mallee/campaign.toml",
        "latitude_deg = -20.0",
        "latitude_deg = 123",
    );
    bench.replace("mallee/campaign.toml", "water_kg = 7.0", "water_kg = 0");
    bench.replace("mallee/campaign.toml", "day-3.csv", "day-4.csv");
    let ended = bench.refuses(4, &["latitude_deg", "water_kg", "\"day-4.csv\""]);
    assert_eq!(ended.err.matches("error: ").count(), 3, "{}", ended.err);
    // Two of them are mended alike and share a hint.
    assert_eq!(ended.err.matches("hint: ").count(), 2, "{}", ended.err);
}

#[test]
fn two_runs_that_name_one_log_are_refused() {
    for name in ["day-2.csv", "./day-2.csv", "../mallee/day-2.csv"] {
        refuses_campaign(
            "\"day-3.csv\"",
            &format!("\"{name}\""),
            &["[[run]] 3", "same log as [[run]] 2"],
        );
    }
}

// a log that is wrong

#[test]
fn a_log_that_is_not_there_is_refused_with_its_line_in_the_campaign_file() {
    refuses_campaign(
        "day-2.csv",
        "day-two.csv",
        &["[[run]] 2", "\"day-two.csv\" is not there", "mallee"],
    );
}

#[test]
fn an_empty_log_is_refused() {
    for content in ["", "\n \r\n\n", "\u{feff}"] {
        refuses_log(content, &["is empty", "expected a header and readings"]);
    }
    refuses_log("# Invented data\n", &["only remarks"]);
}

#[test]
fn a_log_with_a_header_only_is_refused() {
    refuses_log(format!("{HEADER}\n"), &["has a header and no readings"]);
    refuses_log(
        format!("{HEADER}\n,,,,\n"),
        &["has a header and no readings"],
    );
}

#[test]
fn a_log_without_a_needed_column_is_refused_with_the_columns_that_are_there() {
    let bench = Bench::new();
    bench.replace("mallee/day-2.csv", HEADER, "time,water_c,air,sun,breeze");
    bench.refuses(
        3,
        &[
            "error: mallee/day-2.csv: has no column \"ambient_c\"",
            "there are: \"time\", \"water_c\", \"air\", \"sun\", \"breeze\"",
            "hint: ",
            "[columns] ambient_temperature",
        ],
    );
}

#[test]
fn a_column_that_the_campaign_file_names_and_the_log_lacks_is_refused() {
    let bench = Bench::new();
    bench.replace(
        "mallee/campaign.toml",
        "[[run]]",
        "[columns]\nwind_speed = \"Vane\"\n[[run]]",
    );
    bench.refuses(
        3,
        &[
            "mallee/day-1.csv",
            "\"Vane\"",
            "mallee/day-3.csv",
            "\"wind_m_s\"",
        ],
    );
}

#[test]
fn a_column_that_is_there_twice_is_refused() {
    let bench = Bench::new();
    bench.replace(
        "mallee/day-2.csv",
        HEADER,
        "time,water_c,ambient_c,water_c,wind_m_s",
    );
    bench.refuses(3, &["mallee/day-2.csv", "\"water_c\" 2 times"]);
}

#[test]
fn a_log_with_semicolons_is_refused_with_a_remedy() {
    refuses_log(
        heating(15).replace(',', ";"),
        &["day-2.csv:2: ", "semicolons", "commas"],
    );
}

#[test]
fn text_where_a_number_belongs_is_refused_with_line_and_column() {
    for found in ["9l.4", "26,5", "n.a.", "inf", "1e999", "26.0 °C"] {
        let row = row(15, 600);
        let cells: Vec<&str> = row.split(',').collect();
        let quoted = format!(
            "{},\"{found}\",{},{},{}",
            cells[0], cells[2], cells[3], cells[4]
        );
        let parts = [
            "column \"water_c\"",
            &format!("found \"{found}\""),
            "a number in °C",
        ];
        refuses_row(&row, &quoted, &parts);
    }
}

#[test]
fn of_25_bad_cells_20_are_listed_and_5_counted() {
    let bench = Bench::new();
    bench.change_lines("mallee/day-2.csv", |line, text| {
        let spoiled = (11..36).contains(&line);
        Some(if spoiled {
            text.replace(",0.4", ",O.4")
        } else {
            text.to_owned()
        })
    });
    let ended = bench.refuses(
        3,
        &[
            "mallee/day-2.csv:11: column \"wind_m_s\"",
            "mallee/day-2.csv:30: ",
            "5 more problems",
        ],
    );
    assert_eq!(ended.err.matches("error: ").count(), 20, "{}", ended.err);
    assert!(
        !ended.err.contains("mallee/day-2.csv:31: "),
        "{}",
        ended.err
    );
}

#[test]
fn bad_cells_of_several_logs_are_listed_together() {
    let bench = Bench::new();
    for (day, rows) in [(1, 3..18), (2, 3..18)] {
        bench.change_lines(&format!("mallee/day-{day}.csv"), |line, text| {
            Some(if rows.contains(&line) {
                text.replace(",0.4", ",O.4")
            } else {
                text.to_owned()
            })
        });
    }
    let ended = bench.refuses(
        3,
        &[
            "mallee/day-1.csv:17: ",
            "mallee/day-2.csv:7: ",
            "10 more problems",
        ],
    );
    assert_eq!(ended.err.matches("error: ").count(), 20);
}

#[test]
fn a_time_that_is_none_is_refused_with_its_line() {
    let row = row(15, 600);
    for (time, part) in [
        (
            "half past ten",
            "found \"half past ten\", expected a date and time",
        ),
        ("2026-04-15", "expected a date and time"),
        ("10:15:00", "expected a date and time"),
        ("2026-04-31 10:15:00", "expected a date and time"),
        ("2026-04-15 25:15:00", "expected a date and time"),
        ("15.04.2026 10:15", "expected a date and time"),
        ("0001-04-15 10:15:00", "expected a date and time"),
        ("", "the time is missing"),
    ] {
        let spoiled = row.replacen("2026-04-15 10:15:00", time, 1) + " ";
        refuses_row(
            &row,
            &spoiled,
            &["column \"time\": ", part, "2026-03-14 10:20:00"],
        );
    }
}

#[test]
fn a_row_with_more_or_fewer_cells_than_the_header_is_refused_with_its_line() {
    let row = row(15, 600);
    refuses_row(&row, &(row.clone() + ",7"), &["found 6 cells, expected 5"]);
    refuses_row(
        &row,
        "2026-04-15 10:15:00,31.2",
        &["found 2 cells, expected 5"],
    );
}

#[test]
fn a_quote_that_is_never_closed_is_refused() {
    let row = row(15, 600);
    refuses_row(&row, &row.replacen(',', ",\"", 1), &["hint: "]);
}

#[test]
fn lines_are_counted_with_remarks_and_blank_lines() {
    let bad = row(15, 600).replace(",0.4", ",O.4");
    for before in ["# a remark\n", "\n", "\n# one\n\n# two\n"] {
        refuses_row(&row(15, 600), &format!("{before}{bad}"), &["found \"O.4\""]);
    }
}

#[test]
fn temperatures_in_fahrenheit_are_refused_and_the_unit_named() {
    let fahrenheit = |cell: &str| format!("{:.1}", cell.parse::<f64>().unwrap() * 1.8 + 32.0);
    let bench = Bench::new();
    bench.change_rows(|cells| match cells {
        ["time", ..] => HEADER.to_owned(),
        [time, water, rest @ ..] => format!("{time},{},{}", fahrenheit(water), rest.join(",")),
        _ => unreachable!("every row has cells"),
    });
    bench.refuses(
        3,
        &[
            "error: mallee/day-1.csv: water temperature",
            "looks like °F",
        ],
    );
    let bench = Bench::new();
    bench.change_rows(|cells| match cells {
        ["time", ..] => HEADER.to_owned(),
        [time, water, air, rest @ ..] => {
            format!("{time},{water},{},{}", fahrenheit(air), rest.join(","))
        }
        _ => unreachable!("every row has cells"),
    });
    bench.refuses(
        3,
        &[
            "error: mallee/day-1.csv: ambient temperature",
            "looks like °F",
        ],
    );
}

#[test]
fn irradiance_in_kilowatts_is_refused_and_the_unit_named() {
    let bench = Bench::new();
    bench.change_rows(|cells| cells.join(",").replace(",26.0,8", ",26.0,0.8"));
    bench.refuses(3, &["error: mallee/day-1.csv: irradiance", "kW/m²"]);
}

#[test]
fn a_log_without_one_valid_water_reading_is_refused() {
    let bench = Bench::new();
    bench.change_rows(|cells| match cells {
        ["time", ..] => HEADER.to_owned(),
        [time, _, rest @ ..] => format!("{time},-9999,{}", rest.join(",")),
        _ => unreachable!("every row has cells"),
    });
    bench.refuses(
        3,
        &["error: mallee/day-1.csv", "has no valid water temperature"],
    );
}

#[test]
fn bytes_that_are_no_text_are_refused() {
    let every_byte: Vec<u8> = (0..=255).cycle().take(5000).collect();
    refuses_log(every_byte, &["binary data", "CSV in UTF-8"]);
    let high_bytes: Vec<u8> = (128..=255).cycle().take(5000).collect();
    refuses_log(high_bytes, &["not UTF-8", "CSV in UTF-8"]);
    let mut latin_1 = heating(15).into_bytes();
    latin_1.extend(b"\xb0C,,,,\n");
    refuses_log(latin_1, &["day-2.csv:50: ", "not UTF-8", "CSV in UTF-8"]);
}

#[test]
fn a_log_in_utf_16_is_refused() {
    let big: Vec<u8> = heating(15)
        .encode_utf16()
        .flat_map(u16::to_be_bytes)
        .collect();
    let little: Vec<u8> = heating(15)
        .encode_utf16()
        .flat_map(u16::to_le_bytes)
        .collect();
    refuses_log([b"\xfe\xff".as_slice(), &big].concat(), &["CSV in UTF-8"]);
    refuses_log(
        [b"\xff\xfe".as_slice(), &little].concat(),
        &["CSV in UTF-8"],
    );
    refuses_log(little, &["CSV in UTF-8"]);
}

#[test]
fn a_folder_as_log_is_refused() {
    let bench = Bench::new();
    fs::remove_file(bench.path("mallee/day-2.csv")).unwrap();
    fs::create_dir(bench.path("mallee/day-2.csv")).unwrap();
    bench.refuses(
        3,
        &[
            "error: mallee/day-2.csv: cannot be read",
            "check that it is a file",
        ],
    );
}

#[test]
fn a_log_without_a_name_is_refused() {
    let bench = Bench::new();
    bench.replace("mallee/campaign.toml", "\"day-2.csv\"", "\"\"");
    let ended = bench.run(&["check", "mallee"]);
    assert!([3, 4].contains(&ended.code), "{}", ended.err);
    ended.says(&["hint: "]);
}

// logs that are odd and still good

#[test]
fn three_rows_only_are_reported_without_a_rating() {
    let bench = Bench::new();
    for day in 1..=3 {
        let rows: Vec<String> = [0, 600, 1200].map(|s| row(13 + day, s)).to_vec();
        bench.write(
            &format!("mallee/day-{day}.csv"),
            format!("{HEADER}\n{}\n", rows.join("\n")),
        );
    }
    let one_run = CAMPAIGN.replace(
        "\n[[run]]\nlog = \"day-2.csv\"\n\n[[run]]\nlog = \"day-3.csv\"\n",
        "",
    );
    bench.write("mallee/campaign.toml", one_run);
    let rating = bench.report();
    assert_eq!(rating["rating"], Value::Null);
    assert_eq!(rating["regression"], Value::Null);
    assert_eq!(rating["intervals"].as_array().unwrap().len(), 2);
    bench
        .run(&["report", "mallee"])
        .exits(0)
        .prints(&["no rating", "indicative only"]);
    bench
        .run(&["check", "mallee"])
        .exits(0)
        .prints(&["No rating yet", "no-rating: "]);
}

#[test]
fn one_row_gives_no_interval_and_a_notice_that_says_so() {
    let bench = Bench::new();
    for day in 1..=3 {
        bench.write(
            &format!("mallee/day-{day}.csv"),
            format!("{HEADER}\n{}\n", row(13 + day, 0)),
        );
    }
    let ended = bench.run(&["report", "mallee"]).exits(0);
    let ended = ended.says(&[
        "note: mallee: day-1.csv: ",
        "there is no interval",
        "steps that add up to ten minutes",
    ]);
    ended.prints(&["no rating", "0/0"]);
    assert_eq!(
        bench.rating("mallee")["intervals"],
        Value::Array(Vec::new())
    );
}

#[test]
fn a_hole_in_a_log_is_named_with_its_times() {
    let bench = Bench::new();
    bench.change_lines("mallee/day-2.csv", |_, text| {
        let in_hole = text > "2026-04-15 11:00" && text < "2026-04-15 11:45";
        (!in_hole).then(|| text.to_owned())
    });
    let ended = bench.run(&["check", "mallee"]).exits(0);
    ended.prints(&["day-2.csv: no interval from 10:55 to 11:45 on 2026-04-15"]);
    let rating = bench.report();
    assert!(rating["rating"]["ps50_w"].is_number());
}

#[test]
fn more_columns_in_any_order_give_the_same_rating() {
    let bench = Bench::new();
    let plain = bench.report();
    bench.change_rows(|cells| match cells {
        ["time", ..] => "wind_m_s,lux,irradiance_w_m2, Time ,note,water_c,ambient_c".to_owned(),
        [time, water, air, sun, wind] => format!("{wind},9,{sun},{time},\"a, b\",{water},{air}"),
        _ => unreachable!("every row has five cells"),
    });
    let mixed = bench.report();
    for key in ["rating", "regression", "intervals", "conformity"] {
        assert_eq!(plain[key], mixed[key], "{key}");
    }
    assert_ne!(plain["provenance"], mixed["provenance"]);
}

#[test]
fn a_header_after_a_byte_order_mark_with_carriage_returns_is_understood() {
    let bench = Bench::new();
    let plain = bench.report();
    for day in 1..=3 {
        let name = format!("mallee/day-{day}.csv");
        let text = bench
            .read(&name)
            .replace("# Invented data\n", "")
            .replace('\n', "\r\n");
        bench.write(&name, format!("\u{feff}{text}"));
    }
    assert_eq!(plain["intervals"], bench.report()["intervals"]);
}

#[test]
fn two_mapped_water_sensors_give_their_mean() {
    let bench = Bench::new();
    let plain = bench.report();
    let columns = "[columns]\ntime = \"Stamp\"\nwater_temperature = [\"Left\", \"Right\"]\n\
        ambient_temperature = \"Air\"\nirradiance = \"Pyr\"\nwind_speed = \"Vane\"\n[[run]]";
    bench.replace("mallee/campaign.toml", "[[run]]", columns);
    bench.change_rows(|cells| match cells {
        ["time", ..] => "Stamp,Left,Right,Air,Pyr,Vane".to_owned(),
        [time, water, rest @ ..] => {
            let water: f64 = water.parse().unwrap();
            format!(
                "{time},{:.1},{:.1},{}",
                water - 0.5,
                water + 0.5,
                rest.join(",")
            )
        }
        _ => unreachable!("every row has cells"),
    });
    let mapped = bench.report();
    let ps50_w = |rating: &Value| rating["rating"]["ps50_w"].as_f64().unwrap();
    // The mean of two decimal fractions differs from the third by rounding alone.
    assert!((ps50_w(&plain) / ps50_w(&mapped) - 1.0).abs() < 1e-9);
    assert_eq!(plain["conformity"], mapped["conformity"]);
}

#[test]
fn blanks_and_fault_values_are_missing_and_never_numbers() {
    let bench = Bench::new();
    bench.change_lines("mallee/day-2.csv", |line, text| {
        let mut cells: Vec<&str> = text.split(',').collect();
        match line {
            11 => cells[3] = "-9999",
            13 => cells[3] = "",
            15 => cells[1] = "-999.0",
            17 => cells[4] = "NaN",
            _ => {}
        }
        Some(cells.join(","))
    });
    let ended = bench.run(&["report", "mallee"]).exits(0).says(&[
        "note: mallee: day-2.csv: 1 fault value in column \"irradiance_w_m2\"",
        "note: mallee: day-2.csv: 1 fault value in column \"water_c\"",
    ]);
    assert_eq!(ended.err.lines().count(), 2, "{}", ended.err);
    let csv = bench.read("reports/mallee.intervals.csv");
    assert!(!csv.contains("-999") && !csv.contains("NaN"));
    let rating = bench.rating("mallee");
    let means = rating["intervals"]
        .as_array()
        .unwrap()
        .iter()
        .map(|i| i["irradiance_mean_w_m2"].as_f64().unwrap());
    assert!(means.into_iter().all(|mean| (890.0..900.0).contains(&mean)));
}

#[test]
fn unsorted_and_repeated_rows_are_noticed_and_change_no_number() {
    let bench = Bench::new();
    let plain = bench.report();
    let text = bench.read("mallee/day-2.csv");
    let mut lines: Vec<&str> = text.lines().collect();
    let repeated = lines[20].replace(",0.4", ",0.9");
    lines.insert(21, &repeated);
    lines.swap(5, 30);
    bench.write("mallee/day-2.csv", lines.join("\n"));
    bench.run(&["report", "mallee"]).exits(0).says(&[
        "note: mallee: day-2.csv: the rows were not in order of time and have been sorted",
        "note: mallee: day-2.csv: 1 row with the time of an earlier row left out; the first counts",
    ]);
    let rating = bench.rating("mallee");
    assert_eq!(plain["intervals"], rating["intervals"]);
    assert_eq!(plain["rating"], rating["rating"]);
    assert_eq!(rating["notices"].as_array().unwrap().len(), 2);
}

#[test]
fn a_log_of_a_million_rows_is_reported() {
    use std::fmt::Write;
    let bench = Bench::new();
    let mut text = format!("# Invented data\n{HEADER}\n");
    for second in 0..1_000_000_u32 {
        let (day, clock) = (5 + second / 86_400, second % 86_400);
        let (hour, minute) = (clock / 3600, clock / 60 % 60);
        let heated = clock.saturating_sub(36_300).min(14_400);
        let water_c = water_c(heated);
        writeln!(
            text,
            "2026-04-{day:02} {hour:02}:{minute:02}:{:02},{water_c:.2},{AMBIENT_C},900,0.4",
            clock % 60
        )
        .unwrap();
    }
    bench.write("mallee/day-2.csv", text);
    let ended = bench.run(&["report", "mallee", "--quiet"]).exits(0);
    assert_eq!((ended.out.as_str(), ended.err.as_str()), ("", ""));
    assert_eq!(bench.rating("mallee")["runs"][1]["readings"], 1_000_000);
}
