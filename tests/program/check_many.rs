//! `check` on several campaigns: how many are at which level, what to do, and each cause once.

use std::fs;
use std::io;
use std::path::Path;
use std::process::{Command, Stdio};

use serde_json::Value;
use simmerline::language::LANGUAGES;
use unicode_width::UnicodeWidthStr;

use crate::bench::Bench;
use crate::kit::files::{copy, replace};
use crate::typist::Typist;

/// First log of the sample `open-dish-skirt`.
const LOG: &str = "2026-09-22.csv";

/// Copies of a sample under `tree`, each changed by its number.
fn copies(bench: &Bench, sample: &str, count: usize, change: impl Fn(usize, &Path)) {
    for number in 0..count {
        let folder = bench.path(&format!("tree/{sample}-{number:02}"));
        copy(&Path::new("sample-runs").join(sample), &folder);
        change(number, &folder);
    }
}

fn lies_flat(_: usize, folder: &Path) {
    replace(folder, "campaign.toml", "\"normal\"", "\"horizontal\"");
}

fn lacks_water(_: usize, folder: &Path) {
    replace(folder, "campaign.toml", "\nwater_kg = 7.37", "\n");
}

/// Water of the first log in °F under a header of °C, each with other numbers.
fn in_fahrenheit(number: usize, folder: &Path) {
    change_water(&folder.join(LOG), |_, celsius| {
        format!("{:.1}", celsius * 1.8 + 32.0 + number as f64 * 0.1)
    });
}

/// Now and then the number of a logger for a sensor that does not answer.
fn has_faults(number: usize, folder: &Path) {
    change_water(&folder.join(LOG), |row, celsius| match row % (number + 7) {
        0 => "-999".to_owned(),
        _ => format!("{celsius:.1}"),
    });
}

fn change_water(log: &Path, change: impl Fn(usize, f64) -> String) {
    let text = fs::read_to_string(log).unwrap();
    let lines = text.lines().enumerate().map(|(row, line)| {
        let mut cells: Vec<String> = line.split(',').map(str::to_owned).collect();
        if let Some(Ok(celsius)) = cells.get(1).map(|cell| cell.parse()) {
            cells[1] = change(row, celsius);
        }
        cells.join(",") + "\n"
    });
    fs::write(log, lines.collect::<String>()).unwrap();
}

/// Four times four campaigns that share a fault each.
fn tree() -> Bench {
    let bench = Bench::empty();
    copies(&bench, "notebook", 4, |_, _| {});
    copies(&bench, "box", 4, lies_flat);
    copies(&bench, "open-dish", 4, lacks_water);
    copies(
        &bench,
        "open-dish-skirt",
        8,
        |number, folder| match number {
            0..4 => in_fahrenheit(number, folder),
            _ => has_faults(number, folder),
        },
    );
    bench
}

#[test]
fn a_cause_that_campaigns_share_is_told_once_with_their_names() {
    let bench = tree();
    let ended = bench.run(&["check", "tree"]).exits(4);
    let first = ended.out.lines().next().unwrap();
    assert_eq!(
        first,
        "✗ 20 campaigns: 4 × conforms, 8 × indicative only, 8 × cannot be read"
    );
    let next = "\nWhat to do next\n  8 campaigns  correct the errors listed below\n  8 campaigns  mount the sensor so that it faces the sun";
    assert!(ended.out.contains(next), "{}", ended.out);
    let once = [
        // A sensor that lies flat, in two samples; then the same faults with other counts.
        "  8 campaigns (tree/box-00, tree/box-01, tree/box-02, tree/box-03, 4 more)\n    irradiance was measured in the horizontal plane",
        "  4 campaigns (tree/open-dish-skirt-04, tree/open-dish-skirt-05, tree/open-dish-skirt-06, tree/open-dish-skirt-07); the first\n    2026-09-22.csv: 14 fault values",
    ];
    for said in once {
        assert_eq!(ended.out.matches(said).count(), 1, "{said}: {}", ended.out);
    }
    for told in [
        "irradiance was measured in the horizontal plane;",
        "fault values in column \"water_c\"",
    ] {
        assert_eq!(ended.out.matches(told).count(), 1, "{told}: {}", ended.out);
    }
    for told in [
        "error: 4 places: tree/open-dish-00/campaign.toml:46: [load] water_kg",
        "error: 4 places: tree/open-dish-skirt-00/2026-09-22.csv: column \"water_c\" (water temperature), tree/open-dish-skirt-01",
        " and 1 more: of the first: found ",
        "hint: this looks like °F",
    ] {
        assert_eq!(ended.err.matches(told).count(), 1, "{told}: {}", ended.err);
    }
    // Each has its row, by its folder where its title is not known.
    for row in ["tree/box-03", "tree/open-dish-02", "tree/notebook-01"] {
        let rows = ended.out.lines().filter(|line| line.ends_with(row));
        assert_eq!(rows.count(), 1, "{row}: {}", ended.out);
    }
    // Whole, each tells it anew.
    let whole = bench.run(&["check", "tree", "--whole"]).exits(4);
    assert_eq!(whole.out.matches("\nHow the logs were read").count(), 12);
    assert_eq!(whole.out.matches("in the horizontal plane;").count(), 8);
    let json = bench.run(&["check", "tree", "--format", "json"]).exits(4);
    let json: Value = serde_json::from_str(&json.out).unwrap();
    assert_eq!(json["campaigns"].as_array().unwrap().len(), 20);
}

