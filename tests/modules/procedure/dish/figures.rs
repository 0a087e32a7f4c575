//! Time constant, loss factor and optical factor of a dish, held against what made the logs.

use simmerline::procedure::Assessment;
use simmerline::procedure::dish::DishFigures;
use simmerline::procedure::uncertainty::Derived;

use crate::data::{assert_absolute, assert_relative};
use crate::kit::kinds::{At, DISH, Facts, Kinds, Made, frozen};

fn of_folder(folder: &str) -> Assessment {
    Kinds::of(DISH)
        .run("cooling", frozen(&format!("{folder}/cooling.csv")))
        .run("water", frozen(&format!("{folder}/heating-1.csv")))
        .run("water", frozen(&format!("{folder}/heating-2.csv")))
        .assess()
}

fn value(figure: &Option<Derived>) -> f64 {
    figure.as_ref().unwrap().figure.value
}

/// Time to boil by the published formula with the true figures, s, at what the result states.
fn true_boiling_s(truth: &Facts, found: &DishFigures) -> f64 {
    let boiling = found.boiling.as_ref().unwrap();
    let (u, g) = (
        truth.at("/dish/truth/loss_w_per_k"),
        truth.at("/dish/truth/gain_m2"),
    );
    let share = u * (boiling.boiling_point_c - boiling.ambient_c) / (g * boiling.irradiance_w_m2);
    -truth.at("/dish/truth/time_constant_s") * (1.0 - share).ln()
}

#[test]
fn figures_of_a_dish_without_noise_are_those_of_the_equation_within_a_thousandth() {
    // The sun goes up and down by 8 %, the air warms by 1 K/h while the pot cools.
    let truth = Facts::of("truth.json");
    let found = of_folder("dish").dish_figures.unwrap();
    for (figure, key) in [
        (&found.time_constant_s, "time_constant_s"),
        (&found.loss_factor, "loss_factor_w_per_m2_k"),
        (&found.loss_w_per_k, "loss_w_per_k"),
        (&found.optical_factor, "optical_factor"),
    ] {
        let truth = truth.at(&format!("/dish/truth/{key}"));
        assert_relative(key, value(figure), truth, 1e-3);
    }
    let found_s = found.boiling.as_ref().unwrap().time_s.figure.value;
    assert_relative("boiling", found_s, true_boiling_s(&truth, &found), 1e-3);
    assert_eq!((found.coolings.len(), found.heatings.len()), (1, 2));
}

#[test]
fn a_noisy_dish_is_that_of_the_equation_within_two_percent_and_its_intervals_hold_it() {
    // 0.2 K of either thermometer, 5 W/m²: of 66 K of fall 0.1 %, of 60 K of rise 0.5 %.
    let truth = Facts::of("truth.json");
    let found = of_folder("dish-noisy").dish_figures.unwrap();
    for (figure, key) in [
        (&found.time_constant_s, "time_constant_s"),
        (&found.loss_factor, "loss_factor_w_per_m2_k"),
        (&found.optical_factor, "optical_factor"),
    ] {
        let truth = truth.at(&format!("/dish/truth/{key}"));
        assert_relative(key, value(figure), truth, 0.02);
        let interval = figure.as_ref().unwrap().figure.interval;
        assert!(
            (interval.lower..=interval.upper).contains(&truth),
            "{key}: {interval:?}"
        );
    }
    let found_s = found.boiling.as_ref().unwrap().time_s.figure.value;
    assert_relative("boiling", found_s, true_boiling_s(&truth, &found), 0.03);
}

#[test]
fn the_logarithm_of_the_paper_is_six_percent_off_where_the_air_warms() {
    // Why the slope against the integral is taken: the reference's own figures of either.
    let reference = Facts::of("reference.json");
    let off = |key: &str| reference.at(&format!("/dish/off_percent/{key}")).abs();
    assert!(off("time constant from_logarithm") > 5.0);
    assert!(off("time_constant_s") < 0.01);
}

