//! A line of notes as people write them: `10:35 moved it, 190`, `1:05 pm water 165F air 75 sunny`.

use super::form::Form;
use super::line::{Cells, Sky};
use super::value::{Refusal, number};
use crate::measure::{Kind, Unit};

/// What a bare number may be, in the order in which a field sheet has them.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Reading {
    Tested,
    Air,
    Wind,
    Irradiance,
}

/// Words that name what a number behind them is.
const LABELS: [(&str, Reading); 19] = [
    ("water", Reading::Tested),
    ("pot", Reading::Tested),
    ("vessel", Reading::Tested),
    ("temp", Reading::Tested),
    ("inside", Reading::Tested),
    ("t", Reading::Tested),
    ("air", Reading::Air),
    ("ambient", Reading::Air),
    ("outside", Reading::Air),
    ("outdoors", Reading::Air),
    ("shade", Reading::Air),
    ("wind", Reading::Wind),
    ("bft", Reading::Wind),
    ("beaufort", Reading::Wind),
    ("irradiance", Reading::Irradiance),
    ("solar", Reading::Irradiance),
    ("w/m2", Reading::Irradiance),
    ("w/m²", Reading::Irradiance),
    ("watts", Reading::Irradiance),
];
/// Words behind a number that make it no reading.
const NO_READINGS: [&str; 20] = [
    "min", "mins", "minute", "minutes", "sec", "secs", "second", "seconds", "h", "hour", "hours",
    "%", "percent", "times", "x", "in", "inch", "inches", "cm", "am",
];
/// Words before a number that say how far something was turned.
const TURNS: [&str; 8] = [
    "turned", "turn", "moved", "move", "rotated", "tilted", "by", "about",
];
const CLEAR: [&str; 7] = ["clear", "sunny", "sun", "cloudless", "bright", "blue", "c"];
const CLOUD: [&str; 12] = [
    "cloud", "clouds", "cloudy", "overcast", "hazy", "haze", "misty", "smoke", "smoky", "dusty",
    "thin", "x",
];
/// Winds that a word or two tell, as numbers of the Beaufort scale.
const WINDS: [(&str, &str); 6] = [
    ("calm", "0"),
    ("no wind", "0"),
    ("still", "0"),
    ("light air", "1"),
    ("light breeze", "2"),
    ("gentle breeze", "3"),
];

/// A word of a line.
struct Word<'t> {
    /// As it was written.
    text: &'t str,
    /// In small letters, without the marks around it.
    plain: String,
    /// It was understood, and is no note.
    is_taken: bool,
}

