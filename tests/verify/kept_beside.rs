//! Long logs that a document names by their SHA-256 alone. A log of `open-dish` is taken for
//! long here: one of 8,122 bytes, where the others have less than 8,000.

use std::fs;
use std::path::Path;

use assert_cmd::cargo::cargo_bin_cmd;
use jiff::Timestamp;
use lopdf::{Document, Object};
use simmerline::assess_folder;
use simmerline::comparison::compare;
use simmerline::language::{LANGUAGES, Language};
use simmerline::report::comparison::outputs::outputs as comparison_outputs;
use simmerline::report::files::Output;
use simmerline::report::{Edition, outputs};
use simmerline::verify::{Beside, Outcome, Verdict, Verification, verify};
use tempfile::TempDir;

use crate::bench::*;
use crate::kit::samples::sample_folder;

const LONG: &str = "2026-09-16.csv";
/// Longest log that goes inside, bytes.
const LARGEST: u64 = 8_000;

fn edition(largest_log: u64, language: Language) -> Edition {
    let issued = Timestamp::from_second(ISSUED_S).unwrap();
    let plain = Edition::plain(issued).in_language(Some(language));
    Edition {
        largest_log,
        ..plain
    }
}

fn pdf_of(made: Vec<Output>) -> Vec<u8> {
    let pdf = made.into_iter().find(|one| one.name.ends_with(".pdf"));
    pdf.unwrap().bytes
}

/// The report on `open-dish` with logs up to a length inside.
fn report_in(largest_log: u64, language: Language) -> Vec<u8> {
    let assessment = assess_folder(&sample_folder("open-dish")).unwrap();
    pdf_of(outputs(&assessment, &edition(largest_log, language)).unwrap())
}

fn report(largest_log: u64) -> Vec<u8> {
    report_in(largest_log, Language::ENGLISH)
}

/// Verified by the rule of this test, with logs in a folder.
fn verified_beside(pdf: &[u8], folder: &Path) -> simmerline::error::Result<Verification> {
    let beside = Beside::folder(folder).with_largest_log(LARGEST);
    verify(&take_out_beside(pdf, beside)?)
}

fn names(pdf: &[u8]) -> Vec<String> {
    let evidence = take_out(pdf).unwrap();
    evidence.attachments.keys().cloned().collect()
}

fn refused(pdf: &[u8], folder: &Path, said: &[&str]) {
    let error = verified_beside(pdf, folder).unwrap_err();
    assert_eq!(error.exit_code(), 3, "{error}");
    for said in said {
        assert!(error.to_string().contains(said), "no {said:?} in {error}");
    }
}

/// Takes an attachment off the list.
fn take_off(document: &mut Document, name: &str) {
    let names = name_list(document);
    let is_it = |object: &Object| object.as_str().is_ok_and(|found| found == name.as_bytes());
    let at = names.iter().position(is_it).unwrap();
    names.drain(at..at + 2);
}

fn sha256_of_long() -> String {
    let assessment = assess_folder(&sample_folder("open-dish")).unwrap();
    let logs = assessment.tested.logs;
    logs.into_iter()
        .find(|log| log.name == LONG)
        .unwrap()
        .sha256
}

#[test]
fn a_long_log_stays_outside_and_the_report_is_verified_with_it() {
    let folder = sample_folder("open-dish");
    for language in LANGUAGES {
        let pdf = report_in(LARGEST, language);
        assert!(!names(&pdf).contains(&LONG.to_owned()));
        assert_eq!(names(&pdf).len(), 6);
        let verification = verified_beside(&pdf, &folder).unwrap();
        let said = said(&verification);
        assert_eq!(verification.verdict, Verdict::Issued, "{said}");
        assert!(said.contains("beside it: 2026-09-16.csv"), "{said}");
        let document = Document::load_mem(&pdf).unwrap();
        let pages: Vec<u32> = document.get_pages().into_keys().collect();
        let text = document.extract_text(&pages).unwrap();
        let text: String = text.split_whitespace().collect();
        for printed in [&sha256_of_long(), "8122", "--logsDIR", "--carry-all"] {
            assert!(text.contains(printed), "{}: {printed}", language.code);
        }
    }
}

#[test]
fn a_log_that_is_not_there_or_is_another_is_named() {
    let (pdf, sha256) = (report(LARGEST), sha256_of_long());
    let folder = TempDir::new().unwrap();
    let there = folder.path().display().to_string();
    refused(
        &pdf,
        folder.path(),
        &["8122 bytes", &sha256, LONG, &there, "--logs"],
    );
    let log = fs::read(sample_folder("open-dish").join(LONG)).unwrap();
    let path = folder.path().join(LONG);
    fs::write(&path, &log[1..]).unwrap();
    refused(&pdf, folder.path(), &["is another file, of 8121 bytes"]);
    let mut other = log.clone();
    *other.last_mut().unwrap() ^= 1;
    fs::write(&path, other).unwrap();
    refused(&pdf, folder.path(), &["is another file, of SHA-256 "]);
    fs::remove_file(&path).unwrap();
    fs::create_dir(&path).unwrap();
    refused(&pdf, folder.path(), &["is no file"]);
    // In the folder of its campaign.
    fs::create_dir(folder.path().join("open-dish")).unwrap();
    fs::write(folder.path().join("open-dish").join(LONG), &log).unwrap();
    let verification = verified_beside(&pdf, folder.path()).unwrap();
    assert_eq!(verification.verdict, Verdict::Issued);
}

#[test]
fn where_all_was_asked_for_all_is_inside() {
    let pdf = report(u64::MAX);
    assert!(names(&pdf).contains(&LONG.to_owned()));
    let empty = TempDir::new().unwrap();
    let verification = verified_beside(&pdf, empty.path()).unwrap();
    assert_eq!(verification.verdict, Verdict::Issued);
    // Where no log is long, it is the same file.
    assert!(pdf == report(100_000_000));
}

