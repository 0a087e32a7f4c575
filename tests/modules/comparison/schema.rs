//! `comparison.json` against its JSON Schema, and the schema against its older states.

use serde_json::{Value, json};
use simmerline::comparison::{Comparison, compare};
use simmerline::procedure::Assessment;
use simmerline::report::comparison::data::json::ComparisonFile;

use crate::kit::rate::{sample, samples};
use crate::kit::schema::Held;

/// The schema of `comparison.json`.
const HELD: Held = Held {
    derived: || ComparisonFile::schema().to_value(),
    file: "templates/schemas/comparison-1.schema.json",
    keys: "tests/data/comparison-1.keys.txt",
};

fn data_of(comparison: &Comparison) -> Value {
    serde_json::from_str(&ComparisonFile::new(comparison).to_text().unwrap()).unwrap()
}

fn of(names: &[&str], baseline: Option<usize>) -> Value {
    let campaigns: Vec<Assessment> = names.iter().map(|name| sample(name)).collect();
    data_of(&compare(campaigns, baseline, true).unwrap())
}

#[test]
fn schema_in_the_repository_is_that_of_the_program() {
    HELD.is_that_of_the_program();
}

#[test]
fn schema_says_what_it_is_and_leaves_room_for_more_keys() {
    HELD.says_what_it_is("urn:simmerline:comparison:1", "Comparison of solar cookers");
    let mut data = of(&["open-dish", "open-dish-skirt"], None);
    data["of_a_later_state"] = json!({"more": 1});
    assert!(HELD.validator().is_valid(&data));
}

#[test]
fn every_key_of_the_schema_is_described() {
    HELD.describes_every_key(10);
}

#[test]
fn no_key_of_an_older_state_of_the_schema_is_lost() {
    HELD.loses_no_key();
}

#[test]
fn comparisons_of_all_samples_meet_the_schema() {
    let all: Vec<Assessment> = samples().into_iter().map(|(_, one)| one).collect();
    HELD.is_met_by(&data_of(&compare(all, None, true).unwrap()), "all samples");
    let with_baseline = of(&["open-dish", "box", "open-dish-skirt"], Some(1));
    HELD.is_met_by(&with_baseline, "a baseline");
    assert!(with_baseline["groups"].is_null());
    HELD.is_met_by(&of(&["dry-pot", "box-figures"], None), "dry vessels");
}

#[test]
fn file_without_a_key_or_with_one_of_another_type_is_refused() {
    HELD.refuses_less_and_other(&of(&["open-dish", "box"], None), 80);
}

#[test]
fn what_is_impossible_is_marked_and_has_no_rank() {
    let data = of(&["tube-area-slip", "open-dish", "open-dish-skirt"], None);
    let campaign = |place: usize| &data["campaigns"][place];
    assert_eq!(campaign(0)["valid"], false);
    assert_eq!(campaign(0)["conformity"], "not-valid");
    for key in ["rank", "ps50_w_per_m2", "heating_2_kg_s"] {
        assert!(campaign(0)[key].is_null(), "{key}");
    }
    assert_eq!(
        (&campaign(1)["rank"], &campaign(2)["rank"]),
        (&json!(2), &json!(1))
    );
    assert_eq!(data["pairs"].as_array().unwrap().len(), 1);
}
