//! The sun's day over a site.

use jiff::civil::{Date, Time};

use crate::campaign::model::Site;
use crate::local_time::unix_seconds;
use crate::physics::sun::{Daylight, daylight, next_noon_s, solar_time_h};
use crate::procedure::limit::at_least;
use crate::procedure::sky::{ClearMoment, LocalSky};
use crate::procedure::spans::TimeSpan;
use crate::units::{MICROSECONDS_PER_SECOND, SECONDS_PER_HOUR};

/// Half a day, s.
const HALF_DAY_S: f64 = 43_200.0;
/// Step in which the day is looked at, s.
pub const STEP_S: f64 = 60.0;
/// Step of the table of the sun, s.
const ROW_S: i64 = 1800;

/// Sun and clear sky of one date.
#[derive(Debug, Clone, PartialEq)]
pub struct SunDay {
    /// When the sun is highest over the meridian, seconds since 1970, UTC.
    pub noon_s: f64,
    pub light: Daylight,
    /// The hours about noon in which one tests, µs since 1970, UTC: the practice's solar window,
    /// or of a dry vessel those in which the sun is high.
    pub window: TimeSpan,
    /// Every half hour by the clock while the sun is up.
    pub rows: Vec<SunRow>,
    /// When a clear sky gives enough irradiance on the plane normal to the beam, first to last;
    /// `None` if it never does.
    pub enough: Option<TimeSpan>,
    /// The same within the window.
    pub usable: Option<TimeSpan>,
    /// Highest irradiance of the day on that plane, W/m².
    pub most_w_m2: f64,
    pub turbidity: f64,
}

/// The sun at one time.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SunRow {
    /// µs since 1970, UTC.
    pub time_us: i64,
    pub clear: ClearMoment,
}

/// What a test asks of the sun.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SunNeeds {
    /// Hours of solar time, from and to.
    pub window_h: (f64, f64),
    /// Irradiance on the plane normal to the beam, W/m².
    pub least_w_m2: f64,
}

/// The sun's day on a local date; `None` where the date does not exist in the site's zone.
pub fn sun_day(site: &Site, needs: SunNeeds, date: Date) -> Option<SunDay> {
    let sky = LocalSky::over(site);
    let midnight_s = unix_seconds(date.to_datetime(Time::midnight()), &site.time_zone)?;
    let noon_s = next_noon_s(midnight_s, site.longitude_deg)?;
    let (from_s, to_s) = (noon_s - HALF_DAY_S, noon_s + HALF_DAY_S);
    let light = daylight(from_s, to_s, site.latitude_deg, site.longitude_deg)?;
    let (rise_s, set_s) = match light {
        Daylight::AlwaysUp => (from_s, to_s),
        Daylight::AlwaysDown => (noon_s, noon_s),
        Daylight::RisesAndSets { rise_s, set_s } => {
            (rise_s.unwrap_or(from_s), set_s.unwrap_or(to_s))
        }
    };
    let (start_h, end_h) = needs.window_h;
    let window = TimeSpan {
        from_us: micros(at_solar_time(noon_s, site.longitude_deg, start_h)),
        to_us: micros(at_solar_time(noon_s, site.longitude_deg, end_h)),
    };
    let minutes: Vec<(i64, f64)> = minutes(rise_s, set_s)
        .map(|unix_s| (micros(unix_s), sky.clear(unix_s).normal_w_m2))
        .collect();
    let mut strong = minutes
        .iter()
        .filter(|(_, normal)| at_least(*normal, needs.least_w_m2))
        .map(|(time_us, _)| *time_us);
    let enough = strong
        .next()
        .zip(strong.next_back())
        .map(|(from_us, to_us)| TimeSpan { from_us, to_us });
    let usable = enough
        .map(|enough| TimeSpan {
            from_us: enough.from_us.max(window.from_us),
            to_us: enough.to_us.min(window.to_us),
        })
        .filter(|span| span.from_us < span.to_us);
    Some(SunDay {
        noon_s,
        light,
        rows: rows(&sky, rise_s, set_s),
        enough,
        usable,
        most_w_m2: minutes
            .iter()
            .map(|(_, normal)| *normal)
            .fold(0.0, f64::max),
        window,
        turbidity: sky.turbidity(),
    })
}

/// When it is a solar time, h, on the day of a solar noon.
fn at_solar_time(noon_s: f64, longitude_deg: f64, hour: f64) -> f64 {
    let near_s = noon_s + (hour - 12.0) * SECONDS_PER_HOUR;
    let off_h = solar_time_h(near_s, longitude_deg)
        .map_or(0.0, |found| (hour - found + 12.0).rem_euclid(24.0) - 12.0);
    near_s + off_h * SECONDS_PER_HOUR
}

fn rows(sky: &LocalSky, rise_s: f64, set_s: f64) -> Vec<SunRow> {
    let first_s = (rise_s / ROW_S as f64).ceil() as i64 * ROW_S;
    let times = (first_s..).step_by(ROW_S as usize);
    times
        .take_while(|unix_s| (*unix_s as f64) < set_s)
        .map(|unix_s| SunRow {
            time_us: micros(unix_s as f64),
            clear: sky.clear(unix_s as f64),
        })
        .collect()
}

fn minutes(from_s: f64, to_s: f64) -> impl Iterator<Item = f64> {
    let steps = ((to_s - from_s) / STEP_S).floor().max(0.0) as usize;
    (0..=steps).map(move |step| from_s + step as f64 * STEP_S)
}

/// Seconds as whole microseconds.
pub fn micros(unix_s: f64) -> i64 {
    (unix_s * MICROSECONDS_PER_SECOND).round() as i64
}
