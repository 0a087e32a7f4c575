//! What must hold between the rows, the intervals and the line.

use std::cell::RefCell;

use jiff::Timestamp;
use proptest::collection::vec;
use proptest::prelude::*;
use serde_json::Value;
use simmerline::error::Error;
use simmerline::procedure::Assessment;
use simmerline::procedure::s580::intervals::{IntervalLength, chain};
use simmerline::report::data::rating_file::RatingFile;
use simmerline::stats::line::Line;

use crate::pipeline::made::*;

#[test]
fn shuffled_rows_give_the_same_line() {
    let days = (fair_day(0), fair_day(1));
    let shuffled = days.prop_flat_map(|(first, second)| {
        let shuffled = (Just(first.clone()), Just(second.clone()));
        let shuffled = (shuffled.0.prop_shuffle(), shuffled.1.prop_shuffle());
        (Just((first, second)), shuffled)
    });
    check(
        24,
        shuffled,
        |((first, second), (first_mixed, second_mixed))| {
            let rate = |first: &[String], second: &[String]| {
                rate_logs(3.5, &[log_of(first), log_of(second)]).unwrap()
            };
            let in_order = rate(&first, &second);
            let mixed = rate(&first_mixed, &second_mixed);
            prop_assert!(in_order.s580.line().is_some());
            prop_assert_eq!(in_order.s580.line(), mixed.s580.line());
            prop_assert_eq!(in_order.s580.intervals, mixed.s580.intervals);
            Ok(())
        },
    );
}

pub fn close(found: f64, expected: f64) -> bool {
    (found - expected).abs() <= 1e-9 * expected.abs().max(1e-9)
}

#[test]
fn power_scaled_by_k_scales_the_line_by_k() {
    // k comes from the mass of water. The rest of the campaign does not know of it, so
    // the same intervals are used. Tolerance 1e-9: rounding, a few digits lost in sums.
    check(24, (fair_day(0), 0.05..20.0_f64), |(rows, k)| {
        let log = [log_of(&rows)];
        let once = rate_logs(3.5, &log).unwrap();
        let scaled = rate_logs(3.5 * k, &log).unwrap();
        let reasons = |rated: &Assessment| -> Vec<_> {
            rated
                .s580
                .intervals
                .iter()
                .map(|i| i.reasons().to_vec())
                .collect()
        };
        prop_assert_eq!(reasons(&once), reasons(&scaled));
        let (once, scaled): (&Line, &Line) =
            (once.s580.line().unwrap(), scaled.s580.line().unwrap());
        for (once, scaled) in [
            (once.slope, scaled.slope),
            (once.intercept, scaled.intercept),
            (once.slope_standard_error, scaled.slope_standard_error),
            (
                once.intercept_standard_error,
                scaled.intercept_standard_error,
            ),
            (once.residual_sd, scaled.residual_sd),
            (once.predict(50.0), scaled.predict(50.0)),
        ] {
            prop_assert!(close(scaled, k * once), "{scaled} is not {k} times {once}");
        }
        let (once, scaled) = (once.r_squared.unwrap(), scaled.r_squared.unwrap());
        prop_assert!(close(scaled, once), "R² {scaled} is not {once}");
        Ok(())
    });
}

pub fn json(rated: &Assessment) -> Value {
    serde_json::from_str(&RatingFile::new(rated).to_text().unwrap()).unwrap()
}

pub fn list(value: &Value) -> &[Value] {
    value.as_array().unwrap()
}

/// Rates a day; one that cannot be read is no case for what follows.
pub fn rate_messy(rows: &[MessyRow]) -> std::result::Result<Assessment, TestCaseError> {
    match rate_logs(3.5, &[messy_log(rows)]) {
        Ok(rated) => Ok(rated),
        Err(Error::Input(_)) => Err(TestCaseError::reject("no readings")),
        Err(other) => Err(TestCaseError::fail(other.to_string())),
    }
}

