//! Runs of each kind from `new` to `check`: a dry pot with no water at all, and a load that cools.

use std::fs;

use crate::bench::{Bench, Ended, campaign};
use crate::kit::campaign::Invented;

/// A campaign without runs, and without water where none is said.
fn without_runs(water: &str, instruments: &str) -> String {
    let text = Invented {
        instruments,
        ..Invented::default()
    }
    .text(&[]);
    text.replace("water_kg = 7.0\n", water)
}

const NORMAL: &str = "[instruments.irradiance]\nplane = \"normal\"\n\
                      [instruments.vessel_temperature]\nclass = \"oven-dial\"\n";

/// What a person fills in of the file that `new` wrote: the keys that are marked.
fn filled_in(text: &str) -> String {
    let lines = text.lines().map(|line| {
        let is_marked = line.contains("# FILL IN") && !line.contains("water_kg");
        match line.strip_prefix("# ").filter(|_| is_marked) {
            Some(line) => format!("{line}\n"),
            None => format!("{line}\n"),
        }
    });
    lines.collect()
}

/// An oven's dial in °F, read when somebody came by.
const DIAL: &str = "# an invented sheet\n\
                    10:10 75 77 1 c 890\n10:20 210 77 1 c 900\n10:35 300 78 1 c 905\n\
                    10:50 345 - 1 c 905\n11:10 365 79 2 c 910\n11:25 370 - 1 c 910\n\
                    11:40 370 80 1 c 910 to its step of 5\n11:55 370 80 1 c 905\n";

#[test]
fn a_dry_pot_goes_from_new_to_check_without_any_water() {
    let bench = Bench::empty();
    bench
        .run(&["new", "pot", "--kind", "dry"])
        .exits(0)
        .prints(&["pot: wrote campaign.toml and run-1.csv"]);
    assert_eq!(
        bench.read("pot/run-1.csv"),
        "time,vessel_c,ambient_c,irradiance_w_m2,wind_m_s\n"
    );
    let new = bench.read("pot/campaign.toml");
    assert!(new.contains("\nkind = \"dry\" "), "{new}");
    let filled = filled_in(&new)
        .replace("# [units]\n", "[units]\n")
        .replace(
            "# vessel_temperature = \"°F\"",
            "vessel_temperature = \"°F\"",
        )
        .replace(
            "# ambient_temperature = \"°F\"",
            "ambient_temperature = \"°F\"",
        );
    bench.write("pot/campaign.toml", &filled);
    bench.write("sheet.txt", DIAL);
    let enter = [
        "enter",
        "pot",
        "--date",
        "2026-03-14",
        "--from",
        "sheet.txt",
    ];
    bench.run(&enter).exits(0).prints(&[
        "8 lines from 10:10 to 11:55",
        "takes the place of the empty run-1.csv, kind = \"dry\"",
    ]);
    let log = bench.read("pot/2026-03-14.csv");
    let header = "time,dry vessel (°F),air (°F),wind (Bft),sky,irradiance (W/m²),notes\n";
    assert!(log.starts_with(header), "{log}");
    assert!(log.contains("2026-03-14 11:40,370,80,1,clear,910,to its step of 5\n"));
    let text = bench.read("pot/campaign.toml");
    assert_eq!(text, filled.replace("\"run-1.csv\"", "\"2026-03-14.csv\""));
    let checked = bench.run(&["check", "pot"]).exits(0).prints(&[
        "run             date        kind        readings  from   to",
        "2026-03-14.csv  2026-03-14  dry vessel         8  10:10  11:55",
        "\"dry vessel (°F)\"",
        "°F (header)",
        // What another day would give is not in the ±.
        " K m²/W (not 95 %)\n",
    ]);
    for part in ["inf", "0.00 kg", "NaN", "intervals", "No rating yet"] {
        assert!(!checked.out.contains(part), "{part}: {}", checked.out);
    }
}

