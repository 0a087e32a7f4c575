//! Energy and exergy of logs whose balance is known, interval by interval.

use simmerline::physics::exergy::{SUN_K, ZERO_CELSIUS_K, share_of_sunlight};
use simmerline::procedure::efficiency::Efficiency;
use simmerline::procedure::efficiency::step::Step;
use simmerline::procedure::uncertainty::shift::Shift;

use crate::data::{assert_absolute, assert_relative};
use crate::kit::kinds::{At, BOX, DISH, Facts, Kinds, Made, frozen};

fn of(tables: &str, log: &str) -> Efficiency {
    let kinds = Kinds::of(tables).run("water", frozen(log));
    kinds.assess().efficiency.unwrap()
}

/// Each log without noise: its campaign, its file, where the reference has it.
const LOGS: &[(&str, &str, &str)] = &[
    (BOX, "box/water-1.csv", "/box/logs/water-1.csv"),
    (BOX, "box/water-2.csv", "/box/logs/water-2.csv"),
    (BOX, "box/water-steady.csv", "/box/logs/water-steady.csv"),
    (
        BOX,
        "box/water-air-warms.csv",
        "/box/logs/water-air-warms.csv",
    ),
];

fn sun_j(step: &Step) -> f64 {
    step.sun_w * step.duration_s
}

#[test]
fn intervals_of_ten_minutes_are_those_of_an_independent_program() {
    // tests/data/procedures_reference.py takes the box's logs from their first reading in steps of
    // ten minutes, as the practice does. Rounding alone is allowed for.
    let reference = Facts::of("reference.json");
    for (tables, log, at) in LOGS {
        let found = of(tables, log);
        let rows = reference.list(&format!("{at}/efficiency/ten_minutes"));
        let mut compared = 0;
        for (index, _) in rows.iter().enumerate() {
            let number =
                |key: &str| reference.at(&format!("{at}/efficiency/ten_minutes/{index}/{key}"));
            let same = |step: &&Step| (step.from_c - number("from_c")).abs() < 1e-9;
            let Some(step) = found.steps.iter().find(same) else {
                continue;
            };
            let exergy_j = step.exergy_j(&Shift::NONE);
            let ambient_k = step.ambient_c + ZERO_CELSIUS_K;
            let exergy_in_j = sun_j(step) * share_of_sunlight(ambient_k, SUN_K);
            for (found, key) in [
                (step.to_c, "to_c"),
                (step.energy_j() / sun_j(step), "energy_efficiency"),
                (exergy_j, "exergy_gain_j"),
                (exergy_j / exergy_in_j, "exergy_efficiency"),
                (step.difference_k(&Shift::NONE), "difference_k"),
                (step.exergy_w(&Shift::NONE), "exergy_power_w"),
            ] {
                assert_relative(&format!("{log}, {key}"), found, number(key), 1e-9);
            }
            compared += 1;
        }
        assert!(compared >= 10, "{log}: {compared}");
    }
}

/// Heat that the water keeps of a balance, J: its gain (m²), its loss (W/K), its share.
fn balance_j(step: &Step, (gain_m2, loss_w_per_k, share): (f64, f64, f64), area_m2: f64) -> f64 {
    let irradiance_w_m2 = step.sun_w / area_m2;
    let difference_k = step.difference_k(&Shift::NONE);
    share * (gain_m2 * irradiance_w_m2 - loss_w_per_k * difference_k) * step.duration_s
}

