//! A pattern in place of a log's name: which files it makes runs of.

use std::fs;

use simmerline::campaign::model::Campaign;
use simmerline::campaign::{Reach, inputs_of, read_campaign};
use simmerline::error::Result;
use simmerline::procedure::s580::own_limits::check_own_limits;
use simmerline::report::comparison::outputs::COMPARISON_CSV;
use simmerline::report::result_names;
use tempfile::TempDir;

use crate::kit::campaign::Invented;
use crate::kit::files::write;
use crate::kit::header::HEADER;
use crate::kit::heating::row_with;

/// A campaign with these `[[run]]` tables and these files.
fn read(runs: &str, files: &[&str]) -> (TempDir, Result<Campaign>) {
    let folder = TempDir::new().unwrap();
    write(
        folder.path(),
        "campaign.toml",
        Invented::default().text(&[]) + runs,
    );
    for (day, file) in (1..).zip(files) {
        write(
            folder.path(),
            file,
            format!("{HEADER}\n{}\n", row_with(day, 0, "30")),
        );
    }
    let read = read_campaign(folder.path(), Reach::Inside, check_own_limits);
    (folder, read)
}

/// Number of the `[[run]]` table and log of each run.
fn runs(runs: &str, files: &[&str]) -> Vec<(usize, String)> {
    let (folder, campaign) = read(runs, files);
    let campaign = campaign.unwrap_or_else(|error| panic!("{runs}\n{error}"));
    // The same files, whatever their order.
    let mut early = inputs_of(folder.path(), Reach::Inside).unwrap();
    let mut late = campaign.input_files();
    for inputs in [&mut early, &mut late] {
        inputs.sort_by(|one, other| one.name.cmp(&other.name));
    }
    assert_eq!(early, late);
    campaign
        .runs
        .into_iter()
        .map(|run| (run.number, run.log))
        .collect()
}

fn logs(text: &str, files: &[&str]) -> Vec<String> {
    runs(text, files).into_iter().map(|(_, log)| log).collect()
}

fn refused(text: &str, files: &[&str]) -> String {
    read(text, files).1.unwrap_err().to_string()
}

#[test]
fn a_pattern_makes_a_run_of_each_file_in_the_order_of_their_names() {
    let files = [
        "b-2.csv",
        "b-1.csv",
        "a.csv",
        "b-10.csv",
        "b-1.CSV",
        "logs/b-3.csv",
        "B-4.csv",
    ];
    let all = [
        ("b-*.csv", vec!["b-1.csv", "b-10.csv", "b-2.csv"]),
        ("b-?.csv", vec!["b-1.csv", "b-2.csv"]),
        ("logs/*", vec!["logs/b-3.csv"]),
        ("./?.csv", vec!["./a.csv"]),
        ("**a**.csv", vec!["a.csv"]),
    ];
    for (pattern, expected) in all {
        assert_eq!(
            logs(&format!("[[run]]\nlog = \"{pattern}\"\n"), &files),
            expected,
            "{pattern}"
        );
    }
}

#[test]
fn all_else_that_the_run_says_holds_for_each() {
    let text = "[[run]]\nlog = \"*.csv\"\nwater_kg = 6.5\nnotes = \"aimed by hand\"\nstart = \"10:30\"\n\
                tracking_interval_min = 20\n[[run.exclude]]\nfrom = \"11:00\"\nto = \"11:10\"\n";
    let campaign = read(text, &["a.csv", "b.csv"]).1.unwrap();
    assert_eq!(campaign.runs.len(), 2);
    for run in &campaign.runs {
        assert_eq!((run.water_kg, run.tracking_interval_min), (6.5, Some(20.0)));
        assert_eq!(run.notes.as_deref(), Some("aimed by hand"));
        assert_eq!((run.exclusions.len(), run.start.is_some()), (1, true));
        assert!(run.is_matched && run.line == campaign.runs[0].line);
    }
}

#[test]
fn what_is_named_what_is_hidden_and_what_is_ours_is_passed_over() {
    let ours = [
        result_names("mine").intervals,
        result_names("mine").rating,
        COMPARISON_CSV.to_owned(),
        "2026-09-11.sheet.txt".to_owned(),
        ".hidden.csv".to_owned(),
    ];
    let mut files = vec!["a.csv", "b.csv", "c.csv", "station.csv"];
    files.extend(ours.iter().map(String::as_str));
    let text = "[[run]]\nlog = \"*\"\nweather = \"station.csv\"\n[[run]]\nlog = \"./b.csv\"\nwater_kg = 5\n";
    let expected = [(1, "a.csv"), (1, "c.csv"), (2, "./b.csv")];
    assert_eq!(
        runs(text, &files),
        expected.map(|(number, log)| (number, log.to_owned()))
    );
    // Named, they are logs like any other.
    let text = "[[run]]\nlog = \"*.csv\"\n[[run]]\nlog = \".hidden.csv\"\n";
    assert_eq!(
        logs(text, &[".hidden.csv", "a.csv"]),
        ["a.csv", ".hidden.csv"]
    );
}

