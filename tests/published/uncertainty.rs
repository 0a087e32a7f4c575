//! The budget of Ps(50) and the heating times, against numbers worked out by hand.
//!
//! Eight invented points, four at each end, give a line whose numbers are whole:
//!
//! ```text
//! Td 30 K:  123  117  121  119 W   mean 120, residuals  3 −3  1 −1
//! Td 50 K:   81   79   81   79 W   mean  80, residuals  1 −1  1 −1
//! b = (80 − 120)/20 = −2 W/K, a = 120 + 2·30 = 180 W, Ps(50) = 80 W
//! s² = (9 + 9 + 1 + 1 + 1 + 1 + 1 + 1)/(8 − 2) = 4 W², mean Td 40 K, Sxx = 8·10² = 800 K²
//! u(Ps50) = 2·√(1/8 + (50 − 40)²/800) = 2·√(1/4) = 1 W, with 6 degrees of freedom
//! ```
//!
//! Sources, clause numbers and printed values from memory: JCGM 100:2008, G.4.1
//! (Welch–Satterthwaite) and G.6.4 (degrees of freedom rounded down); Abramowitz and
//! Stegun, Handbook of Mathematical Functions, 26.7.3 to 26.7.5 (Student's t).

use simmerline::campaign::model::{Instrument, Instruments, Uncertainty};
use simmerline::procedure::budget::{Budget, draw_up};
use simmerline::procedure::cooking::{Cooking, TimeRange, WaterHeating, cook};
use simmerline::procedure::intervals::{Interval, Summary};
use simmerline::procedure::screen::Reason;
use simmerline::stats::line::{Line, fit_line};
use simmerline::stats::student::two_sided_t;

use crate::data::{assert_absolute, assert_relative};

/// Sums of eight whole numbers are exact, and a dozen operations on them lose two digits.
const ROUNDING: f64 = 1e-13;
/// The inverse of the t distribution is an iteration: a few digits more.
const QUANTILE: f64 = 1e-9;

const DIFFERENCE_K: [f64; 8] = [30.0, 30.0, 30.0, 30.0, 50.0, 50.0, 50.0, 50.0];
const RESIDUAL_W: [f64; 8] = [3.0, -3.0, 1.0, -1.0, 1.0, -1.0, 1.0, -1.0];
const RESIDUAL_SD_W: f64 = 2.0;
const DEGREES_OF_FREEDOM: f64 = 6.0;

/// Mean ambient temperature of the invented intervals, °C.
const AMBIENT_C: f64 = 26.0;
/// From 20 °C to 95 °C, K above ambient.
const FROM_K: f64 = -6.0;
const TO_K: f64 = 69.0;
/// The practice fixes it, J/(kg K).
const SPECIFIC_HEAT_J_PER_KG_K: f64 = 4186.0;
/// Water boils far above the target.
const BOILING_POINT_C: f64 = 99.6;
const TESTED_KG: f64 = 6.5;

/// A line through a and b with the residuals above, times `scatter`.
fn line_of(intercept_w: f64, slope_w_per_k: f64, scatter: f64) -> Line {
    let of_point = |(x, e): (&f64, &f64)| intercept_w + slope_w_per_k * x + scatter * e;
    let power_w: Vec<f64> = DIFFERENCE_K.iter().zip(&RESIDUAL_W).map(of_point).collect();
    fit_line(&DIFFERENCE_K, &power_w).unwrap()
}

fn by_hand() -> Line {
    line_of(180.0, -2.0, 1.0)
}

fn stated(uncertainty: Uncertainty) -> Instrument {
    Instrument {
        uncertainty: Some(uncertainty),
        ..Instrument::default()
    }
}

/// Wind is stated too: it does not enter the line.
fn four_instruments() -> Instruments {
    Instruments {
        irradiance: stated(Uncertainty::Relative(0.03)),
        water_mass: stated(Uncertainty::Relative(0.005)),
        water_temperature: stated(Uncertainty::Kelvin(0.5)),
        ambient_temperature: stated(Uncertainty::Kelvin(0.5)),
        wind_speed: stated(Uncertainty::MetresPerSecond(0.2)),
        ..no_instruments()
    }
}

