//! Units that have one of the US beside them.

use super::phrase::{Phrase, fixed, joined, range};
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

    /// The same numbers in the unit of the US.
    pub fn in_us(self, number: &Phrase) -> Phrase {
        match number {
            Phrase::Fixed(value, decimals) => fixed(self.convert(*value), self.decimals(*decimals)),
            Phrase::Range(from, to, decimals) => range(
                self.convert(*from),
                self.convert(*to),
                self.decimals(*decimals),
            ),
            Phrase::Short(value) => fixed(self.convert(*value), self.decimals(0)),
            Phrase::Joined(numbers, between) => {
                joined(numbers.iter().map(|number| self.in_us(number)), between)
            }
            Phrase::Message(message) => {
                let mut converted = message.as_ref().clone();
                for (_, number) in &mut converted.arguments {
                    *number = self.in_us(number);
                }
                converted.into()
            }
            other => other.clone(),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::language::unit_system::UnitSystem;
    use crate::language::{Language, Words, celsius, kilograms, short};
    use crate::message;

    // 20, 35 and 95 °C are 68, 95 and 203 °F, 2 kg are 4.4 lb: NIST SP 811 (2008), appendix B.8.
    #[test]
    fn every_number_of_a_quantity_is_said_in_units_of_the_us() {
        let words = Words::new(Language::ENGLISH, UnitSystem::Us);
        let spread = joined([short(20.0), short(35.0)], " – ");
        assert_eq!(words.say(celsius(spread)), "20 – 35 °C (68 – 95 °F)");
        let (start, target) = (fixed(20.0, 0), fixed(95.0, 0));
        let degrees = message!("journey-degrees", start = start, target = target);
        let said = words.say(celsius(degrees.into()));
        assert_eq!(said, "20 to 95 °C (68 to 203 °F)");
        assert_eq!(words.say(kilograms(short(2.0))), "2 kg (4.4 lb)");
    }
}
