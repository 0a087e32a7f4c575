//! `report --format parquet`: which files are there, and what is said of them.

use std::fs;

use serde_json::Value;

use crate::bench::{Bench, OUTPUTS, heating};

/// Of several campaigns together.
const TOGETHER: [&str; 5] = [
    "campaigns.parquet",
    "datapackage.json",
    "intervals.csv.schema.json",
    "intervals.parquet",
    "summary.json",
];

fn paths(bench: &Bench) -> Vec<String> {
    let package: Value = serde_json::from_str(&bench.read("reports/datapackage.json")).unwrap();
    let resources = package["resources"].as_array().unwrap().iter();
    let paths = resources.map(|one| one["path"].as_str().unwrap().to_owned());
    paths.collect()
}

#[test]
fn tables_are_written_for_all_campaigns_together_beside_their_own_files() {
    let bench = Bench::new();
    bench.add_campaign("wattle");
    let arguments = ["report", "mallee", "wattle", "--format", "pdf,parquet"];
    let ended = bench.run(&arguments).exits(0);
    let mut expected: Vec<String> = ["mallee", "wattle"]
        .iter()
        .flat_map(|name| OUTPUTS.map(|output| output.replace("mallee", name)))
        .chain(["mallee", "wattle"].iter().flat_map(|name| {
            ["campaigns", "intervals"].map(|set| format!("{set}/branch=-/{name}.parquet"))
        }))
        .chain(TOGETHER.map(str::to_owned))
        .collect();
    expected.sort();
    assert_eq!(bench.names("reports"), expected);
    ended.prints(&[
        "reports/mallee.pdf",
        "reports/campaigns.parquet",
        "reports/intervals.parquet",
        "reports/datapackage.json",
    ]);
    for name in ["campaigns.parquet", "intervals.parquet"] {
        let bytes = fs::read(bench.path(&format!("reports/{name}"))).unwrap();
        // Apache Parquet format: magic number at both ends.
        assert!(bytes.starts_with(b"PAR1") && bytes.ends_with(b"PAR1"));
    }
    assert_eq!(
        paths(&bench),
        [
            "campaigns.parquet",
            "intervals.parquet",
            "mallee.rating.json",
            "mallee.intervals.csv",
            "wattle.rating.json",
            "wattle.intervals.csv",
        ]
    );
}

#[test]
fn parquet_alone_writes_no_pdf_and_names_none() {
    let bench = Bench::new();
    let ended = bench
        .run(&["report", "mallee", "--format", "parquet"])
        .exits(0);
    assert!(!bench.names("reports").contains(&"mallee.pdf".to_owned()));
    assert!(!ended.out.contains(".pdf"), "{}", ended.out);
    ended.prints(&["reports/mallee.rating.json"]);
}

#[test]
fn campaign_that_fails_does_not_spoil_the_tables_of_the_others() {
    let bench = Bench::new();
    bench.add_campaign("wattle");
    bench.replace("mallee/campaign.toml", "water_kg = 7.0", "water_kg = -7.0");
    let arguments = ["report", "mallee", "wattle", "--format", "parquet"];
    bench.run(&arguments).exits(4);
    assert_eq!(
        paths(&bench),
        [
            "campaigns.parquet",
            "intervals.parquet",
            "wattle.rating.json",
            "wattle.intervals.csv"
        ]
    );
}

#[test]
fn nothing_is_written_where_every_campaign_fails() {
    let bench = Bench::new();
    bench.replace("mallee/campaign.toml", "water_kg = 7.0", "water_kg = -7.0");
    let ended = bench
        .run(&["report", "mallee", "--format", "parquet"])
        .exits(4);
    assert!(bench.names("reports").is_empty());
    assert_eq!(ended.out, "");
}

#[test]
fn none_of_the_tables_is_written_where_one_cannot_be() {
    let bench = Bench::new();
    bench.add_campaign("wattle");
    fs::create_dir_all(bench.path("reports/datapackage.json")).unwrap();
    let arguments = ["report", "mallee", "wattle", "--format", "parquet"];
    let ended = bench.run(&arguments).exits(2);
    let complaint = "reports/datapackage.json: is a folder where a file has to go";
    assert!(ended.err.contains(complaint), "{}", ended.err);
    assert!(
        !bench
            .names("reports")
            .iter()
            .any(|name| name.ends_with(".parquet") && !name.contains('/'))
    );
}

/// Rows of a CSV file, header first.
fn rows(text: &str) -> Vec<Vec<String>> {
    let mut reader = csv::ReaderBuilder::new();
    let reader = reader.has_headers(false).from_reader(text.as_bytes());
    let rows = reader.into_records().map(|row| row.unwrap());
    rows.map(|row| row.iter().map(str::to_owned).collect())
        .collect()
}

/// Beginnings that make a spreadsheet run a cell (OWASP, "CSV Injection", from memory).
#[test]
fn no_cell_of_text_is_run_by_a_spreadsheet_and_numbers_stay_numbers() {
    let bench = Bench::empty();
    for (folder, first) in [("=1+1", 1), ("@plain", 4)] {
        bench.add_campaign(folder);
        for (index, log) in ["=cmd.csv", "-day.csv", "+day.csv"].iter().enumerate() {
            let day = first + u32::try_from(index).unwrap();
            bench.write(&format!("{folder}/{log}"), heating(day));
            let (from, to) = (format!("day-{}.csv", index + 1), log);
            bench.replace(&format!("{folder}/campaign.toml"), &from, to);
        }
        let toml = format!("{folder}/campaign.toml");
        let cooker = format!("name = \"={folder}\"\ncurrency = \"=2\"\ncost = 3");
        bench.replace(&toml, "name = \"Mallee trough\"", &cooker);
    }
    bench.run(&["report", "."]).exits(0);
    bench
        .run(&["compare", "=1+1", "@plain", "--baseline", "=1+1"])
        .exits(0);
    let mut texts = 0;
    let mut negative = 0;
    for file in [
        "=1+1.intervals.csv",
        "@plain.intervals.csv",
        "comparison.csv",
    ] {
        let text = bench.read(&format!("reports/{file}"));
        for cell in rows(&text).iter().flatten() {
            let is_number = cell.parse::<f64>().is_ok();
            negative += usize::from(is_number && cell.starts_with('-'));
            texts += usize::from(cell.starts_with('\''));
            let is_run = cell.starts_with(['=', '+', '-', '@', '\t', '\r', '\n']);
            assert!(is_number || !is_run, "{file}: {cell:?}");
        }
    }
    assert!(
        texts > 20 && negative > 1,
        "{texts} texts, {negative} numbers"
    );
    let comparison = rows(&bench.read("reports/comparison.csv"));
    assert_eq!(comparison[1][1..3], ["'=1+1", "'==1+1"]);
    bench.run(&["verify", "reports/=1+1.pdf"]).exits(0);
}
