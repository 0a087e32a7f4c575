//! What a column's header means, and in which unit.

use std::collections::BTreeMap;

use super::fold::fold;
use super::header_text::{
    Bracket, apart, bracketed, judge_bracket, suffixes, without_clock_label, without_last_filler,
};
use super::synonyms::{Meaning, TABLE};
use super::time_header::clock_unit_of;
use crate::bounds::HEADER;
use crate::measure::{Kind, Unit};

/// Longest header, bytes: a character has four at most.
const LONGEST_BYTES: usize = 4 * HEADER.count();

/// Most words of a name; the longest known one has a quarter of that.
const MOST_WORDS: usize = 40;

/// What a name means.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Recognised {
    /// One thing; the name without numbers and filler tells sensors of one kind.
    As { meaning: Meaning, base: String },
    /// One of these, which must not be guessed.
    OneOf(Vec<Meaning>),
    /// Something that is not needed.
    Other,
    /// Nothing that is known.
    Unknown,
}

/// A header taken apart.
#[derive(Debug, Clone, PartialEq)]
pub struct HeaderName {
    pub recognised: Recognised,
    pub unit: Option<Unit>,
    /// Text where a unit is expected that is none.
    pub not_a_unit: Option<String>,
}

/// Takes a header apart: name and unit, of which either may be missing. What is longer than
/// a header is none.
pub fn read_header(header: &str) -> HeaderName {
    if header.len() > LONGEST_BYTES {
        return HeaderName {
            recognised: Recognised::Unknown,
            unit: None,
            not_a_unit: None,
        };
    }
    let header = &apart(&without_clock_label(header));
    let found = |recognised, unit| HeaderName {
        recognised,
        unit,
        not_a_unit: None,
    };
    let brackets = bracketed(header);
    for (name, inside) in &brackets {
        if let Some((recognised, unit)) = with_unit(name, inside) {
            return found(recognised, Some(unit));
        }
        // "Temp °C (water)"
        let turned = format!("{inside} {name}");
        let mut cuts = suffixes(&turned);
        if let Some((recognised, unit)) = cuts.find_map(|(name, unit)| with_unit(name, unit)) {
            return found(recognised, Some(unit));
        }
    }
    let whole = recognise(header, false);
    if whole != Recognised::Unknown {
        let unit = match &whole {
            Recognised::As {
                meaning: Meaning::Elapsed,
                ..
            } => unit_among_words(header),
            _ => None,
        };
        // A bracket that adds nothing to the name is a label, or no unit.
        let mut idle = brackets
            .iter()
            .filter(|(name, _)| recognise(name, true) == whole);
        return match idle.next() {
            Some((_, inside)) => HeaderName {
                unit,
                ..with_bracket(whole, inside)
            },
            None => found(whole, unit),
        };
    }
    let bare = without_last_filler(header);
    let first = header.split_once(' ').map(|(unit, name)| (name, unit));
    let mut cuts = suffixes(header).chain(suffixes(bare)).chain(first);
    if let Some((recognised, unit)) = cuts.find_map(|(name, unit)| with_unit(name, unit)) {
        return found(recognised, Some(unit));
    }
    for (name, inside) in brackets {
        let recognised = recognise(&name, true);
        if recognised == Recognised::Unknown {
            continue;
        }
        return with_bracket(recognised, &inside);
    }
    found(recognise(header, true), None)
}

/// Takes the headers of a log apart. "Pot_C" beside "Pot_A" is a pot, not a unit.
pub fn read_headers(headers: &[String]) -> Vec<HeaderName> {
    let before_letter = |header: &str| {
        let (name, letter) = header.rsplit_once(['_', '-'])?;
        (letter.len() == 1).then(|| name.to_lowercase())
    };
    // By what stands before the letter: how many there are, and whether all may be units.
    let mut twins: BTreeMap<String, (usize, bool)> = BTreeMap::new();
    for header in headers {
        if let Some(name) = before_letter(header) {
            let (count, are_units) = twins.entry(name).or_insert((0, true));
            *count += 1;
            *are_units &= header.to_lowercase().ends_with(['c', 'f', 'k']);
        }
    }
    let read = |header: &String| match before_letter(header) {
        Some(name) if matches!(twins[&name], (2.., false)) => HeaderName {
            recognised: recognise(&name, true),
            unit: None,
            not_a_unit: None,
        },
        _ => read_header(header),
    };
    headers.iter().map(read).collect()
}

/// A name with what stands in brackets behind it, which is no unit of its quantity.
fn with_bracket(recognised: Recognised, inside: &str) -> HeaderName {
    let is_time = |meaning: &Meaning| meaning.kinds() == [Kind::Time];
    let is_sensor = matches!(&recognised, Recognised::As { meaning, .. } if !is_time(meaning));
    let (recognised, not_a_unit) = match judge_bracket(inside) {
        _ if is_direction(&recognised, inside) => (Recognised::Other, None),
        Bracket::NoUnit(text) if is_sensor => (recognised, Some(text)),
        Bracket::OtherThing if is_sensor => (Recognised::Other, None),
        _ => (recognised, None),
    };
    HeaderName {
        recognised,
        // "Elapsed time [h:min]"
        unit: clock_unit_of(inside).filter(|_| !is_sensor),
        not_a_unit,
    }
}

