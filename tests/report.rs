//! The report: its wording in snapshots, and the PDF as a reader's program opens it.
//! All data is invented: the sample runs, or copies of them with one thing changed.

use std::fs;
use std::path::{Path, PathBuf};

use jiff::Timestamp;
use lopdf::{Dictionary, Document, Object};
use serde_json::Value;
use simmerline::assess_folder;
use simmerline::campaign::find_campaigns;
use simmerline::error::Error;
use simmerline::procedure::Assessment;
use simmerline::procedure::conformity::Level;
use simmerline::report::cautions::cautions;
use simmerline::report::figures::power_line::draw_power_line;
use simmerline::report::figures::residuals::draw_residuals;
use simmerline::report::figures::run_day::draw_run;
use simmerline::report::model::{Report, build};
use simmerline::report::outputs;
use tempfile::TempDir;

/// 3 November 2026, 12:00 UTC.
const ISSUED_S: i64 = 1_793_707_200;

fn issued() -> Timestamp {
    Timestamp::from_second(ISSUED_S).unwrap()
}

fn sample(name: &str) -> Assessment {
    assess_folder(&Path::new("sample-runs").join(name)).unwrap()
}

/// Every sample run with its name.
fn samples() -> Vec<(String, Assessment)> {
    let folders = find_campaigns(&[PathBuf::from("sample-runs")]).unwrap();
    assert!(folders.len() >= 4, "{folders:?}");
    let assess = |folder: &PathBuf| (folder.display().to_string(), assess_folder(folder).unwrap());
    folders.iter().map(assess).collect()
}

fn pdf_of(assessment: &Assessment) -> Vec<u8> {
    let outputs = outputs(assessment, issued()).unwrap();
    outputs
        .into_iter()
        .find(|output| output.name.ends_with(".pdf"))
        .unwrap()
        .bytes
}

/// A copy of the sample run `open-dish` to change.
struct Copy {
    root: TempDir,
}

impl Copy {
    fn new() -> Self {
        let copy = Copy {
            root: TempDir::new().unwrap(),
        };
        for entry in fs::read_dir("sample-runs/open-dish").unwrap() {
            let entry = entry.unwrap();
            fs::copy(entry.path(), copy.root.path().join(entry.file_name())).unwrap();
        }
        copy
    }

    fn write(&self, name: &str, content: impl AsRef<[u8]>) {
        fs::write(self.root.path().join(name), content).unwrap();
    }

    /// Replaces text of the campaign file that must be there.
    fn replace(self, from: &str, to: &str) -> Self {
        let path = self.root.path().join("campaign.toml");
        let text = fs::read_to_string(&path).unwrap();
        assert!(text.contains(from), "no {from:?}");
        fs::write(path, text.replacen(from, to, 1)).unwrap();
        self
    }

    /// Takes all runs but the first out.
    fn with_one_run(self) -> Self {
        let path = self.root.path().join("campaign.toml");
        let text = fs::read_to_string(&path).unwrap();
        let parts: Vec<&str> = text.split("[[run]]").collect();
        fs::write(path, format!("{}[[run]]{}", parts[0], parts[1])).unwrap();
        self
    }

    /// Changes every row of every log, header too.
    fn change_rows(self, change: impl Fn(&[&str]) -> String) -> Self {
        for entry in fs::read_dir(self.root.path()).unwrap() {
            let path = entry.unwrap().path();
            if path.extension().is_some_and(|ending| ending == "csv") {
                let text = fs::read_to_string(&path).unwrap();
                let rows = text.lines().filter(|line| !line.starts_with('#'));
                let changed = rows.map(|row| change(&row.split(',').collect::<Vec<_>>()) + "\n");
                fs::write(&path, changed.collect::<String>()).unwrap();
            }
        }
        self
    }

    fn assess(&self) -> Assessment {
        assess_folder(self.root.path()).unwrap()
    }

