//! No files that import each other in a circle.
//!
//! An import is a `use crate::…` or `use super::…`, or a path that begins with either where
//! it is used. A name that a `mod.rs` only hands on counts as one of the file that has it.
//! Tests beside the code are left out.

use std::collections::{BTreeMap, BTreeSet};

use super::source::{Names, Source, sources};

/// Folder whose files may import each other as they like: its words are one thing.
const MAY_BE_A_CIRCLE: &str = "language";

/// The paths of one import: `a::{b, c::d}` gives `a::b` and `a::c::d`.
fn paths_of(import: &str) -> Vec<String> {
    let Some(open) = import.find('{') else {
        return vec![import.split(" as ").next().unwrap().trim().to_owned()];
    };
    let before = import[..open].trim();
    let inside = &import[open + 1..import.rfind('}').unwrap()];
    let mut parts = vec![String::new()];
    let mut depth = 0;
    for letter in inside.chars() {
        match letter {
            ',' if depth == 0 => {
                parts.push(String::new());
                continue;
            }
            '{' => depth += 1,
            '}' => depth -= 1,
            _ => {}
        }
        parts.last_mut().unwrap().push(letter);
    }
    let parts = parts.iter().filter(|part| !part.trim().is_empty());
    parts
        .flat_map(|part| paths_of(&format!("{before}{}", part.trim())))
        .collect()
}

/// The `use` declarations of a file, each with whether it hands the name on.
fn imports(code: &str) -> Vec<(bool, String)> {
    let mut found = Vec::new();
    for (at, word) in code.match_indices("use ") {
        let line = code[..at].rsplit('\n').next().unwrap().trim();
        let is_public = line.starts_with("pub");
        if line.is_empty() || is_public && !line.contains([';', '{']) {
            let import = &code[at + word.len()..];
            let import = &import[..import.find(';').unwrap()];
            let paths = paths_of(import).into_iter();
            found.extend(paths.map(|path| (is_public, path)));
        }
    }
    found
}

/// Paths that begin with `crate::` or `super::`, wherever they stand.
fn paths_inside(code: &str) -> Vec<String> {
    let is_of_path = |letter: char| letter.is_alphanumeric() || matches!(letter, '_' | ':');
    let words = code.split(|letter| !is_of_path(letter));
    let paths = words.filter(|word| word.starts_with("crate::") || word.starts_with("super::"));
    paths
        .map(|path| path.trim_end_matches(':').to_owned())
        .collect()
}

/// Files by their names, with the names that each hands on and where those are.
struct House {
    sources: BTreeMap<Names, Source>,
    handed_on: BTreeMap<Names, BTreeMap<String, Names>>,
}

impl House {
    fn of(sources: Vec<Source>) -> Self {
        let sources = sources.into_iter();
        let mut house = House {
            sources: sources.map(|source| (source.names(), source)).collect(),
            handed_on: BTreeMap::new(),
        };
        let mut handed_on: BTreeMap<_, BTreeMap<_, _>> = BTreeMap::new();
        for (names, source) in &house.sources {
            for (is_public, path) in imports(&source.code) {
                let is_rooted = ["crate::", "super::", "self::"]
                    .iter()
                    .any(|root| path.starts_with(root));
                let rooted = if is_rooted {
                    path
                } else {
                    format!("self::{path}")
                };
                let Some((file, rest)) = house.find(names, &rooted) else {
                    continue;
                };
                if is_public
                    && file != *names
                    && let Some(name) = rest.last()
                {
                    let of_file = handed_on.entry(names.clone()).or_default();
                    of_file.insert(name.clone(), file);
                }
            }
        }
        house.handed_on = handed_on;
        house
    }

    /// The file that a path leads to, as seen from another, and what is left of the path.
    fn find(&self, from: &[String], path: &str) -> Option<(Names, Vec<String>)> {
        let mut full = from.to_vec();
        for step in path.split("::") {
            match step {
                "crate" => full.clear(),
                "self" => {}
                "super" => drop(full.pop()),
                name => full.push(name.to_owned()),
            }
        }
        (1..=full.len()).rev().find_map(|length| {
            let (file, rest) = full.split_at(length);
            let is_file = self.sources.contains_key(file);
            is_file.then(|| (file.to_vec(), rest.to_vec()))
        })
    }

