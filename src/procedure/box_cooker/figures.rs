//! F1, F2 and the time to boil.

use simmerline_math::ln;

use super::finding::{BoxFinding, FindingCode};
use crate::campaign::kinds::ProcedureKey;
use crate::campaign::model::{CookerType, Plane};
use crate::language::{fixed, range};
use crate::message;
use crate::physics::water::SPECIFIC_HEAT_J_PER_KG_K;
use crate::procedure::dry_vessel::dry_run::{
    DryRuns, Placed, mean_difference, of_step, placed_plateaus, vessel_step_k,
};
use crate::procedure::sources::{CommonError, common_errors, vessel_error};
use crate::procedure::stretch::{NoStretch, Stretch, rising};
use crate::procedure::tested::Tested;
use crate::procedure::uncertainty::derived::Group;
use crate::procedure::uncertainty::step::reading_spread;
use crate::procedure::uncertainty::{Derived, Missing, Off, derive};

/// Water from here, °C.
///
/// # Source
/// Mullick, Kandpal and Saxena 1987, Solar Energy 39, 353–360: 60 to 65 °C; from memory.
pub const FROM_C: f64 = 60.0;
/// Up to here, °C. Source as of [`FROM_C`]: 90 to 95 °C; the lower end, since water boils below
/// the upper one at 1,500 m.
pub const TO_C: f64 = 90.0;
/// As far below the local boiling point as the practice's window, K, where that is lower.
const BELOW_BOILING_K: f64 = 5.0;
/// Full load of a box, kg for each m² of aperture. Source as of [`FROM_C`].
pub const LOAD_KG_M2: f64 = 8.0;
/// Share by which the load may be off. Common practice, no published source.
pub const LOAD_WITHIN: f64 = 0.1;
/// F1 from which a box is of grade A, K m²/W.
///
/// # Source
/// IS 13429, from memory, medium trust. What separates the grades below is not known here.
pub const GRADE_A_K_M2_PER_W: f64 = 0.12;
/// F2 is unsure upwards where the water's end takes more than this share of F1·H.
/// Common practice, no published source.
const NEAR_REACH: f64 = 0.85;
/// Temperature of the water above which evaporation takes a share of the heat, °C.
pub const EVAPORATION_C: f64 = 80.0;

/// Group of the dry runs' days, and of the water's.
const DRY: usize = 0;
const WATER: usize = 1;

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
    /// F1 is surely above the limit of grade A.
    pub is_grade_a: bool,
    /// What conditions leave in doubt, or a number that is not that of the procedure.
    pub is_indicative: bool,
    pub findings: Vec<BoxFinding>,
}

/// Time from ambient to the local boiling point.
#[derive(Debug, Clone, PartialEq)]
pub struct Boiling {
    /// s.
    pub time_s: Derived,
    /// At this irradiance and this ambient temperature: those of the test.
    pub irradiance_w_m2: f64,
    pub ambient_c: f64,
    /// Up to here, °C.
    pub boiling_point_c: f64,
    /// With this much water, kg.
    pub water_kg: f64,
}