#[test]
fn what_was_taken_out_or_put_in_afterwards_is_found() {
    let folder = sample_folder("open-dish");
    let differs = |pdf: &[u8], named: &str| {
        let verification = verified_beside(pdf, &folder).unwrap();
        let said = said(&verification);
        assert_eq!(verification.verdict, Verdict::Differs, "{said}");
        assert!(said.contains(named), "no {named:?} in {said}");
    };
    // A long log is taken out of a report that carried all.
    let taken_out = changed(&report(u64::MAX), |document| take_off(document, LONG));
    differs(&taken_out, "page 1 prints");
    // A log that is not long is taken out.
    let short = "2026-09-17.csv";
    let taken_out = changed(&report(LARGEST), |document| take_off(document, short));
    differs(&taken_out, "2026-09-17.csv: is not attached");
    // It is stated to be long, too: only a file of that length would be taken.
    let stated_long = changed(&report(LARGEST), |document| {
        take_off(document, short);
        replace_in(document, RATING, "\"bytes\": 7556", "\"bytes\": 987654321");
    });
    refused(
        &stated_long,
        &folder,
        &[short, "is another file, of 7556 bytes"],
    );
    // By the real rule that log is not long.
    let beside = Beside::folder(&folder);
    let verification = verify(&take_out_beside(&report(LARGEST), beside).unwrap()).unwrap();
    assert_eq!(verification.verdict, Verdict::Differs);
    assert!(said(&verification).contains("2026-09-16.csv: is not attached"));
    // A long log is put into a report that does not carry it.
    let log = fs::read(folder.join(LONG)).unwrap();
    let put_in = changed(&report(LARGEST), |document| {
        let id = specification(document, short);
        let mut more = document.get_dictionary(id).unwrap().clone();
        let stream = lopdf::Stream::new(lopdf::Dictionary::new(), log);
        let stream = document.add_object(stream);
        for key in ["UF", "F"] {
            more.set(key, Object::string_literal(LONG));
        }
        more.set("EF", lopdf::dictionary! { "F" => stream, "UF" => stream });
        let more = document.add_object(more);
        name_list(document).extend([Object::string_literal(LONG), more.into()]);
    });
    differs(&put_in, "page 1 prints");
}

#[test]
fn another_log_beside_with_its_hash_in_the_results_is_found() {
    let folder = TempDir::new().unwrap();
    let log = fs::read_to_string(sample_folder("open-dish").join(LONG)).unwrap();
    let other = log.replacen("31.", "30.", 1);
    assert_ne!(log, other);
    fs::write(folder.path().join(LONG), &other).unwrap();
    let sha256 = simmerline::hash::sha256_hex(other.as_bytes());
    let pdf = changed(&report(LARGEST), |document| {
        replace_in(document, RATING, &sha256_of_long(), &sha256);
    });
    let verification = verified_beside(&pdf, folder.path()).unwrap();
    assert_eq!(verification.verdict, Verdict::Differs);
    let differing = verification.of(Outcome::Differs);
    assert!(differing.contains(&"hashes"), "{}", said(&verification));
}

#[test]
fn a_comparison_keeps_the_long_logs_of_each_campaign_beside_it() {
    let campaigns = ["open-dish", "open-dish-skirt"];
    let campaigns = campaigns.map(|name| assess_folder(&sample_folder(name)).unwrap());
    let comparison = compare(campaigns.into(), None, false).unwrap();
    let made = |largest_log| {
        let edition = edition(largest_log, Language::ENGLISH);
        pdf_of(comparison_outputs(&comparison, &edition).unwrap())
    };
    let samples = sample_folder("open-dish");
    let samples = samples.parent().unwrap();
    let pdf = made(LARGEST);
    assert!(!names(&pdf).contains(&format!("open-dish/{LONG}")));
    let verification = verified_beside(&pdf, samples).unwrap();
    let said = said(&verification);
    assert_eq!(verification.verdict, Verdict::Issued, "{said}");
    assert!(
        said.contains("beside it: open-dish/2026-09-16.csv"),
        "{said}"
    );
    let empty = TempDir::new().unwrap();
    refused(&pdf, empty.path(), &[LONG, &sha256_of_long()]);
    let verification = verified_beside(&made(u64::MAX), empty.path()).unwrap();
    assert_eq!(verification.verdict, Verdict::Issued);
}

#[test]
fn the_command_line_asks_for_all_and_says_where_logs_are() {
    let out = TempDir::new().unwrap();
    let report = |more: &[&str]| {
        let mut command = cargo_bin_cmd!("simmerline");
        command
            .args(["report", "sample-runs/open-dish", "--quiet", "--out"])
            .arg(out.path())
            .args(more)
            .env("SOURCE_DATE_EPOCH", ISSUED_S.to_string());
        command
    };
    report(&[]).assert().success();
    let record = || fs::read_to_string(out.path().join("open-dish.made.json")).unwrap();
    assert!(record().contains("\"carried\": \"usual\""));
    let path = out.path().join("open-dish.pdf");
    let usual = fs::read(&path).unwrap();
    // No log is long: what is inside is the same, and was asked for.
    report(&["--carry-all"]).assert().success();
    assert!(record().contains("\"carried\": \"all\""));
    assert!(usual == fs::read(&path).unwrap());
    report(&["--carry-all", "--no-attachments"])
        .assert()
        .code(2);
    let mut verify = cargo_bin_cmd!("simmerline");
    verify
        .arg("verify")
        .arg(&path)
        .args(["--logs", "no-such-folder"]);
    verify.assert().success();
}
