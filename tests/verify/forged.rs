//! Changes that a person would see, hear or click, each of which once passed.

use std::fs;

use assert_cmd::cargo::cargo_bin_cmd;
use lopdf::{Dictionary, Document, Object, ObjectId, dictionary};
use simmerline::verify::{Outcome, Verdict};
use tempfile::TempDir;

use crate::bench::*;

/// Asserts that the document differs besides its pages, and where.
fn beside(pdf: &[u8], named: &str) {
    differs(pdf, &["document"], &[named]);
}

fn catalog_entry(document: &Document, key: &[u8]) -> ObjectId {
    let entry = document.catalog().unwrap().get(key).unwrap();
    entry.as_reference().unwrap()
}

/// The dictionaries with a key, in the order of their objects.
fn with_key(document: &Document, key: &[u8]) -> Vec<ObjectId> {
    let has = |object: &Object| object.as_dict().is_ok_and(|one| one.has(key));
    let found = document.objects.iter().filter(|(_, object)| has(object));
    found.map(|(id, _)| *id).collect()
}

/// A white box over all of a page.
fn paint_over(document: &mut Document, index: usize) {
    let page = document.page_iter().nth(index).unwrap();
    let mut content = document.get_page_content(page);
    content.extend(b"\nq 1 1 1 rg 0 0 595 842 re f Q\n");
    document.change_page_content(page, content).unwrap();
}

/// Another version's name in both places.
fn rename_version(document: &mut Document, version: &str) {
    let own = format!("\"tool_version\": \"{}\"", env!("CARGO_PKG_VERSION"));
    replace_in(
        document,
        RATING,
        &own,
        &format!("\"tool_version\": {}", serde_json::json!(version)),
    );
    let creator = Object::string_literal(format!("simmerline {version}"));
    information(document).set("Creator", creator);
}

#[test]
fn another_versions_name_never_agrees() {
    let changes: [fn(&mut Document); 4] = [
        |_| (),
        |document| paint_over(document, 0),
        |document| {
            let action =
                dictionary! { "S" => "JavaScript", "JS" => Object::string_literal("app.alert(1)") };
            document.catalog_mut().unwrap().set("OpenAction", action);
        },
        |document| document.delete_pages(&[4, 5]),
    ];
    for change in changes {
        let pdf = open_dish(|document| {
            rename_version(document, "0.0.9");
            change(document);
        });
        let verification = verified(&pdf);
        let said = said(&verification);
        assert_eq!(
            verification.verdict,
            Verdict::OtherVersion("0.0.9".to_owned()),
            "{said}"
        );
        assert_eq!(verification.verdict.exit_code(), 8);
        assert_eq!(
            verification.of(Outcome::NotCompared),
            ["results", "pages"],
            "{said}"
        );
        assert!(!verification.sentence().contains("report agrees"), "{said}");
    }
    // What is no version is found, and what it says is shown as text.
    let pdf = open_dish(|document| rename_version(document, "9\u{1b}[2J"));
    differs(&pdf, &["version"], &["is no version"]);
}

#[test]
fn the_headline_of_another_version_is_held_all_the_same() {
    let swapped = |document: &mut Document| {
        let page = document.page_iter().next().unwrap();
        let mut content =
            lopdf::content::Content::decode(&document.get_page_content(page)).unwrap();
        let codes = codes_of_number(&mut content);
        codes.swap(2, 4);
        codes.swap(3, 5);
        document
            .change_page_content(page, content.encode().unwrap())
            .unwrap();
    };
    let pdf = open_dish(|document| {
        rename_version(document, "0.0.9");
        swapped(document);
    });
    differs(
        &pdf,
        &["headline"],
        &["page 1 prints 113 ± 10, expected 131"],
    );
    let pdf = open_dish(|document| {
        rename_version(document, "0.0.9");
        replace_in(
            document,
            RATING,
            "\"level\": \"conforms\"",
            "\"level\": \"indicative\"",
        );
    });
    differs(&pdf, &["headline"], &["does not print \"Indicative only\""]);
}

