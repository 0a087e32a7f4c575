//! Irradiance where no sensor at the cooker faced the sun, and what contradicts it.

use super::intervals::Interval;
use super::local_sky::LocalSky;
use super::run::{Run, problem};
use super::screen::TimeSpan;
use super::uncertainty::LineUncertainty;
use crate::campaign::Campaign;
use crate::campaign::model::{IrradianceEstimate, Plane};
use crate::error::Problem;
use crate::logs::Series;
use crate::notice::Notice;
use crate::physics::sun::SunPosition;
use crate::units::{MICROSECONDS_PER_SECOND, local_clock};

/// Step at which the clear-sky model is read, µs.
const MODEL_STEP_US: i64 = 60_000_000;
/// So long the sun counts as standing still, s: it moves 0.04° meanwhile.
const STANDS_STILL_S: f64 = 10.0;
/// Share of the line's power below which the water stalls.
/// Common practice, no published source.
const STALLED_SHARE: f64 = 0.5;
/// So many standard deviations of the readings are no stall.
const READING_SIGMAS: f64 = 2.0;

/// Gives a run the irradiance that the campaign estimates, on the plane normal to the beam.
///
/// # Errors
/// A [`Problem`] where the clear-sky model is asked for and the log measures irradiance.
pub fn estimate_irradiance(campaign: &Campaign, run: &mut Run) -> Result<(), Problem> {
    let Some(way) = campaign.instruments.irradiance_estimate else {
        return Ok(());
    };
    let sky = LocalSky::over(&campaign.site);
    if way == IrradianceEstimate::ClearSky {
        if run.readings.irradiance_w_m2.is_some() {
            let what = "measures irradiance, and estimate = \"clear-sky\" would not use it";
            let hint = "delete estimate under [instruments.irradiance], or say how the sensor was used: \"from-horizontal\", \"station\", \"solar-panel\"";
            return Err(problem(campaign, &run.plan, what, hint));
        }
        let ends = (run.readings.time_us.first(), run.readings.time_us.last());
        if let (Some(&first_us), Some(&last_us)) = ends {
            let spans = run.cloudless.iter().flatten();
            let series = clear_series(&sky, spans, first_us, last_us);
            run.readings.irradiance_w_m2 = Some(series).filter(|series| !series.value.is_empty());
        }
    } else if campaign.instruments.irradiance_plane == Some(Plane::Horizontal)
        && let Some(series) = &mut run.readings.irradiance_w_m2
    {
        turn_to_the_sun(&sky, series);
    }
    Ok(())
}

/// The model through each span, as far as the run goes.
fn clear_series<'s>(
    sky: &LocalSky,
    spans: impl Iterator<Item = &'s TimeSpan>,
    first_us: i64,
    last_us: i64,
) -> Series {
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

/// Spans stated cloudless in which the water stalls as under a cloud: its power is below
/// half of the line's, and the steps of the thermometer do not explain it.
pub fn contradictions(
    campaign: &Campaign,
    runs: &[Run],
    intervals: &[Interval],
    uncertainty: &LineUncertainty,
) -> Vec<Notice> {
    if campaign.instruments.irradiance_estimate != Some(IrradianceEstimate::ClearSky) {
        return Vec::new();
    }
    let zone = &campaign.site.time_zone;
    let slack_w = READING_SIGMAS * uncertainty.reading.of_interval_w();
    let stalls = |interval: &&Interval| {
        interval.is_on_line()
            && interval.point().is_some_and(|(difference_k, power_w)| {
                power_w < STALLED_SHARE * uncertainty.line.predict(difference_k) - slack_w
            })
    };
    let mut notices = Vec::new();
    for (index, run) in runs.iter().enumerate() {
        let spans: Vec<(String, String)> = intervals
            .iter()
            .filter(|interval| interval.run == index)
            .filter(stalls)
            .map(|interval| {
                (
                    local_clock(interval.start_us, zone),
                    local_clock(interval.end_us, zone),
                )
            })
            .collect();
        if !spans.is_empty() {
            notices.push(Notice::StallUnderClearSky {
                log: run.plan.label.clone(),
                spans,
            });
        }
    }
    notices
}
