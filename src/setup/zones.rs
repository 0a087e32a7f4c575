//! Time zones in use at a place.

use tzf_rs::EmbeddedFinder;

use super::place::Place;

/// Names of the zones in use at a place, such as `America/Denver`; several where they are
/// disputed. At sea they are offsets.
///
/// # Source
/// The boundaries of OpenStreetMap, as a library carries them, drawn more simply: near a border it
/// may be the neighbour's.
pub fn zones_at(place: Place) -> Vec<String> {
    let finder = EmbeddedFinder::new();
    let names = finder.get_tz_names(place.longitude_deg, place.latitude_deg);
    names.into_iter().map(str::to_owned).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::campaign::zone::parse_zone;

    // Zones and cities of the tz database (IANA), zone1970.tab, from memory.
    #[test]
    fn cities_have_their_zones() {
        for (latitude_deg, longitude_deg, zone) in [
            (35.08, -106.65, "America/Denver"),
            (-22.57, 17.08, "Africa/Windhoek"),
            (-1.29, 36.82, "Africa/Nairobi"),
            (28.61, 77.21, "Asia/Kolkata"),
            (40.42, -3.70, "Europe/Madrid"),
            (-33.87, 151.21, "Australia/Sydney"),
        ] {
            let place = Place {
                latitude_deg,
                longitude_deg,
            };
            let zones = zones_at(place);
            assert!(zones.iter().any(|name| name == zone), "{zone}: {zones:?}");
            assert!(
                zones.iter().all(|name| parse_zone(name).is_some()),
                "{zones:?}"
            );
        }
    }
}
