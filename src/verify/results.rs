//! Results as attached against results as computed again.

use serde_json::Value;

use super::again::Again;
use super::check::Check;
use super::compare::{Keys, check_length, differences, table};
use super::evidence::Evidence;
use super::keys::check_keys;
use super::stated::{ResultText, Subject};

/// Keys that every version's results have, where they have a rating or a line at all.
const OF_RATING: &[&str] = &[
    "rating",
    "ps50_w",
    "ps50_standard_error_w",
    "ps50_confidence_95_w",
    "ps50_prediction_95_w",
    "extrapolated",
];
const OF_REGRESSION: &[&str] = &[
    "regression",
    "intercept_w",
    "slope_w_per_k",
    "intercept_standard_error_w",
    "slope_standard_error_w_per_k",
    "r_squared",
    "residual_sd_w",
    "intervals",
    "days",
];
const OF_INTERVALS: &[&str] = &[
    "run",
    "start",
    "end",
    "duration_s",
    "water_start_c",
    "water_end_c",
    "ambient_mean_c",
    "irradiance_mean_w_m2",
    "cooking_power_w",
    "standardised_power_w",
    "temperature_difference_k",
    "used",
    "reasons",
];
/// The parts of the results that have a check of their own.
const OWN_CHECK: [&str; 3] = ["rating", "regression", "intervals"];

/// Everything that the attached results state. `is_same` says whether this version made them.
pub fn check_results(evidence: &Evidence, again: &Again, is_same: bool) -> Vec<Check> {
    match evidence.stated.subject {
        Subject::Report { .. } => check_rating(evidence, again, is_same),
        Subject::Comparison { .. } | Subject::FieldSheet { .. } => {
            check_whole(evidence, again, is_same)
        }
    }
}

/// Results that are held as one.
fn check_whole(evidence: &Evidence, again: &Again, is_same: bool) -> Vec<Check> {
    let keys = keys_of(is_same, &[]);
    let name = &evidence.results.name;
    let fresh: Value = serde_json::from_str(&again.results).expect("our own results are JSON");
    let mut found = match parse(&evidence.results, &again.results) {
        Ok(stated) => differences(
            name,
            &without_version(stated),
            &without_version(fresh),
            keys,
        ),
        Err(why) => vec![why],
    };
    let mut text = format!("every key of {name}");
    if let Some(attached) = &evidence.table {
        match read_tables(attached, &again.table) {
            Ok((stated, fresh)) => {
                let rows = count_agreeing(&attached.name, &stated, &fresh, keys, &mut found);
                text += &format!(", {rows} of {} rows of {}", fresh.len(), attached.name);
            }
            Err(why) => found.push(why),
        }
    }
    vec![Check::new("results", text, found)]
}

/// Results but for the version that stated them, which has a check of its own.
fn without_version(mut results: Value) -> Value {
    if let Some(provenance) = results["provenance"].as_object_mut() {
        provenance.remove("tool_version");
    }
    results
}

fn keys_of(is_same: bool, of_all: &'static [&'static str]) -> Keys {
    match is_same {
        true => Keys::Same,
        false => Keys::AtLeast(of_all),
    }
}

/// The results of one campaign, part by part.
fn check_rating(evidence: &Evidence, again: &Again, is_same: bool) -> Vec<Check> {
    let keys = |of_all| keys_of(is_same, of_all);
    let stated = parse(&evidence.results, &again.results);
    let intervals = &again.table;
    let again: Value = serde_json::from_str(&again.results).expect("our own results are JSON");
    let stated = match stated {
        Ok(stated) => stated,
        Err(why) => {
            return vec![Check::new(
                "rating",
                "the attached results cannot be read",
                vec![why],
            )];
        }
    };
    let part = |key: &str, of_all| differences(key, &stated[key], &again[key], keys(of_all));
    let mut checks = vec![
        again_or(rating_text(&again), "rating", part("rating", OF_RATING)),
        again_or(
            regression_text(&again),
            "regression",
            part("regression", OF_REGRESSION),
        ),
        check_intervals(evidence, &stated, &again, intervals, keys(OF_INTERVALS)),
    ];
    checks.push(match is_same {
        true => check_rest(evidence, stated, again),
        false => Check::skipped("results", "the rest of them, the ± among it: not compared"),
    });
    checks
}

