//! What a column's header means, and in which unit.

use unicode_normalization::UnicodeNormalization;
use unicode_normalization::char::is_combining_mark;

use super::synonyms::{Meaning, TABLE};
use super::times::time_of_day::{find_zone, read_zone};
use crate::measure::{Kind, Unit};

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

/// Lower case without accents; ß as ss.
pub fn fold(text: &str) -> String {
    if text.is_ascii() {
        return text.to_ascii_lowercase();
    }
    let lower = text.to_lowercase().replace('ß', "ss");
    lower.nfd().filter(|c| !is_combining_mark(*c)).collect()
}

/// Takes a header apart: name and unit, of which either may be missing.
pub fn read_header(header: &str) -> HeaderName {
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
    let names: Vec<Option<String>> = headers.iter().map(|header| before_letter(header)).collect();
    let read = |(index, header): (usize, &String)| {
        let twins = names
            .iter()
            .filter(|name| name.is_some() && **name == names[index])
            .count();
        let are_units = headers.iter().zip(&names).all(|(header, name)| {
            *name != names[index] || header.to_lowercase().ends_with(['c', 'f', 'k'])
        });
        match &names[index] {
            Some(name) if twins > 1 && !are_units => HeaderName {
                recognised: recognise(name, true),
                unit: None,
                not_a_unit: None,
            },
            _ => read_header(header),
        }
    };
    headers.iter().enumerate().map(read).collect()
}

/// What stands in brackets behind a name.
enum Bracket {
    /// Something that looks like a unit and is none of the quantity's.
    NoUnit(String),
    /// Another thing than the name: its gusts, its lid.
    OtherThing,
    /// Which one, or where it is.
    Label,
}

/// Units of what is no reading of a cooker test.
const FOREIGN_UNITS: [&str; 46] = [
    "furlong", "furlongs", "l", "litre", "litres", "liter", "liters", "kg", "g", "lb", "bar",
    "mbar", "hpa", "kpa", "psi", "lux", "lx", "klux", "ppm", "hz", "w", "kw", "wh", "kwh", "j",
    "mj", "m", "cm", "mm", "km", "ft", "pa", "ohm", "db", "beaufort", "bft", "bf", "pulse",
    "pulses", "counts", "index", "level", "raw", "adc", "state", "rpm",
];

/// Words for another thing than the quantity they stand behind.
const OTHER_THINGS: [&str; 22] = [
    "lid",
    "plate",
    "absorber",
    "glass",
    "wall",
    "direct",
    "diffuse",
    "beam",
    "max",
    "maximum",
    "min",
    "minimum",
    "gust",
    "gusts",
    "boe",
    "boen",
    "bo",
    "direction",
    "std",
    "sd",
    "inlet",
    "outlet",
];

