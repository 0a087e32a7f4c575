//! Latitude and longitude as a phone or a map shows them.

/// Where something is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Place {
    /// Degrees, north positive.
    pub latitude_deg: f64,
    /// Degrees, east positive.
    pub longitude_deg: f64,
}

/// One of two coordinates, with the letter of its hemisphere, if it has one.
struct Coordinate {
    degrees: f64,
    hemisphere: Option<char>,
}

/// A part of what was written.
#[derive(Debug, Clone, Copy, PartialEq)]
enum Part {
    Number(f64, bool),
    Hemisphere(char),
    /// What stands between two coordinates.
    Break,
}

/// Degrees, or degrees and minutes, or those and seconds.
const MOST_NUMBERS: usize = 3;

/// Latitude and longitude from a text such as `35.0844, -106.6504`, `35.0844° N 106.6504° W`,
/// `35°05'04"N 106°39'01"W` or `N 35 5.07 W 106 39.02`.
///
/// ```
/// use simmerline::setup::place::parse_place;
/// let place = parse_place("35°30'00\"S 106°15'W").unwrap();
/// assert_eq!((place.latitude_deg, place.longitude_deg), (-35.5, -106.25));
/// ```
///
/// # Errors
/// What was found and expected, in words.
pub fn parse_place(text: &str) -> Result<Place, String> {
    let parts = parts_of(text)?;
    let [first, second] = halves(&parts)?;
    let (latitude, longitude) = match (first.hemisphere, second.hemisphere) {
        (Some('E' | 'W'), Some('N' | 'S') | None) | (None, Some('N' | 'S')) => (second, first),
        _ => (first, second),
    };
    for (coordinate, wrong) in [(&latitude, ['E', 'W']), (&longitude, ['N', 'S'])] {
        if coordinate.hemisphere.is_some_and(|of| wrong.contains(&of)) {
            return Err("found one direction twice, expected N or S and E or W".to_owned());
        }
    }
    let place = Place {
        latitude_deg: latitude.degrees,
        longitude_deg: longitude.degrees,
    };
    if place.latitude_deg.abs() > 90.0 {
        let exchanged = match place.longitude_deg.abs() <= 90.0 {
            true => "; are the two exchanged? The latitude comes first",
            false => "",
        };
        return Err(format!(
            "found a latitude of {}°, expected −90 to 90{exchanged}",
            place.latitude_deg
        ));
    }
    if place.longitude_deg.abs() > 180.0 {
        let found = place.longitude_deg;
        return Err(format!(
            "found a longitude of {found}°, expected −180 to 180"
        ));
    }
    Ok(place)
}

/// What a text consists of.
fn parts_of(text: &str) -> Result<Vec<Part>, String> {
    let is_in_number = |c: char| c.is_ascii_digit() || matches!(c, '.' | '-' | '−' | '+');
    let mut parts = Vec::new();
    let mut rest = decimal_points(text);
    while let Some(first) = rest.chars().next() {
        let length = match first {
            _ if is_in_number(first) => {
                let end = rest.find(|c| !is_in_number(c)).unwrap_or(rest.len());
                let digits = rest[..end].replace('−', "-");
                let value: f64 = digits
                    .parse()
                    .map_err(|_| format!("found \"{digits}\", expected a number"))?;
                parts.push(Part::Number(value.abs(), digits.starts_with('-')));
                end
            }
            ',' | ';' => {
                parts.push(Part::Break);
                1
            }
            _ if first.is_alphabetic() => {
                let end = rest
                    .find(|c: char| !c.is_alphabetic())
                    .unwrap_or(rest.len());
                parts.extend(hemisphere(&rest[..end])?.map(Part::Hemisphere));
                end
            }
            // Signs of degrees, minutes and seconds, and whatever stands between.
            _ => first.len_utf8(),
        };
        rest = rest.split_off(length);
    }
    Ok(parts)
}

/// A comma between digits is a decimal mark where a point is nowhere, and the coordinates are
/// parted otherwise.
fn decimal_points(text: &str) -> String {
    let is_marked = text.contains(';') || text.matches(',').count() == 2;
    match is_marked && !text.contains('.') {
        false => text.to_owned(),
        true => text.replace(',', "."),
    }
}

/// The letter of a hemisphere; `None` for a word that only says what a number is.
fn hemisphere(word: &str) -> Result<Option<char>, String> {
    let upper = word.to_uppercase();
    match upper.as_str() {
        "N" | "NORTH" => Ok(Some('N')),
        "S" | "SOUTH" => Ok(Some('S')),
        "E" | "EAST" => Ok(Some('E')),
        "W" | "WEST" => Ok(Some('W')),
        "O" => Err(
            "found O, which is west in some languages and east in others, expected E or W"
                .to_owned(),
        ),
        "D" | "DEG" | "DEGREES" | "M" | "MIN" | "MINUTES" | "SEC" | "SECONDS" | "LAT"
        | "LATITUDE" | "LON" | "LONG" | "LONGITUDE" | "LNG" | "AND" => Ok(None),
        _ => Err(format!(
            "found \"{word}\", expected numbers and N, S, E or W"
        )),
    }
}

