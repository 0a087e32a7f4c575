//! Links in README, guide and manual lead to files and headings that are there.

use std::fs;
use std::path::{Path, PathBuf};

fn documents() -> Vec<PathBuf> {
    let parts = fs::read_dir("templates/manual").unwrap();
    let parts = parts.map(|entry| entry.unwrap().path());
    let others = ["README.md", "DEVELOPERS.md", "sample-runs/README.md"];
    others.map(PathBuf::from).into_iter().chain(parts).collect()
}

/// The text outside blocks of code.
fn prose(text: &str) -> String {
    text.split("```").step_by(2).collect()
}

fn links(text: &str) -> Vec<&str> {
    let starts = text.match_indices("](").map(|(at, _)| at + 2);
    starts
        .filter_map(|at| text[at..].split(')').next())
        .collect()
}

/// The anchor of a heading, as the places that show repositories make it.
fn anchor(heading: &str) -> String {
    let kept = heading.trim().to_lowercase();
    let kept = kept
        .chars()
        .filter(|letter| letter.is_alphanumeric() || " -_".contains(*letter));
    kept.map(|letter| if letter == ' ' { '-' } else { letter })
        .collect()
}

fn has_anchor(text: &str, wanted: &str) -> bool {
    let headings = text.lines().filter(|line| line.starts_with('#'));
    let mut anchors = headings.map(|line| anchor(line.trim_start_matches('#')));
    anchors.any(|anchor| anchor == wanted)
}

#[test]
fn every_link_leads_to_a_file_and_a_heading() {
    let mut count = 0;
    for document in documents() {
        let text = prose(&fs::read_to_string(&document).unwrap());
        let folder = document.parent().unwrap_or(Path::new(""));
        for link in links(&text)
            .into_iter()
            .filter(|link| !link.contains("://"))
        {
            let (file, heading) = link.split_once('#').unwrap_or((link, ""));
            let target = match file.is_empty() {
                true => document.clone(),
                false => folder.join(file),
            };
            assert!(target.exists(), "{}: {link}", document.display());
            if !heading.is_empty() {
                let text = prose(&fs::read_to_string(&target).unwrap());
                assert!(has_anchor(&text, heading), "{}: {link}", document.display());
            }
            count += 1;
        }
    }
    assert!(count > 12, "{count}");
}

#[test]
fn an_anchor_is_that_of_its_heading() {
    assert_eq!(
        anchor(" What `verify` promises, and what not"),
        "what-verify-promises-and-what-not"
    );
}
