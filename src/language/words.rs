//! A language, and what is said in it.

use std::collections::{BTreeMap, BTreeSet};
use std::sync::LazyLock;

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use unic_langid::LanguageIdentifier;

use super::message::Message;
use super::paired::PairedUnit;
use super::phrase::Phrase;
use super::unit_system::UnitSystem;
use crate::message;
use crate::units;

/// A language of the report.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Language {
    /// BCP 47, as `--language` and the campaign file take it.
    pub code: &'static str,
    /// What its speakers call it.
    pub name: &'static str,
    /// Its message file.
    messages: &'static str,
}

/// What stands in place of a message that is still to translate. It is said in English.
pub const STILL_TO_TRANSLATE: &str = "STILL TO TRANSLATE";

/// Every language, English first. To add one: its message file, and a row here.
pub const LANGUAGES: [Language; 5] = [
    Language {
        code: "en",
        name: "English",
        messages: include_str!("../../templates/languages/en.ftl"),
    },
    Language {
        code: "es",
        name: "español",
        messages: include_str!("../../templates/languages/es.ftl"),
    },
    Language {
        code: "fr",
        name: "français",
        messages: include_str!("../../templates/languages/fr.ftl"),
    },
    Language {
        code: "pt",
        name: "português",
        messages: include_str!("../../templates/languages/pt.ftl"),
    },
    Language {
        code: "sw",
        name: "Kiswahili",
        messages: include_str!("../../templates/languages/sw.ftl"),
    },
];

impl Language {
    /// The language in which everything is written first.
    pub const ENGLISH: Language = LANGUAGES[0];

    /// The language of a code; `None`: there is no message file for it.
    pub fn of_code(code: &str) -> Option<Language> {
        LANGUAGES.into_iter().find(|language| language.code == code)
    }
}

/// A language with its messages, and the units that it says.
pub struct Words {
    pub language: Language,
    pub units: UnitSystem,
    bundle: FluentBundle<FluentResource>,
    decimal_mark: String,
    /// `None`: every message is translated.
    untranslated: Option<Untranslated>,
}

/// Messages that are still to translate, and the English in which they are said.
struct Untranslated {
    names: BTreeSet<&'static str>,
    english: Box<Words>,
}

static ENGLISH: LazyLock<Words> = LazyLock::new(|| Words::new(Language::ENGLISH, UnitSystem::Si));

impl Words {
    /// Reads a language's message file.
    ///
    /// # Panics
    /// If the message file is not Fluent, or a message stands in it twice; `tests/modules/language`
    /// holds every file against that.
    pub fn new(language: Language, units: UnitSystem) -> Self {
        let of_code: LanguageIdentifier = language.code.parse().expect("a code is BCP 47");
        let mut bundle = FluentBundle::new_concurrent(vec![of_code]);
        // Marks for mixed directions would be characters that the fonts lack.
        bundle.set_use_isolating(false);
        let names = untranslated_names(language.messages);
        let messages = in_english(language.messages, &names);
        let messages = match units {
            UnitSystem::Si => messages,
            UnitSystem::Us => with_fahrenheit(&messages),
        };
        let messages = FluentResource::try_new(messages);
        let messages = messages.map_err(|(_, faults)| faults);
        bundle
            .add_resource(messages.expect("a message file is Fluent"))
            .expect("a message stands once in its file");
        let mut words = Words {
            language,
            units,
            bundle,
            decimal_mark: String::new(),
            untranslated: (!names.is_empty()).then(|| Untranslated {
                names,
                english: Box::new(Words::new(Language::ENGLISH, units)),
            }),
        };
        words.decimal_mark = words.say(message!("decimal-mark"));
        words
    }

