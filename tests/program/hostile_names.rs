//! Names, keys, values and cells that would drive a terminal: every command shows them escaped.
//! The program runs behind a pseudo-terminal, and all that reaches the screen is looked at.

use std::ffi::OsStr;
use std::fs;

use simmerline::shown::is_unseen;

use crate::bench::{Bench, heating};
use crate::typist::Typist;

/// What a stranger writes: it colours, rings, turns the text, begins lines of its own.
const HOSTILE: &str =
    "X\u{1b}[31m\r\nerror: forged\nnote: forged\r\u{7}\u{9b}2J\u{202e}\u{2028}\u{200b}\u{85}Y";
/// The same for a value of a campaign file, where other controls are refused.
const BREAKS: &str = "X\r\nerror: forged\nnote: forged\rforged\tY";

/// How a progress bar draws.
const OF_PROGRESS_BAR: [&str; 4] = ["\r\u{1b}[2K", "\u{1b}[1A", "\u{1b}[2K", "\u{1b}[1B"];

/// Runs the program behind a terminal: nothing comes to the screen that it obeys, and no line
/// that a stranger began at the left edge. What came.
fn screen<S: AsRef<OsStr>>(bench: &Bench, arguments: &[S]) -> String {
    let (code, bytes) = Typist::start(bench.root.path(), arguments).screen();
    let mut text = String::from_utf8(bytes).expect("what is shown is UTF-8");
    assert_ne!(code, 1, "{text}");
    // A terminal makes CR LF of LF.
    text = text.replace("\r\n", "\n");
    if arguments[0].as_ref() == "report" {
        for drawn in OF_PROGRESS_BAR {
            text = text.replace(drawn, "");
        }
        text = text.replace('\r', "\n");
    }
    for line in text.split('\n') {
        assert!(!line.chars().any(is_unseen), "{line:?} of {text:?}");
        for forged in ["error: forged", "note: forged", "forged"] {
            assert!(!line.starts_with(forged), "{line:?} of {text:?}");
        }
    }
    text
}

/// The same, and the hostile text came to the screen.
fn shows<S: AsRef<OsStr>>(bench: &Bench, arguments: &[S]) -> String {
    let text = screen(bench, arguments);
    assert!(text.contains("X\\") && text.contains("forged"), "{text}");
    text
}

#[test]
fn arguments_are_shown_escaped() {
    let bench = Bench::new();
    let flag = format!("--{HOSTILE}");
    for arguments in [
        &[HOSTILE][..],
        &[&flag],
        &["report", HOSTILE],
        &["report", &flag],
        &["report", "mallee", "--language", HOSTILE],
        &["report", "mallee", "--format", HOSTILE],
        &["report", "mallee", "--out", HOSTILE],
        &["check", HOSTILE],
        &["check", "mallee", &flag],
        &["compare", HOSTILE],
        &["compare", "mallee", "mallee", "--baseline", HOSTILE, &flag],
        &["verify", HOSTILE],
        &["verify", "mallee", HOSTILE],
        &["verify", "--format", "json", HOSTILE],
        &["verify", "--format", HOSTILE, "mallee"],
        &["plan", HOSTILE],
        &["plan", "mallee", "--date", HOSTILE],
        &["plan", "mallee", "--paper", HOSTILE],
        &["new", HOSTILE, "--yes"],
        &["enter", HOSTILE, "--date", "2026-03-18"],
        &["enter", "mallee", "--date", HOSTILE],
        &["enter", "mallee", "--date", "2026-03-18", "--log", HOSTILE],
        &[
            "enter",
            "mallee",
            "--date",
            "2026-03-18",
            "--start",
            HOSTILE,
        ],
        &["enter", "mallee", "--date", "2026-03-18", "--from", HOSTILE],
        &["completions", HOSTILE],
        &["manual", HOSTILE],
        &["help", HOSTILE],
    ] {
        shows(&bench, arguments);
    }
}

