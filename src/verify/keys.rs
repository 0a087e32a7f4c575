//! That no key stands twice in JSON: of two, each reader takes another.

use std::collections::BTreeSet;
use std::fmt;

use serde::Deserialize;
use serde::de::{Deserializer, Error, MapAccess, SeqAccess, Visitor};

/// Whether every key of a JSON text stands once in its object.
///
/// # Errors
/// The text is no JSON, or the key that stands twice.
pub fn check_keys(text: &str) -> Result<(), serde_json::Error> {
    serde_json::from_str::<Distinct>(text).map(drop)
}

/// JSON of which only the keys are looked at.
struct Distinct;

impl<'de> Deserialize<'de> for Distinct {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        deserializer.deserialize_any(Look)
    }
}

struct Look;

impl<'de> Visitor<'de> for Look {
    type Value = Distinct;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("JSON")
    }

    fn visit_unit<E>(self) -> Result<Distinct, E> {
        Ok(Distinct)
    }

    fn visit_bool<E>(self, _: bool) -> Result<Distinct, E> {
        Ok(Distinct)
    }

    fn visit_i64<E>(self, _: i64) -> Result<Distinct, E> {
        Ok(Distinct)
    }

    fn visit_u64<E>(self, _: u64) -> Result<Distinct, E> {
        Ok(Distinct)
    }

    fn visit_f64<E>(self, _: f64) -> Result<Distinct, E> {
        Ok(Distinct)
    }

    fn visit_str<E>(self, _: &str) -> Result<Distinct, E> {
        Ok(Distinct)
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut items: A) -> Result<Distinct, A::Error> {
        while items.next_element::<Distinct>()?.is_some() {}
        Ok(Distinct)
    }

    fn visit_map<A: MapAccess<'de>>(self, mut fields: A) -> Result<Distinct, A::Error> {
        let mut keys = BTreeSet::new();
        while let Some((key, Distinct)) = fields.next_entry::<String, Distinct>()? {
            if keys.contains(&key) {
                return Err(A::Error::custom(format!("the key \"{key}\" stands twice")));
            }
            keys.insert(key);
        }
        Ok(Distinct)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_key_that_stands_twice_is_found_at_any_depth() {
        assert!(check_keys(r#"{"a": 1, "b": [{"a": null}, {"a": "x"}]}"#).is_ok());
        for twice in [
            r#"{"a": 1, "a": 1}"#,
            r#"{"b": [{"a": 1, "c": 2, "a": 3}]}"#,
        ] {
            let error = check_keys(twice).unwrap_err().to_string();
            assert!(error.contains("\"a\" stands twice"), "{error}");
        }
    }
}
