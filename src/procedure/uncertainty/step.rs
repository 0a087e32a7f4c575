//! The step in which a thermometer was read, as its readings show it.

use super::points::ReadingSpread;
use crate::campaign::classes::InstrumentKind;
use crate::campaign::model::Instrument;
use crate::logs::Series;
use crate::procedure::sources::{class_resolution_k, standard_of};
use crate::procedure::tested::Tested;

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

/// How surely single readings of the water were made: its step, as stated, else as seen in the
/// readings, else that of the class, read to the nearest; and the clock.
///
/// # Source
/// JCGM 100:2008, F.2.2.1: a step d has the standard deviation d/√12.
pub fn reading_spread(tested: &Tested) -> ReadingSpread {
    let instruments = &tested.campaign.instruments;
    let waters = tested.runs.iter().map(|run| &run.readings.water_c);
    let step_k = step_k(&instruments.water_temperature, waters);
    let clock = standard_of(&instruments.clock, InstrumentKind::Clock);
    ReadingSpread {
        water_k: step_k.map(|step_k| step_k / 12.0_f64.sqrt()),
        moment_s: clock.uncertainty.size(),
    }
}

/// The step of a thermometer, K: as stated, else as seen in its readings, else that of its class;
/// `None` where none of them tells.
pub fn step_k<'s>(
    thermometer: &Instrument,
    readings: impl Iterator<Item = &'s Series>,
) -> Option<f64> {
    let stated_k = thermometer.resolution_k.or_else(|| step_seen_k(readings));
    stated_k.or_else(|| class_resolution_k(thermometer))
}

/// Largest step, K, of which all temperatures are whole numbers, in °C or °F; of no usual one,
/// the smallest distance of two readings. `None` with too few of them.
fn step_seen_k<'s>(runs: impl Iterator<Item = &'s Series>) -> Option<f64> {
    let readings: Vec<f64> = runs
        .flat_map(|run| run.value.iter().take(MOST).copied())
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
