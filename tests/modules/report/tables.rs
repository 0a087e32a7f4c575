//! The tables: what is in the Parquet files is what is in CSV and JSON.
//!
//! Read back with the crate parquet. What other readers make of the files is checked by
//! `tests/data/frictionless_check.py`.

use std::collections::BTreeSet;
use std::fs::File;
use std::io::Write;

use jiff::Timestamp;
use parquet::basic::{LogicalType, Repetition, TimeUnit};
use parquet::file::reader::{FileReader, SerializedFileReader};
use parquet::record::{Field, Row};
use serde_json::Value;
use simmerline::hash::sha256_hex;
use simmerline::procedure::Assessment;
use simmerline::report::data::rating_file::RatingFile;
use simmerline::report::data::tables::collection::{Member, collect_table, package};
use simmerline::report::data::tables::intervals_csv;
use simmerline::report::data::tables::shards::{DataSet, shards};
use simmerline::report::files::Output;
use simmerline::report::outputs;

use crate::report::campaigns::{Copy, edition, issued, poor_campaigns, sample, samples};

/// Columns of the CSV, as the project's design names an interval's keys (its section 5), and
/// whether the data are invented.
const CSV_HEADER: &str = "run,start,end,duration_s,water_start_c,water_end_c,water_mean_c,\
    ambient_mean_c,irradiance_mean_w_m2,irradiance_min_w_m2,irradiance_max_w_m2,wind_mean_m_s,\
    solar_time_start_h,solar_time_end_h,cooking_power_w,standardised_power_w,\
    temperature_difference_k,used,reasons,demonstration,verdict,in_heat_balance";

/// Samples and poor campaigns, each under a name of its own.
fn campaigns() -> Vec<Assessment> {
    let poor = poor_campaigns().into_iter().map(|(lacks, mut assessment)| {
        assessment.tested.campaign.name = format!("without {lacks}");
        assessment
    });
    let samples = samples().into_iter().map(|(_, assessment)| assessment);
    samples.chain(poor).collect()
}

/// What a call with `--format parquet` writes of campaigns, with their own files first; the rows
/// of each go through a file of their own.
fn written(campaigns: &[Assessment]) -> Vec<Output> {
    let mut edition = edition();
    edition.formats.clear();
    let (mut all, mut members, mut rows) = (Vec::new(), Vec::new(), Vec::new());
    for campaign in campaigns {
        let own = outputs(campaign, &edition).unwrap();
        members.push(Member {
            place: campaign.tested.campaign.name.clone(),
            is_invented: campaign.tested.campaign.demonstration,
            files: own.iter().map(Output::facts).collect(),
        });
        rows.push(shards(campaign, "").unwrap());
        all.extend(own);
    }
    let tables = DataSet::ALL.into_iter().enumerate().map(|(at, set)| {
        let read = |member: usize| Ok(rows[member][at].output.bytes.clone());
        let no_fault = |member: usize, _| panic!("{}", members[member].place);
        collect_table(set, &members, read, no_fault).unwrap()
    });
    let tables: Vec<Output> = tables.collect();
    let package = package(&members, &tables, issued()).unwrap();
    all.into_iter().chain(tables).chain(package).collect()
}

fn named<'o>(outputs: &'o [Output], name: &str) -> &'o Output {
    outputs.iter().find(|output| output.name == name).unwrap()
}

fn reader(output: &Output) -> SerializedFileReader<File> {
    let mut file = tempfile::tempfile().unwrap();
    file.write_all(&output.bytes).unwrap();
    SerializedFileReader::new(file).unwrap()
}

fn rows(output: &Output) -> Vec<Row> {
    let reader = reader(output);
    let rows = reader.get_row_iter(None).unwrap();
    rows.map(Result::unwrap).collect()
}

fn field<'r>(row: &'r Row, name: &str) -> &'r Field {
    let mut columns = row.get_column_iter();
    let found = columns.find(|(column, _)| *column == name);
    found.unwrap_or_else(|| panic!("no column {name}")).1
}

fn text(row: &Row, name: &str) -> String {
    match field(row, name) {
        Field::Str(text) => text.clone(),
        other => panic!("{name}: {other:?}"),
    }
}

