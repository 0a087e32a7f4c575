//! JCGM 100:2008 (GUM), annex H: whole budgets, with and without correlation. All values
//! from memory of the guide; tolerances are half of the last printed digit.

use simmerline::stats::combine::{combined, effective_freedom};
use simmerline::stats::student::two_sided_t;

use crate::data::assert_absolute;

#[test]
fn end_gauge_of_h_1_has_its_combined_and_expanded_uncertainty() {
    // Contributions in nm with their degrees of freedom: standard 25 (18), comparator 9.7
    // (25.6), temperature differences 2.9 (50) and 16.6 (2).
    let parts = [(25.0, 18.0), (9.7, 25.6), (2.9, 50.0), (16.6, 2.0)];
    let u = combined(&parts.map(|(u, _)| u), |_, _| 0.0);
    assert_absolute("u_c, nm", u, 32.0, 0.5);
    // The guide finds 16.7 degrees of freedom from inputs of more digits, and takes 16.
    let freedom = effective_freedom(u, &parts);
    assert_absolute("ν_eff", freedom, 16.7, 0.1);
    let t = two_sided_t(0.99, freedom as usize);
    assert_absolute("t99(16)", t, 2.92, 0.005);
    assert_absolute("U99, nm", t * 32.0, 93.0, 0.5);
}

/// Mean of five observations and its standard uncertainty.
fn mean(values: [f64; 5]) -> (f64, f64) {
    let mean = values.iter().sum::<f64>() / 5.0;
    let squares: f64 = values.iter().map(|value| (value - mean).powi(2)).sum();
    (mean, (squares / 20.0).sqrt())
}

/// Correlation of two means of simultaneous observations.
fn correlation(one: [f64; 5], two: [f64; 5]) -> f64 {
    let ((mean_one, u_one), (mean_two, u_two)) = (mean(one), mean(two));
    let products = one
        .iter()
        .zip(two)
        .map(|(a, b)| (a - mean_one) * (b - mean_two));
    products.sum::<f64>() / 20.0 / (u_one * u_two)
}

#[test]
fn resistance_and_reactance_of_h_2_need_the_correlation() {
    // Table H.2: voltage V, current A, phase rad, observed five times together.
    let voltage = [5.007, 4.994, 5.005, 4.990, 4.999];
    let current = [19.663e-3, 19.639e-3, 19.640e-3, 19.685e-3, 19.678e-3];
    let phase = [1.0456, 1.0438, 1.0468, 1.0428, 1.0433];
    let ((v, u_v), (i, u_i), (phi, u_phi)) = (mean(voltage), mean(current), mean(phase));
    let r_vi = correlation(voltage, current);
    let r_vphi = correlation(voltage, phase);
    let r_iphi = correlation(current, phase);
    assert_absolute("r(V, I)", r_vi, -0.36, 0.005);
    assert_absolute("r(V, φ)", r_vphi, 0.86, 0.005);
    assert_absolute("r(I, φ)", r_iphi, -0.65, 0.005);
    let r = |one: usize, two: usize| match one + two {
        1 => r_vi,
        2 => r_vphi,
        _ => r_iphi,
    };
    let z = v / i;
    let (sine, cosine) = phi.sin_cos();
    let (relative_v, relative_i) = (u_v / v, u_i / i);
    for (name, value, printed, effects, u_printed) in [
        (
            "R",
            z * cosine,
            127.732,
            [
                z * cosine * relative_v,
                -z * cosine * relative_i,
                -z * sine * u_phi,
            ],
            0.071,
        ),
        (
            "X",
            z * sine,
            219.847,
            [
                z * sine * relative_v,
                -z * sine * relative_i,
                z * cosine * u_phi,
            ],
            0.295,
        ),
        (
            "Z",
            z,
            254.260,
            [z * relative_v, -z * relative_i, 0.0],
            0.236,
        ),
    ] {
        assert_absolute(name, value, printed, 0.0006);
        assert_absolute(name, combined(&effects, r), u_printed, 0.0006);
    }
    // Without the correlation the answer is another.
    let effects = [z * relative_v, -z * relative_i];
    assert!((combined(&effects, |_, _| 0.0) - 0.236).abs() > 0.02);
}
