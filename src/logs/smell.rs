//! Readings that cannot be what their column says: single faults, or a wrong unit.

use std::path::Path;

use super::notice::LogNotice;
use super::quantity::Quantity;
use super::readings::Series;
use super::sensor::{Sensor, UnitFrom};
use crate::believable::{
    AIR_C, DRY_VESSEL_C, FAHRENHEIT_HIGHS, KILOWATT_HIGHS, LEAST_SUN_W_M2, LOGGED_IRRADIANCE_W_M2,
    LOGGED_WATER_C, LOGGED_WIND_M_S, LOWEST_KELVIN, Range,
};
use crate::error::Problem;
use crate::units;

/// Share of readings out of range beyond which the unit, not a sensor, is at fault.
const WRONG_UNIT_SHARE: f64 = 0.05;
/// So few readings out of range are slips, however short the log.
const MOST_SLIPS: usize = 2;

/// Values that can occur beside a cooker in use.
fn believable(quantity: Quantity) -> Range {
    match quantity {
        Quantity::Water => LOGGED_WATER_C,
        Quantity::Vessel => DRY_VESSEL_C,
        Quantity::Ambient => AIR_C,
        Quantity::Irradiance => LOGGED_IRRADIANCE_W_M2,
        Quantity::Wind => LOGGED_WIND_M_S,
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
    let is_taken = |value: &f64| !range.contains(value);
    let taken: Vec<f64> = series.value.iter().copied().filter(is_taken).collect();
    let wrong = taken.len();
    let lowest = series.value.iter().copied().fold(f64::INFINITY, f64::min);
    let highest = series
        .value
        .iter()
        .copied()
        .fold(f64::NEG_INFINITY, f64::max);
    if quantity == Quantity::Irradiance && total > 0 && KILOWATT_HIGHS.contains(&highest) {
        let what = format!("found nothing above {highest}, expected hundreds of W/m²");
        return Err(Problem::at(path, what)
            .item(sensor.item())
            .hint(looks_like(sensor, "kW/m²")));
    }
    let is_assumed = sensor.unit_from == UnitFrom::Assumed;
    if quantity == Quantity::Irradiance
        && is_assumed
        && (KILOWATT_HIGHS.end..LEAST_SUN_W_M2).contains(&highest)
    {
        let what = format!(
            "found nothing above {highest}, expected hundreds of W/m², and no unit is stated"
        );
        let hint = "write the unit of the column, such as irradiance = \"mV\" or \"W/m²\", under [units] in campaign.toml";
        return Err(Problem::at(path, what).item(sensor.item()).hint(hint));
    }
    let is_slip = wrong <= MOST_SLIPS && wrong < total;
    if !is_slip && wrong as f64 > WRONG_UNIT_SHARE * total as f64 {
        let is_temperature = matches!(
            quantity,
            Quantity::Water | Quantity::Vessel | Quantity::Ambient
        );
        let is_vessel = quantity == Quantity::Water
            && sensor
                .header
                .eq_ignore_ascii_case(Quantity::Vessel.header());
        let hint = if is_vessel {
            "a dry vessel gets so hot, water does not: write kind = \"dry\" in its [[run]], or correct the unit".to_owned()
        } else if is_temperature && lowest > LOWEST_KELVIN {
            looks_like(sensor, "K")
        } else if is_temperature && looks_celsius(sensor, lowest, highest) {
            looks_like(sensor, "°C")
        } else if is_temperature && FAHRENHEIT_HIGHS.contains(&highest) && highest > *range.end() {
            let stuck = "; if the sensor is stuck, leave its cells blank";
            looks_like(sensor, "°F") + stuck + or_the_water(quantity, lowest, highest)
        } else {
            "check the column's unit, and leave cells blank where the sensor failed".to_owned()
        };
        return Err(wrong_unit(path, sensor, lowest, highest).hint(hint));
    }
    if taken.is_empty() {
        return Ok(None);
    }
    let readings = series
        .time_us
        .iter()
        .copied()
        .zip(series.value.iter().copied());
    let (time_us, value) = readings.filter(|(_, value)| !is_taken(value)).unzip();
    *series = Series::new(time_us, value);
    let values = taken.iter().copied();
    Ok(Some(TakenOut {
        readings: wrong,
        lowest: values.clone().fold(f64::INFINITY, f64::min),
        highest: values.fold(f64::NEG_INFINITY, f64::max),
    }))
}

impl TakenOut {
    /// As a reader is told.
    pub fn notice(&self, log: &str, sensor: &Sensor) -> LogNotice {
        LogNotice::UnbelievableReadings {
            log: log.to_owned(),
            column: sensor.header.clone(),
            readings: self.readings,
            lowest: self.lowest,
            highest: self.highest,
            unit: sensor.quantity.unit(),
        }
    }
}

/// What to do about air that may be the water.
fn or_the_water(quantity: Quantity, lowest: f64, highest: f64) -> &'static str {
    let starts_as_air = quantity == Quantity::Ambient && AIR_C.contains(&lowest);
    if starts_as_air && LOGGED_WATER_C.contains(&highest) {
        "; if it is the water, name the column of each by water_temperature and ambient_temperature under [columns]"
    } else {
        ""
    }
}

