//! Files that are no report, or were made to do harm: each is refused in words, and nothing is
//! read or written where it must not be.

use std::fs;

use assert_cmd::cargo::cargo_bin_cmd;
use lopdf::encryption::Permissions;
use lopdf::{
    Dictionary, Document, EncryptionState, EncryptionVersion, Object, SaveOptions, dictionary,
};
use simmerline::verify::Verdict;
use tempfile::TempDir;

use crate::ALLOCATOR;
use crate::bench::*;

/// Asserts that a file is refused, with what is wrong and what to do.
fn refused(pdf: &[u8], what: &str) {
    let error = match take_out(pdf) {
        Err(error) => error,
        Ok(taken) => {
            let names: Vec<&String> = taken.attachments.keys().collect();
            panic!("taken, expected: {what}; {names:?}")
        }
    };
    let text = error.to_string();
    assert_eq!(error.exit_code(), 3, "{text}");
    assert!(text.starts_with("report.pdf: "), "{text}");
    assert!(text.contains(what), "expected {what:?}: {text}");
    assert!(text.contains("\nhint: "), "{text}");
    assert!(
        !text.contains(|c: char| c.is_control() && c != '\n'),
        "{text:?}"
    );
}

#[test]
fn what_is_no_pdf() {
    for bytes in [&b""[..], b"PDF", b"time,water_c\n", b"\x1f\x8b"] {
        refused(bytes, "is not a PDF");
    }
    for bytes in [&b"%PDF-1.7"[..], b"%PDF-1.7\nstartxref\n9\n%%EOF"] {
        refused(bytes, "is a damaged or incomplete PDF");
    }
    let ended = cargo_bin_cmd!("simmerline")
        .args(["verify", "not-there.pdf"])
        .assert()
        .code(3);
    let text = String::from_utf8(ended.get_output().stderr.clone()).unwrap();
    assert!(
        text.contains("not-there.pdf: cannot be read") && text.contains("hint"),
        "{text}"
    );
    cargo_bin_cmd!("simmerline")
        .args(["verify", "sample-runs"])
        .assert()
        .code(3);
}

#[test]
fn a_pdf_of_another_program() {
    let foreign = |creator: Option<&str>| {
        open_dish(|document| {
            let information = information(document);
            information.remove(b"Creator");
            if let Some(creator) = creator {
                information.set("Creator", Object::string_literal(creator));
            }
        })
    };
    for creator in [None, Some("A printer"), Some("simmerline "), Some("")] {
        refused(&foreign(creator), "no report by simmerline");
    }
}

#[test]
fn a_report_without_results() {
    let renamed = |kind: &'static str, name: &'static str| {
        open_dish(|document| {
            let id = specification(document, "open-dish.rating.json");
            let file = document.get_dictionary_mut(id).unwrap();
            file.set("AFRelationship", Object::Name(kind.into()));
            file.set("UF", Object::string_literal(name));
        })
    };
    refused(
        &renamed("Source", "open-dish.rating.json"),
        "it carries no NAME.rating.json",
    );
    refused(
        &renamed("Data", "open-dish.json"),
        "it carries no NAME.rating.json",
    );
    let two = open_dish(|document| {
        let id = specification(document, "2026-09-16.csv");
        let file = document.get_dictionary_mut(id).unwrap();
        file.set("AFRelationship", Object::Name("Data".into()));
        file.set("UF", Object::string_literal("other.rating.json"));
    });
    refused(&two, "it carries more than one NAME.rating.json");
}

#[test]
fn results_that_are_none() {
    for (json, what) in [
        ("", "does not hold a report's results"),
        ("[1]", "does not hold a report's results"),
        (
            "{\"schema\": \"other/9\", \"provenance\": {\"tool_version\": \"1\", \"inputs\": []}}",
            "has the schema \"other/9\"",
        ),
        (
            "{\"schema\": \"simmerline.rating/1\", \"provenance\": {\"tool_version\": \"1\", \"inputs\": []}}",
            "states no inputs",
        ),
    ] {
        let pdf = open_dish(|document| {
            attach_instead(document, "open-dish.rating.json", json.as_bytes())
        });
        refused(&pdf, what);
    }
    let deep = "[".repeat(1 << 20);
    let pdf =
        open_dish(|document| attach_instead(document, "open-dish.rating.json", deep.as_bytes()));
    refused(&pdf, "does not hold a report's results");
    let pdf = open_dish(|document| attach_instead(document, "open-dish.rating.json", b"\xff\xfe"));
    refused(&pdf, "is not UTF-8 text");
    // Long, and right as far as it is understood.
    let pdf = open_dish(|document| {
        let filler = format!("\"filler\": [{}0], \"cooker\": ", "0,".repeat(1 << 20));
        replace_in(document, "open-dish.rating.json", "\"cooker\": ", &filler);
    });
    differs(&pdf, &["rating"], &["bytes, computed again"]);
}

#[test]
fn a_truncated_file() {
    let pdf = sample("open-dish");
    for part in 1..40 {
        refused(
            &pdf[..pdf.len() * part / 40],
            "is a damaged or incomplete PDF",
        );
    }
    refused(&pdf[..pdf.len() - 20], "is a damaged or incomplete PDF");
}

