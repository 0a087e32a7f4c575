//! The teeth of a run: from one aiming to the next.

use crate::procedure::Run;
use crate::procedure::sky::LocalSky;
use crate::procedure::spans::{TimeSpan, mean_over};
use crate::units::{MICROSECONDS_PER_SECOND, seconds_between};

/// Most points of a tooth: readings between them are one, their mean.
const MOST_POINTS: i64 = 16;
/// Longest time between two readings of water or irradiance that belong together, µs.
/// Common practice, no published source.
const LONGEST_STEP_US: i64 = 1_260_000_000;
/// So long after the first reading the pot has taken up its own heat, µs.
/// Common practice, no published source.
const SETTLES_US: i64 = 600_000_000;
/// Notes are written within this of what they tell, s.
/// Common practice, no published source.
const NOTED_WITHIN_S: f64 = 60.0;
/// The same of the air, whose temperature changes slowly, µs.
const LONGEST_AMBIENT_STEP_US: i64 = 3_660_000_000;
/// A tooth longer than this is a cooker that was left alone, or notes that were not kept, µs.
/// Common practice, no published source.
const LONGEST_TOOTH_US: i64 = 3 * 3_600_000_000;

/// What passes from one point of a tooth to the next.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Step {
    /// ∫G dt, J/m².
    pub sun_j_m2: f64,
    /// ∫Td dt, K s, and ∫Td² dt, K² s.
    pub difference_k_s: f64,
    pub square_k2_s: f64,
    /// Angle of the sun off the axis at its begin and end, degrees.
    pub angle_deg: [f64; 2],
}

/// Points without a gap between them: one more temperature than steps.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Stretch {
    /// Time of each point, s after the aiming.
    pub since_s: Vec<f64>,
    /// Water temperature at each point, °C.
    pub water_c: Vec<f64>,
    pub steps: Vec<Step>,
}

/// What was read from one aiming to the next.
#[derive(Debug, Clone, PartialEq)]
pub struct Tooth {
    /// Index of the run.
    pub run: usize,
    /// When it begins and ends, µs since 1970, UTC.
    pub span: TimeSpan,
    /// How well the time of its aiming is known, s.
    pub known_to_s: f64,
    pub stretches: Vec<Stretch>,
}

impl Tooth {
    /// Steps from one of its points to the next.
    pub fn steps(&self) -> usize {
        let stretches = self.stretches.iter();
        stretches.map(|stretch| stretch.steps.len()).sum()
    }

    /// How far the sun moved off the axis, degrees.
    pub fn largest_deg(&self) -> f64 {
        let steps = self.stretches.iter().flat_map(|stretch| &stretch.steps);
        steps.map(|step| step.angle_deg[1]).fold(0.0, f64::max)
    }
}

/// A point: a reading of the water, or the mean of several that follow each other.
struct Point {
    time_us: i64,
    water_c: f64,
}

/// The teeth of a run (by its index) that was aimed at times (µs since 1970, UTC, in order). Water
/// from `stop_c` (°C) on does not count, nor what the tester excluded or did not call cloudless
/// where that counts.
pub fn teeth(index: usize, run: &Run, aimed_us: &[i64], sky: &LocalSky, stop_c: f64) -> Vec<Tooth> {
    let first_us = run.readings.time_us.first().copied().unwrap_or_default();
    let step_s = run.readings.median_step_s().unwrap_or_default();
    let last_us = run.readings.time_us.last().copied().unwrap_or_default();
    let ends = aimed_us.iter().skip(1).copied().chain([last_us]);
    let spans = aimed_us.iter().zip(ends).map(|(from_us, to_us)| TimeSpan {
        from_us: *from_us,
        to_us,
    });
    let spans = spans.filter(|span| span.to_us - span.from_us <= LONGEST_TOOTH_US);
    let tooth = |span: TimeSpan| Tooth {
        run: index,
        span,
        known_to_s: NOTED_WITHIN_S + step_s / 2.0,
        stretches: stretches(run, span, sky, (first_us + SETTLES_US, stop_c)),
    };
    let teeth = spans.map(tooth);
    teeth.filter(|tooth| !tooth.stretches.is_empty()).collect()
}

