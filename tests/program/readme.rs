//! What the README shows on a terminal is what the program prints.

use std::fs;
use std::path::Path;

use tempfile::TempDir;

/// Copies a folder and what is below it.
fn copy(from: &Path, to: &Path) {
    fs::create_dir_all(to).unwrap();
    for entry in fs::read_dir(from).unwrap() {
        let entry = entry.unwrap();
        let target = to.join(entry.file_name());
        if entry.file_type().unwrap().is_dir() {
            copy(&entry.path(), &target);
        } else {
            fs::copy(entry.path(), target).unwrap();
        }
    }
}

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
    // run where the test does. One block after the other, since each goes on from what the
    // last has left.
    let folder = TempDir::new().unwrap();
    copy(Path::new("sample-runs"), &folder.path().join("sample-runs"));
    // The README's "cp -r".
    let sample = Path::new("sample-runs/kitchen-thermometer");
    copy(sample, &folder.path().join("my-basin"));
    let blocks = blocks(&fs::read_to_string("README.md").unwrap());
    assert!(blocks.len() >= 6, "{}", blocks.len());
    std::env::set_current_dir(folder.path()).unwrap();
    for block in blocks {
        let readme = folder.path().join("README.md");
        fs::write(&readme, block).unwrap();
        trycmd::TestCases::new().case(readme).run();
    }
}
