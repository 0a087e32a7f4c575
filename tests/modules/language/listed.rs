//! Where the languages are listed for the user: every one, and none that is not there.

use std::fs;
use std::process::Command;

use simmerline::language::LANGUAGES;

/// The codes in a line's remark.
fn codes(line: &str) -> Vec<String> {
    let (_, remark) = line.split_once('#').unwrap();
    let words = remark.split(|letter: char| !letter.is_ascii_alphabetic());
    let codes = words.filter(|word| word.len() == 2 && *word != "of" && *word != "or");
    codes.map(str::to_owned).collect()
}

fn line_of<'a>(text: &'a str, start: &str) -> &'a str {
    let mut lines = text.lines();
    lines.find(|line| line.starts_with(start)).unwrap()
}

#[test]
fn the_manual_names_every_language() {
    let manual = fs::read_to_string("templates/manual/handing-over.md").unwrap();
    let listed = codes(line_of(&manual, "language = "));
    assert_eq!(listed, LANGUAGES.map(|language| language.code));
}

#[test]
fn a_new_campaign_file_names_every_language() {
    let folder = tempfile::tempdir().unwrap();
    let mut new = Command::new(env!("CARGO_BIN_EXE_simmerline"));
    let status = new.arg("new").arg(folder.path()).output().unwrap().status;
    assert!(status.success());
    let written = fs::read_to_string(folder.path().join("campaign.toml")).unwrap();
    let line = line_of(&written, "# language = ");
    let listed = codes(&line["# ".len()..]);
    assert_eq!(listed, LANGUAGES.map(|language| language.code));
}
