//! Files written together, what killed calls leave, and what is cleared away.

use std::fs;
use std::path::Path;

use simmerline::hash::sha256_hex;
use simmerline::report::files::{
    Apart, FileFacts, Output, not_together, prepare_folder, replace_file, workplace, write_all,
};
use tempfile::TempDir;

const NAMES: [&str; 3] = ["mallee.pdf", "mallee.rating.json", "mallee.intervals.csv"];
const LIST: &str = "mallee.unfinished.json";

fn edition(which: &str) -> Vec<Output> {
    let output = |name: &str| Output {
        name: name.to_owned(),
        bytes: format!("{name} of the {which} edition").into_bytes(),
    };
    NAMES.iter().map(|name| output(name)).collect()
}

fn names(folder: &Path) -> Vec<String> {
    let entries = fs::read_dir(folder).unwrap();
    let mut names: Vec<String> = entries
        .map(|entry| entry.unwrap().file_name().into_string().unwrap())
        .collect();
    names.sort();
    names
}

fn part(index: usize) -> String {
    format!(".simmerline-Ab{index}xY9.part")
}

/// A folder as a call leaves it that was killed when it had put so many of its files in place.
fn killed_after(put: usize) -> TempDir {
    let folder = TempDir::new().unwrap();
    write_all(folder.path(), "mallee", &edition("old")).unwrap();
    let mut files = Vec::new();
    for (index, output) in edition("new").into_iter().enumerate() {
        let name = if index < put {
            output.name.clone()
        } else {
            part(index)
        };
        fs::write(folder.path().join(name), &output.bytes).unwrap();
        files.push(serde_json::json!({
            "part": part(index),
            "name": output.name,
            "length": output.bytes.len(),
            "sha256": sha256_hex(&output.bytes),
        }));
    }
    let list = serde_json::json!({"what": "", "tool_version": "", "files": files});
    fs::write(folder.path().join(LIST), list.to_string()).unwrap();
    folder
}

fn holds(folder: &Path, which: &str) -> bool {
    let is_of = |output: &Output| fs::read(folder.join(&output.name)).unwrap() == output.bytes;
    edition(which).iter().all(is_of)
}

#[test]
fn whatever_a_kill_leaves_between_two_renames_is_finished_by_the_next_call() {
    for put in 0..=NAMES.len() {
        let folder = killed_after(put);
        let facts: Vec<FileFacts> = edition("new").iter().map(Output::facts).collect();
        let apart = not_together(folder.path(), "mallee", &facts);
        assert_eq!(apart[0], Apart::Unfinished);
        assert_eq!(apart.len(), 1 + NAMES.len() - put);
        let notes = prepare_folder(folder.path()).unwrap();
        assert!(
            notes[0].contains("writing mallee was interrupted"),
            "{notes:?}"
        );
        assert!(holds(folder.path(), "new"), "{put}");
        assert_eq!(names(folder.path()).len(), NAMES.len());
        assert_eq!(not_together(folder.path(), "mallee", &facts), []);
        assert_eq!(prepare_folder(folder.path()).unwrap(), [""; 0]);
    }
}

#[test]
fn what_cannot_be_finished_says_so_until_it_is_written_again() {
    let folder = killed_after(1);
    let path = folder.path();
    // A part is spoilt, with its length as before.
    let spoilt = path.join(part(2));
    let length = fs::read(&spoilt).unwrap().len();
    fs::write(&spoilt, vec![b'x'; length]).unwrap();
    let notes = prepare_folder(path).unwrap();
    assert!(notes[0].contains("may be of two editions"), "{notes:?}");
    let expected = [NAMES[2], NAMES[0], NAMES[1], LIST];
    assert_eq!(names(path), expected, "the list stays, no part does");
    assert!(!holds(path, "new") && !holds(path, "old"));
    assert_eq!(not_together(path, "mallee", &[]), [Apart::Unfinished]);
    write_all(path, "mallee", &edition("new")).unwrap();
    assert!(holds(path, "new"));
    assert_eq!(not_together(path, "mallee", &[]), []);
    assert_eq!(prepare_folder(path).unwrap(), [""; 0]);
}

