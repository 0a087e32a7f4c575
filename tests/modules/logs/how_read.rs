//! What the person sees of how a log was read.

use std::path::Path;

use assert_cmd::Command;
use simmerline::assess_folder;

fn check(folder: &str) -> String {
    let mut command = Command::cargo_bin("simmerline").unwrap();
    let output = command.args(["check", folder]).output().unwrap();
    assert!(output.status.success());
    String::from_utf8(output.stdout).unwrap()
}

#[test]
fn everything_about_a_tangled_log_is_told() {
    let told = check("tests/data/dresses/tall-logger");
    for part in [
        "UTF-8, cells separated by comma; header on line 7; decimal point",
        "lines 1–6 skipped (before the header)",
        "lines 8, 36 skipped (units under the header)",
        "line 28 skipped (comment)",
        "line 35 skipped (header again)",
        "lines 29–34 skipped (before a repeated header)",
        "time: ms since 1970, as in \"1771893000000\"; zone UTC (since 1970)",
        "water temperature (campaign file), °F (units row)",
        "irradiance (campaign file), mV (units row); sensitivity 12.4 µV per W/m²",
        "wind speed (campaign file), mph (units row)",
        "51 readings from 2026-02-24 11:30:00 to 13:10:00, mostly one every 120 s",
    ] {
        assert!(told.contains(part), "no {part:?} in {told}");
    }
}

#[test]
fn encoding_delimiter_and_decimal_mark_are_told() {
    let told = check("tests/data/dresses/tall-german");
    assert!(told.contains("UTF-16 LE"), "{told}");
    assert!(told.contains("cells separated by tab"), "{told}");
    assert!(told.contains("decimal comma"), "{told}");
    let told = check("tests/data/dresses/xlsx-second-sheet");
    assert!(told.contains("spreadsheet, sheet \""), "{told}");
    let told = check("tests/data/dresses/gzip");
    assert!(told.contains("gzip, UTF-8"), "{told}");
}

#[test]
fn a_calibration_is_in_the_account_of_its_column() {
    let told = check("tests/data/dresses/gain-offset");
    assert!(told.contains("calibrated: reading × "), "{told}");
    let told = check("tests/data/dresses/points");
    assert!(told.contains("calibrated by points, °C: "), "{told}");
}

#[test]
fn both_logs_of_a_run_are_told_with_the_clock_that_was_put_right() {
    let told = check("tests/data/dresses/weather-clock-error");
    assert!(told.contains(" s added to all times"), "{told}");
    let rated = assess_folder(Path::new("tests/data/dresses/weather-clock-error")).unwrap();
    let offsets = rated
        .tested
        .accounts
        .iter()
        .map(|account| account.clock_offset_s.abs());
    assert!(offsets.into_iter().any(|offset| offset == 120.0));
}

#[test]
fn a_header_that_the_fonts_lack_does_not_stop_the_report() {
    let folder = tempfile::tempdir().unwrap();
    let canonical = Path::new("tests/data/dresses/canonical");
    for entry in std::fs::read_dir(canonical).unwrap() {
        let entry = entry.unwrap();
        let text = std::fs::read_to_string(entry.path()).unwrap();
        let text = text.replace("wind_m_s", "wind_m_s,\u{5929}\u{6c17}");
        // A cell more in each row, of a column that is not read.
        let rows = text.lines().map(|line| match line.starts_with("2026") {
            true => format!("{line},1\n"),
            false => format!("{line}\n"),
        });
        std::fs::write(
            folder.path().join(entry.file_name()),
            rows.collect::<String>(),
        )
        .unwrap();
    }
    let rated = assess_folder(folder.path()).unwrap();
    assert_eq!(rated.tested.accounts[0].not_read, ["\u{5929}\u{6c17}"]);
    simmerline::report::outputs(
        &rated,
        &simmerline::report::Edition::plain(jiff::Timestamp::UNIX_EPOCH),
    )
    .unwrap();
}