fn no_instruments() -> Instruments {
    Instruments {
        irradiance_plane: None,
        irradiance: Instrument::default(),
        water_temperature: Instrument::default(),
        ambient_temperature: Instrument::default(),
        water_mass: Instrument::default(),
        wind_speed: Instrument::default(),
    }
}

fn contribution_w(budget: &Budget, source: &str) -> f64 {
    let mut parts = budget.contributions.iter();
    let part = parts.find(|part| part.source.contains(source));
    part.unwrap_or_else(|| panic!("no contribution of {source}"))
        .of_rating_w
}

/// Welch–Satterthwaite, G.4.1 equation G.2b, from standard uncertainties and their
/// degrees of freedom: ν_eff = u_c⁴/Σ(u_i⁴/ν_i).
fn effective_degrees_of_freedom(parts: &[(f64, f64)]) -> f64 {
    let squares: f64 = parts.iter().map(|(u, _)| u * u).sum();
    let quotients = parts.iter().map(|(u, nu)| u.powi(4) / nu);
    squares * squares / quotients.sum::<f64>()
}

/// Probability that |t| is no larger, for a whole number ν of degrees of freedom, as a
/// finite sum: 26.7.3 (ν odd) and 26.7.4 (ν even), θ = arctan(t/√ν).
fn coverage(t: f64, degrees_of_freedom: u32) -> f64 {
    let (sine, cosine) = (t / f64::from(degrees_of_freedom).sqrt()).atan().sin_cos();
    let is_odd = degrees_of_freedom % 2 == 1;
    let (mut term, mut sum) = if is_odd { (cosine, 0.0) } else { (1.0, 0.0) };
    let mut power = u32::from(is_odd);
    while power + 2 <= degrees_of_freedom {
        sum += term;
        term *= cosine * cosine * f64::from(power + 1) / f64::from(power + 2);
        power += 2;
    }
    if is_odd {
        (sine.atan2(cosine) + sine * sum) * std::f64::consts::FRAC_2_PI
    } else {
        sine * sum
    }
}

#[test]
fn the_line_of_the_comment_is_the_line_that_is_fitted() {
    let line = by_hand();
    assert_eq!(line.points, 8);
    assert_relative("a", line.intercept, 180.0, ROUNDING);
    assert_relative("b", line.slope, -2.0, ROUNDING);
    assert_relative("Ps(50)", line.predict(50.0), 80.0, ROUNDING);
    assert_relative("s", line.residual_sd, RESIDUAL_SD_W, ROUNDING);
    assert_relative("u(Ps50)", line.standard_error(50.0), 1.0, ROUNDING);
}

#[test]
fn each_instrument_adds_what_it_does_by_hand() {
    // Irradiance 0.03·80 W, mass 0.005·80 W, either temperature 0.5 K·2 W/K.
    let budget = draw_up(&by_hand(), &four_instruments());
    for (source, expected_w) in [
        ("scatter", 1.0),
        ("irradiance", 2.4),
        ("mass", 0.4),
        ("water temperature", 1.0),
        ("ambient temperature", 1.0),
    ] {
        let found_w = contribution_w(&budget, source);
        assert_relative(source, found_w, expected_w, ROUNDING);
    }
    assert_eq!(budget.contributions.len(), 5);
    assert!(budget.not_stated.is_empty());
    let by_statistics: Vec<&str> = budget
        .contributions
        .iter()
        .filter(|part| part.evaluation == 'A')
        .map(|part| part.source)
        .collect();
    assert_eq!(by_statistics, [budget.contributions[0].source]);
    assert!(budget.knows_instruments());
}

