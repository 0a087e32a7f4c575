//! The questions about a new campaign: how each is put, and what an answer to it can be.

use super::answers::{Answers, SunSensor, Thermometer};
use super::opening::{Opening, examples, with_unit};
use super::place::parse_place;
use super::zones::zones_at;
use crate::believable::{ELEVATION_M, MOST_WATER_KG, Range};
use crate::bounds::NAME;
use crate::campaign::kinds::RunKind;
use crate::campaign::measured::parse;
use crate::campaign::model::CookerType;
use crate::campaign::zone::parse_zone;
use crate::entry::value::Refusal;
use crate::language::UnitSystem;
use crate::measure::{Kind, Unit};
use crate::procedure::s580::limits::{LOAD_KG_M2, LOAD_TOLERANCE};
use crate::shown::is_unseen;
use crate::units::{fixed, short};

/// Openings of cookers for a household or a school, m². Common practice, no published source.
const USUAL_OPENING_M2: Range = 0.03..=20.0;

/// One question.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Question {
    Units,
    Title,
    Cooker,
    Opening,
    Site,
    Place,
    Elevation,
    TimeZone,
    Kind,
    Water,
    Thermometer,
    Sun,
    Logs,
}

/// One of the answers that a question has: its word, and what it means.
pub struct Choice {
    pub word: &'static str,
    pub meaning: &'static str,
}

const fn choice(word: &'static str, meaning: &'static str) -> Choice {
    Choice { word, meaning }
}

const UNITS: &[Choice] = &[
    choice("metric", "m, kg, °C"),
    choice("us", "ft, in, lb, °F"),
];
const COOKERS: &[Choice] = &[
    choice(
        "box",
        "an insulated box with a window, with or without mirrors",
    ),
    choice("panel", "flat or folding reflectors around a pot"),
    choice("concentrating", "a dish or trough with a focus"),
    choice("tube", "a glass tube with a vacuum"),
];
const KINDS: &[Choice] = &[
    choice("water", "water heats up: what a rating rests on"),
    choice(
        "dry",
        "the empty dark pot, as hot as it gets: no rating, but a figure of its own",
    ),
    choice("cooling", "hot water cools, shaded"),
];
const THERMOMETERS: &[Choice] = &[
    choice("kitchen", "a cooking thermometer, with a dial or digits"),
    choice(
        "oven",
        "an oven thermometer, with a dial in steps of 5 °C or 10 °F",
    ),
    choice(
        "thermocouple",
        "a thermocouple (taken as type K, class 2, unless you change it)",
    ),
    choice("pt100", "a Pt100 (taken as class B, unless you change it)"),
    choice("unknown", "not known: the most cautious is assumed"),
];
const SUN: &[Choice] = &[
    choice(
        "none",
        "no sensor: you note when no cloud was near the sun, and a clear sky is computed",
    ),
    choice(
        "faces-sun",
        "a sensor that faces the sun as the cooker does",
    ),
    choice(
        "lies-flat",
        "a sensor that lies flat; what it reads is turned to the sun, except for a box",
    ),
    choice("station", "a weather station nearby, with a log"),
];
const YES_NO: &[Choice] = &[
    choice("yes", "each becomes a run"),
    choice("no", "none does; an empty log is written"),
];

impl Question {
    /// Every question, in the order in which they are put.
    pub const ALL: [Question; 13] = [
        Question::Units,
        Question::Title,
        Question::Cooker,
        Question::Opening,
        Question::Site,
        Question::Place,
        Question::Elevation,
        Question::TimeZone,
        Question::Kind,
        Question::Water,
        Question::Thermometer,
        Question::Sun,
        Question::Logs,
    ];

