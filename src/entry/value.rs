//! One value as a person types it: a number with its digits, a temperature in a unit.

use crate::believable::Range;
use crate::measure::{Kind, Unit};
use crate::units::fixed;

/// Longest number, characters.
const LONGEST_NUMBER: usize = 10;
/// What stands for a value that was not read.
const NOT_READ: [&str; 3] = ["-", "–", "—"];

/// Why a line is not taken, and what to type instead.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Refusal {
    /// What was found and what was expected; lower case, no full stop.
    pub what: String,
    pub hint: String,
}

impl Refusal {
    pub fn new(what: impl Into<String>, hint: impl Into<String>) -> Self {
        Refusal {
            what: what.into(),
            hint: hint.into(),
        }
    }
}

/// A number with the digits that were written: they show the instrument's step.
#[derive(Debug, Clone, PartialEq)]
pub struct Number {
    /// With a decimal point.
    pub text: String,
    pub value: f64,
}

/// Whether a value was left out, or a dash stands for it.
pub fn is_not_read(text: &str) -> bool {
    text.is_empty() || NOT_READ.contains(&text)
}

/// Digits with at most one decimal point or comma, and a sign.
pub fn number(text: &str) -> Option<Number> {
    let text = text.replace('−', "-").replace(',', ".");
    let digits = text.strip_prefix('-').unwrap_or(&text);
    let is_number = digits.starts_with(|c: char| c.is_ascii_digit())
        && digits.ends_with(|c: char| c.is_ascii_digit())
        && digits.bytes().all(|b| b.is_ascii_digit() || b == b'.')
        && digits.matches('.').count() <= 1
        && text.len() <= LONGEST_NUMBER;
    let value = text.parse().ok().filter(|_| is_number)?;
    Some(Number { text, value })
}

/// A temperature to show how one is typed, °C.
const EXAMPLE_C: f64 = 31.5;

/// A temperature of an example in a unit, as a thermometer in it shows one.
pub fn example_of(unit: Unit, celsius: f64) -> String {
    match unit.symbol() {
        "°C" => format!("{celsius}"),
        _ => fixed(unit.of_base(celsius), 0),
    }
}

/// A temperature in a unit, which may stand behind it, within a range in °C; `None` where it was
/// not read.
///
/// # Errors
/// A [`Refusal`] if it is none in that unit, or beyond the range.
pub fn temperature(
    what: &str,
    unit: Unit,
    believed_c: &Range,
    text: &str,
) -> Result<Option<Number>, Refusal> {
    if is_not_read(text) {
        return Ok(None);
    }
    let symbol = unit.symbol();
    let end = text
        .rfind(|c: char| c.is_ascii_digit())
        .map_or(0, |at| at + 1);
    let (digits, behind) = text.split_at(end);
    let written = Unit::parse(behind, &[Kind::Temperature]).filter(|_| !behind.is_empty());
    let found = number(digits).filter(|_| behind.is_empty() || written.is_some());
    let Some(found) = found else {
        return Err(Refusal::new(
            format!("found \"{text}\", expected the {what} temperature in {symbol}"),
            format!(
                "type a number such as {}, or - if it was not read",
                example_of(unit, EXAMPLE_C)
            ),
        ));
    };
    let other_unit = |other: Unit| {
        let key = if what == "air" { "ambient" } else { what };
        format!(
            "convert it; write the unit behind each number in a file of notes; or write {key}_temperature = \"{}\" under [units] in campaign.toml before anything is typed",
            other.symbol()
        )
    };
    if let Some(other) = written.filter(|other| *other != unit) {
        return Err(Refusal::new(
            format!("found {text}, expected the {what} temperature in {symbol}"),
            other_unit(other),
        ));
    }
    let is_possible = |celsius: f64| believed_c.contains(&celsius);
    let celsius = unit.to_base(found.value);
    if is_possible(celsius) {
        return Ok(Some(found));
    }
    let converted = match symbol {
        "°C" => String::new(),
        _ => format!(" ({} °C)", fixed(celsius, 1)),
    };
    let [lowest, highest] = [believed_c.start(), believed_c.end()].map(|end| unit.of_base(*end));
    let refusal = format!(
        "found {what} of {} {symbol}{converted}, expected {} to {} {symbol}",
        found.text,
        fixed(lowest, 0),
        fixed(highest, 1)
    );
    let hint = Unit::parse("°F", &[Kind::Temperature])
        .filter(|fahrenheit| unit != *fahrenheit && is_possible(fahrenheit.to_base(found.value)))
        .map(|fahrenheit| {
            let celsius = fixed(fahrenheit.to_base(found.value), 1);
            format!(
                "was it read in °F? {} °F are {celsius} °C: {}",
                found.text,
                other_unit(fahrenheit)
            )
        });
    let plain = || "type the line again with what the thermometer showed".to_owned();
    Err(Refusal::new(refusal, hint.unwrap_or_else(plain)))
}
