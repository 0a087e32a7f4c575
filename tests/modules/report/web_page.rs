//! The web page: well-formed, alone, with everything that the report says, and nothing run.

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::Path;
use std::sync::LazyLock;

use roxmltree::{Document, Node, ParsingOptions};
use serde_json::Value;
use simmerline::language::LANGUAGES;
use simmerline::procedure::Assessment;
use simmerline::report::words::build;
use simmerline::report::{Edition, Format, outputs};

use crate::report::campaigns::*;
use crate::report::pdf::squeezed;
use crate::report::photo::{jpeg, png, with_photo};

/// Largest page that is still sent by mail, bytes.
const MOST_BYTES: usize = 5_000_000;

/// Keys of the model whose strings are for the program: codes, names of files, the setting.
const KEYS: [&str; 4] = ["setting", "file", "code", "level_code"];

/// What keeps a range from breaking behind its dash.
const WORD_JOINER: char = '\u{2060}';

fn web_edition() -> Edition {
    Edition {
        formats: vec![Format::Html],
        ..edition()
    }
}

fn page_of(assessment: &Assessment) -> String {
    page_in(assessment, &web_edition())
}

fn page_in(assessment: &Assessment, edition: &Edition) -> String {
    let outputs = outputs(assessment, edition).unwrap();
    let page = outputs.into_iter().next().unwrap();
    assert!(page.name.ends_with(".html"), "{}", page.name);
    String::from_utf8(page.bytes).unwrap()
}

/// A campaign with its page.
struct Sample {
    name: String,
    assessment: Assessment,
    page: String,
}

/// Every sample with its page, made once.
fn sample_pages() -> &'static [Sample] {
    static PAGES: LazyLock<Vec<Sample>> = LazyLock::new(|| with_pages(samples()));
    &PAGES
}

/// The same of those that lack something.
fn poor_pages() -> &'static [Sample] {
    static PAGES: LazyLock<Vec<Sample>> = LazyLock::new(|| with_pages(poor_campaigns()));
    &PAGES
}

fn with_pages(campaigns: Vec<(String, Assessment)>) -> Vec<Sample> {
    let with_page = |(name, assessment): (String, Assessment)| Sample {
        page: page_of(&assessment),
        name,
        assessment,
    };
    campaigns.into_iter().map(with_page).collect()
}

/// The page as XML, which a page of this kind is as well.
fn parsed(page: &str) -> Document<'_> {
    let options = ParsingOptions {
        allow_dtd: true,
        ..ParsingOptions::default()
    };
    Document::parse_with_options(page, options).unwrap()
}

fn elements<'a>(page: &'a Document<'_>, name: &str) -> Vec<Node<'a, 'a>> {
    let all = page.root_element().descendants();
    all.filter(|node| node.has_tag_name(name)).collect()
}

/// All that the page says, to eyes or ears, without white space.
fn said(page: &Document<'_>) -> String {
    let mut said = String::new();
    for node in page.root_element().descendants() {
        if node.is_text() && !node.parent().unwrap().has_tag_name("style") {
            said += node.text().unwrap();
        }
        let spoken = ["aria-label", "alt", "content"].into_iter();
        said.extend(spoken.filter_map(|name| node.attribute(name)));
    }
    squeezed(&said).replace(WORD_JOINER, "")
}

#[test]
fn every_page_is_well_formed_and_asks_for_nothing_from_outside() {
    for sample in sample_pages().iter().chain(poor_pages()) {
        let Sample { name, page, .. } = sample;
        assert!(page.starts_with("<!DOCTYPE html>"), "{name}");
        assert!(page.len() < MOST_BYTES, "{name}: {} bytes", page.len());
        let own = page.replace("url(data:font/woff2;base64,", "");
        for wrong in ["http:", "https:", "<script", "@import", "url("] {
            assert!(!own.contains(wrong), "{name}: {wrong}");
        }
        let page = parsed(page);
        for node in page.root_element().descendants() {
            for attribute in node.attributes() {
                let (key, value) = (attribute.name(), attribute.value());
                assert!(!key.starts_with("on"), "{name}: {key}");
                match key {
                    "href" => assert!(value.starts_with('#'), "{name}: {value}"),
                    "src" => assert!(value.starts_with("data:image/"), "{name}"),
                    "srcset" | "action" | "data" => panic!("{name}: {key}"),
                    _ => {}
                }
            }
        }
        let policy = elements(&page, "meta").into_iter().find_map(|meta| {
            let is_policy = meta.attribute("http-equiv") == Some("Content-Security-Policy");
            meta.attribute("content").filter(|_| is_policy)
        });
        let expected =
            "default-src 'none'; style-src 'unsafe-inline'; img-src data:; font-src data:";
        assert_eq!(policy, Some(expected), "{name}");
    }
}

