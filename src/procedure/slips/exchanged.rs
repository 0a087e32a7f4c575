//! Water and air in each other's column.

use crate::campaign::kinds::RunKind;
use crate::language::{Message, fixed, kelvins};
use crate::message;
use crate::procedure::run::Run;

/// Air beside a cooker rises by less in the time of a run, K.
/// Common practice, no published source: on a desert's clear morning by 3 K in an hour.
const AIR_RISES_K: f64 = 20.0;
/// Water that is heated rises by more, K.
const WATER_KEEPS_K: f64 = 15.0;
/// So far the air ends above the water, K.
const AIR_ABOVE_WATER_K: f64 = 10.0;

/// The air of a run heats as water does, and its water keeps to it as air does.
#[derive(Debug, Clone, PartialEq)]
pub struct WaterAndAirExchanged {
    pub log: String,
    pub water_rise_k: f64,
    pub air_rise_k: f64,
}

/// That water and air of a run are exchanged.
pub fn exchanged(run: &Run) -> Option<WaterAndAirExchanged> {
    if run.plan.kind != RunKind::Water {
        return None;
    }
    let highest = |values: &[f64]| values.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    let lowest = |values: &[f64]| values.iter().copied().fold(f64::INFINITY, f64::min);
    let water_c = &run.readings.water_c.value;
    let air_c = &run.readings.ambient_c.as_ref()?.value;
    let air_rise_k = highest(air_c) - air_c.first()?;
    let water_rise_k = highest(water_c) - lowest(water_c);
    let is_slip = air_rise_k > AIR_RISES_K
        && water_rise_k < WATER_KEEPS_K
        && highest(air_c) > highest(water_c) + AIR_ABOVE_WATER_K;
    is_slip.then(|| WaterAndAirExchanged {
        log: run.plan.label.clone(),
        water_rise_k,
        air_rise_k,
    })
}

impl WaterAndAirExchanged {
    /// What it says.
    pub fn message(&self) -> Message {
        message!(
            "notice-water-air-exchanged",
            log = &self.log,
            water = kelvins(fixed(self.water_rise_k, 0)),
            air = kelvins(fixed(self.air_rise_k, 0))
        )
    }
}
