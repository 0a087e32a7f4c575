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
/// north positive; metres). `None` outside the years −2000 to 6000.
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

/// Apparent solar time, hours from 0 to 24: 12 h plus the sun's hour angle over
/// 15 degrees an hour. Arguments as for [`sun_position`].
///
/// The hour angle H follows from zenith θ and azimuth Γ (from north) at latitude φ:
/// H = atan2(−sin Γ sin θ, cos φ cos θ − sin φ sin θ cos Γ).
/// This equals clock time corrected by longitude and by the equation of time.
///
/// # Source
/// Spherical astronomy; the terms as in Duffie and Beckman, Solar Engineering of
/// Thermal Processes, sections 1.5 and 1.6.
pub fn solar_time_h(
    unix_s: f64,
    latitude_deg: f64,
    longitude_deg: f64,
    elevation_m: f64,
) -> Option<f64> {
    let sun = sun_position(unix_s, latitude_deg, longitude_deg, elevation_m)?;
    let (sin_zenith, cos_zenith) = sun.zenith_deg.to_radians().sin_cos();
    let (sin_azimuth, cos_azimuth) = sun.azimuth_deg.to_radians().sin_cos();
    let (sin_latitude, cos_latitude) = latitude_deg.to_radians().sin_cos();
    let west = -sin_azimuth * sin_zenith;
    let meridian = cos_latitude * cos_zenith - sin_latitude * sin_zenith * cos_azimuth;
    let hour_angle_deg = west.atan2(meridian).to_degrees();
    Some((12.0 + hour_angle_deg * HOURS_PER_DEGREE).rem_euclid(24.0))
}

/// Equation of time, minutes: apparent minus mean solar time.
/// `unix_s` as for [`sun_position`].
pub fn equation_of_time_min(unix_s: f64) -> Option<f64> {
    let apparent_h = solar_time_h(unix_s, 0.0, 0.0, 0.0)?;
    let mean_h = (unix_s / 3600.0).rem_euclid(24.0);
    let difference_h = (apparent_h - mean_h + 12.0).rem_euclid(24.0) - 12.0;
    Some(difference_h * 60.0)
}
