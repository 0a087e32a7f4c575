//! The budget of Ps(50), against numbers worked out by hand.
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
//! (Welch–Satterthwaite) and G.6.4 (degrees of freedom that are not whole); Abramowitz and
//! Stegun, Handbook of Mathematical Functions, 26.7.3 to 26.7.5 (Student's t).

use simmerline::campaign::model::{Instrument, Instruments};
use simmerline::campaign::standard_uncertainty::Uncertainty;
use simmerline::procedure::s580::uncertainty::LineUncertainty;
use simmerline::procedure::s580::uncertainty::days::Order;
use simmerline::procedure::s580::uncertainty::outlook::Outlook;
use simmerline::procedure::sources;
use simmerline::procedure::uncertainty::budget::{Contribution, Origin};
use simmerline::procedure::uncertainty::points::ReadingSpread;
use simmerline::procedure::uncertainty::{Budget, Point};
use simmerline::stats::combine::{combined, effective_freedom};
use simmerline::stats::line::{Line, fit_line};
use simmerline::stats::student::two_sided_t;

use crate::data::{assert_absolute, assert_relative};

/// Sums of eight whole numbers are exact, and a dozen operations on them lose two digits.
pub const ROUNDING: f64 = 1e-13;
/// Effects of instruments are derivatives by differences of the fit over steps of 0.002: the
/// fourth power of that, and what the sums lose over it.
pub const DERIVATIVE: f64 = 1e-9;
/// The inverse of the t distribution is an iteration: a few digits more.
const QUANTILE: f64 = 1e-9;

const DIFFERENCE_K: [f64; 8] = [30.0, 30.0, 30.0, 30.0, 50.0, 50.0, 50.0, 50.0];
const RESIDUAL_W: [f64; 8] = [3.0, -3.0, 1.0, -1.0, 1.0, -1.0, 1.0, -1.0];
pub const RESIDUAL_SD_W: f64 = 2.0;

/// Mean ambient temperature of the invented intervals, °C.
pub const AMBIENT_C: f64 = 26.0;
/// From 20 °C to 95 °C, K above ambient.
pub const FROM_K: f64 = -6.0;
pub const TO_K: f64 = 69.0;
/// The practice fixes it, J/(kg K).
pub const SPECIFIC_HEAT_J_PER_KG_K: f64 = 4186.0;
/// Water boils far above the target.
pub const BOILING_POINT_C: f64 = 99.6;
pub const TESTED_KG: f64 = 6.5;

/// A line through a and b with the residuals above, times `scatter`.
pub fn line_of(intercept_w: f64, slope_w_per_k: f64, scatter: f64) -> Line {
    let of_point = |(x, e): (&f64, &f64)| intercept_w + slope_w_per_k * x + scatter * e;
    let power_w: Vec<f64> = DIFFERENCE_K.iter().zip(&RESIDUAL_W).map(of_point).collect();
    fit_line(&DIFFERENCE_K, &power_w).unwrap()
}

pub fn by_hand() -> Line {
    line_of(180.0, -2.0, 1.0)
}

pub fn stated(uncertainty: Uncertainty) -> Instrument {
    Instrument {
        uncertainty: Some(uncertainty),
        ..Instrument::default()
    }
}

/// Wind is stated too: it does not enter the line.
pub fn four_instruments() -> Instruments {
    Instruments {
        irradiance: stated(Uncertainty::Relative(0.03)),
        water_mass: stated(Uncertainty::Relative(0.005)),
        water_temperature: stated(Uncertainty::Kelvin(0.5)),
        ambient_temperature: stated(Uncertainty::Kelvin(0.5)),
        wind_speed: stated(Uncertainty::MetresPerSecond(0.2)),
        ..no_instruments()
    }
}

