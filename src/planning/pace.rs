//! When in the day a run of a kind is read, and how often.

use super::day::SunNeeds;
use crate::believable::LEAST_SUN_W_M2;
use crate::campaign::kinds::RunKind;
use crate::procedure::s580::Limits;

/// Hours of solar time between which a dry vessel is read: the sun is high and changes least
/// two hours each side of noon. Common practice, no published source.
const DRY_HOURS: (f64, f64) = (10.0, 14.0);
/// Minutes between two readings of a dry vessel, within the 5 to 20 that will do.
const DRY_STEP_MIN: i32 = 10;
/// Minutes between two readings of a load that cools.
pub const COOLING_STEP_MIN: i32 = 5;
/// Longest cooling that a field sheet has lines for, min.
pub const COOLING_LONGEST_MIN: i32 = 180;
/// How far above the air a cooling run ends, K.
pub const COOLING_END_K: f64 = 20.0;

/// Hours of solar time between which runs of a kind are read; `None`: at any time.
pub fn solar_hours(kind: RunKind, limits: &Limits) -> Option<(f64, f64)> {
    match kind {
        RunKind::Water => Some(limits.solar_window_h()),
        RunKind::Dry => Some(DRY_HOURS),
        RunKind::Cooling => None,
    }
}

/// What a run of a kind asks of the sun. One that cools asks nothing: the hours are those in
/// which the sun is shown.
pub fn sun_needs(kind: RunKind, limits: &Limits) -> SunNeeds {
    SunNeeds {
        window_h: solar_hours(kind, limits).unwrap_or(DRY_HOURS),
        least_w_m2: match kind {
            RunKind::Water => limits.irradiance_min_w_m2(),
            RunKind::Dry | RunKind::Cooling => LEAST_SUN_W_M2,
        },
    }
}

/// Minutes between two times that are filled in: of water the length of an interval.
pub fn step_min(kind: RunKind, limits: &Limits) -> i32 {
    match kind {
        RunKind::Water => limits.interval().aim_min().round() as i32,
        RunKind::Dry => DRY_STEP_MIN,
        RunKind::Cooling => COOLING_STEP_MIN,
    }
}
