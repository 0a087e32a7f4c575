//! Logs in which a reading could be lost, doubled or misread without a word. Each was
//! found by trying; all readings are invented.

use std::path::Path;

use jiff::tz::TimeZone;
use simmerline::campaign::model::{DateOrder, LogRules};
use simmerline::error::Error;
use simmerline::logs::read::{FileLog, read_bytes};
use simmerline::logs::request::Request;

const HEADER: &str = "time,water (°C),ambient (°C),irradiance (W/m²),wind (m/s)\n";

fn read_with(log: &str, rules: &LogRules, vessels: &[f64]) -> Result<FileLog, Error> {
    let zone = TimeZone::UTC;
    let request = Request {
        vessel_water_kg: vessels,
        date: Some(jiff::civil::date(2026, 9, 16)),
        start: simmerline::campaign::moment::Moment::parse("2026-09-16 10:00"),
        ..Request::new(rules, &zone)
    };
    read_bytes(Path::new("a.csv"), "a.csv", log.as_bytes(), &request)
}

#[track_caller]
fn read(log: &str) -> FileLog {
    read_with(log, &LogRules::default(), &[]).unwrap_or_else(|error| panic!("{error}"))
}

#[track_caller]
fn refused(log: &str, part: &str) {
    match read_with(log, &LogRules::default(), &[]) {
        Ok(log) => panic!("read: {:?}", log.readings.water_c.value),
        Err(error) => assert!(error.to_string().contains(part), "no {part:?} in {error}"),
    }
}

/// Rows of readings, a minute apart from 10:00 on.
fn rows(from: usize, to: usize) -> String {
    (from..to)
        .map(|n| {
            format!(
                "2026-09-16 {:02}:{:02}:00,{}.5,24.5,800,0.5\n",
                10 + n / 60,
                n % 60,
                30 + n % 60
            )
        })
        .collect()
}

#[test]
fn readings_between_two_headers_are_not_before_the_header() {
    let units = ",°C,°C,W/m²,m/s\n";
    let bare = "time,water,ambient,irradiance,wind\n";
    let log = format!("{bare}{units}{}{bare}{}", rows(0, 4), rows(4, 60));
    assert_eq!(read(&log).readings.time_us.len(), 60);
}

#[test]
fn a_missing_cell_between_spaces_shifts_nothing() {
    let log = "time water_c ambient_c irradiance_w_m2 battery\n\
        2026-09-16T10:00 30.5 24.5 800 12.6\n2026-09-16T10:05 32.5 800 12.6\n2026-09-16T10:10 34.5 24.5 800 12.6\n";
    refused(log, "found 4 cells, expected 5");
}

#[test]
fn a_stopwatch_that_begins_anew_is_another_run() {
    let part = "0,30.5,24.5,800,0.5\n600,36.5,24.5,800,0.5\n";
    let log = HEADER.replace("time", "elapsed (s)") + &part.repeat(6);
    refused(&log, "earlier than the row above");
}

#[test]
fn two_logs_in_one_are_not_interleaved() {
    let second = rows(10, 40).replace(":00,", ":30,");
    refused(
        &format!("{HEADER}{}{second}", rows(0, 30)),
        "the time goes back here",
    );
}

#[test]
fn another_text_behind_a_number_is_no_unit() {
    let with_unit = |rows: String| rows.replace(".5,24.5", ".5 °C,24.5 °C");
    let bare = "time,water,ambient,irradiance,wind\n";
    let good = format!("{bare}{}", with_unit(rows(0, 320)));
    assert_eq!(read(&good).readings.water_c.value[0], 30.5);
    for wrong in ["9l.4 °C", "158 °F", "46?"] {
        let row = format!("2026-09-16 20:00:00,{wrong},24.5 °C,800,0.5\n");
        refused(&format!("{good}{row}"), wrong);
    }
}

#[test]
fn the_water_of_a_vessel_is_not_dealt_by_the_order_of_columns() {
    let log = "time,Water 2 (°C),Water 1 (°C),ambient (°C)\n2026-09-16 10:00:00,30.5,40.5,24.5\n";
    let error = read_with(log, &LogRules::default(), &[4.0, 1.0])
        .unwrap_err()
        .to_string();
    assert!(error.contains("which column is which"), "{error}");
}

