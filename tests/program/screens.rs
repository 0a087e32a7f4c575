//! What comes to a terminal of 60, 80 and 120 columns, in every language: no line wider than
//! it, the answer first, colours only where they are wanted.

use std::fs;
use std::path::Path;

use simmerline::language::{LANGUAGES, UnitSystem, Words, clauses};
use simmerline::message;
use tempfile::TempDir;
use unicode_width::UnicodeWidthStr;

use crate::kit::files::copy;
use crate::typist::Typist;

/// Widths of the terminal, and of the lines on it: over 100 columns are not used.
const WIDTHS: [(u16, usize); 3] = [(60, 60), (80, 80), (120, 100)];

const NO_COLOURS: [(&str, &str); 2] = [("NO_COLOR", "1"), ("SOURCE_DATE_EPOCH", "1795600000")];

/// Campaigns that say much: one that conforms, one that is indicative by an estimate, one that is
/// not valid, one without water.
const SAMPLES: [&str; 5] = [
    "open-dish",
    "kitchen-thermometer",
    "panel-cloudy",
    "tube-area-slip",
    "dry-pot",
];

/// A folder with the samples of [`SAMPLES`], for commands that are run in it.
fn folder() -> TempDir {
    folder_of(&SAMPLES)
}

fn folder_of(names: &[&str]) -> TempDir {
    let folder = TempDir::new().unwrap();
    for name in names {
        copy(
            &Path::new("sample-runs").join(name),
            &folder.path().join(name),
        );
    }
    folder
}

/// What comes to the screen, with its exit code.
fn screen(
    folder: &Path,
    arguments: &[&str],
    columns: u16,
    variables: &[(&str, &str)],
) -> (i32, String) {
    let (code, bytes) = Typist::at(folder, arguments, columns, variables).screen();
    let text = String::from_utf8(bytes).expect("what is shown is UTF-8");
    (code, text.replace("\r\n", "\n"))
}

/// The same without what the progress bar drew and took away.
fn settled(text: &str) -> String {
    let lines = text.split('\n');
    let lines = lines.map(|line| match line.rfind("\u{1b}[2K") {
        Some(at) => &line[at + 4..],
        None => line.rsplit('\r').next().unwrap_or(line),
    });
    lines.collect::<Vec<_>>().join("\n")
}

/// Every line of a text within so many columns, without a code for the terminal. The first.
#[track_caller]
fn fits(text: &str, most: usize, what: &str) -> String {
    assert!(!text.contains('\u{1b}'), "{what}: {text:?}");
    for line in text.lines() {
        assert!(
            line.width() <= most,
            "{what}: {} of {most} columns: {line}\n{text}",
            line.width()
        );
    }
    text.lines().next().unwrap_or_default().to_owned()
}

/// What each command is told, and how its first line begins in English.
fn commands() -> Vec<(Vec<&'static str>, &'static str)> {
    vec![
        (
            vec!["compare", "open-dish", "tube-area-slip", "panel-cloudy"],
            "✓ Saltbush octagon, bare pot gives",
        ),
        (vec!["check", "open-dish"], "✓ Conforms: Saltbush octagon"),
        (
            vec!["check", "kitchen-thermometer"],
            "~ Indicative only (irradiance estimated): Wren basin",
        ),
        (
            vec!["check", "tube-area-slip"],
            "✗ Not valid: Reedpipe tube",
        ),
        (vec!["check", "dry-pot"], "✗ No rating: Juniper panel"),
        (
            vec!["plan", "open-dish", "--date", "2026-09-20"],
            "✓ Sunday 20 September 2026: Saltbush octagon",
        ),
        (
            vec!["plan", "dry-pot", "--date", "2026-09-20"],
            "✓ Sunday 20 September 2026: Juniper panel",
        ),
    ]
}

