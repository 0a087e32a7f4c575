//! What the line means for a pot of water.

use super::intervals::Interval;
use super::limits::STANDARD_IRRADIANCE_W_M2;
use crate::physics::heating::Heating;
use crate::physics::water::SPECIFIC_HEAT_J_PER_KG_K;
use crate::stats::line::Line;

/// Loads that heating times are given for, kg of water.
const LOADS_KG: [f64; 3] = [1.0, 2.0, 4.0];
/// Water temperature at the start, °C.
pub const START_C: f64 = 20.0;
/// Water temperature aimed at, °C.
pub const TARGET_C: f64 = 95.0;

/// Heating of water at 700 W/m² in air of the campaign's mean temperature.
#[derive(Debug, Clone, PartialEq)]
pub struct Cooking {
    /// Irradiance assumed, W/m².
    pub irradiance_w_m2: f64,
    /// Mean ambient temperature of the used intervals, °C.
    pub ambient_c: f64,
    /// [`TARGET_C`], or the local boiling point if that is lower, °C.
    pub target_c: f64,
    /// Water boils below [`TARGET_C`].
    pub boils_below_target: bool,
    /// Temperature at which the useful heat ends, °C; `None` if the line does not fall.
    pub heat_ends_c: Option<f64>,
    pub boiling_point_c: f64,
    pub heatings: Vec<WaterHeating>,
}

/// Time to heat one load from [`START_C`] to the target.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WaterHeating {
    pub water_kg: f64,
    /// `None`: it does not get there.
    pub time: Option<TimeRange>,
}

/// A time with its 95 % confidence range from the regression, s.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TimeRange {
    pub best_s: f64,
    pub shortest_s: f64,
    /// `None`: along the lower edge of the band the target is not reached.
    pub longest_s: Option<f64>,
}

/// Heating times from the line; `None` without a used interval.
pub fn cook(line: &Line, intervals: &[Interval], boiling_point_c: f64) -> Option<Cooking> {
    let ambients: Vec<f64> = intervals
        .iter()
        .filter(|interval| interval.is_used())
        .filter_map(|interval| Some(interval.ambient?.mean))
        .collect();
    if ambients.is_empty() {
        return None;
    }
    let ambient_c = ambients.iter().sum::<f64>() / ambients.len() as f64;
    let target_c = TARGET_C.min(boiling_point_c);
    let heatings = LOADS_KG
        .into_iter()
        .map(|water_kg| WaterHeating {
            water_kg,
            time: heating_time(line, water_kg, START_C - ambient_c, target_c - ambient_c),
        })
        .collect();
    let tends_to_k = pot(line, 1.0).tends_to_k();
    Some(Cooking {
        irradiance_w_m2: STANDARD_IRRADIANCE_W_M2,
        ambient_c,
        target_c,
        boils_below_target: boiling_point_c < TARGET_C,
        heat_ends_c: tends_to_k.map(|difference_k| ambient_c + difference_k),
        boiling_point_c,
        heatings,
    })
}

fn pot(line: &Line, water_kg: f64) -> Heating {
    Heating {
        intercept_w: line.intercept,
        slope_w_per_k: line.slope,
        heat_capacity_j_per_k: water_kg * SPECIFIC_HEAT_J_PER_KG_K,
    }
}

/// Time with a range from the variance of the line: first-order propagation to
/// ln t, u² = (∂t/∂a)² u²(a) + (∂t/∂b)² u²(b) + 2 ∂t/∂a ∂t/∂b cov(a, b).
///
/// # Source
/// JCGM 100:2008, equation 13.
fn heating_time(line: &Line, water_kg: f64, from_k: f64, to_k: f64) -> Option<TimeRange> {
    let heating = pot(line, water_kg).time(from_k, to_k)?;
    let by_intercept = heating.per_intercept * line.intercept_standard_error;
    let by_slope = heating.per_slope * line.slope_standard_error;
    let shared = heating.per_intercept * heating.per_slope * line.covariance;
    let variance = by_intercept.powi(2) + by_slope.powi(2) + 2.0 * shared;
    let factor = (line.t() * variance.max(0.0).sqrt() / heating.time_s).exp();
    let surely_there = line.confidence(to_k).lower > 0.0;
    Some(TimeRange {
        best_s: heating.time_s,
        shortest_s: heating.time_s / factor,
        longest_s: surely_there.then_some(heating.time_s * factor),
    })
}
