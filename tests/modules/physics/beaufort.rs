//! Wind by observation: the Beaufort scale of WMO-No. 8, as quoted.

use simmerline::measure::{Kind, Unit};
use simmerline::physics::wind::{BEAUFORT, speed_m_s};

use crate::data::assert_absolute;

/// WMO-No. 8, wind by observation, numbers 0 to 5, lowest and highest speed, m/s.
const WMO_M_S: [(f64, f64); 6] = [
    (0.0, 0.2),
    (0.3, 1.5),
    (1.6, 3.3),
    (3.4, 5.4),
    (5.5, 7.9),
    (8.0, 10.7),
];

#[test]
fn numbers_have_the_ranges_of_wmo_and_read_in_their_middle() {
    let unit = Unit::parse("Beaufort", &[Kind::Speed]).unwrap();
    for (number, (lowest, highest)) in WMO_M_S.into_iter().enumerate() {
        let row = BEAUFORT[number];
        assert_eq!(
            (row.lowest_m_s, row.highest_m_s),
            (lowest, highest),
            "{number}"
        );
        let middle = (lowest + highest) / 2.0;
        assert_absolute("middle", unit.to_base(number as f64), middle, 1e-12);
    }
    // The practice's limits: number 1 is light enough, 2 is not, and 3 is a gust.
    assert!(speed_m_s(1.0) <= 1.0 && speed_m_s(2.0) > 1.0 && speed_m_s(3.0) > 2.5);
    assert_absolute("between", speed_m_s(1.5), (0.9 + 2.45) / 2.0, 1e-12);
    for beyond in [-1.0, 9.0, f64::NAN] {
        assert_eq!(speed_m_s(beyond), f64::INFINITY);
    }
}

#[test]
fn numbers_follow_the_power_law_of_the_scale() {
    // v = 0.836 B^(3/2) m/s, the law by which the scale was put in m/s (WMO Commission for
    // Maritime Meteorology 1946, from memory); rounded limits are within 0.35 m/s of it.
    for number in 1..BEAUFORT.len() {
        let law = 0.836 * (number as f64).powf(1.5);
        assert_absolute("law", speed_m_s(number as f64), law, 0.35);
    }
}