#[test]
fn the_letter_of_a_pot_is_no_unit_beside_that_of_another() {
    let log = "time,Pot_A,Pot_C,ambient (°C)\n2026-09-16 10:00:00,30.5,40.5,24.5\n";
    assert_eq!(read(log).readings.water_c.value, [35.5]);
    let log = "time,water_c,water_f,ambient_c\n2026-09-16 10:00:00,30.5,86.9,24.5\n";
    assert_eq!(read(log).readings.water_c.value, [30.5]);
    let log = "time,Pot_F,ambient_F\n2026-09-16 10:00:00,86,77\n";
    assert_eq!(read(log).readings.water_c.value, [30.0]);
}

#[test]
fn half_a_log_is_no_footer() {
    let other = rows(30, 60).replace("2026-09-16 10", "Woe 16-09-2026 10");
    refused(&format!("{HEADER}{}{other}", rows(0, 30)), "Woe 16-09-2026");
    let first = rows(0, 5).replace("2026", "Z026");
    refused(&format!("{HEADER}{first}{}", rows(5, 30)), "Z026");
}

#[test]
fn a_column_of_numbers_may_be_called_by_a_hash() {
    let log = "\"#\",\"Date Time, GMT+02:00\",\"Water, °C\",\"Air, °C\"\n1,2026-09-16 10:00:00,30.5,24.5\n";
    let read = read(log);
    let ten: jiff::Timestamp = "2026-09-16T08:00:00Z".parse().unwrap();
    assert_eq!(*read.readings.time_us, [ten.as_microsecond()]);
    assert_eq!(read.account.columns[0].header, "Water, °C");
}

#[test]
fn a_day_that_is_its_month_has_one_reading() {
    let log = "time,water_c,ambient_c\n05/05/2026 10:00,30.5,24.5\n05/05/2026 10:10,36.5,24.5\n";
    assert_eq!(read(log).readings.time_us.len(), 2);
}

#[test]
fn whole_irradiance_says_nothing_of_the_temperatures_decimals() {
    let log = "time,water_c,ambient_c,irradiance_w_m2\n2026-09-16 10:00,30.125,24.500,850\n";
    assert_eq!(read(log).readings.water_c.value, [30.125]);
    // 894 and 1.012 in one column: thousands, or decimals left off?
    let log = "time,water_c,ambient_c,irradiance_w_m2\n2026-09-16 10:00,30,24,894\n2026-09-16 10:10,36,24,1.012\n";
    refused(log, "1.012 or 1012");
}

#[test]
fn a_count_that_looks_like_a_date_is_a_count() {
    let log = "elapsed (ms),water_c,ambient_c\n0,30.5,24.5\n20000101,36.5,24.5\n";
    let times = read(log).readings.time_us;
    assert_eq!(times[1] - times[0], 20_000_101_000);
}

#[test]
fn am_and_pm_may_have_a_column_of_their_own() {
    let log = "Date,Time,AM/PM,Water (°C),Air (°C)\n2026-09-16,12:50,PM,30.5,24.5\n2026-09-16,01:00,PM,36.5,24.5\n";
    let times = read(log).readings.time_us;
    assert_eq!(times[1] - times[0], 600_000_000);
}

#[test]
fn a_zone_in_the_header_is_used_or_refused() {
    let log = |header: &str| format!("{header},water_c,ambient_c\n2026-09-16 10:00:00,30.5,24.5\n");
    let rules = LogRules::default();
    let zone = TimeZone::get("Africa/Windhoek").unwrap();
    for header in ["utc_time", "Time (UTC)", "DateTimeUTC"] {
        let request = Request::new(&rules, &zone);
        let read = read_bytes(
            Path::new("a.csv"),
            "a.csv",
            log(header).as_bytes(),
            &request,
        );
        let ten: jiff::Timestamp = "2026-09-16T10:00:00Z".parse().unwrap();
        assert_eq!(
            *read.unwrap().readings.time_us,
            [ten.as_microsecond()],
            "{header}"
        );
    }
    refused(&log("Time (AEST)"), "AEST");
}

#[test]
fn units_that_contradict_each_other_are_refused() {
    let log = "time,water (°C),ambient (°C)\n,°F,°C\n2026-09-16 10:00:00,30.5,24.5\n";
    refused(log, "in °C by its header and in °F by the units row");
}

