//! Units of a log's readings and of a campaign file's values, and their conversion to those of
//! the canonical log and of the file's keys.
//!
//! The units stand in `measure.toml`, which says how to add one.

use std::sync::LazyLock;

use serde::Deserialize;

use crate::physics::wind::speed_m_s;

/// What a unit measures.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum Kind {
    /// Base unit °C.
    Temperature,
    /// Base unit W/m².
    Irradiance,
    /// Base unit m/s.
    Speed,
    /// Base unit µV.
    Voltage,
    /// Base unit mA.
    Current,
    /// Base unit s.
    Time,
    /// Base unit m. Of the campaign file, as are those below.
    Length,
    /// Base unit m².
    Area,
    /// Base unit kg.
    Mass,
    /// Of two temperatures; base unit K.
    Difference,
}

impl Kind {
    /// Every kind that a log's column may have.
    pub const IN_LOGS: [Kind; 6] = [
        Kind::Temperature,
        Kind::Irradiance,
        Kind::Speed,
        Kind::Voltage,
        Kind::Current,
        Kind::Time,
    ];
}

/// A unit: one row of `measure.toml`.
#[derive(Debug, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Definition {
    pub symbol: String,
    pub kind: Kind,
    #[serde(default)]
    minus: f64,
    #[serde(default = "one")]
    times: f64,
    #[serde(default = "one")]
    per: f64,
    /// The Beaufort scale: a number of it is no multiple of a speed.
    #[serde(default)]
    is_beaufort: bool,
    spellings: Vec<String>,
}

fn one() -> f64 {
    1.0
}

/// A known unit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Unit(&'static Definition);

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct File {
    unit: Vec<Definition>,
}

static UNITS: LazyLock<Vec<Definition>> = LazyLock::new(|| {
    let file: File =
        toml::from_str(include_str!("measure.toml")).expect("measure.toml is checked by a test");
    file.unit
});

impl Unit {
    /// The unit of a kind that is written so: `°C`, `W m⁻²`, `km/h`. Case, spaces,
    /// degree signs and dots do not matter.
    ///
    /// ```
    /// use simmerline::measure::{Kind, Unit};
    /// let fahrenheit = Unit::parse("deg F", &[Kind::Temperature]).unwrap();
    /// assert_eq!(fahrenheit.to_base(212.0), 100.0);
    /// assert!(Unit::parse("furlongs", &[Kind::Speed]).is_none());
    /// ```
    pub fn parse(text: &str, kinds: &[Kind]) -> Option<Unit> {
        let spelling = spelling(text);
        UNITS
            .iter()
            .find(|unit| kinds.contains(&unit.kind) && unit.spellings.contains(&spelling))
            .map(Unit)
    }

    /// The base unit of a kind.
    pub fn base(kind: Kind) -> Unit {
        let symbol = match kind {
            Kind::Temperature => "°C",
            Kind::Irradiance => "W/m²",
            Kind::Speed => "m/s",
            Kind::Voltage => "µV",
            Kind::Current => "mA",
            Kind::Time => "s",
            Kind::Length => "m",
            Kind::Area => "m²",
            Kind::Mass => "kg",
            Kind::Difference => "K",
        };
        let mut units = UNITS.iter();
        let found = units.find(|unit| unit.symbol == symbol && unit.kind == kind);
        Unit(found.expect("measure.toml holds every base unit"))
    }

    /// Symbols of all units of some kinds, in quotes, for messages.
    pub fn known(kinds: &[Kind]) -> String {
        let of_kinds = UNITS.iter().filter(|unit| kinds.contains(&unit.kind));
        let quoted: Vec<String> = of_kinds
            .map(|unit| format!("\"{}\"", unit.symbol))
            .collect();
        quoted.join(", ")
    }

    /// Symbol, as it is printed.
    pub fn symbol(self) -> &'static str {
        &self.0.symbol
    }

    /// Whether it is an estimate by eye.
    pub fn is_estimate(self) -> bool {
        self.0.is_beaufort
    }

    /// What it measures.
    pub fn kind(self) -> Kind {
        self.0.kind
    }

    /// A reading in this unit, in the base unit of its kind.
    ///
    /// # Source
    /// NIST Special Publication 811 (2008), appendix B.8.
    pub fn to_base(self, reading: f64) -> f64 {
        if self.0.is_beaufort {
            return speed_m_s(reading);
        }
        (reading - self.0.minus) * self.0.times / self.0.per
    }
}

impl Unit {
    /// A value in the base unit of its kind, in this unit: the way back of
    /// [`Unit::to_base`], but for estimates by eye.
    pub fn of_base(self, value: f64) -> f64 {
        value * self.0.per / self.0.times + self.0.minus
    }
}

/// A unit's text with everything taken out that people write differently.
fn spelling(text: &str) -> String {
    let mut spelling = String::new();
    for character in text.trim().to_lowercase().chars() {
        match character {
            '²' => spelling.push('2'),
            '¹' => spelling.push('1'),
            '⁻' | '−' | '–' => spelling.push('-'),
            'µ' | 'μ' => spelling.push('u'),
            'é' | 'è' => spelling.push('e'),
            'ó' => spelling.push('o'),
            'œ' => spelling.push_str("oe"),
            '°' | 'º' | '˚' | '·' | '⋅' | '*' | '^' | '.' | '(' | ')' | '[' | ']' | '_' => {}
            other if other.is_whitespace() => {}
            other => spelling.push(other),
        }
    }
    spelling
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn no_spelling_means_two_units_of_one_kind() {
        for (index, unit) in UNITS.iter().enumerate() {
            for written in &unit.spellings {
                assert_eq!(&spelling(written), written, "not normalised");
                let twin = UNITS[..index]
                    .iter()
                    .find(|other| other.kind == unit.kind && other.spellings.contains(written));
                assert_eq!(twin, None, "{written}");
            }
        }
    }

    #[test]
    fn a_symbol_is_a_spelling_of_its_unit() {
        for unit in UNITS.iter() {
            let parsed = Unit::parse(&unit.symbol, &[unit.kind]);
            assert_eq!(parsed, Some(Unit(unit)), "{}", unit.symbol);
        }
    }

    #[test]
    fn spellings_of_one_unit_are_one() {
        for text in ["W/m²", "W m-2", "W·m⁻²", "w/m^2", "(W/m2)", "W_m2"] {
            let unit = Unit::parse(text, &[Kind::Irradiance]).unwrap();
            assert_eq!(unit.symbol(), "W/m²", "{text}");
        }
        for text in ["Btu/(h·ft²)", "BTU/hr/ft2", "BTU h⁻¹ ft⁻²"] {
            let unit = Unit::parse(text, &[Kind::Irradiance]).unwrap();
            assert_eq!(unit.symbol(), "BTU/(h ft²)", "{text}");
        }
    }
}