/// What to do about a column in another unit than it was read in.
fn looks_like(sensor: &Sensor, unit: &str) -> String {
    let key = sensor.quantity.key();
    match sensor.unit_from {
        UnitFrom::Assumed => format!(
            "this looks like {unit}, and no unit is stated: write {key} = \"{unit}\" under [units] in campaign.toml, or ({unit}) behind the header"
        ),
        stated => format!(
            "this looks like {unit}, but {} is stated ({}): correct that",
            sensor.unit.symbol(),
            stated.describe()
        ),
    }
}

/// Whether readings in °F that are too cold to be true are believable as °C, as they are written.
fn looks_celsius(sensor: &Sensor, lowest: f64, highest: f64) -> bool {
    let range = believable(sensor.quantity);
    let written = |value: f64| sensor.unit.of_base(value);
    sensor.unit.symbol() == "°F"
        && lowest < *range.start()
        && range.contains(&written(lowest))
        && range.contains(&written(highest))
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
    use crate::measure::{Kind, Unit};

    fn series(value: &[f64]) -> Series {
        Series::new((0..value.len() as i64).collect(), value.to_vec())
    }

    fn sensor(quantity: Quantity) -> Sensor {
        Sensor {
            quantity,
            column: 1,
            header: "invented".to_owned(),
            found_by: crate::logs::sensor::FoundBy::Synonym,
            unit: Unit::base(quantity.meaning().kinds()[0]),
            unit_from: UnitFrom::Assumed,
            has_unit_in_cells: false,
            vessel: 0,
            per_w_m2: 1.0,
            calibration: None,
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
    fn water_in_celsius_under_a_header_of_fahrenheit_is_refused_and_named() {
        let fahrenheit = Unit::parse("°F", &[Kind::Temperature]).unwrap();
        let sensor = Sensor {
            unit: fahrenheit,
            unit_from: UnitFrom::Header,
            ..sensor(Quantity::Water)
        };
        let hint_of = |written: [f64; 4]| {
            let mut water = series(&written.map(|value| fahrenheit.to_base(value)));
            let refused = take_out_faults(Path::new("a.csv"), &sensor, &mut water);
            refused.unwrap_err().hint.unwrap()
        };
        // Four numbers of °C, from 15 to 70; three of them are below −5 °C as °F.
        assert!(hint_of([15.0, 18.0, 22.0, 70.0]).contains("looks like °C, but °F is stated"));
        // A sensor that failed gives numbers that no water has, in either unit.
        assert!(!hint_of([-40.0, -40.0, -40.0, 150.0]).contains("looks like"));
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
