//! Reports on campaigns that share keys, or whose logs are found by a pattern.

use std::fs;
use std::path::PathBuf;

use lopdf::{Document, Object};
use simmerline::verify::Verdict;
use tempfile::TempDir;

use crate::bench::*;
use crate::kit::files::write;

const RATING: &str = "dish.rating.json";

/// The sample `open-dish` in `lab/dish`, with its site in `lab/shared.toml`, its limits above
/// that, and its logs by a pattern.
fn shared() -> (TempDir, PathBuf) {
    let root = TempDir::new().unwrap();
    let folder = root.path().join("lab/dish");
    let text = fs::read_to_string("sample-runs/open-dish/campaign.toml").unwrap();
    let (above, rest) = text.split_once("[site]\n").unwrap();
    let (site, rest) = rest.split_once("[load]\n").unwrap();
    let (load, _) = rest.split_once("[[run]]\n").unwrap();
    let own = format!("{above}[load]\n{load}[[run]]\nlog = \"logs/2026-*.csv\"\n");
    write(&folder, "campaign.toml", own);
    write(root.path(), "lab/shared.toml", format!("[site]\n{site}"));
    write(
        root.path(),
        "shared.toml",
        "[limits]\nwind_mean_max_m_s = 0.9\n",
    );
    for day in 16..=19 {
        let log = format!("2026-09-{day}.csv");
        let readings = fs::read(format!("sample-runs/open-dish/{log}")).unwrap();
        write(&folder, &format!("logs/{log}"), readings);
    }
    (root, folder)
}

/// The report, whose folders are gone.
fn report() -> Vec<u8> {
    let (root, folder) = shared();
    let pdf = report_on(&folder);
    drop(root);
    pdf
}

/// The list of attachments without one.
fn take_from_list(document: &mut Document, name: &str) {
    let names = name_list(document);
    let of_name = |object: &Object| object.as_str().is_ok_and(|found| found == name.as_bytes());
    let at = names.iter().position(of_name).unwrap();
    names.drain(at..at + 2);
}

#[test]
fn a_report_is_computed_again_from_the_shared_keys_and_the_logs_that_it_carries() {
    let pdf = report();
    let verification = verified(&pdf);
    assert_eq!(
        verification.verdict,
        Verdict::Issued,
        "{}",
        said(&verification)
    );
    let document = Document::load_mem(&pdf).unwrap();
    assert!(attached_text(&document, "shared.toml").starts_with("[site]"));
    assert!(attached_text(&document, "shared-2.toml").starts_with("[limits]"));
    assert!(attached_text(&document, RATING).contains("\"logs/2026-09-16.csv\""));
}

#[test]
fn nothing_on_the_disk_takes_part() {
    let pdf = report();
    // Beside the report, above where its attachments go, and where the program runs.
    let place = TempDir::new().unwrap();
    write(
        place.path(),
        "shared.toml",
        "[limits]\nwind_mean_max_m_s = 0.1\n",
    );
    write(place.path(), "report.pdf", &pdf);
    let mut command = assert_cmd::cargo::cargo_bin_cmd!("simmerline");
    command
        .current_dir(place.path())
        .env("TMPDIR", place.path())
        .args(["verify", "report.pdf"])
        .assert()
        .success();
}

#[test]
fn shared_keys_that_were_changed_are_found() {
    let pdf = report();
    let height = |document: &mut Document| {
        replace_in(
            document,
            "shared.toml",
            "elevation_m = 1540",
            "elevation_m = 540",
        );
    };
    differs(
        &changed(&pdf, height),
        &[
            "hashes",
            "rating",
            "regression",
            "intervals",
            "results",
            "headline",
            "pages",
        ],
        &["shared.toml: the SHA-256"],
    );
    // With its hash in the results, the pages still print another.
    let hash = |bytes: &[u8]| simmerline::hash::sha256_hex(bytes);
    let covered = changed(&pdf, |document| {
        let before = hash(&attached(document, "shared-2.toml"));
        replace_in(document, "shared-2.toml", "0.9", "0.95");
        let after = hash(&attached(document, "shared-2.toml"));
        replace_in(document, RATING, &before, &after);
    });
    let verification = verified(&covered);
    assert_eq!(
        verification.verdict,
        Verdict::Differs,
        "{}",
        said(&verification)
    );
    assert!(said(&verification).contains("shared-2.toml"));
    let remark = changed(&pdf, |document| {
        let text = attached_text(document, "shared.toml") + "# a remark\n";
        attach_instead(document, "shared.toml", text.as_bytes());
    });
    assert_eq!(verified(&remark).verdict, Verdict::Differs);
}

#[test]
fn shared_keys_that_were_taken_out_or_put_in_are_found() {
    let pdf = report();
    let without = changed(&pdf, |document| take_from_list(document, "shared-2.toml"));
    let verification = verified(&without);
    assert_eq!(
        verification.verdict,
        Verdict::Differs,
        "{}",
        said(&verification)
    );
    assert!(said(&verification).contains("shared-2.toml: is not attached"));
    // Not named by the results either.
    let unnamed = changed(&pdf, |document| {
        take_from_list(document, "shared-2.toml");
        let mut rating: serde_json::Value =
            serde_json::from_str(&attached_text(document, RATING)).unwrap();
        let inputs = rating["provenance"]["inputs"].as_array_mut().unwrap();
        inputs.retain(|input| input["file"] != "shared-2.toml");
        attach_instead(document, RATING, rating.to_string().as_bytes());
    });
    assert_eq!(verified(&unnamed).verdict, Verdict::Differs);
    // One more, of the same bytes as a log has, to a report that has none.
    let more = open_dish(|document| {
        let id = specification(document, "2026-09-16.csv");
        let mut stranger = document.get_dictionary(id).unwrap().clone();
        stranger.set("UF", Object::string_literal("shared.toml"));
        stranger.set("F", Object::string_literal("shared.toml"));
        let stranger = document.add_object(stranger);
        name_list(document).extend([Object::string_literal("shared.toml"), stranger.into()]);
    });
    differs(
        &more,
        &["attachments"],
        &["shared.toml: does not belong to it"],
    );
}

#[test]
fn what_belongs_to_one_campaign_is_refused_in_attached_shared_keys_too() {
    let forged = changed(&report(), |document| {
        let text =
            "[cooker]\nname = \"Another\"\n".to_owned() + &attached_text(document, "shared.toml");
        attach_instead(document, "shared.toml", text.as_bytes());
    });
    differs(
        &forged,
        &["hashes", "results"],
        &["shared.toml:1: [cooker]: belongs to one campaign"],
    );
}

#[test]
fn a_log_that_a_pattern_found_and_that_was_taken_out_is_missed() {
    let without = changed(&report(), |document| {
        take_from_list(document, "logs/2026-09-17.csv")
    });
    let verification = verified(&without);
    assert_eq!(
        verification.verdict,
        Verdict::Differs,
        "{}",
        said(&verification)
    );
    assert!(said(&verification).contains("logs/2026-09-17.csv: is not attached"));
}