    /// English, read once.
    pub fn english() -> &'static Words {
        &ENGLISH
    }

    /// Says something in this language.
    ///
    /// # Panics
    /// If a message is not in the message file, or lacks something that goes into it;
    /// `tests/modules/language` holds every file against that.
    pub fn say(&self, phrase: impl Into<Phrase>) -> String {
        match phrase.into() {
            Phrase::Text(text) => text,
            Phrase::Count(count) => count.to_string(),
            Phrase::Fixed(value, decimals) => self.number(units::fixed(value, decimals)),
            Phrase::Short(value) => self.number(units::short(value)),
            Phrase::Range(from, to, decimals) => self.number(units::range(from, to, decimals)),
            Phrase::Quantity(number, unit) => {
                let (si, us) = self.quantity(*number, unit);
                with_us(si, us)
            }
            Phrase::BracketedQuantity(number, unit) => {
                let (si, us) = self.quantity(*number, unit);
                let both = [si].into_iter().chain(us).map(Phrase::from);
                self.say(Phrase::Clauses(both.collect()))
            }
            Phrase::PairedNumber(number, unit) => {
                let us = self.says_us().then(|| self.say(unit.in_us(&number)));
                with_us(self.say(*number), us)
            }
            Phrase::UnitSymbol(unit) => {
                let us = self.says_us().then(|| unit.us_symbol().to_owned());
                with_us(unit.symbol().to_owned(), us)
            }
            Phrase::Probability(p) => self.number(units::probability(p)),
            Phrase::Clock(hours) => units::clock_from_hours(hours),
            Phrase::Duration(seconds) => units::spoken_duration(seconds),
            Phrase::Date(date) => self.say(
                message!(
                    "date",
                    day = date.day().to_string(),
                    year = date.year().to_string()
                )
                .with("month", Message::new(format!("month-{}", date.month()))),
            ),
            Phrase::Message(message) => self.say_message(&message),
            Phrase::Listed(phrases) => self.list(phrases),
            Phrase::Clauses(phrases) => {
                let said: Vec<String> =
                    phrases.into_iter().map(|phrase| self.say(phrase)).collect();
                said.join(&self.say(message!("clause-break")))
            }
            Phrase::Joined(phrases, between) => {
                let said: Vec<String> =
                    phrases.into_iter().map(|phrase| self.say(phrase)).collect();
                said.join(between)
            }
        }
    }

    fn says_us(&self) -> bool {
        self.units == UnitSystem::Us
    }

    fn number(&self, text: String) -> String {
        text.replace('.', &self.decimal_mark)
    }

    /// A number with its unit, and what that is in the units of the US where they are said.
    fn quantity(&self, number: Phrase, unit: PairedUnit) -> (String, Option<String>) {
        let us = self.says_us().then(|| {
            let in_us = unit.in_us(&number);
            format!("{} {}", self.say(in_us), unit.us_symbol())
        });
        (format!("{} {}", self.say(number), unit.symbol()), us)
    }

    fn list(&self, mut phrases: Vec<Phrase>) -> String {
        match phrases.pop() {
            None => String::new(),
            Some(only) if phrases.is_empty() => self.say(only),
            Some(last) => self.say(message!(
                "list",
                first = Phrase::Joined(phrases, ", "),
                last = last
            )),
        }
    }

    fn say_message(&self, message: &Message) -> String {
        let name = &message.name;
        let untranslated = self.untranslated.as_ref();
        if let Some(found) = untranslated.filter(|one| one.names.contains(name.as_ref())) {
            return found.english.say_message(message);
        }
        let pattern = self
            .bundle
            .get_message(name)
            .and_then(|found| found.value())
            .unwrap_or_else(|| panic!("{}.ftl has no message \"{name}\"", self.language.code));
        let mut arguments = FluentArgs::new();
        for (argument, phrase) in &message.arguments {
            let value = match phrase {
                Phrase::Count(count) => FluentValue::from(*count),
                other => FluentValue::from(self.say(other)),
            };
            arguments.set(*argument, value);
        }
        let mut faults = Vec::new();
        let said = self
            .bundle
            .format_pattern(pattern, Some(&arguments), &mut faults);
        assert!(faults.is_empty(), "message \"{name}\": {faults:?}");
        said.into_owned()
    }

    /// Every message whose name begins with a prefix, by the rest of its name: words of a
    /// template, into which nothing goes.
    pub fn beginning_with(&self, prefix: &str) -> BTreeMap<String, String> {
        let names = message_names(self.language.messages);
        names
            .filter_map(|name| Some((name.strip_prefix(prefix)?.to_owned(), name)))
            .map(|(rest, name)| (rest, self.say(Message::new(name.to_owned()))))
            .collect()
    }
}

/// What is said in units of the SI, with that of the US in brackets where it is said too.
fn with_us(si: String, us: Option<String>) -> String {
    match us {
        Some(us) => format!("{si} ({us})"),
        None => si,
    }
}

/// Spaces between a number and its unit: the plain one, and those at which no line breaks.
const UNIT_SPACES: [char; 3] = [' ', '\u{a0}', '\u{202f}'];

/// Messages with degrees Fahrenheit beside every whole number of degrees Celsius in them, behind
/// the same space.
fn with_fahrenheit(messages: &str) -> String {
    let mut parts = messages.split("°C");
    let mut text = parts.next().unwrap_or_default().to_owned();
    for part in parts {
        let space = text.chars().next_back().filter(|c| UNIT_SPACES.contains(c));
        let number = space.and_then(|space| text.strip_suffix(space));
        let celsius: Option<f64> = number.and_then(|number| {
            let before = number.trim_end_matches(|c: char| c.is_ascii_digit());
            number[before.len()..].parse().ok()
        });
        text.push_str("°C");
        if let (Some(space), Some(celsius)) = (space, celsius) {
            let fahrenheit = units::fixed(units::celsius_to_fahrenheit(celsius), 0);
            text.push_str(&format!(" ({fahrenheit}{space}°F)"));
        }
        text.push_str(part);
    }
    text
}

