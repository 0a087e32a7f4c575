//! How sure an instrument is, in the unit that fits its quantity.

/// Standard uncertainty (k = 1).
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Uncertainty {
    /// Fraction of the reading.
    Relative(f64),
    /// Kelvin.
    Kelvin(f64),
    /// Metres per second.
    MetresPerSecond(f64),
    /// Seconds, of one reading of a clock.
    Seconds(f64),
}

impl Uncertainty {
    /// Its number, in its unit.
    pub fn size(self) -> f64 {
        match self {
            Uncertainty::Relative(size)
            | Uncertainty::Kelvin(size)
            | Uncertainty::MetresPerSecond(size)
            | Uncertainty::Seconds(size) => size,
        }
    }
}
