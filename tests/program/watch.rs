//! `watch --once`, and `watch` in a pipe.

use std::fs::OpenOptions;
use std::io::Write;

use serde_json::Value;
use simmerline::language::LANGUAGES;
use unicode_width::UnicodeWidthStr;

use crate::bench::{Bench, Ended, HEADER, heating, row};

/// A local time on 16 April 2026, the third day of the campaign, as seconds since 1970.
fn on_third_day(hour: u32, minute: u32) -> String {
    let midnight_s = 1_776_297_600_u32;
    (midnight_s + hour * 3600 + minute * 60).to_string()
}

/// The campaign with the third day's log up to a row, a row every 30 s.
fn bench_until(after_s: u32) -> Bench {
    let bench = Bench::new();
    let rows: String = (0..=after_s)
        .step_by(30)
        .map(|after_s| row(16, after_s) + "\n")
        .collect();
    bench.write("mallee/day-3.csv", format!("{HEADER}\n{rows}"));
    bench
}

fn once(bench: &Bench, hour: u32, minute: u32, more: &[&str]) -> Ended {
    let mut command = bench.command(&[&["watch", "mallee", "--once"], more].concat());
    Ended::of(command.env("SOURCE_DATE_EPOCH", on_third_day(hour, minute)))
}

/// The text behind a label.
fn behind<'t>(text: &'t str, label: &str) -> &'t str {
    let mut lines = text.lines();
    let line = lines.find(|line| line.trim_start().starts_with(label));
    let line = line.unwrap_or_else(|| panic!("no {label} in {text}"));
    line.trim_start()[label.len()..].trim()
}

#[test]
fn once_says_what_check_says_so_far() {
    for after_s in [300, 3000, 9000, 13_800] {
        let bench = bench_until(after_s);
        let watched = once(&bench, 11, 0, &[]).exits(0).out;
        let checked = bench.run(&["check", "mallee"]).exits(0).out;
        let so_far = behind(&watched, "so far");
        let expected = behind(&checked, "so far");
        assert!(so_far.contains(expected), "{so_far}\n{expected}");
        let json = bench.run(&["check", "mallee", "--format", "json"]).exits(0);
        let json: Value = serde_json::from_str(&json.out).unwrap();
        let found = &json["campaigns"][0]["checked"];
        let counts = format!("from {} of {} intervals", found["used"], found["intervals"]);
        assert!(so_far.contains(&counts), "{so_far}");
        let number = |text: &str, behind: &str| -> (f64, f64) {
            let text = text.split(behind).nth(1).unwrap();
            let text = text.split(" W").next().unwrap();
            let decimals = text.split('.').nth(1).map_or(0, str::len) as i32;
            (text.parse().unwrap(), 0.5 * 10f64.powi(-decimals))
        };
        for (behind, key) in [("= ", "ps50_w"), ("± ", "expanded_uncertainty_w")] {
            let (told, within) = number(so_far, behind);
            let exact = found["rating"][key].as_f64().unwrap();
            assert!((told - exact).abs() <= within + 1e-9, "{told} {exact}");
        }
        let today = behind(&watched, "today");
        match found["missing"].as_str() {
            Some(missing) => assert!(today.ends_with(&format!("missing: {missing}")), "{today}"),
            None => assert!(today.ends_with("enough already"), "{today}"),
        }
        let of_day = &found["runs"][2];
        assert_eq!(of_day["run"], "day-3.csv");
        let counts = format!("{} of {} interval", of_day["used"], of_day["intervals"]);
        assert!(today.starts_with(&counts), "{today}");
    }
}

