//! A line of notes as people write them: `10:35 moved it, 190`, `1:05 pm water 165F air 75 sunny`.
//!
//! A number is a reading if a unit of temperature or a word beside it says so, or if it stands
//! alone: at the beginning of the line, or where nothing follows it in its clause. Every other
//! number has to be a count that is known, such as minutes; else the line is refused.

use super::form::{Column, Form};
use super::line::{Cells, Sky};
use super::value::{Refusal, is_not_read, number};
use crate::measure::{Kind, Unit};

/// What a number may be, in the order in which a field sheet has them.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Reading {
    Tested,
    Air,
    Wind,
    Irradiance,
}

impl Reading {
    const ALL: [Reading; 4] = [
        Reading::Tested,
        Reading::Air,
        Reading::Wind,
        Reading::Irradiance,
    ];
}

/// A number that is a reading.
#[derive(Debug, Clone, PartialEq)]
pub struct Read {
    pub reading: Reading,
    /// As it was written, without its unit.
    pub digits: String,
    /// The unit of temperature that stands behind it.
    pub unit: Option<Unit>,
}

/// Words that name what a number beside them is, in the five languages and in German.
const LABELS: [(&str, Reading); 27] = [
    ("water", Reading::Tested),
    ("pot", Reading::Tested),
    ("vessel", Reading::Tested),
    ("inside", Reading::Tested),
    ("agua", Reading::Tested),
    ("água", Reading::Tested),
    ("eau", Reading::Tested),
    ("maji", Reading::Tested),
    ("wasser", Reading::Tested),
    ("air", Reading::Air),
    ("ambient", Reading::Air),
    ("outside", Reading::Air),
    ("outdoors", Reading::Air),
    ("shade", Reading::Air),
    ("aire", Reading::Air),
    ("ar", Reading::Air),
    ("hewa", Reading::Air),
    ("luft", Reading::Air),
    ("wind", Reading::Wind),
    ("bft", Reading::Wind),
    ("beaufort", Reading::Wind),
    ("viento", Reading::Wind),
    ("vento", Reading::Wind),
    ("irradiance", Reading::Irradiance),
    ("solar", Reading::Irradiance),
    ("w/m2", Reading::Irradiance),
    ("w/m²", Reading::Irradiance),
];
/// Words that may stand between a label and its number, and say nothing.
const NEUTRAL: [&str; 12] = [
    "temp",
    "temperature",
    "temps",
    "t",
    "is",
    "was",
    "at",
    "about",
    "around",
    "approx",
    "of",
    "now",
];
/// Words behind a number that make it a count.
const COUNTS: [&str; 19] = [
    "s", "min", "mins", "minute", "minutes", "sec", "secs", "second", "seconds", "h", "hour",
    "hours", "%", "percent", "times", "inch", "inches", "cm", "mm",
];
/// Words before a number that say how far something was turned.
const TURNS: [&str; 7] = ["turned", "turn", "moved", "move", "rotated", "tilted", "by"];
const CLEAR: [&str; 9] = [
    "clear",
    "sunny",
    "cloudless",
    "soleado",
    "despejado",
    "ensoleillé",
    "ensolarado",
    "jua",
    "sonnig",
];
const CLOUD: [&str; 15] = [
    "cloud", "clouds", "cloudy", "overcast", "hazy", "haze", "misty", "smoke", "smoky", "dusty",
    "nublado", "nuageux", "couvert", "mawingu", "wolkig",
];
const DENIALS: [&str; 6] = ["no", "not", "without", "sin", "sans", "sem"];
/// Winds that words tell, as numbers of the Beaufort scale.
const WINDS: [(&[&str], &str); 7] = [
    (&["calm"], "0"),
    (&["no", "wind"], "0"),
    (&["no", "breeze"], "0"),
    (&["light", "air"], "1"),
    (&["slight", "breeze"], "2"),
    (&["light", "breeze"], "2"),
    (&["gentle", "breeze"], "3"),
];

