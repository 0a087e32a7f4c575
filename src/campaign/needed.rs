//! Keys that a campaign file cannot do without, all of which are asked for at once.

use std::borrow::Cow;

use toml::Spanned;
use toml::de::{DeTable, DeValue};

/// A table with keys that have to be there.
pub struct NeededTable {
    pub name: &'static str,
    /// The table itself may be left out.
    pub is_optional: bool,
    /// What stands in the place of a missing key while the rest of the file is checked: the
    /// table as TOML. It never gets further, since the key is asked for.
    stand_in: &'static str,
}

/// Every table with keys that have to be there. Those of lists, such as `[[run]]`, are left to
/// the parser.
pub const NEEDED: [NeededTable; 4] = [
    NeededTable {
        name: "campaign",
        is_optional: false,
        stand_in: "title = \"–\"",
    },
    NeededTable {
        name: "cooker",
        is_optional: false,
        stand_in: "name = \"–\"\ntype = \"box\"",
    },
    NeededTable {
        name: "site",
        is_optional: false,
        stand_in: "name = \"–\"\nlatitude_deg = 0.0\nlongitude_deg = 0.0\nelevation_m = 0.0\n\
                   time_zone = \"UTC\"",
    },
    NeededTable {
        name: "impact",
        is_optional: true,
        stand_in: "fuel = \"–\"\nheating_value_mj_kg = 20.0\nheating_value_source = \"–\"\n\
                   stove_efficiency = 0.2\nstove_efficiency_source = \"–\"\n\
                   days_per_year = 100.0\ndays_source = \"–\"",
    },
];

/// A table, or a key of it, that is not there.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Missing {
    Table(&'static str),
    Key {
        table: &'static str,
        key: &'static str,
    },
}

/// What is missing in a file, and the file with something in its place.
pub fn with_stand_ins<'t>(tree: &DeTable<'t>) -> (Vec<Missing>, DeTable<'t>) {
    let mut missing = Vec::new();
    let mut filled = tree.clone();
    for needed in &NEEDED {
        let table = needed.name;
        if needed.is_optional && !filled.contains_key(table) {
            continue;
        }
        if !filled.contains_key(table) {
            missing.push(Missing::Table(table));
            filled.insert(unplaced(table), placed(DeValue::Table(DeTable::new())));
        }
        let is_there = !missing.contains(&Missing::Table(table));
        let Some(DeValue::Table(written)) = filled.get_mut(table).map(Spanned::get_mut) else {
            continue;
        };
        for (key, value) in needed.stand_ins() {
            if written.contains_key(key) {
                continue;
            }
            written.insert(unplaced(key), placed(value));
            missing.extend(is_there.then_some(Missing::Key { table, key }));
        }
    }
    (missing, filled)
}

impl NeededTable {
    /// Its keys, in the order in which a person fills them in, with what stands in for each.
    fn stand_ins(&self) -> Vec<(&'static str, DeValue<'static>)> {
        let table = DeTable::parse(self.stand_in).expect("a stand-in is TOML");
        let table = table.into_inner();
        let keys = self.stand_in.lines().filter_map(|line| {
            let (key, _) = line.split_once(" = ")?;
            Some((key, table.get(key)?.get_ref().clone()))
        });
        keys.collect()
    }
}

fn unplaced(key: &'static str) -> Spanned<Cow<'static, str>> {
    placed(Cow::Borrowed(key))
}

fn placed<T>(value: T) -> Spanned<T> {
    Spanned::new(0..0, value)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::campaign::schema::CampaignFile;

    #[test]
    fn every_key_that_the_parser_asks_for_is_listed() {
        // Without any of them the parser has nothing left to ask for.
        let (_, filled) = with_stand_ins(&DeTable::new());
        let read = serde::Deserialize::deserialize(toml::de::Deserializer::from(placed(filled)));
        let _: CampaignFile = read.unwrap();
        // And each that is listed is asked for.
        for needed in &NEEDED {
            for (left_out, _) in needed.stand_ins() {
                let keys = needed.stand_in.lines();
                let keys = keys.filter(|line| !line.starts_with(&format!("{left_out} =")));
                let others = NEEDED.iter().filter(|other| other.name != needed.name);
                let mut text: String = others
                    .map(|other| format!("[{}]\n{}\n", other.name, other.stand_in))
                    .collect();
                text += &format!(
                    "[{}]\n{}\n",
                    needed.name,
                    keys.collect::<Vec<_>>().join("\n")
                );
                let error = toml::from_str::<CampaignFile>(&text).unwrap_err();
                let asked = format!("missing field `{left_out}`");
                assert!(error.message().contains(&asked), "{error}");
            }
        }
    }
}
