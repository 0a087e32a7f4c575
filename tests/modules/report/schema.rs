//! `rating.json` against its JSON Schema, and the schema against its older states.
//!
//! Two files hold what others build on: the schema itself, and every key that a file of
//! version 1 ever had, with its type. After a change to what `rating.json` holds, renew both
//! and look at what changed in them:
//!
//! ```sh
//! RENEW_SCHEMA=1 cargo test --release --test modules report::schema
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
use simmerline::procedure::Assessment;
use simmerline::report::data::rating_file::RatingFile;

use crate::report::campaigns::{poor_campaigns, sample, samples};

const SCHEMA: &str = "templates/schemas/rating-1.schema.json";
const KEYS: &str = "tests/data/rating-1.keys.txt";
/// Environment variable that asks for both files to be renewed.
const RENEW: &str = "RENEW_SCHEMA";

/// The keys that the project's design promises (its section 5, what comes out), as it shows
/// them; written here from it, not from the program's output.
const PROMISED: &str = r#"{
  "schema": "simmerline.rating/1",
  "campaign": "…", "cooker": "…", "demonstration": true,
  "intercept_area_m2": 0.0, "boiling_point_c": 0.0,
  "runs": [ { "log": "…", "date": "2026-03-14", "water_kg": 0.0, "load_kg_m2": 0.0, "readings": 0, "intervals": 0, "used": 0 } ],
  "limits": [ { "code": "…", "limit": 0.0, "unit": "…", "source": "…", "standing": "requirement", "changed": false } ],
  "rating": {
    "ps50_w": 0.0, "ps50_standard_error_w": 0.0,
    "ps50_confidence_95_w": [0.0, 0.0], "ps50_prediction_95_w": [0.0, 0.0],
    "extrapolated": false
  },
  "regression": {
    "intercept_w": 0.0, "slope_w_per_k": 0.0,
    "intercept_standard_error_w": 0.0, "slope_standard_error_w_per_k": 0.0,
    "r_squared": 0.0, "residual_sd_w": 0.0, "intervals": 0, "days": 0
  },
  "conformity": { "level": "indicative", "findings": [ { "code": "…", "text": "…" } ] },
  "intervals": [ {
    "run": "2026-03-14.csv", "start": "2026-03-14T10:20:00-05:00", "end": "…", "duration_s": 600.0,
    "water_start_c": 0.0, "water_end_c": 0.0, "water_mean_c": 0.0, "ambient_mean_c": 0.0,
    "irradiance_mean_w_m2": 0.0, "irradiance_min_w_m2": 0.0, "irradiance_max_w_m2": 0.0,
    "wind_mean_m_s": 0.0, "solar_time_start_h": 0.0, "solar_time_end_h": 0.0,
    "cooking_power_w": 0.0, "standardised_power_w": 0.0, "temperature_difference_k": 0.0,
    "used": true, "reasons": [""]
  } ],
  "provenance": { "tool_version": "…", "inputs": [ { "file": "…", "sha256": "…" } ] }
}"#;

fn derived() -> Value {
    RatingFile::schema().to_value()
}

/// The schema of the repository; the new one while it is being renewed.
fn in_repository() -> Value {
    if is_renewing() {
        return derived();
    }
    let text = fs::read_to_string(SCHEMA).expect("the schema is in the repository");
    serde_json::from_str(&text).unwrap()
}

fn validator() -> Validator {
    jsonschema::options()
        .should_validate_formats(true)
        .build(&in_repository())
        .unwrap()
}

fn rating_of(assessment: &Assessment) -> Value {
    serde_json::from_str(&RatingFile::new(assessment).to_text().unwrap()).unwrap()
}

