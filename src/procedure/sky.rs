//! Sun and clear sky over the site.

use jiff::Timestamp;
use jiff::tz::TimeZone;

use super::site::local_pressure_pa;
use crate::campaign::model::Site;
use crate::physics::sky::{ClearAir, Sunlight, extraterrestrial_w_m2, split_horizontal};
use crate::physics::sun::{SunPosition, sun_position};

/// Linke turbidity of a clear sky where the campaign file states none.
/// Common practice, no published source: 2 is mountain air, 5 to 7 hazy or dusty.
pub const USUAL_TURBIDITY: f64 = 3.0;

/// The sky over a site.
#[derive(Debug, Clone, Copy)]
pub struct LocalSky {
    latitude_deg: f64,
    longitude_deg: f64,
    air: ClearAir,
}

/// Sun and sky at one time, if no cloud is there.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ClearMoment {
    pub sun: SunPosition,
    /// Global irradiance on the horizontal, W/m².
    pub horizontal_w_m2: f64,
    /// Global irradiance on the plane normal to the beam, W/m².
    pub normal_w_m2: f64,
}

impl LocalSky {
    /// The sky over a site, with its own turbidity or the usual one.
    pub fn over(site: &Site) -> LocalSky {
        LocalSky {
            latitude_deg: site.latitude_deg,
            longitude_deg: site.longitude_deg,
            air: ClearAir {
                elevation_m: site.elevation_m,
                pressure_pa: local_pressure_pa(site),
                linke_turbidity: site.linke_turbidity.unwrap_or(USUAL_TURBIDITY),
            },
        }
    }

    /// Linke turbidity.
    pub fn turbidity(&self) -> f64 {
        self.air.linke_turbidity
    }

    /// Where the sun stands at a time in seconds since 1970, UTC, of the years 1900 to 2200.
    pub fn sun(&self, unix_s: f64) -> SunPosition {
        sun_position(
            unix_s,
            self.latitude_deg,
            self.longitude_deg,
            self.air.elevation_m,
        )
        .expect("times lie between 1900 and 2200, which the algorithm covers")
    }

    /// Sun and irradiance without clouds at a time in seconds since 1970, UTC.
    ///
    /// # Source
    /// Ineichen and Perez 2002, by [`ClearAir::sunlight`]; the plane normal to the beam by
    /// [`Sunlight::on_normal_plane_w_m2`].
    pub fn clear(&self, unix_s: f64) -> ClearMoment {
        let sun = self.sun(unix_s);
        let apparent_deg = sun.apparent_zenith_deg(self.air.pressure_pa);
        let light = self.air.sunlight(apparent_deg, outside_w_m2(unix_s));
        ClearMoment {
            sun,
            horizontal_w_m2: light.horizontal_w_m2,
            normal_w_m2: on_normal_plane_w_m2(&light, apparent_deg),
        }
    }

    /// What a reading of a sensor that lies flat (W/m²) makes on the plane normal to the
    /// beam, with the sun at a position.
    ///
    /// # Source
    /// Erbs, Klein and Duffie 1982, by [`split_horizontal`].
    pub fn from_horizontal_w_m2(
        &self,
        unix_s: f64,
        sun: &SunPosition,
        horizontal_w_m2: f64,
    ) -> f64 {
        let light = split_horizontal(horizontal_w_m2, sun.zenith_deg, outside_w_m2(unix_s));
        on_normal_plane_w_m2(&light, sun.zenith_deg)
    }
}

fn on_normal_plane_w_m2(light: &Sunlight, zenith_deg: f64) -> f64 {
    light.on_normal_plane_w_m2(zenith_deg.clamp(0.0, 90.0))
}

fn outside_w_m2(unix_s: f64) -> f64 {
    let date = Timestamp::from_second(unix_s as i64)
        .map(|instant| TimeZone::UTC.to_datetime(instant))
        .expect("times lie between 1900 and 2200");
    extraterrestrial_w_m2(date.day_of_year().unsigned_abs())
}