    /// Its option on the command line, without the dashes.
    pub fn option(self) -> &'static str {
        match self {
            Question::Units => "units",
            Question::Title => "title",
            Question::Cooker => "cooker",
            Question::Opening => "opening",
            Question::Site => "site",
            Question::Place => "place",
            Question::Elevation => "elevation",
            Question::TimeZone => "time-zone",
            Question::Kind => "kind",
            Question::Water => "water",
            Question::Thermometer => "thermometer",
            Question::Sun => "sun",
            Question::Logs => "logs",
        }
    }

    /// The key of the campaign file that it is about, which a file of shared keys may give.
    pub fn key(self) -> Option<&'static str> {
        match self {
            Question::Units => Some("report.units"),
            Question::Site => Some("site.name"),
            Question::Place => Some("site.latitude_deg"),
            Question::Elevation => Some("site.elevation_m"),
            Question::TimeZone => Some("site.time_zone"),
            Question::Sun => Some("instruments.irradiance.plane"),
            _ => None,
        }
    }

    /// How it is put.
    pub fn asks(self) -> &'static str {
        match self {
            Question::Units => "Which units do you measure in?",
            Question::Title => "What do you test?",
            Question::Cooker => "What kind of cooker is it?",
            Question::Opening => "How large is the opening that sunlight falls into?",
            Question::Site => "What is the place called?",
            Question::Place => "Where is it?",
            Question::Elevation => "How high above the sea?",
            Question::TimeZone => "Which time zone does your clock show?",
            Question::Kind => "What is heated?",
            Question::Water => "How much water?",
            Question::Thermometer => "What is its temperature read with?",
            Question::Sun => "What measures the sunlight?",
            Question::Logs => "Take the logs that lie there?",
        }
    }

    /// What an answer serves for, and how it is written.
    pub fn explains(self, answers: &Answers) -> String {
        let [length, mass] = [Kind::Length, Kind::Mass].map(|kind| answers.usual(kind).symbol());
        match self {
            Question::Units => "Your answers may be in any unit that you name; this is for numbers without one.".to_owned(),
            Question::Title => "A name for the report; one campaign is one cooker in one configuration.".to_owned(),
            Question::Cooker => "It says which published figures apply.".to_owned(),
            Question::Opening => format!(
                "Everything that sends sunlight to the pot, as seen from the sun: {}.",
                examples(answers.usual_size())
            ),
            Question::Site => "It stands on the report.".to_owned(),
            Question::Place => "Latitude and longitude as your phone shows them, such as 35.0844, -106.6504 or 35°05'04\"N 106°39'01\"W. The sun's height follows from it.".to_owned(),
            Question::Elevation => format!(
                "Water boils colder higher up. A phone or a map tells it; 30 m or 100 ft more or less do not matter. A number in {length}, or with its unit."
            ),
            Question::TimeZone => "A name such as Africa/Nairobi, or an offset such as -05:00.".to_owned(),
            Question::Kind => "You can add runs of the other kinds later.".to_owned(),
            Question::Water => format!(
                "Weighed, not poured: the standard asks for {} kg per square metre of the opening. A number in {mass}, or with its unit, such as 16 lb 3 oz.",
                short(LOAD_KG_M2)
            ),
            Question::Thermometer => "How sure the rating is depends on it. Put it into boiling water once: it should show the local boiling point.".to_owned(),
            Question::Sun => "Without a sensor the rating is indicative at best, and still worth having.".to_owned(),
            Question::Logs => "How each was understood stands above.".to_owned(),
        }
    }

    /// The answers that it has; none where any text will do.
    pub fn choices(self) -> &'static [Choice] {
        match self {
            Question::Units => UNITS,
            Question::Cooker => COOKERS,
            Question::Kind => KINDS,
            Question::Thermometer => THERMOMETERS,
            Question::Sun => SUN,
            Question::Logs => YES_NO,
            _ => &[],
        }
    }

    /// Whether it is put at all.
    pub fn applies(self, answers: &Answers) -> bool {
        match self {
            Question::Water => answers.kind() != RunKind::Dry,
            Question::Sun => answers.kind() != RunKind::Cooling,
            _ => true,
        }
    }

    /// The answer that an empty line stands for.
    pub fn offers(self, answers: &Answers) -> Option<String> {
        let offered = match self {
            Question::Units => "metric".to_owned(),
            Question::Title => "My cooker, first version".to_owned(),
            Question::Site => "My yard".to_owned(),
            Question::TimeZone => zones_at(answers.place?).into_iter().next()?,
            Question::Kind => "water".to_owned(),
            Question::Water => {
                let load_kg = LOAD_KG_M2 * answers.opening.as_ref()?.area_m2()?;
                let mass = answers.usual(Kind::Mass);
                format!("{} {}", fixed(mass.of_base(load_kg), 1), mass.symbol())
            }
            Question::Thermometer => match answers.kind() {
                RunKind::Dry => "oven".to_owned(),
                RunKind::Water | RunKind::Cooling => "kitchen".to_owned(),
            },
            Question::Sun => match answers.logged_sun {
                Some(SunSensor::FacesSun) => "faces-sun".to_owned(),
                Some(SunSensor::LiesFlat) => "lies-flat".to_owned(),
                _ => "none".to_owned(),
            },
            Question::Logs => "yes".to_owned(),
            Question::Cooker | Question::Opening | Question::Place | Question::Elevation => {
                return None;
            }
        };
        Some(offered)
    }

    /// Takes an answer; what was understood, where that is more than what was typed.
    ///
    /// # Errors
    /// A [`Refusal`] for what cannot be.
    pub fn take(self, answers: &mut Answers, text: &str) -> Result<Option<String>, Refusal> {
        let text = text.trim();
        if text.contains(is_unseen) {
            return Err(Refusal::new(
                "found a control character, as an arrow key gives",
                "type the answer again",
            ));
        }
        match self {
            Question::Title => answers.title = Some(name(text)?),
            Question::Site => answers.site = Some(name(text)?),
            Question::Opening => return take_opening(answers, text),
            Question::Place => return take_place(answers, text),
            Question::Elevation => return take_elevation(answers, text),
            Question::TimeZone => return take_zone(answers, text),
            Question::Water => return take_water(answers, text),
            Question::Units => {
                let word = self.chosen(text)?;
                answers.units = Some(match word {
                    "us" => UnitSystem::Us,
                    _ => UnitSystem::Si,
                });
            }
            Question::Cooker => {
                let word = self.chosen(text)?;
                let mut types = CookerType::ALL.into_iter();
                answers.cooker = types.find(|cooker| cooker.word() == word);
            }
            Question::Kind => answers.kind = RunKind::of_word(self.chosen(text)?),
            Question::Thermometer => {
                answers.thermometer = Some(match self.chosen(text)? {
                    "kitchen" => Thermometer::Kitchen,
                    "oven" => Thermometer::OvenDial,
                    "thermocouple" => Thermometer::Thermocouple,
                    "pt100" => Thermometer::Pt100,
                    _ => Thermometer::Unknown,
                });
            }
            Question::Sun => {
                answers.sun = Some(match self.chosen(text)? {
                    "faces-sun" => SunSensor::FacesSun,
                    "lies-flat" => SunSensor::LiesFlat,
                    "station" => SunSensor::Station,
                    _ => SunSensor::None,
                });
            }
            Question::Logs => answers.takes_logs = Some(self.chosen(text)? == "yes"),
        }
        Ok(None)
    }

    /// The choice of a number, a word, or the beginning of a word.
    fn chosen(self, text: &str) -> Result<&'static str, Refusal> {
        let choices = self.choices();
        let lower = text.to_lowercase();
        let by_number = || choices.get(lower.parse::<usize>().ok()?.checked_sub(1)?);
        let mut begun = choices
            .iter()
            .filter(|choice| !lower.is_empty() && choice.word.starts_with(&lower));
        let by_beginning = match (begun.next(), begun.next()) {
            (Some(only), None) => Some(only),
            _ => None,
        };
        let found = by_number().or(by_beginning);
        found.map(|choice| choice.word).ok_or_else(|| {
            let words: Vec<&str> = choices.iter().map(|choice| choice.word).collect();
            Refusal::new(
                format!("found \"{text}\", expected one of {}", words.join(", ")),
                "type its number or its word",
            )
        })
    }
}

