//! Units that have one of the US beside them.

use simmerline_math::power_of_ten;

use super::phrase::{Phrase, fixed, joined, range, short};
use crate::units;

/// A unit of the SI with its neighbour of the US.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PairedUnit {
    Celsius,
    /// Of a difference between temperatures.
    Kelvin,
    Kilogram,
    Litre,
    Metre,
    SquareMetre,
    MetrePerSecond,
    KilogramPerSquareMetre,
}

/// From so many kilograms or litres on, a tenth of a pound or a gallon is finer than what is meant.
const MANY: f64 = 100.0;

impl PairedUnit {
    /// The symbol of the SI.
    pub fn symbol(self) -> &'static str {
        match self {
            PairedUnit::Celsius => "°C",
            PairedUnit::Kelvin => "K",
            PairedUnit::Kilogram => "kg",
            PairedUnit::Litre => "L",
            PairedUnit::Metre => "m",
            PairedUnit::SquareMetre => "m²",
            PairedUnit::MetrePerSecond => "m/s",
            PairedUnit::KilogramPerSquareMetre => "kg/m²",
        }
    }

    /// The symbol of the US.
    pub fn us_symbol(self) -> &'static str {
        match self {
            PairedUnit::Celsius | PairedUnit::Kelvin => "°F",
            PairedUnit::Kilogram => "lb",
            PairedUnit::Litre => "US gal",
            PairedUnit::Metre => "ft",
            PairedUnit::SquareMetre => "ft²",
            PairedUnit::MetrePerSecond => "mph",
            PairedUnit::KilogramPerSquareMetre => "lb/ft²",
        }
    }

    fn convert(self, value: f64) -> f64 {
        match self {
            PairedUnit::Celsius => units::celsius_to_fahrenheit(value),
            PairedUnit::Kelvin => units::kelvin_to_fahrenheit_difference(value),
            PairedUnit::Kilogram => units::kilograms_to_pounds(value),
            PairedUnit::Litre => units::litres_to_us_gallons(value),
            PairedUnit::Metre => units::metres_to_feet(value),
            PairedUnit::SquareMetre => units::square_metres_to_square_feet(value),
            PairedUnit::MetrePerSecond => units::metres_per_second_to_miles_per_hour(value),
            PairedUnit::KilogramPerSquareMetre => {
                units::kilograms_per_square_metre_to_pounds_per_square_foot(value)
            }
        }
    }

    /// Decimals of a number that is converted: as exact as the one it stands beside.
    fn decimals(self, value: f64, decimals: usize) -> usize {
        match self {
            // A degree Fahrenheit is finer than one Celsius, a pound coarser than half a kilogram.
            PairedUnit::Celsius
            | PairedUnit::Kelvin
            | PairedUnit::Metre
            | PairedUnit::MetrePerSecond => decimals,
            PairedUnit::Kilogram | PairedUnit::Litre if value.abs() >= MANY => decimals,
            PairedUnit::Kilogram | PairedUnit::Litre => decimals.max(1),
            // Ten square feet are about one square metre; a pound on one is five kilograms on one.
            PairedUnit::SquareMetre => decimals.saturating_sub(1),
            PairedUnit::KilogramPerSquareMetre => decimals.max(2),
        }
    }

    /// A number with so many decimals, converted.
    fn fixed_in_us(self, value: f64, decimals: usize) -> Phrase {
        let scale = power_of_ten(decimals as i32);
        let is_exact = (value * scale).round() / scale == value;
        match self {
            PairedUnit::Kelvin if is_exact => self.short_in_us(value),
            _ => fixed(self.convert(value), self.decimals(value, decimals)),
        }
    }

    /// A number that is as short as it is exact, converted.
    fn short_in_us(self, value: f64) -> Phrase {
        let converted = self.convert(value);
        let digits = match self {
            PairedUnit::Celsius | PairedUnit::Kilogram => {
                return fixed(converted, self.decimals(value, 0));
            }
            // Exact in both.
            PairedUnit::Kelvin => return short(converted),
            PairedUnit::MetrePerSecond => 2,
            _ => 3,
        };
        fixed(
            converted,
            units::digits_after_point(converted.abs(), digits),
        )
    }

    /// The same numbers in the unit of the US.
    pub fn in_us(self, number: &Phrase) -> Phrase {
        match number {
            Phrase::Fixed(value, decimals) => self.fixed_in_us(*value, *decimals),
            Phrase::Range(from, to, decimals) => range(
                self.convert(*from),
                self.convert(*to),
                self.decimals(from.abs().max(to.abs()), *decimals),
            ),
            Phrase::Short(value) => self.short_in_us(*value),
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
    use crate::language::{
        Language, Words, celsius, kelvins, kilograms, kilograms_per_square_metre, litres, metres,
        metres_per_second, short, square_metres, within_brackets,
    };
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
        // 521 kg / 0.453 592 37 is 1148.6 lb.
        assert_eq!(words.say(kilograms(fixed(521.0, 0))), "521 kg (1149 lb)");
    }

    // Factors of NIST SP 811 (2008), appendix B.8: 0.3048 m a foot, 0.092 903 04 m² a square foot,
    // 0.447 04 m/s a mile per hour, 4.882 428 kg/m² a pound on a square foot, 3.785 412 L a gallon.
    #[test]
    fn lengths_areas_speeds_loads_and_differences_are_said_in_units_of_the_us() {
        let words = Words::new(Language::ENGLISH, UnitSystem::Us);
        let said = |phrase: Phrase| words.say(phrase);
        assert_eq!(said(metres(fixed(1500.0, 0))), "1500 m (4921 ft)");
        assert_eq!(said(metres(short(1.2))), "1.2 m (3.94 ft)");
        assert_eq!(said(square_metres(fixed(1.05, 2))), "1.05 m² (11.3 ft²)");
        let load = kilograms_per_square_metre(fixed(7.0, 2));
        assert_eq!(said(load), "7.00 kg/m² (1.43 lb/ft²)");
        assert_eq!(said(metres_per_second(fixed(1.0, 1))), "1.0 m/s (2.2 mph)");
        assert_eq!(said(metres_per_second(short(2.5))), "2.5 m/s (5.6 mph)");
        assert_eq!(said(litres(short(1.0))), "1 L (0.264 US gal)");
        assert_eq!(said(kelvins(short(50.0))), "50 K (90 °F)");
        assert_eq!(
            said(kelvins(range(5.1, 70.0, 1))),
            "5.1 – 70.0 K (9.2 – 126.0 °F)"
        );
        let gusts = within_brackets(metres_per_second(range(0.3, 1.5, 1)));
        assert_eq!(said(gusts), "0.3 – 1.5 m/s; 0.7 – 3.4 mph");
    }

    #[test]
    fn units_of_the_si_stand_alone() {
        let words = Words::new(Language::ENGLISH, UnitSystem::Si);
        assert_eq!(words.say(metres(fixed(1500.0, 0))), "1500 m");
        let area = within_brackets(square_metres(short(0.5)));
        assert_eq!(words.say(area), "0.5 m²");
    }
}
