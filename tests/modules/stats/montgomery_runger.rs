//! Montgomery and Runger, Applied Statistics and Probability for Engineers:
//! oxygen purity against hydrocarbon level, table 11-1, examples 11-1 to 11-6.
//!
//! Two tolerances: what the book prints, half of its last digit and a whole one for
//! the bounds, which it works out from rounded steps; and the same worked out from
//! table 11-1 in 40-digit arithmetic (`tests/data/recompute.py`), to rounding. Which of
//! the six examples a value belongs to is from memory.

use simmerline::stats::line::{Line, fit_line};

use crate::data::{Table, assert_absolute, assert_relative};

/// Ten digits of twelve that were recomputed; Student's t costs the last ones.
const RECOMPUTED: f64 = 1e-10;

fn oxygen_purity() -> Line {
    let table = Table::new(include_str!("../../data/oxygen_purity.csv"));
    let (level, purity) = ("hydrocarbon_pct_x", "purity_pct_y");
    fit_line(&table.column(level, 20), &table.column(purity, 20)).unwrap()
}

#[test]
fn line_agrees_with_example_11_1() {
    let line = oxygen_purity();
    assert_absolute("β0 as printed", line.intercept, 74.283, 0.000_5);
    assert_absolute("β1 as printed", line.slope, 14.947, 0.000_5);
    assert_relative("β0", line.intercept, 74.283_314_240_394_8, RECOMPUTED);
    assert_relative("β1", line.slope, 14.947_479_732_111_4, RECOMPUTED);
}

#[test]
fn residual_variance_agrees_with_the_text_after_example_11_1() {
    let variance = oxygen_purity().residual_sd.powi(2);
    assert_absolute("σ² as printed", variance, 1.18, 0.005);
    assert_relative("σ²", variance, 1.180_545_381_956_68, RECOMPUTED);
}

#[test]
fn r_squared_agrees_with_the_book() {
    let r_squared = oxygen_purity().r_squared.unwrap();
    assert_absolute("R² as printed", r_squared, 0.877, 0.000_5);
    assert_relative("R²", r_squared, 0.877_435_705_171_555, RECOMPUTED);
}

#[test]
fn confidence_interval_of_the_mean_at_1_agrees_with_example_11_5() {
    let line = oxygen_purity();
    let interval = line.confidence(1.0);
    assert_absolute("mean as printed", line.predict(1.0), 89.23, 0.005);
    assert_absolute("lower as printed", interval.lower, 88.48, 0.01);
    assert_absolute("upper as printed", interval.upper, 89.98, 0.01);
    assert_relative("mean", line.predict(1.0), 89.230_793_972_5, RECOMPUTED);
    assert_relative("lower", interval.lower, 88.486_121_746, RECOMPUTED);
    assert_relative("upper", interval.upper, 89.975_466_199, RECOMPUTED);
}

#[test]
fn prediction_interval_of_the_next_observation_at_1_agrees_with_example_11_6() {
    let interval = oxygen_purity().prediction(1.0);
    assert_absolute("lower as printed", interval.lower, 86.83, 0.01);
    assert_absolute("upper as printed", interval.upper, 91.63, 0.01);
    assert_relative("lower", interval.lower, 86.829_687_018_1, RECOMPUTED);
    assert_relative("upper", interval.upper, 91.631_900_926_9, RECOMPUTED);
}