/// The figures of merit of a box cooker, from its dry runs and its runs of water; `None` where
/// the campaign is of another cooker or leaves the procedure out, or has no dry run and does not
/// ask for it.
///
/// F1 = (Tps − Tas)/Hs at the plateaus. F2 = M·c·ΔTw/[A·τ·(H̄ − T̄d/F1)] over the water's rise from
/// 60 to 90 °C, with means of irradiance H and of Td = Tw − Ta over its time τ. Time to boil from
/// ambient: −F1·M·c/(F2·A)·ln[1 − (Tb − Ta)/(F1·H)].
///
/// # Source
/// Mullick, Kandpal and Saxena 1987, Solar Energy 39, 353–360; IS 13429; from memory.
/// DIFFERENCE: theirs is F1·M·c/(A·τ)·ln of the ends, with means of Ta and H. It is the same under
/// a steady sun, and 1 % too high where irradiance rises and falls by a tenth (simulated).
/// DIFFERENCE: they boil at 100 °C, this at the local boiling point.
pub fn box_figures(tested: &Tested, dry: &DryRuns) -> Option<BoxFigures> {
    let campaign = &tested.campaign;
    let is_asked = campaign.procedures.name(ProcedureKey::BoxCooker);
    let is_box = campaign.cooker.kind == CookerType::Box && !dry.runs.is_empty();
    if campaign.procedures.leaves_out(ProcedureKey::BoxCooker) || !(is_box || is_asked) {
        return None;
    }
    let plateaus = placed_plateaus(tested, dry);
    let taken = take_stretches(tested);
    let test = Test {
        area_m2: campaign.cooker.intercept_area_m2,
        plateaus: &plateaus,
        stretches: &taken.found,
    };
    let f2 = second(tested, &test);
    let boiling = f2.as_ref().ok().and_then(|_| boiling(tested, &test));
    let f1 = dry.difference.clone();
    let findings = Findings {
        tested,
        test: &test,
        f1: f1.as_ref(),
        f2: &f2,
        taken: &taken,
    };
    let findings = findings.all(dry);
    let is_grade_a = f1
        .as_ref()
        .is_some_and(|f1| f1.figure.interval.lower >= GRADE_A_K_M2_PER_W);
    let is_indicative = !lies_flat(tested);
    Some(BoxFigures {
        is_grade_a: is_grade_a && !is_indicative,
        f1,
        f2: f2.ok(),
        boiling,
        is_indicative,
        findings,
        stretches: taken.found,
    })
}

/// Whether irradiance is that of a sensor that lay flat, as the procedure has it.
fn lies_flat(tested: &Tested) -> bool {
    tested.lies_flat()
}

/// The end of the rise, °C.
pub fn end_c(tested: &Tested) -> f64 {
    TO_C.min(tested.boiling_point_c - BELOW_BOILING_K)
}

/// The water's rises, and the runs without one.
struct Taken {
    found: Vec<Stretch>,
    left_out: Vec<NoStretch>,
}

fn take_stretches(tested: &Tested) -> Taken {
    let to_c = end_c(tested);
    let (mut found, mut left_out) = (Vec::new(), Vec::new());
    for run in &tested.runs {
        match rising(run, FROM_C, to_c) {
            Ok(stretch) if stretch.irradiance_w_m2.is_some() => found.push(stretch),
            Ok(_) => left_out.push(NoStretch::Hole),
            Err(why) => left_out.push(why),
        }
    }
    Taken { found, left_out }
}

/// What the formulas take.
struct Test<'t> {
    area_m2: f64,
    plateaus: &'t [Placed],
    stretches: &'t [Stretch],
}

impl Test<'_> {
    fn f1(&self, off: &Off) -> Option<f64> {
        mean_difference(self.plateaus, off, DRY)
    }

    /// Mean of F2 over the rises; `None` where one of them has none.
    fn f2(&self, off: &Off) -> Option<f64> {
        let f1 = self.f1(off)?;
        let (mut sum, mut count) = (0.0, 0.0);
        for stretch in self.stretches {
            if !off.counts(WATER, stretch.date) {
                continue;
            }
            sum += self.f2_of(stretch, f1, off)?;
            count += 1.0;
        }
        (count > 0.0).then(|| sum / count)
    }

    fn f2_of(&self, stretch: &Stretch, f1: f64, off: &Off) -> Option<f64> {
        let shift = &off.shift;
        let (h, ta) = (
            stretch.irradiance_w_m2? * shift.irradiance,
            shift.ambient_c(stretch.ambient_c),
        );
        let (tw1, tw2) = (shift.water_c(stretch.from_c), shift.water_c(stretch.to_c));
        // As the published formula has it: beyond there is no value.
        if f1 * h <= tw2 - ta {
            return None;
        }
        let td = shift.water_c(stretch.water_c) - ta;
        let heat_j = stretch.water_kg * SPECIFIC_HEAT_J_PER_KG_K * shift.water * (tw2 - tw1);
        let over_s = stretch.duration_s * shift.time;
        Some(heat_j / (self.area_m2 * over_s * (h - td / f1)))
    }

    /// Means over the rises of irradiance, ambient and water; `None` without one.
    fn conditions(&self) -> Option<(f64, f64, f64)> {
        let count = self.stretches.len() as f64;
        let mean = |of: fn(&Stretch) -> f64| self.stretches.iter().map(of).sum::<f64>() / count;
        (count > 0.0).then(|| {
            (
                mean(|one| one.irradiance_w_m2.unwrap_or(f64::NAN)),
                mean(|one| one.ambient_c),
                mean(|one| one.water_kg),
            )
        })
    }

    /// What is left of F1·H at the end of the nearest rise, K; `None` without F1.
    fn reach_left_k(&self) -> Option<(f64, f64)> {
        let f1 = self.f1(&Off::NONE)?;
        let lefts = self.stretches.iter().filter_map(|stretch| {
            let reach_k = f1 * stretch.irradiance_w_m2?;
            Some((reach_k, stretch.to_c - stretch.ambient_c))
        });
        lefts.min_by(|one, two| (one.0 - one.1).total_cmp(&(two.0 - two.1)))
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
    if test.plateaus.is_empty() || test.stretches.is_empty() {
        return Err(Missing::Value);
    }
    let value = test.f2(&Off::NONE).ok_or(Missing::Value)?;
    let mean = |f1: f64| -> Option<f64> {
        let each = test.stretches.iter();
        let each: Option<Vec<f64>> = each.map(|one| test.f2_of(one, f1, &Off::NONE)).collect();
        each.map(|each| each.iter().sum::<f64>() / each.len() as f64)
    };
    let groups = groups(tested, test, value, per_f1(test, mean));
    derive(&groups, &errors(tested), |off| test.f2(off))
}