#[test]
fn bookmarks_and_their_actions() {
    let item = |document: &Document| {
        let outlines = document
            .get_dictionary(catalog_entry(document, b"Outlines"))
            .unwrap();
        outlines.get(b"First").unwrap().as_reference().unwrap()
    };
    let actions = [
        dictionary! { "S" => "URI", "URI" => Object::string_literal("https://example.org/") },
        dictionary! { "S" => "Launch", "F" => Object::string_literal("x.exe") },
    ];
    for action in actions {
        let pdf = open_dish(|document| {
            let id = item(document);
            let item = document.get_dictionary_mut(id).unwrap();
            item.remove(b"Dest");
            item.set("A", action);
        });
        beside(&pdf, "bookmarks are not as issued");
    }
    let pdf = open_dish(|document| {
        let id = item(document);
        let item = document.get_dictionary_mut(id).unwrap();
        item.set("Title", Object::string_literal("231 W"));
    });
    beside(&pdf, "bookmarks are not as issued: Outlines.First.Title");
}

#[test]
fn titles_and_viewer_preferences() {
    let pdf = open_dish(|document| {
        let id = catalog_entry(document, b"Metadata");
        let stream = document
            .get_object_mut(id)
            .unwrap()
            .as_stream_mut()
            .unwrap();
        let text = String::from_utf8(stream.get_plain_content().unwrap()).unwrap();
        assert!(text.contains("<dc:title>"), "{text}");
        let title = text.replacen("octagon", "OCTAGON", 1);
        assert_ne!(title, text);
        stream.set_plain_content(title.into_bytes());
    });
    beside(
        &pdf,
        "titles and other metadata are not as issued: Metadata",
    );
    let pdf = open_dish(|document| {
        information(document).set("Title", Object::string_literal("231 W"));
    });
    beside(&pdf, "Info.Title");
    let pdf = open_dish(|document| {
        let preferences = dictionary! { "HideToolbar" => true, "PickTrayByPDFSize" => true };
        document
            .catalog_mut()
            .unwrap()
            .set("ViewerPreferences", preferences);
    });
    beside(&pdf, "ViewerPreferences");
}

#[test]
fn attachments_by_other_names_or_in_one_list_only() {
    let pdf = open_dish(|document| {
        let id = specification(document, "2026-09-16.csv");
        let mut stranger = document.get_dictionary(id).unwrap().clone();
        stranger.set("UF", Object::string_literal("stranger.csv"));
        let stranger = document.add_object(stranger);
        let list = document.catalog_mut().unwrap().get_mut(b"AF").unwrap();
        match list {
            Object::Array(files) => files.push(stranger.into()),
            other => panic!("{other:?}"),
        }
    });
    beside(
        &pdf,
        "attachments, or what is said of them, are not as issued: AF",
    );
    for key in ["F", "Desc", "DOS", "Unix", "Mac"] {
        let pdf = open_dish(|document| {
            let id = specification(document, "2026-09-16.csv");
            let file = document.get_dictionary_mut(id).unwrap();
            file.set(key, Object::string_literal("other.csv"));
        });
        beside(&pdf, key);
    }
    let pdf = open_dish(|document| {
        let id = content(document, "2026-09-16.csv");
        let stream = document
            .get_object_mut(id)
            .unwrap()
            .as_stream_mut()
            .unwrap();
        stream
            .dict
            .set("Subtype", Object::Name("application#2Fx-msdownload".into()));
    });
    beside(&pdf, "attachments");
    // The name by which a reader lists it.
    let pdf = open_dish(|document| {
        name_list(document)[0] = Object::string_literal("0-other-name.csv");
    });
    beside(&pdf, "attachments");
}

#[test]
fn what_a_screen_reader_says() {
    let figures = |document: &Document| -> Vec<ObjectId> {
        let figures = with_key(document, b"Alt");
        assert!(figures.len() > 2, "{figures:?}");
        figures
    };
    let exchanged = open_dish(|document| {
        let ids = figures(document);
        let text = |id| {
            document
                .get_dictionary(id)
                .unwrap()
                .get(b"Alt")
                .unwrap()
                .clone()
        };
        let (first, second) = (text(ids[0]), text(ids[1]));
        assert_ne!(first, second);
        document
            .get_dictionary_mut(ids[0])
            .unwrap()
            .set("Alt", second);
        document
            .get_dictionary_mut(ids[1])
            .unwrap()
            .set("Alt", first);
    });
    beside(&exchanged, "what a screen reader says is not as issued");
    let reordered = open_dish(|document| {
        let is_long = |id: &ObjectId| {
            let kids = document.get_dictionary(*id).unwrap().get(b"K").unwrap();
            kids.as_array().is_ok_and(|kids| kids.len() > 3)
        };
        let id = with_key(document, b"K").into_iter().find(is_long).unwrap();
        let node: &mut Dictionary = document.get_dictionary_mut(id).unwrap();
        match node.get_mut(b"K").unwrap() {
            Object::Array(kids) => kids.swap(0, 2),
            other => panic!("{other:?}"),
        }
    });
    beside(&reordered, "what a screen reader says is not as issued");
}