pub fn no_instruments() -> Instruments {
    Instruments {
        sensitivity: simmerline::campaign::model::Sensitivity::default(),
        irradiance_plane: None,
        irradiance_estimate: None,
        irradiance: Instrument::default(),
        water_temperature: Instrument::default(),
        vessel_temperature: Instrument::default(),
        ambient_temperature: Instrument::default(),
        water_mass: Instrument::default(),
        wind_speed: Instrument::default(),
        clock: Instrument::default(),
    }
}

/// A point of the line in air of 26 °C, as of a thermometer that is read without error.
pub fn point(difference_k: f64, power_w: f64, day: usize, follows: bool) -> Point {
    Point {
        x1: 1.0,
        water_c: AMBIENT_C + difference_k,
        ambient_c: AMBIENT_C,
        of_water: power_w,
        of_vessels: 0.0,
        per_kelvin: 0.0,
        per_second: 0.0,
        day,
        follows,
    }
}

/// The uncertainty of a line of the eight points above, all of one day, with the instruments
/// that are stated and nothing else.
pub fn uncertainty_of(line: &Line, instruments: &Instruments) -> LineUncertainty {
    let scatter = line.residual_sd / RESIDUAL_SD_W;
    let of_point = |(x, e): (&f64, &f64)| point(*x, line.predict(*x) + scatter * e, 0, false);
    let points: Vec<Point> = DIFFERENCE_K.iter().zip(&RESIDUAL_W).map(of_point).collect();
    uncertainty_of_points(line, &points, instruments)
}

/// The same of any points of the line.
pub fn uncertainty_of_points(
    line: &Line,
    points: &[Point],
    instruments: &Instruments,
) -> LineUncertainty {
    let is_stated = |error: &sources::CommonError| error.basis == sources::Basis::Stated;
    let errors = sources::common_errors(instruments, "invented").into_iter();
    let readings = ReadingSpread::default();
    LineUncertainty::of(line, points, readings, errors.filter(is_stated).collect()).unwrap()
}

fn draw_up(line: &Line, instruments: &Instruments) -> Budget {
    uncertainty_of(line, instruments).at(50.0)
}

fn name(part: &Contribution) -> String {
    match &part.origin {
        Origin::Common(error) => error.source.name().to_string(),
        _ => "scatter".to_owned(),
    }
}

fn contribution_w(budget: &Budget, source: &str) -> f64 {
    let mut parts = budget.contributions.iter();
    let part = parts.find(|part| name(part).contains(source));
    part.unwrap_or_else(|| panic!("no contribution of {source}"))
        .effect
        .abs()
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
    // Irradiance 0.03·80 W, mass 0.005·80 W. A thermometer's 0.5 K are an offset of 0.5/√2 K,
    // times 2 W/K, and a scale error of s = 0.5·√2/80 about 60 °C. That of the water makes
    // Ps (1 + s) times and Td (1 + s)·Td − 34 K·s, so the line at 50 K s·(180 W − 34 K·2 W/K)
    // more; that of the air makes Td 34 K·s more, so the line s·34 K·2 W/K more.
    let budget = draw_up(&by_hand(), &four_instruments());
    let scale = 0.5 * 2.0_f64.sqrt() / 80.0;
    for (source, expected_w) in [
        ("scatter", 1.0),
        ("irradiance", 2.4),
        ("mass", 0.4),
        ("water temperature, offset", 2.0_f64.sqrt() / 2.0),
        ("water temperature, scale", 112.0 * scale),
        ("ambient temperature, offset", 2.0_f64.sqrt() / 2.0),
        ("ambient temperature, scale", 68.0 * scale),
    ] {
        let found_w = contribution_w(&budget, source);
        assert_relative(source, found_w, expected_w, DERIVATIVE);
    }
    assert_eq!(budget.contributions.len(), 7);
    let by_statistics = budget
        .contributions
        .iter()
        .filter(|part| part.evaluation() == 'A');
    assert_eq!(by_statistics.map(name).collect::<Vec<_>>(), ["scatter"]);
    let shares: f64 = budget.contributions.iter().map(|part| part.share).sum();
    assert_relative("shares", shares, 1.0, ROUNDING);
    assert_relative(
        "scatter",
        budget.statistical_share(),
        (2.446_911_851_f64 / 6.142_500_542).powi(2),
        DERIVATIVE,
    );
}