#[test]
fn several_campaigns_fit_every_width_in_every_language() {
    let bench = tree();
    for language in LANGUAGES {
        for (columns, most) in [(60, 60), (120, 100)] {
            let told = ["check", "tree", "--language", language.code];
            let variables = [("NO_COLOR", "1")];
            let typist = Typist::at(bench.path(".").as_path(), &told, columns, &variables);
            let (code, bytes) = typist.screen();
            assert_eq!(code, 4);
            let text = String::from_utf8(bytes).unwrap().replace("\r\n", "\n");
            // What the bar drew and took away.
            let lines = text.lines().map(|line| match line.rfind("\u{1b}[2K") {
                Some(at) => &line[at + 4..],
                None => line.rsplit('\r').next().unwrap_or(line),
            });
            let lines: Vec<&str> = lines.collect();
            for line in &lines {
                assert!(line.width() <= most, "{}: {line}", language.code);
            }
            assert!(lines[0].starts_with("✗ "), "{}", lines[0]);
            // Powers, ±, and what stands behind them, below each other.
            let rows = lines.iter().filter(|line| line.starts_with(['✓', '~']));
            let rows = rows.filter_map(|line| Some(line[..line.find(" ± ")?].width()));
            let places: Vec<usize> = rows.collect();
            assert!(places.len() >= 12, "{text}");
            assert!(places.iter().all(|place| *place == places[0]), "{text}");
        }
    }
}

#[test]
fn of_more_than_forty_those_that_fall_short_most_are_in_the_table() {
    let bench = Bench::empty();
    copies(&bench, "dry-pot", 50, |_, _| {});
    copies(&bench, "tube-area-slip", 1, |_, _| {});
    let ended = bench.run(&["check", "tree", "--strict"]).exits(5);
    let rows = ended.out.lines().skip(1);
    let rows: Vec<&str> = rows.filter(|line| line.starts_with("✗ ")).collect();
    assert_eq!(rows.len(), 40);
    assert!(rows[0].ends_with("tree/tube-area-slip-00"), "{}", rows[0]);
    for said in [
        "✗ 51 campaigns: 50 × no rating, 1 × not valid\n",
        "\n40 of 51 campaigns are shown, first those that fall short most.\n",
        "\nOne campaign in full: simmerline check tree/dry-pot-00. All: --whole, or --format json\n",
    ] {
        assert!(ended.out.contains(said), "{said}: {}", ended.out);
    }
    // So many campaigns, so few lines.
    let lines = ended.out.lines().count();
    assert!(lines < 80, "{lines}: {}", ended.out);
}

