//! JSON Schemas that others build on, held against what the program derives, and every key that
//! a file of a version ever had, with its type.
//!
//! After a change to what is written, renew both and look at what changed in them:
//!
//! ```sh
//! RENEW_SCHEMA=1 cargo test --release --test modules schema
//! RENEW_SCHEMA=1 cargo test --release --test program schema
//! ```
//!
//! Renewing adds keys; one that is gone or has another type fails even then.
//!
//! Checked with the crate jsonschema, an implementation of JSON Schema draft 2020-12 that
//! is not ours.

use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

use jsonschema::Validator;
use serde_json::{Value, json};

/// Environment variable that asks for the files to be renewed.
const RENEW: &str = "RENEW_SCHEMA";

/// A schema with its two files.
pub struct Held {
    /// What the program derives.
    pub derived: fn() -> Value,
    /// The schema in the repository.
    pub file: &'static str,
    /// Its keys with their types.
    pub keys: &'static str,
}

fn is_renewing() -> bool {
    std::env::var_os(RENEW).is_some()
}

impl Held {
    /// The schema of the repository; the new one while it is being renewed.
    pub fn in_repository(&self) -> Value {
        if is_renewing() {
            return (self.derived)();
        }
        let text = fs::read_to_string(self.file).expect("the schema is in the repository");
        serde_json::from_str(&text).unwrap()
    }

    /// What checks files against it.
    pub fn validator(&self) -> Validator {
        jsonschema::options()
            .should_validate_formats(true)
            .build(&self.in_repository())
            .unwrap()
    }

    /// Asserts that a value meets it.
    #[track_caller]
    pub fn is_met_by(&self, value: &Value, what: &str) {
        let problems: Vec<String> = self
            .validator()
            .iter_errors(value)
            .map(|problem| format!("{}: {problem}", problem.instance_path()))
            .collect();
        assert!(problems.is_empty(), "{what}: {problems:#?}");
    }

    /// Asserts that the repository has the schema of the program; renews it.
    pub fn is_that_of_the_program(&self) {
        let derived = (self.derived)();
        if is_renewing() {
            let text = serde_json::to_string_pretty(&derived).unwrap() + "\n";
            fs::create_dir_all(Path::new(self.file).parent().unwrap()).unwrap();
            fs::write(self.file, text).unwrap();
        }
        assert!(
            is_renewing() || self.in_repository() == derived,
            "{} is not what is written any more. Renew it and look at what changed, with \
             {RENEW}=1",
            self.file
        );
    }

    /// Asserts that it is of its draft, by its name, and that keys may be added.
    pub fn says_what_it_is(&self, id: &str, title: &str) {
        let schema = self.in_repository();
        assert!(jsonschema::draft202012::meta::is_valid(&schema));
        assert_eq!(schema["$id"], id);
        assert_eq!(schema["title"], title);
        assert!(!schema.to_string().contains("additionalProperties"));
    }

    /// Asserts that every key is described; at least so many parts are looked at.
    pub fn describes_every_key(&self, least_parts: usize) {
        let schema = self.in_repository();
        look(&schema, &schema, "");
        let parts = schema["$defs"].as_object().unwrap();
        assert!(parts.len() >= least_parts, "{}", parts.len());
        let parts = parts.iter();
        parts.for_each(|(name, part)| look(&schema, part, name));
    }

