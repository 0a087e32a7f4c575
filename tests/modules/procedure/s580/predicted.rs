//! The heating that the line predicts for each run, against stepping the same differential
//! equation with the classical fourth-order rule (Abramowitz and Stegun 1964, 25.5.10; from
//! memory), which shares no formula with the closed form of the code.

use std::path::Path;

use simmerline::assess_folder;

use crate::data::assert_absolute;

/// c of water, J/(kg K), and the irradiance that power is normalised to, W/m²: the practice.
const SPECIFIC_HEAT_J_PER_KG_K: f64 = 4186.0;
const STANDARD_IRRADIANCE_W_M2: f64 = 700.0;
/// Steps in an interval.
const STEPS: usize = 60;

#[test]
fn predicted_water_is_that_of_stepping_the_differential_equation() {
    // Tolerance: a fourth-order step errs by (h/τ)⁴/120 < 1e-11 of a rise of under 100 K, h =
    // 10 s, τ over 2000 s; a run has at most 40 intervals.
    for sample in ["open-dish", "panel-cloudy", "kitchen-thermometer"] {
        let rated = assess_folder(&Path::new("sample-runs").join(sample)).unwrap();
        let line = rated.s580.line().unwrap();
        let mut points = 0;
        for (index, run) in rated.tested.runs.iter().enumerate() {
            let Some(predicted) = &rated.s580.predicted[index] else {
                continue;
            };
            let mut squares = Vec::new();
            for piece in &predicted.pieces {
                let mut water_c = piece[0].1;
                for pair in piece.windows(2) {
                    let interval = rated.s580.intervals_of(index);
                    let interval = interval
                        .into_iter()
                        .find(|one| one.measured.span.from_us == pair[0].0);
                    let interval = interval.unwrap();
                    assert_eq!(interval.measured.span.to_us, pair[1].0);
                    let ambient_c = interval.measured.ambient.unwrap().mean;
                    let share =
                        interval.measured.irradiance.unwrap().mean / STANDARD_IRRADIANCE_W_M2;
                    let rise = |water_c: f64| {
                        (line.intercept + line.slope * (water_c - ambient_c)) * share
                            / (run.plan.water_kg * SPECIFIC_HEAT_J_PER_KG_K)
                    };
                    let step_s = interval.measured.duration_s / STEPS as f64;
                    for _ in 0..STEPS {
                        let k1 = rise(water_c);
                        let k2 = rise(water_c + step_s / 2.0 * k1);
                        let k3 = rise(water_c + step_s / 2.0 * k2);
                        let k4 = rise(water_c + step_s * k3);
                        water_c += step_s / 6.0 * (k1 + 2.0 * k2 + 2.0 * k3 + k4);
                    }
                    water_c = water_c.min(rated.tested.boiling_point_c);
                    assert_absolute(sample, pair[1].1, water_c, 1e-8);
                    squares.push((water_c - interval.measured.water_end_c).powi(2));
                    points += 1;
                }
            }
            let mean = squares.iter().sum::<f64>() / squares.len() as f64;
            assert_absolute(sample, predicted.rms_k, mean.sqrt(), 1e-8);
        }
        assert!(points > 10, "{sample}: {points} points");
    }
}