#[test]
fn every_string_of_the_model_is_in_the_page_or_is_a_key() {
    for sample in sample_pages().iter().chain(poor_pages()) {
        let Sample {
            name,
            assessment,
            page,
        } = sample;
        let mut report = build(assessment, &web_edition());
        // As in the PDF, words take the place of a line.
        if report.regression.line.is_some() {
            report.regression.absence.clear();
        }
        let said = said(&parsed(page));
        let mut count = 0;
        let mut model = serde_json::to_value(&report).unwrap();
        leave_out_sections(&mut model);
        visit_strings(&model, "", &mut |key, text| {
            count += 1;
            let is_there = match key {
                // Said of the PDF, which alone carries its data.
                "checkable" => !said.contains("simmerline verify"),
                // Of page one, for paper alone.
                "lower_figures" => !page.contains(text),
                // The length of a bar.
                "part_percent" => page.contains(&format!("width: {text}%")),
                // What is on the second page of paper.
                _ => said.contains(&squeezed(
                    &text.replace("page 2", "All figures at a glance"),
                )),
            };
            assert!(text.is_empty() || is_there, "{name}, {key}: {text}");
        });
        let fewest = if report.sections.len() > 6 { 150 } else { 90 };
        assert!(count > fewest, "{name}: {count} strings");
    }
}

/// Takes out of a model what stands in a section that the report does not have.
fn leave_out_sections(model: &mut Value) {
    let sections = model["sections"].as_array().unwrap();
    let has = |code: &str| sections.iter().any(|section| section["code"] == code);
    let parts = [
        ("conditions", "conditions"),
        ("runs", "runs"),
        ("intervals", "intervals"),
        ("regression", "regression"),
        ("heat_balance", "heat_balance"),
        ("dry_vessel", "dry_vessel"),
        ("box_cooker", "box_cooker"),
        ("dish", "dish"),
        ("efficiency", "efficiency"),
        ("cooking", "cooking"),
        ("stagnation", "cooking"),
    ];
    let absent: Vec<&str> = parts
        .into_iter()
        .filter(|(_, section)| !has(section))
        .map(|(part, _)| part)
        .collect();
    for part in absent {
        model.as_object_mut().unwrap().remove(part).unwrap();
    }
}

fn visit_strings(value: &Value, key: &str, visit: &mut impl FnMut(&str, &str)) {
    visit_some(value, key, &|key| !KEYS.contains(&key), visit);
}

fn visit_all(value: &Value, key: &str, visit: &mut impl FnMut(&str, &str)) {
    visit_some(value, key, &|_| true, visit);
}

/// Visits strings with their keys, but of no key that is not wanted.
fn visit_some(
    value: &Value,
    key: &str,
    is_wanted: &dyn Fn(&str) -> bool,
    visit: &mut impl FnMut(&str, &str),
) {
    match value {
        Value::String(text) => visit(key, text),
        Value::Array(items) => items
            .iter()
            .for_each(|item| visit_some(item, key, is_wanted, visit)),
        Value::Object(fields) => {
            for (key, field) in fields.iter().filter(|(key, _)| is_wanted(key)) {
                visit_some(field, key, is_wanted, visit);
            }
        }
        _ => {}
    }
}

#[test]
fn marks_number_and_statement_are_in_the_head_and_foot_that_stay() {
    for sample in sample_pages() {
        let Sample {
            name,
            assessment,
            page,
        } = sample;
        let report = build(assessment, &web_edition());
        let page = parsed(page);
        let head = elements(&page, "header");
        let [head] = head.as_slice() else {
            panic!("{name}: {} heads", head.len())
        };
        let text = |node: &Node<'_, '_>| -> String {
            let texts = node.descendants().filter(Node::is_text);
            texts.filter_map(|node| node.text()).collect()
        };
        let head = text(head);
        for part in report.marks.iter().chain([&report.number]) {
            assert!(head.contains(part), "{name}: no {part} in {head}");
        }
        let is_indicative = is_called_indicative(assessment);
        assert_eq!(head.contains("Indicative only"), is_indicative, "{name}");
        assert!(text(&elements(&page, "footer")[0]).contains(&report.statement));
        assert_eq!(text(&elements(&page, "title")[0]), report.title, "{name}");
        assert_eq!(text(&elements(&page, "h1")[0]), report.title, "{name}");
        assert_eq!(page.root_element().attribute("lang"), Some("en"));
    }
}