#[test]
fn combined_and_expanded_uncertainty_are_those_by_hand() {
    // u_c² = 1 + 5.76 + 0.16 + 1 + 1 = 8.92 W², u_c = 2.986 636 905 W.
    // ν_eff = 8.92²/(1⁴/6) = 6·79.5664 = 477.3984, rounded down to 477.
    // k by 26.7.5, in z = 1.959 963 985 and 1/477: z + (z³ + z)/(4ν)
    // + (5z⁵ + 16z³ + 3z)/(96ν²) + … = 1.964 949 728. U = u_c·k = 5.868 591 373 W.
    // Tolerance: half of the last digit written here, and of both factors in U.
    let budget = draw_up(&by_hand(), &four_instruments());
    assert_absolute("u_c", budget.combined_w, 2.986_636_905, 0.51e-9);
    let found = budget.effective_degrees_of_freedom;
    assert_relative("ν_eff", found, 477.398_4, 10.0 * ROUNDING);
    assert_absolute("k", budget.coverage_factor, 1.964_949_728, 0.51e-9);
    assert_absolute("U", budget.expanded_w(), 5.868_591_373, 3e-9);
    let covered = coverage(budget.coverage_factor, 477);
    assert_absolute("coverage of k", covered, 0.95, QUANTILE);
}

#[test]
fn uncertainty_common_to_all_powers_is_that_of_irradiance_and_mass_alone() {
    // √(0.03² + 0.005²) = √0.000925 = 0.030 413 812 65.
    let budget = draw_up(&by_hand(), &four_instruments());
    assert_relative("scale", budget.relative_scale(), 0.030_413_812_65, 1e-9);
    let none = draw_up(&by_hand(), &no_instruments());
    assert_eq!(none.relative_scale(), 0.0);
}

#[test]
fn degrees_of_freedom_are_rounded_down() {
    // The water's temperature alone, 0.29 K: u_c² = 1 + (0.29·2)² = 1.3364 W²,
    // ν_eff = 6·1.3364² = 10.715 790, of which 10 count (to the nearest it were 11):
    // k = 2.228 138 852, row 10 of student_t.csv, which has nine decimals.
    let instruments = Instruments {
        water_temperature: stated(Uncertainty::Kelvin(0.29)),
        ..no_instruments()
    };
    let budget = draw_up(&by_hand(), &instruments);
    let found = budget.effective_degrees_of_freedom;
    assert_absolute("ν_eff", found, 10.715_790, 0.51e-6);
    assert_absolute("k", budget.coverage_factor, 2.228_138_852, QUANTILE);
    assert_absolute("coverage", coverage(2.228_138_852, 10), 0.95, QUANTILE);
}

#[test]
fn formula_of_g_4_1_gives_the_example_that_the_guide_prints() {
    // JCGM 100:2008, G.4.1, example, from memory: y = b·X1·X2·X3 with relative standard
    // uncertainties 0.25, 0.57 and 0.82 % from 10, 5 and 15 observations gives 1.03 %,
    // ν_eff = 19.0, t95(19) = 2.09 and U95 = 2.2 %. Tolerance: half of the last printed
    // digit. Before rounding ν_eff is 18.97, and the guide enters its table with 19.
    let parts = [(0.25, 9.0), (0.57, 4.0), (0.82, 14.0)];
    let combined: f64 = parts.iter().map(|(u, _)| u * u).sum::<f64>().sqrt();
    assert_absolute("u_c", combined, 1.03, 0.005);
    let found = effective_degrees_of_freedom(&parts);
    assert_absolute("ν_eff", found, 19.0, 0.05);
    let t = two_sided_t(0.95, found.round() as usize);
    assert_absolute("t95(19)", t, 2.09, 0.005);
    assert_absolute("U95", t * combined, 2.2, 0.05);
}

