//! What page one of every sample says of the water, held against the physics that made it.
//!
//! The samples are invented, and `sample-runs/scenario.rs` has what they were made of: a water
//! that gains η A f G and loses (U + Uw v)(T − Ta), of which the vessel takes its part. Day by
//! day η wanders by 2.5 %, which is in the ± as what days do.

use simmerline::procedure::Assessment;
use simmerline::procedure::cooking::pots::HOT_C;
use simmerline::stats::line::Bounds;

use crate::kit::rate::sample;
use crate::truth::{BOX_FIGURES, DISH_COOLING};

/// What a sample was made of.
struct Truth {
    name: &'static str,
    /// A, m², and η.
    area_m2: f64,
    efficiency: f64,
    /// U, W/K, and Uw, W/K for each m/s; the mean wind of its days, m/s.
    loss_w_per_k: f64,
    wind_loss: f64,
    wind_m_s: f64,
    /// C, J/K, beside the water, kg.
    dead_j_per_k: f64,
    water_kg: f64,
    /// Share of the light lost at the end of each aiming; a third of it on average.
    aim_loss: f64,
}

const OCTAGON: Truth = Truth {
    name: "open-dish",
    area_m2: 1.0525,
    efficiency: 0.33,
    loss_w_per_k: 2.3,
    wind_loss: 0.7,
    wind_m_s: 0.5,
    dead_j_per_k: 1100.0,
    water_kg: 7.37,
    aim_loss: 0.06,
};
const BOX: Truth = Truth {
    name: "box",
    area_m2: 0.496,
    efficiency: 0.36,
    loss_w_per_k: 1.25,
    wind_loss: 0.12,
    wind_m_s: 0.5,
    dead_j_per_k: 2600.0,
    water_kg: 3.47,
    aim_loss: 0.05,
};

/// Every sample whose sensor faced the sun, or whose irradiance was estimated to do so.
const SAMPLES: &[Truth] = &[
    OCTAGON,
    Truth {
        name: "open-dish-skirt",
        efficiency: 0.33 * 0.98,
        loss_w_per_k: 1.65,
        wind_loss: 0.2,
        dead_j_per_k: 1350.0,
        ..OCTAGON
    },
    BOX,
    Truth {
        name: "box-autumn",
        ..BOX
    },
    Truth {
        name: "panel-cloudy",
        area_m2: 0.46,
        efficiency: 0.26,
        loss_w_per_k: 1.0,
        wind_loss: 0.25,
        wind_m_s: 0.8,
        dead_j_per_k: 600.0,
        water_kg: 3.22,
        aim_loss: 0.10,
    },
    Truth {
        name: "tube-area-slip",
        area_m2: 0.28,
        efficiency: 0.72,
        loss_w_per_k: 0.22,
        wind_loss: 0.03,
        wind_m_s: 0.5,
        dead_j_per_k: 300.0,
        water_kg: 1.26,
        aim_loss: 0.06,
    },
    Truth {
        name: "kitchen-thermometer",
        area_m2: 0.70,
        efficiency: 0.46,
        loss_w_per_k: 2.0,
        wind_loss: 0.4,
        wind_m_s: 0.8,
        dead_j_per_k: 900.0,
        water_kg: 4.9,
        aim_loss: 0.05,
    },
];

impl Truth {
    /// Power of the water at an irradiance (W/m²) and a temperature difference (K), W.
    fn power_w(&self, irradiance_w_m2: f64, difference_k: f64) -> f64 {
        let water_j_per_k = self.water_kg * 4186.0;
        let share = water_j_per_k / (water_j_per_k + self.dead_j_per_k);
        let gain_m2 = self.efficiency * self.area_m2 * (1.0 - self.aim_loss / 3.0);
        let loss_w_per_k = self.loss_w_per_k + self.wind_loss * self.wind_m_s;
        share * (gain_m2 * irradiance_w_m2 - loss_w_per_k * difference_k)
    }

    /// Time to heat the water between two temperature differences, s, in steps of a second;
    /// `None` where it does not get there in a day.
    fn time_s(&self, irradiance_w_m2: f64, (from_k, to_k): (f64, f64)) -> Option<f64> {
        let mut at_k = from_k;
        (0..86_400).find_map(|second| {
            if at_k >= to_k {
                return Some(f64::from(second));
            }
            at_k += self.power_w(irradiance_w_m2, at_k) / (self.water_kg * 4186.0);
            None
        })
    }
}

