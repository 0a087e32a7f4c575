//! Rating without a pyranometer and an anemometer, and a dry vessel: always marked.

use serde_json::Value;

use crate::bench::{AMBIENT_C, Bench, Ended, HEADER, water_c};

/// The campaign with other keys in place of `plane = "normal"`.
fn bench(keys: &str) -> Bench {
    let bench = Bench::new();
    bench.replace("mallee/campaign.toml", "plane = \"normal\"", keys);
    bench
}

/// Takes a column out of every log.
fn without_column(bench: &Bench, column: usize) {
    for day in 1..=3 {
        let name = format!("mallee/day-{day}.csv");
        bench.change_lines(&name, |_, line| {
            let mut cells: Vec<&str> = line.split(',').collect();
            if cells.len() > column {
                cells.remove(column);
            }
            Some(cells.join(","))
        });
    }
}

fn rated(bench: &Bench) -> Value {
    bench.run(&["report", "mallee", "--quiet"]).exits(0);
    serde_json::from_str(&bench.read("reports/mallee.rating.json")).unwrap()
}

fn codes(rating: &Value) -> Vec<&str> {
    let findings = rating["conformity"]["findings"].as_array().unwrap();
    findings.iter().filter_map(|f| f["code"].as_str()).collect()
}

/// Relative standard uncertainty of one line of the budget.
fn of_source(rating: &Value, source: &str) -> Option<f64> {
    let lines = rating["uncertainty"]["contributions"].as_array().unwrap();
    let line = lines.iter().find(|line| line["source"] == source)?;
    line["relative_uncertainty"].as_f64()
}

/// A cloudless span for each run.
fn all_cloudless(bench: &Bench) {
    for day in 1..=3 {
        let log = format!("log = \"day-{day}.csv\"");
        let span = "\n[[run.cloudless]]\nfrom = \"10:05\"\nto = \"13:55\"";
        bench.replace("mallee/campaign.toml", &log, &format!("{log}{span}"));
    }
}

#[test]
fn a_clear_sky_rates_a_log_without_irradiance_and_marks_it_everywhere() {
    let bench = bench("estimate = \"clear-sky\"");
    without_column(&bench, 3);
    all_cloudless(&bench);
    let ended: Ended = bench.run(&["report", "mallee"]).exits(0);
    assert!(!ended.err.contains("no column is understood as irradiance"));
    ended.prints(&["indicative only; irradiance estimated"]);
    let rating = rated(&bench);
    assert_eq!(rating["estimates"]["irradiance"], "clear-sky");
    assert_eq!(rating["conformity"]["level"], "indicative");
    assert_eq!(codes(&rating), ["irradiance-estimated"]);
    assert_eq!(of_source(&rating, "irradiance"), None);
    assert_eq!(of_source(&rating, "irradiance, estimated"), Some(0.10));
    for interval in rating["intervals"].as_array().unwrap() {
        // At sea level and turbidity 3, from 25 to 45 degrees off the zenith.
        let sun = interval["irradiance_mean_w_m2"].as_f64().unwrap();
        assert!((930.0..1080.0).contains(&sun), "{sun}");
    }
}

#[test]
fn spans_not_stated_cloudless_are_set_aside_whole_or_in_part() {
    let bench = bench("estimate = \"clear-sky\"");
    without_column(&bench, 3);
    let span = "log = \"day-1.csv\"\n[[run.cloudless]]\nfrom = \"10:30\"\nto = \"12:00\"";
    bench.replace("mallee/campaign.toml", "log = \"day-1.csv\"", span);
    let rating = rated(&bench);
    for interval in rating["intervals"].as_array().unwrap() {
        let (start, end) = (
            interval["start"].as_str().unwrap(),
            interval["end"].as_str().unwrap(),
        );
        let is_inside =
            start.starts_with("2026-04-14") && start[11..16] >= *"10:30" && end[11..16] <= *"12:00";
        let reasons = interval["reasons"].as_array().unwrap();
        let is_aside = reasons.iter().any(|reason| reason == "not-cloudless");
        assert_eq!(is_aside, !is_inside, "{start}");
        assert!(
            !reasons.iter().any(|reason| reason == "reading-gap"),
            "{start}"
        );
    }
}

