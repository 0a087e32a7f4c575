//! Valid readings of a run, each quantity on its own.

use std::collections::BTreeMap;

/// Valid readings of one quantity, in time order, no two at one time.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Series {
    /// Microseconds since 1970, UTC, strictly increasing.
    pub time_us: Vec<i64>,
    /// Values in the unit of the field that holds the series.
    pub value: Vec<f64>,
}

impl Series {
    /// Readings from one time to another, both included.
    pub fn between(&self, from_us: i64, to_us: i64) -> (&[i64], &[f64]) {
        let first = self.time_us.partition_point(|&time| time < from_us);
        let last = self
            .time_us
            .partition_point(|&time| time <= to_us)
            .max(first);
        (&self.time_us[first..last], &self.value[first..last])
    }

    fn keep(&mut self, from_us: i64, to_us: i64) {
        let first = self.time_us.partition_point(|&time| time < from_us);
        let last = self
            .time_us
            .partition_point(|&time| time <= to_us)
            .max(first);
        self.time_us.truncate(last);
        self.value.truncate(last);
        self.time_us.drain(..first);
        self.value.drain(..first);
    }
}

/// Several sensors of one quantity as one.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Merged {
    /// At each time the mean of the sensors that are valid then.
    pub mean: Series,
    /// Times at which some sensor is valid and another is not.
    pub incomplete: usize,
    /// Times at which valid sensors differ by more than the limit given.
    pub apart: usize,
}

/// Mean of the valid sensors at each time; `apart_by` is in the unit of the values.
pub fn merge(mut sensors: Vec<Series>, apart_by: f64) -> Merged {
    if sensors.len() == 1 {
        return Merged {
            mean: sensors.remove(0),
            ..Merged::default()
        };
    }
    let mut at_time: BTreeMap<i64, Vec<f64>> = BTreeMap::new();
    for sensor in &sensors {
        for (&time_us, &value) in sensor.time_us.iter().zip(&sensor.value) {
            at_time.entry(time_us).or_default().push(value);
        }
    }
    let mut merged = Merged::default();
    for (time_us, values) in at_time {
        let lowest = values.iter().copied().fold(f64::INFINITY, f64::min);
        let highest = values.iter().copied().fold(f64::NEG_INFINITY, f64::max);
        merged.apart += usize::from(highest - lowest > apart_by);
        merged.incomplete += usize::from(values.len() < sensors.len());
        merged.mean.time_us.push(time_us);
        merged
            .mean
            .value
            .push(values.iter().sum::<f64>() / values.len() as f64);
    }
    merged
}

/// Readings of one run. A quantity that the log never holds is `None`.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Readings {
    /// Time of every reading, valid or not, microseconds since 1970, UTC.
    pub time_us: Vec<i64>,
    /// Water temperature, °C: the mean of the valid sensors.
    pub water_c: Series,
    /// Ambient temperature, °C.
    pub ambient_c: Option<Series>,
    /// Irradiance in the sensor's plane, W/m².
    pub irradiance_w_m2: Option<Series>,
    /// Wind speed, m/s.
    pub wind_m_s: Option<Series>,
}

impl Readings {
    /// Keeps the readings from one time to another, both included. A quantity of
    /// which none is left counts as not measured.
    pub fn keep(&mut self, from_us: i64, to_us: i64) {
        self.time_us.retain(|time| (from_us..=to_us).contains(time));
        self.water_c.keep(from_us, to_us);
        let others = [
            &mut self.ambient_c,
            &mut self.irradiance_w_m2,
            &mut self.wind_m_s,
        ];
        for quantity in others {
            if let Some(series) = quantity {
                series.keep(from_us, to_us);
            }
            quantity.take_if(|series| series.value.is_empty());
        }
    }
}