#[test]
fn combined_and_expanded_uncertainty_are_those_by_hand() {
    // u_c² = 1 + 5.76 + 0.16 + (0.5 + 0.98) + (0.5 + 0.361 25) = 9.261 25 W²,
    // u_c = 3.043 230 192 W. U² = (t95(6)·1)² + (z·√8.261 25)² with t95(6) = 2.446 911 851 and
    // z = 1.960 201 240, Student's t for 10⁴ degrees of freedom (scipy, t.ppf(0.975, …)):
    // U = 6.142 500 542 W, k = U/u_c = 2.018 414 696, which is t for 41.767 412 degrees.
    // Tolerance: half of the last digit written here, and of both factors in U.
    let budget = draw_up(&by_hand(), &four_instruments());
    assert_absolute("u_c", budget.combined, 3.043_230_192, 2e-9);
    assert_relative("ν_eff", budget.effective_freedom(), 41.767_412, 1e-6);
    assert_absolute("k", budget.coverage_factor(), 2.018_414_696, 2e-9);
    assert_absolute("U", budget.expanded, 6.142_500_542, 6e-9);
}

#[test]
fn what_intervals_share_is_kept_apart_from_scatter() {
    // u_common² = 5.76 + 0.16 + 1.48 + 0.861 25 = 8.261 25 W², u_A = 1 W.
    let budget = draw_up(&by_hand(), &four_instruments());
    assert_relative("common²", budget.common.powi(2), 8.261_25, DERIVATIVE);
    assert_relative("scatter", budget.statistical, 1.0, ROUNDING);
}

#[test]
fn one_thermometer_for_water_and_air_leaves_its_scale_in_the_rise() {
    // An offset of it is in both, so Td does not move. Its scale error makes the rise and Td
    // (1 + s) times, whatever it turns about: the line at 50 K s·180 W more, which is
    // 180·0.5·√2/80 W = 1.590 990 W. u_c² = 1 + 5.76 + 0.16 + 2.531 25 W².
    let mut instruments = four_instruments();
    instruments.water_temperature.id = Some("thermometer 1".to_owned());
    instruments.ambient_temperature.id = Some("thermometer 1".to_owned());
    let budget = draw_up(&by_hand(), &instruments);
    assert_relative("u_c²", budget.combined.powi(2), 9.451_25, DERIVATIVE);
}

#[test]
fn a_thermometers_uncertainty_holds_at_both_ends_of_its_range() {
    // At 20 and at 100 °C offset and scale together are the 0.5 K that are stated, and the
    // errors at both ends have nothing to do with each other.
    let instruments = Instruments {
        water_temperature: stated(Uncertainty::Kelvin(0.5)),
        ..no_instruments()
    };
    let errors = sources::common_errors(&instruments, "invented");
    let size = |source: sources::Source| {
        let mut errors = errors.iter();
        let error = errors.find(|error| error.source == source).unwrap();
        error.standard.size()
    };
    let offset_k = size(sources::Source::WaterTemperature);
    let scale = size(sources::Source::WaterScale);
    let at_k = |celsius: f64| scale * (celsius - sources::SCALE_ABOUT_C);
    for celsius in [20.0, 100.0] {
        assert_relative("end", offset_k.hypot(at_k(celsius)), 0.5, ROUNDING);
    }
    let covariance = offset_k * offset_k + at_k(20.0) * at_k(100.0);
    assert_absolute("covariance", covariance, 0.0, ROUNDING);
}

