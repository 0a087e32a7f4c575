//! Heating times and the end of the useful heat, against numbers worked out by hand
//! from the invented line of `uncertainty.rs`: closed form, stepping, and the edges of the
//! band. First-order propagation by JCGM 100:2008, equation 13 (clause from memory).

use simmerline::campaign::model::CookingWishes;
use simmerline::campaign::model::Instruments;
use simmerline::procedure::cooking::pots::{Cooking, Kitchen, TimeRange, WaterHeating, cook};
use simmerline::procedure::s580::intervals::{Interval, Measured, Verdict};
use simmerline::procedure::s580::reason::Reason;
use simmerline::procedure::s580::result::mean_ambient_c;
use simmerline::procedure::spans::{Summary, TimeSpan};
use simmerline::stats::line::{Line, fit_line};

use crate::data::{assert_absolute, assert_relative};

use crate::procedure::s580::uncertainty::{
    AMBIENT_C, BOILING_POINT_C, FROM_K, RESIDUAL_SD_W, ROUNDING, SPECIFIC_HEAT_J_PER_KG_K,
    TESTED_KG, TO_K, by_hand, four_instruments, line_of, no_instruments, point, uncertainty_of,
    uncertainty_of_points,
};

/// An invented interval on the line; of it only the ambient temperature matters here.
fn interval(ambient_c: f64) -> Interval {
    let level = |mean: f64| Summary {
        mean,
        min: mean,
        max: mean,
    };
    Interval {
        run: 0,
        measured: Measured {
            span: TimeSpan {
                from_us: 0,
                to_us: 600_000_000,
            },
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
        },
        verdict: Verdict::OnLine,
    }
}

/// Nothing is asked for.
static NO_WISHES: CookingWishes = CookingWishes {
    water_kg: Vec::new(),
    irradiance_w_m2: None,
    ambient_c: None,
    start_c: None,
    reached_c: Vec::new(),
};

fn kitchen(tested_kg: f64, boiling_point_c: f64) -> Kitchen<'static> {
    Kitchen {
        tested_kg,
        mean_ambient_c: AMBIENT_C,
        irradiance_w_m2: 700.0,
        boiling_point_c,
        window_s: 4.0 * 3600.0,
        wishes: &NO_WISHES,
    }
}

