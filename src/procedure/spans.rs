//! Spans of time, and what a quantity did over one.

use crate::logs::Series;
use crate::units::seconds_between;

/// A span of time, microseconds since 1970, UTC.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct TimeSpan {
    pub from_us: i64,
    pub to_us: i64,
}

impl TimeSpan {
    /// Whether two spans have time in common.
    pub fn overlaps(&self, other: TimeSpan) -> bool {
        other.from_us < self.to_us && other.to_us > self.from_us
    }

    /// Whether another span lies in this one as a whole.
    pub fn holds(&self, other: TimeSpan) -> bool {
        self.from_us <= other.from_us && other.to_us <= self.to_us
    }
}

/// Mean and extremes of a quantity over a span.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Summary {
    pub mean: f64,
    pub min: f64,
    pub max: f64,
}

/// Time-weighted mean (trapezoid) and extremes of the readings in a span, both ends
/// included; `None` without a reading, and itself for a single one.
pub fn summarise(series: &Series, span: TimeSpan) -> Option<Summary> {
    let (time_us, value) = series.between(span.from_us, span.to_us);
    let (first, last) = (*time_us.first()?, *time_us.last()?);
    let mut area = 0.0;
    for (time, value) in time_us.windows(2).zip(value.windows(2)) {
        let step_s = seconds_between(time[0], time[1]);
        area += (value[0] + value[1]) / 2.0 * step_s;
    }
    let mean = if last > first {
        area / seconds_between(first, last)
    } else {
        value[0]
    };
    Some(Summary {
        mean,
        min: value.iter().copied().fold(f64::INFINITY, f64::min),
        max: value.iter().copied().fold(f64::NEG_INFINITY, f64::max),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    const SECOND_US: i64 = 1_000_000;

    fn span(from_s: i64, to_s: i64) -> TimeSpan {
        TimeSpan {
            from_us: from_s * SECOND_US,
            to_us: to_s * SECOND_US,
        }
    }

    #[test]
    fn uneven_readings_are_weighted_by_time() {
        let times = [0, 60, 600].map(|second| second * SECOND_US);
        let series = Series::new(times.to_vec(), vec![0.0, 10.0, 10.0]);
        let summary = summarise(&series, span(0, 600)).unwrap();
        assert!((summary.mean - (300.0 + 5400.0) / 600.0).abs() < 1e-12);
        let single = summarise(&series, span(30, 90)).unwrap();
        assert_eq!(single.mean, 10.0);
        assert_eq!(summarise(&series, span(61, 90)), None);
    }
}