#[test]
fn gain_and_loss_by_the_heat_balance_are_those_of_the_equation() {
    // With the vessel's heat stated. Without noise means over ten minutes of the curve leave 0.03 %;
    // with 0.2 K at either end of a rise of 10 K the loss is seen to 10 %, the gain to 3 %: 2 and 1 %
    // off with this seed, and the intervals hold the truth.
    let truth = Facts::of("truth.json");
    for (folder, gain, loss) in [("dish", 1e-3, 1e-3), ("dish-noisy", 0.02, 0.03)] {
        let balance = of_folder(folder).heat_balance.unwrap();
        for (figure, key, tolerance) in [
            (balance.gain_m2, "gain_m2", gain),
            (balance.loss_w_per_k, "loss_w_per_k", loss),
        ] {
            let truth = truth.at(&format!("/dish/truth/{key}"));
            assert_relative(&format!("{folder}, {key}"), figure.value, truth, tolerance);
            let interval = figure.interval;
            assert!(
                (interval.lower..=interval.upper).contains(&truth),
                "{key}: {interval:?}"
            );
        }
    }
}

#[test]
fn two_ways_to_the_loss_and_the_gain_of_one_dish_agree() {
    // Cooling in the shade, and the heat balance of heatings in the sun.
    let assessment = of_folder("dish");
    let (dish, balance) = (
        assessment.dish_figures.unwrap(),
        assessment.heat_balance.unwrap(),
    );
    assert_relative(
        "loss",
        value(&dish.loss_w_per_k),
        balance.loss_w_per_k.value,
        0.01,
    );
    let gain_m2 = 1.4 * value(&dish.optical_factor);
    assert_relative("gain", gain_m2, balance.gain_m2.value, 0.01);
}

/// τ0 of the specification's dish, s, and where its water tends to above air of 30 °C under
/// 700 W/m², K.
const TAU_S: f64 = 7310.0;
const HIGHEST_K: f64 = 0.35 * 1.4 * 700.0 / (16.0 * 0.15);

fn specification() -> Kinds {
    let cooling = Made {
        lasts_s: 9_000,
        ..Made::default()
    };
    let cooling = cooling.log("water_c", |after_s| At {
        celsius: 30.0 + 62.0 * (-after_s / TAU_S).exp(),
        ambient_c: 30.0,
        irradiance_w_m2: 0.0,
    });
    let heating = Made {
        date: "2026-03-15",
        every_s: 30,
        lasts_s: 900,
        ..Made::default()
    };
    let heating = heating.log("water_c", |after_s| At {
        celsius: 30.0 + HIGHEST_K - (HIGHEST_K - 20.0) * (-after_s / TAU_S).exp(),
        ambient_c: 30.0,
        irradiance_w_m2: 700.0,
    });
    Kinds::of(DISH)
        .with(
            "elevation_m = 200",
            "elevation_m = 0\npressure_hpa = 1014.18",
        )
        .run("cooling", cooling)
        .run("water", heating)
}

#[test]
fn figures_of_the_specification_come_out_of_logs_of_the_closed_solution() {
    // Derived: Ap 1.4, At 0.15, F'UL 16, (MC)' 17 544, Ta 30, Gb 700, Tw1 50, τ 900 s, F'η0 0.35 →
    // τ0 7310 s, Tw2 64.238860, boiling from ambient 4919.22 s. Trapezoids between readings of 30
    // to 60 s leave some millionths.
    let found = specification().assess().dish_figures.unwrap();
    assert_relative("τ0", value(&found.time_constant_s), TAU_S, 1e-5);
    assert_relative("F'UL", value(&found.loss_factor), 16.0, 1e-5);
    assert_relative("F'η0", value(&found.optical_factor), 0.35, 1e-5);
    assert_absolute("Tw2", found.heatings[0].to_c, 64.238_860, 5e-7);
    assert_absolute("Tw1", found.heatings[0].from_c, 50.0, 1e-9);
    let boiling = found.boiling.unwrap();
    assert_absolute("boiling point", boiling.boiling_point_c, 100.0, 0.01);
    // A hundredth of a kelvin of the boiling point is 1 s.
    assert_relative("boiling", boiling.time_s.figure.value, 4_919.22, 5e-4);
}

#[test]
fn without_the_surface_the_loss_is_told_in_w_per_k_and_the_optical_factor_stays() {
    let without = specification().with("loss_area_m2 = 0.15\n", "");
    let found = without.assess().dish_figures.unwrap();
    assert!(found.loss_factor.is_none());
    assert_relative("u", value(&found.loss_w_per_k), 2.4, 1e-5);
    assert_relative("F'η0", value(&found.optical_factor), 0.35, 1e-5);
}
