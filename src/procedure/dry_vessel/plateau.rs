//! The plateau of a dry run: where the vessel gets no hotter.

use crate::logs::Series;
use crate::procedure::run::Run;
use crate::procedure::spans::{TimeSpan, mean_over, summarise};
use crate::procedure::stretch::LONGEST_STEP_S;
use crate::units::{MICROSECONDS_PER_SECOND, seconds_between};

/// Shortest plateau, s.
///
/// # Source
/// This project's reading: neither the paper nor the standard that rates box cookers was at hand.
pub const SHORTEST_S: f64 = 600.0;
/// A plateau rises or falls by less than this, K/min. Source as of [`SHORTEST_S`].
pub const TREND_K_PER_MIN: f64 = 0.1;
/// Irradiance stays this near to its mean, W/m². Source as of [`SHORTEST_S`].
pub const WITHIN_W_M2: f64 = 20.0;
/// And its mean is above this, W/m². Source as of [`SHORTEST_S`].
pub const LEAST_W_M2: f64 = 600.0;

const SECONDS_PER_MINUTE: f64 = 60.0;
/// Stretches begin at most this far apart, µs: a plateau is far longer.
const LONGEST_STRIDE_US: i64 = 30_000_000;
/// So many stretches begin in a run at least, where it has as many readings.
const STRETCHES: i64 = 2000;
/// The air is read at least this often about a plateau, µs: it drifts by a kelvin in an hour.
/// Common practice, no published source.
const AIR_US: i64 = 7_200_000_000;

fn longest_us() -> i64 {
    (LONGEST_STEP_S * MICROSECONDS_PER_SECOND) as i64
}

/// A stretch in which the vessel is as hot as it gets.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Plateau {
    pub span: TimeSpan,
    /// Means, weighted by time.
    pub vessel_c: f64,
    pub ambient_c: f64,
    pub irradiance_w_m2: f64,
    /// Slope of a straight line through the vessel's readings, K/min.
    pub trend_k_per_min: f64,
}

impl Plateau {
    /// Vessel above ambient, K.
    pub fn difference_k(&self) -> f64 {
        self.vessel_c - self.ambient_c
    }
}

/// Why there is no plateau.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum NoPlateau {
    /// The log has no temperature of the vessel.
    NoVessel,
    /// Nor irradiance, through a whole stretch.
    NoIrradiance,
    /// Nor the temperature of the air, about a stretch.
    NoAmbient,
    /// The readings that count do not last as long as a plateau, without a hole, min.
    TooShort { needs_min: f64 },
    /// The sun was nowhere steady for so long, min.
    SunUnsteady { needs_min: f64 },
    /// The sun was nowhere strong enough; its highest mean, W/m².
    SunWeak { highest_w_m2: f64 },
    /// In the hottest stretch under a steady sun the vessel still rose or fell, K/min.
    StillMoves { k_per_min: f64, vessel_c: f64 },
}

/// How long a stretch has to last, s: ten minutes, and as long as a thermometer of this step (K)
/// takes to show the trend that a plateau may have.
pub fn shortest_s(step_k: Option<f64>) -> f64 {
    let of_step_s = step_k.unwrap_or(0.0) / TREND_K_PER_MIN * SECONDS_PER_MINUTE;
    SHORTEST_S.max(of_step_s)
}

/// The hottest stretch of a dry run in which the vessel's readings have no trend and the sun is
/// steady: ten minutes, or as long as the step of the thermometer (K) needs to show a trend.
///
/// The first such stretch would be 1 to 4 % too cool, since a vessel that nears its plateau
/// rises slowly long before it is there.
///
/// # Errors
/// Why there is none.
pub fn find_plateau(run: &Run, step_k: Option<f64>) -> Result<Plateau, NoPlateau> {
    let readings = &run.readings;
    let vessel = readings.vessel_c.as_ref().ok_or(NoPlateau::NoVessel)?;
    let irradiance = readings.irradiance_w_m2.as_ref();
    let irradiance = irradiance.ok_or(NoPlateau::NoIrradiance)?;
    let shortest_s = shortest_s(step_k);
    let shortest_us = (shortest_s * MICROSECONDS_PER_SECOND).round() as i64;
    let needs_min = shortest_s / SECONDS_PER_MINUTE;
    let mut seen = Seen::default();
    let mut found: Option<Plateau> = None;
    let mut last = 0;
    let ends = vessel.time_us.first().zip(vessel.time_us.last());
    let whole_us = ends.map_or(0, |(first, last)| last - first);
    let stride_us = LONGEST_STRIDE_US.min(whole_us / STRETCHES);
    let mut begun_us = i64::MIN;
    for (first, &from_us) in vessel.time_us.iter().enumerate() {
        if from_us.saturating_sub(begun_us) < stride_us {
            continue;
        }
        begun_us = from_us;
        while last < vessel.time_us.len() && vessel.time_us[last] - from_us < shortest_us {
            last += 1;
        }
        if last == vessel.time_us.len() {
            break;
        }
        let span = TimeSpan {
            from_us,
            to_us: vessel.time_us[last],
        };
        let has_hole = vessel.time_us[first..=last]
            .windows(2)
            .any(|pair| pair[1] - pair[0] > longest_us());
        if has_hole || run.excluded.iter().any(|excluded| excluded.overlaps(span)) {
            continue;
        }
        seen.stretches += 1;
        let Some(plateau) = look_at(run, vessel, irradiance, first..last + 1, &mut seen) else {
            continue;
        };
        if found.is_none_or(|found| plateau.vessel_c > found.vessel_c) {
            found = Some(plateau);
        }
    }
    found.ok_or_else(|| seen.why(needs_min))
}

