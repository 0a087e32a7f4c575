//! Readings that cannot be: more heat in the water than sunlight on the cooker.

use simmerline::procedure::Assessment;
use simmerline::procedure::finding::Level;
use simmerline::procedure::s580::intervals::Measured;

use crate::kit::heating::water_c;
use crate::kit::rate::{rate, sample};
use crate::kit::samples::sample_folder;
use crate::pipeline::trial::*;

/// A fair campaign whose intercept area is stated far too small.
fn impossible() -> Trial {
    Trial::fair().change("intercept_area_m2 = 1.0", "intercept_area_m2 = 0.2")
}

/// The finding alone, without what the small area makes of the load.
fn level_of_gain(assessment: &Assessment) -> Option<Level> {
    let findings = assessment.s580.conformity.findings.iter();
    let mut gain = findings.filter(|finding| finding.code.code() == "impossible-gain");
    gain.next().map(|finding| finding.level)
}

#[test]
fn more_heat_than_sunlight_by_a_sensor_that_faced_the_sun_is_not_valid() {
    let assessment = impossible().rated();
    assert_eq!(level_of_gain(&assessment), Some(Level::NotValid));
    assert!(assessment.s580.is_not_valid());
    let said = finding(&assessment, "impossible-gain");
    assert!(said.contains("than the sunlight intercepted"), "{said}");
    assert_eq!(level_of_gain(&Trial::fair().rated()), None);
}

#[test]
fn without_a_line_it_is_not_valid_all_the_same_and_nobody_measures_more_of_it() {
    // Of one morning an interval or two are left: too few for a line.
    let short_day = Trial::of(&[fair_log(14)]);
    let trial = short_day
        .change("intercept_area_m2 = 1.0", "intercept_area_m2 = 0.2")
        .with_table("[limits]\nsolar_time_end_h = 10.5\n");
    let assessment = trial.rated();
    assert!(assessment.s580.rated.is_none(), "{:?}", codes(&assessment));
    assert!(codes(&assessment).contains(&"no-rating"));
    assert_eq!(assessment.s580.conformity.level, Level::NotValid);
    let page_one = report(&assessment).headline;
    assert_eq!(page_one.findings.len(), 1, "{:?}", page_one.findings);
    assert_eq!(page_one.findings[0].code, "impossible-gain");
    assert!(!page_one.level_text.contains("missing"));
}

#[test]
fn what_a_sensor_that_lay_flat_says_may_be_its_own_fault() {
    let flat = impossible().change("plane = \"normal\"", "plane = \"horizontal\"");
    let assessment = flat.rated();
    assert_eq!(level_of_gain(&assessment), Some(Level::Indicative));
    assert!(!assessment.s580.is_not_valid());
    let said = finding(&assessment, "impossible-gain");
    assert!(said.contains("than the irradiance accounts for"), "{said}");
    let first = &report(&assessment).headline.findings[0];
    assert!(first.remedy.contains("faces the sun"), "{}", first.remedy);
}

/// A fair campaign whose irradiance is estimated in a way, on an intercept area.
fn estimated(way: &str, plane: &str, area_m2: f64) -> Assessment {
    let sensor = format!("plane = \"{plane}\"\nestimate = \"{way}\"");
    Trial::fair()
        .change("plane = \"normal\"", &sensor)
        .change(
            "intercept_area_m2 = 1.0",
            &format!("intercept_area_m2 = {area_m2}"),
        )
        .rated()
}

/// Mean of power over sunlight in the colder half of the used intervals, on the stated area.
fn colder_share(assessment: &Assessment) -> f64 {
    let used = assessment.s580.used().map(|interval| &interval.measured);
    let mut used: Vec<_> = used.collect();
    let warmth_k = |one: &Measured| one.difference_k.unwrap();
    used.sort_by(|one, other| warmth_k(one).total_cmp(&warmth_k(other)));
    let colder = &used[..used.len().div_ceil(2)];
    let area_m2 = assessment.tested.campaign.cooker.intercept_area_m2;
    let shares = colder
        .iter()
        .map(|one| one.cooking_power_w / (area_m2 * one.irradiance.unwrap().mean));
    shares.sum::<f64>() / colder.len() as f64
}

