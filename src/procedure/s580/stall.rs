//! A sky that is stated cloudless, and water that says otherwise.

use super::intervals::{Interval, of_run};
use super::notice::S580Notice;
use super::uncertainty::LineUncertainty;
use crate::campaign::model::IrradianceEstimate;
use crate::procedure::tested::Tested;
use crate::units::local_clock;

/// Share of the line's power below which the water stalls.
/// Common practice, no published source.
const STALLED_SHARE: f64 = 0.5;
/// So many standard deviations of the readings are no stall.
const READING_SIGMAS: f64 = 2.0;

/// Spans stated cloudless in which the water stalls as under a cloud: its power is below
/// half of the line's, and the steps of the thermometer do not explain it.
pub fn stalls(
    tested: &Tested,
    intervals: &[Interval],
    uncertainty: &LineUncertainty,
) -> Vec<S580Notice> {
    let campaign = &tested.campaign;
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
    let clock = |interval: &Interval| {
        let span = interval.measured.span;
        (
            local_clock(span.from_us, zone),
            local_clock(span.to_us, zone),
        )
    };
    let runs = tested.runs.iter().enumerate();
    let of_run = runs.filter_map(|(index, run)| {
        let of_run = of_run(intervals, index).iter();
        let spans: Vec<(String, String)> = of_run.filter(stalls).map(clock).collect();
        (!spans.is_empty()).then(|| S580Notice::StallUnderClearSky {
            log: run.plan.label.clone(),
            spans,
        })
    });
    of_run.collect()
}
