//! Units that have one of the US beside them.

use super::phrase::{Phrase, fixed, range};
use crate::units::{celsius_to_fahrenheit, kilograms_to_pounds};

/// A unit of the SI with its neighbour of the US.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PairedUnit {
    Celsius,
    Kilogram,
}

impl PairedUnit {
    /// The symbol of the SI.
    pub fn symbol(self) -> &'static str {
        match self {
            PairedUnit::Celsius => "°C",
            PairedUnit::Kilogram => "kg",
        }
    }

    /// The symbol of the US.
    pub fn us_symbol(self) -> &'static str {
        match self {
            PairedUnit::Celsius => "°F",
            PairedUnit::Kilogram => "lb",
        }
    }

    fn convert(self, value: f64) -> f64 {
        match self {
            PairedUnit::Celsius => celsius_to_fahrenheit(value),
            PairedUnit::Kilogram => kilograms_to_pounds(value),
        }
    }

    /// Decimals of a converted number: as exact as the one it stands beside.
    fn decimals(self, decimals: usize) -> usize {
        match self {
            // A degree Fahrenheit is finer than one Celsius, a pound coarser than half a kilogram.
            PairedUnit::Celsius => decimals,
            PairedUnit::Kilogram => decimals.max(1),
        }
    }

    /// The same number or range in the unit of the US.
    pub fn in_us(self, number: &Phrase) -> Phrase {
        match number {
            Phrase::Fixed(value, decimals) => fixed(self.convert(*value), self.decimals(*decimals)),
            Phrase::Range(from, to, decimals) => range(
                self.convert(*from),
                self.convert(*to),
                self.decimals(*decimals),
            ),
            Phrase::Short(value) => fixed(self.convert(*value), self.decimals(0)),
            other => other.clone(),
        }
    }
}
