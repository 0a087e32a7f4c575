//! A log that is wrong is refused with place and remedy.

use crate::bench::{Bench, HEADER, refuses_campaign, refuses_log, refuses_row, row};
use std::fs;

#[test]
fn a_log_that_is_not_there_is_refused_with_its_line_in_the_campaign_file() {
    refuses_campaign(
        "day-2.csv",
        "day-two.csv",
        &["[[run]] 2", "\"day-two.csv\" is not there", "mallee"],
    );
}

#[test]
fn an_empty_log_is_refused() {
    for content in ["", "\n \r\n\n", "\u{feff}"] {
        refuses_log(content, &["is empty", "expected a header and readings"]);
    }
    refuses_log("# Invented data\n", &["no header and readings"]);
}

#[test]
fn a_log_with_a_header_only_is_refused() {
    refuses_log(format!("{HEADER}\n"), &["has a header and no readings"]);
    refuses_log(
        format!("{HEADER}\n,,,,\n"),
        &["has a header and no readings"],
    );
}

#[test]
fn a_log_without_a_needed_column_is_refused_with_the_columns_that_are_there() {
    let bench = Bench::new();
    bench.replace("mallee/day-2.csv", HEADER, "time,water_c,shed,roof,breeze");
    bench.refuses(
        3,
        &[
            "error: mallee/day-2.csv:2: has no column that is understood as ambient temperature",
            "there are: \"time\", \"water_c\", \"shed\", \"roof\", \"breeze\"",
            "hint: ",
            "[columns] ambient_temperature",
        ],
    );
}

#[test]
fn a_column_that_the_campaign_file_names_and_the_log_lacks_is_refused() {
    let bench = Bench::new();
    bench.replace(
        "mallee/campaign.toml",
        "[[run]]",
        "[columns]\nwind_speed = \"Vane\"\n[[run]]",
    );
    bench.refuses(
        3,
        &[
            "mallee/day-1.csv",
            "\"Vane\"",
            "mallee/day-3.csv",
            "\"wind_m_s\"",
        ],
    );
}

#[test]
fn a_column_that_is_there_twice_is_refused() {
    let bench = Bench::new();
    bench.replace(
        "mallee/day-2.csv",
        HEADER,
        "time,water_c,ambient_c,water_c,wind_m_s",
    );
    bench.refuses(3, &["mallee/day-2.csv", "\"water_c\" 2 times"]);
}

#[test]
fn text_where_a_number_belongs_is_refused_with_line_and_column() {
    for found in ["9l.4", "26,5", "inf", "1e999", "26.0 °C"] {
        let row = row(15, 600);
        let cells: Vec<&str> = row.split(',').collect();
        let quoted = format!(
            "{},\"{found}\",{},{},{}",
            cells[0], cells[2], cells[3], cells[4]
        );
        let parts = [
            "column \"water_c\"",
            &format!("found \"{found}\""),
            "a number in °C",
        ];
        refuses_row(&row, &quoted, &parts);
    }
}

#[test]
fn of_25_bad_cells_20_are_listed_and_5_counted() {
    let bench = Bench::new();
    bench.change_lines("mallee/day-2.csv", |line, text| {
        let spoiled = (11..36).contains(&line);
        Some(if spoiled {
            text.replace(",0.4", ",O.4")
        } else {
            text.to_owned()
        })
    });
    let ended = bench.refuses(
        3,
        &[
            "mallee/day-2.csv:11: column \"wind_m_s\"",
            "mallee/day-2.csv:30: ",
            "not listed here: 5 more",
        ],
    );
    assert_eq!(ended.err.matches("error: ").count(), 20, "{}", ended.err);
    assert!(
        !ended.err.contains("mallee/day-2.csv:31: "),
        "{}",
        ended.err
    );
}

#[test]
fn bad_cells_of_several_logs_are_listed_together() {
    let bench = Bench::new();
    for (day, rows) in [(1, 3..18), (2, 3..18)] {
        bench.change_lines(&format!("mallee/day-{day}.csv"), |line, text| {
            Some(if rows.contains(&line) {
                text.replace(",0.4", ",O.4")
            } else {
                text.to_owned()
            })
        });
    }
    let ended = bench.refuses(3, &["mallee/day-1.csv:17: ", "mallee/day-2.csv:17: "]);
    // Twenty a file: the faults of one log do not hide those of another.
    assert_eq!(ended.err.matches("error: ").count(), 30);
}

#[test]
fn a_time_that_is_none_is_refused_with_its_line() {
    let row = row(15, 600);
    for (time, part) in [
        (
            "half past ten",
            "found \"half past ten\", expected a time as",
        ),
        ("2026-04-15", "a date without a clock time"),
        ("10:15:00", "expected a time as"),
        ("2026-04-31 10:15:00", "expected a time as"),
        ("2026-04-15 25:15:00", "expected a time as"),
        ("0001-04-15 10:15:00", "expected a time as"),
        ("", "the time is missing"),
    ] {
        let spoiled = row.replacen("2026-04-15 10:15:00", time, 1) + " ";
        refuses_row(
            &row,
            &spoiled,
            &["column \"time\": ", part, "2026-03-14 10:20:00"],
        );
    }
}