#[test]
fn folder_names_are_shown_escaped() {
    let bench = Bench::new();
    bench.add_campaign("odd");
    fs::rename(bench.path("odd"), bench.path(HOSTILE)).unwrap();
    // The campaign's own name is another, but the way to it is hostile.
    let inside = format!("{HOSTILE}/inner");
    for folder in [HOSTILE, inside.as_str()] {
        if folder != HOSTILE {
            let inner = bench.path("inner");
            fs::rename(bench.path(HOSTILE), &inner).unwrap();
            fs::create_dir(bench.path(HOSTILE)).unwrap();
            fs::rename(&inner, bench.path(folder)).unwrap();
            for day in 1..=3 {
                bench.write(&format!("{folder}/day-{day}.csv"), heating(20 + day));
            }
        }
        bench.write("sheet.txt", "10:20 31.5 24 1 c\n10:30 36 24 1 c\n");
        let out = format!("{folder}/out");
        shows(&bench, &["report", folder, "--out", &out]);
        screen(&bench, &["check", folder]);
        shows(&bench, &["compare", "mallee", folder, "--out", &out]);
        shows(
            &bench,
            &["plan", folder, "--date", "2026-03-18", "--out", &out],
        );
        let date = ["--date", "2026-03-18", "--from", "sheet.txt"];
        shows(&bench, &[&["enter", folder][..], &date].concat());
        fs::write(bench.path(folder).join("day-1.csv"), "nothing").unwrap();
        shows(&bench, &["report", folder]);
        shows(&bench, &["check", folder]);
    }
    let new = format!("{HOSTILE}/new");
    shows(&bench, &["new", &new, "--yes"]);
    shows(&bench, &["new", &new, "--yes"]);
    let pdf = format!("{HOSTILE}/mallee.pdf");
    screen(&bench, &["report", "mallee"]);
    fs::copy(bench.path("reports/mallee.pdf"), bench.path(&pdf)).unwrap();
    shows(
        &bench,
        &["verify", &pdf, "--extract", &format!("{HOSTILE}/extracted")],
    );
}

/// The campaign `mallee`, and another to compare it with.
fn two_campaigns() -> Bench {
    let bench = Bench::new();
    bench.add_campaign("acacia");
    for day in 1..=3 {
        bench.write(&format!("acacia/day-{day}.csv"), heating(20 + day));
    }
    bench
}

/// Every command that reads the campaign `mallee`.
fn all_commands(bench: &Bench) -> Vec<String> {
    bench.write("sheet.txt", "10:20 31.5 24 1 c\n10:30 36 24 1 c\n");
    let date = "2026-03-18";
    [
        &["report", "mallee"][..],
        &["check", "mallee"],
        &["compare", "mallee", "acacia"],
        &["plan", "mallee", "--date", date],
        &["enter", "mallee", "--date", date, "--from", "sheet.txt"],
    ]
    .map(|arguments| screen(bench, arguments))
    .to_vec()
}

/// A text in quotes of TOML.
fn quoted(text: &str) -> String {
    let escaped = text.chars().map(|character| match character {
        'a'..='z' | 'A'..='Z' | ' ' | ':' | '[' => character.to_string(),
        other => format!("\\u{:04X}", other as u32),
    });
    format!("\"{}\"", escaped.collect::<String>())
}

#[test]
fn keys_and_values_of_a_campaign_file_are_shown_escaped() {
    let toml = "mallee/campaign.toml";
    for text in [HOSTILE, BREAKS] {
        let hostile = quoted(text);
        let mut shown = 0;
        for (from, to) in [
            ("[campaign]\n", format!("{hostile} = 1\n[campaign]\n")),
            ("[campaign]\n", format!("[campaign]\n{hostile} = 1\n")),
            ("[campaign]\n", format!("[{hostile}]\na = 1\n[campaign]\n")),
            (
                "[campaign]\n",
                format!("[limits]\n{hostile} = 1\n[campaign]\n"),
            ),
            (
                "[campaign]\n",
                format!("[columns]\n{hostile} = 1\n[campaign]\n"),
            ),
            (
                "[campaign]\n",
                format!("[campaign]\nprocedure = {hostile}\n"),
            ),
            (
                "[campaign]\n",
                format!("[campaign]\nreport_number = {hostile}\n"),
            ),
            ("[campaign]\n", format!("[campaign]\nnotes = {hostile}\n")),
            ("[campaign]\n", format!("[campaign]\n{text} = 1\n")),
            ("[campaign]\n", format!("[campaign]\nnotes = \"{text}\n")),
            ("\"Mallee trough, bare pot\"", hostile.clone()),
            ("\"Mallee trough\"", hostile.clone()),
            ("\"concentrating\"", hostile.clone()),
            ("\"Nowhere flats (invented)\"", hostile.clone()),
            ("\"UTC\"", hostile.clone()),
            ("elevation_m = 100", format!("elevation_m = {hostile}")),
            ("plane = \"normal\"", format!("plane = {hostile}")),
            (
                "plane = \"normal\"",
                format!("plane = \"normal\"\nclass = {hostile}"),
            ),
            (
                "plane = \"normal\"",
                format!("plane = \"normal\"\nid = {hostile}"),
            ),
            ("type = ", format!("photo = {hostile}\ntype = ")),
            ("type = ", format!("received = {hostile}\ntype = ")),
            (
                "type = ",
                format!("currency = {hostile}\ncost = 3\ntype = "),
            ),
            ("\"day-1.csv\"", hostile.clone()),
            (
                "\"day-1.csv\"",
                format!("\"day-1.csv\"\nweather = {hostile}"),
            ),
            ("\"day-1.csv\"", format!("\"day-1.csv\"\nstart = {hostile}")),
            ("\"day-1.csv\"", format!("\"day-1.csv\"\ndate = {hostile}")),
            ("\"day-1.csv\"", format!("\"day-1.csv\"\nsplit = {hostile}")),
            ("\"day-1.csv\"", format!("\"day-1.csv\"\nsheet = {hostile}")),
            ("\"day-1.csv\"", format!("\"day-1.csv\"\nnotes = {hostile}")),
            (
                "\"day-1.csv\"",
                format!("\"day-1.csv\"\ncolumns = {{ irradiance = {hostile} }}"),
            ),
            (
                "\"day-1.csv\"",
                format!("\"day-1.csv\"\nunits = {{ irradiance = {hostile} }}"),
            ),
            (
                "\"day-1.csv\"",
                format!("\"day-1.csv\"\nformat = {{ encoding = {hostile} }}"),
            ),
            (
                "\"day-1.csv\"",
                format!("\"day-1.csv\"\nformat = {{ time_zone = {hostile} }}"),
            ),
            (
                "[load]",
                format!("[[calibration]]\ncolumn = {hostile}\ngain = 1\n[load]"),
            ),
            ("[load]", format!("[report]\nlanguage = {hostile}\n[load]")),
            (
                "[load]",
                format!("[report]\nlaboratory = {hostile}\n[load]"),
            ),
        ] {
            let bench = two_campaigns();
            bench.replace(toml, from, &to);
            let screens = all_commands(&bench);
            shown += usize::from(screens.iter().any(|screen| screen.contains("forged")));
        }
        assert!(shown >= 20, "{shown} of the texts came to the screen");
    }
}

