//! What `check` and `verify` print as JSON, against its JSON Schemas.

use std::fs;
use std::path::Path;

use serde_json::{Value, json};
use simmerline::cli::data::check_file::CheckFile;
use simmerline::cli::data::verification_file::VerificationFile;

use crate::bench::{Bench, Ended};
use crate::kit::files::copy;
use crate::kit::schema::Held;

const CHECK: Held = Held {
    derived: || CheckFile::schema().to_value(),
    file: "templates/schemas/check-1.schema.json",
    keys: "tests/data/check-1.keys.txt",
};

const VERIFICATION: Held = Held {
    derived: || VerificationFile::schema().to_value(),
    file: "templates/schemas/verification-1.schema.json",
    keys: "tests/data/verification-1.keys.txt",
};

/// What a command prints, which is JSON and nothing else.
fn printed(bench: &Bench, arguments: &[&str], code: i32) -> Value {
    let ended: Ended = bench.run(arguments).exits(code);
    assert_eq!(ended.err, "");
    serde_json::from_str(&ended.out).unwrap()
}

/// Samples of every level, beside one that is stopped.
fn samples() -> Bench {
    let bench = Bench::empty();
    for name in [
        "box-autumn",
        "dry-pot",
        "kitchen-thermometer",
        "open-dish",
        "tube-area-slip",
    ] {
        copy(&Path::new("sample-runs").join(name), &bench.path(name));
    }
    bench.run(&["new", "fresh"]).exits(0);
    bench
}

#[test]
fn the_schemas_in_the_repository_are_those_of_the_program() {
    for held in [CHECK, VERIFICATION] {
        held.is_that_of_the_program();
        held.loses_no_key();
    }
    CHECK.says_what_it_is("urn:simmerline:check:1", "Check of solar cooker campaigns");
    VERIFICATION.says_what_it_is("urn:simmerline:verification:1", "Verification of reports");
    CHECK.describes_every_key(10);
    VERIFICATION.describes_every_key(3);
}

#[test]
fn check_prints_every_campaign_and_what_stops_one() {
    let bench = samples();
    let all = printed(&bench, &["check", ".", "--format", "json"], 4);
    CHECK.is_met_by(&all, "all");
    assert_eq!(all["schema"], "simmerline.check/1");
    assert_eq!(all["tool_version"], env!("CARGO_PKG_VERSION"));
    assert_eq!(all["exit_code"], 4);
    let campaigns = all["campaigns"].as_array().unwrap();
    let levels = campaigns.iter().map(|one| {
        let level = &one["checked"]["level"];
        (one["folder"].as_str().unwrap(), level.as_str())
    });
    assert_eq!(
        levels.collect::<Vec<_>>(),
        [
            ("./box-autumn", Some("conforms-with-notes")),
            ("./dry-pot", Some("no-rating")),
            ("./fresh", None),
            ("./kitchen-thermometer", Some("indicative")),
            ("./open-dish", Some("conforms")),
            ("./tube-area-slip", Some("not-valid")),
        ]
    );
    let fresh = &campaigns[2];
    assert_eq!(fresh["exit_code"], 4);
    assert_eq!(fresh["problems"].as_array().unwrap().len(), 6);
    assert_eq!(fresh["problems"][1]["item"], "[site] latitude_deg");
    assert!(fresh["problems"][1]["line"].as_u64().unwrap() > 1);
    let kitchen = &campaigns[3]["checked"];
    assert_eq!(kitchen["caveats"], json!(["irradiance estimated"]));
    // More of the same alone does not make it conform.
    assert_eq!(
        kitchen["next"],
        "12 more intervals and 1 more day (still indicative without an irradiance sensor that faces the sun)"
    );
    assert_eq!(kitchen["missing"], "12 more intervals and 1 more day");
    // Where the number cannot be true there is none, and no more of it is asked for.
    let tube = &campaigns[5]["checked"];
    assert_eq!(
        (&tube["rating"], &tube["missing"]),
        (&Value::Null, &Value::Null)
    );
    assert!(
        tube["next"]
            .as_str()
            .unwrap()
            .starts_with("check the mass of water")
    );
    CHECK.refuses_less_and_other(
        &json!({
            "schema": all["schema"], "tool_version": all["tool_version"], "exit_code": 0,
            "campaigns": [campaigns[3]],
        }),
        60,
    );
    CHECK.refuses_less_and_other(
        &json!({
            "schema": all["schema"], "tool_version": all["tool_version"], "exit_code": 4,
            "campaigns": [fresh],
        }),
        12,
    );
}

#[test]
fn strict_check_exits_with_5_where_a_rating_falls_short() {
    let bench = samples();
    for (name, code) in [
        ("open-dish", 0),
        ("box-autumn", 0),
        ("kitchen-thermometer", 5),
        ("tube-area-slip", 5),
        ("dry-pot", 5),
        ("fresh", 4),
    ] {
        bench.run(&["check", name, "--strict"]).exits(code);
        let found = printed(
            &bench,
            &["check", name, "--strict", "--format", "json"],
            code,
        );
        assert_eq!(found["exit_code"], code, "{name}");
    }
    bench.run(&["check", "tube-area-slip", "dry-pot"]).exits(0);
    bench
        .run(&["check", "dry-pot", "fresh", "--strict"])
        .exits(4);
}

#[test]
fn verify_prints_every_file_and_why_one_is_not_read() {
    let bench = Bench::new();
    bench.report();
    let report = bench.path("reports/mallee.pdf");
    let mut changed = fs::read(&report).unwrap();
    changed.extend(b"\n% more\n");
    bench.write("changed.pdf", &changed);
    bench.write("page.html", "<!doctype html>");
    let files = ["reports/mallee.pdf", "changed.pdf", "page.html"];
    let arguments = [&["verify", "--format", "json"][..], &files].concat();
    let all = printed(&bench, &arguments, 6);
    VERIFICATION.is_met_by(&all, "all");
    assert_eq!(all["schema"], "simmerline.verification/1");
    let verdicts = all["reports"].as_array().unwrap().iter();
    let verdicts = verdicts.map(|one| one["verdict"].as_str().unwrap());
    assert_eq!(
        verdicts.collect::<Vec<_>>(),
        ["issued", "differs", "not-read"]
    );
    let page = &all["reports"][2]["problems"][0];
    assert_eq!(page["what"], "is not a PDF");
    assert!(
        page["hint"]
            .as_str()
            .unwrap()
            .contains("the PDF of the same report")
    );
    VERIFICATION.refuses_less_and_other(&all, 14);
}
