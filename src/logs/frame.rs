//! The frame of a log's rows: put in order of time, and taken apart by sensor.

use polars::prelude::*;

use super::readings::Series as ReadingSeries;
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
    /// Times of all rows, microseconds since 1970.
    ///
    /// # Errors
    /// [`Error::Internal`] if the column is not there.
    pub fn time_us(&self) -> Result<Vec<i64>> {
        let time = self
            .data
            .column(TIME)
            .and_then(|time| time.i64())
            .map_err(internal)?;
        Ok(time.into_no_null_iter().collect())
    }

    /// Valid readings of one sensor; `time_us` as [`Frame::time_us`] gives it.
    ///
    /// # Errors
    /// [`Error::Internal`] if the column is not there.
    pub fn sensor(&self, index: usize, time_us: &[i64]) -> Result<ReadingSeries> {
        let name = sensor_name(index);
        let values = self
            .data
            .column(&name)
            .and_then(|column| column.f64())
            .map_err(internal)?;
        let rows = time_us.iter().zip(values.iter());
        let (time_us, value) = rows
            .filter_map(|(&time_us, value)| Some((time_us, value?)))
            .unzip();
        Ok(ReadingSeries { time_us, value })
    }
}

fn sensor_name(index: usize) -> PlSmallStr {
    format!("sensor_{index}").into()
}

fn internal(error: PolarsError) -> Error {
    Error::Internal(error.to_string())
}
