//! What the README shows on a terminal is what the program prints.

use std::fs;
use std::path::Path;

use tempfile::TempDir;

use crate::kit::files::copy;

/// The README with one of its terminal blocks left, at its line, for each of them.
fn blocks(readme: &str) -> Vec<String> {
    let starts: Vec<usize> = readme
        .match_indices("```console")
        .map(|(at, _)| at)
        .collect();
    let block = |start: &usize| {
        let length = readme[start + 3..].find("\n```\n").expect("a block ends") + 8;
        let lines_before = readme[..*start].matches('\n').count();
        "\n".repeat(lines_before) + &readme[*start..start + length]
    };
    starts.iter().map(block).collect()
}

#[test]
fn readme_shows_what_the_program_prints() {
    // In a folder of its own, so that nobody's reports and samples are overwritten: commands
    // run in `NAME.in` beside `NAME.md`. One block after the other, since each goes on from
    // what the last has left.
    let folder = TempDir::new().unwrap();
    let inside = folder.path().join("README.in");
    copy(Path::new("sample-runs"), &inside.join("sample-runs"));
    // The README's "cp -r".
    let sample = Path::new("sample-runs/kitchen-thermometer");
    copy(sample, &inside.join("my-basin"));
    let blocks = blocks(&fs::read_to_string("README.md").unwrap());
    assert!(blocks.len() >= 6, "{}", blocks.len());
    for block in blocks {
        let readme = folder.path().join("README.md");
        fs::write(&readme, block).unwrap();
        // As on a terminal of 80 columns.
        trycmd::TestCases::new()
            .env("COLUMNS", "80")
            .case(readme)
            .run();
    }
}
