//! A log that has sun when there is none: its clock, its zone or its date is wrong.

use crate::campaign::kinds::RunKind;
use crate::campaign::model::{IrradianceEstimate, Plane, Site};
use crate::language::{Message, date, fixed};
use crate::message;
use crate::procedure::run::Run;
use crate::procedure::sky::LocalSky;
use crate::procedure::tested::Tested;
use crate::units::{MICROSECONDS_PER_SECOND, local_clock, seconds_between, zoned};
use jiff::civil::Date;

/// Linke turbidity of the clearest air that is met, on high mountains in winter.
/// Common practice, no published source.
const CLEAREST_TURBIDITY: f64 = 1.5;
/// A clear sky's irradiance is taken so many times: clouds beside the sun, snow and mirrors add
/// to it. Common practice, no published source.
const CLOUD_EDGE: f64 = 1.3;
/// And so much more, W/m²: an offset of the sensor, and a model that fails near the horizon.
const SLACK_W_M2: f64 = 100.0;
/// Sun this high says nothing of the clock: there too much sunlight has other reasons, degrees.
const HIGH_SUN_DEG: f64 = 30.0;
/// Below this the sun is down whatever the refraction and however far away the horizon, degrees:
/// on a mountain of 2000 m it is seen to −1.9°.
const DOWN_DEG: f64 = -2.5;
/// Irradiance that no twilight gives with the sun so far down, W/m².
const NIGHT_W_M2: f64 = 50.0;
/// One reading in so long is looked at, s.
const STEP_S: f64 = 600.0;
/// So many of them, one after the other, are no chance.
const IN_A_ROW: usize = 3;
/// Water that rises by so much is heated, K.
const HEATED_K: f64 = 20.0;

/// Sunlight or heat at a time that has none.
#[derive(Debug, Clone, PartialEq)]
pub enum SunSlip {
    /// More sun than a cloudless sky gives where it stands so low, or is down.
    TooMuch {
        log: String,
        date: Date,
        clock: String,
        /// Of the sun above the horizon, degrees.
        elevation_deg: f64,
        irradiance_w_m2: f64,
        /// The most that a cloudless sky gives then, W/m².
        most_w_m2: f64,
    },
    /// Water that heats while the sun is down, in a log without irradiance.
    HeatsAtNight {
        log: String,
        date: Date,
        from: String,
        to: String,
    },
}

/// What the sun over the site says of a run's clock.
pub fn sun_slip(tested: &Tested, run: &Run) -> Option<SunSlip> {
    if run.plan.kind == RunKind::Cooling {
        return None;
    }
    let site = &tested.campaign.site;
    let is_modelled =
        tested.campaign.instruments.irradiance_estimate == Some(IrradianceEstimate::ClearSky);
    match run.readings.irradiance_w_m2 {
        Some(_) if !is_modelled => too_much_sun(tested, run),
        _ => heats_at_night(site, run),
    }
}

/// Three readings ten minutes apart, or further, with more sun than there can be.
fn too_much_sun(tested: &Tested, run: &Run) -> Option<SunSlip> {
    let site = &tested.campaign.site;
    let instruments = &tested.campaign.instruments;
    // What lies flat and is turned to the sun by a model is on the normal plane.
    let lies_flat = instruments.irradiance_plane == Some(Plane::Horizontal)
        && instruments.irradiance_estimate.is_none();
    let sky = clearest_sky(site);
    let series = run.readings.irradiance_w_m2.as_ref()?;
    let mut in_a_row = 0;
    for (time_us, value) in sparse(&series.time_us, &series.value) {
        let (elevation_deg, clear_w_m2) = at(&sky, time_us, lies_flat);
        let most_w_m2 = if elevation_deg < DOWN_DEG {
            NIGHT_W_M2
        } else {
            CLOUD_EDGE * clear_w_m2 + SLACK_W_M2
        };
        let is_beyond = elevation_deg < HIGH_SUN_DEG && value > most_w_m2;
        in_a_row = if is_beyond { in_a_row + 1 } else { 0 };
        if in_a_row == IN_A_ROW {
            return Some(SunSlip::TooMuch {
                log: run.plan.label.clone(),
                date: zoned(time_us, &site.time_zone).date(),
                clock: local_clock(time_us, &site.time_zone),
                elevation_deg,
                irradiance_w_m2: value,
                most_w_m2: clear_w_m2,
            });
        }
    }
    None
}

