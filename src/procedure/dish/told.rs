//! What weakens or prevents the figures of a concentrating cooker, with its remedy.

use super::cooling::{BEGINS_ABOVE_K, NoCooling};
use super::finding::{DishFinding, FindingCode};
use super::formulas::{LEAST_RISE_K, Test};
use crate::campaign::model::Plane;
use crate::language::{celsius, fixed, kelvins};
use crate::message;
use crate::physics::water::EVAPORATION_C;
use crate::procedure::boiling::{NoBoiling, no_boiling_said};
use crate::procedure::run::Run;
use crate::procedure::stretch::NoStretch;
use crate::procedure::tested::Tested;
use crate::procedure::uncertainty::Figure;

/// What the findings are made of.
pub struct Findings<'t> {
    pub tested: &'t Tested,
    pub test: &'t Test<'t>,
    pub not_cooled: &'t [(&'t Run, NoCooling)],
    pub left_out: &'t [NoStretch],
    /// By cooling, and by the heat balance, W/K.
    pub losses: Option<(Figure, Figure)>,
    pub is_of_one_day: bool,
    pub has_no_end: bool,
    pub no_boiling: Option<NoBoiling>,
}

impl Findings<'_> {
    /// Every finding, in the order of the formulas.
    pub fn all(&self) -> Vec<DishFinding> {
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
                message!("evaporation", limit = celsius(fixed(EVAPORATION_C, 0))),
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
                        above = kelvins(fixed(*above_k, 0)),
                        least = kelvins(fixed(BEGINS_ABOVE_K, 0))
                    ),
                    message!("dish-begins-too-cool-remedy"),
                ),
                NoCooling::Warms(by_k) => (
                    FindingCode::Warms,
                    message!("dish-warms", log = log, rise = kelvins(fixed(*by_k, 1))),
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
                message!(
                    "dish-runs-left-out",
                    rise = kelvins(fixed(LEAST_RISE_K, 0)),
                    runs = self.left_out.len()
                ),
                message!(
                    "dish-no-heating-remedy",
                    rise = kelvins(fixed(LEAST_RISE_K, 0))
                ),
            )
        })
    }

    fn about_sun(&self) -> Vec<DishFinding> {
        let mut findings = Vec::new();
        if self.test.heatings.is_empty() {
            findings.push(DishFinding::indicative(
                FindingCode::NoHeating,
                message!("dish-no-heating", rise = kelvins(fixed(LEAST_RISE_K, 0))),
                message!(
                    "dish-no-heating-remedy",
                    rise = kelvins(fixed(LEAST_RISE_K, 0))
                ),
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