    /// Asserts that no key that there once was is gone; renews the list.
    pub fn loses_no_key(&self) {
        let mut keys = BTreeSet::new();
        let schema = (self.derived)();
        add_keys(&schema, &schema, "", &mut keys);
        let listed = fs::read_to_string(self.keys).unwrap_or_default();
        let listed: BTreeSet<String> = listed.lines().map(str::to_owned).collect();
        let lost: Vec<&String> = listed.difference(&keys).collect();
        assert!(
            lost.is_empty(),
            "keys are gone, or have another type: {lost:#?}\n\
             Within a version of the schema keys are only ever added: others read them. Put them \
             back; a new meaning is a new key."
        );
        if is_renewing() {
            let lines = keys.iter().map(|key| format!("{key}\n"));
            fs::write(self.keys, lines.collect::<String>()).unwrap();
            return;
        }
        let new: Vec<&String> = keys.difference(&listed).collect();
        assert!(
            new.is_empty(),
            "new keys: {new:#?}\n\
             They can never be taken away again. If they are what they should be, add them to \
             {} with {RENEW}=1",
            self.keys
        );
    }

    /// Asserts that a file without one of its keys is refused, and one with another type; at
    /// least so many keys are tried.
    pub fn refuses_less_and_other(&self, value: &Value, least_keys: usize) {
        let validator = self.validator();
        assert!(validator.is_valid(value));
        let mut found = Vec::new();
        pointers(value, "", &mut found);
        assert!(found.len() >= least_keys, "{}", found.len());
        for pointer in found {
            let (parent, key) = pointer.rsplit_once('/').unwrap();
            let mut without = value.clone();
            let object = without.pointer_mut(parent).unwrap().as_object_mut();
            object.unwrap().remove(key).unwrap();
            assert!(!validator.is_valid(&without), "without {pointer}");
            // No key holds a list of lists of lists.
            let mut other = value.clone();
            *other.pointer_mut(&pointer).unwrap() = json!([[[]]]);
            assert!(!validator.is_valid(&other), "another type of {pointer}");
        }
    }
}

/// What a part of a schema stands for: where it points to, or itself.
fn resolved<'s>(schema: &'s Value, part: &'s Value) -> &'s Value {
    match part["$ref"].as_str() {
        Some(reference) => schema
            .pointer(&reference[1..])
            .expect("it points somewhere"),
        None => part,
    }
}

/// Each key with its type, as `runs[].date: string`, below a part of the schema.
pub fn add_keys(schema: &Value, part: &Value, path: &str, keys: &mut BTreeSet<String>) {
    let part = resolved(schema, part);
    for choice in part["anyOf"].as_array().into_iter().flatten() {
        add_keys(schema, choice, path, keys);
    }
    let types = match &part["type"] {
        Value::String(word) => vec![word.as_str()],
        Value::Array(words) => words.iter().filter_map(Value::as_str).collect(),
        _ => Vec::new(),
    };
    if !path.is_empty() {
        keys.extend(types.iter().map(|word| format!("{path}: {word}")));
    }
    for (key, value) in part["properties"].as_object().into_iter().flatten() {
        let dot = if path.is_empty() { "" } else { "." };
        add_keys(schema, value, &format!("{path}{dot}{key}"), keys);
    }
    if part["items"].is_object() {
        add_keys(schema, &part["items"], &format!("{path}[]"), keys);
    }
}

/// Asserts that the keys of a part of a schema are described.
fn look(schema: &Value, part: &Value, path: &str) {
    let properties = part["properties"].as_object();
    for (key, value) in properties.into_iter().flatten() {
        let kind = resolved(schema, value);
        let described = [value, kind, &value["anyOf"][0]];
        let described = described
            .map(|part| resolved(schema, part)["description"].is_string())
            .contains(&true)
            || kind["type"] == "array"
                && resolved(schema, &kind["items"])["description"].is_string();
        assert!(described, "{path}.{key} has no description");
    }
}

/// JSON pointers to every member of an object, in the first item of a list.
fn pointers(value: &Value, at: &str, found: &mut Vec<String>) {
    match value {
        Value::Object(members) => {
            for (key, value) in members {
                let pointer = format!("{at}/{key}");
                pointers(value, &pointer, found);
                found.push(pointer);
            }
        }
        Value::Array(items) if !items.is_empty() => pointers(&items[0], &format!("{at}/0"), found),
        _ => {}
    }
}
