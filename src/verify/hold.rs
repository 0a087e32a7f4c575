//! One report against its own evidence.

use std::path::Path;

use jiff::Timestamp;
use serde_json::Value;

use super::check::{Check, Outcome, Verification};
use super::compare::{Keys, check_length, differences, table};
use super::evidence::{Evidence, ResultText};
use super::keys::check_keys;
use super::pages::{check_hashes, check_headline, check_pages};
use super::pdf::{Page, Pdf};
use super::recompute::{assess_again, edition};
use crate::error::Result;
use crate::procedure::Assessment;
use crate::report::words::build;
use crate::report::{Edition, INTERVALS_ENDING, RATING_ENDING, outputs, result_names};

/// This version of simmerline.
const THIS_VERSION: &str = env!("CARGO_PKG_VERSION");

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

/// Holds a report against what it carries.
///
/// # Errors
/// [`crate::error::Error::Internal`] if the report cannot be set again for a reason of ours.
/// Whatever is wrong with the evidence is a check that differs.
pub fn verify(evidence: &Evidence) -> Result<Verification> {
    let mut checks = vec![check_version(evidence), check_attachments(evidence)];
    let pages = evidence.pdf.pages();
    let pages = pages.map_err(|error| error.to_string());
    checks.push(match &pages {
        Ok(pages) => check_hashes(evidence, pages),
        Err(why) => Check::new("hashes", "the pages cannot be read", lines(why)),
    });
    match assess_again(evidence) {
        Ok(assessment) => checks.extend(check_results(evidence, &assessment, pages.as_deref())),
        Err(why) => checks.push(Check::new(
            "rating",
            "the attached data do not give one",
            lines(&why),
        )),
    }
    let issued = evidence.imprint.issued;
    Ok(Verification {
        issued: issued.map(|issued| issued.strftime("%Y-%m-%d %H:%M UTC").to_string()),
        checks,
    })
}

fn is_by_this_version(evidence: &Evidence) -> bool {
    evidence.stated.provenance.tool_version == THIS_VERSION
}

/// The PDF and the results name one version.
fn check_version(evidence: &Evidence) -> Check {
    let stated = &evidence.stated.provenance.tool_version;
    let mut differences = Vec::new();
    if *stated != evidence.made_by {
        differences.push(format!(
            "the PDF is by simmerline {}, {} states {}",
            evidence.made_by.escape_debug(),
            evidence.rating.name,
            stated.escape_debug()
        ));
    }
    let text = match is_by_this_version(evidence) {
        true => format!("made by simmerline {THIS_VERSION}, as this one is"),
        false => format!(
            "made by simmerline {}, verified by {THIS_VERSION}: its numbers are compared, of its words the rating",
            stated.escape_debug()
        ),
    };
    Check::new("version", text, differences)
}

/// Everything that belongs to the report is attached, and nothing else.
fn check_attachments(evidence: &Evidence) -> Check {
    let results = result_names(&evidence.campaign);
    let inputs = evidence.inputs.iter().map(|input| &input.attached_as);
    let mut expected: Vec<&String> = inputs
        .chain([&results.rating, &results.intervals])
        .collect();
    expected.sort();
    expected.dedup();
    let is_there = |name: &&&String| evidence.attachments.contains_key(name.as_str());
    let found = expected.iter().filter(is_there).count();
    let missing = expected.iter().filter(|name| !is_there(name));
    let mut differences: Vec<String> = missing
        .map(|name| format!("{name}: is not attached"))
        .collect();
    let strange = evidence
        .attachments
        .keys()
        .filter(|name| !expected.contains(name));
    differences.extend(strange.map(|name| format!("{name}: does not belong to the report")));
    let text = format!("{found} of {}: {}", expected.len(), listed(&expected));
    Check::new("attachments", text, differences)
}

/// Names in a line, no more than can be read.
fn listed(names: &[&String]) -> String {
    const SHOWN: usize = 6;
    let shown: Vec<&str> = names.iter().take(SHOWN).map(|name| name.as_str()).collect();
    let dots = if names.len() > SHOWN { ", …" } else { "" };
    shown.join(", ") + dots
}

