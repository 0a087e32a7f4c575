//! Logs in local clock time across the changes to and from daylight saving, held
//! against the same logs written with offsets. All readings are invented; that the
//! sun shines at two in the morning is the price of testing where clocks change.
//!
//! The changes used, from the IANA time zone database (2026 rules, from memory; a test
//! below holds them against the zone): Europe/Madrid, 29 March 02:00 → 03:00 and
//! 25 October 03:00 → 02:00; Australia/Lord_Howe, 5 April 02:00 → 01:30 and 4 October
//! 02:00 → 02:30.

use std::fmt::Write as _;

use jiff::Timestamp;
use jiff::tz::TimeZone;
use simmerline::error::Error;
use simmerline::procedure::Assessment;
use simmerline::procedure::s580::intervals::Interval;

use crate::kit::campaign::Invented;
use crate::kit::header::HEADER;
use crate::kit::rate::rate;

const STEP_S: i64 = 300;
const READINGS: i64 = 49;

/// A clock change: its zone, an instant two hours before it, and where it happens.
struct Change {
    zone: &'static str,
    longitude_deg: f64,
    latitude_deg: f64,
    two_hours_before: &'static str,
    /// By how much the clock is put on (positive) or back, s.
    shift_s: i64,
}

const MADRID_SPRING: Change = Change {
    zone: "Europe/Madrid",
    longitude_deg: -2.9,
    latitude_deg: 38.9,
    two_hours_before: "2026-03-28T23:00:00Z",
    shift_s: 3600,
};

const MADRID_AUTUMN: Change = Change {
    two_hours_before: "2026-10-24T23:00:00Z",
    shift_s: -3600,
    ..MADRID_SPRING
};

const LORD_HOWE_AUTUMN: Change = Change {
    zone: "Australia/Lord_Howe",
    longitude_deg: 159.1,
    latitude_deg: -31.5,
    two_hours_before: "2026-04-04T13:00:00Z",
    shift_s: -1800,
};

const LORD_HOWE_SPRING: Change = Change {
    two_hours_before: "2026-10-03T13:30:00Z",
    shift_s: 1800,
    ..LORD_HOWE_AUTUMN
};

/// How a log writes its times.
#[derive(Clone, Copy)]
enum Clock {
    Local,
    WithOffset,
    Utc,
}

impl Change {
    /// Instants of the readings: two hours before the change to two hours after it.
    fn instants(&self) -> Vec<Timestamp> {
        let first: Timestamp = self.two_hours_before.parse().unwrap();
        (0..READINGS)
            .map(|n| Timestamp::from_second(first.as_second() + n * STEP_S).unwrap())
            .collect()
    }

    fn zone(&self) -> TimeZone {
        TimeZone::get(self.zone).unwrap()
    }

    fn written(&self, instant: Timestamp, clock: Clock) -> String {
        let local = instant.to_zoned_datetime(self.zone());
        match clock {
            Clock::Local => local.strftime("%Y-%m-%d %H:%M:%S").to_string(),
            Clock::WithOffset => local.strftime("%Y-%m-%dT%H:%M:%S%:z").to_string(),
            Clock::Utc => instant.to_string(),
        }
    }

    /// Water that warms ever more slowly, in the order of the instants.
    fn log(&self, clock: Clock) -> String {
        let mut log = format!("{HEADER}\n");
        for (n, instant) in self.instants().into_iter().enumerate() {
            let n = n as f64;
            let water_c = 96.0 - 70.0 * (-n / 24.0).exp();
            let sun = 820.0 + 20.0 * (n / 3.0).sin();
            let time = self.written(instant, clock);
            writeln!(log, "{time},{water_c:.2},25.0,{sun:.0},0.4").unwrap();
        }
        log
    }

    fn campaign(&self, extra: &str) -> String {
        let invented = Invented {
            cooker_type: "box",
            intercept_area_m2: 0.5,
            latitude_deg: self.latitude_deg,
            longitude_deg: self.longitude_deg,
            time_zone: self.zone,
            water_kg: 3.5,
            instruments: "",
        };
        invented.text(&["night.csv"]) + extra
    }

    fn rate(&self, log: &str, extra: &str) -> simmerline::error::Result<Assessment> {
        rate(&self.campaign(extra), &[("night.csv", log)])
    }

    fn intervals(&self, clock: Clock) -> Vec<Interval> {
        self.rate(&self.log(clock), "").unwrap().s580.intervals
    }

