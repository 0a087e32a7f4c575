//! Errors of many campaigns: each cause once, with its places.

use std::collections::BTreeMap;
use std::path::Path;

use super::alike::pattern_of_words;
use crate::error::{Error, Problem, Problems};
use crate::shown::shown;

/// So many places are named before a cause that many share.
const NAMED: usize = 3;

/// What is wrong, wherever that is and whatever its numbers.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
struct Cause {
    item: Option<String>,
    /// Without numbers.
    what: String,
}

/// Where a cause was found.
#[derive(Debug)]
struct Found {
    /// The first of them.
    places: Vec<Problem>,
    count: usize,
    /// Its numbers are not the same everywhere.
    differs: bool,
    /// What mends it is not the same everywhere.
    is_mended_apart: bool,
}

impl Found {
    /// Names the place of a problem, rather in a folder that is not named yet.
    fn name(&mut self, problem: &Problem) {
        if self.places.len() < NAMED {
            self.places.push(problem.clone());
            return;
        }
        let folder = |one: &Problem| one.place.path.parent().map(Path::to_path_buf);
        let folders: Vec<_> = self.places.iter().map(folder).collect();
        let is_again = |at: &usize| folders[..*at].contains(&folders[*at]);
        let again = (1..NAMED).find(is_again);
        if let Some(again) = again.filter(|_| !folders.contains(&folder(problem))) {
            self.places.remove(again);
            self.places.push(problem.clone());
        }
    }
}

/// The causes for which campaigns failed, in the order in which they were met.
#[derive(Debug, Default)]
pub struct Causes {
    failed: usize,
    found: Vec<Found>,
    at: BTreeMap<Cause, usize>,
    unlisted: usize,
    /// Faults of ours.
    faults: Vec<String>,
    /// As it tells itself, of the first campaign that failed.
    first: Option<String>,
}

impl Causes {
    /// Adds what stopped a campaign.
    pub fn add(&mut self, error: &Error) {
        self.failed += 1;
        self.first
            .get_or_insert_with(|| format!("error: {error}\n"));
        match error {
            Error::Usage(problems)
            | Error::Input(problems)
            | Error::Campaign(problems)
            | Error::TwoReadings(problems) => self.add_all(problems),
            Error::Internal(_) => self.faults.push(format!("error: {error}\n")),
        }
    }

    fn add_all(&mut self, problems: &Problems) {
        self.unlisted += problems.unlisted();
        for problem in problems.listed() {
            let cause = Cause {
                item: problem.place.item.clone(),
                what: pattern_of_words(&problem.what),
            };
            let next = self.found.len();
            let at = *self.at.entry(cause).or_insert(next);
            if at == next {
                self.found.push(Found {
                    places: Vec::new(),
                    count: 0,
                    differs: false,
                    is_mended_apart: false,
                });
            }
            let found = &mut self.found[at];
            // A file that campaigns share is one place.
            if found.places.iter().any(|one| one.place == problem.place) {
                continue;
            }
            found.count += 1;
            if let Some(first) = found.places.first() {
                found.differs |= first.what != problem.what;
                found.is_mended_apart |= first.hint != problem.hint;
            }
            found.name(problem);
        }
    }

    /// How many campaigns failed.
    pub fn failed(&self) -> usize {
        self.failed
    }

    /// What is to be told: of one campaign as it tells itself; of several each cause once, with
    /// how often it was found and where first. Causes that are mended alike share a hint.
    pub fn told(&self) -> Vec<String> {
        match &self.first {
            Some(first) if self.failed == 1 => return vec![first.clone()],
            _ => {}
        }
        let problems = self.found.iter().enumerate().map(|(at, found)| {
            let hint = found.places[0].hint.as_ref();
            let next = self.found.get(at + 1);
            let is_shared = !found.is_mended_apart
                && next.is_some_and(|next| next.places[0].hint.as_ref() == hint);
            told(found, hint.filter(|_| !is_shared))
        });
        let unlisted = (self.unlisted > 0)
            .then(|| format!("hint: not listed here: {} more of them\n", self.unlisted));
        let faults = self.faults.iter().cloned();
        problems.chain(faults).chain(unlisted).collect()
    }
}

/// A cause, with the first of its places.
fn told(found: &Found, hint: Option<&String>) -> String {
    let places = found.places.iter().map(|one| one.place.to_string());
    let mut places = places.collect::<Vec<_>>().join(", ");
    let more = found.count - found.places.len();
    if more > 0 {
        places += &format!(" and {more} more");
    }
    let count = match found.count {
        1 => String::new(),
        count => format!("{count} places: "),
    };
    let what = shown(&found.places[0].what);
    let of_first = |is_first: bool| if is_first { "of the first: " } else { "" };
    let [of_first_what, of_first] = [found.differs, found.is_mended_apart].map(of_first);
    let hint = hint.map_or_else(String::new, |hint| {
        format!("hint: {of_first}{}\n", shown(hint))
    });
    format!("error: {count}{places}: {of_first_what}{what}\n{hint}")
}

#[cfg(test)]
mod tests {
    use super::*;

    fn missing(file: &str, key: &str) -> Problem {
        let what = format!("the key \"{key}\" is missing");
        Problem::at(Path::new(file), what).hint("add it")
    }

    #[test]
    fn a_cause_is_told_once_with_its_count_and_first_places() {
        let mut causes = Causes::default();
        for number in 0..12 {
            let file = format!("{number}/campaign.toml");
            let mut problems = Problems::from(missing(&file, "water_kg"));
            if number == 3 {
                problems.push(missing(&file, "title"));
            }
            causes.add(&Error::Campaign(problems));
        }
        causes.add(&Error::Internal("a".to_owned()));
        assert_eq!(causes.failed(), 13);
        assert_eq!(
            causes.told(),
            [
                "error: 12 places: 0/campaign.toml, 1/campaign.toml, 2/campaign.toml and 9 more: the key \"water_kg\" is missing\n",
                "error: 3/campaign.toml: the key \"title\" is missing\nhint: add it\n",
                "error: this is a fault in simmerline, not in your data: a\n",
            ]
        );
    }

    #[test]
    fn numbers_are_no_other_cause_and_other_folders_are_named_first() {
        let mut causes = Causes::default();
        for (folder, file) in [("a", 1), ("a", 2), ("a", 3), ("b", 1), ("c", 1), ("d", 1)] {
            let path = format!("{folder}/{file}.csv");
            let what = format!("found {file}.6 – 15{file} °C, expected −5 – 105 °C");
            let problem = Problem::at(Path::new(&path), what).hint("this looks like °F");
            causes.add(&Error::Input(problem.into()));
        }
        assert_eq!(
            causes.told(),
            [
                "error: 6 places: a/1.csv, b/1.csv, c/1.csv and 3 more: of the first: found 1.6 – 151 °C, expected −5 – 105 °C\nhint: this looks like °F\n"
            ]
        );
    }

    #[test]
    fn what_is_only_counted_stays_counted() {
        let mut problems = Problems::default();
        (0..25).for_each(|row| problems.push(missing("a.csv", &row.to_string())));
        let mut causes = Causes::default();
        causes.add(&Error::Input(problems.clone()));
        assert_eq!(causes.told(), [format!("error: {problems}\n")]);
        causes.add(&Error::Input(problems));
        let told = causes.told();
        assert_eq!(told.len(), 21);
        assert_eq!(told[20], "hint: not listed here: 10 more of them\n");
    }
}
