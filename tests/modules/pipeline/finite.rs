//! No number that is none reaches a file.

use std::fmt::{Debug, Write as _};

use jiff::Timestamp;
use proptest::prelude::*;
use simmerline::error::Error;
use simmerline::procedure::s580::intervals::Interval;
use simmerline::report::data::rating_file::RatingFile;

use crate::pipeline::invariants::*;
use crate::pipeline::made::*;

/// The first NaN or infinity among the numbers of a debug print. (JSON would show it as
/// `null`, like a quantity that was not measured.) Text in quotes is passed over.
pub fn non_finite(value: &impl Debug) -> Option<String> {
    let text = format!("{value:?}");
    let mut outside_quotes = String::new();
    let (mut quoted, mut escaped) = (false, false);
    for character in text.chars() {
        match character {
            _ if escaped => escaped = false,
            '\\' if quoted => escaped = true,
            '"' => quoted = !quoted,
            _ if quoted => {}
            other => outside_quotes.push(other),
        }
    }
    let at = ["NaN", "inf"].into_iter().find_map(|word| {
        let mut places = outside_quotes.match_indices(word);
        places.find_map(|(at, _)| {
            let end = outside_quotes[at + 3..].chars().next();
            let before = outside_quotes[..at].chars().next_back();
            let alone = |next: Option<char>| next.is_none_or(|c| !c.is_alphanumeric() && c != '_');
            (alone(end) && alone(before)).then_some(at)
        })
    })?;
    let from = outside_quotes[..at].char_indices().rev().nth(60);
    Some(outside_quotes[from.map_or(0, |(from, _)| from)..at + 3].to_owned())
}

#[test]
fn non_finite_numbers_are_found_and_words_are_not() {
    assert_eq!(non_finite(&Some(1.5)), None);
    assert_eq!(non_finite(&("inf", "a \" NaN \\")), None);
    assert!(non_finite(&[1.0, f64::NAN]).is_some());
    assert!(non_finite(&Some(f64::NEG_INFINITY)).is_some());
}

#[test]
fn no_nan_or_infinity_reaches_rating_json_on_a_messy_day() {
    check(96, messy_day(), |rows| {
        let rated = rate_messy(&rows)?;
        prop_assert_eq!(non_finite(&RatingFile::new(&rated)), None);
        Ok(())
    });
}

#[test]
fn no_nan_or_infinity_reaches_rating_json_on_a_fair_day() {
    let few = (fair_day(0), 0.02..1.0_f64);
    check(48, few, |(mut rows, share)| {
        // From a whole day down to three or four intervals: wide bands.
        rows.truncate((rows.len() as f64 * share) as usize + 2);
        let rated = rate_logs(3.5, &[log_of(&rows)]).unwrap();
        prop_assert_eq!(non_finite(&RatingFile::new(&rated)), None);
        Ok(())
    });
}

#[test]
fn what_was_measured_is_a_number_in_rating_json() {
    // The other half of the claim: `null` stands for what was not measured, only.
    check(48, messy_day(), |rows| {
        let rated = rate_messy(&rows)?;
        let file = json(&rated);
        for (entry, interval) in list(&file["intervals"]).iter().zip(&rated.s580.intervals) {
            let measured = |interval: &Interval| {
                let sun = interval.measured.irradiance.map(|sun| sun.mean);
                let standardised = sun.is_some_and(|mean| mean > 0.0);
                [
                    ("ambient_mean_c", interval.measured.ambient.is_some()),
                    (
                        "temperature_difference_k",
                        interval.measured.ambient.is_some(),
                    ),
                    ("irradiance_mean_w_m2", sun.is_some()),
                    ("irradiance_min_w_m2", sun.is_some()),
                    ("irradiance_max_w_m2", sun.is_some()),
                    ("standardised_power_w", standardised),
                    ("wind_mean_m_s", interval.measured.wind.is_some()),
                ]
            };
            for (key, is_measured) in measured(interval) {
                prop_assert_eq!(entry[key].is_number(), is_measured, "{} {}", key, entry);
            }
        }
        Ok(())
    });
}

/// Every fifth minute one reading, all with the same sun, for two hours.
pub fn log_with_irradiance(irradiance: &str) -> String {
    let mut log = format!("{HEADER}\n");
    for n in 0..24 {
        let time = Timestamp::from_second(BEGIN_S + 300 * n).unwrap();
        writeln!(
            log,
            "{time},{},25.0,{irradiance},0.4",
            35.0 + 2.0 * n as f64
        )
        .unwrap();
    }
    log
}

#[test]
fn irradiance_next_to_nothing_gives_no_infinite_power() {
    // 1e-320 W/m² is a number, and greater than zero; the highest, 800 W/m², is not kW/m².
    let log = log_with_irradiance("1e-320").replacen("1e-320", "800", 1);
    let rated = rate_logs(3.5, &[log]).unwrap();
    assert_eq!(non_finite(&RatingFile::new(&rated)), None);
}

#[test]
fn intercept_area_next_to_nothing_gives_no_infinite_load() {
    let folder = tempfile::tempdir().unwrap();
    let text = campaign_text(3.5, &["day.csv"]);
    let text = text.replace("intercept_area_m2 = 0.5", "intercept_area_m2 = 1e-320");
    write(folder.path(), "campaign.toml", text);
    write(folder.path(), "day.csv", log_with_irradiance("800"));
    match simmerline::assess_folder(folder.path()) {
        Err(Error::Campaign(_)) => {}
        Err(other) => panic!("{other}"),
        Ok(rated) => assert_eq!(non_finite(&RatingFile::new(&rated)), None),
    }
}

/// The irradiance column taken out of a log of [`log_with_irradiance`].
pub fn without_irradiance(log: &str) -> String {
    log.replace(",irradiance_w_m2", "").replace(",800,", ",")
}

#[test]
fn regression_counts_the_intervals_and_days_that_are_on_its_line() {
    // Two days with sun and one without: what was not normalised is no point of the
    // line, so that its day is none of the line's days either.
    let log = log_with_irradiance("800");
    let next_day = log.replace("2026-03-14", "2026-03-15");
    let sunless = without_irradiance(&log.replace("2026-03-14", "2026-03-16"));
    let rated = rate_logs(3.5, &[log, next_day, sunless]).unwrap();
    let file = json(&rated);
    assert_eq!(file["regression"]["intervals"], rated.s580.used().count());
    assert!(rated.s580.not_normalised().count() > 0);
    assert_eq!(rated.s580.used().count(), rated.s580.line().unwrap().points);
    assert_eq!(file["regression"]["days"], 2);
}

#[test]
fn date_of_a_run_is_that_of_its_first_reading_that_counts() {
    // A logger switched on the evening before; `start` leaves that reading out.
    let folder = tempfile::tempdir().unwrap();
    let log = log_with_irradiance("800");
    let evening = HEADER.to_owned() + "\n2026-03-13T23:00:00Z,20,20,5,0.1";
    write(folder.path(), "day.csv", log.replace(HEADER, &evening));
    let text = campaign_text(3.5, &["day.csv"]) + "start = \"2026-03-14 10:20\"\n";
    write(folder.path(), "campaign.toml", text);
    let rated = simmerline::assess_folder(folder.path()).unwrap();
    assert_eq!(rated.tested.runs[0].readings.time_us.len(), 24);
    assert_eq!(rated.tested.runs[0].date.to_string(), "2026-03-14");
}