#[test]
fn logs_and_their_names_are_shown_escaped() {
    let turned = "X\u{202e}\u{200b}forged";
    let quoted_cell = "\"X\r\nerror: forged\nnote: forged\"";
    for (from, to) in [
        ("wind_m_s\n", format!("wind_m_s,{turned}\n")),
        ("wind_m_s\n", "wind_m_s,X\u{1b}[31mforged\n".to_owned()),
        ("wind_m_s\n", format!("wind_m_s,{quoted_cell}\n")),
        ("water_c", turned.to_owned()),
        ("water_c", quoted_cell.to_owned()),
        ("water_c", format!("water_c ({turned})")),
        ("2026-04-14 ", turned.to_owned()),
        ("2026-04-14 ", "X\u{1b}[31mforged".to_owned()),
        ("2026-04-14 10:05:00", quoted_cell.to_owned()),
        (",26.0", format!(",{turned}")),
        (",26.0", format!(",{quoted_cell}")),
        (",26.0", ",X\u{9b}2J\u{7}forged".to_owned()),
    ] {
        let bench = two_campaigns();
        let text = bench.read("mallee/day-1.csv");
        assert!(text.contains(from), "{from:?} in {}", &text[..200]);
        bench.write("mallee/day-1.csv", text.replacen(from, &to, 1));
        all_commands(&bench);
    }
    for name in [BREAKS, turned, "X\nerror: forged.csv"] {
        let bench = two_campaigns();
        fs::rename(
            bench.path("mallee/day-1.csv"),
            bench.path("mallee").join(name),
        )
        .unwrap();
        bench.replace("mallee/campaign.toml", "\"day-1.csv\"", &quoted(name));
        let screens = all_commands(&bench);
        // A character that the report's fonts lack is refused by itself.
        let is_shown = |screen: &String| screen.contains("forged") || screen.contains("\\u{202e}");
        assert!(screens.iter().any(is_shown));
        if bench.path("reports/mallee.pdf").exists() {
            screen(
                &bench,
                &["verify", "reports/mallee.pdf", "--extract", "taken"],
            );
            let sheet = "reports/mallee.2026-03-18.field-sheet.pdf";
            let documents = ["reports/mallee.pdf", "reports/comparison.pdf", sheet];
            screen(&bench, &[&["verify"][..], &documents].concat());
            screen(
                &bench,
                &[&["verify", "--format", "json"][..], &documents].concat(),
            );
        }
    }
}

#[test]
fn a_typed_sheet_is_shown_escaped() {
    let bench = Bench::new();
    let enter = [
        "enter",
        "mallee",
        "--date",
        "2026-03-18",
        "--from",
        "sheet.txt",
    ];
    for line in [
        "10:20 X\u{1b}[31mforged\n".to_owned(),
        "10:20 31 24 1 c X\u{202e}forged\n10:30 36\n".to_owned(),
        "X\u{9b}\rforged 31\n".to_owned(),
        "10:20 31 24 1 c \u{7}X\rforged\n".to_owned(),
    ] {
        bench.write("sheet.txt", line);
        screen(&bench, &enter);
    }
    // At the terminal what is typed is shown by the terminal itself; the answer is ours.
    let mut typist = Typist::start(
        bench.root.path(),
        &["enter", "mallee", "--date", "2026-03-19"],
    );
    typist.sees("  > ").types("X\u{202e}forged 24");
    typist.sees("note: not taken: ").sees("X\\u{202e}forged");
}
