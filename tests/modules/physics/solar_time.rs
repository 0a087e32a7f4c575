//! Sun and solar time: NREL/TP-560-34302 (Reda and Andreas), a reference library's
//! implementation of it, and Duffie and Beckman's worked example.

use jiff::civil::DateTime;
use jiff::tz::TimeZone;
use jiff::{Timestamp, ToSpan};
use simmerline::physics::sun::{equation_of_time_min, solar_time_h, sun_position};

use crate::data::{Table, assert_absolute};

/// Two programs that follow the same algorithm differ by ΔT, the difference between
/// uniform and earth-rotation time: a fixed 67 or 69 s there, an estimate of 64 to
/// 75 s for these years here. In 8 s the sun moves 0.33″ or 0.000 09° along the
/// ecliptic. The larger file prints six decimals, so this is what limits it.
const ANGLE_DEG: f64 = 1e-4;

/// Near the zenith the same step turns the azimuth by 1/sin(zenith) as much.
fn azimuth_tolerance_deg(zenith_deg: f64) -> f64 {
    ANGLE_DEG / zenith_deg.to_radians().sin()
}

/// Minutes by which the report's formula for the equation of time exceeds the sun's hour
/// angle over the meridian of mean noon, which is how we define it.
///
/// The formula, E = 4 (M − 0.0057183° − α + Δψ cos ε) min, takes the mean longitude M at
/// uniform time, while mean solar time goes with the turning earth: 0.98564736° a day
/// for ΔT. And M starts at 280.4664567°, sidereal time at 280.4606184°, 0.0058383° less,
/// of which the formula takes back 0.0057183° only. Together 0.0036 min or 0.2 s.
fn excess_of_the_formula_min(delta_t_s: f64) -> f64 {
    4.0 * (0.985_647_36 * delta_t_s / 86_400.0 + 0.000_12)
}

/// What may be left of the equation of time after that: the sun's parallax, 8.8″ ×
/// sin 4.1° at most, 0.000 7 min; 8 s of ΔT in the sun's right ascension, 0.000 4 min;
/// and mean longitude and sidereal time, whose rates differ by 0.000 2 min in 26 years.
const EQUATION_MIN: f64 = 1.3e-3;

fn unix_s(instant: Timestamp) -> f64 {
    instant.as_microsecond() as f64 / 1e6
}

fn instant(text: &str) -> f64 {
    unix_s(text.parse().unwrap())
}

fn local(text: &str, zone: &str) -> f64 {
    let local: DateTime = text.parse().unwrap();
    let zone = TimeZone::get(zone).unwrap();
    unix_s(zone.to_ambiguous_timestamp(local).unambiguous().unwrap())
}

#[test]
fn nrel_worked_example_gives_its_position_and_equation_of_time() {
    // NREL/TP-560-34302, appendix A.5 (section from memory): 2003-10-17 12:30:30
    // UTC−7, 39.742476° N, 105.1786° W, 1830.14 m, ΔT 67 s. The report prints the
    // azimuth and, with refraction, the zenith 50.11162°; without refraction it is
    // 50.127954°, recomputed with pvlib 0.16.1. Equation of time 14.641503 min.
    let unix_s = instant("2003-10-17T12:30:30-07:00");
    let sun = sun_position(unix_s, 39.742_476, -105.1786, 1830.14).unwrap();
    assert_absolute("zenith", sun.zenith_deg, 50.127_954, ANGLE_DEG);
    let tolerance_deg = azimuth_tolerance_deg(50.127_954);
    assert_absolute("azimuth", sun.azimuth_deg, 194.340_24, tolerance_deg);
    // 0.005 min for the printed value: the excess of its formula and what is left, below.
    let found_min = equation_of_time_min(unix_s).unwrap();
    assert_absolute("as printed", found_min, 14.641_503, 0.005);
    let expected_min = 14.641_503 - excess_of_the_formula_min(67.0);
    assert_absolute("equation of time", found_min, expected_min, EQUATION_MIN);
}

#[test]
fn duffie_and_beckman_example_gives_10_19_solar_time() {
    // Duffie and Beckman, Solar Engineering of Thermal Processes, example 1.5.1:
    // 10:30 Central Standard Time on 3 February at 89.4° W is 10:19 solar time.
    // Tolerance: half a minute for the book's rounding to the minute, and a quarter
    // for its equation of time, Spencer's series (−13.5 min; the sun's true one is
    // about −13.7 min on that date).
    for year in ["1991", "2006", "2013", "2026"] {
        let unix_s = instant(&format!("{year}-02-03T10:30:00-06:00"));
        let found_min = solar_time_h(unix_s, -89.4).unwrap() * 60.0;
        assert_absolute(year, found_min, 10.0 * 60.0 + 19.0, 0.75);
    }
}

