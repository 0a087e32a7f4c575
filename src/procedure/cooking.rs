//! What the line means for a pot of water.

use super::intervals::Interval;
use super::limits::STANDARD_IRRADIANCE_W_M2;
use super::uncertainty::LineUncertainty;
use crate::physics::heating::Heating;
use crate::physics::water::SPECIFIC_HEAT_J_PER_KG_K;
use crate::stats::line::Line;

/// Loads that heating times are given for, kg of water.
const LOADS_KG: [f64; 3] = [1.0, 2.0, 4.0];
/// Water temperature at the start, °C.
pub const START_C: f64 = 20.0;
/// Water temperature aimed at, °C.
pub const TARGET_C: f64 = 95.0;

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

/// Water temperature at which the line reaches zero, with its 95 % range, °C.
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

/// A time with its range along the edges of the line's 95 % band, instruments included, s.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TimeRange {
    pub best_s: f64,
    pub shortest_s: f64,
    /// `None`: along the lower edge of the band the target is not reached.
    pub longest_s: Option<f64>,
}

/// Heating times from the line and its uncertainty, for 1, 2 and 4 kg and for
/// `tested_kg`, the load that was tested; `None` without a used interval.
pub fn cook(
    uncertainty: &LineUncertainty,
    intervals: &[Interval],
    tested_kg: f64,
    boiling_point_c: f64,
) -> Option<Cooking> {
    let ambient_c = mean_ambient_c(intervals)?;
    let target_c = TARGET_C.min(boiling_point_c);
    let span_k = (START_C - ambient_c, target_c - ambient_c);
    let tested_load = Some(tested_kg).filter(|load_kg| !LOADS_KG.contains(load_kg));
    let edges = Edges::along(uncertainty, span_k);
    let heatings = LOADS_KG
        .into_iter()
        .chain(tested_load)
        .map(|water_kg| WaterHeating {
            water_kg,
            time: edges.heating_time(&uncertainty.line, water_kg),
            may_get_there: edges.upper_k_per_w.is_some(),
        })
        .collect();
    Some(Cooking {
        irradiance_w_m2: STANDARD_IRRADIANCE_W_M2,
        ambient_c,
        target_c,
        boils_below_target: boiling_point_c < TARGET_C,
        heat_ends: heat_ends(uncertainty, ambient_c),
        tested_kg,
        boiling_point_c,
        heatings,
    })
}

/// Mean ambient temperature of the intervals on the line, °C; `None` without one.
pub fn mean_ambient_c(intervals: &[Interval]) -> Option<f64> {
    let ambients: Vec<f64> = intervals
        .iter()
        .filter(|interval| interval.is_on_line())
        .filter_map(|interval| Some(interval.ambient?.mean))
        .collect();
    (!ambients.is_empty()).then(|| ambients.iter().sum::<f64>() / ambients.len() as f64)
}

/// Time to heat one load over a span of temperature differences (K above ambient).
pub fn heating_time(
    uncertainty: &LineUncertainty,
    water_kg: f64,
    span_k: (f64, f64),
) -> Option<TimeRange> {
    Edges::along(uncertainty, span_k).heating_time(&uncertainty.line, water_kg)
}

/// Where the line reaches zero: x0 = −a/b, with U(x0) = U(a + b·x0)/|b|.
///
/// # Source
/// JCGM 100:2008, equation 13, to first order.
fn heat_ends(uncertainty: &LineUncertainty, ambient_c: f64) -> Option<HeatEnd> {
    let line = &uncertainty.line;
    let ends_k = pot(line, 1.0).tends_to_k()?;
    let half_width_k = uncertainty.at(ends_k).expanded_w() / line.slope.abs();
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

/// Both edges of the 95 % band over a span of temperature differences.
struct Edges {
    span_k: (f64, f64),
    /// ∫ dx/P along the edge, K/W; `None` where the power is not positive all the way.
    upper_k_per_w: Option<f64>,
    lower_k_per_w: Option<f64>,
}

impl Edges {
    fn along(uncertainty: &LineUncertainty, span_k: (f64, f64)) -> Edges {
        let edge_w = |sign: f64| {
            move |difference_k: f64| {
                let budget = uncertainty.at(difference_k);
                budget.power_w + sign * budget.expanded_w()
            }
        };
        Edges {
            span_k,
            upper_k_per_w: kelvins_per_watt(&edge_w(1.0), span_k),
            lower_k_per_w: kelvins_per_watt(&edge_w(-1.0), span_k),
        }
    }

    fn heating_time(&self, line: &Line, water_kg: f64) -> Option<TimeRange> {
        let pot = pot(line, water_kg);
        let best_s = pot.time_s(self.span_k.0, self.span_k.1)?;
        // Where there is no band, the numeric integral must not beat the closed form.
        let time_s = |k_per_w: f64| pot.heat_capacity_j_per_k * k_per_w;
        Some(TimeRange {
            best_s,
            shortest_s: self.upper_k_per_w.map_or(best_s, time_s).min(best_s),
            longest_s: self
                .lower_k_per_w
                .map(|k_per_w| time_s(k_per_w).max(best_s)),
        })
    }
}

/// ∫ dx/P(x), K/W, of any course of the power by the midpoint rule; `None` where the power
/// is not positive. Times a heat capacity it is a time.
fn kelvins_per_watt(power_w: &dyn Fn(f64) -> f64, (from_k, to_k): (f64, f64)) -> Option<f64> {
    let step_k = (to_k - from_k) / STEPS as f64;
    let mut sum = 0.0;
    for step in 0..STEPS {
        let power_w = power_w(from_k + (step as f64 + 0.5) * step_k);
        if power_w <= 0.0 {
            return None;
        }
        sum += step_k / power_w;
    }
    (power_w(to_k) > 0.0).then_some(sum)
}
