//! Input that is spoilt, and how it is refused.

use std::fs;

use simmerline::campaign::Reach;
use simmerline::error::Error;
use simmerline::language::Words;
use simmerline::procedure::Assessment;
use simmerline::report::s580::words::tracks::tracks;
use tempfile::TempDir;

use crate::pipeline::trial::*;

/// The second day with a remark in a last column that is not read; `None`: no remark.
fn remarked(remark: impl Fn(u32) -> Option<&'static str>) -> String {
    changed_log(15, |row, line| match row {
        None => format!("{line},remark"),
        Some(row) => format!("{line},{}", remark(row).unwrap_or("clear")),
    })
}

/// Line of the log on which a row stands: the header is line 1.
fn place(row: u32) -> String {
    format!("day-2.csv:{}:", row + 2)
}

#[test]
fn a_closed_quotation_in_an_ignored_column_loses_nothing() {
    let log = remarked(|row| (row == 7).then_some("\"cloud, then \"\"clear\"\"\""));
    let assessment = Trial::with_second(log).rated();
    assert_eq!(
        assessment.tested.runs[1].readings.time_us.len(),
        ROWS as usize
    );
}

#[test]
fn an_unclosed_quotation_mark_in_an_ignored_last_column_is_an_error() {
    for row in [0, 7, ROWS - 1] {
        let log = remarked(|at| (at == row).then_some("\"cloud"));
        let message = Trial::with_second(log).refused_as_input();
        assert!(message.contains(&place(row)), "{message}");
        assert!(message.contains("quotation mark"), "{message}");
    }
}

#[test]
fn two_unclosed_quotation_marks_are_an_error_at_the_first() {
    let log = remarked(|row| matches!(row, 7 | 12).then_some("\"cloud"));
    let message = Trial::with_second(log).refused_as_input();
    assert!(message.contains(&place(7)), "{message}");
}

#[test]
fn an_unclosed_quotation_mark_is_an_error_whatever_ends_the_lines() {
    let log = remarked(|row| (row == 7).then_some("\"cloud"));
    for ending in ["\n", "\r\n", "\r"] {
        match Trial::with_second(log.replace('\n', ending)).rate() {
            Err(error) => assert!(matches!(error, Error::Input(_)), "{error}"),
            Ok(assessment) => panic!(
                "{ending:?}: {} of {ROWS} readings are left, and the notices are {:?}",
                assessment.tested.runs[1].readings.time_us.len(),
                assessment.notices
            ),
        }
    }
}

#[test]
fn an_unclosed_quotation_mark_at_the_end_of_a_log_loses_no_reading() {
    let log = remarked(|row| (row == ROWS - 1).then_some("\"cloud"));
    match Trial::with_second(log.trim_end().to_owned()).rate() {
        Err(error) => assert!(error.to_string().contains(&place(ROWS - 1)), "{error}"),
        Ok(assessment) => {
            assert_eq!(
                assessment.tested.runs[1].readings.time_us.len(),
                ROWS as usize
            );
        }
    }
}

#[test]
fn an_unclosed_quotation_mark_in_the_header_is_an_error() {
    let log = changed_log(15, |row, line| match row {
        None => format!("{line},\"remark"),
        Some(_) => format!("{line},clear"),
    });
    let message = Trial::with_second(log).refused_as_input();
    assert!(message.contains("day-2.csv:1:"), "{message}");
}

#[test]
fn a_control_character_in_the_header_is_an_error() {
    for header in [
        HEADER.replace("water_c", "water\u{7}_c"),
        HEADER.replace("wind_m_s", "wind_m_s\u{1b}[0m"),
    ] {
        let log = fair_log(15).replacen(HEADER, &header, 1);
        let message = Trial::with_second(log).refused_as_input();
        assert!(message.contains("day-2.csv:1:"), "{message}");
        assert!(message.contains("control character"), "{message}");
        let shown = message
            .chars()
            .find(|c| c.is_control() && !matches!(c, '\n'));
        assert_eq!(shown, None, "{message:?}");
    }
}

#[cfg(unix)]
#[test]
fn a_log_that_is_a_pipe_is_refused_and_does_not_hang() {
    let trial = Trial::fair();
    fs::remove_file(trial.path("day-2.csv")).unwrap();
    if make_pipe(&trial.path("day-2.csv")) {
        let message = within(20, move || trial.refused_as_input());
        assert!(message.contains("day-2.csv: is no file"), "{message}");
    }
}

