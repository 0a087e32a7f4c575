//! What an axis measures: its name, and the numbers along it.

use simmerline_math::power_of_ten;

use crate::language::{Message, PairedUnit, Phrase, Words, fixed, paired_number};

/// An axis.
#[derive(Clone)]
pub struct Axis {
    name: Message,
    unit: Option<PairedUnit>,
}

impl Axis {
    /// An axis whose name says the unit.
    pub fn named(name: Message) -> Self {
        Axis { name, unit: None }
    }

    /// An axis in a unit that has one of the US beside it; its name says the [`unit_symbol`].
    ///
    /// [`unit_symbol`]: crate::language::unit_symbol
    pub fn in_unit(name: Message, unit: PairedUnit) -> Self {
        Axis {
            name,
            unit: Some(unit),
        }
    }

    /// Its name, with the unit.
    pub fn name(&self, words: &Words) -> String {
        words.say(self.name.clone())
    }

    /// A number along it: `50`, or `50 (90)`; the second is of the first as it is printed.
    pub fn number(&self, number: Phrase, words: &Words) -> String {
        let printed = match number {
            Phrase::Fixed(value, decimals) => {
                let scale = power_of_ten(decimals as i32);
                fixed((value * scale).round() / scale, decimals)
            }
            other => other,
        };
        words.say(paired_number(printed, self.unit))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::language::{Language, UnitSystem, unit_symbol};
    use crate::message;

    fn of_difference(units: UnitSystem) -> (String, String) {
        let words = Words::new(Language::ENGLISH, units);
        let unit = PairedUnit::Kelvin;
        let name = message!("figure-difference-short", unit = unit_symbol(unit));
        let axis = Axis::in_unit(name, unit);
        (axis.name(&words), axis.number(fixed(50.0, 0), &words))
    }

    #[test]
    fn a_difference_is_told_in_kelvin_and_beside_it_in_degrees_fahrenheit() {
        let (name, number) = of_difference(UnitSystem::Si);
        assert!(name.ends_with(", K"), "{name}");
        assert_eq!(number, "50");
        let (name, number) = of_difference(UnitSystem::Us);
        assert!(name.ends_with(", K (°F)"), "{name}");
        // 50 K is 90 °F, as a difference: 1 K is 1.8 °F (NIST SP 811, B.8).
        assert_eq!(number, "50 (90)");
    }

    // 0.2, 0.3 and 0.6 K are 0.36, 0.54 and 1.08 °F, as differences (NIST SP 811, B.8).
    #[test]
    fn ticks_off_by_a_rounding_are_told_as_finely_as_all_others() {
        let words = Words::new(Language::ENGLISH, UnitSystem::Us);
        let axis = Axis::in_unit(message!("figure-power-short"), PairedUnit::Kelvin);
        // What a step of 0.1 comes to after two, three and six of them.
        let ticks = [0.1 + 0.1, 0.1 + 0.1 + 0.1, 0.1 * 6.0];
        assert!(ticks[1] != 0.3);
        let said = ticks.map(|tick| axis.number(fixed(tick, 1), &words));
        assert_eq!(said, ["0.2 (0.36)", "0.3 (0.54)", "0.6 (1.08)"]);
        // Printed with fewer decimals than it has, it is converted as it is printed.
        assert_eq!(axis.number(fixed(19.6, 0), &words), "20 (36)");
    }

    #[test]
    fn an_axis_without_a_neighbour_in_the_us_stays_as_it_is() {
        let words = Words::new(Language::ENGLISH, UnitSystem::Us);
        let axis = Axis::named(message!("figure-power-short"));
        assert_eq!(axis.number(fixed(50.0, 0), &words), "50");
    }
}
