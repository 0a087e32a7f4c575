//! `THIRD-PARTY-NOTICES.txt` names every crate of `Cargo.lock`, and holds the licences.
//!
//! It is written anew by `RENEW_NOTICES=1 cargo test --release --test modules house::notices`,
//! which reads the licence texts where cargo has unpacked the crates (`cargo fetch` first).

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::Path;
use std::process::Command;

use serde_json::Value;

const FILE: &str = "THIRD-PARTY-NOTICES.txt";
const HEAD: &str = "Third-party notices of simmerline

Made from Cargo.lock; how is told in tests/modules/house/notices.rs. The list names every
crate of others that Cargo.lock names, also those of one platform or of the tests alone, with
the licences that its manifest gives. Where the Apache License 2.0 is among the choices it is
the one taken. Then come its text, the notices of these crates, and the texts that the other
crates carry. The program also holds the standard library of Rust (MIT OR Apache-2.0).

";
const RULE: &str =
    "\n--------------------------------------------------------------------------------\n";
const APACHE: &str = "Apache-2.0";

/// What crates hold of others, beside their own licence: a text of ours for each, whose first
/// words name crate and version.
const HELD: [(&str, &str, &str); 2] = [
    ("Syntaxes", "two-face", "templates/licences/syntaxes.md"),
    (
        "Hyphenation",
        "hypher",
        "templates/licences/hyphenation.txt",
    ),
];

/// A crate of others: name with version, licences, folder, authors.
struct Package {
    name: String,
    licence: String,
    folder: String,
    authors: String,
}

impl Package {
    fn of(value: &Value) -> Self {
        let text = |key: &str| value[key].as_str().unwrap_or_default().to_owned();
        let manifest = text("manifest_path");
        let folder = Path::new(&manifest).parent().unwrap().to_str().unwrap();
        let authors = value["authors"].as_array().unwrap().iter();
        let authors: Vec<&str> = authors.filter_map(Value::as_str).collect();
        Package {
            name: format!("{} {}", text("name"), text("version")),
            licence: text("license").replace('/', " OR "),
            folder: folder.to_owned(),
            authors: authors.join(", "),
        }
    }

    fn is_apache(&self) -> bool {
        self.licence.split(" OR ").any(|choice| choice == APACHE)
    }

    /// The licence texts and notices that the crate carries; of one under the Apache License
    /// its notices alone.
    fn texts(&self) -> Vec<String> {
        let starts: &[&str] = match self.is_apache() {
            true => &["NOTICE"],
            false => &["LICEN", "COPYING", "COPYRIGHT", "UNLICEN", "NOTICE"],
        };
        let mut texts = Vec::new();
        for entry in fs::read_dir(&self.folder).unwrap() {
            let path = entry.unwrap().path();
            let name = path.file_name().unwrap().to_str().unwrap().to_uppercase();
            if path.is_file() && starts.iter().any(|start| name.starts_with(start)) {
                texts.push(tidy(&fs::read_to_string(&path).unwrap()));
            }
        }
        if texts.is_empty() && !self.is_apache() {
            let authors = match self.authors.as_str() {
                "" => "not named",
                names => names,
            };
            texts.push(format!(
                "The crate carries no text of its licence, {}. Its authors: {authors}.",
                self.licence
            ));
        }
        texts.sort();
        texts
    }
}

/// Lines without spaces at their ends.
fn tidy(text: &str) -> String {
    let lines: Vec<&str> = text.lines().map(str::trim_end).collect();
    lines.join("\n").trim_matches('\n').to_owned()
}

/// The crates of others, as cargo sees them.
fn packages() -> Vec<Package> {
    let done = Command::new(env!("CARGO"))
        .args(["metadata", "--locked", "--offline", "--format-version", "1"])
        .output()
        .unwrap();
    let complaint = String::from_utf8_lossy(&done.stderr);
    assert!(done.status.success(), "`cargo fetch` first: {complaint}");
    let metadata: Value = serde_json::from_slice(&done.stdout).unwrap();
    let all = metadata["packages"].as_array().unwrap().iter();
    let mut packages: Vec<Package> = all
        .filter(|package| !package["source"].is_null())
        .map(Package::of)
        .collect();
    packages.sort_by(|one, other| one.name.cmp(&other.name));
    packages
}

