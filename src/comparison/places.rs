//! How far apart two sites lie, and whether one sky was estimated at both.

use crate::campaign::Campaign;
use crate::campaign::model::{IrradianceEstimate, Site};
use simmerline_math::{asin, cos, sin};

/// How far apart sites are one site, degrees: about a kilometre.
const ONE_SITE_DEG: f64 = 0.01;
/// Mean radius of the earth, km.
///
/// # Source
/// IUGG, mean radius R1, from memory.
const EARTH_KM: f64 = 6371.0;

/// Whether two sites are one.
pub fn is_one_site(one: &Site, two: &Site) -> bool {
    (one.latitude_deg - two.latitude_deg).abs() < ONE_SITE_DEG
        && (one.longitude_deg - two.longitude_deg).abs() < ONE_SITE_DEG
}

/// Distance of two sites over the ground, km.
///
/// # Source
/// The haversine formula, as in any text on navigation.
pub fn distance_km(one: &Site, two: &Site) -> f64 {
    let half_sine = |one_deg: f64, two_deg: f64| sin((two_deg - one_deg).to_radians() / 2.0);
    let north = half_sine(one.latitude_deg, two.latitude_deg);
    let east = half_sine(one.longitude_deg, two.longitude_deg);
    let cosines = cos(one.latitude_deg.to_radians()) * cos(two.latitude_deg.to_radians());
    let square = north * north + cosines * east * east;
    2.0 * EARTH_KM * asin(square.sqrt().min(1.0))
}

/// Whether irradiance was estimated of both in the same way, with the same turbidity or from the
/// same station: at one site on the same days that is one sky.
pub fn is_one_estimate(one: &Campaign, two: &Campaign) -> bool {
    let (first, second) = (&one.instruments, &two.instruments);
    let is_one_model = match first.irradiance_estimate {
        None => false,
        Some(IrradianceEstimate::ClearSky) => one.site.linke_turbidity == two.site.linke_turbidity,
        // Without an id nobody says that it is the same station.
        Some(IrradianceEstimate::Station) => {
            first.irradiance.id.is_some() && first.irradiance.id == second.irradiance.id
        }
        Some(IrradianceEstimate::FromHorizontal | IrradianceEstimate::SolarPanel) => true,
    };
    is_one_model && first.irradiance_estimate == second.irradiance_estimate
}
