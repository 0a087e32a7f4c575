//! When to re-aim a cooker that stands still while the sun moves.

use super::day::{STEP_S, micros};
use crate::procedure::sky::LocalSky;
use crate::procedure::spans::TimeSpan;
use crate::units::MICROSECONDS_PER_SECOND;

/// Shortest time between two aimings that a person keeps up, s.
/// Common practice, no published source.
pub const SHORTEST_BY_HAND_S: f64 = 120.0;

/// Times at which to aim at the sun, µs since 1970, UTC: at the start, and whenever the sun
/// has moved by the half angle from where it stood when last aimed at. They are looked for
/// in whole minutes, and fall before the light is lost.
pub fn aiming_times(sky: &LocalSky, span: &TimeSpan, half_angle_deg: f64) -> Vec<i64> {
    let (from_s, to_s) = (
        span.from_us as f64 / MICROSECONDS_PER_SECOND,
        span.to_us as f64 / MICROSECONDS_PER_SECOND,
    );
    let mut times = vec![span.from_us];
    let mut aimed_at = sky.sun(from_s);
    let mut now_s = from_s + STEP_S;
    while now_s < to_s {
        let next = sky.sun(now_s + STEP_S);
        if aimed_at.apart_deg(&next) > half_angle_deg {
            aimed_at = sky.sun(now_s);
            times.push(micros(now_s));
        }
        now_s += STEP_S;
    }
    times
}

/// Shortest and longest time between two aimings, s; `None` with a single one.
pub fn spacing_s(times: &[i64]) -> Option<(f64, f64)> {
    let steps = times
        .windows(2)
        .map(|pair| (pair[1] - pair[0]) as f64 / MICROSECONDS_PER_SECOND);
    steps.fold(None, |range, step_s| match range {
        None => Some((step_s, step_s)),
        Some((shortest_s, longest_s)) => Some((step_s.min(shortest_s), step_s.max(longest_s))),
    })
}
