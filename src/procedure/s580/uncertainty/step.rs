//! The step in which a thermometer was read, as its readings show it.

use crate::procedure::run::Run;

/// Steps of thermometers in °C, and in °F, largest first; digital ones step by halves of a degree.
const STEPS: &[f64] = &[
    5.0, 2.0, 1.0, 0.5, 0.25, 0.2, 0.125, 0.1, 0.0625, 0.05, 0.02, 0.01,
];
/// Fewest readings that show a step.
const FEWEST: usize = 10;
/// Most readings of a run that are looked at.
const MOST: usize = 400;
/// How far from a whole number of steps a reading may be by rounding.
const ROUNDING: f64 = 1e-6;
/// Kelvin in a degree Fahrenheit.
const K_PER_F: f64 = 5.0 / 9.0;

/// Largest step, K, of which all water temperatures are whole numbers, in °C or °F; of no
/// usual one, the smallest distance of two readings. `None` with too few of them.
pub fn step_seen_k(runs: &[Run]) -> Option<f64> {
    let waters = runs.iter().map(|run| &run.readings.water_c.value);
    let readings: Vec<f64> = waters
        .flat_map(|water| water.iter().take(MOST).copied())
        .collect();
    if readings.len() < FEWEST {
        return None;
    }
    let fits = |step: f64, on_scale: fn(f64) -> f64| {
        readings.iter().all(|&celsius| {
            let steps = on_scale(celsius) / step;
            (steps - steps.round()).abs() < ROUNDING
        })
    };
    let celsius = STEPS
        .iter()
        .copied()
        .find(|&step| fits(step, |celsius| celsius));
    let fahrenheit = STEPS
        .iter()
        .copied()
        .find(|&step| fits(step, |celsius| celsius / K_PER_F + 32.0))
        .map(|step| step * K_PER_F);
    match (celsius, fahrenheit) {
        (Some(celsius_k), Some(fahrenheit_k)) => Some(celsius_k.max(fahrenheit_k)),
        (celsius_k, fahrenheit_k) => celsius_k
            .or(fahrenheit_k)
            .or_else(|| smallest_gap_k(readings)),
    }
}

/// Smallest distance of two readings that differ, K: no step is larger.
fn smallest_gap_k(mut readings: Vec<f64>) -> Option<f64> {
    readings.sort_by(f64::total_cmp);
    let gaps = readings.windows(2).map(|pair| pair[1] - pair[0]);
    gaps.filter(|gap| *gap > ROUNDING).min_by(f64::total_cmp)
}
