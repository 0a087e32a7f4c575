//! How fast a hot load cools.

use jiff::civil::Date;

use crate::procedure::run::Run;
use crate::procedure::spans::{TimeSpan, mean_over};
use crate::procedure::stretch::LONGEST_STEP_S;
use crate::procedure::uncertainty::shift::Shift;
use crate::units::{MICROSECONDS_PER_SECOND, seconds_between};

/// A cooling run begins at least this far above ambient, K. This project's reading.
pub const BEGINS_ABOVE_K: f64 = 20.0;
/// It counts down to this far above ambient, K: below it a thermometer's offset has a growing
/// share. This project's reading.
pub const ENDS_ABOVE_K: f64 = 10.0;
/// The difference falls at least by this share of its start. This project's reading.
const LEAST_FALL: f64 = 0.2;
/// Water that gets warmer by more than this than it was before was heated, K: twice the step of a
/// kitchen thermometer. This project's reading.
const WARMS_BY_K: f64 = 2.0;
/// Fewest readings of the water.
const FEWEST: usize = 4;

/// Why a run gives no loss.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum NoCooling {
    /// Its first reading is this far above ambient, K.
    BeginsTooCool(f64),
    /// Its water gets this much warmer than it was before, K.
    Warms(f64),
    TooShort,
}

/// What a cooling run gives: sums over its readings of the water, from which the slope follows
/// whatever the readings are off by.
#[derive(Debug, Clone, PartialEq)]
pub struct Cooling {
    /// Its place among the cooling runs.
    pub run: usize,
    pub date: Date,
    pub span: TimeSpan,
    pub from_c: f64,
    pub to_c: f64,
    pub ambient_c: f64,
    pub water_kg: f64,
    pub readings: usize,
    /// Covariances of water, its integral, that of ambient, and time.
    moments: [[f64; TERMS]; TERMS],
}

/// Water (°C), ∫Tw dt and ∫Ta dt (K s), t (s).
const TERMS: usize = 4;

impl Cooling {
    /// The rate at which the water loses its temperature difference, 1/s, by the slope of Tw
    /// against ∫(Tw − Ta)dt; `None` where it loses none.
    pub fn rate_per_s(&self, shift: &Shift) -> Option<f64> {
        // What a reading of zero is off by, and what a kelvin more adds.
        let of_water = (shift.water_c(0.0), 1.0 + shift.water_scale);
        let of_ambient = (shift.ambient_c(0.0), 1.0 + shift.ambient_scale);
        let y = [of_water.1, 0.0, 0.0, 0.0];
        let x = [
            0.0,
            shift.time * of_water.1,
            -shift.time * of_ambient.1,
            shift.time * (of_water.0 - of_ambient.0),
        ];
        let rate = -self.covariance(&x, &y) / self.covariance(&x, &x);
        (rate > 0.0).then_some(rate)
    }

    fn covariance(&self, one: &[f64; TERMS], two: &[f64; TERMS]) -> f64 {
        let mut sum = 0.0;
        for (row, first) in self.moments.iter().zip(one) {
            for (moment, second) in row.iter().zip(two) {
                sum += moment * first * second;
            }
        }
        sum
    }
}

/// The cooling of a run, from its first reading down to ten kelvin above ambient.
///
/// # Errors
/// Why there is none.
pub fn cool(run: &Run, index: usize) -> Result<Cooling, NoCooling> {
    let water = &run.readings.water_c;
    let ambient = run.readings.ambient_c.as_ref().ok_or(NoCooling::TooShort)?;
    let longest_us = (LONGEST_STEP_S * MICROSECONDS_PER_SECOND) as i64;
    let is_excluded = |span: TimeSpan| run.excluded.iter().any(|one| one.overlaps(span));
    let at = |time: i64| TimeSpan {
        from_us: time,
        to_us: time + 1,
    };
    // From the first reading that counts.
    let first = water
        .time_us
        .iter()
        .position(|time| !is_excluded(at(*time)));
    let first = first.ok_or(NoCooling::TooShort)?;
    let first_us = water.time_us[first];
    let over =
        |from_us: i64, to_us: i64| mean_over(ambient, TimeSpan { from_us, to_us }, longest_us);
    let first_c = water.value[first];
    let above_k = first_c - over(first_us, first_us + 1).ok_or(NoCooling::TooShort)?;
    if above_k < BEGINS_ABOVE_K {
        return Err(NoCooling::BeginsTooCool(above_k));
    }
    let mut terms: Vec<[f64; TERMS]> = vec![[first_c, 0.0, 0.0, 0.0]];
    let mut last = first;
    for place in first + 1..water.time_us.len() {
        let (before_us, at_us) = (water.time_us[place - 1], water.time_us[place]);
        let step_s = seconds_between(before_us, at_us);
        let step = TimeSpan {
            from_us: before_us,
            to_us: at_us,
        };
        let is_whole = step_s <= LONGEST_STEP_S && !is_excluded(step);
        let Some(air_c) = over(before_us, at_us).filter(|_| is_whole) else {
            break;
        };
        if water.value[place] - air_c < ENDS_ABOVE_K {
            break;
        }
        let water_c = (water.value[place - 1] + water.value[place]) / 2.0;
        let [_, of_water, of_air, time] = terms[terms.len() - 1];
        terms.push([
            water.value[place],
            of_water + water_c * step_s,
            of_air + air_c * step_s,
            time + step_s,
        ]);
        last = place;
    }
    if let Some(by_k) = warms_by_k(&water.value[first..=last]) {
        return Err(NoCooling::Warms(by_k));
    }
    let fell_k = first_c - water.value[last];
    if terms.len() < FEWEST || fell_k < LEAST_FALL * above_k {
        return Err(NoCooling::TooShort);
    }
    let span = TimeSpan {
        from_us: first_us,
        to_us: water.time_us[last],
    };
    Ok(Cooling {
        run: index,
        date: run.date,
        span,
        from_c: first_c,
        to_c: water.value[last],
        ambient_c: over(span.from_us, span.to_us).ok_or(NoCooling::TooShort)?,
        water_kg: run.plan.water_kg,
        readings: terms.len(),
        moments: covariances(&terms),
    })
}

/// By how much the water gets warmer than it was before, K, where that is more than readings do by
/// themselves; `None` where it only cools.
fn warms_by_k(water_c: &[f64]) -> Option<f64> {
    let (mut coolest, mut most) = (f64::INFINITY, 0.0_f64);
    for &celsius in water_c {
        coolest = coolest.min(celsius);
        most = most.max(celsius - coolest);
    }
    (most > WARMS_BY_K).then_some(most)
}

/// Sums of products of what lies beyond the means.
fn covariances(terms: &[[f64; TERMS]]) -> [[f64; TERMS]; TERMS] {
    let count = terms.len() as f64;
    let mean: [f64; TERMS] =
        std::array::from_fn(|which| terms.iter().map(|row| row[which]).sum::<f64>() / count);
    let mut sums = [[0.0; TERMS]; TERMS];
    for row in terms {
        for (one, sums) in sums.iter_mut().enumerate() {
            for (two, sum) in sums.iter_mut().enumerate() {
                *sum += (row[one] - mean[one]) * (row[two] - mean[two]);
            }
        }
    }
    sums
}
