//! Values of the campaign file with their units: a number in the unit that its key names, or a
//! text such as `"16.2 lb"`.

use std::fmt;
use std::marker::PhantomData;

use serde::de::{SeqAccess, Visitor};
use serde::{Deserialize, Deserializer};

use crate::measure::{Kind, Unit};

/// What a key of the campaign file measures.
pub trait Dimension {
    const KIND: Kind;
}

pub struct Length;
pub struct Area;
pub struct Mass;
pub struct Temperature;
pub struct Difference;

impl Dimension for Length {
    const KIND: Kind = Kind::Length;
}
impl Dimension for Area {
    const KIND: Kind = Kind::Area;
}
impl Dimension for Mass {
    const KIND: Kind = Kind::Mass;
}
impl Dimension for Temperature {
    const KIND: Kind = Kind::Temperature;
}
impl Dimension for Difference {
    const KIND: Kind = Kind::Difference;
}

/// A value, in the base unit of its kind.
struct Measured<D>(f64, PhantomData<D>);

/// A value, in the base unit of its kind: m, m², kg, °C, K.
///
/// # Errors
/// If it is neither a number nor a text with units of the kind.
pub fn one<'de, De: Deserializer<'de>, D: Dimension>(from: De) -> Result<f64, De::Error> {
    Ok(Measured::<D>::deserialize(from)?.0)
}

/// A value of a key that may be left out.
///
/// # Errors
/// As [`one`].
pub fn optional<'de, De: Deserializer<'de>, D: Dimension>(
    from: De,
) -> Result<Option<f64>, De::Error> {
    one::<De, D>(from).map(Some)
}

/// Values of a key that may be left out.
///
/// # Errors
/// As [`one`].
pub fn several<'de, De: Deserializer<'de>, D: Dimension>(
    from: De,
) -> Result<Option<Vec<f64>>, De::Error> {
    let values = Vec::<Measured<D>>::deserialize(from)?;
    Ok(Some(values.into_iter().map(|value| value.0).collect()))
}

/// Points of a key that may be left out.
///
/// # Errors
/// As [`one`].
pub fn points<'de, De: Deserializer<'de>, D: Dimension>(
    from: De,
) -> Result<Option<Vec<[f64; 2]>>, De::Error> {
    let points = Vec::<[Measured<D>; 2]>::deserialize(from)?;
    let points = points.into_iter().map(|[x, y]| [x.0, y.0]);
    Ok(Some(points.collect()))
}

impl<'de, D: Dimension> Deserialize<'de> for Measured<D> {
    fn deserialize<De: Deserializer<'de>>(from: De) -> Result<Self, De::Error> {
        from.deserialize_any(MeasuredVisitor::<D>(PhantomData))
    }
}

struct MeasuredVisitor<D>(PhantomData<D>);

impl<'de, D: Dimension> Visitor<'de> for MeasuredVisitor<D> {
    type Value = Measured<D>;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("a number")
    }

    fn visit_f64<E>(self, value: f64) -> Result<Self::Value, E> {
        Ok(Measured(value, PhantomData))
    }

    fn visit_i64<E>(self, value: i64) -> Result<Self::Value, E> {
        Ok(Measured(value as f64, PhantomData))
    }

    fn visit_str<E: serde::de::Error>(self, text: &str) -> Result<Self::Value, E> {
        match parse(text, D::KIND) {
            Some(value) => Ok(Measured(value, PhantomData)),
            None => Err(E::custom(format!(
                "{FOUND_TEXT}{text}\", expected a number with its unit, as in \"{}\", one of {}",
                example(D::KIND),
                Unit::known(&[D::KIND])
            ))),
        }
    }

    fn visit_seq<A: SeqAccess<'de>>(self, _: A) -> Result<Self::Value, A::Error> {
        Err(serde::de::Error::custom("found a list, expected a number"))
    }
}

/// How the refusal of a text begins.
pub const FOUND_TEXT: &str = "found \"";

/// A text of numbers with units of a kind, in its base unit: `16.2 lb`, `16 lb 3 oz`,
/// `3 1/2 ft`, `5'4"`. Of several the sum.
///
/// ```
/// use simmerline::campaign::measured::parse;
/// use simmerline::measure::Kind;
/// assert!((parse("10 lb", Kind::Mass).unwrap() - 4.5359237).abs() < 1e-12);
/// assert!((parse("5 ft 3 in", Kind::Length).unwrap() - 1.6002).abs() < 1e-12);
/// assert_eq!(parse("10", Kind::Mass), None);
/// ```
///
/// # Source
/// NIST Special Publication 811 (2008), appendix B.8.
pub fn parse(text: &str, kind: Kind) -> Option<f64> {
    let (mut total, mut number, mut unit) = (0.0, None::<f64>, String::new());
    let (mut is_negative, mut last) = (false, f64::INFINITY);
    // Units get smaller: "3 kg" behind pounds is a slip.
    let mut add = |number: f64, unit: &str| {
        let parsed = Unit::parse(unit, &[kind])?;
        let size = parsed.to_base(1.0) - parsed.to_base(0.0);
        if size >= last {
            return None;
        }
        last = size;
        Some(parsed.to_base(number))
    };
    let spaced = text
        .replace(['\'', '′'], " ft ")
        .replace(['"', '″'], " in ");
    for word in spaced.split_whitespace() {
        let digits = digits_of(word);
        if !digits.is_empty() {
            if !unit.is_empty() {
                total += add(number.take()?, &unit)?;
                unit.clear();
            }
            let value = value_of(digits)?;
            number = match number {
                // "16 1/2", and no space as a thousands mark.
                Some(whole) if digits.contains('/') && value < 1.0 => Some(whole + value),
                Some(_) => return None,
                None => {
                    is_negative |= value < 0.0;
                    Some(if is_negative { -value.abs() } else { value })
                }
            };
        }
        unit += &word[digits.len()..];
    }
    Some(total + add(number?, &unit)?)
}