#[test]
fn energy_of_every_log_is_that_of_its_balance_within_a_thousandth() {
    // What the water keeps of g·G − u·Td with the true figures, summed over the tool's own
    // intervals. Without noise 0.1 %, with it 1 %.
    let truth = Facts::of("truth.json");
    let f_prime = truth.at("/box/model/f_prime");
    let box_share = truth.at("/box/truth/heat_capacity_ratio");
    let of_box = (
        0.25 * f_prime * truth.at("/box/model/eta0"),
        0.25 * f_prime * truth.at("/box/model/u_w_per_m2_k"),
        box_share,
    );
    let of_dish = (
        truth.at("/dish/truth/gain_m2"),
        truth.at("/dish/truth/loss_w_per_k"),
        4.0 * 4186.0 / truth.at("/dish/truth/heat_capacity_j_per_k"),
    );
    for (tables, log, area_m2, model, tolerance) in [
        (BOX, "box/water-1.csv", 0.25, of_box, 1e-3),
        (BOX, "box/water-2.csv", 0.25, of_box, 1e-3),
        (DISH, "dish/heating-1.csv", 1.4, of_dish, 1e-3),
        (DISH, "dish/heating-2.csv", 1.4, of_dish, 1e-3),
        (BOX, "box-noisy/water-1.csv", 0.25, of_box, 0.01),
        (BOX, "box-noisy/water-2.csv", 0.25, of_box, 0.01),
        (DISH, "dish-noisy/heating-1.csv", 1.4, of_dish, 0.01),
        (DISH, "dish-noisy/heating-2.csv", 1.4, of_dish, 0.01),
    ] {
        let found = of(tables, log);
        let kept_j: f64 = found
            .steps
            .iter()
            .map(|step| balance_j(step, model, area_m2))
            .sum();
        let all_j: f64 = found.steps.iter().map(sun_j).sum();
        assert_relative(log, found.energy.figure.value, kept_j / all_j, tolerance);
    }
}

#[test]
fn energy_and_exergy_are_near_those_of_the_solution_from_40_to_90_degrees() {
    // The tool's span is that of its sound intervals, from the first reading in the window and up
    // to ten minutes short of its end; the solution's is from 40 to 90 °C. Cut at the reading where
    // the water has 90 °C, whole intervals leave up to 3 K of 50.
    let truth = Facts::of("truth.json");
    for (log, end) in [("water-1.csv", "12:29"), ("water-2.csv", "12:05")] {
        let kinds = Kinds::of(BOX).run_with(
            "water",
            frozen(&format!("box/{log}")),
            &format!("end = \"{end}\"\n"),
        );
        let found = kinds.assess().efficiency.unwrap();
        let at = format!("/box/water/{log}/span_40_90");
        let energy = truth.at(&format!("{at}/energy_efficiency"));
        let exergy = truth.at(&format!("{at}/exergy_efficiency"));
        assert_relative(log, found.energy.figure.value, energy, 0.04);
        assert_relative(log, found.exergy.figure.value, exergy, 0.04);
    }
}

/// Two kilograms that rise evenly from 50 to 55 °C in ten minutes in air of 30 °C.
fn even_rise() -> String {
    let made = Made {
        lasts_s: 600,
        ..Made::default()
    };
    made.log("water_c", |after_s| At {
        celsius: 50.0 + 5.0 * after_s / 600.0,
        ambient_c: 30.0,
        irradiance_w_m2: 800.0,
    })
}

#[test]
fn one_interval_has_the_power_and_exergy_of_the_specification() {
    // Derived: 2 kg, 50 → 55 °C in 600 s, Ta 30 °C: 69.7667 W, 4.819083 W.
    let found = Kinds::of(BOX)
        .run("water", even_rise())
        .assess()
        .efficiency
        .unwrap();
    assert_eq!(found.steps.len(), 1);
    let step = &found.steps[0];
    assert_absolute("heat", step.energy_j() / 600.0, 69.7667, 5e-5);
    assert_absolute("exergy", step.exergy_w(&Shift::NONE), 4.819_083, 5e-7);
    // Of 200 W of sun on 0.25 m².
    assert_absolute("energy", found.energy.figure.value, 69.7667 / 200.0, 5e-7);
    let factor = share_of_sunlight(303.15, SUN_K);
    assert_absolute(
        "exergy",
        found.exergy.figure.value,
        4.819_083 / 200.0 / factor,
        5e-9,
    );
}

#[test]
fn the_peak_of_exergy_is_the_vertex_of_an_independent_least_squares_parabola() {
    // numpy.polyfit in tests/data/procedures_reference.py over the intervals up to 90 °C; the tool
    // has those up to 94 °C: where a parabola fits, 3 %.
    let reference = Facts::of("reference.json");
    for (tables, log, at) in LOGS {
        let Ok(peak) = of(tables, log).peak else {
            panic!("{log}: no peak");
        };
        let expected = reference.at(&format!("{at}/efficiency/vertex_exergy_power_w"));
        assert_relative(log, peak.exergy_w.figure.value, expected, 0.03);
    }
}