    #[track_caller]
    fn assert_clocks_agree(&self) {
        let local = self.intervals(Clock::Local);
        assert_eq!(local, self.intervals(Clock::WithOffset));
        assert_eq!(local, self.intervals(Clock::Utc));
        // 4 h in intervals of 600 s that passed, whatever the clock showed.
        assert_eq!(local.len(), 24);
        let first_us = self.instants()[0].as_microsecond();
        for (interval, n) in local.iter().zip(0..) {
            assert_eq!(interval.measured.span.from_us, first_us + n * 600_000_000);
            assert_eq!(interval.measured.duration_s, 600.0);
            let rise_k = interval.measured.water_end_c - interval.measured.water_start_c;
            let power_w = 3.5 * 4186.0 * rise_k / 600.0;
            assert!((interval.measured.cooking_power_w - power_w).abs() < 1e-9);
        }
    }
}

/// The problems of a log that must not be read, as the user sees them.
#[track_caller]
fn refused(result: simmerline::error::Result<Assessment>) -> String {
    match result {
        Err(Error::Input(problems)) => problems.to_string(),
        Err(other) => panic!("expected a problem with the log, found: {other}"),
        Ok(_) => panic!("expected a problem with the log, found a rating"),
    }
}

#[test]
fn zone_has_the_changes_that_these_tests_are_about() {
    for change in [
        MADRID_SPRING,
        MADRID_AUTUMN,
        LORD_HOWE_SPRING,
        LORD_HOWE_AUTUMN,
    ] {
        let instants = change.instants();
        let offset_s = |instant: Timestamp| change.zone().to_offset(instant).seconds();
        let last_before = instants[instants.len() / 2 - 1];
        let first_after = instants[instants.len() / 2];
        let shift_s = offset_s(first_after) - offset_s(last_before);
        assert_eq!(i64::from(shift_s), change.shift_s, "{}", change.zone);
    }
}

#[test]
fn local_log_across_the_spring_change_gives_the_intervals_of_one_with_offsets() {
    MADRID_SPRING.assert_clocks_agree();
}

#[test]
fn local_log_across_the_autumn_change_gives_the_intervals_of_one_with_offsets() {
    MADRID_AUTUMN.assert_clocks_agree();
}

#[test]
fn half_hour_changes_give_the_intervals_of_logs_with_offsets() {
    LORD_HOWE_SPRING.assert_clocks_agree();
    LORD_HOWE_AUTUMN.assert_clocks_agree();
}

#[test]
fn local_log_repeats_an_hour_in_autumn_and_skips_one_in_spring() {
    // That the logs above do what they are made for.
    let clocks = |change: &Change| -> Vec<String> {
        let log = change.log(Clock::Local);
        let rows = log.lines().skip(1);
        rows.map(|row| row[..19].to_owned()).collect()
    };
    let autumn = clocks(&MADRID_AUTUMN);
    let twice = autumn.iter().filter(|time| time.contains(" 02:")).count();
    assert_eq!(twice, 24);
    let spring = clocks(&MADRID_SPRING);
    assert!(spring.iter().all(|time| !time.contains(" 02:")));
    assert!(spring.contains(&"2026-03-29 01:55:00".to_owned()));
    assert!(spring.contains(&"2026-03-29 03:00:00".to_owned()));
}

#[test]
fn autumn_log_is_in_order_and_repeats_no_time() {
    // The hour that the clock shows twice is neither sorted nor dropped.
    let rated = MADRID_AUTUMN.rate(&MADRID_AUTUMN.log(Clock::Local), "");
    let rated = rated.unwrap();
    assert_eq!(
        rated.tested.runs[0].readings.time_us.len(),
        READINGS as usize
    );
    let notices: Vec<String> = rated.notices.iter().map(ToString::to_string).collect();
    let sorted_or_dropped = |notice: &&String| {
        notice.contains("have been sorted") || notice.contains("the time of an earlier row")
    };
    assert_eq!(notices.iter().find(sorted_or_dropped), None, "{notices:?}");
}

#[test]
fn times_in_the_rating_carry_the_offset_in_force() {
    let rated = MADRID_SPRING.rate(&MADRID_SPRING.log(Clock::Local), "");
    let text = simmerline::report::data::rating_file::RatingFile::new(&rated.unwrap()).to_text();
    let file: serde_json::Value = serde_json::from_str(&text.unwrap()).unwrap();
    let across = &file["intervals"][11];
    assert_eq!(across["start"], "2026-03-29T01:50:00+01:00");
    assert_eq!(across["end"], "2026-03-29T03:00:00+02:00");
    assert_eq!(across["duration_s"], 600.0);
}