/// What was seen of the stretches that are no plateau.
#[derive(Default)]
struct Seen {
    stretches: usize,
    /// Those with irradiance through all of it.
    sunlit: usize,
    steady: usize,
    /// Those without a temperature of the air.
    airless: usize,
    highest_w_m2: f64,
    /// Of those under a strong, steady sun the hottest: its trend and its temperature.
    hottest: Option<(f64, f64)>,
}

impl Seen {
    fn why(&self, needs_min: f64) -> NoPlateau {
        match self.hottest {
            Some((k_per_min, vessel_c)) => NoPlateau::StillMoves {
                k_per_min,
                vessel_c,
            },
            None if self.stretches == 0 => NoPlateau::TooShort { needs_min },
            None if self.sunlit == 0 => NoPlateau::NoIrradiance,
            None if self.airless > 0 => NoPlateau::NoAmbient,
            None if self.steady > 0 => NoPlateau::SunWeak {
                highest_w_m2: self.highest_w_m2,
            },
            None => NoPlateau::SunUnsteady { needs_min },
        }
    }
}

/// The stretch as a plateau, if it is one.
fn look_at(
    run: &Run,
    vessel: &Series,
    irradiance: &Series,
    places: std::ops::Range<usize>,
    seen: &mut Seen,
) -> Option<Plateau> {
    let times = &vessel.time_us[places.clone()];
    let span = TimeSpan {
        from_us: *times.first()?,
        to_us: *times.last()?,
    };
    let sun_w_m2 = mean_over(irradiance, span, longest_us())?;
    seen.sunlit += 1;
    let is_near = |w_m2: &f64| (w_m2 - sun_w_m2).abs() <= WITHIN_W_M2;
    if !irradiance
        .between(span.from_us, span.to_us)
        .1
        .iter()
        .all(is_near)
    {
        return None;
    }
    seen.steady += 1;
    seen.highest_w_m2 = seen.highest_w_m2.max(sun_w_m2);
    if sun_w_m2 <= LEAST_W_M2 {
        return None;
    }
    let ambient = run.readings.ambient_c.as_ref();
    let Some(ambient_c) = ambient.and_then(|air| mean_over(air, span, AIR_US)) else {
        seen.airless += 1;
        return None;
    };
    let vessel_c = summarise(vessel, span)?.mean;
    let trend_k_per_min = slope_k_per_min(times, &vessel.value[places])?;
    if trend_k_per_min.abs() >= TREND_K_PER_MIN {
        if seen
            .hottest
            .is_none_or(|(_, hottest_c)| vessel_c > hottest_c)
        {
            seen.hottest = Some((trend_k_per_min, vessel_c));
        }
        return None;
    }
    Some(Plateau {
        span,
        vessel_c,
        ambient_c,
        irradiance_w_m2: sun_w_m2,
        trend_k_per_min,
    })
}

/// Slope of a straight line through some readings, K/min; `None` with fewer than two times.
pub fn slope_k_per_min(time_us: &[i64], celsius: &[f64]) -> Option<f64> {
    let origin = *time_us.first()?;
    let minutes = |time: &i64| seconds_between(origin, *time) / SECONDS_PER_MINUTE;
    let count = time_us.len() as f64;
    let mean_min = time_us.iter().map(minutes).sum::<f64>() / count;
    let mean_c = celsius.iter().sum::<f64>() / count;
    let (mut both, mut across) = (0.0, 0.0);
    for (time, value) in time_us.iter().zip(celsius) {
        let from_mean = minutes(time) - mean_min;
        both += from_mean * (value - mean_c);
        across += from_mean * from_mean;
    }
    (across > 0.0).then(|| both / across)
}
