//! Wind by what it does, where there is no anemometer.

use crate::language::Message;

/// One number of the Beaufort scale.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Beaufort {
    /// Lowest and highest speed 10 m above open ground, m/s.
    pub lowest_m_s: f64,
    pub highest_m_s: f64,
}

const fn force(lowest_m_s: f64, highest_m_s: f64) -> Beaufort {
    Beaufort {
        lowest_m_s,
        highest_m_s,
    }
}

/// What one sees on land at a number of the scale, in our own words.
pub fn sign(number: usize) -> Message {
    Message::new(format!("wind-sign-{number}"))
}

/// The scale from 0 up to the strongest wind that is taken, a gale, one row a number.
///
/// # Source
/// WMO-No. 8, Guide to Instruments and Methods of Observation, table on wind by
/// observation; numbers 6 and above from memory.
pub const BEAUFORT: &[Beaufort] = &[
    force(0.0, 0.2),
    force(0.3, 1.5),
    force(1.6, 3.3),
    force(3.4, 5.4),
    force(5.5, 7.9),
    force(8.0, 10.7),
    force(10.8, 13.8),
    force(13.9, 17.1),
    force(17.2, 20.7),
];

/// Wind speed, m/s, at a number of the scale, halves between two numbers among them: the
/// middle of the number's range, and straight lines between the middles. Infinite beyond
/// the scale.
///
/// ```
/// assert_eq!(simmerline::physics::wind::speed_m_s(1.0), 0.9);
/// ```
pub fn speed_m_s(number: f64) -> f64 {
    let middle = |row: usize| {
        let force = BEAUFORT[row.min(BEAUFORT.len() - 1)];
        (force.lowest_m_s + force.highest_m_s) / 2.0
    };
    if !(0.0..=(BEAUFORT.len() - 1) as f64).contains(&number) {
        return f64::INFINITY;
    }
    let below = number.floor() as usize;
    middle(below) + number.fract() * (middle(below + 1) - middle(below))
}