#[test]
fn degrees_of_freedom_agree_with_the_formula_for_any_mix_of_instruments() {
    // The formula above, with instruments of 10⁹ degrees of freedom in the place of
    // endlessly many: each adds u_i⁴/10⁹ to u_A⁴/6. In these mixes no instrument exceeds
    // 3.2 u_A, so that is 6·3.2⁴/10⁹ = 6.3e-7 for each of the two.
    for scatter in [0.5, 1.0, 4.0] {
        for irradiance in [None, Some(0.0), Some(0.01), Some(0.02)] {
            for water_k in [None, Some(0.1), Some(0.6)] {
                let line = line_of(180.0, -2.0, scatter);
                let instruments = Instruments {
                    irradiance: Instrument {
                        uncertainty: irradiance.map(Uncertainty::Relative),
                        ..Instrument::default()
                    },
                    water_temperature: Instrument {
                        uncertainty: water_k.map(Uncertainty::Kelvin),
                        ..Instrument::default()
                    },
                    ..no_instruments()
                };
                let budget = draw_up(&line, &instruments);
                let parts = [
                    (scatter, DEGREES_OF_FREEDOM),
                    (irradiance.unwrap_or(0.0) * 80.0, 1e9),
                    (water_k.unwrap_or(0.0) * 2.0, 1e9),
                ];
                let expected = effective_degrees_of_freedom(&parts);
                let found = budget.effective_degrees_of_freedom;
                let what = format!("{scatter}, {irradiance:?}, {water_k:?}");
                assert_relative(&what, found, expected, 1.3e-6);
                let covered = coverage(budget.coverage_factor, found as u32);
                assert_absolute(&what, covered, 0.95, QUANTILE);
            }
        }
    }
}

#[test]
fn without_instruments_the_budget_is_the_regressions_own_interval() {
    // t95(6): 2.446 911 851 leaves 0.95 inside by the finite sum.
    let budget = draw_up(&by_hand(), &no_instruments());
    assert_relative("u_c", budget.combined_w, 1.0, ROUNDING);
    assert_relative("ν", budget.effective_degrees_of_freedom, 6.0, ROUNDING);
    assert_absolute("t95(6)", coverage(2.446_911_851, 6), 0.95, QUANTILE);
    assert_absolute("k", budget.coverage_factor, 2.446_911_851, QUANTILE);
    assert!(!budget.knows_instruments());
    assert_eq!(
        budget.not_stated,
        [
            "irradiance",
            "water mass",
            "water temperature",
            "ambient temperature"
        ]
    );
}

#[test]
fn without_instruments_no_degree_of_freedom_is_lost_to_rounding() {
    // (u_c/u_A)⁴ is 1; a last digit too little would be rounded down to n − 3.
    for step in 1..2000 {
        let scatter = f64::from(step) * 0.0137;
        let line = line_of(180.0 - scatter, -2.0 + scatter / 77.0, scatter);
        let budget = draw_up(&line, &no_instruments());
        let half_width_w = line.confidence(50.0).half_width();
        let what = format!("scatter {scatter}");
        assert_relative(&what, budget.coverage_factor, line.t(), ROUNDING);
        // Half of a difference of two numbers near 80 W.
        assert_absolute(&what, budget.expanded_w(), half_width_w, 80.0 * ROUNDING);
    }
}

#[test]
fn a_line_without_scatter_leaves_the_instruments_alone() {
    // u_c² = 8.92 − 1 = 7.92 W².
    let budget = draw_up(&line_of(180.0, -2.0, 0.0), &four_instruments());
    assert_relative("u_c²", budget.combined_w.powi(2), 7.92, ROUNDING);
}

#[test]
fn coverage_factor_tends_to_the_normal_quantile_and_never_falls_below_it() {
    // For any ν Student's t lies above the normal 1.959 963 985, at 10⁴ degrees of
    // freedom by (z³ + z)/(4·10⁴) = 2.37e-4 (26.7.5). Scatter times 0, 0.05, 0.1 and 0.2
    // leaves ν_eff of at least 6·(7.92/0.04)² = 235 000 degrees of freedom.
    for scatter in [0.0, 0.05, 0.1, 0.2] {
        let budget = draw_up(&line_of(180.0, -2.0, scatter), &four_instruments());
        let above = budget.coverage_factor - 1.959_963_984;
        let what = format!("scatter {scatter}: k is {}", budget.coverage_factor);
        assert!((0.0..2.4e-4).contains(&above), "{what}");
    }
}

#[test]
fn a_rating_below_zero_has_uncertainties_above_zero() {
    // The mirrored line: Ps(50) = −80 W, b = 2 W/K.
    let (falling, mirrored) = (by_hand(), line_of(-180.0, 2.0, 1.0));
    let [expected, found] = [falling, mirrored].map(|line| draw_up(&line, &four_instruments()));
    for part in &expected.contributions {
        let found_w = contribution_w(&found, part.source);
        assert_relative(part.source, found_w, part.of_rating_w, ROUNDING);
    }
    assert_relative("u_c", found.combined_w, expected.combined_w, ROUNDING);
}