/// A pseudo-terminal whose columns alone were set, as by `stty cols 60`.
#[test]
fn columns_count_though_the_terminal_says_that_it_has_no_lines() {
    let folder = folder_of(&["open-dish"]);
    let arguments = ["check", "open-dish"];
    let shown = |size: (u16, u16)| {
        let typist = Typist::at_size(folder.path(), &arguments, size, &NO_COLOURS);
        let (code, bytes) = typist.screen();
        assert_eq!(code, 0);
        String::from_utf8(bytes).unwrap().replace("\r\n", "\n")
    };
    let narrow = shown((60, 0));
    fits(&narrow, 60, "60 columns, no lines");
    assert_eq!(narrow, shown((60, 40)));
    assert_ne!(narrow, shown((0, 0)));
}

#[test]
fn check_plan_and_compare_fit_every_width_in_every_language_verdict_first() {
    let folder = folder();
    for (arguments, begins) in commands() {
        for language in LANGUAGES {
            let (columns, most) = match language.code {
                "en" => (80, 80),
                _ => (60, 60),
            };
            let told = [&arguments[..], &["--language", language.code]].concat();
            let (code, text) = screen(folder.path(), &told, columns, &NO_COLOURS);
            assert_eq!(code, 0, "{told:?}: {text}");
            let first = fits(&text, most, &format!("{told:?}"));
            let mark: String = begins.chars().take(2).collect();
            assert!(first.starts_with(&mark), "{told:?}: {first}");
            if language.code == "en" {
                assert!(first.starts_with(begins), "{told:?}: {first}");
            }
        }
        for (columns, most) in WIDTHS {
            let (_, text) = screen(folder.path(), &arguments, columns, &NO_COLOURS);
            fits(&text, most, &format!("{arguments:?} at {columns}"));
        }
    }
}

#[test]
fn a_comparison_of_ten_fits_every_width_and_says_each_note_once() {
    let names = [
        "open-dish",
        "open-dish-skirt",
        "tube-area-slip",
        "notebook",
        "box",
        "box-autumn",
        "kitchen-thermometer",
        "panel-cloudy",
        "box-figures",
        "dish-cooling",
    ];
    let folder = folder_of(&names);
    let ten = [&["compare", "--allow-mixed"][..], &names[..]].concat();
    for (columns, language) in [(60, "en"), (60, "fr"), (60, "sw"), (80, "en"), (80, "es")] {
        let told = [&ten[..], &["--language", language]].concat();
        let (code, text) = screen(folder.path(), &told, columns, &NO_COLOURS);
        assert_eq!(code, 0, "{told:?}: {text}");
        fits(
            &text,
            usize::from(columns),
            &format!("{language} at {columns}"),
        );
        if language == "en" {
            let words: Vec<&str> = text.split_whitespace().collect();
            let text = words.join(" ");
            for once in [
                "A question mark before one: not shown",
                "so the difference is of the powers at 700 W/m²",
                "A dash in place of letters",
                "Every pair is in the data file.",
            ] {
                assert_eq!(text.matches(once).count(), 1, "{once}: {text}");
            }
            // Below its row where a line is too short for a column of differences.
            let below = text.matches("no. 1 minus this, W: ").count();
            assert_eq!(below > 0, columns == 60, "{text}");
        }
    }
}

#[test]
fn report_and_verify_fit_every_width_verdict_first() {
    let folder = folder();
    for (columns, most) in WIDTHS {
        let told = [
            "report",
            "tube-area-slip",
            "kitchen-thermometer",
            "open-dish",
        ];
        let (code, text) = screen(folder.path(), &told, columns, &NO_COLOURS);
        assert_eq!(code, 0, "{text}");
        let text = settled(&text);
        let first = fits(&text, most, &format!("report at {columns}"));
        assert!(first.starts_with("  campaign"), "{text}");
        for row in [
            "\n✗ Reedpipe tube",
            "\n~ Wren basin",
            "\n✓ Saltbush octagon",
            "not valid",
            "indicative only; irradiance estimated",
            "reports/tube-area-slip.pdf",
        ] {
            assert!(text.contains(row), "{row}: {text}");
        }
        // The answer first: notes stand below the table.
        let (note, last) = (text.find("note: "), text.find("reports/open-dish.pdf"));
        assert!(last < note, "{text}");
        let told = ["verify", "reports/open-dish.pdf"];
        let (code, text) = screen(folder.path(), &told, columns, &NO_COLOURS);
        assert_eq!(code, 0, "{text}");
        let first = fits(&text, most, &format!("verify at {columns}"));
        assert_eq!(first, "✓ AGREES: reports/open-dish.pdf");
    }
}

