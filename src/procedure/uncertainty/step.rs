//! The step in which a thermometer was read, as its readings show it.

use crate::procedure::run::Run;

/// Steps of thermometers in °C, and in °F, largest first.
const STEPS: [f64; 9] = [5.0, 2.0, 1.0, 0.5, 0.2, 0.1, 0.05, 0.02, 0.01];
/// Fewest readings that show a step.
const FEWEST: usize = 10;
/// Most readings of a run that are looked at.
const MOST: usize = 400;
/// How far from a whole number of steps a reading may be by rounding.
const ROUNDING: f64 = 1e-6;
/// Kelvin in a degree Fahrenheit.
const K_PER_F: f64 = 5.0 / 9.0;

/// Largest step, K, of which all water temperatures are whole numbers, in °C or °F; `None`
/// where there is none that is a thermometer's.
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
        .into_iter()
        .find(|&step| fits(step, |celsius| celsius));
    let fahrenheit = STEPS
        .into_iter()
        .find(|&step| fits(step, |celsius| celsius / K_PER_F + 32.0))
        .map(|step| step * K_PER_F);
    match (celsius, fahrenheit) {
        (Some(celsius_k), Some(fahrenheit_k)) => Some(celsius_k.max(fahrenheit_k)),
        (celsius_k, fahrenheit_k) => celsius_k.or(fahrenheit_k),
    }
}
