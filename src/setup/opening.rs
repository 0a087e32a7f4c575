//! The opening of a cooker that the sun shines into, as people say it.

use crate::believable::INTERCEPT_AREA_M2;
use crate::campaign::aperture::Shape;
use crate::campaign::measured::{is_number, parse};
use crate::measure::{Kind, Unit};
use crate::units::short;

/// What was said of the opening: a shape with its lengths, or an area. Each text is a number
/// with its unit.
#[derive(Debug, Clone, PartialEq)]
pub enum Opening {
    Area(String),
    Circle { diameter: String },
    Rectangle { width: String, height: String },
    RegularPolygon { sides: u32, across_corners: String },
}

/// Names of polygons, with their sides.
const POLYGONS: [(&str, u32); 5] = [
    ("hexagon", 6),
    ("octagon", 8),
    ("decagon", 10),
    ("dodecagon", 12),
    ("square", 4),
];

/// Words that say that a length is the diameter of a circle.
const ROUND: [&str; 6] = ["circle", "round", "diameter", "dia", "across", "dish"];

impl Opening {
    /// Reads what was said: `36 x 24 in`, `circle 40 in`, `8 sides 38 in`, `10.3 ft2`. A number
    /// without a unit has one of those given.
    ///
    /// ```
    /// use simmerline::measure::{Kind, Unit};
    /// use simmerline::setup::opening::Opening;
    /// let (ft2, inches) = (Unit::base(Kind::Area), Unit::base(Kind::Length));
    /// let opening = Opening::parse("0.9 x 0.6", ft2, inches).unwrap();
    /// assert_eq!(opening.area_m2(), Some(0.54));
    /// ```
    ///
    /// # Errors
    /// What was found and expected, in words.
    pub fn parse(text: &str, area: Unit, length: Unit) -> Result<Opening, String> {
        let lower = text.trim().to_lowercase();
        let opening = shaped(&lower, length).or_else(|| {
            let said = with_unit(&lower, area, Kind::Area)?;
            Some(Opening::Area(said))
        });
        let opening = opening.ok_or_else(|| {
            let text = text.trim();
            format!("found \"{text}\", expected {}", examples(length))
        })?;
        let (least, most) = (INTERCEPT_AREA_M2.start(), INTERCEPT_AREA_M2.end());
        let text = text.trim();
        match opening.area_m2() {
            Some(area_m2) if INTERCEPT_AREA_M2.contains(&area_m2) => Ok(opening),
            Some(area_m2) => Err(format!(
                "found \"{text}\", an area of {} m², expected {least} to {most} m²",
                short(area_m2)
            )),
            None => Err(format!("found \"{text}\", expected sizes of more than 0")),
        }
    }

    /// Its area, m²; `None` where a size is not more than zero.
    pub fn area_m2(&self) -> Option<f64> {
        let length = |text: &str| parse(text, Kind::Length).filter(|&metres| metres > 0.0);
        let shape = match self {
            Opening::Area(text) => {
                return parse(text, Kind::Area).filter(|&area_m2| area_m2 > 0.0);
            }
            Opening::Circle { diameter } => Shape::Circle {
                diameter_m: length(diameter)?,
            },
            Opening::Rectangle { width, height } => Shape::Rectangle {
                width_m: length(width)?,
                height_m: length(height)?,
            },
            Opening::RegularPolygon {
                sides,
                across_corners,
            } => Shape::RegularPolygon {
                sides: *sides,
                across_corners_m: length(across_corners)?,
            },
        };
        Some(shape.area_m2())
    }
}

/// How an opening is written, in numbers that fit a unit.
pub fn examples(length: Unit) -> &'static str {
    match length.symbol() {
        "in" => {
            "a size such as 36 x 24 in, circle 40 in or 8 sides 38 in (across corners), or an area such as 10.3 ft²"
        }
        _ => {
            "a size such as 0.9 x 0.6 m, circle 1.1 m or 8 sides 0.95 m (across corners), or an area such as 0.96 m²"
        }
    }
}

