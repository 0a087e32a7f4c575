//! Gain and loss by least squares over all sound intervals.

use super::balance::{Figures, HeatBalance};
use super::far_apart::far_apart;
use super::finding::{BalanceFinding, FindingCode};
use crate::language::{fixed, range, short};
use crate::message;
use crate::physics::water::SPECIFIC_HEAT_J_PER_KG_K;
use crate::procedure::s580::S580;
use crate::procedure::s580::intervals::Interval;
use crate::procedure::s580::reason::Reason;
use crate::procedure::sources::{common_errors, vessel_heat_error};
use crate::procedure::tested::Tested;
use crate::procedure::uncertainty::points::{Factors, places};
use crate::procedure::uncertainty::shift::Shift;
use crate::procedure::uncertainty::step::reading_spread;
use crate::procedure::uncertainty::{Fitted, Point};
use crate::stats::line::Bounds;

/// Share of the mean irradiance within which all of it lies where it hardly varied.
/// Common practice, no published source.
const HARDLY_VARIED: f64 = 0.2;

/// Whose heat counts.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Heat {
    /// The water's alone, as the practice takes it.
    OfWater,
    /// That of the vessels too, where the campaign file tells how much they store.
    OfWaterAndVessels,
}

impl Heat {
    /// Heat capacity of the vessels that counts, J/K.
    fn of_vessels_j_per_k(self, tested: &Tested) -> f64 {
        match (self, &tested.campaign.vessel_heat) {
            (Heat::OfWaterAndVessels, Some(heat)) => heat.j_per_k(),
            _ => 0.0,
        }
    }
}

/// Fits P = g·G − u·Td, without intercept, to every interval whose readings are sound: what
/// sets an interval aside for irradiance, ambient, solar time or wind does not count here;
/// what does for the water window, gaps, clouds and exclusions does. Where readings are too far
/// apart for any interval of the practice, the steps between them serve.
///
/// P is the power that the water takes up, and the vessels where their heat counts. `None` with
/// fewer than three intervals, and where gain and loss cannot be told apart.
///
/// # Source
/// An energy balance whose terms are found by regression: after Funk and Larson, Solar Energy
/// 62 (1998) 63–68, abstract seen. Which intervals count is this project's reading.
pub fn fit(tested: &Tested, s580: &S580, heat: Heat) -> Option<HeatBalance> {
    let far_apart = far_apart(tested, s580);
    let all = far_apart
        .as_ref()
        .map_or(&s580.intervals, |one| &one.intervals);
    let sound: Vec<&Interval> = all.iter().filter(|one| is_sound(one)).collect();
    let places = places(&sound, &tested.campaign.site.time_zone);
    let points: Vec<Point> = sound
        .iter()
        .zip(places.of)
        .filter_map(|(interval, place)| point(interval, tested, heat, place))
        .collect();
    let campaign = &tested.campaign;
    let owner = campaign.file.to_string_lossy();
    let mut common = common_errors(&campaign.instruments, &owner);
    if heat.of_vessels_j_per_k(tested) > 0.0 {
        common.push(vessel_heat_error(&owner));
    }
    let fitted = Fitted::fit(&points, balance, reading_spread(tested), common)?;
    let Figures {
        gain_m2,
        loss_w_per_k,
        power_700_50_w,
        opto_thermal_ratio,
    } = Figures::of(&fitted);
    let irradiance: Vec<f64> = points.iter().map(|point| point.x1).collect();
    let mut found = HeatBalance {
        intervals: points.len(),
        counts_vessels: heat.of_vessels_j_per_k(tested) > 0.0,
        dates: places.dates,
        mean_irradiance_w_m2: irradiance.iter().sum::<f64>() / irradiance.len() as f64,
        irradiance_w_m2: extremes(irradiance.into_iter()),
        difference_k: extremes(points.iter().map(Point::difference_k)),
        fitted,
        gain_m2,
        loss_w_per_k,
        power_700_50_w,
        opto_thermal_ratio,
        far_apart,
        findings: Vec::new(),
    };
    found.findings = findings(&found);
    Some(found)
}