#[test]
fn longitude_shifts_solar_time_by_four_minutes_a_degree() {
    // Duffie and Beckman, equation 1.5.2: 89.4° W lies 0.6° east of the zone's
    // meridian, 2.4 min in the example. Tolerance: rounding of hours near 10.
    let unix_s = instant("2026-02-03T10:30:00-06:00");
    let there_h = solar_time_h(unix_s, -89.4).unwrap();
    let on_meridian_h = solar_time_h(unix_s, -90.0).unwrap();
    assert_absolute("shift", (there_h - on_meridian_h) * 60.0, 2.4, 1e-9);
}

#[test]
fn solar_time_is_that_of_the_reference_library_at_nine_sites() {
    // pvlib 0.16.1, spa_python, ΔT 67 s. The file prints 0.0001 and 0.001 min.
    let excess_min = excess_of_the_formula_min(67.0);
    let table = Table::new(include_str!("../../data/solar_time.csv"));
    for row in table.rows(9) {
        let site = row.text("site");
        let unix_s = instant(row.text("local_iso"));
        let equation_min = equation_of_time_min(unix_s).unwrap();
        let expected_min = row.number("eot_spa_min") - excess_min;
        assert_absolute(site, equation_min, expected_min, EQUATION_MIN + 0.000_05);
        let solar_min = solar_time_h(unix_s, row.number("lon_deg_east")).unwrap() * 60.0;
        let expected_min = row.number("apparent_solar_time_min") - excess_min;
        assert_absolute(site, solar_min, expected_min, EQUATION_MIN + 0.000_5);
    }
}

#[test]
fn zenith_and_azimuth_are_those_of_the_reference_library_at_nine_sites() {
    // pvlib 0.16.1, spa_python, ΔT 67 s. The file prints 0.0001°.
    let table = Table::new(include_str!("../../data/solar_time.csv"));
    for row in table.rows(9) {
        let site = row.text("site");
        let (latitude, longitude) = (row.number("lat_deg"), row.number("lon_deg_east"));
        let unix_s = instant(row.text("local_iso"));
        let sun = sun_position(unix_s, latitude, longitude, row.number("alt_m")).unwrap();
        let zenith_deg = row.number("zenith_geometric_deg");
        assert_absolute(site, sun.zenith_deg, zenith_deg, ANGLE_DEG + 0.000_05);
        let azimuth_deg = row.number("azimuth_deg_N_clockwise");
        let tolerance_deg = azimuth_tolerance_deg(zenith_deg) + 0.000_05;
        assert_absolute(site, sun.azimuth_deg, azimuth_deg, tolerance_deg);
    }
}

#[test]
fn sun_over_ten_places_is_that_of_the_reference_library() {
    // pvlib 0.16.1, spa_python, ΔT 69 s; local times in named zones, some of them
    // with daylight saving in force. The file prints six decimals.
    let excess_min = excess_of_the_formula_min(69.0);
    let table = Table::new(include_str!("../../data/sun_and_sky.csv"));
    for row in table.rows(10) {
        let place = row.text("time_zone");
        let (latitude, longitude) = (row.number("latitude_deg"), row.number("longitude_deg"));
        let unix_s = local(row.text("local_time"), place);
        let equation_min = equation_of_time_min(unix_s).unwrap();
        let expected_min = row.number("equation_of_time_min") - excess_min;
        assert_absolute(place, equation_min, expected_min, EQUATION_MIN);
        let solar_h = solar_time_h(unix_s, longitude).unwrap();
        let expected_h = row.number("solar_time_h") - excess_min / 60.0;
        assert_absolute(place, solar_h, expected_h, EQUATION_MIN / 60.0 + 0.5e-6);
        let sun = sun_position(unix_s, latitude, longitude, row.number("elevation_m")).unwrap();
        let zenith_deg = row.number("zenith_deg");
        assert_absolute(place, sun.zenith_deg, zenith_deg, ANGLE_DEG);
        let azimuth_deg = row.number("azimuth_deg");
        let tolerance_deg = azimuth_tolerance_deg(zenith_deg);
        assert_absolute(place, sun.azimuth_deg, azimuth_deg, tolerance_deg);
    }
}

#[test]
fn solar_time_stays_within_a_day_all_round_the_globe() {
    // Its definition: hours from 0 to 24, and 24 h for 360°. Tolerance: rounding.
    let midnight: Timestamp = "2026-06-21T00:00:00Z".parse().unwrap();
    for hours in 0..24 {
        let unix_s = unix_s(midnight + hours.hours());
        for longitude_deg in [-180.0, -120.5, -0.1, 0.0, 77.7, 180.0] {
            let solar_h = solar_time_h(unix_s, longitude_deg).unwrap();
            assert!(
                (0.0..24.0).contains(&solar_h),
                "{solar_h} at {longitude_deg}°"
            );
        }
        let (west_h, east_h) = (solar_time_h(unix_s, -180.0), solar_time_h(unix_s, 180.0));
        let apart_h = (west_h.unwrap() - east_h.unwrap()).abs();
        assert_absolute("the date line", apart_h.min(24.0 - apart_h), 0.0, 1e-9);
    }
}
