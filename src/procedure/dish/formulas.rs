//! The formulas of a concentrating cooker's figures, and the runs that they take.

use super::cooling::{Cooling, NoCooling, cool};
use crate::physics::water::SPECIFIC_HEAT_J_PER_KG_K;
use crate::procedure::run::Run;
use crate::procedure::stretch::{NoStretch, Stretch, between};
use crate::procedure::tested::Tested;
use crate::procedure::uncertainty::Off;
use crate::procedure::uncertainty::shift::Shift;

/// A heating counts from this far above ambient, K, and up to as far below the local boiling
/// point: the practice's window of the water, this project's choice.
pub const WINDOW_K: f64 = 5.0;
/// And rises at least by this, K. This project's choice.
pub const LEAST_RISE_K: f64 = 10.0;

/// Group of the cooling runs' days, and of the heating ones'.
pub const COOLING: usize = 0;
/// See [`COOLING`].
pub const HEATING: usize = 1;

/// The cooling runs that count, and why the others do not.
pub fn take_coolings(tested: &Tested) -> (Vec<Cooling>, Vec<(&Run, NoCooling)>) {
    let (mut found, mut others) = (Vec::new(), Vec::new());
    for (index, run) in tested.cooling_runs.iter().enumerate() {
        match cool(run, index) {
            Ok(cooling) => found.push(cooling),
            Err(why) => others.push((run, why)),
        }
    }
    (found, others)
}

/// The heatings of the runs of water, each from its first reading in the window to its hottest one
/// before it leaves that; and why the others have none.
pub fn take_heatings(tested: &Tested) -> (Vec<Stretch>, Vec<NoStretch>) {
    let most_c = tested.boiling_point_c - WINDOW_K;
    let heating = |run: &Run| -> Result<Stretch, NoStretch> {
        let water = &run.readings.water_c;
        let ambient = run.readings.ambient_c.as_ref().ok_or(NoStretch::Hole)?;
        let mean_c = ambient.value.iter().sum::<f64>() / ambient.value.len() as f64;
        let is_in = |c: &f64| *c >= mean_c + WINDOW_K && *c <= most_c;
        let first = water.value.iter().position(is_in);
        let first = first.ok_or(NoStretch::NotPassed)?;
        // Once it has left the window, it counts no more.
        let inside = water.value[first..]
            .iter()
            .take_while(|c| is_in(c))
            .enumerate();
        let hottest = inside.max_by(|one, two| one.1.total_cmp(two.1));
        let last = first + hottest.map_or(0, |(place, _)| place);
        if water.value[last] - water.value[first] < LEAST_RISE_K {
            return Err(NoStretch::NotPassed);
        }
        between(run, first, last)
    };
    let (mut found, mut left_out) = (Vec::new(), Vec::new());
    for run in &tested.runs {
        match heating(run) {
            Ok(stretch) => found.push(stretch),
            Err(why) => left_out.push(why),
        }
    }
    (found, left_out)
}

/// What the formulas take.
pub struct Test<'t> {
    /// Heat capacity of the vessels; `None` where it is not stated.
    pub vessels_j_per_k: Option<f64>,
    /// Intercept area, and the surface of the vessels.
    pub area_m2: f64,
    pub loss_area_m2: Option<f64>,
    pub coolings: &'t [Cooling],
    pub heatings: &'t [Stretch],
    /// Factor of the loss: one, but where it is tried how a figure follows it.
    pub loss_scale: f64,
}

impl Test<'_> {
    /// (MC)′ of water and vessels, J/K.
    pub fn heat_j_per_k(&self, water_kg: f64, shift: &Shift) -> f64 {
        water_kg * SPECIFIC_HEAT_J_PER_KG_K * shift.water
            + self.vessels_j_per_k.unwrap_or(0.0) * shift.vessel_heat
    }

    /// Mean over the cooling runs of what one gives; `None` where one gives none.
    fn mean(&self, off: &Off, of: impl Fn(&Cooling) -> Option<f64>) -> Option<f64> {
        let counted = self.coolings.iter();
        let counted = counted.filter(|one| off.counts(COOLING, one.date));
        let each: Option<Vec<f64>> = counted.map(of).collect();
        each.filter(|each| !each.is_empty())
            .map(|each| each.iter().sum::<f64>() / each.len() as f64)
    }

    /// 1/τ0, 1/s.
    pub fn mean_rate(&self, off: &Off) -> Option<f64> {
        self.mean(off, |one| one.rate_per_s(&off.shift))
    }

    /// F′UL·At, W/K.
    pub fn loss_w_per_k(&self, off: &Off) -> Option<f64> {
        self.mean(off, |one| {
            Some(self.heat_j_per_k(one.water_kg, &off.shift) * one.rate_per_s(&off.shift)?)
        })
        .map(|loss_w_per_k| loss_w_per_k * self.loss_scale)
    }

    /// F′η0·Ap, m²: mean over the heatings.
    pub fn gain_m2(&self, off: &Off) -> Option<f64> {
        let loss_w_per_k = self.loss_w_per_k(off)?;
        let shift = &off.shift;
        let (mut sum, mut count) = (0.0, 0.0);
        for one in self.heatings {
            if !off.counts(HEATING, one.date) {
                continue;
            }
            let rise_k = shift.water_c(one.to_c) - shift.water_c(one.from_c);
            let stored_w =
                self.heat_j_per_k(one.water_kg, shift) * rise_k / (one.duration_s * shift.time);
            let td = shift.water_c(one.water_c) - shift.ambient_c(one.ambient_c);
            sum += (stored_w + loss_w_per_k * td) / (one.irradiance_w_m2 * shift.irradiance);
            count += 1.0;
        }
        (count > 0.0 && shift.irradiance > 0.0).then(|| sum / count)
    }

    /// Mean over the heatings.
    pub fn mean_of_heatings(&self, of: impl Fn(&Stretch) -> f64) -> f64 {
        self.heatings.iter().map(of).sum::<f64>() / self.heatings.len() as f64
    }
}