#[test]
fn the_first_line_says_how_it_stands_and_the_second_what_to_do() {
    let good = bench_until(3000);
    let told = |bench: &Bench, hour: u32, minute: u32| {
        let text = once(bench, hour, minute, &[]).exits(0).out;
        let lines: Vec<String> = text.lines().take(2).map(str::to_owned).collect();
        lines.join("\n")
    };
    // 10:05 and 3,000 s are 10:55.
    // A row of the interval that runs, of 10:58.
    let change = |bench: &Bench, from: &str, to: &str| {
        let before = row(16, 3180);
        let after = before.replace(from, to);
        assert_ne!(after, before);
        bench.replace("mallee/day-3.csv", &before, &after);
    };
    let first = "✓ Good so far: 5 of 10 min of this interval\n  next  ";
    let expected = format!("{first}it is enough: you can stop after this interval");
    assert_eq!(told(&bench_until(3300), 11, 0), expected);
    let lacking = bench_until(3300);
    let two_days = "\n[[run]]\nlog = \"day-1.csv\"\n\n[[run]]\nlog = \"day-2.csv\"\n";
    lacking.replace("mallee/campaign.toml", two_days, "");
    assert_eq!(told(&lacking, 11, 0), format!("{first}leave it as it is"));
    let text = told(&good, 14, 30);
    assert!(text.starts_with("~ The solar window has closed"), "{text}");
    let waiting = Bench::new();
    waiting.replace("mallee/campaign.toml", "day-3.csv", "day-4.csv");
    let text = told(&waiting, 9, 0);
    let expected = "~ Waiting for the first row of today\n  next  aim, and start the logger";
    assert_eq!(text, expected);
    let cloud = bench_until(3300);
    change(&cloud, ",896,", ",449.8,");
    let text = told(&cloud, 11, 0);
    let begins = "✗ This interval is spoiled: lowest irradiance in the interval 449.8 W/m², at least 450 W/m²";
    assert!(text.starts_with(begins), "{text}");
    assert!(text.contains("\n  next  wait for clear sky"), "{text}");
    assert!(text.ends_with("begins at 11:05"), "{text}");
    let windy = bench_until(3300);
    change(&windy, ",0.4", ",9.4");
    let text = told(&windy, 11, 0);
    assert!(
        text.starts_with("~ At risk: mean wind 1.3 m/s, at most 1 m/s"),
        "{text}"
    );
    let hot = bench_until(11_700);
    let text = told(&hot, 13, 20);
    assert!(text.contains("next  have cool water ready"), "{text}");
}

#[test]
fn aiming_window_units_and_language_are_those_of_the_campaign() {
    let bench = bench_until(3300);
    let text = once(&bench, 11, 0, &[]).exits(0).out;
    let aim = behind(&text, "aim again");
    assert!(
        aim.starts_with("no times, since acceptance_half_angle_deg is not stated"),
        "{aim}"
    );
    let whole = text.split_whitespace().collect::<Vec<_>>().join(" ");
    let practice = "Common practice, no published source: a shallow reflector about every 45 min";
    assert!(whole.contains(practice), "{text}");
    let keys = "acceptance_half_angle_deg = 5.0\nintercept_area_m2";
    bench.replace("mallee/campaign.toml", "intercept_area_m2", keys);
    bench.replace(
        "mallee/campaign.toml",
        "[site]",
        "[report]\nunits = \"us\"\n\n[site]",
    );
    let text = once(&bench, 11, 3, &[]).exits(0).out;
    let planned = bench
        .run(&["plan", "mallee", "--date", "2026-04-16"])
        .exits(0)
        .out;
    let next = behind(&text, "aim again");
    let next = next.strip_prefix("at ").unwrap().split(',').next().unwrap();
    assert!(behind(&planned, "aim").contains(next), "{next}: {planned}");
    let window = behind(&planned, "solar window");
    let closes = window
        .split(" to ")
        .nth(1)
        .unwrap()
        .split(' ')
        .next()
        .unwrap();
    assert!(behind(&text, "solar window").starts_with(&format!("closes at {closes}")));
    assert!(behind(&text, "water").contains("°F"), "{text}");
    let text = once(&bench, 11, 0, &["--language", "es"]).exits(0).out;
    assert!(text.starts_with("✓ Bien por ahora: 5 de 10 min"), "{text}");
}

/// The limits are on irradiance facing the sun: what is shown beside them is too.
#[test]
fn readings_of_a_flat_sensor_are_shown_as_they_count() {
    let bench = bench_until(3300);
    let flat = "estimate = \"from-horizontal\"\nplane = \"horizontal\"";
    bench.replace("mallee/campaign.toml", "plane = \"normal\"", flat);
    let text = once(&bench, 11, 0, &[]).exits(0).out;
    let sun = behind(&text, "sun");
    let (counts, sensor) = sun
        .split_once(" W/m² facing the sun, which is used (")
        .unwrap();
    assert!(sensor.starts_with("flat sensor: 896)"), "{sun}");
    let counts: f64 = counts.parse().unwrap();
    let range = text.split("irradiance under ").nth(1).unwrap();
    let (low, rest) = range.split_once(" or over ").unwrap();
    let (high, _) = rest.split_once(' ').unwrap();
    let [low, high]: [f64; 2] = [low, high].map(|limit| limit.parse().unwrap());
    // As the sensor has it, the interval would look spoiled.
    assert!(896.0 < low && low < counts && counts < high, "{text}");
}

