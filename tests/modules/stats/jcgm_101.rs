//! JCGM 101:2008, 9.2: sums of four inputs, with the intervals that the supplement states
//! (from memory), and the numerical tolerance of 7.9.2.

use simmerline::stats::monte_carlo::{
    BLOCK, Generator, Outcome, Plan, normal, propagate, rectangular, tolerance,
};

use crate::data::assert_absolute;

/// Twice what the ends of 400 000 trials scatter by, in units of the standard deviation.
const OF_DRAWS: f64 = 0.01;

fn sum_of(draw: impl Fn(&mut Generator) -> f64 + Sync) -> Outcome {
    let plan = Plan {
        seed: 9,
        tolerance: [0.0],
        block: BLOCK,
        most_trials: 400_000,
    };
    let draw = &draw;
    let [sum] = propagate(plan, || move |generator: &mut Generator| [draw(generator)]);
    sum
}

#[test]
fn four_normal_inputs_give_the_interval_of_9_2_2() {
    // u = 2.00, interval ± 3.92.
    let sum = sum_of(|generator| (0..4).map(|_| normal(generator)).sum());
    assert_eq!((sum.trials, sum.is_stable), (400_000, false));
    assert_absolute("mean", sum.mean, 0.0, 2.0 * OF_DRAWS);
    assert_absolute("u", sum.sd, 2.00, 0.005 + OF_DRAWS);
    assert_absolute("lower", sum.lower, -3.92, 0.005 + 2.0 * OF_DRAWS);
    assert_absolute("upper", sum.upper, 3.92, 0.005 + 2.0 * OF_DRAWS);
}

#[test]
fn four_rectangular_inputs_give_the_narrower_interval_of_9_2_3() {
    // u = 2.00, interval ± 3.88, where the normal one is ± 3.92.
    let sum = sum_of(|generator| (0..4).map(|_| rectangular(generator)).sum());
    assert_absolute("u", sum.sd, 2.00, 0.005 + OF_DRAWS);
    assert_absolute("lower", sum.lower, -3.88, 0.005 + 2.0 * OF_DRAWS);
    assert_absolute("upper", sum.upper, 3.88, 0.005 + 2.0 * OF_DRAWS);
}

#[test]
fn one_large_rectangular_input_is_where_the_budget_fails_as_9_2_4_has_it() {
    // Three of u = 1 and one of u = 10: u = 10.1, interval ± 17.0, where the budget has
    // ± 19.8; with two digits of 10.1 the tolerance is 0.5, so they are apart.
    let sum = sum_of(|generator| {
        let small: f64 = (0..3).map(|_| rectangular(generator)).sum();
        small + 10.0 * rectangular(generator)
    });
    assert_absolute("u", sum.sd, 10.1, 0.05 + 10.0 * OF_DRAWS);
    assert_absolute("lower", sum.lower, -17.0, 0.05 + 10.0 * OF_DRAWS);
    assert_absolute("upper", sum.upper, 17.0, 0.05 + 10.0 * OF_DRAWS);
    assert_absolute("tolerance", tolerance(10.1, 2), 0.5, 1e-12);
    assert!((19.8 - sum.upper).abs() > tolerance(10.1, 2));
}

#[test]
fn tolerance_is_half_of_the_last_digit_as_7_9_2_has_it() {
    // 0.000 35 to two digits is 35·10⁻⁵, tolerance ½·10⁻⁵; 2 K to one digit, ½.
    assert_absolute("0.000 35", tolerance(0.000_35, 2), 0.5e-5, 1e-15);
    assert_absolute("2", tolerance(2.0, 1), 0.5, 1e-12);
}

#[test]
fn one_seed_gives_one_outcome_and_draws_stop_when_the_ends_are_known() {
    let plan = Plan {
        seed: 4,
        tolerance: [0.1],
        block: 2_000,
        most_trials: 1_000_000,
    };
    let drawn = || propagate(plan, || |generator: &mut Generator| [normal(generator)]);
    let ([one], [two]) = (drawn(), drawn());
    assert_eq!(one, two);
    assert!(one.is_stable && one.trials < 100_000, "{one:?}");
    assert_absolute("upper", one.upper, 1.96, 0.1);
}