#[test]
fn a_list_leads_to_no_other_folder_and_may_hold_anything() {
    let root = TempDir::new().unwrap();
    let folder = root.path().join("reports");
    fs::create_dir(&folder).unwrap();
    let content = b"not theirs";
    let secret = root.path().join(part(0));
    fs::write(&secret, content).unwrap();
    let file = |part: &str, name: &str| {
        serde_json::json!({
            "part": part, "name": name, "length": content.len(), "sha256": sha256_hex(content),
        })
    };
    let inside = part(1);
    for (list, is_list) in [
        (file(&format!("../{}", part(0)), "taken"), true),
        (file(&secret.display().to_string(), "taken"), true),
        (file(&inside, "../taken"), true),
        (file("kept", "taken"), true),
        (serde_json::json!("anything"), false),
    ] {
        fs::write(folder.join(&inside), content).unwrap();
        fs::write(folder.join("kept"), content).unwrap();
        let list = match is_list {
            true => serde_json::json!({"what": "", "tool_version": "", "files": [list]}),
            false => list,
        };
        fs::write(folder.join("x.unfinished.json"), list.to_string()).unwrap();
        prepare_folder(&folder).unwrap();
        assert_eq!(names(&folder), ["kept", "x.unfinished.json"], "{list}");
        assert_eq!(
            names(root.path()),
            [part(0), "reports".to_owned()],
            "{list}"
        );
    }
}

#[test]
fn a_file_of_another_edition_beside_a_report_is_named() {
    let folder = TempDir::new().unwrap();
    write_all(folder.path(), "mallee", &edition("new")).unwrap();
    let carried: Vec<FileFacts> = edition("new").iter().map(Output::facts).skip(1).collect();
    assert_eq!(not_together(folder.path(), "mallee", &carried), []);
    fs::write(folder.path().join(NAMES[1]), &edition("old")[1].bytes).unwrap();
    fs::remove_file(folder.path().join(NAMES[2])).unwrap();
    let apart = not_together(folder.path(), "mallee", &carried);
    let name = NAMES[1].to_owned();
    assert_eq!(
        apart,
        [Apart::Other { name }],
        "what is not there is no fault"
    );
    assert!(
        apart[0]
            .to_string()
            .contains("mallee.rating.json beside it is of another edition")
    );
}

#[test]
fn a_file_that_somebody_changed_is_not_replaced() {
    let folder = TempDir::new().unwrap();
    let path = folder.path().join("campaign.toml");
    let read = sha256_hex(b"as it was read");
    for (there, older) in [
        (Some("edited meanwhile"), Some(&read)),
        (Some("new meanwhile"), None),
        (None, Some(&read)),
    ] {
        match there {
            Some(text) => fs::write(&path, text).unwrap(),
            None => fs::remove_file(&path).unwrap(),
        }
        let error = replace_file(&path, older.map(String::as_str), b"ours", "").unwrap_err();
        assert!(
            error.to_string().contains("changed by another program"),
            "{error}"
        );
        assert_eq!(fs::read_to_string(&path).ok().as_deref(), there);
        assert!(names(folder.path()).len() <= 1);
    }
    replace_file(&path, None, b"as it was read", "").unwrap();
    replace_file(&path, Some(&read), b"ours", "").unwrap();
    assert_eq!(fs::read(&path).unwrap(), b"ours");
}

#[test]
fn a_workplace_of_a_killed_call_is_removed_and_no_other_folder() {
    let place = std::env::temp_dir();
    let running = workplace().unwrap();
    fs::write(running.path().join("attachment"), "in use").unwrap();
    let killed = place.join(format!(".simmerline-test{}.part", std::process::id()));
    fs::create_dir(&killed).unwrap();
    fs::write(killed.join("attachment"), "left").unwrap();
    let own = place.join(format!("simmerline-own-{}", std::process::id()));
    fs::create_dir(&own).unwrap();
    let next = workplace().unwrap();
    assert!(!killed.exists());
    assert!(running.path().join("attachment").exists());
    assert!(own.exists());
    fs::remove_dir(&own).unwrap();
    let path = next.path().to_path_buf();
    drop(next);
    assert!(!path.exists());
}

#[test]
fn workplaces_side_by_side_are_all_kept() {
    std::thread::scope(|scope| {
        for _ in 0..8 {
            scope.spawn(|| {
                for _ in 0..50 {
                    let own = workplace().unwrap();
                    fs::write(own.path().join("attachment"), "in use").unwrap();
                    let again = workplace().unwrap();
                    assert!(own.path().join("attachment").exists());
                    drop(again);
                }
            });
        }
    });
}
