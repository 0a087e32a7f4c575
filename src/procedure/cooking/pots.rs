//! What the test means for a pot of water.

use crate::campaign::model::CookingWishes;
use crate::physics::food::{FOODS, Food};
use crate::physics::heating::Heating;
use crate::physics::water::SPECIFIC_HEAT_J_PER_KG_K;
use crate::procedure::uncertainty::Region;

/// Loads that heating times are given for, kg of water.
const LOADS_KG: &[f64] = &[1.0, 2.0, 4.0];
/// Water temperature at the start, °C.
pub const START_C: f64 = 20.0;
/// Water temperature aimed at, °C.
pub const TARGET_C: f64 = 95.0;
/// Temperature from which bacteria no longer grow in food, °C.
///
/// # Source
/// WHO, Five Keys to Safer Food (2006), key 4: 5 to 60 °C is where they do.
pub const HOT_C: f64 = 60.0;

/// Steps of the numeric integral along an edge of the band.
const STEPS: usize = 200;
/// Halvings of a step: far below a millikelvin.
const HALVINGS: usize = 30;

/// Heating of water at one irradiance in air of one temperature.
#[derive(Debug, Clone, PartialEq)]
pub struct Cooking {
    /// For which it is worked out, W/m²: the mean of the used intervals, or as the campaign
    /// asks.
    pub irradiance_w_m2: f64,
    pub is_irradiance_asked: bool,
    /// Ambient temperature, °C: the mean of the used intervals, or as the campaign asks.
    pub ambient_c: f64,
    pub is_ambient_asked: bool,
    /// Temperature at the start, °C.
    pub start_c: f64,
    /// [`TARGET_C`], or the local boiling point if that is lower, °C.
    pub target_c: f64,
    /// Water boils below [`TARGET_C`].
    pub boils_below_target: bool,
    /// Where the useful heat ends; `None` if the power does not fall.
    pub heat_ends: Option<HeatEnd>,
    /// Mean load of the runs that contribute, kg.
    pub tested_kg: f64,
    pub boiling_point_c: f64,
    pub heatings: Vec<WaterHeating>,
    /// What fits into the solar window.
    pub foods: Vec<FoodHeating>,
    /// Length of the solar window, s.
    pub window_s: f64,
    /// Time from the start to 60 °C with the load tested, where bacteria no longer grow.
    pub to_hot: Option<TimeRange>,
}

/// By the best estimate, and along the lower and the upper edge of its 95 % band.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Spread<T = f64> {
    pub best: T,
    pub lowest: T,
    pub highest: T,
}

impl<T> Spread<T> {
    /// The same of each.
    pub fn map<U>(self, of: impl Fn(T) -> U) -> Spread<U> {
        Spread {
            best: of(self.best),
            lowest: of(self.lowest),
            highest: of(self.highest),
        }
    }
}

/// Food that can be brought to its cooking temperature and held there, kg.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FoodHeating {
    pub food: Food,
    /// `None`: it does not get there. Never more than the load tested, beyond which the
    /// rating says nothing.
    pub kg: Spread<Option<f64>>,
}

/// Water temperature at which the power reaches zero, and at which either edge of its 95 %
/// band does, °C; the boiling point where that comes first.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HeatEnd {
    pub best_c: f64,
    pub lowest_c: f64,
    pub highest_c: f64,
}

/// Time to heat one load from the start to the target.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WaterHeating {
    pub water_kg: f64,
    /// `None`: it does not get there.
    pub time: Option<TimeRange>,
    /// To boiling.
    pub boil: Option<TimeRange>,
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

/// What a rated cooker is asked about.
#[derive(Debug, Clone, Copy)]
pub struct Kitchen<'k> {
    /// Mean load of the runs that contribute, kg.
    pub tested_kg: f64,
    /// Mean ambient temperature of the used intervals, °C.
    pub mean_ambient_c: f64,
    /// For which the power is, W/m².
    pub irradiance_w_m2: f64,
    pub boiling_point_c: f64,
    /// Length of the solar window, s.
    pub window_s: f64,
    pub wishes: &'k CookingWishes,
}

/// Heating times from the power at one irradiance (intercept and slope over the temperature
/// difference, with their uncertainty), for the amounts the campaign asks for,
/// else 1, 2 and 4 kg, and for the load that was tested.
pub fn cook(power: &Region, kitchen: Kitchen<'_>) -> Cooking {
    let Kitchen {
        tested_kg,
        mean_ambient_c,
        irradiance_w_m2,
        boiling_point_c,
        window_s,
        wishes,
    } = kitchen;
    let ambient_c = wishes.ambient_c.unwrap_or(mean_ambient_c);
    let start_c = wishes.start_c.unwrap_or(START_C);
    let target_c = TARGET_C.min(boiling_point_c);
    let band = Band {
        power: *power,
        ambient_c,
    };
    let amounts = match wishes.water_kg.as_slice() {
        [] => LOADS_KG.to_vec(),
        asked => asked.to_vec(),
    };
    let tested_load = Some(tested_kg).filter(|load_kg| !amounts.contains(load_kg));
    let (to_target, to_boiling) = (
        band.kelvins_per_watt(start_c, target_c),
        band.kelvins_per_watt(start_c, boiling_point_c),
    );
    let heatings = amounts
        .iter()
        .copied()
        .chain(tested_load)
        .map(|water_kg| WaterHeating {
            water_kg,
            time: time_range(to_target, water_kg),
            boil: time_range(to_boiling, water_kg),
            may_get_there: to_target.highest.is_some(),
        })
        .collect();
    let food = |food: &Food| {
        let k_per_w = band.kelvins_per_watt(start_c, food.cooks_at_c.min(boiling_point_c));
        let left_s = (window_s - food.held_s).max(0.0);
        let heat_j_per_kg_k = food.specific_heat_j_per_kg_k();
        FoodHeating {
            food: *food,
            kg: k_per_w.map(|k_per_w| {
                k_per_w.map(|k_per_w| (left_s / (heat_j_per_kg_k * k_per_w)).min(tested_kg))
            }),
        }
    };
    Cooking {
        irradiance_w_m2,
        is_irradiance_asked: wishes.irradiance_w_m2.is_some(),
        ambient_c,
        is_ambient_asked: wishes.ambient_c.is_some(),
        start_c,
        target_c,
        boils_below_target: boiling_point_c < TARGET_C,
        heat_ends: band.heat_ends(boiling_point_c),
        tested_kg,
        boiling_point_c,
        heatings,
        foods: FOODS.iter().map(food).collect(),
        window_s,
        to_hot: time_range(band.kelvins_per_watt(start_c, HOT_C), tested_kg),
    }
}