#[test]
fn what_is_not_in_a_unit_of_the_quantity_is_no_sensor_of_it() {
    let log = "time,Water (L),Water temp (°C),ambient (°C)\n2026-09-16 10:00:00,7,30.5,24.5\n";
    assert_eq!(read(log).readings.water_c.value, [30.5]);
    refused(&log.replace("Water temp (°C)", "note"), "\"L\"");
}

#[test]
fn dates_written_in_two_ways_are_refused() {
    let log = "time,water_c,ambient_c\n24/02/2026 10:00,30.5,24.5\n2026-04-03 10:10,36.5,24.5\n";
    refused(log, "another way to write a date");
}

#[test]
fn a_declared_order_of_dates_is_kept_to() {
    let mut rules = LogRules::default();
    rules.format.date_order = Some(DateOrder::MonthDayYear);
    let log = "time,water_c,ambient_c\n03/04/2026 10:00,30.5,24.5\n";
    let read = read_with(log, &rules, &[]).unwrap();
    let ten: jiff::Timestamp = "2026-03-04T10:00:00Z".parse().unwrap();
    assert_eq!(*read.readings.time_us, [ten.as_microsecond()]);
}

#[test]
fn a_stopwatch_says_which_part_is_before_the_colon() {
    let log =
        |header: &str| format!("{header},water_c,ambient_c\n0:00,30.5,24.5\n26:30,36.5,24.5\n");
    let step_s = |header: &str| {
        let times = read(&log(header)).readings.time_us;
        (times[1] - times[0]) / 1_000_000
    };
    assert_eq!(step_s("Elapsed (mm:ss)"), 26 * 60 + 30);
    assert_eq!(step_s("Time (MM:SS)"), 26 * 60 + 30);
    assert_eq!(step_s("Elapsed time [h:min]"), 26 * 3600 + 30 * 60);
    refused(
        &log("Elapsed time"),
        "hours and minutes or minutes and seconds",
    );
}

#[test]
fn am_and_pm_of_a_column_reach_every_form_of_time() {
    let log = "time,AM/PM,water_c,ambient_c\n2026-09-16 12:50:00,PM,30.5,24.5\n2026-09-16 01:00:00,PM,36.5,24.5\n";
    let times = read(log).readings.time_us;
    assert_eq!(times[1] - times[0], 600_000_000);
}

#[test]
fn a_lost_cell_in_the_middle_is_no_missing_note() {
    let header = "time,water_c,ambient_c,rh,note\n";
    let row = |cells: &str| format!("2026-09-16 10:00:00,{cells}\n");
    let noted = format!(
        "{header}{}2026-09-16 10:10:00,36.5,24.5,45\n",
        row("30.5,24.5,45,fair")
    );
    assert_eq!(read(&noted).readings.time_us.len(), 2);
    let lost = format!(
        "{header}{}2026-09-16 10:10:00,36.5,45\n2026-09-16 10:20:00,36.5,24.5,45,\n",
        row("30.5,24.5,45,fair")
    );
    refused(&lost, "found 3 cells");
}

#[test]
fn rows_that_are_there_twice_and_blocks_that_came_late_are_sorted() {
    let twice = format!("{HEADER}{}{}", rows(0, 30), rows(20, 50));
    assert_eq!(read(&twice).readings.time_us.len(), 50);
    let late = format!("{HEADER}{}{}{}", rows(0, 10), rows(14, 30), rows(10, 14));
    assert_eq!(read(&late).readings.time_us.len(), 30);
}

#[test]
fn a_last_line_with_a_date_and_words_is_a_footer() {
    let log = format!("{HEADER}{}2026-09-16,end of test,,,\n", rows(0, 5));
    assert_eq!(read(&log).readings.time_us.len(), 5);
}

#[test]
fn a_unit_that_is_not_stated_is_said_once_for_logs_that_are_alike() {
    let log = format!("time,water,ambient\n{}", "2026-09-16 10:00:00,30.5,24.5\n");
    let told: Vec<String> = read(&log).notices.iter().map(ToString::to_string).collect();
    assert_eq!(
        told,
        [
            "no unit is stated for columns, read as \"water\" in °C, \"ambient\" in °C; state it in the header, or under [units]"
        ]
    );
}