/// Everything that follows from the attached data.
fn check_results(
    evidence: &Evidence,
    assessment: &Assessment,
    pages: std::result::Result<&[Page], &String>,
) -> Vec<Check> {
    let edition = edition(evidence, assessment);
    // Results are the same in every edition.
    let plain = Edition::plain(Timestamp::UNIX_EPOCH);
    let made = match outputs(assessment, edition.as_ref().unwrap_or(&plain)) {
        Ok(made) => made,
        Err(error) => {
            let what = "the report cannot be made again";
            return vec![Check::new("rating", what, lines(&error.to_string()))];
        }
    };
    let output = |ending: &str| {
        let mut made = made.iter();
        let found = made.find(|output| output.name.ends_with(ending));
        found.map_or(&[][..], |output| output.bytes.as_slice())
    };
    let text = |ending: &str| String::from_utf8_lossy(output(ending));
    let mut checks = check_data(evidence, &text(RATING_ENDING), &text(INTERVALS_ENDING));
    let is_same = is_by_this_version(evidence);
    let (headline, in_full) = match (pages, edition) {
        (Err(why), _) => {
            both(|subject| Check::new(subject, "the pages cannot be read", lines(why)))
        }
        (_, Err(why)) if is_same => {
            both(|subject| Check::new(subject, "cannot be set again", vec![why.clone()]))
        }
        (_, Err(why)) => both(|subject| Check::skipped(subject, why.clone())),
        (Ok(pages), Ok(edition)) => {
            let headline = build(assessment, &edition).headline;
            let headline = check_headline(&headline, &edition.words, pages, is_same);
            let in_full = match is_same {
                true => check_all_pages(&evidence.pdf, pages, output(".pdf")),
                false => Check::skipped("pages", "by another version: not compared"),
            };
            (headline, in_full)
        }
    };
    checks.extend([headline, in_full]);
    checks
}

/// An error as differences, one a line.
fn lines(why: &str) -> Vec<String> {
    why.lines().map(str::to_owned).collect()
}

/// What is to be said of the headline and of the pages alike.
fn both(check: impl Fn(&'static str) -> Check) -> (Check, Check) {
    (check("headline"), check("pages"))
}

/// Every page, and whatever can change what is shown of them.
fn check_all_pages(pdf: &Pdf, pages: &[Page], made: &[u8]) -> Check {
    let again = || -> Result<Check> {
        let again = Pdf::parse(Path::new("the report made again"), made)?;
        let strange = pdf
            .features()
            .difference(&again.features())
            .cloned()
            .collect();
        let unseen = pdf.unseen() == again.unseen();
        Ok(check_pages(pages, &again.pages()?, strange, unseen))
    };
    again().unwrap_or_else(|error| {
        Check::new("pages", "cannot be set again", lines(&error.to_string()))
    })
}

/// The attached results against those computed again.
fn check_data(evidence: &Evidence, rating: &str, intervals: &str) -> Vec<Check> {
    let is_same = is_by_this_version(evidence);
    let keys = |of_all: &'static [&'static str]| match is_same {
        true => Keys::Same,
        false => Keys::AtLeast(of_all),
    };
    let stated = parse(&evidence.rating, rating);
    let again: Value = serde_json::from_str(rating).expect("our own results are JSON");
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
        Check::new("rating", rating_text(&again), part("rating", OF_RATING)),
        Check::new(
            "regression",
            regression_text(&again),
            part("regression", OF_REGRESSION),
        ),
        check_intervals(evidence, &stated, &again, intervals, keys(OF_INTERVALS)),
    ];
    if is_same {
        checks.push(check_rest(evidence, stated, again));
    }
    checks
}

fn parse(stated: &ResultText, again: &str) -> std::result::Result<Value, String> {
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
    let mut text = format!("{in_json} of {} in {}", again.len(), evidence.rating.name);
    match &evidence.intervals {
        Some(attached) => {
            let read = check_length(&attached.name, &attached.text, csv).and_then(|()| {
                let stated =
                    table(&attached.text).map_err(|why| format!("{}: {why}", attached.name))?;
                Ok((stated, table(csv)?))
            });
            match read {
                Ok((stated, again)) => {
                    let in_csv = count_agreeing(&attached.name, &stated, &again, keys, &mut found);
                    text += &format!(", {in_csv} of {} in {}", again.len(), attached.name);
                }
                Err(why) => found.push(why),
            }
        }
        None => found.push(format!(
            "{} is not attached",
            result_names(&evidence.campaign).intervals
        )),
    }
    Check::new("intervals", text, found)
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
    let text = format!("{count} other keys of {}", evidence.rating.name);
    Check::new(
        "results",
        text,
        differences("rating.json", &stated, &again, Keys::Same),
    )
}

/// What it all comes to, in one line.
pub fn verdict(verification: &Verification) -> String {
    let (differing, skipped) = (
        verification.of(Outcome::Differs),
        verification.of(Outcome::NotCompared),
    );
    match (differing.is_empty(), skipped.is_empty()) {
        (true, true) => "The report agrees with the data attached to it.".to_owned(),
        (true, false) => format!(
            "The report agrees with the data attached to it; not compared: {}.",
            skipped.join(", ")
        ),
        (false, _) => format!(
            "The report DOES NOT AGREE with the data attached to it: {}.",
            differing.join(", ")
        ),
    }
}