/// A claim with 95 % may miss now and then, and never by much: half as far again as its
/// interval reaches. Whether it misses.
fn misses(name: &str, interval: Bounds, truth: f64) -> bool {
    let Bounds { lower, upper } = interval;
    let beyond = (upper - lower) / 4.0;
    let is_near = (lower - beyond..=upper + beyond).contains(&truth);
    assert!(is_near, "{name}: {interval:?} far from {truth}");
    !(lower..=upper).contains(&truth)
}

/// Claims of all samples together: at most one in ten misses.
fn few_miss(missed: &[bool]) {
    let count = missed.iter().filter(|missed| **missed).count();
    assert!(
        10 * count <= 10 + missed.len(),
        "{count} of {}",
        missed.len()
    );
}

/// Mean irradiance of the used intervals, W/m².
fn of_test_w_m2(assessment: &Assessment) -> f64 {
    assessment.s580.mean_irradiance_w_m2().unwrap()
}

#[test]
fn power_at_700_w_m2_is_that_of_the_physics() {
    let mut missed = Vec::new();
    for truth in SAMPLES {
        let assessment = sample(truth.name);
        let balance = assessment.heat_balance.unwrap();
        let true_w = truth.power_w(700.0, 50.0);
        // Few days tell little; four make a claim that could be wrong.
        let is_bold = balance.power_700_50_w.half_width() < 0.35 * true_w;
        assert!(is_bold || balance.dates.len() < 4, "{}", truth.name);
        missed.push(misses(truth.name, balance.power_700_50_w.interval, true_w));
    }
    few_miss(&missed);
}

#[test]
fn what_the_water_took_up_in_the_test_is_that_of_the_physics() {
    let mut missed = Vec::new();
    for truth in SAMPLES {
        let assessment = sample(truth.name);
        let took_up = assessment.s580.took_up().unwrap();
        let interval = Bounds {
            lower: took_up.power_w - took_up.half_width_w,
            upper: took_up.power_w + took_up.half_width_w,
        };
        let irradiance_w_m2 = took_up.irradiance_w_m2;
        let true_w = truth.power_w(irradiance_w_m2, 50.0);
        missed.push(misses(truth.name, interval, true_w));
    }
    few_miss(&missed);
}

#[test]
fn time_to_60_degrees_and_the_end_of_the_heat_are_those_of_the_physics() {
    let mut missed = Vec::new();
    for truth in SAMPLES {
        let assessment = sample(truth.name);
        let irradiance_w_m2 = of_test_w_m2(&assessment);
        // Nothing cooks by a number that is not valid.
        if assessment.s580.is_not_valid() {
            assert_eq!(truth.name, "tube-area-slip");
            continue;
        }
        let cooking = assessment.prospect.unwrap().cooking;
        let span_k = (
            cooking.start_c - cooking.ambient_c,
            HOT_C - cooking.ambient_c,
        );
        let true_s = truth.time_s(irradiance_w_m2, span_k).unwrap();
        let time = cooking.to_hot.unwrap();
        let range = Bounds {
            lower: time.shortest_s,
            upper: time.longest_s.unwrap_or(f64::INFINITY),
        };
        missed.push(misses(truth.name, range, true_s));
        let ends = cooking.heat_ends.unwrap();
        let true_k = (0..2_000)
            .map(|tenth| f64::from(tenth) / 10.0)
            .find(|k| truth.power_w(irradiance_w_m2, *k) <= 0.0);
        let true_c = true_k.map_or(f64::INFINITY, |k| cooking.ambient_c + k);
        let true_c = true_c.min(cooking.boiling_point_c);
        let range = Bounds {
            lower: ends.lowest_c,
            upper: ends.highest_c,
        };
        missed.push(misses(truth.name, range, true_c));
    }
    few_miss(&missed);
}

#[test]
fn gain_and_loss_of_water_and_vessels_are_those_of_the_physics() {
    // Where the campaign file tells what the vessels store, it counts; the box has its gain for
    // each W/m² of its own plane, which is level as the sensor is.
    let (flat, dish) = (BOX_FIGURES, DISH_COOLING);
    for (name, gain_m2, loss_w_k) in [
        ("box-figures", flat.gain_m2(), flat.loss_w_k()),
        ("dish-cooling", dish.gain_m2(), dish.loss_w_k()),
    ] {
        let balance = sample(name).heat_balance.unwrap();
        for (figure, truth) in [(balance.gain_m2, gain_m2), (balance.loss_w_per_k, loss_w_k)] {
            assert!(!misses(name, figure.interval, truth));
            let off = (figure.value / truth - 1.0).abs();
            assert!(off < 0.02, "{name}: {} for {truth}", figure.value);
        }
    }
}
