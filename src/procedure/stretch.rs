//! A stretch of a run between two temperatures of its water, with what happened in it.

use jiff::civil::Date;

use super::run::Run;
use super::spans::{TimeSpan, mean_over};
use crate::units::{MICROSECONDS_PER_SECOND, seconds_between};

/// Readings further apart than this leave a hole that no stretch may have, s: the longest of
/// readings by hand, every twenty minutes. Common practice, no published source.
pub const LONGEST_STEP_S: f64 = 1260.0;

/// From one temperature of the water to another.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Stretch {
    /// Local date.
    pub date: Date,
    pub span: TimeSpan,
    pub duration_s: f64,
    pub from_c: f64,
    pub to_c: f64,
    /// Of the water, °C, weighted by time.
    pub water_c: f64,
    /// The same of the air.
    pub ambient_c: f64,
    /// The same of irradiance, W/m².
    pub irradiance_w_m2: f64,
    /// Water, kg.
    pub water_kg: f64,
}

impl Stretch {
    /// Mean temperature difference of water and air, K.
    pub fn difference_k(&self) -> f64 {
        self.water_c - self.ambient_c
    }
}

/// Why a run has no stretch.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum NoStretch {
    /// It does not pass both temperatures, one after the other.
    NotPassed,
    /// Readings of the water or of the air are too far apart.
    Hole,
    /// Irradiance is not measured through all of it.
    NoIrradiance,
    /// It overlaps a span that the tester takes out.
    Excluded,
}

/// The stretch of a run in which its water rises from one temperature to another, °C: the first
/// rise that gets there without falling below `from_c` again, or one that begins with the first
/// reading, up to `begins_most_c`. The moments at which it passes both lie on straight lines
/// between two readings.
///
/// # Errors
/// Why there is none.
pub fn rising(
    run: &Run,
    (from_c, begins_most_c): (f64, f64),
    to_c: f64,
) -> Result<Stretch, NoStretch> {
    let water = &run.readings.water_c;
    let at = |before: usize, level_c: f64| {
        let (low, high) = (water.value[before], water.value[before + 1]);
        let (from, to) = (water.time_us[before], water.time_us[before + 1]);
        let share = (level_c - low) / (high - low);
        from + (share * (to - from) as f64).round() as i64
    };
    let first = water.value.first().zip(water.time_us.first());
    let mut begins = first
        .filter(|(celsius, _)| (from_c..=begins_most_c).contains(*celsius))
        .map(|(celsius, time_us)| (*time_us, *celsius));
    for (before, pair) in water.value.windows(2).enumerate() {
        if pair[1] < from_c {
            begins = None;
        } else if pair[0] < from_c {
            begins = Some((at(before, from_c), from_c));
        }
        if let Some((from_us, begins_c)) = begins.filter(|_| pair[0] < to_c && pair[1] >= to_c) {
            let to_us = at(before, to_c);
            return over(run, TimeSpan { from_us, to_us }, (begins_c, to_c));
        }
    }
    Err(NoStretch::NotPassed)
}

/// The stretch of a run from one of its readings of the water to a later one, by their places.
///
/// # Errors
/// Why there is none.
pub fn between(run: &Run, first: usize, last: usize) -> Result<Stretch, NoStretch> {
    let water = &run.readings.water_c;
    let span = TimeSpan {
        from_us: water.time_us[first],
        to_us: water.time_us[last],
    };
    over(run, span, (water.value[first], water.value[last]))
}

fn over(run: &Run, span: TimeSpan, (from_c, to_c): (f64, f64)) -> Result<Stretch, NoStretch> {
    if span.to_us <= span.from_us {
        return Err(NoStretch::NotPassed);
    }
    if run.excluded.iter().any(|excluded| excluded.overlaps(span)) {
        return Err(NoStretch::Excluded);
    }
    let longest_us = (LONGEST_STEP_S * MICROSECONDS_PER_SECOND) as i64;
    let mean = |series| mean_over(series, span, longest_us);
    let readings = &run.readings;
    let ambient_c = readings.ambient_c.as_ref().and_then(mean);
    let irradiance = readings.irradiance_w_m2.as_ref().and_then(mean);
    Ok(Stretch {
        date: run.date,
        span,
        duration_s: seconds_between(span.from_us, span.to_us),
        from_c,
        to_c,
        water_c: mean(&readings.water_c).ok_or(NoStretch::Hole)?,
        ambient_c: ambient_c.ok_or(NoStretch::Hole)?,
        irradiance_w_m2: irradiance
            .filter(|w_m2| *w_m2 > 0.0)
            .ok_or(NoStretch::NoIrradiance)?,
        water_kg: run.plan.water_kg,
    })
}