/// A value as CSV writes it; a moment as its microseconds.
fn as_csv(field: &Field) -> String {
    match field {
        Field::Null => String::new(),
        Field::Str(text) => text.clone(),
        Field::Double(number) => number.to_string(),
        Field::Bool(truth) => truth.to_string(),
        Field::TimestampMicros(us) => us.to_string(),
        other => panic!("{other:?}"),
    }
}

#[test]
fn csv_has_the_header_it_always_had() {
    let csv = intervals_csv(&sample("open-dish")).unwrap();
    assert_eq!(csv.lines().next().unwrap(), CSV_HEADER);
}

#[test]
fn parquet_has_the_intervals_of_every_csv() {
    let campaigns = campaigns();
    let outputs = written(&campaigns);
    let rows = rows(named(&outputs, "intervals.parquet"));
    let mut rows = rows.iter();
    let (mut nulls, mut fractions) = (0, 0);
    for campaign in &campaigns {
        let name = &campaign.tested.campaign.name;
        let csv = &named(&outputs, &format!("{name}.intervals.csv")).bytes;
        let mut csv = csv::Reader::from_reader(csv.as_slice());
        let header = csv.headers().unwrap().clone();
        for record in csv.records() {
            let record = record.unwrap();
            let row = rows.next().expect("as many rows");
            assert_eq!(&text(row, "campaign"), name);
            for (column, cell) in header.iter().zip(&record) {
                let found = field(row, column);
                let expected = match column {
                    "start" | "end" => {
                        assert_eq!(text(row, &format!("{column}_local")), cell);
                        let time: Timestamp = cell.parse().unwrap();
                        time.as_microsecond().to_string()
                    }
                    _ => cell.to_owned(),
                };
                assert_eq!(as_csv(found), expected, "{name}, {column}");
                nulls += usize::from(matches!(found, Field::Null) && column != "reasons");
                fractions += usize::from(matches!(found, Field::Double(n) if n.fract() != 0.0));
            }
        }
    }
    assert!(rows.next().is_none(), "more rows than in CSV");
    // Some campaigns have no wind or no irradiance.
    assert!(nulls > 100 && fractions > 1000, "{nulls}, {fractions}");
}

#[test]
fn parquet_has_one_row_a_campaign_with_the_values_of_its_rating_json() {
    let campaigns = campaigns();
    let outputs = written(&campaigns);
    let rows = rows(named(&outputs, "campaigns.parquet"));
    assert_eq!(rows.len(), campaigns.len());
    let mut without_rating = 0;
    for (row, campaign) in rows.iter().zip(&campaigns) {
        let rating = RatingFile::new(campaign).to_text().unwrap();
        let rating: Value = serde_json::from_str(&rating).unwrap();
        assert_eq!(text(row, "campaign"), campaign.tested.campaign.name);
        for (column, pointer) in OF_RATING {
            let found = match field(row, column) {
                Field::Null => Value::Null,
                Field::Str(text) => text.as_str().into(),
                Field::Double(number) => (*number).into(),
                Field::Long(count) => (*count).into(),
                Field::Bool(truth) => (*truth).into(),
                other => panic!("{other:?}"),
            };
            let expected = rating.pointer(pointer).cloned().unwrap_or_default();
            // The line's number of points is none without a line.
            let is_no_line = column == "on_line" && expected.is_null();
            let expected = if is_no_line { found.clone() } else { expected };
            assert_eq!(
                found, expected,
                "{}: {column}",
                campaign.tested.campaign.name
            );
        }
        without_rating += usize::from(matches!(field(row, "ps50_w"), Field::Null));
        let count = |of: &str| -> u64 {
            let runs = rating["runs"].as_array().unwrap().iter();
            runs.map(|run| run[of].as_u64().unwrap()).sum()
        };
        for (column, expected) in [
            ("runs", rating["runs"].as_array().unwrap().len() as u64),
            ("intervals", count("intervals")),
            ("used", count("used")),
        ] {
            assert_eq!(
                field(row, column),
                &Field::Long(expected as i64),
                "{column}"
            );
        }
        let findings = rating["conformity"]["findings"].as_array().unwrap().iter();
        let codes: Vec<&str> = findings.map(|one| one["code"].as_str().unwrap()).collect();
        assert_eq!(as_csv(field(row, "findings")), codes.join(" "));
    }
    assert!(without_rating > 1, "{without_rating}");
}

