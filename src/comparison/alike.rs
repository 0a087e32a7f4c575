//! Whether a figure of two campaigns was taken alike, so that its difference is one of cookers.

use crate::campaign::Campaign;
use crate::campaign::model::Plane;
use crate::language::Message;
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::box_cooker::formulas::{LOAD_WITHIN, end_c};
use crate::procedure::efficiency::Efficiency;
use crate::procedure::stated::FigureKey;
use crate::procedure::tested::Tested;

/// Share by which loads, mean irradiance and what vessels store or lose may differ.
/// Common practice, no published source.
const ALIKE_SHARE: f64 = 0.02;
/// Kelvin by which ambient and boiling point may differ. Common practice, no published source.
const ALIKE_K: f64 = 2.0;
/// Kelvin by which either end of the span of an efficiency may differ.
/// Common practice, no published source.
const ALIKE_ENDS_K: f64 = 5.0;

/// Why a figure is not compared.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Unlike {
    /// Vessels of another number, heat or surface.
    Vessels,
    /// Irradiance in another plane.
    Plane,
    /// Nobody says in which plane irradiance was measured.
    PlaneNotStated,
    /// Another load, irradiance, ambient temperature or boiling point.
    LoadOrSun,
    /// Another load.
    Load,
    /// The water went over another range of temperatures.
    Span,
    /// The heat that vessels store counts in one of them only.
    VesselHeat,
    /// It is not told of either what makes it unsure.
    NoBudget,
}

impl Unlike {
    /// The code in files.
    pub fn code(self) -> &'static str {
        match self {
            Unlike::Vessels => "other-vessels",
            Unlike::Plane => "other-plane",
            Unlike::PlaneNotStated => "plane-not-stated",
            Unlike::LoadOrSun => "other-load-or-sun",
            Unlike::Load => "other-load",
            Unlike::Span => "other-span",
            Unlike::VesselHeat => "vessel-heat-in-one",
            Unlike::NoBudget => "uncertainty-not-told",
        }
    }

    /// In words, after "not compared:".
    pub fn name(self) -> Message {
        match self {
            Unlike::Vessels => message!("figure-unlike-vessels"),
            Unlike::Plane => message!("figure-unlike-plane"),
            Unlike::PlaneNotStated => message!("figure-unlike-plane-not-stated"),
            Unlike::LoadOrSun => message!("figure-unlike-load-or-sun"),
            Unlike::Load => message!("figure-unlike-load"),
            Unlike::Span => message!("figure-unlike-span"),
            Unlike::VesselHeat => message!("figure-unlike-vessel-heat"),
            Unlike::NoBudget => message!("figure-unlike-no-budget"),
        }
    }
}

/// What the campaign files say of the vessels of two campaigns.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Vessels {
    Alike,
    Other,
    /// Not enough is stated of both.
    NotStated,
}

/// Vessels of another number, or of which another heat capacity or surface is stated, are others.
pub fn vessels(one: &Campaign, two: &Campaign) -> Vessels {
    let heat = [one, two].map(|of| of.vessel_heat.as_ref().map(|heat| heat.j_per_k()));
    let surface = [one, two].map(|of| of.cooker.loss_area_m2);
    let stated = [heat, surface].map(|[one, two]| one.zip(two));
    let differ = |(one, two): &(f64, f64)| !are_within(ALIKE_SHARE, *one, *two);
    if one.vessels != two.vessels || stated.iter().flatten().any(differ) {
        Vessels::Other
    } else if stated.iter().flatten().next().is_some() {
        Vessels::Alike
    } else {
        Vessels::NotStated
    }
}

/// Whether a figure is one of the vessels, too.
pub fn is_of_vessels(key: FigureKey) -> bool {
    matches!(
        key,
        FigureKey::DryDifference
            | FigureKey::TimeConstant
            | FigureKey::LossFactor
            | FigureKey::OpticalFactor
    )
}

/// Whether a figure is for each W/m², so that it counts in which plane these were measured.
fn is_by_irradiance(key: FigureKey) -> bool {
    !matches!(key, FigureKey::TimeConstant | FigureKey::LossFactor)
}