/// A shape with its lengths.
fn shaped(text: &str, usual: Unit) -> Option<Opening> {
    for between in ["×", " by ", "x"] {
        if let Some((width, height)) = text.split_once(between) {
            // A unit behind the second is that of both.
            let end = height.rfind(|c: char| c.is_ascii_digit() || matches!(c, '\'' | '"'));
            let unit = end.map_or("", |end| height[end + 1..].trim());
            let unit = Unit::parse(unit, &[Kind::Length]).unwrap_or(usual);
            return Some(Opening::Rectangle {
                width: with_unit(width, unit, Kind::Length)?,
                height: with_unit(height, unit, Kind::Length)?,
            });
        }
    }
    let words: Vec<&str> = text.split_whitespace().collect();
    let without = |left_out: &[&str]| {
        let kept = words.iter().filter(|word| !left_out.contains(word));
        kept.copied().collect::<Vec<_>>().join(" ")
    };
    if let Some((name, sides)) = POLYGONS.iter().find(|(name, _)| words.contains(name)) {
        let across = without(&[name, "across", "corners", "of"]);
        if *sides == 4 {
            // People give the side of a square.
            let side = with_unit(&across, usual, Kind::Length)?;
            return Some(Opening::Rectangle {
                width: side.clone(),
                height: side,
            });
        }
        return Some(Opening::RegularPolygon {
            sides: *sides,
            across_corners: with_unit(&across, usual, Kind::Length)?,
        });
    }
    if let [sides, "sides", ..] = words[..] {
        let across = without(&[sides, "sides", "across", "corners", "of"]);
        return Some(Opening::RegularPolygon {
            sides: sides
                .parse()
                .ok()
                .filter(|sides| (3..=64).contains(sides))?,
            across_corners: with_unit(&across, usual, Kind::Length)?,
        });
    }
    if ROUND.iter().any(|word| words.contains(word)) || with_unit_of(text, Kind::Length) {
        let diameter = without(&ROUND);
        return Some(Opening::Circle {
            diameter: with_unit(&diameter, usual, Kind::Length)?,
        });
    }
    None
}

/// Whether a text is a quantity of a kind with its unit.
fn with_unit_of(text: &str, kind: Kind) -> bool {
    parse(text, kind).is_some()
}

/// A quantity with its unit, which is the usual one where none is written.
pub fn with_unit(text: &str, usual: Unit, kind: Kind) -> Option<String> {
    let text = text.trim();
    let said = match is_number(text) {
        true => format!("{text} {}", usual.symbol()),
        false => text.to_owned(),
    };
    parse(&said, kind).map(|_| said)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn in_us(text: &str) -> Result<Opening, String> {
        let unit = |symbol: &str, kind: Kind| Unit::parse(symbol, &[kind]).unwrap();
        Opening::parse(text, unit("ft2", Kind::Area), unit("in", Kind::Length))
    }

    #[test]
    fn what_people_say_of_an_opening_has_its_area() {
        // By hand: 36 in × 24 in = 6 ft²; π (20 in)² = 8.7266 ft²; (8/2) (19 in)² sin 45° =
        // 1021.06 in²; 1 ft² = 0.09290304 m² (NIST SP 811, appendix B.8).
        for (text, area_m2) in [
            ("36 x 24 in", 0.557_418_24),
            ("36x24", 0.557_418_24),
            ("3 ft x 2 ft", 0.557_418_24),
            ("3' by 24\"", 0.557_418_24),
            ("0.9144 m × 0.6096 m", 0.557_418_24),
            ("circle 40 in", 0.810_731_9),
            ("40 in across", 0.810_731_9),
            ("40 inches", 0.810_731_9),
            ("round 1.016 m", 0.810_731_9),
            ("8 sides 38 in", 0.658_749),
            ("octagon 38 in across corners", 0.658_749),
            ("square 24 in", 0.371_612_16),
            ("6 ft2", 0.557_418_24),
            ("6", 0.557_418_24),
            ("6 sq ft", 0.557_418_24),
        ] {
            let opening = in_us(text).unwrap_or_else(|error| panic!("{text}: {error}"));
            let found = opening.area_m2().unwrap();
            assert!(
                (found - area_m2).abs() < 1e-5,
                "{text}: {opening:?} {found}"
            );
        }
    }

    #[test]
    fn what_is_no_opening_is_told() {
        for text in [
            "",
            "large",
            "36 x",
            "circle",
            "2 sides 38 in",
            "0 x 24 in",
            "7 kg",
        ] {
            assert!(in_us(text).is_err(), "{text}");
        }
    }
}