/// Columns of the campaigns, and where `rating.json` has the same.
const OF_RATING: [(&str, &str); 38] = [
    ("title", "/campaign"),
    ("demonstration", "/demonstration"),
    ("cooker", "/cooker"),
    ("cooker_type", "/cooker_type"),
    ("intercept_area_m2", "/intercept_area_m2"),
    ("site", "/site/name"),
    ("latitude_deg", "/site/latitude_deg"),
    ("longitude_deg", "/site/longitude_deg"),
    ("elevation_m", "/site/elevation_m"),
    ("boiling_point_c", "/boiling_point_c"),
    ("tester", "/tester"),
    ("ps50_w", "/rating/ps50_w"),
    ("ps50_standard_error_w", "/rating/ps50_standard_error_w"),
    (
        "ps50_confidence_lower_95_w",
        "/rating/ps50_confidence_95_w/0",
    ),
    (
        "ps50_confidence_upper_95_w",
        "/rating/ps50_confidence_95_w/1",
    ),
    (
        "ps50_prediction_lower_95_w",
        "/rating/ps50_prediction_95_w/0",
    ),
    (
        "ps50_prediction_upper_95_w",
        "/rating/ps50_prediction_95_w/1",
    ),
    ("extrapolated", "/rating/extrapolated"),
    (
        "ps50_expanded_uncertainty_w",
        "/uncertainty/ps50_expanded_uncertainty_w",
    ),
    ("ps50_lower_95_w", "/uncertainty/ps50_interval_95_w/0"),
    ("ps50_upper_95_w", "/uncertainty/ps50_interval_95_w/1"),
    (
        "ps50_combined_standard_uncertainty_w",
        "/uncertainty/ps50_combined_standard_uncertainty_w",
    ),
    ("coverage_factor", "/uncertainty/coverage_factor"),
    (
        "effective_degrees_of_freedom",
        "/uncertainty/effective_degrees_of_freedom",
    ),
    ("intercept_w", "/regression/intercept_w"),
    ("slope_w_per_k", "/regression/slope_w_per_k"),
    (
        "intercept_standard_error_w",
        "/regression/intercept_standard_error_w",
    ),
    (
        "slope_standard_error_w_per_k",
        "/regression/slope_standard_error_w_per_k",
    ),
    ("covariance_w2_per_k", "/regression/covariance_w2_per_k"),
    ("r_squared", "/regression/r_squared"),
    ("residual_sd_w", "/regression/residual_sd_w"),
    ("on_line", "/regression/intervals"),
    ("conformity", "/conformity/level"),
    ("irradiance_estimate", "/estimates/irradiance"),
    ("wind_estimated", "/estimates/wind"),
    ("procedure", "/procedure"),
    ("report_number", "/report_number"),
    ("tool_version", "/provenance/tool_version"),
];

#[test]
fn columns_of_parquet_have_proper_types() {
    let outputs = written(&[sample("open-dish")]);
    let file = reader(named(&outputs, "intervals.parquet"));
    let schema = file.metadata().file_metadata().schema_descr();
    let column = |name: &str| {
        let mut columns = schema.columns().iter();
        let found = columns.find(|column| column.name() == name);
        found.unwrap().self_type().get_basic_info().clone()
    };
    for name in ["start", "end"] {
        let time = LogicalType::timestamp(true, TimeUnit::MICROS);
        assert_eq!(column(name).logical_type_ref(), Some(&time), "{name}");
    }
    assert_eq!(column("run").logical_type_ref(), Some(&LogicalType::String));
    assert_eq!(column("water_mean_c").repetition(), Repetition::REQUIRED);
    assert_eq!(column("wind_mean_m_s").repetition(), Repetition::OPTIONAL);
    let about = file.metadata().file_metadata().key_value_metadata();
    let about = about.unwrap()[0].value.clone().unwrap();
    assert!(about.starts_with("INVENTED DATA"), "{about}");
}

