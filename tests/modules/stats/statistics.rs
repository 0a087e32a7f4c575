//! Days, neighbours, single intervals and pairs, against statsmodels and scipy on published
//! data (`tests/data/statistics.json`, with versions), and against NIST StRD, SiRstv.

use serde_json::Value;
use simmerline::stats::groups::{
    FTest, Sums, compare_nested, one_line, overall, parallel_lines, slope_by_set, sums_by_group,
};
use simmerline::stats::holm::holm;
use simmerline::stats::influence::influences;
use simmerline::stats::line::fit_line;
use simmerline::stats::normal::normal_order_scores;
use simmerline::stats::serial::durbin_watson;
use simmerline::stats::student::{quantile_t, two_sided_p};

use crate::data::{Table, assert_absolute, assert_relative};

/// Sums of 150 squares in another order: ten digits are left.
const SUMS: f64 = 1e-9;
/// Distribution functions by another method.
const TAILS: f64 = 1e-8;

fn reference() -> Value {
    serde_json::from_str(include_str!("../../data/statistics.json")).unwrap()
}

fn numbers(value: &Value) -> Vec<f64> {
    let items = value.as_array().unwrap().iter();
    items.map(|item| item.as_f64().unwrap()).collect()
}

fn places(value: &Value) -> Vec<usize> {
    numbers(value)
        .into_iter()
        .map(|place| place as usize)
        .collect()
}

fn iris() -> (Value, Vec<f64>, Vec<f64>) {
    let iris = reference()["iris"].clone();
    let (x, y) = (numbers(&iris["x"]), numbers(&iris["y"]));
    assert_eq!(x.len(), 150);
    (iris, x, y)
}

fn assert_is(found: FTest, expected: &Value) {
    assert_relative("F", found.statistic, expected["f"].as_f64().unwrap(), SUMS);
    let freedom = [found.numerator_freedom, found.denominator_freedom];
    assert_eq!(freedom.as_slice(), places(&expected["degrees_of_freedom"]));
    let p = expected["p"].as_f64().unwrap();
    assert_absolute("p", found.p, p, TAILS * p.max(1e-6));
}

#[test]
fn day_effect_is_the_f_test_of_one_line_against_parallel_lines() {
    let (iris, x, y) = iris();
    let groups = sums_by_group(&x, &y, &places(&iris["species"]));
    let test = compare_nested(one_line(&groups).unwrap(), parallel_lines(&groups).unwrap());
    assert_is(test.unwrap(), &iris["one_line_or_parallel"]);
}

#[test]
fn analysis_of_covariance_tests_the_slopes_of_groups() {
    let (iris, x, y) = iris();
    let groups = sums_by_group(&x, &y, &places(&iris["species"]));
    let each: Vec<&[Sums]> = groups.chunks(1).collect();
    let test = compare_nested(
        parallel_lines(&groups).unwrap(),
        slope_by_set(&each).unwrap(),
    );
    assert_is(test.unwrap(), &iris["parallel_or_separate"]);
}

#[test]
fn slopes_of_campaigns_are_tested_with_an_intercept_for_every_day() {
    // The first species is a campaign of two days, the other two are one of two days.
    let (iris, x, y) = iris();
    let days = sums_by_group(&x, &y, &places(&iris["half"]));
    let campaigns = slope_by_set(&[&days[..2], &days[2..]]).unwrap();
    let test = compare_nested(parallel_lines(&days).unwrap(), campaigns);
    assert_is(test.unwrap(), &iris["parallel_or_slope_by_set"]);
}

#[test]
fn cooks_distance_and_the_line_without_a_point_agree() {
    let (iris, x, y) = iris();
    let line = fit_line(&x, &y).unwrap();
    let found = influences(&line, &x, &y, iris["at"].as_f64().unwrap());
    let distances = numbers(&iris["cooks_distance"]);
    for ((found, distance), shift) in found.iter().zip(distances).zip(numbers(&iris["shift"])) {
        assert_relative("distance", found.distance, distance, 1e-7);
        // The difference of two numbers near 4, each to rounding.
        assert_absolute("shift", found.shift, shift, 1e-11);
    }
}

#[test]
fn weights_of_the_line_add_up_to_one_and_give_the_line() {
    let (_, x, y) = iris();
    let line = fit_line(&x, &y).unwrap();
    let weights: Vec<f64> = x.iter().map(|&x| line.weight(x, 7.5)).collect();
    assert_relative("sum", weights.iter().sum(), 1.0, SUMS);
    let read: f64 = weights.iter().zip(&y).map(|(weight, y)| weight * y).sum();
    assert_relative("line", read, line.predict(7.5), SUMS);
    let squares: f64 = weights.iter().map(|weight| weight * weight).sum();
    assert_relative("leverage", squares, line.leverage(7.5), SUMS);
}

