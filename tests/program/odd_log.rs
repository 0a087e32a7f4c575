//! Logs that are odd and still good.

use crate::bench::{AMBIENT_C, Bench, HEADER, campaign, row, water_c};
use serde_json::Value;

#[test]
fn three_rows_only_are_reported_without_a_rating() {
    let bench = Bench::new();
    for day in 1..=3 {
        let rows: Vec<String> = [0, 600, 1200].map(|s| row(13 + day, s)).to_vec();
        bench.write(
            &format!("mallee/day-{day}.csv"),
            format!("{HEADER}\n{}\n", rows.join("\n")),
        );
    }
    let one_run = campaign().replace(
        "\n[[run]]\nlog = \"day-2.csv\"\n\n[[run]]\nlog = \"day-3.csv\"\n",
        "",
    );
    bench.write("mallee/campaign.toml", one_run);
    let rating = bench.report();
    assert_eq!(rating["rating"], Value::Null);
    assert_eq!(rating["regression"], Value::Null);
    assert_eq!(rating["intervals"].as_array().unwrap().len(), 2);
    bench
        .run(&["report", "mallee"])
        .exits(0)
        .prints(&["✗ ", "–", "no rating"]);
    bench
        .run(&["check", "mallee"])
        .exits(0)
        .prints(&["✗ No rating: Mallee trough", "no line can be fitted"]);
}

#[test]
fn one_row_gives_no_interval_and_a_notice_that_says_so() {
    let bench = Bench::new();
    for day in 1..=3 {
        bench.write(
            &format!("mallee/day-{day}.csv"),
            format!("{HEADER}\n{}\n", row(13 + day, 0)),
        );
    }
    let ended = bench.run(&["report", "mallee"]).exits(0);
    let ended = ended.says(&[
        "note: mallee: day-1.csv: ",
        "there is no interval",
        "steps that add up to 10 minutes",
    ]);
    ended.prints(&["✗ ", "no rating", "0/0"]);
    assert_eq!(
        bench.rating("mallee")["intervals"],
        Value::Array(Vec::new())
    );
}

#[test]
fn without_irradiance_the_row_says_why_and_the_intervals_are_told_as_they_were() {
    let bench = Bench::new();
    for day in 1..=3 {
        let log = format!("mallee/day-{day}.csv");
        bench.replace(&log, "irradiance_w_m2", "dust");
    }
    let said = ["✗ ", "no rating; irradiance not measured"];
    bench.run(&["report", "mallee"]).exits(0).prints(&said);
    let checked = ["✗ No rating (irradiance not measured): Mallee trough"];
    bench.run(&["check", "mallee"]).exits(0).prints(&checked);
    let rating = bench.rating("mallee");
    assert!(!rating["intervals"].as_array().unwrap().is_empty());
    // Its text without spaces.
    let text = bench.pdf_text("reports/mallee.pdf");
    for told in [
        "Irradiancenotmeasured",
        "longgustsnoneused",
        "Solartimenoneused",
    ] {
        assert!(text.contains(told), "{told}: {text}");
    }
    assert!(!text.contains("nointerval"), "{text}");
}

#[test]
fn a_hole_in_a_log_is_named_with_its_times() {
    let bench = Bench::new();
    bench.change_lines("mallee/day-2.csv", |_, text| {
        let in_hole = text > "2026-04-15 11:00" && text < "2026-04-15 11:45";
        (!in_hole).then(|| text.to_owned())
    });
    let ended = bench.run(&["check", "mallee"]).exits(0);
    ended.prints(&["day-2.csv: no interval from 10:55 to 11:45 on 15 April 2026"]);
    let rating = bench.report();
    assert!(rating["rating"]["ps50_w"].is_number());
}

#[test]
fn more_columns_in_any_order_give_the_same_rating() {
    let bench = Bench::new();
    let plain = bench.report();
    bench.change_rows(|cells| match cells {
        ["time", ..] => "wind_m_s,lux,irradiance_w_m2, Time ,note,water_c,ambient_c".to_owned(),
        [time, water, air, sun, wind] => format!("{wind},9,{sun},{time},\"a, b\",{water},{air}"),
        _ => unreachable!("every row has five cells"),
    });
    let mixed = bench.report();
    for key in ["rating", "regression", "intervals", "conformity"] {
        assert_eq!(plain[key], mixed[key], "{key}");
    }
    assert_ne!(plain["provenance"], mixed["provenance"]);
}

#[test]
fn a_header_after_a_byte_order_mark_with_carriage_returns_is_understood() {
    let bench = Bench::new();
    let plain = bench.report();
    for day in 1..=3 {
        let name = format!("mallee/day-{day}.csv");
        let text = bench
            .read(&name)
            .replace("# Invented data\n", "")
            .replace('\n', "\r\n");
        bench.write(&name, format!("\u{feff}{text}"));
    }
    assert_eq!(plain["intervals"], bench.report()["intervals"]);
}

