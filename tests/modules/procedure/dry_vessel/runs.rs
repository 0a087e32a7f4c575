//! Dry runs whose true figures are known: `tests/data/procedures`, solved by scipy.

use simmerline::procedure::dry_vessel::dry_run::DryRun;

use crate::data::{assert_absolute, assert_relative};
use crate::kit::kinds::{At, BOX, Facts, Kinds, Made, POT, frozen, on_date};

fn only(tables: &str, log: &str) -> DryRun {
    let runs = Kinds::of(tables).run("dry", log).assess().dry_runs.runs;
    assert_eq!(runs.len(), 1);
    runs.into_iter().next().unwrap()
}

/// The dial as its marks are: every 5 °F.
fn dial() -> String {
    POT.to_owned() + "[instruments.clock]\nclass = \"watch\"\n"
}

#[test]
fn a_plateau_without_noise_is_that_of_the_equation_within_a_ten_thousandth() {
    // The figure is η0/U of the equation, 0.121 and 0.165; the plate follows sun and air late, and
    // readings each minute leave 0.015 %.
    let truth = Facts::of("truth.json");
    for (tables, log, at) in [
        (BOX, "box/dry.csv", "/box/truth/f1_k_m2_per_w"),
        (BOX, "box/dry-10s.csv", "/box/truth/f1_k_m2_per_w"),
        (
            POT,
            "dry-pot/exact-60s.csv",
            "/dry_pot/truth/difference_k_m2_per_w",
        ),
    ] {
        let run = only(tables, &frozen(log));
        let found = run.difference.unwrap().figure.value;
        assert_relative(log, found, truth.at(at), 2e-4);
        assert!(run.findings.is_empty(), "{log}");
    }
}

#[test]
fn a_plateau_is_the_stretch_that_an_independent_program_finds() {
    // tests/data/procedures_reference.py, written from the specification alone. Both compute the
    // same: only rounding is allowed for.
    let reference = Facts::of("reference.json");
    for (tables, log, at) in [
        (BOX, "box/dry.csv", "/box/logs/dry.csv"),
        (BOX, "box/dry-10s.csv", "/box/logs/dry-10s.csv"),
        (POT, "dry-pot/exact-60s.csv", "/dry-pot/logs/exact-60s.csv"),
    ] {
        let run = only(tables, &frozen(log));
        let plateau = run.plateau.unwrap();
        for (found, key) in [
            (plateau.vessel_c, "plateau_c"),
            (plateau.ambient_c, "ambient_c"),
            (plateau.irradiance_w_m2, "irradiance_w_m2"),
            (
                run.difference.unwrap().figure.value,
                "difference_k_m2_per_w",
            ),
        ] {
            let expected = reference.at(&format!("{at}/plateau/{key}"));
            assert_relative(&format!("{log}, {key}"), found, expected, 1e-9);
        }
        let slope = reference.at(&format!("{at}/plateau/slope_k_per_min"));
        assert_absolute(log, plateau.trend_k_per_min, slope, 1e-9);
    }
}

#[test]
fn a_noisy_plateau_is_that_of_the_equation_within_one_percent() {
    // 0.2 K of either thermometer and 5 W/m² at each reading, 11 readings: 0.3 % as standard
    // deviation, and the hottest of many stretches is chosen.
    let truth = Facts::of("truth.json").at("/box/truth/f1_k_m2_per_w");
    let found = only(BOX, &frozen("box-noisy/dry.csv")).difference.unwrap();
    assert_relative("noisy", found.figure.value, truth, 0.01);
    let interval = found.figure.interval;
    assert!((interval.lower..=interval.upper).contains(&truth));
}

#[test]
fn an_ovens_dial_in_celsius_and_in_fahrenheit_gives_one_figure_within_two_percent() {
    // Marks of 5 °F are 2.8 K: of 146 K half a mark is 1 %.
    let truth = Facts::of("truth.json").at("/dry_pot/truth/difference_k_m2_per_w");
    let of = |log: &str| only(&dial(), &frozen(log));
    let (celsius, fahrenheit) = (
        of("dry-pot/dial-celsius.csv"),
        of("dry-pot/dial-fahrenheit.csv"),
    );
    let value = |run: &DryRun| run.difference.as_ref().unwrap().figure.value;
    for run in [&celsius, &fahrenheit] {
        assert_relative("dial", value(run), truth, 0.02);
        let interval = run.difference.as_ref().unwrap().figure.interval;
        assert!((interval.lower..=interval.upper).contains(&truth));
    }
    // The one log has four digits of a mark in °C.
    assert_relative("°C and °F", value(&celsius), value(&fahrenheit), 1e-5);
    let span = |run: &DryRun| run.plateau.unwrap().span;
    assert_eq!(span(&celsius), span(&fahrenheit));
    // So long as the marks need to show a tenth of a kelvin each minute: 28 minutes.
    let span = span(&celsius);
    assert!(span.to_us - span.from_us >= 28 * 60_000_000);
}