#[test]
fn a_stall_under_a_sky_stated_cloudless_is_noticed() {
    let bench = bench("estimate = \"clear-sky\"");
    without_column(&bench, 3);
    all_cloudless(&bench);
    assert!(
        !bench
            .run(&["check", "mallee"])
            .exits(0)
            .out
            .contains("as under a cloud")
    );
    // From 11:05 to 11:15 of the second day the water stays as warm as it is.
    bench.change_lines("mallee/day-2.csv", |_, line| {
        let cells: Vec<&str> = line.split(',').collect();
        let is_after = cells[0].len() > 16 && cells[0][11..16] > *"11:05";
        let stalled = water_c(3600.0);
        let water = cells.get(1).unwrap_or(&"").parse::<f64>();
        Some(match (is_after, water) {
            (true, Ok(water)) if cells[0][11..16] <= *"11:15" => {
                line.replace(&format!(",{water:.1},"), &format!(",{stalled:.1},"))
            }
            (true, Ok(water)) => {
                let lost = water_c(4200.0) - stalled;
                line.replace(&format!(",{water:.1},"), &format!(",{:.1},", water - lost))
            }
            _ => line.to_owned(),
        })
    });
    bench.run(&["check", "mallee"]).exits(0).prints(&[
        "day-2.csv: the water gains less than half",
        "11:05 to 11:15",
    ]);
}

/// The campaign with other keys, and 700 W/m² in every row.
fn bench_at_700(keys: &str) -> Bench {
    let bench = bench(keys);
    bench.change_rows(|cells| match cells {
        ["time", ..] => HEADER.to_owned(),
        _ => [cells[0], cells[1], cells[2], "700", cells[4]].join(","),
    });
    bench
}

#[test]
fn a_flat_sensor_is_turned_to_the_sun() {
    let measured = rated(&bench_at_700("plane = \"horizontal\""));
    assert_eq!(codes(&measured), ["irradiance-not-normal"]);
    let rating = rated(&bench_at_700("estimate = \"from-horizontal\""));
    assert_eq!(codes(&rating), ["irradiance-estimated"]);
    assert_eq!(
        of_source(&rating, "irradiance, turned to the sun"),
        Some(0.05)
    );
    assert!(
        of_source(&rating, "irradiance").is_some(),
        "the sensor's own stays"
    );
    let mean = |rating: &Value| {
        let first = &rating["intervals"].as_array().unwrap()[0];
        first["irradiance_mean_w_m2"].as_f64().unwrap()
    };
    // pvlib 0.16.1 (spa_python, erbs, isotropic, albedo 0.2): 700 W/m² on the horizontal at
    // 20° S, 0° E, 100 m, 2026-04-14 10:05, 10:10 and 10:15 UTC are 858.239, 845.599 and
    // 834.024 W/m² facing the sun; their mean by the trapezoid is 845.865.
    assert_eq!(mean(&measured), 700.0);
    assert!((mean(&rating) - 845.865).abs() < 0.01, "{}", mean(&rating));
}

#[test]
fn a_station_and_a_panel_have_uncertainties_of_their_own() {
    let station = rated(&bench_at_700(
        "plane = \"horizontal\"\nestimate = \"station\"",
    ));
    assert_eq!(
        of_source(&station, "irradiance, at the station"),
        Some(0.10)
    );
    assert_eq!(
        of_source(&station, "irradiance, turned to the sun"),
        Some(0.05)
    );
    let panel =
        bench("plane = \"normal\"\nestimate = \"solar-panel\"\nsensitivity_ma_per_w_m2 = 0.5");
    for day in 1..=3 {
        bench_in_milliampere(&panel, day);
    }
    let rating = rated(&panel);
    assert_eq!(codes(&rating), ["irradiance-estimated"]);
    // Within ± 15 %, rectangular: JCGM 100, 4.3.7.
    let expected = 0.15 / 3.0_f64.sqrt();
    assert!((of_source(&rating, "irradiance").unwrap() - expected).abs() < 1e-12);
    let first = rating["intervals"][0]["irradiance_mean_w_m2"]
        .as_f64()
        .unwrap();
    assert!((first - 894.0).abs() < 1e-9, "{first}");
}