/// An invented interval on the line; of it only the ambient temperature matters here.
fn interval(ambient_c: f64) -> Interval {
    let level = |mean: f64| Summary {
        mean,
        min: mean,
        max: mean,
    };
    Interval {
        run: 0,
        start_us: 0,
        end_us: 600_000_000,
        duration_s: 600.0,
        water_start_c: 60.0,
        water_end_c: 64.0,
        water: level(62.0),
        ambient: Some(level(ambient_c)),
        irradiance: Some(level(700.0)),
        wind: None,
        solar_start_h: 11.0,
        solar_end_h: 11.2,
        cooking_power_w: 100.0,
        standardised_power_w: Some(100.0),
        difference_k: Some(62.0 - ambient_c),
        reasons: Vec::new(),
    }
}

fn cooking_of(line: &Line, instruments: &Instruments) -> Cooking {
    let intervals = [interval(AMBIENT_C - 1.0), interval(AMBIENT_C + 1.0)];
    let budget = draw_up(line, instruments);
    cook(line, &budget, &intervals, TESTED_KG, BOILING_POINT_C).unwrap()
}

fn heating(cooking: &Cooking, water_kg: f64) -> WaterHeating {
    let mut heatings = cooking.heatings.iter();
    let found = heatings.find(|heating| heating.water_kg == water_kg);
    *found.unwrap_or_else(|| panic!("no heating of {water_kg} kg"))
}

fn time_of(line: &Line, instruments: &Instruments, water_kg: f64) -> TimeRange {
    let time = heating(&cooking_of(line, instruments), water_kg).time;
    time.expect("the line stays above zero up to the target")
}

/// Half-width of the 95 % band of the line of the comment, by hand:
/// t95(6)·s·√(1/8 + (x − 40)²/800).
fn half_width_w(difference_k: f64) -> f64 {
    2.446_911_851 * RESIDUAL_SD_W * (0.125 + (difference_k - 40.0).powi(2) / 800.0).sqrt()
}

/// Seconds to heat with a power that depends on the temperature difference, by steps of
/// the differential equation dx/dt = P(x)/C (fourth order, 5 s), the last one in part.
fn stepped_s(power_w: impl Fn(f64) -> f64, water_kg: f64) -> f64 {
    const STEP_S: f64 = 5.0;
    let rise = |k: f64| power_w(k) / (water_kg * SPECIFIC_HEAT_J_PER_KG_K);
    let (mut at_k, mut time_s) = (FROM_K, 0.0);
    loop {
        let k1 = rise(at_k);
        let k2 = rise(at_k + STEP_S / 2.0 * k1);
        let k3 = rise(at_k + STEP_S / 2.0 * k2);
        let k4 = rise(at_k + STEP_S * k3);
        let next_k = at_k + STEP_S / 6.0 * (k1 + 2.0 * k2 + 2.0 * k3 + k4);
        if next_k >= TO_K {
            // Over the part of a step that is left the rise is that of its middle.
            let middle_k = (at_k + TO_K) / 2.0;
            return time_s + (TO_K - at_k) / rise(middle_k);
        }
        at_k = next_k;
        time_s += STEP_S;
    }
}

#[test]
fn heating_times_are_those_of_the_closed_form_by_hand() {
    // t = (m·c/b)·ln(P2/P1): P1 = 180 + 2·6 = 192 W at 20 °C, P2 = 180 − 2·69 = 42 W at
    // 95 °C, ln(192/42) = 1.519 825 754; 1 kg: 4186/2·1.519 825 754 = 3180.995 302 s.
    // Tolerance: the ten digits written here.
    let cooking = cooking_of(&by_hand(), &no_instruments());
    assert_relative("ambient", cooking.ambient_c, AMBIENT_C, ROUNDING);
    assert_eq!(
        (cooking.target_c, cooking.boils_below_target),
        (95.0, false)
    );
    let loads: Vec<f64> = cooking.heatings.iter().map(|h| h.water_kg).collect();
    assert_eq!(loads, [1.0, 2.0, 4.0, TESTED_KG]);
    for water_kg in loads {
        let time_s = heating(&cooking, water_kg).time.unwrap().best_s;
        let what = format!("{water_kg} kg");
        assert_relative(&what, time_s, water_kg * 3_180.995_302, 1e-9);
    }
}