#[test]
fn a_row_with_more_or_fewer_cells_than_the_header_is_refused_with_its_line() {
    let row = row(15, 600);
    refuses_row(&row, &(row.clone() + ",7"), &["found 6 cells, expected 5"]);
    refuses_row(
        &row,
        "2026-04-15 10:15:00,31.2",
        &["found 2 cells, expected 5"],
    );
}

#[test]
fn a_quote_that_is_never_closed_is_refused() {
    let row = row(15, 600);
    refuses_row(&row, &row.replacen(',', ",\"", 1), &["hint: "]);
}

#[test]
fn lines_are_counted_with_remarks_and_blank_lines() {
    let bad = row(15, 600).replace(",0.4", ",O.4");
    for before in ["# a remark\n", "\n", "\n# one\n\n# two\n"] {
        refuses_row(&row(15, 600), &format!("{before}{bad}"), &["found \"O.4\""]);
    }
}

#[test]
fn temperatures_in_fahrenheit_are_refused_and_the_unit_named() {
    let fahrenheit = |cell: &str| format!("{:.1}", cell.parse::<f64>().unwrap() * 1.8 + 32.0);
    let bench = Bench::new();
    bench.change_rows(|cells| match cells {
        ["time", ..] => HEADER.to_owned(),
        [time, water, rest @ ..] => format!("{time},{},{}", fahrenheit(water), rest.join(",")),
        _ => unreachable!("every row has cells"),
    });
    bench.refuses(
        3,
        &[
            "error: mallee/day-1.csv: column \"water_c\" (water temperature)",
            "looks like °F",
        ],
    );
    let bench = Bench::new();
    bench.change_rows(|cells| match cells {
        ["time", ..] => HEADER.to_owned(),
        [time, water, air, rest @ ..] => {
            format!("{time},{water},{},{}", fahrenheit(air), rest.join(","))
        }
        _ => unreachable!("every row has cells"),
    });
    bench.refuses(
        3,
        &[
            "error: mallee/day-1.csv: column \"ambient_c\" (ambient temperature)",
            "looks like °F",
        ],
    );
}

#[test]
fn irradiance_in_kilowatts_is_refused_and_the_unit_named() {
    let bench = Bench::new();
    bench.change_rows(|cells| cells.join(",").replace(",26.0,8", ",26.0,0.8"));
    bench.refuses(
        3,
        &[
            "error: mallee/day-1.csv: column \"irradiance_w_m2\" (irradiance)",
            "kW/m²",
        ],
    );
}

#[test]
fn a_log_without_one_valid_water_reading_is_refused() {
    let bench = Bench::new();
    bench.change_rows(|cells| match cells {
        ["time", ..] => HEADER.to_owned(),
        [time, _, rest @ ..] => format!("{time},-9999,{}", rest.join(",")),
        _ => unreachable!("every row has cells"),
    });
    bench.refuses(
        3,
        &["error: mallee/day-1.csv", "has no valid water temperature"],
    );
}

#[test]
fn bytes_that_are_no_text_are_refused() {
    let every_byte: Vec<u8> = (0..=255).cycle().take(5000).collect();
    refuses_log(every_byte, &["binary data", "CSV"]);
    let high_bytes: Vec<u8> = (128..=255).cycle().take(5000).collect();
    refuses_log(high_bytes, &["no header"]);
    // UTF-8 up to a damaged byte: another encoding would turn "é" into two letters.
    let mut damaged = format!("{HEADER}\n# café\n").into_bytes();
    damaged.extend(b"x".repeat(70_000));
    damaged.extend(b"\n\xb0C,,,,\n");
    refuses_log(damaged, &["day-2.csv:4: ", "not UTF-8 text", "encoding"]);
}

#[test]
fn a_folder_as_log_is_refused() {
    let bench = Bench::new();
    fs::remove_file(bench.path("mallee/day-2.csv")).unwrap();
    fs::create_dir(bench.path("mallee/day-2.csv")).unwrap();
    bench.refuses(
        3,
        &[
            "error: mallee/day-2.csv: is no file",
            "correct the log's name",
        ],
    );
}

#[test]
fn a_log_without_a_name_is_refused() {
    let bench = Bench::new();
    bench.replace("mallee/campaign.toml", "\"day-2.csv\"", "\"\"");
    let ended = bench.run(&["check", "mallee"]);
    assert!([3, 4].contains(&ended.code), "{}", ended.err);
    ended.says(&["hint: "]);
}