#[test]
fn what_is_not_stated_is_assumed_to_be_the_most_cautious_class() {
    let errors = sources::common_errors(&no_instruments(), "invented");
    let assumed: Vec<&str> = errors
        .iter()
        .filter_map(|error| match error.basis {
            sources::Basis::Assumed(class) => Some(class.word),
            _ => None,
        })
        .collect();
    let thermometer = "kitchen-thermometer";
    assert_eq!(
        assumed,
        // Of either thermometer an offset and a scale.
        [
            "pyranometer-c",
            thermometer,
            thermometer,
            thermometer,
            thermometer,
            "kitchen-scale"
        ]
    );
}

#[test]
fn coverage_factor_lies_between_those_of_its_parts() {
    // Irradiance alone, 0.725 %, 0.58 W beside 1 W of scatter: U = 2.698 139 587 W over
    // u_c = √1.3364 W gives k = 2.333 974 896, t for 7.483 989 degrees of freedom (scipy).
    let instruments = Instruments {
        irradiance: stated(Uncertainty::Relative(0.00725)),
        ..no_instruments()
    };
    let budget = draw_up(&by_hand(), &instruments);
    assert_absolute("U", budget.expanded, 2.698_139_587, 3e-9);
    assert_absolute("k", budget.coverage_factor(), 2.333_974_896, 3e-9);
    assert_absolute("ν_eff", budget.effective_freedom(), 7.483_989, 1e-6);
    assert_absolute("coverage", coverage(2.446_911_851, 6), 0.95, QUANTILE);
    assert!((1.959_963_985..2.446_911_852).contains(&budget.coverage_factor()));
}

#[test]
fn formula_of_g_4_1_gives_the_example_that_the_guide_prints() {
    // JCGM 100:2008, G.4.1, example, from memory: y = b·X1·X2·X3 with relative standard
    // uncertainties 0.25, 0.57 and 0.82 % from 10, 5 and 15 observations gives 1.03 %,
    // ν_eff = 19.0, t95(19) = 2.09 and U95 = 2.2 %. Tolerance: half of the last printed
    // digit. Before rounding ν_eff is 18.97, and the guide enters its table with 19.
    let parts = [(0.25, 9.0), (0.57, 4.0), (0.82, 14.0)];
    let combined = combined(&parts.map(|(u, _)| u), |_, _| 0.0);
    assert_absolute("u_c", combined, 1.03, 0.005);
    let found = effective_freedom(combined, &parts);
    assert_absolute("ν_eff", found, 19.0, 0.05);
    let t = two_sided_t(0.95, found.round() as usize);
    assert_absolute("t95(19)", t, 2.09, 0.005);
    assert_absolute("U95", t * combined, 2.2, 0.05);
}

#[test]
fn without_instruments_the_budget_is_the_regressions_own_interval() {
    // t95(6): 2.446 911 851 leaves 0.95 inside by the finite sum.
    let budget = draw_up(&by_hand(), &no_instruments());
    assert_relative("u_c", budget.combined, 1.0, ROUNDING);
    assert_relative("ν", budget.effective_freedom(), 6.0, QUANTILE);
    assert_absolute("t95(6)", coverage(2.446_911_851, 6), 0.95, QUANTILE);
    assert_absolute("k", budget.coverage_factor(), 2.446_911_851, QUANTILE);
}

#[test]
fn without_instruments_no_degree_of_freedom_is_lost() {
    for step in 1..2000 {
        let scatter = f64::from(step) * 0.0137;
        let line = line_of(180.0 - scatter, -2.0 + scatter / 77.0, scatter);
        let budget = draw_up(&line, &no_instruments());
        let half_width_w = line.confidence(50.0).half_width();
        let what = format!("scatter {scatter}");
        assert_relative(&what, budget.coverage_factor(), line.t(), QUANTILE);
        // Half of a difference of two numbers near 80 W.
        assert_absolute(&what, budget.expanded, half_width_w, 80.0 * QUANTILE);
    }
}

#[test]
fn a_line_without_scatter_leaves_the_instruments_alone() {
    // u_c² = 9.261 25 − 1 = 8.261 25 W².
    let budget = draw_up(&line_of(180.0, -2.0, 0.0), &four_instruments());
    assert_relative("u_c²", budget.combined.powi(2), 8.261_25, DERIVATIVE);
}

