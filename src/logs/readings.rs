//! Valid readings of a run, each quantity on its own.

use std::sync::Arc;

use crate::units::seconds_between;

/// Valid readings of one quantity, in time order, no two at one time.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Series {
    /// Microseconds since 1970, UTC, strictly increasing. Shared by the quantities that
    /// are valid in every row of a log, which halves the memory of a large one.
    pub time_us: Arc<Vec<i64>>,
    /// Values in the unit of the field that holds the series.
    pub value: Vec<f64>,
}

impl Series {
    /// A series of times and as many values.
    pub fn new(time_us: Vec<i64>, value: Vec<f64>) -> Self {
        Series {
            time_us: Arc::new(time_us),
            value,
        }
    }

    /// Readings from one time to another, both included.
    pub fn between(&self, from_us: i64, to_us: i64) -> (&[i64], &[f64]) {
        let span = span(&self.time_us, from_us, to_us);
        (&self.time_us[span.clone()], &self.value[span])
    }

    /// The same as a series of its own; `times` are its times, where they are there already.
    fn part(&self, from_us: i64, to_us: i64, times: Option<&Arc<Vec<i64>>>) -> Series {
        let (time_us, value) = self.between(from_us, to_us);
        Series {
            time_us: times.map_or_else(|| Arc::new(time_us.to_vec()), Arc::clone),
            value: value.to_vec(),
        }
    }
}

/// Positions of the times from one to another, both included.
fn span(time_us: &[i64], from_us: i64, to_us: i64) -> std::ops::Range<usize> {
    let first = time_us.partition_point(|&time| time < from_us);
    let last = time_us.partition_point(|&time| time <= to_us);
    first..last.max(first)
}

/// Which vessel each sensor is in, and how much water each vessel holds.
#[derive(Debug, Clone, Copy, Default)]
pub struct Vessels<'v> {
    /// One index a sensor.
    pub of_sensor: &'v [usize],
    /// Water in each vessel, kg; empty where they count alike.
    pub water_kg: &'v [f64],
}

/// Several sensors of one quantity as one.
#[derive(Debug, Clone, PartialEq)]
pub struct Merged {
    /// At each time the mean of the sensors that are valid then.
    pub mean: Series,
    /// Times at which some sensor is valid and another is not.
    pub incomplete: usize,
    /// Times at which valid sensors differ by more than the limit given.
    pub apart: usize,
}

/// Mean of the valid sensors at each time: of each vessel's sensors, and then of the
/// vessels, weighted by their water. `apart_by` is in the unit of the values.
pub fn merge(mut sensors: Vec<Series>, vessels: &Vessels<'_>, apart_by: f64) -> Merged {
    if sensors.len() == 1 {
        return Merged {
            mean: sensors.remove(0),
            incomplete: 0,
            apart: 0,
        };
    }
    let (mut times, mut means) = (Vec::new(), Vec::new());
    let (mut incomplete, mut apart) = (0, 0);
    let mut next = vec![0; sensors.len()];
    let mut valid: Vec<(usize, f64)> = Vec::new();
    loop {
        let heads = sensors.iter().zip(&next);
        let earliest = heads
            .filter_map(|(sensor, &at)| sensor.time_us.get(at))
            .min();
        let Some(&time_us) = earliest else { break };
        valid.clear();
        for (index, sensor) in sensors.iter().enumerate() {
            if sensor.time_us.get(next[index]) == Some(&time_us) {
                valid.push((index, sensor.value[next[index]]));
                next[index] += 1;
            }
        }
        let values = valid.iter().map(|(_, value)| *value);
        let lowest = values.clone().fold(f64::INFINITY, f64::min);
        let highest = values.fold(f64::NEG_INFINITY, f64::max);
        apart += usize::from(highest - lowest > apart_by);
        incomplete += usize::from(valid.len() < sensors.len());
        times.push(time_us);
        means.push(vessels.mean(&valid));
    }
    Merged {
        mean: Series::new(times, means),
        incomplete,
        apart,
    }
}

impl Vessels<'_> {
    /// Mean over sensors, given as index and value.
    fn mean(&self, valid: &[(usize, f64)]) -> f64 {
        if self.water_kg.is_empty() {
            return valid.iter().map(|(_, value)| value).sum::<f64>() / valid.len() as f64;
        }
        let (mut heat, mut water_kg) = (0.0, 0.0);
        for (vessel, kg) in self.water_kg.iter().enumerate() {
            let inside = valid
                .iter()
                .filter(|(index, _)| self.of_sensor[*index] == vessel);
            let count = inside.clone().count();
            if count > 0 {
                heat += kg * inside.map(|(_, value)| value).sum::<f64>() / count as f64;
                water_kg += kg;
            }
        }
        heat / water_kg
    }
}