/// The name of the message that begins with a line, and what follows on that line.
fn begun_message(line: &str) -> Option<(&str, &str)> {
    let (name, rest) = line.split_once('=')?;
    let begins = line.starts_with(|first: char| first.is_ascii_lowercase());
    begins.then(|| (name.trim(), rest.trim()))
}

/// The names of the messages of a file, in its order: each begins a line.
fn message_names(messages: &str) -> impl Iterator<Item = &str> {
    let begun = messages.lines().filter_map(begun_message);
    begun.map(|(name, _)| name)
}

/// The names of the messages of a file that are still to translate.
fn untranslated_names(messages: &'static str) -> BTreeSet<&'static str> {
    let begun = messages.lines().filter_map(begun_message);
    let untranslated = begun.filter(|(_, rest)| *rest == STILL_TO_TRANSLATE);
    untranslated.map(|(name, _)| name).collect()
}

/// A file with the English of some messages in place of its own, for the sentences that they
/// stand within.
fn in_english(messages: &str, names: &BTreeSet<&str>) -> String {
    if names.is_empty() {
        return messages.to_owned();
    }
    let is_of = |line: &str| begun_message(line).is_some_and(|(name, _)| names.contains(name));
    let own = messages.lines().filter(|line| !is_of(line));
    let mut is_wanted = false;
    let english = Language::ENGLISH.messages.lines().filter(|line| {
        if line.is_empty() || line.starts_with('#') || begun_message(line).is_some() {
            is_wanted = is_of(line);
        }
        is_wanted
    });
    own.chain(english).flat_map(|line| [line, "\n"]).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::language::fixed;

    /// A language of a few messages, some of them still to translate.
    const HALF_FRENCH: Language = Language {
        messages: "decimal-mark = ,\n\
            counted-days = STILL TO TRANSLATE\n\
            counted-intervals = { $intervals } intervalles\n\
            uncertainty-seconds = STILL TO TRANSLATE\n\
            budget-percent = { $share } %\n\
            headline-counts-no-line = { $least_intervals } : { counted-intervals }, { counted-days }\n",
        ..LANGUAGES[2]
    };

    #[test]
    fn what_is_still_to_translate_is_said_in_english_with_its_numbers() {
        let words = Words::new(HALF_FRENCH, UnitSystem::Si);
        let half = || fixed(0.5, 1);
        assert_eq!(
            words.say(message!("budget-percent", share = half())),
            "0,5 %"
        );
        let seconds = message!("uncertainty-seconds", seconds = half());
        assert_eq!(words.say(seconds), "0.5 s");
        let within = message!("budget-percent", share = half());
        let seconds = message!("uncertainty-seconds", seconds = within);
        assert_eq!(words.say(seconds), "0.5 % s");
        assert_eq!(words.say(message!("counted-days", days = 1)), "1 day");
    }

    #[test]
    fn what_is_still_to_translate_stands_in_english_within_a_translated_sentence() {
        let words = Words::new(HALF_FRENCH, UnitSystem::Si);
        let met = message!(
            "headline-counts-no-line",
            intervals = 4,
            least_intervals = 3,
            days = 2,
            least_days = 1
        );
        assert_eq!(words.say(met), "3 : 4 intervalles, 2 days");
    }

    #[test]
    #[should_panic(expected = "fr.ftl has no message \"list\"")]
    fn what_is_missing_and_not_marked_is_not_said_in_english() {
        let words = Words::new(HALF_FRENCH, UnitSystem::Si);
        words.say(message!("list", first = "a", last = "b"));
    }

    #[test]
    fn degrees_in_a_message_have_fahrenheit_beside_them() {
        // NIST SP 811 (2008), appendix B.8: t/°F = 1.8 t/°C + 32.
        assert_eq!(
            with_fahrenheit("between 5 °C and 60 °C, { $t } °C"),
            "between 5 °C (41 °F) and 60 °C (140 °F), { $t } °C"
        );
        assert_eq!(
            with_fahrenheit("5\u{a0}°C, 60\u{202f}°C, 80°C, °C"),
            "5\u{a0}°C (41\u{a0}°F), 60\u{202f}°C (140\u{202f}°F), 80°C, °C"
        );
    }
}
