//! Keys of the campaign file in the units that people have: `water_lb` for `water_kg`.
//!
//! Such a key gets the name that the schema knows, and its number becomes a text with its unit,
//! which [`super::measured`] converts. Places in the file stay what they were.

use std::borrow::Cow;

use toml::Spanned;
use toml::de::{DeTable, DeValue};

use super::measured::{is_number, parse};
use crate::measure::{Kind, Unit};

/// A key that is a quantity.
struct QuantityKey {
    /// The table, or the list of tables, that it stands in; `*` for the beginning of a name.
    table: &'static str,
    /// What it is called without its unit.
    stem: &'static str,
    kind: Kind,
}

const fn key(table: &'static str, stem: &'static str, kind: Kind) -> QuantityKey {
    QuantityKey { table, stem, kind }
}

/// Every key that may stand in another unit.
const KEYS: &[QuantityKey] = &[
    key("cooker", "intercept_area", Kind::Area),
    key("cooker", "loss_area", Kind::Area),
    key("cooker", "glazing_area", Kind::Area),
    key("cooker", "mass", Kind::Mass),
    key("cooker.aperture", "diameter", Kind::Length),
    key("cooker.aperture", "width", Kind::Length),
    key("cooker.aperture", "height", Kind::Length),
    key("cooker.aperture", "across_corners", Kind::Length),
    key("cooker.aperture", "points", Kind::Length),
    key("site", "elevation", Kind::Length),
    key("load", "water", Kind::Mass),
    key("load", "vessel_water", Kind::Mass),
    key("load", "vessel_mass", Kind::Mass),
    key("run", "water", Kind::Mass),
    key("run", "vessel_water", Kind::Mass),
    key("cooking", "water", Kind::Mass),
    key("cooking", "ambient", Kind::Temperature),
    key("cooking", "start", Kind::Temperature),
    key("cooking", "reached", Kind::Temperature),
    key("instruments.*_temperature", "uncertainty", Kind::Difference),
    key("instruments.*_temperature", "resolution", Kind::Difference),
    key("stagnation", "uncertainty", Kind::Difference),
];

/// The ends of keys of a kind, that of the schema first, each with its unit.
fn endings(kind: Kind) -> &'static [(&'static str, &'static str)] {
    match kind {
        Kind::Length => &[
            ("m", "m"),
            ("cm", "cm"),
            ("mm", "mm"),
            ("ft", "ft"),
            ("in", "in"),
        ],
        Kind::Area => &[("m2", "m²"), ("cm2", "cm²"), ("ft2", "ft²"), ("in2", "in²")],
        Kind::Mass => &[("kg", "kg"), ("g", "g"), ("lb", "lb"), ("oz", "oz")],
        Kind::Temperature => &[("c", "°C"), ("f", "°F")],
        Kind::Difference => &[("k", "K"), ("f", "°F")],
        _ => &[],
    }
}

impl QuantityKey {
    /// Its name in the schema.
    fn canonical(&self) -> String {
        format!("{}_{}", self.stem, endings(self.kind)[0].0)
    }
}

/// A value that was written under another name, or with its unit.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Written {
    /// Such as `run.2.water_kg`.
    pub canonical: String,
    /// Such as `run.2.water_lb`.
    pub key: String,
    /// Such as `16.2 lb`; empty for a list.
    pub value: String,
}

/// What is wrong with keys of a quantity.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Contradiction {
    /// As it is in the schema.
    pub canonical: String,
    pub what: String,
}

/// Gives every key in another unit the name of the schema. Returns what was written, and what
/// contradicts itself: two keys for one quantity, or a text in another unit than its key.
pub fn rename(tree: &mut DeTable<'_>) -> (Vec<Written>, Vec<Contradiction>) {
    let mut renamed = Renamed::default();
    let mut rename_in = |keys: &[&QuantityKey], path: &str, table: &mut DeTable<'_>| {
        for key in keys {
            rename_one(key, path, table, &mut renamed);
        }
    };
    let mut tables: Vec<&str> = KEYS.iter().map(|key| key.table).collect();
    tables.dedup();
    for name in tables {
        let keys: Vec<&QuantityKey> = KEYS.iter().filter(|key| key.table == name).collect();
        visit(tree, name, "", &mut |path, table| {
            rename_in(&keys, path, table);
        });
    }
    (renamed.written, renamed.wrong)
}

#[derive(Default)]
struct Renamed {
    written: Vec<Written>,
    wrong: Vec<Contradiction>,
}

/// Hands every table of a name to `each`, with its path.
fn visit<'t>(
    tree: &mut DeTable<'t>,
    name: &str,
    above: &str,
    each: &mut impl FnMut(&str, &mut DeTable<'t>),
) {
    let (first, rest) = name.split_once('.').map_or((name, ""), |(a, b)| (a, b));
    let path_of = |key: &str| match above {
        "" => key.to_owned(),
        above => format!("{above}.{key}"),
    };
    for (key, value) in tree.iter_mut() {
        let key = key.get_ref().as_ref();
        let is_one = match first.strip_prefix('*') {
            Some(end) => key.ends_with(end),
            None => first == key,
        };
        if !is_one {
            continue;
        }
        let path = path_of(key);
        match value.get_mut() {
            DeValue::Table(table) if rest.is_empty() => each(&path, table),
            DeValue::Table(table) => visit(table, rest, &path, each),
            DeValue::Array(items) => {
                for (index, item) in items.iter_mut().enumerate() {
                    if let DeValue::Table(table) = item.get_mut() {
                        each(&format!("{path}.{}", index + 1), table);
                    }
                }
            }
            _ => {}
        }
    }
}