#[test]
fn of_more_than_forty_those_that_cannot_be_read_are_in_the_table_first() {
    let bench = Bench::empty();
    let unreadable = |_: usize, folder: &Path| {
        replace(folder, "campaign.toml", "\ntitle = ", "\ntilte = ");
    };
    copies(&bench, "dry-pot", 37, |_, _| {});
    copies(&bench, "notebook", 2, unreadable);
    copies(&bench, "tube-area-slip", 2, |_, _| {});
    let ended = bench.run(&["check", "tree"]).exits(4);
    let rows = ended.out.lines().skip(1);
    let rows: Vec<&str> = rows.filter(|line| line.starts_with("✗ ")).collect();
    assert_eq!(rows.len(), 40);
    let ends = [
        "tree/notebook-00",
        "tree/notebook-01",
        "tree/tube-area-slip-00",
    ];
    for (row, end) in rows.iter().zip(ends) {
        assert!(row.ends_with(end), "{row}");
    }
    let said = "\n40 of 41 campaigns are shown: first those that cannot be read (2), then those that fall short most.\n";
    assert!(ended.out.contains(said), "{}", ended.out);
    copies(&bench, "notebook", 42, unreadable);
    let ended = bench.run(&["check", "tree"]).exits(4);
    let said = "\n40 of 81 campaigns are shown, all of them among the 42 that cannot be read.\n";
    assert!(ended.out.contains(said), "{}", ended.out);
}

#[test]
fn a_cause_that_leaves_no_valid_number_comes_before_those_of_many() {
    let bench = Bench::empty();
    copies(&bench, "box", 3, lies_flat);
    copies(&bench, "tube-area-slip", 1, |_, _| {});
    let ended = bench.run(&["check", "tree"]).exits(0);
    let under = ended.out.split("\nWhat keeps campaigns from conforming");
    let under = under.last().unwrap();
    let first = under.lines().nth(1).unwrap();
    assert_eq!(first, "  tree/tube-area-slip-00", "{}", ended.out);
}

#[test]
fn one_that_cannot_be_read_is_named_and_the_command_is_of_one_that_can_as_it_is_typed() {
    let bench = Bench::empty();
    for (sample, folder) in [
        ("open-dish", "a"),
        ("notebook", "my b"),
        ("notebook", "my c"),
    ] {
        copy(
            &Path::new("sample-runs").join(sample),
            &bench.path(&format!("tree/{folder}")),
        );
    }
    lacks_water(0, &bench.path("tree/a"));
    let ended = bench.run(&["check", "tree"]).exits(4);
    ended.prints(&[
        "\n  tree/a       correct the errors listed below\n",
        "\nOne campaign in full: simmerline check \"tree/my b\". All: ",
    ]);
}

#[test]
fn a_warning_of_food_safety_is_that_of_the_gravest_case() {
    let bench = Bench::empty();
    // The colder the water, the later it is hot; the last is the coldest.
    copies(&bench, "panel-cloudy", 4, |number, folder| {
        for day in 8..=10 {
            let log = folder.join(format!("2026-07-{day:02}.csv"));
            change_water(&log, |_, celsius| format!("{:.1}", celsius - number as f64));
        }
    });
    let gravest = bench.run(&["check", "tree/panel-cloudy-03"]).exits(0);
    let warning = |text: &str| {
        let lines = text.lines();
        let from = lines.filter_map(|line| Some(line[line.find("food safety: ")?..].to_owned()));
        from.collect::<Vec<_>>()
    };
    let gravest = warning(&gravest.out);
    assert_eq!(gravest.len(), 1);
    let whose = "4 campaigns (tree/panel-cloudy-03, tree/panel-cloudy-02, tree/panel-cloudy-01, tree/panel-cloudy-00); the gravest case, of the first";
    let ended = bench.run(&["check", "tree"]).exits(0);
    assert_eq!(warning(&ended.out), gravest);
    assert!(ended.out.contains(whose), "{}", ended.out);
    let ended = bench
        .run(&["report", "tree", "--format", "parquet"])
        .exits(0);
    assert_eq!(warning(&ended.err), gravest);
    assert!(
        ended.err.contains(&whose.replace("tree/", "")),
        "{}",
        ended.err
    );
}

#[test]
fn whole_campaigns_end_where_nobody_reads_on() {
    let bench = Bench::empty();
    copies(&bench, "notebook", 1, |_, _| {});
    copies(&bench, "open-dish", 1, lacks_water);
    let told = |out: Stdio| {
        let mut command = Command::new(assert_cmd::cargo::cargo_bin!("simmerline"));
        command.args(["check", "tree", "--whole"]).stdout(out);
        let ended = command.current_dir(bench.path(".")).output().unwrap();
        String::from_utf8(ended.stderr).unwrap()
    };
    assert!(told(Stdio::null()).contains("[load] water_kg"));
    let (reader, writer) = io::pipe().unwrap();
    drop(reader);
    assert_eq!(told(writer.into()), "");
}
