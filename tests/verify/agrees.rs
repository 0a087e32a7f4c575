//! What has to agree: every sample, in every edition, on one core as on two.

use std::fs;
use std::path::Path;

use assert_cmd::cargo::cargo_bin_cmd;
use jiff::Timestamp;
use lopdf::{Document, Object};
use simmerline::assess_folder;
use simmerline::campaign::wishes::Paper;
use simmerline::hash::{HashedFile, sha256_hex};
use simmerline::language::{LANGUAGES, UnitSystem, Words};
use simmerline::report::{Edition, outputs};
use simmerline::verify::{Outcome, Verdict};
use tempfile::TempDir;

use crate::bench::*;
use crate::kit::files::{copy, replace};
use crate::kit::samples::{sample_folder, sample_names};

#[test]
fn every_sample_agrees_and_carries_all_its_inputs() {
    for name in sample_names() {
        let pdf = sample(&name);
        let verification = verified(&pdf);
        assert_eq!(
            verification.verdict,
            Verdict::Issued,
            "{name}: {}",
            said(&verification)
        );
        assert!(
            verification.of(Outcome::Differs).is_empty(),
            "{}",
            said(&verification)
        );
        assert!(
            verification.of(Outcome::NotCompared).is_empty(),
            "{}",
            said(&verification)
        );
        let subjects: Vec<&str> = verification
            .checks
            .iter()
            .map(|check| check.subject)
            .collect();
        assert_eq!(
            subjects,
            [
                "version",
                "attachments",
                "hashes",
                "rating",
                "regression",
                "intervals",
                "results",
                "headline",
                "pages",
                "document"
            ]
        );
        let document = Document::load_mem(&pdf).unwrap();
        for HashedFile {
            name: input,
            sha256,
            ..
        } in assess_folder(&Path::new("sample-runs").join(&name))
            .unwrap()
            .tested
            .inputs()
        {
            let bytes = attached(&document, &input);
            assert_eq!(sha256_hex(&bytes), sha256, "{name}: {input}");
            let file = fs::read(Path::new("sample-runs").join(&name).join(&input)).unwrap();
            match image::guess_format(&file) {
                // Of the photo, the picture alone: all of it, and nothing else.
                Ok(_) => {
                    let pixels = |bytes: &[u8]| image::load_from_memory(bytes).unwrap().to_rgb8();
                    assert!(pixels(&bytes) == pixels(&file), "{name}: {input}");
                }
                Err(_) => assert_eq!(bytes, file),
            }
        }
    }
}

#[test]
fn attachments_say_what_they_are() {
    let document = Document::load_mem(&sample("box")).unwrap();
    for (name, relationship, mime) in [
        ("campaign.toml", "Source", "application/toml"),
        ("2026-06-24.csv", "Source", "text/csv"),
        ("cooker.png", "Supplement", "image/png"),
        ("box.rating.json", "Data", "application/json"),
        ("box.intervals.csv", "Data", "text/csv"),
    ] {
        let file = document
            .get_dictionary(specification(&document, name))
            .unwrap();
        let kind = file
            .get(b"AFRelationship")
            .and_then(Object::as_name)
            .unwrap();
        assert_eq!(kind, relationship.as_bytes(), "{name}");
        let description = lopdf::decode_text_string(file.get(b"Desc").unwrap()).unwrap();
        assert!(description.len() > 10, "{name}: {description}");
        let stream = document
            .get_object(content(&document, name))
            .unwrap()
            .as_stream()
            .unwrap();
        let found = stream
            .dict
            .get(b"Subtype")
            .and_then(Object::as_name)
            .unwrap();
        assert_eq!(found, mime.as_bytes(), "{name}");
    }
    // All of them are associated with the document as a whole.
    let associated = document
        .catalog()
        .unwrap()
        .get_deref(b"AF", &document)
        .unwrap();
    assert_eq!(associated.as_array().unwrap().len(), 8);
}

