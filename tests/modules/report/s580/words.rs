//! The report's words, and its snapshots.

use serde_json::Value;
use simmerline::language::Words;
use simmerline::procedure::Assessment;
use simmerline::procedure::finding::Level;
use simmerline::report::s580::words::tracks::tracks;
use simmerline::report::words::summary::SummaryRow;
use simmerline::report::words::{Report, build};

use crate::kit::campaign::Invented;
use crate::kit::rate::rate;
use crate::report::campaigns::*;

#[test]
fn wording_of_a_conforming_report() {
    insta::assert_json_snapshot!("open-dish", without_setting("open-dish"));
}

#[test]
fn wording_of_an_indicative_report() {
    insta::assert_json_snapshot!("panel-cloudy", without_setting("panel-cloudy"));
}

/// A sample's report without the words of the templates, which no sample changes.
fn without_setting(name: &str) -> Report {
    let mut report = build(&sample(name), &edition());
    report.setting.words.clear();
    report
}

/// Every string of a report.
fn strings(report: &Report) -> Vec<String> {
    fn collect(value: &Value, strings: &mut Vec<String>) {
        match value {
            Value::String(text) => strings.push(text.clone()),
            Value::Array(items) => items.iter().for_each(|item| collect(item, strings)),
            Value::Object(fields) => fields.values().for_each(|field| collect(field, strings)),
            Value::Number(number) => panic!("a number not yet put into words: {number}"),
            Value::Null | Value::Bool(_) => {}
        }
    }
    let mut found = Vec::new();
    collect(&serde_json::to_value(report).unwrap(), &mut found);
    found
}

#[test]
fn no_string_of_a_report_shows_a_number_that_is_none_or_a_word_of_the_language() {
    for (name, assessment) in samples().into_iter().chain(poor_campaigns()) {
        for text in strings(&build(&assessment, &edition())) {
            let words: Vec<&str> = text.split(|c: char| !c.is_alphanumeric()).collect();
            for wrong in ["NaN", "inf", "null", "undefined"] {
                assert!(!words.contains(&wrong), "{name}: {text}");
            }
            for wrong in [
                "−0 ", "-0.0", "  ", " ,", " .", "()", "{", "..", " ;", "None)", "Some(",
            ] {
                assert!(!text.contains(wrong), "{name}: {wrong:?} in {text:?}");
            }
        }
    }
}

