//! What the sample runs show between them. All of them are invented, and say so.

use std::collections::BTreeSet;
use std::fs;
use std::path::PathBuf;

use simmerline::assess_folder;
use simmerline::procedure::Assessment;
use simmerline::procedure::finding::Level;
use simmerline::procedure::s580::reason::Reason;

use crate::kit::rate::{sample, samples_with_water};
use crate::kit::samples::{sample_folder, sample_names};

/// Every finding that a campaign can have, but for those that no honest test shows:
/// `no-rating`, `line-not-falling`, `no-useful-heat`, `irradiance-plane-not-stated` and
/// `impossible-rating`.
const FINDINGS: [&str; 14] = [
    "excluded-by-tester",
    "extrapolated",
    "impossible-gain",
    "irradiance-estimated",
    "irradiance-not-normal",
    "limit-tightened",
    "load-off",
    "r-squared-low",
    "recommendation-relaxed",
    "requirement-relaxed",
    "too-few-days",
    "too-few-intervals",
    "wind-estimated",
    "wind-not-measured",
];

fn folders() -> Vec<PathBuf> {
    let names = sample_names();
    names.iter().map(|name| sample_folder(name)).collect()
}

/// Of the campaigns that the practice is about: a dry vessel has no rating.
fn assessments() -> Vec<Assessment> {
    let samples = samples_with_water().into_iter();
    samples.map(|(_, assessment)| assessment).collect()
}

#[test]
fn every_reason_occurs() {
    let assessments = assessments();
    let occurring: BTreeSet<Reason> = assessments
        .iter()
        .flat_map(|assessment| &assessment.s580.intervals)
        .flat_map(|interval| interval.reasons().iter().copied())
        .collect();
    assert_eq!(occurring, Reason::ALL.iter().copied().collect());
}

#[test]
fn every_finding_occurs_but_those_of_a_failed_test() {
    let assessments = assessments();
    let occurring: BTreeSet<&str> = assessments
        .iter()
        .flat_map(|assessment| &assessment.s580.conformity.findings)
        .map(|finding| finding.code.code())
        .collect();
    assert_eq!(occurring, FINDINGS.into_iter().collect());
}

#[test]
fn every_level_of_conformity_occurs() {
    let assessments = assessments();
    let levels: BTreeSet<Level> = assessments
        .iter()
        .map(|assessment| assessment.s580.conformity.level)
        .collect();
    assert_eq!(
        levels,
        [
            Level::Conforms,
            Level::ConformsWithNotes,
            Level::Indicative,
            Level::NotValid,
        ]
        .into()
    );
}

#[test]
fn every_campaign_file_says_that_its_data_is_invented() {
    for folder in folders() {
        let text = fs::read_to_string(folder.join("campaign.toml")).unwrap();
        assert!(text.starts_with("# Invented data"), "{}", folder.display());
        assert!(
            text.lines()
                .any(|line| line.starts_with("demonstration = true")),
            "{}",
            folder.display()
        );
        let assessment = assess_folder(&folder).unwrap();
        assert!(assessment.tested.campaign.demonstration);
        let site = &assessment.tested.campaign.site.name;
        assert!(site.contains("invented"), "{site}");
        for person in [
            &assessment.tested.campaign.tester,
            &assessment.tested.campaign.client,
        ]
        .into_iter()
        .flatten()
        {
            assert!(person.contains("invented"), "{person}");
        }
    }
}

#[test]
fn every_log_is_marked_as_invented_in_its_first_line_and_named_in_a_campaign() {
    for folder in folders() {
        let assessment = assess_folder(&folder).unwrap();
        let named: BTreeSet<PathBuf> = assessment
            .tested
            .all_runs()
            .map(|run| run.plan.path.clone())
            .collect();
        let entries = fs::read_dir(&folder)
            .unwrap()
            .map(|entry| entry.unwrap().path());
        let logs: BTreeSet<PathBuf> = entries
            .filter(|path| path.extension().is_some_and(|ending| ending == "csv"))
            .collect();
        assert_eq!(named, logs);
        for log in logs {
            let text = fs::read_to_string(&log).unwrap();
            let first = text.lines().next().unwrap();
            assert!(
                first.starts_with("# Invented"),
                "{}: {first}",
                log.display()
            );
        }
    }
}

#[test]
fn the_pair_to_compare_differs_in_its_cooker_and_not_in_site_load_area_or_limits() {
    let (bare, skirt) = (sample("open-dish"), sample("open-dish-skirt"));
    assert_eq!(
        bare.tested.campaign.cooker.intercept_area_m2,
        skirt.tested.campaign.cooker.intercept_area_m2
    );
    assert_eq!(
        bare.tested.campaign.site.name,
        skirt.tested.campaign.site.name
    );
    assert_eq!(
        bare.tested.campaign.water_kg,
        skirt.tested.campaign.water_kg
    );
    assert_eq!(bare.s580.limits, skirt.s580.limits);
    assert_ne!(
        bare.tested.campaign.cooker.name,
        skirt.tested.campaign.cooker.name
    );
    let lower_end = |assessment: &Assessment| assessment.s580.rating().unwrap().confidence_w;
    assert!(
        lower_end(&skirt).lower > lower_end(&bare).upper,
        "the change shows"
    );
}