fn rename_one(key: &QuantityKey, path: &str, table: &mut DeTable<'_>, renamed: &mut Renamed) {
    let canonical = key.canonical();
    let canonical_path = format!("{path}.{canonical}");
    let known = endings(key.kind).iter().skip(1);
    let named = known.map(|(ending, unit)| (format!("{}_{ending}", key.stem), Some(*unit)));
    // Without a unit in its name, the value has to be a text that has one.
    let named = named.chain([(key.stem.to_owned(), None)]);
    if let Some(text) = table.get(canonical.as_str()).and_then(text_of) {
        renamed.written.push(Written {
            canonical: canonical_path.clone(),
            key: canonical_path.clone(),
            value: text.to_owned(),
        });
    }
    for (name, unit) in named {
        let Some((at, value)) = table.remove_entry(name.as_str()) else {
            continue;
        };
        let mut wrong = |what: String| {
            renamed.wrong.push(Contradiction {
                canonical: canonical_path.clone(),
                what,
            });
        };
        if table.contains_key(canonical.as_str()) {
            wrong(format!(
                "both {canonical} and {name} are given, expected one"
            ));
            continue;
        }
        if let (Some(unit), Some(text)) = (unit, text_of(&value))
            && is_in_another(text, unit, key.kind)
        {
            wrong(format!(
                "the key {name} is in {unit}, and its text is \"{text}\""
            ));
        }
        let span = value.span();
        let value = with_unit(value.into_inner(), unit.unwrap_or(""));
        renamed.written.push(Written {
            canonical: canonical_path.clone(),
            key: format!("{path}.{name}"),
            value: value.as_str().map(str::to_owned).unwrap_or_default(),
        });
        let name = Spanned::new(at.span(), Cow::Owned(canonical.clone()));
        table.insert(name, Spanned::new(span, value));
    }
}

/// Whether a text is a quantity of which no part is in a unit.
fn is_in_another(text: &str, unit: &str, kind: Kind) -> bool {
    let unit = Unit::parse(unit, &[kind]);
    let mut words = text.split(|c: char| c.is_whitespace() || c.is_ascii_digit());
    parse(text, kind).is_some() && !words.any(|word| Unit::parse(word, &[kind]) == unit)
}

fn text_of<'v>(value: &'v Spanned<DeValue<'_>>) -> Option<&'v str> {
    value.get_ref().as_str()
}

/// A number as a decimal one; `None` for what is none.
fn number_of(value: &DeValue<'_>) -> Option<String> {
    match value {
        DeValue::Integer(number) => {
            let digits = number.as_str().trim_start_matches('+');
            let whole = i64::from_str_radix(digits, number.radix()).ok()?;
            Some(whole.to_string())
        }
        DeValue::Float(number) => {
            let value: f64 = number.as_str().parse().ok()?;
            Some(value.to_string())
        }
        _ => None,
    }
}

/// Numbers, and texts that are one, as texts with a unit; everything else as it is.
fn with_unit<'t>(value: DeValue<'t>, unit: &str) -> DeValue<'t> {
    let bare = value.as_str().filter(|text| is_number(text));
    if let Some(number) = number_of(&value).or_else(|| bare.map(str::to_owned)) {
        return DeValue::String(Cow::Owned(format!("{number} {unit}").trim_end().to_owned()));
    }
    match value {
        DeValue::Array(mut items) => {
            for item in items.iter_mut() {
                let inner = std::mem::replace(item.get_mut(), DeValue::Boolean(false));
                *item.get_mut() = with_unit(inner, unit);
            }
            DeValue::Array(items)
        }
        other => other,
    }
}

/// The key of a table in the unit that people have where they measure in those of the US, for a
/// message: `elevation_ft` for `elevation_m`.
pub fn us_name(table: &str, canonical: &str) -> Option<String> {
    let is_table = |key: &&QuantityKey| match key.table.split_once('*') {
        Some((above, end)) => table.starts_with(above) && table.ends_with(end),
        None => key.table == table,
    };
    let mut keys = KEYS.iter().filter(is_table);
    let key = keys.find(|key| key.canonical() == canonical)?;
    let ending = match key.kind {
        Kind::Length => "ft",
        Kind::Area => "ft2",
        Kind::Mass => "lb",
        _ => "f",
    };
    Some(format!("{}_{ending}", key.stem))
}