#[test]
fn coverage_factor_tends_to_the_normal_quantile_and_never_falls_below_it() {
    // U² = (t95(6)·u_A)² + (z·u)² with u² = 8.261 25 W² and u_A of at most 0.2 W: k is above z by
    // no more than (2.447² − 1.960²)·0.04/(2·8.26·1.96) = 2.7e-3, and z is Student's t for 10⁴
    // degrees of freedom, 2.4e-4 above the normal 1.959 963 985 (26.7.5).
    for scatter in [0.0, 0.05, 0.1, 0.2] {
        let budget = draw_up(&line_of(180.0, -2.0, scatter), &four_instruments());
        let above = budget.coverage_factor() - 1.959_963_984;
        let what = format!("scatter {scatter}: k is {}", budget.coverage_factor());
        assert!((0.0..2.9e-3).contains(&above), "{what}");
    }
}

#[test]
fn a_rating_below_zero_has_uncertainties_above_zero() {
    // The mirrored line: Ps(50) = −80 W, b = 2 W/K.
    let (falling, mirrored) = (by_hand(), line_of(-180.0, 2.0, 1.0));
    let [expected, found] = [falling, mirrored].map(|line| draw_up(&line, &four_instruments()));
    for part in &expected.contributions {
        let found_w = contribution_w(&found, &name(part));
        assert_relative(&name(part), found_w, part.effect.abs(), DERIVATIVE);
    }
    assert_relative("u_c", found.combined, expected.combined, DERIVATIVE);
}

#[test]
fn more_intervals_shrink_the_scatter_until_the_target_is_met() {
    // By hand: u² = s²·(1/4)·8/n = 8/n W² for n intervals spread as these; t95(n − 2)·u is
    // 2.039 513·√(8/33) = 1.0042 W at 33 and 2.036 933·√(8/34) = 0.9881 W at 34 intervals
    // (Student's t from printed tables, to 31 and 32 degrees of freedom). Eight a day.
    let sure = uncertainty_of(&by_hand(), &no_instruments());
    let more = Outlook::More {
        intervals: 26,
        days: 4,
    };
    assert_eq!(sure.outlook(1.0, 50.0), more);
    assert_eq!(sure.outlook(2.5, 50.0), Outlook::Reached);
    // The instruments alone leave 1.960·√8.261 25 = 5.634 W.
    let sure = uncertainty_of(&by_hand(), &four_instruments());
    let Outlook::OutOfReach { least_w } = sure.outlook(5.0, 50.0) else {
        panic!("more intervals do not help against instruments");
    };
    assert_absolute("least", least_w, 5.634, 0.001);
}

/// The points of the tests below, two days with the same three Td.
fn two_days(power_w: [f64; 6]) -> (Line, Vec<Point>) {
    let difference_k = [0.0, 1.0, 2.0, 0.0, 1.0, 2.0];
    let line = fit_line(&difference_k, &power_w).unwrap();
    let places = difference_k.iter().zip(&power_w).enumerate();
    let points = places.map(|(place, (k, w))| point(*k, *w, place / 3, place % 3 > 0));
    (line, points.collect())
}

#[test]
fn two_days_are_two_observations() {
    // Residuals 1, −2, 1 W about lines 3 W above and below Ps = Td. One line leaves
    // 12 + 6·9 = 66 W², parallel ones 12 W² with 3 degrees of freedom: F = 54/4 = 13.5,
    // n0 = 6 − 18/6 = 3, s_d² = (54 − 4)/3 = 16.67 W². At the mean Td the figure is 1 W, and
    // 4 and −2 W without either day: u² = (2 − 1)/2·(3² + 3²) = 9 W²: 3 W, as of the mean of
    // two days at ± 3 W.
    let (line, points) = two_days([4.0, 2.0, 6.0, -2.0, -4.0, 0.0]);
    let sure = uncertainty_of_points(&line, &points, &no_instruments());
    let test = sure.days.test.unwrap();
    assert_relative("F", test.statistic, 13.5, ROUNDING * 10.0);
    assert_relative(
        "s_d²",
        sure.days.between_sd_w.unwrap().powi(2),
        50.0 / 3.0,
        ROUNDING * 10.0,
    );
    let budget = sure.at(1.0);
    assert_relative("u", budget.combined, 3.0, ROUNDING * 100.0);
    assert_relative("k − 1", budget.effective_freedom(), 1.0, QUANTILE);
    // t95(1) = 12.706, as every table of it prints.
    assert_absolute("k", budget.coverage_factor(), 12.706, 0.000_5);
}