/// Points of a tooth without a gap between them, from a time (µs since 1970, UTC) and up to a
/// temperature of the water (°C).
fn stretches(
    run: &Run,
    span: TimeSpan,
    sky: &LocalSky,
    (from_us, stop_c): (i64, f64),
) -> Vec<Stretch> {
    let mut stretches: Vec<Stretch> = Vec::new();
    let mut points = points(run, span, stop_c);
    points.retain(|point| point.time_us >= from_us);
    let sun = |time_us: i64| sky.sun(time_us as f64 / MICROSECONDS_PER_SECOND);
    let aimed_at = sun(span.from_us);
    let angle_deg = |point: &Point| aimed_at.apart_deg(&sun(point.time_us));
    let mut open = Stretch::default();
    let mut before: Option<(Point, f64)> = None;
    for point in points {
        let to_deg = angle_deg(&point);
        let step = before
            .as_ref()
            .and_then(|(from, from_deg)| step(run, from, &point, [*from_deg, to_deg]));
        match step {
            Some(step) => open.steps.push(step),
            None => {
                stretches.push(std::mem::take(&mut open));
            }
        }
        open.since_s
            .push(seconds_between(span.from_us, point.time_us));
        open.water_c.push(point.water_c);
        before = Some((point, to_deg));
    }
    stretches.push(open);
    stretches.retain(|stretch| !stretch.steps.is_empty());
    stretches
}

/// Readings of the water in a span, those of a short while together.
fn points(run: &Run, span: TimeSpan, stop_c: f64) -> Vec<Point> {
    let (times, values) = run.readings.water_c.between(span.from_us, span.to_us);
    let while_us = (span.to_us - span.from_us) / MOST_POINTS;
    let mut points = Vec::new();
    let mut at = 0;
    while at < times.len() {
        let end = times.partition_point(|time| *time <= times[at].saturating_add(while_us));
        let count = (end - at) as f64;
        let offsets = times[at..end].iter().map(|time| time - times[at]);
        let water_c = values[at..end].iter().sum::<f64>() / count;
        if values[at..end].iter().all(|value| *value < stop_c) {
            points.push(Point {
                time_us: times[at] + (offsets.sum::<i64>() as f64 / count) as i64,
                water_c,
            });
        }
        at = end;
    }
    points
}

/// From one point to the next; `None` where something is not known or not sound in between.
fn step(run: &Run, from: &Point, to: &Point, angle_deg: [f64; 2]) -> Option<Step> {
    let span = TimeSpan {
        from_us: from.time_us,
        to_us: to.time_us,
    };
    let is_short = span.to_us - span.from_us <= LONGEST_STEP_US;
    let is_excluded = run.excluded.iter().any(|excluded| excluded.overlaps(span));
    let is_cloudless = run
        .cloudless
        .as_ref()
        .is_none_or(|spans| spans.iter().any(|one| one.holds(span)));
    if !is_short || is_excluded || !is_cloudless {
        return None;
    }
    let irradiance = run.readings.irradiance_w_m2.as_ref()?;
    let ambient = run.readings.ambient_c.as_ref()?;
    let sun_w_m2 = mean_over(irradiance, span, LONGEST_STEP_US)?;
    let ambient_c = mean_over(ambient, span, LONGEST_AMBIENT_STEP_US)?;
    let duration_s = seconds_between(span.from_us, span.to_us);
    let difference_k = (from.water_c + to.water_c) / 2.0 - ambient_c;
    Some(Step {
        sun_j_m2: sun_w_m2 * duration_s,
        difference_k_s: difference_k * duration_s,
        square_k2_s: difference_k * difference_k * duration_s,
        angle_deg,
    })
}