/// The key for a quantity in a unit, by the key of the schema: `elevation_ft` for `elevation_m` and
/// `ft`.
pub fn in_unit(canonical: &str, symbol: &str) -> Option<String> {
    let key = KEYS.iter().find(|key| key.canonical() == canonical)?;
    let mut endings = endings(key.kind).iter();
    let (ending, _) = endings.find(|(_, unit)| *unit == symbol)?;
    Some(format!("{}_{ending}", key.stem))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::campaign::schema::CampaignFile;
    use serde::Deserialize;

    /// What a campaign file says, with some tables more.
    fn read(text: &str) -> Result<CampaignFile, toml::de::Error> {
        let text = format!(
            "{text}\n[campaign]\ntitle = \"invented\"\n[site]\nname = \"Nowhere (invented)\"\n\
             latitude_deg = 1\nlongitude_deg = 1\ntime_zone = \"UTC\"\nelevation_ft = 5280\n"
        );
        let mut tree = DeTable::parse(&text).unwrap().into_inner();
        let (_, wrong) = rename(&mut tree);
        assert_eq!(wrong, []);
        CampaignFile::deserialize(toml::de::Deserializer::from(Spanned::new(0..0, tree)))
    }

    // Factors: NIST SP 811 (2008), appendix B.8.
    #[test]
    fn every_key_in_another_unit_is_that_of_the_schema() {
        let file = read(
            "[cooker]\nname = \"invented\"\ntype = \"panel\"\nmass = \"8 lb 4 oz\"\n\
             intercept_area_ft2 = 10\naperture = { shape = \"outline\", points_ft = [[0, 0], [1, 0.5]], width_in = 10 }\n\
             [load]\nwater_lb = 16.5\nvessel_water_oz = [16, 32.0]\n\
             [instruments.water_temperature]\nresolution_f = 9\n\
             [cooking]\nambient_f = 77\nreached_f = [212, 302]\n\
             [[run]]\nlog = \"a.csv\"\n[[run]]\nlog = \"b.csv\"\nwater_g = 7_484\n",
        )
        .unwrap();
        let near = |found: Option<f64>, value: f64| {
            let found = found.expect("it is there");
            assert!((found - value).abs() < 1e-6, "{found}, expected {value}");
        };
        near(Some(file.site.elevation_m), 1609.344);
        near(file.cooker.mass_kg, 3.742_137);
        near(file.cooker.intercept_area_m2, 0.929_030_4);
        let aperture = file.cooker.aperture.unwrap();
        near(aperture.width_m, 0.254);
        assert_eq!(aperture.points_m.unwrap()[1], [0.3048, 0.1524]);
        near(file.load.water_kg, 7.484_274_1);
        near(file.load.vessel_water_kg.map(|each| each[1]), 0.907_184_74);
        near(file.instruments.water_temperature.resolution_k, 5.0);
        near(file.cooking.ambient_c, 25.0);
        assert_eq!(file.cooking.reached_c.unwrap(), [100.0, 150.0]);
        near(file.run[1].water_kg, 7.484);
    }

    #[test]
    fn a_number_without_a_unit_is_refused_where_the_key_names_none() {
        let file = "[cooker]\nname = \"invented\"\ntype = \"panel\"\nmass = 4\n";
        let error = read(file).unwrap_err();
        assert!(
            error.message().contains("a number with its unit"),
            "{error}"
        );
    }

    #[test]
    fn keys_that_contradict_each_other_or_their_text_are_told() {
        let wrong = |text: &str| {
            let mut tree = DeTable::parse(text).unwrap().into_inner();
            let (_, wrong) = rename(&mut tree);
            wrong.into_iter().map(|one| one.what).collect::<Vec<_>>()
        };
        assert_eq!(
            wrong("[load]\nwater_kg = 7\nwater_lb = 15.4\n"),
            ["both water_kg and water_lb are given, expected one"]
        );
        assert_eq!(
            wrong("[load]\nwater_lb = \"8.6 kg\"\n"),
            ["the key water_lb is in lb, and its text is \"8.6 kg\""]
        );
        // The unit of the text says it all, where the key is the schema's.
        for right in [
            "water_kg = \"16.2 lb\"",
            "water_lb = \"16 lb 3 oz\"",
            "water_lb = \"16\"",
        ] {
            assert_eq!(wrong(&format!("[load]\n{right}\n")), [""; 0], "{right}");
        }
    }

    #[test]
    fn numbers_are_taken_as_toml_has_them() {
        for (text, kilograms) in [
            ("1.6e1", 7.257_477_9),
            ("+16", 7.257_477_9),
            ("0x10", 7.257_477_9),
        ] {
            let file = read(&format!(
                "[cooker]\nname = \"invented\"\ntype = \"panel\"\n[load]\nwater_lb = {text}\n"
            ));
            let found = file.unwrap().load.water_kg.unwrap();
            assert!((found - kilograms).abs() < 1e-6, "{text}: {found}");
        }
    }

    #[test]
    fn every_quantity_of_the_schema_has_its_row() {
        let schema = include_str!("schema.rs");
        let stated = schema.matches("deserialize_with = \"measured::").count();
        // The water of a load, a run and the cooking section are three rows, as in the schema;
        // a table for each instrument is one.
        assert_eq!(stated, KEYS.len());
    }
}