fn boiling(tested: &Tested, test: &Test<'_>) -> Option<Boiling> {
    let (irradiance_w_m2, ambient_c, water_kg) = test.conditions()?;
    let boiling_point_c = tested.boiling_point_c;
    let time_s = |f1: f64, f2: f64| -> Option<f64> {
        let share = (boiling_point_c - ambient_c) / (f1 * irradiance_w_m2);
        let heat_j_per_k = water_kg * SPECIFIC_HEAT_J_PER_KG_K;
        (share < 1.0).then(|| -f1 * heat_j_per_k / (f2 * test.area_m2) * ln(1.0 - share))
    };
    let formula = |off: &Off| time_s(test.f1(off)?, test.f2(off)?);
    let value_s = formula(&Off::NONE)?;
    let f2 = test.f2(&Off::NONE)?;
    let of_f1 = per_f1(test, |f1| time_s(f1, f2));
    let groups = groups(tested, test, value_s, of_f1);
    let time_s = derive(&groups, &errors(tested), formula).ok()?;
    Some(Boiling {
        time_s,
        irradiance_w_m2,
        ambient_c,
        boiling_point_c,
        water_kg,
    })
}

/// What the findings are made of.
struct Findings<'t> {
    tested: &'t Tested,
    test: &'t Test<'t>,
    f1: Option<&'t Derived>,
    f2: &'t Result<Derived, Missing>,
    taken: &'t Taken,
}