/// Degrees behind the wind are where it comes from.
fn is_direction(recognised: &Recognised, unit: &str) -> bool {
    let is_wind = matches!(
        recognised,
        Recognised::As {
            meaning: Meaning::Wind,
            ..
        }
    );
    is_wind
        && matches!(
            fold(unit).trim(),
            "°" | "deg" | "degrees" | "grad" | "grados" | "graus" | "degres"
        )
}

/// The unit in a header whose quantity is known already.
pub fn unit_of(header: &str, kinds: &[Kind]) -> Option<Unit> {
    let in_brackets = bracketed(header).into_iter().map(|(_, inside)| inside);
    let at_end = suffixes(header).map(|(_, suffix)| suffix.to_owned());
    in_brackets
        .chain(at_end)
        .find_map(|text| Unit::parse(&text, kinds))
}

/// Name and unit, where the unit fits what the name means.
fn with_unit(name: &str, unit: &str) -> Option<(Recognised, Unit)> {
    let recognised = match recognise(name, false) {
        Recognised::Unknown => recognise(name, true),
        known => known,
    };
    match recognised {
        Recognised::As { meaning, .. } => Some((recognised, Unit::parse(unit, meaning.kinds())?)),
        Recognised::OneOf(meanings) => {
            let fits = |meaning: &Meaning| Unit::parse(unit, meaning.kinds()).is_some();
            let left: Vec<Meaning> = meanings.into_iter().filter(fits).collect();
            let unit = Unit::parse(unit, left.first()?.kinds())?;
            match left.as_slice() {
                // "t (s)" is no temperature.
                [Meaning::Elapsed] => {
                    let (meaning, base) = (Meaning::Elapsed, String::new());
                    Some((Recognised::As { meaning, base }, unit))
                }
                _ => Some((Recognised::OneOf(left), unit)),
            }
        }
        Recognised::Other | Recognised::Unknown => None,
    }
}

fn unit_among_words(header: &str) -> Option<Unit> {
    if header.contains(':') {
        return clock_unit_of(header);
    }
    let folded = fold(header);
    let mut words = folded.split(|c: char| !c.is_alphanumeric());
    words.find_map(|word| Unit::parse(word, &[Kind::Time]))
}

