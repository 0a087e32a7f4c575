//! Names under which files are attached to a report: relative paths that may be written
//! into a folder on any computer, and that follow from the inputs' names alone.

use std::collections::{BTreeMap, BTreeSet};

/// Longest name, and longest part of one between two slashes, bytes.
const LONGEST_NAME: usize = 1000;
const LONGEST_PART: usize = 200;
/// So much of the end of a name is kept behind a number, characters.
const LONGEST_TAIL: usize = 40;

/// Characters that a file name may not have on some computer, or that say something else
/// than they show.
const UNSAFE: &[char] = &[
    '\\', ':', '<', '>', '"', '|', '?', '*', '\u{200e}', '\u{200f}', '\u{202a}', '\u{202b}',
    '\u{202c}', '\u{202d}', '\u{202e}', '\u{2028}', '\u{2029}', '\u{2066}', '\u{2067}', '\u{2068}',
    '\u{2069}', '\u{feff}',
];

/// File names, before their first point, that are devices on some computers; besides these,
/// `COM` and `LPT` with a digit.
const DEVICES: &[&str] = &["con", "prn", "aux", "nul"];

/// What takes the place of an unsafe character.
const INSTEAD: char = '-';

/// Names of the results that are attached.
pub struct ResultNames {
    pub rating: String,
    pub intervals: String,
}

/// How the names of the attached results end.
pub const RATING_ENDING: &str = ".rating.json";
pub const INTERVALS_ENDING: &str = ".intervals.csv";

/// Names of the results of a campaign of a name.
pub fn result_names(campaign: &str) -> ResultNames {
    let stem = match is_plain(&format!("{campaign}{INTERVALS_ENDING}")) && !campaign.contains('/') {
        true => campaign,
        false => "campaign",
    };
    ResultNames {
        rating: format!("{stem}{RATING_ENDING}"),
        intervals: format!("{stem}{INTERVALS_ENDING}"),
    }
}

/// The name under which each input is attached, in their order: the campaign file's own name
/// for it, if that is a plain relative path; else its last part, numbered. Inputs of one name
/// are one attachment. `results` have names of their own.
pub fn attached_names(
    inputs: impl IntoIterator<Item = impl AsRef<str>>,
    results: &[&str],
) -> Vec<String> {
    let mut taken = TakenNames::default();
    for result in results {
        taken.add(result);
    }
    let mut given: BTreeMap<String, String> = BTreeMap::new();
    let mut names = Vec::new();
    for (index, input) in inputs.into_iter().enumerate() {
        let input = without_here(input.as_ref());
        let name = given.entry(input).or_insert_with_key(|input| {
            let numbered = (index + 1..).map(|n| format!("input-{n}-{}", tame(input)));
            let mut names = std::iter::once(input.clone()).chain(numbered);
            let name = names.find(|name| is_plain(name) && taken.add(name));
            name.expect("numbers do not end")
        });
        names.push(name.clone());
    }
    names
}

/// Names that can all be files of one folder, on any computer.
#[derive(Default)]
pub struct TakenNames(BTreeSet<String>);

impl TakenNames {
    /// Takes a name, unless it is that of another file or folder but for capitals.
    pub fn add(&mut self, name: &str) -> bool {
        let name = name.to_lowercase();
        let within = format!("{name}/");
        let mut folders = name.match_indices('/').map(|(end, _)| &name[..end]);
        let mut inside = self.0.range(within.clone()..);
        let is_free = !self.0.contains(&name)
            && !folders.any(|folder| self.0.contains(folder))
            && !inside.next().is_some_and(|next| next.starts_with(&within));
        is_free && self.0.insert(name)
    }
}

/// Whether a name is a relative path that stays in its folder, on any computer.
pub fn is_plain(name: &str) -> bool {
    let is_safe = |character: char| !character.is_control() && !UNSAFE.contains(&character);
    name.len() <= LONGEST_NAME && name.chars().all(is_safe) && name.split('/').all(is_plain_part)
}

fn is_plain_part(part: &str) -> bool {
    let stem = part.split('.').next().unwrap_or_default().to_lowercase();
    let stem = stem.trim_end();
    let is_port = |kind: &str| {
        let number = stem.strip_prefix(kind);
        number
            .is_some_and(|rest| rest.chars().count() == 1 && !rest.starts_with(char::is_alphabetic))
    };
    let is_device = DEVICES.contains(&stem) || is_port("com") || is_port("lpt");
    !matches!(part, "" | "." | "..")
        && part.len() <= LONGEST_PART
        && !part.starts_with(' ')
        && !part.ends_with([' ', '.'])
        && !is_device
}

