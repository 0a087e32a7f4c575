//! Time constant, loss factor, optical factor and time to boil.

use simmerline_math::ln;

use super::cooling::Cooling;
use super::finding::DishFinding;
use super::formulas::{Test, take_coolings, take_heatings};
use super::told::Findings;
use crate::campaign::kinds::ProcedureKey;
use crate::campaign::model::{CookerType, Plane};
use crate::procedure::boiling::{Boiling, NoBoiling};
use crate::procedure::heat_balance::HeatBalance;
use crate::procedure::sources::{CommonError, common_errors, vessel_heat_error};
use crate::procedure::stretch::Stretch;
use crate::procedure::tested::Tested;
use crate::procedure::uncertainty::derived::Group;
use crate::procedure::uncertainty::step::reading_spread;
use crate::procedure::uncertainty::{Derived, Missing, Off, derive};

/// What the runs of a concentrating cooker say.
#[derive(Debug, Clone, PartialEq)]
pub struct DishFigures {
    /// τ0, s.
    pub time_constant_s: Option<Derived>,
    /// F′UL, W/(m² K) of the vessels' surface; `None` without that.
    pub loss_factor: Option<Derived>,
    /// F′UL·At, W/K.
    pub loss_w_per_k: Option<Derived>,
    /// F′η0, no unit.
    pub optical_factor: Option<Derived>,
    pub boiling: Option<Boiling>,
    /// The cooling runs that count.
    pub coolings: Vec<Cooling>,
    /// The heatings that count, in the order of the runs.
    pub heatings: Vec<Stretch>,
    /// A number that is not that of the procedure.
    pub is_indicative: bool,
    pub findings: Vec<DishFinding>,
}

/// The figures of a concentrating cooker, from its cooling runs and its runs of water; `None`
/// where the campaign leaves the procedure out, or has no cooling run and does not ask for it.
///
/// Cooling: 1/τ0 is the slope of Tw against −∫(Tw − Ta)dt, and F′UL = (MC)′/(At·τ0), with the heat
/// capacity (MC)′ of water and vessels and their surface At. Heating:
/// F′η0 = [(MC)′·ΔTw/τ + F′UL·At·T̄d]/(Ap·Ḡ), with means over its time τ and the intercept area Ap.
/// Time to boil from ambient: −τ0·ln[1 − F′UL·At·(Tb − Ta)/(F′η0·Ap·G)].
///
/// # Source
/// Mullick, Kandpal and Kumar 1991, Solar Energy 46, 139–144; from memory.
/// DIFFERENCE: theirs are the slope of ln(Tw − Ta), and the exponential over a heating at a steady
/// sun: the same in steady air and sun. Where air warms by 1 K/h the logarithm is 6 % off
/// (simulated), this is not. They boil at 100 °C, this at the local boiling point.
pub fn dish_figures(tested: &Tested, balance: Option<&HeatBalance>) -> Option<DishFigures> {
    let procedures = &tested.campaign.procedures;
    let is_asked = procedures.name(ProcedureKey::Dish);
    let is_of_kind = tested.campaign.cooker.kind != CookerType::Box || is_asked;
    let has_cooling = !tested.cooling_runs.is_empty();
    if procedures.leaves_out(ProcedureKey::Dish) || !(is_asked || has_cooling && is_of_kind) {
        return None;
    }
    let (coolings, not_cooled) = take_coolings(tested);
    let (heatings, left_out) = take_heatings(tested);
    let test = Test {
        vessels_j_per_k: tested.campaign.vessel_heat.map(|heat| heat.j_per_k()),
        area_m2: tested.campaign.cooker.intercept_area_m2,
        loss_area_m2: tested.campaign.cooker.loss_area_m2,
        coolings: &coolings,
        heatings: &heatings,
        loss_scale: 1.0,
    };
    let kit = Kit {
        tested,
        test: &test,
        errors: errors(tested, test.vessels_j_per_k.is_some()),
    };
    let time_constant_s = kit.of_cooling(|test, off| Some(1.0 / test.mean_rate(off)?));
    let loss_w_per_k = kit.of_cooling(|test, off| test.loss_w_per_k(off));
    let loss_factor = match test.loss_area_m2 {
        Some(area_m2) => kit.of_cooling(|test, off| Some(test.loss_w_per_k(off)? / area_m2)),
        None => Err(Missing::Value),
    };
    let optical = kit.of_both(|test, off| Some(test.gain_m2(off)? / test.area_m2));
    let boiling = (!heatings.is_empty()).then(|| kit.boiling());
    let is_indicative = tested.campaign.instruments.irradiance_plane != Some(Plane::Normal)
        || tested.estimates_irradiance();
    let has_no_end = [&time_constant_s, &loss_w_per_k, &optical]
        .into_iter()
        .any(|one| matches!(one, Err(Missing::End(_))));
    let findings = Findings {
        tested,
        test: &test,
        not_cooled: &not_cooled,
        left_out: &left_out,
        losses: loss_w_per_k
            .as_ref()
            .ok()
            .zip(balance)
            .map(|(cooling, balance)| (cooling.figure, balance.loss_w_per_k)),
        is_of_one_day: [&time_constant_s, &optical]
            .into_iter()
            .flatten()
            .any(|one| one.is_of_one_day),
        has_no_end,
        no_boiling: boiling.as_ref().and_then(|one| one.as_ref().err()).copied(),
    };
    let findings = findings.all();
    Some(DishFigures {
        time_constant_s: time_constant_s.ok(),
        loss_factor: loss_factor.ok(),
        loss_w_per_k: loss_w_per_k.ok(),
        optical_factor: optical.ok(),
        boiling: boiling.and_then(Result::ok),
        is_indicative,
        findings,
        coolings,
        heatings,
    })
}