/// What a name means. `with_letters`: a single letter a to d at its end may be a
/// channel's, as in "Pot A".
fn recognise(name: &str, with_letters: bool) -> Recognised {
    let folded = fold(name);
    let words: Vec<&str> = folded
        .split(|c: char| !c.is_alphanumeric())
        .filter(|word| !word.is_empty())
        .take(MOST_WORDS + 1)
        .collect();
    if words.len() > MOST_WORDS {
        return Recognised::Unknown;
    }
    let table = &*TABLE;
    let is_number = |word: &str| word.bytes().all(|b| b.is_ascii_digit());
    let keep = |words: &[&str]| -> Vec<String> {
        let kept = words
            .iter()
            .filter(|w| !is_number(w) && !table.filler.contains(**w));
        kept.map(|word| (*word).to_owned()).collect()
    };
    let bare: Vec<&str> = words
        .iter()
        .map(|word| {
            if is_number(word) {
                *word
            } else {
                word.trim_end_matches(|c: char| c.is_ascii_digit())
            }
        })
        .collect();
    let without_numbers: Vec<String> = bare
        .iter()
        .filter(|word| !is_number(word))
        .map(|word| (*word).to_owned())
        .collect();
    let mut tries = vec![
        words.iter().map(|w| (*w).to_owned()).collect(),
        keep(&words),
        keep(&bare),
    ];
    if with_letters {
        let last = bare
            .last()
            .is_some_and(|word| matches!(*word, "a" | "b" | "c" | "d"));
        if last && bare.len() > 1 {
            tries.push(keep(&bare[..bare.len() - 1]));
        }
    }
    tries.push(without_numbers);
    let is_of_heat = words
        .iter()
        .any(|word| word.starts_with("temper") || *word == "temp");
    for tried in &tries {
        let key = tried.join(" ");
        if let Some(&meaning) = table.names.get(&key) {
            if is_of_heat && matches!(meaning, Meaning::Irradiance | Meaning::Wind) {
                // The temperature of the pyranometer.
                return Recognised::Other;
            }
            return Recognised::As { meaning, base: key };
        }
        if let Some(meanings) = table.ambiguous.get(&key) {
            return Recognised::OneOf(meanings.clone());
        }
        if table.other.contains(&key) {
            return Recognised::Other;
        }
    }
    // Nothing but filler: "CH1 temp".
    if keep(&bare).is_empty()
        && let Some(meanings) = bare.iter().find_map(|word| table.ambiguous.get(*word))
    {
        return Recognised::OneOf(meanings.clone());
    }
    Recognised::Unknown
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::logs::time_header::{unknown_zone_of, zone_of};

    fn meaning(header: &str) -> Option<Meaning> {
        match read_header(header).recognised {
            Recognised::As { meaning, .. } => Some(meaning),
            _ => None,
        }
    }

    #[test]
    fn headers_in_five_languages_are_understood() {
        let cases = [
            ("Water temperature (°C)", Meaning::Water),
            ("water_c", Meaning::Water),
            ("T_amb [°C]", Meaning::Ambient),
            ("Temperatura del agua, °C", Meaning::Water),
            ("Température de l'eau (°C)", Meaning::Water),
            ("Wassertemperatur / °C", Meaning::Water),
            ("Lufttemperatur in °C", Meaning::Ambient),
            ("Temperatura ambiente [ºC]", Meaning::Ambient),
            ("irradiance_w_m2", Meaning::Irradiance),
            ("Einstrahlung (W/m²)", Meaning::Irradiance),
            ("Radiación solar W/m2", Meaning::Irradiance),
            ("wind_m_s", Meaning::Wind),
            ("Windgeschwindigkeit km/h", Meaning::Wind),
            ("Vitesse du vent (m/s)", Meaning::Wind),
            ("Velocidade do vento", Meaning::Wind),
            ("Date Time", Meaning::Time),
            ("Fecha y hora", Meaning::Time),
            ("time", Meaning::Clock),
            ("Elapsed time (s)", Meaning::Elapsed),
        ];
        for (header, expected) in cases {
            assert_eq!(meaning(header), Some(expected), "{header}");
        }
    }

    #[test]
    fn a_unit_is_cut_off_where_it_fits_the_name() {
        let unit = |header: &str| read_header(header).unit.map(Unit::symbol);
        assert_eq!(unit("Water (°F)"), Some("°F"));
        assert_eq!(unit("water_c"), Some("°C"));
        assert_eq!(unit("wind_m_s"), Some("m/s"));
        assert_eq!(unit("Solar radiation, W/m^2"), Some("W/m²"));
        assert_eq!(unit("Pyranometer (mV)"), Some("mV"));
        assert_eq!(unit("T_a"), None);
        assert_eq!(meaning("T_a"), Some(Meaning::Ambient));
        assert_eq!(unit("Elapsed (min)"), Some("min"));
        assert_eq!(unit("elapsed_s"), Some("s"));
        assert_eq!(unit("waterTempC"), Some("°C"));
        assert_eq!(unit("Water_C_Avg"), Some("°C"));
        assert_eq!(unit("°C Water"), Some("°C"));
        assert_eq!(unit("Temp °C (water)"), Some("°C"));
        assert_eq!(meaning("t (s)"), Some(Meaning::Elapsed));
        assert_eq!(meaning("Water in (°C)"), None);
        let not_a_unit = |header: &str| read_header(header).not_a_unit;
        assert_eq!(not_a_unit("Water (L)").as_deref(), Some("L"));
        assert_eq!(not_a_unit("Irradiance (lux)").as_deref(), Some("lux"));
        for header in [
            "Water (sensor 1)",
            "Water (ch 1)",
            "Water (5 kg)",
            "Water temp (TC1)",
            "Ambient (shade)",
            "Irradiance (tilted)",
            "Radiation (Pyranometer)",
            "Wind (2 m)",
            "Air temp (2 m)",
            "Water (black pot)",
            "Pyranometer (SN 1234)",
        ] {
            assert_eq!(not_a_unit(header), None, "{header}");
            assert!(meaning(header).is_some(), "{header}");
        }
        assert_eq!(unit("Elapsed time [h:min]"), Some("h"));
        assert_eq!(unit("Duration (mm:ss)"), Some("min"));
        assert_eq!(meaning("Time (24 h)"), Some(Meaning::Clock));
        assert_eq!(
            read_header("Wind (furlongs)").not_a_unit.as_deref(),
            Some("furlongs")
        );
        assert_eq!(zone_of("Time (UTC-05:00)"), Some(-18_000));
        assert_eq!(zone_of("utc_time"), Some(0));
        assert_eq!(zone_of("DateTimeUTC"), Some(0));
        assert_eq!(zone_of("Time (AEST)"), None);
        assert_eq!(unknown_zone_of("Time (AEST)").as_deref(), Some("AEST"));
        for header in [
            "TIME (MIN)",
            "Date (DMY)",
            "Time (HHMM)",
            "Time (RTC)",
            "Time (UTC)",
        ] {
            assert_eq!(unknown_zone_of(header), None, "{header}");
        }
    }

    #[test]
    fn a_header_that_could_be_two_things_is_not_guessed() {
        for header in [
            "Temperature",
            "Temperature 1 (°C)",
            "T2",
            "TC1",
            "Temp_2",
            "CH1 temp",
        ] {
            let found = read_header(header).recognised;
            assert!(matches!(found, Recognised::OneOf(_)), "{header}: {found:?}");
        }
        for header in ["Wind direction", "Wind (°)", "Humidity (%)", "Battery (V)"] {
            assert_eq!(
                read_header(header).recognised,
                Recognised::Other,
                "{header}"
            );
        }
    }
}