#[test]
fn heating_times_are_those_of_stepping_the_differential_equation() {
    // Falling, level and rising power. Tolerance: a fourth-order step errs by
    // (h/τ)⁴/120 < 1e-11 of the rise, h = 5 s, τ ≥ 2093 s; the part of a step at the end
    // by (h/τ)²/24 of 5 s in at least 1000 s, 1.2e-9.
    for (intercept_w, slope_w_per_k) in [(180.0, -2.0), (180.0, 0.0), (60.0, 1.5)] {
        let line = line_of(intercept_w, slope_w_per_k, 1.0);
        for water_kg in [1.0, 2.0, 4.0, TESTED_KG] {
            let best_s = time_of(&line, &no_instruments(), water_kg).best_s;
            let expected_s = stepped_s(|k| intercept_w + slope_w_per_k * k, water_kg);
            let what = format!("{slope_w_per_k} W/K, {water_kg} kg");
            assert_relative(&what, best_s, expected_s, 2e-9);
        }
    }
}

#[test]
fn shortest_and_longest_time_run_along_the_edges_of_the_band() {
    // Both edges by stepping, with the half-width by hand. Tolerance: the code's midpoint
    // rule with 200 steps errs by h²/24·|Δ(1/P)'|, h = 0.375 K, P ≥ 36 W, |P'| ≤ 2.5 W/K:
    // 1.2e-5 K/W of ∫dx/P ≥ 0.38 K/W, 3e-5 of the time.
    let line = by_hand();
    let time = time_of(&line, &no_instruments(), 2.0);
    let shortest_s = stepped_s(|k| 180.0 - 2.0 * k + half_width_w(k), 2.0);
    let longest_s = stepped_s(|k| 180.0 - 2.0 * k - half_width_w(k), 2.0);
    assert!(shortest_s < 0.98 * time.best_s && longest_s > 1.02 * time.best_s);
    assert_relative("shortest", time.shortest_s, shortest_s, 3e-5);
    assert_relative("longest", time.longest_s.unwrap(), longest_s, 3e-5);
}

#[test]
fn irradiance_and_mass_widen_the_range_in_quadrature() {
    // ln(t/best)² = ln(edge/best)² + (1.959 963 985·0.030 413 813)². Tolerance as above,
    // on a logarithm of at least 0.05.
    let plain = time_of(&by_hand(), &no_instruments(), 2.0);
    let widened = time_of(&by_hand(), &four_instruments(), 2.0);
    assert_relative("best", widened.best_s, plain.best_s, ROUNDING);
    let scale: f64 = 1.959_963_985 * 0.030_413_812_65;
    for (narrow_s, wide_s, sign) in [
        (plain.shortest_s, widened.shortest_s, -1.0),
        (plain.longest_s.unwrap(), widened.longest_s.unwrap(), 1.0),
    ] {
        let logarithm = (narrow_s / plain.best_s).ln().hypot(scale);
        let expected_s = plain.best_s * (sign * logarithm).exp();
        assert_relative("edge", wide_s, expected_s, 1e-6);
    }
}

#[test]
fn temperature_sensors_alone_do_not_widen_the_range() {
    let sensors = Instruments {
        water_temperature: stated(Uncertainty::Kelvin(0.5)),
        ambient_temperature: stated(Uncertainty::Kelvin(0.5)),
        ..no_instruments()
    };
    let plain = time_of(&by_hand(), &no_instruments(), 1.0);
    assert_eq!(time_of(&by_hand(), &sensors, 1.0), plain);
}

