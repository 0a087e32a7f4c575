//! `compare`: what it prints and writes, and what it refuses.

use crate::bench::{AMBIENT_C, Bench};

/// Two campaigns; the second one's water rises a tenth further.
fn two() -> Bench {
    let bench = Bench::new();
    add_stronger(&bench, "wattle", 1.1);
    bench
}

fn add_stronger(bench: &Bench, name: &str, factor: f64) {
    bench.add_campaign(name);
    bench.replace(
        &format!("{name}/campaign.toml"),
        "Mallee trough",
        &format!("{name} trough"),
    );
    for day in 1..=3 {
        bench.change_lines(&format!("{name}/day-{day}.csv"), |_, text| {
            let mut cells: Vec<String> = text.split(',').map(str::to_owned).collect();
            if let Some(Ok(water_c)) = cells.get(1).map(|cell| cell.parse::<f64>()) {
                cells[1] = format!("{:.2}", AMBIENT_C + factor * (water_c - AMBIENT_C));
            }
            Some(cells.join(","))
        });
    }
}

const FILES: [&str; 3] = ["comparison.csv", "comparison.json", "comparison.pdf"];

#[test]
fn compare_writes_three_files_and_says_which_is_better() {
    let bench = two();
    let ended = bench.run(&["compare", "mallee", "wattle"]).exits(0);
    assert_eq!(bench.names("reports"), FILES);
    // The verdict first, then the ranking, and where it is.
    assert!(ended.out.starts_with("~ wattle trough"), "{}", ended.out);
    ended.prints(&["Mallee trough", "reports/comparison.pdf"]);
    assert!(bench.read("reports/comparison.csv").lines().count() == 3);
    let json: serde_json::Value =
        serde_json::from_str(&bench.read("reports/comparison.json")).unwrap();
    assert_eq!(json["schema"], "simmerline.comparison/1");
    let pair = &json["pairs"][0];
    let difference_w = pair["difference_w"].as_f64().unwrap();
    let rated = |place: usize| json["campaigns"][place]["ps50_w"].as_f64().unwrap();
    assert!((difference_w - (rated(1) - rated(0))).abs() < 1e-9);
    assert!(difference_w > 0.0);
}

#[test]
fn the_same_inputs_and_time_give_the_same_files() {
    let bench = two();
    let written = |out: &str| {
        let arguments = ["compare", "mallee", "wattle", "--out", out];
        let mut command = bench.command(&arguments);
        assert!(
            command
                .env("SOURCE_DATE_EPOCH", "1795600000")
                .output()
                .unwrap()
                .status
                .success()
        );
        bench
            .files(out)
            .into_iter()
            .map(|(_, bytes)| bytes)
            .collect::<Vec<_>>()
    };
    assert_eq!(written("one"), written("two"));
}

#[test]
fn a_baseline_is_held_against_all_others_only() {
    let bench = two();
    add_stronger(&bench, "gidgee", 1.05);
    let all = ["compare", "mallee", "wattle", "gidgee"];
    let pairs = |arguments: &[&str]| {
        bench.run(arguments).exits(0);
        let text = bench.read("reports/comparison.json");
        let json: serde_json::Value = serde_json::from_str(&text).unwrap();
        json["pairs"].as_array().unwrap().len()
    };
    assert_eq!(pairs(&all), 3);
    assert_eq!(pairs(&[&all[..], &["--baseline", "gidgee"]].concat()), 2);
    assert_eq!(pairs(&[&all[..], &["--baseline", "./wattle"]].concat()), 2);
    let refused = bench.run(&[&all[..], &["--baseline", "mulga"]].concat());
    refused.exits(2).says(&[
        "mulga: is none of the campaigns compared",
        "mallee, wattle, gidgee",
    ]);
}

#[test]
fn what_cannot_be_compared_is_refused_and_nothing_is_written() {
    let refuses = |bench: &Bench, arguments: &[&str], parts: &[&str]| {
        bench
            .run(&[&["compare"], arguments].concat())
            .exits(2)
            .says(parts);
        let left = bench.names("reports");
        assert!(left.is_empty(), "{left:?}");
    };
    let bench = two();
    refuses(
        &bench,
        &["mallee"],
        &["1 campaign found, a comparison takes 2 to 200"],
    );
    refuses(
        &bench,
        &["mallee", "./mallee"],
        &["named twice", "with itself"],
    );
    for place in 0..201 {
        bench.write(&format!("many/kurrajong-{place}/campaign.toml"), "");
    }
    refuses(&bench, &["many"], &["201 campaigns found"]);
    bench.add_campaign("copy");
    refuses(
        &bench,
        &["mallee", "copy"],
        &["holds the readings of \"day-1.csv\" that mallee holds too"],
    );
    bench.add_campaign("other/mallee");
    refuses(
        &bench,
        &["mallee", "other/mallee"],
        &["a second campaign folder named \"mallee\"", "rename one"],
    );
}