/// A value of a kind as it is written.
fn example(kind: Kind) -> &'static str {
    match kind {
        Kind::Length => "5052 ft",
        Kind::Area => "10.2 ft2",
        Kind::Mass => "16.2 lb",
        Kind::Temperature => "77 °F",
        _ => "5 °F",
    }
}

/// Whether a text is a number and nothing else.
pub fn is_number(text: &str) -> bool {
    !text.trim().is_empty() && text.split_whitespace().all(|word| digits_of(word) == word)
}

/// What a word has of a number, from its beginning.
fn digits_of(word: &str) -> &str {
    let is_number = |c: char| c.is_ascii_digit() || matches!(c, '.' | ',' | '/' | '-' | '−');
    let end = word.find(|c| !is_number(c)).unwrap_or(word.len());
    match word[..end].contains(|c: char| c.is_ascii_digit()) {
        true => &word[..end],
        false => "",
    }
}

/// A decimal number, or a fraction. What may be a thousands mark is none of it: `5,280 ft`.
fn value_of(digits: &str) -> Option<f64> {
    let is_thousands = |text: &str| {
        let after = text.split_once(',').map(|(_, after)| after);
        after.is_some_and(|after| after.len() == 3)
    };
    let decimal = |text: &str| match is_thousands(text) {
        true => None,
        false => text.replace(',', ".").replace('−', "-").parse::<f64>().ok(),
    };
    match digits.split_once('/') {
        Some((above, below)) => Some(decimal(above)? / decimal(below).filter(|&by| by > 0.0)?),
        None => decimal(digits),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    // NIST SP 811 (2008), appendix B.8: the inch 2.54 cm, the foot 0.3048 m, the square foot
    // 0.09290304 m², the pound 0.45359237 kg, the ounce 28.34952 g.
    #[test]
    fn what_people_write_is_converted() {
        let near = |text: &str, kind: Kind, value: f64| {
            let found = parse(text, kind).unwrap_or_else(|| panic!("{text}"));
            assert!(
                (found - value).abs() < 1e-6 * value.abs(),
                "{text}: {found}"
            );
        };
        near("16.2 lb", Kind::Mass, 7.348_196_4);
        near("16.2lbs", Kind::Mass, 7.348_196_4);
        near("16 lb 3 oz", Kind::Mass, 7.342_527);
        near("16 1/2 pounds", Kind::Mass, 7.484_274);
        near("7,35 kg", Kind::Mass, 7.35);
        near("950 g", Kind::Mass, 0.95);
        near("40 in", Kind::Length, 1.016);
        near("3'4\"", Kind::Length, 1.016);
        near("3 ft 4 in", Kind::Length, 1.016);
        near("5280 ft", Kind::Length, 1609.344);
        near("10.3 ft2", Kind::Area, 0.956_901_3);
        near("10.3 sq ft", Kind::Area, 0.956_901_3);
        near("10.3 square feet", Kind::Area, 0.956_901_3);
        near("1483 in²", Kind::Area, 0.956_772_3);
        near("9 °F", Kind::Difference, 5.0);
        near("77 °F", Kind::Temperature, 25.0);
        near("-40 ft", Kind::Length, -12.192);
        near("-5 ft 6 in", Kind::Length, -1.6764);
    }

    #[test]
    fn what_is_no_such_value_is_none() {
        for (text, kind) in [
            ("", Kind::Mass),
            ("16.2", Kind::Mass),
            ("lb", Kind::Mass),
            ("16.2 ft", Kind::Mass),
            ("16.2 stones", Kind::Mass),
            ("1/0 lb", Kind::Mass),
            ("1.2.3 lb", Kind::Mass),
            ("5 lb 3", Kind::Mass),
            ("5,280 ft", Kind::Length),
            ("5 280 ft", Kind::Length),
            ("8 lb 3 kg", Kind::Mass),
            ("8 lb 3 lb", Kind::Mass),
        ] {
            assert_eq!(parse(text, kind), None, "{text}");
        }
    }
}
