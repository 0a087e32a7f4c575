//! Readings of a run as curves: broken where readings are far apart, and thinned without
//! losing what is lowest and highest.

use crate::logs::Series;
use crate::units::seconds_between;

/// Shortest time between readings over which no curve is drawn, s.
const LONGEST_STEP_S: f64 = 700.0;

/// A reading: microseconds since 1970, and its value.
type Reading = (i64, f64);

/// A series in pieces without a hole, each thinned to the lowest and the highest of so many
/// spans of time.
pub fn pieces(series: &Series, spans: usize) -> Vec<Vec<Reading>> {
    let longest_s = longest_step_s(series);
    let readings: Vec<Reading> = series
        .time_us
        .iter()
        .copied()
        .zip(series.value.iter().copied())
        .collect();
    let is_joined = |one: &Reading, next: &Reading| seconds_between(one.0, next.0) <= longest_s;
    let ends = readings.first().zip(readings.last());
    let span_us = ends.map_or(1, |(first, last)| {
        ((last.0 - first.0) / spans.max(1) as i64).max(1)
    });
    readings
        .chunk_by(is_joined)
        .map(|piece| thinned(piece, span_us))
        .collect()
}

/// The first and the last reading, and of each span of time the lowest and the highest.
fn thinned(piece: &[Reading], span_us: i64) -> Vec<Reading> {
    let start_us = piece.first().map_or(0, |reading| reading.0);
    let span = |reading: &Reading| (reading.0 - start_us) / span_us;
    let spans = piece.chunk_by(|one, next| span(one) == span(next));
    let extremes = spans.flat_map(|readings| {
        let by_value = |one: &&Reading, other: &&Reading| one.1.total_cmp(&other.1);
        let lowest = readings.iter().min_by(by_value);
        let highest = readings.iter().max_by(by_value);
        let mut both: Vec<Reading> = lowest.into_iter().chain(highest).copied().collect();
        both.sort_by_key(|reading| reading.0);
        both
    });
    let ends = piece.first().into_iter().chain(piece.last()).copied();
    let mut kept: Vec<Reading> = extremes.chain(ends).collect();
    kept.sort_by_key(|reading| reading.0);
    kept.dedup();
    kept
}

/// A time between readings over which no curve is drawn, s: longer than these readings are
/// mostly apart.
fn longest_step_s(series: &Series) -> f64 {
    let times = series.time_us.windows(2);
    let mut steps_s: Vec<f64> = times
        .map(|pair| seconds_between(pair[0], pair[1]))
        .collect();
    steps_s.sort_by(f64::total_cmp);
    let median_s = steps_s.get(steps_s.len() / 2).copied().unwrap_or(0.0);
    (1.5 * median_s).max(LONGEST_STEP_S)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn series(readings: &[(i64, f64)]) -> Series {
        Series {
            time_us: readings
                .iter()
                .map(|(s, _)| s * 1_000_000)
                .collect::<Vec<_>>()
                .into(),
            value: readings.iter().map(|(_, value)| *value).collect(),
        }
    }

    #[test]
    fn a_dip_of_one_second_in_four_hours_is_still_drawn() {
        let dip_s = 5_003;
        let value = |s: i64| if s == dip_s { 120.0 } else { 900.0 };
        let log: Vec<(i64, f64)> = (0..14_400).map(|s| (s, value(s))).collect();
        let drawn = pieces(&series(&log), 300);
        assert_eq!(drawn.len(), 1);
        assert!(drawn[0].len() < 700, "{}", drawn[0].len());
        assert!(drawn[0].contains(&(dip_s * 1_000_000, 120.0)));
        assert_eq!(drawn[0].first(), Some(&(0, 900.0)));
        assert_eq!(drawn[0].last(), Some(&(14_399_000_000, 900.0)));
    }

    #[test]
    fn a_curve_is_broken_where_readings_are_far_apart() {
        let hole = [(0, 1.0), (600, 2.0), (1_200, 3.0), (3_000, 4.0)];
        let drawn = pieces(&series(&hole), 100);
        assert_eq!(drawn.iter().map(Vec::len).collect::<Vec<_>>(), [3, 1]);
        // Air that is read every twenty minutes is joined.
        let drawn = pieces(&series(&[(0, 1.0), (1_200, 2.0), (2_400, 3.0)]), 100);
        assert_eq!(drawn.len(), 1);
    }
}