fn cooking_of(line: &Line, instruments: &Instruments) -> Cooking {
    let intervals = [interval(AMBIENT_C - 1.0), interval(AMBIENT_C + 1.0)];
    assert_eq!(mean_ambient_c(&intervals), Some(AMBIENT_C));

    let sure = uncertainty_of(line, instruments);
    cook(&sure.power_at(700.0), kitchen(TESTED_KG, BOILING_POINT_C))
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
fn instruments_widen_the_band_and_so_the_range() {
    // The edges by stepping: scatter, irradiance, mass and both thermometers,
    // k by 26.7.5 of Abramowitz and Stegun from ν = 6·(u/u_A)⁴ rounded down, at least 6:
    // between 1.96 and 2.45, so held only between the two. Then with no scatter, where k
    // is the normal quantile (10⁴ degrees of freedom: 1.960 201): to the midpoint rule.
    let plain = time_of(&by_hand(), &no_instruments(), 2.0);
    let widened = time_of(&by_hand(), &four_instruments(), 2.0);
    assert_relative("best", widened.best_s, plain.best_s, ROUNDING);
    assert!(widened.shortest_s < plain.shortest_s);
    assert!(widened.longest_s.unwrap() > plain.longest_s.unwrap());
    let perfect = time_of(&line_of(180.0, -2.0, 0.0), &four_instruments(), 2.0);
    let scale = 0.5 * 2.0_f64.sqrt() / 80.0;
    let half_width_w = |k: f64| {
        let power_w = 180.0 - 2.0 * k;
        let scaled_w = (0.03_f64.powi(2) + 0.005_f64.powi(2)) * power_w * power_w;
        // Either offset 0.5/√2 K·2 W/K; scale of the water s·(180 − 68 W), of the air s·68 W.
        let thermometers_w = 0.5 + 0.5 + (112.0 * scale).powi(2) + (68.0 * scale).powi(2);
        1.960_201 * (scaled_w + thermometers_w).sqrt()
    };
    let shortest_s = stepped_s(|k| 180.0 - 2.0 * k + half_width_w(k), 2.0);
    let longest_s = stepped_s(|k| 180.0 - 2.0 * k - half_width_w(k), 2.0);
    assert_relative("shortest", perfect.shortest_s, shortest_s, 3e-5);
    assert_relative("longest", perfect.longest_s.unwrap(), longest_s, 3e-5);
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
    // upper edge above zero, one that reads −5.4 W has not. Scatter alone.
    for (at_target_w, may_get_there) in [(-5.2, true), (-5.4, false), (-40.0, false)] {
        let line = line_of(at_target_w + 2.0 * TO_K, -2.0, 1.0);
        for heating in cooking_of(&line, &no_instruments()).heatings {
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
    let rows = difference_k.iter().zip(&power_w);
    let points: Vec<_> = rows.map(|(k, w)| point(*k, *w, 0, false)).collect();
    let sure = uncertainty_of_points(&line, &points, &no_instruments());
    let cooking = cook(&sure.power_at(700.0), kitchen(TESTED_KG, BOILING_POINT_C));
    for heating in cooking.heatings {
        assert_eq!(heating.time, None);
        assert!(!heating.may_get_there, "{heating:?}");
    }
}

#[test]
fn useful_heat_ends_where_the_band_crosses_zero_by_hand() {
    // 100 − 2x is zero at 50 K, so 76 °C. Its edges 100 − 2x ± t95(6)·2·√(1/8 + (x − 40)²/800)
    // are zero at 74.845 034 and 77.305 780 °C (scipy, brentq).
    let cooking = cooking_of(&line_of(100.0, -2.0, 1.0), &no_instruments());
    let ends = cooking.heat_ends.unwrap();
    assert_relative("best", ends.best_c, 76.0, ROUNDING);
    assert_absolute("lowest", ends.lowest_c, 74.845_034, 1e-6);
    assert_absolute("highest", ends.highest_c, 77.305_780, 1e-6);
}

#[test]
fn useful_heat_never_ends_above_the_boiling_point() {
    // 180 − 2x would be zero at 116 °C, and water boils at 99.6 °C.
    let ends = cooking_of(&by_hand(), &no_instruments()).heat_ends.unwrap();
    for ends_c in [ends.best_c, ends.lowest_c, ends.highest_c] {
        assert_relative("end", ends_c, BOILING_POINT_C, ROUNDING);
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
    let sure = uncertainty_of(&by_hand(), &no_instruments());
    let cooking = cook(&sure.power_at(700.0), kitchen(TESTED_KG, 90.0));
    assert_eq!((cooking.target_c, cooking.boils_below_target), (90.0, true));
    let time_s = heating(&cooking, 1.0).time.unwrap().best_s;
    assert_relative("1 kg", time_s, 2_733.984_711, 1e-9);
}

#[test]
fn ambient_is_the_mean_of_the_intervals_on_the_line_alone() {
    let mut set_aside = interval(40.0);
    set_aside.verdict = Verdict::SetAside(vec![Reason::IrradianceLow]);
    let mut sunless = interval(40.0);
    (
        sunless.measured.irradiance,
        sunless.measured.standardised_power_w,
    ) = (None, None);
    sunless.verdict = Verdict::NotNormalised;

    let all = [
        set_aside.clone(),
        interval(25.0),
        sunless.clone(),
        interval(28.0),
    ];
    assert_eq!(mean_ambient_c(&all), Some(26.5));
    assert_eq!(mean_ambient_c(&[set_aside, sunless]), None);
}

#[test]
fn a_tested_load_that_is_listed_anyway_is_listed_once() {
    let sure = uncertainty_of(&by_hand(), &no_instruments());
    let cooking = cook(&sure.power_at(700.0), kitchen(2.0, BOILING_POINT_C));
    let loads: Vec<f64> = cooking.heatings.iter().map(|h| h.water_kg).collect();
    assert_eq!(loads, [1.0, 2.0, 4.0]);
}
