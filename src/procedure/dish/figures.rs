//! Time constant, loss factor, optical factor and time to boil.

use simmerline_math::ln;

use super::cooling::{BEGINS_ABOVE_K, Cooling, NoCooling, cool};
use super::finding::{DishFinding, FindingCode};
use crate::campaign::kinds::ProcedureKey;
use crate::campaign::model::{CookerType, Plane};
use crate::language::fixed;
use crate::message;
use crate::physics::water::{EVAPORATION_C, SPECIFIC_HEAT_J_PER_KG_K};
use crate::procedure::boiling::{Boiling, NoBoiling, no_boiling_said};
use crate::procedure::heat_balance::HeatBalance;
use crate::procedure::run::Run;
use crate::procedure::sources::{CommonError, common_errors, vessel_heat_error};
use crate::procedure::stretch::{NoStretch, Stretch, between};
use crate::procedure::tested::Tested;
use crate::procedure::uncertainty::derived::Group;
use crate::procedure::uncertainty::shift::Shift;
use crate::procedure::uncertainty::step::reading_spread;
use crate::procedure::uncertainty::{Derived, Figure, Missing, Off, derive};

/// A heating counts from this far above ambient, K, and up to as far below the local boiling
/// point: the practice's window of the water, this project's choice.
pub const WINDOW_K: f64 = 5.0;
/// And rises at least by this, K. This project's choice.
pub const LEAST_RISE_K: f64 = 10.0;

/// Group of the cooling runs' days, and of the heating ones'.
const COOLING: usize = 0;
const HEATING: usize = 1;

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

/// The cooling runs that count, and why the others do not.
fn take_coolings(tested: &Tested) -> (Vec<Cooling>, Vec<(&Run, NoCooling)>) {
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
fn take_heatings(tested: &Tested) -> (Vec<Stretch>, Vec<NoStretch>) {
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

fn errors(tested: &Tested, has_vessels: bool) -> Vec<CommonError> {
    let owner = tested.campaign.file.to_string_lossy();
    let mut errors = common_errors(&tested.campaign.instruments, &owner);
    if has_vessels {
        errors.push(vessel_heat_error(&owner));
    }
    errors
}

/// What the formulas take.
struct Test<'t> {
    vessels_j_per_k: Option<f64>,
    area_m2: f64,
    loss_area_m2: Option<f64>,
    coolings: &'t [Cooling],
    heatings: &'t [Stretch],
    /// Factor of the loss: one, but where it is tried how a figure follows it.
    loss_scale: f64,
}

impl Test<'_> {
    /// (MC)′ of water and vessels, J/K.
    fn heat_j_per_k(&self, water_kg: f64, shift: &Shift) -> f64 {
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
    fn mean_rate(&self, off: &Off) -> Option<f64> {
        self.mean(off, |one| one.rate_per_s(&off.shift))
    }

    /// F′UL·At, W/K.
    fn loss_w_per_k(&self, off: &Off) -> Option<f64> {
        self.mean(off, |one| {
            Some(self.heat_j_per_k(one.water_kg, &off.shift) * one.rate_per_s(&off.shift)?)
        })
        .map(|loss_w_per_k| loss_w_per_k * self.loss_scale)
    }

    /// F′η0·Ap, m²: mean over the heatings.
    fn gain_m2(&self, off: &Off) -> Option<f64> {
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
    fn mean_of_heatings(&self, of: impl Fn(&Stretch) -> f64) -> f64 {
        self.heatings.iter().map(of).sum::<f64>() / self.heatings.len() as f64
    }
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

/// What the findings are made of.
struct Findings<'t> {
    tested: &'t Tested,
    test: &'t Test<'t>,
    not_cooled: &'t [(&'t Run, NoCooling)],
    left_out: &'t [NoStretch],
    /// By cooling, and by the heat balance, W/K.
    losses: Option<(Figure, Figure)>,
    is_of_one_day: bool,
    has_no_end: bool,
    no_boiling: Option<NoBoiling>,
}