#[test]
fn two_mapped_water_sensors_give_their_mean() {
    let bench = Bench::new();
    let plain = bench.report();
    let columns = "[columns]\ntime = \"Stamp\"\nwater_temperature = [\"Left\", \"Right\"]\n\
        ambient_temperature = \"Air\"\nirradiance = \"Pyr\"\nwind_speed = \"Vane\"\n[[run]]";
    bench.replace("mallee/campaign.toml", "[[run]]", columns);
    bench.change_rows(|cells| match cells {
        ["time", ..] => "Stamp,Left,Right,Air,Pyr,Vane".to_owned(),
        [time, water, rest @ ..] => {
            let water: f64 = water.parse().unwrap();
            format!(
                "{time},{:.1},{:.1},{}",
                water - 0.5,
                water + 0.5,
                rest.join(",")
            )
        }
        _ => unreachable!("every row has cells"),
    });
    let mapped = bench.report();
    let ps50_w = |rating: &Value| rating["rating"]["ps50_w"].as_f64().unwrap();
    // The mean of two decimal fractions differs from the third by rounding alone.
    assert!((ps50_w(&plain) / ps50_w(&mapped) - 1.0).abs() < 1e-9);
    assert_eq!(plain["conformity"], mapped["conformity"]);
}

#[test]
fn blanks_and_fault_values_are_missing_and_never_numbers() {
    let bench = Bench::new();
    bench.change_lines("mallee/day-2.csv", |line, text| {
        let mut cells: Vec<&str> = text.split(',').collect();
        match line {
            11 => cells[3] = "-9999",
            13 => cells[3] = "",
            15 => cells[1] = "-999.0",
            17 => cells[4] = "NaN",
            _ => {}
        }
        Some(cells.join(","))
    });
    let ended = bench.run(&["report", "mallee"]).exits(0).says(&[
        "note: mallee: day-2.csv: 1 fault value in column \"irradiance_w_m2\"",
        "note: mallee: day-2.csv: 1 fault value in column \"water_c\"",
    ]);
    // And that the campaign states no uncertainty.
    assert_eq!(ended.err.lines().count(), 3, "{}", ended.err);
    let csv = bench.read("reports/mallee.intervals.csv");
    assert!(!csv.contains("-999") && !csv.contains("NaN"));
    let rating = bench.rating("mallee");
    let means = rating["intervals"]
        .as_array()
        .unwrap()
        .iter()
        .map(|i| i["irradiance_mean_w_m2"].as_f64().unwrap());
    assert!(means.into_iter().all(|mean| (890.0..900.0).contains(&mean)));
}

#[test]
fn unsorted_and_repeated_rows_are_noticed_and_change_no_number() {
    let bench = Bench::new();
    let plain = bench.report();
    let text = bench.read("mallee/day-2.csv");
    let mut lines: Vec<&str> = text.lines().collect();
    let repeated = lines[20].replace(",0.4", ",0.9");
    lines.insert(21, &repeated);
    lines.swap(5, 30);
    bench.write("mallee/day-2.csv", lines.join("\n"));
    bench.run(&["report", "mallee"]).exits(0).says(&[
        "note: mallee: day-2.csv: the rows were not in order of time and have been sorted",
        "note: mallee: day-2.csv: 1 row with the time of an earlier row left out; the first is used",
    ]);
    let rating = bench.rating("mallee");
    assert_eq!(plain["intervals"], rating["intervals"]);
    assert_eq!(plain["rating"], rating["rating"]);
    // And that the campaign states no uncertainty.
    assert_eq!(rating["notices"].as_array().unwrap().len(), 3);
}

#[test]
fn a_log_of_a_million_rows_is_reported() {
    use std::fmt::Write;
    let bench = Bench::new();
    let mut text = format!("# Invented data\n{HEADER}\n");
    for second in 0..1_000_000_u32 {
        let (day, clock) = (5 + second / 86_400, second % 86_400);
        let (hour, minute) = (clock / 3600, clock / 60 % 60);
        let heated = clock.saturating_sub(36_300).min(14_400);
        let water_c = water_c(f64::from(heated));
        writeln!(
            text,
            "2026-05-{day:02} {hour:02}:{minute:02}:{:02},{water_c:.2},{AMBIENT_C},900,0.4",
            clock % 60
        )
        .unwrap();
    }
    bench.write("mallee/day-2.csv", text);
    let ended = bench.run(&["report", "mallee", "--quiet"]).exits(0);
    assert_eq!((ended.out.as_str(), ended.err.as_str()), ("", ""));
    assert_eq!(bench.rating("mallee")["runs"][1]["readings"], 1_000_000);
}

#[test]
fn why_a_date_is_read_in_an_order_is_true_of_its_rows() {
    let only = "the only order in which every row is a day";
    let points = "points stand between day, month and year";
    let usual = "the only usual order in which every row is a day";
    for (written, order, why) in [
        ("14/04/2026", "day-month-year", only),
        ("04/14/2026", "month-day-year", only),
        ("14.04.2026", "day-month-year", only),
        // 6 October is a day as well.
        ("10.06.2026", "day-month-year", points),
        // So is 26 April 2014.
        ("14/04/26", "day-month-year", usual),
    ] {
        let bench = Bench::new();
        let log = bench
            .read("mallee/day-1.csv")
            .replace("2026-04-14", written);
        bench.write("mallee/day-1.csv", log);
        let told = bench.run(&["check", "mallee"]).exits(0).out;
        let told = told.split_whitespace().collect::<Vec<_>>().join(" ");
        assert!(
            told.contains(&format!("{order} ({why})")),
            "{written}: {told}"
        );
    }
}
