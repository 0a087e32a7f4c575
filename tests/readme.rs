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

#[test]
fn readme_shows_what_the_program_prints() {
    // In a folder of its own, so that nobody's reports are overwritten.
    let folder = TempDir::new().unwrap();
    copy(Path::new("sample-runs"), &folder.path().join("sample-runs"));
    let readme = folder.path().join("README.md");
    fs::copy("README.md", &readme).unwrap();
    trycmd::TestCases::new().case(readme).run();
}
