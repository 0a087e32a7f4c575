//! Clear days through the year: heat delivered, and water made safe.

use jiff::civil::{Date, Time};

use super::pots::{Cooking, Spread};
use crate::campaign::model::{Impact, Site};
use crate::local_time::unix_seconds;
use crate::physics::sun::next_noon_s;
use crate::physics::water::SPECIFIC_HEAT_J_PER_KG_K;
use crate::procedure::heat_balance::HeatBalance;
use crate::procedure::heat_balance::balance::at_w;
use crate::procedure::limit::at_least;
use crate::procedure::s580::limits::RATING_DIFFERENCE_K;
use crate::procedure::sky::LocalSky;
use crate::procedure::uncertainty::Region;
use crate::units::SECONDS_PER_HOUR;

/// Water temperature that counts as pasteurising, °C, and how long it is held, s.
///
/// # Source
/// 65 °C for 6 minutes: Ciochetti and Metcalf 1984, Appl. Environ. Microbiol. 47, 223–228,
/// from memory.
pub const PASTEURISED_C: f64 = 65.0;
/// See [`PASTEURISED_C`].
pub const PASTEURISED_S: f64 = 360.0;

/// Day of each month that stands for it.
const MIDDLE: i8 = 15;
/// Step at which the sky is computed, s, and at which water is heated, s.
const SKY_STEP_S: f64 = 1200.0;
const WATER_STEP_S: f64 = 60.0;
/// Half a day, s.
const HALF_DAY_S: f64 = 43_200.0;
/// Joules in a megajoule.
const J_PER_MJ: f64 = 1e6;

/// One month, by its clear middle day.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Month {
    /// 1 to 12.
    pub month: i8,
    /// Hours in which a clear sky gives enough irradiance by the practice.
    pub hours: f64,
    /// Heat taken up in them by water 50 K above ambient, J.
    pub heat_j: Spread,
    /// Water pasteurised in them, load by load, kg.
    pub pasteurised_kg: Spread,
}

/// Fuel not burnt.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FuelSaved {
    /// Mean heat on a clear day, J.
    pub heat_a_day_j: f64,
    /// In a year, kg.
    pub fuel_kg: Spread,
}

/// Clear days through the year.
#[derive(Debug, Clone, PartialEq)]
pub struct ClearYear {
    pub months: Vec<Month>,
    /// Where the campaign asks for it.
    pub fuel: Option<FuelSaved>,
}

/// The months of a year at a site, on days as clear as the model's, with at least so much
/// irradiance, W/m².
///
/// Heat: ∫ P dt at 50 K by the heat balance over the hours with enough irradiance.
/// Pasteurised: loads as tested, one after the other, from the start temperature to 65 °C by
/// the heat balance, and held for six minutes; a load that is not done by the end of those
/// hours does not count.
pub fn clear_year(
    site: &Site,
    year: i16,
    balance: &HeatBalance,
    cooking: &Cooking,
    least_w_m2: f64,
    impact: Option<&Impact>,
) -> ClearYear {
    let sky = LocalSky::over(site);
    let region = balance.region();
    let load = Load {
        water_kg: cooking.tested_kg,
        start_c: cooking.start_c,
        ambient_c: cooking.ambient_c,
    };
    let month = |month: i8| {
        let noon_s = noon_s(site, Date::new(year, month, MIDDLE).ok()?)?;
        let enough = day(&sky, noon_s, least_w_m2);
        let over_edges = |of: &dyn Fn(Edge) -> f64| EDGES.map(of);
        Some(Month {
            month,
            hours: enough.len() as f64 * WATER_STEP_S / SECONDS_PER_HOUR,
            heat_j: over_edges(&|edge| heat_j(&enough, &region, edge)),
            pasteurised_kg: over_edges(&|edge| {
                load.water_kg * loads(&enough, &region, edge, load) as f64
            }),
        })
    };
    let months: Vec<Month> = (1..=12).filter_map(month).collect();
    ClearYear {
        fuel: impact.and_then(|impact| fuel_saved(&months, impact)),
        months,
    }
}

/// Place in the 95 % band of the power: so many half-widths above the best estimate.
type Edge = f64;

