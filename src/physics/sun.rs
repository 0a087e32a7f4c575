//! Where the sun stands, when it rises, and apparent solar time.

use simmerline_math::{asin, atan2, sin, sin_cos, squared, tan};
use solar_positioning::{
    Horizon, HorizonState, Location, SolarEvents, SolarPositions, delta_t, time::JulianDate,
};

/// Julian date of 1970-01-01 00:00 UTC.
const JULIAN_DATE_1970: f64 = 2_440_587.5;
/// Seconds in a day.
const SECONDS_PER_DAY: f64 = 86_400.0;
/// Temperature of the air that bends the light, °C.
const AIR_C: f64 = 12.0;
/// Elevation below which refraction is left out: the sun is not seen, degrees.
const LOWEST_REFRACTED_DEG: f64 = -0.8333;
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
    let time = JulianDate::new(julian_date(unix_s), delta_t_s(unix_s)?).ok()?;
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

impl SunPosition {
    /// Angle from the zenith at which the sun is seen through air of a pressure (Pa) and
    /// 12 °C, degrees; without refraction well below the horizon.
    ///
    /// # Source
    /// NREL/TP-560-34302, equation 42.
    pub fn apparent_zenith_deg(&self, pressure_pa: f64) -> f64 {
        let elevation_deg = 90.0 - self.zenith_deg;
        if elevation_deg < LOWEST_REFRACTED_DEG {
            return self.zenith_deg;
        }
        let bent_deg = (elevation_deg + 10.3 / (elevation_deg + 5.11)).to_radians();
        let density = pressure_pa / 101_000.0 * 283.0 / (273.0 + AIR_C);
        self.zenith_deg - density * 1.02 / (60.0 * tan(bent_deg))
    }

    /// Angle between two positions, degrees from 0 to 180.
    ///
    /// ```
    /// use simmerline::physics::sun::SunPosition;
    /// let noon = SunPosition { zenith_deg: 0.0, azimuth_deg: 0.0 };
    /// let later = SunPosition { zenith_deg: 15.0, azimuth_deg: 270.0 };
    /// assert!((noon.apart_deg(&later) - 15.0).abs() < 1e-9);
    /// ```
    pub fn apart_deg(&self, other: &SunPosition) -> f64 {
        let direction = |sun: &SunPosition| {
            let (sin_zenith, cos_zenith) = sin_cos(sun.zenith_deg.to_radians());
            let (sin_azimuth, cos_azimuth) = sin_cos(sun.azimuth_deg.to_radians());
            [
                sin_zenith * sin_azimuth,
                sin_zenith * cos_azimuth,
                cos_zenith,
            ]
        };
        let (one, two) = (direction(self), direction(other));
        let chord = (0..3)
            .map(|axis| squared(one[axis] - two[axis]))
            .sum::<f64>();
        (2.0 * asin((chord.sqrt() / 2.0).min(1.0))).to_degrees()
    }
}

/// What the sun does from one time to another.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Daylight {
    /// First rise and first set after it, seconds since 1970, UTC; `None` where it does
    /// not happen in that time.
    RisesAndSets {
        rise_s: Option<f64>,
        set_s: Option<f64>,
    },
    AlwaysUp,
    AlwaysDown,
}

/// Rise and set of the sun's upper edge over a level horizon, with 34′ of refraction and
/// 16′ of radius, from one time to another (seconds since 1970, UTC).
///
/// # Source
/// NREL/TP-560-34302, appendix A.2, by the solar-positioning crate.
pub fn daylight(from_s: f64, to_s: f64, latitude_deg: f64, longitude_deg: f64) -> Option<Daylight> {
    let place = Location {
        latitude: latitude_deg,
        longitude: longitude_deg,
    };
    let events = SolarEvents::new()
        .for_interval_from_julian(
            julian_date(from_s),
            julian_date(to_s),
            place,
            delta_t_s(from_s)?,
            Horizon::SunriseSunset,
        )
        .ok()?;
    Some(match events.state_at_start {
        HorizonState::Above if events.always_above() => Daylight::AlwaysUp,
        HorizonState::Below if events.always_below() => Daylight::AlwaysDown,
        _ => Daylight::RisesAndSets {
            rise_s: events.rises.first().map(|date| unix_s_of(*date)),
            set_s: events.sets.first().map(|date| unix_s_of(*date)),
        },
    })
}

/// Next time after `from_s` (seconds since 1970, UTC) at which the sun is on the meridian,
/// within a day and a bit.
///
/// # Source
/// As [`daylight`].
pub fn next_noon_s(from_s: f64, longitude_deg: f64) -> Option<f64> {
    let to_s = from_s + 1.1 * SECONDS_PER_DAY;
    let noon = SolarEvents::new()
        .next_transit_from_julian(
            julian_date(from_s),
            julian_date(to_s),
            longitude_deg,
            delta_t_s(from_s)?,
        )
        .ok()?;
    noon.map(unix_s_of)
}

fn julian_date(unix_s: f64) -> f64 {
    JULIAN_DATE_1970 + unix_s / SECONDS_PER_DAY
}

fn unix_s_of(julian_date: f64) -> f64 {
    (julian_date - JULIAN_DATE_1970) * SECONDS_PER_DAY
}

/// Uniform time minus that of the turning earth, s.
fn delta_t_s(unix_s: f64) -> Option<f64> {
    delta_t::estimate(1970.0 + unix_s / (365.2425 * SECONDS_PER_DAY)).ok()
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
    let (sin_zenith, cos_zenith) = sin_cos(sun.zenith_deg.to_radians());
    let west = -sin(sun.azimuth_deg.to_radians()) * sin_zenith;
    let hour_angle_deg = atan2(west, cos_zenith).to_degrees();
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