#[test]
fn a_row_of_report_says_in_every_language_what_weakens_its_number() {
    let folder = folder();
    for language in LANGUAGES {
        let told = [
            "report",
            "kitchen-thermometer",
            "--format",
            "html",
            "--language",
            language.code,
        ];
        let (code, text) = screen(folder.path(), &told, 60, &NO_COLOURS);
        assert_eq!(code, 0, "{text}");
        let text = settled(&text);
        fits(&text, 60, language.code);
        let row: String = text
            .split("kitchen-thermometer: ")
            .next()
            .unwrap()
            .replace('\n', " ");
        let words: Vec<&str> = row.split_whitespace().collect();
        // The level, and behind it the estimate.
        let spoken = Words::new(language, UnitSystem::Si);
        let level = spoken.say(message!("level-indicative")).to_lowercase();
        let caveat = spoken.say(message!("irradiance-estimated"));
        let row = words.join(" ");
        assert!(row.contains("110 ±"), "{row}");
        let level = spoken.say(clauses([level, caveat]));
        let level: Vec<&str> = level.split_whitespace().collect();
        assert!(row.contains(&level.join(" ")), "{row}");
        // The notes below it, too.
        let label = spoken.say(message!("terminal-note"));
        let place = "kitchen-thermometer";
        let note = spoken.say(message!("terminal-whose", whose = label, said = place));
        let note = note.replace('\u{a0}', " ");
        assert!(text.contains(&format!("\n{note}")), "{note}: {text}");
    }
}

#[test]
fn no_name_of_a_file_is_broken_where_a_table_is_folded() {
    let folder = folder();
    for language in LANGUAGES {
        let told = ["check", "dry-pot", "--language", language.code];
        let (_, text) = screen(folder.path(), &told, 60, &NO_COLOURS);
        let rows = text
            .lines()
            .filter(|line| line.starts_with("2026-05-09.csv  2026-05-09  "));
        assert_eq!(rows.count(), 1, "{text}");
    }
}

#[test]
fn colours_come_to_a_terminal_that_wants_them_and_never_alone() {
    let folder = folder();
    let told = ["check", "tube-area-slip"];
    let (_, coloured) = screen(folder.path(), &told, 80, &[]);
    assert!(
        coloured.starts_with("\u{1b}[1m\u{1b}[31m✗\u{1b}[0m "),
        "{coloured}"
    );
    let (_, plain) = screen(folder.path(), &told, 80, &NO_COLOURS);
    assert!(plain.starts_with("✗ Not valid: "), "{plain}");
    // The same words, whether there are colours or not.
    let mut bare = coloured;
    for code in [
        "\u{1b}[1m",
        "\u{1b}[0m",
        "\u{1b}[31m",
        "\u{1b}[32m",
        "\u{1b}[33m",
    ] {
        bare = bare.replace(code, "");
    }
    assert_eq!(bare, plain);
    let (_, dumb) = screen(folder.path(), &told, 80, &[("TERM", "dumb")]);
    assert_eq!(dumb, plain);
}

#[test]
fn a_pipe_has_no_colours_and_a_sentence_is_one_line() {
    let folder = folder();
    let run = |arguments: &[&str], columns: Option<&str>| {
        let mut command = assert_cmd::cargo::cargo_bin_cmd!("simmerline");
        command.current_dir(folder.path()).args(arguments);
        command.env_remove("COLUMNS").env_remove("NO_COLOR");
        columns.map(|columns| command.env("COLUMNS", columns));
        let output = command.output().unwrap();
        String::from_utf8(output.stdout).unwrap()
    };
    let text = run(&["check", "kitchen-thermometer"], None);
    assert!(!text.contains('\u{1b}'), "{text}");
    let food = text.lines().find(|line| line.contains("food safety"));
    assert!(food.unwrap().contains("another stove"), "{text}");
    // Who states a width gets it.
    fits(
        &run(&["check", "kitchen-thermometer"], Some("70")),
        70,
        "70",
    );
    fits(
        &run(&["check", "kitchen-thermometer"], Some("30")),
        60,
        "30",
    );
}