/// The two coordinates of the parts.
fn halves(parts: &[Part]) -> Result<[Coordinate; 2], String> {
    const EXPECTED: &str =
        "expected latitude and longitude, as in 35.0844, -106.6504 or 35°05'04\"N 106°39'01\"W";
    let numbers = parts
        .iter()
        .filter(|part| matches!(part, Part::Number(..)))
        .count();
    let found = || match numbers {
        1 => format!("found one number, {EXPECTED}"),
        _ => format!("found {numbers} numbers, {EXPECTED}"),
    };
    if !(2..=2 * MOST_NUMBERS).contains(&numbers) {
        return Err(found());
    }
    let is_letter = |part: &&Part| matches!(part, Part::Hemisphere(_));
    let letters = parts.iter().filter(is_letter).count();
    let breaks: Vec<usize> = (0..parts.len())
        .filter(|&at| parts[at] == Part::Break)
        .collect();
    let at = if let [only] = breaks[..] {
        only
    } else if letters == 2 && matches!(parts.first(), Some(Part::Hemisphere(_))) {
        // Each letter stands before its numbers.
        let second = parts[1..].iter().position(|part| is_letter(&part));
        second.map_or(0, |at| at + 1)
    } else if letters > 0 {
        let first = parts.iter().position(|part| is_letter(&part));
        first.map_or(0, |at| at + 1)
    } else if numbers % 2 == 0 {
        numbers / 2
    } else {
        return Err(found());
    };
    let (first, second) = parts.split_at(at);
    Ok([
        coordinate(first).ok_or_else(found)?,
        coordinate(second).ok_or_else(found)?,
    ])
}

/// One coordinate of its parts.
fn coordinate(parts: &[Part]) -> Option<Coordinate> {
    let mut hemisphere = None;
    let mut numbers = Vec::new();
    for part in parts {
        match part {
            Part::Hemisphere(letter) if hemisphere.is_none() => hemisphere = Some(*letter),
            Part::Hemisphere(_) => return None,
            Part::Number(value, is_negative) => numbers.push((*value, *is_negative)),
            Part::Break => {}
        }
    }
    let (&(whole, is_negative), finer) = numbers.split_first()?;
    let is_finer = |(value, is_negative): &(f64, bool)| *value < 60.0 && !is_negative;
    if finer.len() >= MOST_NUMBERS || !finer.iter().all(is_finer) {
        return None;
    }
    let mut degrees = whole;
    let mut per = 60.0;
    for (value, _) in finer {
        degrees += value / per;
        per *= 60.0;
    }
    let is_south_or_west = matches!(hemisphere, Some('S' | 'W'));
    Some(Coordinate {
        degrees: if is_negative || is_south_or_west {
            -degrees
        } else {
            degrees
        },
        hemisphere,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn one_place_is_read_however_it_is_written() {
        for text in [
            "35.0844, -106.6504",
            "35.0844 -106.6504",
            "35.0844° N, 106.6504° W",
            "35.0844N 106.6504W",
            "N 35.0844 W 106.6504",
            "106.6504 W, 35.0844 N",
            "lat 35.0844 long -106.6504",
            "35,0844; -106,6504",
            "35°05'03.84\"N 106°39'01.44\"W",
            "35° 5.064′ N 106° 39.024′ W",
            "35 05 03.84 N, 106 39 01.44 W",
            "N35 5.064 W106 39.024",
            "35 deg 5 min 3.84 sec north, 106 deg 39 min 1.44 sec west",
            "−35.0844 S, −106.6504",
        ] {
            let place = parse_place(text).unwrap_or_else(|error| panic!("{text}: {error}"));
            let is_south = text.contains('S') && text.contains('−');
            let latitude_deg = if is_south { -35.0844 } else { 35.0844 };
            assert!(
                (place.latitude_deg - latitude_deg).abs() < 1e-9,
                "{text}: {place:?}"
            );
            assert!(
                (place.longitude_deg + 106.6504).abs() < 1e-9,
                "{text}: {place:?}"
            );
        }
    }

    #[test]
    fn what_is_no_place_is_told() {
        for (text, said) in [
            ("", "found 0 numbers"),
            ("35.08", "found one number"),
            ("106.65, 35.08", "exchanged"),
            ("35.08 N, 206.65 W", "longitude"),
            ("35.08 N, 106.65 N", "twice"),
            ("35.08 N, 106.65 O", "east in others"),
            ("35 75 N, 106 W", "found 3 numbers"),
            ("1 2 3 4 5 6 7", "found 7 numbers"),
            ("here, there", "\"here\""),
            ("3.5.0, 10", "\"3.5.0\""),
        ] {
            let error = parse_place(text).unwrap_err();
            assert!(error.contains(said), "{text}: {error}");
        }
    }
}
