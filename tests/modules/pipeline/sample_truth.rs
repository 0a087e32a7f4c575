//! The logs of the samples that show the procedures beside the rating, held against what they
//! were made of (`sample-runs/truth.rs`).
//!
//! Derived: our own arithmetic from the balances that stand there, on readings alone, no
//! procedure of the library in between. Within 2 %: set-ups differ by 0.4 % (k = 1), the air
//! wanders by 0.25 K, water is read to 0.1 K, the oven's dial to 5 °F.

use simmerline::procedure::run::Run;

use crate::kit::rate::sample;
use crate::truth::{BOX_FIGURES, DISH_COOLING, DRY_POT, WATER_J_KG_K};

const TOLERANCE: f64 = 0.02;

/// A line of a log whose every cell is there.
struct Line {
    at_s: f64,
    heated_c: f64,
    ambient_c: f64,
    irradiance_w_m2: f64,
}

impl Line {
    fn difference_k(&self) -> f64 {
        self.heated_c - self.ambient_c
    }
}

fn lines(run: &Run) -> Vec<Line> {
    let readings = &run.readings;
    let heated = readings.vessel_c.as_ref().unwrap_or(&readings.water_c);
    let ambient = readings.ambient_c.as_ref().unwrap();
    let irradiance = readings.irradiance_w_m2.as_ref().unwrap();
    let count = heated.value.len();
    assert!(count >= 10, "{}: {count}", run.plan.label);
    assert_eq!([ambient, irradiance].map(|one| one.value.len()), [count; 2]);
    let start_us = heated.time_us[0];
    (0..count)
        .map(|index| Line {
            at_s: (heated.time_us[index] - start_us) as f64 / 1e6,
            heated_c: heated.value[index],
            ambient_c: ambient.value[index],
            irradiance_w_m2: irradiance.value[index],
        })
        .collect()
}

fn mean(values: impl Iterator<Item = f64>) -> f64 {
    let values: Vec<f64> = values.collect();
    values.iter().sum::<f64>() / values.len() as f64
}

#[track_caller]
fn agrees(found: f64, truth: f64) {
    let off = (found / truth - 1.0).abs();
    assert!(off < TOLERANCE, "{found} for {truth}");
}

/// The part of a run between two temperatures, °C.
fn between(lines: &[Line], from_c: f64, to_c: f64) -> &[Line] {
    let first_at = |at_c: f64| lines.iter().position(|line| line.heated_c >= at_c).unwrap();
    &lines[first_at(from_c)..=first_at(to_c)]
}

/// Difference for each W/m² after an hour, K m²/W, mean of dry runs.
fn of_dry_runs(runs: &[Run]) -> f64 {
    mean(runs.iter().map(|run| {
        let lines = lines(run);
        let late = lines.iter().filter(|line| line.at_s >= 3_900.0);
        mean(late.map(|line| line.difference_k() / line.irradiance_w_m2))
    }))
}

#[test]
fn dry_runs_of_the_box_reach_its_f1() {
    let dry = sample("box-figures").tested.dry_runs;
    assert_eq!(dry.len(), 2);
    agrees(of_dry_runs(&dry), BOX_FIGURES.f1());
    for run in &dry {
        assert!(lines(run).last().unwrap().at_s >= 9_000.0);
    }
}

#[test]
fn water_in_the_box_heats_by_its_f2() {
    let runs = sample("box-figures").tested.runs;
    assert_eq!(runs.len(), 3);
    let found = mean(runs.iter().map(|run| {
        let load_kg_m2 = run.plan.water_kg / BOX_FIGURES.area_m2;
        assert!((7.9..8.1).contains(&load_kg_m2));
        let lines = lines(run);
        let span = between(&lines, 60.0, 90.0);
        let (first, last) = (&span[0], &span[span.len() - 1]);
        let highest_k = BOX_FIGURES.f1() * mean(span.iter().map(|line| line.irradiance_w_m2));
        let ambient_c = mean(span.iter().map(|line| line.ambient_c));
        let short_of = |line: &Line| 1.0 - (line.heated_c - ambient_c) / highest_k;
        let heat_j_per_k_m2 = load_kg_m2 * WATER_J_KG_K;
        BOX_FIGURES.f1() * heat_j_per_k_m2 / (last.at_s - first.at_s)
            * (short_of(first) / short_of(last)).ln()
    }));
    agrees(found, BOX_FIGURES.f2());
}

#[test]
fn the_dish_cools_in_its_time_and_heats_by_its_factors() {
    let tested = sample("dish-cooling").tested;
    assert_eq!((tested.cooling_runs.len(), tested.runs.len()), (2, 3));
    let cooling = mean(tested.cooling_runs.iter().map(|run| {
        let lines = lines(run);
        let (first, last) = (&lines[0], &lines[lines.len() - 1]);
        assert!(first.heated_c > 90.0 && last.heated_c < 46.0);
        (last.at_s - first.at_s) / (first.difference_k() / last.difference_k()).ln()
    }));
    agrees(cooling, DISH_COOLING.time_constant_s());
    // Stored and lost over what shone in.
    let gain_m2 = mean(tested.runs.iter().map(|run| {
        let lines = lines(run);
        let span = between(&lines, 35.0, 85.0);
        let (first, last) = (&span[0], &span[span.len() - 1]);
        let heat_j_k = run.plan.water_kg * WATER_J_KG_K + DISH_COOLING.vessel_j_k;
        let stored_j = heat_j_k * (last.heated_c - first.heated_c);
        let length_s = last.at_s - first.at_s;
        let lost_w = DISH_COOLING.loss_w_k() * mean(span.iter().map(Line::difference_k));
        (stored_j / length_s + lost_w) / mean(span.iter().map(|line| line.irradiance_w_m2))
    }));
    agrees(gain_m2, DISH_COOLING.gain_m2());
}

#[test]
fn the_dry_pot_reaches_its_difference_on_an_ovens_dial() {
    let assessment = sample("dry-pot");
    assert!(assessment.tested.runs.is_empty());
    let dry = assessment.tested.dry_runs;
    assert_eq!(dry.len(), 2);
    agrees(of_dry_runs(&dry), DRY_POT.difference_k_m2_w());
    for line in dry.iter().flat_map(lines) {
        let marks = (line.heated_c * 1.8 + 32.0) / 5.0;
        assert!((marks - marks.round()).abs() < 1e-6, "{}", line.heated_c);
    }
}