    /// The files that a file imports from.
    fn imported(&self, names: &[String]) -> BTreeSet<Names> {
        let code = &self.sources[names].code;
        let declared = imports(code).into_iter();
        let declared = declared.filter_map(|(is_public, path)| (!is_public).then_some(path));
        let mut found = BTreeSet::new();
        for path in declared.chain(paths_inside(&without_public_imports(code))) {
            let is_of_crate = path.starts_with("crate::") || path.starts_with("super::");
            let Some((mut file, rest)) = self.find(names, &path).filter(|_| is_of_crate) else {
                continue;
            };
            let name = rest.first();
            while let Some(next) = name.and_then(|name| self.handed_on.get(&file)?.get(name)) {
                file = next.clone();
            }
            if file != names {
                found.insert(file);
            }
        }
        found
    }

    /// Groups of files that import each other in a circle.
    fn circles(&self) -> BTreeSet<BTreeSet<String>> {
        let files = self.sources.keys();
        let imported = files.map(|file| (file.clone(), self.imported(file)));
        let imported: BTreeMap<Names, BTreeSet<Names>> = imported.collect();
        let files = imported.keys();
        let reached: BTreeMap<_, _> = files.map(|file| (file, reached(file, &imported))).collect();
        let on_circle = reached.iter().filter(|(file, there)| there.contains(*file));
        let circle_of = |(file, there): (&&Names, &BTreeSet<&Names>)| {
            let back = there.iter().filter(|other| reached[*other].contains(file));
            back.map(|other| other.join("/")).collect()
        };
        on_circle.map(circle_of).collect()
    }
}

/// All files that are reached from a file, over any number of imports.
fn reached<'i>(
    from: &[String],
    imported: &'i BTreeMap<Names, BTreeSet<Names>>,
) -> BTreeSet<&'i Names> {
    let mut reached = BTreeSet::new();
    let mut left = vec![from];
    while let Some(file) = left.pop() {
        for next in &imported[file] {
            if reached.insert(next) {
                left.push(next);
            }
        }
    }
    reached
}

/// Code without the declarations that hand names on: who uses those is told by [`House::find`].
fn without_public_imports(code: &str) -> String {
    let mut left = String::new();
    let mut rest = code;
    while let Some(at) = rest.find("pub use ") {
        left.push_str(&rest[..at]);
        let end = rest[at..].find(';').unwrap();
        rest = &rest[at + end..];
    }
    left + rest
}

#[test]
fn no_files_import_each_other_in_a_circle() {
    let may_be = |circle: &BTreeSet<String>| {
        let mut files = circle.iter();
        files.all(|file| file.split('/').next() == Some(MAY_BE_A_CIRCLE))
    };
    let mut circles = House::of(sources()).circles();
    circles.retain(|circle| !may_be(circle));
    assert!(circles.is_empty(), "files in circles: {circles:#?}");
}

#[test]
fn circles_are_seen_through_remarks_strings_tests_and_names_handed_on() {
    let source = |path: &str, text: &str| Source::of(path.to_owned(), text);
    let house = House::of(vec![
        source("fire/mod", "mod pot;\npub use pot::Pot;\n"),
        source("fire/pot", "use crate::water::{self, Water};\n"),
        source("water", "fn cool() -> Heat { crate::fire::Pot::heat() }\n"),
        // What it imports stands in a remark, in a string and in a test.
        source(
            "sun",
            "// use crate::moon;\nconst S: &str = r#\"crate::moon\"#;\n\
             #[cfg(test)]\nmod tests {\n    use crate::moon::Moon;\n}\n",
        ),
        source("moon", "use super::sun::Sun;\n"),
    ]);
    let circle = ["fire/pot", "water"].map(str::to_owned);
    assert_eq!(house.circles(), [circle.into()].into());
}