/// Reads what stands behind a time, or in a line that is of all times.
///
/// # Errors
/// A [`Refusal`] for a number of which it does not follow what it is, or that cannot be true.
pub fn read_free(form: &Form, rest: &str) -> Result<Cells, Refusal> {
    let mut words = words_of(rest);
    let mut cells = Cells {
        sky: sky_of(&words).filter(|_| form.in_sun()),
        ..Cells::default()
    };
    if let Some(wind) = wind_of(rest) {
        cells.wind = form.wind(wind)?;
    }
    take_numbers(form, &mut words, &mut cells)?;
    let kept = words.iter().filter(|word| !word.is_taken);
    let notes = kept.map(|word| word.text).collect::<Vec<_>>().join(" ");
    cells.notes = form.notes(notes.trim_matches(|c: char| " ,;:-–—".contains(c)))?;
    let has_digit = |word: &&Word<'_>| word.plain.contains(|c: char| c.is_ascii_digit());
    let mut unread = words.iter().filter(|word| !word.is_taken).filter(has_digit);
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

fn words_of(text: &str) -> Vec<Word<'_>> {
    let words = text.split(|c: char| c.is_whitespace() || c == '|');
    let mut found: Vec<Word<'_>> = Vec::new();
    for word in words.flat_map(|word| split_at_commas(word)) {
        let plain = word.trim_matches(|c: char| ",;:=()[]!?\"'".contains(c));
        let plain = plain.strip_suffix('.').unwrap_or(plain).to_lowercase();
        if !plain.is_empty() {
            found.push(Word {
                text: word,
                plain,
                is_taken: false,
            });
        }
    }
    found
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
fn sky_of(words: &[Word<'_>]) -> Option<Sky> {
    let mut clear = None;
    for (index, word) in words.iter().enumerate() {
        let before = index
            .checked_sub(1)
            .map(|index| words[index].plain.as_str());
        let is_denied = matches!(before, Some("no" | "not" | "without" | "few"));
        let is_clear = CLEAR.contains(&word.plain.as_str());
        let is_cloud = CLOUD.contains(&word.plain.as_str());
        match (is_clear, is_cloud, is_denied) {
            (true, _, false) => clear = clear.or(Some(true)),
            // "No clouds"; but few clouds are some.
            (_, true, true) if before != Some("few") => clear = clear.or(Some(true)),
            (true, _, true) | (_, true, _) => clear = Some(false),
            _ => {}
        }
    }
    clear.map(|is_clear| if is_clear { Sky::Clear } else { Sky::Cloud })
}

fn wind_of(text: &str) -> Option<&'static str> {
    let lower = text.to_lowercase();
    let mut winds = WINDS.iter();
    winds
        .find(|(words, _)| lower.contains(words))
        .map(|(_, number)| *number)
}

/// Takes the numbers: those that a word names, then the bare ones in the order of a field sheet.
fn take_numbers(form: &Form, words: &mut [Word<'_>], cells: &mut Cells) -> Result<(), Refusal> {
    let mut order = [
        Reading::Tested,
        Reading::Air,
        Reading::Wind,
        Reading::Irradiance,
    ]
    .into_iter()
    .filter(|reading| *reading != Reading::Irradiance || form.has_irradiance);
    let mut unnamed = Vec::new();
    for index in 0..words.len() {
        let plain = words[index].plain.clone();
        let starts = plain.starts_with(|c: char| c.is_ascii_digit())
            || (plain.starts_with(['-', '−']) && plain.len() > 1);
        if !starts || is_no_reading(words, index) {
            continue;
        }
        let label = label_of(words, index);
        let has_unit = words
            .get(index + 1)
            .is_some_and(|next| is_unit(&next.plain));
        let value = match has_unit {
            true => format!("{plain}{}", unit_text(&words[index + 1].plain)),
            false => plain
                .trim_end_matches("degrees")
                .trim_end_matches("deg")
                .to_owned(),
        };
        words[index].is_taken = true;
        if has_unit {
            words[index + 1].is_taken = true;
        }
        match label {
            Some((reading, at)) => {
                words[at].is_taken = true;
                read(form, cells, reading, &value)?;
            }
            None => unnamed.push(value),
        }
    }
    for value in unnamed {
        let is_free = |reading: &Reading| match reading {
            Reading::Tested => cells.tested.is_none(),
            Reading::Air => cells.air.is_none(),
            Reading::Wind => cells.wind.is_none(),
            Reading::Irradiance => cells.irradiance.is_none(),
        };
        let Some(reading) = order.find(is_free) else {
            return Err(Refusal::new(
                format!("found {value}, and nothing is left that it could be"),
                format!(
                    "name it, as in air {value}; or write as in: {}",
                    form.example()
                ),
            ));
        };
        read(form, cells, reading, &value)?;
    }
    Ok(())
}

fn read(form: &Form, cells: &mut Cells, reading: Reading, value: &str) -> Result<(), Refusal> {
    match reading {
        Reading::Tested => cells.tested = form.tested(value)?,
        Reading::Air => cells.air = form.air(value)?,
        Reading::Wind => cells.wind = form.wind(value)?,
        Reading::Irradiance => cells.irradiance = form.irradiance(value)?,
    }
    Ok(())
}

/// What a word beside a number says that it is, and where that word stands.
fn label_of(words: &[Word<'_>], index: usize) -> Option<(Reading, usize)> {
    let named = |at: usize| {
        let plain = words.get(at)?.plain.as_str();
        let (_, reading) = LABELS.iter().find(|(word, _)| *word == plain)?;
        (!words[at].is_taken).then_some((*reading, at))
    };
    let ends = |at: usize| words[at].text.ends_with([',', ';']);
    let before = index.checked_sub(1).filter(|before| !ends(*before));
    before.and_then(named).or_else(|| {
        // "75 outside"; but in "165 air 75" the air is that of the next number.
        let after = index
            + 1
            + usize::from(
                words
                    .get(index + 1)
                    .is_some_and(|next| is_unit(&next.plain)),
            );
        let is_next = words
            .get(after + 1)
            .is_some_and(|next| next.plain.starts_with(|c: char| c.is_ascii_digit()));
        named(after).filter(|_| !is_next)
    })
}

/// Whether a number counts something else than a reading.
fn is_no_reading(words: &[Word<'_>], index: usize) -> bool {
    let word = &words[index].plain;
    let behind = words.get(index + 1).map(|next| next.plain.as_str());
    let mut before = words[index.saturating_sub(2)..index].iter();
    let digits = word.trim_start_matches(|c: char| c.is_ascii_digit() || ".,-−".contains(c));
    let is_degrees = |text: &str| matches!(text, "°" | "deg" | "degrees");
    let is_angle = (is_degrees(digits) || behind.is_some_and(is_degrees))
        && before.any(|before| TURNS.contains(&before.plain.as_str()));
    is_angle
        || behind.is_some_and(|behind| NO_READINGS.contains(&behind))
        || NO_READINGS.contains(&digits)
}

/// Whether a word is a unit of temperature alone.
fn is_unit(word: &str) -> bool {
    matches!(
        word,
        "f" | "°f"
            | "c°"
            | "°c"
            | "°"
            | "degf"
            | "degc"
            | "fahrenheit"
            | "celsius"
            | "deg"
            | "degrees"
    )
}

/// What stands for such a unit behind a number.
fn unit_text(word: &str) -> &'static str {
    match word {
        "f" | "°f" | "degf" | "fahrenheit" => "°F",
        "c°" | "°c" | "degc" | "celsius" => "°C",
        _ => "",
    }
}

/// The units that stand behind temperatures in a line.
pub fn units_in(text: &str) -> Vec<Unit> {
    let words = words_of(text);
    let of_word = |index: usize| {
        let plain = words[index].plain.as_str();
        let is_unit_of = |word: &str| Unit::parse(unit_text(word), &[Kind::Temperature]);
        let end = plain.rfind(|c: char| c.is_ascii_digit())?;
        let digits = &plain[..=end];
        number(digits)?;
        match &plain[end + 1..] {
            "" => is_unit_of(&words.get(index + 1)?.plain),
            "f" => is_unit_of("f"),
            "c" => is_unit_of("°c"),
            other => is_unit_of(other),
        }
    };
    (0..words.len()).filter_map(of_word).collect()
}

/// The first number of a line that may be a temperature and that no word names otherwise.
pub fn first_number(text: &str) -> Option<f64> {
    let words = words_of(text);
    let of_word = |index: usize| {
        let plain = words[index].plain.as_str();
        let end = plain.rfind(|c: char| c.is_ascii_digit())?;
        let found = number(&plain[..=end]).filter(|_| !is_no_reading(&words, index))?;
        let label = label_of(&words, index).map(|(reading, _)| reading);
        label
            .is_none_or(|label| label == Reading::Tested)
            .then_some(found.value)
    };
    (0..words.len()).find_map(of_word)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::campaign::kinds::RunKind;
    use crate::entry::form::tests::{form, form_of};
    use crate::entry::free_clock::FreeClock;

    /// Time, tested, air, wind, sky, notes.
    fn read_as(text: &str) -> String {
        let (clock, rest) = FreeClock::at_start(text).expect(text);
        let cells = read_free(&form("°F"), rest);
        let cells = cells.unwrap_or_else(|error| panic!("{text}: {error:?}"));
        let digits = |number: &Option<super::super::value::Number>| {
            number
                .as_ref()
                .map_or("-".to_owned(), |number| number.text.clone())
        };
        format!(
            "{} {} {} {} {} {}",
            clock.time_after(None).unwrap().strftime("%H:%M"),
            digits(&cells.tested),
            digits(&cells.air),
            digits(&cells.wind),
            cells.sky.map_or("-", Sky::word),
            cells.notes
        )
    }

    #[test]
    fn lines_are_read_as_people_write_them() {
        for (text, expected) in [
            ("10:20 165F", "10:20 165 - - - "),
            ("10:20 165 F", "10:20 165 - - - "),
            ("10:20 - 165°F, sunny", "10:20 165 - - clear sunny"),
            ("10:35 moved it, 190", "10:35 190 - - - moved it"),
            (
                "10:35 moved it 5 degrees, 190",
                "10:35 190 - - - moved it 5 degrees",
            ),
            (
                "1:05 pm water 165F air 75F hazy",
                "13:05 165 75 - cloud hazy",
            ),
            (
                "1:05pm 165, 75 outside, no clouds",
                "13:05 165 75 - clear no clouds",
            ),
            ("10h30 165 75 1", "10:30 165 75 1 - "),
            (
                "10:20 165 after 2 min, lid off",
                "10:20 165 - - - after 2 min, lid off",
            ),
            (
                "10:20 165 calm and clear",
                "10:20 165 - 0 clear calm and clear",
            ),
            ("10:20 165 a few clouds", "10:20 165 - - cloud a few clouds"),
            ("10:20 165.5; wind 2", "10:20 165.5 - 2 - "),
            ("10:40 clouds came", "10:40 - - - cloud clouds came"),
            ("1020 165", "10:20 165 - - - "),
        ] {
            assert_eq!(read_as(text), expected, "{text}");
        }
    }

    #[test]
    fn what_cannot_be_read_is_told() {
        for (text, said) in [
            ("1650", "found water of 1650"),
            ("l65", "no temperature beside it"),
            ("165C", "expected the water temperature in °F"),
            ("165 75 1 880", "nothing is left"),
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
