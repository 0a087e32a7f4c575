//! `watch` at a terminal, while another process writes the log.

use std::fs::{File, OpenOptions};
use std::io::{BufRead, BufReader, Write};
use std::process::Stdio;

use assert_cmd::cargo::cargo_bin;

use crate::bench::{Bench, HEADER, row};
use crate::typist::Typist;

/// 11:00 on 16 April 2026, seconds since 1970, with no colours.
const VARIABLES: [(&str, &str); 2] = [("SOURCE_DATE_EPOCH", "1776337200"), ("NO_COLOR", "1")];

const OPENS: &str = "\u{1b}[?1049h\u{1b}[?25l";
const CLOSES: &str = "\u{1b}[?25h\u{1b}[?1049l";

/// The campaign with the third day's log up to 10:59:50, a row every 10 s.
fn bench() -> Bench {
    let bench = Bench::new();
    let rows: String = (0..3300).step_by(10).map(|s| row(16, s) + "\n").collect();
    bench.write("mallee/day-3.csv", format!("{HEADER}\n{rows}"));
    bench
}

fn log(bench: &Bench) -> File {
    let path = bench.path("mallee/day-3.csv");
    OpenOptions::new().append(true).open(path).unwrap()
}

fn watch(bench: &Bench, arguments: &[&str], columns: u16) -> Typist {
    let arguments = [&["watch", "mallee"], arguments].concat();
    Typist::at(bench.root.path(), &arguments, columns, &VARIABLES)
}

#[test]
fn rows_that_another_process_writes_are_drawn_in_place_until_it_is_interrupted() {
    let bench = bench();
    let mut typist = watch(&bench, &[], 80);
    typist
        .sees(OPENS)
        .sees("Good so far: 4 of 10 min")
        .sees("newest row 10:59:50");
    let path = bench.path("mallee/day-3.csv").display().to_string();
    let command = format!("echo '{}' >> '{path}'", row(16, 3300));
    let mut logger = std::process::Command::new("sh")
        .args(["-c", &command])
        .spawn()
        .unwrap();
    logger.wait().unwrap();
    typist
        .sees("\u{1b}[H")
        .sees("Good so far: 5 of 10 min")
        .sees("newest row 11:00:00");
    typist.signal("INT");
    let (code, shown) = typist.screen();
    assert_eq!(code, 0);
    let shown = String::from_utf8(shown).unwrap();
    let (_, after) = shown
        .rsplit_once(CLOSES)
        .expect("the terminal is left as it was");
    // What stays says how it stood, without a code.
    assert!(after.starts_with("✓ Good so far: 5 of 10 min"), "{after:?}");
    assert!(
        !after.contains('\u{1b}') && !shown.contains('\u{7}'),
        "{shown:?}"
    );
    assert_eq!(shown.matches(OPENS).count(), 1);
}

#[test]
fn the_bell_sounds_once_for_a_spoiled_interval() {
    let bench = bench();
    let mut typist = watch(&bench, &["--sound"], 80);
    typist.sees("Good so far");
    let cloud = row(16, 3300).replace(",896,", ",420,") + "\n";
    log(&bench).write_all(cloud.as_bytes()).unwrap();
    typist.sees("This interval is spoiled").sees("\u{7}");
    let good = row(16, 3310) + "\n";
    log(&bench).write_all(good.as_bytes()).unwrap();
    typist.sees("newest row 11:00:10");
    typist.signal("TERM");
    let (code, shown) = typist.screen();
    assert_eq!(code, 0);
    assert_eq!(shown.iter().filter(|byte| **byte == 7).count(), 1);
}

#[test]
fn a_terminal_that_changes_its_size_is_drawn_anew() {
    let bench = bench();
    let mut typist = watch(&bench, &[], 100);
    typist.sees("Good so far").sees("Local codes");
    typist.resize(60, 6);
    // At 60 columns the first row that wraps is another one.
    typist
        .sees("\u{1b}[H")
        .sees("Good so far")
        .sees("above the air (Td); air\u{1b}[K");
    typist.resize(80, 40);
    typist.sees("Good so far").sees("Local codes");
    typist.signal("INT");
    let (code, shown) = typist.screen();
    let shown = String::from_utf8(shown).unwrap();
    assert_eq!(code, 0, "{shown}");
}

#[test]
fn a_terminal_that_cannot_be_drawn_on_gets_blocks() {
    let bench = bench();
    let variables = [&VARIABLES[..], &[("TERM", "dumb")]].concat();
    let mut typist = Typist::at(bench.root.path(), &["watch", "mallee"], 80, &variables);
    typist.sees("Good so far");
    let cloud = row(16, 3300).replace(",896,", ",420,") + "\n";
    log(&bench).write_all(cloud.as_bytes()).unwrap();
    typist.sees("\n✗ This interval is spoiled");
    typist.signal("INT");
    let (code, shown) = typist.screen();
    assert_eq!(code, 0);
    assert!(!shown.contains(&0x1b));
}

#[test]
fn a_pipe_gets_a_block_when_something_happens_and_a_reader_that_leaves_ends_it() {
    let bench = bench();
    let mut child = std::process::Command::new(cargo_bin!("simmerline"))
        .current_dir(bench.root.path())
        .args(["watch", "mallee"])
        .envs(VARIABLES)
        .stdout(Stdio::piped())
        .spawn()
        .unwrap();
    let mut lines = BufReader::new(child.stdout.take().unwrap()).lines();
    let mut first_behind = |blank: bool| {
        let mut lines = lines.by_ref().map(Result::unwrap);
        if blank {
            // The caution is the last line of a block.
            lines.find(|line| line.starts_with("Never look")).unwrap();
            assert_eq!(lines.next().unwrap(), "");
        }
        lines.next().unwrap()
    };
    assert!(first_behind(false).starts_with("✓ Good so far"));
    // A row in which nothing happens gives no block, the cloud behind it does.
    let quiet = row(16, 3300) + "\n";
    log(&bench).write_all(quiet.as_bytes()).unwrap();
    let cloud = row(16, 3310).replace(",896,", ",420,") + "\n";
    log(&bench).write_all(cloud.as_bytes()).unwrap();
    assert!(first_behind(true).starts_with("✗ This interval is spoiled"));
    drop(lines);
    let sun = (3320..4000).step_by(10).map(|s| row(16, s) + "\n");
    log(&bench)
        .write_all(sun.collect::<String>().as_bytes())
        .unwrap();
    assert!(child.wait().unwrap().success());
}