fn name(text: &str) -> Result<String, Refusal> {
    match NAME.exceeded_by(text.chars().count()) {
        Some(what) => Err(Refusal::new(what, "shorten it")),
        None if text.is_empty() => Err(Refusal::new("found nothing", "type a name")),
        None => Ok(text.to_owned()),
    }
}

fn take_opening(answers: &mut Answers, text: &str) -> Result<Option<String>, Refusal> {
    let (area, size) = (answers.usual(Kind::Area), answers.usual_size());
    let opening = Opening::parse(text, area, size)
        .map_err(|what| Refusal::new(what, "measure it as the sun sees it"))?;
    let area_m2 = opening.area_m2().expect("it was parsed with an area");
    answers.opening = Some(opening);
    let us = match answers.is_us() {
        true => format!(" ({} ft²)", fixed(area.of_base(area_m2), 1)),
        false => String::new(),
    };
    let doubt = match USUAL_OPENING_M2.contains(&area_m2) {
        true => "",
        false => {
            "; that is unusual: back returns to the question, and a unit may be named, as in 3 x 2 ft"
        }
    };
    Ok(Some(format!(
        "an opening of {} m²{us}{doubt}",
        fixed(area_m2, 3)
    )))
}

fn take_place(answers: &mut Answers, text: &str) -> Result<Option<String>, Refusal> {
    const HINT: &str = "north and east are positive, south and west negative, or write N, S, E, W";
    let place = parse_place(text).map_err(|what| Refusal::new(what, HINT))?;
    answers.place = Some(place);
    let half = |degrees: f64, positive: &'static str, negative: &'static str| {
        let letter = if degrees < 0.0 { negative } else { positive };
        format!("{}° {letter}", fixed(degrees.abs(), 4))
    };
    let zones = match zones_at(place) {
        zones if zones.is_empty() => String::new(),
        zones => format!(": time zone {}", zones.join(" or ")),
    };
    Ok(Some(format!(
        "{}, {}{zones}",
        half(place.latitude_deg, "N", "S"),
        half(place.longitude_deg, "E", "W")
    )))
}