#[test]
fn the_kind_of_a_run_that_waits_for_its_log_is_taken_and_another_is_written() {
    for (word, kind, expected) in [
        ("", None, "takes the place of the empty run-1.csv\n"),
        ("kind = \"dry\"\n", None, "run-1.csv, kind = \"dry\"\n"),
        ("", Some("dry"), "run-1.csv, kind = \"dry\"\n"),
        ("kind = \"dry\"\n", Some("water"), "empty run-1.csv\n"),
    ] {
        let bench = Bench::empty();
        let run = format!("\n[[run]]\nlog = \"run-1.csv\"\n{word}# the last remark\n");
        let text = without_runs("water_kg = 7.0\n", NORMAL);
        bench.write("mallee/campaign.toml", text + &run);
        bench.write("mallee/run-1.csv", "time,water_c,ambient_c\n");
        bench.write("sheet.txt", "10:20 31.5 26\n10:30 36 26\n10:40 41 26\n");
        let mut enter = vec![
            "enter",
            "mallee",
            "--date",
            "2026-11-03",
            "--from",
            "sheet.txt",
        ];
        enter.extend(kind.into_iter().flat_map(|kind| ["--kind", kind]));
        bench.run(&enter).exits(0).prints(&[expected]);
        let text = bench.read("mallee/campaign.toml");
        let is_dry = expected.contains("dry");
        assert_eq!(text.contains("kind = \"dry\""), is_dry, "{text}");
        assert!(text.ends_with("\n# the last remark\n"), "{text}");
        bench.run(&["check", "mallee"]).exits(0);
    }
}

#[test]
fn a_remark_at_the_end_stays_above_the_run_that_is_added() {
    let bench = Bench::empty();
    let text = without_runs("water_kg = 7.0\n", NORMAL) + "# class = \"oven-dial\"\n";
    bench.write("mallee/campaign.toml", &text);
    bench.write(
        "sheet.txt",
        "13:20 95 26 1 taken from the sun\n13:25 92 26 1\n13:30 89 26 1\n",
    );
    let enter = [
        "enter",
        "mallee",
        "--date",
        "2026-11-03",
        "--kind",
        "cooling",
    ];
    bench
        .run(&[&enter[..], &["--from", "sheet.txt"]].concat())
        .exits(0);
    let run = "\n[[run]]\nlog = \"2026-11-03.csv\"\nkind = \"cooling\"\n";
    assert_eq!(bench.read("mallee/campaign.toml"), text + run);
    let log = bench.read("mallee/2026-11-03.csv");
    assert!(
        log.contains("time,water (°C),air (°C),wind (Bft),notes\n2026-11-03 13:20,95,26,1,taken"),
        "{log}"
    );
    bench
        .run(&["check", "mallee"])
        .exits(0)
        .prints(&["2026-11-03.csv  2026-11-03  cooling, shaded         3  13:20  13:30"]);
    // The sheet says of what kind it is.
    let again = ["enter", "mallee", "--date", "2026-11-03", "--kind", "dry"];
    bench.run(&again).exits(2).says(&[
        "was typed as a run of the kind \"cooling\", not \"dry\"",
        "--kind cooling",
    ]);
}

#[test]
fn a_cooling_sheet_needs_no_irradiance_where_the_campaign_names_its_column() {
    let bench = Bench::empty();
    let columns = "[columns]\nirradiance = \"Ch 4\"\nwater_temperature = \"T1\"\n";
    let text = without_runs("water_kg = 7.0\n", NORMAL) + columns;
    bench.write("mallee/campaign.toml", &text);
    let lines = "13:20 95 26 1\n13:25 92 26 1\n13:30 89 26 1\n";
    bench.write("sheet.txt", lines);
    let enter = ["enter", "mallee", "--date", "2026-11-03", "--kind"];
    let from = ["cooling", "--from", "sheet.txt"];
    bench.run(&[&enter[..], &from].concat()).exits(0);
    let run = "\n[[run]]\nlog = \"2026-11-03.csv\"\nkind = \"cooling\"\n\
               columns = { water_temperature = \"water (°C)\" }\n";
    assert_eq!(bench.read("mallee/campaign.toml"), text + run);
    bench.run(&["check", "mallee"]).exits(0);
}

