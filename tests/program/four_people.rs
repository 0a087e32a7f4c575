//! Four people at their first number, and what they type: one with a reflector, an oven
//! thermometer in °F and a notebook; a workshop with a logger and a sensor that lies flat; a
//! laboratory; somebody who has a report and nothing else. All of it is invented.

use std::fmt::Write as _;

use serde_json::Value;

use crate::bench::Bench;
use crate::typist::Typist;

/// Twelve lines of a notebook.
const NOTES: &str = "# invented\nOctober 4, 2026\nair 75F\nsunny all day\n\
    11:30 68F\n11:40 82\n11:50 96\n12:00 moved it, 110\n12:10 125\n12:20 138\n\
    12:30 moved it, 150\n12:40 161\n12:50 170\n1:00 moved it, 178\n1:10 185\n1:20 191\n";

/// Answers a question once it stands on the screen.
fn answers(typist: &mut Typist, questions: &[(&str, &str)]) {
    for (asked, answer) in questions {
        typist.sees(asked).sees("> ").types(answer);
    }
}

#[test]
fn somebody_with_a_notebook_in_fahrenheit_has_a_number_after_four_commands() {
    let bench = Bench::empty();
    bench.write("notes.txt", NOTES);
    let mut typist = Typist::start(bench.root.path(), &["new", "basket"]);
    answers(
        &mut typist,
        &[
            ("Which units do you measure in?", "us"),
            ("What do you test?", "Foil basket (invented)"),
            ("What kind of cooker is it?", "2"),
            ("How large is the opening", "36 by 24"),
        ],
    );
    typist.sees("0.557 m² (6.0 ft²)");
    answers(
        &mut typist,
        &[
            ("What is the place called?", "Nowhere flats (invented)"),
            ("Where is it?", "97.0 W, 36.5 N, or so"),
        ],
    );
    typist.sees("not taken: found \"or\"");
    typist.sees("> ").types("36°30'N 97°0'W");
    typist.sees("36.5000° N, 97.0000° W: time zone America/Chicago");
    answers(
        &mut typist,
        &[
            ("How high above the sea?", "1000"),
            ("Which time zone", ""),
            ("What is heated?", ""),
            ("How much water?", "16.2"),
        ],
    );
    typist.sees("13.2 kg per m²; the standard asks for 7");
    answers(
        &mut typist,
        &[
            ("What is its temperature read with?", "back"),
            // An empty line would be what was typed before.
            ("How much water?", "8.6"),
        ],
    );
    typist.sees("7.0 kg per m²");
    answers(
        &mut typist,
        &[
            ("What is its temperature read with?", "kitchen"),
            ("What measures the sunlight?", ""),
        ],
    );
    typist.sees("wrote campaign.toml");
    assert_eq!(typist.code(), 0);
    let file = bench.read("basket/campaign.toml");
    for key in [
        "width_in = 36",
        "elevation_ft = 1000",
        "water_lb = 8.6",
        "units = \"us\"",
    ] {
        assert!(file.contains(key), "{key}: {file}");
    }
    let entered = bench.run(&[
        "enter",
        "basket",
        "--date",
        "2026-10-04",
        "--from",
        "notes.txt",
    ]);
    entered.exits(0).prints(&[
        "air 75 °F, for every line without its own",
        "12:00, water 110 °F, air 75 °F, sky clear, notes: moved it",
        "13:20, water 191 °F",
        "with 1 cloudless span",
    ]);
    bench.run(&["check", "basket"]).exits(0).prints(&[
        "~ Indicative only (irradiance estimated; one day only",
        "so far    Ps(50) = ",
    ]);
    bench
        .run(&["report", "basket"])
        .exits(0)
        .prints(&["reports/basket.pdf"]);
    let rating: Value = serde_json::from_str(&bench.read("reports/basket.rating.json")).unwrap();
    let ps50_w = rating["rating"]["ps50_w"].as_f64().unwrap();
    // By hand from the notes: 8.6 lb rise by 9 °F in ten minutes about 50 K above the air, which
    // is 3.9 kg × 4186 J/(kg K) × 5 K / 600 s = 136 W under some 960 W/m²: about 99 W.
    assert!((80.0..120.0).contains(&ps50_w), "{ps50_w}");
}

