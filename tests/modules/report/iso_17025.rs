//! That a report has a place for everything which ISO/IEC 17025:2017, 7.8.2 and 7.8.3, ask
//! of one. The items are set down from memory, in our own words, in the table of
//! `DEVELOPERS.md`; that table is held against the report here.

use std::fs;
use std::path::Path;

use serde_json::Value;
use simmerline::report::words::{Report, build};

use crate::report::campaigns::*;

/// What a campaign file may leave out, and the label of its place in section 1.
const OPTIONAL: [(&str, &str); 12] = [
    ("identification", "identification"),
    ("description", "description"),
    ("condition", "condition"),
    ("received", "received"),
    ("laboratory", "laboratory"),
    ("tester", "tested by"),
    ("authorised_by", "authorised by"),
    ("client", "client"),
    ("client_contact", "contact of the client"),
    ("client_data", "supplied by client"),
    ("sampling", "sampling"),
    ("external_results", "external results"),
];

/// A copy of the sample whose campaign file states every optional key, or none of them.
fn report_with(is_stated: bool) -> Report {
    let copy = Copy::new();
    let path = copy.root.path().join("campaign.toml");
    let text = fs::read_to_string(&path).unwrap();
    let is_optional = |line: &str| {
        let key = line.split('=').next().unwrap_or_default().trim();
        OPTIONAL.iter().any(|(optional, _)| *optional == key)
    };
    let mut table = "";
    let mut kept = Vec::new();
    for line in text.lines() {
        if line.starts_with('[') {
            table = line;
        }
        let is_of_cooker = ["[campaign]", "[report]", "[cooker]"].contains(&table);
        if is_stated || !(is_of_cooker && is_optional(line)) {
            kept.push(line);
        }
    }
    copy.write("campaign.toml", kept.join("\n"));
    build(&copy.assess(), &edition())
}

/// The row of a label: its own, else that of all that is not stated, if it is named there.
fn row_of(report: &Report, label: &str) -> String {
    let rows = report.tested.groups.iter().flat_map(|group| &group.rows);
    for row in rows {
        if row.label.to_lowercase() == label {
            return row.text.clone();
        }
        let is_there = |one: &str| one.to_lowercase() == label;
        if row.label == "Not stated" && row.text.split(", ").any(is_there) {
            return "not stated".to_owned();
        }
    }
    panic!("no row \"{label}\" in section 1")
}

#[test]
fn what_the_campaign_file_leaves_out_is_called_not_stated() {
    let report = report_with(false);
    for (key, label) in OPTIONAL {
        let text = row_of(&report, label);
        let text = text.to_lowercase();
        assert!(text.contains("not stated"), "{key}: {label}: {text}");
    }
}

#[test]
fn what_the_campaign_file_states_stands_in_its_place() {
    let report = report_with(true);
    let file = fs::read_to_string("sample-runs/open-dish/campaign.toml").unwrap();
    let campaign: toml::Table = file.parse().unwrap();
    for (key, label) in OPTIONAL {
        let tables = ["report", "cooker", "campaign"].into_iter();
        let mut stated = tables.filter_map(|table| campaign[table].get(key));
        let stated = stated
            .next()
            .unwrap_or_else(|| panic!("the sample does not state {key}"));
        let expected = match stated {
            toml::Value::String(text) => text.clone(),
            // 2026-09-12, as a report writes it.
            toml::Value::Datetime(_) => "12 September 2026".to_owned(),
            other => panic!("{key} = {other}"),
        };
        assert_eq!(row_of(&report, label), expected, "{key}");
    }
}

#[test]
fn irradiance_of_a_station_is_a_result_from_others() {
    let copy = Copy::new().replace(
        "plane = \"normal\"",
        "plane = \"normal\"\nestimate = \"station\"",
    );
    let copy = copy.replace("external_results = \"none\"\n", "");
    let report = build(&copy.assess(), &edition());
    let others = row_of(&report, "external results");
    assert!(others.contains("station"), "{others}");
}

#[test]
fn the_environment_of_the_used_intervals_is_told() {
    // Taken again here, over the used intervals; by hand in `procedure/environment.rs`.
    let assessment = sample("open-dish");
    let report = build(&assessment, &edition());
    let used: Vec<f64> = assessment
        .s580
        .used()
        .map(|interval| interval.measured.ambient.unwrap().mean)
        .collect();
    let mean_c = used.iter().sum::<f64>() / used.len() as f64;
    let text = row_of(&report, "ambient");
    assert!(
        text.starts_with(&format!("Mean {mean_c:.1}, readings ")),
        "{text}"
    );
    assert!(text.ends_with(" °C"), "{text}");
    for label in ["irradiance", "wind"] {
        assert!(row_of(&report, label).starts_with("Mean "), "{label}");
    }
    let windless = Copy::new().change_rows(|cells| cells[..4].join(","));
    let report = build(&windless.assess(), &edition());
    assert_eq!(row_of(&report, "wind"), "Not measured");
}

