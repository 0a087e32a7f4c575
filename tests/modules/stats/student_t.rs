//! Student's t, two-sided 95 %: NIST/SEMATECH e-Handbook of Statistical Methods,
//! 1.3.6.7.2, column 0.975, at eleven degrees of freedom.

use simmerline::stats::student::two_sided_t;

use crate::data::{Table, assert_absolute};

/// The table has nine decimals, computed with scipy: half of the last one.
const OF_THE_FILE: f64 = 0.5e-9;
/// The handbook prints three decimals.
const OF_THE_HANDBOOK: f64 = 0.5e-3;

#[test]
fn critical_values_are_those_of_the_table() {
    let table = Table::new(include_str!("../../data/student_t.csv"));
    for row in table.rows(11) {
        let degrees_of_freedom = row.number("df");
        let t = two_sided_t(0.95, degrees_of_freedom as usize);
        let what = format!("t with {degrees_of_freedom} degrees of freedom");
        assert_absolute(&what, t, row.number("t_975"), OF_THE_FILE);
    }
}

#[test]
fn critical_values_round_to_those_that_the_handbook_prints() {
    // Rows 1, 5, 10, 28 and 60 of the printed table, column 0.975, from memory.
    for (degrees_of_freedom, printed) in [
        (1, 12.706),
        (5, 2.571),
        (10, 2.228),
        (28, 2.048),
        (60, 2.000),
    ] {
        let t = two_sided_t(0.95, degrees_of_freedom);
        let what = format!("t with {degrees_of_freedom} degrees of freedom");
        assert_absolute(&what, t, printed, OF_THE_HANDBOOK);
    }
}
