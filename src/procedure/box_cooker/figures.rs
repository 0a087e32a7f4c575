//! F1, F2 and the time to boil.

use simmerline_math::ln;

use super::finding::BoxFinding;
use super::formulas::{Conditions, FROM_C, Test, end_c, take_stretches};
use super::told::Findings;
use crate::campaign::kinds::ProcedureKey;
use crate::campaign::model::CookerType;
use crate::physics::water::SPECIFIC_HEAT_J_PER_KG_K;
use crate::procedure::boiling::{Boiling, NoBoiling};
use crate::procedure::dry_vessel::dry_run::{DryRuns, of_step, placed_plateaus, vessel_step_k};
use crate::procedure::sources::{CommonError, common_errors, vessel_error};
use crate::procedure::stretch::Stretch;
use crate::procedure::tested::Tested;
use crate::procedure::uncertainty::derived::Group;
use crate::procedure::uncertainty::step::reading_spread;
use crate::procedure::uncertainty::{Derived, Missing, Off, derive};

/// F1 from which a box is of grade A, K m²/W.
///
/// # Source
/// IS 13429, from memory, medium trust. What separates the grades below is not known here.
pub const GRADE_A_K_M2_PER_W: f64 = 0.12;

/// What the runs of a box cooker say.
#[derive(Debug, Clone, PartialEq)]
pub struct BoxFigures {
    /// First figure of merit, K m²/W.
    pub f1: Option<Derived>,
    /// Second figure of merit, no unit.
    pub f2: Option<Derived>,
    /// Where F2 was taken, in the order of the runs.
    pub stretches: Vec<Stretch>,
    pub boiling: Option<Boiling>,
    /// `None` without F1.
    pub grade: Option<Grade>,
    /// Irradiance was not measured in the horizontal plane.
    pub is_indicative: bool,
    pub findings: Vec<BoxFinding>,
}

/// What can be said of the grade.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Grade {
    /// F1 is surely above the limit of grade A.
    A,
    /// It may lie below.
    NotSurely,
    /// Of one day: another may be lower.
    OneDay,
    /// Irradiance was not measured in the horizontal plane.
    NotFlat,
}

/// The glass of a box, m²: as stated, else the intercept area.
pub fn glass_m2(tested: &Tested) -> f64 {
    let cooker = &tested.campaign.cooker;
    cooker.glazing_area_m2.unwrap_or(cooker.intercept_area_m2)
}

/// The figures of merit of a box cooker, from its dry runs and its runs of water; `None` where
/// the campaign is of another cooker or leaves the procedure out, or has no dry run and does not
/// ask for it.
///
/// F1 = (Tps − Tas)/Hs at the plateaus. F2 = M·c·ΔTw/[A·τ·(H̄ − T̄d/F1)] over the water's rise from
/// 60 to 90 °C, with means of irradiance H and of Td = Tw − Ta over its time τ, and the glass A.
/// Time to boil from ambient: −F1·M·c/(F2·A)·ln[1 − (Tb − Ta)/(F1·H)].
///
/// # Source
/// Mullick, Kandpal and Saxena 1987, Solar Energy 39, 353–360; IS 13429; from memory.
/// DIFFERENCE: theirs is F1·M·c/(A·τ)·ln of the ends, with means of Ta and H. It is the same under
/// a steady sun, and off by up to 2 % where irradiance changes by a tenth, by more where F1·H is
/// near to the water's end (simulated). A rise whose end F1·H does not exceed has no value there,
/// and does not count here.
/// DIFFERENCE: they boil at 100 °C, this at the local boiling point.
pub fn box_figures(tested: &Tested, dry: &DryRuns) -> Option<BoxFigures> {
    let campaign = &tested.campaign;
    let is_asked = campaign.procedures.name(ProcedureKey::BoxCooker);
    let is_box = campaign.cooker.kind == CookerType::Box && !dry.runs.is_empty();
    if campaign.procedures.leaves_out(ProcedureKey::BoxCooker) || !(is_box || is_asked) {
        return None;
    }
    let plateaus = placed_plateaus(tested, dry);
    let f1 = dry.difference.clone();
    let taken = take_stretches(tested, f1.as_ref().map(|f1| f1.figure.value));
    let test = Test {
        area_m2: glass_m2(tested),
        plateaus: &plateaus,
        stretches: &taken.found,
    };
    let f2 = second(tested, &test);
    let boiling = f2.is_ok().then(|| boiling(tested, &test)).flatten();
    let findings = Findings {
        tested,
        test: &test,
        f1: f1.as_ref(),
        f2: &f2,
        no_boiling: boiling.as_ref().and_then(|one| one.as_ref().err()).copied(),
        taken: &taken,
    };
    let findings = findings.all(dry);
    let is_indicative = !tested.lies_flat();
    Some(BoxFigures {
        grade: f1.as_ref().map(|f1| grade(f1, is_indicative)),
        f1,
        f2: f2.ok(),
        boiling: boiling.and_then(Result::ok),
        is_indicative,
        findings,
        stretches: taken.found,
    })
}