impl Findings<'_> {
    fn all(&self, dry: &DryRuns) -> Vec<BoxFinding> {
        let mut findings: Vec<BoxFinding> = Vec::new();
        findings.extend(self.about_dry_runs(dry));
        findings.extend(self.about_plane());
        findings.extend(self.about_heating());
        findings.extend(self.about_reach());
        if !self.tested.dry_runs.is_empty() {
            findings.push(BoxFinding::note(
                FindingCode::CoverMirrors,
                message!("box-cover-mirrors"),
                message!("box-cover-mirrors-remedy"),
            ));
        }
        let of_one_day = [self.f1, self.f2.as_ref().ok()];
        if of_one_day
            .into_iter()
            .flatten()
            .any(|one| one.is_of_one_day)
        {
            findings.push(BoxFinding::note(
                FindingCode::OneDay,
                message!("box-one-day"),
                message!("box-one-day-remedy"),
            ));
        }
        if self.f2.is_ok() {
            findings.push(BoxFinding::note(
                FindingCode::Evaporation,
                message!("evaporation", limit = fixed(EVAPORATION_C, 0)),
                message!("evaporation-remedy"),
            ));
        }
        findings
    }

    fn about_dry_runs(&self, dry: &DryRuns) -> Option<BoxFinding> {
        if dry.runs.is_empty() {
            return Some(BoxFinding::indicative(
                FindingCode::NoDryRun,
                message!("box-no-dry-run"),
                message!("box-no-dry-run-remedy"),
            ));
        }
        self.f1.is_none().then(|| {
            BoxFinding::indicative(
                FindingCode::NoPlateau,
                message!("box-no-plateau"),
                message!("box-no-plateau-remedy"),
            )
        })
    }

    fn about_plane(&self) -> Option<BoxFinding> {
        if lies_flat(self.tested) {
            return None;
        }
        let plane = self.tested.campaign.instruments.irradiance_plane;
        let text = match plane {
            _ if self.tested.estimates_irradiance() => message!("box-plane-estimated"),
            Some(Plane::Normal) => message!("box-plane-normal"),
            _ => message!("box-plane-not-stated"),
        };
        Some(BoxFinding::indicative(
            FindingCode::PlaneNotHorizontal,
            text,
            message!("box-plane-remedy"),
        ))
    }

    fn about_heating(&self) -> Vec<BoxFinding> {
        let mut findings = Vec::new();
        let to_c = fixed(end_c(self.tested), 0);
        let left_out = self.taken.left_out.len();
        if self.taken.found.is_empty() {
            let text = if self.tested.runs.is_empty() {
                message!("box-no-water-run")
            } else {
                message!(
                    "box-no-heating",
                    runs = left_out,
                    from = fixed(FROM_C, 0),
                    to = to_c.clone()
                )
            };
            findings.push(BoxFinding::indicative(
                FindingCode::NoHeating,
                text,
                message!("box-no-heating-remedy", from = fixed(FROM_C, 0), to = to_c),
            ));
        } else if left_out > 0 {
            findings.push(BoxFinding::note(
                FindingCode::RunsLeftOut,
                message!(
                    "box-runs-left-out",
                    runs = left_out,
                    from = fixed(FROM_C, 0),
                    to = to_c.clone()
                ),
                message!("box-no-heating-remedy", from = fixed(FROM_C, 0), to = to_c),
            ));
        }
        let loads = self
            .taken
            .found
            .iter()
            .map(|one| one.water_kg / self.test.area_m2);
        let is_off = |load: &f64| (load - LOAD_KG_M2).abs() > LOAD_WITHIN * LOAD_KG_M2;
        let off: Vec<f64> = loads.filter(is_off).collect();
        let ends = off
            .iter()
            .copied()
            .fold(None, |ends: Option<(f64, f64)>, load| {
                Some(ends.map_or((load, load), |(low, high)| (low.min(load), high.max(load))))
            });
        if let Some((low, high)) = ends {
            findings.push(BoxFinding::note(
                FindingCode::LoadOff,
                message!(
                    "box-load-off",
                    load = range(low, high, 1),
                    full = fixed(LOAD_KG_M2, 0)
                ),
                message!("box-load-off-remedy", full = fixed(LOAD_KG_M2, 0)),
            ));
        }
        findings
    }

    fn about_reach(&self) -> Option<BoxFinding> {
        let (reach_k, end_k) = self.test.reach_left_k()?;
        let code = match self.f2 {
            Err(Missing::Value) => FindingCode::BeyondReach,
            Err(Missing::End(_)) => FindingCode::NoUpperEnd,
            Ok(_) if end_k > NEAR_REACH * reach_k => FindingCode::NearReach,
            Ok(_) => return None,
        };
        let said = match code {
            FindingCode::BeyondReach => message!("box-beyond-reach"),
            FindingCode::NoUpperEnd => message!("box-no-upper-end"),
            _ => message!("box-near-reach"),
        };
        let text = said
            .with("reach", fixed(reach_k, 0))
            .with("end", fixed(end_k, 0));
        let remedy = message!("box-reach-remedy");
        Some(if code == FindingCode::NearReach {
            BoxFinding::note(code, text, remedy)
        } else {
            BoxFinding::indicative(code, text, remedy)
        })
    }
}
