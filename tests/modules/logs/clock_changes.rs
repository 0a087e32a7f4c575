//! Days of 23, 24 and 25 hours, from the IANA time zone database as Python reads it
//! (`tests/data/clock_changes.csv`), in logs of local time without offsets.

use jiff::tz::TimeZone;

use crate::logs::several_runs::log_times_us;

struct Change {
    zone: String,
    date: String,
    /// Local times at every full ten minutes of the date, as the clocks show them.
    hours: f64,
}

fn changes() -> Vec<Change> {
    let text = include_str!("../../data/clock_changes.csv");
    let rows = text.lines().filter(|line| !line.starts_with('#')).skip(1);
    rows.map(|row| {
        let cells: Vec<&str> = row.split(',').collect();
        Change {
            zone: cells[0].to_owned(),
            date: cells[1].to_owned(),
            hours: cells[2].parse().unwrap(),
        }
    })
    .collect()
}

/// Times of every ten minutes that pass on a date, as its clocks show them.
fn shown(change: &Change, zone: &TimeZone) -> Vec<String> {
    let date: jiff::civil::Date = change.date.parse().unwrap();
    let midnight = zone.to_timestamp(date.at(0, 0, 0, 0)).unwrap();
    let steps = (change.hours * 6.0).round() as i64;
    (0..=steps)
        .map(|step| {
            let at = jiff::Timestamp::from_second(midnight.as_second() + step * 600).unwrap();
            at.to_zoned_datetime(zone.clone())
                .strftime("%Y-%m-%d %H:%M:%S")
                .to_string()
        })
        .collect()
}

#[test]
fn a_day_has_the_hours_that_the_database_gives_it() {
    let changes = changes();
    for hours in [23.0, 24.0, 25.0, 23.5, 24.5] {
        assert!(
            changes.iter().any(|change| change.hours == hours),
            "{hours}"
        );
    }
    for change in changes {
        let zone = TimeZone::get(&change.zone).unwrap();
        let times = shown(&change, &zone);
        let texts: Vec<&str> = times.iter().map(String::as_str).collect();
        // The last time shown is the next midnight.
        assert!(
            texts.last().unwrap().ends_with("00:00:00"),
            "{} {}",
            change.zone,
            change.date
        );
        let read = log_times_us(&texts, &zone);
        assert_eq!(read.len(), texts.len(), "{} {}", change.zone, change.date);
        for pair in read.windows(2) {
            assert_eq!(
                pair[1] - pair[0],
                600_000_000,
                "{} {}",
                change.zone,
                change.date
            );
        }
    }
}

#[test]
fn newest_first_the_repeated_hour_is_settled_too() {
    for change in changes().into_iter().filter(|change| change.hours > 24.0) {
        let zone = TimeZone::get(&change.zone).unwrap();
        let mut times = shown(&change, &zone);
        times.reverse();
        let texts: Vec<&str> = times.iter().map(String::as_str).collect();
        let read = log_times_us(&texts, &zone);
        assert_eq!(read.len(), texts.len(), "{} {}", change.zone, change.date);
    }
}
