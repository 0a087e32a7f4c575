//! What a cooker that is rated already should show on a clear day.

use super::day::STEP_S;
use crate::physics::water::SPECIFIC_HEAT_J_PER_KG_K;
use crate::procedure::Assessment;
use crate::procedure::heat_balance::balance::at_w;
use crate::procedure::sky::LocalSky;
use crate::units::MICROSECONDS_PER_SECOND;

/// The course of one heating.
#[derive(Debug, Clone, PartialEq)]
pub struct Expected {
    pub water_kg: f64,
    /// Mean ambient temperature of the intervals that the line rests on, °C.
    pub ambient_c: f64,
    pub moments: Vec<ExpectedMoment>,
}

/// What to expect at one time, °C and W.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ExpectedMoment {
    /// µs since 1970, UTC.
    pub time_us: i64,
    pub water_c: f64,
    /// Along the lower and the upper edge of the 95 % band of the power.
    pub lowest_c: f64,
    pub highest_c: f64,
    /// Cooking power at `water_c`.
    pub power_w: f64,
}

/// Heats a load by the campaign's heat balance under a clear sky, from `start_above_ambient_k`
/// at the first of some times; `None` where there is no heat balance, or one of a sensor
/// that lay flat, whose irradiance is not that on the plane that faces the sun.
///
/// dT/dt = (g G − u (T − Ta))/(m c), by the midpoint rule in steps of a minute,
/// up to the boiling point; no edge of the band falls below the ambient temperature.
pub fn expect(
    assessment: &Assessment,
    water_kg: f64,
    start_above_ambient_k: f64,
    times_us: &[i64],
) -> Option<Expected> {
    if assessment.tested.lies_flat() {
        return None;
    }
    let region = assessment.water_balance.as_ref()?.region();
    let ambient_c = assessment.s580.mean_ambient_c()?;
    let sky = LocalSky::over(&assessment.tested.campaign.site);
    let heat_j_per_k = water_kg * SPECIFIC_HEAT_J_PER_KG_K;
    let power_w = |water_c: f64, edge: f64, normal_w_m2: f64| {
        let weights = at_w(normal_w_m2, water_c - ambient_c);
        region.value(weights) + edge * region.half_width(weights)
    };
    let start_c = ambient_c + start_above_ambient_k;
    // The edge of a wide band loses heat to water colder than the air, which none does in the sun.
    let coldest_c = ambient_c.min(start_c);
    let boiling_c = assessment.tested.boiling_point_c.max(coldest_c);
    let mut water_c = [start_c; 3];
    let mut now_s = *times_us.first()? as f64 / MICROSECONDS_PER_SECOND;
    let mut moments = Vec::new();
    for &time_us in times_us {
        let until_s = time_us as f64 / MICROSECONDS_PER_SECOND;
        while now_s < until_s {
            let step_s = STEP_S.min(until_s - now_s);
            let normal_w_m2 = sky.clear(now_s + step_s / 2.0).normal_w_m2;
            for (water_c, edge) in water_c.iter_mut().zip([0.0, -1.0, 1.0]) {
                let rise_k =
                    |from_c: f64| power_w(from_c, edge, normal_w_m2) * step_s / heat_j_per_k;
                let rise_k = rise_k(*water_c + rise_k(*water_c) / 2.0);
                *water_c = (*water_c + rise_k).clamp(coldest_c, boiling_c);
            }
            now_s += step_s;
        }
        moments.push(ExpectedMoment {
            time_us,
            water_c: water_c[0],
            lowest_c: water_c[1],
            highest_c: water_c[2],
            power_w: power_w(water_c[0], 0.0, sky.clear(until_s).normal_w_m2),
        });
    }
    Some(Expected {
        water_kg,
        ambient_c,
        moments,
    })
}