#[test]
fn skipped_hour_in_a_log_is_an_error_that_names_the_line() {
    // Header and 24 rows up to 01:55 local: line 26 is the first after the change.
    let log = MADRID_SPRING.log(Clock::Local);
    let log = log.replace("2026-03-29 03:00:00", "2026-03-29 02:30:00");
    let text = refused(MADRID_SPRING.rate(&log, ""));
    assert!(text.contains("night.csv:26: column \"time\": "), "{text}");
    assert!(text.contains("2026-03-29 02:30:00"), "{text}");
    assert!(text.contains("hint: "), "{text}");
}

#[test]
fn every_line_of_the_skipped_hour_is_named() {
    // A logger that was not put on: twelve rows from 02:00 to 02:55, lines 26 to 37.
    let log = MADRID_SPRING.log(Clock::Local).replace(" 03:", " 02:");
    let text = refused(MADRID_SPRING.rate(&log, ""));
    let lines: Vec<bool> = (25..=38)
        .map(|line| text.contains(&format!("night.csv:{line}: ")))
        .collect();
    let mut expected = vec![true; 14];
    (expected[0], expected[13]) = (false, false);
    assert_eq!(lines, expected, "{text}");
}

#[test]
fn half_hour_that_was_skipped_is_an_error_too() {
    let log = LORD_HOWE_SPRING.log(Clock::Local);
    let log = log.replace("2026-10-04 02:30:00", "2026-10-04 02:15:00");
    let text = refused(LORD_HOWE_SPRING.rate(&log, ""));
    assert!(text.contains("night.csv:26: column \"time\": "), "{text}");
}

#[test]
fn skipped_clock_time_with_an_offset_is_an_instant_like_any_other() {
    // 02:00+01:00 is the instant at which the clock is put on to 03:00+02:00.
    let log = MADRID_SPRING.log(Clock::WithOffset);
    let other = log.replace("2026-03-29T03:00:00+02:00", "2026-03-29T02:00:00+01:00");
    assert_ne!(log, other);
    let intervals = MADRID_SPRING.rate(&other, "").unwrap().s580.intervals;
    assert_eq!(intervals, MADRID_SPRING.intervals(Clock::WithOffset));
}

#[test]
fn fixed_offset_zone_knows_no_change() {
    // The same local log at a site kept on +01:00 all year: 02:30 exists, and the
    // intervals keep their length.
    let fixed = Change {
        zone: "Etc/GMT-1",
        ..MADRID_SPRING
    };
    fixed.assert_clocks_agree();
    assert!(fixed.log(Clock::Local).contains("2026-03-29 02:30:00"));
}

#[test]
fn exclusion_by_clock_time_after_the_change_is_placed_in_summer_time() {
    // 03:10 to 03:20 by the clock is 01:10 to 01:20 UTC, 2 h 10 min after the first
    // reading: the fourteenth interval, number 13 from 0.
    let extra = "[[run.exclude]]\nfrom = \"2026-03-29 03:10\"\nto = \"2026-03-29 03:20\"\n";
    let log = MADRID_SPRING.log(Clock::Local);
    let rated = MADRID_SPRING.rate(&log, extra).unwrap();
    let excluded: Vec<usize> = (0..rated.s580.intervals.len())
        .filter(|&n| {
            let codes = rated.s580.intervals[n].reasons().iter();
            let mut codes = codes.map(|reason| reason.code());
            codes.any(|code| code == "excluded-by-tester")
        })
        .collect();
    assert_eq!(excluded, [13]);
}

#[test]
fn start_in_the_skipped_hour_is_an_error_in_the_campaign_file() {
    // As `assess` promises: a start that does not exist in the site's zone. Put off by
    // an hour in silence, it would take an hour of readings with it.
    let log = MADRID_SPRING.log(Clock::Local);
    let rated = MADRID_SPRING.rate(&log, "start = \"2026-03-29 02:30\"\n");
    let kept = rated.map(|rated| rated.tested.runs[0].readings.time_us.len());
    assert!(matches!(kept, Err(Error::Campaign(_))), "{kept:?}");
}
