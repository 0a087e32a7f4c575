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

/// Time-weighted mean (trapezoid) over a whole span, by straight lines between readings: one at
/// either end that lies between two readings is taken off the line; before the first and after
/// the last reading the value stands. `None` where two readings, or an end and the nearest
/// reading, are further apart than `longest_us`.
pub fn mean_over(series: &Series, span: TimeSpan, longest_us: i64) -> Option<f64> {
    let times = &series.time_us;
    let value_at = |time_us: i64| -> Option<f64> {
        let after = times.partition_point(|&time| time < time_us);
        let near = |place: usize| (times[place] - time_us).abs() <= longest_us;
        match (after.checked_sub(1), (after < times.len()).then_some(after)) {
            (_, Some(at)) if times[at] == time_us => Some(series.value[at]),
            (Some(before), Some(after)) => {
                let share =
                    (time_us - times[before]) as f64 / (times[after] - times[before]) as f64;
                let (low, high) = (series.value[before], series.value[after]);
                (times[after] - times[before] <= longest_us).then_some(low + share * (high - low))
            }
            (Some(only), None) | (None, Some(only)) => near(only).then(|| series.value[only]),
            (None, None) => None,
        }
    };
    let ends = (value_at(span.from_us)?, value_at(span.to_us)?);
    let (inner_us, inner) = series.between(span.from_us, span.to_us);
    let points = std::iter::once((span.from_us, ends.0))
        .chain(inner_us.iter().copied().zip(inner.iter().copied()))
        .chain([(span.to_us, ends.1)]);
    let (mut area, mut before) = (0.0, (span.from_us, ends.0));
    for point in points {
        if point.0 - before.0 > longest_us {
            return None;
        }
        area += (before.1 + point.1) / 2.0 * seconds_between(before.0, point.0);
        before = point;
    }
    let duration_s = seconds_between(span.from_us, span.to_us);
    (duration_s > 0.0).then_some(area / duration_s)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_mean_over_a_span_takes_its_ends_off_the_line() {
        let times = [0, 100, 200].map(|second| second * SECOND_US);
        let series = Series::new(times.to_vec(), vec![0.0, 10.0, 0.0]);
        let mean = |from, to, longest| mean_over(&series, span(from, to), longest * SECOND_US);
        // A triangle from 5 over 10 to 5.
        assert!((mean(50, 150, 100).unwrap() - 7.5).abs() < 1e-12);
        assert!((mean(0, 200, 100).unwrap() - 5.0).abs() < 1e-12);
        assert_eq!(mean(50, 150, 99), None);
        // Beyond the last reading it stands, as far as one step.
        assert!((mean(200, 250, 100).unwrap()).abs() < 1e-12);
        assert_eq!(mean(200, 350, 100), None);
    }

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
