//! The frame of a log's rows: put in order of time, and taken apart by sensor.

use std::sync::Arc;

use polars::prelude::{
    BooleanChunked, ChunkCompareEq, ChunkShift, Column, DataFrame, Float64Chunked, IntoColumn,
    IntoSeries, NewChunkedArray, PlSmallStr, PolarsError, SortMultipleOptions,
};

use super::readings::Series;
use crate::error::{Error, Result};

const TIME: &str = "time_us";

/// Collects rows into columns.
pub struct FrameBuilder {
    time_us: Vec<i64>,
    sensors: Vec<Cells>,
}

/// One sensor's values, row by row.
#[derive(Default)]
struct Cells {
    /// A row without one has some number here.
    values: Vec<f64>,
    /// Which rows have one, 64 rows a word; empty as long as all have. A large log is mostly
    /// whole, and then takes no memory for it.
    is_valid: Vec<u64>,
}

/// Rows in order of time, no two with the same time.
pub struct Frame {
    sensors: Vec<Cells>,
    times: Arc<Vec<i64>>,
    /// The rows were not in order of time.
    pub was_unsorted: bool,
    /// Rows left out because an earlier row has the same time.
    pub repeated: usize,
}

/// Rows of a word.
const WORD: usize = u64::BITS as usize;

impl Cells {
    fn push(&mut self, value: Option<f64>) {
        let row = self.values.len();
        self.values.push(value.unwrap_or_default());
        if value.is_none() && self.is_valid.is_empty() {
            self.is_valid = vec![u64::MAX; row / WORD];
            self.is_valid.push((1 << (row % WORD)) - 1);
        } else if !self.is_valid.is_empty() {
            if row.is_multiple_of(WORD) {
                self.is_valid.push(0);
            }
            self.is_valid[row / WORD] |= u64::from(value.is_some()) << (row % WORD);
        }
    }

    fn has(&self, row: usize) -> bool {
        let word = self.is_valid.get(row / WORD);
        word.is_none_or(|word| word >> (row % WORD) & 1 == 1)
    }

    fn iter(&self) -> impl Iterator<Item = Option<f64>> {
        let rows = self.values.iter().enumerate();
        rows.map(|(row, value)| self.has(row).then_some(*value))
    }

    /// The valid values with their times.
    fn into_series(mut self, times: &Arc<Vec<i64>>) -> Series {
        if self.is_valid.is_empty() {
            return Series {
                time_us: Arc::clone(times),
                value: self.values,
            };
        }
        let valid = |row: &usize| self.has(*row);
        let time_us = (0..times.len()).filter(valid).map(|row| times[row]);
        let time_us: Vec<i64> = time_us.collect();
        let mut kept = 0;
        for row in 0..self.values.len() {
            if self.has(row) {
                self.values[kept] = self.values[row];
                kept += 1;
            }
        }
        self.values.truncate(kept);
        Series::new(time_us, self.values)
    }
}

impl FrameBuilder {
    /// A builder for a time column and as many sensors.
    pub fn new(sensors: usize) -> Self {
        FrameBuilder {
            time_us: Vec::new(),
            sensors: (0..sensors).map(|_| Cells::default()).collect(),
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
            sensor.push(value);
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
        let (mut times, mut sensors) = (self.time_us, self.sensors);
        // Most logs are in order, and need no copy to be put there.
        if was_unsorted || times.windows(2).any(|pair| pair[0] == pair[1]) {
            (times, sensors) = sorted(times, sensors)?;
        }
        Ok(Frame {
            sensors,
            was_unsorted,
            repeated: rows - times.len(),
            times: Arc::new(times),
        })
    }
}

/// Rows in order of time; of several with one time the first stays.
fn sorted(times: Vec<i64>, sensors: Vec<Cells>) -> Result<(Vec<i64>, Vec<Cells>)> {
    let rows = times.len();
    let columns = sensors.into_iter().enumerate().map(|(index, cells)| {
        let values = Float64Chunked::from_iter_options(sensor_name(index), cells.iter());
        values.into_series().into_column()
    });
    let mut columns: Vec<Column> = columns.collect();
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
    let times = time.i64().map_err(internal)?.into_no_null_iter().collect();
    let cells = data.into_columns().into_iter().map(|column| {
        let mut cells = Cells::default();
        for value in column.f64().map_err(internal)?.iter() {
            cells.push(value);
        }
        Ok(cells)
    });
    Ok((times, cells.collect::<Result<_>>()?))
}

impl Frame {
    /// Times of all rows, microseconds since 1970.
    pub fn time_us(&self) -> Arc<Vec<i64>> {
        Arc::clone(&self.times)
    }

    /// Takes the valid readings of one sensor out of the frame, which is left without any of it.
    pub fn take_sensor(&mut self, index: usize) -> Series {
        std::mem::take(&mut self.sensors[index]).into_series(&self.times)
    }
}

fn sensor_name(index: usize) -> PlSmallStr {
    format!("sensor_{index}").into()
}

fn internal(error: PolarsError) -> Error {
    Error::Internal(error.to_string())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_value_that_is_missing_in_any_row_is_missing_there_alone() {
        for missing in [
            vec![],
            vec![0],
            vec![63],
            vec![64, 65, 199],
            (0..200).collect(),
        ] {
            let mut builder = FrameBuilder::new(2);
            for row in 0..200 {
                let value = (!missing.contains(&row)).then_some(f64::from(row));
                builder.push(i64::from(row), [value, Some(1.0)].into_iter());
            }
            let mut frame = builder.finish(5).unwrap();
            let series = frame.take_sensor(0);
            let there = (0..200).filter(|row| !missing.contains(row));
            let expected: Vec<f64> = there.clone().map(f64::from).collect();
            assert_eq!(series.value, expected);
            let times: Vec<i64> = there.map(|row| i64::from(row) + 5).collect();
            assert_eq!(*series.time_us, times);
            // What is whole shares its times.
            assert!(Arc::ptr_eq(&frame.take_sensor(1).time_us, &frame.time_us()));
        }
    }

    #[test]
    fn rows_are_put_in_order_and_the_first_of_one_time_stays() {
        let mut builder = FrameBuilder::new(1);
        for (time_us, value) in [(3, Some(1.0)), (1, None), (2, Some(3.0)), (1, Some(4.0))] {
            builder.push(time_us, std::iter::once(value));
        }
        let mut frame = builder.finish(0).unwrap();
        assert!(frame.was_unsorted);
        assert_eq!(
            (frame.repeated, frame.time_us().to_vec()),
            (1, vec![1, 2, 3])
        );
        assert_eq!(
            frame.take_sensor(0),
            Series::new(vec![2, 3], vec![3.0, 1.0])
        );
    }
}