#[test]
fn used_and_set_aside_intervals_are_all_that_the_readings_form() {
    check(96, messy_day(), |rows| {
        let rated = rate_messy(&rows)?;
        let file = json(&rated);
        let intervals = list(&file["intervals"]);
        let used = intervals.iter().filter(|i| i["used"] == true).count();
        let set_aside = intervals.iter().filter(|i| i["used"] == false).count();
        prop_assert_eq!(used + set_aside, intervals.len());
        let total = |key: &str| -> u64 {
            let runs = list(&file["runs"]).iter();
            runs.map(|run| run[key].as_u64().unwrap()).sum()
        };
        prop_assert_eq!(total("intervals"), intervals.len() as u64);
        prop_assert_eq!(total("used"), used as u64);
        let rows_with_water = instants(&rows).into_iter().zip(&rows);
        let water_us: Vec<i64> = rows_with_water
            .filter(|(_, (_, cells))| cells[0].is_some())
            .map(|(at_s, _)| at_s * 1_000_000)
            .collect();
        prop_assert_eq!(intervals.len(), chain_word_by_word(&water_us).len());
        for interval in intervals {
            let reasons = list(&interval["reasons"]);
            prop_assert_eq!(interval["used"] == true, reasons.is_empty(), "{}", interval);
        }
        Ok(())
    });
}

/// Reasons for which one interval must be set aside, worked out once more from the
/// rows and the limits of the practice (`check-values`, section 1).
fn expected_reasons(interval: &Value, rows: &[MessyRow], boiling_c: f64) -> Vec<&'static str> {
    const SLACK: f64 = 1e-9;
    let number = |key: &str| interval[key].as_f64();
    let second = |key: &str| -> i64 {
        let time: Timestamp = interval[key].as_str().unwrap().parse().unwrap();
        time.as_second()
    };
    let (from_s, to_s) = (second("start"), second("end"));
    let valid = |quantity: usize| -> Vec<(i64, f64)> {
        let at_s = instants(rows).into_iter();
        let cells = at_s
            .zip(rows)
            .map(|(at_s, (_, cells))| (at_s, cells[quantity]));
        cells
            .filter_map(|(at_s, cell)| Some((at_s, cell?)))
            .collect()
    };
    let within = |quantity: usize| -> Vec<(i64, f64)> {
        let mut valid = valid(quantity);
        valid.retain(|(at_s, _)| (from_s..=to_s).contains(at_s));
        valid
    };
    let ends_c = ["water_start_c", "water_end_c"].map(|key| number(key).unwrap());
    let ambient_c = number("ambient_mean_c");
    let sun: Vec<f64> = within(2).into_iter().map(|(_, value)| value).collect();
    let least = sun.iter().copied().reduce(f64::min);
    let most = sun.iter().copied().reduce(f64::max);
    let mut gust_since_s = None;
    let gusty = valid(3).into_iter().any(|(at_s, wind)| {
        if wind <= 2.5 + SLACK {
            gust_since_s = None;
            return false;
        }
        at_s - *gust_since_s.get_or_insert(at_s) > 600
    });
    let gap = (0..4)
        .filter(|quantity| !valid(*quantity).is_empty())
        .any(|quantity| {
            let times = within(quantity);
            times.is_empty() || times.windows(2).any(|pair| pair[1].0 - pair[0].0 > 660)
        });
    let solar_start_h = number("solar_time_start_h").unwrap();
    let mut solar_end_h = number("solar_time_end_h").unwrap();
    if solar_end_h < solar_start_h {
        // Across solar midnight.
        solar_end_h += 24.0;
    }
    [
        (
            "water-below-window",
            ambient_c.is_some_and(|a| ends_c.iter().any(|w| *w < a + 5.0 - SLACK)),
        ),
        (
            "water-above-window",
            ends_c.iter().any(|w| *w > boiling_c - 5.0 + SLACK),
        ),
        (
            "ambient-out-of-range",
            ambient_c.is_some_and(|a| !(20.0 - SLACK..=35.0 + SLACK).contains(&a)),
        ),
        ("irradiance-low", least.is_some_and(|g| g < 450.0 - SLACK)),
        ("irradiance-high", most.is_some_and(|g| g > 1100.0 + SLACK)),
        (
            "irradiance-unsteady",
            least
                .zip(most)
                .is_some_and(|(low, high)| high - low > 100.0 + SLACK),
        ),
        (
            "wind-high",
            gusty || number("wind_mean_m_s").is_some_and(|wind| wind > 1.0 + SLACK),
        ),
        (
            "outside-solar-window",
            solar_start_h < 10.0 - SLACK || solar_end_h > 14.0 + SLACK,
        ),
        ("reading-gap", gap),
    ]
    .into_iter()
    .filter_map(|(code, applies)| applies.then_some(code))
    .collect()
}