/// A log whose irradiance is a current of 0.5 mA for each W/m².
fn bench_in_milliampere(bench: &Bench, day: u32) {
    bench.change_lines(&format!("mallee/day-{day}.csv"), |_, line| {
        let cells: Vec<&str> = line.split(',').collect();
        Some(match cells.get(3).map(|cell| cell.parse::<f64>()) {
            Some(Ok(watts)) => {
                let current = format!("{}", watts / 2.0);
                [cells[0], cells[1], cells[2], &current, cells[4]].join(",")
            }
            Some(Err(_)) => "time,water_c,ambient_c,irradiance (mA),wind_m_s".to_owned(),
            None => line.to_owned(),
        })
    });
}

#[test]
fn contradictions_in_an_estimate_are_refused_with_the_key() {
    for (keys, part) in [
        ("estimate = \"clear-skies\"", "did you mean \"clear-sky\"?"),
        (
            "estimate = \"clear-sky\"\nclass = \"pyranometer-a\"",
            "no instrument",
        ),
        (
            "estimate = \"clear-sky\"\nplane = \"horizontal\"",
            "does not go together",
        ),
        (
            "estimate = \"from-horizontal\"\nplane = \"normal\"",
            "does not go together",
        ),
        ("estimate = \"station\"", "needs the plane"),
    ] {
        let run = bench(keys).run(&["check", "mallee"]).exits(4);
        run.says(&["[instruments.irradiance] estimate", part]);
    }
    // The log measures what the model would make up.
    let measured = bench("estimate = \"clear-sky\"");
    all_cloudless(&measured);
    let run = measured.run(&["check", "mallee"]).exits(4);
    run.says(&["measures irradiance", "from-horizontal"]);
    // A span that nothing makes use of, and one that ends before it begins.
    let idle = bench("plane = \"normal\"");
    all_cloudless(&idle);
    idle.run(&["check", "mallee"])
        .exits(4)
        .says(&["nothing makes use of a cloudless span"]);
    let backwards = bench("estimate = \"clear-sky\"");
    without_column(&backwards, 3);
    all_cloudless(&backwards);
    backwards.replace("mallee/campaign.toml", "to = \"13:55\"", "to = \"09:55\"");
    backwards
        .run(&["check", "mallee"])
        .exits(4)
        .says(&["the cloudless span 10:05 to 09:55 does not end after it begins"]);
    let dusty = bench("plane = \"normal\"");
    let elevation = "elevation_m = 100";
    let turbid = format!("{elevation}\nlinke_turbidity = 0.5");
    dusty.replace("mallee/campaign.toml", elevation, &turbid);
    dusty
        .run(&["check", "mallee"])
        .exits(4)
        .says(&["[site] linke_turbidity", "found 0.5, expected 1 to 10"]);
}

#[test]
fn wind_by_eye_is_the_middle_of_its_number_and_marked() {
    let bench = Bench::new();
    for day in 1..=3 {
        bench.change_lines(&format!("mallee/day-{day}.csv"), |_, line| {
            let line = line.replace("wind_m_s", "wind (Bft)");
            Some(
                line.strip_suffix(",0.4")
                    .map_or(line.clone(), |row| format!("{row},1")),
            )
        });
    }
    let rating = rated(&bench);
    assert_eq!(codes(&rating), ["wind-estimated"]);
    assert_eq!(rating["estimates"]["wind"], true);
    // WMO-No. 8: number 1 is 0.3 to 1.5 m/s.
    let wind = rating["intervals"][0]["wind_mean_m_s"].as_f64().unwrap();
    assert!((wind - 0.9).abs() < 1e-12, "{wind}");
}