#[test]
fn a_campaign_without_a_rating_is_refused() {
    let bench = two();
    for day in 1..=3 {
        bench.change_lines(&format!("wattle/day-{day}.csv"), |line, text| {
            (line < 4).then(|| text.to_owned())
        });
    }
    let ended = bench.run(&["compare", "mallee", "wattle"]).exits(2);
    ended.says(&[
        "wattle/campaign.toml: has no rating",
        "simmerline check wattle",
    ]);
}

#[test]
fn other_limits_are_refused_unless_allowed_and_then_marked() {
    let bench = two();
    let file = "wattle/campaign.toml";
    bench.write(file, bench.read(file) + "[limits]\nambient_min_c = 15\n");
    let arguments = ["compare", "mallee", "wattle"];
    let refused = bench.run(&arguments).exits(2);
    refused.says(&[
        "wattle/campaign.toml: is rated otherwise than mallee: ",
        "(ambient_min_c) 15 °C instead of 20 °C",
        "--allow-mixed",
    ]);
    bench
        .run(&[&arguments[..], &["--allow-mixed"]].concat())
        .exits(0);
    let json = bench.read("reports/comparison.json");
    assert!(json.contains("\"mixed\": true"));
}

#[test]
fn what_departs_alike_is_refused_once_in_words_and_with_its_key() {
    let bench = two();
    let names = ["mallee", "wattle", "gidgee", "mulga", "boree", "brigalow"];
    for (name, factor) in names[2..].iter().zip([0.95, 0.9, 1.05, 0.85]) {
        add_stronger(&bench, name, factor);
    }
    let limit = |names: &[&str], limits: &str| {
        for name in names {
            let file = format!("{name}/campaign.toml");
            bench.write(&file, bench.read(&file) + "[limits]\n" + limits);
        }
    };
    // The first is the one that departs: the others are not told one by one.
    limit(&["mallee"], "wind_mean_max_m_s = 2\n");
    let ended = bench.run(&[&["compare"], &names[..]].concat()).exits(2);
    let causes = |text: &str| text.matches("campaign.toml: ").count();
    assert_eq!(causes(&ended.err), 1, "{}", ended.err);
    ended.says(&[
        "mallee/campaign.toml: is rated otherwise than wattle, gidgee, mulga and 2 others: ",
        "mean wind (wind_mean_max_m_s) 2 m/s instead of 1 m/s",
    ]);
    // Two that depart alike are told together, another by itself.
    limit(&["gidgee", "mulga"], "ambient_min_c = 15\n");
    let ended = bench.run(&[&["compare"], &names[..]].concat()).exits(2);
    assert_eq!(causes(&ended.err), 2, "{}", ended.err);
    let ended = ended.says(&[
        "gidgee/campaign.toml: and mulga are rated otherwise than wattle, boree and brigalow: ",
        "15 °C instead of 20 °C",
    ]);
    assert_eq!(ended.err.matches("hint:").count(), 1, "{}", ended.err);
    // What the hint says to state in all has its key.
    for key in ["(wind_mean_max_m_s)", "(ambient_min_c)"] {
        assert_eq!(ended.err.matches(key).count(), 1, "{}", ended.err);
    }
}

#[test]
fn instruments_are_checked_with_a_remedy() {
    let change = |to: &str, parts: &[&str]| {
        let bench = Bench::new();
        bench.replace(
            "mallee/campaign.toml",
            "plane = \"normal\"",
            &format!("plane = \"normal\"\n{to}"),
        );
        bench.refuses(4, parts);
    };
    change(
        "class = \"pyranometer-d\"",
        &[
            "[instruments.irradiance] class",
            "did you mean \"pyranometer-",
        ],
    );
    change(
        "relative_uncertainty = -0.03",
        &["found -0.03, expected 0 to 1"],
    );
    change(
        "[instruments.wind_speed]\nclass = \"logger\"",
        &["unknown key", "no classes"],
    );
    change(
        "[instruments.water_temperature]\nresolution_k = 0",
        &["resolution_k", "more than 0"],
    );
    change(
        "[instruments.water_mass]\nresolution_k = 0.1",
        &["resolution_k", "only thermometers"],
    );
    let bench = Bench::new();
    let both = "demonstration = true\ntarget_uncertainty_w = 5\ntarget_relative_uncertainty = 0.1";
    bench.replace("mallee/campaign.toml", "demonstration = true", both);
    bench.refuses(
        4,
        &["both target_uncertainty_w and target_relative_uncertainty"],
    );
}

#[test]
fn check_says_what_the_uncertainty_aimed_at_takes() {
    let bench = Bench::new();
    let aim = |watts: &str, parts: &[&str]| {
        let file = "mallee/campaign.toml";
        let text = bench.read(file);
        let aimed = format!("demonstration = true\ntarget_uncertainty_w = {watts}");
        bench.write(file, text.replace("demonstration = true", &aimed));
        bench.run(&["check", "mallee"]).exits(0).prints(parts);
        bench.write(file, text);
    };
    aim("5000", &["The target of ± 5000 W is reached."]);
    aim(
        "0.1",
        &[
            "More intervals cannot reach the target",
            "Irradiance weighs most",
        ],
    );
}

