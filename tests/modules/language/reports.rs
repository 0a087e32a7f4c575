//! Reports in every language: nothing English in them, and numbers as the language has them.

use jiff::Timestamp;
use serde_json::Value;
use simmerline::language::UnitSystem;
use simmerline::language::{LANGUAGES, Language, Words};
use simmerline::message;
use simmerline::report::Edition;
use simmerline::report::figures::style::Canvas;
use simmerline::report::s580::figures::condition_tracks::draw_condition_tracks;
use simmerline::report::s580::figures::power_line::{HEIGHTS_PT, draw_power_line};
use simmerline::report::s580::figures::run_axes::RunAxes;
use simmerline::report::s580::figures::run_day::draw_run;
use simmerline::report::s580::words::evidence::{IntervalTable, interval_table};
use simmerline::report::words::build;

use super::files::is_whole;
use crate::kit::rate::{sample, samples};

/// Words that betray English in a sentence, in none of the other languages.
const ENGLISH_WORDS: [&str; 12] = [
    "the", "and", "with", "from", "which", "is", "are", "was", "were", "not", "water", "each",
];

fn edition(language: Language) -> Edition {
    Edition {
        words: Words::new(language, UnitSystem::Si),
        ..Edition::plain(Timestamp::UNIX_EPOCH)
    }
}

fn strings(value: &Value, path: &str, found: &mut Vec<(String, String)>) {
    match value {
        Value::String(text) => found.push((path.to_owned(), text.clone())),
        Value::Array(items) => {
            for (index, item) in items.iter().enumerate() {
                strings(item, &format!("{path}[{index}]"), found);
            }
        }
        Value::Object(fields) => {
            for (key, field) in fields {
                strings(field, &format!("{path}.{key}"), found);
            }
        }
        _ => {}
    }
}

/// Titles that every language quotes as they are.
const TITLES: [&str; 2] = [
    "testing and reporting solar cooker performance",
    "WHO/FWC/WSH/15.02",
];

/// A text without what the tester wrote, without titles and without headers of logs.
fn without_own_words(text: &str, campaign: &str) -> String {
    let quoted = |text: &str| -> Vec<String> {
        let quoted = text.split('"').skip(1).step_by(2);
        quoted
            .filter(|own| own.len() > 2)
            .map(str::to_owned)
            .collect()
    };
    let mut own = [quoted(text), quoted(campaign)].concat();
    // A word that is a value of its own may stand in a longer text.
    own.sort_by_key(|own| std::cmp::Reverse(own.len()));
    let own = own.iter().map(String::as_str).chain(TITLES);
    own.fold(text.to_owned(), |text, own| text.replace(own, " "))
}

#[test]
fn no_report_has_english_in_it_or_a_decimal_mark_of_another_language() {
    let mut wrong = Vec::new();
    for (name, assessment) in samples() {
        for language in LANGUAGES.into_iter().skip(1).filter(is_whole) {
            let edition = edition(language);
            let has_comma = edition.words.say(simmerline::message!("decimal-mark")) == ",";
            let report = serde_json::to_value(build(&assessment, &edition)).unwrap();
            let mut found = Vec::new();
            strings(&report, "", &mut found);
            for (path, text) in found {
                let place = format!("{} {}{path}", language.code, name);
                let own = without_own_words(&text, &assessment.tested.campaign.text);
                let mut words =
                    own.split(|letter: char| !(letter.is_alphanumeric() || "-_.".contains(letter)));
                if let Some(word) = words.find(|word| ENGLISH_WORDS.contains(word)) {
                    wrong.push(format!("{place}: \"{word}\" in {text}"));
                }
                let figures: Vec<char> = own.chars().collect();
                let has_point = figures.windows(3).any(|three| {
                    three[0].is_ascii_digit() && three[1] == '.' && three[2].is_ascii_digit()
                });
                if has_comma && has_point && !is_code(&path, &text) {
                    wrong.push(format!("{place}: a decimal point in {text}"));
                }
            }
        }
    }
    wrong.sort();
    wrong.dedup();
    assert!(wrong.is_empty(), "{}:\n{}", wrong.len(), wrong.join("\n"));
}

