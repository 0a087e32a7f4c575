//! One thing changed in a sound report: each is found, and named.

use std::fs;

use assert_cmd::cargo::cargo_bin_cmd;
use lopdf::{Object, dictionary};
use tempfile::TempDir;

use crate::bench::*;

#[test]
fn a_byte_of_a_log() {
    let pdf = open_dish(|document| {
        let text = attached_text(document, "2026-09-16.csv");
        // The water of the row at 11:00, a tenth of a degree warmer.
        let at = text.find("11:00:00,").unwrap() + "11:00:00,".len();
        let point = at + text[at..].find('.').unwrap();
        let mut bytes = text.into_bytes();
        bytes[point + 1] = if bytes[point + 1] == b'9' {
            b'8'
        } else {
            bytes[point + 1] + 1
        };
        attach_instead(document, "2026-09-16.csv", &bytes);
    });
    differs(
        &pdf,
        &[
            "hashes",
            "rating",
            "regression",
            "intervals",
            "results",
            "headline",
            "pages",
        ],
        &["2026-09-16.csv: the SHA-256", "rating.ps50_w", "intervals "],
    );
}

#[test]
fn a_remark_in_a_log_that_no_number_rests_on() {
    let pdf =
        open_dish(|document| replace_in(document, "2026-09-16.csv", "# Invented", "# invented"));
    differs(
        &pdf,
        &["hashes", "results", "pages"],
        &["2026-09-16.csv", "provenance.inputs[1].sha256"],
    );
}

#[test]
fn a_number_of_the_results() {
    let lie = |from: &str, to: &str| open_dish(|document| replace_in(document, RATING, from, to));
    differs(
        &lie("\"ps50_w\": 1", "\"ps50_w\": 2"),
        &["rating"],
        &["rating.ps50_w is stated as 2"],
    );
    differs(
        &lie("\"slope_w_per_k\": -2.0", "\"slope_w_per_k\": -2.1"),
        &["regression"],
        &["regression.slope_w_per_k is stated as -2.1"],
    );
    differs(
        &lie("\"level\": \"conforms\"", "\"level\": \"x\""),
        &["results"],
        &["conformity.level"],
    );
    differs(
        &lie("\"cooker\": ", "\"extra\": 1, \"cooker\": "),
        &["results"],
        &["extra is stated"],
    );
    differs(
        &lie("\"vessels\"", "\"vessel\""),
        &["results"],
        &["vessels is not stated"],
    );
}

#[test]
fn an_interval() {
    let pdf = open_dish(|document| {
        let text = attached_text(document, RATING);
        let (before, intervals) = text.split_once("\"intervals\": [").unwrap();
        let changed = intervals.replacen("\"cooking_power_w\": ", "\"cooking_power_w\": 1", 1);
        attach_instead(
            document,
            RATING,
            format!("{before}\"intervals\": [{changed}").as_bytes(),
        );
    });
    differs(
        &pdf,
        &["intervals"],
        &[
            "intervals 1 (2026-09-16.csv 2026-09-16T",
            ".cooking_power_w",
        ],
    );
    let name = "open-dish.intervals.csv";
    let pdf = open_dish(|document| replace_in(document, name, ",true,,", ",false,,"));
    differs(
        &pdf,
        &["intervals"],
        &[name, ".used is stated as \"false\""],
    );
    let pdf = open_dish(|document| {
        let text = attached_text(document, name);
        let rows: Vec<&str> = text.lines().collect();
        attach_instead(
            document,
            name,
            (rows[..rows.len() - 1].join("\n") + "\n").as_bytes(),
        );
    });
    differs(&pdf, &["intervals"], &["79 are stated, computed again 80"]);
}

#[test]
fn two_attachments_that_changed_places() {
    let pdf = open_dish(|document| {
        let (one, other) = ("2026-09-16.csv", "2026-09-17.csv");
        let (first, second) = (attached(document, one), attached(document, other));
        attach_instead(document, one, &second);
        attach_instead(document, other, &first);
    });
    differs(
        &pdf,
        &[
            "hashes",
            "rating",
            "regression",
            "intervals",
            "results",
            "headline",
            "pages",
        ],
        &["2026-09-16.csv: the SHA-256", "2026-09-17.csv: the SHA-256"],
    );
}

#[test]
fn an_attachment_too_few_or_too_many() {
    let without = |name: &str| {
        open_dish(|document| {
            let names = name_list(document);
            let of_name =
                |object: &Object| object.as_str().is_ok_and(|found| found == name.as_bytes());
            let at = names.iter().position(of_name).unwrap();
            names.drain(at..at + 2);
        })
    };
    differs(
        &without("2026-09-17.csv"),
        &["attachments", "hashes", "results"],
        &[
            "2026-09-17.csv: is not attached",
            "the log \"2026-09-17.csv\" is not there",
        ],
    );
    differs(
        &without("open-dish.intervals.csv"),
        &["attachments", "intervals"],
        &["open-dish.intervals.csv: is not attached"],
    );
    let more = open_dish(|document| {
        let id = specification(document, "2026-09-16.csv");
        let mut stranger = document.get_dictionary(id).unwrap().clone();
        stranger.set("UF", Object::string_literal("stranger.csv"));
        stranger.set("F", Object::string_literal("stranger.csv"));
        let stranger = document.add_object(stranger);
        name_list(document).extend([Object::string_literal("stranger.csv"), stranger.into()]);
    });
    differs(
        &more,
        &["attachments"],
        &["stranger.csv: does not belong to it"],
    );
}