#[test]
fn an_estimate_is_believed_as_far_as_it_may_be_off() {
    // Sensor 3 %; turned to the sun 5 %; station 10 %: at k = 2 they allow 11.7 % and 23.2 %,
    // worked out by hand.
    let ways = [
        ("from-horizontal", "horizontal", 0.1166, "(± 12 %)"),
        ("station", "horizontal", 0.2315, "(± 23 %)"),
        ("solar-panel", "normal", 0.06, "(± 6 %)"),
    ];
    for (way, plane, off, percent) in ways {
        let whole = estimated(way, plane, 1.0);
        assert_eq!(level_of_gain(&whole), None, "{way}");
        // Power does not depend on the area, so that the share goes as one over it.
        let area_m2 = |share: f64| colder_share(&whole) / share;
        for (times, level) in [(0.99, Level::Indicative), (1.01, Level::NotValid)] {
            let assessment = estimated(way, plane, area_m2((1.0 + off) * times));
            assert_eq!(level_of_gain(&assessment), Some(level), "{way}, {times}");
            let is_not_valid = level == Level::NotValid;
            assert_eq!(assessment.s580.is_not_valid(), is_not_valid, "{way}");
            let said = finding(&assessment, "impossible-gain");
            assert_eq!(said.contains(percent), is_not_valid, "{way}: {said}");
            let first = &report(&assessment).headline.findings[0];
            assert_eq!(first.remedy.contains("faces the sun"), !is_not_valid);
        }
    }
}

#[test]
fn one_odd_interval_is_no_reason_to_strike_a_number() {
    // The water jumps by 6 K within one interval of the second day.
    let jump = |after_s: f64| if after_s >= 3_000.0 { 6.0 } else { 0.0 };
    let odd = log(15, |after_s| water_c(after_s) + jump(after_s));
    let area = "intercept_area_m2 = 0.5";
    let trial = Trial::with_second(odd).change("intercept_area_m2 = 1.0", area);
    let assessment = trial.rated();
    assert_eq!(level_of_gain(&assessment), Some(Level::Indicative));
    assert!(!assessment.s580.is_not_valid());
    // It was measured facing the sun already.
    let first = &report(&assessment).headline.findings[0];
    assert_eq!(first.code, "impossible-gain");
    assert!(!first.remedy.contains("faces the sun"), "{}", first.remedy);
}

#[test]
fn what_more_days_do_not_mend_stands_before_what_they_do() {
    let flat = Trial::of(&[14, 15].map(fair_log));
    let assessment = flat
        .change("plane = \"normal\"", "plane = \"horizontal\"")
        .rated();
    assert_eq!(codes(&assessment)[0], "too-few-days");
    let told = report(&assessment).headline.findings;
    let told: Vec<&str> = told.iter().map(|finding| finding.code.as_str()).collect();
    assert_eq!(told, ["irradiance-not-normal", "too-few-days"]);
}

/// The sample of a plain dish, its water in °C under a header in °F.
fn dish_in_wrong_degrees(from: &str, to: &str) -> Assessment {
    let text = |name: &str| std::fs::read_to_string(sample_folder("open-dish").join(name)).unwrap();
    let campaign = text("campaign.toml");
    assert!(campaign.contains(from));
    let logs = (16..=19).map(|day| format!("2026-09-{day}.csv"));
    let logs: Vec<(String, String)> = logs
        .map(|name| (name.clone(), text(&name).replace("water_c", "water_f")))
        .collect();
    let logs: Vec<(&str, &str)> = logs
        .iter()
        .map(|(name, log)| (name.as_str(), log.as_str()))
        .collect();
    rate(&campaign.replace(from, to), &logs).unwrap()
}

#[test]
fn a_rating_above_the_sunlight_on_the_area_is_not_valid() {
    // Eight sides, 1.22 m from corner to corner: 2 √2 (1.22/2)² = 1.0525 m², on which 737 W
    // fall at 700 W/m².
    let assessment = dish_in_wrong_degrees("plane = \"normal\"", "plane = \"normal\"");
    let rating = assessment.s580.rating().unwrap();
    assert!(rating.ps50_w > 736.7, "{}", rating.ps50_w);
    assert!(assessment.s580.is_not_valid());
    assert_eq!(level_of_gain(&assessment), None);
    let said = finding(&assessment, "impossible-rating");
    assert!(said.contains("at 700 W/m², 737 W"), "{said}");
    let page_one = &report(&assessment).headline.findings[0];
    assert_eq!(page_one.code, "impossible-rating");
    assert!(page_one.remedy.contains("units of temperature"));
    assert!(!codes(&sample("open-dish")).contains(&"impossible-rating"));
}

#[test]
fn a_rating_above_the_sunlight_that_another_plane_may_explain_is_not_struck() {
    let flat = dish_in_wrong_degrees("plane = \"normal\"", "plane = \"horizontal\"");
    assert!(!flat.s580.is_not_valid(), "{:?}", codes(&flat));
}

#[test]
fn what_intervals_have_said_of_the_sunlight_the_rating_does_not_say_again() {
    let tiny = Trial::fair().change("intercept_area_m2 = 1.0", "intercept_area_m2 = 0.15");
    let assessment = tiny.rated();
    let rating = assessment.s580.rating().unwrap();
    assert!(rating.ps50_w > 0.15 * 700.0, "{}", rating.ps50_w);
    assert!(!codes(&assessment).contains(&"impossible-rating"));
}