#[test]
fn one_day_of_test_says_that_days_are_not_in_the_uncertainty() {
    let bench = Bench::new();
    let text = bench.read("mallee/campaign.toml");
    let first = text.find("[[run]]\nlog = \"day-2.csv\"").unwrap();
    bench.write("mallee/campaign.toml", &text[..first]);
    let rating = bench.report();
    assert!(rating["uncertainty"]["days"]["p"].is_null());
    assert_eq!(rating["uncertainty"]["days"]["independent"], "intervals");
}

#[test]
fn a_difference_of_two_single_days_is_never_called_real() {
    let bench = two();
    for name in ["mallee", "wattle"] {
        let file = format!("{name}/campaign.toml");
        let text = bench.read(&file);
        let second = text.find("[[run]]\nlog = \"day-2.csv\"").unwrap();
        let classes = "[instruments.water_mass]\nid = \"scale\"\n";
        let shared = text[..second].replace("[[run]]", &format!("{classes}[[run]]"));
        let shared = shared.replace("plane = \"normal\"", "plane = \"normal\"\nid = \"sun\"");
        bench.write(&file, shared);
    }
    let ended = bench.run(&["compare", "mallee", "wattle"]).exits(0);
    assert!(!ended.out.contains("a real difference"), "{}", ended.out);
    ended.prints(&["not on several days each"]);
}

#[test]
fn one_instrument_with_two_uncertainties_is_refused() {
    let bench = two();
    for (name, fraction) in [("mallee", "0.025"), ("wattle", "0.10")] {
        let table = format!("plane = \"normal\"\nid = \"sun\"\nrelative_uncertainty = {fraction}");
        bench.replace(
            &format!("{name}/campaign.toml"),
            "plane = \"normal\"",
            &table,
        );
    }
    let ended = bench.run(&["compare", "mallee", "wattle"]).exits(2);
    ended.says(&["wattle/campaign.toml: states another uncertainty than mallee for irradiance"]);
}

#[test]
fn a_sixteenth_of_a_degree_is_seen_as_the_step_of_the_thermometer() {
    // Not the 1 K of the thermometer that is assumed. Steps are in proportion to what they
    // explain.
    let explained_w = |step_c: f64| {
        let bench = Bench::new();
        for day in 1..=3 {
            bench.change_lines(&format!("mallee/day-{day}.csv"), |_, text| {
                let mut cells: Vec<String> = text.split(',').map(str::to_owned).collect();
                if let Some(Ok(water_c)) = cells.get(1).map(|cell| cell.parse::<f64>()) {
                    cells[1] = ((water_c / step_c).round() * step_c).to_string();
                }
                Some(cells.join(","))
            });
        }
        bench.report()["uncertainty"]["reading_resolution_w"]
            .as_f64()
            .unwrap()
    };
    let ratio = explained_w(0.0625) / explained_w(1.0);
    assert!((ratio - 0.0625).abs() < 0.001, "{ratio}");
}

/// Leaves the first day of three of a campaign.
fn leave_first_day(bench: &Bench, name: &str) {
    let file = format!("{name}/campaign.toml");
    let text = bench.read(&file);
    let second = text.find("[[run]]\nlog = \"day-2.csv\"").unwrap();
    bench.write(&file, &text[..second]);
}

#[test]
fn a_terminal_marks_a_single_day_and_what_is_not_shown() {
    let bench = two();
    add_stronger(&bench, "gidgee", 1.05);
    leave_first_day(&bench, "wattle");
    let all = ["compare", "mallee", "wattle", "gidgee"];
    let html = ["--format", "html"];
    let ended = bench.run(&[&all[..], &html].concat()).exits(0);
    ended.prints(&[
        "one day only: ± is not 95 %",
        "Campaigns with a letter in common cannot be told apart",
        "count as not told apart, however much they differ.",
    ]);
    let page = bench.read("reports/comparison.html");
    assert!(page.contains("Campaigns with a letter in common"));
    assert!(!page.contains("A bar joins"));
    let against = [&all[..], &html, &["--baseline", "mallee"]].concat();
    let ended = bench.run(&against).exits(0);
    ended.prints(&["? +", "† (", "A question mark before one: not shown"]);
    let page = bench.read("reports/comparison.html");
    assert!(page.contains("Grey: not shown") && page.contains("<span class=\"grey\">+"));
    let ended = bench.run(&against).exits(0);
    for absent in ["Bold", "Grey", "A bar joins"] {
        assert!(!ended.out.contains(absent), "{}", ended.out);
    }
}

#[test]
fn a_sensor_that_lay_flat_is_no_lack_of_a_heat_balance() {
    let bench = two();
    let flat = "plane = \"horizontal\"";
    bench.replace("wattle/campaign.toml", "plane = \"normal\"", flat);
    let ended = bench.run(&["compare", "mallee", "wattle"]).exits(0);
    assert!(!ended.out.contains("heat balance of both"), "{}", ended.out);
    ended.prints(&["but irradiance is in another plane for one than for the other"]);
}
