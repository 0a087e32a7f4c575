//! What follows from a site: its air, its boiling point, its dates.

use jiff::civil::Date;
use jiff::tz::TimeZone;

use crate::campaign::model::Site;
use crate::physics::air::pressure_pa;
use crate::physics::water::boiling_point_c;
use crate::units::zoned;

/// Pascals in a hectopascal.
const PA_PER_HPA: f64 = 100.0;

/// Local boiling point of water, °C, from measured pressure or from elevation.
pub fn local_boiling_point_c(site: &Site) -> f64 {
    boiling_point_c(local_pressure_pa(site))
}

/// Air pressure, Pa, as measured or from elevation.
pub fn local_pressure_pa(site: &Site) -> f64 {
    match site.pressure_hpa {
        Some(pressure_hpa) => pressure_hpa * PA_PER_HPA,
        None => pressure_pa(site.elevation_m),
    }
}

/// The local dates of some times (microseconds since 1970, UTC), in order, each once.
pub fn local_dates(times_us: impl Iterator<Item = i64>, zone: &TimeZone) -> Vec<Date> {
    let mut dates: Vec<Date> = times_us
        .map(|time_us| zoned(time_us, zone).date())
        .collect();
    dates.sort();
    dates.dedup();
    dates
}