/// A check whose text is true of what is computed again alone, where something differs.
fn again_or(text: String, subject: &'static str, differences: Vec<String>) -> Check {
    match differences.is_empty() {
        true => Check::new(subject, text, differences),
        false => Check::new(subject, format!("computed again: {text}"), differences),
    }
}

fn parse(stated: &ResultText, again: &str) -> Result<Value, String> {
    check_length(&stated.name, &stated.text, again)?;
    check_keys(&stated.text).map_err(|error| format!("{}: {error}", stated.name))?;
    serde_json::from_str(&stated.text).map_err(|error| format!("{}: {error}", stated.name))
}

fn rating_text(again: &Value) -> String {
    match again["rating"]["ps50_w"].as_f64() {
        Some(ps50_w) => format!("Ps(50) is {} W", crate::units::fixed(ps50_w, 3)),
        None => "there is no rating".to_owned(),
    }
}

fn regression_text(again: &Value) -> String {
    let line = &again["regression"];
    match (line["intercept_w"].as_f64(), line["slope_w_per_k"].as_f64()) {
        (Some(a), Some(b)) => format!(
            "the line has a = {} W, b = {} W/K",
            crate::units::fixed(a, 3),
            crate::units::fixed(b, 5)
        ),
        _ => "there is no line".to_owned(),
    }
}

/// Every interval, in either file.
fn check_intervals(
    evidence: &Evidence,
    stated: &Value,
    again: &Value,
    csv: &str,
    keys: Keys,
) -> Check {
    let rows = |value: &Value| value["intervals"].as_array().cloned().unwrap_or_default();
    let (stated, again) = (rows(stated), rows(again));
    let mut found = Vec::new();
    let in_json = count_agreeing("intervals", &stated, &again, keys, &mut found);
    let mut text = format!("{in_json} of {} in {}", again.len(), evidence.results.name);
    match &evidence.table {
        Some(attached) => match read_tables(attached, csv) {
            Ok((stated, again)) => {
                let in_csv = count_agreeing(&attached.name, &stated, &again, keys, &mut found);
                text += &format!(", {in_csv} of {} in {}", again.len(), attached.name);
            }
            Err(why) => found.push(why),
        },
        None => found.push("the table of the intervals is not attached".to_owned()),
    }
    Check::new("intervals", text, found)
}

/// A table as attached and as computed again.
fn read_tables(attached: &ResultText, again: &str) -> Result<(Vec<Value>, Vec<Value>), String> {
    check_length(&attached.name, &attached.text, again)?;
    let stated = table(&attached.text).map_err(|why| format!("{}: {why}", attached.name))?;
    Ok((stated, table(again)?))
}

/// How many rows agree; what differs in the others is added.
fn count_agreeing(
    place: &str,
    stated: &[Value],
    again: &[Value],
    keys: Keys,
    found: &mut Vec<String>,
) -> usize {
    if stated.len() != again.len() {
        found.push(format!(
            "{place}: {} are stated, computed again {}",
            stated.len(),
            again.len()
        ));
    }
    let mut agreeing = 0;
    for (index, (stated, again)) in stated.iter().zip(again).enumerate() {
        let (run, start) = (&again["run"], &again["start"]);
        let row = format!(
            "{place} {} ({} {})",
            index + 1,
            run.as_str().unwrap_or_default(),
            start.as_str().unwrap_or_default()
        );
        let of_row = differences(&row, stated, again, keys);
        agreeing += usize::from(of_row.is_empty());
        found.extend(of_row);
    }
    agreeing
}

/// Every other key.
fn check_rest(evidence: &Evidence, mut stated: Value, mut again: Value) -> Check {
    for value in [&mut stated, &mut again] {
        if let Some(keys) = value.as_object_mut() {
            keys.retain(|key, _| !OWN_CHECK.contains(&key.as_str()));
        }
    }
    let count = again.as_object().map_or(0, serde_json::Map::len);
    let text = format!("{count} other keys of {}", evidence.results.name);
    Check::new(
        "results",
        text,
        differences("rating.json", &stated, &again, Keys::Same),
    )
}