fn grade(f1: &Derived, is_indicative: bool) -> Grade {
    if is_indicative {
        Grade::NotFlat
    } else if f1.figure.interval.lower < GRADE_A_K_M2_PER_W {
        Grade::NotSurely
    } else if f1.is_of_one_day {
        Grade::OneDay
    } else {
        Grade::A
    }
}

/// The errors that F1 and F2 share.
fn errors(tested: &Tested) -> Vec<CommonError> {
    let campaign = &tested.campaign;
    let owner = campaign.file.to_string_lossy();
    let mut errors = common_errors(&campaign.instruments, &owner);
    errors.push(vessel_error(&campaign.instruments, &owner));
    errors
}

/// The days of dry and of water runs; what single readings give a figure.
fn groups(tested: &Tested, test: &Test<'_>, value: f64, of_f1: f64) -> [Group; 2] {
    let dry = test.plateaus.iter().map(|one| one.date);
    let water = test.stretches.iter().map(|one| one.date);
    let read_k = reading_spread(tested).water_k.unwrap_or(0.0);
    let rise_k = end_c(tested) - FROM_C;
    let count = test.stretches.len().max(1) as f64;
    // Both ends of a rise are read once.
    let of_water = value * read_k * 2.0_f64.sqrt() / rise_k / count.sqrt();
    let step = of_step(test.plateaus, vessel_step_k(tested));
    [Group::new(dry, of_f1 * step), Group::new(water, of_water)]
}

/// How a figure follows F1, by a hundredth of it either way, for each K m²/W.
fn per_f1(test: &Test<'_>, figure: impl Fn(f64) -> Option<f64>) -> f64 {
    const STEP: f64 = 0.01;
    let Some(f1) = test.f1(&Off::NONE) else {
        return 0.0;
    };
    match (figure(f1 * (1.0 + STEP)), figure(f1 * (1.0 - STEP))) {
        (Some(more), Some(less)) => (more - less) / (2.0 * STEP * f1),
        _ => 0.0,
    }
}

fn second(tested: &Tested, test: &Test<'_>) -> Result<Derived, Missing> {
    let value = test.f2(&Off::NONE).ok_or(Missing::Value)?;
    let of_f1 = per_f1(test, |f1| test.f2_by(f1, &Off::NONE));
    let groups = groups(tested, test, value, of_f1);
    derive(&groups, &errors(tested), |off| test.f2(off))
}

/// The time to boil under the conditions of the rises; `None` without a rise.
fn boiling(tested: &Tested, test: &Test<'_>) -> Option<Result<Boiling, NoBoiling>> {
    let Conditions {
        irradiance_w_m2,
        ambient_c,
        water_kg,
    } = test.conditions()?;
    let boiling_point_c = tested.boiling_point_c;
    let time_s = |f1: f64, f2: f64| -> Option<f64> {
        let share = (boiling_point_c - ambient_c) / (f1 * irradiance_w_m2);
        let heat_j_per_k = water_kg * SPECIFIC_HEAT_J_PER_KG_K;
        (share < 1.0).then(|| -f1 * heat_j_per_k / (f2 * test.area_m2) * ln(1.0 - share))
    };
    let formula = |off: &Off| time_s(test.f1(off)?, test.f2(off)?);
    let (f1, f2) = (test.f1(&Off::NONE)?, test.f2(&Off::NONE)?);
    let Some(value_s) = formula(&Off::NONE) else {
        return Some(Err(NoBoiling::GetsTo(ambient_c + f1 * irradiance_w_m2)));
    };
    let of_f1 = per_f1(test, |f1| time_s(f1, f2));
    let groups = groups(tested, test, value_s, of_f1);
    let time_s = derive(&groups, &errors(tested), formula);
    Some(match time_s {
        Ok(time_s) => Ok(Boiling {
            time_s,
            irradiance_w_m2,
            ambient_c,
            boiling_point_c,
            water_kg,
        }),
        Err(_) => Err(NoBoiling::MayNotBoil),
    })
}
