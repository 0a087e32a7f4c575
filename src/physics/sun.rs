//! Apparent solar time from the sun's true position.

use solar_positioning::{Location, SolarPositions, delta_t, time::JulianDate};

/// Julian date of 1970-01-01 00:00 UTC.
const JULIAN_DATE_1970: f64 = 2_440_587.5;
/// Seconds in a day.
const SECONDS_PER_DAY: f64 = 86_400.0;
/// Hours the sun takes for one degree of hour angle.
const HOURS_PER_DEGREE: f64 = 1.0 / 15.0;

/// A sun position without refraction, degrees.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SunPosition {
    /// From the zenith.
    pub zenith_deg: f64,
    /// Clockwise from north.
    pub azimuth_deg: f64,
}

/// Sun position at a time (seconds since 1970, UTC) and place (degrees, east and
/// north positive; metres). `None` outside the years −500 to 6000.
///
/// # Source
/// Reda and Andreas, Solar Position Algorithm, NREL/TP-560-34302 (2008), by the
/// solar-positioning crate; ΔT after Espenak and Meeus, by the same crate.
pub fn sun_position(
    unix_s: f64,
    latitude_deg: f64,
    longitude_deg: f64,
    elevation_m: f64,
) -> Option<SunPosition> {
    let year = 1970.0 + unix_s / (365.2425 * SECONDS_PER_DAY);
    let delta_t_s = delta_t::estimate(year).ok()?;
    let julian_date = JULIAN_DATE_1970 + unix_s / SECONDS_PER_DAY;
    let time = JulianDate::new(julian_date, delta_t_s).ok()?;
    let place = Location {
        latitude: latitude_deg,
        longitude: longitude_deg,
    };
    let sun = SolarPositions::new()
        .at_from_julian(time, place, elevation_m, None)
        .ok()?;
    Some(SunPosition {
        zenith_deg: sun.zenith_angle(),
        azimuth_deg: sun.azimuth(),
    })
}

/// Equation of time, minutes: apparent minus mean solar time, at a time in
/// seconds since 1970, UTC.
///
/// Taken from the hour angle of the sun as it stands at that instant over the
/// equator, at the longitude where mean solar time is noon: there the sun is so
/// near the meridian that the observer's place on the globe does not matter.
///
/// # Source
/// The definition of the equation of time; position as in [`sun_position`].
/// DIFFERENCE: the printed formula of NREL/TP-560-34302 (A.1) takes the mean
/// longitude at uniform time and so lies 0.0036 min (0.2 s) higher.
pub fn equation_of_time_min(unix_s: f64) -> Option<f64> {
    let noon_longitude_deg = (12.0 - utc_hours(unix_s)) / HOURS_PER_DEGREE;
    let sun = sun_position(unix_s, 0.0, noon_longitude_deg, 0.0)?;
    let (sin_zenith, cos_zenith) = sun.zenith_deg.to_radians().sin_cos();
    let west = -sun.azimuth_deg.to_radians().sin() * sin_zenith;
    let hour_angle_deg = west.atan2(cos_zenith).to_degrees();
    Some(hour_angle_deg * HOURS_PER_DEGREE * 60.0)
}

/// Apparent solar time, hours from 0 to 24, at a time in seconds since 1970, UTC,
/// and a longitude in degrees, east positive: UTC + longitude/15 + equation of time.
///
/// # Source
/// Duffie and Beckman, Solar Engineering of Thermal Processes, equation 1.5.2.
pub fn solar_time_h(unix_s: f64, longitude_deg: f64) -> Option<f64> {
    let equation_h = equation_of_time_min(unix_s)? / 60.0;
    let hours = utc_hours(unix_s) + longitude_deg * HOURS_PER_DEGREE + equation_h;
    Some(hours.rem_euclid(24.0))
}

fn utc_hours(unix_s: f64) -> f64 {
    (unix_s / 3600.0).rem_euclid(24.0)
}