/// What was made of a word.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Made {
    Nothing,
    /// It was understood, and stays in the notes.
    Understood,
    /// It is a reading, or the name of one, and no note.
    Taken,
}

/// A word of a line.
struct Word<'t> {
    /// As it was written.
    text: &'t str,
    /// In small letters, without the marks around it.
    plain: String,
    /// What stands behind the digits that it begins with; `None` where it begins with none.
    number: Option<(String, String)>,
    /// A clause ends with it.
    ends: bool,
    made: Made,
}

/// Reads what stands behind a time, or in a line that is of all times.
///
/// # Errors
/// A [`Refusal`] for a number of which it does not follow what it is, or that cannot be true.
pub fn read_free(form: &Form, rest: &str) -> Result<Cells, Refusal> {
    let mut words = words_of(rest);
    let mut cells = Cells {
        sky: sky_of(&mut words).filter(|_| form.in_sun()),
        ..Cells::default()
    };
    if let Some(wind) = wind_of(&mut words) {
        cells.wind = form.wind(wind)?;
    }
    for Read {
        reading,
        digits,
        unit,
    } in readings(&mut words)?
    {
        let value = format!("{digits}{}", unit.map_or("", Unit::symbol));
        match reading {
            Reading::Tested => cells.tested = form.tested(&value)?,
            Reading::Air => cells.air = form.air(&value)?,
            Reading::Wind => cells.wind = form.wind(&value)?,
            Reading::Irradiance if form.columns().any(|column| column == Column::Irradiance) => {
                cells.irradiance = form.irradiance(&value)?;
            }
            Reading::Irradiance => {
                return Err(Refusal::new(
                    format!("found {value}, and the campaign has no sensor of irradiance"),
                    "take it out of the line, or state the sensor under [instruments.irradiance]",
                ));
            }
        }
    }
    let kept = words.iter().filter(|word| word.made != Made::Taken);
    let kept = kept.map(|word| word.text).filter(|text| *text != "/");
    let notes = kept.collect::<Vec<_>>().join(" ");
    cells.notes = form.notes(notes.trim_matches(|c: char| " ,;:-–—".contains(c)))?;
    let has_digit = |word: &&Word<'_>| word.plain.contains(|c: char| c.is_ascii_digit());
    let mut unread = words
        .iter()
        .filter(|word| word.made == Made::Nothing)
        .filter(has_digit);
    match unread
        .next()
        .filter(|_| cells.tested.is_none() && cells.air.is_none())
    {
        Some(word) => Err(Refusal::new(
            format!("found \"{}\", and no temperature beside it", word.text),
            format!("write the line as in: {}", form.example()),
        )),
        None => Ok(cells),
    }
}

/// The readings of a line, whatever can be believed of them.
///
/// # Errors
/// As [`read_free`].
pub fn readings_in(rest: &str) -> Result<Vec<Read>, Refusal> {
    let mut words = words_of(rest);
    sky_of(&mut words);
    wind_of(&mut words);
    readings(&mut words)
}

/// Whether nothing in a line was left that is not understood.
pub fn is_all_understood(rest: &str, fillers: &[&str]) -> bool {
    let mut words = words_of(rest);
    sky_of(&mut words);
    wind_of(&mut words);
    let is_read = readings(&mut words).is_ok();
    is_read
        && words
            .iter()
            .all(|word| word.made != Made::Nothing || fillers.contains(&word.plain.as_str()))
}

fn words_of(text: &str) -> Vec<Word<'_>> {
    let words = text.split(|c: char| c.is_whitespace() || matches!(c, '|' | '='));
    let mut found: Vec<Word<'_>> = Vec::new();
    for word in words.flat_map(split_at_commas) {
        let plain = word.trim_matches(|c: char| ",;:()[]!?\"'~≈<>".contains(c));
        let plain = plain.strip_suffix('.').unwrap_or(plain).to_lowercase();
        let plain = plain.replace(['º', '˚'], "°");
        if plain.is_empty() {
            if let Some(last) = found.last_mut() {
                last.ends |= word.contains([',', ';']);
            }
            continue;
        }
        found.push(Word {
            text: word,
            number: number_of(&plain),
            ends: word.ends_with([',', ';']),
            made: Made::Nothing,
            plain,
        });
    }
    found
}

