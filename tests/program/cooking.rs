//! What a rating means for cooking: as asked, with its warning, and with its assumptions.

use serde_json::Value;

use crate::bench::Bench;

/// The campaign with more text at the end of its file.
fn bench(more: &str) -> Bench {
    let bench = Bench::new();
    let text = bench.read("mallee/campaign.toml");
    bench.write("mallee/campaign.toml", text + more);
    bench
}

fn rated(bench: &Bench) -> Value {
    bench.run(&["report", "mallee", "--quiet"]).exits(0);
    serde_json::from_str(&bench.read("reports/mallee.rating.json")).unwrap()
}

#[test]
fn heating_is_told_for_what_the_campaign_asks() {
    let usual = rated(&Bench::new());
    let asked = rated(&bench(
        "\n[cooking]\nwater_kg = [1, 3.5]\nirradiance_w_m2 = 1000\n",
    ));
    let heatings = |rating: &Value| rating["cooking"]["heatings"].as_array().unwrap().clone();
    let loads: Vec<f64> = heatings(&asked)
        .iter()
        .map(|heating| heating["water_kg"].as_f64().unwrap())
        .collect();
    assert_eq!(loads, [1.0, 3.5, 7.0]);
    // Asked for 1000 W/m²: by the heat balance, t = (m c/u)·ln(P1/P2), P = g G − u (T − Ta).
    let of = |figure: &str| asked["heat_balance"][figure]["value"].as_f64().unwrap();
    let (gain_m2, loss_w_per_k) = (of("gain_m2"), of("loss_w_per_k"));
    let ambient_c = asked["cooking"]["ambient_c"].as_f64().unwrap();
    let power_w = |celsius: f64| gain_m2 * 1000.0 - loss_w_per_k * (celsius - ambient_c);
    let by_hand_s = 4186.0 / loss_w_per_k * (power_w(20.0) / power_w(95.0)).ln();
    let seconds = |rating: &Value, key: &str| heatings(rating)[0][key].as_f64().unwrap();
    let found_s = seconds(&asked, "time_s");
    assert!(
        (found_s / by_hand_s - 1.0).abs() < 1e-9,
        "{found_s} {by_hand_s}"
    );
    for key in ["time_s", "boil_time_s"] {
        let more = heatings(&asked)[1][key].as_f64().unwrap() / seconds(&asked, key);
        assert!((more - 3.5).abs() < 1e-12, "{key}: {more}");
    }
    // Else it is for the irradiance of the test, 894 to 896 W/m².
    let of_test_w_m2 = usual["cooking"]["irradiance_w_m2"].as_f64().unwrap();
    assert!((894.0..=896.0).contains(&of_test_w_m2), "{of_test_w_m2}");
    assert!(seconds(&usual, "time_s") > found_s);
    let warmer = rated(&bench("\n[cooking]\nambient_c = 31\nstart_c = 25\n"));
    assert_eq!(warmer["cooking"]["ambient_c"], 31.0);
    // The line is zero near 117 °C, and water boils before.
    assert_eq!(usual["cooking"]["heat_ends_c"], Value::Null);
}

#[test]
fn foods_follow_from_the_line_and_are_never_more_than_was_tested() {
    let rating = rated(&Bench::new());
    let line = &rating["regression"];
    let (a, b) = (
        line["intercept_w"].as_f64().unwrap(),
        line["slope_w_per_k"].as_f64().unwrap(),
    );
    // At the irradiance of the test normalising is undone.
    let cooking = |key: &str| rating["cooking"][key].as_f64().unwrap();
    let share = cooking("irradiance_w_m2") / 700.0;
    let (a, b) = (share * a, share * b);
    let power_w = |celsius: f64| a + b * (celsius - cooking("ambient_c"));
    for food in rating["cooking"]["foods"].as_array().unwrap() {
        // By hand: kg = (4 h − hold)/(c · ln(P1/P2)/(−b)), at most the 7 kg tested.
        let number = |key: &str| food[key].as_f64().unwrap();
        let k_per_w = (power_w(20.0) / power_w(number("cooks_at_c"))).ln() / -b;
        let kg = (14_400.0 - number("held_s")) / (number("specific_heat_j_per_kg_k") * k_per_w);
        let found = number("amount_kg");
        assert!((found - kg.min(7.0)).abs() < 1e-9, "{food}");
        let range = food["amount_95_kg"].as_array().unwrap();
        assert!(range[0].as_f64().unwrap() <= found && found <= range[1].as_f64().unwrap());
    }
}