#[test]
fn headings_tables_and_figures_can_be_heard() {
    for sample in sample_pages() {
        let Sample {
            name,
            assessment,
            page,
        } = sample;
        let page = parsed(page);
        let mut level = 0;
        for node in page.root_element().descendants() {
            let heading = ["h1", "h2", "h3"]
                .iter()
                .position(|tag| node.has_tag_name(*tag));
            if let Some(found) = heading {
                assert!(found <= level, "{name}: {:?} is out of order", node.range());
                level = found + 1;
            }
        }
        assert_eq!(elements(&page, "h1").len(), 1, "{name}");
        for table in elements(&page, "table") {
            let caption = table.children().find(Node::is_element).unwrap();
            assert!(caption.has_tag_name("caption"), "{name}");
            for head in table.descendants().filter(|node| node.has_tag_name("th")) {
                assert!(head.has_attribute("scope"), "{name}");
            }
        }
        let drawings = elements(&page, "svg");
        let mut model = serde_json::to_value(build(assessment, &web_edition())).unwrap();
        leave_out_sections(&mut model);
        // The lower ones of page one are for paper alone.
        let headline = model["headline"].as_object_mut().unwrap();
        headline.remove("lower_figures").unwrap();
        let mut figures = Vec::new();
        visit_all(&model, "", &mut |key, text| {
            if key == "file" && text.ends_with(".svg") {
                figures.push(text.to_owned());
            }
        });
        assert!(!figures.is_empty(), "{name}");
        // Each is there for the page and for a narrow screen, and told once.
        assert_eq!(drawings.len(), 2 * figures.len(), "{name}: {figures:?}");
        for pair in drawings.chunks(2) {
            let frame = pair[0].parent().unwrap();
            assert_eq!(frame.attribute("role"), Some("img"), "{name}");
            assert!(frame.attribute("aria-label").unwrap().len() >= 20, "{name}");
            for (drawing, class) in pair.iter().zip(["wide", "narrow"]) {
                assert_eq!(drawing.attribute("class"), Some(class), "{name}");
                assert_eq!(drawing.attribute("aria-hidden"), Some("true"), "{name}");
                assert_eq!(drawing.parent(), Some(frame), "{name}");
                assert!(drawing.descendants().any(|node| node.has_tag_name("text")));
            }
        }
        let ids = page
            .root_element()
            .descendants()
            .filter_map(|node| node.attribute("id"));
        let ids: Vec<&str> = ids.collect();
        let unique: BTreeSet<&str> = ids.iter().copied().collect();
        assert_eq!(ids.len(), unique.len(), "{name}: {ids:?}");
        for link in elements(&page, "a") {
            let target = link.attribute("href").unwrap().trim_start_matches('#');
            assert!(unique.contains(target), "{name}: {target}");
        }
    }
}

#[test]
fn sections_that_the_text_names_are_linked() {
    let sample = sample_pages()
        .iter()
        .find(|sample| sample.name == "open-dish");
    let page = parsed(&sample.unwrap().page);
    let links = elements(&page, "a").into_iter();
    let in_text = links.filter(|link| link.text().unwrap_or_default().contains("section"));
    let targets: Vec<&str> = in_text.filter_map(|link| link.attribute("href")).collect();
    assert!(
        targets.contains(&"#section-9") && targets.contains(&"#section-5"),
        "{targets:?}"
    );
}

#[test]
fn the_same_result_gives_the_same_page() {
    for sample in sample_pages() {
        let Sample {
            name,
            assessment,
            page,
        } = sample;
        assert!(page_of(assessment) == *page, "{name}");
    }
}