/// A row of the table in `DEVELOPERS.md`.
struct Asked {
    item: String,
    places: Vec<(String, Vec<String>)>,
    from: Vec<String>,
}

fn quoted(text: &str, mark: char) -> Vec<String> {
    let parts = text.split(mark).skip(1).step_by(2);
    parts.map(str::to_owned).collect()
}

/// The table: item, what it asks for, `place: "text", "text"; place: …`, `key` or `file`.
fn table() -> Vec<Asked> {
    let guide = fs::read_to_string("DEVELOPERS.md").unwrap();
    let rows = guide.lines().filter(|line| line.starts_with("| 7.8."));
    rows.map(|line| {
        let cells: Vec<&str> = line.trim_matches('|').split('|').map(str::trim).collect();
        let [item, _, places, from] = cells.as_slice() else {
            panic!("not four cells: {line}");
        };
        let places = places.split("; ").map(|place| {
            let (name, texts) = place.split_once(": ").unwrap_or((place, ""));
            (name.to_owned(), quoted(texts, '"'))
        });
        Asked {
            item: (*item).to_owned(),
            places: places.collect(),
            from: quoted(from, '`'),
        }
    })
    .collect()
}

#[test]
fn the_table_of_the_guide_has_every_item() {
    let items: Vec<String> = table().into_iter().map(|asked| asked.item).collect();
    let mut expected: Vec<String> = ('a'..='p').map(|item| format!("7.8.2.1 {item}")).collect();
    expected.push("7.8.2.2".to_owned());
    expected.extend(('a'..='e').map(|item| format!("7.8.3.1 {item}")));
    assert_eq!(items, expected);
}

fn strings(value: &Value, found: &mut Vec<String>) {
    match value {
        Value::String(text) => found.push(text.clone()),
        Value::Array(items) => items.iter().for_each(|item| strings(item, found)),
        Value::Object(fields) => fields.values().for_each(|field| strings(field, found)),
        _ => {}
    }
}

/// Every string of a place of the report, with the headings of the templates.
fn strings_of(report: &Value, place: &str) -> Vec<String> {
    let parts: &[&str] = match place {
        "page one" => &[
            "kind",
            "title",
            "subtitle",
            "letterhead",
            "headline",
            "signatures",
            "hashes",
            "governs",
        ],
        "every page" => &["number", "marks", "statement"],
        "section 1" => &["tested"],
        "section 2" => &["conditions"],
        "section 3" => &["runs"],
        "section 4" => &["intervals"],
        "section 5" => &["regression"],
        "section 6" => &["heat_balance"],
        "section 7" => &["cooking", "stagnation"],
        "section 8" => &["cautions"],
        "section 9" => &["provenance"],
        other => panic!("no place \"{other}\" in a report"),
    };
    let mut found = Vec::new();
    strings(&report["setting"]["words"], &mut found);
    strings(&report["sections"], &mut found);
    for part in parts {
        strings(&report[part], &mut found);
    }
    found
}

#[test]
fn every_place_that_the_table_names_is_in_the_report() {
    let report = serde_json::to_value(build(&sample("open-dish"), &edition())).unwrap();
    for asked in table() {
        assert!(!asked.places.is_empty());
        for (place, texts) in asked.places {
            let item = &asked.item;
            assert!(!texts.is_empty(), "{item}: nothing named in {place}");
            let found = strings_of(&report, &place);
            for text in texts {
                let is_there = found.iter().any(|string| string.contains(&text));
                assert!(is_there, "{item}: no \"{text}\" in {place}");
            }
        }
    }
}

#[test]
fn every_key_and_file_that_the_table_names_exists() {
    let template = fs::read_to_string("templates/campaign.toml").unwrap();
    let keys: Vec<&str> = template
        .lines()
        .map(|line| line.trim_start_matches("# "))
        .collect();
    for asked in table() {
        assert!(!asked.from.is_empty(), "{}", asked.item);
        for from in asked.from {
            let item = &asked.item;
            if from.ends_with(".rs") {
                assert!(Path::new("src").join(&from).is_file(), "{item}: no {from}");
                continue;
            }
            let (table, key) = from.split_once('.').unwrap();
            let is_in = |line: &&str| {
                line.starts_with(&format!("[{table}]")) || *line == format!("[[{table}]]")
            };
            let start = keys.iter().position(is_in);
            let start = start.unwrap_or_else(|| panic!("{item}: no [{table}]"));
            let is_key = |line: &&str| {
                line.starts_with(&format!("{key} =")) || **line == format!("[[{table}.{key}]]")
            };
            assert!(keys[start..].iter().any(is_key), "{item}: no {from}");
        }
    }
}
