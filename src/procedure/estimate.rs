//! Irradiance where no sensor at the cooker faced the sun.

use super::problem::run_problem;
use super::sky::LocalSky;
use super::spans::TimeSpan;
use crate::campaign::Campaign;
use crate::campaign::model::{IrradianceEstimate, Plane, RunPlan};
use crate::error::Problem;
use crate::logs::{Readings, Series};
use crate::physics::sun::SunPosition;
use crate::units::MICROSECONDS_PER_SECOND;

/// Step at which the clear-sky model is read, µs.
const MODEL_STEP_US: i64 = 60_000_000;
/// So long the sun counts as standing still, s: it moves 0.04° meanwhile.
const STANDS_STILL_S: f64 = 10.0;

/// The readings of a run with the irradiance that the campaign estimates, on the plane normal
/// to the beam; as they are where it estimates none.
///
/// # Errors
/// A [`Problem`] where the clear-sky model is asked for and the log measures irradiance.
pub fn estimate_irradiance(
    campaign: &Campaign,
    plan: &RunPlan,
    mut readings: Readings,
    cloudless: Option<&[TimeSpan]>,
) -> Result<Readings, Problem> {
    let Some(way) = campaign.instruments.irradiance_estimate else {
        return Ok(readings);
    };
    let sky = LocalSky::over(&campaign.site);
    if way == IrradianceEstimate::ClearSky {
        if readings.irradiance_w_m2.is_some() {
            let what = "measures irradiance, and estimate = \"clear-sky\" would not use it";
            let hint = "delete estimate under [instruments.irradiance], or say how the sensor was used: \"from-horizontal\", \"station\", \"solar-panel\"";
            return Err(run_problem(&campaign.file, plan, what, hint));
        }
        let ends = (readings.time_us.first(), readings.time_us.last());
        if let (Some(&first_us), Some(&last_us)) = ends {
            let spans = cloudless.unwrap_or_default();
            let series = clear_series(&sky, spans, first_us, last_us);
            readings.irradiance_w_m2 = Some(series).filter(|series| !series.value.is_empty());
        }
    } else if is_turned_to_the_sun(campaign)
        && let Some(series) = &mut readings.irradiance_w_m2
    {
        turn_to_the_sun(&sky, series);
    }
    Ok(readings)
}

/// Whether a campaign takes the readings of a sensor that lies flat as they would be on the plane
/// normal to the beam.
pub fn is_turned_to_the_sun(campaign: &Campaign) -> bool {
    let instruments = &campaign.instruments;
    let of_sensor = |way| way != IrradianceEstimate::ClearSky;
    instruments.irradiance_estimate.is_some_and(of_sensor)
        && instruments.irradiance_plane == Some(Plane::Horizontal)
}

/// The model through each span, as far as the run goes.
fn clear_series(sky: &LocalSky, spans: &[TimeSpan], first_us: i64, last_us: i64) -> Series {
    let mut times: Vec<i64> = Vec::new();
    for span in spans {
        let (from_us, to_us) = (span.from_us.max(first_us), span.to_us.min(last_us));
        if from_us <= to_us {
            times.extend((from_us..to_us).step_by(MODEL_STEP_US as usize));
            times.push(to_us);
        }
    }
    times.sort_unstable();
    times.dedup();
    let at = |time_us: &i64| {
        sky.clear(*time_us as f64 / MICROSECONDS_PER_SECOND)
            .normal_w_m2
    };
    let values = times.iter().map(at).collect();
    Series::new(times, values)
}

/// Readings of a sensor that lies flat, on the plane normal to the beam.
fn turn_to_the_sun(sky: &LocalSky, series: &mut Series) {
    let mut last: Option<(f64, SunPosition)> = None;
    for (time_us, value) in series.time_us.iter().zip(&mut series.value) {
        let unix_s = *time_us as f64 / MICROSECONDS_PER_SECOND;
        let sun = match last {
            Some((since_s, sun)) if unix_s - since_s < STANDS_STILL_S => sun,
            _ => sky.sun(unix_s),
        };
        if last.is_none_or(|(_, known)| known != sun) {
            last = Some((unix_s, sun));
        }
        *value = sky.from_horizontal_w_m2(unix_s, &sun, *value);
    }
}