#[test]
fn actions_above_the_pages() {
    let action =
        dictionary! { "S" => "JavaScript", "JS" => Object::string_literal("app.alert(1)") };
    let pdf = open_dish(|document| {
        let id = catalog_entry(document, b"Pages");
        let pages = document.get_dictionary_mut(id).unwrap();
        pages.set("AA", dictionary! { "O" => action });
    });
    beside(&pdf, "the list of pages is not as issued: Pages.AA");
}

#[test]
fn every_page_that_was_painted_over_is_named_beside_whatever_else_differs() {
    let pdf = open_dish(|document| {
        replace_in(document, RATING, "\"ps50_w\": 1", "\"ps50_w\": 2");
        information(document).set("Title", Object::string_literal("other"));
        paint_over(document, 2);
        paint_over(document, 6);
    });
    let named = ["page 3 has its words", "page 7 has its words"];
    differs(&pdf, &["rating", "pages", "document"], &named);
    // Even where the data are others, so that other words change the fonts of every page.
    let pdf = open_dish(|document| {
        replace_in(document, "2026-09-16.csv", "# Invented", "# Øinvented");
        paint_over(document, 4);
    });
    let verification = verified(&pdf);
    let pages = verification
        .checks
        .iter()
        .find(|check| check.subject == "pages")
        .unwrap();
    let over: Vec<&String> = pages
        .differences
        .iter()
        .filter(|line| line.contains("laid over"))
        .collect();
    assert_eq!(over.len(), 1, "{}", said(&verification));
    assert!(over[0].starts_with("page 5 "), "{over:?}");
}

#[test]
fn a_change_besides_what_is_drawn_is_found_on_any_page() {
    let pdf = open_dish(|document| {
        let page = document.page_iter().nth(3).unwrap();
        let page = document.get_dictionary_mut(page).unwrap();
        page.set("StructParents", 0);
    });
    beside(&pdf, "page 4, besides what is drawn, is not as issued");
}

#[test]
fn several_files_at_once_and_as_data() {
    let folder = TempDir::new().unwrap();
    let write = |name: &str, bytes: &[u8]| {
        let path = folder.path().join(name);
        fs::write(&path, bytes).unwrap();
        path
    };
    let good = write("good.pdf", &sample("open-dish"));
    let saved = write("saved.pdf", &open_dish(|_| ()));
    let bad = write("bad.pdf", &open_dish(|document| paint_over(document, 0)));
    let other = write(
        "other.pdf",
        &open_dish(|document| rename_version(document, "0.0.9")),
    );
    let none = write("none.pdf", b"nothing");
    let run = |paths: &[&std::path::PathBuf], code: i32| {
        let mut verify = cargo_bin_cmd!("simmerline");
        let ended = verify
            .args(["verify", "--format", "json"])
            .args(paths)
            .assert()
            .code(code);
        let text = String::from_utf8(ended.get_output().stdout.clone()).unwrap();
        serde_json::from_str::<serde_json::Value>(&text).unwrap()
    };
    let said = run(&[&good, &saved, &bad, &other, &none], 6);
    assert_eq!(said["schema"], "simmerline.verification/1");
    let verdicts: Vec<&str> = said["reports"]
        .as_array()
        .unwrap()
        .iter()
        .map(|report| report["verdict"].as_str().unwrap())
        .collect();
    assert_eq!(
        verdicts,
        [
            "issued",
            "same-content",
            "differs",
            "other-version",
            "not-read"
        ]
    );
    assert_eq!(said["reports"][0]["exit_code"], 0);
    let pages = said["reports"][2]["checks"].as_array().unwrap();
    let pages = pages
        .iter()
        .find(|check| check["subject"] == "pages")
        .unwrap();
    assert_eq!(pages["outcome"], "differs");
    run(&[&good], 0);
    run(&[&good, &saved], 7);
    run(&[&saved, &other], 8);
    run(&[&saved, &none, &other], 3);
    // Attachments of several files would be mixed up.
    let mut verify = cargo_bin_cmd!("simmerline");
    verify
        .args(["verify", "--extract", "x"])
        .args([&good, &saved])
        .assert()
        .code(2);
}
