//! Which name means what.
//!
//! The names stand in `synonyms.toml`, which says how to add one.

use std::collections::{BTreeMap, HashMap, HashSet};
use std::sync::LazyLock;

use serde::Deserialize;

use super::fold::fold;
use crate::language::Message;
use crate::measure::Kind;
use crate::message;

/// What a column can be.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum Meaning {
    /// Date and clock time.
    Time,
    Date,
    /// A clock time; alone, also date and time, or a number.
    Clock,
    Elapsed,
    Water,
    Vessel,
    Ambient,
    Irradiance,
    Wind,
}

impl Meaning {
    /// The kinds of unit in which it is logged.
    pub fn kinds(self) -> &'static [Kind] {
        match self {
            Meaning::Water | Meaning::Vessel | Meaning::Ambient => &[Kind::Temperature],
            Meaning::Irradiance => &[Kind::Irradiance, Kind::Voltage, Kind::Current],
            Meaning::Wind => &[Kind::Speed],
            _ => &[Kind::Time],
        }
    }

    /// In words.
    pub fn describe(self) -> Message {
        match self {
            Meaning::Time => message!("quantity-time"),
            Meaning::Date => message!("quantity-date"),
            Meaning::Clock => message!("quantity-clock"),
            Meaning::Elapsed => message!("quantity-elapsed"),
            Meaning::Water => message!("quantity-water"),
            Meaning::Vessel => message!("quantity-vessel"),
            Meaning::Ambient => message!("quantity-ambient"),
            Meaning::Irradiance => message!("quantity-irradiance"),
            Meaning::Wind => message!("quantity-wind"),
        }
    }
}

type ByLanguage = BTreeMap<String, Vec<String>>;

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct SynonymFile {
    filler: ByLanguage,
    time: ByLanguage,
    date: ByLanguage,
    clock: ByLanguage,
    elapsed: ByLanguage,
    water: ByLanguage,
    vessel: ByLanguage,
    ambient: ByLanguage,
    irradiance: ByLanguage,
    wind: ByLanguage,
    other: ByLanguage,
    ambiguous: AmbiguousTable,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct AmbiguousTable {
    names: Vec<AmbiguousName>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct AmbiguousName {
    name: String,
    could_be: Vec<Meaning>,
}

impl SynonymFile {
    fn read() -> Self {
        toml::from_str(include_str!("synonyms.toml")).expect("synonyms.toml is checked by a test")
    }

    fn meanings(&self) -> [(Meaning, &ByLanguage); 9] {
        [
            (Meaning::Time, &self.time),
            (Meaning::Date, &self.date),
            (Meaning::Clock, &self.clock),
            (Meaning::Elapsed, &self.elapsed),
            (Meaning::Water, &self.water),
            (Meaning::Vessel, &self.vessel),
            (Meaning::Ambient, &self.ambient),
            (Meaning::Irradiance, &self.irradiance),
            (Meaning::Wind, &self.wind),
        ]
    }
}

/// The names, normalised.
pub struct Table {
    /// Words that add nothing.
    pub filler: HashSet<String>,
    pub names: HashMap<String, Meaning>,
    /// Names that may be several things, or must not be guessed.
    pub ambiguous: HashMap<String, Vec<Meaning>>,
    /// What is understood and not needed.
    pub other: HashSet<String>,
}

/// Words for water itself, whatever holds it.
const WATER: &[&str] = &["water", "h2o", "agua", "eau", "wasser", "maji"];

/// Whether a header speaks of water, not of the pot that may hold it.
pub fn names_water(header: &str) -> bool {
    let folded = fold(header);
    WATER.iter().any(|word| folded.contains(word)) || ["tw", "t w"].contains(&folded.as_str())
}

/// The names of `synonyms.toml`.
pub static TABLE: LazyLock<Table> = LazyLock::new(|| {
    let file = SynonymFile::read();
    let all = |names: &ByLanguage| names.values().flatten().cloned().collect();
    let names = file.meanings().into_iter().flat_map(|(meaning, names)| {
        let names = names.values().flatten();
        names.map(move |name| (name.clone(), meaning))
    });
    let ambiguous = file.ambiguous.names.iter();
    Table {
        filler: all(&file.filler),
        names: names.collect(),
        ambiguous: ambiguous
            .map(|row| (row.name.clone(), row.could_be.clone()))
            .collect(),
        other: all(&file.other),
    }
});

#[cfg(test)]
mod tests {
    use super::*;
    use crate::logs::names::{Recognised, read_header};

    #[test]
    fn no_two_quantities_claim_one_name() {
        let file = SynonymFile::read();
        let mut owner: HashMap<&str, String> = HashMap::new();
        let mut claim = |name: &'static str, owned_by: String| {
            let owned = owner.entry(name).or_insert_with(|| owned_by.clone());
            assert_eq!(*owned, owned_by, "\"{name}\" is claimed twice");
        };
        let leak = |name: &String| -> &'static str { name.clone().leak() };
        for (meaning, names) in file.meanings() {
            for name in names.values().flatten() {
                claim(leak(name), format!("{meaning:?}"));
            }
        }
        for name in file.other.values().flatten() {
            claim(leak(name), "other".to_owned());
        }
        for row in &file.ambiguous.names {
            claim(leak(&row.name), "ambiguous".to_owned());
        }
    }

    #[test]
    fn every_name_is_found_under_what_claims_it() {
        let file = SynonymFile::read();
        for (meaning, names) in file.meanings() {
            for name in names.values().flatten() {
                assert_eq!(&fold(name), name, "not normalised");
                let found = read_header(name).recognised;
                assert!(
                    matches!(&found, Recognised::As { meaning: m, .. } if *m == meaning),
                    "\"{name}\" is {found:?}, not {meaning:?}"
                );
            }
        }
    }
}
