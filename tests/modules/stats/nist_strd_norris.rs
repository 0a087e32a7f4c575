//! NIST Statistical Reference Datasets, linear regression, dataset Norris
//! (36 observations, lower level of difficulty).

use simmerline::stats::line::{Line, fit_line};

use crate::data::{Table, assert_relative};

/// The certificate prints 15 digits. Doubles reach eleven to thirteen of them here,
/// where Σ(x − x̄)(y − ȳ) and the residuals lose a few to cancellation.
const TOLERANCE: f64 = 1e-11;

fn norris() -> Line {
    let table = Table::new(include_str!("../../data/nist_strd_norris.csv"));
    fit_line(&table.column("x", 36), &table.column("y", 36)).unwrap()
}

#[test]
fn intercept_and_slope_are_those_of_the_certificate() {
    let line = norris();
    assert_relative("B0", line.intercept, -0.262_323_073_774_029, TOLERANCE);
    assert_relative("B1", line.slope, 1.002_116_818_020_45, TOLERANCE);
}

#[test]
fn standard_deviations_of_both_are_those_of_the_certificate() {
    let line = norris();
    let (of_b0, of_b1) = (line.intercept_standard_error, line.slope_standard_error);
    assert_relative("sd of B0", of_b0, 0.232_818_234_301_152, TOLERANCE);
    assert_relative("sd of B1", of_b1, 0.429_796_848_199_937e-3, TOLERANCE);
}

#[test]
fn residual_standard_deviation_is_that_of_the_certificate() {
    let expected = 0.884_796_396_144_373;
    assert_relative("residual sd", norris().residual_sd, expected, TOLERANCE);
}

#[test]
fn r_squared_is_that_of_the_certificate() {
    // 1 − R² is 6e-6 and carries eleven digits: R² itself is good to the last one or two.
    let r_squared = norris().r_squared.unwrap();
    assert_relative("R²", r_squared, 0.999_993_745_883_712, 1e-14);
}