#[test]
fn interval_set_aside_lists_every_reason_and_no_other() {
    let (met, cases) = (RefCell::new(Vec::new()), RefCell::new(0));
    check(96, messy_day(), |rows| {
        let rated = rate_messy(&rows)?;
        let file = json(&rated);
        for interval in list(&file["intervals"]) {
            let expected = expected_reasons(interval, &rows, rated.tested.boiling_point_c);
            let found = list(&interval["reasons"]).iter();
            let found: Vec<&str> = found.map(|code| code.as_str().unwrap()).collect();
            prop_assert_eq!(&found, &expected, "{}", interval);
            met.borrow_mut().extend(expected);
            *cases.borrow_mut() += 1;
        }
        Ok(())
    });
    // The days are messy enough: every reason but the tester's own was met.
    let mut met = met.into_inner();
    met.sort_unstable();
    met.dedup();
    assert_eq!(met.len(), 9, "{met:?} in {} intervals", cases.into_inner());
}

/// The chain of design section 4, read word by word.
fn chain_word_by_word(time_us: &[i64]) -> Vec<(usize, usize)> {
    let mut pairs = Vec::new();
    let mut start = 0;
    'next: while start < time_us.len() {
        let since = |end: usize| time_us[end] - time_us[start];
        let mut best: Option<usize> = None;
        for end in start + 1..time_us.len() {
            let off = |end: usize| (since(end) - 600_000_000).abs();
            let fits = (540_000_000..=660_000_000).contains(&since(end));
            if fits && best.is_none_or(|best| off(end) < off(best)) {
                best = Some(end);
            }
        }
        if let Some(end) = best {
            pairs.push((start, end));
            start = end;
            continue 'next;
        }
        start += 1;
    }
    pairs
}

fn reading_times() -> impl Strategy<Value = Vec<i64>> {
    let step_us = prop_oneof![
        4 => 1_000_000..130_000_000_i64,
        3 => (50..70_i64).prop_map(|tens| tens * 10_000_000),
        2 => 500_000_000..700_000_000_i64,
        1 => 700_000_000..9_000_000_000_i64,
        1 => 1..100_i64,
    ];
    vec(step_us, 0..150).prop_map(|steps_us| {
        let mut at_us = BEGIN_S * 1_000_000;
        let steps = steps_us.into_iter();
        steps
            .map(|step_us| {
                at_us += step_us;
                at_us
            })
            .collect()
    })
}

#[test]
fn chained_intervals_last_nine_to_eleven_minutes_in_order_and_disjoint() {
    check(600, reading_times(), |time_us| {
        let pairs = chain(&time_us, IntervalLength::of_practice());
        let mut free_from = 0;
        for &(start, end) in &pairs {
            prop_assert!(start >= free_from && end > start, "{pairs:?}");
            let lasts_us = time_us[end] - time_us[start];
            prop_assert!((540_000_000..=660_000_000).contains(&lasts_us));
            free_from = end;
        }
        Ok(())
    });
}

#[test]
fn chain_is_that_of_the_design_word_by_word() {
    check(600, reading_times(), |time_us| {
        let pairs = chain(&time_us, IntervalLength::of_practice());
        prop_assert_eq!(pairs, chain_word_by_word(&time_us));
        Ok(())
    });
}