#[test]
fn data_package_describes_every_file_as_it_is() {
    let mut campaigns = campaigns();
    // Its name is another's, as far as the standard allows letters.
    let mut twin = sample("box");
    twin.tested.campaign.name = "Box".to_owned();
    campaigns.push(twin);
    let outputs = written(&campaigns);
    let package: Value =
        serde_json::from_slice(&named(&outputs, "datapackage.json").bytes).unwrap();
    assert_eq!(package["profile"], "data-package");
    assert_eq!(package["created"], "2026-11-03T12:00:00Z");
    let resources = package["resources"].as_array().unwrap();
    let described = outputs.len() - 2;
    assert_eq!(resources.len(), described, "all but itself and the schema");
    let of_csv = &named(&outputs, "intervals.csv.schema.json").bytes;
    let of_csv: Value = serde_json::from_slice(of_csv).unwrap();
    let mut names = BTreeSet::new();
    for resource in resources {
        let path = resource["path"].as_str().unwrap();
        let bytes = &named(&outputs, path).bytes;
        if !path.ends_with(".parquet") {
            assert_eq!(resource["bytes"], bytes.len(), "{path}");
        }
        assert_eq!(resource["hash"], format!("sha256:{}", sha256_hex(bytes)));
        let name = resource["name"].as_str().unwrap();
        assert!(names.insert(name), "{name} twice");
        let is_allowed = |c: char| matches!(c, 'a'..='z' | '0'..='9' | '-' | '_' | '.');
        assert!(name.chars().all(is_allowed), "{name}");
        let fields = || {
            let schema = match &resource["schema"] {
                Value::String(file) if file == "intervals.csv.schema.json" => &of_csv,
                here => here,
            };
            schema["fields"].as_array().into_iter().flatten()
        };
        let columns = fields().map(|field| field["name"].as_str().unwrap());
        let columns: Vec<&str> = columns.collect();
        let expected: Vec<String> = match path.rsplit_once('.').unwrap().1 {
            "csv" => CSV_HEADER.split(',').map(str::to_owned).collect(),
            "parquet" => {
                let file = reader(named(&outputs, path));
                let schema = file.metadata().file_metadata().schema_descr();
                let columns = schema.columns().iter();
                columns.map(|column| column.name().to_owned()).collect()
            }
            _ => Vec::new(),
        };
        assert_eq!(columns, expected, "{path}");
        for field in fields() {
            assert!(field["description"].as_str().unwrap().len() > 1, "{field}");
            let name = field["name"].as_str().unwrap();
            for (ending, unit) in UNITS {
                if name.ends_with(ending) {
                    assert_eq!(field["unit"], unit, "{name}");
                    break;
                }
            }
        }
    }
}

/// Endings of names, and the unit that each stands for; of two that fit the first counts.
const UNITS: [(&str, &str); 12] = [
    ("_k_m2_per_w", "K m²/W"),
    ("_w_per_m2_k", "W/(m² K)"),
    ("_w_m2", "W/m²"),
    ("_m2", "m²"),
    ("_w2_per_k", "W²/K"),
    ("_w_per_k", "W/K"),
    ("_w", "W"),
    ("_c", "°C"),
    ("_difference_k", "K"),
    ("_m_s", "m/s"),
    ("_s", "s"),
    ("_h", "h"),
];

#[test]
fn invented_data_are_called_so_and_only_those() {
    let about = |campaigns: &[Assessment]| {
        let outputs = written(campaigns);
        let package = &named(&outputs, "datapackage.json").bytes;
        let package: Value = serde_json::from_slice(package).unwrap();
        let of_resources = package["resources"].as_array().unwrap().iter();
        let of_resources = of_resources.map(|one| one["description"].as_str().unwrap().to_owned());
        let of_package = package["description"].as_str().unwrap().to_owned();
        std::iter::once(of_package)
            .chain(of_resources)
            .collect::<Vec<_>>()
    };
    let is_said = |text: &String| text.contains("INVENTED DATA");
    assert!(about(&[sample("box")]).iter().all(is_said));
    let mut real = Copy::new()
        .replace("demonstration = true", "demonstration = false")
        .assess();
    real.tested.campaign.name = "real".to_owned();
    assert!(!about(&[real.clone()]).iter().any(is_said));
    let mixed = about(&[real, sample("box")]);
    assert!(
        mixed[0].starts_with("INVENTED DATA in part: box. "),
        "{mixed:?}"
    );
    // Package, both tables, and the box's two files.
    assert_eq!(mixed.iter().filter(|text| is_said(text)).count(), 5);
}

#[test]
fn same_campaigns_give_the_same_files() {
    let bytes = || -> Vec<Vec<u8>> {
        let outputs = written(&[sample("box"), sample("open-dish")]);
        outputs.into_iter().map(|output| output.bytes).collect()
    };
    assert_eq!(bytes(), bytes());
}
