//! The frame of a log's rows: put in order of time, and taken apart by sensor.

use std::sync::Arc;

use polars::prelude::{
    BooleanChunked, ChunkCompareEq, ChunkShift, ChunkedBuilder, Column, DataFrame, Float64Type,
    IntoColumn, IntoSeries, PlSmallStr, PolarsError, PrimitiveChunkedBuilder, SortMultipleOptions,
};

use super::readings::Series;
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
    times: Arc<Vec<i64>>,
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

    /// Times of the rows so far, in their order.
    pub fn time_us(&self) -> &[i64] {
        &self.time_us
    }

    /// Adds a row: its time (microseconds since 1970) and a value a sensor.
    pub fn push(&mut self, time_us: i64, values: impl Iterator<Item = Option<f64>>) {
        self.time_us.push(time_us);
        for (sensor, value) in self.sensors.iter_mut().zip(values) {
            sensor.append_option(value);
        }
    }

    /// Puts the clock right by an offset (µs) and sorts the rows by time; of several
    /// with one time the first in the log stays.
    ///
    /// # Errors
    /// [`Error::Internal`] if the columns do not fit together.
    pub fn finish(mut self, clock_offset_us: i64) -> Result<Frame> {
        if clock_offset_us != 0 {
            for time_us in &mut self.time_us {
                *time_us += clock_offset_us;
            }
        }
        let rows = self.time_us.len();
        let was_unsorted = !self.time_us.is_sorted();
        let mut times = self.time_us;
        let sensors = self.sensors.into_iter();
        let mut columns: Vec<Column> = sensors
            .map(|sensor| sensor.finish().into_series().into_column())
            .collect();
        // Most logs are in order, and need no copy to be put there.
        if was_unsorted || times.windows(2).any(|pair| pair[0] == pair[1]) {
            columns.push(Column::new(TIME.into(), times));
            let mut data = DataFrame::new(rows, columns).map_err(internal)?;
            let in_row_order = SortMultipleOptions::default().with_maintain_order(true);
            data = data.sort([TIME], in_row_order).map_err(internal)?;
            let time = data
                .column(TIME)
                .and_then(|time| time.i64())
                .map_err(internal)?;
            let new_time: BooleanChunked = time.not_equal_missing(&time.shift(1));
            let mut data = data.filter(&new_time).map_err(internal)?;
            let time = data.drop_in_place(TIME).map_err(internal)?;
            times = time.i64().map_err(internal)?.into_no_null_iter().collect();
            columns = data.into_columns();
        }
        let data = DataFrame::new(times.len(), columns).map_err(internal)?;
        Ok(Frame {
            data,
            was_unsorted,
            repeated: rows - times.len(),
            times: Arc::new(times),
        })
    }
}

impl Frame {
    /// Times of all rows, microseconds since 1970.
    pub fn time_us(&self) -> Arc<Vec<i64>> {
        Arc::clone(&self.times)
    }

    /// Takes the valid readings of one sensor out of the frame.
    ///
    /// # Errors
    /// [`Error::Internal`] if the column is not there.
    pub fn take_sensor(&mut self, index: usize) -> Result<Series> {
        let column = self
            .data
            .drop_in_place(&sensor_name(index))
            .map_err(internal)?;
        let values = column.f64().map_err(internal)?;
        if values.null_count() == 0 {
            return Ok(Series {
                time_us: self.time_us(),
                value: values.into_no_null_iter().collect(),
            });
        }
        let rows = self.times.iter().zip(values.iter());
        let (time_us, value) = rows
            .filter_map(|(&time_us, value)| Some((time_us, value?)))
            .unzip();
        Ok(Series::new(time_us, value))
    }
}

fn sensor_name(index: usize) -> PlSmallStr {
    format!("sensor_{index}").into()
}

fn internal(error: PolarsError) -> Error {
    Error::Internal(error.to_string())
}