#[test]
fn durbin_watson_agrees_with_statsmodels_and_its_distribution_with_draws() {
    let nile = &reference()["nile"];
    let (year, volume) = (numbers(&nile["year"]), numbers(&nile["volume"]));
    let line = fit_line(&year, &volume).unwrap();
    let residuals = |scale: f64| -> Vec<f64> {
        let residual = |(x, y): (&f64, &f64)| scale * (y - line.predict(*x));
        year.iter().zip(&volume).map(residual).collect()
    };
    let follows = vec![true; year.len()];
    let found = durbin_watson(&year, &residuals(1.0), &follows, 2).unwrap();
    let expected = nile["durbin_watson"].as_f64().unwrap();
    assert_relative("d", found.statistic, expected, SUMS);
    assert!(
        found.p < 0.01,
        "flows of neighbouring years are alike: {}",
        found.p
    );
    // Of 200 000 simulated series, so many have a d below 1.7 and 2.2. Residuals with just
    // that d: a slow and a fast wave, mixed. Tolerance: 0.01, of which the draws have
    // 0.001 and the normal distribution in the place of the exact one the rest.
    for (d, share) in [(1.7, "p_of_1_7"), (2.2, "p_of_2_2")] {
        let p = p_of(&year, d);
        assert_absolute(share, p, nile[share].as_f64().unwrap(), 0.01);
    }
}

/// p of residuals whose statistic is `wanted`, found by bisection of a mixture.
fn p_of(x: &[f64], wanted: f64) -> f64 {
    let wave = |i: usize, turn: f64| (turn * i as f64).sin();
    let mixed = |share: f64| -> Vec<f64> {
        (0..x.len())
            .map(|i| (1.0 - share) * wave(i, 0.4) + share * wave(i, 2.9))
            .collect()
    };
    let follows = vec![true; x.len()];
    let test = |share: f64| durbin_watson(x, &mixed(share), &follows, 2).unwrap();
    let (mut low, mut high) = (0.0, 1.0);
    for _ in 0..60 {
        let middle = (low + high) / 2.0;
        if test(middle).statistic < wanted {
            low = middle;
        } else {
            high = middle;
        }
    }
    assert_absolute("d", test(low).statistic, wanted, 1e-6);
    test(low).p
}

#[test]
fn holm_agrees_with_statsmodels() {
    let reference = reference();
    let found = holm(&numbers(&reference["holm"]["p"]));
    for (found, expected) in found.iter().zip(numbers(&reference["holm"]["corrected"])) {
        assert_absolute("p", *found, expected, 1e-12);
    }
}

#[test]
fn student_t_with_any_degrees_of_freedom_agrees_with_scipy() {
    let reference = reference();
    for row in reference["t"].as_array().unwrap() {
        let number = |key: &str| row[key].as_f64().unwrap();
        let found = two_sided_p(-number("t"), number("freedom"));
        assert_relative("p", found, number("two_sided_p"), TAILS);
    }
    for row in reference["quantile_t_80"].as_array().unwrap() {
        let freedom = row["freedom"].as_f64().unwrap();
        assert_relative(
            "t",
            quantile_t(0.8, freedom),
            row["t"].as_f64().unwrap(),
            TAILS,
        );
    }
}

#[test]
fn normal_order_scores_are_those_of_blom() {
    let expected = numbers(&reference()["scores_7"]);
    for (found, expected) in normal_order_scores(7).iter().zip(expected) {
        assert_absolute("score", *found, expected, TAILS);
    }
}

#[test]
fn squares_between_and_within_are_those_certified_for_sirstv() {
    // NIST StRD, SiRstv, one way: between 5.11462616000000E-02, within
    // 2.16636560000000E-01. Lines have a slope, so x is chosen at right angles to the
    // groups and, within each, to y: then the slope is zero and the squares are those of
    // the one-way analysis. Tolerance: 196 squared loses five digits of sixteen.
    let table = Table::new(include_str!("../../data/nist_strd_sirstv.csv"));
    let y = table.column("resistance", 25);
    let group: Vec<usize> = (0..25).map(|i| i / 5).collect();
    let x: Vec<f64> = y.chunks(5).flat_map(at_right_angles).collect();
    let groups = sums_by_group(&x, &y, &group);
    let slope = overall(&groups).xy / overall(&groups).xx;
    assert_absolute("slope", slope, 0.0, 1e-9);
    let within = parallel_lines(&groups).unwrap().residual_squares;
    let total = one_line(&groups).unwrap().residual_squares;
    assert_relative("within", within, 2.166_365_6e-1, 1e-9);
    assert_relative("between", total - within, 5.114_626_16e-2, 1e-8);
}

/// Five numbers of mean zero whose products with `y` add up to zero.
fn at_right_angles(y: &[f64]) -> Vec<f64> {
    let mean = y.iter().sum::<f64>() / 5.0;
    let off: Vec<f64> = y.iter().map(|y| y - mean).collect();
    let start = [2.0, -1.0, 0.0, -1.0, 0.0];
    let along = start.iter().zip(&off).map(|(a, b)| a * b).sum::<f64>()
        / off.iter().map(|off| off * off).sum::<f64>();
    start
        .iter()
        .zip(&off)
        .map(|(start, off)| start - along * off)
        .collect()
}