fn notices() -> String {
    let mut file = HEAD.to_owned();
    let mut owners: BTreeMap<String, Vec<String>> = BTreeMap::new();
    for package in packages() {
        file += &format!("- {}: {}\n", package.name, package.licence);
        for text in package.texts() {
            owners.entry(text).or_default().push(package.name.clone());
        }
    }
    let mut add = |whose: &str, text: &str| file += &format!("{RULE}{whose}\n\n{text}\n");
    let read = |path: &str| tidy(&fs::read_to_string(path).unwrap());
    add("Apache License 2.0", &read("LICENSE-APACHE"));
    add(
        "The fonts Inter (templates/fonts)",
        &read("templates/fonts/OFL.txt"),
    );
    for (what, _, path) in HELD {
        add(what, &read(path));
    }
    let mut texts: Vec<(String, String)> = owners
        .into_iter()
        .map(|(text, names)| (names.join(", "), text))
        .collect();
    texts.sort();
    for (names, text) in texts {
        add(&names, &text);
    }
    file
}

/// Name and version of every crate of others in `Cargo.lock`.
fn locked() -> BTreeSet<String> {
    let lock: toml::Table = fs::read_to_string("Cargo.lock").unwrap().parse().unwrap();
    let packages = lock["package"].as_array().unwrap().iter();
    packages
        .filter(|package| package.get("source").is_some())
        .map(|package| {
            let text = |key: &str| package[key].as_str().unwrap();
            format!("{} {}", text("name"), text("version"))
        })
        .collect()
}

#[test]
fn the_notices_name_every_crate_of_the_lock_file() {
    if std::env::var_os("RENEW_NOTICES").is_some() {
        fs::write(FILE, notices()).unwrap();
    }
    let file = fs::read_to_string(FILE).unwrap();
    let (list, texts) = file.split_once(RULE).unwrap();
    let named: BTreeSet<String> = list
        .lines()
        .filter_map(|line| line.strip_prefix("- "))
        .map(|line| line.split_once(": ").unwrap().0.to_owned())
        .collect();
    let locked = locked();
    assert!(locked.len() > 300, "only {} crates", locked.len());
    let differ: Vec<&String> = named.symmetric_difference(&locked).collect();
    assert!(
        differ.is_empty(),
        "{differ:?}: run `cargo fetch`, then \
         `RENEW_NOTICES=1 cargo test --release --test modules house::notices`"
    );
    for licence in ["LICENSE-APACHE", "templates/fonts/OFL.txt"] {
        let text = tidy(&fs::read_to_string(licence).unwrap());
        assert!(texts.contains(&text), "{licence} is not in {FILE}");
    }
}

/// What a crate holds of others is in the notices, and of the version that is built in.
#[test]
fn what_crates_hold_of_others_is_in_the_notices() {
    let file = fs::read_to_string(FILE).unwrap();
    for (what, of_crate, path) in HELD {
        let text = tidy(&fs::read_to_string(path).unwrap());
        assert!(file.contains(&text), "{path} is not in {FILE}");
        let prefix = format!("{of_crate} ");
        let locked = locked();
        let built = locked.iter().find(|name| name.starts_with(&prefix));
        let built = built.unwrap();
        let start = &text[..text.len().min(120)];
        assert!(start.contains(built), "{what}: {path} is not of {built}");
    }
}

/// A crate without the Apache License has its own text, or a word that it has none.
#[test]
fn every_other_licence_has_its_text() {
    let file = fs::read_to_string(FILE).unwrap();
    let mut parts = file.split(RULE);
    let list = parts.next().unwrap();
    let owners: Vec<&str> = parts
        .filter_map(|part| part.lines().next())
        .flat_map(|names| names.split(", "))
        .collect();
    for line in list.lines().filter_map(|line| line.strip_prefix("- ")) {
        let (name, licence) = line.split_once(": ").unwrap();
        let is_apache = licence.split(" OR ").any(|choice| choice == APACHE);
        assert!(!licence.is_empty(), "{name} has no licence");
        assert!(is_apache || owners.contains(&name), "{name} has no text");
    }
}