#[test]
fn every_language_fits_sixty_columns_in_every_state() {
    let bench = bench_until(3300);
    let add = |text: &str| {
        let path = bench.path("mallee/day-3.csv");
        let mut log = OpenOptions::new().append(true).open(path).unwrap();
        log.write_all(text.as_bytes()).unwrap();
    };
    let spoils = [
        "",
        "2026-04-16 11:00:30,55.4,26.0,300,0.4\n",
        "2026-04-16 11:01:00,55.6,26.0,896,0.4",
        "\n2026-04-16 11:01:30,5x,26.0,896,0.4\n",
    ];
    for spoil in spoils {
        add(spoil);
        for language in LANGUAGES {
            for (hour, minute) in [(9, 0), (11, 2), (15, 0)] {
                let mut command =
                    bench.command(&["watch", "mallee", "--once", "--language", language.code]);
                command.env("SOURCE_DATE_EPOCH", on_third_day(hour, minute));
                let text = Ended::of(command.env("COLUMNS", "60")).out;
                assert!(
                    !text.contains('\u{1b}') && !text.contains("watch-"),
                    "{text}"
                );
                for line in text.lines() {
                    let is_path = line.contains("day-3.csv");
                    assert!(line.width() <= 60 || is_path, "{}: {line}", language.code);
                }
            }
        }
    }
}

#[test]
fn once_tells_what_cannot_be_used_and_its_exit_code_is_that_of_check() {
    let bench = Bench::new();
    bench.write("mallee/day-3.csv", heating(16).replace(",26.0,", ",cold,"));
    let ended = once(&bench, 11, 0, &[]);
    assert_eq!(ended.code, bench.run(&["check", "mallee"]).code);
    assert_eq!(ended.code, 3);
    assert!(
        ended
            .out
            .contains("\n~ cannot be used now: mallee/day-3.csv:"),
        "{}",
        ended.out
    );
    assert!(
        ended.out.contains("so far"),
        "the other days count: {}",
        ended.out
    );
    bench.replace("mallee/campaign.toml", "[site]", "[sight]");
    let ended = once(&bench, 11, 0, &[]).exits(4);
    assert!(ended.err.starts_with("error: ") && ended.out.is_empty());
}

/// On the day of the test and two days later, of one log.
#[test]
fn intervals_of_another_day_are_told_with_their_date() {
    let bench = bench_until(9000);
    let same_day = once(&bench, 13, 0, &[]).exits(0).out;
    let gained = behind(&same_day, "today").to_owned();
    assert!(gained.starts_with("14 of 15 intervals used;"), "{gained}");
    let later = once(&bench, 13 + 48, 0, &[]).exits(0).out;
    assert!(
        later.starts_with("~ Waiting for the first row of today\n"),
        "{later}"
    );
    assert_eq!(
        behind(&later, "last day"),
        format!("16 April 2026: {gained}")
    );
}

#[test]
fn a_dry_and_a_cooling_run_have_no_intervals() {
    let bench = Bench::new();
    let text = bench.read("mallee/campaign.toml");
    let cooling = text.replace(
        "log = \"day-3.csv\"",
        "log = \"day-3.csv\"\nkind = \"cooling\"",
    );
    bench.write("mallee/campaign.toml", cooling);
    let text = once(&bench, 11, 0, &[]).exits(0).out;
    assert!(text.starts_with("✓ Being read: "), "{text}");
    assert!(
        text.contains("\n  water ") && !text.contains("spoils it"),
        "{text}"
    );
    let names = HEADER.replace("water_c", "vessel_c");
    let dry = heating(16).replace(HEADER, &names);
    bench.write("mallee/day-3.csv", dry);
    bench.replace("mallee/campaign.toml", "\"cooling\"", "\"dry\"");
    let text = once(&bench, 11, 0, &[]).exits(0).out;
    assert!(text.starts_with("✓ Being read: "), "{text}");
    assert!(text.contains("\n  vessel "), "{text}");
    assert!(
        text.contains("Never pour water into it while it is hot"),
        "{text}"
    );
}
