//! Results as stated against results as computed again: by value, key by key.

use serde_json::{Map, Value};

/// How far two numbers may differ, as a fraction: what computers differ by in the last digits.
const TOLERANCE: f64 = 1e-9;
/// Results so many times as long as computed again are not even looked at.
const LARGEST_RATIO: usize = 4;
/// Results that are always looked at, bytes.
const ALWAYS_READ: usize = 64 << 10;

/// Which keys have to be there.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Keys {
    /// On either side those of the other: both are by one version.
    Same,
    /// Only these: what another version adds is passed over.
    AtLeast(&'static [&'static str]),
}

impl Keys {
    /// Whether a key that only one side has is a difference.
    fn asks_for(self, key: &str) -> bool {
        match self {
            Keys::Same => true,
            Keys::AtLeast(keys) => keys.contains(&key),
        }
    }
}

/// What differs between two values, a line each, the place first.
pub fn differences(place: &str, stated: &Value, again: &Value, keys: Keys) -> Vec<String> {
    let mut found = Vec::new();
    compare(place, stated, again, keys, &mut found);
    found
}

fn compare(place: &str, stated: &Value, again: &Value, keys: Keys, found: &mut Vec<String>) {
    match (stated, again) {
        (Value::Object(one), Value::Object(other)) => {
            let keys_of_both = one
                .keys()
                .chain(other.keys().filter(|key| !one.contains_key(*key)));
            for key in keys_of_both {
                let within = format!("{place}.{key}");
                match (one.get(key), other.get(key)) {
                    (Some(one), Some(other)) => compare(&within, one, other, keys, found),
                    (Some(_), None) if keys.asks_for(key) => {
                        found.push(format!(
                            "{within} is stated, and does not follow from the logs"
                        ));
                    }
                    (None, Some(other)) if keys.asks_for(key) => {
                        found.push(format!(
                            "{within} is not stated, computed again {}",
                            shown(other)
                        ));
                    }
                    _ => {}
                }
            }
        }
        (Value::Array(one), Value::Array(other)) if one.len() == other.len() => {
            for (index, (one, other)) in one.iter().zip(other).enumerate() {
                compare(&format!("{place}[{index}]"), one, other, keys, found);
            }
        }
        _ if is_same(stated, again) => {}
        _ => found.push(format!(
            "{place} is stated as {}, computed again {}",
            shown(stated),
            shown(again)
        )),
    }
}

fn is_same(one: &Value, other: &Value) -> bool {
    match (one.as_f64(), other.as_f64()) {
        (Some(one), Some(other)) => (one - other).abs() <= TOLERANCE * one.abs().max(other.abs()),
        _ => one == other,
    }
}

/// A value in a line.
fn shown(value: &Value) -> String {
    match value {
        Value::Array(items) => format!("a list of {}", items.len()),
        Value::Object(_) => "a table".to_owned(),
        Value::String(text) => {
            let start: String = text.chars().take(60).collect();
            let dots = if start.len() < text.len() { "…" } else { "" };
            format!("\"{}{dots}\"", start.escape_debug())
        }
        other => other.to_string(),
    }
}

/// Whether stated results are short enough to be looked at, with results computed again
/// beside them.
///
/// # Errors
/// The difference, in words.
pub fn check_length(name: &str, stated: &str, again: &str) -> Result<(), String> {
    if stated.len() <= ALWAYS_READ.max(LARGEST_RATIO * again.len()) {
        return Ok(());
    }
    Err(format!(
        "{name} has {} bytes, computed again {}",
        stated.len(),
        again.len()
    ))
}

/// A CSV table as JSON: an object a row, numbers as numbers.
///
/// # Errors
/// What is wrong with the table, in words.
pub fn table(text: &str) -> Result<Vec<Value>, String> {
    let mut reader = csv::Reader::from_reader(text.as_bytes());
    let headers = reader.headers().map_err(|error| error.to_string())?.clone();
    for (index, header) in headers.iter().enumerate() {
        if headers.iter().take(index).any(|other| other == header) {
            return Err(format!("the column \"{header}\" stands twice"));
        }
    }
    let mut rows = Vec::new();
    for record in reader.records() {
        let record = record.map_err(|error| error.to_string())?;
        let cells = headers.iter().zip(record.iter());
        let cells = cells.map(|(header, cell)| (header.to_owned(), cell_value(cell)));
        rows.push(Value::Object(cells.collect::<Map<String, Value>>()));
    }
    Ok(rows)
}

fn cell_value(cell: &str) -> Value {
    let number = cell.parse().ok().and_then(serde_json::Number::from_f64);
    number.map_or_else(|| Value::String(cell.to_owned()), Value::Number)
}

#[cfg(test)]
mod tests {
    use serde_json::json;

    use super::*;

    #[test]
    fn numbers_agree_to_the_last_digits_and_keys_by_value() {
        let stated = json!({"a": 1.0, "b": [1, 2], "c": null, "d": "x"});
        let again = json!({"d": "x", "c": null, "b": [1.0, 2.000_000_000_1], "a": 1});
        assert_eq!(differences("r", &stated, &again, Keys::Same), [""; 0]);
        let other = json!({"a": 1.000_001, "b": [1], "c": 0, "d": "y"});
        let found = differences("r", &stated, &other, Keys::Same);
        assert_eq!(found.len(), 4, "{found:?}");
        assert!(found[0].starts_with("r.a is stated as 1.0, computed again 1.000001"));
    }

    #[test]
    fn another_version_may_know_more_but_not_less() {
        let keys = Keys::AtLeast(&["a"]);
        let (old, new) = (json!({"a": 1}), json!({"a": 1, "b": 2}));
        assert!(differences("r", &old, &new, keys).is_empty());
        assert!(differences("r", &new, &old, keys).is_empty());
        assert_eq!(differences("r", &new, &old, Keys::Same).len(), 1);
        assert_eq!(differences("r", &json!({}), &new, keys).len(), 1);
        assert_eq!(differences("r", &json!(null), &new, keys).len(), 1);
    }

    #[test]
    fn a_table_is_compared_cell_by_cell() {
        let rows = table("run,power_w\na.csv,1.50\nb.csv,\n").unwrap();
        assert_eq!(
            rows,
            [
                json!({"run": "a.csv", "power_w": 1.5}),
                json!({"run": "b.csv", "power_w": ""})
            ]
        );
        assert!(table("a,b\n1\n").is_err());
        assert!(table("a,b,a\n1,2,3\n").is_err());
    }
}