#[test]
fn times_reached_are_those_of_the_solution_within_a_second() {
    // A straight line between readings of a minute: 0.2 s late where the pot heats fastest.
    let truth = Facts::of("truth.json");
    let pot = only(POT, &frozen("dry-pot/exact-60s.csv"));
    let at = |index: usize| {
        truth.at(&format!(
            "/dry_pot/dry/exact-60s.csv/reached/{index}/after_s"
        ))
    };
    assert_eq!(
        pot.reached
            .iter()
            .map(|one| one.celsius)
            .collect::<Vec<_>>(),
        [100.0, 150.0]
    );
    for (index, reached) in pot.reached.iter().enumerate() {
        assert_absolute("reached", reached.after_s.unwrap(), at(index), 1.0);
    }
    let asked = Kinds::of(BOX)
        .with("[load]", "[cooking]\nreached_c = [100, 120, 150]\n[load]")
        .run("dry", frozen("box/dry.csv"))
        .assess();
    let reached = &asked.dry_runs.runs[0].reached;
    for (index, reached) in reached.iter().enumerate().take(2) {
        let expected = truth.at(&format!("/box/dry/dry.csv/reached/{index}/after_s"));
        assert_absolute("reached", reached.after_s.unwrap(), expected, 1.0);
    }
    assert_eq!((reached[2].celsius, reached[2].after_s), (150.0, None));
}

#[test]
fn a_vessel_that_is_hot_from_the_start_has_no_time_to_get_so_hot() {
    let warm = |after_s: f64| At {
        celsius: 110.0 + 30.0 * (1.0 - (-after_s / 900.0).exp()),
        ambient_c: 25.0,
        irradiance_w_m2: 850.0,
    };
    let run = only(POT, &Made::default().log("vessel_c", warm));
    assert_eq!(run.reached[0].after_s, None);
    assert!(run.reached[1].after_s.is_none() && run.highest_c.unwrap() < 150.0);
}

#[test]
fn the_initial_rate_is_the_mean_slope_of_the_solution_over_ten_minutes() {
    // Derived: T = Ta + D (1 − e^(−t/θ)); the least-squares slope over t from 0 to L of an
    // exponential is D·12/L³·∫(t − L/2)(1 − e^(−t/θ))dt. With θ = 1200 s, L = 600 s, D = 100 K that
    // is 3.918 K/min; readings every 5 s, so sums are integrals to 0.2 %.
    let (theta, length, rise) = (1200.0_f64, 600.0_f64, 100.0);
    let x = length / theta;
    let left = (-x).exp();
    // ∫(t − L/2)·e^(−t/θ)dt = θ²[1 − e^(−x)(1 + x)] − (L θ/2)(1 − e^(−x)).
    let integral = theta * theta * (1.0 - left * (1.0 + x)) - length * theta / 2.0 * (1.0 - left);
    let expected = -rise * 12.0 / length.powi(3) * integral * 60.0;
    let solution = |after_s: f64| At {
        celsius: 25.0 + rise * (1.0 - (-after_s / theta).exp()),
        ambient_c: 25.0,
        irradiance_w_m2: 800.0,
    };
    let made = Made {
        every_s: 5,
        ..Made::default()
    };
    let found = only(POT, &made.log("vessel_c", solution)).initial_k_per_min;
    assert_relative("rate", found.unwrap(), expected, 0.002);
    // The first moment's rate is higher: the equation's 4.498 K/min of the frozen box.
    let truth = Facts::of("truth.json").at("/box/dry/dry.csv/initial_rate_k_per_min");
    let found = only(BOX, &frozen("box/dry.csv")).initial_k_per_min.unwrap();
    assert!((0.7 * truth..truth).contains(&found), "{found} of {truth}");
}

#[test]
fn two_dry_runs_give_their_mean_and_the_same_twice_gives_the_same() {
    let log = frozen("box/dry.csv");
    let once = Kinds::of(BOX).run("dry", &*log);
    let one = once.assess().dry_runs.difference.unwrap();
    let twice = once.run("dry", on_date(&log, "2026-03-15")).assess();
    let two = twice.dry_runs.difference.clone().unwrap();
    assert_relative("twice", two.figure.value, one.figure.value, 1e-12);
    assert!(one.is_of_one_day && !two.is_of_one_day);
    let each = twice.dry_runs.runs.iter();
    let each: Vec<f64> = each
        .map(|run| run.difference.as_ref().unwrap().figure.value)
        .collect();
    assert_eq!(each.len(), 2);
    assert_relative("each", each[0], each[1], 1e-12);
}
