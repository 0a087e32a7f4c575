//! The same campaign in many dresses gives one rating, and what cannot be read for
//! certain is refused.

use std::fs;
use std::path::{Path, PathBuf};

use simmerline::assess_folder;
use simmerline::error::Error;
use simmerline::procedure::Assessment;
use simmerline::procedure::s580::intervals::Interval;
use simmerline::procedure::spans::Summary;

/// Unit conversions there and back leave this much of a number.
const CONVERTED: f64 = 1e-9;

fn folders(below: &str) -> Vec<PathBuf> {
    let root = Path::new("tests/data/dresses").join(below);
    let entries = fs::read_dir(&root)
        .unwrap()
        .map(|entry| entry.unwrap().path());
    let mut folders: Vec<PathBuf> = entries
        .filter(|path| path.join("campaign.toml").is_file())
        .collect();
    folders.sort();
    folders
}

fn rate(folder: &Path) -> Assessment {
    assess_folder(folder).unwrap_or_else(|error| panic!("{}: {error}", folder.display()))
}

/// Every number of an interval.
fn numbers(interval: &Interval) -> Vec<f64> {
    let of = |summary: Option<Summary>| {
        let summary = summary.expect("every quantity is measured");
        [summary.mean, summary.min, summary.max]
    };
    let single = [
        interval.measured.water_start_c,
        interval.measured.water_end_c,
        interval.measured.cooking_power_w,
        interval.measured.standardised_power_w.unwrap(),
        interval.measured.difference_k.unwrap(),
        interval.measured.solar_start_h,
    ];
    let summaries = [
        Some(interval.measured.water),
        interval.measured.ambient,
        interval.measured.irradiance,
        interval.measured.wind,
    ];
    single
        .into_iter()
        .chain(summaries.into_iter().flat_map(of))
        .collect()
}

#[test]
fn one_campaign_in_many_dresses_gives_one_rating() {
    let canonical = rate(Path::new("tests/data/dresses/canonical"));
    let dresses = folders("");
    assert!(dresses.len() > 30, "{}", dresses.len());
    for folder in dresses {
        let name = folder.display();
        let dressed = rate(&folder);
        assert_eq!(
            dressed.s580.conformity.level, canonical.s580.conformity.level,
            "{name}"
        );
        assert_eq!(
            dressed.s580.intervals.len(),
            canonical.s580.intervals.len(),
            "{name}"
        );
        for (dressed, plain) in dressed.s580.intervals.iter().zip(&canonical.s580.intervals) {
            assert_eq!(
                dressed.measured.span.from_us, plain.measured.span.from_us,
                "{name}"
            );
            assert_eq!(
                dressed.measured.span.to_us, plain.measured.span.to_us,
                "{name}"
            );
            assert_eq!(dressed.reasons(), plain.reasons(), "{name}");
            for (dressed, plain) in numbers(dressed).iter().zip(numbers(plain)) {
                let apart = (dressed - plain).abs();
                assert!(
                    apart <= CONVERTED * plain.abs().max(1.0),
                    "{name}: {dressed} {plain}"
                );
            }
        }
        let of = |assessment: &Assessment| assessment.s580.rating().unwrap().ps50_w;
        let apart = (of(&dressed) - of(&canonical)).abs();
        assert!(apart <= CONVERTED * of(&canonical), "{name}: {apart}");
    }
}

#[test]
fn the_canonical_dress_is_the_rating_that_was_computed_beside_it() {
    // A straight line by numpy 2.4.6 through the intervals of `dresses.py`, which shares
    // no code with ours, printed to four digits.
    let canonical = rate(Path::new("tests/data/dresses/canonical"));
    let rating = canonical.s580.rating().unwrap();
    assert!((rating.ps50_w - 198.6).abs() < 0.05, "{}", rating.ps50_w);
}

#[test]
fn what_can_be_read_in_two_ways_is_refused_with_the_key_that_settles_it() {
    let broken = folders("broken");
    assert!(broken.len() > 15, "{}", broken.len());
    for folder in broken {
        let name = folder.display();
        let error = assess_folder(&folder).expect_err(&name.to_string());
        assert!(
            matches!(error, Error::Input(_) | Error::Campaign(_)),
            "{name}: {error}"
        );
        let message = format!("{error}");
        assert!(message.contains("hint: "), "{name}: {message}");
        let expected = fs::read_to_string(folder.join("expect.txt")).unwrap();
        for part in expected.lines().filter(|line| !line.is_empty()) {
            assert!(message.contains(part), "{name}: no {part:?} in {message}");
        }
    }
}