#[test]
fn a_coarse_thermometer_is_named_as_what_limits_the_number() {
    let bench = Bench::new();
    bench.replace(
        "mallee/campaign.toml",
        "plane = \"normal\"",
        "plane = \"normal\"\nrelative_uncertainty = 0.002\n\
         [instruments.water_temperature]\nuncertainty_k = 0.05\n\
         [instruments.ambient_temperature]\nuncertainty_k = 0.05\n\
         [instruments.water_mass]\nrelative_uncertainty = 0.001",
    );
    for day in 1..=3 {
        bench.change_lines(&format!("mallee/day-{day}.csv"), |_, line| {
            let cells: Vec<&str> = line.split(',').collect();
            Some(match cells.get(1).map(|cell| cell.parse::<f64>()) {
                Some(Ok(celsius)) => {
                    let mark = ((celsius * 1.8 + 32.0) / 5.0).round() * 5.0;
                    let air = AMBIENT_C * 1.8 + 32.0;
                    format!("{},{mark},{air:.1},{},{}", cells[0], cells[3], cells[4])
                }
                Some(Err(_)) => HEADER.replace("water_c,ambient_c", "water_f,ambient_f"),
                None => line.to_owned(),
            })
        });
    }
    bench.run(&["report", "mallee", "--quiet"]).exits(0);
    let text = bench.pdf_text("reports/mallee.pdf");
    assert!(
        text.contains("mostofitfromtheresolutionofthewaterthermometer"),
        "{text}"
    );
}

#[test]
fn a_dry_vessel_needs_no_run_and_no_water() {
    let bench = Bench::new();
    let text = bench.read("mallee/campaign.toml");
    let start = text.find("\n[[run]]").unwrap();
    let dry = "\n[[stagnation]]\ndate = 2026-04-14\ntime = \"12:00\"\nplateau_f = 375\n\
               ambient_c = 26\nirradiance_w_m2 = 900\nuncertainty_k = 5\nnotes = \"invented\"\n";
    bench.write("mallee/campaign.toml", format!("{}{dry}", &text[..start]));
    let ended = bench.run(&["report", "mallee"]).exits(0);
    ended.prints(&["✗ ", "–", "no rating"]);
    let rating: Value = serde_json::from_str(&bench.read("reports/mallee.rating.json")).unwrap();
    let found = &rating["stagnation"][0];
    // 375 °F are 190.56 °C (NIST SP 811); (190.556 − 26)/900 = 0.18284 K m²/W.
    let ratio = found["difference_per_irradiance_k_m2_per_w"]
        .as_f64()
        .unwrap();
    assert!(
        (ratio - (375.0 - 32.0) / 1.8 / 900.0 + 26.0 / 900.0).abs() < 1e-12,
        "{ratio}"
    );
    // By hand: 2 · 0.18284 · √((5/164.56)² + (1.1547/164.56)² + 0.10²), the assumed
    // pyranometer of class C and kitchen thermometer.
    let expanded = found["expanded_uncertainty_k_m2_per_w"].as_f64().unwrap();
    assert!((expanded - 0.038_31).abs() < 2e-5, "{expanded}");
    let text = bench.pdf_text("reports/mallee.pdf");
    assert!(text.contains("Thedryvesselcameto165Kabovetheair"), "{text}");
}

#[test]
fn a_dry_test_with_something_missing_or_impossible_is_refused() {
    for (keys, part) in [
        (
            "plateau_c = 180\nambient_c = 25\n",
            "irradiance_w_m2 and cloudless",
        ),
        (
            "plateau_c = 180\nambient_c = 25\ncloudless = true\n",
            "needs the time",
        ),
        (
            "plateau_c = 20\nambient_c = 25\nirradiance_w_m2 = 900\n",
            "no hotter than the air",
        ),
        (
            "plateau_c = 180\nplateau_f = 350\nambient_c = 25\nirradiance_w_m2 = 900\n",
            "one of plateau_c and plateau_f",
        ),
        (
            "plateau_c = 1800\nambient_c = 25\nirradiance_w_m2 = 900\n",
            "found 1800",
        ),
    ] {
        let bench = Bench::new();
        let text = bench.read("mallee/campaign.toml");
        let dry = format!("\n[[stagnation]]\ndate = 2026-04-14\n{keys}");
        bench.write("mallee/campaign.toml", text + &dry);
        bench
            .run(&["check", "mallee"])
            .exits(4)
            .says(&["[[stagnation]] 1", part]);
    }
}