fn is_renewing() -> bool {
    std::env::var_os(RENEW).is_some()
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
fn add_keys(schema: &Value, part: &Value, path: &str, keys: &mut BTreeSet<String>) {
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

#[test]
fn schema_in_the_repository_is_that_of_the_program() {
    let derived = derived();
    if is_renewing() {
        let text = serde_json::to_string_pretty(&derived).unwrap() + "\n";
        fs::create_dir_all(Path::new(SCHEMA).parent().unwrap()).unwrap();
        fs::write(SCHEMA, text).unwrap();
    }
    assert!(
        is_renewing() || in_repository() == derived,
        "{SCHEMA} is not what rating.json is any more. Renew it and look at what changed:\n    \
         {RENEW}=1 cargo test --release --test modules report::schema"
    );
}

#[test]
fn schema_says_what_it_is_and_leaves_room_for_more_keys() {
    let schema = in_repository();
    assert!(jsonschema::draft202012::meta::is_valid(&schema));
    assert_eq!(schema["$id"], "urn:simmerline:rating:1");
    assert_eq!(schema["title"], "Rating of a solar cooker");
    assert!(!schema.to_string().contains("additionalProperties"));
    let mut rating = rating_of(&sample("open-dish"));
    rating["of_a_later_state"] = json!({"more": 1});
    rating["rating"]["of_a_later_state"] = json!(1);
    assert!(validator().is_valid(&rating));
}

#[test]
fn every_key_of_the_schema_is_described() {
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
    let schema = in_repository();
    look(&schema, &schema, "");
    let parts = schema["$defs"].as_object().unwrap();
    assert!(parts.len() > 20, "{}", parts.len());
    parts
        .iter()
        .for_each(|(name, part)| look(&schema, part, name));
}

#[test]
fn no_key_of_an_older_state_of_the_schema_is_lost() {
    let mut keys = BTreeSet::new();
    let schema = derived();
    add_keys(&schema, &schema, "", &mut keys);
    let listed = fs::read_to_string(KEYS).unwrap_or_default();
    let listed: BTreeSet<String> = listed.lines().map(str::to_owned).collect();
    let lost: Vec<&String> = listed.difference(&keys).collect();
    assert!(
        lost.is_empty(),
        "keys are gone from rating.json, or have another type: {lost:#?}\n\
         Within version 1 of the schema keys are only ever added: others read them. Put them \
         back; a new meaning is a new key."
    );
    if is_renewing() {
        let lines = keys.iter().map(|key| format!("{key}\n"));
        fs::write(KEYS, lines.collect::<String>()).unwrap();
        return;
    }
    let new: Vec<&String> = keys.difference(&listed).collect();
    assert!(
        new.is_empty(),
        "new keys in rating.json: {new:#?}\n\
         They can never be taken away again. If they are what they should be, add them to \
         {KEYS}:\n    {RENEW}=1 cargo test --release --test modules report::schema"
    );
}

/// Each key of an instance, as in [`add_keys`] but without types.
fn keys_of(instance: &Value, path: &str, keys: &mut BTreeSet<String>) {
    match instance {
        Value::Object(members) => {
            for (key, value) in members {
                let dot = if path.is_empty() { "" } else { "." };
                let path = format!("{path}{dot}{key}");
                keys.insert(path.clone());
                keys_of(value, &path, keys);
            }
        }
        Value::Array(items) => items
            .iter()
            .for_each(|item| keys_of(item, &format!("{path}[]"), keys)),
        _ => {}
    }
}

#[test]
fn every_key_that_the_design_promises_is_in_the_schema_and_in_a_file() {
    let (mut promised, mut written) = (BTreeSet::new(), BTreeSet::new());
    keys_of(&serde_json::from_str(PROMISED).unwrap(), "", &mut promised);
    assert!(promised.len() > 60, "{}", promised.len());
    // This one has findings too.
    let rating = rating_of(&sample("tube-area-slip"));
    keys_of(&rating, "", &mut written);
    let mut typed = BTreeSet::new();
    let schema = in_repository();
    add_keys(&schema, &schema, "", &mut typed);
    let in_schema: BTreeSet<&str> = typed
        .iter()
        .filter_map(|key| key.split_once(": "))
        .map(|(path, _)| path)
        .collect();
    for key in &promised {
        assert!(in_schema.contains(key.as_str()), "{key} not in the schema");
        assert!(written.contains(key), "{key} not in a file");
    }
}

#[test]
fn rating_of_every_sample_and_poor_campaign_meets_the_schema() {
    let validator = validator();
    for (name, assessment) in samples().into_iter().chain(poor_campaigns()) {
        let rating = rating_of(&assessment);
        let problems: Vec<String> = validator
            .iter_errors(&rating)
            .map(|problem| format!("{}: {problem}", problem.instance_path()))
            .collect();
        assert!(problems.is_empty(), "{name}: {problems:#?}");
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

#[test]
fn file_without_a_key_or_with_one_of_another_type_is_refused() {
    let validator = validator();
    let rating = rating_of(&sample("tube-area-slip"));
    let mut found = Vec::new();
    pointers(&rating, "", &mut found);
    assert!(found.len() > 150, "{}", found.len());
    for pointer in found {
        let (parent, key) = pointer.rsplit_once('/').unwrap();
        let mut without = rating.clone();
        let object = without.pointer_mut(parent).unwrap().as_object_mut();
        object.unwrap().remove(key).unwrap();
        assert!(!validator.is_valid(&without), "without {pointer}");
        // No key holds a list of lists of lists.
        let mut other = rating.clone();
        *other.pointer_mut(&pointer).unwrap() = json!([[[]]]);
        assert!(!validator.is_valid(&other), "another type of {pointer}");
    }
}

#[test]
fn wrong_values_are_refused() {
    let validator = validator();
    let rating = rating_of(&sample("open-dish"));
    assert!(validator.is_valid(&rating));
    for (pointer, wrong) in [
        ("/schema", json!("simmerline.rating/2")),
        ("/conformity/level", json!("conforming")),
        ("/rating/ps50_w", json!("131.2")),
        ("/rating/ps50_w", Value::Null),
        ("/rating/ps50_confidence_95_w", json!([1.0])),
        ("/runs/0/date", json!("16.9.2026")),
        ("/runs/0/readings", json!(-1)),
        ("/runs/0/readings", json!(80.5)),
        ("/intervals/0/start", json!("2026-09-16 10:20:00")),
        ("/intervals/0/reasons", json!("wind-high")),
    ] {
        let mut changed = rating.clone();
        *changed.pointer_mut(pointer).unwrap() = wrong.clone();
        assert!(!validator.is_valid(&changed), "{pointer}: {wrong}");
    }
}