#[test]
fn a_name_that_is_there_is_taken_as_it_is() {
    let files = ["a?.csv", "ab.csv", "[x]1.csv", "x1.csv", "*.csv"];
    for (log, expected) in [
        ("a?.csv", vec!["a?.csv"]),
        ("*.csv", vec!["*.csv"]),
        ("[x]1.csv", vec!["[x]1.csv"]),
        // A bracket stands for itself.
        ("[x]?.csv", vec!["[x]1.csv"]),
    ] {
        assert_eq!(
            logs(&format!("[[run]]\nlog = \"{log}\"\n"), &files),
            expected,
            "{log}"
        );
    }
}

#[test]
fn what_a_pattern_cannot_be_is_told_with_its_line() {
    let one = |log: &str| format!("[[run]]\nlog = \"{log}\"\n");
    let line = Invented::default().text(&[]).lines().count() + 2;
    for (text, expected) in [
        (one("x*.csv"), "the pattern \"x*.csv\" matches no file"),
        (
            one("none/*.csv"),
            "the pattern \"none/*.csv\" matches no file",
        ),
        (
            one("../*.csv"),
            "the pattern \"../*.csv\" leads out of the campaign's folder",
        ),
        (
            one("/tmp/*.csv"),
            "the pattern \"/tmp/*.csv\" leads out of the campaign's folder",
        ),
        (one("l*/a.csv"), "the log \"l*/a.csv\" is not there"),
        (
            one("*.csv") + &one("a*"),
            "the pattern matches \"a.csv\", as that of [[run]] 1 does",
        ),
        (
            one("*.csv") + "date = 2026-04-01\n",
            "is about one day (date)",
        ),
        (
            one("*.csv") + "start = \"2026-04-01 10:00\"\n",
            "is about one day (start)",
        ),
        (
            one("*.csv") + "[[run.cloudless]]\nfrom = \"2026-04-01 10:00\"\nto = \"11:00\"\n",
            "is about one day (cloudless)",
        ),
    ] {
        let said = refused(&text, &["a.csv", "b.csv", "logs/a.csv"]);
        assert!(
            said.contains(expected) && said.contains("\nhint: "),
            "{expected}\n{said}"
        );
        let place = said.lines().find(|line| line.contains(expected)).unwrap();
        let found: usize = place
            .split("campaign.toml:")
            .nth(1)
            .unwrap()
            .split(':')
            .next()
            .unwrap()
            .parse()
            .unwrap();
        assert!((line..line + 3).contains(&found), "{line}: {said}");
    }
    let said = refused(&one("*.csv"), &["a.csv", "a\u{7}.csv"]);
    assert!(
        said.contains("a file whose name holds the character U+0007"),
        "{said}"
    );
}

#[test]
fn a_pattern_makes_no_more_runs_than_a_campaign_has() {
    let names: Vec<String> = (0..2_001).map(|n| format!("{n}.csv")).collect();
    let names: Vec<&str> = names.iter().map(String::as_str).collect();
    let said = refused("[[run]]\nlog = \"*.csv\"\n", &names);
    assert!(
        said.contains("found 2001 runs, expected at most 2000"),
        "{said}"
    );
}

#[cfg(unix)]
#[test]
fn a_link_that_leads_out_is_refused_and_not_followed() {
    use std::os::unix::fs::symlink;
    let (folder, _) = read("[[run]]\nlog = \"*.csv\"\n", &["a.csv"]);
    let elsewhere = TempDir::new().unwrap();
    fs::copy(folder.path().join("a.csv"), elsewhere.path().join("b.csv")).unwrap();
    symlink(elsewhere.path().join("b.csv"), folder.path().join("b.csv")).unwrap();
    let read = || read_campaign(folder.path(), Reach::Inside, check_own_limits);
    let said = read().unwrap_err().to_string();
    assert!(
        said.contains("the log \"b.csv\" lies outside the campaign's folder"),
        "{said}"
    );
    fs::remove_file(folder.path().join("b.csv")).unwrap();
    symlink(elsewhere.path(), folder.path().join("far")).unwrap();
    let text = fs::read_to_string(folder.path().join("campaign.toml")).unwrap();
    write(
        folder.path(),
        "campaign.toml",
        text.replace("*.csv", "far/*.csv"),
    );
    let outside = read_campaign(folder.path(), Reach::Outside, check_own_limits);
    let said = outside.unwrap_err().to_string();
    assert!(said.contains("where no pattern is followed"), "{said}");
}