impl Findings<'_> {
    fn all(&self) -> Vec<DishFinding> {
        let mut findings: Vec<DishFinding> = Vec::new();
        findings.extend(self.about_cooling());
        findings.extend(self.about_vessels());
        findings.extend(self.about_sun());
        findings.extend(self.about_heatings());
        findings.extend(self.about_losses());
        // Without a loss there is no time either, and that has been told.
        let no_boiling = self.no_boiling.filter(|_| !self.test.coolings.is_empty());
        findings.extend(no_boiling.map(|why| {
            let (text, remedy) = no_boiling_said(why, self.tested.boiling_point_c);
            DishFinding::note(FindingCode::DoesNotBoil, text, remedy)
        }));
        if self.has_no_end {
            findings.push(DishFinding::indicative(
                FindingCode::NoEnd,
                message!("dish-no-end"),
                message!("dish-no-end-remedy"),
            ));
        }
        if self.is_of_one_day {
            findings.push(DishFinding::note(
                FindingCode::OneDay,
                message!("dish-one-day"),
                message!("dish-one-day-remedy"),
            ));
        }
        let is_hot = |celsius: f64| celsius > EVAPORATION_C;
        let mut cooled = self.test.coolings.iter();
        let mut heated = self.test.heatings.iter();
        if cooled.any(|one| is_hot(one.from_c)) || heated.any(|one| is_hot(one.to_c)) {
            findings.push(DishFinding::note(
                FindingCode::Evaporation,
                message!("evaporation", limit = fixed(EVAPORATION_C, 0)),
                message!("evaporation-remedy"),
            ));
        }
        findings
    }

    fn about_cooling(&self) -> Vec<DishFinding> {
        if self.tested.cooling_runs.is_empty() {
            return vec![DishFinding::indicative(
                FindingCode::NoCoolingRun,
                message!("dish-no-cooling-run"),
                message!("dish-no-cooling-run-remedy"),
            )];
        }
        let of = |(run, why): &(&Run, NoCooling)| {
            let log = run.plan.label.clone();
            let (code, text, remedy) = match why {
                NoCooling::BeginsTooCool(above_k) => (
                    FindingCode::BeginsTooCool,
                    message!(
                        "dish-begins-too-cool",
                        log = log,
                        above = fixed(*above_k, 0),
                        least = fixed(BEGINS_ABOVE_K, 0)
                    ),
                    message!("dish-begins-too-cool-remedy"),
                ),
                NoCooling::Warms(by_k) => (
                    FindingCode::Warms,
                    message!("dish-warms", log = log, rise = fixed(*by_k, 1)),
                    message!("dish-warms-remedy"),
                ),
                NoCooling::TooShort => (
                    FindingCode::CoolingTooShort,
                    message!("dish-cooling-too-short", log = log),
                    message!("dish-cooling-too-short-remedy"),
                ),
            };
            if self.test.coolings.is_empty() {
                DishFinding::indicative(code, text, remedy)
            } else {
                DishFinding::note(code, text, remedy)
            }
        };
        self.not_cooled.iter().map(of).collect()
    }

    fn about_vessels(&self) -> Vec<DishFinding> {
        let mut findings = Vec::new();
        if self.test.loss_area_m2.is_none() {
            findings.push(DishFinding::note(
                FindingCode::NoLossArea,
                message!("dish-no-loss-area"),
                message!("dish-no-loss-area-remedy"),
            ));
        }
        if self.test.vessels_j_per_k.is_none() {
            findings.push(DishFinding::note(
                FindingCode::NoVesselHeat,
                message!("dish-no-vessel-heat"),
                message!("dish-no-vessel-heat-remedy"),
            ));
        }
        findings
    }

    /// Both losses, where their ranges do not meet.
    fn about_losses(&self) -> Option<DishFinding> {
        let (cooling, balance) = self.losses?;
        let (one, two) = (cooling.interval, balance.interval);
        (one.upper < two.lower || two.upper < one.lower).then(|| {
            DishFinding::note(
                FindingCode::LossesDiffer,
                message!(
                    "dish-losses-differ",
                    cooling = fixed(cooling.value, 2),
                    balance = fixed(balance.value, 2)
                ),
                message!("dish-losses-differ-remedy"),
            )
        })
    }

    /// Runs of water that do not count beside others that do.
    fn about_heatings(&self) -> Option<DishFinding> {
        let is_some = !self.left_out.is_empty() && !self.test.heatings.is_empty();
        is_some.then(|| {
            DishFinding::note(
                FindingCode::RunsLeftOut,
                message!("dish-runs-left-out", runs = self.left_out.len()),
                message!("dish-no-heating-remedy", rise = fixed(LEAST_RISE_K, 0)),
            )
        })
    }

    fn about_sun(&self) -> Vec<DishFinding> {
        let mut findings = Vec::new();
        if self.test.heatings.is_empty() {
            findings.push(DishFinding::indicative(
                FindingCode::NoHeating,
                message!("dish-no-heating", rise = fixed(LEAST_RISE_K, 0)),
                message!("dish-no-heating-remedy", rise = fixed(LEAST_RISE_K, 0)),
            ));
            return findings;
        }
        let is_normal = self.tested.campaign.instruments.irradiance_plane == Some(Plane::Normal);
        if self.tested.estimates_irradiance() || !is_normal {
            let text = if self.tested.estimates_irradiance() {
                message!("dish-plane-estimated")
            } else {
                message!("dish-plane-not-normal")
            };
            findings.push(DishFinding::indicative(
                FindingCode::PlaneNotNormal,
                text,
                message!("dish-plane-remedy"),
            ));
        } else {
            findings.push(DishFinding::note(
                FindingCode::GlobalNotBeam,
                message!("dish-global-not-beam"),
                message!("dish-global-not-beam-remedy"),
            ));
        }
        findings
    }
}
