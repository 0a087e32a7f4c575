//! A sensor that never changes.

use crate::campaign::kinds::RunKind;
use crate::campaign::model::IrradianceEstimate;
use crate::language::{Message, duration, short};
use crate::logs::Series;
use crate::logs::quantity::Quantity;
use crate::message;
use crate::procedure::run::Run;
use crate::procedure::tested::Tested;
use crate::units::{celsius_to_fahrenheit, seconds_between};

/// So many readings that are all the same are no chance.
const LEAST_READINGS: usize = 12;
/// Over so long a time, s: around noon a clear sky stays within 1 W/m² for half an hour.
/// Common practice, no published source.
const LEAST_S: f64 = 5_400.0;
/// The same of a number that a coarse instrument shows, s.
const LEAST_COARSE_S: f64 = 10_800.0;
/// Wind up to which a sensor may stand still, m/s: cups start at 0.3 to 0.5 m/s, and loggers add
/// what they start at to a count of none. Common practice, no published source.
const STILL_AIR_M_S: f64 = 0.5;
/// Water so far below its boiling point changes in the sun, K.
const BELOW_BOILING_K: f64 = 5.0;
/// Values of another sensor that show that the weather was logged as it went.
const LIVELY: usize = 3;

/// A sensor with one value for all of a run, while others change.
#[derive(Debug, Clone, PartialEq)]
pub struct StuckSensor {
    pub log: String,
    pub quantity: Quantity,
    /// In the unit of the canonical log.
    pub value: f64,
    pub readings: usize,
    pub lasts_s: f64,
}

/// The sensors of a run that never change. Where none of the weather does, it was typed in or
/// made up as a whole, and nothing is said. A still wind, irradiance in the shade and water on the
/// boil may stay the same; so may what an eye estimates.
pub fn stuck_sensors(tested: &Tested, run: &Run) -> Vec<StuckSensor> {
    let readings = &run.readings;
    let is_modelled =
        tested.campaign.instruments.irradiance_estimate == Some(IrradianceEstimate::ClearSky);
    let sun = readings.irradiance_w_m2.as_ref();
    let sun = sun.filter(|_| run.plan.kind != RunKind::Cooling && !is_modelled);
    let wind = readings.wind_m_s.as_ref().filter(|_| !run.estimates_wind);
    let weather = [
        (Quantity::Ambient, readings.ambient_c.as_ref()),
        (Quantity::Irradiance, sun),
        (Quantity::Wind, wind),
    ];
    let is_lively = weather
        .iter()
        .any(|(_, series)| series.is_some_and(is_lively));
    let water = Some(&readings.water_c).filter(|_| run.plan.kind == RunKind::Water);
    let all = weather.into_iter().chain([(Quantity::Water, water)]);
    let stuck = all.filter_map(|(quantity, series)| {
        let series = series?;
        let (&first_us, &last_us) = series.time_us.first().zip(series.time_us.last())?;
        let lasts_s = seconds_between(first_us, last_us);
        let (&value, count) = (series.value.first()?, series.value.len());
        let least_s = if is_coarse(quantity, value) {
            LEAST_COARSE_S
        } else {
            LEAST_S
        };
        let may_stay = match quantity {
            Quantity::Wind => value <= STILL_AIR_M_S,
            Quantity::Water => value > tested.boiling_point_c - BELOW_BOILING_K,
            _ => false,
        };
        let is_stuck = series.value.iter().all(|one| *one == value)
            && count >= LEAST_READINGS
            && lasts_s >= least_s
            && !may_stay;
        is_stuck.then(|| StuckSensor {
            log: run.plan.label.clone(),
            quantity,
            value,
            readings: count,
            lasts_s,
        })
    });
    stuck.filter(|_| is_lively).collect()
}

/// Whether a series has more than two values.
fn is_lively(series: &Series) -> bool {
    let mut seen: Vec<f64> = Vec::new();
    for value in &series.value {
        if !seen.contains(value) {
            seen.push(*value);
        }
        if seen.len() >= LIVELY {
            return true;
        }
    }
    false
}

/// Whether a value is one that an instrument of coarse steps shows: tens of W/m², whole degrees,
/// halves of m/s.
fn is_coarse(quantity: Quantity, value: f64) -> bool {
    let is_multiple = |value: f64, step: f64| {
        let steps = value / step;
        (steps - steps.round()).abs() < 0.02
    };
    match quantity {
        Quantity::Irradiance => is_multiple(value, 10.0),
        Quantity::Wind => is_multiple(value, 0.5),
        Quantity::Water | Quantity::Vessel | Quantity::Ambient => {
            is_multiple(value, 0.5) || is_multiple(celsius_to_fahrenheit(value), 1.0)
        }
    }
}

impl StuckSensor {
    /// What it says.
    pub fn message(&self) -> Message {
        message!(
            "notice-stuck-sensor",
            log = &self.log,
            quantity = self.quantity.name(),
            value = short(self.value),
            unit = self.quantity.unit(),
            readings = self.readings,
            time = duration(self.lasts_s)
        )
    }
}