    /// The error of reading or of setting the report.
    fn fails(&self) -> Error {
        match assess_folder(self.root.path()) {
            Err(error) => error,
            Ok(assessment) => match outputs(&assessment, issued()) {
                Err(error) => error,
                Ok(_) => panic!("a report was made"),
            },
        }
    }
}

/// Campaigns that lack something, each with what it lacks.
fn poor_campaigns() -> Vec<(String, Assessment)> {
    let without_rating =
        Copy::new().replace("[[run]]", "[limits]\nirradiance_min_w_m2 = 1099\n[[run]]");
    let one_run = Copy::new().with_one_run();
    let without_irradiance =
        Copy::new().change_rows(|cells| [&cells[..3], &cells[4..]].concat().join(","));
    let without_wind = Copy::new().change_rows(|cells| cells[..4].join(","));
    let one_row = Copy::new().with_one_run();
    one_row.write(
        "2026-09-16.csv",
        "time,water_c,ambient_c\n2026-09-16 12:00:00,30.0,25.0\n",
    );
    let at = |start: &str, end: &str| {
        let span = format!("[[run]]\nstart = \"{start}\"\nend = \"{end}\"");
        Copy::new()
            .with_one_run()
            .replace("[[run]]", &span)
            .assess()
    };
    let lacking = [
        ("rating", without_rating.assess()),
        ("runs", one_run.assess()),
        ("irradiance", without_irradiance.assess()),
        ("wind", without_wind.assess()),
        ("rows", one_row.assess()),
        ("all but one interval", at("12:30", "12:40")),
        ("all but two intervals", at("12:30", "12:50")),
        ("all but three intervals", at("12:20", "12:50")),
    ];
    lacking
        .into_iter()
        .map(|(what, assessment)| (what.to_owned(), assessment))
        .collect()
}

// (a) wording

#[test]
fn wording_of_a_conforming_report() {
    insta::assert_json_snapshot!("open-dish", build(&sample("open-dish"), issued()));
}

#[test]
fn wording_of_an_indicative_report() {
    insta::assert_json_snapshot!("panel-cloudy", build(&sample("panel-cloudy"), issued()));
}

/// Every string of a report.
fn strings(report: &Report) -> Vec<String> {
    fn collect(value: &Value, strings: &mut Vec<String>) {
        match value {
            Value::String(text) => strings.push(text.clone()),
            Value::Array(items) => items.iter().for_each(|item| collect(item, strings)),
            Value::Object(fields) => fields.values().for_each(|field| collect(field, strings)),
            Value::Number(number) => panic!("a number not yet put into words: {number}"),
            Value::Null | Value::Bool(_) => {}
        }
    }
    let mut found = Vec::new();
    collect(&serde_json::to_value(report).unwrap(), &mut found);
    found
}

#[test]
fn no_string_of_a_report_shows_a_number_that_is_none_or_a_word_of_the_language() {
    for (name, assessment) in samples().into_iter().chain(poor_campaigns()) {
        for text in strings(&build(&assessment, issued())) {
            let words: Vec<&str> = text.split(|c: char| !c.is_alphanumeric()).collect();
            for wrong in ["NaN", "inf", "null", "undefined"] {
                assert!(!words.contains(&wrong), "{name}: {text}");
            }
            for wrong in [
                "−0 ", "-0.0", "  ", " ,", " .", "()", "{", "..", " ;", "None)", "Some(",
            ] {
                assert!(!text.contains(wrong), "{name}: {wrong:?} in {text:?}");
            }
        }
    }
}

