//! A site far from where its time zone is at home.

use simmerline_math::{asin, cos, sin, squared};

use crate::campaign::model::Site;
use crate::language::{Message, Phrase, fixed, short};
use crate::message;

/// Principal place of every zone of the IANA time zone database.
const PLACES: &str = include_str!("zone_places.csv");

/// So far from the principal place of its zone a site is not doubted, km. Common practice, no
/// published source: within a zone of one country hardly a place is further, Kashgar (4200 km
/// from Shanghai) and Hawaii's outer islands aside.
const NEAR_KM: f64 = 2500.0;
/// So near the site would be with its coordinates read otherwise, km: most zones reach no
/// further from their principal place.
const MEANT_KM: f64 = 2000.0;
/// So much nearer it would be.
const MEANT_SHARE: f64 = 1.0 / 3.0;
/// Mean radius of the earth, km (IUGG, from memory).
const EARTH_KM: f64 = 6371.0;

/// The site lies far from its time zone, and would not with its coordinates read otherwise.
#[derive(Debug, Clone, PartialEq)]
pub struct FarFromZone {
    pub zone: String,
    /// From the principal place of the zone, km: as written, and as meant.
    pub away_km: f64,
    pub meant_km: f64,
    pub meant: Coordinates,
}

/// Coordinates of a site read otherwise.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Coordinates {
    /// The longitude of the other sign, degrees, east positive.
    OtherSign { longitude_deg: f64 },
    /// One in the place of the other, degrees.
    Exchanged {
        latitude_deg: f64,
        longitude_deg: f64,
    },
}

/// That a longitude has the wrong sign, or that latitude and longitude are exchanged, where the
/// site's zone shows it. A zone that is an offset, or that has no place, shows nothing.
///
/// # Source
/// Places: zone.tab of the IANA time zone database.
pub fn far_from_zone(site: &Site) -> Option<FarFromZone> {
    let home = place_of(&site.time_zone_name)?;
    let (latitude_deg, longitude_deg) = (site.latitude_deg, site.longitude_deg);
    let away_km = apart_km(home, (latitude_deg, longitude_deg));
    let other_sign = Coordinates::OtherSign {
        longitude_deg: -longitude_deg,
    };
    let exchanged = (-90.0..=90.0)
        .contains(&longitude_deg)
        .then_some(Coordinates::Exchanged {
            latitude_deg: longitude_deg,
            longitude_deg: latitude_deg,
        });
    let readings = [Some(other_sign), exchanged].into_iter().flatten();
    let readings = readings.map(|meant| {
        let place = match meant {
            Coordinates::OtherSign { longitude_deg } => (latitude_deg, longitude_deg),
            Coordinates::Exchanged {
                latitude_deg,
                longitude_deg,
            } => (latitude_deg, longitude_deg),
        };
        (apart_km(home, place), meant)
    });
    let (meant_km, meant) = readings.min_by(|one, other| one.0.total_cmp(&other.0))?;
    let is_slip = away_km > NEAR_KM && meant_km < MEANT_KM && meant_km < MEANT_SHARE * away_km;
    is_slip.then(|| FarFromZone {
        zone: site.time_zone_name.clone(),
        away_km,
        meant_km,
        meant,
    })
}

impl FarFromZone {
    /// What it says.
    pub fn message(&self) -> Message {
        let said = match self.meant {
            Coordinates::OtherSign { longitude_deg } => message!(
                "notice-far-from-zone-sign",
                longitude = short(longitude_deg)
            ),
            Coordinates::Exchanged {
                latitude_deg,
                longitude_deg,
            } => message!(
                "notice-far-from-zone-exchanged",
                latitude = short(latitude_deg),
                longitude = short(longitude_deg)
            ),
        };
        said.with("zone", &self.zone)
            .with("away", to_hundreds(self.away_km))
            .with("near", to_hundreds(self.meant_km))
    }
}

/// As far as the principal place of a zone says anything, and never nothing.
fn to_hundreds(km: f64) -> Phrase {
    fixed((km / 100.0).ceil() * 100.0, 0)
}

/// Degrees north and east of a zone's principal place; `None` for one that has none.
pub fn place_of(zone: &str) -> Option<(f64, f64)> {
    let mut places = places();
    places.find(|(name, _)| *name == zone).map(|(_, at)| at)
}

/// Every zone with the degrees north and east of its principal place.
pub fn places() -> impl Iterator<Item = (&'static str, (f64, f64))> {
    let rows = PLACES.lines().filter(|line| !line.starts_with('#'));
    rows.filter_map(|line| {
        let mut cells = line.split(',');
        let name = cells.next()?;
        let mut degrees = || cells.next()?.parse().ok();
        Some((name, (degrees()?, degrees()?)))
    })
}

/// Distance of two places, degrees north and east, on a round earth, km.
///
/// # Source
/// Haversine formula, as in any text on spherical trigonometry.
fn apart_km(one: (f64, f64), other: (f64, f64)) -> f64 {
    let half = |from: f64, to: f64| squared(sin(((to - from) / 2.0).to_radians()));
    let cosines = cos(one.0.to_radians()) * cos(other.0.to_radians());
    let chord = half(one.0, other.0) + cosines * half(one.1, other.1);
    2.0 * EARTH_KM * asin(chord.sqrt().min(1.0))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_quarter_of_the_equator_is_ten_thousand_kilometres() {
        assert!((apart_km((0.0, 0.0), (0.0, 90.0)) - 10_007.5).abs() < 1.0);
        assert_eq!(apart_km((12.0, 34.0), (12.0, 34.0)), 0.0);
    }

    #[test]
    fn every_place_of_the_table_is_read() {
        assert_eq!(places().count(), PLACES.lines().count() - 2);
        assert_eq!(place_of("Africa/Nairobi"), Some((-1.28, 36.82)));
        assert_eq!(place_of("UTC"), None);
    }
}