/// A path without the parts that lead nowhere.
fn without_here(path: &str) -> String {
    let parts: Vec<&str> = path.split('/').collect();
    let leads = |(index, part): &(usize, &&str)| !matches!((*index, **part), (_, ".") | (1.., ""));
    let parts = parts.iter().enumerate().filter(leads);
    parts.map(|(_, part)| *part).collect::<Vec<_>>().join("/")
}

/// The last part of a path, with nothing in it that is not safe.
fn tame(path: &str) -> String {
    let last = path.rsplit(['/', '\\']).next().unwrap_or_default();
    let safe = last.chars().map(|character| {
        let is_unsafe = character.is_control() || UNSAFE.contains(&character);
        if is_unsafe { INSTEAD } else { character }
    });
    let safe: Vec<char> = safe.collect();
    let end: String = safe[safe.len().saturating_sub(LONGEST_TAIL)..]
        .iter()
        .collect();
    match end.trim_matches([' ', '.']) {
        "" => "file".to_owned(),
        safe => safe.to_owned(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn names(inputs: &[&str]) -> Vec<String> {
        let results = result_names("dish");
        attached_names(inputs, &[&results.rating, &results.intervals])
    }

    #[test]
    fn a_plain_path_is_its_own_name_and_a_file_of_two_names_is_attached_once() {
        assert_eq!(
            names(&[
                "campaign.toml",
                "a.csv",
                "logs/b.csv",
                "./a.csv",
                "logs//b.csv"
            ]),
            [
                "campaign.toml",
                "a.csv",
                "logs/b.csv",
                "a.csv",
                "logs/b.csv"
            ]
        );
    }

    #[test]
    fn a_path_that_leads_elsewhere_gets_a_number() {
        let given = names(&[
            "campaign.toml",
            "../a.csv",
            "/home/me/a.csv",
            "C:\\logs\\a.csv",
            "x:a",
        ]);
        assert_eq!(
            given[1..],
            [
                "input-2-a.csv",
                "input-3-a.csv",
                "input-4-a.csv",
                "input-5-x-a"
            ]
        );
        assert!(given.iter().all(|name| is_plain(name)));
    }

    #[test]
    fn names_that_some_computers_take_for_one_are_told_apart() {
        let given = names(&[
            "A.csv",
            "a.csv",
            "dish.intervals.csv",
            "b",
            "b/c",
            "input-2-a.csv",
        ]);
        assert_eq!(given[0], "A.csv");
        assert_eq!(given[1], "input-2-a.csv");
        let mut taken = TakenNames::default();
        assert!(taken.add("dish.intervals.csv"));
        assert!(given.iter().all(|name| taken.add(name)), "{given:?}");
    }

    #[test]
    fn a_file_and_a_folder_of_one_name_exclude_each_other() {
        for (first, second) in [("a/b", "A"), ("a", "a/b"), ("a/B/c", "a/b")] {
            let mut taken = TakenNames::default();
            assert!(
                taken.add(first) && taken.add("a-b") && !taken.add(second),
                "{first} {second}"
            );
        }
    }

    #[test]
    fn what_is_not_plain() {
        let long = "x".repeat(LONGEST_PART + 1);
        for name in [
            "",
            ".",
            "..",
            "../x",
            "a/../x",
            "/x",
            "a//b",
            "a/",
            "C:x",
            "a\\b",
            "a\0b",
            "a\nb",
            "nul",
            "com1.csv",
            "logs/aux.txt",
            "x ",
            " x",
            "x.",
            "\u{202e}vsc.x",
            &long,
        ] {
            assert!(!is_plain(name), "{name:?}");
            assert!(is_plain(&names(&[name])[0]), "{name:?}");
        }
        for name in [
            "computer.csv",
            "común.csv",
            ".hidden",
            "a b.csv",
            "Лог.csv",
            "com",
        ] {
            assert!(is_plain(name), "{name:?}");
        }
    }

    #[test]
    fn a_campaign_of_an_odd_name_has_plain_results() {
        assert_eq!(result_names("a:b").rating, "campaign.rating.json");
        assert_eq!(result_names("dish 2").intervals, "dish 2.intervals.csv");
    }
}