#[test]
fn what_is_refused_hangs_behind_its_label() {
    let folder = TempDir::new().unwrap();
    let (code, text) = screen(folder.path(), &["new", "plot", "--yes"], 60, &NO_COLOURS);
    assert_eq!(code, 0, "{text}");
    let (code, text) = screen(folder.path(), &["check", "plot"], 60, &NO_COLOURS);
    assert_eq!(code, 4, "{text}");
    let first = fits(&text, 60, "errors");
    assert!(
        first.starts_with("error: plot/campaign.toml:40: "),
        "{text}"
    );
    for line in text.lines() {
        let is_labelled = ["error: ", "hint: "]
            .iter()
            .any(|label| line.starts_with(label));
        assert!(
            is_labelled || line.starts_with("      "),
            "{line:?} of {text}"
        );
    }
    fs::write(
        folder.path().join("page.html"),
        "<!DOCTYPE html><html></html>",
    )
    .unwrap();
    let (code, text) = screen(folder.path(), &["verify", "page.html"], 60, &NO_COLOURS);
    assert_eq!(code, 3, "{text}");
    assert!(
        text.starts_with("error: page.html: is not a PDF\nhint: only the PDF"),
        "{text}"
    );
    let (code, text) = screen(folder.path(), &["verify", "gone.pdf"], 60, &NO_COLOURS);
    assert_eq!(code, 3, "{text}");
    assert!(text.contains("there is no such file"), "{text}");
}

#[test]
fn every_missing_key_of_a_campaign_file_is_told_at_once_where_it_is_filled_in() {
    let folder = TempDir::new().unwrap();
    screen(folder.path(), &["new", "plot", "--yes"], 80, &NO_COLOURS);
    let (code, text) = screen(folder.path(), &["check", "plot"], 200, &NO_COLOURS);
    assert_eq!(code, 4, "{text}");
    let written = fs::read_to_string(folder.path().join("plot/campaign.toml")).unwrap();
    let marked = written.lines().enumerate();
    let marked = marked.filter(|(_, line)| line.starts_with("# ") && line.contains("# FILL IN"));
    let mut asked = 0;
    for (index, line) in marked {
        let key = line[2..].split(" = ").next().unwrap();
        let told = format!("error: plot/campaign.toml:{}: ", index + 1);
        let lines: Vec<&str> = text
            .lines()
            .filter(|line| line.starts_with(&told))
            .collect();
        assert!(lines.len() == 1 && lines[0].contains(key), "{key}: {text}");
        asked += 1;
    }
    assert_eq!((asked, text.matches("error: ").count()), (6, 6), "{text}");
}

#[test]
fn help_is_wrapped_by_the_width_alone() {
    let folder = TempDir::new().unwrap();
    for command in [
        &[][..],
        &["report"],
        &["check"],
        &["compare"],
        &["verify"],
        &["plan"],
        &["new"],
        &["enter"],
    ] {
        for columns in [60, 80] {
            let told = [command, &["--help"]].concat();
            let (code, text) = screen(folder.path(), &told, columns, &NO_COLOURS);
            assert_eq!(code, 0, "{text}");
            let width = usize::from(columns);
            fits(&text, width, &format!("{told:?} at {columns}"));
            // In a paragraph the first word of a line had no room on the line above.
            let lines: Vec<&str> = text.lines().collect();
            for pair in lines.windows(2) {
                let is_prose = |line: &str| line.starts_with(|first: char| first.is_alphanumeric());
                let is_broken = is_prose(pair[0]) && is_prose(pair[1]) && !pair[0].ends_with(':');
                let word = pair[1].split(' ').next().unwrap();
                assert!(
                    !is_broken || pair[0].width() + 1 + word.width() > width,
                    "{told:?} at {columns}: {pair:?}"
                );
                // An exit code stands apart from what explains it.
                let is_code = pair[0].starts_with("  5  all done");
                assert!(!is_code || pair[1].starts_with("     "), "{pair:?}");
            }
        }
    }
}