#[test]
fn slopes_that_differ_by_day_are_in_the_uncertainty() {
    // Lines 1.5·Td and 0.5·Td without any scatter: at 2 K the figure is 2 W, and 1 and 3 W
    // without either day, so u = 1 W. At 0 K both days agree, and there the intervals count: one
    // line leaves 2·(0.5² + 1²) = 2.5 W² with 4 degrees of freedom, times 1/6 + 1²/4.
    let (line, points) = two_days([0.0, 1.5, 3.0, 0.0, 0.5, 1.0]);
    let sure = uncertainty_of_points(&line, &points, &no_instruments());
    assert_relative("u at 2 K", sure.at(2.0).combined, 1.0, ROUNDING * 100.0);
    assert_absolute("u at 0 K", sure.at(0.0).combined, 0.510_310_363, 1e-9);
}

#[test]
fn a_reading_that_two_intervals_share_all_but_cancels() {
    // One day, five intervals that follow each other at Td 1 to 5 K, 100 W each without
    // scatter; a reading is off by 1 K at random, which is 10 W. The mean of all is off by
    // what the first and the last reading are off by: (10 W/5)·√2 = 2.83 W. Taken as
    // independent, every interval would be off by 10·√2 W and the mean by 6.32 W.
    let points: Vec<Point> = (1..=5)
        .map(|k| Point {
            per_kelvin: 10.0,
            ..point(f64::from(k), 100.0, 0, k > 1)
        })
        .collect();
    let difference_k = [1.0, 2.0, 3.0, 4.0, 5.0];
    let line = fit_line(&difference_k, &[100.0; 5]).unwrap();
    let readings = ReadingSpread {
        water_k: Some(1.0),
        moment_s: 0.0,
    };
    let sure = LineUncertainty::of(&line, &points, readings, Vec::new()).unwrap();
    assert_relative(
        "one",
        sure.reading.of_interval_w(),
        200.0_f64.sqrt(),
        ROUNDING,
    );
    let budget = sure.at(3.0);
    assert_relative(
        "mean",
        budget.combined,
        2.0 * 2.0_f64.sqrt(),
        ROUNDING * 100.0,
    );
    assert_eq!(budget.contributions[0].origin, Origin::ReadingNoise);
}

#[test]
fn intervals_that_alternate_are_called_that_and_not_alike() {
    let order = |residual: fn(usize) -> f64| {
        let points: Vec<Point> = (0..24)
            .map(|place| point(place as f64, residual(place), 0, place > 0))
            .collect();
        let x: Vec<f64> = points.iter().map(Point::difference_k).collect();
        let y: Vec<f64> = points.iter().map(|point| point.of_water).collect();
        let line = fit_line(&x, &y).unwrap();
        uncertainty_of_points(&line, &points, &no_instruments())
            .days
            .order()
    };
    assert_eq!(
        order(|place| if place % 2 == 0 { 1.0 } else { -1.0 }),
        Order::Alternating
    );
    assert_eq!(
        order(|place| if place / 4 % 2 == 0 { 1.0 } else { -1.0 }),
        Order::Alike
    );
    let irregular = |place: usize| [1.0, -1.0, -1.0, 1.0, 1.0, -1.0][place % 6];
    assert_eq!(order(irregular), Order::NotShown);
}
