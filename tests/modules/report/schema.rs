//! `rating.json` against its JSON Schema, and the schema against its older states.

use std::collections::BTreeSet;

use serde_json::{Value, json};
use simmerline::procedure::Assessment;
use simmerline::report::data::rating_file::RatingFile;

use crate::kit::schema::{Held, add_keys};
use crate::report::campaigns::{poor_campaigns, sample, samples};

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

/// The schema of `rating.json`.
const HELD: Held = Held {
    derived: || RatingFile::schema().to_value(),
    file: "templates/schemas/rating-1.schema.json",
    keys: "tests/data/rating-1.keys.txt",
};

fn rating_of(assessment: &Assessment) -> Value {
    serde_json::from_str(&RatingFile::new(assessment).to_text().unwrap()).unwrap()
}

#[test]
fn schema_in_the_repository_is_that_of_the_program() {
    HELD.is_that_of_the_program();
}

#[test]
fn schema_says_what_it_is_and_leaves_room_for_more_keys() {
    HELD.says_what_it_is("urn:simmerline:rating:1", "Rating of a solar cooker");
    let mut rating = rating_of(&sample("open-dish"));
    rating["of_a_later_state"] = json!({"more": 1});
    rating["rating"]["of_a_later_state"] = json!(1);
    assert!(HELD.validator().is_valid(&rating));
}

#[test]
fn every_key_of_the_schema_is_described() {
    HELD.describes_every_key(21);
}

#[test]
fn no_key_of_an_older_state_of_the_schema_is_lost() {
    HELD.loses_no_key();
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
    let schema = HELD.in_repository();
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
    for (name, assessment) in samples().into_iter().chain(poor_campaigns()) {
        HELD.is_met_by(&rating_of(&assessment), &name);
    }
}

#[test]
fn file_without_a_key_or_with_one_of_another_type_is_refused() {
    HELD.refuses_less_and_other(&rating_of(&sample("tube-area-slip")), 151);
}

#[test]
fn wrong_values_are_refused() {
    let validator = HELD.validator();
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