/// Water that rises, and no sun from its first reading to its last.
fn heats_at_night(site: &Site, run: &Run) -> Option<SunSlip> {
    let water = &run.readings.water_c;
    let lowest_c = water.value.iter().copied().fold(f64::INFINITY, f64::min);
    let last_c = water.value.last()?;
    let sky = LocalSky::over(site);
    let is_heated = last_c - lowest_c >= HEATED_K;
    let mut times = sparse(&water.time_us, &water.value);
    let is_night = times.all(|(time_us, _)| {
        let unix_s = time_us as f64 / MICROSECONDS_PER_SECOND;
        90.0 - sky.sun(unix_s).zenith_deg < DOWN_DEG
    });
    let (first_us, last_us) = (*water.time_us.first()?, *water.time_us.last()?);
    (is_heated && is_night).then(|| SunSlip::HeatsAtNight {
        log: run.plan.label.clone(),
        date: zoned(first_us, &site.time_zone).date(),
        from: local_clock(first_us, &site.time_zone),
        to: local_clock(last_us, &site.time_zone),
    })
}

/// The sky with the clearest air there is, or with what the campaign states, if that is clearer.
fn clearest_sky(site: &Site) -> LocalSky {
    let stated = site.linke_turbidity.unwrap_or(CLEAREST_TURBIDITY);
    LocalSky::over(&Site {
        linke_turbidity: Some(stated.min(CLEAREST_TURBIDITY)),
        ..site.clone()
    })
}

/// Height of the sun, degrees, and the irradiance of a cloudless sky, W/m².
fn at(sky: &LocalSky, time_us: i64, lies_flat: bool) -> (f64, f64) {
    let clear = sky.clear(time_us as f64 / MICROSECONDS_PER_SECOND);
    let clear_w_m2 = if lies_flat {
        clear.horizontal_w_m2
    } else {
        clear.normal_w_m2.max(clear.horizontal_w_m2)
    };
    (90.0 - clear.sun.zenith_deg, clear_w_m2)
}

/// The first reading, and each that is [`STEP_S`] or more after the one before.
fn sparse<'s>(times_us: &'s [i64], values: &'s [f64]) -> impl Iterator<Item = (i64, f64)> + 's {
    let mut last_us: Option<i64> = None;
    let readings = times_us.iter().copied().zip(values.iter().copied());
    readings.filter(move |(time_us, _)| {
        let is_next = last_us.is_none_or(|last| seconds_between(last, *time_us) >= STEP_S);
        if is_next {
            last_us = Some(*time_us);
        }
        is_next
    })
}

impl SunSlip {
    /// What it says.
    pub fn message(&self) -> Message {
        match self {
            SunSlip::TooMuch {
                log,
                date: on,
                clock,
                elevation_deg,
                irradiance_w_m2,
                most_w_m2,
            } => {
                let said = if *elevation_deg < 0.0 {
                    message!("notice-sun-down")
                } else {
                    message!(
                        "notice-sun-low",
                        elevation = fixed(*elevation_deg, 0),
                        most = fixed(*most_w_m2, 0)
                    )
                };
                said.with("log", log)
                    .with("irradiance", fixed(*irradiance_w_m2, 0))
                    .with("time", clock)
                    .with("date", date(*on))
            }
            SunSlip::HeatsAtNight {
                log,
                date: on,
                from,
                to,
            } => message!(
                "notice-heats-at-night",
                log = log,
                from = from,
                to = to,
                date = date(*on)
            ),
        }
    }
}
