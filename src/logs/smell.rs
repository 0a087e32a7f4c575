//! Readings that cannot be what their column says: single faults, or a wrong unit.

use std::path::Path;

use super::columns::{Quantity, Sensor};
use super::readings::Series;
use crate::error::Problem;
use crate::units;

/// Share of readings out of range beyond which the unit, not a sensor, is at fault.
const WRONG_UNIT_SHARE: f64 = 0.05;
/// So few readings out of range are slips, however short the log.
const MOST_SLIPS: usize = 2;

/// Highest temperatures that a log in °F may hold.
const FAHRENHEIT_HIGHS: std::ops::RangeInclusive<f64> = 60.0..=250.0;

/// Largest irradiance of a log that looks like kW/m².
const LARGEST_KILOWATTS: f64 = 3.0;

/// Values that can occur beside a cooker in use.
/// Common practice, no published source; water in an open pot boils below 101 °C.
fn believable(quantity: Quantity) -> std::ops::RangeInclusive<f64> {
    match quantity {
        Quantity::Water => -5.0..=105.0,
        Quantity::Ambient => -40.0..=60.0,
        Quantity::Irradiance => -50.0..=2000.0,
        Quantity::Wind => -0.5..=75.0,
    }
}

/// Readings that were taken out.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TakenOut {
    pub readings: usize,
    pub lowest: f64,
    pub highest: f64,
}

/// Takes single readings out that cannot be true, and says which; `None` if none.
///
/// # Errors
/// A [`Problem`] if so many cannot be true that the unit must be another one.
pub fn take_out_faults(
    path: &Path,
    sensor: &Sensor,
    series: &mut Series,
) -> Result<Option<TakenOut>, Problem> {
    let quantity = sensor.quantity;
    let range = believable(quantity);
    let total = series.value.len();
    let (kept, taken): (Vec<_>, Vec<_>) = series
        .time_us
        .iter()
        .copied()
        .zip(series.value.iter().copied())
        .partition(|(_, value)| range.contains(value));
    let wrong = taken.len();
    let lowest = series.value.iter().copied().fold(f64::INFINITY, f64::min);
    let highest = series
        .value
        .iter()
        .copied()
        .fold(f64::NEG_INFINITY, f64::max);
    if quantity == Quantity::Irradiance && total > 0 && (0.05..LARGEST_KILOWATTS).contains(&highest)
    {
        let what = format!("found nothing above {highest}, expected hundreds of W/m²");
        return Err(Problem::at(path, what)
            .item(sensor.item())
            .hint("this looks like kW/m²: multiply the column by 1000"));
    }
    let is_slip = wrong <= MOST_SLIPS && wrong < total;
    if !is_slip && wrong as f64 > WRONG_UNIT_SHARE * total as f64 {
        let hint = match quantity {
            Quantity::Water | Quantity::Ambient
                if FAHRENHEIT_HIGHS.contains(&highest) && highest > *range.end() =>
            {
                "this looks like °F: convert the column to °C, (°F − 32)/1.8; if the sensor is stuck, leave its cells blank"
            }
            _ => "check the column's unit, and leave cells blank where the sensor failed",
        };
        return Err(wrong_unit(path, sensor, lowest, highest).hint(hint));
    }
    if taken.is_empty() {
        return Ok(None);
    }
    let (time_us, value) = kept.into_iter().unzip();
    *series = Series { time_us, value };
    let values = taken.iter().map(|(_, value)| *value);
    Ok(Some(TakenOut {
        readings: wrong,
        lowest: values.clone().fold(f64::INFINITY, f64::min),
        highest: values.fold(f64::NEG_INFINITY, f64::max),
    }))
}

fn wrong_unit(path: &Path, sensor: &Sensor, lowest: f64, highest: f64) -> Problem {
    let range = believable(sensor.quantity);
    let what = format!(
        "found {} {unit}, expected {} {unit}",
        units::range(lowest, highest, 1),
        units::range(*range.start(), *range.end(), 0),
        unit = sensor.quantity.unit(),
    );
    Problem::at(path, what).item(sensor.item())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn series(value: &[f64]) -> Series {
        Series {
            time_us: (0..value.len() as i64).collect(),
            value: value.to_vec(),
        }
    }

    fn sensor(quantity: Quantity) -> Sensor {
        Sensor {
            quantity,
            column: 1,
            header: "invented".to_owned(),
        }
    }

    #[test]
    fn a_failed_sensor_is_not_taken_for_fahrenheit() {
        let mut water = series(&[20.0, -50.0, -50.0, -50.0, 95.0]);
        let problem =
            take_out_faults(Path::new("a.csv"), &sensor(Quantity::Water), &mut water).unwrap_err();
        assert!(!problem.hint.unwrap().contains("°F"));
    }

    #[test]
    fn water_in_fahrenheit_is_refused_and_named() {
        let mut water = series(&[70.0, 120.0, 160.0, 195.0]);
        let problem =
            take_out_faults(Path::new("a.csv"), &sensor(Quantity::Water), &mut water).unwrap_err();
        assert!(problem.hint.unwrap().contains("°F"));
    }

    #[test]
    fn one_spike_in_a_day_is_taken_out_and_counted() {
        let mut value = vec![25.0; 100];
        value[40] = 327.67;
        let mut water = series(&value);
        let taken = take_out_faults(Path::new("a.csv"), &sensor(Quantity::Water), &mut water)
            .unwrap()
            .unwrap();
        assert_eq!((taken.readings, water.value.len()), (1, 99));
        assert_eq!(taken.highest, 327.67);
        assert!(!water.time_us.contains(&40));
    }

    #[test]
    fn irradiance_in_kilowatts_is_refused() {
        let mut sun = series(&[0.71, 0.85, 0.92]);
        let problem = take_out_faults(Path::new("a.csv"), &sensor(Quantity::Irradiance), &mut sun)
            .unwrap_err();
        assert!(problem.hint.unwrap().contains("kW/m²"));
    }
}