#[test]
fn two_digits_of_the_headline() {
    let pdf = redrawn(|content| {
        // "131": two bytes a glyph.
        let codes = codes_of_number(content);
        assert_eq!(codes.len(), 6, "{codes:?}");
        codes.swap(2, 4);
        codes.swap(3, 5);
    });
    differs(
        &pdf,
        &["headline", "pages"],
        &[
            "page 1 does not print \"131 ± 10 W (95 %)\"; it prints \"113±10W",
            "page 1 prints \"",
        ],
    );
}

#[test]
fn a_point_of_the_figure() {
    let pdf = redrawn(|content| {
        let curves = content
            .operations
            .iter_mut()
            .filter(|operation| operation.operator == "c");
        let curve = curves.last().unwrap();
        curve.operands[0] = Object::Real(curve.operands[0].as_float().unwrap() + 40.0);
    });
    differs(
        &pdf,
        &["pages"],
        &["page 1 has its words, and is drawn otherwise"],
    );
}

#[test]
fn letters_that_stand_for_others() {
    // Shown with other glyphs, while the font says that they stand for the old characters.
    let pdf = open_dish(|document| {
        let is_font = |object: &Object| {
            let dictionary = object.as_dict();
            dictionary.is_ok_and(|one| one.has_type(b"Font") && one.has(b"ToUnicode"))
        };
        let fonts = document.objects.values().filter(|object| is_font(object));
        let map = fonts.map(|font| font.as_dict().unwrap().get(b"ToUnicode").unwrap());
        let map = map.map(|map| map.as_reference().unwrap()).next().unwrap();
        let stream = document
            .get_object_mut(map)
            .unwrap()
            .as_stream_mut()
            .unwrap();
        let text = String::from_utf8(stream.get_plain_content().unwrap()).unwrap();
        stream.set_plain_content(text.replace("endcmap", "% nothing\nendcmap").into_bytes());
    });
    differs(&pdf, &["pages"], &["is drawn otherwise"]);
}

#[test]
fn a_note_laid_over_a_page() {
    let pdf = open_dish(|document| {
        let note = dictionary! {
            "Type" => "Annot", "Subtype" => "FreeText", "Rect" => vec![0.into(), 0.into(), 600.into(), 800.into()],
            "Contents" => Object::string_literal("conforms"),
        };
        let note = document.add_object(note);
        let page = document.page_iter().nth(2).unwrap();
        let page = document.get_dictionary_mut(page).unwrap();
        page.set("Annots", vec![Object::Reference(note)]);
    });
    differs(
        &pdf,
        &["pages"],
        &["page 3 has its words, and is drawn otherwise"],
    );
}

#[test]
fn a_program_or_a_form_in_the_document() {
    for key in [
        "OpenAction",
        "AcroForm",
        "OCProperties",
        "ViewerPreferences",
        "AA",
    ] {
        let pdf = open_dish(|document| {
            document
                .catalog_mut()
                .unwrap()
                .set(key, dictionary! { "S" => "JavaScript" });
        });
        differs(&pdf, &["document"], &[key]);
    }
}

#[test]
fn a_page_that_is_gone() {
    let mut pages = 0;
    let pdf = open_dish(|document| {
        pages = document.get_pages().len();
        document.delete_pages(&[5]);
    });
    let count = format!("there are {} pages, expected {pages}", pages - 1);
    differs(&pdf, &["pages"], &[&count, "page 5 prints"]);
}

#[test]
fn the_version_and_the_time_of_issue() {
    let version = env!("CARGO_PKG_VERSION");
    let pdf = open_dish(|document| {
        let from = format!("\"tool_version\": \"{version}\"");
        replace_in(document, RATING, &from, "\"tool_version\": \"0.0.7\"");
    });
    let named = format!("the PDF is by simmerline {version}, {RATING} states 0.0.7");
    differs(&pdf, &["version"], &[&named]);
    let stating = |key: &'static str, value: &'static str| {
        open_dish(|document| information(document).set(key, Object::string_literal(value)))
    };
    differs(
        &stating("Creator", "simmerline 9.9"),
        &["version"],
        &["by simmerline 9.9"],
    );
    differs(
        &stating("CreationDate", "D:20270101000000Z"),
        &["pages"],
        &["2026-11-0"],
    );
}

#[test]
fn the_language() {
    let pdf = open_dish(|document| {
        document
            .catalog_mut()
            .unwrap()
            .set("Lang", Object::string_literal("xx"))
    });
    differs(&pdf, &["results"], &["knows no language \"xx\""]);
}

#[test]
fn the_program_says_so_and_exits_with_6() {
    let folder = TempDir::new().unwrap();
    let path = folder.path().join("report.pdf");
    let pdf = open_dish(|document| replace_in(document, RATING, "\"ps50_w\": 1", "\"ps50_w\": 2"));
    fs::write(&path, pdf).unwrap();
    let ended = cargo_bin_cmd!("simmerline")
        .arg("verify")
        .arg(&path)
        .assert()
        .code(6);
    let printed = String::from_utf8(ended.get_output().stdout.clone()).unwrap();
    assert!(printed.contains("DIFFERS  rating"), "{printed}");
    assert!(
        printed.starts_with("✗ DIFFERS: ")
            && printed.contains("DOES NOT AGREE with the data attached to it: rating, document.\n"),
        "{printed}"
    );
    assert!(ended.get_output().stderr.is_empty());
}