/// Time to heat one load over a span of temperature differences (K above ambient), with the
/// power at one irradiance.
pub fn heating_time(
    power: &Region,
    water_kg: f64,
    (from_k, to_k): (f64, f64),
) -> Option<TimeRange> {
    let band = Band {
        power: *power,
        ambient_c: 0.0,
    };
    time_range(band.kelvins_per_watt(from_k, to_k), water_kg)
}

/// The power at one irradiance with its 95 % band, in air of one temperature.
#[derive(Debug, Clone, Copy)]
struct Band {
    /// Intercept (W) and slope (W/K) over the temperature difference.
    power: Region,
    ambient_c: f64,
}

impl Band {
    /// Cooking power at a temperature difference, W.
    fn power_w(&self, difference_k: f64) -> Spread {
        let weights = [1.0, difference_k];
        let best = self.power.value(weights);
        let half_width = self.power.half_width(weights);
        Spread {
            best,
            lowest: best - half_width,
            highest: best + half_width,
        }
    }

    fn one_kelvin(&self) -> Heating {
        let [intercept_w, slope_w_per_k] = self.power.parameters;
        Heating {
            intercept_w,
            slope_w_per_k,
            heat_capacity_j_per_k: 1.0,
        }
    }

    /// Where the power and either edge of its band reach zero, from ambient up; the boiling
    /// point where that comes first. `None` if the power does not fall.
    fn heat_ends(&self, boiling_point_c: f64) -> Option<HeatEnd> {
        let most_k = boiling_point_c - self.ambient_c;
        let best_k = self.one_kelvin().tends_to_k()?.min(most_k);
        let ends_c = |edge: &dyn Fn(f64) -> f64| self.ambient_c + first_zero(edge, most_k);
        Some(HeatEnd {
            best_c: self.ambient_c + best_k,
            lowest_c: ends_c(&|k| self.power_w(k).lowest),
            highest_c: ends_c(&|k| self.power_w(k).highest),
        })
    }

    /// ∫ dx/P over a span of water temperatures, °C, in K/W: times a heat capacity it is a
    /// time. `None` where the power is not positive all the way.
    fn kelvins_per_watt(&self, from_c: f64, to_c: f64) -> Spread<Option<f64>> {
        let span_k = (from_c - self.ambient_c, to_c - self.ambient_c);
        Spread {
            best: self.one_kelvin().time_s(span_k.0, span_k.1),
            lowest: kelvins_per_watt(&|k| self.power_w(k).lowest, span_k),
            highest: kelvins_per_watt(&|k| self.power_w(k).highest, span_k),
        }
    }
}

/// First temperature difference from 0 to `most_k` at which a power is no longer positive, K;
/// `most_k` where it always is. Steps of a 200th, then halved.
fn first_zero(power_w: &dyn Fn(f64) -> f64, most_k: f64) -> f64 {
    let step_k = most_k / STEPS as f64;
    let beyond = (0..=STEPS).find(|&step| power_w(step as f64 * step_k) <= 0.0);
    let Some(beyond) = beyond else {
        return most_k;
    };
    let (mut below_k, mut above_k) = (
        (beyond as f64 - 1.0).max(0.0) * step_k,
        beyond as f64 * step_k,
    );
    for _ in 0..HALVINGS {
        let middle_k = (below_k + above_k) / 2.0;
        if power_w(middle_k) > 0.0 {
            below_k = middle_k;
        } else {
            above_k = middle_k;
        }
    }
    above_k
}

/// Time to heat water by what a band takes for each kelvin.
fn time_range(k_per_w: Spread<Option<f64>>, water_kg: f64) -> Option<TimeRange> {
    let time_s = |k_per_w: f64| water_kg * SPECIFIC_HEAT_J_PER_KG_K * k_per_w;
    let best_s = time_s(k_per_w.best?);
    // Where there is no band, the numeric integral must not beat the closed form.
    Some(TimeRange {
        best_s,
        shortest_s: k_per_w.highest.map_or(best_s, time_s).min(best_s),
        longest_s: k_per_w.lowest.map(|k_per_w| time_s(k_per_w).max(best_s)),
    })
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