/// A day as a logger writes it, every two minutes.
fn logged(day: u32) -> String {
    let mut text = String::from("Date/Time;T_pot (C);T_shade (C);GHI (W/m2);Wind (km/h)\n");
    let (mut water_c, air_c) = (24.0, 25.0);
    for step in 0..90 {
        let minute = 10 * 60 + 30 + 2 * step;
        let flat_w_m2 = 820.0 + f64::from(step % 5);
        writeln!(
            text,
            "2026-03-{day:02} {:02}:{:02};{water_c:.1};{air_c:.1};{flat_w_m2:.0};2.0",
            minute / 60,
            minute % 60
        )
        .unwrap();
        water_c += (170.0 - 2.2 * (water_c - air_c)) * 120.0 / (7.0 * 4186.0);
    }
    text
}

#[test]
fn a_workshop_with_a_logger_is_asked_about_the_logs_that_lie_there() {
    let bench = Bench::empty();
    for day in [14, 15, 16] {
        bench.write(&format!("dish/LOG{day}.CSV"), logged(day));
    }
    let mut typist = Typist::start(bench.root.path(), &["new", "dish"]);
    typist.sees("Logs that lie there:").sees("LOG14.CSV");
    typist.sees("water temperature").sees("\"T_pot (C)\" in °C");
    answers(
        &mut typist,
        &[
            ("Which units", ""),
            ("What do you test?", "Workshop dish (invented)"),
            ("What kind of cooker", "conc"),
            ("How large is the opening", "circle 1.13 m"),
            ("What is the place called?", "Nowhere yard (invented)"),
            ("Where is it?", "-1.5, 36.9"),
            ("How high", "1600"),
            ("Which time zone", "Africa/Nairobi"),
            ("What is heated?", "water"),
            ("How much water?", "7 kg"),
            ("What is its temperature read with?", "thermo"),
            ("What measures the sunlight?", ""),
            ("Take the logs", "yes"),
        ],
    );
    typist.sees("with the 3 logs found there");
    assert_eq!(typist.code(), 0);
    let file = bench.read("dish/campaign.toml");
    assert_eq!(file.matches("\n[[run]]\n").count(), 3, "{file}");
    assert!(file.contains("estimate = \"from-horizontal\""), "{file}");
    bench.run(&["check", "dish"]).exits(0).prints(&[
        "irradiance estimated",
        "Ps(50) = ",
        "\"T_pot (C)\"",
    ]);
}

#[test]
fn a_laboratory_says_once_what_its_campaigns_share_and_answers_by_options() {
    let bench = Bench::empty();
    bench.write(
        "lab/shared.toml",
        "[campaign]\ntester = \"N. Nobody (invented)\"\n[site]\nname = \"Nowhere flats (invented)\"\n\
         latitude_deg = -20\nlongitude_deg = 14\nelevation_m = 100\ntime_zone = \"Africa/Windhoek\"\n\
         [instruments.irradiance]\nplane = \"normal\"\nclass = \"pyranometer-b\"\n",
    );
    for unit in ["ash", "oak"] {
        bench.write(
            &format!("lab/{unit}/day.csv"),
            logged(14).replace("GHI", "Irradiance"),
        );
        let folder = format!("lab/{unit}");
        let title = format!("Panel {unit} (invented)");
        let new = [
            "new",
            &folder,
            "--yes",
            "--title",
            &title,
            "--cooker",
            "panel",
            "--opening",
            "1 m2",
            "--water",
            "7 kg",
            "--thermometer",
            "pt100",
        ];
        bench
            .run(&new)
            .exits(0)
            .prints(&["with the 1 log found there", "shared.toml gives"]);
    }
    bench.run(&["report", "lab", "--out", "out"]).exits(0);
    for unit in ["ash", "oak"] {
        let rating: Value =
            serde_json::from_str(&bench.read(&format!("out/{unit}.rating.json"))).unwrap();
        assert_eq!(rating["tester"].as_str(), Some("N. Nobody (invented)"));
    }
}

#[test]
fn somebody_who_has_the_report_alone_holds_it_against_its_data() {
    let bench = Bench::new();
    bench.run(&["report", "mallee", "--out", "sent"]).exits(0);
    std::fs::rename(bench.path("sent/mallee.pdf"), bench.path("report.pdf")).unwrap();
    std::fs::remove_dir_all(bench.path("sent")).unwrap();
    std::fs::remove_dir_all(bench.path("mallee")).unwrap();
    bench
        .run(&["verify", "report.pdf"])
        .exits(0)
        .prints(&["✓ AGREES: report.pdf"]);
    bench
        .run(&["verify", "report.pdf", "--extract", "data"])
        .exits(0);
    assert!(
        bench.path("data/campaign.toml").exists()
            || bench.path("data/mallee/campaign.toml").exists()
    );
}