#[test]
fn one_is_never_followed_by_a_plural() {
    let mut wrong = Vec::new();
    for (name, assessment) in samples().into_iter().chain(poor_campaigns()) {
        for text in strings(&build(&assessment, issued())) {
            let words: Vec<&str> = text.split_whitespace().collect();
            let is_plural = |start: usize| {
                let mut after = words[start..].iter().filter(|word| **word != "used");
                let noun = after
                    .next()
                    .map_or("", |word| word.trim_end_matches([',', '.', ';', ')']));
                let is_word = noun.chars().all(char::is_alphabetic);
                is_word && noun.ends_with('s') && !["is", "was", "has", "lies"].contains(&noun)
            };
            let is_one = |word: &str| word.trim_start_matches('(') == "1";
            if (1..words.len()).any(|start| is_one(words[start - 1]) && is_plural(start)) {
                wrong.push(format!("{name}: {text}"));
            }
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn what_was_measured_is_not_called_unmeasured_where_no_interval_is_used() {
    let (_, assessment) = poor_campaigns().swap_remove(0);
    assert_eq!(assessment.used().count(), 0);
    for row in build(&assessment, issued()).headline.conditions {
        assert_ne!(row.observed, "not measured", "{}", row.what);
    }
}

#[test]
fn the_number_on_page_one_is_that_of_the_rating() {
    for (name, assessment) in samples() {
        let headline = build(&assessment, issued()).headline;
        let number = headline.number.unwrap();
        let printed: f64 = number.value.parse().unwrap();
        let decimals = number
            .value
            .split_once('.')
            .map_or(0, |(_, decimals)| decimals.len());
        let ps50_w = assessment.rating.unwrap().ps50_w;
        let half_a_digit = 0.5 * 10_f64.powi(-(decimals as i32));
        assert!(
            (printed - ps50_w).abs() <= half_a_digit + 1e-9,
            "{name}: {printed} for {ps50_w}"
        );
    }
}

#[test]
fn an_indicative_report_says_so_in_its_title_and_what_is_missing() {
    for (name, assessment) in samples() {
        let report = build(&assessment, issued());
        let is_indicative = assessment.conformity.level == Level::Indicative;
        assert_eq!(report.title.contains("indicative"), is_indicative, "{name}");
        assert_eq!(
            report.marks.iter().any(|mark| mark.contains("Indicative")),
            is_indicative
        );
        if let Some(missing) = &assessment.conformity.missing {
            assert!(report.headline.level_text.contains(missing), "{name}");
        }
        assert_eq!(
            report.headline.findings.len(),
            assessment.conformity.findings.len()
        );
    }
}

// (b) the PDF

/// Text of each page without white space, which a line break may put anywhere.
fn pages(pdf: &Document) -> Vec<String> {
    let numbers: Vec<u32> = pdf.get_pages().into_keys().collect();
    let text = |page: u32| pdf.extract_text(&[page]).unwrap();
    numbers
        .into_iter()
        .map(|page| squeezed(&text(page)))
        .collect()
}

fn squeezed(text: &str) -> String {
    text.split_whitespace().collect()
}

#[test]
fn the_pdf_of_every_sample_run_holds_what_a_report_must_carry() {
    for (name, assessment) in samples() {
        let report = build(&assessment, issued());
        let pdf = Document::load_mem(&pdf_of(&assessment)).unwrap();
        let pages = pages(&pdf);
        assert!(pages.len() > 3, "{name}: {} pages", pages.len());
        assert!(
            pages[0].contains(&squeezed(&report.title)),
            "{name}: {}",
            pages[0]
        );
        let is_indicative = assessment.conformity.level == Level::Indicative;
        for (index, page) in pages.iter().enumerate() {
            let place = format!("{name}, page {}: {page}", index + 1);
            assert!(
                page.contains(&squeezed(&format!("Report {}", report.number))),
                "{place}"
            );
            assert!(page.contains("Inventeddata"), "{place}");
            assert_eq!(page.contains("Indicative"), is_indicative, "{place}");
            let count = squeezed(&format!("page {} of {}", index + 1, pages.len()));
            assert!(page.contains(&count), "{place}");
            assert!(page.contains(&squeezed(&report.statement)), "{place}");
        }
        let text = pages.concat();
        for (reason, _) in Assessment::count_reasons(assessment.intervals.iter()) {
            assert!(text.contains(reason.code()), "{name}: {}", reason.code());
        }
        for caution in cautions().cautions {
            assert!(
                text.contains(&squeezed(caution.title)),
                "{name}: {}",
                caution.title
            );
            assert!(
                text.contains(&squeezed(caution.text)),
                "{name}: {}",
                caution.title
            );
        }
        for (file, sha256) in assessment.inputs() {
            assert!(
                text.contains(&squeezed(&file)) && text.contains(&sha256),
                "{name}: {file}"
            );
        }
        let end = squeezed(&format!("End of report {}", report.number));
        assert!(pages.last().unwrap().contains(&end), "{name}");
        assert_eq!(text.matches(&end).count(), 1, "{name}");
    }
}

#[test]
fn every_string_of_the_model_is_on_paper_or_is_a_key() {
    for name in ["open-dish", "panel-cloudy"] {
        let assessment = sample(name);
        let report = build(&assessment, issued());
        let text = pages(&Document::load_mem(&pdf_of(&assessment)).unwrap()).concat();
        let mut printed = vec![
            report.kind.clone(),
            report.subtitle.clone(),
            report.headline.caution.clone(),
        ];
        printed.extend(report.headline.sentences.clone());
        printed.extend(
            report
                .headline
                .findings
                .iter()
                .flat_map(|f| [f.text.clone(), f.remedy.clone()]),
        );
        printed.extend(
            report
                .tested
                .groups
                .iter()
                .flat_map(|g| &g.rows)
                .map(|row| row.text.clone()),
        );
        printed.extend(
            report
                .conditions
                .rows
                .iter()
                .map(|row| row.observed.clone()),
        );
        printed.extend(report.runs.iter().flat_map(|run| {
            run.remarks
                .iter()
                .chain([&run.summary])
                .cloned()
                .collect::<Vec<_>>()
        }));
        printed.extend(
            report
                .regression
                .line
                .iter()
                .flat_map(|line| &line.rows)
                .map(|row| row.text.clone()),
        );
        printed.extend(report.cooking.rows.iter().map(|row| row.time.clone()));
        printed.extend(report.cooking.assumptions.clone());
        printed.extend(report.provenance.deviations.clone());
        for string in printed {
            assert!(text.contains(&squeezed(&string)), "{name}: {string}");
        }
    }
}

fn dictionaries(pdf: &Document) -> impl Iterator<Item = &Dictionary> {
    pdf.objects.values().filter_map(|object| match object {
        Object::Dictionary(dictionary) => Some(dictionary),
        Object::Stream(stream) => Some(&stream.dict),
        _ => None,
    })
}

#[test]
fn the_pdf_is_tagged_titled_archival_and_accessible() {
    for (name, assessment) in samples() {
        let report = build(&assessment, issued());
        let pdf = Document::load_mem(&pdf_of(&assessment)).unwrap();
        let catalog = pdf.catalog().unwrap();
        let (_, metadata) = pdf.dereference(catalog.get(b"Metadata").unwrap()).unwrap();
        let metadata = String::from_utf8(metadata.as_stream().unwrap().content.clone()).unwrap();
        for part in [
            "<pdfaid:part>3</pdfaid:part>",
            "<pdfaid:conformance>A</pdfaid:conformance>",
            "<pdfuaid:part>1</pdfuaid:part>",
            "2026-11-03T12:00:00",
            &report.title,
        ] {
            assert!(metadata.contains(part), "{name}: no {part} in {metadata}");
        }
        assert_eq!(catalog.get(b"Lang").unwrap().as_str().unwrap(), b"en");
        let (_, marks) = pdf.dereference(catalog.get(b"MarkInfo").unwrap()).unwrap();
        assert!(
            marks
                .as_dict()
                .unwrap()
                .get(b"Marked")
                .unwrap()
                .as_bool()
                .unwrap(),
            "{name}"
        );
        assert!(catalog.has(b"StructTreeRoot"), "{name}");
        let (_, view) = pdf
            .dereference(catalog.get(b"ViewerPreferences").unwrap())
            .unwrap();
        assert!(
            view.as_dict()
                .unwrap()
                .get(b"DisplayDocTitle")
                .unwrap()
                .as_bool()
                .unwrap()
        );
    }
}

#[test]
fn every_figure_of_the_pdf_has_its_content_in_words() {
    let assessment = sample("open-dish");
    let pdf = Document::load_mem(&pdf_of(&assessment)).unwrap();
    let is_figure = |d: &&Dictionary| {
        d.get(b"S")
            .and_then(Object::as_name)
            .is_ok_and(|s| s == b"Figure")
    };
    let figures: Vec<&Dictionary> = dictionaries(&pdf).filter(is_figure).collect();
    // The line, a figure a run, the residuals.
    assert_eq!(figures.len(), 2 + assessment.runs.len());
    for figure in figures {
        let alt = lopdf::decode_text_string(figure.get(b"Alt").unwrap()).unwrap();
        assert!(alt.len() > 60, "{alt}");
    }
}

#[test]
fn every_font_of_the_pdf_is_embedded() {
    let pdf = Document::load_mem(&pdf_of(&sample("box"))).unwrap();
    let descriptors: Vec<&Dictionary> = dictionaries(&pdf)
        .filter(|d| d.has_type(b"FontDescriptor"))
        .collect();
    assert!(descriptors.len() >= 4);
    for descriptor in descriptors {
        assert!(
            [&b"FontFile"[..], b"FontFile2", b"FontFile3"]
                .iter()
                .any(|key| descriptor.has(key))
        );
        let name = String::from_utf8_lossy(descriptor.get(b"FontName").unwrap().as_name().unwrap());
        let known = ["LibertinusSerif", "Inter", "DejaVuSansMono"];
        assert!(known.iter().any(|family| name.contains(family)), "{name}");
    }
}

// (c) the same bytes

#[test]
fn the_same_result_and_time_of_issue_give_the_same_bytes() {
    for (name, assessment) in samples() {
        let first = outputs(&assessment, issued()).unwrap();
        let second = outputs(&assessment, issued()).unwrap();
        assert_eq!(first.len(), 3);
        for (first, second) in first.iter().zip(&second) {
            assert_eq!(first.name, second.name);
            assert!(first.bytes == second.bytes, "{name}: {}", first.name);
        }
    }
}

#[test]
fn the_time_of_issue_changes_the_pdf_and_no_data() {
    let assessment = sample("open-dish");
    let first = outputs(&assessment, issued()).unwrap();
    let later = outputs(
        &assessment,
        Timestamp::from_second(ISSUED_S + 86_400).unwrap(),
    )
    .unwrap();
    for (first, later) in first.iter().zip(&later) {
        assert_eq!(
            first.bytes == later.bytes,
            !first.name.ends_with(".pdf"),
            "{}",
            first.name
        );
    }
}

// (d) photos

/// A grey picture, 5 by 3, as PNG.
fn png() -> Vec<u8> {
    fn crc32(bytes: &[u8]) -> u32 {
        !bytes.iter().fold(!0, |crc, byte| {
            (0..8).fold(crc ^ u32::from(*byte), |crc, _| {
                (crc >> 1) ^ (0xedb8_8320 * (crc & 1))
            })
        })
    }
    fn chunk(name: &[u8], data: &[u8]) -> Vec<u8> {
        let named = [name, data].concat();
        [
            &(data.len() as u32).to_be_bytes()[..],
            &named,
            &crc32(&named).to_be_bytes(),
        ]
        .concat()
    }
    let rows = [0, 9, 60, 120, 180, 240].repeat(3);
    let adler = rows.iter().fold((1_u32, 0_u32), |(a, b), byte| {
        let a = (a + u32::from(*byte)) % 65_521;
        (a, (b + a) % 65_521)
    });
    let length = rows.len() as u16;
    let stored = [
        &[0x78, 0x01, 0x01][..],
        &length.to_le_bytes(),
        &(!length).to_le_bytes(),
        &rows,
        &((adler.1 << 16) | adler.0).to_be_bytes(),
    ]
    .concat();
    [
        b"\x89PNG\r\n\x1a\n".to_vec(),
        chunk(b"IHDR", &[0, 0, 0, 5, 0, 0, 0, 3, 8, 0, 0, 0, 0]),
        chunk(b"IDAT", &stored),
        chunk(b"IEND", &[]),
    ]
    .concat()
}

/// A grey picture, 8 by 8, as JPEG: one block, every coefficient zero.
fn jpeg() -> Vec<u8> {
    [
        &b"\xff\xd8\xff\xdb\x00\x43\x00"[..],
        &[1; 64],
        b"\xff\xc0\x00\x0b\x08\x00\x08\x00\x08\x01\x01\x11\x00",
        b"\xff\xc4\x00\x14\x00\x01",
        &[0; 16],
        b"\xff\xc4\x00\x14\x10\x01",
        &[0; 16],
        b"\xff\xda\x00\x08\x01\x01\x00\x00\x3f\x00\x3f\xff\xd9",
    ]
    .concat()
}

fn with_photo(name: &str, bytes: &[u8]) -> Copy {
    let copy = Copy::new().with_one_run();
    copy.write(name, bytes);
    copy.replace("cost = 64", &format!("photo = \"{name}\""))
}

#[test]
fn a_photo_is_embedded_with_its_pixels_and_words() {
    for (name, bytes, size) in [
        ("cooker.png", png(), (5, 3)),
        ("cooker.jpg", jpeg(), (8, 8)),
    ] {
        let pdf = pdf_of(&with_photo(name, &bytes).assess());
        let pdf = Document::load_mem(&pdf).unwrap();
        let is_image = |d: &&Dictionary| {
            d.get(b"Subtype")
                .and_then(Object::as_name)
                .is_ok_and(|s| s == b"Image")
        };
        let pixels = |d: &Dictionary, key: &[u8]| d.get(key).unwrap().as_i64().unwrap();
        let sizes: Vec<(i64, i64)> = dictionaries(&pdf)
            .filter(is_image)
            .map(|d| (pixels(d, b"Width"), pixels(d, b"Height")))
            .collect();
        assert!(sizes.contains(&size), "{name}: {sizes:?}");
        let text = pages(&pdf).concat();
        assert!(text.contains("Thecookerastested."), "{name}");
    }
}

#[test]
fn a_photo_that_is_no_picture_is_refused_by_name() {
    for (name, bytes) in [
        ("cooker.txt", &b"words"[..]),
        ("cooker.jpg", b"GIF89a"),
        ("cooker.png", b""),
    ] {
        let error = with_photo(name, bytes).fails();
        assert_eq!(error.exit_code(), 4);
        let text = error.to_string();
        assert!(text.contains(name) && text.contains("hint: "), "{text}");
    }
    let copy = Copy::new().replace("cost = 64", "photo = \"gone.jpg\"");
    let text = copy.fails().to_string();
    assert!(
        text.contains("campaign.toml:") && text.contains("\"gone.jpg\" cannot be read"),
        "{text}"
    );
}

#[test]
fn a_broken_picture_is_refused_by_name_and_is_no_fault_of_ours() {
    let (png, jpeg) = (png(), jpeg());
    let mut spoiled = png.clone();
    spoiled[50] ^= 0xff;
    let mut wrong = Vec::new();
    for (name, bytes) in [
        ("cooker.png", &png[..8]),
        ("cooker.png", &png[..40]),
        ("cooker.png", &png[..png.len() - 20]),
        ("cooker.png", &spoiled),
        ("cooker.jpg", &jpeg[..4]),
        ("cooker.jpg", &jpeg[..60]),
    ] {
        let error = with_photo(name, bytes).fails();
        let text = error.to_string();
        if error.exit_code() != 4 || !text.contains(name) || !text.contains("hint: ") {
            wrong.push(format!("{} bytes of {name}: {text}", bytes.len()));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

// (e) odd names

#[test]
fn markup_characters_print_as_they_are_written() {
    let odd =
        "*bold* _it_ #set $x^2$ [a](b) <tag> &amp; \"q\" \\n ~ @ref `raw` // -- --- ... = + 1/2";
    let quoted = odd.replace('\\', "\\\\").replace('"', "\\\"");
    let copy = Copy::new()
        .with_one_run()
        .replace(
            "name = \"Saltbush octagon\"",
            &format!("name = \"{quoted}\""),
        )
        .replace(
            "title = \"Saltbush octagon, bare pot\"",
            &format!("title = \"Title {quoted}\""),
        )
        .replace(
            "tester = \"A. Sample (invented)\"",
            &format!("tester = \"Tester {quoted}\""),
        )
        .replace(
            "report_number = \"DEMO-1\"",
            "report_number = \"1 *b* _i_ #set $x$ <t> &amp; @ref `r`\"",
        )
        .replace(
            "notes = \"Aimed by hand",
            &format!("notes = \"Notes {quoted} Aimed by hand"),
        )
        .replace(
            "notes = \"Set up early",
            &format!("notes = \"Run {quoted} Set up early"),
        )
        .replace(
            "name = \"Drymere flats (invented)\"",
            &format!("name = \"Site {quoted}\""),
        );
    let assessment = copy.assess();
    let pdf = Document::load_mem(&pdf_of(&assessment)).unwrap();
    let text = pages(&pdf).concat();
    let number = squeezed("Report 1 *b* _i_ #set $x$ <t> &amp; @ref `r`");
    assert!(text.contains(&number), "no {number} in {text}");
    for lead in ["name", "Title ", "Tester ", "Notes ", "Run ", "Site "] {
        let expected = squeezed(&format!("{lead}{odd}"));
        assert!(text.contains(&expected), "no {expected} in {text}");
    }
}

#[test]
fn a_name_in_letters_that_the_fonts_lack_is_refused_by_name() {
    let copy = Copy::new().replace("name = \"Saltbush octagon\"", "name = \"太陽 dish\"");
    let error = copy.fails();
    assert_eq!(error.exit_code(), 4);
    let text = error.to_string();
    for part in ["campaign.toml", "\"太\"", "\"陽\"", "hint: "] {
        assert!(text.contains(part), "no {part} in {text}");
    }
}

#[test]
fn the_place_of_a_letter_that_the_fonts_lack_is_the_campaign_file_as_the_user_names_it() {
    let copy = Copy::new().replace("name = \"Saltbush octagon\"", "name = \"太陽 dish\"");
    let file = copy.root.path().join("campaign.toml").display().to_string();
    let text = copy.fails().to_string();
    assert!(text.contains(&file), "{text}");
}

#[test]
fn greek_cyrillic_and_accented_names_are_printed() {
    for name in [
        "Ηλιακή κουζίνα",
        "Солнечная печь",
        "Crème brûlée à l'ombre — été",
        "Çiğköfte ölçüsü",
    ] {
        let copy = Copy::new()
            .with_one_run()
            .replace("name = \"Saltbush octagon\"", &format!("name = \"{name}\""));
        let pdf = Document::load_mem(&pdf_of(&copy.assess())).unwrap();
        let text = pages(&pdf).concat();
        assert!(text.contains(&squeezed(name)), "{name}");
    }
}

#[test]
fn control_and_invisible_characters_print_or_are_refused_and_are_no_fault_of_ours() {
    let mut wrong = Vec::new();
    for odd in [
        "\\u0007",
        "\\n",
        "\\t",
        "\\r",
        "\\u001B[31m",
        "\\u200B",
        "\\u00AD",
        "\\uFEFF",
        "\\uE000",
        "\\uFFFE",
        "\\u202E",
        "e\\u0301",
        "\\U0001F525",
    ] {
        let copy = Copy::new()
            .with_one_run()
            .replace(
                "name = \"Saltbush octagon\"",
                &format!("name = \"Saltbush{odd}octagon\""),
            )
            .replace(
                "title = \"Saltbush octagon, bare pot\"",
                &format!("title = \"Saltbush{odd}octagon\""),
            );
        let made =
            assess_folder(copy.root.path()).and_then(|assessment| outputs(&assessment, issued()));
        match made {
            Ok(made) => assert!(Document::load_mem(&made[0].bytes).is_ok(), "{odd}"),
            Err(error) if error.exit_code() == 4 => {}
            Err(error) => wrong.push(format!("{odd}: {error}")),
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn names_of_200_characters_with_and_without_spaces_are_printed_whole() {
    let spaced = "very long name of a cooker ".repeat(8)[..200]
        .trim()
        .to_owned();
    for name in [spaced, "W".repeat(200), "Octagon-".repeat(25)] {
        let copy = Copy::new()
            .with_one_run()
            .replace("name = \"Saltbush octagon\"", &format!("name = \"{name}\""))
            .replace(
                "title = \"Saltbush octagon, bare pot\"",
                &format!("title = \"{name}\""),
            )
            .replace(
                "report_number = \"DEMO-1\"",
                &format!("report_number = \"{}\"", &name[..40]),
            );
        let pdf = Document::load_mem(&pdf_of(&copy.assess())).unwrap();
        let pages = pages(&pdf);
        assert!((4..20).contains(&pages.len()), "{} pages", pages.len());
        assert!(pages[0].contains(&squeezed(&name)), "{name}");
    }
}

// (f) figures

#[test]
fn every_figure_is_well_formed_and_has_only_finite_numbers() {
    let mut residuals = 0;
    for (name, assessment) in samples().into_iter().chain(poor_campaigns()) {
        let mut figures = vec![draw_power_line(&assessment).unwrap()];
        for run in 0..assessment.runs.len() {
            figures.push(draw_run(&assessment, run).unwrap());
        }
        if let Some(line) = &assessment.line {
            figures.push(draw_residuals(&assessment, line).unwrap());
            residuals += 1;
        }
        for svg in figures {
            if let Err(error) = roxmltree::Document::parse(&svg) {
                panic!("{name}: {error}");
            }
            for wrong in ["NaN", "inf"] {
                assert!(!svg.contains(wrong), "{name}: {wrong} in {svg}");
            }
            assert!(svg.contains("font-family=\"Inter\""), "{name}");
        }
    }
    assert!(residuals >= 7);
}

#[test]
fn no_axis_of_the_figure_on_page_one_shows_a_number_twice() {
    for (name, assessment) in samples().into_iter().chain(poor_campaigns()) {
        let svg = draw_power_line(&assessment).unwrap();
        // Labels of an axis share one coordinate and hold a number only.
        let mut labels: Vec<(String, String)> = Vec::new();
        for text in svg.split("<text ").skip(1) {
            let (attributes, after) = text.split_once('>').unwrap();
            let label = after.split('<').next().unwrap().trim().to_owned();
            if label.replace('−', "-").parse::<f64>().is_err() {
                continue;
            }
            for key in ["x=\"", "y=\""] {
                let value = attributes.split(key).nth(1).unwrap();
                let line = format!("{key}{}", value.split('"').next().unwrap());
                labels.push((line, label.clone()));
            }
        }
        let numbers = labels.len();
        assert!(numbers >= 8, "{name}: {labels:?}");
        labels.sort();
        labels.dedup();
        assert_eq!(labels.len(), numbers, "{name}: {labels:?}");
    }
}

#[test]
fn a_campaign_that_lacks_something_still_gets_a_report_that_names_it() {
    for (lacking, assessment) in poor_campaigns() {
        let pdf = Document::load_mem(&pdf_of(&assessment)).unwrap();
        let pages = pages(&pdf);
        let text = pages.concat();
        let said = match lacking.as_str() {
            "rating" | "rows" | "all but one interval" | "all but two intervals" => "norating",
            "runs" | "all but three intervals" => "sedintervalson1day",
            "irradiance" => "rradiancewasnotmeasured",
            "wind" => "indwasnotmeasured",
            other => panic!("{other}"),
        };
        assert!(pages[0].contains(said), "{lacking}: {}", pages[0]);
        assert!(pages[0].contains("Indicative"), "{lacking}");
        assert!(text.contains("Endofreport"), "{lacking}");
    }
}