#[test]
fn a_report_agrees_in_every_language_on_either_paper_in_either_unit_system() {
    let assess = |units| {
        let mut assessment = assess_folder(Path::new("sample-runs/open-dish")).unwrap();
        assessment.tested.campaign.report.units = units;
        assessment
    };
    for language in LANGUAGES {
        let assessment = assess(UnitSystem::Si);
        let edition = Edition {
            words: Words::new(language, UnitSystem::Si),
            paper: Paper::UsLetter,
            ..Edition::plain(Timestamp::from_second(0).unwrap())
        };
        let made = outputs(&assessment, &edition).unwrap();
        let verification = verified(&made[0].bytes);
        let said = said(&verification);
        assert_eq!(
            verification.verdict,
            Verdict::Issued,
            "{}: {said}",
            language.code
        );
    }
}

#[test]
fn a_report_in_units_of_the_us_agrees() {
    let folder = TempDir::new().unwrap();
    copy(&sample_folder("open-dish"), folder.path());
    let wished = "[report]\nunits = \"us\"\npaper = \"us-letter\"";
    replace(folder.path(), "campaign.toml", "[report]", wished);
    let verification = verified(&report_on(folder.path()));
    assert_eq!(
        verification.verdict,
        Verdict::Issued,
        "{}",
        said(&verification)
    );
}

#[test]
fn a_report_that_another_program_saved_again_has_a_verdict_of_its_own() {
    let pdf = sample("box");
    let saved = changed(&pdf, |document| {
        let information = information(document);
        information.set("Producer", Object::string_literal("A viewer"));
    });
    assert_ne!(saved, pdf);
    let verification = verified(&saved);
    assert_eq!(
        verification.verdict,
        Verdict::SameContent,
        "{}",
        said(&verification)
    );
    let sentence = verification.sentence();
    assert!(sentence.contains("Saved again by another program (it says \"A viewer\")"));
    assert!(sentence.contains("not the one that was issued"));
}

#[test]
fn a_report_by_another_version_is_compared_as_far_as_that_goes() {
    let pdf = changed(&sample("open-dish"), |document| {
        let version = env!("CARGO_PKG_VERSION");
        let name = "open-dish.rating.json";
        let (from, to) = (
            format!("\"tool_version\": \"{version}\""),
            "\"tool_version\": \"0.0.7\"",
        );
        replace_in(document, name, &from, to);
        // A key that this version does not know, and one that it has since got.
        replace_in(document, name, "\"ps50_w\"", "\"of_old\": 1, \"ps50_w\"");
        replace_in(document, name, "\"covariance_w2_per_k\"", "\"covariance\"");
        information(document).set("Creator", Object::string_literal("simmerline 0.0.7"));
    });
    let verification = verified(&pdf);
    let other = Verdict::OtherVersion("0.0.7".to_owned());
    assert_eq!(verification.verdict, other, "{}", said(&verification));
    assert_eq!(verification.of(Outcome::NotCompared), ["results", "pages"]);
    let sentence = verification.sentence();
    assert!(
        sentence.contains("verify it with simmerline 0.0.7"),
        "{sentence}"
    );
    assert!(!sentence.contains("agrees"), "{sentence}");
    assert!(said(&verification).contains("made by simmerline 0.0.7"));
    // A number is compared all the same, and a key of old has to be there.
    for (from, to) in [
        ("\"ps50_w\": 1", "\"ps50_w\": 2"),
        ("\"ps50_w\"", "\"ps50\""),
    ] {
        let lied = changed(&pdf, |document| {
            replace_in(document, "open-dish.rating.json", from, to)
        });
        differs(&lied, &["rating"], &["rating.ps50_w"]);
    }
}

#[test]
fn what_is_extracted_gives_the_same_report() {
    let folder = TempDir::new().unwrap();
    let report = folder.path().join("box.pdf");
    fs::write(&report, sample("box")).unwrap();
    let out = folder.path().join("deep/box");
    let mut verify = cargo_bin_cmd!("simmerline");
    let ended = verify
        .args(["verify", "--extract"])
        .args([&out, &report])
        .assert()
        .success();
    let printed = String::from_utf8(ended.get_output().stdout.clone()).unwrap();
    assert!(
        printed.contains("agrees   intervals    93 of 93"),
        "{printed}"
    );
    assert!(
        printed.contains("The report is the file that was issued"),
        "{printed}"
    );
    assert!(printed.contains("8 attachments written into "), "{printed}");
    let again = report_on(&out);
    assert!(again == sample("box"), "byte for byte");
    // Once more into the same folder: nothing is overwritten.
    let campaign = out.join("campaign.toml");
    fs::write(&campaign, "mine").unwrap();
    let ended = cargo_bin_cmd!("simmerline")
        .args(["verify", "--extract"])
        .args([&out, &report])
        .assert()
        .code(2);
    let complaint = String::from_utf8(ended.get_output().stderr.clone()).unwrap();
    assert!(
        complaint.contains("is there already") && complaint.contains("hint: "),
        "{complaint}"
    );
    assert_eq!(fs::read_to_string(campaign).unwrap(), "mine");
}