#[cfg(unix)]
#[test]
fn a_log_that_is_a_device_is_refused_and_does_not_hang() {
    for device in ["/dev/zero", "/dev/null"] {
        let trial = Trial::fair();
        fs::remove_file(trial.path("day-2.csv")).unwrap();
        std::os::unix::fs::symlink(device, trial.path("day-2.csv")).unwrap();
        within(20, move || {
            // It leads out of the folder, and where that is allowed it is no log.
            let message = trial.refused_as_campaign();
            assert!(message.contains("\"day-2.csv\" lies outside"), "{message}");
            let reaching = simmerline::assess_reaching(&trial.path(""), Reach::Outside);
            let error = reaching.expect_err("it is refused");
            assert!(matches!(error, Error::Input(_)), "{error:?}");
            let message = error.to_string();
            assert!(message.contains("day-2.csv: is no file"), "{message}");
        });
    }
}

#[cfg(unix)]
#[test]
fn a_campaign_file_that_is_a_pipe_is_refused_and_does_not_hang() {
    let folder = TempDir::new().unwrap();
    if make_pipe(&folder.path().join("campaign.toml")) {
        let path = folder.path().to_path_buf();
        let result = within(20, move || simmerline::assess_folder(&path));
        assert!(matches!(result, Err(Error::Campaign(_))), "{result:?}");
    }
}

#[test]
fn two_columns_that_differ_only_in_case_are_refused() {
    let columns = "[columns]\nirradiance = \"sun\"\nwind_speed = \"SUN\"";
    let renamed = |names: &str| {
        let header = format!("time,water_c,ambient_c,{names}");
        let logs = [14, 15, 16].map(|day| fair_log(day).replacen(HEADER, &header, 1));
        Trial::of(&logs).with_table(columns)
    };
    // One such column in the log, and both.
    for names in ["Sun,air", "sun,SUN"] {
        let error = renamed(names).rate().expect_err(names);
        let refused = matches!(error, Error::Input(_) | Error::Campaign(_));
        assert!(refused, "{names}: {error:?}");
        let message = error.to_string().to_lowercase();
        assert!(message.contains("column \"sun\""), "{names}: {message}");
    }
}

/// Three fair days with an exclusion in the first one.
fn with_exclusion(from: &str, to: &str) -> Trial {
    let run = "log = \"day-1.csv\"\n";
    let exclude = format!(
        "{run}[[run.exclude]]\nfrom = \"{from}\"\nto = \"{to}\"\nreason = \"lid lifted to look\"\n"
    );
    Trial::fair().change(run, &exclude)
}

#[test]
fn an_exclusion_that_ends_when_it_begins_or_earlier_is_refused() {
    for (from, to) in [
        ("11:20", "11:20"),
        ("11:20", "11:20:00"),
        ("11:20", "2026-04-14 11:20"),
        ("11:40", "11:20"),
    ] {
        let message = with_exclusion(from, to).refused_as_campaign();
        assert!(
            message.contains("does not end after it begins"),
            "{message}"
        );
        assert!(message.contains("day-1.csv"), "{message}");
    }
}

const OWN_LIMITS: &str = "[limits]\nwater_min_c = 40\nwater_max_c = 90\nambient_min_c = 15";

#[test]
fn a_fixed_water_window_is_labelled_as_a_water_temperature() {
    let limit_of = |assessment: &Assessment, word: &str| -> Vec<String> {
        let tracks = tracks(assessment, Words::english()).into_iter();
        let tracks = tracks.filter(|track| track.name.starts_with(word));
        let limits = tracks.flat_map(|track| track.limits);
        limits.map(|(_, limit)| limit).collect()
    };
    let fixed = Trial::fair().with_table(OWN_LIMITS).rated();
    assert_eq!(limit_of(&fixed, "Lowest water temperature"), ["40"]);
    assert_eq!(limit_of(&fixed, "Highest water temperature"), ["90"]);
    for moving in ["Water above ambient", "Water below boiling"] {
        assert_eq!(limit_of(&fixed, moving), [""; 0], "{moving}");
        assert_eq!(limit_of(&Trial::fair().rated(), moving), ["5"]);
    }
    let rows = report(&fixed).conditions.rows;
    let of_window = rows.iter().filter(|row| row.what == "water temperature");
    let limits: Vec<&str> = of_window.map(|row| row.limit.as_str()).collect();
    assert_eq!(limits, ["≥ 40 °C", "≤ 90 °C"]);
}

#[test]
fn deviations_list_own_limits_and_exclusions() {
    let trial = with_exclusion("11:20", "11:40").with_table(OWN_LIMITS);
    let deviations = report(&trial.rated()).provenance.deviations;
    let all = deviations.join("\n");
    for expected in [
        "Own limit: water temperature ≥ 40 °C",
        "Own limit: water temperature ≤ 90 °C",
        "Own limit: mean ambient temperature ≥ 15 °C",
        "day-1.csv: 11:20 to 11:40",
        "lid lifted to look",
    ] {
        assert!(all.contains(expected), "no {expected:?} in {all}");
    }
    let plain = report(&Trial::fair().rated()).provenance.deviations;
    let plain = plain.join("\n");
    for unexpected in ["Own limit", "excluded"] {
        assert!(!plain.contains(unexpected), "{plain}");
    }
}
