//! The check before a release, on copies of the message files.

use std::fs;
use std::path::Path;
use std::process::{Command, Output};

use simmerline::language::{LANGUAGES, STILL_TO_TRANSLATE};

use super::files::file_of;

fn check(folder: &Path) -> Output {
    let mut check = Command::new(".ci/release");
    check.arg(folder).output().unwrap()
}

#[test]
fn a_release_with_a_message_still_to_translate_is_refused_by_name() {
    let copy = tempfile::tempdir().unwrap();
    for language in LANGUAGES {
        let path = copy.path().join(format!("{}.ftl", language.code));
        let text: String = file_of(&language)
            .lines()
            .map(|line| match line.split_once(" = ") {
                Some((name @ ("list" | "headline-label"), _)) if language.code == "sw" => {
                    format!("{name} = {STILL_TO_TRANSLATE}\n")
                }
                Some((_, STILL_TO_TRANSLATE)) => "month-1 = 1\n".to_owned(),
                _ => format!("{line}\n"),
            })
            .collect();
        fs::write(path, text).unwrap();
    }
    let refused = check(copy.path());
    assert_eq!(refused.status.code(), Some(1));
    let said = String::from_utf8(refused.stdout).unwrap();
    for expected in ["sw.ftl: list\n", "sw.ftl: headline-label\n"] {
        assert!(said.contains(expected), "{said}");
    }
}

#[test]
fn a_release_whose_messages_are_all_translated_passes() {
    let copy = tempfile::tempdir().unwrap();
    fs::write(copy.path().join("fr.ftl"), "under = sous { $number }\n").unwrap();
    let passed = check(copy.path());
    assert!(passed.status.success() && passed.stdout.is_empty());
}

#[test]
fn a_release_without_message_files_is_refused() {
    let empty = tempfile::tempdir().unwrap();
    assert!(!check(empty.path()).status.success());
}