/// Everything that a command writes for two samples.
fn made_by(mut command: std::process::Command) -> Vec<(String, Vec<u8>)> {
    let out = TempDir::new().unwrap();
    let status = command
        .args([
            "report",
            "sample-runs/box",
            "sample-runs/notebook",
            "--quiet",
            "--out",
        ])
        .arg(out.path())
        .env("SOURCE_DATE_EPOCH", ISSUED_S.to_string())
        .status()
        .unwrap();
    assert!(status.success());
    let files = fs::read_dir(out.path())
        .unwrap()
        .map(|entry| entry.unwrap().path());
    let mut files: Vec<(String, Vec<u8>)> = files
        .map(|path| {
            (
                path.file_name().unwrap().to_str().unwrap().to_owned(),
                fs::read(path).unwrap(),
            )
        })
        .collect();
    files.sort();
    assert_eq!(files.len(), 9);
    files
}

#[test]
fn one_core_writes_what_two_write_byte_for_byte() {
    let program = assert_cmd::cargo::cargo_bin("simmerline");
    let plain = made_by(std::process::Command::new(&program));
    assert!(
        plain
            .iter()
            .any(|(name, bytes)| name == "box.pdf" && *bytes == sample("box"))
    );
    let mut one_thread = std::process::Command::new(&program);
    one_thread.env("RAYON_NUM_THREADS", "1");
    assert!(made_by(one_thread) == plain);
    let has_taskset = std::process::Command::new("taskset")
        .arg("--version")
        .output()
        .is_ok();
    if has_taskset {
        let mut one_core = std::process::Command::new("taskset");
        one_core.args(["-c", "0"]).arg(&program);
        assert!(made_by(one_core) == plain);
    }
}

#[test]
fn a_slim_report_prints_its_hashes_and_says_that_it_carries_no_evidence() {
    let folder = TempDir::new().unwrap();
    cargo_bin_cmd!("simmerline")
        .args([
            "report",
            "sample-runs/open-dish",
            "--no-attachments",
            "--quiet",
            "--out",
        ])
        .arg(folder.path())
        .assert()
        .success();
    let path = folder.path().join("open-dish.pdf");
    let slim = fs::read(&path).unwrap();
    assert!(slim.len() < sample("open-dish").len());
    let document = Document::load_mem(&slim).unwrap();
    let pages: Vec<u32> = document.get_pages().into_keys().collect();
    let text = document.extract_text(&pages).unwrap();
    let assessment = assess_folder(Path::new("sample-runs/open-dish")).unwrap();
    for input in assessment.tested.inputs() {
        assert!(text.contains(&input.sha256));
    }
    let (_, metadata) = document
        .dereference(document.catalog().unwrap().get(b"Metadata").unwrap())
        .unwrap();
    let metadata = String::from_utf8(metadata.as_stream().unwrap().content.clone()).unwrap();
    for part in [
        "<pdfaid:part>2<",
        "<pdfaid:conformance>A<",
        "<pdfuaid:part>1<",
    ] {
        assert!(metadata.contains(part), "{metadata}");
    }
    let ended = cargo_bin_cmd!("simmerline")
        .arg("verify")
        .arg(&path)
        .assert()
        .code(3);
    let complaint = String::from_utf8(ended.get_output().stderr.clone()).unwrap();
    for part in [
        "open-dish.pdf",
        "carries no evidence",
        "hint: ",
        "--no-attachments",
        "SHA-256",
    ] {
        assert!(complaint.contains(part), "{complaint}");
    }
}
