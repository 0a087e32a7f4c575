//! Intervals of readings that are too far apart for the practice.

use crate::procedure::s580::S580;
use crate::procedure::s580::intervals::Interval;
use crate::procedure::s580::screen::screen_run;
use crate::procedure::tested::Tested;
use crate::units::seconds_between;

/// Readings further apart say little of what lies between them, s.
/// Common practice, no published source.
const LONGEST_STEP_S: f64 = 1800.0;
const SECONDS_PER_MINUTE: f64 = 60.0;

/// What can be taken of readings of which no two are an interval of the practice apart.
#[derive(Debug, Clone)]
pub struct FarApart {
    /// Median of the time between two of them, in whole minutes.
    pub step_min: f64,
    /// From one reading to the next, screened as those of the practice are.
    pub intervals: Vec<Interval>,
}

/// Intervals from one reading to the next, where there is none of the practice; `None` where there
/// are some, and where the median of the time between readings is over half an hour.
///
/// Energy is balanced over the whole of each, so that only the water's mean temperature is known
/// less well: by Δt²/12 of its curvature, for which readings by hand are not good enough.
pub fn far_apart(tested: &Tested, s580: &S580) -> Option<FarApart> {
    if !s580.intervals.is_empty() {
        return None;
    }
    let mut steps_s: Vec<f64> = Vec::new();
    for run in &tested.runs {
        let pairs = run.readings.water_c.time_us.windows(2);
        steps_s.extend(pairs.map(|pair| seconds_between(pair[0], pair[1])));
    }
    steps_s.sort_by(f64::total_cmp);
    let median_s = *steps_s.get(steps_s.len() / 2)?;
    let step_min = (median_s / SECONDS_PER_MINUTE).round();
    let step_s = step_min * SECONDS_PER_MINUTE;
    let (_, longest_s) = s580.limits.interval().ends_s();
    if step_s <= longest_s || step_s > LONGEST_STEP_S {
        return None;
    }
    let limits = s580.limits.with_interval_s(step_s);
    let site = &tested.campaign.site;
    let runs = tested.runs.iter().enumerate();
    let intervals = runs
        .flat_map(|(index, run)| screen_run(index, run, site, &limits, tested.boiling_point_c).1);
    Some(FarApart {
        step_min,
        intervals: intervals.collect(),
    })
}
