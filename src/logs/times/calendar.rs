//! Words in written dates: months, days of the week, AM and PM.
//!
//! They stand in `calendar.toml`, which says how to add one.

use std::collections::{HashMap, HashSet};
use std::sync::LazyLock;

use serde::Deserialize;

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct CalendarFile {
    months: HashMap<String, Vec<Vec<String>>>,
    weekdays: HashMap<String, Vec<String>>,
    connectors: HashMap<String, Vec<String>>,
    am: Words,
    pm: Words,
}

#[derive(Deserialize)]
struct Words {
    words: Vec<String>,
}

/// Words of written dates.
pub struct Calendar {
    /// Month of its name, from 1.
    pub months: HashMap<String, i8>,
    /// Names of days, and words between the parts of a date.
    pub ignored: HashSet<String>,
    pub am: HashSet<String>,
    pub pm: HashSet<String>,
}

/// The words of `calendar.toml`.
pub static CALENDAR: LazyLock<Calendar> = LazyLock::new(|| {
    let file: CalendarFile =
        toml::from_str(include_str!("calendar.toml")).expect("calendar.toml is checked by a test");
    let months = file.months.into_values().flat_map(|year| (1..).zip(year));
    let months = months.flat_map(|(month, names)| names.into_iter().map(move |name| (name, month)));
    let ignored = file
        .weekdays
        .into_values()
        .chain(file.connectors.into_values());
    let joined = |words: Words| {
        words
            .words
            .iter()
            .map(|word| word.replace(' ', ""))
            .collect()
    };
    Calendar {
        months: months.collect(),
        ignored: ignored.flatten().collect(),
        am: joined(file.am),
        pm: joined(file.pm),
    }
});

#[cfg(test)]
mod tests {
    use super::*;
    use crate::logs::fold::fold;

    #[test]
    fn each_language_has_twelve_months_and_no_name_means_two() {
        let file: CalendarFile = toml::from_str(include_str!("calendar.toml")).unwrap();
        let mut seen = HashMap::new();
        for year in file.months.values() {
            assert_eq!(year.len(), 12);
            for (month, names) in year.iter().enumerate() {
                for name in names {
                    assert_eq!(&fold(name), name);
                    assert_eq!(*seen.entry(name.clone()).or_insert(month), month, "{name}");
                }
            }
        }
    }
}