/// Numbers of standards, of versions and of files keep their point, as does the length of a bar.
fn is_code(path: &str, text: &str) -> bool {
    path.ends_with(".part_percent")
        || [
            "S580.1",
            "simmerline ",
            ".csv",
            ".toml",
            "7.8",
            "4.3.7",
            "7.2.6",
        ]
        .iter()
        .any(|code| text.contains(code))
}

#[test]
fn units_of_the_us_stand_beside_those_of_the_si() {
    let assessment = sample("open-dish");
    let edition = Edition {
        words: Words::new(Language::ENGLISH, UnitSystem::Us),
        ..Edition::plain(Timestamp::UNIX_EPOCH)
    };
    let report = serde_json::to_string(&build(&assessment, &edition)).unwrap();
    // 95 °C is 203 °F exactly; 2 kg is 4.4 lb (NIST SP 811).
    for expected in ["95 °C (203 °F)", "2 kg (4.4 lb)"] {
        assert!(report.contains(expected), "no {expected}");
    }
}

/// In every language, wherever they come from: findings, sums and what was weighed.
#[test]
fn quantities_within_sentences_are_in_units_of_the_us_too() {
    for language in LANGUAGES {
        let said = |name: &str| {
            let edition = Edition {
                words: Words::new(language, UnitSystem::Us),
                ..Edition::plain(Timestamp::UNIX_EPOCH)
            };
            serde_json::to_string(&build(&sample(name), &edition)).unwrap()
        };
        // 80 °C is 176 °F, 5 K are 9 °F, 1.4 kg are 3.1 lb (NIST SP 811, B.8).
        for (name, expected) in [
            ("open-dish", "80 °C (176 °F)"),
            ("dish-cooling", "5 K (9 °F)"),
            ("dish-cooling", "1.4 kg (3.1 lb)"),
        ] {
            let report = said(name);
            let mark = Words::new(language, UnitSystem::Us).say(message!("decimal-mark"));
            let expected = expected.replace('.', &mark);
            assert!(
                report.contains(&expected),
                "{name}, {}: no {expected}",
                language.code
            );
        }
    }
}

#[test]
fn figures_and_tables_are_in_units_of_the_us_too() {
    let assessment = sample("open-dish");
    let words = Words::new(Language::ENGLISH, UnitSystem::Us);
    let line = draw_power_line(&assessment, &Canvas::page(&words), HEIGHTS_PT[0]).unwrap();
    // 50 K is 90 °F as a difference (NIST SP 811, B.8).
    for expected in ["50 (90)", "K (°F)", "at 50 K (90 °F)"] {
        assert!(line.contains(expected), "no {expected}");
    }
    let conditions = draw_condition_tracks(&assessment, &Canvas::page(&words)).unwrap();
    // 20 °C is 68 °F; 1 m/s is 2.237 mph (NIST SP 811, B.8: 1 mph is 0.44704 m/s).
    for expected in ["20 (68)", "5 (9)", "1 (2.2)"] {
        assert!(conditions.contains(expected), "no {expected}");
    }
    let axes = RunAxes::of(&assessment, &words);
    let runs = assessment.tested.runs.len();
    for index in 0..runs {
        let day = draw_run(&assessment, index, &axes, &Canvas::page(&words)).unwrap();
        for expected in ["1 m/s", "2.2 mph", "200 °F"] {
            assert!(day.contains(expected), "run {index}: no {expected}");
        }
    }
    let of = |units: UnitSystem| {
        let words = Words::new(Language::ENGLISH, units);
        interval_table(&assessment, &words)
    };
    let (si, us) = (of(UnitSystem::Si), of(UnitSystem::Us));
    assert_eq!((si.speed_unit, us.speed_unit), ("m/s", "mph"));
    let wind = |table: &IntervalTable| -> Vec<f64> {
        let rows = table.groups.iter().flat_map(|group| &group.rows);
        rows.map(|row| row.cells[6].parse().unwrap()).collect()
    };
    for (metres_per_second, miles_per_hour) in wind(&si).into_iter().zip(wind(&us)) {
        // Both are printed with one decimal.
        let off = (metres_per_second / 0.44704 - miles_per_hour).abs();
        assert!(
            off < 0.05 / 0.44704 + 0.05 + 1e-9,
            "{metres_per_second} m/s, {miles_per_hour} mph"
        );
    }
}
