//! What goes into a message: numbers, dates, other messages, the tester's own words.

use std::fmt;

use jiff::civil::Date;

use super::message::Message;
use super::paired::PairedUnit;
use super::words::Words;
use crate::units::LEAST_PROBABILITY;

/// Something that a language can say. Printed, it is English.
#[derive(Debug, Clone, PartialEq)]
pub enum Phrase {
    /// Said as it stands: names, codes, the tester's words.
    Text(String),
    /// A count; its message may choose between singular and plural.
    Count(usize),
    /// A number with so many decimals.
    Fixed(f64, usize),
    /// A number as short as it is exact.
    Short(f64),
    /// From, to, decimals.
    Range(f64, f64, usize),
    Probability(f64),
    /// A number or a range, with a unit that has one of the US beside it.
    Quantity(Box<Phrase>, PairedUnit),
    /// The same where it stands within brackets, which hold no others.
    BracketedQuantity(Box<Phrase>, PairedUnit),
    /// A number of an axis or a table whose name says the units: `50`, or `50 (90)`.
    PairedNumber(Box<Phrase>, PairedUnit),
    /// Its units: `K`, or `K (°F)`.
    UnitSymbol(PairedUnit),
    /// Hours of the day.
    Clock(f64),
    /// Seconds.
    Duration(f64),
    Date(Date),
    Message(Box<Message>),
    /// As a list in a sentence: `a, b and c`.
    Listed(Vec<Phrase>),
    /// One after the other, as a language parts clauses: `a; b`.
    Clauses(Vec<Phrase>),
    /// One after the other, with something between them.
    Joined(Vec<Phrase>, &'static str),
}

/// A number with so many decimals, and a true minus sign.
pub fn fixed(value: f64, decimals: usize) -> Phrase {
    Phrase::Fixed(value, decimals)
}

/// A number as short as it is exact enough for a limit: `450`, `0.75`.
pub fn short(value: f64) -> Phrase {
    Phrase::Short(value)
}

/// `from – to`, both with the same count of decimals; one number where they agree.
pub fn range(from: f64, to: f64, decimals: usize) -> Phrase {
    Phrase::Range(from, to, decimals)
}

/// Degrees Celsius: `95 °C`, or `95 °C (203 °F)` where the report has units of the US.
pub fn celsius(number: Phrase) -> Phrase {
    Phrase::Quantity(Box::new(number), PairedUnit::Celsius)
}

/// Kilograms: `2 kg`, or `2 kg (4.4 lb)` where the report has units of the US.
pub fn kilograms(number: Phrase) -> Phrase {
    Phrase::Quantity(Box::new(number), PairedUnit::Kilogram)
}

/// A temperature difference in kelvin: `50 K`, or `50 K (90 °F)` where the report has units of the
/// US.
pub fn kelvins(number: Phrase) -> Phrase {
    Phrase::Quantity(Box::new(number), PairedUnit::Kelvin)
}

/// Litres: `1 L`, or `1 L (0.264 US gal)` where the report has units of the US.
pub fn litres(number: Phrase) -> Phrase {
    Phrase::Quantity(Box::new(number), PairedUnit::Litre)
}

/// Metres: `1500 m`, or `1500 m (4921 ft)` where the report has units of the US.
pub fn metres(number: Phrase) -> Phrase {
    Phrase::Quantity(Box::new(number), PairedUnit::Metre)
}

/// Square metres: `1.05 m²`, or `1.05 m² (11.3 ft²)` where the report has units of the US.
pub fn square_metres(number: Phrase) -> Phrase {
    Phrase::Quantity(Box::new(number), PairedUnit::SquareMetre)
}

/// Metres per second: `1.0 m/s`, or `1.0 m/s (2.2 mph)` where the report has units of the US.
pub fn metres_per_second(number: Phrase) -> Phrase {
    Phrase::Quantity(Box::new(number), PairedUnit::MetrePerSecond)
}

/// Kilograms on a square metre: `7.00 kg/m²`, or `7.00 kg/m² (1.43 lb/ft²)` where the report has
/// units of the US.
pub fn kilograms_per_square_metre(number: Phrase) -> Phrase {
    Phrase::Quantity(Box::new(number), PairedUnit::KilogramPerSquareMetre)
}

/// A number without its unit, which stands in the name of an axis: `50`, or `50 (90)` where the
/// report has units of the US and the unit has one of them beside it.
pub fn paired_number(number: Phrase, unit: Option<PairedUnit>) -> Phrase {
    match unit {
        Some(unit) => Phrase::PairedNumber(Box::new(number), unit),
        None => number,
    }
}

/// The unit of such numbers: `K`, or `K (°F)` where the report has units of the US.
pub fn unit_symbol(unit: PairedUnit) -> Phrase {
    Phrase::UnitSymbol(unit)
}

/// A quantity for a place within brackets: `1.0 m/s; 2.2 mph`. All else stays as it is.
pub fn within_brackets(phrase: Phrase) -> Phrase {
    match phrase {
        Phrase::Quantity(number, unit) => Phrase::BracketedQuantity(number, unit),
        other => other,
    }
}

/// A probability: `0.034`, `0.34`, or `under 0.001`.
pub fn probability(p: f64) -> Phrase {
    Phrase::Probability(p)
}

/// A probability with its symbol: `p = 0.034`, `p < 0.001`.
pub fn p_value(p: f64) -> Phrase {
    let symbol = if p < LEAST_PROBABILITY {
        "p\u{a0}"
    } else {
        "p\u{a0}=\u{a0}"
    };
    joined([symbol.into(), probability(p)], "")
}

/// Hours of the day as a clock: `10:15`.
pub fn clock(hours: f64) -> Phrase {
    Phrase::Clock(hours)
}

/// Two clock times, `10:00 – 14:00`.
pub fn spread_clock(from_h: f64, to_h: f64) -> Phrase {
    joined([clock(from_h), clock(to_h)], " – ")
}

/// A span of time in seconds: `1 h 40 min`.
pub fn duration(seconds: f64) -> Phrase {
    Phrase::Duration(seconds)
}

/// A date in words.
pub fn date(date: Date) -> Phrase {
    Phrase::Date(date)
}

/// A list in a sentence: `a, b and c`.
pub fn listed<P: Into<Phrase>>(phrases: impl IntoIterator<Item = P>) -> Phrase {
    Phrase::Listed(phrases.into_iter().map(Into::into).collect())
}

/// Clauses one after the other: `a; b`.
pub fn clauses<P: Into<Phrase>>(phrases: impl IntoIterator<Item = P>) -> Phrase {
    Phrase::Clauses(phrases.into_iter().map(Into::into).collect())
}

/// Phrases one after the other, with `between` between them.
pub fn joined<P: Into<Phrase>>(
    phrases: impl IntoIterator<Item = P>,
    between: &'static str,
) -> Phrase {
    Phrase::Joined(phrases.into_iter().map(Into::into).collect(), between)
}

impl fmt::Display for Phrase {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&Words::english().say(self))
    }
}

impl From<String> for Phrase {
    fn from(text: String) -> Self {
        Phrase::Text(text)
    }
}

impl From<&String> for Phrase {
    fn from(text: &String) -> Self {
        Phrase::Text(text.clone())
    }
}

impl From<&str> for Phrase {
    fn from(text: &str) -> Self {
        Phrase::Text(text.to_owned())
    }
}

impl From<usize> for Phrase {
    fn from(count: usize) -> Self {
        Phrase::Count(count)
    }
}

impl From<Message> for Phrase {
    fn from(message: Message) -> Self {
        Phrase::Message(Box::new(message))
    }
}

impl From<&Message> for Phrase {
    fn from(message: &Message) -> Self {
        message.clone().into()
    }
}

impl From<&Phrase> for Phrase {
    fn from(phrase: &Phrase) -> Self {
        phrase.clone()
    }
}