fn errors(tested: &Tested, has_vessels: bool) -> Vec<CommonError> {
    let owner = tested.campaign.file.to_string_lossy();
    let mut errors = common_errors(&tested.campaign.instruments, &owner);
    if has_vessels {
        errors.push(vessel_heat_error(&owner));
    }
    errors
}

/// From formulas to figures.
struct Kit<'t> {
    tested: &'t Tested,
    test: &'t Test<'t>,
    errors: Vec<CommonError>,
}

impl Kit<'_> {
    /// Relative error of a fall or rise by the step of its thermometer, over its runs.
    fn of_readings(&self, changes_k: impl Iterator<Item = f64> + Clone) -> f64 {
        let read_k = reading_spread(self.tested).water_k.unwrap_or(0.0);
        let count = changes_k.clone().count().max(1) as f64;
        let mean_k = changes_k.sum::<f64>() / count;
        read_k * 2.0_f64.sqrt() / mean_k / count.sqrt()
    }

    fn cooling_group(&self, value: f64) -> Group {
        let coolings = self.test.coolings;
        let falls = coolings.iter().map(|one| one.from_c - one.to_c);
        Group::new(
            coolings.iter().map(|one| one.date),
            value * self.of_readings(falls),
        )
    }

    fn heating_group(&self, value: f64) -> Group {
        let heatings = self.test.heatings;
        let rises = heatings.iter().map(|one| one.to_c - one.from_c);
        Group::new(
            heatings.iter().map(|one| one.date),
            value * self.of_readings(rises),
        )
    }

    fn of_cooling(
        &self,
        formula: impl Fn(&Test<'_>, &Off) -> Option<f64> + Sync,
    ) -> Result<Derived, Missing> {
        let value = formula(self.test, &Off::NONE).ok_or(Missing::Value)?;
        let group = self.cooling_group(value);
        derive(&[group], &self.errors, |off| formula(self.test, off))
    }

    fn of_both(
        &self,
        formula: impl Fn(&Test<'_>, &Off) -> Option<f64> + Sync,
    ) -> Result<Derived, Missing> {
        let value = formula(self.test, &Off::NONE).ok_or(Missing::Value)?;
        let groups = [
            self.cooling_group(self.for_loss(&formula)),
            self.heating_group(value),
        ];
        derive(&groups, &self.errors, |off| formula(self.test, off))
    }

    /// What the figure would gain if the loss were twice as large, by a hundredth of it either way.
    fn for_loss(&self, formula: &impl Fn(&Test<'_>, &Off) -> Option<f64>) -> f64 {
        const STEP: f64 = 0.01;
        let at = |loss_scale: f64| {
            let test = Test {
                loss_scale,
                ..*self.test
            };
            formula(&test, &Off::NONE)
        };
        match (at(1.0 + STEP), at(1.0 - STEP)) {
            (Some(more), Some(less)) => (more - less) / (2.0 * STEP),
            _ => 0.0,
        }
    }

    fn boiling(&self) -> Result<Boiling, NoBoiling> {
        let mean = |of: fn(&Stretch) -> f64| self.test.mean_of_heatings(of);
        let irradiance_w_m2 = mean(|one| one.irradiance_w_m2);
        let (ambient_c, water_kg) = (mean(|one| one.ambient_c), mean(|one| one.water_kg));
        let boiling_point_c = self.tested.boiling_point_c;
        let time_s = self.of_both(|test, off| {
            let loss_w_per_k = test.loss_w_per_k(off)?;
            let lost_w = loss_w_per_k * (boiling_point_c - ambient_c);
            let share = lost_w / (test.gain_m2(off)? * irradiance_w_m2);
            let heat_j_per_k = test.heat_j_per_k(water_kg, &off.shift);
            (share < 1.0).then(|| -heat_j_per_k / loss_w_per_k * ln(1.0 - share))
        });
        let gets_to_c = || {
            let gain_m2 = self.test.gain_m2(&Off::NONE)?;
            let loss_w_per_k = self.test.loss_w_per_k(&Off::NONE)?;
            Some(ambient_c + gain_m2 * irradiance_w_m2 / loss_w_per_k)
        };
        match time_s {
            Ok(time_s) => Ok(Boiling {
                time_s,
                irradiance_w_m2,
                ambient_c,
                boiling_point_c,
                water_kg,
            }),
            Err(Missing::End(_)) => Err(NoBoiling::MayNotBoil),
            Err(Missing::Value) => {
                Err(gets_to_c().map_or(NoBoiling::MayNotBoil, NoBoiling::GetsTo))
            }
        }
    }
}
