//! Campaigns whose logs lie in other folders.

use std::fs;
use std::path::{Path, PathBuf};

use lopdf::Document;
use simmerline::campaign::Reach;
use tempfile::TempDir;

use crate::bench::*;

/// The sample `open-dish` in `NAME/`, with its logs where `place` puts them: the name that the
/// campaign file gives each, and its path.
fn moved(place: impl Fn(&Path, usize, &str) -> (String, PathBuf)) -> (TempDir, PathBuf) {
    let root = TempDir::new().unwrap();
    let folder = root.path().join("moved");
    fs::create_dir(&folder).unwrap();
    let mut text = fs::read_to_string("sample-runs/open-dish/campaign.toml").unwrap();
    for (index, day) in (16..=19).enumerate() {
        let log = format!("2026-09-{day}.csv");
        let (name, path) = place(root.path(), index, &log);
        fs::create_dir_all(path.parent().unwrap()).unwrap();
        fs::copy(Path::new("sample-runs/open-dish").join(&log), path).unwrap();
        assert!(text.contains(&format!("log = \"{log}\"")));
        text = text.replace(&format!("log = \"{log}\""), &format!("log = {name:?}"));
    }
    fs::write(folder.join("campaign.toml"), text).unwrap();
    (root, folder)
}

#[test]
fn logs_of_one_name_in_several_folders_are_told_apart() {
    let (_root, folder) = moved(|root, index, _| match index {
        0 => ("log.csv".to_owned(), root.join("moved/log.csv")),
        1 => ("day-2/log.csv".to_owned(), root.join("moved/day-2/log.csv")),
        2 => ("../shared/log.csv".to_owned(), root.join("shared/log.csv")),
        _ => {
            let path = root.join("far/log.csv");
            (path.display().to_string(), path)
        }
    });
    let pdf = report_reaching(&folder, Reach::Outside);
    let document = Document::load_mem(&pdf).unwrap();
    for (name, day) in [
        ("log.csv", 16),
        ("day-2/log.csv", 17),
        ("input-4-log.csv", 18),
        ("input-5-log.csv", 19),
    ] {
        let original = format!("sample-runs/open-dish/2026-09-{day}.csv");
        assert_eq!(
            attached(&document, name),
            fs::read(original).unwrap(),
            "{name}"
        );
    }
    // The originals are not needed any more.
    fs::remove_dir_all(&folder).unwrap();
    let verification = verified(&pdf);
    assert!(verification.agrees(), "{}", said(&verification));
    let out = TempDir::new().unwrap();
    take_out(&pdf).unwrap().extract(out.path()).unwrap();
    assert!(out.path().join("day-2/log.csv").is_file());
    assert!(out.path().join("input-4-log.csv").is_file());
}

/// A link says nothing by its name, so the report states that what it leads to lay outside.
#[cfg(unix)]
#[test]
fn a_log_that_a_link_led_to_is_verified_as_one_from_outside() {
    let (root, folder) = moved(|root, _, log| (log.to_owned(), root.join("moved").join(log)));
    let log = folder.join("2026-09-17.csv");
    fs::rename(&log, root.path().join("elsewhere.csv")).unwrap();
    std::os::unix::fs::symlink("../elsewhere.csv", &log).unwrap();
    let pdf = report_reaching(&folder, Reach::Outside);
    fs::remove_dir_all(&folder).unwrap();
    let evidence = take_out(&pdf).unwrap();
    let outside: Vec<&str> = evidence
        .inputs
        .iter()
        .filter(|input| input.is_outside)
        .map(|input| input.file.as_str())
        .collect();
    assert_eq!(outside, ["2026-09-17.csv"]);
    let verification = verified(&pdf);
    assert!(verification.agrees(), "{}", said(&verification));
    // Data that do not state it do not give these pages.
    let unsaid = changed(&pdf, |document| {
        let (from, to) = ("\"outside\": true", "\"outside\": false");
        replace_in(document, "moved.rating.json", from, to);
    });
    assert!(!verified(&unsaid).agrees());
}

#[cfg(unix)]
#[test]
fn nothing_is_extracted_through_a_link() {
    let (_root, folder) =
        moved(|root, _, log| (format!("logs/{log}"), root.join("moved/logs").join(log)));
    let evidence = take_out(&report_on(&folder)).unwrap();
    let (out, elsewhere) = (TempDir::new().unwrap(), TempDir::new().unwrap());
    std::os::unix::fs::symlink(elsewhere.path(), out.path().join("logs")).unwrap();
    let error = evidence.extract(out.path()).unwrap_err();
    assert_eq!(error.exit_code(), 2);
    assert!(fs::read_dir(elsewhere.path()).unwrap().next().is_none());
    assert_eq!(fs::read_dir(out.path()).unwrap().count(), 1, "all, or none");
}

#[test]
fn a_log_that_changed_while_it_was_read_is_refused_by_name() {
    let (_root, folder) = moved(|root, _, log| (log.to_owned(), root.join("moved").join(log)));
    let assessment = simmerline::assess_folder(&folder).unwrap();
    let log = folder.join("2026-09-17.csv");
    fs::write(&log, fs::read_to_string(&log).unwrap() + "\n").unwrap();
    let issued = jiff::Timestamp::UNIX_EPOCH;
    let edition = simmerline::report::Edition::plain(issued);
    let error = simmerline::report::outputs(&assessment, &edition)
        .err()
        .unwrap();
    assert_eq!(error.exit_code(), 3);
    let text = error.to_string();
    assert!(
        text.contains("2026-09-17.csv: has changed") && text.contains("hint: "),
        "{text}"
    );
}