#[test]
fn markup_of_the_tester_is_text_and_nothing_else() {
    let odd = "<script>alert(1)</script> \"q\" 'a' &amp; {{ report }} {% raw %} ]]> --> </style>";
    let quoted = odd.replace('"', "\\\"");
    let copy = Copy::new().with_one_run();
    let plain = elements(&parsed(&page_of(&copy.assess())), "p").len();
    let copy = copy
        .replace(
            "name = \"Saltbush octagon\"",
            &format!("name = \"{quoted}\""),
        )
        .replace(
            "title = \"Saltbush octagon, bare pot\"",
            &format!("title = \"{quoted}\""),
        )
        .replace(
            "tester = \"A. Sample (invented)\"",
            &format!("tester = \"{quoted}\""),
        )
        .replace("report_number = \"DEMO-1\"", "report_number = \"<b>1</b>\"")
        .replace(
            "notes = \"Aimed by hand",
            &format!("notes = \"{quoted} Aimed by hand"),
        )
        .replace(
            "notes = \"Set up early",
            &format!("notes = \"{quoted} Set up early"),
        )
        .replace(
            "name = \"Drymere flats (invented)\"",
            &format!("name = \"{quoted}\""),
        );
    let text = page_of(&copy.assess());
    assert!(!text.contains("<script") && !text.contains("<b>"));
    let page = parsed(&text);
    assert!(elements(&page, "script").is_empty());
    assert_eq!(elements(&page, "style").len(), 1);
    assert_eq!(elements(&page, "p").len(), plain);
    let author = elements(&page, "meta").into_iter();
    let author = author.filter(|meta| meta.attribute("name") == Some("author"));
    let authors: Vec<&str> = author
        .filter_map(|meta| meta.attribute("content"))
        .collect();
    assert_eq!(authors, [odd]);
    let said = said(&page);
    let times = said.matches(&squeezed(odd)).count();
    assert!(times >= 7, "{times} times in {said}");
}

#[test]
fn no_line_breaks_within_a_value_in_any_language() {
    let units = [
        "%", "°C", "°F", "K", "W", "W/m²", "W/K", "kW", "MJ", "kg", "kg/m²", "lb", "m²", "m/s",
        "h", "min", "L", "m",
    ];
    let is_torn = |left: &str, right: &str| {
        let right = right.trim_matches(['(', ')', ',', '.', ';', ':']);
        let of_number = left.ends_with(|last: char| last.is_ascii_digit());
        of_number && (units.contains(&right) || right == "±")
            || (["±", "≥", "≤"].contains(&left)
                && right.starts_with(|one: char| one.is_ascii_digit()))
            || (of_number && right == "–")
    };
    for language in LANGUAGES {
        for name in ["open-dish", "panel-cloudy"] {
            let edition = web_edition().in_language(Some(language));
            let page = page_in(&sample(name), &edition);
            let page = parsed(&page);
            for node in page.root_element().descendants() {
                let is_drawn = node.ancestors().any(|node| node.has_tag_name("svg"));
                if let Some(text) = node.text().filter(|_| !is_drawn) {
                    let words: Vec<&str> = text.split(' ').collect();
                    let torn = words.windows(2).find(|pair| is_torn(pair[0], pair[1]));
                    assert_eq!(torn, None, "{name}, {}: {text}", language.code);
                }
            }
        }
    }
}

/// The variables of the style sheet between two of its marks, by their names.
fn variables(style: &str, from: &str) -> BTreeMap<String, String> {
    let block = style.split_once(from).unwrap().1;
    let block = block.split_once('{').unwrap().1.split_once('}').unwrap().0;
    let rows = block.split(';').filter_map(|row| row.rsplit_once("--"));
    let rows = rows.filter_map(|(_, row)| row.split_once(':'));
    rows.map(|(name, value)| (name.trim().to_owned(), value.trim().to_owned()))
        .collect()
}

/// Relative luminance of a colour such as `#202a30`, by WCAG 2.2 (W3C Recommendation, 2023),
/// "relative luminance".
fn luminance(colour: &str) -> f64 {
    let part = |from: usize| {
        let value = f64::from(u8::from_str_radix(&colour[from..from + 2], 16).unwrap()) / 255.0;
        match value <= 0.04045 {
            true => value / 12.92,
            false => ((value + 0.055) / 1.055).powf(2.4),
        }
    };
    0.2126 * part(1) + 0.7152 * part(3) + 0.0722 * part(5)
}

/// Contrast ratio of two colours, by WCAG 2.2, "contrast ratio".
fn contrast(one: &str, other: &str) -> f64 {
    let (one, other) = (luminance(one), luminance(other));
    (one.max(other) + 0.05) / (one.min(other) + 0.05)
}

#[test]
fn the_contrast_of_black_and_white_is_that_of_the_guidelines() {
    // WCAG 2.2, "contrast ratio": from 1 to 21.
    assert!((contrast("#000000", "#ffffff") - 21.0).abs() < 1e-9);
    assert!((contrast("#777777", "#777777") - 1.0).abs() < 1e-9);
}

