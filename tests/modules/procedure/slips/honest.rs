//! Of honest campaigns no slip is said, and no place on earth is doubted.

use std::fs;
use std::path::{Path, PathBuf};

use simmerline::campaign::model::Site;
use simmerline::physics::sun::equation_of_time_min;
use simmerline::procedure::Assessment;
use simmerline::procedure::notice::Notice;
use simmerline::procedure::s580::notice::{S580Notice, is_odd_noon};
use simmerline::procedure::slips::zone::{far_from_zone, places};

use jiff::Timestamp;
use jiff::tz::TimeZone;

use crate::kit::kinds::{BOX, DISH, Kinds, POT, frozen};
use crate::kit::rate::samples;
use crate::pipeline::trial::Trial;

/// What is said of slips.
fn slips(assessment: &Assessment) -> Vec<String> {
    let notices = assessment.notices.iter().filter(|notice| {
        let is_noon = matches!(notice, Notice::S580(S580Notice::OddSolarNoon { .. }));
        is_noon || matches!(notice, Notice::Slip(_))
    });
    notices.map(ToString::to_string).collect()
}

#[test]
fn no_slip_is_said_of_a_sample() {
    for (name, assessment) in samples() {
        assert_eq!(slips(&assessment), [""; 0], "{name}");
    }
}

#[test]
fn no_slip_is_said_of_a_dress() {
    let root = Path::new("tests/data/dresses");
    let folders = fs::read_dir(root)
        .unwrap()
        .map(|entry| entry.unwrap().path());
    let folders: Vec<PathBuf> = folders
        .filter(|folder| folder.join("campaign.toml").is_file())
        .collect();
    assert!(folders.len() > 100, "{}", folders.len());
    for folder in folders {
        let assessment = simmerline::assess_folder(&folder).unwrap();
        assert_eq!(slips(&assessment), [""; 0], "{}", folder.display());
    }
}

#[test]
fn no_slip_is_said_of_the_frozen_runs_with_weather() {
    let of = |tables: &str, runs: &[(&str, &str)]| {
        let campaign = Kinds::of(tables);
        let runs = runs.iter();
        let campaign = runs.fold(campaign, |campaign, (kind, log)| {
            campaign.run(kind, frozen(log))
        });
        slips(&campaign.assess())
    };
    let dry = [("dry", "box/dry.csv")];
    let noisy = [
        ("water", "box-noisy/water-1.csv"),
        ("water", "box-noisy/water-2.csv"),
        ("dry", "box-noisy/dry.csv"),
    ];
    let exact = [("water", "box/water-1.csv"), ("water", "box/water-2.csv")];
    let dish = [
        ("water", "dish/heating-1.csv"),
        ("water", "dish/heating-2.csv"),
        ("cooling", "dish/cooling.csv"),
    ];
    let noisy_dish = [
        ("water", "dish-noisy/heating-1.csv"),
        ("water", "dish-noisy/heating-2.csv"),
        ("cooling", "dish-noisy/cooling.csv"),
    ];
    assert_eq!(of(BOX, &dry), [""; 0]);
    assert_eq!(of(BOX, &noisy), [""; 0]);
    assert_eq!(of(BOX, &exact), [""; 0]);
    assert_eq!(of(DISH, &dish), [""; 0]);
    assert_eq!(of(DISH, &noisy_dish), [""; 0]);
    assert_eq!(of(POT, &[("dry", "dry-pot/exact-60s.csv")]), [""; 0]);
}

#[test]
fn no_slip_is_said_of_the_campaign_of_the_tests() {
    assert_eq!(slips(&Trial::fair().rated()), [""; 0]);
}

/// The principal place of every zone, on days of the years 1970 to 2030, in and out of summer
/// time, has its solar noon within the bounds. Antarctica is left out: stations keep the time of
/// whoever supplies them, and the database has UTC where nobody lived.
///
/// Source: the IANA time zone database, zone.tab and its rules as jiff carries them.
#[test]
fn solar_noon_of_every_zone_lies_within_the_bounds() {
    let (mut earliest_h, mut latest_h) = (12.0_f64, 12.0_f64);
    for (name, (_, longitude_deg)) in places() {
        let zone = TimeZone::get(name).unwrap_or_else(|_| panic!("{name}"));
        if name.starts_with("Antarctica/") {
            continue;
        }
        for day in (0..61 * 365).step_by(20) {
            let unix_s = f64::from(day) * 86_400.0 + 43_200.0;
            let at = Timestamp::from_second(unix_s as i64).unwrap();
            let offset_h = f64::from(zone.to_offset(at).seconds()) / 3600.0;
            let equation_h = equation_of_time_min(unix_s).unwrap() / 60.0;
            let noon_h = 12.0 + offset_h - longitude_deg / 15.0 - equation_h;
            let noon_h = noon_h.rem_euclid(24.0);
            earliest_h = earliest_h.min(noon_h);
            latest_h = latest_h.max(noon_h);
            assert!(!is_odd_noon(noon_h), "{name}: {noon_h}");
        }
    }
    // Danmarkshavn and Nome.
    assert!((9.9..10.0).contains(&earliest_h), "{earliest_h}");
    assert!((15.1..15.3).contains(&latest_h), "{latest_h}");
}

/// Every place of a table, and places far out in large zones, with their own coordinates.
#[test]
fn no_place_is_far_from_its_own_zone() {
    let far_out = [
        ("Asia/Shanghai", 39.47, 75.99),      // Kashgar
        ("America/Nome", 63.78, -171.74),     // Gambell
        ("Pacific/Honolulu", 28.21, -177.38), // Midway
        ("Europe/Moscow", 44.04, 43.06),      // Pyatigorsk
        ("Europe/Madrid", 42.88, -9.27),      // Cape Finisterre
        ("Europe/London", 60.15, -1.15),      // Lerwick
        ("Africa/Abidjan", 10.1, 2.0),
        ("Africa/Lagos", 13.0, 13.9),
        ("America/Sao_Paulo", -30.0, -51.2),
        ("America/New_York", 25.8, -80.2),
        ("Asia/Kolkata", 8.1, 77.5),
        ("Australia/Brisbane", -20.7, 139.5),
        ("Africa/Johannesburg", -33.9, 18.4),
    ];
    let all = places().map(|(zone, (north, east))| (zone, north, east));
    for (zone, north, east) in all.chain(far_out) {
        let site = Site {
            name: "Nowhere (invented)".to_owned(),
            latitude_deg: north,
            longitude_deg: east,
            elevation_m: 0.0,
            pressure_hpa: None,
            linke_turbidity: None,
            time_zone: TimeZone::UTC,
            time_zone_name: zone.to_owned(),
        };
        assert_eq!(far_from_zone(&site), None, "{zone}");
    }
}