#[test]
fn an_encrypted_file() {
    for password in ["", "secret"] {
        let pdf = open_dish(|document| {
            let state = EncryptionState::try_from(EncryptionVersion::V2 {
                document,
                owner_password: "owner",
                user_password: password,
                key_length: 128,
                permissions: Permissions::all(),
            });
            document.encrypt(&state.unwrap()).unwrap();
        });
        refused(&pdf, "is encrypted");
    }
}

#[test]
fn a_file_whose_objects_are_packed() {
    let mut document = Document::load_mem(&sample("open-dish")).unwrap();
    let options = SaveOptions::builder()
        .use_object_streams(true)
        .use_xref_streams(true)
        .build();
    let mut pdf = Vec::new();
    document.save_with_options(&mut pdf, options).unwrap();
    let verification = verified(&pdf);
    assert_eq!(
        verification.verdict,
        Verdict::SameContent,
        "{}",
        said(&verification)
    );
}

fn renamed(name: &[u8]) -> Vec<u8> {
    open_dish(|document| {
        let id = specification(document, "2026-09-16.csv");
        let file = document.get_dictionary_mut(id).unwrap();
        file.set("UF", Object::string_literal(name));
        file.set("F", Object::string_literal(name));
    })
}

#[test]
fn names_that_lead_elsewhere() {
    for name in [
        &b"../../x"[..],
        b"/tmp/x",
        b"C:\\x",
        b"C:x",
        b"a\\..\\x",
        b"a/../x",
        b"",
        b".",
        b"\xfe\xff\0x\0\0\0y",
        b"\xfe\xff\0\x1b\0[\x002\0J",
        b"NUL",
        b"logs//x",
        b"logs/",
        b"\xfe\xff\x20\x2e\x00x",
        &[b'x'; 5000],
    ] {
        refused(
            &renamed(name),
            "is a name that simmerline gives no attachment",
        );
    }
    for name in [&b"x\0y"[..], b"x\x1b[2Jy", b"x\ny"] {
        refused(&renamed(name), "without a name that can be read");
    }
    for name in [
        &b"2026-09-17.csv"[..],
        b"2026-09-17.CSV",
        b"campaign.toml",
        b"CAMPAIGN.toml/x",
    ] {
        refused(&renamed(name), "is the name of two attachments");
    }
}

#[test]
fn nothing_is_written_outside_the_folder() {
    let root = TempDir::new().unwrap();
    let (inner, report) = (root.path().join("a/b/c"), root.path().join("report.pdf"));
    fs::create_dir_all(&inner).unwrap();
    for name in [&b"../../x"[..], b"../report.pdf", b"/x"] {
        fs::write(&report, renamed(name)).unwrap();
        cargo_bin_cmd!("simmerline")
            .args(["verify", "--extract"])
            .args([&inner.join("out"), &report])
            .assert()
            .code(3);
    }
    assert_eq!(fs::read_dir(&inner).unwrap().count(), 0);
    assert_eq!(fs::read_dir(root.path()).unwrap().count(), 2);
}

#[test]
fn attachments_without_end() {
    let many = open_dish(|document| {
        let id = specification(document, "2026-09-16.csv");
        let more = (0..10_000).flat_map(|n| [Object::string_literal(format!("x{n}")), id.into()]);
        name_list(document).extend(more);
    });
    refused(&many, "has more than 4000 attachments");
    let tree = |kids: fn(&mut Document) -> Vec<Object>| {
        open_dish(|document| {
            let kids = kids(document);
            let names = document.catalog_mut().unwrap().get_mut(b"Names").unwrap();
            let names = names.as_dict_mut().unwrap();
            names.set("EmbeddedFiles", dictionary! { "Kids" => kids });
        })
    };
    let circle = tree(|document| {
        let id = document.new_object_id();
        document
            .objects
            .insert(id, dictionary! { "Kids" => vec![id.into()] }.into());
        vec![id.into()]
    });
    refused(&circle, "leads nowhere or in circles");
    let chain = tree(|document| {
        let mut id = document.add_object(Dictionary::new());
        for _ in 0..10_000 {
            id = document.add_object(dictionary! { "Kids" => vec![id.into()] });
        }
        vec![id.into()]
    });
    refused(&chain, "leads nowhere or in circles");
    refused(
        &tree(|_| vec![(99_999, 0).into()]),
        "leads nowhere or in circles",
    );
}

#[test]
fn an_attachment_that_is_none() {
    let spoiled = |change: fn(&mut Dictionary)| {
        open_dish(|document| {
            let id = specification(document, "2026-09-16.csv");
            change(document.get_dictionary_mut(id).unwrap());
        })
    };
    let what = "without content, or without a name that can be read";
    refused(&spoiled(|file| drop(file.remove(b"EF"))), what);
    refused(&spoiled(|file| file.set("EF", Dictionary::new())), what);
    refused(&spoiled(|file| file.set("UF", 7)), what);
    // Programs that take one content and programs that take the other would see two files.
    let two = open_dish(|document| {
        let id = specification(document, "2026-09-16.csv");
        let other = content(document, "2026-09-17.csv");
        let file = document.get_dictionary_mut(id).unwrap();
        file.get_mut(b"EF")
            .unwrap()
            .as_dict_mut()
            .unwrap()
            .set("UF", other);
    });
    refused(&two, what);
}