#[test]
fn both_schemes_have_enough_contrast() {
    let page = page_of(&sample("open-dish"));
    let light = variables(&page, ":root");
    let dark = variables(&page, "(prefers-color-scheme: dark) {");
    for (scheme, inks) in [("light", &light), ("dark", &dark)] {
        // Text: 4.5 to 1, criterion 1.4.3. Lines and marks of figures: 3 to 1, 1.4.11.
        for (ink, on, least) in [
            ("ink", "paper", 4.5),
            ("ink", "wash", 4.5),
            ("quiet", "paper", 4.5),
            ("quiet", "wash", 4.5),
            ("teal", "paper", 4.5),
            ("amber", "paper", 4.5),
            ("amber", "wash", 4.5),
            ("note", "paper", 4.5),
            ("note", "shade", 4.5),
            ("ink", "band", 4.5),
            ("ink", "outer-band", 4.5),
            ("ink", "shade", 4.5),
            ("faint", "paper", 3.0),
            ("sun", "paper", 3.0),
            ("teal", "band", 3.0),
        ] {
            let found = contrast(&inks[ink], &inks[on]);
            assert!(found >= least, "{scheme}: {ink} on {on}, {found:.2}");
        }
    }
}

#[test]
fn every_colour_of_the_figures_has_one_for_the_dark() {
    for sample in sample_pages() {
        let Sample { name, page, .. } = sample;
        let style = page.split_once("</style>").unwrap().0;
        let page = parsed(page);
        for node in page.root_element().descendants() {
            for key in ["fill", "stroke"] {
                let colour = node.attribute(key).filter(|colour| *colour != "none");
                let rule = colour.map(|colour| format!("svg [{key}=\"{colour}\"] {{"));
                let is_there = rule.as_ref().is_none_or(|rule| style.contains(rule));
                assert!(is_there, "{name}: no rule {rule:?}");
            }
        }
    }
}

#[test]
fn the_fonts_have_every_character_of_the_messages() {
    let list = include_str!("../../../templates/fonts/web/characters.txt");
    let lines = list.lines().filter_map(|line| line.strip_prefix("U+"));
    let ranges = lines.map(|line| {
        let range = line.split(' ').next().unwrap();
        let (from, to) = range.split_once('-').unwrap_or((range, range));
        [from, to].map(|end| u32::from_str_radix(end, 16).unwrap())
    });
    let ranges: Vec<[u32; 2]> = ranges.collect();
    assert!(ranges.len() > 20);
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("templates/languages");
    for language in LANGUAGES {
        let file = folder.join(format!("{}.ftl", language.code));
        let messages = fs::read_to_string(file).unwrap();
        for character in messages.chars().filter(|character| !character.is_control()) {
            let code = u32::from(character);
            let is_there = ranges
                .iter()
                .any(|[from, to]| (*from..=*to).contains(&code));
            assert!(is_there, "{}: {character} ({code:x})", language.code);
        }
    }
}

#[test]
fn a_photo_is_in_the_page_with_its_words() {
    for (name, bytes, start) in [
        // The signatures of PNG (ISO/IEC 15948, 5.2) and JPEG (ITU-T T.81, B.1.1.3), in base 64.
        ("cooker.png", png(), "data:image/png;base64,iVBORw0KGgo"),
        ("cooker.jpg", jpeg(), "data:image/jpeg;base64,/9j/"),
    ] {
        let page = page_of(&with_photo(name, &bytes).assess());
        let page = parsed(&page);
        let photos = elements(&page, "img");
        assert_eq!(photos.len(), 1, "{name}");
        assert!(
            photos[0].attribute("src").unwrap().starts_with(start),
            "{name}"
        );
        assert!(
            photos[0]
                .attribute("alt")
                .unwrap()
                .contains("Saltbush octagon"),
            "{name}"
        );
        assert!(said(&page).contains("Thecookerastested."), "{name}");
    }
}

#[test]
fn paper_of_the_page_is_that_of_the_edition() {
    let copy = Copy::new().with_one_run();
    assert!(page_of(&copy.assess()).contains("size: A4;"));
    let edition = Edition {
        paper: simmerline::campaign::wishes::Paper::UsLetter,
        ..web_edition()
    };
    let made = outputs(&copy.assess(), &edition).unwrap();
    assert!(String::from_utf8_lossy(&made[0].bytes).contains("size: letter;"));
}
