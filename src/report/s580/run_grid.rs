//! How the figures of runs stand beside each other: small, on one set of axes.

use jiff::tz::TimeZone;

use crate::procedure::Run;
use crate::units::{SECONDS_PER_HOUR, seconds_between, zoned};

/// Room between two figures of a row, points; the template has the same.
const GUTTER_PT: f64 = 18.0;
/// Least width of a figure that two or more share a row, points.
const LEAST_PT: f64 = 140.0;
/// A run that lasts longer has a clock of its own, h.
const LONG_H: f64 = 24.0;
/// Shortest span of the clock, h.
const SHORTEST_H: f64 = 0.1;
/// A clock common to all runs is at most so many times as long as the longest of them.
const MOST_OF_LONGEST: f64 = 1.8;

/// How many runs stand in a row of a page.
pub fn runs_in_a_row(runs: usize) -> usize {
    match runs {
        0 | 1 => 1,
        2 | 4 => 2,
        _ => 3,
    }
}

/// Width of the figure of one of several runs, points, on a canvas that is so wide.
pub fn run_width_pt(canvas_pt: f64, runs: usize) -> f64 {
    let width_pt = |in_a_row: usize| {
        let count = in_a_row as f64;
        (canvas_pt - GUTTER_PT * (count - 1.0)) / count
    };
    let most = runs_in_a_row(runs);
    let widths = (1..=most).rev().map(width_pt);
    let mut enough = widths.filter(|width_pt| *width_pt >= LEAST_PT);
    enough.next().unwrap_or(canvas_pt)
}

/// The clock below the figures of runs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum RunClock {
    /// The same for all runs: from, to, hours of the day.
    Common(f64, f64),
    /// From the start of each run, for so many hours: side by side on one clock, runs at other
    /// times of day would be slivers.
    OwnStart(f64),
}

impl RunClock {
    /// The clock of a campaign's runs.
    pub fn of(runs: &[Run], zone: &TimeZone) -> Self {
        let short = runs.iter().filter(|run| !is_long(run));
        let spans: Vec<(f64, f64)> = short.map(|run| span_h(run, zone)).collect();
        let from_h = spans
            .iter()
            .map(|span| span.0)
            .fold(f64::INFINITY, f64::min);
        let to_h = spans
            .iter()
            .map(|span| span.1)
            .fold(f64::NEG_INFINITY, f64::max);
        let longest_h = spans.iter().map(|span| span.1 - span.0);
        let longest_h = longest_h.fold(SHORTEST_H, f64::max);
        if to_h - from_h <= MOST_OF_LONGEST * longest_h {
            RunClock::Common(from_h, to_h)
        } else {
            RunClock::OwnStart(longest_h)
        }
    }

    /// From, to, hours of its day, in the figure of a run; one that is long has its own.
    pub fn shown_h(self, run: &Run, zone: &TimeZone) -> (f64, f64) {
        let (start_h, end_h) = span_h(run, zone);
        match self {
            _ if is_long(run) => (start_h, end_h),
            RunClock::Common(from_h, to_h) => (from_h, to_h),
            RunClock::OwnStart(longest_h) => (start_h, start_h + longest_h),
        }
    }
}

/// Whether a run lasts so long that a clock common to all runs would hide the others.
pub fn is_long(run: &Run) -> bool {
    let times = &run.readings.time_us;
    let ends = times.first().zip(times.last());
    ends.is_some_and(|(first, last)| seconds_between(*first, *last) > LONG_H * SECONDS_PER_HOUR)
}

/// Local clock time as hours since midnight of the run's date; goes on past 24.
pub fn local_hours(time_us: i64, run: &Run, zone: &TimeZone) -> f64 {
    let local = zoned(time_us, zone).datetime();
    let midnight = run.date.to_datetime(jiff::civil::Time::midnight());
    local.duration_since(midnight).as_secs_f64() / SECONDS_PER_HOUR
}

/// From the first to the last reading of a run, hours of its day.
fn span_h(run: &Run, zone: &TimeZone) -> (f64, f64) {
    let times = &run.readings.time_us;
    let hours =
        |time_us: Option<&i64>| time_us.map_or(0.0, |time_us| local_hours(*time_us, run, zone));
    let (from_h, to_h) = (hours(times.first()), hours(times.last()));
    (from_h, to_h.max(from_h + SHORTEST_H))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn runs_of_a_row_fill_a_page_and_one_fills_a_narrow_screen() {
        for (runs, in_a_row) in [(1, 1.0), (2, 2.0), (3, 3.0), (4, 2.0), (5, 3.0), (365, 3.0)] {
            let width_pt = run_width_pt(482.0, runs);
            let filled_pt = in_a_row * width_pt + (in_a_row - 1.0) * GUTTER_PT;
            assert!((filled_pt - 482.0).abs() < 1e-9, "{runs}");
            assert_eq!(run_width_pt(270.0, runs), 270.0, "{runs}");
        }
    }
}