#[test]
fn a_perfect_line_leaves_the_scale_alone() {
    // exp(±1.959 963 985·0.030 413 813) = exp(±0.059 609 978). Tolerance: both edges are
    // the line itself, by the midpoint rule, 3e-5 off (above): √(0.0596² + 3e-5²) differs
    // from 0.0596 by 1e-8; the quantile and the scale have nine digits.
    let perfect = line_of(180.0, -2.0, 0.0);
    assert_eq!(perfect.residual_sd, 0.0);
    let time = time_of(&perfect, &four_instruments(), 4.0);
    let factor = 0.059_609_978_f64.exp();
    assert_relative("shortest", time.shortest_s, time.best_s / factor, 3e-8);
    assert_relative(
        "longest",
        time.longest_s.unwrap(),
        time.best_s * factor,
        3e-8,
    );
}

#[test]
fn a_perfect_line_without_instruments_has_one_time_only() {
    // Tolerance: the midpoint rule, as above.
    let time = time_of(&line_of(180.0, -2.0, 0.0), &no_instruments(), 1.0);
    assert_relative("shortest", time.shortest_s, time.best_s, 3e-5);
    assert_relative("longest", time.longest_s.unwrap(), time.best_s, 3e-5);
}

#[test]
fn a_range_contains_its_best_time() {
    for intercept_w in [141.0, 150.0, 180.0, 400.0] {
        for slope_w_per_k in [-2.0, -1.0, 0.0, 0.7] {
            for scatter in [0.0, 1e-6, 0.3, 1.0, 8.0] {
                let line = line_of(intercept_w, slope_w_per_k, scatter);
                for instruments in [no_instruments(), four_instruments()] {
                    let time = time_of(&line, &instruments, 2.0);
                    let what = format!("{intercept_w} W, {slope_w_per_k} W/K, {scatter}");
                    assert!(time.shortest_s <= time.best_s, "{what}: {time:?}");
                    assert!(time.shortest_s > 0.0, "{what}: {time:?}");
                    let reaches = time.longest_s.is_none_or(|longest| longest >= time.best_s);
                    assert!(reaches, "{what}: {time:?}");
                }
            }
        }
    }
}

#[test]
fn a_lower_edge_that_reaches_zero_leaves_no_longest_time() {
    // At 69 K the half-width is 2.446 911 851·2·√(1/8 + 29²/800) = 5.307 599 W: a line
    // that reads 5.4 W there has a lower edge above zero, one that reads 5.2 W has not.
    assert_absolute("half-width", half_width_w(TO_K), 5.307_599, 0.51e-6);
    let reading_w = |at_target_w: f64| line_of(at_target_w + 2.0 * TO_K, -2.0, 1.0);
    let above = time_of(&reading_w(5.4), &no_instruments(), 1.0);
    let below = time_of(&reading_w(5.2), &no_instruments(), 1.0);
    assert!(above.longest_s.is_some());
    assert_eq!(below.longest_s, None);
}

#[test]
fn a_target_above_the_lines_zero_is_never_reached_but_may_be_within_the_band() {
    // The half-width at 69 K is 5.308 W (above): a line that reads −5.2 W there has an
    // upper edge above zero, one that reads −5.4 W has not.
    for (at_target_w, may_get_there) in [(-5.2, true), (-5.4, false), (-40.0, false)] {
        let line = line_of(at_target_w + 2.0 * TO_K, -2.0, 1.0);
        for heating in cooking_of(&line, &four_instruments()).heatings {
            assert_eq!(heating.time, None, "{at_target_w} W");
            assert_eq!(heating.may_get_there, may_get_there, "{at_target_w} W");
        }
    }
}