/// Blanks that take a thousandth of the room.
fn bomb(bytes: usize) -> Vec<u8> {
    use std::io::Write;
    let mut packed = flate2::write::ZlibEncoder::new(Vec::new(), flate2::Compression::best());
    let block = vec![b' '; 1 << 20];
    for _ in 0..bytes >> 20 {
        packed.write_all(&block).unwrap();
    }
    packed.finish().unwrap()
}

#[test]
fn streams_that_unpack_to_a_gigabyte_or_say_that_they_do() {
    let packed = bomb(1 << 30);
    let armed = |id: lopdf::ObjectId, document: &mut Document| {
        let dictionary = dictionary! { "Filter" => "FlateDecode" };
        let stream = lopdf::Stream::new(dictionary, packed.clone());
        document.objects.insert(id, stream.into());
    };
    let what = "unpacks to far more than a report can hold";
    for name in ["2026-09-16.csv", "open-dish.rating.json"] {
        let pdf = open_dish(|document| armed(content(document, name), document));
        refused(&pdf, what);
    }
    let page = open_dish(|document| {
        let page = document.page_iter().nth(1).unwrap();
        armed(document.get_page_contents(page)[0], document);
    });
    let subjects = ["hashes", "pages"];
    differs(&page, &subjects, &["page 2: unpacks to far more"]);
    // One that is shown twice on every page, and unpacks to a little less than one may.
    let often = open_dish(|document| {
        let dictionary = dictionary! { "Filter" => "FlateDecode" };
        let id = document.add_object(lopdf::Stream::new(dictionary, bomb(30 << 20)));
        let pages: Vec<_> = document.page_iter().collect();
        for page in pages {
            document
                .get_dictionary_mut(page)
                .unwrap()
                .set("Contents", vec![Object::Reference(id); 2]);
        }
    });
    differs(&often, &subjects, &["unpacks to far more"]);
    let foreign = open_dish(|document| {
        let id = content(document, "2026-09-16.csv");
        let stream = document
            .get_object_mut(id)
            .unwrap()
            .as_stream_mut()
            .unwrap();
        stream
            .dict
            .set("Filter", vec![Object::Name("FlateDecode".into()); 2]);
    });
    refused(&foreign, "compressed in a way that simmerline does not use");
    // A declared length is not believed.
    let pdf = sample("open-dish");
    let at = find(&pdf, b"/Type/EmbeddedFile");
    let length = at.saturating_sub(200) + find(&pdf[at.saturating_sub(200)..], b"/Length ");
    let digits = pdf[length + 8..]
        .iter()
        .take_while(|byte| byte.is_ascii_digit())
        .count();
    let mut lied = pdf.clone();
    lied.splice(
        length + 8..length + 8 + digits,
        b"1073741824".iter().copied(),
    );
    refused(&lied, "is a damaged or incomplete PDF");
    let peak_mib = ALLOCATOR.peak_usage_as_mb();
    assert!(peak_mib < 900.0, "{peak_mib} MiB");
}

fn find(bytes: &[u8], part: &[u8]) -> usize {
    bytes
        .windows(part.len())
        .position(|found| found == part)
        .unwrap()
}

#[test]
fn objects_that_lead_in_circles_or_without_end() {
    let circle = open_dish(|document| {
        let id = document.new_object_id();
        document
            .objects
            .insert(id, dictionary! { "Next" => id }.into());
        let page = document.page_iter().next().unwrap();
        document.get_dictionary_mut(page).unwrap().set("Loop", id);
    });
    differs(&circle, &["pages"], &["page 1 has its words"]);
    let chain = open_dish(|document| {
        let mut id = document.add_object(Object::Null);
        for _ in 0..100_000 {
            id = document.add_object(dictionary! { "Next" => id });
        }
        let page = document.page_iter().next().unwrap();
        document.get_dictionary_mut(page).unwrap().set("Loop", id);
    });
    differs(&chain, &["hashes", "pages"], &["page 1: is damaged"]);
}

#[test]
fn bytes_that_flipped() {
    let pdf = sample("open-dish");
    let mut seed = 1_u64;
    for _ in 0..150 {
        let mut spoiled = pdf.clone();
        for _ in 0..4 {
            seed = seed
                .wrapping_mul(6_364_136_223_846_793_005)
                .wrapping_add(1_442_695_040_888_963_407);
            let at = (seed >> 20) as usize % spoiled.len();
            spoiled[at] ^= 1 << (seed >> 61);
        }
        // It must not panic, and what it says must be an error of the input.
        if let Err(error) = take_out(&spoiled) {
            assert!(matches!(error.exit_code(), 3 | 6), "{error}");
        }
    }
}