/// Why a figure that both state is not compared; `None` where it is.
pub fn unlike(key: FigureKey, one: &Assessment, two: &Assessment) -> Option<Unlike> {
    let is_other = |is_other: bool, why: Unlike| is_other.then_some(why);
    let of_vessels = || {
        let found = vessels(&one.tested.campaign, &two.tested.campaign);
        is_other(
            is_of_vessels(key) && found == Vessels::Other,
            Unlike::Vessels,
        )
    };
    let of_plane = || match [one, two].map(|side| plane(&side.tested)) {
        _ if !is_by_irradiance(key) => None,
        [Some(one), Some(two)] => is_other(one != two, Unlike::Plane),
        _ => Some(Unlike::PlaneNotStated),
    };
    of_vessels()
        .or_else(of_plane)
        .or_else(|| of_test(key, one, two))
}

/// The plane that irradiance counts in; estimates are normal to the beam.
fn plane(tested: &Tested) -> Option<Plane> {
    match tested.estimates_irradiance() {
        true => Some(Plane::Normal),
        false => tested.campaign.instruments.irradiance_plane,
    }
}

/// What of the test itself makes a figure another one.
fn of_test(key: FigureKey, one: &Assessment, two: &Assessment) -> Option<Unlike> {
    let sides = [one, two];
    let (is_alike, why) = match key {
        FigureKey::BoxBoiling | FigureKey::DishBoiling => {
            let conditions = sides.map(|side| boiling(key, side));
            (both(conditions, Conditions::are_alike), Unlike::LoadOrSun)
        }
        FigureKey::PeakExergy => {
            let conditions = sides.map(|side| side.efficiency.as_ref().map(of_efficiency));
            (both(conditions, Conditions::are_alike), Unlike::LoadOrSun)
        }
        FigureKey::Energy | FigureKey::Exergy => {
            let found = sides.map(|side| side.efficiency.as_ref());
            let conditions = found.map(|one| one.map(of_efficiency));
            if !both(conditions, Conditions::are_alike) {
                return Some(Unlike::LoadOrSun);
            }
            (
                both(found, |one, two| spans_are_alike(one, two)),
                Unlike::Span,
            )
        }
        FigureKey::F2 => {
            let ends = sides.map(|side| end_c(&side.tested));
            if (ends[0] - ends[1]).abs() > ALIKE_K {
                return Some(Unlike::Span);
            }
            let loads = sides.map(load_kg_m2);
            let are_alike = |one: &f64, two: &f64| are_within(LOAD_WITHIN, *one, *two);
            (both(loads, are_alike), Unlike::Load)
        }
        FigureKey::TimeConstant => {
            let are_alike = |one: &f64, two: &f64| are_within(ALIKE_SHARE, *one, *two);
            (both(sides.map(cooled_kg), are_alike), Unlike::Load)
        }
        FigureKey::Gain | FigureKey::Loss | FigureKey::OptoThermalRatio => {
            let counts = sides.map(|side| side.tested.campaign.vessel_heat.is_some());
            (counts[0] == counts[1], Unlike::VesselHeat)
        }
        _ => return None,
    };
    (!is_alike).then_some(why)
}

/// Whether both are there and alike.
fn both<T>([one, two]: [Option<T>; 2], are_alike: impl Fn(&T, &T) -> bool) -> bool {
    one.zip(two).is_some_and(|(one, two)| are_alike(&one, &two))
}

/// Whether two numbers differ by no more than a share of the larger.
fn are_within(share: f64, one: f64, two: f64) -> bool {
    (one - two).abs() <= share * one.abs().max(two.abs())
}

/// What a time or a power was taken under.
#[derive(Debug, Clone, Copy)]
struct Conditions {
    irradiance_w_m2: f64,
    ambient_c: f64,
    /// `None` where they do not count.
    boiling_point_c: Option<f64>,
    water_kg: Option<f64>,
}

impl Conditions {
    fn are_alike(&self, other: &Conditions) -> bool {
        let is_near = |one: Option<f64>, two: Option<f64>, are: &dyn Fn(f64, f64) -> bool| {
            one.zip(two).is_none_or(|(one, two)| are(one, two))
        };
        let within_k = |one: f64, two: f64| (one - two).abs() <= ALIKE_K;
        let within_share = |one: f64, two: f64| are_within(ALIKE_SHARE, one, two);
        within_share(self.irradiance_w_m2, other.irradiance_w_m2)
            && within_k(self.ambient_c, other.ambient_c)
            && is_near(self.boiling_point_c, other.boiling_point_c, &within_k)
            && is_near(self.water_kg, other.water_kg, &within_share)
    }
}

