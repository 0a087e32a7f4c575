//! Comparisons and field sheets carry what they follow from, as reports do.

use std::fs;
use std::path::Path;

use assert_cmd::cargo::cargo_bin_cmd;
use lopdf::{Document, Object};
use tempfile::TempDir;

use crate::bench::*;

/// What a command writes, by the end of its name.
fn written(arguments: &[&str], ending: &str) -> Vec<u8> {
    let out = TempDir::new().unwrap();
    let mut command = cargo_bin_cmd!("simmerline");
    let out_of = ["--out", out.path().to_str().unwrap()];
    command
        .args(arguments)
        .args(out_of)
        .env("SOURCE_DATE_EPOCH", ISSUED_S.to_string())
        .assert()
        .success();
    let files = fs::read_dir(out.path())
        .unwrap()
        .map(|entry| entry.unwrap().path());
    let mut found = files.filter(|path| path.display().to_string().ends_with(ending));
    fs::read(found.next().unwrap()).unwrap()
}

fn comparison(more: &[&str]) -> Vec<u8> {
    let campaigns = [
        "compare",
        "sample-runs/open-dish",
        "sample-runs/open-dish-skirt",
    ];
    written(&[&campaigns[..], more].concat(), "comparison.pdf")
}

fn sheet(campaign: &str) -> Vec<u8> {
    written(
        &["plan", campaign, "--date", "2026-09-20"],
        ".field-sheet.pdf",
    )
}

#[test]
fn a_comparison_is_the_file_that_was_issued_in_every_way_in_which_it_is_made() {
    for more in [
        &[][..],
        &["--language", "fr"],
        &["--baseline", "open-dish-skirt"],
        &["sample-runs/box", "--allow-mixed", "--language", "sw"],
        &SIX,
    ] {
        issued(&comparison(more));
    }
}

/// Four more campaigns.
const SIX: [&str; 5] = [
    "sample-runs/box",
    "sample-runs/box-autumn",
    "sample-runs/panel-cloudy",
    "sample-runs/kitchen-thermometer",
    "--allow-mixed",
];

#[test]
fn a_verdict_on_a_comparison_has_nothing_below_it_that_differs() {
    let folder = TempDir::new().unwrap();
    for more in [&[][..], &SIX] {
        let path = folder.path().join("comparison.pdf");
        fs::write(&path, comparison(more)).unwrap();
        let ended = cargo_bin_cmd!("simmerline")
            .arg("verify")
            .arg(&path)
            .assert()
            .success();
        let said = String::from_utf8(ended.get_output().stdout.clone()).unwrap();
        assert!(said.contains("AGREES: "), "{said}");
        assert!(said.contains("hashes"), "{said}");
        assert!(!said.contains("DIFFERS"), "{said}");
    }
}

#[test]
fn six_campaigns_with_the_hashes_of_all_their_files_take_five_pages_at_most() {
    let document = Document::load_mem(&comparison(&SIX)).unwrap();
    assert!(document.get_pages().len() <= 5);
}

#[test]
fn what_is_changed_in_a_comparison_is_found() {
    let pdf = comparison(&[]);
    let lied = changed(&pdf, |document| {
        let text = attached_text(document, "comparison.json");
        let lie = text.replacen("\"real\": false", "\"real\": true", 1);
        let lie = if lie == text {
            text.replacen("\"real\": true", "\"real\": false", 1)
        } else {
            lie
        };
        attach_instead(document, "comparison.json", lie.as_bytes());
    });
    differs(&lied, &["results"], &["comparison.json.pairs[0].real"]);
    let log = "open-dish-skirt/campaign.toml";
    let other = changed(&pdf, |document| replace_in(document, log, "# ", "#  "));
    differs(&other, &["hashes", "results", "pages"], &[log]);
    let painted = changed(&pdf, |document| {
        let page = document.page_iter().next().unwrap();
        let mut content = document.get_page_content(page);
        content.extend(b"\nq 1 1 1 rg 0 0 200 200 re f Q\n");
        document.change_page_content(page, content).unwrap();
    });
    differs(&painted, &["pages"], &["page 1 has its words"]);
}

#[test]
fn a_field_sheet_is_the_file_that_was_issued_before_and_after_a_first_rating() {
    issued(&sheet("sample-runs/open-dish"));
    let folder = TempDir::new().unwrap();
    let campaign = folder.path().join("planned");
    crate::kit::files::copy(Path::new("sample-runs/open-dish"), &campaign);
    for day in 16..=19 {
        fs::remove_file(campaign.join(format!("2026-09-{day}.csv"))).unwrap();
    }
    issued(&sheet(campaign.to_str().unwrap()));
}

#[test]
fn what_is_changed_in_a_field_sheet_is_found() {
    let pdf = sheet("sample-runs/open-dish");
    let other_day = changed(&pdf, |document| {
        let name = "open-dish.2026-09-20.plan.json";
        replace_in(document, name, "2026-09-20", "2026-09-21");
    });
    differs(&other_day, &["pages"], &["page 1 prints"]);
    let drawn = changed(&pdf, |document: &mut Document| {
        let page = document.page_iter().next().unwrap();
        let page = document.get_dictionary_mut(page).unwrap();
        page.set("Rotate", Object::Integer(180));
    });
    differs(&drawn, &["pages"], &["page 1 has its words"]);
}

#[test]
fn a_slim_comparison_carries_no_evidence() {
    let pdf = comparison(&["--no-attachments"]);
    let error = take_out(&pdf).err().unwrap();
    assert!(error.to_string().contains("carries no evidence"), "{error}");
}

#[test]
fn reports_are_compared_by_the_data_that_they_carry() {
    let folder = TempDir::new().unwrap();
    let write = |name: &str, bytes: &[u8]| {
        let path = folder.path().join(name);
        fs::write(&path, bytes).unwrap();
        path.display().to_string()
    };
    let one = write("open-dish.pdf", &sample("open-dish"));
    let other = write("renamed.pdf", &sample("open-dish-skirt"));
    let by_folders = comparison(&[]);
    for pair in [
        [one.as_str(), other.as_str()],
        [one.as_str(), "sample-runs/open-dish-skirt"],
    ] {
        let by_reports = written(&[&["compare"][..], &pair].concat(), "comparison.pdf");
        assert!(by_reports == by_folders, "{pair:?}: byte for byte");
    }
    let lie = changed(&sample("open-dish"), |document| {
        replace_in(document, RATING, "\"ps50_w\": 1", "\"ps50_w\": 2");
    });
    let lie = write("lie.pdf", &lie);
    let refused = |paths: [&str; 2], what: &str| {
        let ended = cargo_bin_cmd!("simmerline")
            .arg("compare")
            .args(paths)
            .assert()
            .code(2);
        let said = String::from_utf8(ended.get_output().stderr.clone()).unwrap();
        assert!(said.contains(what) && said.contains("hint: "), "{said}");
    };
    refused(
        [&lie, &other],
        "lie.pdf: does not agree with the data that it carries",
    );
    refused([&one, "sample-runs/open-dish"], "is a second campaign");
    let compared = write("comparison.pdf", &by_folders);
    refused([&compared, &other], "is no report on a campaign");
}