#[test]
fn food_that_would_stay_too_long_where_bacteria_grow_is_warned_of() {
    let fast = rated(&bench("\n[cooking]\nirradiance_w_m2 = 1000\n"));
    assert_eq!(fast["food_safety_warning"], Value::Null);
    // Three times the water takes three times as long; the warning is of its own.
    let slow = Bench::new();
    slow.replace("mallee/campaign.toml", "water_kg = 7.0", "water_kg = 14.0");
    slow.replace(
        "mallee/campaign.toml",
        "intercept_area_m2 = 1.0",
        "intercept_area_m2 = 2.0",
    );
    slow.change_rows(|cells| match cells[1].parse::<f64>() {
        // Half the rise in the same time.
        Ok(water) => {
            let colder = format!("{:.1}", 26.0 + (water - 26.0) * 0.62);
            [cells[0], &colder, cells[2], cells[3], cells[4]].join(",")
        }
        Err(_) => cells.join(","),
    });
    let ended = slow.run(&["report", "mallee"]).exits(0);
    ended.says(&[
        "food safety: in day-",
        "between 5 °C and 60 °C for",
        "more than 2 h in all",
    ]);
    let rating: Value = serde_json::from_str(&slow.read("reports/mallee.rating.json")).unwrap();
    let warning = &rating["food_safety_warning"];
    assert_eq!(warning["longest_allowed_s"], 7200.0);
    assert!(warning["measured_s"].as_f64().unwrap() > 7200.0);
    let text = slow.pdf_text("reports/mallee.pdf");
    let section = text.find("8Whatitmeansforcooking").unwrap();
    assert!(text[section..].contains("Foodsafety:inday-"), "{text}");
}

#[test]
fn in_hot_air_an_hour_is_too_long() {
    let bench = Bench::new();
    bench.change_rows(|cells| match cells[1].parse::<f64>() {
        Ok(water) => {
            let warmer = format!("{:.1}", water + 7.5);
            [cells[0], &warmer, "33.5", cells[3], cells[4]].join(",")
        }
        Err(_) => cells.join(","),
    });
    let rating = rated(&bench);
    assert_eq!(rating["food_safety_warning"]["longest_allowed_s"], 3600.0);
}

#[test]
fn more_than_a_film_sends_on_is_noticed_for_reflectors_only() {
    let bench = Bench::new();
    // The line's intercept is about 240 W; 0.38 m² intercept 266 W at 700 W/m².
    bench.replace(
        "mallee/campaign.toml",
        "intercept_area_m2 = 1.0",
        "intercept_area_m2 = 0.38",
    );
    let ended = bench.run(&["check", "mallee"]).exits(0);
    ended.prints(&["more than a reflective film reflects (86 %"]);
    bench.replace("mallee/campaign.toml", "\"concentrating\"", "\"box\"");
    assert!(
        !bench
            .run(&["check", "mallee"])
            .exits(0)
            .out
            .contains("reflective film")
    );
}

#[test]
fn fuel_is_told_only_where_it_is_asked_for_and_with_every_source() {
    let plain = Bench::new();
    assert_eq!(rated(&plain)["cooking"]["fuel_saved"], Value::Null);
    let impact = "\n[impact]\nfuel = \"charcoal\"\nheating_value_mj_kg = 29.5\n\
                  heating_value_source = \"invented table\"\nstove_efficiency = 0.2\n\
                  stove_efficiency_source = \"invented test\"\ndays_per_year = 150\n\
                  days_source = \"invented count\"\n";
    let asked = bench(impact);
    let rating = rated(&asked);
    let saved = &rating["cooking"]["fuel_saved"];
    let heat_j = saved["heat_a_day_j"].as_f64().unwrap();
    let kg = saved["fuel_kg_per_year"].as_f64().unwrap();
    assert!((kg - heat_j * 150.0 / (29.5e6 * 0.2)).abs() < 1e-9, "{kg}");
    let text = asked.pdf_text("reports/mallee.pdf");
    for part in [
        "inventedtable",
        "inventedtest",
        "inventedcount",
        "nothingispromised",
    ] {
        assert!(text.contains(part), "{part}");
    }
    let without = impact.replace("days_source = \"invented count\"\n", "");
    bench(&without)
        .run(&["check", "mallee"])
        .exits(4)
        .says(&["the key \"days_source\" is missing"]);
    let wrong = impact.replace("0.2", "20");
    bench(&wrong)
        .run(&["check", "mallee"])
        .exits(4)
        .says(&["[impact] stove_efficiency", "found 20"]);
}