fn boiling(key: FigureKey, one: &Assessment) -> Option<Conditions> {
    if key == FigureKey::BoxBoiling {
        let boiling = one.box_figures.as_ref()?.boiling.as_ref()?;
        return Some(Conditions {
            irradiance_w_m2: boiling.irradiance_w_m2,
            ambient_c: boiling.ambient_c,
            boiling_point_c: Some(boiling.boiling_point_c),
            water_kg: Some(boiling.water_kg),
        });
    }
    let boiling = one.dish_figures.as_ref()?.boiling.as_ref()?;
    Some(Conditions {
        irradiance_w_m2: boiling.irradiance_w_m2,
        ambient_c: boiling.ambient_c,
        boiling_point_c: Some(boiling.boiling_point_c),
        water_kg: Some(boiling.water_kg),
    })
}

fn of_efficiency(found: &Efficiency) -> Conditions {
    Conditions {
        irradiance_w_m2: found.mean_irradiance_w_m2,
        ambient_c: found.mean_ambient_c,
        boiling_point_c: None,
        water_kg: None,
    }
}

/// Whether the water went over one range: both ends, and the mean difference from the air.
fn spans_are_alike(one: &Efficiency, two: &Efficiency) -> bool {
    let mean_k = |of: &Efficiency| {
        let seconds: f64 = of.steps.iter().map(|step| step.duration_s).sum();
        let kelvin_seconds = of
            .steps
            .iter()
            .map(|step| (step.water_c - step.ambient_c) * step.duration_s);
        kelvin_seconds.sum::<f64>() / seconds
    };
    (one.water_c.lower - two.water_c.lower).abs() <= ALIKE_ENDS_K
        && (one.water_c.upper - two.water_c.upper).abs() <= ALIKE_ENDS_K
        && (mean_k(one) - mean_k(two)).abs() <= ALIKE_K
}

/// Mean load of the rises that F2 rests on, kg for each m² of aperture.
fn load_kg_m2(one: &Assessment) -> Option<f64> {
    let loads = one.box_figures.as_ref()?.stretches.iter();
    let kg = mean(loads.map(|stretch| stretch.water_kg))?;
    Some(kg / one.tested.campaign.cooker.intercept_area_m2)
}

/// Mean load of the cooling runs that count, kg.
fn cooled_kg(one: &Assessment) -> Option<f64> {
    let coolings = one.dish_figures.as_ref()?.coolings.iter();
    mean(coolings.map(|cooling| cooling.water_kg))
}

fn mean(values: impl ExactSizeIterator<Item = f64>) -> Option<f64> {
    let count = values.len() as f64;
    (count > 0.0).then(|| values.sum::<f64>() / count)
}

#[cfg(test)]
mod tests {
    use super::*;

    const AT: Conditions = Conditions {
        irradiance_w_m2: 900.0,
        ambient_c: 25.0,
        boiling_point_c: Some(100.0),
        water_kg: Some(4.0),
    };

    #[test]
    fn times_are_of_one_load_sun_air_and_boiling_point() {
        let near = Conditions {
            irradiance_w_m2: 885.0,
            ambient_c: 26.9,
            boiling_point_c: Some(98.1),
            water_kg: Some(4.07),
        };
        assert!(AT.are_alike(&near));
        let others = [
            Conditions {
                irradiance_w_m2: 880.0,
                ..AT
            },
            Conditions {
                ambient_c: 27.1,
                ..AT
            },
            Conditions {
                boiling_point_c: Some(97.9),
                ..AT
            },
            Conditions {
                water_kg: Some(4.1),
                ..AT
            },
        ];
        for other in others {
            assert!(!AT.are_alike(&other), "{other:?}");
        }
    }

    #[test]
    fn what_is_missing_in_one_is_not_alike() {
        assert!(!both([Some(1.0), None], |_, _| true));
        assert!(both([Some(1.0), Some(1.0)], |one, two| one == two));
    }
}