/// The best estimate and both edges.
const EDGES: Spread<Edge> = Spread {
    best: 0.0,
    lowest: -1.0,
    highest: 1.0,
};

/// Power of the heat balance at one edge of its band, W; not negative.
fn power_w(region: &Region, edge: Edge, irradiance_w_m2: f64, difference_k: f64) -> f64 {
    let weights = at_w(irradiance_w_m2, difference_k);
    (region.value(weights) + edge * region.half_width(weights)).max(0.0)
}

/// Heat taken up by water 50 K above ambient, minute by minute, J.
fn heat_j(minutes: &[f64], region: &Region, edge: Edge) -> f64 {
    let powers = minutes.iter();
    let powers = powers.map(|w_m2| power_w(region, edge, *w_m2, RATING_DIFFERENCE_K));
    powers.sum::<f64>() * WATER_STEP_S
}

fn noon_s(site: &Site, date: Date) -> Option<f64> {
    let midnight_s = unix_seconds(date.to_datetime(Time::midnight()), &site.time_zone)?;
    next_noon_s(midnight_s, site.longitude_deg)
}

/// Irradiance on the plane normal to the beam, W/m², minute by minute while it is enough:
/// computed for the afternoon, straight lines between; the morning is its mirror, but for
/// what the sun's declination changes within a day.
fn day(sky: &LocalSky, noon_s: f64, least_w_m2: f64) -> Vec<f64> {
    let steps = (HALF_DAY_S / SKY_STEP_S) as usize;
    let coarse: Vec<f64> = (0..=steps)
        .map(|step| sky.clear(noon_s + step as f64 * SKY_STEP_S).normal_w_m2)
        .collect();
    let minutes_a_step = (SKY_STEP_S / WATER_STEP_S) as usize;
    let afternoon: Vec<f64> = coarse
        .windows(2)
        .flat_map(|pair| {
            let (from, to) = (pair[0], pair[1]);
            (0..minutes_a_step).map(move |minute| {
                from + (to - from) * (minute as f64 + 0.5) / minutes_a_step as f64
            })
        })
        .filter(|normal_w_m2| at_least(*normal_w_m2, least_w_m2))
        .collect();
    let morning = afternoon.iter().rev();
    morning.chain(&afternoon).copied().collect()
}

/// One load of water.
#[derive(Debug, Clone, Copy)]
struct Load {
    water_kg: f64,
    start_c: f64,
    ambient_c: f64,
}

/// Loads heated to 65 °C and held one after the other, minute by minute.
fn loads(minutes: &[f64], region: &Region, edge: Edge, load: Load) -> usize {
    let heat_j_per_k = load.water_kg * SPECIFIC_HEAT_J_PER_KG_K;
    let (mut done, mut water_c, mut held_s) = (0, load.start_c, 0.0);
    for irradiance_w_m2 in minutes {
        if water_c < PASTEURISED_C {
            let power_w = power_w(region, edge, *irradiance_w_m2, water_c - load.ambient_c);
            water_c += power_w * WATER_STEP_S / heat_j_per_k;
        } else {
            held_s += WATER_STEP_S;
        }
        if held_s >= PASTEURISED_S {
            done += 1;
            (water_c, held_s) = (load.start_c, 0.0);
        }
    }
    done
}

/// Fuel that a stove would burn for the same heat on so many clear days:
/// heat a day × days/(heating value × efficiency).
pub fn fuel_saved(months: &[Month], impact: &Impact) -> Option<FuelSaved> {
    if months.is_empty() {
        return None;
    }
    let mean = |of: fn(&Spread) -> f64| {
        months.iter().map(|month| of(&month.heat_j)).sum::<f64>() / months.len() as f64
    };
    let heat_j = Spread {
        best: mean(|spread| spread.best),
        lowest: mean(|spread| spread.lowest),
        highest: mean(|spread| spread.highest),
    };
    let of_fuel_j = impact.heating_value_mj_kg * J_PER_MJ * impact.stove_efficiency;
    Some(FuelSaved {
        heat_a_day_j: heat_j.best,
        fuel_kg: heat_j.map(|heat_j| heat_j * impact.days_per_year / of_fuel_j),
    })
}