/// The digits that a word begins with, and what stands behind them.
fn number_of(plain: &str) -> Option<(String, String)> {
    let digits = plain.strip_prefix(['-', '−', '+']).unwrap_or(plain);
    if !digits.starts_with(|c: char| c.is_ascii_digit()) {
        return None;
    }
    let end = plain.rfind(|c: char| c.is_ascii_digit())? + 1;
    Some((
        plain[..end].trim_start_matches('+').to_owned(),
        plain[end..].to_owned(),
    ))
}

/// Parts of a word at commas, but for a decimal comma.
fn split_at_commas(word: &str) -> Vec<&str> {
    let is_decimal = number(word.trim_end_matches(|c: char| c.is_alphabetic() || c == '°'));
    match is_decimal {
        Some(_) => vec![word],
        None => word.split_inclusive([',', ';']).collect(),
    }
}

/// The sky, where a word tells it; what is not clear counts where both are told.
fn sky_of(words: &mut [Word<'_>]) -> Option<Sky> {
    let mut clear = None;
    for index in 0..words.len() {
        let before = index.checked_sub(1);
        let before = before.map(|index| words[index].plain.as_str());
        let is_denied = before.is_some_and(|before| DENIALS.contains(&before));
        let plain = words[index].plain.as_str();
        match (CLEAR.contains(&plain), CLOUD.contains(&plain), is_denied) {
            (true, _, false) | (_, true, true) => clear = clear.or(Some(true)),
            (true, _, true) | (_, true, false) => clear = Some(false),
            _ => continue,
        }
        words[index].made = Made::Understood;
        if is_denied {
            words[index - 1].made = Made::Understood;
        }
    }
    clear.map(|is_clear| if is_clear { Sky::Clear } else { Sky::Cloud })
}

/// The wind, where words tell it.
fn wind_of(words: &mut [Word<'_>]) -> Option<&'static str> {
    let (at, phrase, told) = WINDS.iter().find_map(|(phrase, told)| {
        let mut windows = words.windows(phrase.len());
        let is_it = |window: &[Word<'_>]| {
            let mut pairs = window.iter().zip(*phrase);
            pairs.all(|(word, said)| word.plain == **said)
        };
        windows.position(is_it).map(|at| (at, *phrase, *told))
    })?;
    for word in &mut words[at..at + phrase.len()] {
        word.made = Made::Understood;
    }
    Some(told)
}

/// Takes the numbers: those that a word names, then the bare ones in the order of a field sheet.
fn readings(words: &mut [Word<'_>]) -> Result<Vec<Read>, Refusal> {
    let mut found: Vec<Read> = Vec::new();
    // Those without a name: `None` for a place at which nothing was read.
    let mut bare: Vec<Option<(String, Option<Unit>)>> = Vec::new();
    let mut start = 0;
    while start < words.len() {
        let length = words[start..].iter().position(|word| word.ends);
        let end = length.map_or(words.len(), |length| start + length + 1);
        read_clause(words, start..end, &mut found, &mut bare)?;
        start = end;
    }
    let mut order = Reading::ALL.into_iter();
    for value in bare {
        let is_free = |reading: &Reading| found.iter().all(|read| read.reading != *reading);
        let reading = order.find(is_free);
        match (value, reading) {
            (Some((digits, unit)), Some(reading)) => found.push(Read {
                reading,
                digits,
                unit,
            }),
            (Some((digits, _)), None) => {
                return Err(Refusal::new(
                    format!("found {digits}, and nothing is left that it could be"),
                    format!("name it, as in air {digits}, or put it in words"),
                ));
            }
            (None, _) => {}
        }
    }
    Ok(found)
}

/// Takes the numbers of one clause.
fn read_clause(
    words: &mut [Word<'_>],
    clause: std::ops::Range<usize>,
    found: &mut Vec<Read>,
    bare: &mut Vec<Option<(String, Option<Unit>)>>,
) -> Result<(), Refusal> {
    let is_label = |word: &Word<'_>| word.made == Made::Nothing && label(&word.plain).is_some();
    let told = words[clause.clone()].iter().rev();
    let mut told = told.filter(|word| is_label(word) || word.number.is_some());
    // "45 water 24 air" or "water 45 air 24".
    let names_come_after = told.next().is_some_and(is_label);
    let mut index = clause.start;
    while index < clause.end {
        let at = index;
        index += 1;
        let Some((digits, behind)) = words[at].number.clone() else {
            let is_place = is_not_read(&words[at].plain)
                && at > clause.start
                && words[at - 1].number.is_some();
            if is_place {
                words[at].made = Made::Taken;
                bare.push(None);
            }
            continue;
        };
        if is_count(words, at, &behind) {
            words[at].made = Made::Understood;
            continue;
        }
        let next = words
            .get(at + 1)
            .filter(|_| at + 1 < clause.end && !words[at].ends);
        let unit_behind = next
            .and_then(|next| unit_of(&next.plain))
            .filter(|_| behind.is_empty());
        let unit = match behind.as_str() {
            "" => unit_behind,
            behind => Some(unit_of(behind).ok_or_else(|| not_placed(words, at))?),
        };
        let after = at + 1 + usize::from(unit_behind.is_some());
        if unit_behind.is_some() {
            words[at + 1].made = Made::Taken;
            index = after;
        }
        let named = match names_come_after {
            true => name_behind(words, after, clause.end),
            false => name_before(words, at, clause.start),
        };
        if named.is_none() && unit.is_none() && !stands_alone(words, at, &clause) {
            return Err(not_placed(words, at));
        }
        words[at].made = Made::Taken;
        let unit = unit.flatten();
        if named.is_some_and(|(reading, _)| reading == Reading::Wind) {
            refuse_speed(&digits, words.get(after))?;
        }
        match named {
            None => bare.push(Some((digits, unit))),
            Some((reading, place)) => {
                if found.iter().any(|read| read.reading == reading) {
                    return Err(Refusal::new(
                        format!("found \"{}\" twice", words[place].plain),
                        "write each reading once",
                    ));
                }
                words[place].made = Made::Taken;
                found.push(Read {
                    reading,
                    digits,
                    unit,
                });
            }
        }
    }
    Ok(())
}

/// The wind of notes is a number of the Beaufort scale.
fn refuse_speed(digits: &str, behind: Option<&Word<'_>>) -> Result<(), Refusal> {
    let is_speed = |word: &&Word<'_>| {
        let speed = Unit::parse(&word.plain, &[Kind::Speed]);
        speed.is_some_and(|unit| !unit.is_estimate())
    };
    match behind.filter(is_speed) {
        None => Ok(()),
        Some(unit) => Err(Refusal::new(
            format!(
                "found \"{digits} {}\", expected the wind as a Beaufort number",
                unit.text
            ),
            "write the number of what you saw, 0 to 8, or put the speed in words",
        )),
    }
}

fn not_placed(words: &[Word<'_>], at: usize) -> Refusal {
    let next = words.get(at + 1).map_or("", |next| next.text);
    let text = format!("{} {next}", words[at].text);
    Refusal::new(
        format!(
            "found \"{}\", and it does not follow what the number is",
            text.trim()
        ),
        "write a reading with its unit or its name, as in 165F or air 75, and what is none in words",
    )
}

fn label(plain: &str) -> Option<Reading> {
    let mut labels = LABELS.iter();
    labels
        .find(|(word, _)| *word == plain)
        .map(|(_, reading)| *reading)
}

/// The name before a number, with nothing between that says anything.
fn name_before(words: &[Word<'_>], at: usize, start: usize) -> Option<(Reading, usize)> {
    let mut place = at;
    while place > start {
        place -= 1;
        let word = &words[place];
        if word.made != Made::Nothing {
            return None;
        }
        if let Some(reading) = label(&word.plain) {
            return Some((reading, place));
        }
        if !NEUTRAL.contains(&word.plain.as_str()) {
            return None;
        }
    }
    None
}

/// The name behind a number: `75 outside`, `78 in shade`.
fn name_behind(words: &[Word<'_>], after: usize, end: usize) -> Option<(Reading, usize)> {
    let is_between = |word: &Word<'_>| matches!(word.plain.as_str(), "in" | "the" | "of");
    let mut place = after;
    while place < end && is_between(&words[place]) {
        place += 1;
    }
    let word = words
        .get(place)
        .filter(|word| place < end && word.made == Made::Nothing)?;
    label(&word.plain).map(|reading| (reading, place))
}

/// Whether a number without unit or name is a reading all the same: it begins the line, or follows
/// one that does, or nothing follows it in its clause but what is understood.
fn stands_alone(words: &[Word<'_>], at: usize, clause: &std::ops::Range<usize>) -> bool {
    let is_read = |word: &Word<'_>| word.made == Made::Taken;
    let begins = words[..at].iter().all(is_read);
    let next = words[at + 1..clause.end].first();
    let is_followed_by_words = !words[at].ends
        && next.is_some_and(|next| {
            next.made == Made::Nothing
                && next.number.is_none()
                && !is_not_read(&next.plain)
                && label(&next.plain).is_none()
                && !NEUTRAL.contains(&next.plain.as_str())
        });
    let before = at.checked_sub(1).map(|before| words[before].plain.as_str());
    let is_turn = before.is_some_and(|before| TURNS.contains(&before));
    match begins {
        // "2 eggs in" begins a line too; "165 sunny" and "165" alone do not look like it.
        true => !is_followed_by_words || is_decimal_or_hot(&words[at]),
        false => !is_followed_by_words && !is_turn,
    }
}

/// Whether a number is one that nobody counts things with in a note. Common practice, no published
/// source.
fn is_decimal_or_hot(word: &Word<'_>) -> bool {
    const MOST_COUNTED: f64 = 20.0;
    let digits = word.number.as_ref().map(|(digits, _)| digits.as_str());
    let value = digits.and_then(number);
    value.is_some_and(|value| value.value > MOST_COUNTED || value.text.contains('.'))
}

/// Whether a number counts minutes and the like, or says how far something was turned.
fn is_count(words: &[Word<'_>], at: usize, behind: &str) -> bool {
    let next = words.get(at + 1).filter(|_| !words[at].ends);
    let next = next.map_or("", |next| next.plain.as_str());
    let is_degrees = |text: &str| matches!(text, "°" | "deg" | "degrees");
    let mut before = words[at.saturating_sub(3)..at].iter();
    let is_angle = (is_degrees(behind) || behind.is_empty() && is_degrees(next))
        && before.any(|word| TURNS.contains(&word.plain.as_str()));
    is_angle || COUNTS.contains(&behind) || behind.is_empty() && COUNTS.contains(&next)
}

/// The unit of temperature that a word is: `Some(None)` for degrees of any.
fn unit_of(word: &str) -> Option<Option<Unit>> {
    let symbol = match word {
        "f" | "°f" | "degf" | "fahrenheit" => "°F",
        "c" | "c°" | "°c" | "degc" | "celsius" => "°C",
        "°" | "deg" | "degrees" => return Some(None),
        _ => return None,
    };
    Unit::parse(symbol, &[Kind::Temperature]).map(Some)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::campaign::kinds::RunKind;
    use crate::entry::form::tests::{form, form_of};

    /// Tested, air, wind, sky, notes.
    fn read_as(unit: &str, text: &str) -> String {
        let cells = read_free(&form(unit), text);
        let cells = cells.unwrap_or_else(|error| panic!("{text}: {error:?}"));
        let digits = |column: Column| match cells.text(column) {
            "" => "-",
            text => text,
        };
        format!(
            "{} {} {} {} {}",
            digits(Column::Tested),
            digits(Column::Air),
            digits(Column::Wind),
            digits(Column::Sky),
            cells.notes
        )
    }

    #[test]
    fn lines_are_read_as_people_write_them() {
        for (text, expected) in [
            ("165F", "165 - - - "),
            ("165 F", "165 - - - "),
            ("165°F, sunny", "165 - - clear sunny"),
            ("68º", "68 - - - "),
            ("moved it, 190", "190 - - - moved it"),
            ("moved it 190", "190 - - - moved it"),
            ("moved it 5 degrees, 190", "190 - - - moved it 5 degrees"),
            (
                "turned the pot 20 degrees, 150",
                "150 - - - turned the pot 20 degrees",
            ),
            ("water 165F air 75F hazy", "165 75 - cloud hazy"),
            ("water temp 165 air temp 75", "165 75 - - temp temp"),
            ("145 water 74 air", "145 74 - - "),
            ("74 air 145 water", "145 74 - - "),
            (
                "Air temp about 78 in shade, 165",
                "165 78 - - Air temp about in",
            ),
            ("165, 75 outside, no clouds", "165 75 - clear no clouds"),
            ("165 75 1", "165 75 1 - "),
            ("165 after 2 min, lid off", "165 - - - after 2 min, lid off"),
            ("165 calm and clear", "165 - 0 clear calm and clear"),
            ("no wind 166 74", "166 74 0 - no wind"),
            ("165 a few clouds", "165 - - cloud a few clouds"),
            ("165.5; wind 2", "165.5 - 2 - "),
            ("165 - 1 sunny", "165 - 1 clear sunny"),
            ("clouds came", "- - - cloud clouds came"),
            ("still cloudy 165", "165 - - cloud still cloudy"),
            (
                "turned to face the sun, 165",
                "165 - - - turned to face the sun",
            ),
            ("T=168 74", "168 74 - - T"),
            ("~165 74", "165 74 - - "),
            ("165 / 74", "165 74 - - "),
            ("agua 165, aire 75, despejado", "165 75 - clear despejado"),
        ] {
            assert_eq!(read_as("°F", text), expected, "{text}");
        }
        assert_eq!(read_as("°C", "65 C"), "65 - - - ", "no clear sky");
    }

    #[test]
    fn what_cannot_be_read_is_told() {
        for (text, said) in [
            ("1650", "found water of 1650"),
            ("165C", "expected the water temperature in °F"),
            ("165 75 1 880", "no sensor of irradiance"),
            ("165, 880 w/m2", "no sensor of irradiance"),
            ("165 75 1 880 12", "nothing is left"),
            ("165 added 1 lb water", "\"1 lb\""),
            ("165, 2 eggs in", "\"2 eggs\""),
            ("165, wind 5 mph", "5 mph"),
            ("165 10 mph", "\"10 mph\""),
            ("air 75 air 80", "\"air\" twice"),
            ("165kg", "\"165kg\""),
            ("moved 20", "\"20\""),
        ] {
            let refusal = read_free(&form("°F"), text).unwrap_err();
            assert!(refusal.what.contains(said), "{text}: {}", refusal.what);
        }
    }

    #[test]
    fn a_dry_pot_may_be_as_hot_as_an_oven() {
        let form = form_of(RunKind::Dry, "°F");
        let cells = read_free(&form, "365F, 75 outside, 880 w/m2").unwrap();
        assert_eq!(cells.tested.unwrap().value, 365.0);
        assert_eq!(cells.irradiance.unwrap().value, 880.0);
    }
}