#[test]
fn one_is_never_followed_by_a_plural() {
    let mut wrong = Vec::new();
    for (name, assessment) in samples().into_iter().chain(poor_campaigns()) {
        for text in strings(&build(&assessment, &edition())) {
            let words: Vec<&str> = text.split_whitespace().collect();
            let is_plural = |start: usize| {
                let mut after = words[start..].iter().filter(|word| **word != "used");
                let noun = after
                    .next()
                    .map_or("", |word| word.trim_end_matches([',', '.', ';', ')']));
                let is_word = noun.chars().all(char::is_alphabetic);
                is_word && noun.ends_with('s') && !["is", "was", "has", "lies"].contains(&noun)
            };
            let is_one = |word: &str| word.trim_start_matches('(') == "1";
            if (1..words.len()).any(|start| is_one(words[start - 1]) && is_plural(start)) {
                wrong.push(format!("{name}: {text}"));
            }
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn what_was_measured_is_not_called_unmeasured_where_no_interval_is_used() {
    let (_, assessment) = poor_campaigns().swap_remove(0);
    assert_eq!(assessment.s580.used().count(), 0);
    for row in tracks(&assessment, Words::english()) {
        assert_ne!(row.observed, "not measured", "{}", row.name);
    }
}

#[test]
fn the_number_on_page_one_is_that_of_the_rating() {
    for (name, assessment) in samples_with_water() {
        let headline = build(&assessment, &edition()).headline;
        let number = headline.number.unwrap();
        let printed: f64 = number.value.parse().unwrap();
        let decimals = number
            .value
            .split_once('.')
            .map_or(0, |(_, decimals)| decimals.len());
        let ps50_w = assessment.s580.rating().unwrap().ps50_w;
        let half_a_digit = 0.5 * 10_f64.powi(-(decimals as i32));
        assert!(
            (printed - ps50_w).abs() <= half_a_digit + 1e-9,
            "{name}: {printed} for {ps50_w}"
        );
    }
}

#[test]
fn an_indicative_report_says_so_in_its_title_and_what_is_missing() {
    for (name, assessment) in samples() {
        let report = build(&assessment, &edition());
        let is_indicative = is_called_indicative(&assessment);
        assert_eq!(report.title.contains("indicative"), is_indicative, "{name}");
        assert_eq!(
            report.marks.iter().any(|mark| mark.contains("Indicative")),
            is_indicative
        );
        if assessment.tested.heats_no_water() {
            // There is no rating to miss anything; what dry runs lack is told instead.
            assert!(report.headline.findings.is_empty(), "{name}");
            continue;
        }
        if let Some(missing) = &assessment.s580.conformity.missing {
            // More of what is impossible would be no better: nobody is sent out for it.
            let is_told = report.headline.level_text.contains(&missing.to_string());
            assert_eq!(is_told, !assessment.s580.is_not_valid(), "{name}");
        }
        // Nor is anything else told to be mended first.
        let all = assessment.s580.conformity.findings.iter();
        let told =
            all.filter(|found| !assessment.s580.is_not_valid() || found.level == Level::NotValid);
        assert_eq!(report.headline.findings.len(), told.count(), "{name}");
    }
}

/// A run read every ten minutes, of which every row ends alike.
fn read_by_hand(instruments: &str, header: &str, row: &str) -> Assessment {
    let rows = (0..10).map(|step| {
        let clock = format!("{}:{:02}", 11 + step / 6, 10 * (step % 6));
        format!(
            "2026-04-01 {clock},{:.1},{row}\n",
            40.0 + 5.0 * f64::from(step)
        )
    });
    let log = format!("{header}\n{}", rows.collect::<String>());
    let campaign = Invented {
        instruments,
        ..Invented::default()
    };
    rate(&campaign.text(&["notes.csv"]), &[("notes.csv", &log)]).unwrap()
}

/// What the table of instruments says, row after row.
fn instrument_table(instruments: &str, header: &str, row: &str) -> Vec<[String; 3]> {
    let assessment = read_by_hand(instruments, header, row);
    let rows = build(&assessment, &edition()).tested.instruments;
    rows.into_iter()
        .map(|row| [row.quantity, row.instrument, row.uncertainty])
        .collect()
}

#[test]
fn wind_that_nobody_wrote_down_was_not_estimated_by_eye() {
    let header = "time,water (°C),air (°C),irradiance (W/m²),wind (Bft)";
    let wind = |row: &str| {
        let table = instrument_table("", header, row);
        table
            .into_iter()
            .find(|row| row[0] == "Wind speed")
            .unwrap()
    };
    assert_eq!(wind("25.0,900,")[1..], ["not measured", "–"]);
    assert_eq!(wind("25.0,900,1")[1], "by eye, Beaufort scale (WMO-No. 8)");
}

#[test]
fn an_instrument_of_which_only_the_uncertainty_is_stated_is_not_described() {
    let instruments = "[instruments.irradiance]\nplane = \"normal\"\n\
        [instruments.water_temperature]\nuncertainty_k = 5.8\n";
    let header = "time,water (°C),air (°C),irradiance (W/m²)";
    let table = instrument_table(instruments, header, "25.0,900");
    assert_eq!(table[0], ["Water temperature", "not described", "5.8 K"]);
    assert_eq!(
        table[1],
        ["Ambient temperature", "not described", "not stated"]
    );
}

#[test]
fn resolution_that_explains_more_than_the_scatter_is_no_part_of_it() {
    // The water rises by 5 K in every interval, so that nothing scatters.
    let of_step = |resolution: &str| {
        let instruments = format!("[instruments.water_temperature]\n{resolution}\n");
        let header = "time,water (°C),air (°C),irradiance (W/m²)";
        let assessment = read_by_hand(&instruments, header, "25.0,900");
        strings(&build(&assessment, &edition())).join("\n")
    };
    let said = of_step("resolution_k = 5.0");
    assert!(said.contains("more than the 0.0 W observed"), "{said}");
    assert!(!said.contains("both are part of it"), "{said}");
}

#[test]
fn resolution_is_a_part_of_the_scatter_that_is_larger() {
    let said = strings(&build(&sample("kitchen-thermometer"), &edition())).join("\n");
    assert!(said.contains("both are part of it"), "{said}");
    assert!(!said.contains("W observed"), "{said}");
}

#[test]
fn no_figure_of_one_day_is_called_one_for_95_percent() {
    let header = "time,water (°C),air (°C),irradiance (W/m²)";
    let one_day = ("one day".to_owned(), read_by_hand("", header, "25.0,900"));
    let mut of_one_day = 0;
    for (name, assessment) in samples().into_iter().chain([one_day]) {
        let report = build(&assessment, &edition());
        assert!(!report.setting.words["summary-value"].contains("95"));
        let Some(summary) = report.summary else {
            assert!(assessment.s580.is_not_valid(), "{name}");
            continue;
        };
        let is_of_one_day = |row: &SummaryRow| row.value.contains("not 95\u{a0}%");
        let has_one_day = summary.rows.iter().any(is_of_one_day);
        let said = summary
            .note
            .contains("unless \"not 95\u{a0}%\" stands beside it:");
        assert_eq!(said, has_one_day, "{name}: {}", summary.note);
        of_one_day += usize::from(has_one_day);
    }
    assert!(of_one_day > 0);
}

#[test]
fn no_page_speaks_of_day_to_day_scatter_where_days_are_not_shown_to_differ() {
    let mut seen = [0, 0];
    for (name, assessment) in samples() {
        let report = build(&assessment, &edition());
        let Some(line) = report.regression.line else {
            continue;
        };
        let part = line.uncertainty;
        let days_differ = part.scatter[0].starts_with("Days differ by more");
        seen[usize::from(days_differ)] += 1;
        let sure = report.headline.facts.iter();
        let sure = sure.filter(|fact| fact.label == "How sure");
        for said in sure.map(|fact| &fact.text).chain([&part.means]) {
            let is_named = said.contains("is day-to-day scatter");
            assert!(days_differ || !is_named, "{name}: {said}");
        }
    }
    assert!(seen.iter().all(|&times| times > 0), "{seen:?}");
}