fn take_elevation(answers: &mut Answers, text: &str) -> Result<Option<String>, Refusal> {
    let (said, metres) = quantity(answers, text, Kind::Length)?;
    if !ELEVATION_M.contains(&metres) {
        let (lowest, highest) = (ELEVATION_M.start(), ELEVATION_M.end());
        return Err(Refusal::new(
            format!(
                "found {said} ({} m), expected {lowest} to {highest} m",
                fixed(metres, 0)
            ),
            "correct it, or name its unit",
        ));
    }
    answers.elevation = Some(said);
    Ok(answers
        .is_us()
        .then(|| format!("{} m above the sea", fixed(metres, 0))))
}

fn take_zone(answers: &mut Answers, text: &str) -> Result<Option<String>, Refusal> {
    if parse_zone(text).is_none() {
        return Err(Refusal::new(
            format!("found \"{text}\", expected a time zone"),
            "write a name such as Africa/Nairobi, or an offset such as -05:00",
        ));
    }
    answers.time_zone = Some(text.to_owned());
    Ok(None)
}

fn take_water(answers: &mut Answers, text: &str) -> Result<Option<String>, Refusal> {
    let (said, kilograms) = quantity(answers, text, Kind::Mass)?;
    if !(f64::MIN_POSITIVE..=MOST_WATER_KG).contains(&kilograms) {
        return Err(Refusal::new(
            format!("found {said}, expected more than 0 and at most {MOST_WATER_KG} kg"),
            "weigh the water without the pot",
        ));
    }
    answers.water = Some(said);
    let area_m2 = answers.opening.as_ref().and_then(Opening::area_m2);
    let load = area_m2.map(|area_m2| {
        let load_kg_m2 = kilograms / area_m2;
        let is_off = (load_kg_m2 / LOAD_KG_M2 - 1.0).abs() > LOAD_TOLERANCE;
        let off = match is_off {
            true => format!(
                "; the standard asks for {}, so the rating will be indicative",
                short(LOAD_KG_M2)
            ),
            false => String::new(),
        };
        format!("{} kg per m²{off}", fixed(load_kg_m2, 1))
    });
    Ok(load)
}

/// A quantity with its unit, and what it is in the base unit.
fn quantity(answers: &Answers, text: &str, kind: Kind) -> Result<(String, f64), Refusal> {
    let usual = answers.usual(kind);
    let said = with_unit(text, usual, kind);
    let value = said.as_deref().and_then(|said| parse(said, kind));
    said.zip(value).ok_or_else(|| {
        Refusal::new(
            format!("found \"{text}\", expected a number in {}", usual.symbol()),
            format!(
                "or with one of the units {}; without a thousands mark",
                Unit::known(&[kind])
            ),
        )
    })
}
