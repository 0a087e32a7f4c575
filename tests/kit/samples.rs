//! The sample runs of the repository.

use std::path::{Path, PathBuf};

/// Names of all sample campaigns, in order.
pub fn sample_names() -> Vec<String> {
    let entries = std::fs::read_dir("sample-runs").expect("the samples are there");
    let folders = entries.map(|entry| entry.expect("a readable entry").path());
    let campaigns = folders.filter(|folder| folder.join("campaign.toml").is_file());
    let mut names: Vec<String> = campaigns
        .filter_map(|folder| Some(folder.file_name()?.to_str()?.to_owned()))
        .collect();
    names.sort();
    assert!(names.len() >= 11, "{names:?}");
    names
}

pub fn sample_folder(name: &str) -> PathBuf {
    Path::new("sample-runs").join(name)
}