fn piped(bench: &Bench, arguments: &[&str], lines: &str) -> Ended {
    Ended::of(bench.command(arguments).write_stdin(lines))
}

#[test]
fn what_is_asked_for_is_what_the_kind_needs() {
    let bench = Bench::empty();
    bench.write(
        "mallee/campaign.toml",
        without_runs("water_kg = 7.0\n", NORMAL),
    );
    let enter = ["enter", "mallee", "--date", "2026-11-03", "--kind"];
    let dry = piped(&bench, &[&enter[..], &["dry"]].concat(), "24 24 1 c 800\n").exits(0);
    // Apparent noon at Greenwich is at 11:43:34 UTC that day.
    dry.prints(&[
        "(dry vessel)",
        "Each line: vessel (°C), air (°C), wind (Beaufort), sky (c clear, x cloud), irradiance",
        "every 5 to 20 minutes",
        "\n09:50  > 10:00  > ",
        "--kind dry",
    ]);
    fs::remove_file(bench.path("mallee/2026-11-03.csv")).unwrap();
    let cooling = [&enter[..], &["cooling"]].concat();
    piped(&bench, &cooling, "95\n")
        .exits(2)
        .says(&["--start", "--start 13:20"]);
    let begun = [&cooling[..], &["--start", "13:20"]].concat();
    let ended = piped(&bench, &begun, "95 24 1\n102.6\n").exits(0);
    assert!(!ended.out.contains("sky"), "{}", ended.out);
    ended
        .prints(&[
            "(cooling, shaded)",
            "Each line: water (°C), air (°C), wind (Beaufort), notes",
            "13:20  > 13:25  > ",
        ])
        .says(&["water of 102.6 °C"]);
}

#[test]
fn a_dry_vessel_may_be_hotter_than_water_and_no_hotter_than_metal_glows() {
    let bench = Bench::empty();
    bench.write(
        "mallee/campaign.toml",
        without_runs("", NORMAL) + "\n[[run]]\nlog = \"a.csv\"\nkind = \"dry\"\n",
    );
    bench.write("mallee/a.csv", "time,vessel_c,ambient_c\n");
    bench.write(
        "sheet.txt",
        "10:10 24 24\n10:20 700\n10:30 180\n10:40 110\n",
    );
    let enter = [
        "enter",
        "mallee",
        "--date",
        "2026-11-03",
        "--from",
        "sheet.txt",
    ];
    bench
        .run(&enter)
        .exits(3)
        .says(&["sheet.txt:2: found vessel of 700 °C, expected −40 to 600.0 °C"]);
    bench.write("sheet.txt", "10:10 24 24\n10:30 180\n10:40 110\n");
    bench
        .run(&enter)
        .exits(0)
        .says(&["sheet.txt:3: the vessel fell by 70.0 K since 10:30; taken all the same"]);
}

