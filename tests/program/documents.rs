//! What README and manual show on a terminal is what the program prints.

use std::fs;
use std::path::{Path, PathBuf};

use tempfile::TempDir;

use crate::bench::Bench;
use crate::kit::files::copy;

/// The README, and the parts of the manual, which lie beside each other.
fn documents() -> Vec<PathBuf> {
    let parts = fs::read_dir("templates/manual").unwrap();
    let mut documents: Vec<PathBuf> = parts.map(|entry| entry.unwrap().path()).collect();
    documents.sort();
    documents.insert(0, "README.md".into());
    documents
}

/// A document with one of its terminal blocks left, at its line, for each of them.
fn blocks(document: &str) -> Vec<String> {
    let starts: Vec<usize> = document
        .match_indices("```console")
        .map(|(at, _)| at)
        .collect();
    let block = |start: &usize| {
        let length = document[start + 3..].find("\n```\n").expect("a block ends") + 8;
        let lines_before = document[..*start].matches('\n').count();
        "\n".repeat(lines_before) + &document[*start..start + length]
    };
    starts.iter().map(block).collect()
}

#[test]
fn readme_and_manual_show_what_the_program_prints() {
    let mut count = 0;
    for document in documents() {
        let name = document.file_name().unwrap();
        // In a folder of its own, so that nobody's reports and samples are overwritten:
        // commands run in `NAME.in` beside `NAME.md`. One block after the other, since each
        // goes on from what the last has left.
        let folder = TempDir::new().unwrap();
        let shown = folder.path().join(name);
        let inside = shown.with_extension("in");
        copy(Path::new("sample-runs"), &inside.join("sample-runs"));
        // The manual's "cp -r".
        let sample = Path::new("sample-runs/kitchen-thermometer");
        copy(sample, &inside.join("my-basin"));
        for block in blocks(&fs::read_to_string(&document).unwrap()) {
            fs::write(&shown, block).unwrap();
            // As on a terminal of 80 columns.
            trycmd::TestCases::new()
                .env("COLUMNS", "80")
                .case(&shown)
                .run();
            count += 1;
        }
    }
    assert!(count >= 12, "{count}");
}

/// What somebody must have read before the first test stands in both.
#[test]
fn readme_has_cautions_and_limitations_of_the_manual() {
    let readme = fs::read_to_string("README.md").unwrap();
    for part in ["cautions", "limitations"] {
        let text = fs::read_to_string(format!("templates/manual/{part}.md")).unwrap();
        let section = format!("#{text}");
        assert!(readme.contains(section.trim()), "{part}: {section}");
    }
}

/// The words of a page, without what sets them.
fn words(text: &str) -> Vec<String> {
    let words = text.split(|letter: char| !letter.is_alphanumeric());
    let words = words.filter(|word| !word.is_empty());
    words.map(str::to_owned).collect()
}

#[test]
fn every_part_of_the_manual_is_printed_and_on_the_page_for_man() {
    let bench = Bench::empty();
    let list = bench.run(&["manual"]).exits(0);
    let page = bench.run(&["manual", "--man"]).exits(0);
    // Of its fonts and marks, what is left is the text.
    let of_page = page.out.replace("\\fB", " ").replace("\\fR", " ");
    let of_page = words(&of_page.replace("\\*(Aq", " ").replace("\\-", "-")).join(" ");
    for document in documents().into_iter().skip(1) {
        let name = document.file_stem().unwrap().to_str().unwrap();
        assert!(list.out.contains(&format!("\n  {name} ")), "{name}");
        let printed = words(&bench.run(&["manual", name]).exits(0).out).join(" ");
        let text = fs::read_to_string(&document).unwrap();
        let lines = text.lines().filter(|line| !line.starts_with("```"));
        let text = lines.collect::<Vec<_>>().join("\n").replace("\n- ", "\n\n");
        // Sentences without titles, code and links, between which the setting may differ.
        let paragraphs = text.split("\n\n").filter(|part| !part.starts_with('#'));
        let plain =
            paragraphs.flat_map(|part| part.split(['`', '*', '|', '[', ']', '(', ')', '#', '\'']));
        let plain = plain.filter(|piece| !piece.starts_with("../"));
        for piece in plain.map(words).filter(|piece| piece.len() > 3) {
            let piece = piece.join(" ");
            assert!(printed.contains(&piece), "{name}: {piece}");
            assert!(of_page.contains(&piece), "{name}, page: {piece}");
        }
    }
}

#[test]
fn a_topic_that_is_none_is_refused_with_those_that_are() {
    let ended = Bench::empty().run(&["manual", "log"]).exits(2);
    assert!(
        ended.err.contains("logs") && ended.err.contains("uncertainty"),
        "{}",
        ended.err
    );
    Bench::empty().run(&["manual", "logs", "--man"]).exits(2);
}