fn judge_bracket(inside: &str) -> Bracket {
    let folded = fold(inside);
    let folded = folded.trim();
    let looks_like_a_unit = folded.contains(['/', '°', '²', '^', '%'])
        || FOREIGN_UNITS.contains(&folded)
        || Unit::parse(folded, &Kind::ALL).is_some();
    let mut words = folded.split(|c: char| !c.is_alphanumeric());
    if looks_like_a_unit {
        Bracket::NoUnit(inside.to_owned())
    } else if words.any(|word| OTHER_THINGS.contains(&word)) {
        Bracket::OtherThing
    } else {
        Bracket::Label
    }
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

/// A header without "(24 h)", which says how the clock is read.
fn without_clock_label(header: &str) -> String {
    let is_label = |inside: &str| {
        let letters: String = inside.to_lowercase().split_whitespace().collect();
        matches!(letters.as_str(), "24h" | "12h" | "24hr" | "12hr")
    };
    match bracketed(header)
        .into_iter()
        .find(|(_, inside)| is_label(inside))
    {
        Some((around, _)) => around.trim().to_owned(),
        None => header.to_owned(),
    }
}

/// The unit before the colon in a header such as "(mm:ss)" or "[h:min]".
pub fn clock_unit_of(text: &str) -> Option<Unit> {
    let inside = bracketed(text).into_iter().map(|(_, inside)| inside);
    let mut patterns = inside.chain(std::iter::once(text.to_owned()));
    let pattern = patterns.find(|text| {
        let letters = |c: char| c.is_alphabetic() || c == ':' || c == ' ';
        text.contains(':') && text.chars().all(letters)
    })?;
    let symbol = match fold(&pattern).trim().chars().next()? {
        'h' | 's' => "h", // "hh:mm", "stunden:minuten"
        'm' => "min",
        _ => return None,
    };
    Unit::parse(symbol, &[Kind::Time])
}

/// A header with the words of camel case apart.
fn apart(header: &str) -> String {
    let header = header.replace(
        ['ª', 'º'],
        if header.contains("ºC") || header.contains("ºF") {
            "°"
        } else {
            " "
        },
    );
    if header.contains([' ', '_']) {
        return header;
    }
    let mut words = String::new();
    let mut last = ' ';
    for character in header.chars() {
        if last.is_lowercase() && character.is_uppercase() {
            words.push('_');
        }
        words.push(character);
        last = character;
    }
    words
}

/// A header without filler words at its end: "Water_C_Avg".
fn without_last_filler(header: &str) -> &str {
    match header.rfind(['_', ' ']) {
        Some(at) if TABLE.filler.contains(&fold(&header[at + 1..])) => &header[..at],
        _ => header,
    }
}

/// The unit in a header whose quantity is known already.
pub fn unit_of(header: &str, kinds: &[Kind]) -> Option<Unit> {
    let in_brackets = bracketed(header).into_iter().map(|(_, inside)| inside);
    let at_end = suffixes(header).map(|(_, suffix)| suffix.to_owned());
    in_brackets
        .chain(at_end)
        .find_map(|text| Unit::parse(&text, kinds))
}

/// The offset from UTC that the header of a time column states, s.
pub fn zone_of(header: &str) -> Option<i32> {
    let header = &apart(header);
    let in_brackets = bracketed(header).into_iter().map(|(_, inside)| inside);
    let at_end = suffixes(header).map(|(_, suffix)| suffix.to_owned());
    in_brackets
        .chain(at_end)
        .find_map(|text| read_zone(&text))
        .or_else(|| find_zone(header))
}

/// What a time column's header says of its zone, where that is not understood: "AEST",
/// "standard time".
pub fn unknown_zone_of(header: &str) -> Option<String> {
    const WORDS: [&str; 14] = [
        "standard",
        "daylight",
        "summer",
        "winter",
        "dst",
        "sommerzeit",
        "winterzeit",
        "verano",
        "invierno",
        "ete",
        "hiver",
        "verao",
        "inverno",
        "eastern",
    ];
    const ZONES: [&str; 44] = [
        "EST", "EDT", "CST", "CDT", "MST", "MDT", "PST", "PDT", "AEST", "AEDT", "ACST", "ACDT",
        "AWST", "NZST", "NZDT", "CET", "CEST", "MEZ", "MESZ", "WET", "WEST", "EET", "EEST", "BST",
        "IST", "SAST", "CAT", "EAT", "WAT", "PKT", "JST", "KST", "HKT", "SGT", "BRT", "ART", "CLT",
        "PET", "COT", "VET", "AST", "NPT", "MSK", "OEZ",
    ];
    let is_zone = |inside: &String| {
        let is_letters = ZONES.contains(&inside.trim());
        let folded = fold(inside);
        is_letters || folded.split_whitespace().any(|word| WORDS.contains(&word))
    };
    if zone_of(header).is_some() {
        return None;
    }
    let mut inside = bracketed(header).into_iter().map(|(_, inside)| inside);
    inside.find(is_zone)
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

/// Each bracketed part with the header around it, the last first.
fn bracketed(header: &str) -> Vec<(String, String)> {
    let mut parts = Vec::new();
    let mut open: Vec<usize> = Vec::new();
    for (at, character) in header.char_indices() {
        match character {
            '(' | '[' | '{' => open.push(at),
            ')' | ']' | '}' => {
                // Only the outermost: W/(m²) is one unit.
                if let (Some(start), true) = (open.pop(), open.is_empty()) {
                    let around = format!("{} {}", &header[..start], &header[at + 1..]);
                    parts.push((around, header[start + 1..at].to_owned()));
                }
            }
            _ => {}
        }
    }
    parts.reverse();
    parts
}

/// Ways to cut a unit off the end: after a comma, slash or underline; after a space, if
/// it has more than one letter.
fn suffixes(header: &str) -> impl Iterator<Item = (&str, &str)> {
    header.char_indices().filter_map(move |(at, character)| {
        let is_cut = matches!(character, ',' | ';' | '/' | '_' | '-' | '|' | ':')
            || character.is_whitespace();
        if !is_cut || at == 0 {
            return None;
        }
        let suffix = header[at + character.len_utf8()..].trim();
        let letters = suffix
            .chars()
            .filter(|c| c.is_alphanumeric() || *c == '°')
            .count();
        let is_letter = letters == 1 && character.is_whitespace();
        // "Lufttemperatur in °C"
        let name = &header[..at];
        let is_open = !suffix.starts_with(['(', '[']);
        let name = name.strip_suffix(" in").filter(|_| is_open).unwrap_or(name);
        (!suffix.is_empty() && !is_letter).then_some((name, suffix))
    })
}

/// What a name means. `with_letters`: a single letter a to d at its end may be a
/// channel's, as in "Pot A".
fn recognise(name: &str, with_letters: bool) -> Recognised {
    let folded = fold(name);
    let words: Vec<&str> = folded
        .split(|c: char| !c.is_alphanumeric())
        .filter(|word| !word.is_empty())
        .collect();
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