/// Whether an interval's readings are sound, whatever the practice says of the weather.
pub fn is_sound(interval: &Interval) -> bool {
    let is_weather = |reason: &Reason| match reason {
        Reason::AmbientOutOfRange
        | Reason::IrradianceLow
        | Reason::IrradianceHigh
        | Reason::IrradianceUnsteady
        | Reason::WindHigh
        | Reason::OutsideSolarWindow => true,
        Reason::ReadingGap
        | Reason::ExcludedByTester
        | Reason::NotCloudless
        | Reason::WaterBelowWindow
        | Reason::WaterAboveWindow => false,
    };
    let measured = &interval.measured;
    let is_complete = measured.irradiance.is_some() && measured.ambient.is_some();
    is_complete && interval.reasons().iter().all(is_weather)
}

fn point(
    interval: &Interval,
    tested: &Tested,
    heat: Heat,
    (day, follows): (usize, bool),
) -> Option<Point> {
    let measured = &interval.measured;
    let water_j_per_k = tested.runs[interval.run].plan.water_kg * SPECIFIC_HEAT_J_PER_KG_K;
    let rise_k = measured.water_end_c - measured.water_start_c;
    let vessels_j_per_k = heat.of_vessels_j_per_k(tested);
    let per_kelvin = (water_j_per_k + vessels_j_per_k) / measured.duration_s;
    Some(Point {
        x1: measured.irradiance?.mean,
        water_c: measured.water.mean,
        ambient_c: measured.ambient?.mean,
        of_water: water_j_per_k * rise_k / measured.duration_s,
        of_vessels: vessels_j_per_k * rise_k / measured.duration_s,
        per_kelvin,
        per_second: per_kelvin * rise_k / measured.duration_s,
        day,
        follows,
    })
}

/// P = g·G − u·Td.
fn balance(shift: &Shift) -> Factors {
    Factors {
        x1: shift.irradiance,
        x2: shift.difference().map(|factor| -factor),
        y: [shift.power(), shift.vessel_power()],
    }
}

fn extremes(values: impl Iterator<Item = f64> + Clone) -> Bounds {
    Bounds {
        lower: values.clone().fold(f64::INFINITY, f64::min),
        upper: values.fold(f64::NEG_INFINITY, f64::max),
    }
}

fn findings(found: &HeatBalance) -> Vec<BalanceFinding> {
    let mut findings = Vec::new();
    if let Some(far_apart) = &found.far_apart {
        findings.push(BalanceFinding::note(
            FindingCode::ReadingsFarApart,
            message!(
                "balance-readings-far-apart",
                minutes = short(far_apart.step_min)
            ),
            message!("balance-readings-far-apart-remedy"),
        ));
    }
    if found.is_of_one_day() {
        findings.push(BalanceFinding::note(
            FindingCode::OneDay,
            message!("balance-one-day"),
            message!("balance-one-day-remedy"),
        ));
    }
    let Bounds { lower, upper } = found.irradiance_w_m2;
    if upper - lower < HARDLY_VARIED * found.mean_irradiance_w_m2 {
        findings.push(BalanceFinding::note(
            FindingCode::IrradianceHardlyVaried,
            message!(
                "balance-irradiance-hardly-varied",
                range = range(lower, upper, 0)
            ),
            message!("balance-irradiance-hardly-varied-remedy"),
        ));
    }
    if found.opto_thermal_ratio.is_none() {
        let interval = found.loss_w_per_k.interval;
        findings.push(BalanceFinding::note(
            FindingCode::LossNotShown,
            message!(
                "balance-loss-not-shown",
                loss = fixed(found.loss_w_per_k.value, 2),
                range = range(interval.lower, interval.upper, 2)
            ),
            message!("balance-loss-not-shown-remedy"),
        ));
    }
    findings
}