#[test]
fn water_that_loses_heat_on_the_way_never_gets_there() {
    // Sixteen points between 39 and 41 K at −10 W: from 20 to 95 °C the band opens far
    // above zero at both ends, but at 40 K its upper edge reads −10 W + 0.6 W.
    // b = −0.1 W/K, mean Td 40 K, Sxx = 16 K².
    let difference_k: Vec<f64> = [39.0, 41.0].repeat(8);
    let power_w: Vec<f64> = difference_k
        .chunks(2)
        .zip([1.0, -1.0, 1.0, -1.0, 1.0, -1.0, 1.0, -1.0])
        .flat_map(|(pair, e)| [-0.1 * pair[0] - 6.0 + e, -0.1 * pair[1] - 6.0 + e])
        .collect();
    let line = fit_line(&difference_k, &power_w).unwrap();
    assert_relative("b", line.slope, -0.1, 1e-9);
    assert!(line.confidence(40.0).upper < -9.0);
    assert!(line.confidence(FROM_K).upper > 0.0 && line.confidence(TO_K).upper > 0.0);
    for heating in cooking_of(&line, &no_instruments()).heatings {
        assert_eq!(heating.time, None);
        assert!(!heating.may_get_there, "{heating:?}");
    }
}

#[test]
fn useful_heat_ends_at_the_lines_zero_with_its_range_by_hand() {
    // −a/b = 90 K, so 116 °C; u = s·√(1/8 + (90 − 40)²/800)/|b| = 2·√3.25/2 = 1.802 776 K,
    // times t95(6) = 4.411 234 K. Instruments do not enter. Tolerance: the six decimals.
    for instruments in [no_instruments(), four_instruments()] {
        let ends = cooking_of(&by_hand(), &instruments).heat_ends.unwrap();
        assert_relative("best", ends.best_c, 116.0, ROUNDING);
        assert_absolute("lowest", ends.lowest_c, 116.0 - 4.411_234, 1e-6);
        assert_absolute("highest", ends.highest_c, 116.0 + 4.411_234, 1e-6);
    }
}

#[test]
fn a_line_that_does_not_fall_shows_no_end_of_the_useful_heat() {
    for slope_w_per_k in [0.0, 0.5] {
        let line = line_of(100.0, slope_w_per_k, 1.0);
        let ends = cooking_of(&line, &no_instruments()).heat_ends;
        assert_eq!(ends, None, "{slope_w_per_k} W/K");
    }
}

#[test]
fn water_that_boils_below_the_target_is_heated_to_boiling() {
    // To 90 °C: P2 = 180 − 2·64 = 52 W, ln(192/52) = 1.306 251 653,
    // 1 kg: 2093·1.306 251 653 = 2733.984 711 s. Tolerance: the ten digits.
    let (line, intervals) = (by_hand(), [interval(AMBIENT_C)]);
    let budget = draw_up(&line, &no_instruments());
    let cooking = cook(&line, &budget, &intervals, TESTED_KG, 90.0).unwrap();
    assert_eq!((cooking.target_c, cooking.boils_below_target), (90.0, true));
    let time_s = heating(&cooking, 1.0).time.unwrap().best_s;
    assert_relative("1 kg", time_s, 2_733.984_711, 1e-9);
}

#[test]
fn ambient_is_the_mean_of_the_intervals_on_the_line_alone() {
    let mut set_aside = interval(40.0);
    set_aside.reasons = vec![Reason::IrradianceLow];
    let mut sunless = interval(40.0);
    (sunless.irradiance, sunless.standardised_power_w) = (None, None);
    let (line, budget) = (by_hand(), draw_up(&by_hand(), &no_instruments()));
    let mean_c = |intervals: &[Interval]| {
        let cooking = cook(&line, &budget, intervals, TESTED_KG, BOILING_POINT_C);
        cooking.map(|cooking| cooking.ambient_c)
    };
    let all = [
        set_aside.clone(),
        interval(25.0),
        sunless.clone(),
        interval(28.0),
    ];
    assert_eq!(mean_c(&all), Some(26.5));
    assert_eq!(mean_c(&[set_aside, sunless]), None);
}

#[test]
fn a_tested_load_that_is_listed_anyway_is_listed_once() {
    let (line, intervals) = (by_hand(), [interval(AMBIENT_C)]);
    let budget = draw_up(&line, &no_instruments());
    let cooking = cook(&line, &budget, &intervals, 2.0, BOILING_POINT_C).unwrap();
    let loads: Vec<f64> = cooking.heatings.iter().map(|h| h.water_kg).collect();
    assert_eq!(loads, [1.0, 2.0, 4.0]);
}
