//! Which procedures a campaign gets.

use serde_json::Value;
use simmerline::language::Words;
use simmerline::procedure::Assessment;
use simmerline::procedure::box_cooker::finding::FindingCode;
use simmerline::report::data::rating_file::RatingFile;
use simmerline::report::sections::Sections;

use crate::kit::kinds::{BOX, DISH, Kinds, POT, frozen};

fn data(assessment: &Assessment) -> Value {
    serde_json::from_str(&RatingFile::new(assessment).to_text().unwrap()).unwrap()
}

/// Codes of the sections of its report.
fn sections(assessment: &Assessment) -> Vec<String> {
    let headings = Sections::of_report(assessment).headings(Words::english());
    let code = |heading: &simmerline::report::sections::Heading| {
        serde_json::to_value(heading.code)
            .unwrap()
            .as_str()
            .unwrap()
            .to_owned()
    };
    headings.iter().map(code).collect()
}

/// Key of the data, and code of the section, of each procedure beside the rating.
const BESIDE: &[(&str, &str)] = &[
    ("heat_balance", "heat_balance"),
    ("dry_runs", "dry_vessel"),
    ("box_figures", "box_cooker"),
    ("dish_figures", "dish"),
    ("efficiency", "efficiency"),
];

/// Data keys that say something, and sections that are there.
fn there(assessment: &Assessment) -> (Vec<&'static str>, Vec<&'static str>) {
    let (data, sections) = (data(assessment), sections(assessment));
    let says = |key: &&(&str, &str)| match &data[key.0] {
        Value::Null => false,
        Value::Array(entries) => !entries.is_empty(),
        _ => true,
    };
    let has = |key: &&(&str, &str)| sections.iter().any(|section| section == key.1);
    (
        BESIDE.iter().filter(says).map(|key| key.0).collect(),
        BESIDE.iter().filter(has).map(|key| key.0).collect(),
    )
}

fn whole_box() -> Kinds {
    Kinds::of(BOX)
        .run("dry", frozen("box/dry.csv"))
        .run("water", frozen("box/water-1.csv"))
}

#[test]
fn a_campaign_gets_every_procedure_that_its_data_allow() {
    let (data, sections) = there(&whole_box().assess());
    assert_eq!(
        data,
        ["heat_balance", "dry_runs", "box_figures", "efficiency"]
    );
    assert_eq!(sections, data);
    let dish = Kinds::of(DISH)
        .run("cooling", frozen("dish/cooling.csv"))
        .run("water", frozen("dish/heating-1.csv"))
        .run("water", frozen("dish/heating-2.csv"))
        .assess();
    let (data, sections) = there(&dish);
    assert_eq!(data, ["heat_balance", "dish_figures", "efficiency"]);
    assert_eq!(sections, data);
    let (data, sections) = there(
        &Kinds::of(POT)
            .run("dry", frozen("dry-pot/exact-60s.csv"))
            .assess(),
    );
    assert_eq!(data, ["dry_runs"]);
    assert_eq!(sections, data);
}

#[test]
fn procedures_that_are_not_named_are_left_out_of_report_and_data() {
    let named = whole_box().asking(&["s580", "heat-balance"]).assess();
    assert!(named.box_figures.is_none() && named.dish_figures.is_none());
    assert!(named.efficiency.is_none());
    let beside_dry = |data: Vec<&'static str>| {
        let others = data.into_iter().filter(|key| *key != "dry_runs");
        others.collect::<Vec<_>>()
    };
    let (data, sections) = there(&named);
    assert_eq!(beside_dry(data), ["heat_balance"]);
    assert_eq!(sections, ["heat_balance"]);
    assert_eq!(named.s580.line(), whole_box().assess().s580.line());
    let (data, sections) = there(&whole_box().asking(&["s580"]).assess());
    assert!(
        beside_dry(data).is_empty() && sections.is_empty(),
        "{sections:?}"
    );
}

#[test]
fn a_panel_cooker_that_asks_for_box_figures_gets_their_section_with_a_finding() {
    let panel = Kinds::of(POT)
        .with(
            "[instruments.irradiance]",
            "[load]\nwater_kg = 2.0\n[instruments.irradiance]",
        )
        .run("water", frozen("box/water-1.csv"));
    assert!(panel.assess().box_figures.is_none());
    let asked = panel.asking(&["s580", "box-cooker"]).assess();
    assert!(sections(&asked).contains(&"box_cooker".to_owned()));
    let figures = asked.box_figures.as_ref().unwrap();
    let found = figures
        .findings
        .iter()
        .find(|one| one.code == FindingCode::NoDryRun);
    assert!(!found.unwrap().remedy.to_string().is_empty());
    let codes = data(&asked)["box_figures"]["findings"].to_string();
    assert!(codes.contains("no-dry-run"), "{codes}");
}
