//! The frame of a log's rows: put in order of time, and taken apart by quantity.

use polars::prelude::*;

use super::columns::{Quantity, Sensor};
use super::readings::{Readings, Series as ReadingSeries};
use crate::error::{Error, Result};

const TIME: &str = "time_us";

/// Collects rows into columns.
pub struct FrameBuilder {
    time_us: Vec<i64>,
    sensors: Vec<PrimitiveChunkedBuilder<Float64Type>>,
}

/// Rows in order of time, no two with the same time.
pub struct Frame {
    data: DataFrame,
    /// The rows were not in order of time.
    pub was_unsorted: bool,
    /// Rows left out because an earlier row has the same time.
    pub repeated: usize,
}

impl FrameBuilder {
    /// A builder for a time column and as many sensors.
    pub fn new(sensors: usize) -> Self {
        FrameBuilder {
            time_us: Vec::new(),
            sensors: (0..sensors)
                .map(|index| PrimitiveChunkedBuilder::new(sensor_name(index), 0))
                .collect(),
        }
    }

    /// Adds a row: its time (microseconds since 1970) and a value a sensor.
    pub fn push(&mut self, time_us: i64, values: impl Iterator<Item = Option<f64>>) {
        self.time_us.push(time_us);
        for (sensor, value) in self.sensors.iter_mut().zip(values) {
            sensor.append_option(value);
        }
    }

    /// Sorts the rows by time; of several with one time the first in the log stays.
    ///
    /// # Errors
    /// [`Error::Internal`] if the columns do not fit together.
    pub fn finish(self) -> Result<Frame> {
        let rows = self.time_us.len();
        let was_unsorted = !self.time_us.is_sorted();
        let mut columns = vec![Column::new(TIME.into(), self.time_us)];
        let sensors = self.sensors.into_iter();
        columns.extend(sensors.map(|sensor| sensor.finish().into_series().into_column()));
        let mut data = DataFrame::new(rows, columns).map_err(internal)?;
        if was_unsorted {
            let in_row_order = SortMultipleOptions::default().with_maintain_order(true);
            data = data.sort([TIME], in_row_order).map_err(internal)?;
        }
        let time = data
            .column(TIME)
            .and_then(|time| time.i64())
            .map_err(internal)?;
        let new_time: BooleanChunked = time.not_equal_missing(&time.shift(1));
        let data = data.filter(&new_time).map_err(internal)?;
        let repeated = rows - data.height();
        Ok(Frame {
            data,
            was_unsorted,
            repeated,
        })
    }
}

impl Frame {
    /// Valid readings of each quantity; several water sensors become their mean.
    ///
    /// # Errors
    /// [`Error::Internal`] if a column is not there.
    pub fn readings(&self, sensors: &[Sensor]) -> Result<Readings> {
        let time = self
            .data
            .column(TIME)
            .and_then(|time| time.i64())
            .map_err(internal)?;
        let time_us: Vec<i64> = time.into_no_null_iter().collect();
        let series = |quantity: Quantity| -> Result<ReadingSeries> {
            let columns = sensors
                .iter()
                .enumerate()
                .filter(|(_, sensor)| sensor.quantity == quantity)
                .map(|(index, _)| self.data.column(&sensor_name(index)).and_then(|c| c.f64()))
                .collect::<PolarsResult<Vec<_>>>()
                .map_err(internal)?;
            Ok(mean_of_valid(&time_us, &columns))
        };
        let measured = |series: ReadingSeries| (!series.value.is_empty()).then_some(series);
        Ok(Readings {
            water_c: series(Quantity::Water)?,
            ambient_c: measured(series(Quantity::Ambient)?),
            irradiance_w_m2: measured(series(Quantity::Irradiance)?),
            wind_m_s: measured(series(Quantity::Wind)?),
            time_us,
        })
    }
}

/// Mean over the columns that are valid in a row; rows with none are left out.
fn mean_of_valid(time_us: &[i64], columns: &[&Float64Chunked]) -> ReadingSeries {
    let mut cells: Vec<_> = columns.iter().map(|column| column.iter()).collect();
    let mut series = ReadingSeries::default();
    for &time in time_us {
        let (mut sum, mut valid) = (0.0, 0_u32);
        for value in cells
            .iter_mut()
            .filter_map(|column| column.next().flatten())
        {
            sum += value;
            valid += 1;
        }
        if valid > 0 {
            series.time_us.push(time);
            series.value.push(sum / f64::from(valid));
        }
    }
    series
}

fn sensor_name(index: usize) -> PlSmallStr {
    format!("sensor_{index}").into()
}

fn internal(error: PolarsError) -> Error {
    Error::Internal(error.to_string())
}