/// Readings of one run. A quantity that the log never holds is `None`.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Readings {
    /// Time of every reading, valid or not, microseconds since 1970, UTC.
    pub time_us: Arc<Vec<i64>>,
    /// Water temperature, °C: the mean of the valid sensors.
    pub water_c: Series,
    /// Temperature of the dark vessel, of a dry run, °C.
    pub vessel_c: Option<Series>,
    /// Ambient temperature, °C.
    pub ambient_c: Option<Series>,
    /// Irradiance in the sensor's plane, W/m².
    pub irradiance_w_m2: Option<Series>,
    /// Wind speed, m/s.
    pub wind_m_s: Option<Series>,
    /// When a note in the log says that the cooker was turned to the sun, microseconds since
    /// 1970, UTC, strictly increasing.
    pub aimed_us: Vec<i64>,
}

impl Readings {
    /// The readings from one time to another, both included. A quantity of which there
    /// is none counts as not measured.
    pub fn part(&self, from_us: i64, to_us: i64) -> Readings {
        let time_us = self.time_us[span(&self.time_us, from_us, to_us)].to_vec();
        let time_us = Arc::new(time_us);
        let part = |series: &Series| {
            let shares_times = Arc::ptr_eq(&series.time_us, &self.time_us);
            series.part(from_us, to_us, shares_times.then_some(&time_us))
        };
        let optional = |series: &Option<Series>| {
            series
                .as_ref()
                .map(part)
                .filter(|series| !series.value.is_empty())
        };
        Readings {
            water_c: part(&self.water_c),
            vessel_c: optional(&self.vessel_c),
            ambient_c: optional(&self.ambient_c),
            irradiance_w_m2: optional(&self.irradiance_w_m2),
            wind_m_s: optional(&self.wind_m_s),
            aimed_us: self.aimed_us[span(&self.aimed_us, from_us, to_us)].to_vec(),
            time_us,
        }
    }

    /// The readings of each of several spans, from one time to another, both included. What the
    /// spans do not hold is given back as soon as they are cut out of it: a long log has most of
    /// it outside of them.
    #[must_use]
    pub fn into_parts(self, spans: &[(i64, i64)]) -> Vec<Readings> {
        let Readings {
            time_us,
            water_c,
            vessel_c,
            ambient_c,
            irradiance_w_m2,
            wind_m_s,
            aimed_us,
        } = self;
        let mut parts: Vec<Readings> = spans
            .iter()
            .map(|(from_us, to_us)| Readings {
                time_us: Arc::new(time_us[span(&time_us, *from_us, *to_us)].to_vec()),
                aimed_us: aimed_us[span(&aimed_us, *from_us, *to_us)].to_vec(),
                ..Readings::default()
            })
            .collect();
        fn some(series: Series) -> Option<Series> {
            Some(series).filter(|series| !series.value.is_empty())
        }
        let mut deal = |series: Option<Series>, put: fn(&mut Readings, Series)| {
            let Some(series) = series else { return };
            for (part, &(from_us, to_us)) in parts.iter_mut().zip(spans) {
                let shares_times = Arc::ptr_eq(&series.time_us, &time_us);
                let times = shares_times.then_some(&part.time_us);
                let cut = series.part(from_us, to_us, times);
                put(part, cut);
            }
        };
        deal(Some(water_c), |part, series| part.water_c = series);
        deal(vessel_c, |part, series| part.vessel_c = some(series));
        deal(ambient_c, |part, series| part.ambient_c = some(series));
        deal(irradiance_w_m2, |part, series| {
            part.irradiance_w_m2 = some(series)
        });
        deal(wind_m_s, |part, series| part.wind_m_s = some(series));
        parts
    }

    /// Median time from one reading to the next, s; `None` with a single one.
    pub fn median_step_s(&self) -> Option<f64> {
        let steps = || self.time_us.windows(2).map(|pair| pair[1] - pair[0]);
        let middle = steps().len() / 2;
        let first = steps().next()?;
        // A logger keeps one step: then nothing has to be put in order.
        let (shorter, same) = steps().fold((0, 0), |(shorter, same), step| {
            (
                shorter + usize::from(step < first),
                same + usize::from(step == first),
            )
        });
        if (shorter..shorter + same).contains(&middle) {
            return Some(seconds_between(0, first));
        }
        let mut steps: Vec<i64> = steps().collect();
        let (_, median, _) = steps.select_nth_unstable(middle);
        Some(seconds_between(0, *median))
    }

    /// Keeps the readings from one time to another, both included.
    pub fn keep(&mut self, from_us: i64, to_us: i64) {
        let holds =
            |time_us: Option<&i64>| time_us.is_none_or(|time| (from_us..=to_us).contains(time));
        if !holds(self.time_us.first()) || !holds(self.time_us.last()) {
            *self = self.part(from_us, to_us);
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn vessels_count_by_their_water() {
        let sensors = vec![
            Series::new(vec![0, 1], vec![30.0, 40.0]),
            Series::new(vec![0, 1], vec![32.0, 42.0]),
            Series::new(vec![0], vec![61.0]),
        ];
        let vessels = Vessels {
            of_sensor: &[0, 0, 1],
            water_kg: &[3.0, 1.0],
        };
        let merged = merge(sensors, &vessels, 15.0);
        assert_eq!(merged.mean.value, [(3.0 * 31.0 + 61.0) / 4.0, 41.0]);
        assert_eq!((merged.incomplete, merged.apart), (1, 1));
    }
}