#[test]
fn the_field_sheet_of_each_kind_has_what_applies_to_it() {
    let bench = Bench::empty();
    bench.write("mallee/campaign.toml", campaign());
    let plan = ["plan", "mallee", "--date", "2026-04-20", "--kind"];
    let dry = bench.run(&[&plan[..], &["dry"]].concat()).exits(0);
    let dry = dry.prints(&[
        "run        dry vessel",
        "high sun   09:58 to 13:58 by the clock (10:00 to 14:00 solar time)",
        "every 5 to 20 min",
        "until the vessel has stayed the same for half an hour",
        "reports/mallee.2026-04-20.dry.field-sheet.pdf",
    ]);
    let cooling = bench.run(&[&plan[..], &["cooling"]].concat()).exits(0);
    let cooling = cooling.prints(&[
        "run    cooling, shaded",
        "as much as in the heating runs, 7 kg",
        "when the water is 20 K above the air, such as 45.0 °C in air of 25.0 °C",
        "reports/mallee.2026-04-20.cooling.field-sheet.pdf",
    ]);
    for (out, parts) in [
        (
            &dry.out,
            &["counts", "solar window", "missing", "weigh", "450 W/m²"][..],
        ),
        (
            &cooling.out,
            &["counts", "solar window", "missing", "rises", "W/m²"],
        ),
    ] {
        for part in parts {
            assert!(!out.contains(part), "{part}: {out}");
        }
    }
    let text =
        |kind: &str| bench.pdf_text(&format!("reports/mallee.2026-04-20.{kind}.field-sheet.pdf"));
    for (kind, there, not_there) in [
        (
            "dry",
            [
                "vessel,°C",
                "irradiance,W/m²",
                "Adryvesselgetsfarabove100°C",
                "nonon-stickcoating",
            ],
            ["water,°C", "waterweighed", "Throwthetestwater"],
        ),
        (
            "cooling",
            [
                "water,°C",
                "Apotofwaternearboiling",
                "firstreading,clocktime",
                "175",
            ],
            ["vessel,°C", "irradiance,W/m²", "sky:"],
        ),
    ] {
        let text = text(kind);
        for part in there {
            assert!(text.contains(part), "{kind}, {part}: {text}");
        }
        for part in not_there {
            assert!(!text.contains(part), "{kind}, {part}: {text}");
        }
    }
}

#[test]
fn field_sheets_of_every_kind_and_language_are_one_page_and_verified() {
    let bench = Bench::empty();
    bench.write("mallee/campaign.toml", campaign());
    for kind in ["dry", "cooling"] {
        for language in ["en", "es", "fr", "pt", "sw"] {
            for paper in ["a4", "us-letter"] {
                let plan = ["plan", "mallee", "--date", "2026-04-20", "--kind", kind];
                let wishes = ["--language", language, "--paper", paper];
                bench.run(&[&plan[..], &wishes].concat()).exits(0);
                let sheet = format!("reports/mallee.2026-04-20.{kind}.field-sheet.pdf");
                let pdf = lopdf::Document::load(bench.path(&sheet)).unwrap();
                assert_eq!(pdf.get_pages().len(), 1, "{kind}, {language}, {paper}");
                bench.run(&["verify", &sheet]).exits(0);
            }
        }
    }
}

#[test]
fn a_plan_is_of_the_kind_of_the_runs_so_far() {
    let bench = Bench::empty();
    let run = "\n[[run]]\nlog = \"run-1.csv\"\nkind = \"dry\"\n";
    bench.write("mallee/campaign.toml", without_runs("", NORMAL) + run);
    bench.write(
        "mallee/run-1.csv",
        "time,vessel_c,ambient_c,irradiance_w_m2,wind_m_s\n",
    );
    let plan = ["plan", "mallee", "--date", "2026-04-20"];
    bench.run(&plan).exits(0).prints(&["run        dry vessel"]);
    let water = bench.run(&[&plan[..], &["--kind", "water"]].concat());
    water
        .exits(0)
        .prints(&["water         7.00 kg: 7 kg per m²"]);
    // In the polar night no time will do.
    bench.replace(
        "mallee/campaign.toml",
        "latitude_deg = -20.0",
        "latitude_deg = 80.0",
    );
    let night = bench
        .run(&["plan", "mallee", "--date", "2026-12-21"])
        .exits(0);
    night.prints(&["no time of this day will do", "so there is no field sheet"]);
    let words = ["plan", "mallee", "--kind", "wet"];
    bench.run(&words).exits(2).says(&["wet"]);
}
