//! What weakens or prevents the figures of a box cooker, with its remedy.

use super::finding::{BoxFinding, FindingCode};
use super::formulas::{FROM_C, LOAD_KG_M2, LOAD_WITHIN, NEAR_REACH, Nearest, Taken, Test, end_c};
use crate::campaign::model::{IrradianceEstimate, Plane};
use crate::language::{
    Message, Phrase, celsius, fixed, kelvins, kilograms_per_square_metre, range,
};
use crate::message;
use crate::physics::water::EVAPORATION_C;
use crate::procedure::boiling::{NoBoiling, no_boiling_said};
use crate::procedure::dry_vessel::dry_run::DryRuns;
use crate::procedure::tested::Tested;
use crate::procedure::uncertainty::{Derived, Missing, Off};

/// What the findings are made of.
pub struct Findings<'t> {
    pub tested: &'t Tested,
    pub test: &'t Test<'t>,
    pub f1: Option<&'t Derived>,
    pub f2: &'t Result<Derived, Missing>,
    pub no_boiling: Option<NoBoiling>,
    pub taken: &'t Taken,
}

impl Findings<'_> {
    /// Every finding, in the order of the formulas.
    pub fn all(&self, dry: &DryRuns) -> Vec<BoxFinding> {
        let mut findings: Vec<BoxFinding> = Vec::new();
        findings.extend(self.about_dry_runs(dry));
        findings.extend(self.about_plane());
        findings.extend(self.about_heating());
        findings.extend(self.about_reach());
        findings.extend(self.no_boiling.map(|why| {
            let (text, remedy) = no_boiling_said(why, self.tested.boiling_point_c);
            BoxFinding::note(FindingCode::DoesNotBoil, text, remedy)
        }));
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
                message!("evaporation", limit = celsius(fixed(EVAPORATION_C, 0))),
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
        self.test.plateaus.is_empty().then(|| {
            BoxFinding::indicative(
                FindingCode::NoPlateau,
                message!("box-no-plateau"),
                message!("box-no-plateau-remedy"),
            )
        })
    }

    fn about_plane(&self) -> Option<BoxFinding> {
        if self.tested.lies_flat() {
            return None;
        }
        let plane = self.tested.campaign.instruments.irradiance_plane;
        let way = self.tested.campaign.instruments.irradiance_estimate;
        if way == Some(IrradianceEstimate::FromHorizontal) {
            return Some(BoxFinding::indicative(
                FindingCode::PlaneNotHorizontal,
                message!("box-plane-turned"),
                message!("box-plane-turned-remedy"),
            ));
        }
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
        if self.taken.found.is_empty() && self.taken.beyond.is_empty() {
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
                begin_and_end(to_c.clone()),
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
                begin_and_end(to_c.clone()),
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
                    load = kilograms_per_square_metre(range(low, high, 1)),
                    full = kilograms_per_square_metre(fixed(LOAD_KG_M2, 0))
                ),
                message!("box-load-off-remedy", full = fixed(LOAD_KG_M2, 0)),
            ));
        }
        findings
    }

    fn about_reach(&self) -> Vec<BoxFinding> {
        let mut findings = Vec::new();
        if let Some(nearest) = self.test.nearest(&self.taken.beyond) {
            let text = message!(
                "box-beyond-reach",
                rises = self.taken.beyond.len(),
                reach = kelvins(fixed(nearest.reach_k, 0)),
                end = kelvins(fixed(nearest.end_k, 0))
            );
            let remedy = message!("box-beyond-reach-remedy");
            findings.push(if self.taken.found.is_empty() {
                BoxFinding::indicative(FindingCode::BeyondReach, text, remedy)
            } else {
                BoxFinding::note(FindingCode::BeyondReach, text, remedy)
            });
        }
        let Some(Nearest { reach_k, end_k }) = self.test.nearest(&self.taken.found) else {
            return findings;
        };
        if matches!(self.f2, Err(Missing::End(_))) {
            findings.push(BoxFinding::indicative(
                FindingCode::NoUpperEnd,
                message!(
                    "box-no-upper-end",
                    reach = kelvins(fixed(reach_k, 0)),
                    end = kelvins(fixed(end_k, 0))
                ),
                message!("box-reach-remedy"),
            ));
        } else if end_k > NEAR_REACH * reach_k {
            findings.extend(self.more_by_less_f1().map(|more| {
                BoxFinding::note(
                    FindingCode::NearReach,
                    message!(
                        "box-near-reach",
                        reach = kelvins(fixed(reach_k, 0)),
                        end = kelvins(fixed(end_k, 0)),
                        more = fixed(more, 1)
                    ),
                    message!("box-reach-remedy"),
                )
            }));
        }
        findings
    }

    /// By how many per cent F2 is higher where F1 is one per cent lower.
    fn more_by_less_f1(&self) -> Option<f64> {
        let f1 = self.test.f1(&Off::NONE)?;
        let (of_less, of_all) = (
            self.test.f2_by(0.99 * f1, &Off::NONE)?,
            self.test.f2_by(f1, &Off::NONE)?,
        );
        Some(100.0 * (of_less / of_all - 1.0))
    }
}

/// To heat from the lower end of the rise to its upper one.
fn begin_and_end(to_c: Phrase) -> Message {
    message!(
        "box-no-heating-remedy",
        from = celsius(fixed(FROM_C, 0)),
        to = celsius(to_c)
    )
}
