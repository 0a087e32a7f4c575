//! What the line means for a pot of water.

use super::budget::Budget;
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

/// Normal quantile for 95 %, two-sided.
const NORMAL_95: f64 = 1.959_964;
/// Steps of the numeric integral along an edge of the band.
const STEPS: usize = 200;

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
    /// Where the useful heat ends; `None` if the line does not fall.
    pub heat_ends: Option<HeatEnd>,
    /// Mean load of the runs that contribute, kg.
    pub tested_kg: f64,
    pub boiling_point_c: f64,
    pub heatings: Vec<WaterHeating>,
}

/// Water temperature at which the line reaches zero, with its 95 % confidence range
/// from the regression, °C.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HeatEnd {
    pub best_c: f64,
    pub lowest_c: f64,
    pub highest_c: f64,
}

/// Time to heat one load from [`START_C`] to the target.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WaterHeating {
    pub water_kg: f64,
    /// `None`: it does not get there.
    pub time: Option<TimeRange>,
    /// Along the upper edge of the band it does get there.
    pub may_get_there: bool,
}

/// A time with its 95 % range from the regression and the stated uncertainty of
/// irradiance and mass, s.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TimeRange {
    pub best_s: f64,
    pub shortest_s: f64,
    /// `None`: along the lower edge of the band the target is not reached.
    pub longest_s: Option<f64>,
}

/// Heating times from the line and the budget of its uncertainty, for 1, 2 and 4 kg
/// and for `tested_kg`, the load that was tested; `None` without a used interval.
pub fn cook(
    line: &Line,
    budget: &Budget,
    intervals: &[Interval],
    tested_kg: f64,
    boiling_point_c: f64,
) -> Option<Cooking> {
    let ambients: Vec<f64> = intervals
        .iter()
        .filter(|interval| interval.is_on_line())
        .filter_map(|interval| Some(interval.ambient?.mean))
        .collect();
    if ambients.is_empty() {
        return None;
    }
    let ambient_c = ambients.iter().sum::<f64>() / ambients.len() as f64;
    let target_c = TARGET_C.min(boiling_point_c);
    let (from_k, to_k) = (START_C - ambient_c, target_c - ambient_c);
    let tested_load = Some(tested_kg).filter(|load_kg| !LOADS_KG.contains(load_kg));
    let heatings = LOADS_KG
        .into_iter()
        .chain(tested_load)
        .map(|water_kg| WaterHeating {
            water_kg,
            time: heating_time(line, water_kg, budget.relative_scale(), (from_k, to_k)),
            may_get_there: upper_edge_time_s(line, water_kg, (from_k, to_k)).is_some(),
        })
        .collect();
    Some(Cooking {
        irradiance_w_m2: STANDARD_IRRADIANCE_W_M2,
        ambient_c,
        target_c,
        boils_below_target: boiling_point_c < TARGET_C,
        heat_ends: heat_ends(line, ambient_c),
        tested_kg,
        boiling_point_c,
        heatings,
    })
}

/// Where the line reaches zero: x0 = −a/b, with u(x0) = u(a + b·x0)/|b|.
///
/// # Source
/// JCGM 100:2008, equation 13, to first order.
fn heat_ends(line: &Line, ambient_c: f64) -> Option<HeatEnd> {
    let ends_k = pot(line, 1.0).tends_to_k()?;
    let half_width_k = line.t() * line.standard_error(ends_k) / line.slope.abs();
    Some(HeatEnd {
        best_c: ambient_c + ends_k,
        lowest_c: ambient_c + ends_k - half_width_k,
        highest_c: ambient_c + ends_k + half_width_k,
    })
}

fn pot(line: &Line, water_kg: f64) -> Heating {
    Heating {
        intercept_w: line.intercept,
        slope_w_per_k: line.slope,
        heat_capacity_j_per_k: water_kg * SPECIFIC_HEAT_J_PER_KG_K,
    }
}

/// Time with its range: shortest and longest are the times along the upper and the
/// lower edge of the line's 95 % confidence band; what scales the whole line adds to
/// both in quadrature, as a factor.
fn heating_time(
    line: &Line,
    water_kg: f64,
    relative_scale: f64,
    (from_k, to_k): (f64, f64),
) -> Option<TimeRange> {
    let pot = pot(line, water_kg);
    let best_s = pot.time_s(from_k, to_k)?;
    let upper_s = upper_edge_time_s(line, water_kg, (from_k, to_k));
    let lower_edge_w = |difference_k: f64| line.confidence(difference_k).lower;
    let lower_s = time_along_s(&lower_edge_w, pot.heat_capacity_j_per_k, from_k, to_k);
    let scale = NORMAL_95 * relative_scale;
    let stretched_s = |edge_s: f64, sign: f64| {
        let logarithm = ((edge_s / best_s).ln().powi(2) + scale.powi(2)).sqrt();
        best_s * (sign * logarithm).exp()
    };
    Some(TimeRange {
        best_s,
        shortest_s: stretched_s(upper_s.unwrap_or(best_s), -1.0),
        longest_s: lower_s.map(|lower_s| stretched_s(lower_s, 1.0)),
    })
}

/// Time, s, along the upper edge of the band; `None`: not even so.
fn upper_edge_time_s(line: &Line, water_kg: f64, (from_k, to_k): (f64, f64)) -> Option<f64> {
    let upper_edge_w = |difference_k: f64| line.confidence(difference_k).upper;
    let heat_capacity_j_per_k = pot(line, water_kg).heat_capacity_j_per_k;
    time_along_s(&upper_edge_w, heat_capacity_j_per_k, from_k, to_k)
}

/// Time, s, to heat along any course of the power over the temperature difference:
/// C ∫ dx/P(x) by the midpoint rule; `None` where the power is not positive.
fn time_along_s(
    power_w: &dyn Fn(f64) -> f64,
    heat_capacity_j_per_k: f64,
    from_k: f64,
    to_k: f64,
) -> Option<f64> {
    let step_k = (to_k - from_k) / STEPS as f64;
    let mut time_s = 0.0;
    for step in 0..STEPS {
        let power_w = power_w(from_k + (step as f64 + 0.5) * step_k);
        if power_w <= 0.0 {
            return None;
        }
        time_s += heat_capacity_j_per_k * step_k / power_w;
    }
    (power_w(to_k) > 0.0).then_some(time_s)
}
